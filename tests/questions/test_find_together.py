"""Words that meet in several records of one object; expected by hand from the department."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.questions import find_meeting, find_together
from conservedb.questions.find import find
from conservedb.questions.find_together import MOST_WORDS, lying
from tests.conftest import TODAY

LATER = TODAY.toordinal()
TOGETHER = "these have all the words only together with their object, material or people"


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("fountain J1", [("place", "Q.1", "J1"), ("place", "Q.1", "J10")]),
        ("J2 fountain", [("place", "Q.1", "J2")]),
        ("fountain L3", [("layer", "Q.1", "J1")]),
        ("l3 FOUNT", [("layer", "Q.1", "J1")]),
        ("epoxy J1", [("place", "Q.1", "J1")]),
        ("J1 adhesive epoxy", [("place", "Q.1", "J1")]),
        ("glue J1", [("place", "Q.1", "J1")]),
        ("fountain epoxy", [("place", "Q.1", "J1"), ("place", "Q.1", "S1")]),
        ("Q.1 portland", [("place", "Q.1", "J1")]),
        ("fountain resin S1", [("place", "Q.1", "S1")]),
        ("fountain iron", [("component", "Q.1", "K1"), ("component", "Q.1", "K2")]),
        ("acetone fountain", [("agent", "Q.1", "")]),
        ("acetone S1", [("agent", "Q.1", "")]),
        ("vase barrier", [("layer", "Q.2", "")]),
        ("adhesive fountain J1", [("place", "Q.1", "J1")]),
        ("coating fountain", [("place", "Q.1", "S1")]),
        ("lip dolphin pointing", [("place", "Q.1", "J1")]),
        ("epoxy coating fountain", [("place", "Q.1", "S1")]),
        ("calder epoxy", [("place", "Q.1", "J1")]),
        ("w.o portland", [("place", "Q.1", "J1")]),
        ("orde fountain", [("step", "Q.1", "J1"), ("step", "Q.1", "S1")]),
        ("orde fountain portland", [("place", "Q.1", "J1")]),
    ],
)
def test_they_lead_to_where_they_meet(
    connection: Connection, text: str, expected: list[tuple[str, str, str]]
) -> None:
    answer = find(connection, text)
    hits = [(hit.kind, hit.object, hit.mark) for hit in answer.hits]
    assert hits[: len(expected)] == expected
    assert answer.remark == ("" if len(answer.hits) == 1 else TOGETHER)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("fountain J2", "J2 of Q.1, Fountain"),
        ("epoxy J1", "J1 of Q.1: Epoxy adhesive, in place (on record)"),
        (
            "fountain cements",
            "J1 of Q.1: Portland cement (Cements), partly removed",
        ),
        ("iron fountain", "K1 of Q.1: made of Wrought iron; of Fountain"),
        ("acetone fountain", "g1 of Q.1: Acetone, used in i1980; of Fountain"),
        ("vase barrier", "L1, location not recorded of Q.2: Barrier resin, "),
        ("pointing fountain", "J1 of Q.1: Portland cement, pointing, partly removed"),
        (
            "calder epoxy",
            "J1 of Q.1: Epoxy adhesive, in place (on record), laid in i1989, Ines Calder",
        ),
        ("orde fountain", "i1934 of Q.1: pointed, Walter Orde; of Fountain"),
    ],
)
def test_the_line_says_what_was_matched(connection: Connection, text: str, sentence: str) -> None:
    hit = find(connection, text).hits[0]
    assert hit.sentence.startswith(sentence)
    marked = {hit.sentence[first:last].lower() for first, last in hit.spans}
    assert marked == {word.lower() for word in text.split()}


@pytest.mark.parametrize(
    "text",
    [
        "vase epoxy",
        "Q.10 limestone",
        "J2 epoxy",
        "vase J1",
        "box L1",
        "orde vase",
        "calder shellac",
        "vase coating",
    ],
)
def test_what_does_not_meet_is_not_made_up(connection: Connection, text: str) -> None:
    """The words are on record, each of another object or at another place."""
    answer = find(connection, text)
    assert not answer.groups
    assert answer.remark == "each of these words is on record, but no record has all of them"


def test_one_record_with_all_the_words_goes_first(connection: Connection) -> None:
    answer = find(connection, "dolphin lip")
    assert [hit.mark for hit in answer.hits] == ["J1"]
    assert answer.remark == ""


def test_it_looks_at_no_more_than_it_says(
    connection: Connection, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert lying(connection, ("fountain",) * (MOST_WORDS + 1), LATER, 8) == ()
    assert lying(connection, ("epoxy",), LATER, 8) == ()
    assert not any(one.more for one in lying(connection, ("q", "epoxy", "s"), LATER, 8))
    monkeypatch.setattr(find_meeting, "MOST_OBJECTS", 1)
    monkeypatch.setattr(find_meeting, "PLACES", 1)
    assert all(one.more for one in lying(connection, ("fountain", "epoxy"), LATER, 1))
    (group,) = lying(connection, ("fountain", "epoxy"), LATER, 1)[:1]
    assert (len(group.hits), group.said) == (1, "2 or more")


def test_a_misspelt_word_among_others_is_offered_as_it_is_spelt(connection: Connection) -> None:
    """What is offered finds something, here only in several records of one object."""
    for text, meant in (("fountan J1", "J1 Fountain"), ("joint 2 fountian", "joint 2 Fountain")):
        answer = find(connection, text)
        assert not answer.groups
        assert [sorted(one.split()) for one in answer.near] == [sorted(meant.split())]
        assert find(connection, answer.near[0]).groups


def test_the_ways_to_share_words_out_are_bounded(
    connection: Connection, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(find_together, "_WAYS", 0)
    assert lying(connection, ("fountain", "epoxy"), LATER, 8) == ()
