"""A layer that nobody has identified: what takes nothing first, a sample before any solvent.

The order is common practice, no source; what an answer suggests is from memory. Results
suggest what the matter may be and never conclude.
"""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.knowledge.agents import Liquids
from conservedb.knowledge.behaviour import Agent, Neighbour, Part
from conservedb.knowledge.evidence import ACTING
from conservedb.knowledge.neighbours import on_neighbour
from conservedb.knowledge.plan import Step

_TAKES_NOTHING = (
    Step(
        "look under UV and under magnification",
        "orange fluorescence may be shellac; greenish yellow an aged natural resin; whitish a"
        " synthetic one; none proves anything",
    ),
    Step("try hardness with a needle at the edge", "soft and waxy, rubbery, or brittle as glass"),
    Step(
        "read the file, and set its date against when materials could be had", "what it cannot be"
    ),
    Step(
        "take a sample and keep it for analysis before any solvent",
        "the only step that may establish it; record box and number",
    ),
    Step("dry: lift or pare a grain", "whether it comes away without anything wet"),
)
_IN_TURN: tuple[tuple[str, str], ...] = (
    ("n-heptane", "if it goes: a wax, or a resin of low polarity"),
    ("xylenes", "if it goes: an acrylic, a dammar not much aged, a hydrocarbon resin"),
    ("2-propanol", "if it goes: shellac, an aged natural resin, a vinyl acetal"),
    ("ethanol", "if it goes: shellac, poly(vinyl butyral), an aged natural resin"),
    (
        "acetone",
        "if it goes: an acrylic, poly(vinyl acetate), cellulose nitrate; if it only"
        " swells: a cross-linked resin or old oil",
    ),
)
_WATER = "water"
_FORBIDS_WATER = ("soluble salt", "gypsum", "iron", "water-sensitive")


def sequence(neighbours: Sequence[Neighbour], liquids: Liquids) -> tuple[Step, ...]:
    """The steps, each with the reason why it is withheld here, "" where there is none."""
    steps = list(_TAKES_NOTHING)
    for key, suggests in _IN_TURN:
        if key in liquids:
            withheld = _harms(Agent((Part(key),), "swab"), neighbours, liquids)
            steps.append(Step(f"swab of {liquids[key].name}, a spot", suggests, withheld))
    name = liquids[_WATER].name if _WATER in liquids else "water"
    suggests = "if it swells or goes: a glue, a starch, a gum"
    steps.append(Step(f"swab of {name}, a spot", suggests, water_withheld(neighbours)))
    return tuple(steps)


def _harms(agent: Agent, neighbours: Sequence[Neighbour], liquids: Liquids) -> str:
    for near in neighbours:
        reading = on_neighbour(near.lying, agent, liquids)
        if reading.effect in ACTING:
            one = near.lying
            where = f"{one.ref} {one.name} at {one.place}"
            return f"{reading.effect} {where} ({reading.evidence}): not before a test there"
    return ""


def water_withheld(neighbours: Sequence[Neighbour]) -> str:
    """Why water must wait; it is never mild on gypsum, salts, iron, unfired clay or bole."""
    barred, unknown = [], []
    for near in neighbours:
        matters = near.lying.matters
        if not matters:
            unknown.append(near.lying.name)
        for matter in matters:
            bad = [trait for trait in _FORBIDS_WATER if matter.has(trait)]
            if bad:
                barred.append(f"{near.lying.name} ({bad[0]})")
            elif "water-sensitive" not in matter.traits:
                unknown.append(near.lying.name)
    if barred:
        return f"no water: {', '.join(dict.fromkeys(barred))} lies near"
    ruled = "only after salts, gypsum, iron and water-sensitive layers are ruled out"
    if unknown:
        return f"{ruled}; cannot tell for {', '.join(dict.fromkeys(unknown))}"
    return f"{ruled}; soluble salts are not ruled out by the record"
