"""Collections to measure on, made once a session.

The larger one has 100,000 layers unless CONSERVEDB_BENCH_LAYERS names another number. One of more
than `IMPORTED` layers is the one that `fill` keeps.
"""

from __future__ import annotations

import os
import time
from dataclasses import dataclass
from pathlib import Path

import pytest

from conservedb.exchange.importing import import_folder
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench.collection import make_collection
from tests.bench.fill import filled

IMPORTED = 200_000
LARGE = int(os.environ.get("CONSERVEDB_BENCH_LAYERS", "100000"))
SMALL = 10_000


@dataclass(frozen=True)
class Collection:
    """A database, how many layers it holds, and how many seconds its import took.

    No seconds where it was kept from before.
    """

    path: Path
    layers: int
    seconds: float | None


def _collection(folder: Path, layers: int) -> Collection:
    if layers > IMPORTED:
        kept = filled(layers)
        return Collection(kept.path, kept.layers, None)
    written = make_collection(folder / "tables", layers)
    path = folder / "collection.db"
    create(path, today="2026-11-02")
    engine, _ = open_database(path)
    started = time.perf_counter()
    report = import_folder(engine, folder / "tables", who="A. Tester")
    seconds = time.perf_counter() - started
    engine.dispose()
    assert report.written
    return Collection(path, written, seconds)


@pytest.fixture(scope="session")
def small(tmp_path_factory: pytest.TempPathFactory) -> Collection:
    return _collection(tmp_path_factory.mktemp("small"), SMALL)


@pytest.fixture(scope="session")
def large(tmp_path_factory: pytest.TempPathFactory) -> Collection:
    return _collection(tmp_path_factory.mktemp("large"), LARGE)
