"""What was typed is never lost: drafts on disk, through Esc, Ctrl+Q and a kill."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from conservedb.tui.drafts import Draft, Drafts
from conservedb.tui.recording import Field, Form
from conservedb.tui.running import runs_elsewhere, this_process
from tests.tui.conftest import screen_text
from tests.tui.form_recorder import Fake
from tests.tui.forms import ANSWERS, at_form, form_of, one_field, row_of, typed, until

NOTE = one_field(Field("note", "note", value="old"))
NASTY = "a\nb\x1b[31m\0\u202e\ud800 [b]✓ 😀 ؏"


def draft(key: str = "k", **values: str) -> Draft:
    return Draft(
        key, "step", "Step", "", "2026-11-02T14:05:09", 3, values, dict.fromkeys(values, "")
    )


def test_any_text_comes_back(tmp_path: Path) -> None:
    drafts = Drafts(tmp_path / "new" / "folder")
    kept = draft(NASTY + "/../x", note=NASTY, **{NASTY: "v"})
    drafts.keep(kept)
    assert drafts.take(kept.key) == kept and drafts.drafts() == (kept,)
    assert [one.name for one in drafts.folder.iterdir() if one.suffix != ".json"] == []
    assert drafts.take("other") is None
    drafts.drop(kept.key)
    assert drafts.drafts() == () and list(drafts.folder.iterdir()) == []


def test_an_older_draft_never_undoes_a_newer(tmp_path: Path) -> None:
    drafts = Drafts(tmp_path)
    first, second = drafts.turn(), drafts.turn()
    drafts.keep(draft(note="new"), second)
    drafts.keep(draft(note="old"), first)
    found = drafts.take("k")
    assert found is not None and found.values == {"note": "new"}
    third, fourth = drafts.turn(), drafts.turn()
    drafts.drop("k", fourth)
    drafts.keep(draft(note="late"), third)
    assert drafts.take("k") is None


@pytest.mark.parametrize(
    "text",
    ["", "{", "[]", "null", "\x00\xff", '{"shape": 2}', "[" * 100_000, '{"shape": 1, "key": 5}'],
)
def test_a_damaged_draft_is_set_aside(tmp_path: Path, text: str) -> None:
    drafts = Drafts(tmp_path)
    drafts.keep(draft(note="x"))
    (path,) = tmp_path.glob("*.json")
    path.write_text(text, encoding="latin-1")
    assert drafts.take("k") is None
    assert [one.suffix for one in tmp_path.iterdir()] == [".damaged"]


def test_where_drafts_lie(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("CONSERVEDB_STATE", str(tmp_path))
    assert Drafts().folder == tmp_path / "drafts"


async def test_esc_keeps_the_draft_and_it_is_offered_again(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path, NOTE) as pilot:
        await typed(pilot, " and new")
        await typed(pilot, "<escape>")
        await until(pilot, lambda: ANSWERS == [None])
        assert "kept as a draft" in screen_text(pilot.app)
    (kept,) = Drafts(tmp_path).drafts()
    assert kept.values == {"note": "old and new", "last": ""} and kept.typed == {
        "note": "old and new"
    }
    assert kept.shown == {"note": "old", "last": ""}
    async with at_form(Fake(), tmp_path, NOTE) as pilot:
        assert row_of(pilot, "note").value == "old and new"
        assert f"a draft of {kept.clock} is here" in screen_text(pilot.app)
        await typed(pilot, "<ctrl+d>")
        assert row_of(pilot, "note").value == "old" and not Drafts(tmp_path).drafts()
        await typed(pilot, "<ctrl+d>")
        assert row_of(pilot, "note").value == "old and new"
        assert len(Drafts(tmp_path).drafts()) == 1
        await typed(pilot, "<ctrl+d>")
        await typed(pilot, "<escape>")
        assert "kept as a draft" not in screen_text(pilot.app)
    assert not Drafts(tmp_path).drafts()


async def test_ctrl_q_keeps_the_draft_and_quits(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path, replace(NOTE, reason=True)) as pilot:
        await typed(pilot, "x", "<ctrl+s>", "because", "<ctrl+q>")  # from a sheet, even
        await until(pilot, lambda: not pilot.app.is_running)
    assert Drafts(tmp_path).drafts()[0].typed == {"note": "oldx"}


async def test_the_draft_is_kept_while_typing_goes_on(tmp_path: Path) -> None:
    async with at_form(Fake(), tmp_path, NOTE) as pilot:
        end = time.monotonic() + 0.9
        while time.monotonic() < end:
            await typed(pilot, "x")
        kept = Drafts(tmp_path).drafts()
        assert kept and len(kept[0].values["note"]) > 3


async def test_a_draft_of_an_older_version_is_saved_against_that_version(tmp_path: Path) -> None:
    old = Draft(
        "test", "test", "Test", "", "2026-11-02T14:05:09", 3, {"note": "mine"}, {"note": "a"}
    )
    Drafts(tmp_path).keep(old)
    fake = Fake()
    newer = one_field(Field("note", "note", value="theirs"), version=4)
    async with at_form(fake, tmp_path, newer) as pilot:
        assert "the record was changed since" in " ".join(screen_text(pilot.app).split())
        await typed(pilot, "<ctrl+d>")
        assert row_of(pilot, "note").value == "theirs"
        await typed(pilot, "<ctrl+d>")
        await typed(pilot, "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    form = fake.saves[0]["form"]
    assert isinstance(form, Form) and form.version == 3 and form.fields[0].value == "a"
    assert fake.values["note"] == "mine"


async def test_a_draft_of_a_new_record_brings_back_what_was_filled_in(tmp_path: Path) -> None:
    def form(person: str, **more: object) -> Form:
        return replace(
            one_field(Field("note", "note"), **more),
            fields=(Field("note", "note"), Field("person", "person", value=person)),
        )

    async with at_form(Fake(), tmp_path, form("Ida Holm")) as pilot:
        await typed(pilot, "mine")
    async with at_form(Fake(), tmp_path, form("W. Orde")) as pilot:
        assert form_of(pilot).values() == {"note": "mine", "person": "Ida Holm"}
        assert form_of(pilot).typed == {"note": "mine"}
        await typed(pilot, "<ctrl+d>")
        assert form_of(pilot).values() == {"note": "", "person": "W. Orde"}
    async with at_form(Fake(), tmp_path, form("Ida Holm", version=3)) as pilot:
        await typed(pilot, "mine")
    async with at_form(Fake(), tmp_path, form("W. Orde", version=4)) as pilot:
        assert form_of(pilot).values() == {"note": "mine", "person": "W. Orde"}


def test_a_draft_of_before_there_were_windows_is_read(tmp_path: Path) -> None:
    drafts = Drafts(tmp_path)
    drafts.keep(draft(note="old"))
    (path,) = tmp_path.glob("*.json")
    path.replace(tmp_path / f"{path.name.partition('.')[0]}.json")
    assert drafts.drafts() == (draft(note="old"),) == (drafts.take("k"),)
    assert list(tmp_path.iterdir()) == [path]
    drafts.drop("k")
    assert not list(tmp_path.iterdir())


def test_two_windows_left_behind_give_their_drafts_one_after_the_other(tmp_path: Path) -> None:
    newer = replace(draft(note="b"), at="2026-11-03T14:05:09")
    Drafts(tmp_path).keep(newer)
    Drafts(tmp_path).keep(draft(note="a"))
    first = Drafts(tmp_path)
    assert first.take("k") == newer
    first.drop("k")
    assert Drafts(tmp_path).take("k") == draft(note="a")


def test_a_number_used_again_is_not_the_process_that_wrote() -> None:
    assert not runs_elsewhere(this_process())
    number = os.getppid()
    assert not runs_elsewhere(f"{number}-of before the system was started again")
    assert not runs_elsewhere("0-") and not runs_elsewhere("x-") and not runs_elsewhere("9" * 99)


async def test_a_folder_that_cannot_be_written_is_told(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    async with at_form(Fake(), tmp_path / "file" / "drafts", NOTE) as pilot:
        await typed(pilot, "x", "<tab>")
        await until(pilot, lambda: "no draft can be kept" in screen_text(pilot.app))
        await typed(pilot, "<escape>")
        await until(pilot, lambda: ANSWERS == [None])


async def test_the_form_opens_also_on_a_damaged_draft(tmp_path: Path) -> None:
    Drafts(tmp_path).keep(draft("test", note="x"))
    (path,) = tmp_path.glob("*.json")
    path.write_bytes(b"\xff" * 10)
    async with at_form(Fake(), tmp_path, NOTE) as pilot:
        assert form_of(pilot).typed == {}


KILLED = """
import asyncio, pathlib, sys
from tests.tui.forms import *
async def main():
    form = one_field(Field("note", "note"))
    async with at_form(Fake(), pathlib.Path(sys.argv[1]), form) as pilot:
        await typed(pilot, "words that were typed")
        print("typed", flush=True)
        for _ in range(1000):
            await pilot.pause(0.01)
