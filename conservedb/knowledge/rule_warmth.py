"""Rules about warmth: where a layer softens, where it may creep, and rooms that get that warm.

A thermoplastic under load creeps below the temperature at which it softens; from how many
degrees below is a setting. While a film keeps some of its solvent, its glass transition lies
lower, by up to 30 degrees (Vincotte and others, Heritage Science 2019). Of several published
figures the lowest counts, and all are named.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.rule_case import (
    Case,
    Climate,
    Finding,
    KnownLayer,
    KnownPlace,
    most_load,
)
from conservedb.knowledge.rule_kinds import SOFT_METAL, may_be
from conservedb.knowledge.rule_words import (
    DAYS_A_MONTH,
    bracketed,
    layer_words,
    listed,
    load_words,
)
from conservedb.knowledge.settled import Settled
from conservedb.knowledge.warming import Softens, softens

SOFTENS, MAY_CREEP = "softens", "may creep"
CARRYING = (
    "",
    "adhesive",
    "barrier",
    "bedding",
    "grout",
    "lead run",
    "mortar",
    "setting",
    "solder",
)
"""Roles of layers that carry what a joint carries; a layer of no recorded role may."""
_NAMED = 6


class Warmed(NamedTuple):
    """What a temperature does to a material: "softens", "may creep" or "".

    Attributes:
        low: the lowest figure that counts, lowered where solvent may remain.
        lines: every published figure with its source.
        sure: whether some of it is more than a memory.
        sources: of the figures, in full.
    """

    verdict: str
    low: float
    lines: tuple[str, ...]
    sure: bool
    sources: tuple[str, ...] = ()


def softening(matter: Matter, lowered: float = 0.0) -> Softens | None:
    """Where a material softens; of a recipe without figures of its own, its softest part."""
    own = softens(matter, lowered)
    if own is not None:
        return own
    parts = [found for part in matter.parts if (found := softening(part, lowered))]
    return min(parts, key=lambda found: found.low, default=None)


def creeps(matter: Matter) -> bool:
    """Whether a material is known to creep under load."""
    return matter.has("creeps under load") or any(creeps(part) for part in matter.parts)


def warmed(matter: Matter, temperature: float, lowered: float, margin: float) -> Warmed | None:
    """What a temperature does to a material; None where no figure is recorded for it."""
    found = softening(matter, lowered)
    if found is None:
        return None
    verdict = ""
    if temperature >= found.low:
        verdict = SOFTENS
    elif temperature >= found.low - margin and creeps(matter):
        verdict = MAY_CREEP
    sources = figure_sources(found)
    return Warmed(verdict, found.low, found.lines, not found.remembered, sources)


def lowering(layer: KnownLayer, day: int, settled: Settled) -> float:
    """By how much a glass transition may lie lower because solvent may remain in the film."""
    carrier = layer.carrier_matter
    if carrier is not None and not carrier.has("organic solvent"):
        return 0.0
    young = day - layer.came[1] < settled.hold_months * DAYS_A_MONTH
    return settled.depression if young else 0.0


# -- rooms --------------------------------------------------------------------------------


class _Found(NamedTuple):
    place: KnownPlace
    layer: KnownLayer
    climate: Climate
    warmed: Warmed
    lowered: float
    margin: float

    @property
    def rests_on_lowering(self) -> bool:
        """Whether only solvent that may remain makes the layer soften or creep."""
        from_c = self.warmed.low + self.lowered
        if self.warmed.verdict == MAY_CREEP:
            from_c -= self.margin
        return self.lowered > 0 and self.climate.max_c < from_c


def creep_temperature(case: Case) -> Iterator[Finding]:
    """A joint under load that may creep in the room where it is."""
    for those in _in_their_rooms(case, MAY_CREEP):
        place, climate = those[0].place, those[0].climate
        those = [one for one in those if one.layer.role in CARRYING]
        if those and place.loaded:
            below = those[0].warmed.low - climate.max_c
            effect = (
                f"may creep under load, {below:g} C below softening"
                f" (margin {case.settled.creep_margin:g} C)"
            )
            yield _finding("creep-temperature", those, effect, load_words(place))
    loaded = [place for place in case.joints if place.loaded]
    yield from _soft_metal(loaded)
    yield from _unknown("creep-temperature", case, loaded)


def softening_temperature(case: Case) -> Iterator[Finding]:
    """A layer that softens in the room where it is."""
    for those in _in_their_rooms(case, SOFTENS):
        load = load_words(those[0].place) if those[0].place.loaded else ""
        yield _finding("softening-temperature", those, "softens", load)
    others = [place for place in case.places.values() if not place.loaded]
    yield from _unknown("softening-temperature", case, others)


def _soft_metal(places: Sequence[KnownPlace]) -> Iterator[Finding]:
    """Lead and solder under load: they creep long before they melt, how far is not recorded."""
    concerned = [
        (place, layer)
        for place in places
        for layer in place.present
        if layer.role in CARRYING and is_soft_metal(layer)
    ]
    if concerned:
        missing = [f"how far {layer.name} creeps under its load" for _, layer in concerned]
        effect = "are or may be of lead or tin, which creeps under load at room temperature"
        yield _cannot_tell("creep-temperature", concerned, missing, effect)


def is_soft_metal(layer: KnownLayer) -> bool:
    """Whether a layer is or may be of lead or tin."""
    return any(may_be(matter, SOFT_METAL) for matter in layer.matters)


def _in_their_rooms(case: Case, verdict: str) -> Iterator[list[_Found]]:
    """What the rooms do to layers; those of one place with the same figures together."""
    for place in case.places.values():
        climate = max(place.climates, key=lambda one: one.max_c, default=None)
        if climate is None:
            continue
        alike: dict[tuple[str, ...], list[_Found]] = {}
        for layer in place.present:
            lowered = lowering(layer, case.day, case.settled)
            margin = case.settled.creep_margin
            worst = _worst(layer, climate.max_c, lowered, margin)
            if worst is not None and worst.verdict == verdict:
                found = _Found(place, layer, climate, worst, lowered, margin)
                alike.setdefault((*worst.lines, str(lowered)), []).append(found)
        yield from alike.values()


def _worst(layer: KnownLayer, temperature: float, lowered: float, margin: float) -> Warmed | None:
    """The worst of what a temperature does to anything that a layer may be made of."""
    readings = [warmed(matter, temperature, lowered, margin) for matter in layer.matters]
    known = [reading for reading in readings if reading is not None]
    return min(known, key=lambda reading: reading.low, default=None)


def _finding(rule: str, those: Sequence[_Found], effect: str, load: str) -> Finding:
    place, climate, reading = those[0].place, those[0].climate, those[0].warmed
    lowered = "; figures lowered while solvent may remain" if those[0].lowered else ""
    room = f"{climate.room}{bracketed(climate.use, climate.source)}"
    sentence = (
        f"{place.mark}: {listed(layer_words(one.layer) for one in those)} {effect}, in {room},"
        f" which reaches {climate.max_c:g} C; {figures_words(reading)}{lowered}"
        f"{f'; {load}' if load else ''}."
    )
    return Finding(
        rule,
        sentence,
        places=(place.mark,),
        layers=tuple(one.layer.ref for one in those),
        certain=reading.sure and any(one.layer.sure and not one.rests_on_lowering for one in those),
        load_kg=place.load_kg if place.kind == "joint" else None,
        sources=reading.sources,
    )


def figures_words(found: Warmed | Softens) -> str:
    """The published figures of a softening range, each with its source."""
    return listed(found.lines)


def figure_sources(found: Softens) -> tuple[str, ...]:
    """The sources of a softening range, in full."""
    return tuple(found.sources.split("; ")) if found.sources else ()


def _unknown(rule: str, case: Case, places: Sequence[KnownPlace]) -> Iterator[Finding]:
    """What cannot be told: rooms of no recorded warmth, layers of no recorded figure."""
    rooms: dict[str, list[tuple[KnownPlace, KnownLayer]]] = {}
    figures: list[tuple[KnownPlace, KnownLayer]] = []
    missing: list[str] = []
    for place in places:
        for layer in place.present:
            if place.loaded and layer.role not in CARRYING:
                continue
            known = any(softening(matter) is not None for matter in layer.matters)
            if known and not place.climates and not is_soft_metal(layer):
                rooms.setdefault(place.kept, []).append((place, layer))
            elif not known and any(creeps(matter) for matter in layer.matters):
                figures.append((place, layer))
                missing.append(f"at what temperature {layer.name} softens")
            elif not layer.matters and layer.role == "adhesive" and place.kind == "joint":
                figures.append((place, layer))
                missing.append(f"what {layer.ref} is made of")
    for kept, concerned in rooms.items():
        room = f"how warm {kept} gets" if kept else "where it is kept, and how warm that gets"
        yield _cannot_tell(rule, concerned, [room], "soften by recorded figures")
    if figures:
        yield _cannot_tell(rule, figures, missing, "may soften")


def _cannot_tell(
    rule: str,
    concerned: Sequence[tuple[KnownPlace, KnownLayer]],
    missing: Sequence[str],
    effect: str,
) -> Finding:
    named = [f"{place.mark} {layer_words(layer)}" for place, layer in concerned[:_NAMED]]
    more = f" and {len(concerned) - _NAMED} more" if len(concerned) > _NAMED else ""
    places = {place.mark: place for place, _ in concerned}
    return Finding(
        rule,
        f"these layers {effect}: {'; '.join(named)}{more}.",
        places=tuple(places),
        layers=tuple(layer.ref for _, layer in concerned),
        missing=tuple(dict.fromkeys(missing))[:_NAMED],
        certain=False,
        load_kg=most_load(places.values()),
    )
