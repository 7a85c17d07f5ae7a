"""How long the layers of the small department last, as recorded and as last seen."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.dates import NEVER, from_iso
from conservedb.knowledge.research_words import AskError, read
from conservedb.knowledge.survival import Age
from conservedb.questions.research import rows
from conservedb.questions.survival import LeftOut, Survival, survival
from tests.conftest import TODAY


def look(connection: Connection, question: str) -> Survival:
    research = read(question)
    return survival(connection, research, rows(connection, research, TODAY), TODAY)


def days(first: str, last: str) -> int:
    return from_iso(last) - from_iso(first)


def test_ages_come_from_the_bounds(connection: Connection) -> None:
    found = look(connection, "material: epoxy")
    # L5, "c. 1950", weathered in the 1990s: by its years, the qualifier told.
    gone = days("1950-12-31", "1990-01-01"), days("1950-01-01", "1999-12-31")
    # L3, of 18 May 1989, is there; last seen on 15 September 2026.
    there = days("1989-05-18", TODAY.isoformat())
    assert [(age.low, age.high) for age in found.recorded.ages] == [gone, (there + 1, NEVER)]
    seen = days("1989-05-18", "2026-09-15")
    assert found.seen.ages == (found.recorded.ages[0], Age(seen, NEVER, seen))
    assert (found.layers, found.qualified, found.unseen) == (2, 1, 0)


def test_what_is_left_out_is_told(connection: Connection) -> None:
    # L6 may be epoxy, L7 may be anything, and g2 was only used.
    found = look(connection, "material: epoxy")
    assert found.left_out == LeftOut(possible=1, unidentified=1, agents=1, not_come=0)
    assert len(found.with_possible.ages) == 3
    assert look(connection, "material: shellac and role: adhesive").with_possible.ages


def test_what_nobody_saw_is_followed_no_longer_than_its_laying(connection: Connection) -> None:
    found = look(connection, "layers")
    # L2, L6, L7, L8 and that of the vase have no sighting; L1, L3 and L4 have one.
    assert found.layers == 9 and found.unseen == 5
    assert sorted(age.low for age in found.seen.ages)[:6] == [0, 0, 0, 0, 0, 13634]


def test_a_removal_in_part_is_no_end(connection: Connection) -> None:
    (pointing,) = look(connection, "material: portland").recorded.ages
    assert not pointing.ended and pointing.established


def test_round_ages(connection: Connection) -> None:
    ages = look(connection, "material: epoxy").ages
    assert [one.years for one in ages] == [*range(5, 50, 5)]
    by_years = {one.years: one for one in ages}
    assert by_years[35].recorded == (1, 1) and by_years[35].standing == (2, 0, 0)
    # L3 is not as old yet, and L5 went between its 39th and its 50th year.
    assert by_years[45].recorded == pytest.approx((0, 1)) and by_years[45].standing == (0, 0, 2)
    assert by_years[45].band is None and by_years[45].soonest is None
    assert by_years[45].last == (1, 1)


def test_a_question_that_chooses_by_lasting_is_told(connection: Connection) -> None:
    assert look(connection, "material: epoxy and not state: gone").chosen == ("state",)
    assert look(connection, "material: epoxy").chosen == ()


def test_only_layers_last(connection: Connection) -> None:
    with pytest.raises(AskError, match="it is layers that last, not objects; ask for layers"):
        look(connection, "objects")


def test_an_answer_without_layers(connection: Connection) -> None:
    found = look(connection, "object: Q.10")
    assert (found.layers, found.ages, found.recorded.horizon) == (0, (), 0)
    assert look(connection, "material: acetone and as: agent").left_out.agents == 1
