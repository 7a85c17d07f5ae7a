"""How a layer may be taken off, and what that does to its neighbours: a plan, never a leave.

The plan begins with what the joint carries and what else holds it, for a released joint
falls. Options are ranked by keys that are printed (`conservedb.knowledge.ranking`).
"""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.knowledge import cautions, unknown_matter
from conservedb.knowledge.barriers import best, irreversible, under, via
from conservedb.knowledge.behaviour import Lying, Neighbour
from conservedb.knowledge.options import options
from conservedb.knowledge.plan import Option, Plan, Target, Via
from conservedb.knowledge.situation import Settings, Situation
from conservedb.knowledge.verdicts import Verdict, holds, opens, verdict

__all__ = ["Settings", "Situation", "plan"]

NO_SUPPORT = "no support step recorded"


def plan(case: Situation) -> Plan:
    """The plan for the target of a situation."""
    target, through = _through(case)
    barriers = under(case.target, case.layers) if through else ()
    said = verdict(case.target, barriers=barriers, closed=case.closed)
    neighbours = _neighbours(case, target)
    kept, hidden, refused, more = options(case, target, neighbours, barriers)
    held = holds(case.layers, case.fixings, case.closed) if case.is_joint else ()
    unknown = case.target.matter is None or case.target.matter.is_class
    supported = not case.is_joint or bool(case.support)
    return Plan(
        target=_target(case),
        verdict=said.word,
        verdict_reason=said.reason,
        carries=_carries(case),
        support=case.support or case.other_support or (NO_SUPPORT if case.is_joint else ""),
        study_only=not supported,
        holds=held,
        via=through,
        options=kept,
        refused=refused,
        sequence=unknown_matter.sequence(neighbours, case.solvents) if unknown else (),
        first_test=_first_test(case, target, kept, said, unknown),
        limits=cautions.limits(_topics(case, kept)),
        hidden=hidden,
        cautions=_cautions(case, neighbours),
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


def _through(case: Situation) -> tuple[Lying, Via | None]:
    """What is to be released: the layer itself or, under an irreversible one, its barrier."""
    barriers = under(case.target, case.layers)
    if not barriers or not irreversible(case.target):
        return case.target, None
    return best(barriers), via(barriers)


def _neighbours(case: Situation, target: Lying) -> tuple[Neighbour, ...]:
    """Every neighbour once; what may lie at several places counts as one layer."""
    found: dict[str, Neighbour] = {}
    for near in case.neighbours:
        if near.lying.ref != target.ref or near.is_substrate:
            found.setdefault(f"{near.is_substrate} {near.lying.ref}", near)
    if target is not case.target:
        found.setdefault(f"False {case.target.ref}", Neighbour(case.target))
    return tuple(found.values())


# -- words --------------------------------------------------------------------------------


def _first_test(
    case: Situation, target: Lying, found: Sequence[Option], said: Verdict, unknown: bool
) -> str:
    if unknown:
        return "begin with what takes nothing, and keep a sample before any solvent (see the steps)"
    over = _over(case)
    if over:
        return f"test what lies over it first ({', '.join(over)}): an agent must pass that"
    for one in found:
        if one.group == "to test" and one.agent:
            return _try(one, target)
    if said.word == "goes by itself":
        return "weigh or measure it, wait, and look again"
    if any(one.agent for one in found):
        return "no option on record leaves every neighbour alone: test the neighbours first"
    return "nothing to test with a solvent; try the least force by hand at an edge that shows least"


def _try(one: Option, target: Lying) -> str:
    """The first test in words; neighbours that no test has cleared come before the target."""
    near = [n.name for n in one.neighbours if n.reading.effect != "no effect when tested"]
    before = f"; try it first on {', '.join(dict.fromkeys(near[:3]))}" if near else ""
    return (
        f"{one.title} on {target.name} ({one.form}), on a spot where it shows least{before};"
        " read it wet, dry and after a day; note colour on the swab and tide-line"
    )


def _topics(case: Situation, found: Sequence[Option]) -> list[str]:
    topics = ["joint"] if case.is_joint else []
    if case.porous is not False:
        topics.append("porous")
    if any(len(one.agent) > 1 for one in found):
        topics.append("blend")
    if any(one.kind == "heat" for one in found):
        topics.append("heat")
    return topics


def _over(case: Situation) -> list[str]:
    """Layers that lie over the target on a surface, by name."""
    stack = case.target.stack
    if case.is_joint or stack is None:
        return []
    return [one.name for one in case.layers if one.stack is not None and one.stack > stack]


def _cautions(case: Situation, neighbours: Sequence[Neighbour]) -> tuple[str, ...]:
    found = list(case.settings.notes)
    over = _over(case)
    if over:
        found.append(f"lies under {', '.join(over)}: an agent must pass these first")
    own = [near.lying.name for near in neighbours if near.lying.origin == "maker"]
    if own:
        found.append(f"the maker's own near: {', '.join(dict.fromkeys(own))}")
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
