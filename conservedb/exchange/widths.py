"""How much room text takes, and how it is made to fit."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias
from unicodedata import category, east_asian_width

from conservedb.questions.display import show

_NO_ROOM = ("Mn", "Me", "Cf")
ELLIPSIS = "…"
Width: TypeAlias = Callable[[str], float]


def cells(text: str) -> int:
    """The cells of a terminal that the text takes: wide letters two, accents of others none."""
    return sum(_cells(letter) for letter in text)


def one_line(text: str) -> str:
    """User text as one line: its line breaks are spaces, what a terminal would obey is shown."""
    return " ".join(show(text).split())


def fitted(text: str, room: float, ellipsis: str = ELLIPSIS, width: Width = cells) -> str:
    """User text as one line that fits the room; where it is cut off, an ellipsis says so.

    Args:
        width: how much room a text takes, as the sum of that of its letters.
    """
    line = one_line(text)
    if width(line) <= room:
        return line
    taken, kept = width(ellipsis), ""
    for letter in line:
        taken += width(letter)
        if taken > room:
            break
        kept += letter
    return kept.rstrip() + ellipsis if width(ellipsis) <= room else ""


def padded(text: str, room: int) -> str:
    """The text with spaces behind it up to so many cells."""
    return text + " " * (room - cells(text))


def wrapped(text: str, room: float, width: Width = cells) -> list[str]:
    """User text in lines that fit the room, broken between words where that can be."""
    lines = [""]
    for word in one_line(text).split(" "):
        joined = f"{lines[-1]} {word}" if lines[-1] else word
        if width(joined) <= room:
            lines[-1] = joined
            continue
        if lines[-1]:
            lines.append("")
        for letter in word:
            if width(lines[-1] + letter) > room:
                lines.append("")
            lines[-1] += letter
    return lines


def _cells(letter: str) -> int:
    if category(letter) in _NO_ROOM:
        return 0
    return 2 if east_asian_width(letter) in "WF" else 1
