"""Where an object was kept when something was done to it, as far as that is on record.

The rule that a stay lasts until another had certainly begun is that of `kept_on`.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.importing import import_folder
from conservedb.knowledge.research_words import read
from conservedb.questions.research import rows
from conservedb.store.connect import reading
from tests.conftest import TODAY

TABLES = {
    "objects": "number,whereabouts\nE.1,Quay\nE.2,\n",
    "components": "object,mark\nE.1,B\nE.1,K\nE.2,B\n",
    "places": """object,mark,kind,component
E.1,S,surface,B
E.1,T,surface,K
E.2,S,surface,B
""",
    "climates": """key,room,use,since
quay,Quay,outdoors,
store,Store 1,storage,
gallery,Gallery 4,display,
shed,Shed,storage,1950
""",
    "whereabouts": """object,ref,component,place_name,since,until
E.1,h1,,"Quay, north wall",1868,1958-04
E.1,h2,,"Store 1, bay 2",1958-04,
E.1,h3,K,"Gallery 4, case 2",1990,
E.2,h1,,Quay,c. 1868,1958
E.2,h2,,Shed,1930,1990
E.2,h3,,Store 10,1991,
""",
    "layers": """object,place,ref,date,role
E.1,S,l1900,1900,wax
E.1,S,l1958,1958,wax
E.1,S,l2000,2000,wax
E.1,T,k2000,2000,wax
E.1,S; T,either,2000,wax
E.1,S,about,c. 1900,wax
E.1,S,before,1850,wax
E.1,S,undated,,wax
E.2,S,m1900,1900,wax
E.2,S,m1940,1940,wax
E.2,S,m1970,1970,wax
E.2,S,m2000,2000,wax
""",
}


@pytest.fixture
def kept(new_database: Callable[[str], Engine], tmp_path: Path) -> Engine:
    folder = tmp_path / "tables"
    folder.mkdir()
    for name, text in TABLES.items():
        (folder / f"{name}.csv").write_text(text, encoding="utf-8")
    engine = new_database("kept.db")
    report = import_folder(engine, folder, today=TODAY, who="A. Tester")
    assert report.written, [fault.sentence() for fault in report.faults]
    return engine


def answer(engine: Engine, use: str) -> tuple[set[str], set[str]]:
    """The layers that were certainly, and possibly, laid in such a room."""
    with reading(engine) as connection:
        found = list(rows(connection, read(f"environment: {use}"), TODAY))
    return (
        {row.ref for row in found if row.sureness == "certain"},
        {row.ref for row in found if row.sureness == "possible"},
    )


NEVER_KNOWN = {"about", "before", "undated", "l1958", "m1900", "m1940", "m2000"}
"""Approximate or no dates, before any stay, a year that no one stay covers, a stay approximately
begun, two stays at once, a room of no use on record ("Store 10" is not in "Store 1")."""


def test_outdoors(kept: Engine) -> None:
    assert answer(kept, "outdoors") == ({"l1900"}, NEVER_KNOWN)


def test_storage(kept: Engine) -> None:
    certain, possible = answer(kept, "storage")
    assert certain == {"l2000", "m1970"}
    assert possible == {"either", *NEVER_KNOWN}


def test_a_part_kept_apart_goes_before_its_object(kept: Engine) -> None:
    assert answer(kept, "display") == ({"k2000"}, {"either", *NEVER_KNOWN})


def test_of_a_use_of_which_no_room_is_known_nothing_is_certain(kept: Engine) -> None:
    assert answer(kept, "transport") == (set(), NEVER_KNOWN)
