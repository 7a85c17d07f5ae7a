"""A sheet laid over the screen: help, legend, warnings, or a record in full."""

from __future__ import annotations

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import Vertical
from textual.content import Content
from textual.screen import ModalScreen

from conservedb.tui.actions import actions_of, motions_of
from conservedb.tui.details import Fact
from conservedb.tui.effects import SIGNS
from conservedb.tui.hatching import LEGEND, drawn, hatch_of
from conservedb.tui.removal_drawing import TARGET, THROUGH
from conservedb.tui.text import STRONG, joined, plain, styled
from conservedb.tui.widgets.facts import Facts
from conservedb.tui.widgets.lines import Lines, line_item

SAMPLE = 12
STATES = (
    ("present", "whole", "in place"),
    ("reduced", "whole", "partly removed: residue left"),
    ("uncertain", "whole", "not established"),
    ("gone", "whole", "removed or lost, or not yet there"),
    ("present", "part", "covers a part"),
    ("present", "spots", "in spots"),
)


class Sheet(ModalScreen[None]):
    """Text in front of the screen, or facts; any of Esc, Enter, q puts it away."""

    CSS_PATH = "sheet.tcss"
    BINDINGS = [Binding("escape,enter,q,f1,question_mark", "dismiss", show=False)]  # noqa: RUF012
    AUTO_FOCUS = "#sheet-lines"

    def __init__(self, title: str, lines: Sequence[Content]) -> None:
        super().__init__()
        self._title, self._lines = title, lines

    def compose(self) -> ComposeResult:
        """A framed text that scrolls."""
        with Vertical(id="sheet") as sheet:
            sheet.border_title = plain(self._title)
            sheet.border_subtitle = plain("Esc closes")
            yield self.body()

    def body(self) -> Lines:
        """What is in the frame."""
        lines = Lines("sheet-lines", marked=False)
        lines.show_items([line_item(str(i), line) for i, line in enumerate(self._lines)])
        return lines


class FactSheet(Sheet):
    """Records in full."""

    def __init__(self, title: str, blocks: Sequence[Sequence[Fact]]) -> None:
        super().__init__(title, ())
        self._blocks = blocks

    def body(self) -> Lines:
        """The facts, wrapped in two columns."""
        facts = Facts("sheet-lines")
        facts.show_facts(*self._blocks)
        return facts


def help_sheet(where: str) -> Sheet:
    """Every key of a screen, such as "start" or "form": first those that only it has."""
    actions = [
        (", ".join((one.shown, *one.others)), f"{one.title}. {one.help}")
        for one in sorted(actions_of(where), key=lambda one: one.where != (where,))
    ]
    motions = [(one.shown, one.help) for one in motions_of(where)]
    return FactSheet("Keys", [actions, motions])


def legend_sheet() -> Sheet:
    """Hatches of roles, and how states and coverage change them."""
    lines: list[Content] = [styled("Roles", STRONG)]
    for hatch in LEGEND:
        sample = plain(drawn(hatch, SAMPLE, 0), hatch.style)
        lines.append(joined((sample, plain(hatch.words)), "  "))
    lines += [Content(""), styled("States and coverage, shown on an adhesive", STRONG)]
    adhesive = hatch_of("adhesive")
    for state, cover, meaning in STATES:
        sample = plain(drawn(adhesive, SAMPLE, 0, state, cover), adhesive.style)
        lines.append(joined((sample, plain(meaning)), "  "))
    lines += [
        Content(""),
        styled("Fixings that cross the joint", STRONG),
        styled("║  in place     ┊  known from a picture, suspected, or not established"),
        Content(""),
        styled("Numbers in the tree", STRONG),
        styled("3, 1?  three layers in place, and one not established"),
        Content(""),
        styled("In a plan for removal", STRONG),
        plain(f"{TARGET} the layer to come off     {THROUGH} the barrier it is released through"),
        plain(",  ".join(f"{sign} {effect}" for effect, sign in SIGNS.items() if sign != "?")),
        styled("?  undecided, not told, or tested for less than this"),
    ]
    return Sheet("Legend", lines)
