"""What was amended says so on the screen, in the list and in the full text."""

from __future__ import annotations

import pytest

from conservedb.questions.answers import FieldChange, Reworded
from conservedb.tui.details import event_facts
from conservedb.tui.widgets.history import _drawer
from tests.nasty import NASTY
from tests.tui.canned import event

SLIP = Reworded("2026-11-02", "A. Tester", "a slip", (FieldChange("date", "1934", "1935"),))


def test_the_list_says_that_an_entry_was_amended() -> None:
    first, _ = _drawer(event("1935", "Joined", amended=(SLIP,)), later=False)(60)
    assert first.plain.endswith("amended")
    first, _ = _drawer(event("1935", "Joined"), later=False)(60)
    assert "amended" not in first.plain


def test_the_full_text_says_how_it_read() -> None:
    facts = list(event_facts(event("1935", "Joined", amended=(SLIP,))))
    assert ("amended", "2026-11-02 by A. Tester (a slip): date was 1934") in facts


@pytest.mark.parametrize("text", NASTY)
def test_former_words_are_data(text: str) -> None:
    former = Reworded("2026-11-02", text, text, (FieldChange("note", text, ""),), text)
    (fact,) = [f for f in event_facts(event("1935", "J", amended=(former,))) if f[0] == "amended"]
    assert fact[1].count(text) >= 4
