"""Shipped tables go in, follow the next edition, and leave alone what the department changed."""

from __future__ import annotations

import datetime
import sqlite3
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

from conservedb.reference.edition import EDITION
from conservedb.reference.tables import SUBJECTS, rows
from conservedb.store import log, opening, shipping
from conservedb.store.connect import connect_sqlite
from conservedb.store.create import create
from conservedb.store.opening import open_database
from conservedb.store.shipped_shape import SHAPES
from conservedb.store.upgrade import Upgraded
from conservedb.store.version import HEAD

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

Tables = dict[str, list[dict[str, str]]]
Ship = Callable[[str, Tables], None]

FIRST: Tables = {
    "material_classes": [
        {"key": "acrylic", "name": "acrylic resins", "parent": "polymer"},
        {"key": "polymer", "name": "synthetic polymers"},
    ],
    "materials": [
        {"key": "a1", "name": "Acrylic one", "class": "acrylic", "aliases": "One; Uno"},
        {"key": "thinner", "name": "Thinner", "trade_names": "Thinnex"},
        {"key": "spirit", "name": "Spirit", "behaves_as": "thinner (weaker)"},
    ],
    "material_parts": [{"material": "a1", "part": "thinner", "amount": "20"}],
    "sources": [{"ref": "lit.X", "kind": "literature", "citation": "A Book", "date": "1987"}],
    "hansen": [{"key": "a1.1", "material": "a1", "d": "17", "p": "7.4", "h": "5", "r0": "9"}],
    "solubilities": [
        {
            "key": "a1.s",
            "material": "a1",
            "agent": "thinner 40; spirit 60",
            "effect": "swells",
            "source": "lit.X",
        }
    ],
    "traits": [{"key": "t1", "class": "polymer", "trait": "creeps under load", "holds": "yes"}],
    "periods": [{"key": "p1", "material": "a1", "mark": "first made", "date": "c. 1950"}],
    "hazard_statements": [{"code": "H1", "wording": "Burns", "band": "B"}],
    "hazards": [{"key": "h1", "material": "thinner", "code": "H1"}],
    "rules": [
        {
            "key": "r1",
            "title": "Rule",
            "severity": "warn",
            "judges": "safety",
            "sentence": "Mind.",
        }
    ],
    "settings": [{"name": "creep margin", "value": "15"}],
}


def changed(tables: Tables, subject: str, key: str, **cells: str) -> Tables:
    """The tables with one row in which these cells are others."""
    first = SHAPES[subject].key[0]
    return tables | {
        subject: [row | cells if row[first] == key else row for row in tables[subject]]
    }


@pytest.fixture
def ship(monkeypatch: pytest.MonkeyPatch) -> Ship:
    """Makes the program one that ships these tables as this edition."""

    def as_edition(edition: str, tables: Tables) -> None:
        monkeypatch.setattr(opening, "EDITION", edition)
        monkeypatch.setattr(shipping, "EDITION", edition)
        monkeypatch.setattr(shipping, "SUBJECTS", tuple(tables))
        monkeypatch.setattr(shipping, "rows", tables.__getitem__)

    as_edition("2026-01-01", FIRST)
    return as_edition


@contextmanager
def writing(path: Path) -> Iterator[sqlite3.Connection]:
    raw = connect_sqlite(path)
    raw.execute("BEGIN IMMEDIATE")
    log.open_set(raw, log.Author("A. Tester", "recorded"))
    yield raw
    log.seal(raw)
    raw.execute("COMMIT")
    raw.close()


def ask(path: Path, sql: str) -> list[Any]:
    raw = connect_sqlite(path)
    found = raw.execute(sql).fetchall()
    raw.close()
    return [row[0] if len(row) == 1 else row for row in found]


def opened(path: Path) -> Upgraded | None:
    engine, done = open_database(path)
    engine.dispose()
    return done


@pytest.fixture
def path(tmp_path: Path, ship: Ship) -> Path:
    target = tmp_path / "department.db"
    create(target)
    return target


