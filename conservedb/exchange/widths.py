"""How much room text takes, in the cells of a terminal or as many digits in a picture."""

from __future__ import annotations

from unicodedata import category, east_asian_width

from conservedb.questions.display import show

_NO_ROOM = ("Mn", "Me", "Cf")
ELLIPSIS = "…"


def cells(text: str) -> int:
    """The cells of a terminal that the text takes: wide letters two, accents of others none."""
    return sum(_cells(letter) for letter in text)


def one_line(text: str) -> str:
    """User text as one line: its line breaks are spaces, what a terminal would obey is shown."""
    return " ".join(show(text).split())


def fitted(text: str, room: int, ellipsis: str = ELLIPSIS) -> str:
    """User text as one line of at most so many cells; where it is cut off, an ellipsis says so."""
    line = one_line(text)
    if cells(line) <= room:
        return line
    taken, kept = 0, ""
    for letter in line:
        taken += _cells(letter)
        if taken > room - cells(ellipsis):
            break
        kept += letter
    return (kept.rstrip() + ellipsis)[: max(room, 0)]


def padded(text: str, room: int) -> str:
    """The text with spaces behind it up to so many cells."""
    return text + " " * (room - cells(text))


def _cells(letter: str) -> int:
    if category(letter) in _NO_ROOM:
        return 0
    return 2 if east_asian_width(letter) in "WF" else 1


def wrapped(text: str, room: int) -> list[str]:
    """User text in lines of at most so many cells, broken between words where that can be."""
    lines = [""]
    for word in one_line(text).split(" "):
        joined = f"{lines[-1]} {word}" if lines[-1] else word
        if cells(joined) <= room:
            lines[-1] = joined
            continue
        if lines[-1]:
            lines.append("")
        for letter in word:
            if cells(lines[-1] + letter) > room:
                lines.append("")
            lines[-1] += letter
    return lines
