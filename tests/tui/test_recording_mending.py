"""Mending from the object screen: each form saves, is undone by a key, and says what is wrong."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from textual.pilot import Pilot

from conservedb.exchange.entering import Entry, enter
from conservedb.store.log import Author
from conservedb.store.opening import open_database
from conservedb.tui.about import KINDS, MENDING
from conservedb.tui.screens.desk_form import DeskForm
from conservedb.tui.screens.object import ObjectScreen
from tests.conftest import TODAY
from tests.tui.at_the_desk import at_desk
from tests.tui.conftest import screen_text
from tests.tui.forms import form_of, row_of, typed
from tests.tui.test_recording_steps import rows

pytestmark = pytest.mark.campaign
FOUNTAIN = "object_id = (SELECT id FROM object WHERE number = 'SQ.1902.7')"
MENDED = (
    (
        "S",
        {"fragments": "B12x; B12y"},
        "saved: B12 broke into B12x, B12y; change set",
        f"""SELECT count(*) FROM component WHERE {FOUNTAIN} AND mark IN ('B12x', 'B12y')
            AND kind = 'fragment' AND note = 'broken from B12: as was seen'""",
        2,
    ),
    (
        "R",
        {"on": "3 May 2026"},
        "saved: B12 taken out; change set",
        f"""SELECT count(*) FROM component WHERE {FOUNTAIN} AND mark = 'B12'
            AND retired_words = '3 May 2026' AND retired_why = 'as was seen'""",
        1,
    ),
    (
        "N",
        {"new": "B12n", "on": "2026-05-03"},
        "saved: B12n in place of B12; change set",
        f"""SELECT count(*) FROM component o JOIN component n ON n.id = o.replaced_by_id
            WHERE o.{FOUNTAIN} AND o.mark = 'B12' AND n.mark = 'B12n'
            AND o.retired_edtf = '2026-05-03'""",
        1,
    ),
    (
        "M",
        {"layer": "L14b", "material": "pvac", "source": "REP-2012"},
        "saved: L14b is pvac; change set",
        f"""SELECT count(*) FROM layer l JOIN material m ON m.id = l.material_id
            JOIN statement s ON s.layer_id = l.id AND s.followed = 'yes' AND s.value = 'pvac'
            WHERE l.{FOUNTAIN} AND l.ref = 'L14b' AND m.key = 'pvac'
            AND s.reason = 'as was seen'""",
        1,
    ),
    (
        "U",
        {"keep": "Tom Aldous", "gone": "Leonie Strand"},
        "saved: Leonie Strand is Tom Aldous; change set",
        """SELECT count(*) FROM person_alias a JOIN person p ON p.id = a.person_id
            WHERE p.name = 'Tom Aldous' AND a.alias = 'Leonie Strand'""",
        1,
    ),
    (
        "I",
        {"keep": "linseed-putty", "gone": "our-putty"},
        "saved: our-putty is linseed-putty; change set",
        """SELECT count(*) FROM material m WHERE m.key = 'linseed-putty'
            AND m.note LIKE '%merged with our-putty by A. Tester (as was seen)%'
            AND NOT EXISTS (SELECT 1 FROM material WHERE key = 'our-putty')""",
        1,
    ),
)
"""Letter, what is typed, what is said, and what is then counted, that was not there before."""


def add_our_putty(path: Path) -> None:
    """A material of the house: those that came with the program cannot go."""
    engine, _ = open_database(path)
    cells = {"key": "our-putty", "name": "putty of the house"}
    entry = Entry("materials", cells)
    assert enter(engine, lambda _: [entry], Author("A. Tester", "recorded"), TODAY).faults == ()
    engine.dispose()


async def fill_in(pilot: Pilot[None], letter: str, fields: dict[str, str]) -> None:
    """Open a form that mends, and fill it in."""
    await typed(pilot, "n", letter)
    for name, text in (fields | {"reason": "as was seen"}).items():
        row_of(pilot, name).value = text


def test_every_letter_is_tried_and_stands_for_one_thing() -> None:
    assert [one.letter for one in MENDING] == [letter for letter, *_ in MENDED]
    letters = [one.letter for one in (*KINDS, *MENDING) if one.letter]
    assert len(letters) == len(set(letters))


@pytest.mark.parametrize(("letter", "fields", "said", "sql", "count"), MENDED)
async def test_it_is_mended_and_undone(
    demo: Path, letter: str, fields: dict[str, str], said: str, sql: str, count: int
) -> None:
    add_our_putty(demo)
    assert rows(demo, sql) == [(0,)]
    async with at_desk(demo, "B12") as pilot:
        await fill_in(pilot, letter, fields)
        if letter in "SRN":
            assert row_of(pilot, "part").value == "B12"
        await typed(pilot, "<ctrl+s>")
        assert isinstance(pilot.app.screen, ObjectScreen), screen_text(pilot.app)
        assert said in screen_text(pilot.app)
        assert rows(demo, sql) == [(count,)]
        await typed(pilot, "<ctrl+z>")
        assert "undone: change set" in screen_text(pilot.app)
    assert rows(demo, sql) == [(0,)]


@pytest.mark.parametrize(
    ("letter", "fields", "field", "sentence"),
    [
        ("S", {"fragments": "B12x; B03"}, "fragments", "“B03” stands for another part or place"),
        ("N", {"new": "J14", "on": "2026"}, "new", "“J14” stands for another part or place"),
        ("R", {"part": "B14", "on": "2026"}, "part", "“B14” was lost [1941..1944] already"),
        (
            "M",
            {"layer": "L14b", "material": "shellac", "source": "REP-2012"},
            "layer",
            "is on record as shellac already",
        ),
        (
            "M",
            {"layer": "L14b", "material": "unobtainium", "source": "REP-2012"},
            "material",
            "“unobtainium”",
        ),
        ("M", {"layer": "L14b", "material": "pvac", "source": "NONE"}, "source", "“NONE” names no"),
        ("R", {"part": "B98"}, "part", "“B98” names no"),
        ("U", {"keep": "Tom Aldous", "gone": "Nobody Atall"}, "gone", "“Nobody Atall” names no"),
        ("U", {"keep": "Tom Aldous", "gone": "Tom Aldous"}, "gone", "is this same person"),
        ("I", {"keep": "linseed-putty", "gone": "oil-mastic"}, "gone", "came with the program"),
        ("I", {"keep": "shellac", "gone": "shellac"}, "gone", "is this same material"),
    ],
)
async def test_what_is_wrong_stands_at_its_field(
    demo: Path, letter: str, fields: dict[str, str], field: str, sentence: str
) -> None:
    before = rows(demo, "SELECT max(id) FROM change_set")
    async with at_desk(demo, "B12") as pilot:
        await fill_in(pilot, letter, fields)
        await typed(pilot, "<ctrl+s>")
        assert sentence in row_of(pilot, field).problem
        assert ".csv" not in screen_text(pilot.app)
    assert rows(demo, "SELECT max(id) FROM change_set") == before


async def test_a_reason_is_needed(demo: Path) -> None:
    async with at_desk(demo, "B12") as pilot:
        await fill_in(pilot, "R", {"reason": "  "})
        row_of(pilot, "reason").value = "  "
        await typed(pilot, "<ctrl+s>")
        assert "needed" in row_of(pilot, "reason").problem


async def test_the_layer_under_the_cursor_is_filled_in(demo: Path) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<tab>", "<down>", "n", "M")
        assert row_of(pilot, "layer").value.startswith("L14")
        assert row_of(pilot, "identified").value == "analysed"


async def test_the_menu_is_walked_and_clicked(demo: Path) -> None:
    async with at_desk(demo, "B12") as pilot:
        await typed(pilot, "n", *("<down>",) * 13, "<right>", "<enter>")
        assert form_of(pilot).form.kind == "merge people"
        await typed(pilot, "<escape>", "n", "<up>", "<right>", "<up>", "<enter>")
        assert form_of(pilot).form.kind == "replace"
        await typed(pilot, "<escape>", "n")
        await pilot.click("#menu", offset=(4, 14))
        await typed(pilot)
        assert form_of(pilot).form.kind == "split"


@pytest.mark.parametrize("closed", ["file", "folder"])
@pytest.mark.parametrize("keys", [("s",), ("n", "o"), ("n", "S"), ("u",), ("<delete>",)])
async def test_where_one_may_only_read_no_form_opens(
    demo: Path, monkeypatch: pytest.MonkeyPatch, closed: str, keys: tuple[str, ...]
) -> None:
    away = demo if closed == "file" else demo.parent
    real = os.access
    async with at_desk(demo) as pilot:
        monkeypatch.setattr(  # tests may run as root
            os, "access", lambda which, mode: Path(which) != away and real(which, mode)
        )
        await typed(pilot, *keys)
        assert not isinstance(pilot.app.screen, DeskForm)
        screen = " ".join(screen_text(pilot.app).split())
        assert ("you may read" if closed == "file" else "you may not write to the folder") in screen
        assert "Withdraw place" not in screen


async def test_where_one_may_only_read_no_object_is_begun(
    demo: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with at_desk(demo) as pilot:
        await typed(pilot, "<escape>")
        monkeypatch.setattr(os, "access", lambda which, _: Path(which) != demo)
        await typed(pilot, "<f3>")
        assert "look after the folder" in " ".join(screen_text(pilot.app).split()).replace(
            "looks", "look"
        )
        assert not isinstance(pilot.app.screen, DeskForm)
