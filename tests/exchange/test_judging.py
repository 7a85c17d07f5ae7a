"""Rules of the trade and authorisations are asked before a step is kept."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import Amended, shown
from conservedb.exchange.deeds import Step, compose_step
from conservedb.exchange.entering import enter
from conservedb.exchange.judging import HISTORY, JudgedWritten, amend_judged, enter_judged
from conservedb.knowledge.authority import Authority, Finding
from conservedb.knowledge.authority_outcomes import MISSING, NOT_RECORDED, TO_BE_RATIFIED
from conservedb.questions.asof import as_of
from conservedb.questions.checks import check
from conservedb.store.connect import raw_of, reading
from conservedb.store.log import Author
from conservedb.store.verify import verify
from tests.conftest import TODAY
from tests.exchange.bench import (
    ME,
    OBJECT,
    authorise,
    authorise_in_turn,
    cells,
    count,
    entries,
    fill,
)

ACID = Step(
    OBJECT, "clean", date="2026-10-30", places=("S1",), agent="formic-acid", form="swab",
    standing="routine care",
)  # fmt: skip
RULE = "acid-on-calcite"
AMENDING = Author("A. Tester", "amended", "a slip of the pen")


@pytest.fixture
def engine(new_database: Callable[[str], Engine], monkeypatch: pytest.MonkeyPatch) -> Engine:
    authorise(monkeypatch)
    return fill(new_database("bench.db"))


def keep(engine: Engine, step: Step, overrides: Mapping[str, str] | None = None) -> JudgedWritten:
    return enter_judged(
        engine,
        lambda refs: compose_step(refs, step, ME.who, TODAY),
        ME,
        TODAY,
        OBJECT,
        overrides or {},
    )


def test_a_broken_rule_keeps_the_step_out_until_a_reason_is_given(engine: Engine) -> None:
    before, sets = count(engine, "change"), count(engine, "change_set")
    refused = keep(engine, ACID)
    assert not refused.kept
    (finding,) = refused.findings
    assert (finding.rule, finding.severity, finding.places) == (RULE, "block", ("S1",))
    assert count(engine, "change") == before
    blank = keep(engine, ACID, {RULE: "  "})
    assert blank.findings == refused.findings
    kept = keep(engine, ACID, {RULE: "tried on a lost chip first"})
    assert kept.kept
    assert kept.written.keys == ("A. Tester", "I2", "G1")
    assert kept.written.set_number is not None
    with reading(engine) as connection:
        why = cells(connection, "acceptances", "X1")
        assert list(verify(raw_of(connection))) == []
    assert (why["rule"], why["place"], why["person"], why["reason"], why["date"]) == (
        RULE, "S1", "A. Tester", "tried on a lost chip first", TODAY.isoformat(),
    )  # fmt: skip
    assert count(engine, "change_set") == sets + 1  # the step, with its reason


def test_a_reason_is_recorded_for_each_place(engine: Engine) -> None:
    step = replace(ACID, places=("J03", "J04", "S1"))
    rules = {one.rule for one in keep(engine, step).findings}
    kept = keep(engine, step, dict.fromkeys(rules, "agreed with the curator"))
    assert kept.kept
    with reading(engine) as connection:
        rows = raw_of(connection).execute(
            "SELECT p.mark FROM acceptance a JOIN place p ON p.id = a.place_id"
            " JOIN rule r ON r.id = a.rule_id WHERE r.key = ? ORDER BY p.mark",
            (RULE,),
        )
        assert [mark for (mark,) in rows] == ["J03", "J04", "S1"]


def test_what_stood_before_is_not_held_against_a_step(engine: Engine) -> None:
    """A finding set aside at one place stands as accepted with its layer; the next is judged."""
    step = Step(OBJECT, "join", date="2026-10-01", material="paraloid b-72", places=("J05",))
    found = {one.rule for one in keep(engine, step).findings}
    assert "softening-temperature" in found
    kept = keep(engine, step, dict.fromkeys(found, "only until it is moved"))
    assert kept.kept
    with reading(engine) as connection:
        answer = check(connection, OBJECT, as_of(None, TODAY))
        why = cells(connection, "acceptances", "X1")
    assert (why["place"], why["layer"]) == ("J05", kept.written.keys[-1])
    assert found <= {one.judgement.rule.key for one in answer.accepted}
    assert not found & {one.rule.key for one in answer.findings if one.finding.places == ("J05",)}
    harmless = keep(engine, WATER)
    assert harmless.kept
    assert not [said for said in harmless.notices if "softening" in said]
    assert {one.places for one in keep(engine, replace(step, places=("J06",))).findings} == {
        ("J06",)
    }


def test_old_work_is_history_and_not_judged(
    engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    authorise(monkeypatch, _answer(MISSING, "Curator: no authorisation on record."))
    for old in (
        replace(ACID, date="1934"),
        replace(ACID, date="2025-10-31"),
        replace(ACID, date="", standing="historic"),
    ):
        kept = keep(engine, old)
        assert kept.kept, old
        assert HISTORY in kept.notices
    for recent in ("2025-11-02", "", "after 1950", "2025"):
        assert not keep(engine, replace(ACID, date=recent)).kept, recent


def test_a_reason_that_was_not_needed_is_named(engine: Engine) -> None:
    step = Step(OBJECT, "examine", date="2026-11-01", places=("S1",))
    kept = keep(engine, step, {"iron-in-stone": "x"})
    assert "The reason given for iron-in-stone was not needed." in kept.notices
    assert count(engine, "acceptance") == 0


def test_a_bad_place_comes_before_the_rules(engine: Engine) -> None:
    refused = keep(engine, replace(ACID, places=("S1", "J99")))
    assert [said.split(":")[0] for said in refused.sentences] == ["J99"]
    assert refused.findings == ()


def test_an_agent_that_no_rule_judges_is_told(engine: Engine) -> None:
    kept = keep(engine, replace(ACID, agent="limestone"))
    assert kept.kept
    assert "S1: the rules did not judge limestone there" in kept.notices


# -- authorisations -------------------------------------------------------------------------


def _answer(outcome: str, sentence: str) -> Authority:
    return Authority(("curator",), (Finding(outcome, sentence, "curator"),))


WATER = replace(ACID, agent="", kind="examine")


def test_a_step_without_authorisation_needs_a_reason_and_a_name(
    engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    authorise(monkeypatch, _answer(MISSING, "Curator: no authorisation on record."))
    before = count(engine, "change")
    for lacking in (
        WATER,
        replace(WATER, unauthorised_reason="it was falling"),
        replace(WATER, unauthorised_by="Ida Holm"),
    ):
        refused = keep(engine, lacking)
        (said,) = refused.sentences
        assert "not authorised (Curator: no authorisation on record)" in said
        assert "unauthorised_reason" in said
        assert "unauthorised_by" in said
        assert count(engine, "change") == before
    explained = replace(WATER, unauthorised_reason="it was falling", unauthorised_by="Ida Holm")
    assert keep(engine, explained).kept


@pytest.mark.parametrize("outcome", [NOT_RECORDED, TO_BE_RATIFIED, "cannot tell"])
def test_what_is_only_to_be_known_is_a_notice(
    engine: Engine, monkeypatch: pytest.MonkeyPatch, outcome: str
) -> None:
    authorise(monkeypatch, _answer(outcome, "Said so."))
    kept = keep(engine, WATER)
    assert kept.kept
    assert "Said so." in kept.notices


def test_an_amendment_is_not_refused_for_what_was_lacking_before(
    engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert keep(engine, WATER).kept
    authorise(monkeypatch, _answer(MISSING, "Curator: none."))
    told = _amend(engine, "interventions", "I2", {"note": "by raking light"})
    assert told.kept, told.sentences


def test_an_amendment_that_loses_the_authorisation_is_refused(
    engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert keep(engine, WATER).kept
    answers = iter((Authority((), ()), _answer(MISSING, "Curator: none.")))
    authorise_in_turn(monkeypatch, answers)
    told = _amend(engine, "interventions", "I2", {"kind": "sample"})
    assert "not authorised (Curator: none)" in told.sentences[0]


# -- deviations from the plan ---------------------------------------------------------------


@pytest.fixture
def planned(engine: Engine) -> Engine:
    """Two joints are to be glued with an acrylic, by a plan of a treatment not ended."""
    plan = entries(
        treatments=[{"ref": "T1"}],
        plans=[{"ref": "P1", "treatment": "T1", "version": "1"}],
        planned_steps=[
            {
                "ref": "PS1",
                "plan": "P1",
                "position": "1",
                "kind": "join",
                "material": "b72",
                "places": "J01; J02",
            }
        ],
    )
    assert not enter(engine, lambda _: plan, ME, TODAY).faults
    return engine


GLUED = Step(
    OBJECT, "join", date="2026-10-30", places=("J01", "J02"), material="b72", treatment="T1",
    planned_step="PS1", standing="planned",
)  # fmt: skip


def keep_glued(engine: Engine, step: Step) -> JudgedWritten:
    """Whatever the rules say of it is set aside; only the plan is in question."""
    rules = {one.rule for one in keep(engine, step).findings}
    return keep(engine, step, dict.fromkeys(rules, "only until it is moved"))


@pytest.mark.parametrize(
    ("step", "clause"),
    [
        (
            replace(GLUED, material="epoxy"),
            "planned with acrylic resin (ethyl methacrylate copolymer) (PS1)",
        ),
        (replace(GLUED, places=("J01", "J07")), "planned at J01, J02 (PS1), and done at J07"),
        (replace(GLUED, kind="fill"), "planned as join (PS1), not fill"),
    ],
)
def test_a_step_that_is_not_as_planned_says_why(planned: Engine, step: Step, clause: str) -> None:
    before = count(planned, "change")
    refused = keep_glued(planned, step)
    assert not refused.kept
    assert "the step is not as planned" in refused.sentences[0]
    assert clause in refused.sentences[0]
    assert count(planned, "change") == before
    kept = keep_glued(planned, replace(step, deviation="the joint was wider than seen before"))
    assert kept.kept, kept.sentences


def test_a_step_as_planned_need_not_say_anything(planned: Engine) -> None:
    assert keep_glued(planned, GLUED).kept


def test_a_layer_added_or_amended_afterwards_is_held_against_the_plan(planned: Engine) -> None:
    kept = keep_glued(planned, GLUED)
    layer = kept.written.keys[-1]
    told = _amend(planned, "layers", layer, {"material": "epoxy"})
    assert "the step is not as planned" in told.sentences[0], told
    step = next(one.cells["ref"] for one in kept.entries if one.subject == "interventions")
    more = entries(
        layers=[{"ref": "L9", "place": "J02", "intervention": step, "material": "epoxy"}]
    )
    refused = enter_judged(planned, lambda _: more, ME, TODAY, OBJECT)
    assert "the step is not as planned" in refused.sentences[0], refused
    assert _amend(planned, "interventions", step, {"deviation": "it had to hold more"}).kept
    told = _amend(planned, "layers", layer, {"material": "epoxy"})
    assert not told.sentences


# -- amending -------------------------------------------------------------------------------


def _amend(
    engine: Engine,
    subject: str,
    key: str,
    change: Mapping[str, str],
    overrides: Mapping[str, str] | None = None,
) -> JudgedWritten:
    return amend_judged(
        engine, subject, OBJECT, key, change, AMENDING, TODAY, None, overrides or {}
    )


def test_an_amended_agent_is_judged_anew(engine: Engine) -> None:
    assert keep(engine, replace(ACID, agent="ethanol")).kept
    told = _amend(engine, "agents", "G1", {"material": "formic-acid"})
    assert [one.rule for one in told.findings] == [RULE]
    assert _amend(engine, "agents", "G1", {"material": "formic-acid"}, {RULE: "no choice"}).kept
    assert count(engine, "acceptance") == 1
    assert _amend(engine, "agents", "G1", {"note": "two swabs"}).kept


def test_a_clash_comes_through(engine: Engine) -> None:
    assert keep(engine, WATER).kept
    with reading(engine) as connection:
        seen = shown(connection, "interventions", OBJECT, "I2")
    assert _amend(engine, "interventions", "I2", {"note": "theirs"}).kept
    told = amend_judged(
        engine, "interventions", OBJECT, "I2", {"note": "mine"}, AMENDING, TODAY, seen
    )
    assert not told.kept
    assert isinstance(told.written, Amended)
    assert [(one.mine, one.theirs) for one in told.written.clashes] == [("mine", "theirs")]


def test_a_trial_keeps_nothing(engine: Engine) -> None:
    before = count(engine, "change")
    told = enter_judged(
        engine, lambda refs: compose_step(refs, WATER, ME.who, TODAY), ME, TODAY, OBJECT, trial=True
    )
    assert told.kept
    assert told.written.keys == ("A. Tester", "I2")
    assert count(engine, "change") == before


def test_other_records_are_not_judged(engine: Engine) -> None:
    crust = {"ref": "L9", "place": "S1", "origin": "arisen", "role": "crust"}
    told = enter_judged(engine, lambda _: entries(layers=[crust]), ME, TODAY, OBJECT)
    assert told.kept
    assert told.notices == ()
    assert not enter(engine, lambda _: entries(layers=[crust]), ME, TODAY).faults
