"""Pictures of an answer: one layout of plain shapes, written as SVG or as PNG.

What is certain is solid and what is possible is hatched, so that a picture reads in grey. Text is
data: it is placed, never interpreted. A picture that is there is never written over.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache, partial
from itertools import pairwise
from pathlib import Path
from typing import NamedTuple, TypeAlias

import conservedb
from conservedb.exchange.new_files import new_file
from conservedb.exchange.widths import cells, wrapped
from conservedb.store.problems import DatabaseProblem

Point: TypeAlias = tuple[float, float]
WIDTH = 800
MARGIN = 24
TITLE, TEXT, SMALL = 18, 13, 11
"""Sizes of letters, in the unit of the picture."""
INK, QUIET, PAPER, SHADE = "#1f3b57", "#555555", "#ffffff", "#d9d9d9"
_WIDTHS = (("ijl.,:;'|!()[]/\\ tfrI", 0.42), ("mMwW@%&—…œæŒÆ+=<>~^#", 1.0))
"""How wide letters are that are narrow or wide, in their size; capitals and others below."""
_HATCH, _DASH = 6.0, 5.0


class Box(NamedTuple):
    """A rectangle; `fill` and `line` are colours, "" for none."""

    x: float
    y: float
    width: float
    height: float
    fill: str = ""
    line: str = ""


class Stroke(NamedTuple):
    """A line through points."""

    points: tuple[Point, ...]
    colour: str = INK
    width: float = 1


class Words(NamedTuple):
    """Text on one line, at its baseline: its start, middle or end lies at x."""

    x: float
    y: float
    text: str
    size: int = TEXT
    anchor: str = "start"
    colour: str = "#000000"


Shape: TypeAlias = Box | Stroke | Words


@dataclass(frozen=True, slots=True)
class Drawing:
    """A picture: its size, what it shows in words, and its shapes in the order of painting."""

    width: float
    height: float
    title: str
    description: str
    shapes: tuple[Shape, ...]


@dataclass(frozen=True, slots=True)
class About:
    """What stands around a chart: title, the question, the day it was asked for, and remarks."""

    title: str
    question: str
    day: str
    remarks: tuple[str, ...] = ()

    @property
    def caption(self) -> tuple[str, ...]:
        """The lines below the chart."""
        by = f"As on record {self.day}; conservedb {conservedb.__version__}."
        return (*([f"Question: {self.question}"] if self.question else []), *self.remarks, by)


def write_picture(drawing: Drawing, path: Path) -> None:
    """Write a picture as the kind that its name ends with: beside the file, then renamed.

    Raises:
        DatabaseProblem: the name ends otherwise, there is such a file, or it cannot be written.
    """
    made = _writer(path)(drawing)
    with new_file(path) as partial, partial.open("xb") as file:
        file.write(made)
        file.flush()
        os.fsync(file.fileno())


def _writer(path: Path) -> Callable[[Drawing], bytes]:
    match path.suffix.lower():
        case ".svg":
            from conservedb.exchange.pictures_svg import svg

            return svg
        case ".png":
            from conservedb.exchange.pictures_png import png

            return png
    raise DatabaseProblem(f"{path.name} is no name of a picture; end it with .svg or .png")


def room(text: str, size: int = TEXT) -> float:
    """The room that a text takes in letters of a size, in a wide face rather than a narrow one."""
    return size * sum(map(_letter, text))


@lru_cache(maxsize=4096)
def _letter(letter: str) -> float:
    if cells(letter) != 1:
        return cells(letter)
    for letters, width in _WIDTHS:
        if letter in letters:
            return width
    return 0.8 if letter.isupper() else 0.64


def paragraph(lines: Iterable[str], x: float, y: float, size: int = TEXT) -> list[Words]:
    """Texts below each other, wrapped at the right margin; the first line lies below y."""
    found: list[Words] = []
    for line in lines:
        for part in wrapped(line, WIDTH - MARGIN - x, partial(room, size=size)):
            found.append(Words(x, y + size * 1.4 * (len(found) + 1), part, size))
    return found


def hatched(box: Box) -> Iterator[Shape]:
    """A rectangle filled with slanting lines, and its outline."""
    right, bottom = box.x + box.width, box.y + box.height
    along = _HATCH / 2
    while along < box.width + box.height:
        start = (box.x + min(along, box.width), box.y + max(along - box.width, 0.0))
        end = (box.x + max(along - box.height, 0.0), box.y + min(along, box.height))
        yield Stroke((start, end), INK)
        along += _HATCH
    outline = ((box.x, box.y), (right, box.y), (right, bottom), (box.x, bottom), (box.x, box.y))
    yield Stroke(outline, INK)


def dashed(points: Sequence[Point], colour: str = INK, width: float = 1.5) -> Iterator[Stroke]:
    """A line of dashes through points of which each lies to the right of the last or below it.

    Where two lines lie on each other their dashes do too.
    """
    for (x, y), (to_x, to_y) in pairwise(points):
        start, end = x + y, to_x + to_y
        for dash in range(int(start // _DASH), int(end // _DASH) + 1):
            first, last = max(dash * _DASH, start), min((dash + 1) * _DASH, end)
            if dash % 2 or last <= first:
                continue
            along = [(at - start) / (end - start) for at in (first, last)]
            ends = tuple((x + (to_x - x) * at, y + (to_y - y) * at) for at in along)
            yield Stroke(ends, colour, width)
