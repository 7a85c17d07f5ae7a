"""`conservedb ask` into files: the rows of the screen, and the question to ask it again."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest
from openpyxl import load_workbook  # type: ignore[import-untyped]

from tests.cli.conftest import Command

QUESTION = "material: epoxy"


def test_a_file_holds_every_row_and_the_question(ask: Command, tmp_path: Path) -> None:
    shown = ask("ask", QUESTION, "--limit", "0", "--json").json
    assert len(shown["found"]) > 2
    paths = {form: tmp_path / f"answer.{form}" for form in ("csv", "jsonl", "xlsx")}
    for form, path in paths.items():
        ended = ask("ask", QUESTION, "--limit", "1", f"--{form}", str(path), "--json")
        assert ended.json == {"file": str(path), "rows": len(shown["found"])}
    table = list(csv.reader(io.StringIO(paths["csv"].read_text(encoding="utf-8"), newline="")))
    about, *lines = map(json.loads, paths["jsonl"].read_text(encoding="utf-8").splitlines())
    book = load_workbook(paths["xlsx"])
    sheet = [list(row) for row in book["answer"].iter_rows(values_only=True)]
    for at, row in enumerate(shown["found"]):
        wanted = [row["sureness"], row["object"], row["place"], row["ref"], row["date"]["words"]]
        named = ("sureness", "object", "place", "ref", "date_words")
        assert [lines[at][name] for name in named] == wanted
        assert [dict(zip(table[0], table[at + 1], strict=True))[n] for n in named] == wanted
        in_book = dict(zip(sheet[0], sheet[at + 1], strict=True))
        assert [in_book[name] or "" for name in named] == wanted
    told = about["about"]
    assert told["description"] == shown["description"]
    assert told["counts"].startswith("layers: ") and "certainly" in told["counts"]
    again = ask("ask", told["question"], "--limit", "0", "--json").json
    assert again["found"] == shown["found"]


@pytest.mark.parametrize("other", [("--list",), ("--describe",), ("--compare", "1950", "1990")])
def test_a_file_takes_rows_only(ask: Command, tmp_path: Path, other: tuple[str, ...]) -> None:
    ended = ask("ask", QUESTION, *other, "--csv", str(tmp_path / "a.csv"))
    assert ended.status == 2 and "a file takes the rows of one answer" in ended.err
    assert not list(tmp_path.glob("a.csv*"))
