"""Choosing a layer of a location."""

from __future__ import annotations

from collections.abc import Sequence

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen

from conservedb.questions.removal_answers import Choice
from conservedb.tui import wording
from conservedb.tui.text import QUIET, STRONG, UNSURE, joined, plain, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, Lines


class LayerSheet(ModalScreen[str | None]):
    """The layers that the question could be asked about; answers with a ref."""

    CSS_PATH = "layers.tcss"
    BINDINGS = [Binding("escape,c", "leave", show=False)]  # noqa: RUF012
    AUTO_FOCUS = "#layers"

    def __init__(self, place: str, choices: Sequence[Choice], chosen: str) -> None:
        super().__init__()
        self._place, self._choices, self._chosen = place, choices, chosen

    def compose(self) -> ComposeResult:
        """A framed list."""
        with Vertical(id="layer-sheet") as sheet:
            sheet.border_title = plain(f" Layers at {self._place} ")
            sheet.border_subtitle = plain(" Enter asks about one, Esc leaves ")
            yield Lines("layers")

    def on_mount(self) -> None:
        """List them, from the one that is shown."""
        items = [Item(one.layer, _drawer(one)) for one in self._choices]
        self.query_one(Lines).show_items(items, self._chosen)

    @on(Lines.Chosen, "#layers")
    def _layer_chosen(self, event: Lines.Chosen) -> None:
        event.stop()
        self.dismiss(event.key)

    def action_leave(self) -> None:
        """Stay with the layer that is shown."""
        self.dismiss(None)


def _drawer(one: Choice) -> Drawer:
    def draw(width: int) -> tuple[Content]:
        left = joined((plain(one.layer, STRONG), plain(one.name), plain(one.zone, QUIET)), "  ")
        doubt = one.state != "present"
        return (two_ends(left, plain(wording.state_word(one.state), UNSURE * doubt), width),)

    return draw
