"""Making a new database through the same migrations that upgrade an old one.

It holds the shipped reference tables and nothing else.
"""

from __future__ import annotations

import datetime
import sqlite3
import uuid
from pathlib import Path

from conservedb.store import derived, log
from conservedb.store.connect import connect_sqlite
from conservedb.store.problems import DatabaseProblem
from conservedb.store.shipping import ship
from conservedb.store.upgrade import run_migrations
from conservedb.store.version import APPLICATION_ID, HEAD, migrations_folder


def create(
    path: Path, *, name: str = "", identity: str | None = None, today: str | None = None
) -> None:
    """Make a new database at `path`; never over an existing file.

    Args:
        path: where; its folder must exist.
        name: what the department calls it.
        identity: the database's UUID; a new one unless given (the demonstration gives its own).
        today: an ISO day at which this database's "today" stands still (demonstration only).

    Raises:
        DatabaseProblem: the file exists, or its folder is missing or may not be written.
    """
    try:
        with path.open("xb"):
            pass
    except FileExistsError as problem:
        raise DatabaseProblem(f"{path} already exists; choose another name") from problem
    except OSError as problem:
        raise DatabaseProblem(
            f"{path} cannot be made ({problem.strerror}); choose a folder you may write to"
        ) from problem
    try:
        _fill(path, name, identity or str(uuid.uuid4()), today)
    except BaseException:
        path.unlink(missing_ok=True)
        raise


def _fill(path: Path, name: str, identity: str, today: str | None) -> None:
    raw = connect_sqlite(path)
    try:
        raw.execute(f"PRAGMA application_id={APPLICATION_ID}")
        raw.execute("BEGIN IMMEDIATE")
        run_migrations(raw, HEAD, migrations_folder())
        derived.build(raw)
        log.open_set(raw, log.Author(log.PROGRAM, "made", at=f"{today}T00:00:00Z" if today else ""))
        created = today or datetime.date.today().isoformat()
        raw.execute(
            "INSERT INTO database (id, uuid, name, created, fixed_today) VALUES (1, ?, ?, ?, ?)",
            (identity, name or None, created, today),
        )
        ship(raw)
        log.seal(raw)
        raw.execute("COMMIT")
    except sqlite3.Error as problem:
        raise DatabaseProblem(f"{path} could not be made ({problem})") from problem
    finally:
        raw.close()
