"""What the search for blends costs, as a multiple of the bare arithmetic in the same run.

All singles and pairs of 40 liquids at 5 % steps, against one target and six neighbours of one
sphere each. The bare arithmetic is the squared distance of each of these 14,860 blends to each
of the seven spheres, and nothing else.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from time import perf_counter

import pytest

from conservedb.knowledge.behaviour import Hansen, Solvent, Sphere
from conservedb.knowledge.blends import search

LIMIT = 3.0
REPEATS = 7
LIQUIDS = 40
SHARES = range(5, 100, 5)
ALONE = range(100, 101)

TARGET = Sphere(Hansen(17.6, 7.4, 5.6), 9.4)
NEIGHBOURS = [
    Sphere(Hansen(19.7, 10.1, 15.1), 10.7),
    Sphere(Hansen(18.64, 10.52, 7.51), 8.59),
    Sphere(Hansen(18.5, 4.5, 2.9), 5.3),
    Sphere(Hansen(18.6, 4.36, 13.03), 10.64),
    Sphere(Hansen(15.41, 14.73, 8.84), 11.46),
    Sphere(Hansen(19.0, 2.0, 9.0), 9.0),
]


def _solvents() -> list[Solvent]:
    """Liquids spread evenly over the parameters that liquids have; their names mean nothing."""
    return [
        Solvent(
            f"liquid-{place:02}",
            f"liquid {place}",
            (Hansen(14 + place * 7 % 40 / 8, place * 17 % 40 / 2.3, place * 23 % 40 / 2),),
            band="ABC"[place % 3],
            boiling_c=40.0 + place * 5,
        )
        for place in range(LIQUIDS)
    ]


def bare(liquids: Sequence[Hansen], spheres: Sequence[tuple[float, ...]]) -> int:
    """How many blends are in some sphere, by nothing but squared distances."""
    count = 0
    for first, (d1, p1, h1) in enumerate(liquids):
        for second, (d2, p2, h2) in enumerate(liquids[first:]):
            for share in SHARES if second else ALONE:
                one = share / 100
                other = 1 - one
                d, p, h = one * d1 + other * d2, one * p1 + other * p2, one * h1 + other * h2
                for sd, sp, sh, square in spheres:
                    if 4 * (d - sd) ** 2 + (p - sp) ** 2 + (h - sh) ** 2 < square:
                        count += 1
    return count


def measure() -> dict[str, float]:
    """Milliseconds of both, and their ratio."""
    solvents = _solvents()
    points = [one.at[0] for one in solvents]
    spheres = [(*one.at, one.r0**2) for one in (TARGET, *NEIGHBOURS)]
    floor = _best(lambda: bare(points, spheres))
    found = _best(lambda: search([TARGET], [[one] for one in NEIGHBOURS], solvents))
    return {"bare arithmetic, ms": floor, "search, ms": found, "ratio": found / floor}


def _best(work: Callable[[], object]) -> float:
    passes = []
    for _ in range(REPEATS):
        start = perf_counter()
        work()
        passes.append(perf_counter() - start)
    return min(passes) * 1000


@pytest.mark.bench
def test_a_search_costs_at_most_three_times_its_bare_arithmetic() -> None:
    figures = measure()
    assert figures["ratio"] <= LIMIT, figures


if __name__ == "__main__":
    for name, figure in measure().items():
        print(f"{name:22} {figure:8.2f}")
