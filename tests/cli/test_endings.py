"""How the program ends: its status, where it says what, and quietly where nobody listens."""

from __future__ import annotations

import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from conservedb.cli.app import COMMANDS, run
from tests.cli.conftest import Command

PROGRAM = (sys.executable, "-m", "conservedb")
FAILING = {
    1: (
        ("object", "Q.11"),
        ("place", "Q.1", "Z9"),
        ("history", "Q.1", "Z9"),
        ("uses", "unobtainium"),
        ("uses", "glue"),
        ("find", "zzz"),
    ),
    2: (
        ("place", "Q.1"),
        ("place", "Q.1", "J1", "--on", "5/6/56"),
        ("place", "Q.1", "J1", "--on", "Easter 1956"),
        ("place", "Q.1", "J1", "--nonsense"),
        ("plaace", "Q.1", "J1"),
    ),
}


@pytest.mark.parametrize(
    ("status", "command"), [(status, c) for status, all_of in FAILING.items() for c in all_of]
)
def test_failures_are_told_apart(ask: Command, status: int, command: tuple[str, ...]) -> None:
    ended = ask(*command)
    assert (ended.status, ended.out) == (status, "")
    assert ended.err.startswith("conservedb: ") and ended.err.count("\n") == 1
    as_json = ask(*command, "--json")
    assert (as_json.status, as_json.err) == (status, "")
    assert ended.err == f"conservedb: {as_json.json['error']}\n"


def test_what_comes_nearest_is_offered(ask: Command) -> None:
    assert ask("object", "Q.11", "--json").json["nearest"] == ["Q.1", "Q.10"]
    assert ask("uses", "glue", "--json").json["meanings"] == [
        {"key": "epoxy", "name": "Epoxy adhesive"},
        {"key": "shellac", "name": "Shellac"},
    ]
    assert "did you mean place" in ask("plaace").err


def test_a_file_that_cannot_be_used(conservedb: Command, tmp_path: Path) -> None:
    words = tmp_path / "words.db"
    words.write_text("these are only words, and many of them\n" * 200)
    empty = tmp_path / "empty.db"
    empty.touch()
    for path in (tmp_path / "missing.db", words, empty, tmp_path):
        ended = conservedb("object", "Q.1", "--db", str(path))
        assert ended.status == 3 and str(path) in ended.err, ended.err
    assert conservedb("object", "Q.1", "--db", "postgresql://host/db").status == 3


def test_the_database_is_named_before_or_after_or_elsewhere(
    conservedb: Command, department: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked, named = ("object", "Q.10"), ("--db", str(department))
    assert conservedb(*named, *asked).status == 0
    assert conservedb(*asked, *named).status == 0
    assert conservedb("--json", *named, *asked).json == conservedb(*asked, "--json", *named).json
    assert conservedb("--db", "/nowhere", *asked, *named).status == 0  # the last one counts
    assert conservedb("--db", f"sqlite:///{department}", *asked).status == 0
    nothing = conservedb(*asked)
    assert nothing.status == 2 and "--db PATH" in nothing.err and "CONSERVEDB_DB" in nothing.err
    (tmp_path / "config" / "conservedb").mkdir(parents=True)
    (tmp_path / "config" / "conservedb" / "database").write_text(f"{department}\n")
    assert conservedb(*asked).status == 0
    monkeypatch.setenv("CONSERVEDB_DB", "/nowhere")
    assert conservedb(*asked).status == 3  # the variable goes before the configuration
    monkeypatch.setenv("CONSERVEDB_DB", str(department))
    assert conservedb(*asked).status == 0


def test_help_names_every_command(conservedb: Command) -> None:
    shown = conservedb("--help")
    assert shown.status == 0
    assert all(f"\n  {name}  " in shown.out for name in COMMANDS)
    assert conservedb("-h").out == shown.out == conservedb().out  # stdout is no terminal here
    for name in COMMANDS:
        one = conservedb(name, "--help")
        assert one.status == 0 and "--db" in one.out and "--json" in one.out


def test_without_a_command_the_interface_opens(
    department: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[Path] = []

    def interface(path: Path) -> int:
        opened.append(path)
        return 7

    monkeypatch.setattr(sys.stdout, "isatty", lambda: True, raising=False)
    assert run(["--db", str(department)], interface) == 7
    assert opened == [department]


def loaded(*arguments: str) -> set[str]:
    """Modules loaded by the program with these arguments."""
    script = (
        "import sys; from conservedb.cli.app import run; run(sys.argv[1:]);"
        "print('loaded:', *sys.modules)"
    )
    done = subprocess.run(
        [sys.executable, "-c", script, *arguments], capture_output=True, text=True, check=True
    )
    return set(done.stdout.rpartition("loaded:")[2].split())


@pytest.mark.parametrize(
    "arguments", [("--help",), ("place", "--help"), ("uses", "--help"), ("--version",)]
)
def test_help_loads_only_click(arguments: tuple[str, ...]) -> None:
    tops = {name.partition(".")[0] for name in loaded(*arguments)}
    assert not tops & {"sqlalchemy", "textual", "alembic", "platformdirs", "rich"}
    assert "conservedb.records" not in loaded(*arguments)


def test_reading_loads_no_interface_and_no_migrations(department: Path) -> None:
    for command in (("place", "Q.1", "J1"), ("object", "Q.1"), ("uses", "resin"), ("find", "q")):
        modules = loaded(*command, "--db", str(department))
        assert "sqlalchemy" in modules
        assert not modules & {"textual", "alembic", "sqlalchemy.orm", "rich"}
        assert "sqlalchemy.dialects.postgresql" not in modules


def test_a_reader_that_leaves_early_is_no_error(department: Path) -> None:
    command = [*PROGRAM, "history", "Q.1", "--db", str(department)]
    done = subprocess.run(
        ["bash", "-c", '"$@" | true; echo ${PIPESTATUS[0]}', "bash", *command],
        capture_output=True,
        text=True,
        check=True,
    )
    assert (done.stdout.strip(), done.stderr) == ("0", "")


def test_control_c_ends_quietly(tmp_path: Path) -> None:
    begun = tmp_path / "begun"
    slow = (
        "import conservedb.store.opening as o, time, pathlib; o.open_database ="
        f" lambda p: (pathlib.Path({str(begun)!r}).touch(), time.sleep(60))"
    )
    heard = "import signal; signal.signal(signal.SIGINT, signal.default_int_handler)"
    script = f"{heard}; {slow}; import sys; from conservedb.cli.app import run; sys.exit(run())"
    with subprocess.Popen(
        [sys.executable, "-c", script, "object", "Q.1", "--db", str(tmp_path / "a.db")],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    ) as process:
        while not begun.exists() and process.poll() is None:
            time.sleep(0.05)
        process.send_signal(signal.SIGINT)
        out, err = process.communicate(timeout=20)
    assert process.returncode == 130
    assert (out.strip(), err.strip()) == ("", "")
