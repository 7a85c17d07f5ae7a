"""Files of older schemas: making them, and reading all that is in them."""

from __future__ import annotations

import lzma
import sqlite3
from pathlib import Path
from typing import Any

from conservedb.store.shipped_shape import SHAPES

Rows = dict[str, set[tuple[Any, ...]]]
GROWN = {shape.table.name for shape in SHAPES.values()}
GROWN |= {listed.table for shape in SHAPES.values() for listed in shape.lists}
"""Tables that shipped rows go into."""


def load_old(path: Path, revision: str) -> None:
    """Make the demonstration as it was at a revision."""
    dump = Path(__file__).parent / f"demo_{revision}.sql.xz"
    raw = sqlite3.connect(path)
    raw.executescript(lzma.decompress(dump.read_bytes()).decode())
    raw.close()
    assert ask(path, "SELECT version_num FROM alembic_version") == [revision]


def columns(path: Path) -> dict[str, str]:
    """The columns of every table that holds records, as written in SQL."""
    raw = sqlite3.connect(path)
    tables = [r[0] for r in raw.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")]
    found = {
        table: ", ".join(f'"{r[1]}"' for r in raw.execute(f"PRAGMA table_info({table})"))
        for table in tables
        if table not in ("sqlite_sequence", "alembic_version")
    }
    raw.close()
    return found


def everything(path: Path, wanted: dict[str, str]) -> Rows:
    raw = sqlite3.connect(path)
    found = {t: set(raw.execute(f"SELECT {names} FROM {t}")) for t, names in wanted.items()}
    raw.close()
    return found


def ask(path: Path, sql: str, *values: str) -> list[Any]:
    raw = sqlite3.connect(path)
    found = raw.execute(sql, values).fetchall()
    raw.close()
    return [row[0] if len(row) == 1 else row for row in found]
