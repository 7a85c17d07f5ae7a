"""Finding by the start of a number, mark, name or reference; what is typed is data."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.questions.find import find
from tests.nasty import NASTY


def found(connection: Connection, text: str, limit: int = 50) -> list[str]:
    return [
        " ".join(word for word in (hit.kind, hit.object, hit.mark or hit.label) if word)
        for hit in find(connection, text, limit)
    ]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Q.1", ["object Q.1 Fountain", "object Q.10 Plain box"]),
        ("q.2", ["object Q.2 Müller's vase"]),
        ("muller", ["object Q.2 Müller's vase"]),
        ("fount", ["object Q.1 Fountain"]),
        ("J1", ["place Q.1 J1", "place Q.1 J10"]),
        ("b2", ["component Q.1 B2", "component Q.1 B2a"]),
        ("dolph", ["component Q.1 B2"]),
        ("top of", ["place Q.1 S1"]),
        ("Q.1 J1", ["place Q.1 J1", "place Q.1 J10"]),
        ("q.1  s", ["place Q.1 S1"]),
        ("w.o", ["person Walter Orde"]),
        ("ines", ["person Ines Calder"]),
        ("rep", ["source REP", "source REP"]),
        ("letter of", ["source LET"]),
        ("Epoxy ad", ["material Epoxy adhesive"]),
        ("shel", ["material shell", "material Shellac"]),
        ("paraloid b-7", ["material Paraloid B-72"]),
        ("zzz", []),
        ("", []),
        ("   ", []),
        ("%", []),
        ("_", []),
        ("'; DROP TABLE layer; --", []),
    ],
)
def test_found(connection: Connection, text: str, expected: list[str]) -> None:
    assert list(dict.fromkeys(found(connection, text))) == list(dict.fromkeys(expected))


def test_the_exact_comes_first(connection: Connection) -> None:
    assert found(connection, "Q.10")[0] == "object Q.10 Plain box"
    assert found(connection, "glue")[:2] == ["material glue", "material glue"]  # two that bear it


def test_every_word_of_a_title_counts(connection: Connection) -> None:
    assert "object Q.10 Plain box" in found(connection, "box")
    assert found(connection, "bo%") == []


def test_the_limit_leaves_room_for_every_kind(connection: Connection) -> None:
    kinds = {hit.kind for hit in find(connection, "l", limit=3)}
    assert len(found(connection, "l", 3)) == 3
    assert {"place", "material"} <= kinds  # "lip to dolphin", Limestone, Letter of ...


@pytest.mark.parametrize("text", NASTY)
def test_whatever_is_typed_is_only_looked_for(connection: Connection, text: str) -> None:
    assert isinstance(find(connection, text), tuple)
