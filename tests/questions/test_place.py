"""What lies at a place: states, evidence, doubt, and the sentence that sums it up."""

from __future__ import annotations

from dataclasses import fields

import pytest
from sqlalchemy import Connection

from conservedb.dates import day_number
from conservedb.questions import layer_records
from conservedb.questions.answers import Layer, NoSuch, PlaceAnswer
from conservedb.questions.place import place
from tests.questions.conftest import day


def ask(connection: Connection, mark: str, on: str = "today") -> PlaceAnswer:
    return place(connection, "Q.1", mark, day(on))


def layer(answer: PlaceAnswer, ref: str) -> Layer:
    return next(one for one in answer.layers if one.ref == ref)


def test_a_joint_today(connection: Connection) -> None:
    answer = ask(connection, "J1")
    assert (answer.object, answer.title, answer.place) == ("Q.1", "Fountain", "J1")
    assert [(s.side, s.component, s.material) for s in answer.sides] == [
        ("A", "B1", "Limestone"),
        ("B", "B2", "Limestone"),
    ]
    assert [one.ref for one in answer.layers] == ["L1", "L2", "L3"]
    assert [one.state for one in answer.layers] == ["present", "reduced", "present"]
    assert answer.load_kg == 85
    assert answer.load_source is not None and answer.load_source.ref == "REP"
    assert answer.summary == (
        "Found moving 15 September 2026; barrier not recorded; carries 85 kg;"
        " two cramps suspected, one pin; last seen 15 September 2026"
    )


def test_before_and_after(connection: Connection) -> None:
    states = {
        on: [one.state for one in ask(connection, "J1", on).layers]
        for on in ("1740", "1900", "1934", "1950", "1990")
    }
    assert states == {
        "1740": ["not yet", "not yet", "not yet"],
        "1900": ["present", "not yet", "not yet"],
        "1934": ["present", "present", "not yet"],
        "1950": ["present", "present", "not yet"],
        "1990": ["present", "present", "present"],
    }
    halfway = layer(ask(connection, "J1", "1934-06-01"), "L2")
    assert (halfway.state, halfway.possible) == ("uncertain", ("not yet", "present"))
    assert halfway.settle == "find the date it came, between 1934-01-01 and 1934-12-31"


def test_a_removal_on_one_side_acts_on_that_side(connection: Connection) -> None:
    pointing = layer(ask(connection, "J1"), "L2")
    assert {side: of.state for side, of in pointing.by_side.items()} == {
        "A": "reduced",
        "B": "present",
    }
    (taken,) = pointing.removed
    assert (taken.extent, taken.side, taken.date.words) == ("part", "A", "2012-05")


def test_deeds_carry_hands_intervention_and_source(connection: Connection) -> None:
    answer = ask(connection, "J1")
    epoxy, bedding = layer(answer, "L3"), layer(answer, "L1")
    assert [(p.name, p.role) for p in epoxy.laid.people] == [("Ines Calder", "conservator")]
    assert (epoxy.laid.intervention, epoxy.laid.technique) == ("i1989", "injected")
    assert epoxy.laid.date.edtf == "1989-05-18"  # its own date is blank: that of the deed
    assert [one.ref for one in epoxy.sources] == ["REP", "LET"]
    (attempt,) = bedding.removed
    assert (attempt.extent, attempt.intervention) == ("attempted", "i1989")
    assert bedding.state == "present"  # an attempt changes nothing


def test_rivals_stay_in_view(connection: Connection) -> None:
    answer = ask(connection, "J1")
    (rival,) = layer(answer, "L3").rivals
    assert (rival.subject, rival.field, rival.value) == ("layer", "material", "shellac")
    assert (rival.followed, rival.decided_by, rival.reason) == ("no", "Ines Calder", "too hard")
    assert rival.source is not None and (rival.source.ref, rival.source.page) == ("LET", "3")
    assert [p.name for p in rival.people] == ["Walter Orde"]
    assert [one.value for one in layer(answer, "L2").rivals] == ["Nobody"]  # of its intervention
    assert [one.value for one in answer.rivals] == ["110"]


def test_last_seen_is_not_after_the_day(connection: Connection) -> None:
    def seen(on: str) -> str:
        found = layer(ask(connection, "J1", on), "L3").last_seen
        return found.date.edtf if found else ""

    assert [seen(on) for on in ("2000", "2012-05-08", "2012-05-09", "2020", "2026-09-15")] == [
        "",
        "",
        "2012-05-09",
        "2012-05-09",
        "2026-09-15",
    ]
    bedding = layer(ask(connection, "J1"), "L1")
    assert bedding.last_seen is not None
    assert bedding.last_seen.date.edtf == "2012-05-09"  # "not accessible" saw nothing
    whole = ask(connection, "J1", "2020").last_seen
    assert whole is not None and whole.date.edtf == "2012-05-09"


