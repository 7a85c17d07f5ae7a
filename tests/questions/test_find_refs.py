"""Finding by ref, date and registry number, and how much there is of a material."""

from __future__ import annotations

import re

import pytest
from sqlalchemy import Connection, Engine

from conservedb.exchange.amending import amend
from conservedb.exchange.entering import enter
from conservedb.questions import find_refs
from conservedb.questions.answers import Hit
from conservedb.questions.find import find
from conservedb.store.connect import reading
from conservedb.store.log import Author
from conservedb.store.search_tables import SEARCHED
from tests.conftest import TODAY
from tests.recording.conftest import ME, OBJECT, engine, entries

__all__ = ["engine"]
KINDS = {"intervention": "step"}
REFERRED = tuple(one for one in SEARCHED if "ref" in one.names)


def found(connection: Connection, text: str, kind: str) -> list[Hit]:
    return [hit for hit in find(connection, text, most=60).hits if hit.kind == kind]


def told(hit: Hit) -> str:
    return " ".join((hit.object, hit.label, hit.detail, hit.sentence))


@pytest.mark.parametrize("one", REFERRED, ids=lambda one: one.table)
def test_whatever_has_a_ref_is_found_by_it(connection: Connection, one: object) -> None:
    """Every ref that stands in the table, alone, in capitals and begun; also without any words."""
    table = one.table  # type: ignore[attr-defined]
    kind = KINDS.get(table, table.replace("_", " "))
    refs = list(connection.exec_driver_sql(f"SELECT ref FROM {table} LIMIT 20").scalars())
    for ref in refs:
        for typed in (ref, ref.upper(), ref.lower()):
            hits = found(connection, typed, kind)
            assert any(ref in (hit.mark, *told(hit).replace(",", " ").split()) for hit in hits), ref


def test_the_exact_ref_comes_first(connection: Connection) -> None:
    group = find(connection, "L1").groups[0]
    assert (group.kind, group.total) == ("layer", 2)
    assert [(hit.object, hit.sentence) for hit in group.hits] == [("Q.2", "L1"), ("Q.1", "L1")]
    assert find(connection, "s").hits != ()
    assert len(found(connection, "s", "sighting")) == 5  # begun


@pytest.mark.parametrize("typed", ["Q.1 L3", "q.1 l3", "L3 Q.1", "Q.1 s4", "g1 Q.1", "Q.1 R2"])
def test_a_ref_with_the_number_of_its_object(connection: Connection, typed: str) -> None:
    (ref,) = (word for word in typed.split() if "." not in word)
    hits = find(connection, typed).hits
    assert {hit.object for hit in hits} == {"Q.1"}
    assert ref.lower() in told(hits[0]).lower().replace(",", " ").split()


def test_signs_and_words_do_not_matter(engine: Engine) -> None:
    """A layer is found once by its ref, whether or not something is written about it."""
    layers = [{"ref": "L-70/b", "place": "S1", "role": "wax"}, {"ref": "Ä 9", "place": "S1"}]
    assert not enter(engine, lambda _: entries(layers=layers), ME, TODAY).faults
    for _ in range(2):
        with reading(engine) as connection:
            for typed in ("L-70/b", "l70b", "L-70", "l7", "L-70 / B"):
                (group,) = (one for one in find(connection, typed).groups if one.kind == "layer")
                assert group.total == 1, typed
            for typed in ("Ä9", "ä 9", "Ä"):
                assert len(found(connection, typed, "layer")) == 1, typed
        why = Author("A. Tester", "amended", "seen")
        amend(engine, "layer", OBJECT, "L-70/b", {"note": "Yellowed."}, why, TODAY)


