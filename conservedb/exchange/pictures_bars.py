"""The layout of bars as a picture: labels, stacked bars with their numbers, an axis of counts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from conservedb.exchange.bars import WORDS, Bar, numbers
from conservedb.exchange.pictures import (
    INK,
    MARGIN,
    PAPER,
    QUIET,
    SHADE,
    SMALL,
    TEXT,
    TITLE,
    WIDTH,
    About,
    Box,
    Drawing,
    Shape,
    Stroke,
    Words,
    hatched,
    paragraph,
    room,
)
from conservedb.exchange.widths import cells, fitted
from conservedb.knowledge.scales import round_steps
from conservedb.store.problems import DatabaseProblem

MOST = 200
"""Bars that one picture can hold."""
_ROW, _BAR = 24, 16
_LONGEST_LABEL = 34


def bar_picture(bars: Sequence[Bar], about: About, by: str, what: str) -> Drawing:
    """The bars as a drawing.

    Args:
        by: what the labels are ("decade").
        what: what is counted, in the plural ("layers").

    Raises:
        DatabaseProblem: there are more bars than a picture can hold.
    """
    if len(bars) > MOST:
        raise DatabaseProblem(
            f"a picture holds {MOST} bars, and these are {len(bars):,}; ask a narrower question"
        )
    heading = paragraph([about.title], MARGIN, MARGIN / 2, TITLE)
    top = heading[-1].y + 24
    labels = [fitted(bar.label, _LONGEST_LABEL) for bar in bars]
    left = MARGIN + room("0" * max((*map(cells, (*labels, by)),), default=0)) + 10
    widest = max((room(numbers(bar.counts)) for bar in bars), default=0)
    right = WIDTH - MARGIN - widest - 8
    marks = round_steps(max((bar.counts.total for bar in bars), default=0), 6)
    unit = (right - left) / marks[-1]
    first = top + 42
    bottom = first + _ROW * len(bars) + 6
    shapes: list[Shape] = [*heading, *_legend(bars, top)]
    shapes.append(Words(left - 8, first - 4, by, SMALL, "end"))
    shapes += _axis(marks, left, unit, first - 2, bottom, f"number of {what}")
    for at, (bar, label) in enumerate(zip(bars, labels, strict=True)):
        y = first + _ROW * at + (_ROW - _BAR) / 2
        shapes.append(Words(left - 8, y + _BAR - 4, label, TEXT, "end"))
        shapes += _stacked(bar, left, y, unit)
    caption = paragraph(about.caption, MARGIN, bottom + 44, SMALL)
    said = "; ".join(
        f"{label}: {numbers(bar.counts)}" for bar, label in zip(bars, labels, strict=True)
    )
    means = f"{what} by {by}, {' + '.join(WORDS)}: "
    height = caption[-1].y + MARGIN / 2
    return Drawing(WIDTH, height, about.title, means + said, (*shapes, *caption))


def _stacked(bar: Bar, x: float, y: float, unit: float) -> Iterator[Shape]:
    for kind, count in enumerate(bar.counts):
        if count:
            yield from _filled(Box(x, y, count * unit, _BAR), kind)
            x += count * unit
    said = numbers(bar.counts)
    yield Box(x + 4, y, room(said) + 4, _BAR, PAPER)
    yield Words(x + 6, y + _BAR - 4, said)


def _filled(box: Box, kind: int) -> Iterator[Shape]:
    """Solid for certain, hatched for possible, blank for not identified."""
    if kind == 1:
        yield from hatched(box)
    else:
        yield box._replace(fill=PAPER if kind else INK, line=INK)


def _legend(bars: Sequence[Bar], y: float) -> Iterator[Shape]:
    x: float = MARGIN
    for kind, word in enumerate(WORDS):
        if any(bar.counts[kind] for bar in bars):
            yield from _filled(Box(x, y, 24, 12), kind)
            yield Words(x + 30, y + 11, word)
            x += 30 + room(word) + 20


def _axis(
    marks: Sequence[int], left: float, unit: float, top: float, bottom: float, name: str
) -> Iterator[Shape]:
    for mark in marks:
        x = left + mark * unit
        yield Stroke(((x, top), (x, bottom)), SHADE if mark else QUIET)
        yield Words(x, bottom + 15, f"{mark:,}", SMALL, "middle")
    middle = left + marks[-1] * unit / 2
    yield Words(middle, bottom + 33, name, TEXT, "middle")
