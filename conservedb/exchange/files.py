"""Reading CSV files so that every line is accounted for, whatever is wrong with it."""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass, field
from pathlib import Path
from typing import NamedTuple, Protocol

from conservedb.exchange import log_head
from conservedb.exchange.faults import Fault
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME

LONGEST_CELL = 10_000_000
csv.field_size_limit(LONGEST_CELL)


class _Reader(Protocol):
    """What `csv.reader` gives."""

    line_num: int

    def __next__(self) -> list[str]: ...


class Row(NamedTuple):
    """A row as read: first and last line of the file, and its cells."""

    first: int
    last: int
    cells: list[str]


@dataclass
class Table:
    """A file as read. Rows that could not be told apart stand in `malformed`."""

    subject: Subject
    headers: list[str] = field(default_factory=list)
    rows: list[Row] = field(default_factory=list)
    malformed: list[Row] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)

    @property
    def rows_in(self) -> int:
        """How many rows the file holds."""
        return len(self.rows) + len(self.malformed)

    def fault(self, row: int, reason: str, remedy: str, column: str = "", value: str = "") -> None:
        """Note what is wrong with a row, or with the file (row 0)."""
        self.faults.append(Fault(self.subject.file, row, column, value, reason, remedy))


def read_folder(folder: Path, encoding: str) -> tuple[list[Table], list[Fault], list[Fault]]:
    """Read every CSV file of a folder.

    Returns:
        The tables in the order of `SUBJECTS`; faults of the folder; notices.
    """
    faults: list[Fault] = []
    notices: list[Fault] = []
    found: dict[str, Path] = {}
    for path in sorted(folder.iterdir()):
        name = path.name.lower()
        if name == log_head.FILE:
            continue
        if not path.is_file() or not name.endswith(".csv"):
            notices.append(Fault(path.name, 0, "", "", "is not a CSV file", "it was left alone"))
        elif name[:-4] not in BY_NAME:
            known = ", ".join(f"{subject}.csv" for subject in BY_NAME)
            faults.append(
                Fault(path.name, 0, "", "", "is no file of this program", f"name it one of {known}")
            )
        elif name[:-4] in found:
            reason = f"is a second {name} beside {found[name[:-4]].name}"
            faults.append(Fault(path.name, 0, "", "", reason, "put their rows into one file"))
        else:
            found[name[:-4]] = path
    tables = [
        read_table(found[name], subject, encoding)
        for name, subject in BY_NAME.items()
        if name in found
    ]
    if not tables and not faults:
        faults.append(
            Fault(str(folder), 0, "", "", "holds no CSV file", "see the README for their names")
        )
    return tables, faults, notices


def read_table(path: Path, subject: Subject, encoding: str) -> Table:
    """Read one file; whatever is wrong with it becomes a fault, never an exception."""
    table = Table(subject)
    try:
        text = path.read_bytes().decode(encoding, "surrogateescape").removeprefix("\ufeff")
    except UnicodeError:
        table.fault(0, f"is not {encoding.upper()} text", _ENCODING)
        return table
    table.lines = list(io.StringIO(text, newline=""))
    reader = csv.reader(iter(table.lines), strict=True)
    suspicious = "\0" in text or not _encodable(text)
    if _read_header(reader, table, encoding):
        _read_rows(reader, table, suspicious, encoding)
        if any(fault.row <= 1 for fault in table.faults):  # the first line is at fault
            table.malformed += table.rows
            table.rows = []
    else:
        filled = [line for line in table.lines[1:] if line.strip()]
        table.malformed = [Row(2, len(table.lines), [])] if filled else []
    return table


def _encodable(text: str) -> bool:
    try:
        text.encode()
    except UnicodeEncodeError:
        return False
    return True


_ENCODING = "save the file as UTF-8, or name its encoding, for example: --encoding cp1252"


