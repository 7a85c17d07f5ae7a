"""What the start screen shows: what is unfinished, temporary, restless or due."""

from __future__ import annotations

import datetime

from sqlalchemy import Connection

from conservedb.questions.start import start
from tests.conftest import TODAY


def test_what_wants_attention(connection: Connection) -> None:
    answer = start(connection, TODAY)
    (treatment,) = answer.open_treatments
    assert (treatment.object, treatment.mark, treatment.label) == ("Q.1", "T2", "Move")
    assert treatment.detail == "begun September 2026, Ines Calder"
    (layer,) = answer.temporary_layers
    assert (layer.object, layer.mark, layer.detail) == ("Q.1", "S1", "L7")
    (joint,) = answer.restless_joints
    assert (joint.object, joint.mark, joint.detail) == ("Q.1", "J1", "moving, carries 85 kg")
    (check,) = answer.checks_due
    assert (check.mark, check.detail) == ("S1", "until 2020")
    assert [hit.object for hit in answer.recent_objects] == ["Q.1", "Q.2", "Q.10"]
    assert answer.counts == {"objects": 3, "treatments": 2, "people": 2}


def test_it_looks_at_the_day(connection: Connection) -> None:
    earlier = start(connection, datetime.date(2019, 1, 1))
    assert earlier.open_treatments == earlier.temporary_layers == ()
    assert earlier.restless_joints == earlier.checks_due == ()
