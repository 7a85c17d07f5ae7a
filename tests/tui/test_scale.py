"""An object of 500 components, 1,000 locations and 2,000 layers; tests/bench times its keys."""

from __future__ import annotations

from dataclasses import replace

import pytest

from conservedb.questions.answers import AsOf, HistoryAnswer, ObjectAnswer, PlaceAnswer
from conservedb.tui.widgets.parts import Parts
from conservedb.tui.widgets.section import Section
from tests.tui.canned import EVENTS, Canned, component, layer, place_row
from tests.tui.conftest import press, screen_text, settle, sitting

PARTS, LAYERS = 500, 2_000
KEYS = (
    "pagedown",
    "down",
    "down",
    "up",
    "end",
    "home",
    "down",
    "down",
    "tab",
    "pagedown",
    "end",
)


class Large(Canned):
    """A ship of an object; all its layers lie on every one of its locations."""

    layers = tuple(
        layer(f"L{i}", f"material {i}", ("adhesive", "fill", "coating")[i % 3], str(1700 + i % 300))
        for i in range(LAYERS)
    )

    def object(self, number: str, on: AsOf) -> ObjectAnswer:
        marks = [f"B{i:03}" for i in range(PARTS)]
        places = [
            place_row(f"{kind}{i:03}", name, marks[i], marks[i - 1] if kind == "J" else "", "")
            for kind, name in (("J", "joint"), ("S", "surface"))
            for i in range(PARTS)
        ]
        return replace(
            super().object(number, on),
            components=tuple(component(mark, f"block {mark}") for mark in marks),
            places=tuple(places),
        )

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        return replace(super().place(number, "J14", on), place=mark, layers=self.layers)

    def history(self, number: str, mark: str) -> HistoryAnswer:
        return replace(super().history(number, ""), mark=mark, rows=EVENTS * 300)


@pytest.mark.campaign
async def test_a_large_object_is_walked() -> None:
    async with sitting(Large(), mark="J250") as pilot:
        assert "J250  joint" in screen_text(pilot.app)
        await press(pilot, "e")
        assert len(pilot.app.screen.query_one(Parts).items) == 1 + PARTS * 4
        await press(pilot, *KEYS)
        section = pilot.app.screen.query_one(Section)
        assert section.current is not None and section.current.key == "fixing:P1"


@pytest.mark.campaign
async def test_any_size_of_terminal_will_do() -> None:
    async with sitting(mark="J14") as pilot:
        for width, height in ((30, 8), (300, 90), (1, 1), (116, 30)):
            await pilot.resize_terminal(width, height)
            await settle(pilot)
            await press(pilot, "tab", "d", "escape")
        assert "J14  joint" in screen_text(pilot.app)