def _read_header(reader: _Reader, table: Table, encoding: str) -> bool:
    """Read the names of the columns; False where they cannot be told apart."""
    if "\0" in "".join(table.lines[:1]):
        remedy = "save the file as UTF-8, or import it with --encoding utf-16"
        table.fault(1, "the first line holds NUL characters, as UTF-16 text does", remedy)
        return False
    if not _encodable("".join(table.lines[:1])):
        table.fault(1, f"the first line is not {encoding.upper()} text", _ENCODING)
        return False
    try:
        table.headers = [header.strip().lower() for header in next(reader)]
    except StopIteration:
        table.fault(0, "is empty", "the first line must hold the names of the columns")
        return False
    except csv.Error as problem:
        table.fault(1, f"the first line cannot be read ({problem})", "mend its quotation marks")
        return False
    while table.headers and not table.headers[-1]:  # spreadsheets leave commas at the end
        table.headers.pop()
    if not table.headers:
        table.fault(0, "names no columns", "the first line must hold the names of the columns")
        return False
    known = set(table.subject.headers)
    for sign, name in ((";", "semicolons"), ("\t", "tabs")):
        if len(table.headers) == 1 and sign in table.headers[0]:
            table.fault(1, f"its columns are separated by {name}", "save it with commas")
            return False
    for header in table.headers:
        if header not in known:
            table.fault(
                1,
                "is no column of this file",
                f"use {', '.join(table.subject.headers)}",
                "(first line)",
                header,
            )
    doubled = {header for header in table.headers if table.headers.count(header) > 1}
    for header in sorted(doubled & known):
        table.fault(1, "this column stands twice", "keep one of them", "(first line)", header)
    needed = () if table.subject.makes_key else table.subject.key
    for header in (*(("object",) if table.subject.in_object else ()), *needed):
        if header not in table.headers:
            table.fault(1, f"column {header} is missing", "every row needs its key")
    return True


def _read_rows(reader: _Reader, table: Table, suspicious: bool, encoding: str) -> None:
    width = len(table.headers)
    rows = table.rows
    while True:
        first = reader.line_num + 1
        try:
            cells = next(reader)
        except StopIteration:
            return
        except csv.Error as problem:
            if not _read_on(table, first, reader.line_num, str(problem)):
                return
            continue
        while len(cells) > width and not cells[-1].strip():
            cells.pop()
        row = Row(first, reader.line_num, cells)
        if len(cells) == width:
            if suspicious and not _clean(table, row, encoding):
                table.malformed.append(row)
            elif any(cells):
                rows.append(row)
        elif cells:
            table.malformed.append(row)
            table.fault(
                first,
                f"has {len(cells)} cells where the first line names {width} columns",
                "put the missing or extra comma right; a cell with a comma needs quotation marks",
            )


def _read_on(table: Table, first: int, last: int, problem: str) -> bool:
    """Note a row that CSV cannot make sense of; False where the rest of the file is lost."""
    if "expected after" in problem:
        table.malformed.append(Row(first, last, []))
        table.fault(
            first,
            "text follows a closing quotation mark",
            'write a quotation mark inside a cell twice: ""',
        )
        return True
    table.malformed.append(Row(first, len(table.lines), []))
    if "field limit" in problem:
        table.fault(first, f"a cell is longer than {LONGEST_CELL:,} characters", "shorten it")
        return False
    table.fault(
        first,
        f"a quotation mark opened here is never closed, so that lines {first} to"
        f" {len(table.lines)} cannot be told apart",
        "close it",
    )
    return False


def _clean(table: Table, row: Row, encoding: str) -> bool:
    for header, cell in zip(table.headers, row.cells, strict=True):
        if "\0" in cell:
            table.fault(row.first, "holds a NUL character", "take it out", header, cell)
            return False
        if not _encodable(cell):
            table.fault(
                row.first,
                f"is not {encoding.upper()} text",
                _ENCODING,
                header,
                cell.encode("utf-8", "replace").decode(),
            )
            return False
    return True
