"""An object on a day: parts, places, whereabouts, the last examination."""

from __future__ import annotations

from sqlalchemy import Connection

from conservedb.questions.answers import ObjectAnswer
from conservedb.questions.objects import object_on
from conservedb.questions.place import place
from tests.questions.conftest import day


def ask(connection: Connection, on: str = "today", number: str = "Q.1") -> ObjectAnswer:
    return object_on(connection, number, day(on))


def test_head_of_an_object(connection: Connection) -> None:
    answer = ask(connection)
    assert (answer.number, answer.title, answer.maker) == ("Q.1", "Fountain", "A. Mason")
    assert answer.made.edtf == "1741"
    assert [w.text for w in answer.warnings] == ["Lead in joints", "Not by the lip", "Salts"]
    assert [(r.field, r.value) for r in answer.rivals] == [("maker", "B. Other")]


def test_whereabouts_are_those_of_the_day_where_on_record(connection: Connection) -> None:
    assert ask(connection).whereabouts == "Store 3"
    assert ask(connection, "1900").whereabouts == "Custom House terrace"


def test_last_examined_by_the_day(connection: Connection) -> None:
    examined = ask(connection).last_examined
    assert examined is not None and examined.intervention == "i2026"
    assert [p.name for p in examined.people] == ["Ines Calder"]
    assert ask(connection, "2020").last_examined is None


def test_components_in_natural_order_with_their_states(connection: Connection) -> None:
    answer = ask(connection, "1942-06-01")
    assert [c.mark for c in answer.components] == ["B1", "B2", "B2a", "K1", "K2", "N9"]
    states = {c.mark: c.state for c in answer.components}
    assert states["B2a"] == "uncertain"  # lost between 1941 and 1944
    assert states["N9"] == "not yet"
    assert {c.mark: c.state for c in ask(connection).components}["B2a"] == "gone"
    by_mark = {c.mark: c for c in answer.components}
    assert by_mark["B2a"].parent == "B2"
    assert by_mark["K1"].bridges == ("J1",)
    assert by_mark["B2"].qualified == "date approximate"


def test_an_undated_part_is_there_by_the_day_of_its_entry(connection: Connection) -> None:
    box = ask(connection, number="Q.10")
    assert box.components == () and not box.made.recorded
    # B1 is original: as old as the object. K1, K2 are dated.
    assert {c.mark: c.state for c in ask(connection, "1740").components}["B1"] == "not yet"
    assert {c.mark: c.state for c in ask(connection, "1742").components}["B1"] == "present"


def test_places_in_natural_order_with_their_counts(connection: Connection) -> None:
    answer = ask(connection)
    found = {p.mark: (p.certain, p.uncertain, p.condition) for p in answer.places}
    assert list(found) == ["J1", "J2", "J10", "M1", "S1"]
    assert found == {
        "J1": (3, 0, "moving"),
        "J2": (1, 0, "opened"),
        "J10": (0, 0, "not recorded"),
        "M1": (0, 1, ""),
        "S1": (2, 1, ""),
    }


def test_a_layer_that_rests_on_a_qualified_date_is_not_certain(connection: Connection) -> None:
    found = {p.mark: (p.certain, p.uncertain) for p in ask(connection, "1960").places}
    assert found["S1"] == (1, 1)  # L8 in place; L5 "c. 1950"; L6 not yet there


def test_counts_agree_with_the_places_themselves(connection: Connection) -> None:
    for on in ("1741-05-01", "1934-06-01", "1960", "1995-06-01", "today"):
        answer = ask(connection, on)
        for row in answer.places:
            layers = place(connection, "Q.1", row.mark, day(on)).layers
            certain = [
                one
                for one in layers
                if not one.candidates
                and not one.qualified
                and not {"not yet", "gone"} & set(one.possible)
            ]
            there = [one for one in layers if {"present", "reduced"} & set(one.possible)]
            assert (row.certain, row.uncertain) == (len(certain), len(there) - len(certain))


def test_conditions_agree_with_the_places_themselves(connection: Connection) -> None:
    for on in ("1700", "1741-06-01", "1950", "2012-05-10", "today"):
        for row in ask(connection, on).places:
            condition = place(connection, "Q.1", row.mark, day(on)).condition
            assert row.condition == (condition.state if condition else "")
