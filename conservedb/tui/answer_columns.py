"""The columns of a researcher's answer: which have room, how wide they are, what stands in them."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from itertools import accumulate
from typing import NamedTuple

from textual.content import Content

from conservedb.questions.research_answers import CERTAIN, ResearchRow
from conservedb.questions.wording import asked_state
from conservedb.tui.details import Fact
from conservedb.tui.text import QUIET, STRONG, joined, plain
from conservedb.tui.text import UNSURE as DOUBT
from conservedb.tui.wording import bounds_words

GAP = 2
UP, DOWN = "▲", "▼"


class Column(NamedTuple):
    """A column.

    Attributes:
        name: by which rows are sorted.
        heading: what stands above it.
        least, good, most: cells that it needs, reads well in, and can use.
    """

    name: str
    heading: str
    least: int
    good: int
    most: int


_NUMBER = Column("layers", "found", 5, 5, 8)
"""How many layers and uses answer at a row of several; nothing is sorted by it."""
_COLUMNS = {
    one.name: one
    for one in (
        Column("sureness", "how sure", 12, 12, 12),
        Column("object", "object", 11, 11, 14),
        Column("title", "title", 12, 22, 44),
        Column("place", "place", 5, 6, 12),
        Column("what", "what", 6, 6, 6),
        Column("ref", "ref", 7, 7, 10),
        Column("material", "material", 12, 18, 26),
        Column("role", "role", 9, 9, 14),
        Column("kind", "kind", 9, 9, 14),
        Column("people", "people", 10, 12, 26),
        Column("date", "date", 10, 18, 24),
        Column("state", "state", 14, 14, 15),
        _NUMBER,
    )
}
_OF_ROWS = {
    "layers": tuple(name for name in _COLUMNS if name != _NUMBER.name),
    "places": ("sureness", "object", "title", "place", "date"),
    "interventions": ("sureness", "object", "title", "ref", "kind", "people", "date"),
    "objects": ("sureness", "object", "title", "date"),
}
"""The columns in which rows of a kind hold anything."""
_LAST_LEFT_OUT = {
    "layers": (
        *("sureness", "object", "place", "material", "date", "state"),
        *("role", "people", "kind", "title", "ref", "what"),
    ),
    "places": ("sureness", "object", "place", "date", "title", _NUMBER.name),
    "interventions": (
        *("sureness", "object", "ref", "kind", "people", "date", "title", _NUMBER.name),
    ),
    "objects": ("sureness", "object", "date", "title", _NUMBER.name),
}
"""The same, and how many; those without which the others say least come first."""
_CORE = 6
"""So many of these come before the good widths of others."""


def columns_of(rows: str) -> tuple[Column, ...]:
    """The columns by which rows of a kind can be sorted."""
    return tuple(_COLUMNS[name] for name in _OF_ROWS[rows])


def fitted(rows: str, width: int, order: str) -> tuple[tuple[Column, int], ...]:
    """The columns for which there is room, from the left, each with its cells.

    Args:
        order: the column by which rows are sorted; it is always shown.
    """
    offered = columns_of(rows)
    if rows != "layers":
        offered = (*offered, _NUMBER)
    ranked = sorted(
        (_COLUMNS[name] for name in _LAST_LEFT_OUT[rows]), key=lambda c: c.name != order
    )
    cells = _first(ranked, {one.name: one.good for one in offered}, width)
    if any(one.name not in cells for one in ranked[:_CORE]):
        cells = _first(ranked, {one.name: one.least for one in offered}, width)
    left = width - sum(cells.values()) - GAP * (len(cells) - 1)
    cells, left = _widened(cells, {one.name: one.good for one in ranked}, left)
    cells, _ = _widened(cells, {one.name: one.most for one in ranked}, left)
    return tuple((one, cells[one.name]) for one in offered if one.name in cells)


def _first(ranked: Sequence[Column], cells: Mapping[str, int], width: int) -> dict[str, int]:
    """The first columns that have room beside each other."""
    ends = accumulate(cells[one.name] + GAP for one in ranked)
    found = [one.name for one, end in zip(ranked, ends, strict=True) if end - GAP <= width]
    return {name: cells[name] for name in found}


def _widened(
    cells: Mapping[str, int], wanted: Mapping[str, int], left: int
) -> tuple[dict[str, int], int]:
    """What is left shared evenly among columns that want more, and what nobody wants."""
    wide = dict(cells)
    while growing := [name for name in wide if wide[name] < wanted[name]][: max(left, 0)]:
        for name in growing:
            wide[name] += 1
        left -= len(growing)
    return wide, left


def headings(columns: Sequence[tuple[Column, int]], order: str, *, descending: bool) -> Content:
    """The line above the rows; a sign at the column by which they are sorted."""
    return _line(
        columns,
        lambda name: plain(
            f"{_COLUMNS[name].heading}{(DOWN if descending else UP) if name == order else ''}",
            STRONG if name == order else QUIET,
        ),
    )


def row_line(columns: Sequence[tuple[Column, int]], row: ResearchRow) -> Content:
    """A row."""
    return _line(columns, lambda name: plain(cell(row, name), _ink(row, name)))


def _line(columns: Sequence[tuple[Column, int]], draw: Callable[[str], Content]) -> Content:
    """Cells one beside the other, each cut to its width."""
    drawn = []
    for column, width in columns:
        shortened = draw(column.name).truncate(width, ellipsis=True)
        drawn.append(shortened.pad_right(max(width - shortened.cell_length, 0)))
    return joined(drawn, " " * GAP)


def cell(row: ResearchRow, name: str) -> str:
    """What stands in a column."""
    if name == "date":
        return row.dated
    if name == "material":
        return row.matter
    if name == _NUMBER.name and not row.layers:
        return ""
    if name == "state" and row.state:
        return asked_state(row.state)
    return str(getattr(row, name))


def _ink(row: ResearchRow, name: str) -> str:
    if name == "sureness":
        return "" if row.sureness == CERTAIN else DOUBT
    return QUIET if name in ("title", "what", "ref") else ""


def facts_of(row: ResearchRow, rows: str) -> tuple[Fact, ...]:
    """Everything about a row, nothing shortened."""
    found = [(one.heading, cell(row, one.name)) for one in columns_of(rows)]
    if row.date.recorded:
        found.append(("between", bounds_words(row.date)))
    if rows != "layers":
        found.append((_NUMBER.heading, f"{row.layers:,}"))
    return tuple((label, text) for label, text in found if text)
