"""Taking back, putting in force again, withdrawing, amending: by the log, and politely."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sqlalchemy import Engine

from conservedb.exchange.amending import amend, shown
from conservedb.exchange.entering import enter
from conservedb.exchange.undoing import take_back
from conservedb.recording.undoing import CannotUndo
from conservedb.recording.withdrawing import CannotWithdraw, withdraw
from conservedb.store.connect import raw_of, reading, writing
from conservedb.store.log import Author
from conservedb.store.verify import verify
from tests.conftest import TODAY
from tests.recording.conftest import ME, OBJECT, entries


def state(engine: Engine) -> dict[str, list[str]]:
    """Every row but the log, as text; bounds included."""
    from conservedb.store.log_rows import current
    from conservedb.store.logging_triggers import logged_tables

    with reading(engine) as connection:
        raw = raw_of(connection)
        return {t.name: sorted(text for _, text in current(raw, t)) for t in logged_tables()}


def sound(engine: Engine) -> bool:
    with reading(engine) as connection:
        return list(verify(raw_of(connection))) == []


def test_a_removal_is_taken_back_and_put_in_force_again(engine: Engine) -> None:
    before = state(engine)
    removal = {"ref": "R1", "layer": "L1", "date": "2012", "extent": "all"}
    assert not enter(engine, lambda _: entries(removals=[removal]), ME, TODAY).faults
    after = state(engine)
    assert after != before
    take_back(engine, "A. Tester")
    assert state(engine) == before
    take_back(engine, "A. Tester", undone=True)
    assert state(engine) == after
    take_back(engine, "A. Tester")
    assert state(engine) == before
    assert sound(engine)


def test_what_somebody_changed_since_is_not_taken_back(engine: Engine) -> None:
    assert not enter(
        engine, lambda _: entries(layers=[{"ref": "L3", "place": "S1", "role": "wax"}]), ME, TODAY
    ).faults
    other = Author("Ida Holm", "amended", "spelling")
    assert not amend(engine, "layer", OBJECT, "L3", {"role": "wax coating"}, other, TODAY).faults
    before = state(engine)
    with pytest.raises(CannotUndo, match=r"layer L3 of X\.1 \(by Ida Holm on .*take the later"):
        take_back(engine, "A. Tester")
    assert state(engine) == before


def test_what_others_rest_on_is_not_taken_back(engine: Engine) -> None:
    assert not enter(
        engine, lambda _: entries(layers=[{"ref": "L3", "place": "S1"}]), ME, TODAY
    ).faults
    ida = Author("Ida Holm", "recorded")
    removal = {"ref": "R1", "layer": "L3", "date": "2012", "extent": "part"}
    assert not enter(engine, lambda _: entries(removals=[removal]), ida, TODAY).faults
    with pytest.raises(CannotUndo, match=r"changed again since: layer L3|removal R1 of X\.1 rests"):
        take_back(engine, "A. Tester")


def test_a_clash_is_told_field_by_field(engine: Engine) -> None:
    with reading(engine) as connection:
        seen = shown(connection, "layers", OBJECT, "L1")
    ida = Author("Ida Holm", "amended", "read the label again")
    assert not amend(engine, "layers", OBJECT, "L1", {"role": "barrier"}, ida, TODAY).faults
    mine = replace(ME, kind="amended", reason="seen under the lens")
    told = amend(
        engine, "layers", OBJECT, "L1", {"role": "filler", "note": "thin"}, mine, TODAY, seen
    )
    (clash,) = told.clashes
    assert (clash.field, clash.shown, clash.mine, clash.theirs, clash.by) == (
        "role",
        "adhesive",
        "filler",
        "barrier",
        "Ida Holm",
    )
    told = amend(engine, "layers", OBJECT, "L1", {"note": "thin"}, mine, TODAY, seen)
    assert not told.clashes
    with reading(engine) as connection:
        now = shown(connection, "layers", OBJECT, "L1").cells
    assert (now["role"], now["note"]) == ("barrier", "thin")


def test_a_mark_is_renamed_and_its_layers_follow(engine: Engine) -> None:
    mine = replace(ME, kind="amended", reason="a slip")
    told = amend(engine, "places", OBJECT, "J1", {"mark": "J01", "note": "n"}, mine, TODAY)
    assert told.faults == ()
    assert told.keys == ("J01",)
    with reading(engine) as connection:
        assert shown(connection, "layers", OBJECT, "L1").cells["place"] == "J01"
    taken = amend(engine, "places", OBJECT, "J01", {"mark": "B1"}, mine, TODAY)
    assert "already" in taken.faults[0].reason


def test_a_record_is_withdrawn_with_what_was_recorded_as_part_of_it(engine: Engine) -> None:
    before = state(engine)
    away = Author("A. Tester", "withdrawn", "another object was meant")
    with reading(engine) as connection:
        step = connection.exec_driver_sql("SELECT id FROM intervention").scalar_one()
    with (
        pytest.raises(CannotWithdraw, match=r"layer L1 of X\.1, layer L2 of X\.1 were recorded"),
        writing(engine, away) as connection,
    ):
        withdraw(connection, "intervention", step)
    assert state(engine) == before
    with writing(engine, away) as connection:
        gone = withdraw(connection, "intervention", step, together=True)
    assert gone.labels == ["intervention I1 of X.1", "layer L1 of X.1", "layer L2 of X.1"]
    assert state(engine)["layer"] == []
    take_back(engine, "A. Tester")
    assert state(engine) == before
    assert sound(engine)


def test_a_place_that_is_named_is_not_withdrawn(engine: Engine) -> None:
    with reading(engine) as connection:
        place = connection.exec_driver_sql("SELECT id FROM place WHERE mark='J1'").scalar_one()
    with (
        pytest.raises(CannotWithdraw, match=r"layer L1 of X\.1 name place J1 of X\.1"),
        writing(engine, Author("A. Tester", "withdrawn", "x")) as connection,
    ):
        withdraw(connection, "place", place)


def test_today_is_kept_as_a_day(engine: Engine) -> None:
    step = {"ref": "I2", "kind": "clean", "date": " Today "}
    assert not enter(engine, lambda _: entries(interventions=[step]), ME, TODAY).faults
    with reading(engine) as connection:
        assert shown(connection, "intervention", OBJECT, "I2").cells["date"] == TODAY.isoformat()


# -- what was recorded meanwhile ---------------------------------------------------------------

IDA = Author("Ida Holm", "amended", "read in the files")


def _written(engine: Engine, author: Author, **subjects: list[dict[str, str]]) -> None:
    assert not enter(engine, lambda _: entries(**subjects), author, TODAY).faults


def _refused(engine: Engine, *said: str) -> None:
    before = state(engine)
    with pytest.raises(CannotUndo) as told:
        take_back(engine, "A. Tester")
    for words in said:
        assert words in str(told.value)
    assert "nothing was taken back" in str(told.value)
    assert state(engine) == before
    assert sound(engine)


def test_a_deed_does_not_come_back_on_a_part_made_later(engine: Engine) -> None:
    deed = {"ref": "I2", "kind": "clean", "date": "1950", "components": "B2"}
    _written(engine, ME, interventions=[deed])
    withdrawing = replace(ME, kind="withdrawn", reason="of another object")
    with writing(engine, withdrawing) as connection:
        withdraw(connection, "intervention", _record(engine, "intervention", "I2"))
    assert not amend(engine, "component", OBJECT, "B2", {"made": "1980"}, IDA, TODAY).faults
    _refused(engine, "intervention I2: lies before B2 was made", "mend whichever date is wrong")


def test_a_part_is_not_made_earlier_again_under_a_later_deed(engine: Engine) -> None:
    making = replace(ME, kind="amended", reason="from the quarry's book")
    assert not amend(engine, "component", OBJECT, "B2", {"made": "1980"}, ME, TODAY).faults
    assert not amend(engine, "component", OBJECT, "B2", {"made": "1900"}, making, TODAY).faults
    deed = {"ref": "I2", "kind": "clean", "date": "1950", "components": "B2"}
    _written(engine, IDA, interventions=[deed])
    _refused(engine, "with this change intervention I2 is impossible", "before B2 was made")


def test_parts_do_not_come_to_contain_each_other(engine: Engine) -> None:
    _written(engine, ME, components=[{"mark": "B3", "parent": "B2"}])
    assert not amend(engine, "component", OBJECT, "B3", {"parent": ""}, ME, TODAY).faults
    assert not amend(engine, "component", OBJECT, "B2", {"parent": "B3"}, IDA, TODAY).faults
    _refused(engine, "a part cannot contain itself")


def _record(engine: Engine, table: str, ref: str) -> int:
    with reading(engine) as connection:
        statement = f"SELECT id FROM {table} WHERE ref = ?"
        return int(connection.exec_driver_sql(statement, (ref,)).scalar_one())


def test_what_somebody_changed_a_moment_before_is_not_withdrawn(engine: Engine) -> None:
    with reading(engine) as connection:
        seen = shown(connection, "layers", OBJECT, "L2")
    assert not amend(engine, "layer", OBJECT, "L2", {"role": "barrier"}, IDA, TODAY).faults
    before = state(engine)
    record = _record(engine, "layer", "L2")
    withdrawing = replace(ME, kind="withdrawn", reason="entered twice")
    with (
        pytest.raises(CannotWithdraw, match=r"changed since you looked at it \(by Ida Holm"),
        writing(engine, withdrawing) as connection,
    ):
        withdraw(connection, "layer", record, version=seen.version)
    assert state(engine) == before
    with reading(engine) as connection:
        seen = shown(connection, "layers", OBJECT, "L2")
    with writing(engine, withdrawing) as connection:
        withdraw(connection, "layer", record, version=seen.version)
    assert state(engine) != before
