"""The section: what lies at the selected place, drawn band by band."""

from __future__ import annotations

from textual.events import Resize

from conservedb.questions.answers import Fixing, Layer, PlaceAnswer, Residue, Side
from conservedb.tui.section_drawing import section_items
from conservedb.tui.widgets.lines import Item, Lines


class Section(Lines):
    """Bands of a section in a list; the band under the cursor can be read in full."""

    def __init__(self) -> None:
        super().__init__("section")
        self.answer: PlaceAnswer | None = None
        self.show_gone = False
        self._composed = (0, 0)

    def show_place(self, answer: PlaceAnswer, *, show_gone: bool) -> None:
        """Draw another place, or the same on another day."""
        self.answer, self.show_gone = answer, show_gone
        self._draw_bands()

    def show_facts(self, items: list[Item]) -> None:
        """Show a list that is not a section: what is known of a part."""
        self.answer = None
        self.show_items(items)

    def on_resize(self, event: Resize) -> None:
        """Bands are composed for a width: do it again for another."""
        super().on_resize(event)
        if self.answer is not None and (self.room, self.size.height) != self._composed:
            self._draw_bands()

    @property
    def band(self) -> Layer | Fixing | Side | Residue | None:
        """The record behind the entry under the cursor."""
        if self.current is None or self.answer is None:
            return None
        kind, _, name = self.current.key.partition(":")
        records: dict[str, dict[str, Layer | Fixing | Side | Residue]] = {
            "layer": {one.ref: one for one in self.answer.layers},
            "fixing": {one.component: one for one in self.answer.fixings},
            "residue": {one.ref: one for one in self.answer.residues},
            "side": {one.side: one for one in self.answer.sides},
        }
        return records.get(kind, {}).get(name)

    def _draw_bands(self) -> None:
        if self.answer is None or not self.room:
            return
        self._composed = self.room, self.size.height
        width, height = self.room - 2, self.size.height
        self.show_items(section_items(self.answer, width, height, show_gone=self.show_gone))
