"""Slow and failing questions: nothing blocks, stale answers are dropped, refusals are said."""

from __future__ import annotations

import sqlite3
from pathlib import Path
from threading import Event

import pytest
from textual import events
from textual.worker import WorkerFailed

import conservedb.tui
from conservedb.questions.answers import AsOf, PlaceAnswer, StartAnswer
from conservedb.tui.reading import Database, Unanswered
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.widgets.line import Line
from tests.tui.canned import Canned
from tests.tui.conftest import press, screen_text, settle, sitting, type_in

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them


class Slow(Canned):
    """J14 is answered only once the gate opens."""

    def __init__(self) -> None:
        self.gate = Event()

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        if mark == "J14":
            assert self.gate.wait(10)
        return super().place(number, mark, on)


async def test_a_slow_answer_neither_blocks_nor_comes_late() -> None:
    reading = Slow()
    async with sitting(reading, mark="B07") as pilot:
        await pilot.press("right", "down", "down")  # J14, which is slow
        await pilot.pause(0.1)
        await pilot.press("down")  # S02
        await pilot.pause(0.1)
        assert "S02  surface" in screen_text(pilot.app)
        reading.gate.set()
        await settle(pilot)
        assert "S02  surface" in screen_text(pilot.app)
        assert "J14  joint" not in screen_text(pilot.app)


class Closed(Canned):
    """Nothing can be read."""

    def start(self) -> StartAnswer:
        raise Unanswered("there is no database at /no/such.db; make one with: conservedb new")


async def test_a_file_that_cannot_be_used_is_said_on_the_start() -> None:
    async with sitting(Closed()) as pilot:
        assert "! there is no database at /no/such.db" in screen_text(pilot.app)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (None, "there is no database at {path}"),
        (b"", "{path} is not a conservedb database"),
        (b"not a database" * 100, "{path} is not a readable database"),
    ],
)
async def test_files_that_are_no_database(tmp_path: Path, content: bytes | None, said: str) -> None:
    path = tmp_path / "x.db"
    if content is not None:
        path.write_bytes(content)
    async with sitting(Database(path)) as pilot:
        shown = "".join(screen_text(pilot.app).split())  # a long path is broken over lines
        assert "".join(f"! {said.format(path=path)}".split()) in shown
    if content is not None:
        assert path.read_bytes() == content


def test_a_locked_file_is_a_refusal(tmp_path: Path) -> None:
    database = Database(tmp_path / "x.db")

    def locked(_: object) -> None:
        try:
            raise sqlite3.OperationalError("database is locked")
        except sqlite3.OperationalError as cause:
            raise RuntimeError("as the store's library wraps it") from cause

    database._engine = database  # opened already, as far as the question can tell
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("conservedb.store.connect.reading", lambda _: Event())
        patch.setattr(Event, "__enter__", lambda self: self, raising=False)
        patch.setattr(Event, "__exit__", lambda *_: None, raising=False)
        with pytest.raises(Unanswered, match=r"locked.*press r"):
            database.ask(locked)


async def test_an_object_that_is_not_there() -> None:
    async with sitting(mark="", number="NO.1") as pilot:
        assert "no object 'NO.1' on record" in screen_text(pilot.app)
        await press(pilot, "escape")
        assert "Open treatments" in screen_text(pilot.app)


async def test_words_that_are_no_day_stay_to_be_mended() -> None:
    async with sitting(mark="J14") as pilot:
        await pilot.press("d")
        await type_in(pilot, "Easter 1956")
        await press(pilot, "enter")
        text = screen_text(pilot.app)
        assert "as of  Easter 1956" in text and "cannot be read" in text
        await press(pilot, "escape")
        assert "today, 2 November 2026" in screen_text(pilot.app)


async def test_a_span_tells_what_held_when() -> None:
    async with sitting(mark="J14") as pilot:
        await pilot.press("d")
        await type_in(pilot, "1930s")
        await press(pilot, "enter")
        assert "as of the end of 1930s" in screen_text(pilot.app)


class Broken(Canned):
    """A fault of the program."""

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        secret = "confidential"
        raise KeyError(len(secret))


async def test_a_crash_prints_two_lines_and_no_values(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path))
    with pytest.raises(WorkerFailed):
        async with sitting(Broken(), mark="J14"):
            pass
    said = " ".join(capsys.readouterr().err.split())
    assert said.startswith("conservedb stopped because of a fault in the program")
    assert "confidential" not in said and "Traceback" not in said
    account = next(tmp_path.rglob("fault.txt")).read_text(encoding="utf-8")
    assert "KeyError" in account and "secret = len" not in account


def test_it_starts_only_in_a_terminal(capsys: pytest.CaptureFixture[str]) -> None:
    assert conservedb.tui.run(Path("any.db")) == 3
    assert "needs a terminal" in capsys.readouterr().err


def test_it_starts_only_with_utf8(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    class Latin:
        encoding = "latin-1"

        def isatty(self) -> bool:
            return True

    with monkeypatch.context() as patch:
        patch.setattr("sys.stdin", Latin())
        patch.setattr("sys.stdout", Latin())
        assert conservedb.tui.run(Path("any.db")) == 3
    assert "UTF-8" in capsys.readouterr().err


async def test_reading_again_keeps_day_and_place() -> None:
    async with sitting(mark="J14") as pilot:
        await press(pilot, "left_square_bracket", "r")
        text = screen_text(pilot.app)
        assert "as of 9 May 2012" in text and "J14  joint" in text
        assert isinstance(pilot.app.screen, ObjectScreen)


async def test_enter_before_the_answer_opens_what_is_found_then() -> None:
    async with sitting() as pilot:
        await pilot.press("J", "1", "4", "enter")
        await settle(pilot)
        assert "J14  joint" in screen_text(pilot.app)


def test_a_line_obeys_its_keys_itself() -> None:
    """Keys bound to actions would be overtaken by letters typed after them."""
    assert {"backspace", "delete", "enter", "left", "home"} <= set(Line.ACTIONS_OF_KEYS)


async def test_letters_typed_after_a_key_come_after_it() -> None:
    async with sitting(mark="J14") as pilot:
        for key in ("d", "1", "9", "x", "backspace", "5", "0", "enter"):
            pilot.app.post_message(events.Key(key, key if len(key) == 1 else None))
        await settle(pilot)
        assert "as of the end of 1950" in screen_text(pilot.app)


async def test_a_span_that_holds_today_is_not_today() -> None:
    async with sitting(mark="J14") as pilot:
        await pilot.press("d")
        await type_in(pilot, "2026-11")
        await press(pilot, "enter")
        assert "as of the end of 2026-11" in screen_text(pilot.app)
