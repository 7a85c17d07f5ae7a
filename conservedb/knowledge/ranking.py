"""The order of options: keys compared one after the other, each printed, none weighed.

Neighbours first, then what the agent does to the target, then who works with it.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from conservedb.knowledge.agents import Liquids, boiling
from conservedb.knowledge.evidence import (
    ACTING,
    AGED,
    FRESH,
    PREDICTED,
    RULE,
    TESTED,
)
from conservedb.knowledge.plan import GROUPS, OnNeighbour, Option, Reading

Key = tuple[float, ...]
HARMED = 3.5
"""Class of a neighbour from which on an option is listed as acting on neighbours too."""
_NEIGHBOUR = {
    "no effect when tested": (0.0, "cleared by a test"),
    "no effect expected": (1.0, "no effect expected on what is to stay"),
    "tested but for less": (3.0, "a neighbour tested, but for less"),
    "undecided": (3.0, "a neighbour undecided"),
    "cannot tell": (3.0, "a neighbour of which nothing is known"),
    "swells": (3.5, "swells a neighbour"),
    "softens": (3.5, "softens a neighbour"),
    "mobilises": (4.0, "mobilises a neighbour"),
    "dissolves": (4.0, "dissolves a neighbour"),
    "attacked": (4.0, "attacks a neighbour"),
}
_TARGET = {TESTED: 0.0, AGED: 1.0, FRESH: 2.0, PREDICTED: 3.0, RULE: 3.0}
_REMEMBERED = 3.8
_PART = {"swells": 4.0, "softens": 4.0, "undecided": 4.2}
_BY_HAND = "what gives first is not known beforehand"
_BEHIND = 3.4
"""Class at most of what lies behind a path recorded as tight, for an agent that is held back;
vapour, warmth and a bath find their way."""
_STEPS = (100.0, 150.0, 180.0)
"""Boiling points in C above which a liquid stays longer."""


def ranked(
    option: Option, liquids: Liquids, *, closed: bool, harmless: Collection[str]
) -> tuple[Key, Option]:
    """The key of an option, and the option with its group and reasons of rank.

    Args:
        closed: whether the target lies in a closed joint, where swelling is a hazard.
        harmless: refs of layers that may be harmed: those to be removed.
    """
    judged = [one for one in option.neighbours if one.layer not in harmless]
    neighbour, said = _worst(option, judged) if option.agent or judged else (3.0, _BY_HAND)
    target = _of_target(option.target)
    band = option.band or "C"
    slow = max((boiling(part, liquids) for part in option.agent), default=0.0)
    step = sum(slow > limit for limit in _STEPS)
    margin = _margin(option.target, judged)
    group = _group(option, neighbour, closed)
    key = (
        GROUPS.index(group),
        neighbour,
        target,
        "ABCD".index(band),
        len(option.agent),
        step,
        -round(margin, 1),
        round(option.target.red[0], 2) if option.target.red else 9.0,
    )
    reasons = (
        said,
        f"on the layer: {option.target.effect} ({option.target.evidence})",
        f"hazard band {band}" if option.agent else "",
        f"{len(option.agent)} liquids" if len(option.agent) > 1 else "",
        "stays long" if step == len(_STEPS) else "",
    )
    return key, replace(option, group=group, ranked_by=tuple(one for one in reasons if one))


def _worst(option: Option, judged: list[OnNeighbour]) -> tuple[float, str]:
    held_back = option.form.partition(",")[0] in ("swab", "gel", "poultice")
    found = [(_class(one, held_back), one) for one in judged]
    if not found:
        return 3.0, "no neighbour is on record, which is not 'none'"
    number, worst = max(found, key=lambda pair: pair[0])
    words = _NEIGHBOUR[worst.reading.effect][1]
    return number, words if number <= 1 else f"{words} ({worst.name})"


def _class(one: OnNeighbour, held_back: bool) -> float:
    number = _NEIGHBOUR[one.reading.effect][0]
    if one.reading.effect == "no effect expected" and one.reading.red is not None:
        number = 2.0  # rests on a prediction
    tight = one.path == "tight" and held_back and one.reading.effect != "attacked"
    return min(number, _BEHIND) if tight else number


def _of_target(reading: Reading) -> float:
    if reading.effect in _PART:
        return _PART[reading.effect]
    if reading.effect not in ACTING:
        return 5.0
    number = _TARGET.get(reading.evidence, _REMEMBERED)
    if reading.evidence == PREDICTED and reading.red is not None and reading.red[1] >= 1:
        number += 0.3
    return number


def _margin(target: Reading, judged: list[OnNeighbour]) -> float:
    lows = [one.reading.red[0] for one in judged if one.reading.red is not None]
    return min(lows) - target.red[0] if lows and target.red is not None else 0.0


def _group(option: Option, neighbour: float, closed: bool) -> str:
    if option.kind in ("mechanical", "wait"):
        return "by hand or by heat"
    if option.target.effect == "swells" and closed:
        return "last resort"
    if neighbour >= HARMED:
        return "acts on neighbours too"
    if option.kind == "heat":
        return "by hand or by heat"
    if option.target.effect in _PART:
        return "acts only in part"
    return "to test"
