"""What a researcher's question answers with: pages in order, words that mean nothing, two days."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.importing import import_folder
from conservedb.knowledge.research import FIELDS, ROWS, And, Condition, Research
from conservedb.knowledge.research_words import AskError, read, say
from conservedb.questions.answers import NoSuch
from conservedb.questions.asof import as_of
from conservedb.questions.basics import Ambiguous
from conservedb.questions.research import counts, page, rows
from conservedb.questions.research_answers import COLUMNS, SURENESS, Counts
from conservedb.questions.research_compared import compare
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.keys import sort_key
from conservedb.store.opening import open_database
from tests.conftest import TODAY
from tests.nasty import NASTY
from tests.nasty_tables import write_nasty
from tests.questions.conftest import department, sample

__all__ = ["department", "sample"]


def refs(engine: Engine, text: str, sureness: str = "") -> list[str]:
    with reading(engine) as connection:
        found = rows(connection, read(text), TODAY)
        return sorted(row.ref for row in found if sureness in ("", row.sureness))


# What is expected stands in the tables of `tests/questions/conftest.py`.


def test_certain_possible_and_unidentified_are_told_apart(sample: Engine) -> None:
    assert refs(sample, "material: epoxy", "certain") == ["L3", "L5", "g2"]
    assert refs(sample, "material: epoxy", "possible") == ["L6"]  # a statement says so
    assert refs(sample, "material: epoxy", "unidentified") == ["L7"]
    assert refs(sample, "material: epoxy and as: agent") == ["g2"]
    assert refs(sample, "material: epoxy and role: adhesive") == ["L3"]
    assert refs(sample, "material: shellac", "possible") == ["L3", "L8"]


def test_what_both_ways_agree_on_is_not_unidentified(sample: Engine) -> None:
    assert refs(sample, "material: epoxy or role: facing", "certain") == ["L3", "L5", "L7", "g2"]
    assert refs(sample, "not material: epoxy and role: facing", "unidentified") == ["L7"]


def test_nobody_on_record_is_not_nobody(sample: Engine) -> None:
    assert refs(sample, 'person: "Walter Orde"', "certain") == ["L2", "g1", "g2"]
    possible = refs(sample, 'person: "W.O." and object: Q.1', "possible")
    assert "L5" in possible  # no intervention on record
    assert "L1" in possible  # an intervention, of which nobody is on record
    assert "L3" not in possible  # somebody else is on record


def test_a_vague_date_is_never_sharpened(sample: Engine) -> None:
    assert refs(sample, "date: 1950 and role: coating", "certain") == []
    assert refs(sample, "date: 1950 and role: coating", "possible") == ["L5", "L8"]
    assert refs(sample, "date: certainly 1950") == ["L4"]
    assert refs(sample, "date: before 1960 and role: coating", "certain") == ["L8"]


def test_a_layer_of_several_places_is_one_row_and_possible_at_each(sample: Engine) -> None:
    with reading(sample) as connection:
        (row,) = rows(connection, read("role: certainly consolidant"), TODAY)
        assert (row.ref, row.place, row.sureness) == ("L6", "S1 or M1", "certain")
        found = list(rows(connection, read("places where role: certainly consolidant"), TODAY))
        assert {(one.place, one.sureness) for one in found} == {
            ("S1", "possible"),
            ("M1", "possible"),
        }
        (row,) = rows(
            connection, read("role: certainly consolidant and part material: limestone"), TODAY
        )
        assert row.sureness == "possible"


def test_rows_of_other_kinds_take_the_best_of_theirs(sample: Engine) -> None:
    with reading(sample) as connection:
        (one,) = rows(connection, read("objects where material: epoxy"), TODAY)
        assert (one.object, one.sureness, one.layers) == ("Q.1", "certain", 3)
        assert (one.what, one.ref, one.place) == ("", "", "")
        (deed,) = rows(connection, read("interventions where material: portland"), TODAY)
        assert (deed.ref, deed.kind, deed.people) == ("i1934", "fill", "Walter Orde")


@pytest.mark.parametrize("kind", ROWS)
@pytest.mark.parametrize("column", COLUMNS)
def test_pages_are_the_whole_in_an_order(sample: Engine, kind: str, column: str) -> None:
    research = Research(kind)
    with reading(sample) as connection:
        for descending in (False, True):
            whole = list(rows(connection, research, TODAY, column, descending))
            assert len(whole) == counts(connection, research, TODAY).total > 0
            paged = [
                row
                for start in range(0, len(whole), 2)
                for row in page(connection, research, TODAY, column, descending, start, 2).rows
            ]
            assert paged == whole
            if column in ("material", "role", "kind", "people", "ref"):
                values = [getattr(row, column) for row in whole]
                folded = [value.lower() for value in values]
                assert folded == sorted(folded, reverse=descending)


MARKS = ("J10", "J2", "J2b", "J2a", "J1", "j3", "SQ.12", "SQ.9", "S-2", "S-10", "12", "3", "head 1")


def test_marks_are_sorted_by_their_numbers(tmp_path: Path) -> None:
    """As where the places of one object are listed (`store.keys.sort_key`): J2 before J10."""
    tables = tmp_path / "tables"
    tables.mkdir()
    for name, header, lines in (
        ("objects", "number", ["A.1"]),
        ("places", "object,mark", [f"A.1,{mark}" for mark in MARKS]),
        ("layers", "object,place", [f"A.1,{mark}" for mark in MARKS]),
    ):
        text = "\n".join((header, *lines))
        (tables / f"{name}.csv").write_text(text, encoding="utf-8")
    create(tmp_path / "marks.db")
    engine, _ = open_database(tmp_path / "marks.db")
    assert import_folder(engine, tables, today=TODAY, who="A. Tester").written
    natural = sorted(MARKS, key=sort_key)
    assert natural.index("J2") < natural.index("J2a") < natural.index("J10")
    with reading(engine) as connection:
        for asked in ("places", "layers"):
            found = [row.place for row in rows(connection, read(asked), TODAY, "place")]
            assert found == natural
            last = page(connection, read(asked), TODAY, "place", True, 0, 2).rows
            assert [row.place for row in last] == natural[:-3:-1]
    engine.dispose()


def test_sureness_sorts_the_certain_first(sample: Engine) -> None:
    with reading(sample) as connection:
        found = rows(connection, read("material: epoxy"), TODAY, "sureness")
        order = [SURENESS.index(row.sureness) for row in found]
    assert order == sorted(order)
    assert set(order) == {0, 1, 2}


@pytest.mark.parametrize(
    ("text", "nearest"),
    [
        ("material: epoxi", ("epoxy",)),
        ("part material: limestoe", ("limestone",)),
        ("person: Walter Ord", ("Walter Orde",)),
        ("kind: joining", ("join",)),
        ("aim: remedy", ()),
        ("environment: out of doors", ("outdoors",)),
        ("rule: iron in stone", ("iron-in-stone",)),
        ("reversibility: redissolves", ("re-dissolves",)),
    ],
)
def test_a_word_that_is_not_on_record_is_told(
    sample: Engine, text: str, nearest: tuple[str, ...]
) -> None:
    with reading(sample) as connection, pytest.raises(NoSuch) as problem:
        counts(connection, read(text), TODAY)
    assert set(nearest) <= set(problem.value.nearest)


def test_a_word_of_several_meanings_is_not_resolved(sample: Engine) -> None:
    with reading(sample) as connection:
        with pytest.raises(Ambiguous):
            counts(connection, read("material: glue"), TODAY)
        with pytest.raises(NoSuch, match="column"):
            page(connection, Research(), TODAY, "colour")


def test_two_days_are_compared_by_what_is_there(sample: Engine) -> None:
    with reading(sample) as connection:
        days = (as_of("1960", TODAY), as_of(None, TODAY))
        found = compare(connection, read("material: epoxy"), *days)
        assert say(found.research) == "layers where material: epoxy and state: there"
        assert [row.ref for row in found.only_first] == ["L5"]  # weathered in the 1990s
        assert [(row.ref, row.state) for row in found.only_second] == [
            ("L6", "present"),
            ("L3", "present"),
            ("L7", "present"),  # nobody has identified it
        ]
        assert found.counts == (Counts(0, 1, 0), Counts(1, 1, 1))
        alike = compare(connection, read("state: gone"), days[1], days[1])
        assert alike.only_first == alike.only_second == ()


# -- text of users ------------------------------------------------------------------------


@pytest.fixture(scope="module")
def hostile(tmp_path_factory: pytest.TempPathFactory) -> Engine:
    folder: Path = tmp_path_factory.mktemp("hostile")
    write_nasty(folder / "tables")
    create(folder / "hostile.db")
    engine, _ = open_database(folder / "hostile.db")
    report = import_folder(engine, folder / "tables", today=TODAY, who="A. Tester")
    assert report.written, [fault.sentence() for fault in report.faults][:3]
    return engine


@pytest.mark.parametrize(
    "field", [field for field in FIELDS if field not in ("state", "date", "as")]
)
def test_text_of_users_is_data_in_every_condition(hostile: Engine, field: str) -> None:
    answered = 0
    with reading(hostile) as connection:
        for text in NASTY:
            research = Research("layers", Condition(field, text))
            try:
                answered += counts(connection, research, TODAY).certain
            except NoSuch as problem:
                assert problem.value == text
    if field in ("role", "technique", "observed", "object", "object kind", "source"):
        assert answered >= 20


def test_sorting_by_hostile_text_is_total(hostile: Engine) -> None:
    with reading(hostile) as connection:
        research = Research("layers", And())
        for column in COLUMNS:
            whole = list(rows(connection, research, TODAY, column))
            assert len(set(whole)) == len(whole) == counts(connection, research, TODAY).total


# -- what rows have, and have not ---------------------------------------------------------


def marks(engine: Engine, text: str, sureness: str = "") -> list[str]:
    with reading(engine) as connection:
        found = rows(connection, read(text), TODAY)
        return sorted(
            row.place or row.ref or row.object for row in found if sureness in ("", row.sureness)
        )


def test_a_row_can_be_asked_for_two_things_that_are_not_one(sample: Engine) -> None:
    assert marks(sample, "objects where material: epoxy and material: portland", "certain") == []
    both = "objects where has (material: epoxy) and has (material: portland)"
    assert marks(sample, both, "certain") == ["Q.1"]


def test_what_nobody_identified_keeps_none_from_being_certain(sample: Engine) -> None:
    nothing = marks(sample, "places where has none (role: varnish)", "certain")
    everything = marks(sample, "places where has (role: varnish)")
    assert set(everything).isdisjoint(nothing)
    lacking = "places where has none (material: epoxy)"
    holding = "places where has (material: epoxy)"
    assert set(marks(sample, lacking, "certain")).isdisjoint(marks(sample, holding))
    for kind in ("possible", "unidentified"):
        assert marks(sample, lacking, kind) == marks(sample, holding, kind)


def test_work_without_layer_or_agent_answers_too(sample: Engine) -> None:
    with sample.connect() as raw:
        bare = raw.exec_driver_sql(
            "SELECT i.ref FROM intervention i"
            " WHERE i.id NOT IN (SELECT intervention_id FROM layer WHERE intervention_id NOT NULL)"
            " AND i.id NOT IN (SELECT intervention_id FROM agent)"
        ).scalars()
        refs_of_bare = set(bare)
    assert refs_of_bare
    assert refs_of_bare <= set(marks(sample, "interventions"))
    assert refs_of_bare.isdisjoint(marks(sample, "interventions where as: agent or as: layer"))
    assert refs_of_bare.isdisjoint(refs(sample, "layers"))


def test_an_object_with_nothing_on_record_answers_by_what_it_is(sample: Engine) -> None:
    with reading(sample) as connection:
        every = {row.object for row in rows(connection, read("objects"), TODAY)}
        others = {
            row.object for row in rows(connection, read("objects where not object: Q.1"), TODAY)
        }
        (row, *_) = rows(connection, read("objects where has none (role: varnish)"), TODAY)
    assert "Q.1" in every
    assert others == every - {"Q.1"} != set()
    assert (row.layers, row.dated) == (0, "")


def test_matter_that_nobody_identified_may_be_one_thing_and_not_another(sample: Engine) -> None:
    """L7 is named by nobody: it may be epoxy, or shellac, or neither."""
    apart = "material: epoxy and not material: shellac"
    assert "L7" in refs(sample, apart, "unidentified")
    either = "material: epoxy or not material: shellac"
    assert "L7" in refs(sample, either, "unidentified")
    assert "L7" not in refs(sample, either, "certain")
    has = "places where has (material: epoxy) and has none (material: shellac)"
    with reading(sample) as connection:
        (place,) = (row.place for row in rows(connection, read("layers"), TODAY) if row.ref == "L7")
    assert place in marks(sample, has)


@pytest.mark.parametrize("words", ["9999", "2027", "tomorrow", "c. 1950", "1950?"])
def test_no_state_is_told_of_a_day_to_come_or_of_a_vague_one(sample: Engine, words: str) -> None:
    with reading(sample) as connection, pytest.raises(AskError, match=re.escape(words)):
        counts(connection, read(f'state: there on "{words}"'), TODAY)


def test_a_span_that_is_not_over_is_asked_until_today(sample: Engine) -> None:
    year = refs(sample, "state: there on 2026", "certain")
    assert year == refs(sample, "state: there", "certain") != []


@pytest.mark.parametrize("field", ["technique", "object", "material", "observed"])
def test_too_many_words_are_one_sentence(field: str) -> None:
    with pytest.raises(AskError, match="more than 200 words"):
        read(f"{field}: " + "the " * 1200)


def test_as_many_words_as_are_taken_can_be_asked(sample: Engine) -> None:
    few = " or ".join(f"not technique: {'a ' * 4}" for _ in range(49))
    with reading(sample) as connection:
        for rows_asked in ("layers", "places"):
            assert counts(connection, read(f"{rows_asked} where {few}"), TODAY).total
        assert counts(connection, read(f"not technique: {'a ' * 200}"), TODAY).total


def test_two_days_compared_are_days_that_have_come(sample: Engine) -> None:
    with reading(sample) as connection:
        for words in ("2050", "c. 1950"):
            days = (as_of(words, TODAY), as_of("2000", TODAY))
            with pytest.raises(AskError, match=re.escape(words)):
                compare(connection, read("layers"), *days)
