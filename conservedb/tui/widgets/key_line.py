"""The line of keys at the foot of a screen; messages take its place for a while."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from textual.app import RenderResult
from textual.content import Content
from textual.events import Click
from textual.widget import Widget

from conservedb.tui.actions import GAP, key_line
from conservedb.tui.text import QUIET, WARNING, joined, plain

SECONDS = 6.0


class Shown(NamedTuple):
    """A key as it is written on the screen, what it does in a word, and the action that is."""

    shown: str
    label: str
    target: str


class KeyLine(Widget):
    """As many keys as have room; each can be clicked. A message is shown in their stead.

    Args:
        where: the screen; its actions are shown.
        keys: what is shown for a sheet, which is laid over a screen and has keys of its own.
    """

    DEFAULT_CSS = "KeyLine { height: 1; dock: bottom; background: $background; }"

    def __init__(self, where: str = "", keys: Sequence[Shown] = ()) -> None:
        super().__init__(id="key-line")
        self._where, self._keys = where, keys
        self._message, self._ink = "", WARNING
        self._hides = 0

    def tell(self, message: str, ink: str = WARNING) -> None:
        """Show a sentence until the next key, or for a few seconds.

        What was done is told in a calmer ink.
        """
        self._message, self._ink = message, ink
        self._hides += 1
        turn = self._hides
        self.refresh()
        self.set_timer(SECONDS, lambda: self._clear(turn))

    def clear(self) -> None:
        """Show the keys again."""
        if self._message:
            self._message = ""
            self.refresh()

    def _clear(self, turn: int) -> None:
        if turn == self._hides:
            self.clear()

    def render(self) -> RenderResult:
        """The message, or the keys."""
        if self._message:
            return joined((Content(" "), plain(self._message, self._ink))).truncate(
                self.size.width, ellipsis=True
            )
        parts = [
            joined((plain(action.shown, "bold $marked"), plain(action.label, QUIET)), " ")
            for action in self._shown
        ]
        return joined((Content(" "), joined(parts, " " * GAP)))

    @property
    def _shown(self) -> Sequence[Shown]:
        listed = key_line(self._where, self.size.width) if not self._keys else ()
        return self._keys or [Shown(one.shown, one.label, one.target) for one in listed]

    def on_click(self, event: Click) -> None:
        """Use the key that was clicked."""
        column = 1
        for action in self._shown:
            width = len(action.shown) + 1 + len(action.label)
            if column <= event.x < column + width:
                self.call_later(self.screen.run_action, action.target)
                return
            column += width + GAP
