"""How a layer may come off: verdict, a drawing of what lies around it, ranked options."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Horizontal, Vertical

from conservedb.tui.actions import bindings
from conservedb.tui.asking import Asking
from conservedb.tui.hits import no_screen
from conservedb.tui.plan_facts import limit_facts
from conservedb.tui.screens.find import FindSheet
from conservedb.tui.screens.layers import LayerSheet
from conservedb.tui.screens.opening import screen_of
from conservedb.tui.screens.sheet import FactSheet, legend_sheet
from conservedb.tui.text import QUIET, STRONG, joined, plain
from conservedb.tui.widgets.build_up import BuildUp
from conservedb.tui.widgets.facts import Facts
from conservedb.tui.widgets.heading import day_sign
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.lines import Lines
from conservedb.tui.widgets.options import Options
from conservedb.tui.widgets.title import Title
from conservedb.tui.widgets.verdict import Verdict

if TYPE_CHECKING:
    from conservedb.knowledge.plan import Option
    from conservedb.questions.answers import AsOf, Hit
    from conservedb.questions.removal_answers import RemovalAnswer
    from conservedb.tui.reading import Reading

WIDE = 116  # cells from which the reasons stand beside the options
BANDS = "ABCD"


class RemovalScreen(Asking[None]):
    """The plan for one layer at a location on a day; `layer` "" is the likeliest."""

    NAME = "removal"
    CSS_PATH = "removal.tcss"
    BINDINGS = [  # noqa: RUF012
        *bindings(NAME),
        Binding("tab", "panel(1)", show=False, priority=True),
        Binding("shift+tab", "panel(-1)", show=False, priority=True),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (WIDE, "-wide")]  # noqa: RUF012
    AUTO_FOCUS = "#options"

    def __init__(self, reading: Reading, number: str, mark: str, layer: str, on: AsOf) -> None:
        super().__init__()
        self.reading, self.number, self.mark, self.on = reading, number, mark, on
        self.ref, self.band = layer, ""
        self.answer: RemovalAnswer | None = None
        self._option: Option | None = None

    def compose(self) -> ComposeResult:
        """Title, verdict, drawing, options, reasons, keys."""
        yield Title(f"{self.number} {self.mark}")
        yield Verdict()
        with Horizontal(id="plan"):
            with Vertical(id="ways"):
                with Vertical(id="build-up-panel", classes="panel"):
                    yield BuildUp()
                with Vertical(id="options-panel", classes="panel"):
                    yield Options()
            with Vertical(id="reasons-panel", classes="panel"):
                yield Facts("reasons")
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Ask."""
        self.action_refresh()

    def action_refresh(self) -> None:
        """Ask again."""
        self._ask_for(self.ref, self.band)

    def _ask_for(self, layer: str, band: str) -> None:
        self.ref, self.band = layer, band
        reading, where, day = self.reading, (self.number, self.mark), self.on

        def question() -> tuple[AsOf, RemovalAnswer]:
            return reading.as_of(""), reading.removal(*where, layer, day, band)

        self.ask("removal", question, lambda answer: self._show(*answer))

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer."""
        if self.answer is None:
            self.query_one(Verdict).show_trouble(sentence)
        else:
            self.tell(sentence)

    def tell(self, sentence: str) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence)

    def _show(self, today: AsOf, answer: RemovalAnswer) -> None:
        self.answer = answer
        self.query_one(KeyLine).clear()
        self.ref, self.band = answer.plan.target.layer, answer.widest_band
        target = answer.plan.target
        is_today = (answer.on.first, answer.on.last) == (today.first, today.last)
        place = f"{answer.place} {answer.place_name}".strip()
        layer = joined((plain(target.name, STRONG), plain(target.role)), ", ")
        self.query_one(Title).show(
            (
                joined((plain(answer.object, STRONG), plain(answer.title, STRONG)), "  "),
                day_sign(answer.on, is_today=is_today),
            ),
            (
                joined((plain("removal of", QUIET), layer, plain(f"({target.layer})", QUIET)), " "),
                plain(place, QUIET),
            ),
        )
        self.query_one(Verdict).show_plan(answer.plan)
        self._option = None
        bands = f"hazard bands A to {answer.widest_band}"
        options = self.query_one("#options-panel")
        options.border_title = plain(f" Options for removal and tests, best first; {bands} ")
        self.query_one(Options).show_plan(answer)
        self._show_entry()

    def _show_entry(self) -> None:
        """What the entry under the cursor says: its drawing and its reasons."""
        if self.answer is None:
            return
        options = self.query_one(Options)
        self._option = options.option or self._option
        said = f"What it does to each: {self._option.title}" if self._option else "What lies around"
        self.query_one("#build-up-panel").border_title = plain(f" {said} ")
        self.query_one(BuildUp).show_option(self.answer, self._option)
        heading, blocks = options.full
        self.query_one("#reasons-panel").border_title = plain(f" {heading} ")
        self.query_one(Facts).show_facts(*blocks)

    # What panels report

    @on(Lines.Moved, "#options")
    def _moved(self) -> None:
        self._show_entry()

    @on(Lines.Chosen, "#options")
    def _chosen(self) -> None:
        self.action_full()

    # Actions

    def action_panel(self, by: int) -> None:
        """Go to the next panel, or the one before."""
        wide = self.size.width >= WIDE
        panels = ["#options", "#build-up", *(["#reasons"] if wide else [])]
        here = f"#{self.focused.id}" if self.focused is not None else ""
        index = panels.index(here) + by if here in panels else 0
        self.set_focus(self.query_one(panels[index % len(panels)]))

    def action_full(self) -> None:
        """The entry under the cursor, in full."""
        title, blocks = self.query_one(Options).full
        if blocks:
            self.app.push_screen(FactSheet(title, blocks))

    def action_layer(self) -> None:
        """Choose another layer of the location."""
        if self.answer is None:
            return
        sheet = LayerSheet(self.mark, self.answer.choices, self.ref)
        self.app.push_screen(sheet, self._layer_chosen)

    def _layer_chosen(self, layer: str | None) -> None:
        if layer is not None and layer != self.ref:
            self._ask_for(layer, self.band)

    def action_wider(self) -> None:
        """List agents of the next worse hazard band too."""
        self._move_band(1, "band D, the worst, is shown already")

    def action_narrower(self) -> None:
        """Leave out agents of the worst band that is listed."""
        self._move_band(-1, "only band A, the mildest, is shown already")

    def _move_band(self, by: int, end: str) -> None:
        at = BANDS.find(self.band) + by
        if self.band not in BANDS or self.answer is None:
            return
        if 0 <= at < len(BANDS):
            self._ask_for(self.ref, BANDS[at])
        else:
            self.tell(end)

    def action_limits(self) -> None:
        """What this kind of plan cannot know."""
        if self.answer is not None:
            facts = limit_facts(self.answer.plan)
            self.app.push_screen(FactSheet("Limits of the method", [facts]))

    def action_legend(self) -> None:
        """What the hatches stand for."""
        self.app.push_screen(legend_sheet())

    def action_material(self) -> None:
        """How the agent under the cursor behaves, else the material of the layer."""
        option = self.query_one(Options).option
        word = option.agent[0].solvent if option is not None and option.agent else ""
        if not word and self.answer is not None:
            word = self.answer.plan.target.material
        if not word:
            self.tell("the material of this layer is not established")
            return
        from conservedb.tui.screens.material import MaterialScreen

        self.app.push_screen(MaterialScreen(self.reading, word, self.on))

    def action_find(self) -> None:
        """Find anything without leaving."""
        self.app.push_screen(FindSheet(self.reading, self.number), self._found)

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
