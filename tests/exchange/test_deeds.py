"""A step at the bench: over one place, over twelve, taken away, and the same as last time."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from sqlalchemy import Engine

from conservedb.exchange.deed_places import all_like, places_where
from conservedb.exchange.deeds import (
    Removing,
    Step,
    compose_removing,
    compose_simple,
    compose_step,
)
from conservedb.exchange.entering import Refs, Written, enter
from conservedb.exchange.last_time import again, last_used
from conservedb.exchange.told import told
from conservedb.questions.answers import NoSuch
from conservedb.store.connect import raw_of, reading
from conservedb.store.log import Author
from conservedb.store.verify import verify
from tests.conftest import TODAY
from tests.exchange.bench import ME, OBJECT, TWELVE, cells, count, entries, fill
from tests.nasty import NASTY

STEP = Step(OBJECT, "consolidate", date="2026-10-30", material="paraloid b-72", batch="")


@pytest.fixture
def engine(new_database: Callable[[str], Engine]) -> Engine:
    return fill(new_database("bench.db"))


def record(engine: Engine, step: Step, who: str = "A. Tester") -> Written:
    return enter(engine, lambda refs: compose_step(refs, step, who, TODAY), ME, TODAY)


def sentences(engine: Engine, step: Step) -> tuple[str, ...]:
    """What is said of a step that cannot be written."""
    made = []

    def compose(refs: Refs) -> list[object]:
        made.extend(compose_step(refs, step, "A. Tester", TODAY))
        return list(made)

    written = enter(engine, compose, ME, TODAY)  # type: ignore[arg-type]
    return told(written.faults, made)


def test_a_step_over_twelve_places_gives_each_its_layer_and_says_so(engine: Engine) -> None:
    step = replace(STEP, places=TWELVE, agent="acetone", form="swab", concentration="5 %")
    written = record(engine, step)
    assert written.faults == ()
    with reading(engine) as connection:
        done = cells(connection, "interventions", "I2")
        laid = [cells(connection, "layers", f"L{number}") for number in range(3, 15)]
        used = cells(connection, "agents", "G1")
    assert done["recorded_over"] == "12"
    assert {one["recorded_over"] for one in laid} == {"12"}
    assert [one["place"] for one in laid] == list(TWELVE)
    assert {(one["role"], one["concentration"]) for one in laid} == {("consolidant", "5 %")}
    assert done["people"] == "A. Tester"
    assert (done["date"], done["recorded"], done["recorded_by"]) == (
        "2026-10-30",
        TODAY.isoformat(),
        "A. Tester",
    )
    assert used["place"] == done["places"] == "; ".join(TWELVE)


def test_one_bad_place_among_twelve_is_named_and_nothing_is_written(engine: Engine) -> None:
    before = count(engine, "change")
    (said,) = sentences(engine, replace(STEP, places=(*TWELVE[:11], "J99")))
    assert said.startswith("J99: is no place on record")
    assert count(engine, "change") == before
    assert count(engine, "layer") == 2
    assert count(engine, "person") == 1


def test_a_bad_field_is_told_once_with_the_places(engine: Engine) -> None:
    said = sentences(engine, replace(STEP, places=("J01", "J02"), cycles="many"))
    assert said == (
        'J01, J02: cycles "many" is not a whole number; write digits only, such as "3" or "-1"',
    )


def test_layers_go_next_outward_of_what_is_on_record(engine: Engine) -> None:
    assert not record(engine, replace(STEP, places=("J01", "J02", "J03"))).faults
    with reading(engine) as connection:
        stacks = [cells(connection, "layers", ref)["stack"] for ref in ("L3", "L4", "L5")]
    # above 3; beside a layer whose place in the build-up is not known; first
    assert stacks == ["4", "", "0"]


def test_a_place_named_twice_gets_one_layer(engine: Engine) -> None:
    assert not record(engine, replace(STEP, places=("J03", "j03 ", ""))).faults
    with reading(engine) as connection:
        assert cells(connection, "interventions", "I2")["recorded_over"] == ""
    assert count(engine, "layer") == 3


def test_components_are_consolidated_at_the_one_body_of_each(engine: Engine) -> None:
    assert not record(engine, replace(STEP, components=("B01", "b02"))).faults
    with reading(engine) as connection:
        assert cells(connection, "layers", "L4")["place"] == "M2"
        assert cells(connection, "interventions", "I2")["recorded_over"] == "2"
    places = count(engine, "place")
    written = record(engine, replace(STEP, components=("B01", "B88", "B03", "B99")))
    assert [fault.value for fault in written.faults] == ["B88", "B99"]  # before anything is kept
    assert count(engine, "place") == places


def test_a_component_without_a_body_on_record_gets_one(engine: Engine) -> None:
    """Twelve components, of which two bear a body on record: each has a layer of its own."""
    taken = entries(places=[{"mark": "B03 body", "kind": "body", "component": "B04"}])
    assert not enter(engine, lambda _: taken, ME, TODAY).faults
    twelve = tuple(f"B{number:02}" for number in range(1, 13))
    before = count(engine, "layer")
    assert not record(engine, replace(STEP, components=twelve)).faults
    assert count(engine, "layer") == before + 12
    with reading(engine) as connection:
        assert cells(connection, "places", "B03 body 2")["component"] == "B03"
        assert cells(connection, "places", "B05 body")["kind"] == "body"
        stacks = raw_of(connection).execute(
            "SELECT l.stack FROM layer l JOIN place p ON p.id = l.place_id WHERE p.mark = ?",
            ("B05 body",),
        )
        assert stacks.fetchall() == [(0,)]


def test_a_material_without_a_place_is_refused(engine: Engine) -> None:
    (fault,) = record(engine, STEP).faults
    assert "names no place" in fault.sentence()


def test_a_batch_says_what_is_laid(engine: Engine) -> None:
    batch = {
        "ref": "BATCH-7",
        "material": "paraloid b-72",
        "concentration": "7 %",
        "carrier": "acetone",
    }
    assert not enter(engine, lambda _: entries(batches=[batch]), ME, TODAY).faults
    step = Step(
        OBJECT, "coat", places=("S1",), batch="BATCH-7", carrier="ethanol", date="2026-10-30"
    )
    assert not record(engine, step).faults
    with reading(engine) as connection:
        laid = cells(connection, "layers", "L3")
    assert laid["material"].startswith("paraloid b-72")
    assert (laid["batch"], laid["concentration"], laid["carrier"]) == ("BATCH-7", "7 %", "ethanol")
    assert sentences(engine, replace(step, batch="BATCH-8")) == (
        'S1: batch "BATCH-8" is no batch on record; did you mean BATCH-7?',
    )


def test_a_new_ref_does_not_follow_that_of_a_year(engine: Engine) -> None:
    of_a_year = [{"ref": "1989/1"}, {"ref": "I1989-7"}, {"ref": "I1989-8"}, {"ref": "I1989-9"}]
    assert not enter(engine, lambda _: entries(interventions=of_a_year), ME, TODAY).faults
    assert record(engine, replace(STEP, places=("J03",))).keys[1] == "I2"


def test_cleaning_lays_nothing(engine: Engine) -> None:
    step = Step(OBJECT, "clean", components=("B01", "B02"), agent="acetone", people="Ida Holm (x)")
    assert not record(engine, step).faults
    assert count(engine, "layer") == 2
    with reading(engine) as connection:
        done = cells(connection, "interventions", "I2")
    assert (done["people"], done["recorded_over"]) == ("Ida Holm (x)", "2")


def test_what_another_person_did_is_not_documented_by_the_maker(engine: Engine) -> None:
    assert not record(engine, replace(STEP, places=("J03",), people="Ida Holm")).faults
    assert not record(engine, replace(STEP, places=("J04",))).faults
    with reading(engine) as connection:
        known = [cells(connection, "layers", ref)["identified"] for ref in ("L3", "L4")]
    assert known == ["", "documented by the maker"]


def test_a_removal_in_part_at_two_joints(engine: Engine) -> None:
    removing = Removing(
        OBJECT, layers=("L1", "L2"), extent="part", kept_what="chips", kept_where="box 4",
        residue="grey film", residue_side="both",
    )  # fmt: skip
    written = enter(engine, lambda refs: compose_removing(refs, removing, "Z", TODAY), ME, TODAY)
    assert written.faults == ()
    with reading(engine) as connection:
        done = cells(connection, "interventions", "I2")
        gone = cells(connection, "removals", "R2")
    assert (done["kind"], done["places"]) == ("remove earlier work", "J01; J02")
    assert done["recorded_over"] == "2"
    assert (gone["layer"], gone["extent"], gone["kept_where"]) == ("L2", "part", "box 4")
    assert count(engine, "joint_event") == 0
    wrong = replace(removing, layers=("L1", "L77"))
    before = count(engine, "change")
    made = []

    def compose(refs: Refs) -> list[object]:
        made.extend(compose_removing(refs, wrong, "Z", TODAY))
        return list(made)

    faults = enter(engine, compose, ME, TODAY).faults  # type: ignore[arg-type]
    assert any(said.startswith("L77: is no layer on record") for said in told(faults, made))
    assert count(engine, "change") == before


def test_a_reading_in_a_few_words(engine: Engine) -> None:
    reading_ = {"place": "J01", "quantity": "crack width", "value": "0.4", "unit": "mm"}
    written = enter(
        engine,
        lambda refs: compose_simple(refs, "readings", OBJECT, reading_, "A. Tester"),
        ME,
        TODAY,
    )
    assert written.faults == ()
    with reading(engine) as connection:
        kept = cells(connection, "readings", "M1")
    assert (kept["people"], kept["value"]) == ("A. Tester", "0.4")


def test_the_last_material_and_recipe_are_taken_over(engine: Engine) -> None:
    first = replace(
        STEP, places=("J03",), concentration="3 %", carrier="acetone", agent="ethanol",
        form="swab", cleared="yes", uptake_g="2", note="slow",
    )  # fmt: skip
    assert not record(engine, first).faults
    theirs = replace(STEP, places=("J04",), concentration="9 %", people="Ida Holm")
    assert not record(engine, theirs).faults
    with reading(engine) as connection:
        mine = last_used(connection, OBJECT, "consolidate", "a. tester")
        anybody = last_used(connection, OBJECT, "consolidate", "Nobody")
        assert last_used(connection, OBJECT, "desalinate", "A. Tester") is None
    assert mine is not None
    assert anybody is not None
    assert (mine.places, mine.concentration, mine.agent, mine.cleared) == (
        ("J03",), "3 %", "ethanol", "yes",
    )  # fmt: skip
    assert anybody.concentration == "9 %"
    next_one = again(mine, ("J05",), TODAY)
    assert (next_one.date, next_one.note, next_one.uptake_g, next_one.cleared) == (
        TODAY.isoformat(), "", "", "",
    )  # fmt: skip
    assert not record(engine, next_one).faults
    with reading(engine) as connection:
        laid = cells(connection, "layers", "L5")
        assert (laid["place"], laid["carrier"]) == ("J05", "acetone")


def test_places_are_found_by_likeness_and_by_words(engine: Engine) -> None:
    pin = {"mark": "J20", "kind": "joint", "component": "B01", "other_component": "K1"}
    enter(engine, lambda _: entries(places=[pin]), ME, TODAY)
    with reading(engine) as connection:
        assert all_like(connection, OBJECT, "j05") == TWELVE
        assert all_like(connection, OBJECT, "J20") == ("J20",)
        blocks = all_like(connection, OBJECT, "b04")
        assert blocks == tuple(f"B{number:02}" for number in range(1, 14))
        assert places_where(connection, OBJECT, "LIP lime") == ("S1",)
        assert places_where(connection, OBJECT, "bed brass") == ()
        assert places_where(connection, OBJECT, "brass") == ("J20",)
        assert places_where(connection, OBJECT, " ") == ()
        with pytest.raises(NoSuch, match="J5"):
            all_like(connection, OBJECT, "J5")


@pytest.mark.parametrize("text", [text for text in NASTY if "\0" not in text])
def test_any_text_in_any_field_is_kept_or_refused_with_a_sentence(
    engine: Engine, text: str
) -> None:
    step = replace(STEP, places=("J03", "J04"), technique=text, note=text, carrier=text, role=text)
    who = f"N {text}".strip()
    author = Author(who, "recorded")
    written = enter(engine, lambda refs: compose_step(refs, step, who, TODAY), author, TODAY)
    if written.faults:  # a name of such characters; the rest is taken
        assert all("\n" not in fault.reason for fault in written.faults)
        written = record(engine, step)
    assert written.faults == ()
    with reading(engine) as connection:
        done = cells(connection, "interventions", "I2")
        assert done["technique"] == done["note"] == text or not text.strip()
        assert list(verify(raw_of(connection))) == []
    assert sentences(engine, replace(step, places=(f"Q{text}",)))


# -- what is refused, and what is only told -----------------------------------------------------


def test_every_unknown_mark_is_named(engine: Engine) -> None:
    step = Step(OBJECT, "clean", date="2026-10-30", places=("J01", "J91", "J92"), agent="acetone")
    faults = record(engine, step).faults
    assert {fault.value for fault in faults if fault.column == "places"} == {"J91", "J92"}


@pytest.mark.parametrize("cell", [";", " ;; ", ";;"])
def test_a_list_of_nothing_is_refused(engine: Engine, cell: str) -> None:
    given = entries(interventions=[{"ref": "I9", "kind": "clean", "places": cell}])
    (fault,) = enter(engine, lambda _: given, ME, TODAY).faults
    assert (fault.column, fault.reason) == ("places", "names nothing")


@pytest.mark.parametrize(
    ("rows", "refused"),
    [
        ({"layers": [{"ref": "L9", "place": "S1", "side": "A"}]}, True),
        ({"layers": [{"ref": "L9", "place": "J01", "side": "A"}]}, False),
        ({"layers": [{"ref": "L9", "place": "S1; J01", "side": "A"}]}, False),
        ({"layers": [{"ref": "L9", "place": "S1"}]}, False),
        (
            {
                "layers": [{"ref": "L9", "place": "S1"}],
                "sightings": [{"layer": "L9", "date": "2020", "result": "seen", "side": "B"}],
            },
            True,
        ),
    ],
)
def test_only_a_joint_has_sides(
    engine: Engine, rows: dict[str, list[dict[str, str]]], refused: bool
) -> None:
    faults = enter(engine, lambda _: entries(**rows), ME, TODAY).faults
    assert bool(faults) is refused
    assert all("side of a surface" in fault.reason for fault in faults)


@pytest.mark.parametrize(
    ("quantity", "unit", "odd"),
    [
        ("crack width", "mm", False),
        ("Crack  Width", "g", True),
        ("conductivity", "\u03bcS/cm", False),
        ("conductivity", "\u00b5S / cm", False),
        ("conductivity", "mm", True),
        ("loudness", "dB", False),
    ],
)
def test_a_unit_that_does_not_go_with_the_quantity_is_told(
    engine: Engine, quantity: str, unit: str, odd: bool
) -> None:
    row = {"place": "J01", "quantity": quantity, "value": "0.4", "unit": unit}
    written = enter(engine, lambda _: entries(readings=[row]), ME, TODAY)
    assert written.set_number is not None
    assert bool([one for one in written.notices if "is no unit in which" in one.reason]) is odd
