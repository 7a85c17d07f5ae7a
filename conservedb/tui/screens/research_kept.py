"""What becomes of a question: kept, asked again, compared, counted, written to a file."""

from __future__ import annotations

from typing import TYPE_CHECKING

from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import AskError
from conservedb.tui.about import About, Kind
from conservedb.tui.recording import Field
from conservedb.tui.screens.entry_sheet import EntrySheet, reason_sheet
from conservedb.tui.screens.research_answer import Answered
from conservedb.tui.screens.sheet import FactSheet, Sheet
from conservedb.tui.text import QUIET, STRONG, plain

if TYPE_CHECKING:
    from conservedb.questions.answers import AsOf
    from conservedb.questions.research_answers import ResearchRow
    from conservedb.questions.research_compared import Compared
    from conservedb.questions.research_saved import SavedQuestion
    from conservedb.tui.desk import Desk
    from conservedb.tui.screens.kept_questions import Choice

SUBJECT = "saved_questions"
_WAYS = (
    Kind("decade", "d", "decade", "", ""),
    Kind("class", "c", "class of material", "", ""),
    Kind("person", "p", "person", "", ""),
    Kind("object-kind", "o", "kind of object", "", ""),
)
_BAR_WIDTH = 76


def ways(rows: str) -> tuple[Kind, ...]:
    """How rows of a kind can be counted, for a menu."""
    from conservedb.questions.tally import ways_of

    return tuple(one for one in _WAYS if one.name in ways_of(rows))


