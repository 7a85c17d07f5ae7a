"""Who may import whom (DEVELOPERS.md, "The house"), read from the source and from processes."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

import conservedb

PACKAGE = Path(conservedb.__file__).parent

MAY_IMPORT = {
    "dates": set(),
    "knowledge": {"dates"},
    "reference": set(),
    "records": {"dates"},
    "store": {"records", "dates", "reference"},
    "questions": {"store", "records", "knowledge", "reference", "dates"},
    "recording": {"store", "records", "knowledge", "reference", "dates"},
    "exchange": {
        "recording",
        "questions",
        "store",
        "records",
        "knowledge",
        "reference",
        "dates",
    },
    "demo": {"exchange", "store"},
    "cli": {
        "demo",
        "exchange",
        "recording",
        "questions",
        "store",
        "records",
        "knowledge",
        "reference",
        "dates",
    },
    "tui": {
        "exchange",
        "questions",
        "recording",
        "store",
        "knowledge",
        "reference",
        "dates",
    },
}
"""Room -> the other rooms it may import from. Only `__main__` may see both cli and tui."""

OUTSIDE = {
    "textual": {"tui"},
    "rich": {"tui"},
    "alembic": {"store"},
    "click": {"cli", "__main__"},
    "sqlalchemy": {"records", "store", "questions", "recording", "exchange"},
    "sqlite3": {"store", "demo", "exchange", "cli", "tui"},
    "platformdirs": {"cli", "store", "tui"},
    "PIL": {"exchange"},
}
"""Library -> the only rooms that may import it."""


def modules() -> list[Path]:
    return sorted(PACKAGE.rglob("*.py"))


def room(path: Path) -> str:
    first = path.relative_to(PACKAGE).parts[0]
    return first.removesuffix(".py")


def imported(path: Path) -> set[str]:
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: write imports in full"
            found.add(node.module or "")
            found.update(f"{node.module}.{alias.name}" for alias in node.names)
    return found


@pytest.mark.parametrize("path", modules(), ids=lambda p: str(p.relative_to(PACKAGE)))
def test_a_room_imports_only_what_it_may(path: Path) -> None:
    here = room(path)
    for name in imported(path):
        parts = name.split(".")
        if parts[0] == "conservedb" and len(parts) > 1 and (PACKAGE / parts[1]).is_dir():
            there = parts[1]
            allowed = here in ("__main__", there) or there in MAY_IMPORT.get(here, set())
            assert allowed, f"{here} may not import {there} ({name})"
        only = OUTSIDE.get(parts[0])
        assert only is None or here in only, f"{here} may not import {parts[0]}"


def test_every_room_has_its_rule() -> None:
    rooms = {path.name for path in PACKAGE.iterdir() if (path / "__init__.py").is_file()}
    assert rooms == set(MAY_IMPORT)


def loaded_after(code: str) -> set[str]:
    script = f"{code}\nimport sys; print('\\n'.join(m.split('.')[0] for m in sys.modules))"
    run = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True, timeout=60
    )
    return set(run.stdout.split())


@pytest.mark.parametrize(
    ("code", "absent"),
    [
        ("import conservedb.dates, conservedb.knowledge.layers", {"sqlalchemy", "textual"}),
        ("import conservedb.questions.place", {"textual", "alembic", "click"}),
        ("import conservedb.exchange.importing", {"textual", "alembic", "click"}),
        ("import conservedb.exchange.looking", {"textual", "alembic", "click", "PIL", "xml"}),
        ("import conservedb.cli.look", {"sqlalchemy", "textual", "alembic", "PIL"}),
        ("import conservedb.__main__", {"sqlalchemy", "textual", "alembic"}),
        ("import conservedb.tui.app", {"sqlalchemy", "alembic", "click"}),
    ],
)
def test_what_a_process_really_loads(code: str, absent: set[str]) -> None:
    assert not loaded_after(code) & absent


def test_the_orm_stays_out() -> None:
    code = "import sys, conservedb.questions.place, conservedb.exchange.importing as i"
    run = subprocess.run(
        [sys.executable, "-c", f"{code}; print('sqlalchemy.orm' in sys.modules)"],
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    assert run.stdout.strip() == "False"


def test_files_and_functions_stay_readable() -> None:
    for path in modules():
        text = path.read_text(encoding="utf-8")
        assert text.count("\n") <= 400, f"{path} is longer than one sitting"
        for node in ast.walk(ast.parse(text)):
            if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef) and node.end_lineno:
                length = node.end_lineno - node.lineno
                assert length <= 60, f"{path}: {node.name} does more than one thing"
