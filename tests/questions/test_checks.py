"""Checking an object and the whole collection: order, acceptance, what the department sets."""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path

import pytest
from sqlalchemy import Connection

from conservedb.knowledge.rule_case import Finding
from conservedb.knowledge.rules import CONDUCT, RULES, Rule, consequence
from conservedb.questions.asof import as_of
from conservedb.questions.basics import NoSuch
from conservedb.questions.checks import check, check_all
from conservedb.questions.checks_answers import CAUTIONS, CheckAnswer
from tests.conftest import TODAY
from tests.questions.checking import ON, asking, changed, checked, connection, found

__all__ = ["checked", "connection"]

BARE = "cross-linked-without-barrier"


def rules_of(answer: CheckAnswer) -> list[str]:
    return [one.finding.rule for one in answer.findings]


# -- acceptance ---------------------------------------------------------------------------


def test_what_is_accepted_stands_apart_with_who_and_why(connection: Connection) -> None:
    answer = check(connection, "accepted.still", ON)
    assert BARE not in rules_of(answer)
    (one,) = answer.accepted
    assert one.judgement.finding.rule == BARE
    assert (one.by.person, one.by.reason) == (
        "Ines Calder",
        "Carries nothing since the frame of 2013.",
    )
    assert one.by.review.said == "1 June 2027"
    assert answer.overdue == ()


def test_it_comes_back_after_the_review(connection: Connection) -> None:
    answer = check(connection, "accepted.over", ON)
    assert BARE in rules_of(answer) and answer.accepted == ()
    assert [one.ref for one in answer.overdue] == ["a1"]


def test_it_holds_only_from_its_day_to_that_of_its_review(connection: Connection) -> None:
    for day, stands in (("2012", True), ("2013-02", False), ("2025-03-20", False)):
        answer = check(connection, "accepted.over", as_of(day, TODAY))
        assert (BARE in rules_of(answer)) is stands, day


def test_without_a_review_it_stays_accepted(connection: Connection) -> None:
    assert len(check(connection, "accepted.for-good", ON).accepted) == 1


def test_a_finding_about_two_places_is_not_accepted_for_one(checked: Path, tmp_path: Path) -> None:
    rule = "creep-temperature"
    moved = (
        f"UPDATE acceptance SET rule_id = (SELECT id FROM rule WHERE key = '{rule}')",
        "UPDATE acceptance SET object_id = (SELECT id FROM object WHERE number = 'two.places'),"
        " place_id = (SELECT p.id FROM place p JOIN object o ON o.id = p.object_id"
        " WHERE o.number = 'two.places' AND p.mark = 'J1') WHERE review_derived = 'blank'",
    )
    with asking(changed(checked, tmp_path / "moved.db", *moved)) as connection:
        (finding,) = found(connection, "two.places", rule)
        assert finding.places == ("J1", "J2")
        assert check(connection, "two.places", ON).accepted == ()


# -- order --------------------------------------------------------------------------------


def test_severity_then_load_then_certainty(connection: Connection) -> None:
    answer = check(connection, "support.moves", ON)
    assert answer.findings[0].rule.severity == "block"
    rules = {one.rule.key: one.rule for one in answer.findings}
    keys = [consequence(one.finding, rules) for one in answer.findings]
    assert keys == sorted(keys)
    assert answer.foremost == answer.findings[:3]


def test_consequence() -> None:
    rule = {
        key: Rule(key, "", severity, "safety")
        for key, severity in (("a", "block"), ("b", "warn"), ("c", "inform"))
    }
    ordered = [
        Finding("a", "blocks, though it carries nothing", load_kg=0),
        Finding("b", "heavy", load_kg=540),
        Finding("b", "light and certain", load_kg=2),
        Finding("b", "light and possible", load_kg=2, certain=False),
        Finding("b", "light and not told", load_kg=2, missing=("a fact",)),
        Finding("b", "a load that is not recorded may be any"),
        Finding("b", "carries nothing", load_kg=0),
        Finding("c", "heavy, but only informs", load_kg=540),
    ]
    mixed = ordered[4:] + ordered[:4]
    assert sorted(mixed, key=lambda one: consequence(one, rule)) == ordered


# -- what the department sets -------------------------------------------------------------


def test_a_rule_switched_off_is_silent_and_said_to_be(checked: Path, tmp_path: Path) -> None:
    off = f"UPDATE rule SET active = 'no' WHERE key = '{BARE}'"
    with asking(changed(checked, tmp_path / "off.db", off)) as connection:
        answer = check(connection, "bare.none", ON)
    assert BARE not in rules_of(answer) and BARE not in answer.ran
    assert (BARE, "switched off by the department") in answer.silent


