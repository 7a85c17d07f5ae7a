"""The list of a removal plan: ranked options in groups, and what stands above and below them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from conservedb.tui.plan_rows import Rows, first_entry, plan_rows
from conservedb.tui.widgets.told import Told

if TYPE_CHECKING:
    from conservedb.knowledge.plan import Option
    from conservedb.questions.removal_answers import RemovalAnswer


class Options(Told["RemovalAnswer", Rows]):
    """Every entry can be read in full; those of options say what they would do."""

    def __init__(self) -> None:
        super().__init__("options")

    def compose_rows(self, answer: RemovalAnswer, width: int) -> Rows:
        """See `Told`."""
        return plan_rows(answer, width)

    def show_plan(self, answer: RemovalAnswer) -> None:
        """Show another plan, from its best option unless the one under the cursor is in it."""
        before = self.current.key if self.current else ""
        self.show_answer(answer)
        if self.rows is not None and before not in self.rows.options:
            self.show_items(self.rows.items, first_entry(self.rows, answer.plan))
            self.scroll_to(y=0, animate=False)

    @property
    def option(self) -> Option | None:
        """The option under the cursor."""
        return (
            self.rows.options.get(self.current.key if self.current else "") if self.rows else None
        )
