"""Finding on screen: words marked where they stand, and what was perhaps meant."""

from __future__ import annotations

import pytest
from textual.widgets import Input

from conservedb.questions.answers import Hit
from conservedb.questions.find_answers import KIND_WORDS, FoundAnswer, FoundGroup
from conservedb.questions.find_records import SHOWN
from conservedb.tui.hits import FOUND, found_groups, items_of, marked, no_screen
from conservedb.tui.text import plain
from conservedb.tui.widgets.find_panel import _told
from tests.nasty import NASTY
from tests.tui.canned import NUMBER
from tests.tui.conftest import press, screen_text, sitting, type_in


def test_every_kind_has_its_words() -> None:
    assert {shown.kind for shown in SHOWN.values()} == set(KIND_WORDS)


def test_words_found_are_marked_where_they_stand() -> None:
    content = marked("the right dolphin, seen", ((4, 9), (10, 17)))
    assert content.plain == "the right dolphin, seen"
    found = [content.plain[s.start : s.end] for s in content.spans if s.style == FOUND]
    assert found == ["right", "dolphin"]


@pytest.mark.parametrize("text", [*NASTY, ""])
def test_any_text_may_be_marked_anywhere(text: str) -> None:
    """Nothing of it is obeyed, and spans that lie outside of it do no harm."""
    assert marked(text[:500], ((0, 3), (5, 400), (900, 902))).plain == plain(text[:500]).plain
    hit = Hit("step", "N.1", "J1", text, text, f"long before {text}", ((700, 705),))
    items, hits = items_of(found_groups(FoundAnswer((FoundGroup("step", (hit,), 9, True),))))
    assert list(hits.values()) == [hit]
    for width in (1, 20, 80):
        assert all(line.cell_length <= width for line in items[1].draw(width))


def test_the_words_are_in_sight_on_a_narrow_screen() -> None:
    sentence = "x" * 70 + " the dolphin"
    hit = Hit("step", "N.1", "", "join", "", sentence, ((75, 82),))
    items, _ = items_of(found_groups(FoundAnswer((FoundGroup("step", (hit,), 1),))))
    assert "dolphin" in items[1].draw(40)[1].plain


def test_how_many_there_are_is_said() -> None:
    hit = Hit("place", "N.1", "J1", "", "joint")
    groups = found_groups(
        FoundAnswer((FoundGroup("place", (hit,), 10_000, True), FoundGroup("step", (hit,), 1)))
    )
    assert [group.count for group in groups] == ["1 of 10000 or more", "1"]


def test_what_cannot_be_opened_says_so() -> None:
    for kind in ("source", "term", "batch", "rule", "climate"):
        assert no_screen(Hit(kind, "", "", "x", "")) != no_screen(Hit("other", "", "", "x", ""))


async def test_what_was_perhaps_meant_is_looked_for_when_chosen() -> None:
    async with sitting() as pilot:
        await type_in(pilot, "dolfin")
        assert "Did you mean" in screen_text(pilot.app)
        await press(pilot, "enter")
        assert pilot.app.screen.query_one("#find-line", Input).value == "dolphin"
        assert "right dolphin" in screen_text(pilot.app)
        await press(pilot, "down", "down", "enter")
        assert NUMBER in screen_text(pilot.app)


async def test_a_slash_within_words_is_typed() -> None:
    async with sitting() as pilot:
        line = pilot.app.screen.query_one("#find-line", Input)
        await press(pilot, "slash")
        assert line.value == ""  # the key that leads to finding
        await type_in(pilot, "1902")
        await press(pilot, "slash")
        await type_in(pilot, "7")
        assert line.value == "1902/7"


def test_very_long_words_are_not_told_back_whole() -> None:
    said = _told("x" * 100_000, FoundAnswer())
    assert len(said) < 200
    assert said.startswith("nothing has all of “xxx")
    assert "x…”" in said


def test_a_material_says_how_much_there_is_of_it() -> None:
    hit = Hit("material", "", "", "B-72", "b72", used="41 layers recorded, on one object")
    items, _ = items_of(found_groups(FoundAnswer((FoundGroup("material", (hit,), 1),))))
    assert items[1].draw(80)[0].plain.endswith("b72, 41 layers recorded, on one object")
