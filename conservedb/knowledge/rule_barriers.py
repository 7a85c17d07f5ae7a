"""Rules about what lies between a hard resin and the body: barriers, and whether they were dry.

A barrier lets an irreversible adhesive come off: thin, continuous, on both faces, and fully
dry before it was covered. The published test waited one month (Podany, Garland, Freeman and
Rogers, JAIC 40-1, 2001).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from typing import NamedTuple

from conservedb.knowledge.rule_barrier_faults import Fault, faults
from conservedb.knowledge.rule_case import Case, Finding, KnownLayer, KnownPart, KnownPlace
from conservedb.knowledge.rule_words import (
    bracketed,
    dated,
    layer_words,
    listed,
    load_words,
    part_words,
)

TESTED_DAYS = 30
"""How long the barriers of the published test dried before they were covered."""
BARRIERS = ("barrier", "isolating layer", "isolating varnish")
"""Roles of layers that are there so that what lies on them comes off again."""
COVERING = ("adhesive", "fill", "bedding", "grout", "mortar", "setting", "pointing")
"""Roles of layers that are laid over a barrier."""
_NEVER_ORIGINAL = ("restoration", "replacement", "fixing", "mount")
_WITHIN = ("consolidant", "fill", "inpainting", "toning", "coating", "varnish", "wax", *BARRIERS)
"""Roles under which a barrier is no use or is asked for by a rule of its own."""
_BARRIER_UNKNOWN = ("whether there was a barrier",)
_BARE = "cross-linked-without-barrier"


def cross_linked_without_barrier(case: Case) -> Iterator[Finding]:
    """A cross-linked resin on a porous original body with no barrier between."""
    for place in case.places.values():
        for layer in place.present:
            if layer.role not in _WITHIN and layer.origin != "maker":
                yield from _bare_sides(case, place, layer)


def _bare_sides(case: Case, place: KnownPlace, layer: KnownLayer) -> Iterator[Finding]:
    if not layer.matters and layer.role == "adhesive" and place.kind == "joint":
        sentence = (
            f"{place.mark}: whether {layer_words(layer)} is a cross-linked resin on the bare"
            f" body cannot be told; {load_words(place)}."
        )
        yield _finding(_BARE, sentence, place, (layer,), (f"what {layer.ref} is made of",))
    if not layer.has("cross-linked") or layer.has("drying oil"):
        return
    sides = bare_sides(case, place, layer)
    for recorded in (True, False):
        those = [side for side in sides if (not side.unknown) is recorded]
        if those:
            yield _without(place, layer, those)


class Bare(NamedTuple):
    """A side on which a layer lies, or may lie, on the bare body, and why it counts as bare.

    `unknown` are the facts that are not recorded; none where it is bare by the record.
    """

    part: KnownPart
    why: str
    unknown: tuple[str, ...] = ()
    barriers: tuple[KnownLayer, ...] = ()

    @property
    def missing(self) -> list[str]:
        """What is not recorded, of the body or of the barrier."""
        porous = self.part.matter is not None and self.part.matter.has("porous")
        return [*([] if porous else [f"whether {part_words(self.part)} is porous"]), *self.unknown]


def bare_sides(case: Case, place: KnownPlace, layer: KnownLayer) -> list[Bare]:
    """The sides of a layer with a porous original body and no barrier certainly between."""
    return [
        bare
        for side, part in bearers(case, place, layer)
        if part.matter is None or not part.matter.lacks("porous")
        if (bare := _bare(place, layer, side, part)) is not None
    ]


def _bare(place: KnownPlace, layer: KnownLayer, side: str, part: KnownPart) -> Bare | None:
    on = f" on side {side}" if side else ""
    under = [one for one in place.layers if is_under(one, layer, side)]
    there = [one for one in under if one.there == "certain"]
    if there:
        return _through(there, layer, side, part)
    possible = [one for one in under if one.there == "possible"]
    if possible:
        return Bare(part, f"{layer_words(possible[0])}{on}", _BARRIER_UNKNOWN, tuple(possible))
    if under:
        return Bare(part, f"{listed(map(_gone_words, under))}{on}", (), tuple(under))
    if place.no_barrier:
        return Bare(part, f"the barrier is recorded as none ({place.no_barrier})")
    late = [
        one
        for one in place.present
        if one.role in BARRIERS and _is_later(one, layer) and one.side in ("", side)
    ]
    if late:
        why = f"{listed(map(layer_words, late))} {'was' if len(late) == 1 else 'were'} laid later"
        return Bare(part, f"{why}; no barrier is on record{on}", _BARRIER_UNKNOWN, tuple(late))
    return Bare(part, f"no barrier is on record{on}", _BARRIER_UNKNOWN)


def _through(there: list[KnownLayer], layer: KnownLayer, side: str, part: KnownPart) -> Bare | None:
    """What the barriers that are certainly there leave bare; None where one of them is sound."""
    doubtful: list[tuple[KnownLayer, list[Fault]]] = []
    useless: list[tuple[KnownLayer, list[Fault]]] = []
    for one in there:
        found = faults(one, layer, side)
        if not found:
            return None
        (doubtful if all(fault.unknown for fault in found) else useless).append((one, found))
    counted = doubtful or [
        (one, [fault for fault in found if not fault.unknown]) for one, found in useless
    ]
    why = listed(f"{layer_words(one)}, {listed(f.why for f in found)}," for one, found in counted)
    unknown = dict.fromkeys(fault.unknown for _, found in counted for fault in found)
    barriers = tuple(one for one, _ in counted)
    on = f" on side {side}" if side else ""
    return Bare(part, f"{why} lies between them{on}", tuple(u for u in unknown if u), barriers)


def _without(place: KnownPlace, layer: KnownLayer, sides: list[Bare]) -> Finding:
    missing = dict.fromkeys(word for side in sides for word in side.missing)
    barriers = {one.ref: one for side in sides for one in side.barriers}.values()
    sentence = (
        f"{place.mark}: {layer_words(layer)}, a cross-linked resin, dated {dated(layer.date)}"
        f"{bracketed(layer.cited)}, lies on {listed(part_words(side.part) for side in sides)};"
        f" {listed(side.why for side in sides)}; {load_words(place)}."
    )
    return _finding(_BARE, sentence, place, (layer, *barriers), tuple(missing))


def bearers(case: Case, place: KnownPlace, layer: KnownLayer) -> Iterator[tuple[str, KnownPart]]:
    """The components, made for the object, that a layer may touch, with their sides.

    What a restorer added, a pin or an insert, is not a body to be spared.
    """
    parts = case.sides(place)
    if place.kind != "joint":
        sides = [("", part) for part in parts[:1]]
    else:
        both = parts * 2 if len(parts) == 1 else parts
        sides = [
            (side, part)
            for side, part in zip("AB", both, strict=False)
            if layer.side in ("", side) or layer.zone not in ("", "face")
        ]
    for side, part in sides:
        if part.origin not in _NEVER_ORIGINAL and part.mark not in case.fixings:
            yield side, part


def is_under(barrier: KnownLayer, layer: KnownLayer, side: str) -> bool:
    """Whether it is a barrier laid before the layer, on that side as far as is recorded."""
    if barrier.role not in BARRIERS or barrier is layer:
        return False
    if _is_later(barrier, layer) or barrier.went[1] <= layer.came[0]:
        return False
    if barrier.zone and layer.zone and barrier.zone != layer.zone:
        return False
    if side and barrier.side:
        return barrier.side == side
    if barrier.stack is None or layer.stack is None:
        return True
    return barrier.stack > layer.stack if side == "B" else barrier.stack < layer.stack


def _is_later(barrier: KnownLayer, layer: KnownLayer) -> bool:
    """Whether it was certainly laid after the layer."""
    return barrier.came[0] > layer.came[1]


def _gone_words(barrier: KnownLayer) -> str:
    how = f"was not found when looked for{bracketed(barrier.missed)}"
    return f"{layer_words(barrier)} {how if barrier.missed else 'is recorded as gone'}"


# -- dryness ------------------------------------------------------------------------------


def barrier_not_dry(case: Case) -> Iterator[Finding]:
    """A barrier covered before it was dry, or of which nobody says that it was."""
    for place in case.places.values():
        alike: dict[tuple[str, str], list[KnownLayer]] = defaultdict(list)
        covering: dict[tuple[str, str], KnownLayer] = {}
        for barrier in place.present:
            over = _covering(place, barrier)
            if barrier.role in BARRIERS and barrier.dry != "yes" and over is not None:
                alike[barrier.dry, over.ref].append(barrier)
                covering[barrier.dry, over.ref] = over
        for key, barriers in alike.items():
            yield _damp(place, barriers, covering[key])


def _covering(place: KnownPlace, barrier: KnownLayer) -> KnownLayer | None:
    """The first layer laid over a barrier that is still there."""
    over = [
        layer
        for layer in place.present
        if layer.role in COVERING
        and (is_under(barrier, layer, "A") or is_under(barrier, layer, "B"))
    ]
    return min(over, key=lambda layer: layer.came, default=None)


_DRYNESS = {
    "no": "recorded as not dry",
    "unknown": "recorded as not known to be dry",
    "": "of which it is not recorded that it was dry,",
}


def _damp(place: KnownPlace, barriers: list[KnownLayer], covering: KnownLayer) -> Finding:
    dry = barriers[0].dry
    sentence = (
        f"{place.mark}: {listed(map(layer_words, barriers))}{bracketed(barriers[0].cited)},"
        f" {_DRYNESS[dry]} when covered with {layer_words(covering)},"
        f" {_waited(barriers[0], covering)}; the published test waited one month (Podany et al."
        f" 2001); {load_words(place)}."
    )
    refs = listed(barrier.ref for barrier in barriers)
    missing = () if dry == "no" else (f"whether {refs} was dry when covered",)
    return _finding("barrier-not-dry", sentence, place, (*barriers, covering), missing)


def _waited(barrier: KnownLayer, covering: KnownLayer) -> str:
    least = max(0, covering.came[0] - barrier.came[1])
    most = covering.came[1] - barrier.came[0]
    if not (barrier.date.words and covering.date.words) or most > _LONGEST:
        return f"laid {dated(barrier.date)} and {dated(covering.date)}"
    if most == 0:
        return f"laid on the same day, {dated(covering.date)}"
    days = f"{most}" if least == most else f"{least} to {most}"
    short = ", less than that," if most < TESTED_DAYS else ""
    return f"{days} days{short} lie between by the dates ({dated(barrier.date)})"


_LONGEST = 3660


def _finding(
    rule: str,
    sentence: str,
    place: KnownPlace,
    layers: tuple[KnownLayer, ...],
    missing: tuple[str, ...] = (),
) -> Finding:
    return Finding(
        rule,
        sentence,
        places=(place.mark,),
        layers=tuple(layer.ref for layer in layers),
        missing=missing,
        certain=layers[0].sure,
        load_kg=place.load_kg,
    )
