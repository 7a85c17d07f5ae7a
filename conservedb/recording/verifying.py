"""All that can be checked of a database: file, schema, log, rows, search, bounds, known ends."""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import Connection, Engine, select

from conservedb.recording.bounds import check_bounds
from conservedb.records.objects import object_
from conservedb.store.connect import mending, raw_of, writing
from conservedb.store.known_head import forget, remembered
from conservedb.store.log import Author, Head, open_number
from conservedb.store.log_rows import log_differences
from conservedb.store.search import rebuild
from conservedb.store.verify import Found, verify


def verify_database(connection: Connection, heads: tuple[Head, ...] = ()) -> Iterator[Found]:
    """Everything that does not agree; nothing where all is well.

    Args:
        heads: ends of the log that somebody wrote down. The one that this computer remembers is
            added.
    """
    identity = connection.exec_driver_sql("SELECT uuid FROM database").scalar_one()
    known = remembered(identity)
    yield from verify(raw_of(connection), (*heads, *((known,) if known else ())))
    objects = [row[0] for row in connection.execute(select(object_.c.id))]
    for sentence in check_bounds(connection, objects):
        yield Found("bounds", sentence)


def accept_as_found(engine: Engine, who: str, reason: str) -> int | None:
    """Log the rows that were changed behind the log's back as they now are.

    The end of the log that this computer remembers is let go of too.

    Returns:
        The number of the change set; None where there was nothing to accept.
    """
    with writing(engine, Author(who, "accepted", reason)) as connection:
        raw = raw_of(connection)
        forget(raw.execute("SELECT uuid FROM database").fetchone()[0])
        return open_number(raw) if log_differences(raw) else None


def rebuild_search(engine: Engine) -> None:
    """Read the words that records are found by anew; no record is changed.

    Raises:
        DatabaseProblem: the file cannot be written, or the index cannot be mended.
    """
    with mending(engine) as raw:
        rebuild(raw)
