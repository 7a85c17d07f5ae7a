"""Agents compared: which of two is the same, the harsher, an organic solvent, a water solution."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from conservedb.knowledge.behaviour import Agent, Part, Solvent

COVERED_BY = {
    "swab": {"swab", "free", "gel", "poultice", "bath"},
    "gel": {"gel", "poultice", "bath"},
    "poultice": {"poultice", "bath"},
    "free": {"free", "bath"},
    "bath": {"bath"},
    "vapour": {"vapour"},
}
"""By form, the forms that bring at least as much of the agent as far (common practice, no
source): a gel holds the liquid back, and so says nothing of free liquid, which runs."""
ROOM_C = 20.0
_SAME_SHARE = 2.5
"""Shares this close, in per cent by volume, are the same: no bench measures finer."""

_SAME_C = 5.0
"""Temperatures this close, in degrees, are the same: rooms are not kept any better."""

Liquids = Mapping[str, Solvent]


def same_agent(one: Sequence[Part], other: Sequence[Part]) -> bool:
    """Whether two agents are the same liquids in the same shares, as far as one can measure."""
    theirs = {part.solvent: part.share for part in other}
    return len(one) == len(theirs) and all(
        part.solvent in theirs and abs(theirs[part.solvent] - part.share) <= _SAME_SHARE
        for part in one
    )


def covers(tried: Agent, meant: Agent) -> bool:
    """Whether what was tried is what is meant or harsher: agent, form, temperature and dwell.

    A vapour is compared only with a vapour; a form or dwell that was not recorded covers none
    that is.
    """
    if not same_agent(tried.parts, meant.parts):
        return False
    if meant.form and tried.form not in COVERED_BY[meant.form]:
        return False
    tried_c, meant_c = (
        ROOM_C if one.temperature_c is None else one.temperature_c for one in (tried, meant)
    )
    if tried_c < meant_c - _SAME_C:
        return False
    return meant.dwell_min is None or (
        tried.dwell_min is not None and tried.dwell_min >= meant.dwell_min
    )


def has(agent: Agent, trait: str, liquids: Liquids) -> bool:
    """Whether some part of an agent has a trait."""
    return any(p.solvent in liquids and liquids[p.solvent].has(trait) for p in agent.parts)


def is_organic(agent: Agent, liquids: Liquids) -> bool:
    """Whether every part is an organic solvent."""
    return all(
        part.solvent in liquids and liquids[part.solvent].has("organic solvent")
        for part in agent.parts
    )


def boiling(part: Part, liquids: Liquids) -> float:
    """The boiling point of a part in C; above all others where it is not recorded."""
    liquid = liquids.get(part.solvent)
    return liquid.boiling_c if liquid is not None and liquid.boiling_c is not None else 1000.0


def name_of(part: Part, liquids: Liquids) -> str:
    """What a part is called."""
    return liquids[part.solvent].name if part.solvent in liquids else part.solvent