class Kept(Answered):
    """What can be done with a question as a whole."""

    def action_keep_question(self) -> None:
        """Ask for a name, and keep the question under it."""
        desk = self._desk()
        if desk is None:
            return
        if not desk.who:
            from conservedb.tui.screens.who import WhoSheet

            self.open_over(
                WhoSheet(desk), lambda answers: self._ask_name(desk) if answers else None
            )
        else:
            self._ask_name(desk)

    def _ask_name(self, desk: Desk) -> None:
        researcher, research = self.researcher, self.research
        field = Field("name", "name", value=self.name_kept, required=True)
        words = [plain(describe(research), QUIET)]

        def keep(answers: dict[str, str] | None) -> None:
            if answers is None or researcher is None:
                return
            name = " ".join(answers["name"].split())
            self.hold("keep")

            def kept(sentence: str) -> None:
                self.name_kept = name
                self.show_title()
                self.tell(sentence, STRONG)
                self.release("keep")

            def refused(sentence: str) -> None:
                self.say(sentence)
                self.release("keep")

            self.ask("keep", lambda: researcher.keep(research, name, desk.who), kept, refused)

        sheet = EntrySheet("Keep the question", [(words, (field,))], "Enter keeps it, Esc leaves")
        self.open_over(sheet, keep)

    def action_kept_questions(self) -> None:
        """List those that are kept."""
        if self.researcher is None:
            return
        self.hold("kept")

        def listed(kept: tuple[SavedQuestion, ...]) -> None:
            self._list_kept(kept)
            self.release("kept")

        def refused(sentence: str) -> None:
            self.tell(sentence)
            self.release("kept")

        self.ask("kept", self.researcher.kept, listed, refused)

    def _list_kept(self, kept: tuple[SavedQuestion, ...]) -> None:
        from conservedb.tui.screens.kept_questions import KeptSheet

        if kept:
            self.app.push_screen(KeptSheet(kept), self._kept_chosen)
        else:
            self.tell("no question is kept yet; Ctrl+S keeps this one")

    def _kept_chosen(self, choice: Choice | None) -> None:
        if choice is None:
            return
        if choice.withdraw:
            self._ask_why(choice.kept)
            return
        try:
            self.take_question(choice.kept.research, choice.kept.name)
        except AskError as problem:
            self.tell(f"this question can no longer be read: {problem}")

    def _ask_why(self, kept: SavedQuestion) -> None:
        """A question is withdrawn as it is on record now, with a reason."""
        desk = self._desk()
        if desk is None:
            return
        about = About(desk.database, SUBJECT, record=kept.name)

        def withdraw(answers: dict[str, str] | None) -> None:
            if answers is None:
                return
            reason = answers["reason"]

            def withdrawn(sentence: str) -> None:
                if self.name_kept == kept.name:
                    self.name_kept = ""
                    self.show_title()
                self.tell(sentence, STRONG)

            self.ask(
                "withdraw",
                lambda: desk.withdraw(about, reason, desk.shown(about).version),
                withdrawn,
                self.say,
            )

        self.open_over(reason_sheet(f"Withdraw {kept.name}"), withdraw)

    def action_undo(self) -> None:
        """Take back my last change, such as a question withdrawn."""
        self._take_back(undone=False)

    def action_redo(self) -> None:
        """Put in force again what I took back."""
        self._take_back(undone=True)

    def _take_back(self, *, undone: bool) -> None:
        desk = self._desk()
        if desk is None:
            return
        self.hold("back")

        def done(sentence: str) -> None:
            self.tell(sentence, STRONG)
            self.release("back")

        def refused(sentence: str) -> None:
            self.say(sentence)
            self.release("back")

        self.ask("back", lambda: desk.take_back(undone=undone), done, refused)

    def say(self, sentence: str) -> None:
        """Why something was not done; what is too long for one line stays until it is read."""
        if plain(sentence).cell_length < self.size.width:
            self.tell(sentence)
        else:
            self.app.push_screen(FactSheet("Not done", [[("why not", sentence)]]))

    def _desk(self) -> Desk | None:
        """Who records; where nobody does, that is said."""
        desk: Desk | None = getattr(self.app, "desk", None)
        if desk is None:
            self.tell("nothing can be recorded here: no database file is open for writing")
        return desk

    # Compared, counted, written

    def action_compare(self) -> None:
        """Type two days."""
        from conservedb.tui.screens.asking_sheets import DaysSheet

        fields = (
            Field("first", "first day", "date", required=True),
            Field("second", "second day", "date", hint="blank is today"),
        )
        words = "What answers on one of two days and not on the other."
        sheet = DaysSheet(
            self.reading, "Compare two days", words, fields, "Enter compares, Esc leaves"
        )
        self.open_over(sheet, self._compare)

    def _compare(self, days: dict[str, str] | None) -> None:
        if days is None:
            return
        reading, first, second = self.reading, days["first"].strip(), days["second"].strip()

        def question() -> tuple[AsOf, AsOf]:
            return reading.as_of(first), reading.as_of(second)

        self.ask("days", question, lambda found: self._compare_days(*found), self.tell)

    def _compare_days(self, first: AsOf, second: AsOf) -> None:
        researcher, research = self.researcher, self.research
        if researcher is not None:
            self.stoppable(
                "compare",
                lambda stop: researcher.compare(research, first, second, stop),
                self._show_compared,
                self.say,
            )

    def _show_compared(self, answer: Compared) -> None:
        from conservedb.tui.screens.compared import ComparedSheet

        self.app.push_screen(ComparedSheet(answer), self._row_found)

    def _row_found(self, row: ResearchRow | None) -> None:
        if row is not None:
            self.open_row(row)

    def action_bars(self) -> None:
        """Choose what to count by."""
        from conservedb.tui.screens.menu import MenuSheet

        self.open_over(MenuSheet("Count the answer by", ways(self.rows), ("", ())), self._count_by)

    def _count_by(self, by: str | None) -> None:
        researcher, asked = self.researcher, self.asked
        if by is None or researcher is None:
            return
        width, title = self._text_width, f"{self.rows} by {by.replace('-', ' ')}"
        self.stoppable(
            "bars",
            lambda stop: researcher.bars(asked, by, width, stop),
            lambda lines: self._show_lines(title, lines),
            self.say,
        )

    def action_survival(self) -> None:
        """How many of the layers are still there, by age."""
        researcher, asked, width = self.researcher, self.asked, self._text_width
        if researcher is not None:
            self.stoppable(
                "survival",
                lambda stop: researcher.survival(asked, width, stop),
                lambda lines: self._show_lines("Layers still there, by age", lines),
                self.say,
            )

    @property
    def _text_width(self) -> int:
        """Cells of a line of text in a sheet, beside its frame and the bar that scrolls it."""
        return min(_BAR_WIDTH, max(self.size.width * 94 // 100 - 7, 20))

    def _show_lines(self, title: str, lines: tuple[str, ...]) -> None:
        self.app.push_screen(Sheet(title, [plain(line) for line in lines]))

    def action_write_answer(self) -> None:
        """Ask for the name of a new file."""
        field = Field("file", "new file", required=True, hint="ends with .csv, .jsonl or .xlsx")
        words = [plain(describe(self.research), QUIET)]
        sheet = EntrySheet(
            "Write the answer to a file", [(words, (field,))], "Enter writes, Esc leaves"
        )
        self.open_over(sheet, self._write)

    def _write(self, answers: dict[str, str] | None) -> None:
        researcher, asked = self.researcher, self.asked
        if answers is not None and researcher is not None:
            file = answers["file"].strip()
            self.stoppable(
                "write",
                lambda stop: researcher.write(asked, file, stop),
                lambda sentence: self.tell(sentence, STRONG),
                self.say,
            )
