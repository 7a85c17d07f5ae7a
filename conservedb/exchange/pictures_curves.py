"""The layout of survival by age as a picture: a curve as recorded, and one as last seen.

Between the two lines of a curve lies what the dates leave open. Below the axis stands what is
certain of the layers themselves, without any estimate.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from conservedb.exchange.pictures import (
    INK,
    MARGIN,
    QUIET,
    SHADE,
    SMALL,
    TEXT,
    TITLE,
    WIDTH,
    About,
    Box,
    Drawing,
    Point,
    Shape,
    Stroke,
    Words,
    dashed,
    hatched,
    paragraph,
    room,
)
from conservedb.knowledge.scales import round_steps
from conservedb.knowledge.survival import YEAR, Curve, days

_HEIGHT = 300
_LEFT = 150
_RIGHT = WIDTH - MARGIN - 16
_CENSORED = 4
_BAND = "#c8d3de"
_COUNTED = ("there for certain", "ended for certain", "not known")


class _Scale(NamedTuple):
    """Where ages and shares lie in the picture."""

    top: float
    years: int

    def x(self, day: float) -> float:
        return _LEFT + (_RIGHT - _LEFT) * min(day / YEAR / self.years, 1.0)

    def y(self, share: float) -> float:
        return self.top + _HEIGHT * (1 - share)


def curve_picture(recorded: Curve, seen: Curve, about: About) -> Drawing:
    """The estimate as recorded, hatched where it is open, and as last seen, in dashes."""
    heading = paragraph([about.title], MARGIN, MARGIN / 2, TITLE)
    top = heading[-1].y + 24
    marks = round_steps(recorded.horizon / YEAR, 8)
    scale = _Scale(top + 48, marks[-1])
    shapes: list[Shape] = list(heading)
    shapes += _band(recorded, scale)
    shapes += _axes(marks, scale)
    shapes += _open(recorded, scale)
    for line in _lines(recorded, scale):
        shapes.append(Stroke(line, INK, 2))
    for line in dict.fromkeys(_lines(seen, scale)):
        shapes += dashed(line, QUIET)
    shapes += _still_followed(recorded, scale)
    shapes += _legend(recorded, top)
    shapes += _counted(recorded, marks, scale)
    bottom = scale.top + _HEIGHT + 44 + 16 * len(_COUNTED)
    caption = paragraph(about.caption, MARGIN, bottom + 8, SMALL)
    height = caption[-1].y + MARGIN / 2
    said = _said(recorded, marks)
    return Drawing(WIDTH, height, about.title, said, (*shapes, *caption))


def _axes(marks: Sequence[int], scale: _Scale) -> Iterator[Shape]:
    bottom = scale.y(0)
    for percent in range(0, 101, 20):
        y = scale.y(percent / 100)
        yield Stroke(((_LEFT, y), (_RIGHT, y)), SHADE if percent else QUIET)
        yield Words(_LEFT - 8, y + 4, f"{percent} %", SMALL, "end")
    for mark in marks:
        x = scale.x(mark * YEAR)
        yield Stroke(((x, bottom), (x, bottom + 4)), QUIET)
        yield Words(x, bottom + 17, str(mark), SMALL, "middle")
    yield Stroke(((_LEFT, scale.top), (_LEFT, bottom)), QUIET)
    yield Words(_LEFT - 8, scale.top - 12, "still there", SMALL, "end")
    yield Words((_LEFT + _RIGHT) / 2, bottom + 34, "age in years", TEXT, "middle")


def _lines(curve: Curve, scale: _Scale) -> tuple[tuple[Point, ...], tuple[Point, ...]]:
    """The most and the least that may still be there, as steps, up to the last age known."""
    highest, lowest = [(0, 1.0)], [(0, 1.0)]
    for jump in curve.jumps:
        if jump.last <= curve.horizon:
            highest.append((jump.last, curve.at(jump.last).high))
        if jump.first <= curve.horizon:
            lowest.append((jump.first, curve.at(jump.first).low))
    return _steps(highest, curve, scale), _steps(lowest, curve, scale)


def _steps(falls: list[tuple[int, float]], curve: Curve, scale: _Scale) -> tuple[Point, ...]:
    points: list[Point] = []
    share = 1.0
    for day, left in falls:
        points += [(scale.x(day), scale.y(share)), (scale.x(day), scale.y(left))]
        share = left
    points.append((scale.x(curve.horizon), scale.y(share)))
    return tuple(dict.fromkeys(points))


def _edges(curve: Curve) -> list[tuple[int, int]]:
    """Spans of ages within which the estimate does not change, up to the last age known."""
    ends = {0, curve.horizon} | {day for jump in curve.jumps for day in jump[:2]}
    days_in_order = sorted(day for day in ends if day <= curve.horizon)
    return list(pairwise(days_in_order))


def _open(curve: Curve, scale: _Scale) -> Iterator[Shape]:
    """Hatching between the most and the least that may still be there."""
    for first, last in _edges(curve):
        low, high = curve.at(first)
        if high > low:
            x, y = scale.x(first), scale.y(high)
            yield from hatched(Box(x, y, scale.x(last) - x, scale.y(low) - y))


def _band(curve: Curve, scale: _Scale) -> Iterator[Shape]:
    for first, last in _edges(curve):
        band = curve.band(first)
        if band is not None:
            x, y = scale.x(first), scale.y(band.high)
            yield Box(x, y, scale.x(last) - x, scale.y(band.low) - y, _BAND)


def _still_followed(curve: Curve, scale: _Scale) -> Iterator[Shape]:
    """A mark on the curve at the age up to which each that may be there still was followed."""
    for day in sorted({max(one.low - 1, 0) for one in curve.ages if not one.ended}):
        x, y = scale.x(day), scale.y(curve.at(day).high)
        yield Stroke(((x, y - _CENSORED), (x, y + _CENSORED)), INK, 1)


def _legend(curve: Curve, y: float) -> Iterator[Shape]:
    x: float = MARGIN
    middle = y + 6
    entries: list[tuple[str, list[Shape]]] = [
        ("as recorded", [Stroke(((0, middle), (24, middle)), INK, 2)]),
        ("as last seen", list(dashed(((0, middle), (24, middle)), QUIET))),
        ("followed so far", [Stroke(((12, y + 2), (12, y + 10)), INK, 1)]),
    ]
    if curve.exact:
        entries.insert(1, ("95 % band", [Box(0, y, 24, 12, _BAND)]))
    else:
        entries.insert(1, ("left open by the dates", list(hatched(Box(0, y, 24, 12)))))
    for word, sample in entries:
        yield from (_moved(shape, x) for shape in sample)
        yield Words(x + 30, y + 11, word)
        x += 30 + room(word) + 16


def _moved(shape: Shape, by: float) -> Shape:
    if isinstance(shape, Stroke):
        return shape._replace(points=tuple((x + by, y) for x, y in shape.points))
    return shape._replace(x=shape.x + by)


def _counted(curve: Curve, marks: Sequence[int], scale: _Scale) -> Iterator[Shape]:
    y = scale.y(0) + 56
    for row, word in enumerate(_COUNTED):
        yield Words(_LEFT - 24, y + 16 * row, word, SMALL, "end")
        for mark in marks:
            number = curve.standing(days(mark))[row]
            yield Words(scale.x(mark * YEAR), y + 16 * row, f"{number:,}", SMALL, "middle")


def _said(curve: Curve, marks: Sequence[int]) -> str:
    ages = [mark for mark in marks if days(mark) <= curve.horizon]
    said = []
    for years in ages:
        low, high = curve.at(days(years))
        share = f"{high:.0%}" if high - low < 0.005 else f"{low:.0%} to {high:.0%}"
        said.append(f"{years} years: {share}")
    return f"still there as recorded, by age: {'; '.join(said)}"
