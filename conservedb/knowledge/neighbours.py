"""What an agent does to layers that should stay: their worst plausible reading.

Only a test on that very layer, with this agent and this use of it or a harsher one, clears it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from conservedb.knowledge.agents import (
    ROOM_C,
    Liquids,
    boiling,
    covers,
    has,
    is_organic,
    name_of,
    same_agent,
)
from conservedb.knowledge.behaviour import Agent, Fact, Lying, Matter, Part
from conservedb.knowledge.evidence import (
    ACTING,
    NOTHING,
    PREDICTED,
    RANKS,
    REMEMBERED,
    RULE,
    TESTED,
    binders,
    line_of,
    near_solvent,
    parameters,
    rank_of,
    span,
    strength,
    worst_of,
)
from conservedb.knowledge.plan import Reading
from conservedb.knowledge.solvents import NEAR_NEIGHBOUR, red_range, words_of_red
from conservedb.knowledge.warming import warmed

WARMER = 5.0
"""Degrees above room temperature from which an agent is warm for what softens."""


def on_neighbour(
    lying: Lying, agent: Agent, liquids: Liquids, *, depressed_by: float = 0.0
) -> Reading:
    """The worst plausible reading of what an agent does to a layer that should stay.

    Args:
        depressed_by: how far solvent that remains lowers the layer's glass transition, for an
            agent that is used warm.
    """
    tested = _tested(lying, agent)
    if tested is not None and tested.effect != "tested but for less":
        return tested
    if not lying.matters:
        worst = Reading("cannot tell", NOTHING, reason="what it is made of is not established")
    else:
        worst = worst_of(
            [
                _worst_on_matter(matter, agent, liquids)
                for material in lying.matters
                for matter in binders(material)
            ]
        )
    if agent.temperature_c is not None and agent.temperature_c > ROOM_C + WARMER:
        worst = worst_of([worst, warmed(lying, agent.temperature_c, depressed_by)])
    if tested is not None and worst.effect not in ACTING:
        return tested
    if tested is not None:
        return replace(worst, losing=(*worst.losing, tested.reason))
    return worst


def _tested(lying: Lying, agent: Agent) -> Reading | None:
    """What tests on this very layer say; one that was milder clears nothing."""
    tried = [fact for fact in lying.tests if same_agent(fact.agent.parts, agent.parts)]
    acting = sorted((f for f in tried if f.effect in ACTING), key=lambda f: strength(f.effect))
    if acting:
        return Reading(acting[0].effect, TESTED, acting[0].source, None, acting[0].condition)
    for fact in tried:
        if lying.certain and fact.agent.dwell_min is not None and covers(fact.agent, agent):
            reason = f"{fact.condition}: clears it for that or milder only".lstrip(": ")
            return Reading("no effect when tested", TESTED, fact.source, None, reason)
    if tried:
        reason = f"tested, but for less than this ({tried[0].condition or 'use not recorded'})"
        return Reading("tested but for less", TESTED, tried[0].source, None, reason)
    return None


def _worst_on_matter(matter: Matter, agent: Agent, liquids: Liquids) -> Reading:
    found = [*_published_on(matter, agent, liquids), *_by_traits(matter, agent, liquids)]
    at = parameters(matter, agent, liquids)
    red = red_range(matter.spheres, at)
    if red is not None:
        found.append(_predicted_on(matter, agent, red, liquids))
    near = near_solvent(matter, agent, liquids, NEAR_NEIGHBOUR)
    if near:
        reason = f"close to {near}, which acts on it: swelling is likely"
        found.append(Reading("swells", PREDICTED, reason=reason))
    known = [one for one in found if one.effect not in ("undecided", "cannot tell")]
    unsaid = [one for one in found if one.evidence == NOTHING]
    published = any(one.effect == "no effect expected" and one.source for one in known)
    if not found:
        reason = f"what acts on {matter.name} is not recorded"
        worst = Reading("cannot tell", NOTHING, reason=reason)
    elif not known or (unsaid and not published and not acts(known)):
        worst = worst_of(unsaid or found)
    else:
        worst = worst_of(known)
    if worst.effect in ("dissolves", "mobilises") and matter.has("cross-linked"):
        reason = f"cross-linked: swells rather than dissolves ({worst.reason})"
        worst = replace(worst, effect="swells", reason=reason)
    losing = tuple(one.reason for one in found if one.reason and one is not worst)
    return replace(worst, red=red, losing=tuple(dict.fromkeys(losing)))


def acts(readings: Sequence[Reading]) -> bool:
    """Whether some reading is of an effect."""
    return any(one.effect in ACTING for one in readings)


def _published_on(matter: Matter, agent: Agent, liquids: Liquids) -> list[Reading]:
    """Published effects of the agent and of each part of it of 10 % or more."""
    found = []
    for fact in matter.facts:
        whole = same_agent(fact.agent.parts, agent.parts)
        part = len(agent.parts) > 1 and any(
            p.share >= 10 and same_agent(fact.agent.parts, (Part(p.solvent),)) for p in agent.parts
        )
        if fact.effect in ACTING and (whole or part):
            of = "" if whole else f"{name_of(fact.agent.parts[0], liquids)} alone "
            found.append(
                _as_reading(fact, fact.effect, f"{of}{line_of(fact, rank_of(fact)).words}")
            )
        elif whole and fact.counts:
            words = line_of(fact, rank_of(fact)).words
            found.append(_as_reading(fact, "no effect expected", words))
        elif whole:
            words = f"no effect, {REMEMBERED}: clears nothing"
            found.append(Reading("cannot tell", REMEMBERED, reason=words))
    return found


def _as_reading(fact: Fact, effect: str, words: str) -> Reading:
    return Reading(effect, RANKS[rank_of(fact)], fact.source, None, words)


def _predicted_on(
    matter: Matter, agent: Agent, red: tuple[float, float], liquids: Liquids
) -> Reading:
    """The lowest RED over all spheres, of the agent and of its slowest part alone."""
    low, reason = red[0], f"RED {span(red)}"
    slowest = max(agent.parts, key=lambda p: boiling(p, liquids))
    if len(agent.parts) > 1 and slowest.solvent in liquids:
        alone = red_range(matter.spheres, liquids[slowest.solvent].at)
        if alone is not None and alone[0] < low:
            low = alone[0]
            reason += f"; {name_of(slowest, liquids)}, which stays longest, alone {alone[0]:.2f}"
    sources = "; ".join(dict.fromkeys(s.source for s in matter.spheres if s.source))
    return Reading(words_of_red(low), PREDICTED, sources, red, reason)


def _by_traits(matter: Matter, agent: Agent, liquids: Liquids) -> list[Reading]:
    """What class rules say of water, acids and alkalis, and of minerals in organic solvents."""
    found = []
    for trait in ("water", "acid", "alkali"):
        if not has(agent, trait, liquids):
            continue
        sensitive = matter.traits.get(f"{trait}-sensitive")
        if sensitive is None or sensitive.holds == "unknown":
            reason = f"whether {matter.name} bears {trait} is not recorded"
            found.append(Reading("cannot tell", NOTHING, reason=reason))
        elif sensitive.holds == "yes":
            why = sensitive.effect or f"{matter.name} is {trait}-sensitive"
            found.append(Reading("attacked", RULE, sensitive.source, None, why))
        else:
            reason = f"{matter.name} is recorded as bearing {trait}"
            found.append(Reading("no effect expected", RULE, sensitive.source, None, reason))
    if is_organic(agent, liquids) and matter.has("no solvent"):
        reason = "mineral or metal: organic solvents do not dissolve it"
        found.append(Reading("no effect expected", RULE, reason=reason))
    return found
