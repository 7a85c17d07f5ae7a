"""The end of the change log beside an export, so that a log cut off or written anew shows later.

Import reads it to see what was amended after the folder left the house.
"""

from __future__ import annotations

import os
import re
from pathlib import Path
from typing import NamedTuple

from sqlalchemy import Connection

import conservedb
from conservedb.store.connect import raw_of
from conservedb.store.log import Head, head
from conservedb.store.opening import today

FILE = "log-head.txt"
_IDENTITY = re.compile(r"^uuid: ([0-9a-f-]{36})$", re.MULTILINE)
_END = re.compile(r"^end of its log: change set (\d{1,18}), ([0-9a-f]{64})$", re.MULTILINE)


class WrittenHead(NamedTuple):
    """Which database a folder came from, and where its log ended then."""

    identity: str
    head: Head


def write_head(connection: Connection, folder: Path) -> None:
    """Write the end of the log into a folder that leaves the house.

    Raises:
        OSError: it cannot be written.
    """
    name, identity = connection.exec_driver_sql("SELECT name, uuid FROM database").one()
    end = head(raw_of(connection))
    said = str(end) if end else "nothing sealed"
    check = f'conservedb verify --head "{end.number} {end.hash}"' if end else "conservedb verify"
    text = (
        f"database: {' '.join((name or 'without a name').split())}\n"
        f"uuid: {identity}\n"
        f"end of its log: {said}\n"
        f"written: {today(connection).isoformat()} by conservedb {conservedb.__version__}\n"
        f"To check that nothing up to here was altered or cut off, run {check} on the database.\n"
    )
    partial = folder / f"{FILE}.partial"
    with partial.open("w", encoding="utf-8", newline="\n") as file:
        file.write(text)
        file.flush()
        os.fsync(file.fileno())
    partial.rename(folder / FILE)


def read_head(folder: Path) -> WrittenHead | None:
    """What a folder says of where it came from; None where it says nothing of use.

    Raises:
        OSError: the file is there and cannot be read.
    """
    path = folder / FILE
    if not path.is_file():
        return None
    text = path.read_text(encoding="utf-8", errors="replace")
    identity, end = _IDENTITY.search(text), _END.search(text)
    if identity is None or end is None:
        return None
    return WrittenHead(identity[1], Head(int(end[1]), end[2]))
