"""Where the words that somebody looks for stand in a text.

A word is found where letters and digits begin with its own, case, accents and joining signs left
aside: "b72" in "Paraloid B-72", "1902" in "SQ.1902.7". The index finds by the same rule.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence

from conservedb.store.keys import fold

_ACCENTS = "\u0300-\u036f"
_PART = re.compile(rf"[^\W_][^\W_{_ACCENTS}]*(?:[{_ACCENTS}]+[^\W_]*)*")
_WHOLE = re.compile(rf"{_PART.pattern}(?:[.\-/_'’]{_PART.pattern})*")
_AROUND = 60
"""Characters of a long text that are shown on each side of the first word found."""

Spans = tuple[tuple[int, int], ...]


def letters(text: str) -> str:
    """A text as folded letters and digits, without anything else."""
    folded = fold(text)
    return folded if folded.isalnum() else "".join(filter(str.isalnum, folded))


def parts(text: str) -> Iterator[str]:
    """Every word of a text with its joining signs, as "b-72"; and each part of it."""
    for whole in _WHOLE.finditer(text):
        yield whole[0]
        inner = _PART.findall(whole[0])
        if len(inner) > 1:
            yield from inner


def spans(text: str, words: Iterable[str], *, within: bool = False) -> Spans:
    """Where words of `text` begin with one of `words`, or `within` hold it: first, after last."""
    sought = tuple(letter for word in words if (letter := letters(word)))
    found: list[tuple[int, int]] = []
    for whole in _WHOLE.finditer(text):
        first, plain = whole.start(), letters(whole[0])
        if len(plain) == whole.end() - first:  # of one piece
            if plain.startswith(sought) or (within and any(word in plain for word in sought)):
                found.append(whole.span())
            continue
        pieces = [(first + p.start(), first + p.end()) for p in _PART.finditer(whole[0])]
        found += _in_pieces(text, pieces, sought, within=within)
    return tuple(found)


def _in_pieces(
    text: str, pieces: Sequence[tuple[int, int]], sought: Sequence[str], *, within: bool
) -> Iterator[tuple[int, int]]:
    """Spans in one word of several pieces; what is begun in one may end in a later one."""
    plain = [letters(text[start:end]) for start, end in pieces]
    at = 0
    while at < len(pieces):
        rest = "".join(plain[at:])
        held = (len(word) for word in sought if _holds(rest, plain[at], word, within))
        long = max(held, default=0)
        last = at
        if long:
            while last + 1 < len(pieces) and sum(map(len, plain[at : last + 1])) < long:
                last += 1
            yield pieces[at][0], pieces[last][1]
        at = last + 1


def _holds(rest: str, piece: str, word: str, within: bool) -> bool:
    return rest.startswith(word) or (within and word in piece)


def holds_all(text: str, words: Sequence[str], *, within: bool = False) -> bool:
    """Whether every one of the words stands in the text."""
    return all(spans(text, (word,), within=within) for word in words)


def excerpt(text: str, found: Spans) -> tuple[str, Spans]:
    """A long text around the first word found, with the spans of what is left of it."""
    if len(text) <= 3 * _AROUND or not found:
        return text, found
    first, last = found[0]
    start = 0 if first <= _AROUND else text.find(" ", first - _AROUND, first) + 1
    start = start or (first - _AROUND if first > _AROUND else 0)
    end = min(max(last, start) + 2 * _AROUND, len(text))
    cut = text.rfind(" ", last, end) if end < len(text) else end
    end = cut if cut > last else end
    before, after = ("…" if start else ""), ("…" if end < len(text) else "")
    moved = len(before) - start
    kept = tuple((a + moved, min(b, end) + moved) for a, b in found if a < end)
    return f"{before}{text[start:end]}{after}", kept
