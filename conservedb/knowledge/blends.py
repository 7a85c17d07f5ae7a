"""Which blends of two liquids are worth a test, found by trying all of them.

A blend is nominated by prediction alone, so more is asked of it than of a single liquid: it
must hold over a window of shares, better its own parts, keep away from liquids known to do
nothing, and is read for neighbours by what is left of it last. Liquids with water and liquids
that do not mix are left out. Every blend found is still to be read by the evidence for it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from conservedb.knowledge.behaviour import Hansen, Part, Solvent, Sphere
from conservedb.knowledge.grading import (
    ATTACKED,
    DISSOLVING,
    NEIGHBOURS,
    TARGET,
    Field,
    Grade,
    Liquid,
    columns,
    field,
    grades,
    lines,
    measured,
    merged,
    root,
)
from conservedb.knowledge.mixing import mixes, separates_when_damp
from conservedb.knowledge.solvents import ACTS_BELOW

NARROWEST = 10
"""Per cent between the ends of a window: measuring, evaporation and data err by more than 5.
No window lies wholly below 10 % of a part, so a part known to act on a neighbour always counts."""
BETTER_BY = 0.2
"""By how much a blend must be more selective than its parts, in RED; less is noise."""
MOST = 20
"""How many windows are returned at most."""
BANDS = ("A", "B", "C", "D")
"""Hazard bands, the mildest first; a liquid without one counts as C, not as A."""
RETENTION_C = (100, 150, 180)
"""Boiling points between steps of how long a liquid stays."""

_SPHERES = (
    "by every published sphere",
    "by the preferred sphere, not by all",
    "by another sphere than the preferred one",
)
_EFFECTS = ("no effect expected", "undecided", "swells", "attacked")
_Rank = tuple[int, int, int, int, float, float, str, str]


@dataclass(frozen=True, slots=True)
class Window:
    """A blend of two liquids, and between which shares it is expected to act on the target.

    `parts` is its centre; `low` and `high` are per cent by volume of the first part. `spheres`
    says by which spheres of the target it acts, `neighbours` the worst that is expected of a
    neighbour, both anywhere in the window. `red` is the lowest and highest RED of the centre
    over all spheres of the target; `margin` is the lowest RED of a neighbour less that of the
    target by its preferred sphere, None where no neighbour has a sphere.
    """

    parts: tuple[Part, Part]
    low: int
    high: int
    spheres: str
    neighbours: str
    red: tuple[float, float]
    margin: float | None
    words: str
    caution: str = ""


def candidates(solvents: Sequence[Solvent], *, widest_band: str) -> list[Solvent]:
    """The liquids that may go into a blend: with parameters, not watery, not too hazardous.

    Raises:
        ValueError: the band is none of A to D.
    """
    if widest_band not in BANDS:
        raise ValueError(f"A hazard band is one of A, B, C, D, not {widest_band!r}.")
    widest = BANDS.index(widest_band)
    return [one for one in solvents if _usable(one) and _band(one) <= widest]


def search(
    targets: Sequence[Sphere],
    neighbours: Sequence[Sequence[Sphere]],
    solvents: Sequence[Solvent],
    *,
    step: int = 5,
    attackers: Sequence[frozenset[str]] = (),
    non_solvents: Sequence[Hansen] = (),
    known: Mapping[str, str] | None = None,
) -> list[Window]:
    """The blends of two liquids that are worth a test, the best first, twenty at most.

    A blend counts at a share where some published sphere of the target has a RED below 1 and
    no liquid is near that is known to do less than dissolve it. The blend must better each of
    its parts that dissolves the target alone: do less to the worst neighbour, or the same and
    rest on better evidence, or be more selective by 0.2. Shares next to each other that are as
    good make a window. A blend that attacks a neighbour is listed only where no part of it
    dissolves the target alone.

    Args:
        targets: spheres of the target, the preferred first; only those for dissolution count.
        neighbours: spheres of each neighbour that a Hansen prediction may be made for; one
            without any leaves undecided what happens to it.
        solvents: the liquids to blend (see `candidates`).
        step: per cent by volume from one blend to the next, 1 to 25.
        attackers: for each neighbour the keys of liquids known to act on it.
        non_solvents: parameters of liquids known to do nothing to the target.
        known: by key, the effect that evidence says a liquid alone has on the target.

    Raises:
        ValueError: the step is not 1 to 25.
    """
    if not 1 <= step <= 25:
        raise ValueError(f"Blends are tried in steps of 1 to 25 per cent, not {step}.")
    dissolution = [sphere for sphere in targets if sphere.use == "dissolution"]
    if not dissolution:
        return []
    usable = sorted((one for one in solvents if _usable(one)), key=lambda one: one.key)
    attacking = frozenset[str]().union(*attackers)
    effects = known or {}
    weak = [
        at for one in usable if effects.get(one.key, "dissolves") not in DISSOLVING for at in one.at
    ]
    around = field(dissolution, neighbours, usable, attacking, [*non_solvents, *weak], step)
    liquids = [measured(around, one, effects) for one in usable]
    found = [
        window
        for one, other in combinations(liquids, 2)
        if not mixes(one.solvent, other.solvent)
        and (window := _window(around, one, other)) is not None
    ]
    return [window for _, window in sorted(found, key=lambda ranked: ranked[0])[:MOST]]


def _usable(liquid: Solvent) -> bool:
    return bool(liquid.at) and not liquid.has("water")


def _window(around: Field, one: Liquid, other: Liquid) -> tuple[_Rank, Window] | None:
    """The best window of a pair and its rank, None where it has none that is worth a test."""
    between = lines(one, other)
    target = columns(around, between, TARGET)
    lowest, highest = merged(min, target, around), merged(max, target, around)
    if min(lowest) >= ACTS_BELOW:
        return None
    found = grades(around, one, other, between, (target[0], lowest, highest))
    alone = [liquid.grade for liquid in (one, other) if liquid.grade is not None]
    if alone:
        best = min(alone)
        found = [grade if grade and _betters(grade, best) else None for grade in found]
    run = _longest(around.shares, found)
    if not run:
        return None
    centre = run[len(run) // 2]
    red = root(lowest[centre]), root(highest[centre])
    return _described(around, one.solvent, other.solvent, found, run, red)


def _betters(grade: Grade, best: Grade) -> bool:
    """Whether a blend does better than the best of its parts alone.

    One that attacks a neighbour is no gain over a part that dissolves the target by itself.
    """
    if grade.neighbours == ATTACKED:
        return False
    if grade[:2] != best[:2]:
        return grade[:2] < best[:2]
    return best.lack - grade.lack >= BETTER_BY


def _longest(shares: Sequence[int], found: Sequence[Grade | None]) -> list[int]:
    """The longest run of shares of the best grade that holds over a wide enough window."""
    for neighbours, target in sorted({grade[:2] for grade in found if grade}):
        runs: list[list[int]] = [[]]
        for place, grade in enumerate(found):
            if grade and grade.neighbours <= neighbours and grade.target <= target:
                runs[-1].append(place)
            elif runs[-1]:
                runs.append([])
        run = max(runs, key=len)
        if shares[run[-1]] - shares[run[0]] >= NARROWEST:
            return run
    return []


def _described(
    around: Field,
    one: Solvent,
    other: Solvent,
    found: Sequence[Grade | None],
    run: Sequence[int],
    red: tuple[float, float],
) -> tuple[_Rank, Window]:
    within = [grade for place in run if (grade := found[place])]
    worst = max(grade.neighbours for grade in within), max(grade.target for grade in within)
    lack = within[len(within) // 2].lack
    low, centre, high = (around.shares[run[at]] for at in (0, len(run) // 2, -1))
    by = _SPHERES[worst[1]]
    window = Window(
        (Part(one.key, centre), Part(other.key, 100 - centre)),
        low,
        high,
        by,
        _EFFECTS[worst[0]],
        red,
        -lack if around.groups[NEIGHBOURS] else None,
        f"expected to act from {low} to {high} % {one.name} in {other.name}, {by}",
        separates_when_damp(one, other),
    )
    band = max(_band(one), _band(other))
    stays = max(_retention(one), _retention(other))
    return (*worst, band, stays, round(lack, 1), red[1], one.key, other.key), window


def _band(liquid: Solvent) -> int:
    return BANDS.index(liquid.band or "C")


def _retention(liquid: Solvent) -> int:
    """The step of how long a liquid stays; one of unknown boiling point counts as slowest."""
    if liquid.boiling_c is None:
        return len(RETENTION_C)
    return sum(liquid.boiling_c > bound for bound in RETENTION_C)
