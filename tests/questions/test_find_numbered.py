"""Places by kind and number; the marks expected by hand from the department."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.questions.find import find
from conservedb.questions.find_numbered import is_numbered


@pytest.mark.parametrize(
    ("text", "marks"),
    [
        ("joint 1", ["J1"]),
        ("JOINT 01", ["J1"]),
        ("joint 10", ["J10"]),
        ("surface 1", ["S1"]),
        ("surf 1", ["S1"]),
        ("body 1", ["M1"]),
        ("fountain joint 2", ["J2"]),
        ("joint 2 fountain", ["J2"]),
        ("Q.1 joint 2", ["J2"]),
        ("joint 2 Q.1", ["J2"]),
        ("joint 1 epoxy", ["J1"]),
        ("adhesive joint 2", ["J2"]),
        ("fountain joint 2 shellac", ["J2"]),
        ("vase joint 2", []),
        ("vase joint 2 shellac", []),
        ("joint 2 epoxy", []),
        ("cavity 1", []),
        ("joint 3", []),
        ("joint 0", []),
    ],
)
def test_a_place_is_found_by_its_kind_and_number(
    connection: Connection, text: str, marks: list[str]
) -> None:
    hits = [hit for hit in find(connection, text).hits if hit.kind == "place"]
    assert [hit.mark for hit in hits][: len(marks) or 1] == marks


def test_what_was_meant_stands_above_what_only_has_the_words(connection: Connection) -> None:
    """A mark, and a place by its number, come before any other kind of record."""
    for text in ("joint 1", "Q.1 joint 1", "fountain joint 1", "J1"):
        assert find(connection, text).groups[0].kind == "place"


@pytest.mark.parametrize("text", ["joint", "joint J1", "14", "joi 14", "joint 12345", "plinth 1"])
def test_what_is_no_kind_with_a_number(text: str) -> None:
    assert not is_numbered(text)
