"""How reversible a layer is, in words; and what holds a joint.

A prediction is not a verdict: a layer of which nothing but a Hansen prediction or a memory is
known reads "not established".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from conservedb.knowledge.barriers import best, shortcomings, under
from conservedb.knowledge.behaviour import Lying, Matter
from conservedb.knowledge.evidence import (
    ACTING,
    AGED,
    FRESH,
    TESTED,
    binders,
    line_of,
    rank_of,
)
from conservedb.knowledge.plan import Hold
from conservedb.knowledge.warming import softens

_RELEASED = ("not reversible", "mechanical only", "swells and can be picked")
_ESTABLISHED = (TESTED, AGED, FRESH)
WORST_FIRST = (
    "not established",
    "unknown",
    "not reversible",
    "mechanical only",
    "swells and can be picked",
    "can be mobilised, not removed",
    "softens with heat",
    "releases through the barrier",
    "re-dissolves",
    "goes by itself",
)
"""Verdicts in the order in which one of them decides a joint."""


@dataclass(frozen=True, slots=True)
class Verdict:
    """One word of `plan.VERDICTS`, and why."""

    word: str
    reason: str


def verdict(lying: Lying, *, barriers: Sequence[Lying] = (), closed: bool = False) -> Verdict:
    """How reversible a layer is where it lies, by evidence of a rank that establishes it.

    Args:
        barriers: recorded barriers under it (see `barriers.under`).
        closed: whether it lies in a joint that is closed, where nothing can be picked out.
    """
    if lying.matter is None:
        return Verdict("unknown", "what it is made of is not established")
    found = [_of_material(lying, one, closed) for one in lying.matters]
    worst = _worst(found)
    if len({one.word for one in found}) > 1:
        names = " or ".join(one.name for one in lying.matters)
        worst = Verdict(worst.word, f"may be {names}; {worst.reason}")
    elif lying.identified in ("inferred", "unknown"):
        worst = Verdict(worst.word, f"{worst.reason}; its identity is {lying.identified}")
    if barriers and worst.word in _RELEASED:
        return _over(worst, barriers)
    return worst


def _worst(found: Sequence[Verdict]) -> Verdict:
    return min(found, key=lambda one: WORST_FIRST.index(one.word))


def _of_material(lying: Lying, matter: Matter, closed: bool) -> Verdict:
    worst = _worst([_of(lying, one, closed) for one in binders(matter)])
    if matter.is_class and worst.word not in ("not reversible", "mechanical only"):
        return Verdict("unknown", f"known only as {matter.name}")
    return worst


def _over(worst: Verdict, barriers: Sequence[Lying]) -> Verdict:
    """What a barrier makes of an irreversible layer: released only if the record is whole."""
    reason, name = worst.reason.partition("; no barrier")[0], best(barriers).name
    lacking = shortcomings(barriers)
    if lacking:
        return Verdict("not established", f"{reason}; over {name}, but {'; '.join(lacking)}")
    return Verdict("releases through the barrier", f"{reason}; over {name}")


def _of(lying: Lying, matter: Matter, closed: bool) -> Verdict:
    if matter.has("sublimes"):
        return Verdict("goes by itself", "it goes off as vapour; slower from pores and when packed")
    best = _best_effect(lying, matter)
    if matter.has("cross-linked"):
        reason = "cross-linked: no solvent dissolves it"
        if best is not None and not closed:
            return Verdict("swells and can be picked", f"{reason}; {best[1]}")
        return Verdict("not reversible", f"{reason}; no barrier on record, which is not 'none'")
    if best is not None and best[0] in ("dissolves", "mobilises"):
        if lying.soaked:
            return Verdict("can be mobilised, not removed", f"{best[1]}; taken up by a porous body")
        return Verdict("re-dissolves", best[1])
    if matter.has("no solvent"):
        return Verdict("mechanical only", "mineral or metal: has no solvent")
    if best is not None and best[0] in ("swells", "softens"):
        return Verdict("swells and can be picked", best[1])
    warm = softens(matter)
    if warm is not None and not warm.remembered:
        return Verdict("softens with heat", warm.lines[0])
    return Verdict("not established", _why_not(matter))


def _why_not(matter: Matter) -> str:
    if any(fact.effect in ACTING for fact in matter.facts):
        return "what acts on it is known from memory or from fresh material only"
    if matter.spheres:
        return "only a Hansen prediction is at hand, which is no fact"
    return "cannot tell: what acts on it is not recorded"


def _best_effect(lying: Lying, matter: Matter) -> tuple[str, str] | None:
    """The strongest effect that evidence of a sufficient rank establishes, with its words."""
    lines = [line_of(fact, 0) for fact in lying.tests if fact.effect in ACTING]
    for fact in matter.facts:
        line = line_of(fact, rank_of(fact))
        fresh_only = line.evidence == FRESH and matter.has("loses its solubility")
        if fact.effect in ACTING and line.evidence in _ESTABLISHED and not fresh_only:
            lines.append(line)
    if not lines:
        return None
    best = min(lines, key=lambda line: (line.rank, ACTING.index(line.effect)))
    return best.effect, f"{best.evidence}: {best.words}"


# -- joints -------------------------------------------------------------------------------

HOLDS_NOTHING = frozenset(
    {
        "barrier",
        "biofilm",
        "coating",
        "corrosion",
        "crust",
        "deposit",
        "facing",
        "gilding",
        "inpainting",
        "paint",
        "patina",
        "patination",
        "salts",
        "varnish",
    }
)
"""Roles of layers by which no joint holds; any other role, and none, may hold."""


@dataclass(frozen=True, slots=True)
class Fixing:
    """A pin, cramp, dowel or rod that crosses a joint; `known_from` is a word of the records."""

    mark: str
    name: str
    material: str
    known_from: str
    certain: bool


def holds(layers: Sequence[Lying], fixings: Sequence[Fixing], closed: bool) -> tuple[Hold, ...]:
    """Every zone and fixing that must let go before the joint opens, with its verdict."""
    found = []
    for zone in ("face", "core", "edge", ""):
        inside = [one for one in layers if one.zone == zone and _may_hold(one)]
        if inside:
            words = [
                (verdict(one, barriers=under(one, layers), closed=closed), one) for one in inside
            ]
            worst, layer = min(words, key=lambda pair: WORST_FIRST.index(pair[0].word))
            reason = f"{layer.name}: {worst.reason}"
            if not layer.certain:
                reason = f"{layer.name} is not certainly there: {worst.reason}"
            refs = tuple(one.ref for _, one in words)
            found.append(
                Hold(f"zone {zone}" if zone else "zone not recorded", refs, worst.word, reason)
            )
    return (*found, *(_fixing(one) for one in fixings))


def _may_hold(lying: Lying) -> bool:
    return lying.role.lower() not in HOLDS_NOTHING


def _fixing(one: Fixing) -> Hold:
    what = f"{one.name or 'fixing'} {one.mark}".strip()
    if one.known_from not in ("seen", "documented") or not one.certain:
        seen = {"picture only": "known from a picture only", "suspected": "only suspected"}
        why = seen.get(one.known_from, "not recorded as seen")
        return Hold(what, (), "not established", f"{why}; how it is set is not established")
    material = one.material or "metal not recorded"
    return Hold(what, (), "mechanical only", f"{material}: drawn, drilled or cut, not dissolved")


def opens(found: Sequence[Hold]) -> str:
    """What holds of the joint as a whole: the verdict of its worst zone or fixing."""
    if not found:
        return "not established: what holds this joint is not recorded"
    worst = min(found, key=lambda one: WORST_FIRST.index(one.verdict))
    return f"{worst.verdict} ({worst.what}: {worst.reason})"
