"""Choosing one of the treatments of an object."""

from __future__ import annotations

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen

from conservedb.questions.treatment_answers import TreatmentRow, TreatmentsAnswer
from conservedb.tui.text import QUIET, STRONG, joined, plain, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, Lines


class TreatmentsSheet(ModalScreen[str | None]):
    """The treatments of an object, the latest first; answers with a ref."""

    CSS_PATH = "treatments.tcss"
    BINDINGS = [Binding("escape,a", "leave", show=False)]  # noqa: RUF012
    AUTO_FOCUS = "#treatments"

    def __init__(self, answer: TreatmentsAnswer, chosen: str = "") -> None:
        super().__init__()
        self._answer, self._chosen = answer, chosen

    def compose(self) -> ComposeResult:
        """A framed list."""
        with Vertical(id="treatments-sheet") as sheet:
            sheet.border_title = plain(f" Treatments of {self._answer.object} ")
            sheet.border_subtitle = plain(" Enter opens one, Esc leaves ")
            yield Lines("treatments")

    def on_mount(self) -> None:
        """List them, from the one that is shown."""
        items = [Item(row.ref, _drawer(row), 2) for row in self._answer.rows]
        self.query_one(Lines).show_items(items, self._chosen)

    @on(Lines.Chosen, "#treatments")
    def _treatment_chosen(self, event: Lines.Chosen) -> None:
        event.stop()
        self.dismiss(event.key)

    def action_leave(self) -> None:
        """Open none."""
        self.dismiss(None)


def _drawer(row: TreatmentRow) -> Drawer:
    def draw(width: int) -> tuple[Content, ...]:
        left = joined((plain(row.ref, STRONG), plain(row.title)), "  ")
        steps = f"{row.steps} step{'' if row.steps == 1 else 's'}"
        plan = f"plan {row.authorised}"
        return (
            two_ends(left, plain(row.state, QUIET), width),
            two_ends(plain(f"  {plan}", QUIET), plain(steps, QUIET), width),
        )

    return draw
