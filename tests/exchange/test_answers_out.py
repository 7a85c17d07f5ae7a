"""Answers as files: what is read back is what was written, and no spreadsheet runs any of it."""

from __future__ import annotations

import csv
import datetime
import io
import json
import re
import tracemalloc
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from openpyxl import load_workbook  # type: ignore[import-untyped]

from conservedb.exchange import workbook
from conservedb.exchange.answers_out import About, Row, harmless, told_apart, write_answer
from conservedb.store.problems import DatabaseProblem
from tests.nasty import NASTY

ABOUT = About(
    "uses epoxy --on 1990",
    "=layers of epoxy",
    "2 certainly, 1 possibly",
    "2026-11-02",
    "conservedb 0.1.0",
    "00000000-0000-4000-8000-000000000000",
    "change set 7, abc",
)
HEADER = ("object", "load_kg", "note")
ROWS: list[Row] = [
    ("CB.1", 12.5, "plain"),
    ("CB.2", -3, None),
    ("-0099", 0.1, '=HYPERLINK("http://x")'),
    *(("nasty", at, text) for at, text in enumerate(NASTY)),
]
FORMS = ("csv", "jsonl", "xlsx")
STARTS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
"""Beginnings that OWASP's page on CSV injection names, the full-width ones among them."""


def written(tmp_path: Path, form: str, rows: list[Row] = ROWS) -> Path:
    path = tmp_path / f"answer.{form}"
    assert write_answer(path, form, ABOUT, HEADER, iter(rows)) == len(rows)
    assert [p.name for p in tmp_path.iterdir()] == [path.name]
    return path


def recorded(cell: str) -> str:
    """A cell of the CSV as recorded: what the file itself says about apostrophes, done."""
    return re.sub(r"(?:\A|(?<=[;\t\r\n]))'(?='* *[=+\-@＝＋－＠])|\A'(?='* *[\t\r\n])", "", cell)


def read_csv(path: Path) -> tuple[list[list[str]], str]:
    """The rows with their header, and what is said of them in the name of the last column."""
    rows = list(csv.reader(io.StringIO(path.read_bytes().decode("utf-8-sig"), newline="")))
    assert {len(row) for row in rows} == {len(HEADER) + 1}  # RFC 4180: the same in every line
    assert {row[-1] for row in rows[1:]} <= {""}
    return [row[:-1] for row in rows], rows[0][-1]


def test_csv(tmp_path: Path) -> None:
    rows, about = read_csv(written(tmp_path, "csv"))
    assert rows[0] == list(HEADER)
    assert rows[1:4] == [
        ["CB.1", "12.5", "plain"],
        ["CB.2", "-3", ""],  # a number stays one
        ["'-0099", "0.1", '\'=HYPERLINK("http://x")'],
    ]
    assert [recorded(row[2]) for row in rows[4:]] == list(NASTY)
    first, *told = about.split(" | ")
    assert first == "about this answer"
    assert told[:-1] == [f"{name}: {text}" for name, text in ABOUT.told.items()]
    assert told[-1].startswith("apostrophes: ")
    raw = (tmp_path / "answer.csv").read_bytes()
    assert raw.startswith(b"\xef\xbb\xbfobject,") and raw.endswith(b"\r\n")  # Excel; RFC 4180


def test_csv_is_a_rectangle_to_any_reader(tmp_path: Path) -> None:
    """pandas reads the same (tried with 3.1; it takes the byte order mark off by itself)."""
    path = written(tmp_path, "csv")
    with path.open(encoding="utf-8-sig", newline="") as file:
        found = list(csv.DictReader(file, strict=True))
    assert len(found) == len(ROWS)
    assert [row["object"].lstrip("'") for row in found] == [row[0] for row in ROWS]
    assert [float(row["load_kg"]) for row in found] == [row[1] for row in ROWS]


def test_bidirectional_controls_stay_data_in_files(tmp_path: Path) -> None:
    text = "a\u202eb\u2066c\u200f"
    paths = {form: tmp_path / f"bidi.{form}" for form in FORMS}
    for form, path in paths.items():
        write_answer(path, form, ABOUT, HEADER, [(text, 1, None)])
    rows = list(csv.reader(io.StringIO(paths["csv"].read_text(encoding="utf-8-sig"), newline="")))
    assert rows[1][0] == text
    lines = paths["jsonl"].read_text(encoding="utf-8").splitlines()
    assert json.loads(lines[1])["object"] == text
    assert text not in lines[1]  # as escapes
    assert load_workbook(paths["xlsx"])["answer"]["A2"].value == text


