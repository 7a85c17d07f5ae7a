"""An answer as an Excel workbook: sheet "answer", further ones where it is long, and "about".

Every text is written as text, so that nothing is ever a formula or a link. Days are dates as far
back as the format has them. A row is on its way to the disk before the next one comes.
"""

from __future__ import annotations

import datetime
import os
import re
from collections.abc import Iterable, Iterator, Sequence
from itertools import chain, islice
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import xlsxwriter  # type: ignore[import-untyped]
from xlsxwriter.exceptions import FileCreateError  # type: ignore[import-untyped]

from conservedb.exchange.answers_out import About, Row, plain
from conservedb.questions.display import show

MOST_ROWS = 1_048_576
"""Rows of one sheet, its header among them: the limit of the format."""
MOST_CHARACTERS = 32_767
"""Characters of one cell, counted in units of UTF-16: the limit of the format."""
_CUT = " ... (cut: a cell of a workbook holds no more; the whole text is in a CSV or JSON file)"
_FIRST_DATE = datetime.date(1900, 3, 1)
"""The format counts days from 1900 on, with a 29 February 1900 that never was: from the day after
it all programs agree."""
DAYS = (
    "days are dates from 1900-03-01 on; earlier ones are text, since a workbook has no such dates,"
    " and sorting puts them after the others"
)
"""Said where there are such days."""
_EXACT = 10**15
"""Whole numbers from here on are written as text: a spreadsheet would round them."""
_UNLAWFUL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
"""What XML cannot hold."""
_NARROW, _WIDE, _LOOKED_AT = 6, 60, 200


def write_workbook(path: Path, about: About, header: Sequence[str], rows: Iterable[Row]) -> int:
    """Write a new workbook and return the number of rows of the answer."""
    with TemporaryDirectory(dir=path.parent, prefix=f"{path.name}.") as folder:
        book = xlsxwriter.Workbook(str(path), {"constant_memory": True, "tmpdir": folder})
        count, days = _write_answer(book, header, rows)
        told = {**about.told, "rows": str(count)}
        _write_about(book, told | {"days": DAYS} if days else told)
        try:
            book.close()
        except FileCreateError as problem:
            raise OSError(0, str(problem)) from problem
    with path.open("rb+") as file:
        os.fsync(file.fileno())
    return count


def _write_answer(
    book: Any,  # noqa: ANN401
    header: Sequence[str],
    rows: Iterable[Row],
) -> tuple[int, bool]:
    """The sheets of the answer, as many as it needs; how many rows, and whether any holds a day."""
    left = iter(rows)
    dates = book.add_format({"num_format": "yyyy-mm-dd"})
    count = sheets = 0
    days = False
    first: list[Row] = list(islice(left, _LOOKED_AT))
    while first or not sheets:
        sheets += 1
        sheet = book.add_worksheet("answer" if sheets == 1 else f"answer {sheets}")
        _shape(sheet, book, header, first)
        written, dated = _write_rows(sheet, dates, islice(chain(first, left), MOST_ROWS - 1))
        sheet.autofilter(0, 0, written, len(header) - 1)
        count, days = count + written, days or dated
        first = list(islice(left, _LOOKED_AT))
    return count, days


def _shape(sheet: Any, book: Any, header: Sequence[str], first: list[Row]) -> None:  # noqa: ANN401
    """The header, which stays in view, and columns about as wide as what the first rows hold."""
    for at, name in enumerate(header):
        longest = max((len(str(row[at])) for row in first if row[at] is not None), default=0)
        sheet.set_column(at, at, min(_WIDE, max(_NARROW, len(name) + 3, longest + 1)))
    bold = book.add_format({"bold": True})
    for at, name in enumerate(header):
        sheet.write_string(0, at, lawful(name), bold)
    sheet.freeze_panes(1, 0)


def _write_rows(sheet: Any, dates: Any, rows: Iterator[Row]) -> tuple[int, bool]:  # noqa: ANN401
    number, days = 0, False
    for number, row in enumerate(rows, 1):
        for at, cell in enumerate(row):
            if isinstance(cell, datetime.date):
                days = True
                if cell >= _FIRST_DATE:
                    sheet.write_datetime(number, at, cell, dates)
                    continue
            value = plain(cell)
            if value is None or value == "":
                continue
            if isinstance(value, str) or abs(value) >= _EXACT:
                sheet.write_string(number, at, lawful(str(value)))
            else:
                sheet.write_number(number, at, value)
    return number, days


def _write_about(book: Any, told: dict[str, str]) -> None:  # noqa: ANN401
    sheet = book.add_worksheet("about")
    sheet.set_column(0, 0, 24)
    sheet.set_column(1, 1, 100)
    wrapped = book.add_format({"text_wrap": True, "valign": "top"})
    for number, (name, text) in enumerate(told.items()):
        sheet.write_string(number, 0, name, wrapped)
        sheet.write_string(number, 1, lawful(text), wrapped)


def lawful(text: str) -> str:
    """Text as a cell can hold it: what XML cannot hold is shown by its picture or number."""
    text = _UNLAWFUL.sub(_seen, text.replace("\r\n", "\n").replace("\r", "\n"))
    if len(text) > MOST_CHARACTERS // 2 and _units(text) > MOST_CHARACTERS:
        text = text.encode("utf-16-le")[: 2 * (MOST_CHARACTERS - len(_CUT))].decode(
            "utf-16-le", "ignore"
        )
        text += _CUT
    if text.startswith("<r>") and text.endswith("</r>"):
        text += " "  # the library would take it for text that is formatted already
    return text


def _seen(match: re.Match[str]) -> str:
    shown = show(match[0])
    return shown if shown != match[0] else f"<{ord(match[0]):04x}>"


def _units(text: str) -> int:
    return len(text.encode("utf-16-le")) // 2
