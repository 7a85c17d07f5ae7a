"""Amending, clashes, withdrawing, undoing and drafts, from the object screen."""

from __future__ import annotations

import datetime
from pathlib import Path

import pytest

from conservedb.exchange.amending import amend
from conservedb.store.log import Author
from conservedb.store.opening import open_database
from conservedb.tui.screens.clash import ClashSheet
from conservedb.tui.screens.desk_form import DeskForm
from conservedb.tui.screens.object import ObjectScreen
from tests.tui.at_the_desk import NUMBER, at_desk, needing_nobody
from tests.tui.conftest import screen_text
from tests.tui.forms import form_of, row_of, typed, until
from tests.tui.test_recording_steps import rows

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

TODAY = datetime.date(2026, 11, 2)


def somebody_amends(path: Path, name: str) -> None:
    engine, _ = open_database(path)
    cells = {"name": name}
    amend(engine, "places", NUMBER, "J14", cells, Author("W. Orde", "amended", "so"), TODAY)
    engine.dispose()


async def test_amend_and_a_clash(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "u")
        assert "Amend place J14" in screen_text(pilot.app)
        row_of(pilot, "name").value = "lip to dolphin"
        somebody_amends(demo, "lip and dolphin")
        await typed(pilot, "<ctrl+s>")
        assert "Why is this changed?" in screen_text(pilot.app)
        await typed(pilot, "shorter", "<enter>")
        assert isinstance(pilot.app.screen, ClashSheet)
        assert "W. Orde" in screen_text(pilot.app)
        await typed(pilot, "m", "<enter>")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert "amended: place J14; change set" in screen_text(pilot.app)
    assert rows(demo, "SELECT name FROM place WHERE mark = 'J14' AND load_kg = 85") == [
        ("lip to dolphin",)
    ]
    assert rows(demo, "SELECT reason FROM change_set ORDER BY id DESC LIMIT 1") == [("shorter",)]


async def test_a_layer_under_the_cursor_is_amended(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<tab>", "<down>", "u")
        assert isinstance(pilot.app.screen, DeskForm)
        assert pilot.app.screen.form.kind == "layers"


async def test_undo_and_redo_say_what(demo: Path) -> None:
    def count() -> object:
        return rows(demo, "SELECT count(*) FROM observation")[0][0]

    before = count()
    async with at_desk(demo) as pilot:
        await typed(pilot, "<ctrl+z>")
        assert "A. Tester has written nothing" in screen_text(pilot.app)
        await typed(pilot, "n", "o", "<tab>", "open 0.4 mm", "<ctrl+s>", "<escape>")
        assert count() != before
        await typed(pilot, "<ctrl+z>")
        assert "undone: change set" in screen_text(pilot.app)
        assert count() == before
        await typed(pilot, "<ctrl+y>")
        assert "done again: change set" in screen_text(pilot.app)
        assert count() != before


async def test_withdraw_asks_why_and_says_what_stands_in_the_way(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<delete>")
        assert "Withdraw place J14?" in screen_text(pilot.app)
        assert "kind joint; component" in screen_text(pilot.app)  # what it says
        await typed(pilot, "twice", "<enter>", "<enter>")
        assert "nothing was withdrawn" in screen_text(pilot.app)
        assert rows(demo, "SELECT count(*) FROM place WHERE mark = 'J14' AND load_kg = 85") == [
            (1,)
        ]


async def test_observations_follow_an_examination(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "n", "e", "raking light", "<ctrl+s>")
        for seen in ("crack", "stain"):
            await until(pilot, lambda: "Record an observation" in screen_text(pilot.app))
            assert row_of(pilot, "intervention").value
            assert "saved: " in screen_text(pilot.app)
            await typed(pilot, "<tab>", seen, "<ctrl+s>")
        await typed(pilot, "<escape>")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert "saved: O" in screen_text(pilot.app)
    sql = """SELECT o.seen FROM observation o JOIN intervention i ON i.id = o.intervention_id
        WHERE i.circumstances = 'raking light' ORDER BY o.id"""
    assert rows(demo, sql) == [("crack",), ("stain",)]


async def test_a_draft_is_listed_at_the_start_and_opens(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "n", "o", "<tab>", "half a sen", "<escape>", "<escape>")
        assert "Drafts not saved" in screen_text(pilot.app)
        await typed(pilot, "<down>", "<up>", "<down>")
        screen = pilot.app.screen
        screen.query_one("#found").action_edge(0)  # type: ignore[attr-defined]
        await typed(pilot, "<enter>")
        assert isinstance(pilot.app.screen, DeskForm)
        assert row_of(pilot, "seen").value == "half a sen"
        await typed(pilot, "<ctrl+s>", "<escape>")
        assert "Drafts not saved" not in screen_text(pilot.app)


async def test_a_draft_of_a_step_is_not_filled_in_from_a_later_step(demo: Path) -> None:
    needing_nobody(demo)
    async with at_desk(demo, "S07") as pilot:
        await typed(pilot, "s")
        assert row_of(pilot, "batch").value
        row_of(pilot, "note").value = "half a sen"
        held = form_of(pilot).values()
        await typed(pilot, "<escape>")
    async with at_desk(demo, "J14") as pilot:
        await typed(pilot, "s")
        row_of(pilot, "batch").value = ""
        await typed(pilot, "<ctrl+s>")
        assert isinstance(pilot.app.screen, ObjectScreen)
    async with at_desk(demo, "S07") as pilot:
        await typed(pilot, "s")
        assert form_of(pilot).values() == held
        await typed(pilot, "<tab>")
        assert form_of(pilot).values() == held
        await typed(pilot, "<ctrl+d>", "<tab>")
        fresh = form_of(pilot).values()
        assert fresh == held | {"batch": "", "note": ""}


async def test_a_new_object_is_opened(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<escape>")
        await typed(pilot, "<f3>", "SQ.2026.9", "<tab>", "A jar", "<ctrl+s>")
        assert isinstance(pilot.app.screen, ObjectScreen)
        assert "SQ.2026.9  A jar" in screen_text(pilot.app)
        assert "saved: SQ.2026.9; change set 2" in screen_text(pilot.app)


async def test_without_a_desk_nothing_is_recorded() -> None:
    from tests.tui.conftest import sitting

    async with sitting(mark="J14") as pilot:
        for key in ("s", "y", "n", "u", "<delete>", "<ctrl+z>", "x", "v"):
            await typed(pilot, key)
            assert "nothing can be recorded here" in screen_text(pilot.app)


async def test_keys_after_the_one_that_leaves_do_nothing(demo: Path) -> None:
    for keys in (("<escape>", "u"), ("<escape>", "s"), ("<escape>", "<delete>", "<space>", "n")):
        async with at_desk(demo) as pilot:
            await typed(pilot, *keys)
            assert not isinstance(pilot.app.screen, DeskForm)
