"""Running commands as a person does, on the small department of the questions."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

import pytest

from conservedb.cli.app import run
from tests.questions.conftest import department

__all__ = ["department"]


class Ended(NamedTuple):
    """How a command ended, and what it printed."""

    status: int
    out: str
    err: str

    @property
    def json(self) -> Any:
        """What was printed, as JSON."""
        return json.loads(self.out)

    @property
    def lines(self) -> list[str]:
        """What was printed, line by line."""
        return self.out.splitlines()


Command = Callable[..., Ended]


@pytest.fixture
def conservedb(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> Command:
    """Runs the program; nothing is configured but what the test configures."""
    monkeypatch.delenv("CONSERVEDB_DB", raising=False)
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "config"))
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.setenv("CONSERVEDB_STATE", str(tmp_path / "state"))

    def command(*arguments: str) -> Ended:
        status = run(arguments)
        return Ended(status, *capsys.readouterr())

    return command


@pytest.fixture
def ask(conservedb: Command, department: Path) -> Command:
    """Runs a command on the department."""
    return lambda *arguments: conservedb(*arguments, "--db", str(department))
