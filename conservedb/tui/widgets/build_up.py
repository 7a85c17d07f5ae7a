"""The drawing of what lies around the target, and what the option under the cursor does to it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.events import Resize

from conservedb.tui.removal_drawing import build_up_items, target_line
from conservedb.tui.widgets.lines import Lines

if TYPE_CHECKING:
    from conservedb.knowledge.plan import Option
    from conservedb.questions.removal_answers import RemovalAnswer


class BuildUp(Lines):
    """One line a band; it follows the target where there are more than fit."""

    def __init__(self) -> None:
        super().__init__("build-up", marked=False)
        self._answer: RemovalAnswer | None = None
        self._option: Option | None = None

    def show_option(self, answer: RemovalAnswer, option: Option | None) -> None:
        """Show what another option does."""
        self._answer, self._option = answer, option
        self._draw_bands()

    def on_resize(self, event: Resize) -> None:
        """Bands are composed for a width."""
        super().on_resize(event)
        self._draw_bands()

    def _draw_bands(self) -> None:
        if self._answer is None or not self.room:
            return
        seen_from = self.scroll_y
        items = build_up_items(self._answer, self._option, max(self.room - 2, 1))
        self.show_items(items)
        self.scroll_to(y=seen_from, animate=False)
        self.call_after_refresh(self._follow, target_line(items))

    def _follow(self, line: int) -> None:
        """Bring the target into view."""
        height = self.size.height
        if not self.scroll_y <= line < self.scroll_y + height:
            self.scroll_to(y=max(line - height // 2, 0), animate=False)
