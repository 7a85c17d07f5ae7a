"""Opening a file: is it ours, is it complete, is it of the right version?"""

from __future__ import annotations

import datetime
import os
import sqlite3
from dataclasses import replace
from pathlib import Path

from sqlalchemy import Connection, Engine, text

from conservedb.reference.edition import EDITION
from conservedb.store import derived, log
from conservedb.store.connect import connect_sqlite, make_engine
from conservedb.store.problems import DatabaseProblem
from conservedb.store.upgrade import Upgraded, upgrade
from conservedb.store.version import APPLICATION_ID, FINGERPRINT, HEAD, REVISIONS

_SYNCHRONISED = ("onedrive", "dropbox", "icloud", "google drive", "nextcloud", "owncloud")
_NETWORK = {"nfs", "nfs4", "cifs", "smb3", "smbfs", "9p", "afs", "fuse.sshfs"}
_EDITION = "SELECT edition FROM database"
_TODAY = text("SELECT fixed_today FROM database")


def open_database(path: Path, *, mend: bool = True) -> tuple[Engine, Upgraded | None]:
    """Open a conservedb file, upgrading or completing it where needed.

    Reference tables of an older edition are brought up to date where the file may be written.

    Args:
        mend: make triggers anew that another program has changed or taken away.

    Returns:
        The engine, and what was done to the file where it was not of this version.

    Raises:
        DatabaseProblem: no such file, not a database of ours, damaged, newer than this program,
            or not writable where an upgrade is needed.
    """
    if path.is_dir():
        raise DatabaseProblem(f"{path} is a folder; name the database file in it")
    if not path.is_file():
        raise DatabaseProblem(
            f"there is no database at {path}; make one with: conservedb new {path}"
        )
    if path.stat().st_size == 0:
        raise DatabaseProblem(
            f"{path} is not a conservedb database but an empty file; remove it, or name another"
        )
    raw = connect_sqlite(path)
    try:
        revision, fingerprint, present, edition = _identify(path, raw)
        as_it_is = revision == HEAD and fingerprint == present == FINGERPRINT
        if as_it_is and edition is not None and edition >= EDITION:
            return make_engine(path, raw), None  # reading the schema once is enough
    except BaseException:
        raw.close()
        raise
    raw.close()
    if revision not in REVISIONS:
        raise DatabaseProblem(
            f"{path} was written by a newer conservedb (schema {revision}, this program knows"
            f" {HEAD}); install the newer program; the file was not touched"
        )
    upgraded = None
    if revision != HEAD:
        _must_write(path)
        upgraded = upgrade(path, revision, HEAD)
    elif fingerprint != FINGERPRINT:
        _must_write(path)
        _complete(path)
    elif present != FINGERPRINT and mend:
        upgraded = _mend(path)
    if edition is None or edition < EDITION:
        upgraded = _take_reference_in(path, upgraded)
    return make_engine(path), upgraded


def today(connection: Connection) -> datetime.date:
    """The current day; in a demonstration the day at which it stands still."""
    fixed = connection.execute(_TODAY).scalar()
    return datetime.date.fromisoformat(fixed) if fixed else datetime.date.today()


def surroundings(path: Path) -> str | None:
    """A sentence of warning where the folder is one that databases are known to suffer in."""
    whole = path.absolute()
    if any(name in part.lower() for part in whole.parts for name in _SYNCHRONISED):
        return (
            f"{path} lies in a synchronised folder; two people writing at once may lose work:"
            " keep the database in a plain folder and synchronise copies of it"
        )
    if str(whole).startswith("\\\\") or _file_system(whole) in _NETWORK:
        return (
            f"{path} lies on a network share; locking is unreliable there: let one person write"
            " at a time and make copies often"
        )
    return None


def _file_system(path: Path) -> str:
    """The kind of file system a path lies on, where the system tells (Linux), else ""."""
    best, kind = "", ""
    try:
        for line in Path("/proc/mounts").read_text(encoding="utf-8").splitlines():
            mount, name = line.split(" ")[1:3]
            inside = str(path) == mount or str(path).startswith(mount.rstrip("/") + "/")
            if inside and len(mount) >= len(best):
                best, kind = mount, name
    except OSError:
        return ""
    return kind


