"""What an agent does to a layer: evidence has ranks, and they are never averaged.

Class rules come first: a cross-linked resin never dissolves; proteins, waxes, polysaccharides
and any agent with water have no Hansen verdict; minerals have no solvent; what a porous body
has taken up can at best be mobilised. Then, best first: a test on this layer; aged material;
published behaviour of fresh material; a Hansen prediction over all published spheres; what is
remembered and not confirmed.

Here the layer that is to come off is read, by its best evidence; its neighbours, by their
worst plausible reading, in `conservedb.knowledge.neighbours`.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import NamedTuple

from conservedb.knowledge.agents import Liquids, covers, has, is_organic, same_agent
from conservedb.knowledge.behaviour import Agent, Fact, Hansen, Lying, Matter
from conservedb.knowledge.plan import Reading
from conservedb.knowledge.solvents import (
    NEAR_TARGET,
    agent_parameters,
    near_known,
    red_range,
    words_of_red,
)

TESTED = "tested here"
AGED = "aged material"
FRESH = "published, fresh material"
PREDICTED = "Hansen prediction"
RULE = "class rule"
REMEMBERED = "from memory, not confirmed"
NOTHING = "nothing recorded"
RANKS = (TESTED, AGED, FRESH, PREDICTED, REMEMBERED, NOTHING)
"""Kinds of evidence, the best first."""

ACTING = ("dissolves", "mobilises", "attacked", "swells", "softens")
"""Effects that are effects, the strongest first."""


WORST_FIRST = (
    "dissolves",
    "attacked",
    "mobilises",
    "swells",
    "softens",
    "tested but for less",
    "cannot tell",
    "undecided",
    "no effect expected",
    "no effect when tested",
)


def worst_of(readings: Sequence[Reading]) -> Reading:
    """The reading that is worst for a layer that should stay."""
    return min(readings, key=lambda one: WORST_FIRST.index(one.effect))


class Line(NamedTuple):
    """One line of evidence: rank, effect, and the words for it."""

    rank: int
    effect: str
    evidence: str
    source: str
    words: str


# -- what a layer consists of -------------------------------------------------------------


def binders(matter: Matter) -> tuple[Matter, ...]:
    """What governs how a mixture comes off: its binders, not its fillers.

    A material with evidence of its own speaks for itself; of a recipe without any, those
    parts do that have a solvent at all. Minerals bound by nothing else stand for themselves.
    """
    if matter.facts or matter.spheres or not matter.parts:
        return (matter,)
    organic = [part for part in matter.parts if not part.has("no solvent")]
    return tuple(b for part in organic for b in binders(part)) or (matter,)


# -- the target ---------------------------------------------------------------------------


def on_target(lying: Lying, agent: Agent, liquids: Liquids, *, fresh: bool) -> Reading:
    """What an agent does to the layer that is to come off, by the best evidence there is.

    Args:
        fresh: whether the layer is known to be so young that it counts as fresh.
    """
    if lying.matter is None:
        tests = _tested(lying, agent)[0]
        return _best(tests, None) if tests else Reading("cannot tell", NOTHING)
    readings = [
        _on_matter(lying, matter, agent, liquids, fresh) for matter in binders(lying.matter)
    ]
    reading = readings[0] if len(readings) == 1 else _mixture(lying, readings)
    if lying.soaked and reading.effect in ("dissolves", "swells"):
        reason = "taken up by a porous body: at best mobilised, not removed"
        return replace(
            reading, effect="mobilises", reason=f"{reading.reason}; {reason}".lstrip("; ")
        )
    return reading


def _on_matter(
    lying: Lying, matter: Matter, agent: Agent, liquids: Liquids, fresh: bool
) -> Reading:
    lines, for_less = _tested(lying, agent)
    lines += [line_of(fact, rank_of(fact)) for fact in matter.facts if _answers(fact.agent, agent)]
    predicted, red = _prediction(matter, agent, liquids)
    lines += predicted
    near = near_solvent(matter, agent, liquids, NEAR_TARGET)
    reading = _best(lines, red) if lines else Reading("cannot tell", NOTHING, red=red)
    reading = replace(reading, losing=(*for_less, *reading.losing))
    if reading.effect == "undecided" and reading.evidence == PREDICTED and near:
        reading = replace(reading, reason=f"{reading.reason}; close to {near}, which acts on it")
    return _capped(matter, agent, liquids, reading, fresh)


def _tested(lying: Lying, agent: Agent) -> tuple[list[Line], list[str]]:
    """Tests on the layer that decide, and in words those that were of a lesser use.

    What acted in a test decides, even if it acted for less long: what more time does is not
    tested. What did nothing in a given time says nothing of a longer one.
    """
    deciding, for_less = [], []
    for fact in lying.tests:
        if not same_agent(fact.agent.parts, agent.parts):
            continue
        timed = agent.dwell_min is not None or fact.agent.dwell_min is None
        line = line_of(fact, 0)
        if covers(fact.agent, agent) and (timed or fact.effect in ACTING):
            deciding.append(line)
        else:
            for_less.append(f"{TESTED}, for another use: {line.words}")
    return deciding, for_less


def _answers(known: Agent, meant: Agent) -> bool:
    """Whether published evidence is about the agent that is meant, in a form not contradicting."""
    if not same_agent(known.parts, meant.parts):
        return False
    if known.form and meant.form and known.form != meant.form:
        return False
    return not (
        known.temperature_c is not None
        and meant.temperature_c is not None
        and abs(known.temperature_c - meant.temperature_c) > 10
    )


def rank_of(fact: Fact) -> int:
    """The rank of what is known of the material in general."""
    if not fact.counts:
        return RANKS.index(REMEMBERED)
    return RANKS.index(AGED if fact.state == "aged" or fact.basis == "measured" else FRESH)


def line_of(fact: Fact, rank: int) -> Line:
    """A fact as a line of evidence."""
    state = "" if rank == 0 or fact.state == "not stated" else f", {fact.state}"
    told = "; ".join(w for w in (fact.condition, shortly(fact.source)) if w)
    words = f"{fact.effect} ({told}{state})".replace("(, ", "(")
    return Line(rank, fact.effect, RANKS[rank], fact.source, words)


def shortly(source: str) -> str:
    """A source by its short reference, where it has one before a colon."""
    return source.partition(": ")[0]


def _prediction(
    matter: Matter, agent: Agent, liquids: Liquids
) -> tuple[list[Line], tuple[float, float] | None]:
    """The Hansen prediction for a target, where the method has a verdict at all."""
    at = parameters(matter, agent, liquids)
    own = [sphere for sphere in matter.spheres if sphere.use != "proxy"]
    spheres = own or list(matter.spheres)
    red = red_range(spheres, at)
    if red is None:
        return [], None
    words = words_of_red(red[0])
    if spheres[0].use == "proxy" and words in ACTING:
        words, note = "undecided", "by the sphere of a related product"
    elif words == "dissolves" and all(sphere.use == "swelling only" for sphere in spheres):
        words, note = "swells", "by a sphere for swelling, not for dissolution"
    elif words == "dissolves" and red[1] >= 1:
        note = "by some published spheres, not by all"
    else:
        note = f"over {len(spheres)} published sphere{'s' if len(spheres) > 1 else ''}"
    sources = "; ".join(dict.fromkeys(s.source for s in spheres if s.source))
    said = f"{words}: RED {span(red)} {note}"
    return [Line(RANKS.index(PREDICTED), words, PREDICTED, sources, said)], red


def parameters(matter: Matter, agent: Agent, liquids: Liquids) -> tuple[Hansen, ...]:
    """Every published set of the agent's parameters; none where the method has no verdict."""
    if matter.has("no Hansen verdict") or matter.has("no solvent") or has(agent, "water", liquids):
        return ()
    return agent_parameters(agent.parts, liquids)


