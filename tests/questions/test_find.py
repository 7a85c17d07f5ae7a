"""Finding by every word of a number, mark, name, note or paper; what is typed is data."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.questions.answers import Hit
from conservedb.questions.find import find
from conservedb.questions.find_words import excerpt, spans
from conservedb.store import search
from tests.nasty import NASTY


def said(hit: Hit) -> str:
    return " ".join(word for word in (hit.kind, hit.object, hit.mark or hit.label) if word)


def found(connection: Connection, text: str) -> list[str]:
    return [said(hit) for hit in find(connection, text).hits]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Q.1", ["object Q.1 Fountain", "object Q.10 Plain box"]),
        ("q1", ["object Q.1 Fountain", "object Q.10 Plain box"]),
        ("q.2", ["object Q.2 Müller's vase"]),
        ("muller", ["object Q.2 Müller's vase"]),
        ("mullers VASE", ["object Q.2 Müller's vase"]),
        ("vase müller's", ["object Q.2 Müller's vase"]),
        ("fount", ["object Q.1 Fountain"]),
        ("dolph", ["component Q.1 B2", "place Q.1 J1"]),
        ("dolph lip", ["place Q.1 J1"]),
        ("top of", ["place Q.1 S1"]),
        ("Q.1 J1", ["place Q.1 J1", "place Q.1 J10"]),
        ("q.1  s", ["place Q.1 S1"]),
        ("w.o", ["person Walter Orde"]),
        ("orde walt", ["person Walter Orde"]),
        ("ines", ["person Ines Calder"]),
        ("letter of", ["source LET"]),
        ("Epoxy ad", ["material Epoxy adhesive"]),
        ("paraloid b-7", ["material Paraloid B-72"]),
        ("paraloid b7", ["material Paraloid B-72"]),
        ("zzz", []),
        ("", []),
        ("   ", []),
        ("%", []),
        ("_", []),
        ('"', []),
        ("*", []),
        ("'; DROP TABLE layer; --", []),
        ("fountain NOT vase", []),
        ("fountain OR vase", []),
        ("title_folded:fountain", []),
        ("^fountain", ["object Q.1 Fountain"]),
        ("fount*", ["object Q.1 Fountain"]),
        ("NEAR(fountain box)", []),
    ],
)
def test_found(connection: Connection, text: str, expected: list[str]) -> None:
    mine = ("object", "component", "place", "person", "material", "source")
    hits = [said(hit) for hit in find(connection, text).hits if hit.kind in mine]
    assert list(dict.fromkeys(hits))[: len(expected) or None] == expected


def test_the_exact_comes_first(connection: Connection) -> None:
    assert found(connection, "Q.10")[0] == "object Q.10 Plain box"
    assert found(connection, "glue")[:2] == ["material glue", "material glue"]  # two that bear it
    assert found(connection, "J1")[:2] == ["place Q.1 J1", "place Q.1 J10"]
    assert found(connection, "b2")[:2] == ["component Q.1 B2", "component Q.1 B2a"]


def test_a_part_of_a_word_counts_where_little_begins_so(connection: Connection) -> None:
    assert "material Limestone" in found(connection, "mestone")
    assert "material Limestone" not in found(connection, "stone")  # enough begins so
    assert found(connection, "sto%ne") == []


def test_what_is_called_so_comes_first_among_all_of_a_kind(connection: Connection) -> None:
    """Materials and their classes are one kind; of these the one with exactly that key."""
    for key in ("resin", "epoxy-resin", "natural-resin"):
        (group,) = (one for one in find(connection, key).groups if one.kind == "material")
        assert group.hits[0].detail == key


def test_names_come_before_other_words(connection: Connection) -> None:
    (group,) = (one for one in find(connection, "epoxy").groups if one.kind == "material")
    assert [hit.label for hit in group.hits][:1] == ["Epoxy adhesive"]
    assert group.total == len(group.hits)


def test_every_kind_is_counted_beyond_what_is_shown(connection: Connection) -> None:
    whole = {one.kind: one.total for one in find(connection, "l", most=60).groups}
    few = find(connection, "l", most=1)
    assert {one.kind: one.total for one in few.groups} == whole
    assert all(len(one.hits) == 1 for one in few.groups)
    assert {"place", "material"} <= set(whole)


@pytest.mark.parametrize("text", ["l", "j", "b", "q", "epoxy", "J1", "lip", "re", "Q.1 J"])
def test_counts_do_not_hang_on_how_many_are_looked_at(
    connection: Connection, monkeypatch: pytest.MonkeyPatch, text: str
) -> None:
    def counts() -> dict[str, int]:
        return {one.kind: one.total for one in find(connection, text).groups}

    monkeypatch.setattr("conservedb.questions.find._CONSIDERED", 10_000)
    monkeypatch.setattr("conservedb.questions.find._FEW", 0)
    all_looked_at = counts()
    assert all_looked_at
    monkeypatch.setattr("conservedb.questions.find._CONSIDERED", 2)
    assert counts() == all_looked_at


def test_words_stand_marked_in_their_sentence(connection: Connection) -> None:
    def marked(hit: Hit) -> list[str]:
        text = hit.sentence or hit.label
        return [text[first:last] for first, last in hit.spans]

    for text in ("letter of", "lip dolphin", "adhesive", "walter", "b-72", "muller", "mestone"):
        hits = find(connection, text).hits
        assert hits
        assert all(marked(hit) for hit in hits), text
    (hit,) = (h for h in find(connection, "mullers").hits if h.kind == "object")
    assert marked(hit) == ["Müller's"]


def test_a_near_miss_is_offered_and_finds_something(connection: Connection) -> None:
    for typed, meant in (
        ("fuontain", "Fountain"),
        ("limestine", "Limestone"),
        ("wlater", "Walter"),
    ):
        answer = find(connection, typed)
        assert not answer.groups
        assert meant.lower() in map(str.lower, answer.near)
        assert find(connection, answer.near[0]).groups
    assert find(connection, "walter limestone").remark == (
        "each of these words is on record, but no record has all of them"
    )
    assert find(connection, "%").remark == "there is no letter and no digit in it to look for"


def test_very_many_words_are_told(connection: Connection) -> None:
    many = " ".join(f"fountain{number}" for number in range(5000))
    assert find(connection, many).remark.startswith(f"only the first {search.MOST_WORDS} words")
    assert found(connection, " ".join(["fountain"] * 5000))[0] == "object Q.1 Fountain"


TYPED = (
    *NASTY,
    *(f"fountain {text}" for text in NASTY),
    "fount\0ain",
    "\0",
    "\ud800",
    "a" * 10_000,
)
TYPED += ('"fountain" OR', "fountain)", "(((", "{names} : x", "a + b", "-fountain", "🎉", "'")
TYPED += ("fountain " * 1000, "\u202efountain", "ﷺ", "½", "x²", "Ⅷ", "\u0301", "e\u0301")


@pytest.mark.parametrize("text", TYPED, ids=range(len(TYPED)))
def test_whatever_is_typed_is_only_looked_for(connection: Connection, text: str) -> None:
    answer = find(connection, text)
    assert answer.groups or answer.near or answer.remark or search.words_of(text)


@pytest.mark.parametrize(
    ("text", "words", "expected"),
    [
        ("Paraloid B-72, in acetone", ("b72",), ["B-72"]),
        ("Paraloid B-72, in acetone", ("b",), ["B"]),
        ("SQ.1902.7 seen", ("1902",), ["1902"]),
        ("SQ.1902.7 seen", ("sq19",), ["SQ.1902"]),
        ("SQ.1902.7 seen", ("SQ.1902.7",), ["SQ.1902.7"]),
        ("a\u0308pfel und Äpfel", ("apfel",), ["a\u0308pfel", "Äpfel"]),
        ("Straße", ("strasse",), ["Straße"]),
        ("limestone", ("stone",), []),
        ("under_score", ("score",), ["score"]),
        ("", ("a",), []),
        ("abc", (), []),
    ],
)
def test_where_words_stand(text: str, words: tuple[str, ...], expected: list[str]) -> None:
    assert [text[first:last] for first, last in spans(text, words)] == expected


def test_an_excerpt_keeps_the_words_in_sight() -> None:
    text = "before " * 100 + "the Fountain, " + "after " * 100
    short, kept = excerpt(text, spans(text, ("fountain",)))
    assert [short[first:last] for first, last in kept] == ["Fountain"]
    assert len(short) < 200
    assert (short[0], short[-1]) == ("…", "…")
    whole = "x" * 20_000
    short, kept = excerpt(whole, spans(whole, ("x",)))
    assert kept[0][0] == 0
    assert kept[0][1] <= len(short)
