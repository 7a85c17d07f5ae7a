"""The arithmetic of solvents: Hansen distance, blends, Teas fractions, vapour, softening.

Nothing here says that a liquid is safe. A relative energy difference (RED) nominates a test on
the object; it knows nothing of age, time, pores, water or swelling (Phenix, WAAC Newsletter
20:3, 1998). Hansen parameters are in MPa^0.5, shares in per cent by volume.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from math import sqrt
from typing import NamedTuple

from conservedb.knowledge.behaviour import Hansen, Part, Solvent, Sphere

ACTS_BELOW = 1.0
"""RED below this acts: 0 of 29 recorded non-solvents lay below it, 46 of 56 solvents did
(85 recorded facts on 12 conservation materials, over all published spheres of each)."""
SWELLS_BELOW = 1.2
"""RED from 1 to below this: swelling likely (same count: 53 of 56 solvents, 3 of 29 others)."""
UNDECIDED_TO = 2.0
"""RED up to and with this decides nothing (same count: 56 of 56 solvents, 19 of 29 others)."""
NEAR_TARGET = 4.0
"""Ra from a known solvent of the target within which a liquid is worth a test (leave-one-out
over the same facts: with RED below 1 it catches 50 of 56 solvents, and no non-solvent)."""
NEAR_NEIGHBOUR = 5.0
"""Ra from a known solvent of a neighbour within which swelling is likely (a proposal, wider
than for the target: 2-propanol is 4.0 from ethanol, a solvent of the acrylic resin B-72)."""
HILDEBRAND_FACTOR = 2.0455
"""1 (cal/cm3)^0.5 in MPa^0.5 (Burke, Solubility parameters, 1984; the factor from memory)."""
ATMOSPHERE_KPA = 101.325
_ZERO_C = 273.15
_SHARES_OFF = 0.5
_TEAS_OFF = 1.0


class Teas(NamedTuple):
    """Fractional parameters: dispersion, polarity, hydrogen bonding, in per cent."""

    d: float
    p: float
    h: float


# -- Hansen ---------------------------------------------------------------------------------


def distance(one: Hansen, other: Hansen) -> float:
    """Ra, the distance of two sets of parameters (Hansen, Solubility Parameters, 2007)."""
    return sqrt(
        4 * (one.d - other.d) ** 2 + (one.p - other.p) ** 2 + (one.h - other.h) ** 2,
    )


def red(sphere: Sphere, at: Hansen) -> float:
    """The relative energy difference: Ra over the radius of the sphere (Hansen 2007).

    Raises:
        ValueError: the radius is not above 0.
    """
    if not sphere.r0 > 0:
        raise ValueError(f"The radius of a Hansen sphere must be above 0, not {sphere.r0:g}.")
    return distance(sphere.at, at) / sphere.r0


def red_range(spheres: Sequence[Sphere], at: Sequence[Hansen]) -> tuple[float, float] | None:
    """The lowest and highest RED over every sphere and set; None where either is empty."""
    values = [red(sphere, one) for sphere in spheres for one in at]
    return (min(values), max(values)) if values else None


def words_of_red(value: float) -> str:
    """What a RED is held to say; of a cross-linked resin it never says "dissolves"."""
    if value < ACTS_BELOW:
        return "dissolves"
    if value < SWELLS_BELOW:
        return "swells"
    return "undecided" if value <= UNDECIDED_TO else "no effect expected"


def near_known(at: Sequence[Hansen], known: Sequence[Hansen], within: float) -> bool:
    """Whether any of the sets lies closer than `within` (Ra) to a liquid of known effect."""
    return any(distance(one, other) < within for one in at for other in known)


def total(at: Hansen) -> float:
    """The Hildebrand parameter, MPa^0.5 (Burke 1984)."""
    return sqrt(at.d**2 + at.p**2 + at.h**2)


# -- blends ---------------------------------------------------------------------------------


def blend(parts: Sequence[tuple[Hansen, float]]) -> Hansen:
    """The parameters of a mixture, weighted by volume (Hansen 2007; Burke 1984).

    Raises:
        ValueError: a share is not above 0, or they do not make 100 per cent.
    """
    return Hansen(*_weighted(parts))


def has_water(parts: Iterable[Part], solvents: Mapping[str, Solvent]) -> bool:
    """Whether some part is water or watery; a liquid that is not in the table is not held to be."""
    return any(part.solvent in solvents and solvents[part.solvent].has("water") for part in parts)


def agent_parameters(parts: Sequence[Part], solvents: Mapping[str, Solvent]) -> tuple[Hansen, ...]:
    """Every set of parameters that an agent may have, the preferred first.

    A liquid has its published sets. A blend is worked out from the preferred set of each part,
    and again with each other published set of one part at a time. Empty where a part has none,
    and for every blend with water: there the method is known to be wrong (4 parts 2-propanol
    to 1 of water dissolve poly(methyl methacrylate), from memory; RED 1.79).

    Raises:
        ValueError: the shares of a blend do not make 100 per cent.
    """
    sets = [solvents[part.solvent].at if part.solvent in solvents else () for part in parts]
    if not all(sets):
        return ()
    if len(sets) == 1:
        return sets[0]
    if has_water(parts, solvents):
        return ()
    preferred = [published[0] for published in sets]
    choices = [preferred] + [
        [*preferred[:place], other, *preferred[place + 1 :]]
        for place, published in enumerate(sets)
        for other in published[1:]
    ]
    shares = [part.share for part in parts]
    return tuple(blend(list(zip(choice, shares, strict=True))) for choice in choices)


# -- Teas -----------------------------------------------------------------------------------


def teas(at: Hansen) -> Teas:
    """Fractions converted from Hansen parameters (Teas 1968, after Burke 1984).

    They are not the published fractions, which were moved by hand to fit observations: a chart
    is drawn from one or from the other, and says from which.

    Raises:
        ValueError: all parameters are 0.
    """
    whole = at.d + at.p + at.h
    if not whole > 0:
        raise ValueError("Parameters that are all 0 have no Teas fractions.")
    return Teas(*(100 * value / whole for value in at))


def teas_blend(parts: Sequence[tuple[Teas, float]]) -> Teas:
    """The fractions of a mixture, weighted by volume (Burke 1984).

    All parts must be published fractions, or all converted ones.

    Raises:
        ValueError: the shares or the fractions of a part do not make 100 per cent.
    """
    for fractions, _ in parts:
        problem = teas_problem(fractions)
        if problem:
            raise ValueError(problem)
    return Teas(*_weighted(parts))


def teas_problem(at: Teas) -> str | None:
    """What is wrong with published fractions: they must make 100, give or take 1."""
    whole = sum(at)
    if abs(whole - 100) <= _TEAS_OFF and min(at) >= 0:
        return None
    given = " + ".join(f"{value:g}" for value in at)
    if min(at) < 0:
        return f"Teas fractions cannot be below 0: {given}; compare them with their source."
    return f"Teas fractions must make 100: {given} makes {whole:.2f}; compare with their source."


def _weighted(parts: Sequence[tuple[Sequence[float], float]]) -> list[float]:
    shares = [share for _, share in parts]
    given = " + ".join(f"{share:g}" for share in shares)
    if not all(share > 0 for share in shares):
        raise ValueError(f"Every share of a blend must be above 0 per cent, not {given}.")
    whole = sum(shares)
    if not abs(whole - 100) <= _SHARES_OFF:
        raise ValueError(
            f"The shares of a blend must make 100 per cent by volume: {given or 'no part at all'}"
            f" makes {whole:g}."
        )
    return [sum(values[axis] * share for values, share in parts) / whole for axis in range(3)]


# -- vapour and softening -------------------------------------------------------------------


def vapour_hazard_ratio(pressure_kpa: float, limit_ppm: float) -> float:
    """How many times air saturated with a vapour exceeds its exposure limit.

    Saturation in parts per million over the limit (standard definition, from memory). It says
    how fast a room fills, not how harmful the vapour is.

    Args:
        pressure_kpa: vapour pressure, at the temperature that is meant.
        limit_ppm: exposure limit.

    Raises:
        ValueError: one of them is not above 0.
    """
    if not (pressure_kpa > 0 and limit_ppm > 0):
        raise ValueError(
            "A vapour hazard ratio needs a vapour pressure and an exposure limit above 0,"
            f" not {pressure_kpa:g} kPa and {limit_ppm:g} ppm."
        )
    return pressure_kpa / ATMOSPHERE_KPA * 1e6 / limit_ppm


def fox(parts: Sequence[tuple[float, float]]) -> float:
    """The glass transition of a copolymer or plasticised polymer, C (Fox 1956, from memory).

    An estimate good to about 10 C; a measured value always wins.

    Args:
        parts: glass transition in C and fraction by weight of each; the fractions make 1.

    Raises:
        ValueError: a fraction is not above 0, they do not make 1, or a part lies at or below
            absolute zero.
    """
    if not all(celsius > -_ZERO_C for celsius, _ in parts):
        raise ValueError("A glass transition must lie above absolute zero, -273.15 C.")
    whole = sum(fraction for _, fraction in parts)
    if not (all(fraction > 0 for _, fraction in parts) and abs(whole - 1) <= _SHARES_OFF / 100):
        raise ValueError(
            f"Fractions by weight must each be above 0 and make 1; these make {whole:g}."
        )
    return whole / sum(fraction / (celsius + _ZERO_C) for celsius, fraction in parts) - _ZERO_C


def weight_share(parts: Sequence[tuple[float, float]]) -> tuple[float, ...]:
    """Fractions by weight from amounts in mole and molar masses (textbook).

    Raises:
        ValueError: an amount or a molar mass is not above 0.
    """
    if not parts or not all(amount > 0 and molar > 0 for amount, molar in parts):
        raise ValueError("Amounts in mole and molar masses must all be above 0.")
    whole = sum(amount * molar for amount, molar in parts)
    return tuple(amount * molar / whole for amount, molar in parts)
