"""Heat as a way of release: where a material softens, and where heat is refused.

Temperatures in degrees Celsius. While solvent remains in a film its glass transition lies
lower, by up to 30 degrees (Vincotte et al. 2019, Heritage Science, on Paraloid B-72 and B-44).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from conservedb.knowledge.behaviour import Lying, Matter, Neighbour, Warmth
from conservedb.knowledge.evidence import NOTHING, REMEMBERED, RULE, binders, shortly, worst_of
from conservedb.knowledge.plan import OnNeighbour, Option, Reading

WARM_C = 30.0
"""What softens below this is soft in a room: warmth is no way to release it."""
GYPSUM_C = 50.0
"""Gypsum loses water above 50 to 60 C (CCI Notes 12/2)."""


@dataclass(frozen=True, slots=True)
class Softens:
    """Where a material softens: the lowest and highest published figure, and their lines."""

    low: float
    high: float
    lines: tuple[str, ...]
    remembered: bool
    sources: str


def softens(matter: Matter, depressed_by: float = 0.0) -> Softens | None:
    """The range over all published figures; those from memory only where there are no others.

    Args:
        depressed_by: how far solvent that remains lowers a glass transition.
    """
    known = [one for one in matter.warmth if one.confirmed or one.basis != "from memory"]
    figures = known or list(matter.warmth)
    if not figures:
        return None
    lowered = [_low(one, depressed_by) for one in figures]
    return Softens(
        min(lowered),
        max(one.high for one in figures),
        tuple(_line(one) for one in figures),
        not known,
        "; ".join(dict.fromkeys(one.source for one in figures if one.source)),
    )


def _low(one: Warmth, depressed_by: float) -> float:
    return one.low - (depressed_by if one.kind == "glass transition" else 0.0)


def _known(found: Softens) -> str:
    return REMEMBERED if found.remembered else "published"


def _line(one: Warmth) -> str:
    figure = f"{one.low:g}" if one.low == one.high else f"{one.low:g} to {one.high:g}"
    unsure = "" if one.confirmed or one.basis != "from memory" else f", {REMEMBERED}"
    where = "; ".join(words for words in (one.condition, shortly(one.source)) if words)
    return f"{one.kind} {figure} C{unsure}{f' ({where})' if where else ''}"


def heat_option(
    target: Lying, neighbours: Sequence[Neighbour], depression: Callable[[Lying], float]
) -> Option | None:
    """Warming the target to where it softens; None where no figure is recorded for it.

    Args:
        depression: how far solvent that may remain lowers the glass transition of a layer.
    """
    if target.matter is None:
        return None
    depressed_by = depression(target)
    ranges = [found for b in binders(target.matter) if (found := softens(b, depressed_by))]
    if not ranges:
        return None
    low, high = max(r.low for r in ranges), max(r.high for r in ranges)
    if high < WARM_C:
        return None
    lines = tuple(line for r in ranges for line in r.lines)
    remembered = any(r.remembered for r in ranges)
    reason = f"softens from {low:g} C by the lowest figure, {high:g} C by the highest"
    if depressed_by:
        reason += f"; lowered by {depressed_by:g} C while solvent may remain"
    reading = Reading(
        "softens",
        REMEMBERED if remembered else "published",
        "; ".join(dict.fromkeys(r.sources for r in ranges if r.sources)),
        None,
        reason,
        lines,
    )
    readings = tuple(
        OnNeighbour(
            near.lying.ref,
            near.lying.place,
            near.lying.name,
            warmed(near.lying, high, depression(near.lying)),
            near.path,
            near.distance_mm,
        )
        for near in neighbours
    )
    return Option(
        "heat", f"warmth, up to {high:g} C", (), reading, readings, form="warm air or a heated tool"
    )


def warmed(lying: Lying, to_c: float, depressed_by: float = 0.0) -> Reading:
    """The worst plausible reading of what warming to a temperature does to a layer."""
    if not lying.matters:
        return Reading("cannot tell", NOTHING, reason="what it is made of is not established")
    return worst_of([_warmed(m, to_c, depressed_by) for one in lying.matters for m in binders(one)])


def may_be_nitrate(matter: Matter) -> bool:
    """Whether it is cellulose nitrate, or a class to which that belongs."""
    found = matter.traits.get("cellulose nitrate")
    return found is not None and found.holds != "no"


def _warmed(matter: Matter, to_c: float, depressed_by: float) -> Reading:
    if may_be_nitrate(matter):
        return Reading("attacked", RULE, reason="cellulose nitrate: burns, and decays with heat")
    if matter.has("gypsum") and to_c >= GYPSUM_C:
        reason = f"gypsum loses water above {GYPSUM_C:g} C"
        return Reading("attacked", RULE, "CCI Notes 12/2", None, reason)
    found = softens(matter, depressed_by)
    if found is not None and found.low <= to_c:
        reason = found.lines[0] + (f", lowered by {depressed_by:g} C" if depressed_by else "")
        return Reading("softens", _known(found), found.sources, None, reason, found.lines[1:])
    if matter.has("heat-sensitive"):
        why = matter.traits["heat-sensitive"]
        return Reading(
            "attacked", RULE, why.source, None, why.effect or "recorded as heat-sensitive"
        )
    if found is not None and not found.remembered:
        reason = f"softens from {found.low:g} C by the lowest figure"
        return Reading("no effect expected", "published", found.sources, None, reason)
    if matter.has("no solvent") and matter.lacks("heat-sensitive"):
        return Reading("no effect expected", RULE, reason="recorded as bearing heat")
    return Reading("cannot tell", NOTHING, reason=f"how {matter.name} bears heat is not recorded")
