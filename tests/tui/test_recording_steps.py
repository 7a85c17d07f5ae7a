"""Steps from the object screen: one key opens, one saves; over many places; the same again."""

from __future__ import annotations

from pathlib import Path

import pytest

from conservedb.store.connect import connect_sqlite
from conservedb.tui.screens.desk_form import DeskForm
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.widgets.parts import Parts
from tests.tui.at_the_desk import at_desk, needing_nobody
from tests.tui.conftest import screen_text
from tests.tui.forms import calm, row_of, typed

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them


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


async def test_ticks_are_signs_and_go_with_escape(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<space>", "<down>", "<space>")
        screen = screen_text(pilot.app)
        assert "✓ J14" in screen
        assert "✓ M07" in screen
        assert "2 ticked" in screen
        await typed(pilot, "<space>")
        assert "✓ M07" not in screen_text(pilot.app)
        await typed(pilot, "<escape>")
        assert "✓" not in screen_text(pilot.app)
        assert isinstance(pilot.app.screen, ObjectScreen)


async def test_twelve_places_one_of_them_bad_then_mended(demo: Path) -> None:
    needing_nobody(demo)
    before = rows(demo, "SELECT count(*) FROM layer")
    async with at_desk(demo, size=(140, 40)) as pilot:
        await typed(pilot, "v", "joint", "<enter>")
        parts = pilot.app.screen.query_one(Parts)
        parts.untick(parts.ticked_places[12:])
        await typed(pilot, "s")
        assert "over 12 locations: J01, J02" in screen_text(pilot.app)
        places = row_of(pilot, "places")
        good = places.value
        places.value = good.replace("J08", "J98")
        await typed(pilot, "<ctrl+s>")
        assert isinstance(pilot.app.screen, DeskForm)
        assert "“J98” names no place on record" in screen_text(pilot.app)
        assert rows(demo, "SELECT count(*) FROM layer") == before
        places.value = good
        await typed(pilot, "<ctrl+s>")
        assert "at 12 locations; change set" in screen_text(pilot.app)
        assert "ticked" not in screen_text(pilot.app).replace("tick", "", 1)
    ((kind, _, over, layers, _),) = rows(demo, LAST)
    assert (kind, over, layers) == ("support", 12, 12)
    (count,) = before[0]
    assert isinstance(count, int)
    assert rows(demo, "SELECT count(*) FROM layer") == [(count + 12,)]
    assert rows(demo, "SELECT DISTINCT recorded_over FROM layer ORDER BY id DESC LIMIT 1") == [
        (12,)
    ]


async def test_the_same_again_on_the_next_place(demo: Path) -> None:
    needing_nobody(demo)
    async with at_desk(demo, "J14") as pilot:
        await typed(pilot, "s", "<ctrl+s>")
        await typed(pilot, "<down>", "y")
        assert "support: cdd, melt" in screen_text(pilot.app)
        await typed(pilot, "n")
        assert len(rows(demo, "SELECT 1 FROM change_set WHERE kind = 'recorded'")) == 1
        await typed(pilot, "y", "y")
        assert "saved: I" in screen_text(pilot.app)
    assert len(rows(demo, "SELECT 1 FROM change_set WHERE kind = 'recorded'")) == 2


async def test_another_kind_fills_in_the_last_of_that_kind(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "s")
        row_of(pilot, "note").value = "typed by hand"
        await typed(pilot, "cons", "<tab>")
        assert row_of(pilot, "kind").value == "consolidate"
        assert row_of(pilot, "material").value != "cdd"
        assert row_of(pilot, "planned_step").value == ""
        assert row_of(pilot, "note").value == "typed by hand"
        assert row_of(pilot, "places").value == "J14"


async def test_who_is_asked_once(demo: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("CONSERVEDB_WHO")
    monkeypatch.setattr("conservedb.store.who.name_file", lambda: demo.parent / "who")
    async with at_desk(demo, "S07") as pilot:
        assert "you: nobody named yet" in screen_text(pilot.app)
        await typed(pilot, "s", "<ctrl+s>")
        assert "Who is recording?" in screen_text(pilot.app)
        await typed(pilot, "Ida Holm", "<enter>")
        assert "saved: I" in screen_text(pilot.app)
        assert "you: Ida Holm" in screen_text(pilot.app)
    assert rows(demo, "SELECT who FROM change_set ORDER BY id DESC LIMIT 1") == [("Ida Holm",)]


async def test_a_step_nobody_authorised_says_what_to_fill_in(demo: Path) -> None:
    async with at_desk(demo, size=(140, 60)) as pilot:
        await typed(pilot, "s", "cle", "<tab>")
        for name, text in (("agent", "acetone"), ("treatment", "T2026"), ("standing", "planned")):
            row_of(pilot, name).value = text
        await typed(pilot, "<ctrl+s>")
        assert isinstance(pilot.app.screen, DeskForm)
        assert row_of(pilot, "unauthorised_reason").problem


async def test_another_material_does_not_keep_the_recipe_of_the_last(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "s", "<tab>", "<ctrl+u>", "b72", "<tab>", "5 % w/v", "<tab>")
        assert row_of(pilot, "concentration").value == "5 % w/v"
        for name in ("batch", "role", "temperature_c", "dry", "coverage"):
            assert row_of(pilot, name).value == "", name
        assert row_of(pilot, "treatment").value == "T2026"


async def test_what_is_about_one_place_is_about_the_one_under_the_cursor(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<space>", "<down>", "<space>", "n", "o")
        assert row_of(pilot, "place").value == "M07"
        assert "at M07" in screen_text(pilot.app)
        await typed(pilot, "<tab>", "a grain", "<ctrl+s>")
        await typed(pilot, "<escape>")
        assert "2 ticked" in screen_text(pilot.app)
