"""From the rows behind what was found to what is shown: their order, and the sentence that fits."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import NamedTuple

from conservedb.questions.answers import Hit
from conservedb.questions.asking import Row
from conservedb.questions.find_records import Shown
from conservedb.questions.find_words import Spans, excerpt, holds_all, letters, parts, spans
from conservedb.store.keys import sort_key

_CALLED = ("object", "component", "place", "material", "person", "source", "term")
"""Kinds that are listed in the order of what they are called; all others with the newest first."""
_FIELDS = 6
"""Columns of a row before its names."""


class Candidate(NamedTuple):
    """A record that was found, taken apart."""

    kind: str
    row: Row
    names: tuple[str, ...]
    aliases: tuple[str, ...]
    words: tuple[str, ...]


class Typed(NamedTuple):
    """What somebody looks for; `within`: also inside of words."""

    whole: str
    words: tuple[str, ...]
    within: bool = False


def candidate(shown: Shown, row: Row) -> Candidate:
    """A row of `shown` taken apart."""
    called = _FIELDS + shown.names
    aliases = tuple(alias for names in json.loads(row.aliases) for alias in names)
    return Candidate(shown.kind, row, row[_FIELDS:called], aliases, row[called:])


def is_exact(one: Candidate, typed: Typed) -> bool:
    """Whether it is called exactly as was typed, joining signs aside."""
    if any(name == typed.whole for name in one.names):
        return True
    wanted = letters(typed.whole)
    return bool(wanted) and wanted in map(letters, (*one.names, *one.aliases))


def ranked(found: Sequence[Candidate], typed: Typed) -> list[Candidate]:
    """What is called exactly so first, then names before other words, whole words before begun."""
    wanted = [letters(word) for word in typed.words]

    def rank(one: Candidate) -> tuple[bool, bool, int, str, int]:
        names = " ".join((*one.names, *one.aliases))
        called = {letters(part) for part in parts(names)}
        named = all(any(name.startswith(word) for name in called) for word in wanted)
        order = sort_key(f"{one.row.object} {one.names[0]}") if one.kind in _CALLED else ""
        whole = sum(word in called for word in wanted)
        return not is_exact(one, typed), not named, -whole, order, -one.row.id

    return sorted(found, key=rank)


def called_within(one: Candidate, typed: Typed) -> bool:
    """Whether every word typed stands somewhere in what it is called."""
    return holds_all(" ".join((*one.names, *one.aliases)), typed.words, within=True)


def hit(one: Candidate, typed: Typed) -> Hit:
    """A record as it is shown, with the sentence in which the words stand.

    A word that begins no word of it stands inside of one.
    """
    label = _label(one, typed)
    seen = (one.row.object, one.row.mark, label)
    left = [w for w in typed.words if not any(holds_all(t, (w,), within=typed.within) for t in seen)]
    sentence, found = "", spans(label, typed.words, within=typed.within)
    if left:
        texts = [text for text in (*one.aliases, *one.names, *one.words, one.row.matter) if text]
        best = max(texts, key=lambda text: _held(text, left, typed), default="")
        if _held(best, left, typed):
            sentence, found = excerpt(best, spans(best, typed.words, within=typed.within))
    return Hit(one.kind, one.row.object, one.row.mark, label, _detail(one, label), sentence, found)


def _held(text: str, words: Sequence[str], typed: Typed) -> int:
    return sum(holds_all(text, (word,), within=typed.within) for word in words)


def _label(one: Candidate, typed: Typed) -> str:
    """What it is called; of several names the one that was looked for."""
    if one.kind == "material":
        names = [name for name in (*one.names[1:], *one.aliases) if name]
        fitting = (n for n in names if holds_all(n, typed.words, within=typed.within))
        return next(fitting, (*names, one.names[0])[0])
    if one.kind in ("object", "component", "place", "treatment"):
        return one.names[1] or one.words[0]
    if one.kind in _CALLED:
        return one.names[0]
    said = [one.row.matter, *one.words[: 1 if one.row.matter else 2]]
    return ", ".join(dict.fromkeys(word for word in said if word)) or one.names[0]


def _detail(one: Candidate, label: str) -> str:
    """What else tells it from others: its kind, key, day or reference."""
    if one.kind == "material":
        return one.names[0]
    if one.kind == "source":
        return one.names[1]
    if one.kind in _CALLED:
        return one.words[0]
    ref = "" if one.names[0] in (one.row.mark, label) else one.names[0]
    return ", ".join(word for word in (ref, one.row.date) if word)

