"""How good a liquid, or each blend of two, is at one target beside its neighbours.

All by Hansen prediction. Numbers are squared RED: along a blend they cost two products each.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import inf, sqrt
from typing import NamedTuple

from conservedb.knowledge.behaviour import Hansen, Solvent, Sphere
from conservedb.knowledge.solvents import (
    ACTS_BELOW,
    NEAR_NEIGHBOUR,
    NEAR_TARGET,
    SWELLS_BELOW,
    UNDECIDED_TO,
    distance,
    red,
)

DISSOLVING = ("dissolves", "mobilises")
"""Known effects of a liquid alone that no blend by prediction betters."""
PUBLISHED, EVERY, PREFERRED, ANOTHER = range(-1, 3)
"""By what a target is dissolved: evidence, or every, the preferred or another sphere."""
SPARED, UNDECIDED, SWELLS, ATTACKED = range(4)
"""The worst that is expected of a neighbour."""
TARGET, IDLE, NEIGHBOURS, NEAR = range(4)
"""Groups of spheres that are measured to."""


class Grade(NamedTuple):
    """How good a liquid that acts on the target is, the smallest best.

    `lack` is the RED of the target by its preferred sphere, less the lowest of a neighbour.
    """

    neighbours: int
    target: int
    lack: float


@dataclass(frozen=True, slots=True)
class Field:
    """What liquids are measured to, by group.

    Liquids of known effect stand in it as spheres too: within 4 of one that does not dissolve
    the target nothing is expected, within 5 of one that acts on a neighbour swelling is. `floor`
    is the least that is expected of a neighbour, whatever the numbers say.
    """

    groups: tuple[Sequence[Sphere], ...]
    attacking: frozenset[str]
    floor: int
    shares: tuple[int, ...]
    weights: tuple[tuple[float, float, float], ...]


class Liquid(NamedTuple):
    """A liquid measured: for each published set the squared RED to every sphere, by group.

    `alone` is its lowest squared RED to a neighbour; `grade` is None where it does not act.
    """

    solvent: Solvent
    squares: list[list[list[float]]]
    attacks: bool
    alone: float
    grade: Grade | None


class Line(NamedTuple):
    """The blends between two published sets, and their squared distance."""

    one: list[list[float]]
    other: list[list[float]]
    apart: float


def field(
    target: Sequence[Sphere],
    neighbours: Sequence[Sequence[Sphere]],
    liquids: Sequence[Solvent],
    attacking: frozenset[str],
    non_solvents: Sequence[Hansen],
    step: int,
) -> Field:
    """What liquids and their blends, `step` per cent apart, are measured to."""
    shares = tuple(range(step, 100, step))
    return Field(
        (
            target,
            [Sphere(at, NEAR_TARGET) for at in non_solvents],
            [sphere for spheres in neighbours for sphere in spheres],
            [
                Sphere(at, NEAR_NEIGHBOUR)
                for one in liquids
                if one.key in attacking
                for at in one.at
            ],
        ),
        attacking,
        SPARED if all(neighbours) else UNDECIDED,
        shares,
        tuple((s / 100, 1 - s / 100, s / 100 * (1 - s / 100)) for s in shares),
    )


def measured(field: Field, solvent: Solvent, known: Mapping[str, str]) -> Liquid:
    """A liquid alone; what evidence says of it comes before any prediction."""
    squares = [
        [[red(sphere, at) ** 2 for sphere in group] for group in field.groups] for at in solvent.at
    ]
    target = [square for one in squares for square in one[TARGET]]
    idle, alone, near = (
        min((square for one in squares for square in one[group]), default=inf)
        for group in (IDLE, NEIGHBOURS, NEAR)
    )
    effect = known.get(solvent.key)
    if effect is not None:
        evidence = PUBLISHED if effect in DISSOLVING else None
    else:
        evidence = _evidence(target[0], min(target), max(target)) if idle >= 1 else None
    attacks = solvent.key in field.attacking
    grade = None
    if evidence is not None:
        grade = Grade(_harm(field, alone, near, attacks), evidence, _lack(target[0], alone))
    return Liquid(solvent, squares, attacks, alone, grade)


def lines(one: Liquid, other: Liquid) -> list[Line]:
    """The blends of two liquids: of their preferred sets, and with each other set in turn."""
    pairs = [(first, 0) for first in range(len(one.squares))]
    pairs += [(0, second) for second in range(1, len(other.squares))]
    return [
        Line(
            one.squares[first],
            other.squares[second],
            distance(one.solvent.at[first], other.solvent.at[second]) ** 2,
        )
        for first, second in pairs
    ]


def columns(field: Field, between: Sequence[Line], group: int) -> list[list[float]]:
    """Squared RED at every share, a column for each line and sphere.

    Along a line the squared distance to a point is the mean of that of its ends by their
    weights, less the product of the weights times the squared length (Stewart's theorem).
    """
    found = []
    for one, other, apart in between:
        for a, b, sphere in zip(one[group], other[group], field.groups[group], strict=True):
            c = apart / sphere.r0**2
            found.append([a * t + b * u - c * w for t, u, w in field.weights])
    return found


def merged(
    choose: Callable[[Iterable[float]], float], found: list[list[float]], field: Field
) -> list[float]:
    """The lowest or highest of several columns at every share; infinite where there are none."""
    if not found:
        return [inf] * len(field.shares)
    return found[0] if len(found) == 1 else [choose(row) for row in zip(*found, strict=True)]


def grades(
    field: Field,
    one: Liquid,
    other: Liquid,
    between: Sequence[Line],
    target: tuple[list[float], list[float], list[float]],
) -> list[Grade | None]:
    """How good the blend is at every share, None where it is not expected to act.

    A part that is known to act on a neighbour counts for the whole blend, and the part that
    stays longest is read alone as well: it is what is left at the end.

    Args:
        target: squared RED by its preferred sphere, the lowest and the highest.
    """
    idle, harm, near = (
        merged(min, columns(field, between, group), field) for group in (IDLE, NEIGHBOURS, NEAR)
    )
    last = _slowest(one, other)
    alone, attacked = min(part.alone for part in last), one.attacks or other.attacks
    found: list[Grade | None] = []
    every = zip(*target, idle, harm, near, strict=True)
    for preferred, lowest, highest, apart, beside, close in every:
        evidence = _evidence(preferred, lowest, highest)
        if evidence is None or apart < 1:
            found.append(None)
            continue
        square = min(beside, alone)
        worst = _harm(field, square, close, attacked)
        found.append(Grade(worst, evidence, _lack(preferred, square)))
    return found


def root(square: float) -> float:
    """RED from its square, which rounding may have taken just below 0."""
    return sqrt(max(square, 0.0))


def _evidence(preferred: float, lowest: float, highest: float) -> int | None:
    """By which spheres a target is dissolved; None where by none."""
    if highest < ACTS_BELOW:
        return EVERY
    if preferred < ACTS_BELOW:
        return PREFERRED
    return ANOTHER if lowest < ACTS_BELOW else None


def _harm(field: Field, square: float, near: float, attacked: bool) -> int:
    """The worst that is expected of a neighbour."""
    if attacked or square < ACTS_BELOW:
        return ATTACKED
    if square < SWELLS_BELOW**2 or near < 1:
        return SWELLS
    return UNDECIDED if square <= UNDECIDED_TO**2 else field.floor


def _lack(target: float, neighbour: float) -> float:
    return root(target) - (root(neighbour) if neighbour < inf else 0.0)


def _slowest(one: Liquid, other: Liquid) -> list[Liquid]:
    """The part that stays longest; both where a boiling point is not recorded."""
    first, second = one.solvent.boiling_c, other.solvent.boiling_c
    if first is None or second is None or first == second:
        return [one, other]
    return [one] if first > second else [other]
