"""A whole removal plan against the bare arithmetic of its distances, in one run."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations
from math import sqrt
from pathlib import Path

import pytest

from conservedb.knowledge.behaviour import Lying, Matter, Neighbour, Solvent
from conservedb.knowledge.reversal import Situation, plan
from conservedb.questions.behaviour import Materials, materials
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench.bench_questions import in_turn

NEIGHBOURS = ("shellac", "pvac", "pvb", "cn", "dammar", "b67")
BUDGET = 5
"""The plan reads evidence, traits and hazards of each of its options; the floor does none."""


@pytest.fixture(scope="module")
def known(tmp_path_factory: pytest.TempPathFactory) -> Materials:
    path: Path = tmp_path_factory.mktemp("plan") / "reference.db"
    create(path)
    engine, _ = open_database(path)
    with reading(engine) as connection:
        found = materials(connection)
        found.solvents()
    engine.dispose()
    return found


def matter(known: Materials, key: str) -> Matter:
    found = known.named(key, "")
    assert found is not None
    return found


def bare(solvents: list[Solvent], spheres: list[tuple[float, float, float, float]]) -> int:
    """RED of every single solvent and of every blend of two at 5 % steps, for every sphere."""
    below = 0
    points = [one.at[0] for one in solvents]
    blends = [
        tuple(a[i] * share / 100 + b[i] * (1 - share / 100) for i in range(3))
        for a, b in combinations(points, 2)
        for share in range(5, 100, 5)
    ]
    for d, p, h in (*points, *blends):
        for sd, sp, sh, r0 in spheres:
            if sqrt(4 * (sd - d) ** 2 + (sp - p) ** 2 + (sh - h) ** 2) < r0:
                below += 1
    return below


@pytest.mark.bench
def test_a_plan_with_six_neighbours_against_bare_arithmetic(known: Materials) -> None:
    liquids = [one for one in known.solvents().values() if one.at and not one.has("water")]
    chosen = sorted(liquids, key=lambda one: (one.band or "C", one.key))[:40]
    assert len(chosen) == 40
    target = Lying("T", "J1", "B-72", (matter(known, "b72"),), role="adhesive")
    near = tuple(
        Neighbour(Lying(key, "J1", key, (matter(known, key),), role="coating"))
        for key in NEIGHBOURS
    )
    case = Situation(
        target,
        (target,),
        near,
        {one.key: one for one in chosen},
        day=739_000,
        is_joint=True,
        closed=True,
    )
    case = replace(case, settings=replace(case.settings, widest_band="D"))
    spheres = [
        (*sphere.at, sphere.r0)
        for one in (target, *(n.lying for n in near))
        for m in one.matters
        for sphere in m.spheres[:1]
    ]
    ours, floor = in_turn((lambda: plan(case), lambda: bare(chosen, spheres)), 7)
    print(f"a plan with 6 neighbours and all blends of 40 solvents: {ours / floor:.2f} x bare")
    print(f"({ours * 1000:.0f} ms; {len(plan(case).options)} options)")
    assert ours / floor <= BUDGET
