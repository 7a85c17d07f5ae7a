"""A warmer store, over the whole collection, against the same statements in raw `sqlite3`."""

from __future__ import annotations

import random
import shutil
import uuid
from pathlib import Path

import pytest

from conservedb.questions.checks import check_all
from conservedb.questions.whatif import whatif
from conservedb.store.connect import connect_sqlite
from conservedb.store.log import Author, open_set, seal
from tests.bench.bench_questions import Ask, Measured, in_turn, seconds
from tests.bench.collection import MATERIALS
from tests.bench.conftest import Collection

WARM = 28.0
WHATIF: list[Ask] = [lambda c, on: whatif(c, WARM, on)]
BUDGET = 1.5


def with_figures(collection: Collection, folder: Path) -> Path:
    """A copy of a collection in which a third of the materials has figures for softening."""
    path = folder / "warm.db"
    shutil.copy(collection.path, path)
    raw = connect_sqlite(path)
    chance = random.Random(28)
    raw.execute("BEGIN IMMEDIATE")
    open_set(raw, Author("A. Tester", "recorded"))
    for number in range(0, MATERIALS, 3):
        (material,) = raw.execute(
            "SELECT id FROM material WHERE key = ?", (f"material{number}",)
        ).fetchone()
        low = chance.uniform(25, 55)
        raw.execute(
            "INSERT INTO material_value (uuid, entered, key, material_id, property, low, high,"
            " basis, confirmed_earliest, confirmed_latest, confirmed_flags, confirmed_derived)"
            " VALUES (?, '2026-11-02', ?, ?, 'glass transition', ?, ?, 'published', -8000000,"
            " 8000000, 0, 'blank')",
            (str(uuid.uuid4()), f"bench {number}", material, low, low + 4),
        )
        raw.execute(
            "INSERT INTO trait (uuid, entered, key, material_id, trait, holds, basis,"
            " confirmed_earliest, confirmed_latest, confirmed_flags, confirmed_derived)"
            " VALUES (?, '2026-11-02', ?, ?, 'creeps under load', 'yes', 'published', -8000000,"
            " 8000000, 0, 'blank')",
            (str(uuid.uuid4()), f"bench {number}", material),
        )
    seal(raw)
    raw.execute("COMMIT")
    raw.close()
    return path


@pytest.mark.bench
def test_whatif_against_raw_statements(large: Collection, tmp_path: Path) -> None:
    asked = Measured(with_figures(large, tmp_path), WHATIF)
    ours, floor = in_turn((asked.answers, asked.statements), 7)
    found = whatif(asked.connection, WARM, asked.on)
    asked.close()
    print(
        f"whatif at {large.layers} layers: {len(found.layers)} layers at {found.joints} joints,"
        f" {ours * 1000:.0f} ms, {ours / floor:.2f} x its raw statements"
    )
    assert len(found.layers) > large.layers / 100
    assert ours / floor <= BUDGET


@pytest.mark.bench
def test_check_of_the_whole_collection(large: Collection, tmp_path: Path) -> None:
    asked = Measured(with_figures(large, tmp_path), [check_all])
    ours, floor = in_turn((asked.answers, asked.statements), 2)
    found = check_all(asked.connection, asked.on)
    print(
        f"check at {large.layers} layers: {found.objects} objects, {len(found.rows)} lines,"
        f" {seconds(asked.answers):.1f} s, {ours / floor:.1f} x its raw statements"
    )
    asked.close()
    assert found.rows
    assert ours / floor <= 8