def _identify(path: Path, raw: sqlite3.Connection) -> tuple[str, int, int, str | None]:
    """Schema revision, fingerprint of derived objects as noted and as present, and edition."""
    stranger = DatabaseProblem(
        f"{path} is not a conservedb database; nothing was changed; take its rows in as CSV"
        " tables with: conservedb import FOLDER"
    )
    try:
        if raw.execute("PRAGMA application_id").fetchone()[0] != APPLICATION_ID:
            raise stranger
        revision = raw.execute("SELECT version_num FROM alembic_version").fetchone()
        fingerprint = raw.execute("PRAGMA user_version").fetchone()[0]
        present = derived.present(raw)
        edition = raw.execute(_EDITION).fetchone() if revision == (HEAD,) else None
    except sqlite3.OperationalError as problem:
        if "no such table" in str(problem):
            raise stranger from problem
        raise DatabaseProblem(f"{path} cannot be read ({problem})") from problem
    except sqlite3.DatabaseError as problem:
        raise DatabaseProblem(
            f"{path} is not a readable database ({problem}); restore it from a copy"
        ) from problem
    if revision is None:
        raise stranger
    return revision[0], fingerprint, present, edition[0] if edition else None


def _take_reference_in(path: Path, upgraded: Upgraded | None) -> Upgraded | None:
    """Take this program's edition in, all of it or nothing.

    A file that cannot be written just now is left as it is; no edition keeps a file from opening.
    """
    from conservedb.store.shipping import ship

    if not os.access(path, os.W_OK) or not os.access(path.parent, os.W_OK):
        return upgraded
    raw = connect_sqlite(path)
    try:
        raw.execute("BEGIN IMMEDIATE")
        log.open_set(
            raw, log.Author(log.PROGRAM, "shipped", f"reference tables of edition {EDITION}")
        )
        report = ship(raw)
        log.seal(raw)
        raw.execute("COMMIT")
    except sqlite3.Error as problem:
        if "readonly" in str(problem) or "locked" in str(problem):
            return upgraded
        remark = (
            f"the reference tables of edition {EDITION} could not be taken in ({problem}); those"
            " on record stay as they are"
        )
    else:
        if report is None:
            return upgraded
        remark = report.sentence()
    finally:
        if raw.in_transaction:
            raw.execute("ROLLBACK")
        raw.close()
    return replace(upgraded or Upgraded(HEAD, HEAD, None), reference=remark)


def _mend(path: Path) -> Upgraded:
    """Make triggers anew that another program has changed; what it did meanwhile is not known."""
    remark = (
        "another program has changed or taken away triggers, views or the search index of this file"
    )
    if not os.access(path, os.W_OK) or not os.access(path.parent, os.W_OK):
        return Upgraded(HEAD, HEAD, None, guards=f"{remark}; run: conservedb verify")
    raw = connect_sqlite(path)
    try:
        raw.execute("BEGIN IMMEDIATE")
        derived.build(raw)
        raw.execute("COMMIT")
    except sqlite3.Error as problem:
        raise DatabaseProblem(
            f"{path}: {remark}, and they cannot be made anew ({problem}); run: conservedb verify"
        ) from problem
    finally:
        if raw.in_transaction:
            raw.execute("ROLLBACK")
        raw.close()
    return Upgraded(
        HEAD, HEAD, None, guards=f"{remark}; they were made anew; run: conservedb verify"
    )


def _must_write(path: Path) -> None:
    if not os.access(path, os.W_OK) or not os.access(path.parent, os.W_OK):
        raise DatabaseProblem(
            f"{path} was written by another version of conservedb and must be completed first,"
            " but you may only read it; ask somebody who may write to open it once"
        )


def _complete(path: Path) -> None:
    """Check a file that came without derived objects (a loaded dump), then make them."""
    from conservedb.store.log_rows import log_differences  # needs every table

    raw = connect_sqlite(path)
    try:
        raw.execute("BEGIN IMMEDIATE")
        _refuse_damage(raw, path)
        derived.build(raw)
        log.open_set(raw, log.Author(log.PROGRAM, "found", "rows of a file loaded from a dump"))
        if log.last_sealed(raw) is None:
            log_differences(raw)
        log.seal(raw)
        raw.execute("COMMIT")
    except sqlite3.Error as problem:
        raise DatabaseProblem(f"{path} could not be completed ({problem})") from problem
    finally:
        if raw.in_transaction:
            raw.execute("ROLLBACK")
        raw.close()


def _refuse_damage(raw: sqlite3.Connection, path: Path) -> None:
    verdict = raw.execute("PRAGMA quick_check").fetchone()[0]
    if verdict != "ok":
        raise DatabaseProblem(f"{path} is damaged ({verdict}); restore it from a copy")
    broken = raw.execute("PRAGMA foreign_key_check").fetchone()
    if broken:
        raise DatabaseProblem(
            f"{path} is incomplete: a row of table {broken[0]} points at a record that is not"
            " there; load it again from its source"
        )
    contradictions = derived.broken_rows(raw)
    if contradictions:
        raise DatabaseProblem(
            f"{path} contradicts itself ({contradictions[0]}); load it again from its source"
        )
