"""The triggers that write the change log, and those that keep it as it was written.

They use no functions but `quote`, so that any SQLite program can read the file; a program that
opens no change set is refused.
"""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import Table

from conservedb.records.every import metadata
from conservedb.store.log import LOG

REFUSAL = "write through conservedb: no author is set"
_OPEN = "(SELECT id FROM change_set WHERE hash IS NULL)"


def logged_tables() -> list[Table]:
    """Every table whose changes are logged, by name."""
    return [metadata.tables[name] for name in sorted(metadata.tables) if name not in LOG]


def owner_field(table: Table) -> str:
    """The field that a change is filed under: the row's id, or the record that a link belongs to.

    The first field of a link's primary key is its owner.
    """
    if "id" in table.c:
        return "id"
    owners = [column.name for column in table.primary_key if column.name.endswith("_id")]
    return owners[0]


def row_text(table: Table, row: str) -> str:
    """SQL for a row as text: `name=value` by name, in SQL literals, blank fields left out."""
    first = owner_field(table)
    parts = [f"'{first}=' || {row}.{first}"]
    for column in sorted(table.columns, key=lambda column: column.name):
        name = column.name
        if name == first:
            continue
        told = f"',{name}=' || quote({row}.{name})"
        parts.append(f"iif({row}.{name} IS NULL, '', {told})" if column.nullable else told)
    return " || ".join(parts)


def statements() -> Iterator[str]:
    """The text of every trigger of the log."""
    for table in logged_tables():
        yield from _writers(table)
    yield from _keepers()


def _writers(table: Table) -> Iterator[str]:
    name, owner = table.name, owner_field(table)
    changed = " OR ".join(f"OLD.{c.name} IS NOT NEW.{c.name}" for c in table.columns)
    for moment, condition, row, before, after in (
        ("INSERT", "", "NEW", "NULL", row_text(table, "NEW")),
        ("UPDATE", f" WHEN {changed}", "NEW", row_text(table, "OLD"), row_text(table, "NEW")),
        ("DELETE", "", "OLD", row_text(table, "OLD"), "NULL"),
    ):
        yield (
            f"CREATE TRIGGER log_{name}_{moment.lower()} AFTER {moment} ON {name}{condition}\n"
            "BEGIN INSERT INTO change (set_id, table_name, record_id, before, after) VALUES (\n"
            f"coalesce({_OPEN}, RAISE(ABORT, '{REFUSAL}')),\n"
            f"'{name}', {row}.{owner},\n{before},\n{after}); END"
        )
    yield (
        f"CREATE TRIGGER log_{name}_same_key BEFORE UPDATE ON {name}"
        f" WHEN OLD.{owner} IS NOT NEW.{owner}\n"
        f"BEGIN SELECT RAISE(ABORT, '{name}: the key of a row never changes'); END"
    )


def _keepers() -> Iterator[str]:
    """What is in the log stays as it is; only the open set is written to."""
    refused = "BEGIN SELECT RAISE(ABORT, 'the change log is only ever added to'); END"
    last = "(SELECT set_id FROM change WHERE id = (SELECT max(id) FROM change))"
    fixed = ("id", "who", "at", "kind", "reason", "program", "undoes_id")
    rewritten = " OR ".join(f"OLD.{name} IS NOT NEW.{name}" for name in fixed)
    for name, moment, condition in (
        ("change_update", "BEFORE UPDATE ON change", ""),
        ("change_delete", "BEFORE DELETE ON change", ""),
        (
            "change_replace",
            "BEFORE INSERT ON change",
            f" WHEN NEW.set_id IS NOT {_OPEN} OR EXISTS (SELECT 1 FROM change WHERE id = NEW.id)",
        ),
        (
            "change_insert",
            "AFTER INSERT ON change",
            " WHEN NEW.id < (SELECT max(id) FROM change) OR NEW.id < 1",
        ),
        (
            "change_set_update",
            "BEFORE UPDATE ON change_set",
            f" WHEN OLD.hash IS NOT NULL OR {rewritten}",
        ),
        (
            "change_set_delete",
            "BEFORE DELETE ON change_set",
            f" WHEN OLD.hash IS NOT NULL OR OLD.id = {last}",
        ),
        (
            "change_set_replace",
            "BEFORE INSERT ON change_set",
            f" WHEN NEW.hash IS NOT NULL OR {_OPEN} IS NOT NULL"
            " OR EXISTS (SELECT 1 FROM change_set WHERE id = NEW.id)",
        ),
        (
            "change_set_insert",
            "AFTER INSERT ON change_set",
            " WHEN NEW.id < (SELECT max(id) FROM change_set) OR NEW.id < 1",
        ),
    ):
        yield f"CREATE TRIGGER log_{name} {moment}{condition}\n{refused}"
