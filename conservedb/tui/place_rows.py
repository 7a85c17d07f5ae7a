"""Where a material lies, and where it was used as an agent, as entries of a list."""

from __future__ import annotations

from collections.abc import Iterator

from textual.content import Content

from conservedb.dates import civil, is_known
from conservedb.questions.basics import When
from conservedb.questions.material_answers import MaterialAnswer
from conservedb.questions.uses_answers import AgentUse, UsesLayer
from conservedb.questions.wording import clearing
from conservedb.tui import wording
from conservedb.tui.details import Fact
from conservedb.tui.text import QUIET, STRONG, UNSURE, joined, plain, styled, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, always, line_item

NUMBER, MARK = 12, 5
UNPLACED = "no location"


def place_items(answer: MaterialAnswer) -> list[Item]:
    """The places, then the uses as an agent."""
    where, several = answer.where, answer.kind == "material class"
    items = [Item(f"layer:{at}", _layer(row, several)) for at, row in enumerate(where.layers)]
    if not items:
        items.append(line_item("none", styled("no layer of it is on record", QUIET)))
    if where.places > len(where.layers):
        more = f"the first {len(where.layers)} of {where.places}; conservedb uses lists all"
        items.append(Item("note:more", always(plain(more, QUIET))))
    total = where.uses_certain + where.uses_possible
    if total:
        shown = f"the first {len(where.uses)} of {total}" if total > len(where.uses) else str(total)
        heading = joined((styled("Used as an agent", "bold $marked"), plain(shown, QUIET)), "  ")
        items.append(line_item("uses", Content(""), heading))
        items += [Item(f"use:{at}", _use(use)) for at, use in enumerate(where.uses)]
    if where.unidentified:
        words = f"{where.unidentified} layers of unknown material, any of which may be this"
        items.append(Item("note:unidentified", always(Content(""), plain(words, QUIET)), 2))
    return items


def _layer(row: UsesLayer, several: bool) -> Drawer:
    """A layer; among several materials it says which it is."""
    name = (row.material or row.material_words) if several else ""

    def draw(width: int) -> tuple[Content]:
        words = ", ".join(one for one in (name, row.role, _year(row.laid)) if one)
        state = plain(state_words(row), "" if row.certain else UNSURE)
        return (_line(row.object, row.place, words, state, width),)

    return draw


def _year(when: When) -> str:
    """The year of a date that lies in one, else the date as it is said."""
    if is_known(when.earliest) and is_known(when.latest) and not when.flags:
        first, last = (civil(day)[0] for day in (when.earliest, when.latest))
        if first == last > 0:
            return str(first)
    return when.said


def _use(use: AgentUse) -> Drawer:
    def draw(width: int) -> tuple[Content]:
        words = ", ".join(one for one in (_year(use.date), use.form, use.concentration) if one)
        right = plain("" if use.certain else "possible", UNSURE)
        return (_line(use.object, ", ".join(use.places), words, right, width),)

    return draw


def _line(number: str, mark: str, words: str, right: Content, width: int) -> Content:
    """Object and place are never given up for what stands beside them."""
    left = [plain(number, STRONG), plain(mark or UNPLACED, STRONG if mark else QUIET)]
    padded = [
        one.pad_right(max(room - one.cell_length, 0))
        for one, room in zip(left, (NUMBER, MARK), strict=True)
    ]
    start = joined((*padded, Content("")), " ")
    room = max(width - start.cell_length - 3, 1)
    beside = two_ends(plain(words, QUIET), right.truncate(room, ellipsis=True), room, least=1)
    return joined((start, Content("  "), beside))


def state_words(row: UsesLayer) -> str:
    """The state of a layer on the day; one that only may be of this material says so."""
    short = {"reduced": "residue left"} | ({"gone": "gone"} if len(row.possible) > 1 else {})
    states = " or ".join(short.get(one, wording.state_word(one)) for one in row.possible)
    return states if row.certain else f"possible: {states}"


def layer_facts(row: UsesLayer) -> Iterator[Fact]:
    """A layer of the list, in full."""
    yield "object", row.object
    yield "location", row.place or "not recorded"
    yield "layer", row.layer
    yield "material", row.material or "not recorded"
    yield "as written", row.material_words
    yield "role", row.role or "not recorded"
    yield "laid", row.laid.said
    yield "state", state_words(row)
    yield "identity", row.identified or "not recorded"


def use_facts(use: AgentUse) -> Iterator[Fact]:
    """A use as an agent, in full."""
    yield "object", use.object
    yield "locations", ", ".join(use.places) or "not recorded"
    yield "intervention", use.intervention
    yield "date", use.date.said
    yield "agent", use.material or "not recorded"
    yield "as written", use.material_words
    yield "form", use.form
    yield "concentration", use.concentration
    yield "cleared", clearing(use.cleared)
