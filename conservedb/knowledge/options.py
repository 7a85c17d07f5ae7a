"""Every way that might take a layer off, with what it does to the neighbours, in order."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import replace

from conservedb.knowledge import cautions
from conservedb.knowledge.agents import boiling, covers, has, name_of, same_agent
from conservedb.knowledge.behaviour import Agent, Lying, Neighbour, Part, Solvent
from conservedb.knowledge.blending import blend_options
from conservedb.knowledge.evidence import ACTING, PREDICTED, RULE, binders, on_target
from conservedb.knowledge.hands_and_heat import by_hand, heat, nitrate_near, waiting
from conservedb.knowledge.neighbours import on_neighbour
from conservedb.knowledge.plan import OnNeighbour, Option, Reading, Refused
from conservedb.knowledge.ranking import ranked
from conservedb.knowledge.situation import FRESH_DAYS, Situation
from conservedb.knowledge.unknown_matter import water_withheld
from conservedb.knowledge.warming import WARM_C

VAPOUR_BELOW_C = 150.0
"""Boiling point above which a liquid makes too little vapour to work with in a room (common
practice, no source)."""
MOST, MOST_BLENDS = 8, 3
"""Predictions listed per group, and blends among them; facts are always listed."""


def options(
    case: Situation,
    target: Lying,
    neighbours: Sequence[Neighbour],
    barriers: Sequence[Lying],
) -> tuple[tuple[Option, ...], int, tuple[Refused, ...], int]:
    """The ranked options, how many the hazard band hides, what is refused, what is left out.

    Args:
        barriers: those through which an irreversible target is to be released.
    """
    finish, fresh = Finish(case, neighbours), is_fresh(case, target)
    found = [
        finish(agent, on_target(target, agent, case.solvents, fresh=fresh), "")
        for agent in _agents(case, target)
    ]
    found += blend_options(target, neighbours, case.solvents, case.settings.widest_band, finish)
    found, too_warm = _cool_enough(
        [one for one in found if _worth_listing(one)], target, neighbours
    )
    widest = case.settings.widest_band or "C"
    shown = [one for one in found if (one.band or "C") <= widest]
    warm, refused = heat(target, neighbours, case.beware, case.depression)
    others = [*warm, *by_hand(case.target, case.is_joint), *waiting(target)]
    harmless = _harmless(case, neighbours, barriers)
    pairs = [
        ranked(one, case.solvents, closed=case.closed, harmless=harmless)
        for one in (*shown, *others)
    ]
    pairs.sort(key=lambda pair: (pair[0], pair[1].title))
    kept = _trimmed([option for _, option in pairs])
    return tuple(kept), len(found) - len(shown), (*refused, *too_warm), len(pairs) - len(kept)


def _cool_enough(
    found: Sequence[Option], target: Lying, neighbours: Sequence[Neighbour]
) -> tuple[list[Option], list[Refused]]:
    """Options that may be offered; what is used warm is refused near cellulose nitrate."""
    nitrate = nitrate_near([target, *(near.lying for near in neighbours)])
    if not nitrate:
        return list(found), []
    warm = [one for one in found if one.temperature_c is not None and one.temperature_c >= WARM_C]
    refused = [Refused(f"{one.title}, {one.form}", nitrate) for one in warm]
    return [one for one in found if one not in warm], refused


def _harmless(
    case: Situation, neighbours: Sequence[Neighbour], barriers: Sequence[Lying]
) -> set[str]:
    """Layers that may be acted on: those recorded as "may go" and, where a barrier is to let
    go, the layer over it and the barrier on the other face.
    """
    found = {near.lying.ref for near in neighbours if near.lying.significance == "may go"}
    if barriers:
        found |= {case.target.ref, *(one.ref for one in barriers)}
    return found


def _trimmed(found: Sequence[Option]) -> list[Option]:
    """Every fact, and of mere predictions the first few of each group."""
    kept, listed = [], Counter[tuple[str, bool]]()
    for one in found:
        if one.target.evidence in (PREDICTED, RULE) and one.agent:
            blend = len(one.agent) > 1
            listed[one.group, blend] += 1
            if listed[one.group, blend] > (MOST_BLENDS if blend else MOST):
                continue
        kept.append(one)
    return kept


def _worth_listing(option: Option) -> bool:
    """What acts, or acted when fresh; a mere prediction nominates only below a RED of 1."""
    reading = option.target
    if reading.effect in ACTING:
        return reading.evidence != PREDICTED or reading.red is None or reading.red[0] < 1
    return reading.effect == "undecided" and reading.evidence != PREDICTED


def _agents(case: Situation, target: Lying) -> list[Agent]:
    """Agents of tests and published evidence as they were used, then every single solvent."""
    found = [fact.agent for fact in target.tests]
    if target.matter is not None:
        for matter in binders(target.matter):
            found += [fact.agent for fact in matter.facts]
    known = [agent.parts for agent in found]
    found += [
        Agent((Part(key),))
        for key, liquid in case.solvents.items()
        if liquid.at
        and liquid.has("organic solvent")
        and not any(same_agent((Part(key),), parts) for parts in known)
    ]
    unique: list[Agent] = []
    for agent in (_used(case, one) for one in found if _liquid(one, case.solvents)):
        if not any(_same_use(agent, other) for other in unique):
            unique.append(agent)
    return unique


def _used(case: Situation, agent: Agent) -> Agent:
    """An agent as it would be used here: of no stated form, a vapour at a closed joint."""
    if agent.form:
        return agent
    if not case.closed:
        return replace(agent, form="swab")
    slow = max(boiling(part, case.solvents) for part in agent.parts) > VAPOUR_BELOW_C
    return replace(agent, form="free" if slow or has(agent, "water", case.solvents) else "vapour")


def _liquid(agent: Agent, solvents: Mapping[str, Solvent]) -> bool:
    return all(part.solvent in solvents for part in agent.parts)


def _same_use(one: Agent, other: Agent) -> bool:
    return (
        same_agent(one.parts, other.parts)
        and one.form == other.form
        and one.temperature_c == other.temperature_c
        and one.dwell_min == other.dwell_min
    )


class Finish:
    """Makes an option of an agent and what it does to the target."""

    def __init__(self, case: Situation, neighbours: Sequence[Neighbour]) -> None:
        self._case, self._neighbours = case, neighbours

    def __call__(self, agent: Agent, reading: Reading, window: str) -> Option:
        """The option, with its neighbours read and its cautions beside it."""
        case, liquids = self._case, self._case.solvents
        water, used = has(agent, "water", liquids), self._as_tried(_used(case, agent))
        near = tuple(
            OnNeighbour(
                one.lying.ref,
                one.lying.place,
                one.lying.name,
                on_neighbour(one.lying, used, liquids, depressed_by=case.depression(one.lying)),
                one.path,
                one.distance_mm,
            )
            for one in self._neighbours
        )
        warnings = list(cautions.of_agent(agent.parts, liquids, case.settings.jurisdiction))
        if used.form == "vapour":
            warnings.insert(0, cautions.VAPOUR)
        here = [one.reading.effect for one in near if one.path == "same place"]
        if case.closed and "swells" in (reading.effect, *here):
            warnings.insert(0, cautions.SWELLING)
        withheld = water_withheld(self._neighbours) if water else ""
        warnings += [withheld] if withheld else []
        bands = [liquids[part.solvent].band or "C" for part in agent.parts]
        return Option(
            kind="water" if water else "vapour" if used.form == "vapour" else "solvent",
            title=_title(agent, liquids),
            agent=agent.parts,
            target=reading,
            neighbours=near,
            form=_form(used),
            window=window,
            cautions=tuple(warnings),
            hazards=cautions.hazards_of(agent.parts, liquids),
            figures=cautions.figures_of(agent.parts, liquids),
            band=max(bands),
            temperature_c=agent.temperature_c,
        )

    def _as_tried(self, agent: Agent) -> Agent:
        """An agent of no stated dwell, held to the shortest for which neighbours were cleared."""
        dwells = [
            fact.agent.dwell_min
            for near in self._neighbours
            for fact in near.lying.tests
            if fact.effect == "no effect" and covers(fact.agent, agent) and fact.agent.dwell_min
        ]
        if agent.dwell_min is not None or not dwells:
            return agent
        return replace(agent, dwell_min=min(dwells))


def _title(agent: Agent, liquids: Mapping[str, Solvent]) -> str:
    if len(agent.parts) == 1:
        return name_of(agent.parts[0], liquids)
    return ", ".join(f"{part.share:g} % {name_of(part, liquids)}" for part in agent.parts)


def _form(agent: Agent) -> str:
    """The use of an agent in words: form, temperature, dwell."""
    words = [agent.form or "swab"]
    if agent.temperature_c is not None:
        words.append(f"{agent.temperature_c:g} C")
    if agent.dwell_min is not None:
        words.append(f"{agent.dwell_min:g} min")
    return ", ".join(words).replace("free", "from the edge or free")


def is_fresh(case: Situation, target: Lying) -> bool:
    """Whether a layer is known to be so young that it counts as fresh."""
    return target.laid[0] > case.day - FRESH_DAYS
