"""An answer into a file, against Python's own CSV writer on the same rows, in one run."""

from __future__ import annotations

import csv
import time
from pathlib import Path

import pytest

from conservedb.exchange.answers_out import about_answer, write_answer
from conservedb.store.raw_questions import ask, reading_only
from tests.bench.conftest import Collection

SQL = (
    "SELECT object, place, ref, material, role, came_first_day, came_last_day, came_first_number,"
    " gone_last_number, note FROM v_layers LIMIT 100000"
)
BUDGETS = {"csv": 4, "jsonl": 5, "xlsx": 25}
"""A workbook is some thirty bytes of XML around each cell, and packed."""


def floor(path: Path, target: Path) -> float:
    """Seconds for the same rows written as they are."""
    started = time.perf_counter()
    with reading_only(path, 60) as raw, target.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows(raw.execute(SQL))
    return time.perf_counter() - started


@pytest.mark.bench
@pytest.mark.parametrize("form", BUDGETS)
def test_an_answer_into_a_file(large: Collection, tmp_path: Path, form: str) -> None:
    bare = min(floor(large.path, tmp_path / "bare.csv") for _ in range(3))
    started = time.perf_counter()
    with reading_only(large.path, 600) as raw:
        about = about_answer(raw, "2026-11-02", SQL)
        answer = ask(raw, SQL, 600)
        rows = write_answer(tmp_path / f"a.{form}", form, about, answer.columns, answer.rows)
    ratio = (time.perf_counter() - started) / bare
    print(f"{rows} rows as {form}: {ratio:.1f} x the bare CSV writer ({bare:.2f} s)")
    assert ratio <= BUDGETS[form]
