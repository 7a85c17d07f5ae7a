"""Rules about time: substances before they could be had, undated repairs, ageing nitrate."""

from __future__ import annotations

from collections.abc import Iterator

from conservedb.dates import UNKNOWN_START
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_case import Case, Finding, KnownLayer, KnownPart, KnownPlace, Period
from conservedb.knowledge.rule_words import (
    bracketed,
    dated,
    day_words,
    layer_words,
    load_words,
    part_words,
    years,
)

_FIRST = "first made"
_COULD_BE_USED = (_FIRST, "in use from")


def before_its_time(case: Case) -> Iterator[Finding]:
    """A material recorded before the substance could be had.

    Silent where the period is known from memory only.
    """
    for place in case.places.values():
        for layer in place.layers:
            for matter in layer.matters:
                period = _could_be_had(case, matter.key)
                if period is not None and layer.came[1] < period.date.earliest:
                    yield _too_early_layer(place, layer, period)
    for part in case.parts.values():
        period = _could_be_had(case, part.matter.key) if part.matter is not None else None
        if period is not None and part.made.latest < period.date.earliest:
            yield _too_early_part(part, period)


def _could_be_had(case: Case, key: str) -> Period | None:
    """When a substance was first made; where nobody says, since when it is known in use.

    None where that is known from memory only.
    """
    periods = case.periods.get(key, ())
    known = [one for one in periods if one.mark == _FIRST]
    known = known or [one for one in periods if one.mark in _COULD_BE_USED]
    printed = [one for one in known if not one.from_memory]
    return min(printed, key=lambda one: one.date.earliest, default=None)


def _too_early_layer(place: KnownPlace, layer: KnownLayer, period: Period) -> Finding:
    sentence = (
        f"{place.mark}: {layer_words(layer)} is dated {dated(layer.date)}"
        f"{bracketed(layer.cited)}, not after {day_words(layer.came[1])}; {_made(period)}. The"
        " date or the identification is wrong."
    )
    return Finding(
        "before-its-time",
        sentence,
        places=(place.mark,),
        layers=(layer.ref,),
        certain=layer.identity_sure and not layer.date.flags and period.mark == _FIRST,
        sources=(period.source,),
    )


def _too_early_part(part: KnownPart, period: Period) -> Finding:
    sentence = (
        f"{part_words(part)} is dated {dated(part.made)}{bracketed(part.cited)};"
        f" {_made(period)}. The date or the material is wrong."
    )
    return Finding(
        "before-its-time",
        sentence,
        components=(part.mark,),
        certain=part.sure and not part.made.flags and period.mark == _FIRST,
        sources=(period.source,),
    )


def _made(period: Period) -> str:
    memory = "from memory, not confirmed" if period.from_memory else ""
    return f"{period.mark} {dated(period.date)}{bracketed(shortly(period.source), memory)}"


def earliest_date_of_undated(case: Case) -> Iterator[Finding]:
    """The earliest date that an undated repair can have, by the period of its material."""
    for place in case.places.values():
        for layer in place.present:
            if layer.origin != "maker" and _is_undated(layer):
                yield from _not_before(case, place, layer)


def _is_undated(layer: KnownLayer) -> bool:
    """Whether nobody wrote a date down, or only by when it was there."""
    return layer.date.earliest <= UNKNOWN_START


def _not_before(case: Case, place: KnownPlace, layer: KnownLayer) -> Iterator[Finding]:
    starts = []
    for matter in layer.matters:
        known = [p for p in case.periods.get(matter.key, ()) if p.mark in _COULD_BE_USED]
        if not known:
            return
        starts.append(min(known, key=lambda p: (p.from_memory, p.date.earliest)))
    if not starts:
        return
    first = min(starts, key=lambda p: p.date.earliest)
    if layer.came[0] < first.date.earliest <= layer.came[1]:
        sentence = (
            f"{place.mark}: {layer_words(layer)} is undated{bracketed(layer.cited)}; it cannot be"
            f" older than its material, {_made(first)}: not before"
            f" {day_words(first.date.earliest)}."
        )
        yield Finding(
            "earliest-date-of-undated",
            sentence,
            places=(place.mark,),
            layers=(layer.ref,),
            missing=(f"the date of {layer.ref}",),
            certain=layer.sure and not first.from_memory,
            sources=(first.source,),
        )


# -- cellulose nitrate --------------------------------------------------------------------


def cellulose_nitrate_age(case: Case) -> Iterator[Finding]:
    """Cellulose nitrate older than the age that the department has set."""
    limit = case.settled.nitrate_years * 365.2425
    for place in case.places.values():
        for layer in place.present:
            if layer.has("cellulose nitrate") and case.day - layer.came[0] > limit:
                yield _old_nitrate(case, place, layer, case.day - layer.came[1] > limit)


def _old_nitrate(case: Case, place: KnownPlace, layer: KnownLayer, certain: bool) -> Finding:
    at_least = max(0, years(case.day - layer.came[1]))
    age = f"at least {at_least} years old" if certain else "of an age that is not established"
    load = f"; {load_words(place)}" if place.kind == "joint" else ""
    sentence = (
        f"{place.mark}: {layer_words(layer)}, dated {dated(layer.date)}{bracketed(layer.cited)},"
        f" is {age}; the department looks at such joins from {case.settled.nitrate_years:g}"
        f" years on{load}."
    )
    return Finding(
        "cellulose-nitrate-age",
        sentence,
        places=(place.mark,),
        layers=(layer.ref,),
        missing=() if certain else (f"the date of {layer.ref}",),
        certain=layer.sure,
        load_kg=place.load_kg if place.kind == "joint" else None,
    )