@pytest.mark.parametrize("start", STARTS)
def test_no_cell_begins_a_formula(start: str) -> None:
    for text in (f"{start}1+1", f"  {start}1", f"'{start}1"):
        assert harmless(text) == f"'{text}"
        assert recorded(harmless(text)) == text
    if start.strip():
        for sign in ";\t\n":  # what some spreadsheets take for the end of a cell
            assert harmless(f"a{sign}{start}1") == f"a{sign}'{start}1"


@given(st.text(alphabet="a'=+-@;\t\r\n ＝9", max_size=12))
def test_what_is_made_harmless_can_be_made_as_it_was(text: str) -> None:
    safe = harmless(text)
    assert not any(cell[:1] in STARTS for cell in (safe, safe.lstrip(" ")) if cell)
    assert not any(
        part.lstrip(" ")[:1] in "=+-@＝" for part in re.split("[;\t\r\n]", safe) if part.strip(" ")
    )
    assert recorded(safe) == text


def test_json_lines(tmp_path: Path) -> None:
    lines = written(tmp_path, "jsonl").read_text(encoding="utf-8").splitlines()
    first, *rest = map(json.loads, lines)
    assert first == {"about": ABOUT.told}
    assert [tuple(row[name] for name in HEADER) for row in rest] == [tuple(row) for row in ROWS]
    assert all(row.keys() == set(HEADER) for row in rest)


def cells(sheet: Any) -> list[tuple[Any, ...]]:
    return [tuple(row) for row in sheet.iter_rows(values_only=True)]


def test_workbook(tmp_path: Path) -> None:
    """Read with openpyxl, a library of other hands."""
    path = written(tmp_path, "xlsx")
    book = load_workbook(path)
    assert book.sheetnames == ["answer", "about"]
    sheet = book["answer"]
    assert (sheet.freeze_panes, sheet.auto_filter.ref) == ("A2", f"A1:C{len(ROWS) + 1}")
    found = cells(sheet)
    assert found[0] == HEADER
    assert found[1:4] == [tuple(row) for row in ROWS[:3]]
    for row, text in zip(sheet.iter_rows(min_row=5), NASTY, strict=True):
        assert row[2].data_type == "s"
        shown = text.replace("\r\n", "\n").replace("\r", "\n")
        assert len(row[2].value) == len(shown)
        if not re.search("[\x00-\x08\x0b-\x1f]", shown):
            assert row[2].value == shown
    about = dict(book["about"].iter_rows(values_only=True))
    assert about == {**ABOUT.told, "rows": str(len(ROWS))}
    with zipfile.ZipFile(path) as parts:
        sheets = [parts.read(n).decode() for n in parts.namelist() if "worksheets/" in n]
    assert len(sheets) == 2
    assert not any("<f>" in text or "<hyperlink" in text for text in sheets)


def test_days_are_dates_where_a_workbook_has_them(tmp_path: Path) -> None:
    """Serial 61 is 1900-03-01 in every program; before it they differ by the 29 February 1900 that
    never was (ECMA-376-1, 18.17.4)."""
    days = [
        datetime.date(*day) for day in ((1741, 1, 1), (1900, 2, 28), (1900, 3, 1), (9999, 12, 31))
    ]
    rows: list[Row] = [(day.isoformat(), 0, day) for day in days] + [("none", 0, None)]
    book = load_workbook(written(tmp_path, "xlsx", rows))
    assert dict(book["about"].iter_rows(values_only=True))["days"] == workbook.DAYS
    sheet = book["answer"]
    cells = [row[2] for row in sheet.iter_rows(min_row=2)]
    assert [cell.data_type for cell in cells] == ["s", "s", "d", "d", "n"]
    assert [cell.value for cell in cells[:2]] == ["1741-01-01", "1900-02-28"]
    assert [cell.value.date() for cell in cells[2:4]] == days[2:]
    assert {cell.number_format for cell in cells[2:4]} == {"yyyy-mm-dd"}
    assert cells[4].value is None
    assert {row[0].data_type for row in sheet.iter_rows(min_row=2)} == {"s"}  # words stay words
    with zipfile.ZipFile(tmp_path / "answer.xlsx") as parts:
        assert b"<v>61</v>" in parts.read("xl/worksheets/sheet1.xml")
    assert sheet.column_dimensions["C"].width >= 10
    path = tmp_path / "days.csv"
    write_answer(path, "csv", ABOUT, HEADER, rows)
    assert [row[2] for row in read_csv(path)[0][1:]] == [*map(str, days), ""]


