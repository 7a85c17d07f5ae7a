"""What a form looks up while somebody types: what is on record, how a date reads, what is wrong."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from textual import events, on
from textual.timer import Timer

from conservedb.tui.recording import Completion, Form, Outcome, Recorder
from conservedb.tui.screens.rows import Rows
from conservedb.tui.widgets.form_found import Found, is_exact
from conservedb.tui.widgets.form_row import FieldRow
from conservedb.tui.widgets.form_text import TextEntry

LETTERS = 3
MOST_SHOWN, MOST_NAMED = 60, 8  # characters of a name, and names, in a sentence
PAUSE = 0.1  # seconds of quiet before anything is asked
PATIENCE = 3.0  # seconds for which keys wait for a list that was asked for
NOT_ON_RECORD = "not on record: it will be refused; Ctrl+N adds it"
NONE_YET = "nothing is on record here yet; Ctrl+N adds it"
_BETWEEN = re.compile(r"(?<!\\);")
_PART_PLAYED = re.compile(r"\s*\([^()]*\)\s*$")


@dataclass(frozen=True, slots=True)
class Item:
    """One thing named in a field, and which characters of the field it takes."""

    text: str
    start: int
    end: int


def items_in(row: FieldRow) -> list[Item]:
    """The things named in a field; the part a person played is left out of the text."""
    value = row.value
    ends = [0, *(match.end() for match in _BETWEEN.finditer(value) if row.field.is_list)]
    stops = [*(end - 1 for end in ends[1:]), len(value)]
    items = []
    for first, stop in zip(ends, stops, strict=True):
        text = value[first:stop]
        start = first + len(text) - len(text.lstrip())
        text = text.strip()
        if row.field.kind == "people":
            text = _PART_PLAYED.sub("", text)
        items.append(Item(text, start, start + len(text)))
    return items


def item_here(row: FieldRow) -> Item:
    """The one under the cursor."""
    items = items_in(row)
    return next((one for one in reversed(items) if one.start <= _at(row)), items[0])


def _at(row: FieldRow) -> int:
    """How many characters stand before the cursor."""
    return row.entry.at if isinstance(row.entry, TextEntry) else 0


class FindingForm(Rows[Outcome | None]):
    """The part of the form that looks things up; it never stops anybody from going on."""

    form: Form
    recorder: Recorder

    def __init__(self) -> None:
        super().__init__()
        self._pause: Timer | None = None
        self._looked_for: tuple[str, str] = ("", "")  # field and letters of the last answer
        self._opened = 0
        self._known: dict[str, set[str]] = {}

    def list_took(self, row: FieldRow, event: events.Key) -> bool:
        """Down and Up mark, Enter, Tab and a semicolon take what is marked."""
        if not row.field.completes:
            return False
        found, item = row.found, item_here(row)
        if event.key == "down" and found.found:
            found.move(1)
        elif event.key == "down" and self._may_open(row, item):
            self._open(row, item, mark=True)
        elif event.key == "up" and found.at >= 0:
            found.move(-1)
        elif found.marked is None:
            return False
        elif event.key in ("enter", "tab"):
            self._put(row, item, found.marked.text)
            return False  # and on to the next field
        elif event.character == ";" and row.field.is_list and _at(row) <= item.end:
            self._put(row, item, found.marked.text, more="; ")
        else:
            return False
        return True

    @on(Found.Clicked)
    def _clicked(self) -> None:
        row = self.current
        if row is not None and row.found.marked is not None:
            self._put(row, item_here(row), row.found.marked.text)

    def action_look_up(self) -> None:
        """F2: the list, for however few letters."""
        row = self.current
        if row is None or not row.field.completes:
            self.tell("this field has no list of what is on record")
        else:
            self._open(row, item_here(row), mark=False)

    def close_list(self) -> bool:
        """Put the list away; whether there was one."""
        row = self.current
        if row is None or not row.found.found:
            return False
        row.found.hide()
        return True

    def changed(self, row: FieldRow) -> None:
        """Ask after a moment of quiet."""
        super().changed(row)
        row.found.hide()
        self.forget("find")
        if self._pause is not None:
            self._pause.stop()
        item = item_here(row)
        if row.field.completes and len(item.text) >= LETTERS and _at(row) <= item.end:
            self._pause = self.set_timer(PAUSE, lambda: self._look_up(row, item_here(row)))
        elif row.field.kind == "date":
            row.show_beside("")
            self._pause = self.set_timer(PAUSE, lambda: self.read_date(row))

    def left(self, row: FieldRow) -> None:
        """What was typed is looked up and checked; sentences come when they come."""
        super().left(row)
        self.forget("find")
        name, value = row.field.name, row.value
        if row.field.kind == "date":
            self.read_date(row)
        if row.problem:
            return
        if value.strip() and row.field.completes and value != row.settled:
            self._settle_names(row)
        values = self.values()

        def show(sentence: str) -> None:
            if row.value == value and sentence:
                row.show_problem(sentence)

        self.ask(f"check {name}", lambda: self.recorder.check(self.form, name, values), show)

    def read_date(self, row: FieldRow) -> None:
        """How the words were read, beside them."""
        text = row.value

        def show(words: str) -> None:
            if row.value == text:
                row.show_beside(words)

        if text.strip():
            self.ask(f"date {row.field.name}", lambda: self.recorder.read_date(text), show)
        else:
            row.show_beside("")

    def known(self, row: FieldRow, name: str) -> None:
        """This name is on record."""
        self._known.setdefault(row.field.name, set()).add(name.strip().casefold())

    def put_here(self, row: FieldRow, name: str) -> None:
        """A new name comes into the field, in the place of what was looked for."""
        self._put(row, item_here(row), name)

    def tell(self, sentence: str) -> None:
        """Show a message for a while."""
        raise NotImplementedError

    def _may_open(self, row: FieldRow, item: Item) -> bool:
        """Down opens a list where something was typed that has not been looked up in vain."""
        typed = row.value != row.settled and item.text
        return bool(typed) and self._looked_for != (row.field.name, item.text)

    def _open(self, row: FieldRow, item: Item, *, mark: bool) -> None:
        """Keys wait for the list, so that the next one means an entry of it."""
        self._opened += 1
        why = f"list {self._opened}"
        self.hold(why)
        self.set_timer(PATIENCE, lambda: self.release(why))

        def then() -> None:
            if mark and row.found.at < 0:
                row.found.move(1)
            self.release(why)

        self._look_up(row, item, then)

    def _look_up(self, row: FieldRow, item: Item, then: Callable[[], None] | None = None) -> None:
        if self._pause is not None:
            self._pause.stop()
        lookup, typed, values = row.field.asked_for, item.text, self.values()

        def show(found: Sequence[Completion]) -> None:
            if row is self.current and item_here(row).text == typed:
                self._looked_for = (row.field.name, typed)
                row.found.show_found(found, typed)
                self.call_after_refresh(row.found.scroll_visible, animate=False)
                row.show_remark("" if found else (NOT_ON_RECORD if typed else NONE_YET))
            if then is not None:
                then()

        def refused(sentence: str) -> None:
            row.show_problem(sentence)
            if then is not None:
                then()

        self.ask(
            "find",
            lambda: self.recorder.complete(lookup, typed, self.form, values),
            show,
            refused,
        )

    def _put(self, row: FieldRow, item: Item, name: str, more: str = "") -> None:
        assert isinstance(row.entry, TextEntry)
        if row.value[item.start : item.end] != name or more:
            row.entry.put(item.start, item.end, f"{name}{more}")
        self.known(row, name)
        self.changed(row)
        if self._pause is not None:
            self._pause.stop()
        if all(self._is_known(row, one.text) for one in items_in(row)):
            row.settled = row.value

    def _is_known(self, row: FieldRow, name: str) -> bool:
        return not name or name.casefold() in self._known.get(row.field.name, set())

    def _settle_names(self, row: FieldRow) -> None:
        """Look up each name that was typed in full; those on record are written as there."""
        value, lookup, values = row.value, row.field.asked_for, self.values()
        asked = [one for one in items_in(row) if not self._is_known(row, one.text)]

        def question() -> list[tuple[Completion, ...]]:
            ask = self.recorder.complete
            return [ask(lookup, one.text, self.form, values) for one in asked]

        def show(answers: list[tuple[Completion, ...]]) -> None:
            if row.value == value and row is not self.current:
                self._show_names(row, asked, answers)

        self.ask(f"names {row.field.name}", question, show)

    def _show_names(
        self, row: FieldRow, asked: list[Item], answers: list[tuple[Completion, ...]]
    ) -> None:
        missing: list[tuple[str, Sequence[Completion]]] = []
        for item, found in reversed(list(zip(asked, answers, strict=True))):
            exact = next((one for one in found if is_exact(one, item.text)), None)
            if exact is None:
                missing.insert(0, (item.text, found))
                continue
            self.known(row, exact.text)
            assert isinstance(row.entry, TextEntry)
            if exact.text != item.text:
                row.entry.put(item.start, item.end, exact.text)
        if missing:
            row.show_problem(_not_on_record(missing))
        else:
            row.settled = row.value


def _not_on_record(missing: Sequence[tuple[str, Sequence[Completion]]]) -> str:
    """Which names are not on record, and what to do."""
    if len(missing) > 1:
        names = ", ".join(f"“{name[:MOST_SHOWN]}”" for name, _ in missing[:MOST_NAMED])
        return f"not on record: {names}; they will be refused; Ctrl+N adds the one at the cursor"
    ((name, found),) = missing
    name = name[:MOST_SHOWN]
    if not found:
        return f"“{name}” is {NOT_ON_RECORD}"
    meant = f"did you mean {found[0].label}?"
    return f"“{name}” is not on record; {meant} F2 lists what is, Ctrl+N adds it"
