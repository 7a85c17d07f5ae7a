"""Which schema this program knows, without importing Alembic."""

from __future__ import annotations

from pathlib import Path

import conservedb

APPLICATION_ID = 0x63644231
"""Marks a SQLite file as ours (`PRAGMA application_id`)."""

REVISIONS = ("0001", "0002", "0003", "0004", "0005")
"""Every schema revision this program can read or upgrade from, oldest first."""

HEAD = REVISIONS[-1]

FINGERPRINT = 795294352
"""That of the derived objects (`PRAGMA user_version`); a test holds it against `store.derived`."""


def migrations_folder() -> Path:
    """The folder of migrations: inside the installed package, else beside it in a checkout."""
    package = Path(conservedb.__file__).parent
    inside = package / "migrations"
    return inside if inside.is_dir() else package.parent / "migrations"
