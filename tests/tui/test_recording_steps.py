"""Steps from the object screen: one key opens, one saves; over many places; the same again."""

from __future__ import annotations

from pathlib import Path

from conservedb.store.connect import connect_sqlite
from conservedb.tui.screens.desk_form import DeskForm
from conservedb.tui.screens.object import ObjectScreen
from tests.tui.at_the_desk import at_desk
from tests.tui.conftest import screen_text
from tests.tui.forms import calm, row_of, typed


def rows(path: Path, sql: str) -> list[tuple[object, ...]]:
    raw = connect_sqlite(path)
    try:
        return list(raw.execute(sql))
    finally:
        raw.close()


LAST = """SELECT i.kind, i.date_words, i.recorded_over, count(l.id), group_concat(p.mark, ' ')
    FROM intervention i LEFT JOIN layer l ON l.intervention_id = i.id
    LEFT JOIN place p ON p.id = l.place_id
    WHERE i.id = (SELECT max(id) FROM intervention) GROUP BY i.id"""


async def test_two_keys_record_the_same_as_last_time(demo: Path) -> None:
    async with at_desk(demo, "S07") as pilot:
        await typed(pilot, "s")
        assert isinstance(pilot.app.screen, DeskForm)
        assert row_of(pilot, "material").value == "cdd"
        assert row_of(pilot, "places").value == "S07"
        await typed(pilot, "<ctrl+s>")
        await calm(pilot)
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert "saved: I" in screen_text(pilot.app)
    assert rows(demo, LAST) == [("support", "2026-11-02", None, 1, "S07")]


async def test_ticks(demo: Path) -> None:
    async with at_desk(demo, "J14") as pilot:
        await typed(pilot, "<space>", "<down>", "<space>")
        print(screen_text(pilot.app))
        assert pilot.app.screen.query_one("#parts").ticked == {"J14": True, "M07": True}
