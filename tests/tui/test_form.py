"""Typing into a form: keys in order, lines kept, what is on record offered, nothing in the way."""

from __future__ import annotations

import time
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path
from threading import Event

import pytest

from conservedb.tui.recording import Completion, Field, Form
from tests.tui.conftest import WIDE, screen_text
from tests.tui.form_recorder import STEP, Fake
from tests.tui.forms import (
    ANSWERS,
    at_form,
    events,
    form_of,
    here,
    one_field,
    paste,
    row_of,
    typed,
    until,
)

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them


async def test_a_whole_line_at_the_speed_of_a_machine_lands_in_order(tmp_path: Path) -> None:
    fake = Fake(slow=0.02)
    async with at_form(fake, tmp_path) as pilot:
        await typed(
            pilot,
            *("early 1930s", "<tab>", "par", "<down>", "<enter>", "j14; J15", "<enter>"),
            *("5", "<tab>", "sp", "<tab>", "w. orde; Ada Brown", "<down>", "<enter>"),
            *("brushed", "<tab>", "lot 7x", "<backspace>", "<tab>", "one", "<enter>", "two"),
            "<ctrl+s>",
        )
        await until(pilot, lambda: bool(ANSWERS))
    names = fake.values.pop("places"), fake.values.pop("people")  # as typed, or as on record
    assert [one.casefold() for one in names] == ["j14; j15", "w. orde; ada brown"]
    assert fake.values == {
        "date": "early 1930s",
        "material": "b72",
        "concentration": "5",
        "coverage": "spots",
        "technique": "brushed",
        "batch": "lot 7",
        "note": "one\ntwo",
    }
    assert ANSWERS[0] is not None and ANSWERS[0].saved == "Consolidate: saved"


