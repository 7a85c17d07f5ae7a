"""What is selected in the tree: a title, one sentence, and the section or a list."""

from __future__ import annotations

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.containers import Vertical
from textual.widgets import Static

from conservedb.questions.answers import ObjectAnswer, PlaceAnswer
from conservedb.tui.part_items import object_items, object_sentence, part_items, part_sentence
from conservedb.tui.part_rows import Row
from conservedb.tui.text import plain, prose
from conservedb.tui.widgets.section import Section


class Selected(Vertical):
    """A location with its section; a part with what is on it; the object with its worries."""

    def __init__(self) -> None:
        super().__init__(id="selected", classes="panel")

    def compose(self) -> ComposeResult:
        """A sentence over the section."""
        yield Static(id="summary")
        yield Section()

    @property
    def section(self) -> Section:
        """The list below the sentence."""
        return self.query_one(Section)

    def show_place(self, place: PlaceAnswer, *, show_gone: bool) -> None:
        """Draw a location."""
        sides = " | ".join(f"{side.component} {side.name}".strip() for side in place.sides)
        if place.kind == "joint":
            self._head(f"{place.place}  joint: {sides}", place.summary)
        else:
            name = f"{place.kind}: {place.name}" if place.name else place.kind
            self._head(f"{place.place}  {name}", place.summary)
        self.section.show_place(place, show_gone=show_gone)

    def show_row(self, answer: ObjectAnswer, rows: Sequence[Row], row: Row) -> None:
        """List a part, or the object as a whole."""
        part = next((one for one in answer.components if one.mark == row.mark), None)
        if part is None:
            self._head("Whole object", object_sentence(answer))
            self.section.show_facts(object_items(answer, rows))
        else:
            self._head(f"{part.mark}  {part.name}".strip(), part_sentence(part))
            self.section.show_facts(part_items(rows, row))

    def show_trouble(self, sentence: str) -> None:
        """Say why there is nothing to show."""
        self._head("No answer", f"{sentence}. Esc goes back to the start.")

    def _head(self, title: str, sentence: str) -> None:
        self.border_title = plain(f" {title} ")
        self.query_one("#summary", Static).update(prose(sentence))
