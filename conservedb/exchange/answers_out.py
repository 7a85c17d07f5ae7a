"""An answer as a file that leaves the house: CSV, JSON lines or a workbook, with what it answers.

Rows are written as they come: an answer may be larger than the memory.

CSV (RFC 4180): the first line has the names of the columns, and every further one is a row of the
answer. What is answered, and when and by what, is the name of the last column, which is blank in
every row. There it is read once and stays with the table when rows are sorted, filtered, copied
or taken out, in a spreadsheet or elsewhere; lines before or after the rows would be taken for rows,
and a sign for remarks may stand in any text. The file is UTF-8 and says so by its first character,
the byte order mark, since without it Excel misreads every accent; what reads tables for
statistics skips it (to Python it is "utf-8-sig").

JSON lines: first {"about": {...}}, then an object for each row.
"""

from __future__ import annotations

import csv
import datetime
import json
import math
import os
import re
import sqlite3
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TextIO, TypeAlias

import conservedb
from conservedb.exchange.cells import show_number
from conservedb.exchange.new_files import new_file
from conservedb.questions.display import escape_json
from conservedb.store.log import head

Cell: TypeAlias = str | int | float | bytes | datetime.date | None
Row: TypeAlias = Sequence[Cell]

_RUNS = re.compile(
    r"\A(?='* *[=+\-@＝＋－＠\t\r\n])"
    r"|(?<=[;\t\r\n])(?='* *[=+\-@＝＋－＠])"
)
"""Where a spreadsheet may find the beginning of a formula: at the start of a text, and after what
some of them take for the end of a cell."""
APOSTROPHES = (
    "a text that a spreadsheet might run has one apostrophe before its =, +, - or @; take that"
    " one away for the text as recorded"
)


@dataclass(frozen=True, slots=True)
class About:
    """What stands in the file beside the rows.

    Attributes:
        question: as it was asked.
        description: what was asked, in words; "" where the question says it.
        counts: how many rows answer, and how surely, in a sentence; "" where that is not told.
        day: the day of the answer, ISO.
        program: the program and its version.
        database: the UUID of the database.
        log: where its change log ended.
    """

    question: str
    description: str
    counts: str
    day: str
    program: str
    database: str
    log: str

    @property
    def told(self) -> dict[str, str]:
        """Each by its name, without those that are blank."""
        named = {
            "question": self.question,
            "description": self.description,
            "counts": self.counts,
            "day": self.day,
            "program": self.program,
            "database": self.database,
            "end of its change log": self.log,
        }
        return {name: text for name, text in named.items() if text}


def about_answer(
    raw: sqlite3.Connection, day: str, question: str, description: str = "", counts: str = ""
) -> About:
    """What stands beside an answer of this database, in the state that the connection sees.

    Args:
        day: the day of the answer, ISO.
    """
    (identity,) = raw.execute("SELECT uuid FROM database").fetchone()
    program = f"conservedb {conservedb.__version__}"
    log = str(head(raw) or "nothing sealed")
    return About(question, description, counts, day, program, identity, log)


Writer: TypeAlias = Callable[[Path, About, Sequence[str], Iterable[Row]], int]
"""Writes a new file whole, flushed to the disk, and returns the number of rows."""


def write_answer(
    path: Path, form: str, about: About, header: Sequence[str], rows: Iterable[Row]
) -> int:
    """Write an answer into a new file and return the number of its rows.

    Args:
        form: "csv", "jsonl" or "xlsx".
        header: the names of the columns; of two that are alike the later one gets a number.

    Raises:
        conservedb.store.problems.DatabaseProblem: it is there already, or cannot be written.
    """
    with new_file(path) as partial:
        return _writer(form)(partial, about, told_apart(header), rows)


def _writer(form: str) -> Writer:
    if form == "xlsx":
        from conservedb.exchange.workbook import write_workbook  # loads its library

        return write_workbook
    return {"csv": _write_csv, "jsonl": _write_json_lines}[form]


def told_apart(names: Sequence[str]) -> list[str]:
    """The names of columns, each unlike those before it."""
    made: dict[str, None] = {}
    for name in names:
        number, unused = 1, name
        while unused in made:
            number += 1
            unused = f"{name} ({number})"
        made[unused] = None
    return list(made)


def harmless(text: str) -> str:
    """Text that no spreadsheet runs: an apostrophe before whatever might begin a formula."""
    return _RUNS.sub("'", text)


def plain(cell: Cell) -> str | int | float | None:
    """A cell without bytes, days and numbers that JSON and spreadsheets do not have."""
    if cell is None or isinstance(cell, str):
        return cell
    if isinstance(cell, datetime.date):
        return cell.isoformat()
    if isinstance(cell, bytes):
        return f"x'{cell.hex()}'"
    if isinstance(cell, float) and not math.isfinite(cell):
        return str(cell)
    return cell


def _csv_cell(cell: Cell) -> str:
    value = plain(cell)
    if isinstance(value, str):
        return harmless(value)
    if isinstance(value, float):
        return show_number(value)
    return "" if value is None else str(value)


def about_column(about: About) -> str:
    """The name of the last column of a CSV file."""
    told = {**about.told, "apostrophes": APOSTROPHES}
    return " | ".join(("about this answer", *(f"{name}: {text}" for name, text in told.items())))


def _write_csv(path: Path, about: About, header: Sequence[str], rows: Iterable[Row]) -> int:
    count = 0
    with path.open("x", encoding="utf-8-sig", errors="backslashreplace", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(map(harmless, (*header, about_column(about))))
        for row in rows:
            writer.writerow([*map(_csv_cell, row), ""])
            count += 1
        _flush(file)
    return count


def _write_json_lines(path: Path, about: About, header: Sequence[str], rows: Iterable[Row]) -> int:
    encode = json.JSONEncoder(ensure_ascii=False).encode
    count = 0
    with path.open("x", encoding="utf-8", newline="\n") as file:
        file.write(f"{escape_json(encode({'about': about.told}))}\n")
        for row in rows:
            named = dict(zip(header, map(plain, row), strict=True))
            file.write(f"{escape_json(encode(named))}\n")
            count += 1
        _flush(file)
    return count


def _flush(file: TextIO) -> None:
    file.flush()
    os.fsync(file.fileno())