def test_a_new_database_has_them(path: Path) -> None:
    assert opened(path) is None
    assert ask(path, "SELECT edition FROM database") == ["2026-01-01"]
    assert ask(path, "SELECT DISTINCT entered FROM hansen") == ["2026-01-01"]
    parents = "SELECT c.key, p.key FROM material_class c JOIN material_class p ON p.id=c.parent_id"
    assert ask(path, parents) == [("acrylic", "polymer")]
    assert ask(path, "SELECT alias FROM material_alias ORDER BY position") == ["One", "Uno"]
    assert ask(path, "SELECT alias, alias_folded FROM trade_name") == [("Thinnex", "thinnex")]
    assert ask(path, "SELECT note FROM stand_in") == ["weaker"]
    agent = "SELECT key, share FROM solubility_part JOIN material m ON m.id = material_id"
    assert ask(path, f"{agent} ORDER BY position") == [("thinner", 40.0), ("spirit", 60.0)]
    assert ask(path, "SELECT date_words, date_edtf FROM period") == [("c. 1950", "1950~")]
    assert ask(path, "SELECT d, r0, position FROM hansen") == [(17.0, 9.0, 0)]
    assert ask(path, "SELECT count(*) FROM shipped") == [sum(map(len, FIRST.values()))]
    with writing(path) as raw:
        for subject, of_it in FIRST.items():
            assert len(shipping.as_shipped(raw, subject)) == len(of_it)


def test_the_same_record_has_the_same_uuid_everywhere(tmp_path: Path, ship: Ship) -> None:
    for name in ("a.db", "b.db"):
        create(tmp_path / name)
    both = [ask(tmp_path / name, "SELECT key, uuid FROM material") for name in ("a.db", "b.db")]
    assert both[0] == both[1]


SECOND = changed(FIRST, "materials", "a1", name="Acrylic no. 1", aliases="Uno; Eins")
SECOND = changed(SECOND, "hansen", "a1.1", d="18")
SECOND = changed(SECOND, "solubilities", "a1.s", agent="thinner")
SECOND = changed(SECOND, "settings", "creep margin", value="12")
SECOND = SECOND | {
    "traits": [],
    "materials": [*SECOND["materials"], {"key": "new", "name": "Newcomer"}],
}


def test_a_later_edition_replaces_what_is_as_it_was(path: Path, ship: Ship) -> None:
    before = ask(path, "SELECT uuid, entered FROM hansen")
    ship("2027-01-01", SECOND)
    done = opened(path)
    assert done == Upgraded(
        HEAD,
        HEAD,
        None,
        "reference tables of edition 2027-01-01: records added 1, brought up to date 4",
    )
    assert ask(path, "SELECT name, name_folded FROM material WHERE key = 'a1'") == [
        ("Acrylic no. 1", "acrylic no. 1")
    ]
    assert ask(path, "SELECT alias FROM material_alias ORDER BY position") == ["Uno", "Eins"]
    assert ask(path, "SELECT d FROM hansen") == [18.0]
    assert ask(path, "SELECT uuid, entered FROM hansen") == before
    assert ask(path, "SELECT share FROM solubility_part") == [None]
    assert ask(path, "SELECT value FROM setting") == ["12"]
    assert ask(path, "SELECT key FROM trait") == ["t1"]  # no longer shipped: it stays
    assert ask(path, "PRAGMA foreign_key_check") == []
    assert opened(path) is None
    ship("2028-01-01", FIRST)
    opened(path)
    assert ask(path, "SELECT d FROM hansen") == [17.0]


CHANGES = {
    "a value": ("UPDATE hansen SET d = 16.5", "SELECT d FROM hansen", [16.5]),
    "a name more": (
        "INSERT INTO material_alias VALUES (1, 'Bir', 'bir', 2)",
        "SELECT alias FROM material_alias ORDER BY position",
        ["One", "Uno", "Bir"],
    ),
    "a part of an agent": (
        "UPDATE solubility_part SET share = 50",
        "SELECT share FROM solubility_part",
        [50.0, 50.0],
    ),
    "a setting": ("UPDATE setting SET value = '10'", "SELECT value FROM setting", ["10"]),
}


