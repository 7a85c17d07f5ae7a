"""The only way in which text typed by people reaches the screen: as data, never as markup."""

from __future__ import annotations

from collections.abc import Iterable

from textual.content import Content

from conservedb.questions.display import show

QUIET = "$quiet"
STRONG = "bold"
WARNING = "$hazard"
UNSURE = "$unsure"
CERTAIN = ""  # calm: only what is out of the ordinary has a colour
ACCENT = "$marked"

LONGEST_LINE = 600
_ONE_LINE = {ord("\n"): "⏎ ", ord("\t"): " "}


def plain(text: str, style: str = "") -> Content:
    """Text as one line of content: unprintable characters become visible signs.

    What is longer than any screen is wide is cut off; `prose` keeps all of it.
    """
    if len(text) > LONGEST_LINE:
        text = f"{text[:LONGEST_LINE]}…"
    return styled(show(text).translate(_ONE_LINE), style)


def prose(text: str, style: str = "") -> Content:
    """Text that may run over several lines; its own line breaks are kept."""
    return styled(show(text), style)


def styled(text: str, style: str = "") -> Content:
    """Content of one style. For words of the program itself; user text goes through `plain`."""
    return Content.styled(text, style) if style else Content(text)


def joined(parts: Iterable[Content], between: str = "") -> Content:
    """Pieces of content one after the other; empty ones leave no gap."""
    return Content(between).join([part for part in parts if part.plain])


def two_ends(left: Content, right: Content, width: int, *, least: int = 8) -> Content:
    """One line with something at each end; the left end is shortened first."""
    room = max(width - right.cell_length - 2, min(least, width))
    start = left.truncate(room, ellipsis=True)
    gap = max(width - start.cell_length - right.cell_length, 2)
    return joined((start, Content(" " * gap), right)).truncate(width, ellipsis=True)
