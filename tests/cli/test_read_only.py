"""Commands that write say at once where one may only read; commands that read go on."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from tests.cli.conftest import Command
from tests.exchange.bench import OBJECT, authorise, fill

WRITING = (
    ("record", "observation", f"object={OBJECT}", "place=S1", "seen=dust"),
    ("amend", "place", OBJECT, "S1", "name=top", "--reason", "clearer"),
    ("withdraw", "place", OBJECT, "S1", "--reason", "twice"),
    ("split", OBJECT, "B1", "B1x", "B1y", "--reason", "fell"),
    ("retire", OBJECT, "B1", "--on", "2026", "--reason", "rusted"),
    ("replace", OBJECT, "B1", "B1n", "--on", "2026", "--reason", "rusted"),
    ("reidentify", OBJECT, "L1", "shellac", "--source", "REP", "--reason", "seen"),
    ("merge", "material", "shellac", "epoxy", "--reason", "same"),
    ("undo",),
    ("redo",),
    ("import", "."),
)
READING = (("find", OBJECT), ("object", OBJECT), ("log",), ("verify",))


@pytest.fixture
def engine(new_database: Callable[[str], Engine], monkeypatch: pytest.MonkeyPatch) -> Engine:
    authorise(monkeypatch)
    return fill(new_database("bench.db"))


@pytest.fixture(params=["file", "folder"])
def closed(request: pytest.FixtureRequest, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """Tests may run as root, who may write anywhere: the answer of the system is changed."""
    away = tmp_path / "bench.db" if request.param == "file" else tmp_path
    real = os.access

    def access(which: str | Path, mode: int) -> bool:
        return Path(which) != away and real(which, mode)

    monkeypatch.setattr(os, "access", access)
    return f"you may {'read' if request.param == 'file' else 'not write to the folder'} {away}"


@pytest.mark.parametrize("command", WRITING, ids=lambda command: command[0])
def test_what_writes_is_refused_before_it_does_anything(
    conservedb: Command,
    engine: Engine,
    closed: str,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    command: tuple[str, ...],
) -> None:
    def never(*_: object) -> None:
        raise AssertionError("a transaction was begun")

    monkeypatch.setattr("conservedb.store.connect.open_set", never)
    ended = conservedb(*command, "--db", str(tmp_path / "bench.db"))
    assert ended.status != 0
    assert closed in ended.err
    assert len(ended.err.splitlines()) == 1
    assert ended.out == ""


@pytest.mark.parametrize("command", READING, ids=lambda command: command[0])
def test_what_reads_goes_on(
    conservedb: Command, engine: Engine, closed: str, tmp_path: Path, command: tuple[str, ...]
) -> None:
    ended = conservedb(*command, "--db", str(tmp_path / "bench.db"))
    assert "you may" not in ended.err
    assert ended.status == 0, ended.err
