"""What a reviewer found, who tried to break the record: each stays mended."""

from __future__ import annotations

import datetime
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import amend
from conservedb.exchange.entering import Entry, Refs, enter
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.exchange.undoing import take_back
from conservedb.questions.authority import how_step_stands
from conservedb.questions.log import log, set_changes
from conservedb.recording.withdrawing import withdraw
from conservedb.store.connect import raw_of, reading, writing
from conservedb.store.known_head import remember, remembered
from conservedb.store.log import Author, Head, head
from tests.conftest import TODAY
from tests.recording.conftest import ME, OBJECT, entries

WHY = Author("A. Tester", "amended", "a slip")


def number_of(engine: Engine) -> int:
    with reading(engine) as connection:
        return int(connection.exec_driver_sql("SELECT max(id) FROM change_set").scalar_one())


def outcomes(engine: Engine, ref: str) -> list[tuple[str, str]]:
    with reading(engine) as connection:
        row = connection.exec_driver_sql(
            "SELECT object_id, id FROM intervention WHERE ref = ?", (ref,)
        ).one()
        return [
            (f.outcome, f.sentence) for f in how_step_stands(connection, *row).authority.findings
        ]


@pytest.fixture
def authorised(engine: Engine) -> Engine:
    written = enter(
        engine,
        lambda _: entries(
            treatments=[{"ref": "T1", "begun": "2026-10-01"}],
            plans=[{"ref": "P1", "treatment": "T1", "version": "1", "people": "A. Tester"}],
            planned_steps=[{"ref": "PS1", "plan": "P1", "position": "1", "kind": "clean"}],
            needed_authorisations=[{"kind": "clean", "capacity": "curator"}],
        ),
        ME,
        TODAY,
    )
    assert written.faults == ()
    leave = {"ref": "A1", "plan": "P1", "capacity": "curator", "decision": "authorised"}
    leave |= {"person": "Ida Holm", "date": "2026-10-05"}
    done = {"ref": "I9", "kind": "clean", "planned_step": "PS1", "standing": "planned"}
    done |= {"treatment": "T1", "date": "2026-10-20"}
    assert not enter(engine, lambda _: entries(authorisations=[leave]), ME, TODAY).faults
    assert not enter(engine, lambda _: entries(interventions=[done]), ME, TODAY).faults
    return engine


def test_a_plan_rewritten_after_it_was_authorised_is_authorised_no_longer(
    authorised: Engine,
) -> None:
    assert [outcome for outcome, _ in outcomes(authorised, "I9")] == ["in force"]
    told = amend(authorised, "planned_step", OBJECT, "PS1", {"technique": "chisel"}, WHY, TODAY)
    assert told.faults == ()
    ((outcome, sentence),) = outcomes(authorised, "I9")
    assert outcome == "cannot tell"
    assert "the plan was changed after that, by A. Tester" in sentence
    take_back(authorised, "A. Tester")
    assert [outcome for outcome, _ in outcomes(authorised, "I9")] == ["in force"]


def test_what_was_so_before_the_signature_and_is_undone_after_it_counts(engine: Engine) -> None:
    assert not enter(
        engine,
        lambda _: entries(
            treatments=[{"ref": "T1"}],
            plans=[{"ref": "P1", "treatment": "T1", "version": "1"}],
            planned_steps=[
                {"ref": "PS1", "plan": "P1", "position": "1", "kind": "clean", "note": "chisel"}
            ],
            needed_authorisations=[{"kind": "clean", "capacity": "curator"}],
        ),
        ME,
        TODAY,
    ).faults
    assert not amend(engine, "planned_step", OBJECT, "PS1", {"note": "by hand"}, WHY, TODAY).faults
    softened = number_of(engine)
    leave = {"ref": "A1", "plan": "P1", "capacity": "curator", "decision": "authorised"}
    leave |= {"person": "Ida Holm", "date": "2026-10-05"}
    done = {"ref": "I9", "kind": "clean", "planned_step": "PS1", "standing": "planned"}
    done |= {"treatment": "T1", "date": "2026-10-20"}
    for made in (entries(authorisations=[leave]), entries(interventions=[done])):
        assert not enter(engine, lambda _, made=made: made, ME, TODAY).faults  # type: ignore[misc]
    take_back(engine, "A. Tester", softened)
    ((outcome, _),) = outcomes(engine, "I9")
    assert outcome == "cannot tell"


def test_a_ref_and_a_uuid_are_never_given_again(engine: Engine) -> None:
    measured = {"ref": "M1", "quantity": "crack width", "value": "1", "unit": "mm"}
    assert not enter(engine, lambda _: entries(readings=[measured]), ME, TODAY).faults
    with reading(engine) as connection:
        old = connection.exec_driver_sql("SELECT id, uuid FROM reading").one()
    with writing(engine, Author("A. Tester", "withdrawn", "wrong joint")) as connection:
        withdraw(connection, "reading", old[0])
    withdrawn = number_of(engine)

    def again(refs: Refs) -> list[Entry]:
        return entries(readings=[measured | {"ref": refs.next("readings", OBJECT)}])

    written = enter(engine, again, ME, TODAY)
    assert written.keys == ("M2",)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT uuid FROM reading").scalar_one() != old[1]
    take_back(engine, "A. Tester", withdrawn)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM reading").scalar_one() == 2


def test_a_mark_that_was_given_up_may_be_given_again(engine: Engine) -> None:
    assert not amend(engine, "place", OBJECT, "J1", {"mark": "J1x"}, WHY, TODAY).faults
    place = {"mark": "J1", "kind": "surface", "component": "B2"}
    assert not enter(engine, lambda _: entries(places=[place]), ME, TODAY).faults