@pytest.mark.parametrize(("change", "question", "kept"), CHANGES.values(), ids=CHANGES.keys())
def test_what_the_department_changed_stays(
    path: Path, ship: Ship, change: str, question: str, kept: list[Any]
) -> None:
    with writing(path) as raw:
        raw.execute(change)
    ship("2027-01-01", SECOND)
    done = opened(path)
    assert done is not None
    assert done.reference.endswith(
        "brought up to date 3; left as they are, because the department changed them: 1"
    )
    assert ask(path, question) == kept
    ship("2027-02-01", SECOND)
    opened(path)
    assert ask(path, question) == kept


def test_a_file_of_a_newer_edition_is_left_alone(path: Path, ship: Ship) -> None:
    ship("2025-01-01", SECOND)
    before = path.read_bytes()
    assert opened(path) is None
    assert path.read_bytes() == before


def test_a_file_that_may_only_be_read_is_opened_as_it_is(
    path: Path, ship: Ship, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Root may write anywhere, so the refusal to write is simulated by the mode of opening."""
    import conservedb.store.connect as connect

    ship("2027-01-01", SECOND)
    real = connect._prepared
    monkeypatch.setattr(connect, "_prepared", lambda p, mode: real(p, "ro"))
    before = path.read_bytes()
    assert opened(path) is None
    assert path.read_bytes() == before


def test_a_file_that_somebody_is_writing_is_opened_as_it_is(
    path: Path, ship: Ship, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("conservedb.store.connect.BUSY_SECONDS", 0.1)
    ship("2027-01-01", SECOND)
    with writing(path) as raw:
        assert raw.in_transaction
        assert opened(path) is None
    assert opened(path) is not None


def test_an_edition_that_cannot_go_in_keeps_no_file_from_opening(
    tmp_path: Path, ship: Ship
) -> None:
    """The department put a class under another which the next edition puts under the first."""
    path = tmp_path / "ring.db"
    ship("2026-01-01", changed(FIRST, "material_classes", "acrylic", parent=""))
    create(path)
    with writing(path) as raw:
        raw.execute(
            "UPDATE material_class SET parent_id = (SELECT id FROM material_class WHERE key ="
            " 'acrylic') WHERE key = 'polymer'"
        )
    before = ask(path, "SELECT * FROM material_class")
    ship("2027-01-01", changed(FIRST, "materials", "a1", name="Renamed"))
    done = opened(path)
    assert done is not None
    assert done.reference == (
        "the reference tables of edition 2027-01-01 could not be taken in (material_class: a part"
        " cannot contain itself, directly or through others); those on record stay as they are"
    )
    assert ask(path, "SELECT * FROM material_class") == before
    assert ask(path, "SELECT name FROM material WHERE key = 'a1'") == ["Acrylic one"]


OWN: Tables = {"settings": []}
"""An edition without materials, so that the department has keys before the program does."""


@pytest.fixture
def older(tmp_path: Path, ship: Ship) -> Path:
    """A database in which the department bears keys that the next edition ships."""
    ship("2025-01-01", OWN)
    target = tmp_path / "older.db"
    create(target)
    own = "'2020-01-01'"
    with writing(target) as raw:
        for number, statement in enumerate(
            (
                "material_class (id, uuid, entered, key, name) VALUES (1, {}, 'polymer', 'Ours')",
                "material (id, uuid, entered, key, name, class_id) VALUES (1, {}, 'a1', 'Ours', 1)",
                "rule (id, uuid, entered, key, title, severity, judges, sentence)"
                " VALUES (1, {}, 'r1', 'Ours', 'inform', 'conduct', 'Ours.')",
                "setting (id, uuid, entered, name, value) VALUES (1, {}, 'creep margin', '9')",
                "hazard_statement (id, uuid, entered, code, wording, checked_earliest,"
                " checked_latest, checked_flags, checked_derived)"
                " VALUES (1, {}, 'H1', 'Ours', -8000000, 8000000, 0, 'blank')",
                "source (id, uuid, entered, ref, date_earliest, date_latest, date_flags,"
                " date_derived) VALUES (1, {}, 'lit.X', -8000000, 8000000, 0, 'blank')",
            )
        ):
            raw.execute("INSERT INTO " + statement.format(f"'own{number}', {own}"))
    return target


def test_keys_of_the_department_are_its_own(older: Path, ship: Ship) -> None:
    ship("2026-01-01", FIRST)
    done = opened(older)
    assert done is not None
    assert done.reference == (
        "reference tables of edition 2026-01-01: records added 11, brought up to date 0;"
        " material_classes polymer; materials a1: these keys are the department's own, so that"
        " the shipped records are called shipped-KEY; name one of them under behaves_as in"
        " materials.csv where yours behaves as it does;"
        " sources lit.X; hazard_statements H1; rules r1; settings creep margin: the department's"
        " own were kept"
    )
    classes = "SELECT c.key, c.name, p.key FROM material_class c LEFT JOIN material_class p"
    assert ask(older, f"{classes} ON p.id = c.parent_id") == [
        ("polymer", "Ours", None),
        ("acrylic", "acrylic resins", "shipped-polymer"),
        ("shipped-polymer", "synthetic polymers", None),
    ]
    named = "SELECT m.key, m.name FROM material m JOIN"
    assert ask(older, f"{named} hansen ON material_id = m.id") == [("shipped-a1", "Acrylic one")]
    assert ask(older, f"{named} material_part ON material_id = m.id")[0][0] == "shipped-a1"
    assert ask(older, "SELECT name FROM material WHERE key = 'a1'") == ["Ours"]
    assert ask(older, "SELECT statement_id FROM hazard") == [1]
    assert ask(older, "SELECT source_id FROM solubility") == [1]
    assert ask(older, "SELECT title FROM rule UNION SELECT value FROM setting") == ["9", "Ours"]
    assert ask(older, "PRAGMA foreign_key_check") == []
    ship("2027-01-01", SECOND)
    opened(older)
    keys = "SELECT key, name FROM material WHERE key LIKE '%a1' ORDER BY id"
    assert ask(older, keys) == [("a1", "Ours"), ("shipped-a1", "Acrylic no. 1")]


def test_a_shipped_record_brought_by_an_import_is_known_again(older: Path, ship: Ship) -> None:
    """As from the export of a database of a later edition: same UUID, corrected there."""
    ship("2026-01-01", FIRST)
    create(other := older.with_name("other.db"))
    (identity,) = ask(other, "SELECT uuid FROM material WHERE key = 'spirit'")
    with writing(older) as raw:
        raw.execute(
            "INSERT INTO material (uuid, entered, key, name) VALUES (?, '2026-01-01', 'spirit',"
            " 'Corrected')",
            (identity,),
        )
    done = opened(older)
    assert done is not None
    assert "because the department changed them: 1" in done.reference
    assert ask(older, "SELECT name FROM material WHERE key LIKE '%spirit'") == ["Corrected"]


def test_nothing_slow_is_loaded_where_the_edition_is_current(tmp_path: Path) -> None:
    create(tmp_path / "a.db")
    code = (
        "import sys; from pathlib import Path; from conservedb.store.opening import open_database;"
        f"open_database(Path({str(tmp_path / 'a.db')!r}))[0].dispose(); print(*sys.modules)"
    )
    run = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, timeout=60
    )
    loaded = set(run.stdout.split())
    assert "conservedb.reference.edition" in loaded
    assert not {name for name in loaded if name.startswith("conservedb.reference.tab")}
    assert not {name for name in loaded if name.startswith("conservedb.store.ship")}


# -- the tables themselves ----------------------------------------------------------------


def test_every_shipped_subject_can_go_in() -> None:
    assert set(SUBJECTS) <= set(SHAPES)
    assert datetime.date.fromisoformat(EDITION).isoformat() == EDITION


@pytest.mark.parametrize("subject", SUBJECTS)
def test_shipped_keys_tell_rows_apart(subject: str) -> None:
    keys = [tuple(row[header].strip() for header in SHAPES[subject].key) for row in rows(subject)]
    assert all(all(key) for key in keys)
    assert len(set(keys)) == len(keys)
