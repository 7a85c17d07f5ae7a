"""The target and its neighbours in build-up order, and beside each what an option does to it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from textual.content import Content

from conservedb.knowledge.plan import Option, Plan, Reading
from conservedb.questions.removal_answers import Band, RemovalAnswer
from conservedb.tui.effects import effect_words
from conservedb.tui.hatching import SUBSTRATE, drawn, hatch_of
from conservedb.tui.text import ACCENT, QUIET, STRONG, UNSURE, joined, plain, styled
from conservedb.tui.widgets.lines import Item, line_item

TARGET, THROUGH = "▶ ", "▷ "
NARROW_HATCH, WIDE_HATCH = 12, 20
LEAST_NAME = 12
PATHS = {
    "open": "path open",
    "tight": "path tight",
    "porous": "path through a porous body",
    "unknown": "path not known",
}


def build_up_items(answer: RemovalAnswer, option: Option | None, width: int) -> list[Item]:
    """One line a band, from side A down to side B; a surface has its substrate at the foot."""
    here = [band for band in answer.bands if band.path == "same place"]
    near = [band for band in answer.bands if band.path != "same place"]
    draw = _Drawing(answer, option, width)
    items = [draw.item(band) for band in _in_order(here, is_joint=draw.is_joint)]
    crossing = next((at for at, band in enumerate(here) if draw.crosses(band)), None)
    if crossing is not None:
        line = styled("  fixings across the joint", QUIET)
        items.insert(crossing, line_item("crossing", line))
    for place in dict.fromkeys(band.place for band in near):
        there = [band for band in near if band.place == place]
        items.append(line_item(f"near:{place}", _way(there[0])))
        items += [draw.item(band) for band in there]
    if not items:
        items.append(line_item("none", styled("nothing is on record around it", QUIET)))
    return items


def target_line(items: Sequence[Item]) -> int:
    """Which line the target stands in, 0 where it is not drawn."""
    return next((at for at, item in enumerate(items) if item.key.startswith("target:")), 0)


def _in_order(bands: Sequence[Band], *, is_joint: bool) -> Iterable[Band]:
    """Layers between the sides of a joint; on one bearer, the outermost first."""
    return bands if is_joint else reversed(bands)


def _way(band: Band) -> Content:
    """Where a neighbour at another place lies, and how an agent may get there."""
    far = f"{band.distance_mm:g} mm away" if band.distance_mm is not None else "near by"
    way = PATHS.get(band.path, f"path {band.path}")
    return plain(f"  {far}, at {band.place}; {way}", QUIET)


class _Drawing:
    """Draws bands in one width; what an option does to them stands in a column of its own."""

    def __init__(self, answer: RemovalAnswer, option: Option | None, width: int) -> None:
        self.answer, self.option, self.width = answer, option, width
        self.is_joint = bool(answer.plan.carries)  # said of joints alone
        self._across = NARROW_HATCH if width < 90 else WIDE_HATCH
        self._column = max((self._effect(one).cell_length for one in answer.bands), default=0)

    def crosses(self, band: Band) -> bool:
        """Whether it is a part that crosses the joint, and no side of it."""
        return self.is_joint and not band.layer and not band.side

    def item(self, band: Band) -> Item:
        """A band: its mark, hatch, name, and what happens to it."""
        hatch = hatch_of(band.role) if band.layer and not band.is_substrate else SUBSTRATE
        side = band.side if self.is_joint else ""
        mark = TARGET if band.is_target else THROUGH if self._through(band) else "  "
        start = joined(
            (
                plain(mark, f"bold {ACCENT}"),
                plain(f"{side or ' '} "[:2], QUIET),
                plain(drawn(hatch, self._across, 0, band.state or "present"), hatch.style),
                Content("  "),
            )
        )
        room = max(self.width - start.cell_length - self._column - 2, LEAST_NAME)
        name = _name(band, room)
        gap = Content(" " * max(room + 2 - name.cell_length, 0))
        line = joined((start, name, gap, self._effect(band))).truncate(self.width, ellipsis=True)
        kind = "target" if band.is_target else "band"
        return line_item(f"{kind}:{band.place}:{band.layer or band.name}", line)

    def _through(self, band: Band) -> bool:
        """Whether it is the barrier through which the target is released."""
        via = self.answer.plan.via
        return via is not None and not band.place and band.layer == via.layer

    def _effect(self, band: Band) -> Content:
        if self.option is None:
            return Content("")
        reading = reading_of(band, self.answer, self.option)
        if reading is None:
            return styled("  not judged", QUIET)
        wanted = band.is_target or self._through(band)
        return effect_words(reading.effect, wanted=wanted)


def _name(band: Band, room: int) -> Content:
    """What it is, with role and zone; a doubt whether it is there is never cut off."""
    role = "" if band.is_substrate or not band.layer else band.role
    zone = "" if band.zone == "face" else band.zone
    doubt = plain(
        {"uncertain": "not established", "reduced": "residue"}.get(band.state, ""), UNSURE
    )
    name = joined(
        (plain(band.layer, QUIET), plain(band.name, STRONG if band.is_target else "")), " "
    )
    words = joined((name, plain(role, QUIET), plain(zone, QUIET)), ", ")
    left = max(room - doubt.cell_length - (2 if doubt.plain else 0), 1)
    return joined((words.truncate(left, ellipsis=True), doubt), ", ").truncate(room)


def judged_layer(plan: Plan, option: Option) -> tuple[str, str]:
    """Ref and name of the layer whose reading is the option's first.

    It is the barrier, where release is through one; work by hand is about the layer itself.
    """
    if plan.via is not None and option.kind != "mechanical":
        return plan.via.layer, plan.via.name
    return plan.target.layer, plan.target.name


def reading_of(band: Band, answer: RemovalAnswer, option: Option) -> Reading | None:
    """What an option does to a band, None where that was not judged."""
    place = band.place or answer.place
    if place == answer.place and band.layer and band.layer == judged_layer(answer.plan, option)[0]:
        return option.target
    found = [near for near in option.neighbours if _is(band, near.layer)]
    exact = [near for near in found if near.place == place]
    if not exact and band.layer:
        exact = found  # one layer that may lie at several places is judged at one of them
    return exact[0].reading if exact else None


def _is(band: Band, ref: str) -> bool:
    """Whether a band is the layer of that ref, or the bearer whose mark begins its name."""
    if band.layer:
        return band.layer == ref
    return band.name == ref or (bool(ref) and band.name.startswith(f"{ref} "))
