"""Nasty text in every field, every command, a real pseudo-terminal: shown, never obeyed."""

from __future__ import annotations

import json
import os
import pty
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from conservedb.exchange.importing import import_folder
from conservedb.questions.display import show
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.nasty_tables import SHORT, object_number, place_mark, write_nasty

pytestmark = pytest.mark.campaign


@pytest.fixture(scope="module")
def database(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("nasty")
    write_nasty(folder / "tables")
    path = folder / "nasty.db"
    create(path, today="2026-11-02")
    engine, _ = open_database(path)
    report = import_folder(engine, folder / "tables", who="A. Tester")
    engine.dispose()
    assert report.written, [fault.sentence() for fault in report.faults]
    return path


def on_a_terminal(arguments: list[str], path: Path) -> tuple[int, bytes]:
    """Run the program with a pseudo-terminal as its standard output and error."""
    ours, theirs = pty.openpty()
    process: subprocess.Popen[Any] = subprocess.Popen(
        [sys.executable, "-m", "conservedb", "--db", str(path), *arguments],
        stdin=subprocess.DEVNULL,
        stdout=theirs,
        stderr=theirs,
        env=os.environ | {"PYTHONUTF8": "1"},
    )
    os.close(theirs)
    shown = bytearray()
    while True:
        try:
            chunk = os.read(ours, 65536)
        except OSError:
            break
        if not chunk:
            break
        shown += chunk
    os.close(ours)
    return process.wait(timeout=60), bytes(shown)


def obeyed(shown: bytes) -> list[str]:
    """Characters that a terminal would act on; a line ends in CR LF there."""
    text = shown.decode("utf-8")
    return sorted(
        {
            f"U+{ord(c):04X}"
            for c in text.replace("\r\n", "\n")
            if (ord(c) < 32 and c not in "\n\t")
            or 0x7F <= ord(c) < 0xA0
            or c in "\u202e\u2066\ufeff"
        }
    )


@pytest.mark.parametrize("index", range(len(SHORT)))
def test_every_command(database: Path, tmp_path: Path, index: int) -> None:
    number, mark, text = object_number(index), place_mark(index), SHORT[index]
    for turn, arguments in enumerate(
        (
            ["object", number],
            ["place", number, mark],
            ["place", number, mark, "--on", "193X"],
            ["history", number],
            ["history", number, mark],
            ["treatment", number],
            ["treatment", number, f"k{index} {text}".strip()],
            ["uses", f"k{index} {text}".strip()],
            ["reverse", number, mark],
            ["reverse", number, mark, text],
            ["material", f"k{index} {text}".strip()],
            ["check", number],
            ["check", number, mark, "--step", text],
            ["whatif", "--temperature", "28", number],
            ["find", text],
            ["place", number, text],
            ["object", text],
            ["sheet", number],
            ["log", number],
            ["amend", "place", number, mark, f"note={text}", "--reason", text],
            ["undo"],
        )
    ):
        if (index + turn) % 2 and arguments[0] not in ("amend", "undo"):
            continue  # each text through every other command, each command with every other text
        options = ["--json"] if (index + turn) % 4 else []
        status, shown = on_a_terminal([*arguments, *options], database)
        known = (0, 1, 2) if arguments[0] == "amend" else (0, 1)  # a blank reason is wrong use
        assert status in known, (arguments, shown[-500:])
        assert b"Traceback" not in shown
        assert obeyed(shown) == [], arguments
    status, shown = on_a_terminal(["place", number, mark], database)
    assert status == 0
    first_line = show(text.strip().splitlines()[0])
    assert first_line.split("\n")[0][:40] in shown.decode()


@pytest.mark.parametrize("index", range(len(SHORT)))
def test_json_is_unaltered(database: Path, index: int) -> None:
    asked = ["place", object_number(index), place_mark(index), "--json", "--db", str(database)]
    run = subprocess.run(
        [sys.executable, "-m", "conservedb", *asked],
        capture_output=True,
        check=True,
        timeout=60,
    )
    answer = json.loads(run.stdout)
    assert answer["object"] == object_number(index)
    assert answer["layers"][0]["concentration"] == SHORT[index]


def test_import_and_export(database: Path, tmp_path: Path) -> None:
    status, shown = on_a_terminal(["export", str(tmp_path / "out")], database)
    assert (status, obeyed(shown)) == (0, [])
    status, shown = on_a_terminal(["import", str(tmp_path / "out")], database)
    assert (status, obeyed(shown)) == (0, [])
    bad = tmp_path / "out" / "people.csv"
    bad.write_text("name,active\n" + "".join(f'"k\x1b]0;x\x07{i}",5/6/56\n' for i in range(3)))
    status, shown = on_a_terminal(["import", str(tmp_path / "out")], database)
    assert (status, obeyed(shown)) == (1, [])
