"""Counts as bars of letters, and as a table: to be read without colour, in any terminal.

Each bar is stacked: certain, possible, not identified, in three signs that differ in grey too.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import NamedTuple

from conservedb.exchange.widths import cells, fitted, padded
from conservedb.knowledge.decades import (
    Count,
    Decades,
    LabelledDecades,
    Tally,
    decade_name,
    with_gaps,
)

SIGNS = "█▒░"
PLAIN_SIGNS = "#:."
"""The signs where a terminal has no others."""
WORDS = ("certain", "possible", "not identified")
UNDATED = "no decade"
_GAP = 2


class Bar(NamedTuple):
    """A line of a chart: its label, which may be user text, and what is counted."""

    label: str
    counts: Count


def bars_of(found: Tally | Decades) -> tuple[Bar, ...]:
    """The bars of a tally, or of decades in the order of time with the undated last."""
    if isinstance(found, Tally):
        return tuple(Bar(*group) for group in found.groups)
    bars = [Bar(one.label, one.counts) for one in with_gaps(found.decades)]
    return (*bars, Bar(UNDATED, found.undated)) if found.undated.total else tuple(bars)


def numbers(counts: Count) -> str:
    """ "12", "12 + 5", "12 + 5 + 1": certain, possible, not identified; noughts last left out."""
    last = 3 if counts.unidentified else 2 if counts.possible else 1
    return " + ".join(f"{count:,}" for count in counts[:last])


def bar_lines(bars: Sequence[Bar], width: int = 80, *, plain: bool = False) -> Iterator[str]:
    """The bars as lines of at most `width` cells: label, numbers, bar; and what the signs mean.

    Args:
        plain: with signs that every terminal has.
    """
    if not bars:
        return
    signs = PLAIN_SIGNS if plain else SIGNS
    ellipsis = "..." if plain else "…"
    counted = [numbers(bar.counts) for bar in bars]
    widest = max(map(len, counted))
    room = max((width - widest - 2 * _GAP) // 2, 4)
    labels = [fitted(bar.label, room, ellipsis) for bar in bars]
    margin = max(map(cells, labels))
    left = max(width - margin - widest - 2 * _GAP, 1)
    each = _each([bar.counts for bar in bars], left)
    gap = " " * _GAP
    for bar, label, said in zip(bars, labels, counted, strict=True):
        drawn = _drawn(bar.counts, each, signs)
        yield f"{padded(label, margin)}{gap}{said:>{widest}}{gap}{drawn}".rstrip()
    yield ""
    yield _legend([bar.counts for bar in bars], signs)
    if each > 1:
        yield f"each sign stands for up to {each:,}"


def _each(counts: Sequence[Count], room: int) -> int:
    """How many things a sign stands for, so that the longest bar has room."""
    each, most = 1, max(one.total for one in counts)
    while each < most and max(_signs(one, each) for one in counts) > room:
        each += max(1, each // 20)
    return each


def _signs(counts: Iterable[int], each: int) -> int:
    return sum(-(-count // each) for count in counts)


def _drawn(counts: Count, each: int, signs: str) -> str:
    return "".join(sign * -(-count // each) for sign, count in zip(signs, counts, strict=True))


def _legend(counts: Sequence[Count], signs: str) -> str:
    """What the signs mean that are used."""
    sums = [sum(column) for column in zip(*counts, strict=True)]
    meant = zip(signs, WORDS, sums, strict=True)
    used = [f"{sign} {word}" for sign, word, number in meant if number]
    return " + ".join(used) or "nothing is counted"


class Grid(NamedTuple):
    """A table of counts: a row for each label, a column for each heading; both in their order."""

    headings: tuple[str, ...]
    rows: tuple[tuple[str, tuple[Count, ...]], ...]


def grid_lines(grid: Grid, width: int = 80, *, plain: bool = False) -> Iterator[str]:
    """The table as lines of at most `width` cells; where it is wider, in several parts."""
    if not grid.rows:
        return
    ellipsis = "..." if plain else "…"
    said = [[numbers(one) if one.total else "" for one in counts] for _, counts in grid.rows]
    widest = max(len(word) for line in (grid.headings, *said) for word in line) + _GAP
    labels = [fitted(label, max(width - widest, 4) // 2, ellipsis) for label, _ in grid.rows]
    margin = max(map(cells, labels))
    many = max((width - margin) // widest, 1)
    for start in range(0, len(grid.headings), many):
        if start:
            yield ""
        part = slice(start, start + many)
        yield _in_columns("", margin, grid.headings[part], widest)
        for label, words in zip(labels, said, strict=True):
            yield _in_columns(label, margin, words[part], widest)


def _in_columns(label: str, margin: int, words: Iterable[str], room: int) -> str:
    return (padded(label, margin) + "".join(f"{word:>{room}}" for word in words)).rstrip()


def grid_of(found: Sequence[LabelledDecades]) -> Grid:
    """The table of labels by decade: the decades in which something may lie, then the undated."""
    firsts = sorted({one.first for row in found for one in row.decades.decades})
    undated = any(row.decades.undated.total for row in found)
    rows = []
    for label, decades in found:
        counts = {one.first: one.counts for one in decades.decades}
        cells_of_row = [counts.get(first, Count()) for first in firsts]
        rows.append((label, (*cells_of_row, *([decades.undated] if undated else []))))
    headings = (*map(decade_name, firsts), *([UNDATED] if undated else []))
    return Grid(headings, tuple(rows))
