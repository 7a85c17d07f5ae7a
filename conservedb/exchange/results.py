"""What was written, record by record, each with the version that a later amendment can name."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import Connection

from conservedb.exchange.judging import JudgedWritten
from conservedb.exchange.reading_cells import find_record
from conservedb.exchange.subjects import BY_NAME
from conservedb.store.past import last_change


@dataclass(frozen=True, slots=True)
class Record:
    """A record that was written, or would be.

    `object` is the number of its object, "" for none; `version` the number of its last change,
    None where nothing was written or its key is more than one field; `cells` those not blank.
    """

    kind: str
    object: str
    key: str
    version: int | None
    cells: Mapping[str, str]


def records_of(connection: Connection, told: JudgedWritten, *, trial: bool) -> list[Record]:
    """The records of what was kept, or on trial would be; none where it was not."""
    if not told.kept:
        return []
    records = []
    for entry, key in zip(told.entries, told.written.keys, strict=True):
        subject = BY_NAME[entry.subject]
        number = entry.cells.get("object", "") if subject.in_object else ""
        version = None
        if not trial and len(subject.key) == 1:
            record = find_record(connection, subject, number, key)
            last = last_change(connection, subject.table.name, record)
            version = last.number if last else None
        filled = {name: cell for name, cell in entry.cells.items() if cell.strip()}
        records.append(Record(subject.singular, number, key, version, filled))
    return records
