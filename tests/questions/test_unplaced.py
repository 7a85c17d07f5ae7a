"""What is said of parts and treatments, and layers nobody placed, stay in view on the object."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from sqlalchemy import Engine

from conservedb.exchange.importing import import_folder
from conservedb.questions.asof import as_of
from conservedb.questions.objects import object_on
from conservedb.store.connect import reading
from tests.conftest import TODAY

TABLES = {
    "objects": "number,title,made\nN.1,Fountain,1741\n",
    "components": "object,mark,made\nN.1,B1,1741\n",
    "places": "object,mark,kind,component\nN.1,S1,surface,B1\n",
    "treatments": "object,ref,title\nN.1,T1,move\n",
    "layers": "object,place,ref,date,role\nN.1,,L1,1900,wax\nN.1,S1,L2,1900,paint\n",
    "statements": "table,object,ref,field,value,followed\n"
    "component,N.1,B1,made,1901,no\ntreatment,N.1,T1,lead,unknown,no\nobject,N.1,,made,1750,no\n",
}


def test_they_stay_in_view(new_database: Callable[[str], Engine], tmp_path: Path) -> None:
    for name, text in TABLES.items():
        (tmp_path / f"{name}.csv").write_text(text, encoding="utf-8")
    (tmp_path / "test.db").unlink(missing_ok=True)
    engine = new_database("unplaced.db")
    report = import_folder(engine, tmp_path, today=TODAY, who="A. Tester")
    assert report.written, [fault.sentence() for fault in report.faults]
    with reading(engine) as connection:
        answer = object_on(connection, "N.1", as_of(None, TODAY))
    stated = {(rival.subject, rival.of, rival.value) for rival in answer.rivals}
    assert stated == {
        ("component", "B1", "1901"),
        ("treatment", "T1", "unknown"),
        ("object", "", "1750"),
    }
    assert [(hit.mark, hit.detail) for hit in answer.unplaced] == [("L1", "wax")]
