"""The time rule: stepping, clicking, and a place for every day."""

from __future__ import annotations

import datetime

from conservedb.tui.widgets.history import History
from conservedb.tui.widgets.time_rule import TimeRule
from tests.tui.conftest import NARROW, press, screen_text, settle, sitting


def day(text: str) -> int:
    return datetime.date.fromisoformat(text).toordinal()


async def test_stepping_by_keys() -> None:
    async with sitting(mark="J14") as pilot:
        for key, shown in (
            ("left_square_bracket", "as of 9 May 2012"),
            ("left_square_bracket", "as of 18 May 1989"),
            ("left_square_bracket", "as of 14 June 1934"),
            ("right_square_bracket", "as of 18 May 1989"),
            ("t", "today, 2 November 2026"),
        ):
            await press(pilot, key)
            assert shown in screen_text(pilot.app)


async def test_on_the_rule_itself_all_events_of_the_object_count() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "shift+tab")
        assert pilot.app.screen.focused is pilot.app.screen.query_one(TimeRule)
        for key, shown in (
            ("left", "as of 18 May 1989"),
            ("left", "as of 31 March 1967"),  # a deed elsewhere on the object
            ("pageup", "as of 28 March 1957"),
            ("home", "as of 1 January 1741"),
            ("pageup", "as of 1 January 1741"),
            ("right", "as of 31 December 1741"),
            ("end", "today, 2 November 2026"),
        ):
            await press(pilot, key)
            assert shown in screen_text(pilot.app), key


async def test_every_column_is_a_day_within_the_rule() -> None:
    async with sitting(size=NARROW, mark="J14") as pilot:
        rule = pilot.app.screen.query_one(TimeRule)
        days = [rule.day_at(column) for column in range(rule._span)]
        assert days == sorted(days)
        assert days[0] == day("1741-12-31") and days[-1] == day("2026-11-02")
        assert day("1934-06-14") in days and day("1989-05-18") in days
        assert all(rule.first <= one <= rule.today for one in days)


async def test_a_click_goes_to_that_day() -> None:
    async with sitting(mark="J14") as pilot:
        rule = pilot.app.screen.query_one(TimeRule)
        column = rule._left + rule._column(day("1934-06-14"))
        await pilot.click(TimeRule, offset=(column, 0))
        await settle(pilot)
        assert "as of 14 June 1934" in screen_text(pilot.app)
        await pilot.click(TimeRule, offset=(rule._left + rule._span - 1, 0))
        await settle(pilot)
        assert "today, 2 November 2026" in screen_text(pilot.app)


async def test_the_history_leads_to_its_days() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "tab", "tab")
        assert pilot.app.screen.focused is pilot.app.screen.query_one(History)
        await press(pilot, "home", "down", "enter")
        assert "as of 31 December 1868" in screen_text(pilot.app)
        assert "─ 31 December 1868 ─" in screen_text(pilot.app)
