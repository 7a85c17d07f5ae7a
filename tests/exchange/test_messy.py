"""A department's export as such exports are: Windows bytes, two hands, a century of habits.

`messy_expected.txt` was written before the folder was imported for the first time. That
first run found two weaknesses, mended since: a row whose commas are wrong (places.csv, line 5,
not meant) hid its own mark, so that rows naming it were said to name nothing; and the order in
time of rows that hang on it was not looked at. Since the program ships materials, two notices
are new, and components.csv, line 5 names another substance that nobody lists.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from sqlalchemy import Engine

from conservedb.exchange.importing import import_folder
from conservedb.store.connect import reading
from tests.conftest import TODAY

FOLDER = Path(__file__).parent / "messy"
EXPECTED = (Path(__file__).parent / "messy_expected.txt").read_text(encoding="utf-8").splitlines()


def test_every_fault_has_its_sentence_and_nothing_else_is_a_fault(
    new_database: Callable[[str], Engine],
) -> None:
    engine = new_database("messy.db")
    report = import_folder(engine, FOLDER, encoding="cp1252", today=TODAY, who="A. Tester")
    said = [f"fault: {fault.sentence()}" for fault in report.faults]
    said += [f"notice: {notice.sentence()}" for notice in report.notices]
    unmatched = [line for line in EXPECTED if not any(s.startswith(line) for s in said)]
    unexpected = [s for s in said if not any(s.startswith(line) for line in EXPECTED)]
    assert (unmatched, unexpected) == ([], [])
    assert len(said) == len(EXPECTED)
    assert not report.written
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM person").scalar() == 0


def test_read_as_utf_8_the_bytes_are_named(new_database: Callable[[str], Engine]) -> None:
    report = import_folder(new_database("messy.db"), FOLDER, today=TODAY, who="A. Tester")
    assert any(
        f.file == "people.csv" and f.row == 3 and "--encoding cp1252" in f.remedy
        for f in report.faults
    )


def test_the_good_rows_can_be_kept(new_database: Callable[[str], Engine], tmp_path: Path) -> None:
    import shutil

    folder = tmp_path / "messy"
    shutil.copytree(FOLDER, folder)
    engine = new_database("messy.db")
    report = import_folder(
        engine, folder, encoding="cp1252", keep_good=True, today=TODAY, who="A. Tester"
    )
    assert report.written
    assert all(c.rows == c.added + c.changed + c.unchanged + c.refused for c in report.counts)
    refused = {c.file: c.refused for c in report.counts}
    assert refused["people.csv"] == 0
    assert refused["layers.csv"] == 10  # all hang on the basin of "1,5 t" or on surface F1
    with reading(engine) as connection:
        kept = connection.exec_driver_sql("SELECT mark FROM component ORDER BY 1").scalars().all()
        assert connection.exec_driver_sql("SELECT count(*) FROM person").scalar() == 4
    assert kept == ["B", "B1"]
