"""How a layer may be taken off, and what that does to its neighbours: a plan, never a leave.

The plan begins with what the joint carries and what else holds it, for a released joint
falls. Options are ranked by keys that are printed (`conservedb.knowledge.ranking`).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from conservedb.knowledge import cautions, unknown_matter
from conservedb.knowledge.agents import has, name_of, same_agent
from conservedb.knowledge.behaviour import Agent, Lying, Neighbour, Part, Solvent
from conservedb.knowledge.blending import blend_options
from conservedb.knowledge.evidence import ACTING, PREDICTED, RULE, binders, on_target
from conservedb.knowledge.hands_and_heat import by_hand, heat, waiting
from conservedb.knowledge.neighbours import on_neighbour
from conservedb.knowledge.plan import (
    OnNeighbour,
    Option,
    Plan,
    Reading,
    Refused,
    Target,
    Via,
)
from conservedb.knowledge.ranking import ranked
from conservedb.knowledge.verdicts import Fixing, Verdict, holds, opens, verdict

FRESH_DAYS = 365
"""A film younger than this may still hold solvent and counts as fresh (Vincotte et al. 2019)."""
MOST = 8
"""Predictions listed per group; facts are always listed."""


@dataclass(frozen=True, slots=True)
class Settings:
    """What the department has settled: worst hazard band shown, and where it works."""

    widest_band: str = "C"
    jurisdiction: str = ""
    depression_c: float = 30.0
    hold_days: int = 365


@dataclass(frozen=True, slots=True)
class Situation:
    """A layer at a place on a day, with everything that bears on taking it off.

    `layers` are all that may be at the place, the target among them, from side A or the
    substrate outward. `closed` holds unless a joint is certainly open. `carries` and `support`
    are sentences of the record, "" where there is none. `porous` is whether a bearer is porous
    (None where not recorded). `beware` are warnings that bear on heat, each in words.
    """

    target: Lying
    layers: tuple[Lying, ...]
    neighbours: tuple[Neighbour, ...]
    solvents: Mapping[str, Solvent]
    day: int
    settings: Settings = Settings()
    is_joint: bool = False
    closed: bool = False
    load_kg: float | None = None
    load_source: str = ""
    support: str = ""
    porous: bool | None = None
    access: str = ""
    state: str = "present"
    fixings: tuple[Fixing, ...] = ()
    beware: tuple[str, ...] = ()


def plan(case: Situation) -> Plan:
    """The plan for the target of a situation."""
    target, via = _through(case)
    said = verdict(case.target, barrier=via.name if via else "", closed=case.closed)
    neighbours = _neighbours(case, target)
    kept, hidden, refused, more = _options(case, target, neighbours, via)
    held = holds(case.layers, case.fixings, case.closed) if case.is_joint else ()
    unknown = case.target.matter is None or case.target.matter.is_class
    supported = not case.is_joint or bool(case.support)
    return Plan(
        target=_target(case),
        verdict=said.word,
        verdict_reason=said.reason,
        carries=_carries(case),
        support=case.support or ("no support step recorded" if case.is_joint else ""),
        study_only=not supported,
        holds=held,
        via=via,
        options=kept,
        refused=refused,
        sequence=unknown_matter.sequence(neighbours, case.solvents) if unknown else (),
        first_test=_first_test(case, target, kept, said, unknown),
        limits=cautions.limits(_topics(case, kept)),
        hidden=hidden,
        cautions=_cautions(case, neighbours, via),
        opens=opens(held) if case.is_joint else "",
        more=more,
    )


def _target(case: Situation) -> Target:
    one = case.target
    known = one.matter.name if one.matter else ""
    others = tuple(m.name for m in one.matters[1:])
    return Target(one.ref, one.place, one.name, known, one.identified, case.state, one.role, others)


def _carries(case: Situation) -> str:
    if not case.is_joint:
        return ""
    if case.load_kg is None:
        return "load not recorded: treat as loaded"
    source = case.load_source or "source not recorded"
    if case.load_kg == 0:
        return f"recorded as carrying nothing ({source}): look before you loosen"
    return f"carries {case.load_kg:g} kg ({source}): support before you loosen"


# -- barriers -----------------------------------------------------------------------------


def _through(case: Situation) -> tuple[Lying, Via | None]:
    """What is to be released: the layer itself or, under an irreversible one, its barrier."""
    matter = case.target.matter
    if matter is None or case.target.role == "barrier":
        return case.target, None
    irreversible = any(b.has("cross-linked") or b.has("no solvent") for b in binders(matter))
    barriers = [one for one in case.layers if one.role == "barrier" and one.matter is not None]
    if not irreversible or not barriers:
        return case.target, None
    barrier = min(barriers, key=lambda one: (not one.certain, one.dry == "no"))
    sides = tuple(sorted({one.side for one in barriers if one.side}))
    return barrier, Via(barrier.ref, barrier.name, sides, tuple(_conditions(barrier, sides)))


def _conditions(barrier: Lying, sides: Sequence[str]) -> Iterable[str]:
    yield "releases only if the barrier was thin, whole and fully dry (Podany et al. 2001)"
    if barrier.dry == "yes":
        yield "recorded as dry when covered"
    elif barrier.dry == "no":
        yield "recorded as not dry when covered: it may not release"
    else:
        yield "cannot tell: whether it was dry when covered is not recorded"
    if barrier.coverage != "whole":
        covered = barrier.coverage or "not recorded"
        yield f"coverage: {covered}; where it is missing the face is bonded to the original"
    if len(sides) == 1:
        yield f"recorded on side {sides[0]} only: only that face releases"
    elif not sides:
        yield "cannot tell: on which faces it lies is not recorded"
    if not barrier.certain:
        yield "the barrier is not certainly there"
    yield "residue of the barrier stays on the original"


# -- options ------------------------------------------------------------------------------


def _neighbours(case: Situation, target: Lying) -> tuple[Neighbour, ...]:
    found = [
        near
        for near in case.neighbours
        if near.lying.ref != target.ref or near.lying.place != target.place
    ]
    if target is not case.target and all(n.lying is not case.target for n in found):
        found.insert(0, Neighbour(case.target))
    return tuple(found)


def _options(
    case: Situation, target: Lying, neighbours: Sequence[Neighbour], via: Via | None
) -> tuple[tuple[Option, ...], int, tuple[Refused, ...], int]:
    """The ranked options, how many the hazard band hides, what is refused, what is left out."""
    finish, fresh = Finish(case, neighbours), _fresh(case, target)
    found = [
        finish(agent, on_target(target, agent, case.solvents, fresh=fresh), "")
        for agent in _agents(case, target)
    ]
    found += blend_options(target, neighbours, case.solvents, case.settings.widest_band, finish)
    found = [one for one in found if _worth_listing(one)]
    widest = case.settings.widest_band or "C"
    shown = [one for one in found if (one.band or "C") <= widest]
    warm, refused = heat(target, neighbours, case.beware, _depression(case, target))
    others = [*warm, *by_hand(case.target, neighbours, case.is_joint), *waiting(target)]
    harmless = {near.lying.ref for near in neighbours if near.lying.significance == "may go"}
    harmless |= {case.target.ref} if via else set()
    pairs = [
        ranked(one, case.solvents, closed=case.closed, harmless=harmless)
        for one in (*shown, *others)
    ]
    pairs.sort(key=lambda pair: (pair[0], pair[1].title))
    kept = _trimmed([option for _, option in pairs])
    return tuple(kept), len(found) - len(shown), refused, len(pairs) - len(kept)


def _trimmed(options: Sequence[Option]) -> list[Option]:
    """Every fact, and of mere predictions the first few of each group."""
    kept, predictions = [], dict.fromkeys((one.group for one in options), 0)
    for one in options:
        if one.target.evidence in (PREDICTED, RULE) and one.agent:
            predictions[one.group] += 1
            if predictions[one.group] > MOST:
                continue
        kept.append(one)
    return kept


def _worth_listing(option: Option) -> bool:
    """What acts, or acted when fresh; a bare "undecided" prediction nominates nothing."""
    if option.target.effect in ACTING:
        return True
    return option.target.effect == "undecided" and option.target.evidence != PREDICTED


def _agents(case: Situation, target: Lying) -> list[Agent]:
    """Agents of tests and published evidence as they were used, then every single solvent."""
    found = [fact.agent for fact in target.tests]
    if target.matter is not None:
        for matter in binders(target.matter):
            found += [fact.agent for fact in matter.facts]
    unique: list[Agent] = []
    for agent in found:
        if not any(_same_use(agent, other) for other in unique):
            unique.append(agent)
    singles = [
        Agent((Part(key),))
        for key, liquid in case.solvents.items()
        if liquid.at and liquid.has("organic solvent")
    ]
    known = [agent.parts for agent in unique]
    unique += [one for one in singles if not any(same_agent(one.parts, k) for k in known)]
    return [agent for agent in unique if _liquid(agent, case.solvents)]


def _liquid(agent: Agent, solvents: Mapping[str, Solvent]) -> bool:
    return all(part.solvent in solvents for part in agent.parts)


def _same_use(one: Agent, other: Agent) -> bool:
    return (
        same_agent(one.parts, other.parts)
        and one.form == other.form
        and one.temperature_c == other.temperature_c
    )


class Finish:
    """Makes an option of an agent and what it does to the target."""

    def __init__(self, case: Situation, neighbours: Sequence[Neighbour]) -> None:
        self._case, self._neighbours = case, neighbours

    def __call__(self, agent: Agent, reading: Reading, window: str) -> Option:
        """The option, with its neighbours read and its cautions beside it."""
        case, liquids = self._case, self._case.solvents
        water = has(agent, "water", liquids)
        vapour = case.closed and not water and not agent.form
        used = replace(agent, form=agent.form or ("vapour" if vapour else "swab"))
        near = tuple(
            OnNeighbour(
                one.lying.ref,
                one.lying.place,
                one.lying.name,
                on_neighbour(one.lying, used, liquids),
                one.path,
                one.distance_mm,
            )
            for one in self._neighbours
        )
        warnings = list(cautions.of_agent(agent.parts, liquids, case.settings.jurisdiction))
        if used.form == "vapour":
            warnings.insert(0, cautions.VAPOUR)
        if case.closed and reading.effect == "swells":
            warnings.insert(0, cautions.SWELLING)
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
        )


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
    return ", ".join(words)


def _fresh(case: Situation, target: Lying) -> bool:
    return target.laid[0] > case.day - FRESH_DAYS


def _depression(case: Situation, target: Lying) -> float:
    """How far solvent that may remain lowers softening: while the layer may be young."""
    young = target.laid[1] > case.day - case.settings.hold_days
    return case.settings.depression_c if young else 0.0


# -- words --------------------------------------------------------------------------------


def _first_test(
    case: Situation, target: Lying, options: Sequence[Option], said: Verdict, unknown: bool
) -> str:
    if unknown:
        return "begin with what takes nothing, and keep a sample before any solvent (see the steps)"
    for one in options:
        if one.group == "to test" and one.agent:
            near = [n.name for n in one.neighbours if n.reading.effect != "no effect when tested"]
            before = f"; try it first on {', '.join(dict.fromkeys(near[:3]))}" if near else ""
            return (
                f"{one.title} on {target.name}, by swab, on a spot where it shows least{before};"
                " read it wet, dry and after a day; note colour on the swab and tide-line"
            )
    if said.word == "goes by itself":
        return "weigh or measure it, wait, and look again"
    if any(one.agent for one in options):
        return "no option on record leaves every neighbour alone: test the neighbours first"
    return "nothing to test with a solvent; try the least force by hand at an edge that shows least"


def _topics(case: Situation, options: Sequence[Option]) -> list[str]:
    topics = ["joint"] if case.is_joint else []
    if case.porous is not False:
        topics.append("porous")
    if any(len(one.agent) > 1 for one in options):
        topics.append("blend")
    if any(one.kind == "heat" for one in options):
        topics.append("heat")
    return topics


def _cautions(case: Situation, neighbours: Sequence[Neighbour], via: Via | None) -> tuple[str, ...]:
    found = []
    over = [
        one.name
        for one in case.layers
        if not case.is_joint
        and one.stack is not None
        and case.target.stack is not None
        and one.stack > case.target.stack
        and one.certain
    ]
    if over:
        found.append(f"lies under {', '.join(over)}: an agent must pass these first")
    if case.access:
        found.append(f"access: {case.access}")
    if case.closed and case.is_joint:
        found.append("closed joint: an agent reaches it from the edge or as vapour, and slowly")
    if case.porous is None:
        found.append("cannot tell: whether the bearer is porous is not recorded")
    elif case.porous:
        found.append("porous bearer: what is dissolved may be driven deeper and stain")
    if case.target.significance == "keep":
        found.append("recorded as to be kept: who decides must be asked before anything else")
    if case.target.origin == "maker":
        found.append("the maker's own layer")
    if not case.target.certain:
        found.append("the layer is not certainly there: look before you plan")
    if not neighbours:
        found.append("no neighbour is on record, which is not 'none': look before you test")
    return tuple(found)