async def test_keys_that_move(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        names = [field.name for field in STEP.fields]
        seen = []
        for key in ("tab", "enter", "down", "down", "tab", "down", "shift+tab", "up", "up"):
            await typed(pilot, f"<{key}>")
            seen.append(names.index(here(pilot)))
        assert seen == [1, 2, 3, 4, 5, 6, 5, 4, 3]
        assert form_of(pilot).typed == {}


async def test_the_field_in_use_is_marked_without_colour(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>")
        marked = [line for line in screen_text(pilot.app).splitlines() if line.startswith("▌")]
        assert len(marked) == 1 and "material" in marked[0]


async def test_what_is_wrong_is_said_and_stops_nobody(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "Easter 1930", "<tab>", "<tab>", "<tab>", "five", "<tab>")
        assert here(pilot) == "coverage"
        assert "no number" in row_of(pilot, "concentration").problem
        assert "not understood" in row_of(pilot, "date").problem
        await typed(pilot, "<up>", "<backspace>")
        assert row_of(pilot, "concentration").problem == ""


async def test_how_a_date_was_read_stands_beside_it(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "early 1930s")
        await until(pilot, lambda: "read as 1930..1933" in screen_text(pilot.app))


async def test_three_letters_open_the_list_and_nothing_is_taken_unmarked(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "pa")
        assert not row_of(pilot, "material").found.found
        await typed(pilot, "r")
        await until(pilot, lambda: "B-67" in screen_text(pilot.app))
        await typed(pilot, "<tab>")
        row = row_of(pilot, "material")
        assert (here(pilot), row.value) == ("places", "par")
        await until(pilot, lambda: bool(row.problem))
        assert "did you mean Paraloid B-72" in row.problem and "Ctrl+N" in row.problem


async def test_a_name_in_full_becomes_what_the_record_calls_it(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "TRASS-LIME MORTAR", "<tab>")
        row = row_of(pilot, "material")
        await until(pilot, lambda: row.value == "trass")
        assert row.problem == "" and here(pilot) == "places"


async def test_near_misses_are_offered_as_such(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "parra")
        await until(pilot, lambda: "did you mean" in screen_text(pilot.app))
        await typed(pilot, "<down>", "<tab>")
        assert row_of(pilot, "material").value == "b72"


async def test_what_is_not_on_record_stays_as_typed(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "xylol")
        await until(pilot, lambda: "not on record: it will be refused" in screen_text(pilot.app))
        await typed(pilot, "<down>")
        assert (here(pilot), row_of(pilot, "material").value) == ("places", "xylol")


async def test_f2_lists_for_no_letters_and_escape_puts_the_list_away(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "<f2>", "<down>", "<down>", "<up>")
        marked = row_of(pilot, "material").found.marked
        assert marked is not None and marked.text == "b72"
        await typed(pilot, "<escape>")
        assert not row_of(pilot, "material").found.display and form_of(pilot)
        await typed(pilot, "<tab>", "<tab>", "<f2>")
        assert "has no list" in screen_text(pilot.app)


async def test_a_list_completes_the_name_under_the_cursor(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "<tab>", "J1", "<down>", "<down>", ";", "j16", "<f2>")
        row = row_of(pilot, "places")
        assert row.value == "J15; j16"
        await typed(pilot, "<home>", "<right>", "<f2>", "<down>", "<down>", "<tab>")
        assert row.value in ("J15; j16", "J15; J16")
        await until(pilot, lambda: row.value == "J15; J16")
        assert row.problem == ""


async def test_the_part_somebody_played_is_no_part_of_the_name(tmp_path: Path) -> None:
    form = one_field(Field("people", "people", "people"))
    async with at_form(Fake(), tmp_path, form) as pilot:
        await typed(pilot, "w. orde (mason); Nobody (scribe)", "<tab>")
        row = row_of(pilot, "people")
        await until(pilot, lambda: "“Nobody” is not on record" in row.problem)
        assert row.value == "W. Orde (mason); Nobody (scribe)"


async def test_a_semicolon_behind_the_part_somebody_played(tmp_path: Path) -> None:
    form = one_field(Field("people", "people", "people"))
    async with at_form(Fake(), tmp_path, form) as pilot:
        await typed(pilot, "w. or", "<down>", ";", "ada", "<down>", " (scribe)", "<f2>", ";", "x")
        assert row_of(pilot, "people").value == "W. Orde; ada (scribe);x"


async def test_stale_answers_are_dropped(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("conservedb.tui.screens.form_found.PAUSE", 0.001)

    class Uneven(Fake):
        def complete(
            self, lookup: str, typed: str, form: Form, values: Mapping[str, str]
        ) -> tuple[Completion, ...]:
            time.sleep(0.2 if typed == "par" else 0)
            return super().complete(lookup, typed, form, values)

    async with at_form(Uneven(), tmp_path) as pilot:
        for event in events("<tab>", "par"):
            pilot.app.post_message(event)
        await pilot.pause(0.05)  # the slow question is on its way
        await typed(pilot, "<ctrl+u>", "ace")
        await until(pilot, lambda: len(row_of(pilot, "material").found.found) == 1)
        await pilot.pause(0.25)
        assert [one.text for one in row_of(pilot, "material").found.found] == ["acetone"]


async def test_choices(tmp_path: Path) -> None:
    form = one_field(Field("c", "c", "choice", "", ("whole", "part", "spots"), unknown="unknown"))
    async with at_form(Fake(), tmp_path, form) as pilot:
        row = row_of(pilot, "c")
        seen = []
        for key in ("<right>", "<right>", "<space>", "<right>", "<left>", "p", "<delete>", "u"):
            await typed(pilot, key)
            seen.append(row.value)
        assert seen == ["whole", "part", "spots", "unknown", "spots", "part", "", "unknown"]
        assert "‹ unknown ›" in screen_text(pilot.app)
        await typed(pilot, "q?<x>")  # letters are never keys of the program here
        assert form_of(pilot) and row.value == "unknown"
        await paste(pilot, "Whole\n")
        assert row.value == "whole"
        await paste(pilot, "half")
        assert row.value == "whole" and "none of the words" in row.problem


async def test_pastes_of_many_lines_are_kept_whole(tmp_path: Path) -> None:
    lines = "first\r\nsecond\rthird\n\nfifth\n"
    async with at_form(Fake(), tmp_path, size=WIDE) as pilot:
        for _ in range(7):
            await typed(pilot, "<tab>")
        assert here(pilot) == "batch"
        await paste(pilot, lines)
        await typed(pilot, "x", "<enter>", "y")  # the line has become a long one
        assert here(pilot) == "batch"
        assert row_of(pilot, "batch").value == "first\nsecond\nthird\n\nfifth\nx\ny"
        assert all(word in screen_text(pilot.app) for word in ("first", "third", "fifth"))


async def test_a_long_field_lets_up_and_down_out_at_its_ends(tmp_path: Path) -> None:
    form = one_field(Field("note", "note", "long"))
    async with at_form(Fake(), tmp_path, form) as pilot:
        await typed(pilot, "a", "<enter>", "b", "<up>", "<down>")
        assert here(pilot) == "note"
        await typed(pilot, "<down>")
        assert here(pilot) == "last"


async def test_ctrl_n_adds_what_is_not_on_record(tmp_path: Path) -> None:
    fake = Fake()
    async with at_form(fake, tmp_path) as pilot:
        await typed(
            pilot, "<tab>", "xylol", "<ctrl+n>", "<tab>", "xylene", "<enter>", "<tab>", "J14"
        )
        assert row_of(pilot, "material").value == "xylol"
        assert fake.values == {"key": "xylol", "name": "xylene"}
        assert row_of(pilot, "places").value == "J14"
        await until(pilot, lambda: not row_of(pilot, "material").problem)
        await typed(pilot, "<ctrl+n>")
        assert "nothing new can be added" in row_of(pilot, "places").problem


async def test_a_slow_recorder_stops_no_typing(tmp_path: Path) -> None:
    answers = Event()

    class Waiting(Fake):
        def check(self, form: Form, field: str, values: Mapping[str, str]) -> str:
            answers.wait(5)
            return f"wrong {field}"

    async with at_form(Waiting(), tmp_path) as pilot:
        for event in events("x", "<tab>", "paral", "<tab>", "J14", "<tab>", "7"):
            pilot.app.post_message(event)
        while row_of(pilot, "concentration").value != "7":
            await pilot.pause()
        assert not row_of(pilot, "date").problem
        answers.set()
        await until(pilot, lambda: row_of(pilot, "date").problem == "wrong date")


async def test_help_lists_the_keys_and_gives_the_form_back(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path, size=(120, 60)) as pilot:
        await typed(pilot, "<f1>")
        assert "Throw the draft away" in screen_text(pilot.app)
        await typed(pilot, "<escape>")
        await typed(pilot, "x")
        assert row_of(pilot, "date").value == "x"


async def test_the_field_in_use_is_always_in_view(tmp_path: Path) -> None:
    fields = tuple(Field(f"f{i}", f"field {i}", hint=f"hint {i}") for i in range(25))
    form = replace(STEP, fields=fields)
    async with at_form(Fake(), tmp_path, form) as pilot:
        for _ in range(2):
            await typed(pilot, *["<tab>"] * 12)
            drawn = screen_text(pilot.app)
            assert f"▌ {here(pilot).replace('f', 'field ')} " in drawn
            assert f" {here(pilot).replace('f', 'hint ')}\n" in drawn


async def test_a_click_goes_to_a_field(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "Easter 1930")
        await pilot.click(row_of(pilot, "batch").entry)
        await typed(pilot, "x")
        assert (here(pilot), row_of(pilot, "batch").value) == ("batch", "x")
        assert "not understood" in row_of(pilot, "date").problem


async def test_a_click_takes_what_is_listed(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path) as pilot:
        await typed(pilot, "<tab>", "par", "<f2>")
        row = row_of(pilot, "material")
        await pilot.click(row.found, offset=(6, 1))
        await until(pilot, lambda: row.value == "b67")
        await pilot.click("#form-rows", offset=(5, 18))  # beside all fields
        await typed(pilot, "<tab>", "J14")
        assert row_of(pilot, "places").value == "J14"
