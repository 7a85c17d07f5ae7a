"""Saving a form: once, all of it or nothing; what has to be asked first is asked on a sheet."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from textual.events import Key

from conservedb.tui.drafts import Drafts
from conservedb.tui.reading import Unanswered
from conservedb.tui.recording import Clash, Field, Finding, Outcome, Problem
from conservedb.tui.screens.entry_sheet import EntrySheet
from conservedb.tui.screens.start import StartScreen
from conservedb.tui.widgets.key_line import KeyLine
from tests.tui.conftest import NARROW, screen_text
from tests.tui.form_recorder import STEP, Fake
from tests.tui.forms import ANSWERS, at_form, form_of, here, one_field, row_of, typed, until

NOTE = one_field(Field("note", "note"))


async def test_enter_in_the_last_field_saves(tmp_path: Path) -> None:
    fake = Fake()
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a", "<enter>", "b", "<enter>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.values == {"note": "a", "last": "b"}
    assert Drafts(tmp_path).drafts() == ()


async def test_saving_twice_at_once_saves_once(tmp_path: Path) -> None:
    fake = Fake(slow=0.1)
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a", "<ctrl+s>", "<ctrl+s>", "<enter>", "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    assert len(fake.saves) == 1


async def test_help_opened_while_it_saves_does_not_stop_it(tmp_path: Path) -> None:
    fake = Fake(slow=0.1)
    async with at_form(fake, tmp_path, NOTE) as pilot:
        pilot.app.post_message(Key("ctrl+s", None))
        await until(pilot, lambda: form_of(pilot).saving)
        await pilot.click(KeyLine, offset=(2, 0))
        await until(pilot, lambda: bool(ANSWERS))
        await until(pilot, lambda: isinstance(pilot.app.screen, StartScreen))


async def test_what_is_needed_is_asked_for(tmp_path: Path) -> None:
    fake = Fake()
    async with at_form(fake, tmp_path) as pilot:
        await typed(pilot, "<tab>", "<ctrl+s>")
        assert here(pilot) == "date" and "needed" in row_of(pilot, "date").problem
    assert not fake.saves


async def test_problems_are_shown_where_they_are(tmp_path: Path) -> None:
    problems = Problem("last", "too short"), Problem("", "the day is over")
    fake = Fake(outcomes=[Outcome(problems=problems), Unanswered("the database is busy")])
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a", "<ctrl+s>", "b")  # typed while it was being saved: not lost
        assert here(pilot) == "last" and row_of(pilot, "last").value == "b"
        assert "the day is over" in screen_text(pilot.app)
        await typed(pilot, "<ctrl+s>")
        assert "not saved: the database is busy" in screen_text(pilot.app)
        assert row_of(pilot, "note").value == "a"
        await typed(pilot, "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    assert len(fake.saves) == 3


async def test_a_reason_is_asked_where_the_form_wants_one(tmp_path: Path) -> None:
    fake = Fake()
    async with at_form(fake, tmp_path, replace(NOTE, reason=True)) as pilot:
        await typed(pilot, "a", "<ctrl+s>", "<enter>")
        assert "a few words are needed" in screen_text(pilot.app)
        await typed(pilot, "<escape>")
        assert not fake.saves and form_of(pilot)
        await typed(pilot, "<ctrl+s>", "slip of the pen", "<enter>", "zzz")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.saves[0]["reason"] == "slip of the pen"
    assert fake.values["note"] == "a"


async def test_who_records_is_asked_once(tmp_path: Path) -> None:
    fake = Fake(who="")
    async with at_form(fake, tmp_path, NOTE) as pilot:
        assert "nobody named yet" in screen_text(pilot.app)
        await typed(pilot, "a", "<ctrl+s>", "<enter>")
        assert "type your full name" in screen_text(pilot.app)
        await typed(pilot, "Ada", "<enter>")
        assert "Ada is no full name" in screen_text(pilot.app)
        await typed(pilot, " Brown", "<enter>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.who == "Ada Brown" and len(fake.saves) == 1


async def test_rules_are_overridden_with_a_reason_each(tmp_path: Path) -> None:
    judged = (
        Finding("R1", "block", "Water on gypsum."),
        Finding("R2", "warn", "No test on record."),
        Finding("R3", "inform", "It yellows."),
    )
    fake = Fake(outcomes=[Outcome(judged=judged)])
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a", "<ctrl+s>")
        text = screen_text(pilot.app)
        assert all(word in text for word in ("STOP", "CAUTION", "TO KNOW", "Water on gypsum."))
        await typed(pilot, "dry today", "<enter>", "<enter>")
        assert len(fake.saves) == 1 and isinstance(pilot.app.screen, EntrySheet)
        await typed(pilot, "tested by eye", "<enter>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.saves[1]["override"] == {"R1": "dry today", "R2": "tested by eye"}


async def test_only_things_to_know_ask_for_no_words(tmp_path: Path) -> None:
    fake = Fake(outcomes=[Outcome(judged=(Finding("R3", "inform", "It yellows."),))])
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a", "<ctrl+s>", "<enter>")
        await until(pilot, lambda: bool(ANSWERS))
    assert len(fake.saves) == 2


CLASHES = tuple(
    Clash(name, name, "old", f"my {name}", f"their {name}", "W. Orde", "14:05")
    for name in ("note", "last")
)


async def test_a_clash_is_settled_field_by_field(tmp_path: Path) -> None:
    fake = Fake(outcomes=[Outcome(clashes=CLASHES)])
    async with at_form(fake, tmp_path, NOTE, size=NARROW) as pilot:
        await typed(pilot, "my note", "<tab>", "my last", "<ctrl+s>", "<enter>", "<enter>")
        text = screen_text(pilot.app)
        assert "their note" in text and "my note" in text and "W. Orde, 14:05" in text
        assert "choose: m keeps mine" in text
        await typed(pilot, "t", "<enter>", "e", " mended", "<enter>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.saves[1]["over"] == {"note": "their note", "last": "my last mended"}
    assert fake.values == {"note": "their note", "last": "my last mended"}


async def test_a_clash_can_be_left_open(tmp_path: Path) -> None:
    fake = Fake(outcomes=[Outcome(clashes=CLASHES)])
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "my note", "<ctrl+s>", "m")
        await typed(pilot, "<escape>")
        assert "not saved: somebody else changed" in screen_text(pilot.app)
        assert row_of(pilot, "note").value == "my note"
    assert len(fake.saves) == 1


async def test_the_form_that_is_saved_is_the_one_that_was_shown(tmp_path: Path) -> None:
    fake = Fake()
    form = replace(STEP, version=7)
    async with at_form(fake, tmp_path, form) as pilot:
        await typed(pilot, "1950", "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.saves[0]["form"] == form


async def test_reasons_hold_for_what_they_were_given_for(tmp_path: Path) -> None:
    block = Outcome(judged=(Finding("R1", "block", "Water on gypsum."),))
    fake = Fake(outcomes=[block, Outcome(problems=(Problem("note", "no"),)), block])
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a", "<ctrl+s>", "dry today", "<enter>", "b", "<ctrl+s>")
        assert isinstance(pilot.app.screen, EntrySheet)
    assert [one["override"] for one in fake.saves] == [{}, {"R1": "dry today"}, {}]


async def test_a_settled_clash_stays_settled_when_the_rules_object(tmp_path: Path) -> None:
    judged = Outcome(judged=(Finding("R1", "warn", "No test on record."),))
    fake = Fake(outcomes=[Outcome(clashes=CLASHES[:1]), judged])
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "my note", "<ctrl+s>", "m", "<enter>", "tested", "<enter>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.saves[2]["over"] == {"note": "my note"}
    assert fake.saves[2]["override"] == {"R1": "tested"}


async def test_the_palette_saves_too(tmp_path: Path) -> None:
    fake = Fake()
    async with at_form(fake, tmp_path, NOTE) as pilot:
        await typed(pilot, "a")
        await pilot.press(
            "ctrl+p", *"save", "space", *"the"
        )  # its searches give way to newer ones: no waiting
        await until(pilot, lambda: "Save the form" in screen_text(pilot.app))
        await pilot.press("enter")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.values["note"] == "a"
