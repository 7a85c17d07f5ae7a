"""Below the drawing of a section: fixings that cross the joint, residues, and what is left out."""

from __future__ import annotations

from textual.content import Content

from conservedb.questions.answers import Fixing, PlaceAnswer
from conservedb.questions.wording import clearing
from conservedb.tui import wording
from conservedb.tui.hatching import SHAFTS, SUBSTRATE
from conservedb.tui.text import QUIET, STRONG, UNSURE, joined, plain, styled, two_ends
from conservedb.tui.widgets.lines import Item, always, line_item

OUT_OF_SIGHT = ("gone", "retired", "not yet")
EMPTY_LINE = Content("")


def fixing_items(answer: PlaceAnswer, width: int, *, show_gone: bool) -> list[Item]:
    """The fixings that cross the joint, in words."""
    shown = [one for one in answer.fixings if show_gone or one.state not in OUT_OF_SIGHT]
    if not shown:
        return []
    heading = styled("fixings across the joint", QUIET)
    head = line_item("fixings", EMPTY_LINE, heading)
    return [head, *(_fixing(one, width) for one in shown)]


def shaft(fixing: Fixing) -> str:
    """How a fixing is drawn: firm only where it is there and somebody has seen or set it."""
    if fixing.state in OUT_OF_SIGHT:
        return SHAFTS["gone"]
    doubtful = fixing.state == "uncertain" or fixing.known_from in ("suspected", "picture only")
    return SHAFTS["doubtful" if doubtful else "present"]


def _fixing(fixing: Fixing, width: int) -> Item:
    """A fixing: its sign in the drawing, name, material and making, state."""
    doubtful = shaft(fixing) == SHAFTS["doubtful"]
    sign = plain(shaft(fixing), SUBSTRATE.style)
    name = joined((sign, plain(fixing.component, STRONG), plain(fixing.name or fixing.kind)), " ")
    material = fixing.material or "material not recorded"
    detail = plain(f"{material}, {wording.made_words(fixing.made)}", QUIET)
    state = plain(wording.fixing_state(fixing), UNSURE if doubtful else "")
    if sum(one.cell_length for one in (name, detail, state)) + 6 <= width:
        lines = [two_ends(joined((name, detail), "  "), state, width)]
    elif name.cell_length + state.cell_length + 2 <= width:
        lines = [two_ends(name, state, width), joined((Content("  "), detail))]
    else:
        lines = [name, joined((Content(" "), state, detail), " ")]
    shown = [line.truncate(width, ellipsis=True) for line in lines]
    return Item(f"fixing:{fixing.component}", always(*shown), height=len(shown))


def residue_items(answer: PlaceAnswer, width: int) -> list[Item]:
    """Agents used here that nobody is on record as having cleared away."""
    if not answer.residues:
        return []
    heading = styled("possible residues: agents not shown to have been cleared", QUIET)
    items = [line_item("residues", EMPTY_LINE, heading)]
    for residue in answer.residues:
        name = joined(
            (
                plain(residue.material_name or "agent not recorded", STRONG),
                plain(residue.concentration, QUIET),
            ),
            ", ",
        )
        cleared = clearing(residue.cleared)
        how = plain(", ".join(one for one in (residue.form, residue.date.said) if one), QUIET)
        line = two_ends(joined((name, how), "  "), plain(cleared, UNSURE), width)
        items.append(Item(f"residue:{residue.ref}", always(line)))
    return items


def left_out(answer: PlaceAnswer, *, show_gone: bool) -> list[Item]:
    """How many layers and fixings are gone or not yet there, and the key that shows them."""
    things = [wording.standing(one) for one in answer.layers]
    things += [one.state for one in answer.fixings]
    counts = [
        f"{things.count(state)} {words}"
        for state, words in (("gone", wording.GONE), ("not yet", "not yet there"))
        if state in things
    ]
    if not counts:
        return []
    way = "drawn too: {} (g hides them)" if show_gone else "not drawn: {} (g shows them)"
    line = plain(way.format(", ".join(counts)), QUIET)
    return [line_item("left-out", EMPTY_LINE, line)]