def test_many_of_one_ref_are_counted_up_to_a_limit(
    engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    layers = [{"ref": f"M{number}", "place": "S1"} for number in range(100)]
    layers[7]["note"] = "Yellowed."
    assert not enter(engine, lambda _: entries(layers=layers), ME, TODAY).faults
    with reading(engine) as connection:
        (group,) = (one for one in find(connection, "m").groups if one.kind == "layer")
        assert (len(group.hits), group.total, group.more) == (8, 100, False)
        monkeypatch.setattr(find_refs, "COUNTED", 70)
        sparse = [one for one in SEARCHED if one.sparse]
        few = tuple((one.table, *find_refs._unwritten(one)) for one in sparse)
        monkeypatch.setattr(find_refs, "_UNWRITTEN", few)
        (group,) = (one for one in find(connection, "m").groups if one.kind == "layer")
        assert group.said == "71 or more"


def test_a_ref_is_looked_up_in_an_index_of_its_own(connection: Connection) -> None:
    """The plan of SQLite says which index it takes; the index of words stays as small as it was."""
    for table, *questions in find_refs._UNWRITTEN:
        for question in questions:
            sql, order, constants = question.compiled(connection)
            assert order is not None
            values = [constants.get(name, "l") for name in order]
            rows = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {sql}", tuple(values))
            assert any(f"USING INDEX search_{table}_ref (<expr>>" in row[3] for row in rows)
    indexed = connection.exec_driver_sql("SELECT count(*) FROM search_layer").scalar()
    noted = connection.exec_driver_sql(
        "SELECT count(*) FROM layer WHERE note IS NOT NULL OR material_words IS NOT NULL"
        " OR carrier IS NOT NULL"
    ).scalar()
    assert indexed == noted


@pytest.mark.parametrize(
    ("typed", "refs"),
    [
        ("1934", {"i1934"}),
        ("1989-05-18", {"i1989"}),
        ("May 1989", {"i1989"}),
        ("18 May 1989", {"i1989"}),
        ("the 1980s", {"i1980", "i1989"}),
        ("Q.1 1934", {"i1934"}),
        ("1934 Q.1", {"i1934"}),
        ("Q.2 1934", set()),
        ("1989-13-99", set()),
    ],
)
def test_what_was_done_on_a_day_is_found_by_it(
    connection: Connection, typed: str, refs: set[str]
) -> None:
    assert {hit.detail.split(",")[0] for hit in found(connection, typed, "step")} == refs


def test_layers_with_a_day_of_their_own(connection: Connection) -> None:
    """One that was only perhaps laid then is not among them: L8 is of some day up to 1955."""
    refs = {hit.detail.split(",")[0] for hit in found(connection, "the 1950s", "layer")}
    assert refs == {"L4", "L5"}


def test_a_registry_number_is_one_of_a_material(connection: Connection) -> None:
    """CAS 64-17-5 is ethanol (ECHA substance 200-578-6)."""
    (hit,) = found(connection, "64-17-5", "material")
    assert hit.detail == "ethanol"


@pytest.mark.parametrize(
    ("key", "used"),
    [
        ("epoxy", "two layers recorded, on one object, used one time as an agent"),
        ("limestone", "one layer recorded, on one object, three parts made of it"),
        ("acetone", "no layer of it recorded, used one time as an agent"),
        ("barrier-resin", "one layer recorded, on one object"),
        ("natural-resin", "two layers recorded, on one object"),
        ("resin", "five layers recorded, on two objects, used one time as an agent"),
    ],
)
def test_a_material_says_how_much_there_is_of_it(
    connection: Connection, key: str, used: str
) -> None:
    """As counted by hand in the tables of the department; of a class with all below it."""
    (hit,) = (hit for hit in found(connection, key, "material") if hit.detail == key)
    assert hit.used == used


@pytest.mark.parametrize(
    ("typed", "refs"),
    [
        ("c. 1980", ["i1980"]),
        ("ca 1980", ["i1980"]),
        ("May 2012", ["i2012"]),
        ("4 May 2012", ["i2012"]),
        ("June 2012", []),
        ("Q.1 4 May 2012", ["i2012"]),
        ("2012-04/2012-05-02", ["i2012"]),
        ("Q.2 4 May 2012", []),
    ],
)
def test_what_was_perhaps_done_then_is_found_with_its_date(
    connection: Connection, typed: str, refs: list[str]
) -> None:
    """A step that is dated May 2012 and the 4th of that month overlap; it is shown as written."""
    details = [hit.detail for hit in found(connection, typed, "step")]
    assert [detail.split(",")[0] for detail in details] == refs
    assert all(re.search(r", (1980|2012-05)$", detail) for detail in details)


def test_what_lies_within_a_date_comes_before_what_only_overlaps(connection: Connection) -> None:
    """L5 is of "c. 1950", the year; L4 of 1950, so both hold the month."""
    refs = [hit.detail.split(",")[0] for hit in found(connection, "March 1950", "layer")]
    assert sorted(refs) == ["L4", "L5"]
    within = [hit.detail.split(",")[0] for hit in found(connection, "1988/1989-06", "step")]
    assert within == ["i1989"]


@pytest.mark.parametrize("typed", ["before 1956", "not after 1955", "../1955", "Q.1 before 1956"])
def test_a_date_with_an_open_end_finds_the_same_bounds(connection: Connection, typed: str) -> None:
    """L8 is of some day up to the end of 1955, in EDTF ../1955."""
    refs = [hit.detail.split(",")[0] for hit in found(connection, typed, "layer")]
    assert refs == ["L8"]
    assert not found(connection, "before 1957", "layer")


def test_a_short_word_for_about_begins_no_other_word(connection: Connection) -> None:
    """Walter Orde's note has no date; "c" would begin "Calder" and the words of a layer."""
    kinds = {hit.kind for hit in find(connection, "c. 1950").hits}
    assert kinds == {"layer"}