def test_a_workbook_takes_what_its_format_does_not(tmp_path: Path) -> None:
    odd = (
        "x" * 40_000,
        "\U0001f468" * 20_000,
        "<r>a</r>",
        "half \ud800 \uffff",
        "_x0041_",
        2**53 + 1,
    )
    book = load_workbook(written(tmp_path, "xlsx", [("odd", 0, text) for text in odd]))
    found = [row[2] for row in cells(book["answer"])[1:]]
    for text in found[:2]:
        assert len(text.encode("utf-16-le")) // 2 <= workbook.MOST_CHARACTERS
        assert text.endswith("the whole text is in a CSV or JSON file)")
    escaped = "_x005F_x0041_"  # as ISO 29500-1 (22.9.2.19, ST_Xstring) writes "_x0041_"
    assert found[2:] == ["<r>a</r> ", "half <d800> <ffff>", escaped, str(2**53 + 1)]


def test_more_rows_than_a_sheet_holds(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(workbook, "MOST_ROWS", 301)
    rows: list[Row] = [(f"CB.{at}", at, "") for at in range(601)]
    book = load_workbook(written(tmp_path, "xlsx", rows))
    assert book.sheetnames == ["answer", "answer 2", "answer 3", "about"]
    found = [cells(book[name]) for name in book.sheetnames[:-1]]
    assert [len(sheet) for sheet in found] == [301, 301, 2]
    assert [row[1] for sheet in found for row in sheet[1:]] == list(range(601))
    assert {sheet[0] for sheet in found} == {HEADER}


@pytest.mark.parametrize("form", FORMS)
def test_an_answer_without_rows_is_a_file_too(tmp_path: Path, form: str) -> None:
    path = written(tmp_path, form, [])
    if form == "csv":
        assert read_csv(path)[0] == [list(HEADER)]
    elif form == "xlsx":
        assert cells(load_workbook(path)["answer"]) == [HEADER]


@pytest.mark.parametrize("form", FORMS)
def test_nothing_is_written_over_and_never_half(tmp_path: Path, form: str) -> None:
    path = written(tmp_path, form)
    before = path.read_bytes()
    with pytest.raises(DatabaseProblem, match="already exists; name a new file"):
        write_answer(path, form, ABOUT, HEADER, ROWS)
    assert path.read_bytes() == before

    def breaking() -> Iterator[Row]:
        yield ROWS[0]
        raise RuntimeError("power")

    with pytest.raises(RuntimeError):
        write_answer(tmp_path / "half", form, ABOUT, HEADER, breaking())
    with pytest.raises(DatabaseProblem, match="cannot be written"):
        write_answer(tmp_path / "none" / "a", form, ABOUT, HEADER, ROWS)
    assert [p.name for p in tmp_path.iterdir()] == [path.name]


@pytest.mark.parametrize(("form", "rows"), [("csv", 60_000), ("jsonl", 60_000), ("xlsx", 15_000)])
def test_memory_does_not_grow_with_the_answer(tmp_path: Path, form: str, rows: int) -> None:
    def many(number: int) -> Iterator[Row]:
        return ((f"CB.{at}", at / 7, f"note {at} " * 5) for at in range(number))

    def peak(number: int) -> int:
        tracemalloc.start()
        write_answer(tmp_path / f"{number}.{form}", form, ABOUT, HEADER, many(number))
        most = tracemalloc.get_traced_memory()[1]
        tracemalloc.stop()
        return most

    peak(300)  # what is only loaded once
    assert peak(rows) < 1.5 * peak(rows // 10) + 200_000


def test_columns_are_told_apart() -> None:
    assert told_apart(["a", "b", "a", "a (2)", "a"]) == ["a", "b", "a (2)", "a (2) (2)", "a (3)"]
