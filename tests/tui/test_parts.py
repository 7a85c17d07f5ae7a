"""The tree: who is listed under whom, folding, and nothing left unlisted."""

from __future__ import annotations

from dataclasses import replace

from conservedb.tui.part_items import part_sentence
from conservedb.tui.part_rows import rows_of
from conservedb.tui.widgets.parts import Parts
from tests.tui.canned import COMPONENTS, NUMBER, PLACES, Canned, component, place_row
from tests.tui.conftest import WIDE, press, screen_text, sitting

CANNED = Canned()
OBJECT = CANNED.object(NUMBER, CANNED.as_of(""))


def listed(**more: object) -> list[tuple[int, str, str]]:
    rows = rows_of(replace(OBJECT, **more))  # type: ignore[arg-type]
    return [(row.depth, row.key, row.label) for row in rows]


def test_joints_stand_under_both_sides_and_fixings_under_their_joint() -> None:
    assert listed() == [
        (0, "whole", "whole object"),
        (1, "part:B06", "basin lip, left"),
        (2, "place:J06", "to B07 basin lip, centre"),
        (1, "part:B07", "basin lip, centre"),
        (2, "place:J06@B07", "to B06 basin lip, left"),
        (2, "place:J14", "to B12 dolphin, right"),
        (3, "part:K3", "cramp, lip to dolphin"),
        (4, "place:J35", "to B07 basin lip, centre"),
        (3, "part:P1", "pin seen at the front"),
        (2, "place:S02", "top and front of the centre lip"),
        (1, "part:B12", "dolphin, right"),
        (2, "place:J14@B12", "to B07 basin lip, centre"),
        (2, "part:B12a", "tail fin of the right dolphin"),
        (1, "part:B14", "urn, left"),
    ]


def test_a_retired_part_says_so() -> None:
    part = component("K9", "cramp", state="retired", possible=("retired",))
    rows = rows_of(replace(OBJECT, components=(part,), places=()))
    assert (rows[1].right, rows[1].tone) == ("retired", "quiet")
    assert part_sentence(part).endswith("; retired by this day")


def test_whatever_cannot_be_reached_is_listed_at_the_top() -> None:
    ring = (component("X1", "one", "X2"), component("X2", "two", "X1"), component("X3", "", "gone"))
    lost = place_row("J99", "joint", "nobody", "", "of a part that is not there")
    keys = [key for _, key, _ in listed(components=ring, places=(lost,))]
    assert sorted(keys) == ["part:X1", "part:X2", "part:X3", "place:J99", "whole"]


def test_three_thousand_levels_are_no_matter() -> None:
    deep = tuple(component(f"C{i}", "", f"C{i - 1}" if i else "") for i in range(3000))
    assert listed(components=deep, places=())[-1][:2] == (3000, "part:C2999")


async def test_folding_by_keys_and_mouse() -> None:
    async with sitting(size=WIDE, mark="") as pilot:
        parts = pilot.app.screen.query_one(Parts)
        assert len(parts.items) == 5
        await press(pilot, "down", "right")
        assert len(parts.items) == 6
        await press(pilot, "right", "left", "left")
        assert len(parts.items) == 5
        await press(pilot, "e")
        assert len(parts.items) == 14
        await press(pilot, "e", "end")
        assert len(parts.items) == 5 and "B14  urn, left" in screen_text(pilot.app)
        await pilot.click(Parts, offset=(2, 2))
        await press(pilot)
        assert len(parts.items) == 8


async def test_marks_are_found_without_regard_to_case_and_stay_selected() -> None:
    async with sitting(mark="b12A") as pilot:
        assert "B12a  tail fin" in screen_text(pilot.app)
        await press(pilot, "left_square_bracket")
        parts = pilot.app.screen.query_one(Parts)
        assert parts.row is not None and parts.row.mark == "B12a"


def test_the_canned_object_is_whole() -> None:
    assert {row.mark for row in rows_of(OBJECT)} == {
        "",
        *(one.mark for one in COMPONENTS),
        *(one.mark for one in PLACES),
    }
