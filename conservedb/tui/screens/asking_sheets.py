"""Sheets in which a question is typed: one condition, or the whole as text; or days of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from textual import events, on
from textual.timer import Timer

from conservedb.knowledge.research import FIELDS, Condition, Research, Tree
from conservedb.knowledge.research_words import AskError, read
from conservedb.tui.completing import date_words
from conservedb.tui.condition_fields import TODAY, asked_for, condition_from
from conservedb.tui.reading import Unanswered
from conservedb.tui.recording import Completion, Field
from conservedb.tui.researching import Researcher
from conservedb.tui.screens.entry_sheet import EntrySheet
from conservedb.tui.text import QUIET, plain
from conservedb.tui.widgets.form_found import Found
from conservedb.tui.widgets.form_row import FieldRow
from conservedb.tui.widgets.key_line import Shown

if TYPE_CHECKING:
    from conservedb.tui.reading import Reading

LETTERS = 2
PAUSE = 0.1  # seconds of quiet before anything is looked up
PATIENCE = 3.0  # seconds for which keys wait for what was looked up
FOOT = "Enter asks, Esc goes back"
HOW_TO_WRITE = (
    'layers where material: shellac and not (role: coating or date: "before 1872")',
    "rows: layers, places, interventions, objects; and, or, not, brackets",
    "objects where has (role: fill) and has none (role: coating)",
    f"fields: {', '.join(FIELDS)}",
)


class AskingSheet(EntrySheet):
    """What is typed is read, and its names looked up, before the sheet closes."""

    NEEDED = "nothing is asked for yet; Esc goes back"

    def __init__(
        self, researcher: Researcher, title: str, words: Sequence[str], fields: tuple[Field, ...]
    ) -> None:
        super().__init__(title, [([plain(one, QUIET) for one in words], fields)], FOOT)
        self._researcher = researcher

    def read(self) -> Tree:
        """The conditions typed; AskError where they cannot be read."""
        raise NotImplementedError

    async def action_accept(self) -> None:
        """Go on, unless something cannot be asked; then say so where it was typed."""
        if self.lacking(self.NEEDED):
            return
        try:
            tree = self.read()
        except AskError as problem:
            self.refuse(str(problem))
            return
        researcher, answers = self._researcher, self.answers()
        self.hold("known")

        def refused(sentence: str) -> None:
            self.refuse(sentence)
            self.release("known")

        def known(_: None) -> None:
            self.answer(answers)
            self.release("known")

        self.ask("known", lambda: researcher.ensure_known(tree), known, refused)

    def refuse(self, sentence: str) -> None:
        """Under what was typed, which stays to be mended."""
        self.rows[0].show_problem(sentence)
        self.go(self.rows[0])


class TextSheet(AskingSheet):
    """The whole question as text."""

    def __init__(self, researcher: Researcher, text: str) -> None:
        field = Field("question", "question", value=text, required=True)
        super().__init__(researcher, "The question as text", HOW_TO_WRITE, (field,))

    def read(self) -> Tree:
        """See `AskingSheet`."""
        return question_in(self.values()).where


def question_in(answers: dict[str, str]) -> Research:
    """The question in what a `TextSheet` answers.

    Raises:
        AskError: it cannot be read.
    """
    return read(answers["question"])


class ConditionSheet(AskingSheet):
    """One condition; what is on record is offered while its value is typed."""

    KEYS = {**EntrySheet.KEYS, "f2": "look_up"}  # noqa: RUF012
    SHOWN = (*EntrySheet.SHOWN[:-1], Shown("F2", "list", "look_up"), EntrySheet.SHOWN[-1])

    def __init__(
        self, researcher: Researcher, condition: Condition, closed: tuple[str, ...]
    ) -> None:
        fields = asked_for(condition, closed)
        self._field = condition.field
        self._pause: Timer | None = None
        words = (FIELDS[condition.field],)
        super().__init__(researcher, f"Condition: {condition.field}", words, fields)

    def on_mount(self) -> None:
        """Say how dates read, from the beginning."""
        super().on_mount()
        for row in self.rows:
            self._show_date(row)

    def read(self) -> Tree:
        """See `AskingSheet`."""
        return condition_from(self._field, self.values())

    def list_took(self, row: FieldRow, event: events.Key) -> bool:
        """Down and Up mark what was found, Enter and Tab take it."""
        found = row.found
        if not row.field.completes:
            return False
        if event.key == "down":
            self._mark_next(row)
        elif event.key == "up" and found.at >= 0:
            found.move(-1)
        elif event.key in ("enter", "tab"):
            self._complete(row)
            return False  # and on to the next field
        else:
            return False
        return True

    def changed(self, row: FieldRow) -> None:
        """Look up after a moment of quiet."""
        super().changed(row)
        row.found.hide()
        self._look_no_further()
        if row.field.completes and len(row.value.strip()) >= LETTERS:
            self._pause = self.set_timer(PAUSE, lambda: self._look_up(row))
        self._show_date(row)

    def _look_no_further(self) -> None:
        """What was to be looked up, or is, is wanted no longer."""
        self.forget("find")
        if self._pause is not None:
            self._pause.stop()

    def _show_date(self, row: FieldRow) -> None:
        if row.field.kind == "date":
            blank = TODAY if row.field.name == "on" else ""
            row.show_beside(date_words(row.value) if row.value.strip() else blank)

    def action_look_up(self) -> None:
        """F2: the list, for however few letters."""
        row = self.current
        if row is not None and row.field.completes:
            self._look_up(row)

    @on(Found.Clicked)
    def _clicked(self) -> None:
        self._take(self.rows[0])

    def _complete(self, row: FieldRow) -> None:
        """Take what is marked; else what the letters stand for, and keys wait for it."""
        self._look_no_further()
        typed = row.value.strip()
        if row.found.marked is not None or not typed:
            self._take(row)
            return
        researcher = self._researcher
        self.hold("completed")
        self.set_timer(PATIENCE, lambda: self.release("completed"))

        def completed(text: str) -> None:
            if row.value.strip() == typed and text != typed:
                row.value = text
            self.release("completed")

        self.ask(
            "completed",
            lambda: researcher.completed(self._field, typed),
            completed,
            lambda _: self.release("completed"),
        )

    def _take(self, row: FieldRow) -> None:
        if row.found.marked is not None:
            row.value = row.found.marked.text
        row.found.hide()

    def _mark_next(self, row: FieldRow) -> None:
        """The next of those found; where none is shown, look up first, and keys wait."""
        if row.found.found:
            row.found.move(1)
            return
        self.hold("list")
        self._look_up(row, mark=True)

    def _look_up(self, row: FieldRow, *, mark: bool = False) -> None:
        if self._pause is not None:
            self._pause.stop()
        researcher, field, typed = self._researcher, self._field, row.value.strip()

        def question() -> tuple[tuple[Completion, ...], str]:
            taken = researcher.completed(field, typed) if typed else ""
            return researcher.offers(field, typed), taken if taken != typed else ""

        def show(answer: tuple[tuple[Completion, ...], str]) -> None:
            found, taken = answer
            if row.value.strip() == typed:
                row.found.show_found(found, typed, taken)
                row.show_remark("" if found else "nothing on record begins so")
            if mark and row.found.at < 0:
                row.found.move(1)
            self.release("list")

        def refused(sentence: str) -> None:
            self.refuse(sentence)
            self.release("list")

        self.ask("find", question, show, refused)


class DaysSheet(EntrySheet):
    """Days, each of which is read before the sheet closes."""

    NEEDED = "a day is needed here; Esc goes back"

    def __init__(
        self, reading: Reading, title: str, words: str, fields: tuple[Field, ...], foot: str
    ) -> None:
        super().__init__(title, [([plain(words, QUIET)], fields)], foot)
        self._reading = reading

    async def action_accept(self) -> None:
        """Go on, unless a day cannot be read; then say so where it was typed."""
        if self.lacking(self.NEEDED):
            return
        reading, answers = self._reading, self.answers()

        def question() -> dict[str, str]:
            problems = {}
            for name, words in answers.items():
                try:
                    reading.as_of(words.strip())
                except Unanswered as problem:
                    problems[name] = str(problem)
            return problems

        def tried(problems: dict[str, str]) -> None:
            wrong = [row for row in self.rows if row.field.name in problems]
            for row in wrong:
                row.show_problem(problems[row.field.name])
            if wrong:
                self.go(wrong[0])
            else:
                self.answer(answers)
            self.release("days")

        self.hold("days")
        self.ask("days", question, tried)
