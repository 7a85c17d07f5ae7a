"""The question of the research screen: conditions one under another, and how they change."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from textual import on
from textual.content import Content

from conservedb.knowledge.research import And, Condition, Has, Research, Tree
from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import say
from conservedb.tui import condition_fields, question_lines
from conservedb.tui.answer_columns import columns_of
from conservedb.tui.question_lines import ROOT, Change, Line, Path
from conservedb.tui.researching import Asked
from conservedb.tui.screens.questioning import Questioning
from conservedb.tui.text import QUIET, STRONG, WARNING, joined, plain
from conservedb.tui.widgets.heading import day_sign
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Drawer, Item, Lines
from conservedb.tui.widgets.title import Title

if TYPE_CHECKING:
    from conservedb.questions.answers import AsOf

LAYERS = "layers"
_ROWS_SAID = {
    LAYERS: "layers and uses of agents",
    "places": "places",
    "interventions": "interventions",
    "objects": "objects",
}


class Questioned(Questioning):
    """A question put together condition by condition; each change asks anew."""

    def __init__(self, research: Research | None = None) -> None:
        super().__init__()
        self.rows = research.rows if research is not None else LAYERS
        self.where: Tree = question_lines.grouped(research.where) if research is not None else And()
        self.name_kept = ""
        self.today: AsOf | None = None
        self.on: AsOf | None = None
        self.order, self.descending = "sureness", False

    @property
    def asked(self) -> Asked:
        """See `Questioning`."""
        return Asked(self.research, self.on, self.order, self.descending)

    @property
    def research(self) -> Research:
        """What is asked, without the order of its rows."""
        return Research(self.rows, self.where)

    def tell(self, sentence: str, ink: str = WARNING) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence, ink)

    # The question

    def show_today(self, today: AsOf) -> None:
        """Which day it is."""
        self.today = today
        self.show_title()

    def show_title(self) -> None:
        """The name, the day, and the question as a sentence."""
        name = f"Research: {self.name_kept}" if self.name_kept else "Research"
        shown = self.on or self.today
        day = day_sign(shown, is_today=self.on is None) if shown is not None else Content("")
        said = plain(describe(self.research), QUIET)
        self.query_one(Title).show((plain(name, STRONG), day), (said, Content("")))

    def show_question(self, path: Path | None = None) -> None:
        """The lines of the question, with the cursor on one of them."""
        self.show_title()
        self.query_one("#question").border_title = plain(f" Asked for: {_ROWS_SAID[self.rows]} ")
        lines = question_lines.lines_of(self.where)
        items = [Item(_key(line.path), _drawer(line)) for line in lines]
        self.query_one("#conditions", Lines).show_items(items, None if path is None else _key(path))

    @property
    def path(self) -> Path:
        """The line under the cursor."""
        current = self.query_one("#conditions", Lines).current
        return tuple(map(int, current.key.split("."))) if current and current.key else ROOT

    def _change(self, tree: Tree, path: Path | None = None) -> None:
        """Ask another question; nothing is done where it is the same."""
        if tree == self.where:
            return
        self.where, self.name_kept = tree, ""
        self.show_question(path)
        self.ask_again()

    def _change_here(self, change: Change) -> None:
        path = self.path
        self._change(change(self.where, path), path)

    def ask_again(self, *, counted: bool = False) -> None:
        """Ask anew; counts that are known stay where only the order is another."""
        if self.researcher is not None:
            self.put_question(counted=counted)

    def begin_with(self, asked: Asked, name: str) -> None:
        """Take up a question as it was left: what is asked, of which day, in which order."""
        self.rows, self.where = asked.research.rows, question_lines.grouped(asked.research.where)
        self.on, self.order, self.descending = asked.on, asked.order, asked.descending
        self.name_kept = name

    def take_question(self, research: Research, name: str = "") -> None:
        """Ask a question that was put together elsewhere."""
        self.rows, self.where = research.rows, question_lines.grouped(research.where)
        self.name_kept = name
        self.keep_order()
        self.show_question(ROOT)
        self.ask_again()

    # Actions on conditions

    def action_add_condition(self) -> None:
        """Choose a field, then say what of it."""
        from conservedb.tui.screens.menu import MenuSheet

        more = (condition_fields.HEADING, condition_fields.fields_of_object())
        sheet = MenuSheet("Which condition?", condition_fields.fields(), more)
        self.open_over(sheet, self._field_chosen)

    def _field_chosen(self, field: str | None) -> None:
        if field is not None:
            path = self.path

            def put(condition: Condition) -> None:
                self._change(*question_lines.added(self.where, path, condition))

            self._ask_condition(Condition(field, ""), put)

    @on(Lines.Chosen, "#conditions")
    def change_condition(self) -> None:
        """Have the condition under the cursor typed again; at a group, one is added."""
        path = self.path
        here = question_lines.at(self.where, path)
        if not isinstance(here, Condition):
            self.action_add_condition()
            return

        def put(condition: Condition) -> None:
            self._change(question_lines.replaced(self.where, path, condition), path)

        self._ask_condition(here, put)

    def _ask_condition(self, condition: Condition, put: Callable[[Condition], None]) -> None:
        """Have a condition typed; keys wait for the sheet."""
        from conservedb.tui.screens.asking_sheets import ConditionSheet

        researcher = self.researcher
        if researcher is None:
            return
        self.hold("sheet")

        def typed(answers: dict[str, str] | None) -> None:
            if answers is not None:
                put(condition_fields.condition_from(condition.field, answers))

        def ready(closed: tuple[str, ...]) -> None:
            self.open_over(ConditionSheet(researcher, condition, closed), typed)
            self.release("sheet")

        self.ask("closed", lambda: researcher.closed(condition.field), ready)

    def action_write_question(self) -> None:
        """The whole question as text."""
        from conservedb.tui.screens.asking_sheets import TextSheet, question_in

        if self.researcher is not None:

            def written(answers: dict[str, str] | None) -> None:
                if answers is not None:
                    self.take_question(question_in(answers))

            self.open_over(TextSheet(self.researcher, say(self.research)), written)

    def action_take_away(self) -> None:
        """The condition under the cursor no longer counts."""
        self._change_here(question_lines.removed)

    def action_negate(self) -> None:
        """What must hold must not, and the other way round."""
        self._change_here(question_lines.negated)

    def action_switch(self) -> None:
        """And for or, or for and."""
        self._change_here(question_lines.switched)

    def action_bracket(self) -> None:
        """A group of its own, or the group dissolved."""
        self._change_here(question_lines.bracketed)

    def action_has(self) -> None:
        """Ask it of a layer or use by itself, or no longer."""
        path = self.path
        changed = question_lines.asked_to_have(self.where, path)
        if self.rows == LAYERS:
            self.tell(
                "what a row has is asked of places, interventions or objects; w chooses those"
            )
        elif self.where == And():
            self.tell("there is no condition yet; a adds one")
        elif changed == self.where:
            self.tell("this is asked by itself already, or holds what is; go to another line")
        else:
            is_made = isinstance(question_lines.at(changed, path), Has)
            self._change(changed, path[:-1] if is_made else path)

    def action_surely(self) -> None:
        """Only what is certain, or what is possible too."""
        if isinstance(question_lines.at(self.where, self.path), Condition):
            self._change_here(question_lines.surer)
        else:
            self.tell("go to one condition: of it, only what is certain can be asked for")

    def keep_order(self) -> None:
        """Sort as before, unless the rows have no such column."""
        if self.order not in [one.name for one in columns_of(self.rows)]:
            self.order, self.descending = "sureness", False


def _key(path: Path) -> str:
    return ".".join(map(str, path))


def _drawer(line: Line) -> Drawer:
    def draw(width: int) -> Sequence[Content]:
        indent = plain("  " * len(line.path))
        return (joined((indent, joined((plain(line.joins, STRONG), _said(line)), " "))),)

    return draw


def _said(line: Line) -> Content:
    return plain(line.said, QUIET if line.is_group else "")