def near_solvent(matter: Matter, agent: Agent, liquids: Liquids, within: float) -> str:
    """A liquid known to act on the material and close to the agent, "" where there is none."""
    at = parameters(matter, agent, liquids)
    for fact in matter.facts:
        if fact.effect in ACTING and len(fact.agent.parts) == 1:
            name = fact.agent.parts[0].solvent
            if name in liquids and near_known(at, liquids[name].at, within):
                return liquids[name].name
    return ""


def _best(lines: Iterable[Line], red: tuple[float, float] | None) -> Reading:
    """The reading by the best rank; sources of one rank that contradict leave it undecided."""
    ordered = sorted(lines, key=lambda line: (line.rank, strength(line.effect)))
    best = [line for line in ordered if line.rank == ordered[0].rank]
    effect, words = best[0].effect, best[0].words
    disagree = effect in ACTING and any(line.effect == "no effect" for line in best)
    if disagree:
        effect, words = "undecided", "sources of the same rank disagree"
    elif effect == "no effect":
        effect = "no effect when tested" if best[0].rank == 0 else "no effect expected"
    losing = [line.words for line in ordered if disagree or line not in best[:1]]
    source = "; ".join(dict.fromkeys(line.source for line in best if line.source))
    return Reading(effect, best[0].evidence, source, red, words, tuple(losing))


def strength(effect: str) -> int:
    """Where an effect stands among effects, the strongest 0."""
    return ACTING.index(effect) if effect in ACTING else len(ACTING)


def _capped(
    matter: Matter, agent: Agent, liquids: Liquids, reading: Reading, fresh: bool
) -> Reading:
    """What class rules leave of a reading."""
    if reading.evidence == TESTED:
        return reading
    if matter.has("cross-linked") and reading.effect in ("dissolves", "mobilises"):
        return replace(
            reading,
            effect="swells",
            evidence=RULE if reading.evidence == PREDICTED else reading.evidence,
            reason="cross-linked: never dissolves, whatever its number; may swell",
            losing=(*reading.losing, reading.reason),
        )
    if matter.has("no solvent") and is_organic(agent, liquids) and reading.evidence == NOTHING:
        return Reading("no effect expected", RULE, reason="mineral or metal: has no solvent")
    if reading.evidence == FRESH and reading.effect in ACTING and not fresh:
        if matter.has("loses its solubility"):
            reason = f"{reading.effect} when fresh; this material loses its solubility with age"
            return replace(reading, effect="undecided", reason=reason)
        if not matter.has("keeps its solubility"):
            reason = f"{reading.reason}; nothing recorded for aged material"
            return replace(reading, reason=reason)
    return reading


def _mixture(lying: Lying, readings: Sequence[Reading]) -> Reading:
    """A mixture is as resistant as its most resistant binder."""
    acting = [one for one in readings if one.effect in ACTING]
    weakest = max(readings, key=lambda one: strength(one.effect))
    if len(acting) == len(readings) or not acting:
        return weakest
    name = lying.matter.name if lying.matter else lying.name
    reason = f"only in part: acts on one binder of {name}, not shown to act on the other"
    return replace(acting[0], effect="softens", reason=reason, losing=(weakest.reason,))


def span(red: tuple[float, float]) -> str:
    """A range of RED in words."""
    low, high = (f"{value:.2f}" for value in red)
    return low if low == high else f"{low} to {high}"
