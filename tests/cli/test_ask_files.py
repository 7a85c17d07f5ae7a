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
    table = list(csv.reader(io.StringIO(paths["csv"].read_text(encoding="utf-8-sig"), newline="")))
    about, *lines = map(json.loads, paths["jsonl"].read_text(encoding="utf-8").splitlines())
    book = load_workbook(paths["xlsx"])
    sheet = [list(row) for row in book["answer"].iter_rows(values_only=True)]
    for at, row in enumerate(shown["found"]):
        alike = ("sureness", "object", "place", "ref", "matter", "date_qualifiers", "state")
        wanted = [*(row[name] for name in alike), row["date"]["words"], row["date"]["edtf"]]
        named = (*alike, "date_words", "date_edtf")
        assert [lines[at][name] for name in named] == wanted
        assert [dict(zip(table[0], table[at + 1], strict=True))[n] for n in named] == wanted
        in_book = dict(zip(sheet[0], sheet[at + 1], strict=True))
        assert [in_book[name] or "" for name in named] == wanted
    assert {"in place", "gone"} <= {line["state"] for line in lines}
    assert "approximate" in {line["date_qualifiers"] for line in lines}
    told = about["about"]
    said = table[0][-1].split(" | ")
    for name in ("question", "day", "program", "database", "end of its change log"):
        assert f"{name}: {told[name]}" in said
    assert told["description"] == shown["description"]
    assert told["counts"].startswith("layers: ") and "certainly" in told["counts"]
    again = ask("ask", told["question"], "--limit", "0", "--json").json
    assert again["found"] == shown["found"]


def test_what_a_column_says_of_a_state_can_be_asked_for(ask: Command) -> None:
    """On paper, as JSON and as a question the same word; only answers for certain are compared."""
    shown = ask("ask", "layers", "--limit", "0", "--json").json["found"]
    words = {row["state"] for row in shown if row["state"]}
    assert words == {"in place", "partly removed", "gone"}
    lines = ask("ask", "layers", "--limit", "0").out
    for word in words:
        again = ask("ask", f'state: "{word}"', "--limit", "0", "--json").json["found"]
        assert {row["state"] for row in again if row["sureness"] == "certain"} <= {word}
        assert f", state: {word}" in lines


def test_help_says_that_a_file_holds_every_row(conservedb: Command) -> None:
    said = " ".join(conservedb("ask", "--help").out.split())
    assert "0 for all. A file holds every row." in said


@pytest.mark.parametrize("other", [("--list",), ("--describe",), ("--compare", "1950", "1990")])
def test_a_file_takes_rows_only(ask: Command, tmp_path: Path, other: tuple[str, ...]) -> None:
    ended = ask("ask", QUESTION, *other, "--csv", str(tmp_path / "a.csv"))
    assert ended.status == 2 and "a file takes the rows of one answer" in ended.err
    assert not list(tmp_path.glob("a.csv*"))
