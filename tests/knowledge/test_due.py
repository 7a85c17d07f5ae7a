"""What guidelines ask of a record: facts from the guidelines named in `guidelines.SOURCES`."""

from __future__ import annotations

from itertools import chain, combinations

import pytest

from conservedb.knowledge.due import fields_asked, is_blank, photographs_asked
from conservedb.knowledge.guidelines import (
    CLOSED,
    DEMANDS,
    EXAMINATION,
    IN_PROGRESS,
    PHOTOGRAPHS,
    PLAN,
    SOURCES,
    STAGES,
    Demand,
)


def always(stage: str) -> list[Demand]:
    return [one for one in DEMANDS if stage in one.stages and not one.where_it_applies]


@pytest.mark.parametrize("stage", STAGES)
def test_an_empty_record_lacks_all_that_always_applies(stage: str) -> None:
    assert [one.field for one in fields_asked(stage, {})] == [one.field for one in always(stage)]


@pytest.mark.parametrize("stage", STAGES)
def test_each_field_is_asked_for_exactly_while_it_is_blank(stage: str) -> None:
    full: dict[str, object] = {one.field: "unknown" for one in DEMANDS if stage in one.stages}
    assert fields_asked(stage, full) == ()
    blanks: tuple[object, ...] = (None, "", " \n", (), [])
    for blank in blanks:
        for field in full:
            (found,) = fields_asked(stage, {**full, field: blank})
            assert found.field == field
            assert found.sentence.endswith("; not recorded.")


@pytest.mark.parametrize(
    ("stage", "field", "level", "source"),
    [
        (EXAMINATION, "circumstances", "must", "AIC C25"),
        (EXAMINATION, "methods", "must", "AIC C25"),
        (EXAMINATION, "seen", "must", "AIC C25"),
        (EXAMINATION, "past_treatment", "must", "AIC C25"),
        (EXAMINATION, "warnings", "should", "Spectrum"),
        (PLAN, "alternatives", "must", "AIC C26; EN 16853"),
        (PLAN, "authorisation", "must", "Spectrum; AIC C26; EN 16853"),
        (IN_PROGRESS, "step_people", "must", "AIC C27; ECCO 10"),
        (IN_PROGRESS, "aims", "should", "ICOM-CC 2008"),
        (CLOSED, "result", "must", "AIC C27; AIC GfP 27"),
        (CLOSED, "next_check", "should", "Spectrum"),
    ],
)
def test_who_asks_for_what(stage: str, field: str, level: str, source: str) -> None:
    (found,) = [one for one in fields_asked(stage, {}) if one.field == field]
    assert (found.level, found.source) == (level, source)


def test_the_sentence_says_who_asks() -> None:
    (found,) = [one for one in fields_asked(CLOSED, {}) if one.field == "next_check"]
    assert found.sentence == "The date of the next check: recommended by Spectrum; not recorded."


def test_what_does_not_concern_a_record_is_not_asked_of_it() -> None:
    fields = {one.field for one in fields_asked(IN_PROGRESS, {})}
    assert not fields & {"deviation", "kept_where", "concentration", "sample_consent"}
    fields = {one.field for one in fields_asked(IN_PROGRESS, {"deviation": "", "place": None})}
    assert {"deviation", "place"} <= fields


def test_nought_and_no_are_recorded() -> None:
    assert [is_blank(value) for value in (0, 0.0, False, "no", "0")] == [False] * 5


def test_an_unknown_stage_is_refused() -> None:
    with pytest.raises(ValueError, match="there is no stage 'closing'"):
        fields_asked("closing", {})


@pytest.mark.parametrize(
    ("stage", "samples", "expected"),
    [
        (EXAMINATION, False, ["before"]),
        (EXAMINATION, True, ["before", "samples"]),
        (PLAN, True, ["before"]),
        (IN_PROGRESS, False, ["before", "hidden"]),
        (CLOSED, True, ["before", "hidden", "samples", "after"]),
    ],
)
def test_photographs_of_each_stage(stage: str, samples: bool, expected: list[str]) -> None:
    found = photographs_asked(stage, 0, samples=samples)
    assert [one.field for one in found] == [f"photograph {name}" for name in expected]
    assert all("asked for; none linked" in one.sentence for one in found)


def test_cited_photographs_do_not_settle_what_they_show() -> None:
    found = photographs_asked(CLOSED, 3)
    assert len(found) == 3
    for one in found:
        assert "asked for; 3 cited, what they show is not recorded" in one.sentence
        assert "none linked" not in one.sentence


def test_every_source_is_cited_in_full_or_marked() -> None:
    named = set(chain(*(one.source.split("; ") for one in (*DEMANDS, *PHOTOGRAPHS))))
    assert named == set(SOURCES)
    for citation in SOURCES.values():
        assert "http" in citation or "(from memory)" in citation or "no source" in citation


def test_no_field_is_asked_for_twice_of_one_record() -> None:
    for one, other in combinations(DEMANDS, 2):
        assert one.field != other.field or not set(one.stages) & set(other.stages)