asyncio.run(main())
"""


@pytest.fixture
def killed(tmp_path: Path) -> Iterator[subprocess.Popen[str]]:
    command = [sys.executable, "-c", KILLED, str(tmp_path)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=os.environ) as run:
        yield run
        run.kill()


def test_a_kill_loses_nothing_older_than_half_a_second(
    killed: subprocess.Popen[str], tmp_path: Path
) -> None:
    assert killed.stdout is not None and killed.stdout.readline() == "typed\n"
    time.sleep(0.5)
    os.kill(killed.pid, signal.SIGKILL)
    killed.wait()
    (path,) = tmp_path.glob("*.json")
    assert json.loads(path.read_text())["values"] == {"note": "words that were typed", "last": ""}


async def test_the_draft_of_a_window_that_is_open_is_its_own(
    killed: subprocess.Popen[str], tmp_path: Path
) -> None:
    assert killed.stdout is not None and killed.stdout.readline() == "typed\n"
    time.sleep(0.5)
    (theirs,) = tmp_path.glob("*.json")
    form = one_field(Field("note", "note"))
    async with at_form(Fake(), tmp_path, form) as pilot:
        assert form_of(pilot).typed == {} and not Drafts(tmp_path).drafts()
        await typed(pilot, "mine", "<tab>")
        await until(pilot, lambda: len(list(tmp_path.glob("*.json"))) == 2)
        await typed(pilot, "<ctrl+s>")
        await until(pilot, lambda: bool(ANSWERS))
    assert list(tmp_path.glob("*.json")) == [theirs]
    killed.kill()
    killed.wait()
    async with at_form(Fake(), tmp_path, form) as pilot:
        assert form_of(pilot).typed == {"note": "words that were typed"}
        assert not theirs.exists() and len(list(tmp_path.glob("*.json"))) == 1
