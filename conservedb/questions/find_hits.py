"""From the rows behind what was found to what is shown: their order, and the sentence that fits."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import NamedTuple

from conservedb.questions.answers import Hit
from conservedb.questions.asking import Row
from conservedb.questions.find_records import Shown
from conservedb.questions.find_words import excerpt, holds_all, letters, parts, spans
from conservedb.store.keys import sort_key

_NAMED = ("object", "component", "place", "material", "person", "source", "term")
"""Kinds that are listed in the order of what they are called; all others with the newest first."""
_TITLED = ("object", "component", "place", "treatment", "rule", "climate")
"""Kinds of which the second name says what it is, and the first where it is found."""
_LONG = 40
"""A label of more characters than these needs no second half."""
_FIELDS = 6
"""Columns of a row before its names."""


class Candidate(NamedTuple):
    """A record that was found, taken apart; `inside`: the words are to be inside of its names."""

    kind: str
    row: Row
    names: tuple[str, ...]
    aliases: tuple[str, ...]
    words: tuple[str, ...]
    inside: bool = False


class Typed(NamedTuple):
    """What somebody looks for: all of it, and its words."""

    whole: str
    words: tuple[str, ...]


def candidate(shown: Shown, row: Row, *, inside: bool) -> Candidate:
    """A row of `shown` taken apart."""
    called = _FIELDS + shown.names
    aliases = tuple(alias for names in json.loads(row.aliases) for alias in names)
    return Candidate(shown.kind, row, row[_FIELDS:called], aliases, row[called:], inside)


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
        order = sort_key(f"{one.row.object} {one.names[0]}") if one.kind in _NAMED else ""
        whole = sum(word in called for word in wanted)
        return not is_exact(one, typed), not named, -whole, order, -one.row.id

    return sorted(found, key=rank)


def fits(one: Candidate, typed: Typed) -> bool:
    """Whether one that is to have all the words inside of its names does."""
    return not one.inside or holds_all(
        " ".join((*one.names, *one.aliases)), typed.words, within=True
    )


def hit(one: Candidate, typed: Typed) -> Hit:
    """A record as it is shown, with the sentence in which the words stand."""

    def held(text: str, words: Sequence[str]) -> int:
        return sum(holds_all(text, (word,), within=one.inside) for word in words)

    label = _label(one, typed)
    seen = (one.row.object, one.row.mark, label)
    left = [word for word in typed.words if not any(held(text, (word,)) for text in seen)]
    sentence, found = "", spans(label, typed.words, within=one.inside)
    if one.kind not in _NAMED:
        label, found = excerpt(label, found)
    if left:
        texts = [text for text in (*one.aliases, *one.names, *one.words, one.row.matter) if text]
        best = max(texts, key=lambda text: held(text, left), default="")
        if held(best, left):
            sentence, found = excerpt(best, spans(best, typed.words, within=one.inside))
    return Hit(one.kind, one.row.object, one.row.mark, label, _detail(one, label), sentence, found)


def _label(one: Candidate, typed: Typed) -> str:
    """What it is called; of several names the one that was looked for."""
    if one.kind == "material":
        names = [name for name in (*one.names[1:], *one.aliases) if name]
        fitting = (n for n in names if holds_all(n, typed.words, within=one.inside))
        return next(fitting, (*names, one.names[0])[0])
    if one.kind in _TITLED:
        return one.names[1] or one.words[0]
    if one.kind in _NAMED:
        return one.names[0]
    said = list(dict.fromkeys(word for word in (one.row.matter, *one.words[:2]) if word))[:2]
    if len(said) > 1 and len(said[0]) > _LONG:
        del said[1]
    return ", ".join(said) or one.names[0]


def _detail(one: Candidate, label: str) -> str:
    """What else tells it from others: its kind, key, day or reference."""
    if one.kind == "material":
        return one.names[0]
    if one.kind == "source":
        return one.names[1]
    if one.kind in _NAMED:
        return one.words[0]
    ref = "" if one.names[0] in (one.row.mark, label) else one.names[0]
    return ", ".join(word for word in (ref, one.row.date) if word)
