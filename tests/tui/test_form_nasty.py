"""Text of any kind in a field of any kind: kept as it is, shown harmlessly, or refused in words."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from textual.events import Key, Paste

from conservedb.tui.drafts import Drafts
from conservedb.tui.recording import LISTS, Completion, Field
from conservedb.tui.widgets.form_text import given, held
from tests.tui.conftest import WIDE, screen_text
from tests.tui.form_recorder import STEP, Fake
from tests.tui.forms import ANSWERS, at_form, calm, form_of, one_field, paste, row_of, typed, until

NASTY = {
    "markup": "[bold red]x[/] [@click=app.quit]y[/]",
    "escape": "a\x1b[2Jb\x9bc\x07",
    "turned": "abc\u202etxt.exe\u2066\u200f שלום",
    "emoji": "👩‍🔬 😀 é ☃",
    "separators": "a\x0bb\x0cc\x1cd\x85e\u2028f",
    "tags": "x\U000e0041\U000e007fy\ud83d",
    "semicolons": r"a\; b;; ;c (d) (e)",
    "long": "0123456789" * 1000,
    "lines": "a\n" * 300,
}
KINDS = ("text", "long", "date", "number", "material", "places", "people")


@pytest.mark.parametrize("text", NASTY.values(), ids=NASTY)
def test_the_editor_gives_back_what_it_was_given(text: str) -> None:
    assert given(held(text)) == text
    assert not any(sign in held(text) for sign in "\x1b\x9b\x07\u202e\x85\u2028")


async def test_any_text_in_any_field(tmp_path: Path) -> None:
    fake = Fake()
    form = replace(STEP, fields=tuple(Field(kind, kind, kind) for kind in KINDS))
    async with at_form(fake, tmp_path, form, size=WIDE) as pilot:
        rows = form_of(pilot).rows
        for text in NASTY.values():
            form_of(pilot).go(rows[0])
            for row in rows:
                row.value = ""
                pilot.app.post_message(Paste(text))
                pilot.app.post_message(Key("tab", None))
            await calm(pilot)
            assert {row.value for row in rows} == {text}
            drawn = screen_text(pilot.app)
            assert not any(sign in drawn for sign in "\x1b\x9b\x07\u202e\u2066\u200f\x85\u2028")
        await typed(pilot, "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    assert set(fake.values.values()) == {NASTY["lines"]}


async def test_nasty_labels_names_and_sentences(tmp_path: Path) -> None:
    bad = NASTY["markup"] + NASTY["escape"] + NASTY["turned"]

    class Bad(Fake):
        def complete(self, *_: object) -> tuple[Completion, ...]:
            return (Completion(bad, bad), Completion(bad, bad, near=True))

        def check(self, *_: object) -> str:
            return bad

        def read_date(self, text: str) -> str:
            return bad

    form = one_field(Field("f", bad, LISTS[0], unit=bad, hint=bad))
    async with at_form(Bad(who=bad), tmp_path, form) as pilot:
        await typed(pilot, "abc", "<down>")
        drawn = screen_text(pilot.app)
        assert "[bold red]" in drawn and "\x1b" not in drawn and "\u202e" not in drawn
        await typed(pilot, "<tab>")
        assert row_of(pilot, "f").value == bad


async def test_nul_is_refused_in_words(tmp_path: Path) -> None:
    kinds = (*KINDS, "choice")
    form = replace(STEP, fields=tuple(Field(kind, kind, kind, choices=("a",)) for kind in kinds))
    async with at_form(Fake(), tmp_path, form) as pilot:
        for row in form_of(pilot).rows:
            form_of(pilot).go(row)
            await paste(pilot, "a\0b")
            assert row.value == "" and row.problem


async def test_a_nul_from_a_draft_is_shown_and_refused(tmp_path: Path) -> None:
    fake = Fake()
    form = one_field(Field("f", "f"))
    async with at_form(fake, tmp_path, form) as pilot:
        row_of(pilot, "f").value = "a\0b"
        await typed(pilot, "<tab>", "<ctrl+s>")
        assert "a␀b" in screen_text(pilot.app)
        assert "NUL" in row_of(pilot, "f").problem and not fake.saves
    assert Drafts(tmp_path).drafts()[0].typed == {"f": "a\0b"}


async def test_a_value_that_is_none_of_the_words_stays_until_another_is_chosen(
    tmp_path: Path,
) -> None:
    fake = Fake()
    form = one_field(Field("c", "c", "choice", NASTY["markup"], ("a", "b")))
    async with at_form(fake, tmp_path, form) as pilot:
        assert "[bold red]x" in screen_text(pilot.app)
        await typed(pilot, "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    assert fake.values["c"] == NASTY["markup"]
