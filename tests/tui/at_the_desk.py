"""Sitting at an object of the demonstration, with a database that can be written to."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

from textual.pilot import Pilot

from conservedb.store.connect import connect_sqlite
from conservedb.store.log import Author, open_set, seal
from conservedb.tui.app import ConservedbApp
from conservedb.tui.database_recorder import DatabaseRecorder
from conservedb.tui.reading import Database
from conservedb.tui.recording import Form, Outcome
from conservedb.tui.screens.object import ObjectScreen
from tests.tui.conftest import NARROW
from tests.tui.forms import calm

NUMBER = "SQ.1902.7"


@asynccontextmanager
async def at_desk(
    path: Path, mark: str = "J14", size: tuple[int, int] = NARROW
) -> AsyncIterator[Pilot[None]]:
    """The object screen at a mark of the fountain."""
    database = Database(path)
    app = ConservedbApp(database, DatabaseRecorder(database))
    async with app.run_test(size=size) as pilot:
        await calm(pilot)
        await app.push_screen(ObjectScreen(database, NUMBER, mark))
        await calm(pilot)
        yield pilot


def filled(form: Form, /, **values: str) -> dict[str, str]:
    """What the fields of a form hold, with some typed over."""
    held = {field.name: field.value for field in form.fields}
    assert set(values) <= set(held), f"no such field: {set(values) - set(held)}"
    return held | values


def saved(outcome: Outcome) -> str:
    """The sentence of something saved."""
    assert outcome.saved, outcome
    return outcome.saved


def needing_nobody(path: Path) -> None:
    """The department no longer says who must agree to a support: recording it asks nothing."""
    raw = connect_sqlite(path)
    raw.execute("BEGIN IMMEDIATE")
    open_set(raw, Author("Rosalind Thaxter", "withdrawn", "a test"))
    raw.execute("DELETE FROM needed_authorisation WHERE kind = 'support'")
    seal(raw)
    raw.execute("COMMIT")
    raw.close()
