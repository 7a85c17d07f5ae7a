"""The folder of refused rows: as they stood, to be mended and imported again."""

from __future__ import annotations

import csv
import io
import os
from pathlib import Path

from conservedb.exchange.faults import Fault
from conservedb.exchange.files import Row, Table
from conservedb.exchange.taking import Taking


def write_refused(folder: Path, encoding: str, taking: Taking, dependents: list[Fault]) -> Path:
    """Write the refused rows, line for line as they stood, and a text of the reasons.

    Returns:
        The new folder, beside the one imported.
    """
    target = _free_name(folder)
    target.mkdir()
    for table in taking.tables:
        refused = _refused_rows(taking, table)
        if refused:
            _write_lines(target / table.subject.file, _lines(table, refused), encoding)
    reasons = [fault.sentence() for fault in [*taking.faults, *dependents]]
    _write_lines(target / "reasons.txt", [f"{line}\n" for line in reasons], "utf-8")
    return target


def _free_name(folder: Path) -> Path:
    whole = folder.resolve()
    number, target = 1, whole.with_name(f"{whole.name}-refused")
    while target.exists():
        number += 1
        target = whole.with_name(f"{whole.name}-refused-{number}")
    return target


def _refused_rows(taking: Taking, table: Table) -> list[Row]:
    records = taking.records.get(table.subject.name, {}).values()
    bad = [record.row for record in records if record.refused]
    return sorted([*taking.refused[table.subject.name], *bad])


def _lines(table: Table, rows: list[Row]) -> list[str]:
    """The header and the rows' own lines, so that nothing is lost or rewritten."""
    if not table.headers or not table.lines:
        return list(table.lines)
    if any(row.first <= 2 and not row.cells for row in rows) and not table.rows:
        return list(table.lines)
    header = io.StringIO()
    csv.writer(header).writerow(table.headers)
    lines = [header.getvalue()]
    for row in rows:
        lines += table.lines[row.first - 1 : row.last]
        if not lines[-1].endswith(("\n", "\r")):
            lines.append("\r\n")
    return lines


def _write_lines(path: Path, lines: list[str], encoding: str) -> None:
    with path.open("w", encoding=encoding, errors="surrogateescape", newline="") as file:
        file.writelines(lines)
        file.flush()
        os.fsync(file.fileno())
