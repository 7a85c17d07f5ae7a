"""The statements that the program really sends when it records, written out in full."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from typing import Any

from sqlalchemy import Engine, event

_WRITING = ("BEGIN IMMEDIATE", "INSERT", "UPDATE", "DELETE", "PRAGMA defer", "COMMIT")


def statements_of(engine: Engine, work: Callable[[], object]) -> list[str]:
    """Every statement of `work` that opens, writes to or ends a writing transaction, in order."""
    heard: list[str] = []

    def listen(raw: sqlite3.Connection, _: Any) -> None:
        raw.set_trace_callback(heard.append)

    engine.dispose()  # what is open already is not heard
    event.listen(engine, "connect", listen)
    try:
        work()
    finally:
        event.remove(engine, "connect", listen)
        engine.dispose()
    told: list[str] = []
    for statement in heard:
        # a trigger is traced as the statement that set it off, once more
        if statement.startswith(_WRITING) and told[-1:] != [statement]:
            told.append(statement)
    begun = told.index("BEGIN IMMEDIATE")
    return told[begun : told.index("COMMIT", begun) + 1]
