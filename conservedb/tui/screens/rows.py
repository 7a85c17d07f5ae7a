"""What forms and their sheets share: fields one under another, and how keys go through them."""

from __future__ import annotations

from collections.abc import Mapping

from textual import events, on
from textual.screen import ScreenResultType

from conservedb.tui.in_order import Typed
from conservedb.tui.recording import Field
from conservedb.tui.widgets.form_row import FieldRow
from conservedb.tui.widgets.form_text import NUL

NUL_HELD = "holds a NUL character (shown as ␀), which no record can hold; take it out"
NEXT, BEFORE = ("tab", "enter", "down"), ("shift+tab", "up")


class Rows(Typed[ScreenResultType]):
    """Fields one under another. Each key has had its effect before the next is looked at."""

    AUTO_FOCUS = ""
    KEYS: Mapping[str, str] = {}

    def __init__(self) -> None:
        super().__init__()
        self.rows: tuple[FieldRow, ...] = ()
        self._current: FieldRow | None = None

    def rows_of(self, fields: tuple[Field, ...], width: int) -> tuple[FieldRow, ...]:
        """Rows for these fields, to be composed; they are the last ones of the screen so far."""
        made = tuple(FieldRow(field, width) for field in fields)
        self.rows += made
        return made

    @property
    def current(self) -> FieldRow | None:
        """The row that takes the keys; also after a click beside all rows."""
        return next((row for row in self.rows if row.entry is self.focused), self._current)

    def row(self, name: str) -> FieldRow | None:
        """The row of a field."""
        return next((row for row in self.rows if row.field.name == name), None)

    def values(self) -> dict[str, str]:
        """What all fields hold."""
        return {row.field.name: row.value for row in self.rows}

    def on_mount(self) -> None:
        """Begin in the first field."""
        if self.rows:
            self.go(self.rows[0])
        self.begin()

    def go(self, row: FieldRow) -> None:
        """Go to a field."""
        self.set_focus(row.entry)
        self._settle()

    async def take(self, event: events.Key | events.Paste) -> None:
        """Obey a key: the program's, the list's, the field's, or one that moves on."""
        row = self.current
        if row is not None:
            self.set_focus(row.entry)
        if isinstance(event, events.Paste):
            if row is not None:
                refused = row.entry.paste(event.text)
                self.changed(row)
                row.show_problem(refused)
        elif event.key in self.KEYS and not event.is_printable:
            await self.run_action(self.KEYS[event.key])
        elif row is None:
            if event.key == "enter":
                await self.at_end()
        elif self.list_took(row, event):
            pass
        elif await self._entry_took(row, event):
            return
        elif event.key in NEXT or event.key in BEFORE:
            await self.move(row, event.key)

    def list_took(self, row: FieldRow, event: events.Key) -> bool:
        """Whether the key was meant for a list under the field."""
        return False

    def changed(self, row: FieldRow) -> None:
        """Something was typed or chosen."""
        row.show_problem("")
        row.show_remark("")

    def entered(self, row: FieldRow) -> None:
        """A row takes the keys now."""
        row.use(in_use=True)
        self.call_after_refresh(row.scroll_visible, animate=False)

    def left(self, row: FieldRow) -> None:
        """A row no longer takes the keys."""
        row.show_remark("")
        row.use(in_use=False)
        if NUL in row.value:
            row.show_problem(NUL_HELD)

    def lacking(self, sentence: str) -> bool:
        """Say what is needed and not there, or cannot be held; go to the first. Whether any is."""
        wrong = []
        for row in self.rows:
            if NUL in row.value:
                row.show_problem(NUL_HELD)
                wrong.append(row)
            elif row.display and row.field.required and not row.value.strip():
                row.show_problem(sentence)
                wrong.append(row)
        if wrong:
            self.go(wrong[0])
        return bool(wrong)

    async def at_end(self) -> None:
        """Enter in the last field."""
        raise NotImplementedError

    async def _entry_took(self, row: FieldRow, event: events.Key) -> bool:
        before = row.value
        took = await row.entry.press(event)
        if took and row.value != before:
            self.changed(row)
        return took

    async def move(self, row: FieldRow, key: str) -> None:
        """Go from a field to the next or the one before; Enter in the last one ends."""
        shown = [one for one in self.rows if one.display]
        index = shown.index(row) + (1 if key in NEXT else -1)
        if 0 <= index < len(shown):
            self.go(shown[index])
        elif key == "enter":
            await self.at_end()

    @on(events.DescendantFocus)
    def _focus_moved(self) -> None:
        self._settle()

    def _settle(self) -> None:
        """Tell rows that the focus moved, by key or mouse."""
        now, before = self.current, self._current
        if now is before or now is None:
            return
        self._current = now
        if before is not None:
            self.left(before)
        self.entered(now)
