"""Bringing a file to the newest schema: copy first, then everything in one transaction."""

from __future__ import annotations

import sqlite3
from dataclasses import dataclass
from pathlib import Path

from conservedb.store import derived, log
from conservedb.store.connect import connect_sqlite
from conservedb.store.problems import DatabaseProblem
from conservedb.store.version import migrations_folder


@dataclass(frozen=True, slots=True)
class Upgraded:
    """What an upgrade did: from which revision, and where the copy made before it lies.

    `reference` says what became of the shipped reference tables, "" where they are as before;
    where nothing else changed, `before` and `after` are the same and there is no copy. `guards`
    says that another program had changed the triggers.
    """

    before: str
    after: str
    backup: Path | None
    reference: str = ""
    guards: str = ""

    @property
    def remarks(self) -> tuple[str, ...]:
        """Sentences for the person who opened the file."""
        copied = f"upgraded to schema {self.after}; a copy from before: {self.backup}"
        return tuple(
            filter(None, (copied if self.backup is not None else "", self.reference, self.guards))
        )


def back_up(path: Path, target: Path) -> None:
    """Copy a live database through SQLite's own backup and verify the copy.

    Raises:
        DatabaseProblem: the target exists, or the copy is damaged (it is then left in place).
    """
    if target.exists():
        raise DatabaseProblem(f"{target} is already there; move it away, then try again")
    source, copy = connect_sqlite(path), sqlite3.connect(target)
    try:
        source.backup(copy)
        verdict = copy.execute("PRAGMA quick_check").fetchone()[0]
        if verdict != "ok":
            raise DatabaseProblem(f"the copy {target} is damaged ({verdict}); nothing was changed")
    finally:
        copy.close()
        source.close()


def upgrade(path: Path, before: str, after: str, folder: Path | None = None) -> Upgraded:
    """Upgrade the file from revision `before` to `after`, keeping a verified copy.

    Foreign keys are off while tables may be rebuilt (a rebuild with them on deletes children
    without a word); they are checked, with the row counts, before anything is kept.

    Raises:
        DatabaseProblem: the copy or the upgrade failed; the file is then as it was.
    """
    from conservedb.store.log_rows import log_differences  # needs every table

    target = _free_name(path, before)
    back_up(path, target)
    raw = connect_sqlite(path)
    try:
        raw.execute("PRAGMA foreign_keys=OFF")
        raw.execute("BEGIN IMMEDIATE")
        counted = _counts(raw)
        derived.drop(raw)
        run_migrations(raw, after, folder or migrations_folder())
        derived.build(raw)
        _check_kept(raw, counted)
        log.open_set(raw, log.Author(log.PROGRAM, "upgraded", f"from schema {before} to {after}"))
        log_differences(raw)
        log.seal(raw)
        raw.execute("COMMIT")
    except Exception as problem:
        if raw.in_transaction:
            raw.execute("ROLLBACK")
        raise DatabaseProblem(
            f"the upgrade of {path} from {before} to {after} failed ({problem}); the file is as"
            f" it was, and a copy lies in {target}"
        ) from problem
    finally:
        raw.close()
    return Upgraded(before, after, target)


def run_migrations(raw: sqlite3.Connection, target: str, folder: Path) -> None:
    """Run Alembic on an open connection, inside the transaction that the caller began."""
    from alembic import command
    from alembic.config import Config
    from sqlalchemy import create_engine
    from sqlalchemy.pool import StaticPool

    engine = create_engine("sqlite://", creator=lambda: raw, poolclass=StaticPool)
    for closing in ("do_commit", "do_rollback"):  # only the caller ends its transaction
        setattr(engine.dialect, closing, lambda _connection: None)
    config = Config()
    config.set_main_option("script_location", str(folder).replace("%", "%%"))
    connection = engine.connect()
    config.attributes["connection"] = connection
    command.upgrade(config, target)


def _free_name(path: Path, before: str) -> Path:
    """A name beside the file for its copy: NAME.before-0001.db, then .2, .3 ..."""
    first = path.with_name(f"{path.name}.before-{before}.db")
    candidate, number = first, 1
    while candidate.exists():
        number += 1
        candidate = first.with_name(f"{path.name}.before-{before}.{number}.db")
    return candidate


def _counts(raw: sqlite3.Connection) -> dict[str, int]:
    names = raw.execute(  # those of the search index come and go
        "SELECT name FROM pragma_table_list"
        " WHERE schema = 'main' AND type = 'table' AND name NOT LIKE 'sqlite_%'"
    ).fetchall()
    return {name: raw.execute(f'SELECT count(*) FROM "{name}"').fetchone()[0] for (name,) in names}


def _check_kept(raw: sqlite3.Connection, counted: dict[str, int]) -> None:
    broken = raw.execute("PRAGMA foreign_key_check").fetchall()
    if broken:
        raise DatabaseProblem(f"{len(broken)} rows point at nothing, the first in {broken[0][0]}")
    now = _counts(raw)
    for table, count in counted.items():
        if table in now and now[table] < count:
            raise DatabaseProblem(f"table {table} had {count} rows and now has {now[table]}")
