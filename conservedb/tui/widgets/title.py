"""Two lines that are always in view: what the screen is about, and the day."""

from __future__ import annotations

from textual.app import RenderResult
from textual.content import Content
from textual.widget import Widget

from conservedb.tui.text import QUIET, STRONG, plain, styled, two_ends
from conservedb.tui.you import with_you


class Title(Widget):
    """Something at each end of each line; the left ends give way first.

    Where it is `signed`, who is at the keyboard stands in the first line.
    """

    DEFAULT_CSS = """
    Title { height: 2; padding: 0 1; background: $surface; }
    """

    def __init__(self, name: str, *, signed: bool = True) -> None:
        super().__init__(id="title")
        self._signed = signed
        self._lines: tuple[tuple[Content, Content], ...] = (
            (plain(name, STRONG), styled("reading ...", QUIET)),
        )

    def show(self, *lines: tuple[Content, Content]) -> None:
        """Show other words, the left and the right end of each line."""
        self._lines = lines
        self.refresh()

    def render(self) -> RenderResult:
        """Two lines."""
        width = self.size.width
        (left, right), *others = self._lines
        if self._signed:
            right = with_you(self.app, right)
        drawn = [two_ends(*ends, width) for ends in ((left, right), *others)]
        return Content("\n").join(drawn)
