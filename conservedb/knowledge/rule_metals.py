"""Rules about metals and the air around them: iron in stone, unlike metals, acid vapour."""

from __future__ import annotations

from collections.abc import Iterator

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_case import Case, Finding, KnownPart, KnownPlace
from conservedb.knowledge.rule_words import (
    bracketed,
    dated,
    layer_words,
    listed,
    load_words,
    part_words,
)

MINERAL_CLASSES = ("stone", "ceramic-body", "cast-body")
"""Keys of the classes of bodies that rusting iron splits and stains."""
_GROUPS = ("noble or stainless metal", "aluminium", "copper alloy", "lead", "iron")
_NOT_SEEN = {"picture only": "known from a picture only", "suspected": "only suspected"}


def iron_in_stone(case: Case) -> Iterator[Finding]:
    """Iron, which swells as it rusts, in stone, ceramic or plaster."""
    for place in case.joints:
        hosts = [part for part in case.sides(place) if _is_mineral(part)]
        if not hosts:
            continue
        for mark in place.fixings:
            fixing = case.parts.get(mark)
            if fixing is not None and fixing.there != "gone" and _may_be_iron(fixing):
                yield _iron_fixing(place, fixing, hosts)
        for layer in place.present:
            if any(_rusts(matter) for matter in layer.matters) and layer.origin != "arisen":
                sentence = (
                    f"{place.mark}: {layer_words(layer)}, which swells as it rusts, lies in"
                    f" {listed([part_words(host) for host in hosts])}; {load_words(place)}."
                )
                yield Finding(
                    "iron-in-stone",
                    sentence,
                    places=(place.mark,),
                    layers=(layer.ref,),
                    certain=layer.sure,
                    load_kg=place.load_kg,
                )


def _is_mineral(part: KnownPart) -> bool:
    return bool(set(part.classes) & set(MINERAL_CLASSES))


def _rusts(matter: Matter) -> bool:
    return matter.has("iron") and not matter.has("noble or stainless metal")


def _may_be_iron(part: KnownPart) -> bool:
    """Whether a fixing is of iron, or of nobody knows what."""
    return part.matter is None or _rusts(part.matter)


def _iron_fixing(place: KnownPlace, fixing: KnownPart, hosts: list[KnownPart]) -> Finding:
    seen = _NOT_SEEN.get(fixing.known_from, "")
    missing = () if fixing.matter is not None else (f"what {fixing.mark} is made of",)
    iron = "" if missing else ", which swells as it rusts,"
    sentence = (
        f"{place.mark}: {part_words(fixing)}{iron} crosses the joint in"
        f" {listed([part_words(host) for host in hosts])}, made {dated(fixing.made)}"
        f"{bracketed(seen, fixing.cited)}; {load_words(place)}."
    )
    return Finding(
        "iron-in-stone",
        sentence,
        places=(place.mark,),
        components=(fixing.mark,),
        missing=missing,
        certain=fixing.sure,
        load_kg=place.load_kg,
    )


# -- unlike metals ------------------------------------------------------------------------


def dissimilar_metals(case: Case) -> Iterator[Finding]:
    """Two metals of different kinds that touch, or may touch, at a joint."""
    told: set[frozenset[str]] = set()
    for place in case.joints:
        sides = case.sides(place)
        pairs = [(sides[0], sides[1])] if len(sides) == 2 else []
        fixings = [case.parts[mark] for mark in place.fixings if mark in case.parts]
        pairs += [(fixing, side) for fixing in fixings for side in sides]
        for one, other in pairs:
            both = frozenset((one.mark, other.mark))
            if both not in told and _unlike(one, other):
                told.add(both)
                yield _touching(place, one, other)


def _unlike(one: KnownPart, other: KnownPart) -> bool:
    kinds = {_kind(one), _kind(other)}
    return len(kinds) == 2 and "" not in kinds and "gone" not in (one.there, other.there)


def _kind(part: KnownPart) -> str:
    """The kind of metal, by which two of them count as unlike; "" where it is no metal."""
    if part.matter is None or not part.matter.has("metal"):
        return ""
    return next((kind for kind in _GROUPS if part.matter.has(kind)), part.matter.key)


def _touching(place: KnownPlace, one: KnownPart, other: KnownPart) -> Finding:
    between = [
        layer
        for layer in place.present
        if layer.matters and layer.origin != "arisen" and not layer.has("metal")
    ]
    missing: tuple[str, ...] = ()
    if between:
        apart = f"{listed([layer_words(layer) for layer in between])} lies between"
        missing = ("whether the metals touch through what lies between",)
    else:
        apart = "nothing is on record between them"
    sentence = (
        f"{place.mark}: {part_words(one)} and {part_words(other)} meet; {apart}; the less noble"
        f" one corrodes where it is damp; {load_words(place)}."
    )
    return Finding(
        "dissimilar-metals",
        sentence,
        places=(place.mark,),
        components=(one.mark, other.mark),
        layers=tuple(layer.ref for layer in between),
        missing=missing,
        certain=one.sure and other.sure,
        load_kg=place.load_kg,
    )


# -- acid vapour --------------------------------------------------------------------------


def off_gassing(case: Case) -> Iterator[Finding]:
    """Matter that gives off acid vapour on an object with lead or shell."""
    suffering = [
        f"{part_words(part)}"
        for part in case.parts.values()
        if part.there != "gone" and part.matter is not None and _suffers(part.matter)
    ]
    suffering += [
        f"{layer_words(layer)} at {place.mark}"
        for place in case.places.values()
        for layer in place.present
        if any(_suffers(matter) for matter in layer.matters)
    ]
    if suffering:
        yield from _emitters(case, listed(suffering[:_NAMED]), len(suffering))


_NAMED = 6
_VAPOUR = "gives off acid vapour"


def _suffers(matter: Matter) -> bool:
    return matter.has("lead") or matter.has("shell")


def _emitters(case: Case, suffering: str, number: int) -> Iterator[Finding]:
    more = f" and {number - _NAMED} more" if number > _NAMED else ""
    for place in case.places.values():
        for layer in place.present:
            for matter in [one for one in layer.matters if one.has(_VAPOUR)][:1]:
                yield Finding(
                    "off-gassing-near-lead-or-shell",
                    f"{place.mark}: {layer_words(layer)} {_gives_off(matter)} {suffering}{more}.",
                    places=(place.mark,),
                    layers=(layer.ref,),
                    certain=layer.sure,
                    sources=(matter.traits[_VAPOUR].source,),
                )
    for part in case.parts.values():
        if part.matter is not None and part.matter.has(_VAPOUR) and part.there != "gone":
            yield Finding(
                "off-gassing-near-lead-or-shell",
                f"{part_words(part)} {_gives_off(part.matter)} {suffering}{more}.",
                components=(part.mark,),
                certain=part.sure,
                sources=(part.matter.traits[_VAPOUR].source,),
            )


def _gives_off(matter: Matter) -> str:
    source = bracketed(shortly(matter.traits[_VAPOUR].source))
    return f"gives off acid vapour{source}; on the same object, of lead or shell:"
