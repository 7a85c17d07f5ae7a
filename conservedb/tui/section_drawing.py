"""What lies at a place, composed as entries of a list that together make a drawn section.

A joint is drawn from side A down to side B; a surface as a cross-section is, with the substrate
at the foot and the outermost layer on top. Zones keep a column of their own; fixings run down
beside the layers from one side into the other.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from textual.content import Content

from conservedb.questions.answers import Fixing, Layer, PlaceAnswer, Side
from conservedb.tui import wording
from conservedb.tui.hatching import SUBSTRATE, drawn, hatch_of
from conservedb.tui.section_lists import (
    OUT_OF_SIGHT,
    fixing_items,
    left_out,
    residue_items,
    shaft,
)
from conservedb.tui.text import (
    CERTAIN,
    QUIET,
    STRONG,
    UNSURE,
    joined,
    plain,
    styled,
    two_ends,
)
from conservedb.tui.widgets.lines import Item, always, line_item

ZONE_ORDER = ("face", "core", "edge")
MOST_SHAFTS = 5
WIDEST = 88  # cells of words beside a drawing, so that the eye finds back
ONE_LINE = 84  # cells of room from which a layer is said in one line
STATE_STYLES = {"present": CERTAIN, "reduced": CERTAIN, "uncertain": UNSURE}


@dataclass(frozen=True, slots=True)
class Frame:
    """How the width is shared out.

    Attributes:
        zones: zone and cells of each column of the drawing, left to right.
        fixings: those drawn, crossing beside the layers.
        width: of all, drawing and words.
        names: cells for the names of materials where a layer is said in one line, else 0.
    """

    zones: tuple[tuple[str, int], ...]
    fixings: tuple[Fixing, ...]
    width: int
    names: int = 0

    @property
    def across(self) -> int:
        """Cells that the hatched part takes, gaps between zones included."""
        return sum(width for _, width in self.zones) + len(self.zones) - 1

    @property
    def left(self) -> int:
        """Cells before the words: letter of the side, hatching, fixings, a gap."""
        return 2 + self.across + 2 * len(self.fixings) + 2

    @property
    def room(self) -> int:
        """Cells for words beside the drawing."""
        return self.width - self.left


def frame_of(answer: PlaceAnswer, shown: Sequence[Layer], width: int, *, compact: bool) -> Frame:
    """Shares out the drawing's width between the zones that occur.

    Compact, a layer is said in one line where there is room for it.
    """
    across = 14 if width < 64 else 18 if width < 90 else 24
    present = {layer.zone or "face" for layer in shown}
    zones: list[tuple[str, int]] = [("face", across)]
    if "edge" in present:
        zones = [("edge", 4), ("face", across - 5)]
    if "core" in present:
        zones = [*zones[:-1], ("face", zones[-1][1] - 5), ("core", 4)]
    crossing = [one for one in answer.fixings if one.state not in OUT_OF_SIGHT]
    frame = Frame(tuple(zones), tuple(crossing[:MOST_SHAFTS]), width)
    if compact and frame.room >= ONE_LINE:
        longest = max((_name(layer).cell_length for layer in shown), default=0)
        return replace(frame, names=min(longest, frame.room * 3 // 10))
    return replace(frame, width=min(width, frame.left + WIDEST))


def section_items(
    answer: PlaceAnswer, width: int, height: int, *, show_gone: bool
) -> Sequence[Item]:
    """The entries of the section of a place, for a list of `width` by `height` cells.

    Where the section does not fit in the height it is drawn compactly.
    """
    shown = [one for one in answer.layers if show_gone or wording.standing(one) not in OUT_OF_SIGHT]
    if 2 * len(shown) < height:
        items = _items(
            answer, shown, frame_of(answer, shown, width, compact=False), show_gone=show_gone
        )
        if sum(item.height for item in items) <= height:
            return items
    frame = frame_of(answer, shown, width, compact=True)
    return _items(answer, shown, frame, show_gone=show_gone)


def _items(
    answer: PlaceAnswer, shown: Sequence[Layer], frame: Frame, *, show_gone: bool
) -> list[Item]:
    items = [_caption(answer, frame)]
    if answer.kind == "joint":
        items += _joint_items(answer, shown, frame)
    else:
        bands = [_band(layer, frame) for layer in reversed(shown)]
        items += bands or [_nothing(frame)]
        items += [_substrate(side, frame) for side in answer.sides]
    items += fixing_items(answer, frame.width, show_gone=show_gone)
    items += residue_items(answer, frame.width)
    return items + left_out(answer, show_gone=show_gone)


def _joint_items(answer: PlaceAnswer, shown: Sequence[Layer], frame: Frame) -> list[Item]:
    """Side A, what stayed on it, the joint zone by zone, what stayed on B, side B."""
    between = sorted(
        (one for one in shown if not _parted(one)),
        key=lambda one: ZONE_ORDER.index(one.zone or "face"),
    )
    parted = [one for one in shown if _parted(one)]
    sides = {side.side: side for side in answer.sides}
    items = [_substrate(sides[s], frame) for s in ("A",) if s in sides]
    items += [_stuck(one, frame, "A") for one in parted if one.remains != "B"]
    items += [_band(one, frame) for one in between]
    items += [_stuck(one, frame, "B") for one in parted if one.remains != "A"]
    if not shown:
        items.append(_nothing(frame))
    return items + [_substrate(sides[s], frame) for s in ("B",) if s in sides]


def _parted(layer: Layer) -> bool:
    """Whether the joint has certainly been opened since this layer came."""
    return bool(layer.remains) and not layer.remains.startswith("possibly")


def _stuck(layer: Layer, frame: Frame, side: str) -> Item:
    """Remains drawn beside their substrate: in full once, as an echo on the other side."""
    main = "B" if layer.remains.startswith("B") else "A"
    return _band(layer, frame) if side == main else _echo(layer, frame, side)


def _caption(answer: PlaceAnswer, frame: Frame) -> Item:
    """Says in which order the build-up reads, over the columns of the zones."""
    bearer = answer.sides[0].component if answer.sides else answer.place
    if answer.kind == "joint":
        order = "build-up from A to B"
    elif answer.kind == "surface":
        order = f"build-up outward from {bearer}, outermost on top"
    else:
        order = f"build-up outward from {bearer}"
    columns = ""
    if len(frame.zones) > 1:
        columns = " ".join(zone.ljust(width)[:width] for zone, width in frame.zones)
    over = "  " + columns.ljust(frame.left - 2)
    line = joined((plain(over, QUIET), plain(order, QUIET)))
    return line_item("caption", line)


def _nothing(frame: Frame) -> Item:
    words = styled("nothing on record lies here on this day", QUIET)
    line = joined((Content(" " * frame.left), words))
    return line_item("nothing", line)


def _substrate(side: Side, frame: Frame) -> Item:
    """The part on one side, drawn full across; fixings reach into it."""
    letter = f"{side.side or ' '} "[:2]
    hatch = SUBSTRATE.upper * frame.across
    shafts = "".join(f"{SUBSTRATE.upper}{shaft(one)}" for one in frame.fixings)
    end = SUBSTRATE.upper if frame.fixings else ""
    drawing = plain(f"{hatch}{shafts}{end}".ljust(frame.left - 2), SUBSTRATE.style)
    name = plain(f"{side.component} {side.name}".strip(), STRONG)
    material = plain(side.material or "material not recorded", QUIET)
    line = joined((plain(letter, STRONG), drawing, joined((name, material), "  ")))
    return Item(f"side:{side.side}", always(line))


def _drawing(layer: Layer, frame: Frame, line: int) -> Content:
    """The hatched part of one line of a layer."""
    hatch = hatch_of(layer.role)
    cells = [
        drawn(hatch, width, line, wording.standing(layer), layer.coverage)
        if zone == (layer.zone or "face")
        else " " * width
        for zone, width in frame.zones
    ]
    shafts = "".join(f" {shaft(one)}" for one in frame.fixings)
    quiet = wording.standing(layer) in OUT_OF_SIGHT
    letter = layer.side if line == 0 and layer.side and not _parted(layer) else ""
    return joined(
        (
            plain(letter.ljust(2), QUIET),
            plain(" ".join(cells), QUIET if quiet else hatch.style),
            plain(f"{shafts}  ", SUBSTRATE.style),
        )
    )


def _band(layer: Layer, frame: Frame) -> Item:
    """A layer: its hatch, and beside it what, in which state, since when and by whom."""

    def draw(_: int) -> Sequence[Content]:
        words = _band_words(layer, frame)
        return [joined((_drawing(layer, frame, i), line)) for i, line in enumerate(words)]

    own_lines = 1 if frame.names else 2 if _fit_one_line(layer, frame) else 3
    return Item(f"layer:{layer.ref}", draw, own_lines + len(wording.remarks(layer)))


def _band_words(layer: Layer, frame: Frame) -> list[Content]:
    """The lines of words beside a band: name, state, how it came, and remarks."""
    room, name, state = frame.room, _name(layer), _state(layer)
    came = plain(wording.laid_words(layer), QUIET)
    if frame.names:
        start = name.truncate(frame.names, ellipsis=True)
        start = start.pad_right(frame.names + 2 - start.cell_length)
        middle = came.truncate(room - frame.names - state.cell_length - 4, ellipsis=True)
        lines = [two_ends(joined((start, middle)), state, room)]
    elif _fit_one_line(layer, frame):
        lines = [two_ends(name, state, room), came]
    else:
        lines = [name, state, came]
    lines += [plain(words, UNSURE if doubt else QUIET) for words, doubt in wording.remarks(layer)]
    return [line.truncate(room, ellipsis=True) for line in lines]


def _fit_one_line(layer: Layer, frame: Frame) -> bool:
    """Whether name and state of a layer have room side by side."""
    return _name(layer).cell_length + _state(layer).cell_length + 2 <= frame.room


def _name(layer: Layer) -> Content:
    """Material and concentration."""
    quiet = wording.standing(layer) in OUT_OF_SIGHT
    name = plain(wording.layer_name(layer), QUIET if quiet else STRONG)
    if not layer.concentration:
        return name
    return joined((name, plain(layer.concentration, QUIET)), ", ")


def _state(layer: Layer) -> Content:
    return plain(wording.layer_state(layer), STATE_STYLES.get(wording.standing(layer), QUIET))


def _echo(layer: Layer, frame: Frame, side: str) -> Item:
    """The other share of remains that lie on both sides, or nobody knows on which."""
    where = (
        "on both sides" if layer.remains == "both" else f"whether on {side} too: {wording.UNSURE}"
    )
    words = plain(f"{wording.layer_name(layer)}, {where}", QUIET)
    line = joined((_drawing(layer, frame, 1), words))
    return line_item(f"echo:{side}:{layer.ref}", line)