def test_what_is_on_record_is_not_filled_in_by_the_way(engine: Engine) -> None:
    before = number_of(engine)
    told = enter(engine, lambda _: entries(people=[{"name": "ida holm", "note": "x"}]), ME, TODAY)
    (fault,) = told.faults
    assert "on record already" in fault.reason
    told = enter(engine, lambda _: entries(people=[{"name": "Ida Holm"}]), ME, TODAY)
    assert (told.faults, told.set_number) == ((), None)  # nothing was written, nothing is numbered
    assert number_of(engine) == before


def test_the_first_thing_of_a_new_writer_can_be_undone_after_the_second(engine: Engine) -> None:
    def measured(ref: str) -> list[Entry]:
        row = {"ref": ref, "quantity": "q", "value": "1", "unit": "mm", "people": "New Hand"}
        people = [{"name": "New Hand"}] if ref == "M1" else []
        return entries(people=people, readings=[row])

    hand = Author("New Hand", "recorded")
    assert not enter(engine, lambda _: measured("M1"), hand, TODAY).faults
    first = number_of(engine)
    assert not enter(engine, lambda _: measured("M2"), hand, TODAY).faults
    take_back(engine, "New Hand", first)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT ref FROM reading").scalars().all() == ["M2"]


def test_the_log_of_an_object_has_lists_too_and_every_set_can_be_read(engine: Engine) -> None:
    measured = {"ref": "M1", "quantity": "q", "value": "1", "unit": "mm", "people": "A. Tester"}
    assert not enter(engine, lambda _: entries(readings=[measured]), ME, TODAY).faults
    assert not amend(engine, "reading", OBJECT, "M1", {"people": "Ida Holm"}, WHY, TODAY).faults
    last = number_of(engine)
    with reading(engine) as connection:
        assert log(connection, number=OBJECT).sets[0].number == last
        for number in range(1, last + 1):
            assert set_changes(connection, number)


@pytest.mark.parametrize("date", ["2036-01-01", "Nov 2062", "2026-11-03"])
def test_work_of_the_future_is_asked_about(engine: Engine, date: str) -> None:
    told = enter(engine, lambda _: entries(interventions=[{"ref": "I2", "date": date}]), ME, TODAY)
    assert "lies in the future" in told.faults[0].reason


@pytest.mark.parametrize("date", ["2026-11-02", "2026", "after 1950", "1934", ""])
def test_what_may_have_been_is_taken(engine: Engine, date: str) -> None:
    step = {"ref": "I2", "kind": "clean", "date": date}
    assert enter(engine, lambda _: entries(interventions=[step]), ME, TODAY).faults == ()


def test_a_treatment_does_not_end_before_it_begins(engine: Engine) -> None:
    row = {"ref": "T1", "begun": "2026-10-01", "ended": "2020-01-01"}
    told = enter(engine, lambda _: entries(treatments=[row]), ME, TODAY)
    assert "before it begins" in told.faults[0].reason


def test_an_end_of_the_log_that_is_gone_is_remembered(engine: Engine) -> None:
    with reading(engine) as connection:
        now = head(raw_of(connection))
    assert now is not None
    cut = Head(now.number + 5, "f" * 64)
    remember("some-database", cut, lambda _: True)
    remember("some-database", now, lambda _: False)
    assert remembered("some-database") == cut


def test_nobody_is_nobody_however_it_is_written(engine: Engine) -> None:
    from conservedb.store.problems import DatabaseProblem

    for name in ("", "  ", "\u200b", "\n"):
        with pytest.raises(DatabaseProblem, match="nobody is named"):
            enter(engine, lambda _: [], Author(name, "recorded"), datetime.date(2026, 1, 1))


def test_a_step_of_a_closed_treatment_is_taken_back_only_with_a_reason(engine: Engine) -> None:
    from conservedb.recording.undoing import CannotUndo

    row = {"ref": "T1", "begun": "2026-10-01"}
    assert not enter(engine, lambda _: entries(treatments=[row]), ME, TODAY).faults
    step = {"ref": "I2", "kind": "fill", "treatment": "T1", "date": "2026-10-02"}
    assert not enter(engine, lambda _: entries(interventions=[step]), ME, TODAY).faults
    done = number_of(engine)
    take_back(engine, "A. Tester", done)  # it is open: no reason
    take_back(engine, "A. Tester", undone=True)
    assert not amend(engine, "treatment", OBJECT, "T1", {"ended": "2026-10-30"}, WHY, TODAY).faults
    again = number_of(engine) - 1
    with pytest.raises(CannotUndo, match=r"T1 was ended .* say why: conservedb undo"):
        take_back(engine, "A. Tester", again)
    take_back(engine, "A. Tester", again, "entered for another")


def test_a_withdrawn_record_does_not_come_back_unremarked(engine: Engine, tmp_path: Path) -> None:
    measured = {"ref": "M1", "quantity": "q", "value": "1", "unit": "mm"}
    assert not enter(engine, lambda _: entries(readings=[measured]), ME, TODAY).faults
    with reading(engine) as connection:
        export_folder(connection, tmp_path / "out")
    with writing(engine, Author("A. Tester", "withdrawn", "bogus")) as connection:
        record = connection.exec_driver_sql("SELECT id FROM reading").scalar_one()
        withdraw(connection, "reading", record)
    report = import_folder(engine, tmp_path / "out", today=TODAY, who="A. Tester")
    assert report.written
    told = [one.reason for one in report.notices if one.file == "readings.csv"]
    assert any("was withdrawn from this database before" in reason for reason in told)
