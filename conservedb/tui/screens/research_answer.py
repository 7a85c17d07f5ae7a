"""The answer of the research screen: its rows, their order and day, and where they lead."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on

from conservedb.knowledge.research import ROWS, asks_has
from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import say
from conservedb.tui.about import Kind
from conservedb.tui.answer_columns import columns_of, facts_of
from conservedb.tui.hits import no_screen
from conservedb.tui.recording import Field
from conservedb.tui.screens.questioning import STOPPED
from conservedb.tui.screens.research_question import LAYERS, Questioned
from conservedb.tui.screens.sheet import FactSheet
from conservedb.tui.widgets.answers_table import AnswersTable

if TYPE_CHECKING:
    from conservedb.questions.answers import AsOf, Hit
    from conservedb.questions.research_answers import ResearchRow
    from conservedb.tui.reading import Reading

_SORT_LETTERS = {"people": "e", "role": "l", "state": "a", "sureness": "h"}
"""Where the first letter of a heading is another column's."""


class Answered(Questioned):
    """What answers, and what can be done with it."""

    reading: Reading

    def action_rows(self) -> None:
        """The next kind of rows that can be asked so."""
        offered = ROWS if not asks_has(self.where) else tuple(one for one in ROWS if one != LAYERS)
        self.rows = offered[(offered.index(self.rows) + 1) % len(offered)]
        self.keep_order()
        self.show_question(self.path)
        self.ask_again()

    def action_sort(self) -> None:
        """Choose a column to sort by; the same again turns the order round."""
        from conservedb.tui.screens.menu import MenuSheet

        kinds = [
            Kind(one.name, _SORT_LETTERS.get(one.name, one.heading[0]), one.heading, "", "")
            for one in columns_of(self.rows)
        ]
        more = ("The same column again turns the order round", ())
        self.open_over(MenuSheet("Sort by which column?", kinds, more), self._sort_by)

    @on(AnswersTable.Sorted)
    def _heading_clicked(self, event: AnswersTable.Sorted) -> None:
        if event.column in [one.name for one in columns_of(self.rows)]:
            self._sort_by(event.column)

    def _sort_by(self, column: str | None) -> None:
        if column is not None:
            asked = self.asked.sorted_by(column)
            self.order, self.descending = asked.order, asked.descending
            self.ask_again(counted=True)

    def action_day(self) -> None:
        """Ask for another day."""
        from conservedb.tui.screens.asking_sheets import DaysSheet

        field = Field("day", "day", "date", hint="any date, in words or EDTF; blank is today")
        words = "How layers stand is asked for the end of that day."
        foot = "Enter goes there, Esc leaves"
        sheet = DaysSheet(self.reading, "As of which day?", words, (field,), foot)
        self.open_over(sheet, lambda answers: self._go_to(answers["day"]) if answers else None)

    def action_today(self) -> None:
        """Return to today."""
        if self.on is None:
            self.tell("this is today")
        else:
            self._go_to("")

    def _go_to(self, words: str) -> None:
        reading = self.reading

        def show(on: AsOf) -> None:
            self.on = on if words.strip() else None
            self.show_title()
            self.ask_again()

        self.ask("day", lambda: reading.as_of(words.strip()), show, self.tell)

    def action_panel(self) -> None:
        """From the question to the answer, or back."""
        self.set_focus(self.query_one("#conditions" if self.at_answer else "#answers"))

    @property
    def at_answer(self) -> bool:
        """Whether the answer is in use, and not the question."""
        return self.focused is self.query_one(AnswersTable)

    def action_choose(self) -> None:
        """Open the row under the cursor, or change the condition."""
        row = self.query_one(AnswersTable).current
        if not self.at_answer:
            self.change_condition()
        elif row is not None:
            self.open_row(row)

    def action_refresh(self) -> None:
        """Ask again."""
        self.ask_again()

    def action_back(self) -> None:
        """Stop what is being answered, else leave."""
        if self.stop_all():
            self.said = STOPPED
            self.show_state()
        else:
            self.app.pop_screen()

    # Where a row leads

    @on(AnswersTable.Chosen)
    def _row_chosen(self, event: AnswersTable.Chosen) -> None:
        self.open_row(event.row)

    def open_row(self, row: ResearchRow) -> None:
        """The object, at the place of a row."""
        from conservedb.tui.screens.object import ObjectScreen

        self.app.push_screen(ObjectScreen(self.reading, row.object, _place(row)))

    def action_in_full(self) -> None:
        """The row under the cursor in full; in the question, the whole of it as a sentence."""
        table = self.query_one(AnswersTable)
        if not self.at_answer:
            facts = (("asked", describe(self.research)), ("as text", say(self.research)))
            self.app.push_screen(FactSheet("The question", [facts]))
        elif table.current is None:
            self.tell("no row is under the cursor")
        else:
            row = table.current
            title = f"{row.object} {row.place}"
            self.app.push_screen(FactSheet(title, [facts_of(row, self.rows)]))

    def action_material(self) -> None:
        """About the material of the row under the cursor."""
        row = self.query_one(AnswersTable).current
        if row is None or not row.material:
            self.tell("no material is on record for the row under the cursor")
            return
        from conservedb.tui.screens.material import MaterialScreen

        self.app.push_screen(MaterialScreen(self.reading, row.material, self.on))

    def action_find(self) -> None:
        """Find anything without leaving."""
        from conservedb.tui.screens.find import FindSheet

        self.app.push_screen(FindSheet(self.reading, ""), self._found)

    def _found(self, hit: Hit | None) -> None:
        if hit is None:
            return
        from conservedb.tui.screens.opening import screen_of

        screen = screen_of(self.reading, hit, self.on)
        if screen is None:
            self.tell(no_screen(hit))
        else:
            self.app.push_screen(screen)


def _place(row: ResearchRow) -> str:
    """The mark of where a row is; of several, the first."""
    return row.place.split(", ")[0].split(" or ")[0]
