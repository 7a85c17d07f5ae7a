"""What is on record for the letters typed: a short list under the field."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain

from textual.content import Content
from textual.events import Click
from textual.message import Message
from textual.widgets import Static

from conservedb.tui.recording import Completion
from conservedb.tui.text import ACCENT, QUIET, joined, plain, styled
from conservedb.tui.widgets.lines import MARKER

MOST = 7


def is_exact(one: Completion, typed: str) -> bool:
    """Whether the letters are all of its name."""
    names = (one.text.casefold(), one.label.casefold())
    return one.exact or (not one.near and typed.strip().casefold() in names)


class Found(Static):
    """At most seven in view, near misses last; one may be marked."""

    DEFAULT_CSS = "Found { height: auto; display: none; background: $resting; padding: 0 1; }"

    class Clicked(Message):
        """One of them was clicked, and is marked now."""

    def __init__(self) -> None:
        super().__init__()
        self.found: tuple[Completion, ...] = ()
        self.at = -1
        self._lines: list[int] = []

    @property
    def marked(self) -> Completion | None:
        """The one that is marked."""
        return self.found[self.at] if 0 <= self.at < len(self.found) else None

    def show_found(self, found: Sequence[Completion], typed: str, taken: str = "") -> None:
        """Show these; what is exactly what was typed is marked, else what Enter would take."""
        self.found = tuple(sorted(found, key=lambda one: one.near))
        exact = (at for at, one in enumerate(self.found) if is_exact(one, typed))
        fitting = (at for at, one in enumerate(self.found) if taken and one.text == taken)
        self.at = next(chain(exact, fitting), -1)
        self._draw()

    def hide(self) -> None:
        """Nothing to show."""
        self.show_found((), "")

    def move(self, by: int) -> None:
        """Mark another; above the first, none."""
        self.at = min(max(self.at + by, -1), len(self.found) - 1)
        self._draw()

    def on_click(self, event: Click) -> None:
        """Mark what was clicked."""
        index = self._lines[event.y] if event.y < len(self._lines) else -1
        if index >= 0:
            self.at = index
            self.post_message(self.Clicked())

    def _draw(self) -> None:
        self.display = bool(self.found)
        first = min(max(self.at - MOST + 1, 0), max(len(self.found) - MOST, 0))
        lines: list[Content] = []
        self._lines = []
        for index, one in enumerate(self.found[first : first + MOST], first):
            if one.near and (index == first or not self.found[index - 1].near):
                lines.append(styled("did you mean", QUIET))
                self._lines.append(-1)
            self._lines.append(index)
            here = index == self.at
            mark = plain(f"{MARKER} " if here else "  ", ACCENT)
            lines.append(joined((mark, plain(one.label, "bold" if here else ""))))
        left = len(self.found) - first - MOST
        if left > 0:
            lines.append(plain(f"  and {left} more: Down", QUIET))
        self.update(joined(lines, "\n"))
