"""The layout of survival by age as a picture: a curve as recorded, and one as last seen.

Between the two lines of a curve lies what the dates leave open. Behind them lie the widest limits:
from what is there for certain to what can be there, without any estimate; below the axis the same
in numbers, and how many layers are still followed. Where those are few the curve is thin.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise
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
from conservedb.knowledge.survival import FEW, YEAR, Between, Curve, days

_HEIGHT = 300
_LEFT = 150
_RIGHT = WIDTH - MARGIN - 16
_CENSORED = 4
_BAND, _WIDEST, _EDGE = "#c3cfdb", "#ededed", "#8a8a8a"
_THICK, _THIN = 2, 0.75
_COUNTED = ("still followed", "there for certain", "ended for certain", "not known")


class _Scale(NamedTuple):
    """Where ages and shares lie in the picture."""

    top: float
    years: int

    def x(self, day: float) -> float:
        return _LEFT + (_RIGHT - _LEFT) * min(day / YEAR / self.years, 1.0)

    def y(self, share: float) -> float:
        return self.top + _HEIGHT * (1 - share)

    def day(self, x: float) -> int:
        return int((x - _LEFT) / (_RIGHT - _LEFT) * self.years * YEAR)


def curve_picture(recorded: Curve, seen: Curve, about: About) -> Drawing:
    """The estimate as recorded, hatched where it is open, and as last seen, in dashes."""
    heading = paragraph([about.title], MARGIN, MARGIN / 2, TITLE)
    legend = _legend(recorded, seen, heading[-1].y + 24)
    marks = round_steps(recorded.horizon / YEAR, 8)
    scale = _Scale(max(shape.y for shape in legend if isinstance(shape, Words)) + 38, marks[-1])
    limits, edges = _limits(recorded, scale)
    shapes: list[Shape] = [*heading, *legend, *limits]
    shapes += _band(recorded, scale)
    shapes += edges
    shapes += _axes(marks, scale)
    shapes += _open(recorded, scale)
    shapes += _drawn(recorded, scale)
    shapes += _drawn(seen, scale, in_dashes=True)
    shapes += _still_followed(recorded, scale)
    shapes += _counted(recorded, marks, scale)
    bottom = scale.top + _HEIGHT + 44 + 16 * len(_COUNTED)
    caption = paragraph(about.caption, MARGIN, bottom + 8, SMALL)
    height = caption[-1].y + MARGIN / 2
    said = _said(recorded, marks)
    return Drawing(WIDTH, height, about.title, said, (*shapes, *caption))


def _limits(curve: Curve, scale: _Scale) -> tuple[list[Box], tuple[Stroke, Stroke]]:
    """From what is there for certain to what can be there, as far as the axis goes; its edges."""
    boxes: list[Box] = []
    top: list[Point] = []
    bottom: list[Point] = []
    for between, columns in groupby(range(_LEFT, _RIGHT), lambda x: _between(curve, scale, x)):
        xs = list(columns)
        left, right = xs[0], xs[-1] + 1
        high, low = scale.y(between.high), scale.y(between.low)
        boxes.append(Box(left, high, right - left, low - high, _WIDEST))
        top += [(left, high), (right, high)]
        bottom += [(left, low), (right, low)]
    return boxes, (Stroke(tuple(top), _EDGE, _THIN), Stroke(tuple(bottom), _EDGE, _THIN))


def _between(curve: Curve, scale: _Scale, x: int) -> Between:
    """The widest limits within a column of the picture; both only fall."""
    first, last = curve.standing(scale.day(x)).share, curve.standing(scale.day(x + 1)).share
    return Between(last.low, first.high)


def _drawn(curve: Curve, scale: _Scale, *, in_dashes: bool = False) -> Iterator[Shape]:
    """The lines of a curve, thin from where on few are followed."""
    for line in dict.fromkeys(_lines(curve, scale)):
        thick, thin = _apart(line, scale.x(curve.few_from))
        for part, width in ((thick, _THICK), (thin, _THIN)):
            if in_dashes:
                yield from dashed(part, QUIET, min(width, 1.5))
            elif len(part) > 1:
                yield Stroke(part, INK, width)


def _apart(line: Sequence[Point], x: float) -> tuple[tuple[Point, ...], tuple[Point, ...]]:
    """A line of level steps up to an x, and from there on."""
    before = tuple(point for point in line if point[0] <= x)
    after = tuple(point for point in line if point[0] > x)
    if not (before and after):
        return before, after
    between = (x, before[-1][1])
    return (*before, between), (between, *after)


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


def _legend(recorded: Curve, seen: Curve, y: float) -> list[Shape]:
    found: list[Shape] = []
    x: float = MARGIN
    for word, sample in _samples(recorded, seen):
        wide = 30 + room(word)
        if x + wide > WIDTH - MARGIN:
            x, y = MARGIN, y + 20
        found += (_moved(shape, x, y) for shape in sample)
        found.append(Words(x + 30, y + 11, word))
        x += wide + 16
    return found


def _samples(recorded: Curve, seen: Curve) -> Iterator[tuple[str, list[Shape]]]:
    """What the signs of the picture mean, each with how it looks at the origin."""
    level: tuple[Point, ...] = ((0, 6), (24, 6))
    yield "as recorded", [Stroke(level, INK, _THICK)]
    if any(curve.few_from < curve.horizon for curve in (recorded, seen)):
        yield f"fewer than {FEW} followed", [Stroke(level, INK, _THIN)]
    if recorded.exact:
        yield "95 % band", [Box(0, 0, 24, 12, _BAND)]
    else:
        yield "left open by the dates", list(hatched(Box(0, 0, 24, 12)))
    yield "as last seen", list(dashed(level, QUIET))
    yield "followed so far", [Stroke(((12, 2), (12, 10)), INK, 1)]
    edges: list[Shape] = [Stroke(((0, y), (24, y)), _EDGE, _THIN) for y in (0, 12)]
    yield "widest limits", [Box(0, 0, 24, 12, _WIDEST), *edges]


def _moved(shape: Shape, right: float, down: float) -> Shape:
    if isinstance(shape, Stroke):
        return shape._replace(points=tuple((x + right, y + down) for x, y in shape.points))
    return shape._replace(x=shape.x + right, y=shape.y + down)


def _counted(curve: Curve, marks: Sequence[int], scale: _Scale) -> Iterator[Shape]:
    y = scale.y(0) + 56
    for row, word in enumerate(_COUNTED):
        yield Words(_LEFT - 24, y + 16 * row, word, SMALL, "end")
        for mark in marks:
            numbers = (curve.followed(days(mark)), *curve.standing(days(mark)))
            yield Words(scale.x(mark * YEAR), y + 16 * row, f"{numbers[row]:,}", SMALL, "middle")


def _said(curve: Curve, marks: Sequence[int]) -> str:
    said = []
    for years in marks:
        day = days(years)
        if day <= curve.horizon:
            low, high = curve.at(day)
            share = f"{high:.0%}" if high - low < 0.005 else f"{low:.0%} to {high:.0%}"
            widest = curve.standing(day).share
            said.append(
                f"{years} years: {share}, within the widest limits {widest.low:.0%} to"
                f" {widest.high:.0%}, {curve.followed(day)} followed"
            )
    return f"still there as recorded, by age: {'; '.join(said)}"
