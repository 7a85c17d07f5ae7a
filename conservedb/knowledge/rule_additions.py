"""Rules about additions that ought to come off again: inpainting, fills, temporary materials."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from conservedb.dates import is_known
from conservedb.knowledge.behaviour import Fact, Matter
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_barriers import BARRIERS, bare_sides, is_under
from conservedb.knowledge.rule_case import Case, Finding, KnownLayer, KnownPlace
from conservedb.knowledge.rule_words import (
    bracketed,
    dated,
    layer_words,
    listed,
    load_words,
    part_words,
    years,
)

INPAINTING = ("inpainting", "retouching", "toning")
TEMPORARY = ("facing", "temporary support", "temporary fill", "temporary consolidant")
"""Roles of layers that were never meant to stay."""
_ACTS = ("dissolves", "mobilises", "swells", "softens", "attacked")
_ISOLATES = (*BARRIERS, "varnish")


def inpainting_without_isolation(case: Case) -> Iterator[Finding]:
    """Inpainting with no isolating layer on record between it and what it lies on."""
    for place in case.places.values():
        for layer in place.present:
            if layer.role in INPAINTING and not _isolation(place, layer):
                yield _bare_inpainting(case, place, layer)


def _isolation(place: KnownPlace, layer: KnownLayer) -> list[KnownLayer]:
    """Layers that isolate, that are or may be there, below an inpainting."""
    return [
        one
        for one in place.present
        if one.role in _ISOLATES
        and one.came[0] <= layer.came[1]
        and (one.stack is None or layer.stack is None or one.stack < layer.stack)
    ]


def _bare_inpainting(case: Case, place: KnownPlace, layer: KnownLayer) -> Finding:
    gone = [one for one in place.layers if one.there == "gone" and is_under(one, layer, "")]
    below = [one for one in place.present if one is not layer and _lower(one, layer)]
    on = [layer_words(one) for one in below] or [part_words(one) for one in case.sides(place)]
    missing: tuple[str, ...] = ()
    if gone:
        why = f"{layer_words(gone[0])} is recorded as gone{bracketed(gone[0].missed)}"
    elif place.no_barrier:
        why = f"an isolating layer is recorded as none ({place.no_barrier})"
    else:
        why = "no isolating layer is on record"
        missing = ("whether there is an isolating layer",)
    sentence = (
        f"{place.mark}: {layer_words(layer)}, dated {dated(layer.date)}{bracketed(layer.cited)},"
        f" lies over {listed(on) or 'what is not recorded'}; {why}."
    )
    return _finding("inpainting-without-isolation", sentence, place, (layer, *gone), missing)


def _lower(one: KnownLayer, layer: KnownLayer) -> bool:
    return one.stack is not None and layer.stack is not None and one.stack < layer.stack


def inpainting_solvent_attacks_isolation(case: Case) -> Iterator[Finding]:
    """Inpainting in a carrier that acts on the isolating layer below it."""
    for place in case.places.values():
        for layer in place.present:
            if layer.role in INPAINTING:
                for below in _isolation(place, layer):
                    yield from _attacked(place, layer, below)


def _attacked(place: KnownPlace, layer: KnownLayer, below: KnownLayer) -> Iterator[Finding]:
    rule = "inpainting-solvent-attacks-isolation"
    over = f"{place.mark}: {layer_words(layer)} lies over {layer_words(below)}"
    carrier = layer.carrier_matter
    if carrier is None or not below.matters:
        missing = [f"the carrier of {layer.ref}"] if carrier is None else []
        missing += [] if below.matters else [f"what {below.ref} is made of"]
        said = f" in {layer.carrier}" if layer.carrier else ""
        yield _finding(rule, f"{over}; laid{said}.", place, (layer, below), tuple(missing))
        return
    facts = [fact for matter in below.matters for fact in _facts(matter, carrier)]
    acting = [fact for fact in facts if fact.effect in _ACTS]
    if acting:
        counts = any(fact.counts for fact in acting)
        lines = listed(_fact_words(fact) for fact in acting)
        sentence = f"{over}; laid in {carrier.name}, which acts on it: {lines}."
        sources = tuple(fact.source for fact in acting if fact.source)
        found = _finding(rule, sentence, place, (layer, below), (), counts)
        yield replace(found, sources=sources)
    elif not facts:
        missing = [f"what {carrier.name} does to {below.name}"]
        sentence = f"{over}; laid in {carrier.name}."
        yield _finding(rule, sentence, place, (layer, below), tuple(missing))


def _facts(matter: Matter, carrier: Matter) -> list[Fact]:
    """What is recorded of a liquid, alone, on a material."""
    return [
        fact
        for fact in matter.facts
        if len(fact.agent.parts) == 1 and fact.agent.parts[0].solvent == carrier.key
    ]


def _fact_words(fact: Fact) -> str:
    memory = "" if fact.counts else "from memory, not confirmed"
    state = "" if fact.state == "not stated" else fact.state
    return f"{fact.effect}{bracketed(state, fact.condition, shortly(fact.source), memory)}"


# -- fills --------------------------------------------------------------------------------


def fill_not_detachable(case: Case) -> Iterator[Finding]:
    """A fill that no solvent takes off, on a porous body, with no barrier beneath."""
    for place in case.places.values():
        for layer in place.present:
            hard = layer.has("cross-linked") or layer.has("no solvent")
            if layer.role == "fill" and layer.origin != "maker" and (hard or not layer.matters):
                yield from _fixed(case, place, layer)


def _fixed(case: Case, place: KnownPlace, layer: KnownLayer) -> Iterator[Finding]:
    sides = bare_sides(case, place, layer)
    if not sides:
        return
    missing = [] if layer.matters else [f"what {layer.ref} is made of"]
    missing += dict.fromkeys(word for side in sides for word in side.missing)
    barriers = {one.ref: one for side in sides for one in side.barriers}.values()
    lies = "which no solvent takes off, lies" if layer.matters else "lies"
    sentence = (
        f"{place.mark}: {layer_words(layer)}, dated {dated(layer.date)}{bracketed(layer.cited)},"
        f" {lies} in {listed(part_words(side.part) for side in sides)};"
        f" {listed(side.why for side in sides)}."
    )
    yield _finding("fill-not-detachable", sentence, place, (layer, *barriers), tuple(missing))


# -- temporary materials ------------------------------------------------------------------


def temporary_still_on(case: Case) -> Iterator[Finding]:
    """A facing, or another temporary material, that is or may be still there."""
    for place in case.places.values():
        for layer in place.present:
            if layer.role in TEMPORARY:
                yield _still_on(case, place, layer)


def _still_on(case: Case, place: KnownPlace, layer: KnownLayer) -> Finding:
    sublimes = "; it goes off as vapour" if layer.has("sublimes") else ""
    age = case.day - layer.came[1]
    old = f", {years(age)} years ago" if is_known(layer.came[1]) and age >= 366 else ""
    load = f"; {load_words(place)}" if place.kind == "joint" else ""
    sentence = (
        f"{place.mark}: {layer_words(layer)}, laid {dated(layer.date)}{old}"
        f"{bracketed(layer.cited)}, was never meant to stay, and its removal is not on"
        f" record{sublimes}{load}."
    )
    certain = layer.there == "certain"
    missing = () if certain and not sublimes else (f"whether {layer.ref} is still there",)
    return _finding("temporary-still-on", sentence, place, (layer,), missing, certain)


def _finding(
    rule: str,
    sentence: str,
    place: KnownPlace,
    layers: tuple[KnownLayer, ...],
    missing: tuple[str, ...] = (),
    certain: bool = True,
) -> Finding:
    return Finding(
        rule,
        sentence,
        places=(place.mark,),
        layers=tuple(layer.ref for layer in layers),
        missing=missing,
        certain=certain and layers[0].there == "certain",
        load_kg=place.load_kg if place.kind == "joint" else None,
    )
