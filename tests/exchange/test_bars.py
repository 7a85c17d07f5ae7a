"""Bars and tables of letters: they fit, they add up, and user text stays data in them."""

from __future__ import annotations

import pytest

from conservedb.dates import read
from conservedb.exchange.bars import (
    PLAIN_SIGNS,
    SIGNS,
    Bar,
    Grid,
    bar_lines,
    bars_of,
    grid_lines,
    numbers,
)
from conservedb.exchange.widths import cells, fitted, padded
from conservedb.knowledge.decades import Count, Thing, by_decade, tally
from conservedb.questions.display import UNSEEN
from tests.nasty import NASTY


def test_a_sign_for_each_thing_where_there_is_room() -> None:
    bars = [Bar("1930s", Count(3, 2)), Bar("1940s", Count(0, 1, 4)), Bar("1950s", Count())]
    assert list(bar_lines(bars)) == [
        "1930s      3 + 2  ███▒▒",
        "1940s  0 + 1 + 4  ▒░░░░",
        "1950s          0",
        "",
        "█ certain + ▒ possible + ░ not identified",
    ]


def test_a_terminal_without_these_signs() -> None:
    lines = list(bar_lines([Bar("x" * 90, Count(3, 2, 1))], plain=True))
    assert lines[0].endswith("...  3 + 2 + 1  ###::.")
    assert all(line.isascii() for line in lines)


@pytest.mark.parametrize("width", [30, 40, 80, 200])
def test_long_bars_are_scaled_and_said_to_be(width: int) -> None:
    bars = [Bar("a", Count(1234, 567, 8)), Bar("b", Count(1, 0, 0)), Bar("c", Count(0, 1, 0))]
    *lines, blank, _, scale = bar_lines(bars, width)
    assert blank == "" and scale.startswith("each sign stands for up to ")
    each = int(scale.rpartition(" ")[2].replace(",", ""))
    assert all(cells(line) <= width for line in lines)
    for line, bar in zip(lines, bars, strict=True):
        for sign, count in zip(SIGNS, bar.counts, strict=True):
            assert (line.count(sign) - 1) * each < count <= line.count(sign) * each
    assert cells(lines[0]) > width * 0.8  # the room is used


@pytest.mark.parametrize("plain", [False, True])
@pytest.mark.parametrize("width", [40, 80])
def test_user_text_is_cut_by_the_room_it_takes(width: int, plain: bool) -> None:
    bars = [Bar(text, Count(2, 1)) for text in (*NASTY, "漆" * 60, "ｅ\u0301" * 40)]
    lines = list(bar_lines(bars, width, plain=plain))
    assert len(lines) == len(bars) + 2
    for line in lines[:-2]:
        assert "\n" not in line and not UNSEEN.search(line)
        assert cells(line) <= width
    first = PLAIN_SIGNS[0] if plain else SIGNS[0]
    starts = {cells(line[: line.rindex(first * 2)]) for line in lines[:-2]}
    assert len(starts) == 1  # all bars begin in one column


@pytest.mark.parametrize(
    ("text", "room", "shown"),
    [
        ("Orde", 4, "Orde"),
        ("Walter Orde", 8, "Walter…"),
        ("漆漆漆", 5, "漆漆…"),
        ("漆漆漆", 4, "漆…"),
        ("e\u0301e\u0301e\u0301", 3, "e\u0301e\u0301e\u0301"),
        ("two\nlines", 20, "two lines"),
        ("abc", 1, "…"),
        ("abc", 0, ""),
    ],
)
def test_fitting(text: str, room: int, shown: str) -> None:
    # Widths: Unicode Standard Annex 11 (W and F are wide); accents of another letter take none.
    assert fitted(text, room) == shown
    assert cells(shown) <= room
    assert cells(padded(shown, room)) == room


def test_numbers() -> None:
    assert [numbers(Count(*those)) for those in ((0,), (1200,), (3, 2), (0, 0, 1))] == [
        *("0", "1,200", "3 + 2", "0 + 0 + 1")
    ]


def test_bars_of_decades_show_what_lies_empty_between() -> None:
    things = [Thing("certain", *read(date)[2:4]) for date in ("1741", "1868", "")]
    assert [(bar.label, bar.counts.total) for bar in bars_of(by_decade(things))] == [
        *(("1740s", 1), ("1750s to 1850s", 0), ("1860s", 1), ("no decade", 1))
    ]
    assert bars_of(tally([])) == () and list(bar_lines(())) == []


def test_a_table_in_parts_where_it_is_wide() -> None:
    grid = Grid(
        ("1930s", "1940s", "1950s"),
        (("epoxy resin", (Count(1, 2), Count(), Count(3))), ("漆", (Count(), Count(), Count(1)))),
    )
    assert list(grid_lines(grid)) == [
        "             1930s  1940s  1950s",
        "epoxy resin  1 + 2             3",
        "漆                             1",
    ]
    assert list(grid_lines(grid, 25)) == [
        "           1930s  1940s",
        "epoxy re…  1 + 2",
        "漆",
        "",
        "           1950s",
        "epoxy re…      3",
        "漆             1",
    ]
    assert list(grid_lines(Grid((), ()))) == []


@pytest.mark.parametrize("width", [30, 80])
def test_a_table_takes_user_text_as_data(width: int) -> None:
    rows = tuple((text, (Count(1, 2, 3),) * 12) for text in NASTY)
    lines = list(grid_lines(Grid(("1930s",) * 12, rows), width))
    parts = lines.count("") + 1
    assert len(lines) == parts * (len(NASTY) + 1) + parts - 1
    assert all(cells(line) <= width and not UNSEEN.search(line) for line in lines)
