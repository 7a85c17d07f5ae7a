"""Fixtures that several rooms share."""

from __future__ import annotations

import datetime
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.store.create import create
from conservedb.store.opening import open_database

TODAY = datetime.date(2026, 11, 2)


@pytest.fixture(autouse=True, scope="session")
def _own_state(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """Tests remember nothing on this computer, and write under a name of their own."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("CONSERVEDB_STATE", str(tmp_path_factory.mktemp("state")))
        patch.setenv("CONSERVEDB_WHO", "A. Tester")
        yield


@pytest.fixture(scope="session")
def _empty(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("template") / "empty.db"
    create(path, today=TODAY.isoformat())
    return path


@pytest.fixture
def new_database(_empty: Path, tmp_path: Path) -> Callable[[str], Engine]:
    """Makes an empty database of the given file name and opens it."""

    def make(name: str = "test.db") -> Engine:
        path = tmp_path / name
        shutil.copy(_empty, path)
        engine, _ = open_database(path)
        return engine

    return make


def pytest_addoption(parser: pytest.Parser) -> None:
    """`--update-screens` keeps the text of the screens anew (see tests/tui)."""
    parser.addoption("--update-screens", action="store_true", help="keep the screens anew")
