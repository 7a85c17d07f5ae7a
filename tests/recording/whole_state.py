"""All that can be asked of a database, and all that can be written out, to be compared."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from pathlib import Path

from sqlalchemy import Connection, Engine

from conservedb.exchange.exporting import export_folder
from conservedb.questions.answers import NoSuch
from conservedb.questions.asof import as_of
from conservedb.questions.basics import Ambiguous
from conservedb.questions.checks import check, check_all
from conservedb.questions.find import find
from conservedb.questions.history import history
from conservedb.questions.material import material_answer
from conservedb.questions.objects import object_on
from conservedb.questions.place import place
from conservedb.questions.removal import removal
from conservedb.questions.start import start
from conservedb.questions.uses import uses
from conservedb.questions.whatif import whatif
from conservedb.recording.bounds import check_bounds
from conservedb.store.connect import raw_of, reading
from conservedb.store.log_rows import current, parse, replayed
from conservedb.store.logging_triggers import logged_tables
from conservedb.store.verify import verify
from tests.conftest import TODAY

State = dict[str, object]


def whole_state(engine: Engine, folder: Path) -> State:
    """Every row but the log's, every exported file, every question's answer; by what it is.

    Args:
        folder: a new one, for the export.
    """
    with reading(engine) as connection:
        raw = raw_of(connection)
        found: State = {
            f"rows of {table.name}": sorted(current(raw, table)) for table in logged_tables()
        }
        export_folder(connection, folder)
        found |= {path.name: path.read_bytes() for path in sorted(folder.glob("*.csv"))}
        return found | _answers(connection)


def _answers(connection: Connection) -> State:
    now = as_of(None, TODAY)
    found: State = {
        "start": start(connection, TODAY),
        "check": check_all(connection, now),
        "whatif 60": whatif(connection, 60, now),
    }
    for number in connection.exec_driver_sql("SELECT number FROM object").scalars().all():
        found[f"object {number}"] = object_on(connection, number, now)
        found[f"history {number}"] = history(connection, number)
        found[f"check {number}"] = check(connection, number, now)
        found[f"find {number}"] = find(connection, number)
    marks = connection.exec_driver_sql(
        "SELECT o.number, p.mark FROM place p JOIN object o ON o.id = p.object_id"
    ).all()
    for number, mark in marks:
        for on in (now, as_of("1950", TODAY), as_of("1990/2000", TODAY)):
            found[f"place {number} {mark} {on.words}"] = place(connection, number, mark, on)
        found[f"history {number} {mark}"] = history(connection, number, mark)
        found[f"reverse {number} {mark}"] = _unless_refused(
            lambda n=number, m=mark: removal(connection, n, m, "", now)  # type: ignore[misc]
        )
    mine = connection.exec_driver_sql(
        "SELECT key FROM material WHERE id IN (SELECT material_id FROM layer UNION"
        " SELECT material_id FROM agent)"
    )
    for key in mine.scalars().all():
        found[f"uses {key}"] = uses(connection, key, now)
        found[f"material {key}"] = material_answer(connection, key, now)
    return found


def _unless_refused(ask: Callable[[], object]) -> object:
    """An answer, or the sentence that refuses one."""
    try:
        return ask()
    except (NoSuch, Ambiguous) as refused:
        return str(refused)


def not_sound(engine: Engine) -> list[str]:
    """What the verification finds, bounds of layers included."""
    with reading(engine) as connection:
        found = [f"{one.part}: {one.sentence}" for one in verify(raw_of(connection))]
        objects = connection.exec_driver_sql("SELECT id FROM object").scalars().all()
        return found + check_bounds(connection, list(objects))


def differing(one: State, other: State) -> list[str]:
    """What is not the same in two states."""
    return sorted(name for name in one.keys() | other.keys() if one.get(name) != other.get(name))


def replay_differs(engine: Engine) -> list[str]:
    """Tables that are otherwise when the log is played from an empty database."""
    anew = sqlite3.connect(":memory:", isolation_level=None)
    differ = []
    with reading(engine) as connection:
        raw = raw_of(connection)
        for table in logged_tables():
            (made,) = raw.execute(
                "SELECT sql FROM sqlite_schema WHERE type = 'table' AND name = ?", (table.name,)
            ).fetchone()
            anew.execute(made)
            being, astray = replayed(raw, table.name)
            assert astray == []
            for _, text in being.elements():
                fields = parse(text)
                names, marks = ", ".join(fields), ", ".join("?" * len(fields))
                anew.execute(
                    f"INSERT INTO {table.name} ({names}) VALUES ({marks})", tuple(fields.values())
                )
            rows = f"SELECT * FROM {table.name}"
            if sorted(raw.execute(rows), key=repr) != sorted(anew.execute(rows), key=repr):
                differ.append(table.name)
    anew.close()
    return differ