def test_the_condition_of_a_joint(connection: Connection) -> None:
    conditions = {
        on: ask(connection, "J1", on).condition for on in ("1700", "1741-06-01", "1950", "today")
    }
    assert [c.state if c else None for c in conditions.values()] == [
        "not recorded",
        "uncertain",
        "closed",
        "moving",
    ]
    doubtful = conditions["1741-06-01"]
    assert doubtful is not None and doubtful.possible == ("not recorded", "closed")
    closed = conditions["1950"]
    assert closed is not None and closed.since is not None
    assert closed.since.edtf == "1741"  # the event is undated: that of its intervention
    assert ask(connection, "S1").condition is None


def test_a_joint_across_one_component(connection: Connection) -> None:
    answer = ask(connection, "J2")
    assert [(s.side, s.component) for s in answer.sides] == [("A", "B2"), ("B", "B2")]
    assert layer(answer, "L4").remains == "split unknown"
    assert layer(ask(connection, "J2", "2000"), "L4").remains == ""
    assert answer.summary == (
        "Opened May 2012; barrier not recorded; remains of one older layer;"
        " load not recorded: treat as loaded; last seen 20 May 2012"
    )


def test_fixings_and_their_own_joints(connection: Connection) -> None:
    fixings = {one.component: one for one in ask(connection, "J1").fixings}
    assert {mark: one.state for mark, one in fixings.items()} == {
        "K1": "present",
        "K2": "present",
        "N9": "present",
    }
    assert fixings["K1"].joints == ("J10",)
    assert fixings["K1"].known_from == "suspected"
    before = {one.component: one.state for one in ask(connection, "J1", "1980").fixings}
    assert before == {"K1": "present", "K2": "present", "N9": "not yet"}


def test_a_layer_that_may_lie_at_several_places(connection: Connection) -> None:
    for mark in ("S1", "M1"):
        doubtful = layer(ask(connection, mark, "1980"), "L6")
        assert (doubtful.state, doubtful.possible) == ("uncertain", ("present",))
        assert doubtful.candidates == ("S1", "M1")
        assert doubtful.settle == "establish at which of S1, M1 it lies"


def test_build_up_order_and_words_as_found(connection: Connection) -> None:
    answer = ask(connection, "S1")
    assert [one.stack for one in answer.layers] == [-1, 0, 1, 5]
    words = answer.layers[0]
    assert (words.material, words.material_words) == ("shellac", "some resin")
    assert answer.layers[2].material is None and answer.layers[2].material_name == ""


def test_a_qualified_date_is_said(connection: Connection) -> None:
    answer = layer(ask(connection, "S1", "1980"), "L5")
    assert (answer.state, answer.qualified) == ("present", "date approximate")
    assert layer(ask(connection, "S1"), "L5").state == "gone"
    assert layer(ask(connection, "S1", "1995-06-01"), "L5").possible == ("present", "gone")


def test_a_span_tells_what_held_throughout(connection: Connection) -> None:
    answer = ask(connection, "S1", "1985/2005")
    held = layer(answer, "L5").held
    assert held is not None
    assert (held.throughout, held.at_some_time, held.possibly) == (
        (),
        ("present", "gone"),
        ("present", "gone"),
    )
    assert layer(answer, "L5").state == "gone"  # at the last day
    assert layer(ask(connection, "S1", "1985-01-01"), "L5").held is None
    assert answer.on.first == day_number(1985) and answer.on.is_span


def test_agents_not_shown_to_be_cleared_are_possible_residues(connection: Connection) -> None:
    answer = ask(connection, "S1")
    assert [(r.ref, r.material, r.date.words) for r in answer.residues] == [
        ("g1", "acetone", "1980")
    ]
    assert ask(connection, "S1", "1979").residues == ()
    assert ask(connection, "J1").residues == ()


def test_warnings_nearest_first(connection: Connection) -> None:
    assert [w.text for w in ask(connection, "S1").warnings] == [
        "Not by the lip",
        "Salts",
        "Lead in joints",
    ]
    assert ask(connection, "J2").warnings[0].text == "Lead in joints"


def test_number_and_mark_are_compared_without_case_and_accents(connection: Connection) -> None:
    assert place(connection, " q.1 ", "j1", day("today")).place == "J1"


def test_what_is_not_there_is_named_with_what_comes_nearest(connection: Connection) -> None:
    with pytest.raises(NoSuch, match=r"no object 'Q\.11' on record; did you mean Q\.1"):
        place(connection, "Q.11", "J1", day("today"))
    with pytest.raises(NoSuch) as missing:
        ask(connection, "J01")
    assert missing.value.nearest[0] == "J1"
    with pytest.raises(NoSuch, match=r"no location of Q\.1 'B1' on record"):
        ask(connection, "B1")


def test_the_plain_fields_of_a_layer_come_first_in_their_order() -> None:
    names = layer_records.LAYERS.names[: layer_records.PLAIN]
    assert names == tuple(field.name for field in fields(Layer))[: layer_records.PLAIN]
