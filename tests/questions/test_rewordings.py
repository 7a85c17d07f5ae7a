"""What was amended says in place how it read before; what was withdrawn is listed."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import amend
from conservedb.exchange.entering import enter
from conservedb.exchange.merging import merge
from conservedb.exchange.undoing import take_back
from conservedb.questions.answers import HistoryRow, PlaceAnswer
from conservedb.questions.asof import as_of
from conservedb.questions.history import history
from conservedb.questions.place import place
from conservedb.questions.rewordings import LISTS, rewordings
from conservedb.questions.withdrawn import withdrawn
from conservedb.questions.wording import reworded
from conservedb.recording.withdrawing import withdraw
from conservedb.records.every import metadata
from conservedb.store.connect import raw_of, reading, writing
from conservedb.store.log import Author
from conservedb.store.past import tables_of
from tests.cli.conftest import Command, conservedb
from tests.conftest import TODAY
from tests.nasty import NASTY
from tests.recording.conftest import ME, OBJECT, engine, entries

__all__ = ["conservedb", "engine"]


def change(engine: Engine, subject: str, key: str, cells: dict[str, str], why: str) -> None:
    at = "2026-11-02T10:00:00.000+00:00"
    told = amend(
        engine, subject, OBJECT, key, cells, Author("I. Roe", "amended", why, at=at), TODAY
    )
    assert told.faults == ()


def entry(engine: Engine, ref: str) -> HistoryRow:
    with reading(engine) as connection:
        (found,) = [row for row in history(connection, OBJECT).rows if row.ref == ref]
    return found


def at(engine: Engine, mark: str) -> PlaceAnswer:
    with reading(engine) as connection:
        return place(connection, OBJECT, mark, as_of(None, TODAY))


def test_an_amended_date_says_what_it_was(engine: Engine) -> None:
    assert entry(engine, "I1").amended == ()
    change(engine, "intervention", "I1", {"date": "1990"}, "a slip")
    change(engine, "layer", "L1", {"role": "filler", "note": "thin"}, "seen again")
    assert [reworded(one) for one in entry(engine, "I1").amended] == [
        "2026-11-02 by I. Roe (a slip): date was 1989",
        "2026-11-02 by I. Roe (seen again): layer L1: note was blank; role was adhesive",
    ]
    (layer,) = at(engine, "J1").layers
    assert [reworded(one) for one in layer.amended] == [
        "2026-11-02 by I. Roe (seen again): note was blank; role was adhesive",
        "2026-11-02 by I. Roe (a slip): intervention I1: date was 1989",
    ]
    (other,) = at(engine, "S1").layers
    assert len(other.amended) == 1  # of the step, not of the other layer


def test_words_of_a_date_that_are_read_otherwise(engine: Engine) -> None:
    change(engine, "intervention", "I1", {"date": "in the spring of the fair"}, "as found")
    change(engine, "intervention", "I1", {"date": "in the spring of the fair = 1989-21"}, "decided")
    assert [reworded(one) for one in entry(engine, "I1").amended][1] == (
        "2026-11-02 by I. Roe (decided): date read as was blank"
    )


def test_lists_and_pointers_are_told_by_name(engine: Engine) -> None:
    change(engine, "intervention", "I1", {"people": "Ida Holm (mason); A. Tester"}, "two hands")
    change(engine, "places", "J1", {"mark": "J01", "component": "B2", "other_component": "B1"}, "x")
    (one,) = entry(engine, "I1").amended
    assert reworded(one) == ("2026-11-02 by I. Roe (two hands): person was Ida Holm")
    assert one.fields[0].after == "Ida Holm (mason), A. Tester"
    said = [reworded(one) for one in at(engine, "J01").amended]
    assert said == ["2026-11-02 by I. Roe (x): mark was J1"] or (
        "component was B1" in " ".join(said) and "mark was J1" in " ".join(said)
    )


def test_a_person_who_is_gone_is_still_named(engine: Engine) -> None:
    author = Author("A. Tester", "merged", "one hand")
    assert not merge(engine, "person", "A. Tester", "Ida Holm", author, TODAY).faults
    (one,) = entry(engine, "I1").amended
    assert [(f.name, f.before, f.after) for f in one.fields] == [
        ("person", "Ida Holm", "A. Tester")
    ]


def test_what_was_withdrawn_and_brought_back_was_not_reworded(engine: Engine) -> None:
    with reading(engine) as connection:
        step = connection.exec_driver_sql("SELECT id FROM intervention").scalar_one()
    with writing(engine, Author("A. Tester", "withdrawn", "another object")) as connection:
        withdraw(connection, "intervention", step, together=True)
    with reading(engine) as connection:
        gone = withdrawn(connection, OBJECT).records
    assert {one.what for one in gone} == {"intervention I1", "layer L1", "layer L2"}
    assert {(one.who, one.reason) for one in gone} == {("A. Tester", "another object")}
    said = {one.what: {f.name: f.before for f in one.fields} for one in gone}
    assert said["layer L1"]["role"] == "adhesive" and said["layer L1"]["place"] == "J1"
    take_back(engine, "A. Tester")
    with reading(engine) as connection:
        assert withdrawn(connection, OBJECT).records == ()
    assert entry(engine, "I1").amended == ()


@pytest.mark.parametrize("text", NASTY)
def test_nasty_text_is_told_as_it_was(engine: Engine, text: str) -> None:
    change(engine, "layer", "L1", {"note": text}, text)
    change(engine, "layer", "L1", {"note": "plain"}, text)
    first, second = (at(engine, "J1").layers[0]).amended
    assert second.fields[0].before == text
    assert first.reason == text.strip()


def test_the_lists_are_those_of_the_tables() -> None:
    """`LISTS` is written out so that few tables are loaded; it must not fall behind."""
    for table in (*LISTS, "removal", "joint_event", "place", "object"):
        found = tuple(name for name in tables_of(table) if name not in (table, "layer_side"))
        assert LISTS.get(table, ()) == found
    assert set(LISTS) <= set(metadata.tables)


def test_one_look_for_all_that_was_never_amended(engine: Engine) -> None:
    """Nothing but the one statement is asked: no record is looked up by itself."""
    asked: list[str] = []
    with reading(engine) as connection:
        connection.begin()
        raw_of(connection).set_trace_callback(asked.append)
        assert rewordings(connection, {"layer": range(1, 2000), "intervention": [1]}) == {}
        assert rewordings(connection, {}) == {}
    assert len([sql for sql in asked if sql.startswith("SELECT")]) == 1


@pytest.fixture
def ask(conservedb: Command, engine: Engine, tmp_path: Path) -> Callable[..., object]:
    change(engine, "layer", "L1", {"note": "x\x1b[2J"}, "why [b]")
    change(engine, "layer", "L1", {"note": "y"}, "a slip")
    removal = entries(removals=[{"ref": "R1", "layer": "L2", "extent": "all", "cause": "[b"}])
    assert not enter(engine, lambda _: removal, ME, TODAY).faults
    with writing(engine, Author("A. Tester", "withdrawn", "a slip")) as connection:
        withdraw(connection, "removal", 1)
    engine.dispose()
    return lambda *arguments: conservedb(*arguments, "--db", str(tmp_path / "department.db"))


def test_the_commands_tell_it(ask: Command) -> None:
    for command in (("place", OBJECT, "J1"), ("history", OBJECT)):
        told = ask(*command)
        assert "amended: 2026-11-02 by I. Roe (a slip): " in told.out
        assert "note was x␛[2J" in told.out and "\x1b" not in told.out
    layer = ask("place", OBJECT, "J1", "--json").json["layers"][0]
    assert layer["amended"][1]["fields"] == [{"name": "note", "before": "x\x1b[2J", "after": "y"}]
    told = ask("history", OBJECT, "--withdrawn")
    assert "withdrawn: removal R1, " in told.out and "cause: [b" in told.out
    gone = ask("history", OBJECT, "--withdrawn", "--json").json["withdrawn"]
    assert (gone[0]["what"], gone[0]["reason"]) == ("removal R1", "a slip")
    assert ask("history", OBJECT, "J1", "--withdrawn").status == 2
