"""Which liquids mix with each other: a curated list, checked before any blend is proposed.

Silence is not consent: two liquids that are not listed may still separate, and a blend that
turns cloudy is not used.
"""

from __future__ import annotations

from itertools import product

from conservedb.knowledge.behaviour import Solvent

_HYDROCARBONS = (
    "n-hexane",
    "n-heptane",
    "isooctane",
    "cyclohexane",
    "white-spirit",
    "white-spirit-dearomatised",
)
_POLAR = (
    "methanol",
    "acetonitrile",
    "nitromethane",
    "dmso",
    "dmf",
    "nmp",
    "propylene-carbonate",
    "gamma-butyrolactone",
)
SEPARATING = frozenset(
    frozenset(pair)
    for pair in (
        *product(_POLAR, (*_HYDROCARBONS, "d5")),
        *product(("benzyl-alcohol",), _HYDROCARBONS),
        *product(("dmso", "nitromethane", "propylene-carbonate"), ("turpentine", "d-limonene")),
    )
)
"""Pairs of liquids that do not mix, or only in part, at room temperature. All from memory."""
SEPARATING_WHEN_DAMP = frozenset(frozenset(("ethanol", other)) for other in _HYDROCARBONS)
"""Pairs that mix when dry and separate with a little water: 15 parts of ethanol with 5 % of
water and 85 of white spirit do (Hook, JAIC 27, 1988); other hydrocarbons from memory."""


def mixes(one: Solvent, other: Solvent) -> str:
    """Why two liquids are not held to make one clear liquid, "" where nothing speaks against it."""
    if frozenset((one.key, other.key)) in SEPARATING:
        return f"{one.name} and {other.name} separate, wholly or in part (from memory)."
    watery, dry = (one, other) if one.has("water") else (other, one)
    if not watery.has("water") or dry.has("water") or dry.miscible == "yes":
        return ""
    if dry.miscible == "limited":
        return f"{dry.name} mixes with water only to a limit."
    if dry.miscible == "no":
        return f"{dry.name} does not mix with water."
    return f"Whether {dry.name} mixes with water is not recorded."


def separates_when_damp(one: Solvent, other: Solvent) -> str:
    """The caution for two liquids that a little water separates, "" for others."""
    if frozenset((one.key, other.key)) not in SEPARATING_WHEN_DAMP:
        return ""
    return (
        f"{one.name} and {other.name} separate when damp: 1 % of water in the blend is enough,"
        " and denatured alcohol brings it (Hook, JAIC 27, 1988)."
    )
