"""What answers a question, counted on the small department by each of the ways."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.knowledge.decades import Count, Decades, Tally
from conservedb.knowledge.research_words import AskError, read
from conservedb.questions.research import rows
from conservedb.questions.research_answers import SURENESS
from conservedb.questions.tally import WAYS, counted, materials_by_decade
from tests.conftest import TODAY


def look(connection: Connection, question: str, by: str) -> Tally | Decades:
    research = read(question)
    return counted(connection, research, rows(connection, research, TODAY), by)


def groups(connection: Connection, question: str, by: str) -> dict[str, tuple[int, ...]]:
    found = look(connection, question, by)
    assert isinstance(found, Tally)
    return {label: (*counts,) for label, counts in found.groups}


def test_the_words_are_those_of_the_answers() -> None:
    assert Count._fields == SURENESS


def test_by_decade(connection: Connection) -> None:
    found = look(connection, "material: epoxy", "decade")
    assert isinstance(found, Decades)
    # L5 is dated "c. 1950", L6 may be epoxy; L3 of 1989 and the agent g2 of 1980 certainly are.
    # What the facing L7 is nobody wrote down.
    assert [(one.first, *one.counts) for one in found.decades] == [
        *((1950, 0, 1, 0), (1970, 0, 1, 0), (1980, 2, 0, 0), (2020, 0, 0, 1))
    ]
    assert found.total == (3, 1, 1) and found.several == 1
    undated = look(connection, "material: shellac", "decade")
    assert isinstance(undated, Decades)
    assert undated.undated.total == 1  # L8 came by 1955, nobody knows since when


def test_by_class(connection: Connection) -> None:
    assert groups(connection, "material: epoxy", "class") == {
        "Epoxy resins": (3, 0, 0),
        "not recorded": (0, 1, 1),
    }


def test_by_person(connection: Connection) -> None:
    assert groups(connection, "material: epoxy", "person") == {
        "Ines Calder": (1, 0, 0),
        "Walter Orde": (1, 0, 0),  # under his initials
        "not recorded": (1, 1, 1),
    }
    assert groups(connection, "interventions where material: epoxy", "person") == {
        "Ines Calder": (1, 0, 0),
        "Walter Orde": (1, 0, 0),
    }


@pytest.mark.parametrize("kind", ["layers", "places", "interventions", "objects"])
def test_by_kind_of_object(connection: Connection, kind: str) -> None:
    found = groups(connection, kind, "object-kind")
    assert found["wall fountain"][0] >= 1
    assert ("vase" in found) == (kind in ("layers", "objects"))  # its layer has no place, no deed


@pytest.mark.parametrize(
    ("question", "by", "sentence"),
    [
        ("objects", "class", "objects cannot be counted by class; ask for layers"),
        ("places", "person", "places cannot be counted by person; ask for layers or interventions"),
    ],
)
def test_rows_without_it_are_not_counted_by_it(
    connection: Connection, question: str, by: str, sentence: str
) -> None:
    with pytest.raises(AskError, match=sentence):
        look(connection, question, by)


@pytest.mark.parametrize("by", WAYS)
def test_an_answer_without_rows(connection: Connection, by: str) -> None:
    assert look(connection, "object: Q.10", by).total == (0, 0, 0)


def test_materials_by_decade(connection: Connection) -> None:
    research = read("layers")
    found = materials_by_decade(research, rows(connection, research, TODAY))
    table = {
        label: {one.first: (*one.counts,) for one in decades.decades} for label, decades in found
    }
    assert table["Epoxy adhesive"] == {1950: (0, 1, 0), 1980: (2, 0, 0)}
    assert table["Acetone"] == {1980: (1, 0, 0)}
    assert list(table)[:: len(table) - 1] == ["Epoxy adhesive", "not recorded"]
    with pytest.raises(AskError, match="ask for layers"):
        materials_by_decade(read("objects"), ())