def test_a_severity_of_its_own_counts(checked: Path, tmp_path: Path) -> None:
    block = f"UPDATE rule SET severity = 'block' WHERE key = '{BARE}'"
    with asking(changed(checked, tmp_path / "block.db", block)) as connection:
        answer = check(connection, "bare.none", ON)
    assert answer.findings[0].finding.rule == BARE
    assert answer.findings[0].rule.severity == "block"


def test_conduct_is_not_judged_until_a_day_is_set(checked: Path, tmp_path: Path) -> None:
    blank = "UPDATE setting SET value = NULL WHERE name = 'conduct from'"
    with asking(changed(checked, tmp_path / "blank.db", blank)) as connection:
        for number in ("photo.none", "swab.untested"):
            assert not set(CONDUCT) & set(rules_of(check(connection, number, ON)))
        silent = dict(check(connection, "photo.none", ON).silent)
    assert set(CONDUCT) <= set(silent)


def test_another_margin_and_another_age(checked: Path, tmp_path: Path) -> None:
    path = changed(
        checked,
        tmp_path / "set.db",
        "UPDATE setting SET value = '10' WHERE name = 'creep margin'",
        "UPDATE setting SET value = '80' WHERE name = 'cellulose nitrate age'",
    )
    with asking(path) as connection:
        assert found(connection, "creep.hall", "creep-temperature") == []
        assert found(connection, "nitrate.old", "cellulose-nitrate-age") == []


def test_a_setting_that_is_no_number_is_said_and_not_guessed(checked: Path, tmp_path: Path) -> None:
    bad = "UPDATE setting SET value = 'a lot' WHERE name = 'creep margin'"
    with asking(changed(checked, tmp_path / "bad.db", bad)) as connection:
        answer = check(connection, "creep.hall", ON)
    assert answer.notes == (
        "the setting 'creep margin' reads 'a lot', which is no number; 15 degrees C was"
        " taken; write a number from 0 to 100",
    )


def test_a_rule_of_the_departments_own_is_not_judged_in_silence(
    checked: Path, tmp_path: Path
) -> None:
    own = "UPDATE rule SET key = 'no-work-after-dark' WHERE key = 'dissimilar-metals'"
    with asking(changed(checked, tmp_path / "own.db", own)) as connection:
        answer = check(connection, "metals.touch", ON)
    assert ("no-work-after-dark", "the program does not know how to judge it") in answer.silent


# -- scope --------------------------------------------------------------------------------


def test_a_place_alone(connection: Connection) -> None:
    answer = check(connection, "vapour.lead", ON, "s1")
    assert answer.place == "S1"
    assert all("S1" in one.finding.places for one in answer.findings)
    assert check(connection, "vapour.lead", ON, "J1").findings == ()
    assert rules_of(check(connection, "iron.cramp", ON, "J1")) == ["iron-in-stone"]


def test_no_such_object_or_place(connection: Connection) -> None:
    with pytest.raises(NoSuch):
        check(connection, "nothing", ON)
    with pytest.raises(NoSuch, match=r"location of iron\.cramp"):
        check(connection, "iron.cramp", ON, "J9")


def test_the_past_is_judged_as_it_stood(connection: Connection) -> None:
    before = check(connection, "bare.none", as_of("1985", TODAY))
    assert BARE not in rules_of(before)


def test_the_collection_is_the_sum_of_its_objects(connection: Connection) -> None:
    whole = check_all(connection, ON)
    summed = {
        (row.object, row.rule.key): (row.broken, row.cannot_tell, row.accepted)
        for row in whole.rows
    }
    numbers = {row.object for row in whole.rows}
    assert whole.objects > len(numbers) > 40
    for number in numbers:
        answer = check(connection, number, ON)
        counted = Counter((one.finding.rule, one.finding.outcome) for one in answer.findings)
        kept = Counter(one.judgement.finding.rule for one in answer.accepted)
        for rule in {rule for rule, _ in counted}:
            expected = counted[rule, "broken"], counted[rule, "cannot tell"], kept[rule]
            assert summed[number, rule] == expected, (number, rule)
    rules = {row.rule.key: row.rule for row in whole.rows}
    keys = [consequence(row.foremost, rules) for row in whole.rows]
    assert keys == sorted(keys)


def test_every_rule_of_objects_speaks_somewhere(connection: Connection) -> None:
    whole = check_all(connection, ON)
    heat_water_and_acid = {"heat-near-softening", "water-near-sensitive", "acid-on-calcite"}
    assert {row.rule.key for row in whole.rows} == set(RULES) - heat_water_and_acid


def test_nothing_is_ever_said_to_be_right(connection: Connection) -> None:
    whole = check_all(connection, ON)
    said = [row.foremost.sentence for row in whole.rows] + list(CAUTIONS)
    praise = re.compile(r"\b(safe|in order|all right|no risk|harmless|correct|permitted)\b")
    assert not [words for words in said if praise.search(words)]
    assert all(row.foremost.outcome in ("broken", "cannot tell") for row in whole.rows)
