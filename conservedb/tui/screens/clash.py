"""Somebody else changed the record meanwhile: field by field, mine or theirs."""

from __future__ import annotations

from collections.abc import Sequence

from textual.content import Content

from conservedb.tui.recording import Clash, Field
from conservedb.tui.screens.entry_sheet import Answers, Block, EntrySheet
from conservedb.tui.text import QUIET, STRONG, joined, plain, prose
from conservedb.tui.widgets.form_row import FieldRow

MINE, THEIRS, EDITED = "mine", "theirs", "edited"
FOOT = "m mine, t theirs, e edit; Enter on the last saves; Esc goes back"


class ClashSheet(EntrySheet):
    """Answers with the value chosen for each field."""

    NEEDED = "choose: m keeps mine, t takes theirs, e edits"

    def __init__(self, clashes: Sequence[Clash]) -> None:
        super().__init__("Changed by somebody else meanwhile", [_block(c) for c in clashes], FOOT)
        self._clashes = clashes

    def on_mount(self) -> None:
        """Lines to edit in come with the choice."""
        for clash in self._clashes:
            self._edited(clash).display = False

    def changed(self, row: FieldRow) -> None:
        """Editing is chosen, or no longer."""
        super().changed(row)
        clash = next((one for one in self._clashes if one.field == row.field.name), None)
        if clash is None:
            return
        edited = self._edited(clash)
        edited.display = row.value == EDITED
        if edited.display:
            self.go(edited)

    def answers(self) -> Answers:
        """Field to the value chosen."""
        values = self.values()
        return {
            one.field: {MINE: one.mine, THEIRS: one.theirs}.get(
                values[one.field], values[_edit(one)]
            )
            for one in self._clashes
        }

    def _edited(self, clash: Clash) -> FieldRow:
        row = self.row(_edit(clash))
        assert row is not None
        return row


def _edit(clash: Clash) -> str:
    return f"edit {clash.field}"


def _block(clash: Clash) -> Block:
    words = [
        joined((plain(clash.label, STRONG), plain(f"{clash.by}, {clash.at}", QUIET)), "  "),
        _value("as I saw it", clash.shown),
        _value(MINE, clash.mine),
        _value(THEIRS, clash.theirs),
    ]
    choice = Field(clash.field, "keep", "choice", "", (MINE, THEIRS, EDITED), required=True)
    line = Field(_edit(clash), "edited", "text", clash.mine)
    return words, (choice, line)


def _value(whose: str, text: str) -> Content:
    return joined((plain(f"{whose}: ", QUIET), prose(text) if text else plain("blank", QUIET)))
