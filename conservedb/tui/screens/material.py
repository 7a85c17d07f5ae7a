"""A material or class: every value with how it is known, and where it lies now and ever."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Container, Vertical

from conservedb.tui.actions import bindings
from conservedb.tui.asking import Asking
from conservedb.tui.details import Fact
from conservedb.tui.hits import no_screen
from conservedb.tui.place_rows import layer_facts, place_items, use_facts
from conservedb.tui.screens.find import FindSheet
from conservedb.tui.screens.opening import screen_of
from conservedb.tui.screens.sheet import FactSheet
from conservedb.tui.text import QUIET, STRONG, joined, plain
from conservedb.tui.widgets.decades import Decades
from conservedb.tui.widgets.heading import day_sign
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Lines
from conservedb.tui.widgets.title import Title
from conservedb.tui.widgets.values import Values

if TYPE_CHECKING:
    from conservedb.questions.answers import AsOf, Hit
    from conservedb.questions.material_answers import MaterialAnswer
    from conservedb.questions.uses_answers import AgentUse, UsesLayer
    from conservedb.tui.reading import Reading

WIDE = 116  # cells from which values and places stand side by side


class MaterialScreen(Asking[None]):
    """What is on record about a material, and where it lies on a day."""

    NAME = "material"
    CSS_PATH = "material.tcss"
    BINDINGS = [  # noqa: RUF012
        *bindings(NAME),
        Binding("tab", "panel(1)", show=False, priority=True),
        Binding("shift+tab", "panel(-1)", show=False, priority=True),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (WIDE, "-wide")]  # noqa: RUF012
    AUTO_FOCUS = "#values"
    PANELS = ("#values", "#places", "#decades")

    def __init__(self, reading: Reading, word: str, on: AsOf | None = None) -> None:
        super().__init__()
        self.reading, self.word, self.on = reading, word, on
        self.answer: MaterialAnswer | None = None

    def compose(self) -> ComposeResult:
        """Title, values, decades and places, keys."""
        yield Title(self.word)
        with Container(id="material"):
            with Vertical(id="known", classes="panel") as known:
                known.border_title = plain(" What is on record ")
                yield Values()
            with Container(id="where"):
                with Vertical(id="when", classes="panel") as when:
                    when.border_title = plain(" Laid in ")
                    yield Decades()
                with Vertical(id="places-panel", classes="panel") as places:
                    places.border_title = plain(" Where it lies ")
                    yield Lines("places")
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Ask."""
        self.action_refresh()

    def action_refresh(self) -> None:
        """Ask again."""
        reading, word, day = self.reading, self.word, self.on

        def question() -> tuple[AsOf, MaterialAnswer]:
            today = reading.as_of("")
            return today, reading.material(word, day or today)

        self.ask("material", question, lambda answer: self._show(*answer))

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer."""
        if self.answer is None:
            self.query_one(Values).show_trouble(f"{sentence}. Esc goes back.")
        else:
            self.tell(sentence)

    def tell(self, sentence: str) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence)

    def _show(self, today: AsOf, answer: MaterialAnswer) -> None:
        self.answer = answer
        is_today = (answer.on.first, answer.on.last) == (today.first, today.last)
        kind = "class of materials" if answer.kind == "material class" else "material"
        within = [f"in {one.name}" for one in answer.classes[:1]]
        below = joined((plain(kind, QUIET), plain("".join(within))), "  ")
        self.query_one(Title).show(
            (plain(answer.name, STRONG), day_sign(answer.on, is_today=is_today)),
            (below, plain(_count(answer), QUIET)),
        )
        self.query_one(Values).show_answer(answer)
        self.query_one(Decades).show_where(answer.where)
        self.query_one("#places", Lines).show_items(place_items(answer))
        places = answer.where.places
        number = f"{places} place{'' if places == 1 else 's'}"
        self.query_one("#places-panel").border_title = plain(f" Where it lies: {number} ")

    # What panels report

    @on(Lines.Chosen, "#values")
    def _value_chosen(self, event: Lines.Chosen) -> None:
        word = self.query_one(Values).leads_to(event.key)
        if word:
            self.app.push_screen(MaterialScreen(self.reading, word, self.on))
        else:
            self.action_full()

    @on(Lines.Chosen, "#places")
    def _place_chosen(self) -> None:
        row = self._row()
        if row is None:
            return
        from conservedb.tui.screens.object import ObjectScreen

        self.app.push_screen(ObjectScreen(self.reading, row.object, _mark(row)))

    def _row(self) -> UsesLayer | AgentUse | None:
        """What the cursor of the list of places rests on."""
        current = self.query_one("#places", Lines).current
        if current is None or self.answer is None:
            return None
        kind, _, at = current.key.partition(":")
        where = self.answer.where
        listed: dict[str, tuple[UsesLayer | AgentUse, ...]] = {
            "layer": where.layers,
            "use": where.uses,
        }
        return listed[kind][int(at)] if kind in listed else None

    # Actions

    def action_panel(self, by: int) -> None:
        """Go to the next panel, or the one before."""
        here = f"#{self.focused.id}" if self.focused is not None else ""
        index = self.PANELS.index(here) + by if here in self.PANELS else 0
        self.set_focus(self.query_one(self.PANELS[index % len(self.PANELS)]))

    def action_full(self) -> None:
        """The line under the cursor, in full."""
        row = self._row()
        if self.query_one("#places", Lines).has_focus and row is not None:
            self.app.push_screen(FactSheet(f"{row.object} {_mark(row)}", [_facts(row)]))
            return
        title, facts = self.query_one(Values).full
        if facts:
            self.app.push_screen(FactSheet(title, [facts]))
        else:
            self.tell("nothing more is on record for this line")

    def action_removal(self) -> None:
        """How the layer under the cursor of the list of places may come off."""
        row = self._row() if self.query_one("#places", Lines).has_focus else None
        place = getattr(row, "place", "")
        if row is None or not place or self.answer is None:
            self.tell("choose a layer in the list of places first (Tab)")
            return
        from conservedb.tui.screens.removal import RemovalScreen

        layer = getattr(row, "layer", "")
        where = (row.object, place, layer)
        self.app.push_screen(RemovalScreen(self.reading, *where, self.answer.on))

    def action_research(self) -> None:
        """Where this material is, and was, as a question that can be narrowed."""
        from conservedb.knowledge.research import Condition, Research
        from conservedb.tui.screens.research import ResearchScreen

        asked = Research(where=Condition("material", self.word))
        self.app.push_screen(ResearchScreen(self.reading, asked))

    def action_find(self) -> None:
        """Find anything without leaving."""
        self.app.push_screen(FindSheet(self.reading, ""), self._found)

    def action_back(self) -> None:
        """To where this was opened from."""
        self.app.pop_screen()

    def _found(self, hit: Hit | None) -> None:
        if hit is None:
            return
        screen = screen_of(self.reading, hit, self.on)
        if screen is None:
            self.tell(no_screen(hit))
        else:
            self.app.push_screen(screen)


def _count(answer: MaterialAnswer) -> str:
    """How many values there are, and how many of them rest on memory alone."""
    known = [value.told for group in answer.properties for value in group.values]
    for told in (answer.hansen, answer.teas, answer.solubilities, answer.traits, answer.periods):
        known += [one.told for one in told]
    unsure = sum(one.unsure for one in known)
    rests = f", {unsure} from memory, not confirmed" if unsure else ""
    return f"{len(known)} value{'' if len(known) == 1 else 's'}{rests}"


def _mark(row: UsesLayer | AgentUse) -> str:
    """The place of a row; of several, the first."""
    places = getattr(row, "places", ()) or (getattr(row, "place", ""),)
    return str(places[0])


def _facts(row: UsesLayer | AgentUse) -> tuple[Fact, ...]:
    from conservedb.questions.uses_answers import UsesLayer

    return tuple(layer_facts(row) if isinstance(row, UsesLayer) else use_facts(row))
