"""A day at the bench in a real terminal, with every key counted: what recording costs."""

from __future__ import annotations

import os
import signal
import subprocess
import time
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pytest

from tests.tui.test_recording_steps import rows
from tests.tui.test_walk_in_tmux import SECONDS, Terminal

pytestmark = pytest.mark.campaign
BLANK = "condition         ┄"


class Bench(Terminal):
    """A terminal that counts keys: those of words, and those beside them."""

    def __init__(self, folder: Path, path: Path) -> None:
        super().__init__(folder)
        self.path = path
        self.words = self.beside = 0

    def do(self, *steps: str) -> None:
        """Type: a key of its own stands in angle brackets and counts beside the words."""
        for step in steps:
            if step.startswith("<"):
                self.press(step[1:-1])
                self.beside += 1
            else:
                self.type(step)
                self.words += len(step)

    def key(self, *keys: str) -> None:
        """Single letters that are commands, not words."""
        for one in keys:
            self.type(one)
            self.beside += 1

    def shows_one(self, *texts: str) -> str:
        """The screen, once it holds one of these texts."""
        end = time.monotonic() + SECONDS
        while not any(text in (screen := self.screen()) for text in texts):
            assert time.monotonic() < end, screen
            time.sleep(0.1)
        return screen

    def counted(self, what: str) -> int:
        """Print what it took since the last count."""
        print(f"{what}: {self.beside} keys beside {self.words} of words")
        beside, self.words, self.beside = self.beside, 0, 0
        return beside


@pytest.fixture
def bench(demo: Path, tmp_path: Path) -> Iterator[Bench]:
    folder = tmp_path / "t"
    folder.mkdir()
    started = Bench(folder, demo)
    started.start(demo)
    started.shows("Open treatments", "you: A. Tester")
    yield started
    started.close()


def open_joint(bench: Bench) -> None:
    bench.do("SQ.1902.7 J14", "<Enter>")
    bench.shows("J14  joint: B07", "today")


def test_a_day_at_the_bench(bench: Bench, demo: Path) -> None:
    open_joint(bench)
    bench.counted("to the joint")

    bench.key("n", "e")
    bench.do("raking light, dry", "<Tab>", "loupe", "<C-s>")
    for number in range(1, 7):
        bench.shows("Record an observation", BLANK)
        bench.do("crack", "<Tab>", f"opening {number}", "<C-s>")
        _until(bench, partial(_are_seen, demo, number))
    bench.shows("Record an observation", BLANK)
    bench.do("<Escape>")
    bench.loses("Record an observation")
    assert bench.counted("examination with six observations") <= 25

    bench.do("<Home>")  # a plan is for the whole object
    bench.key("n", "l")
    bench.shows("Record a plan")
    bench.do("<Tab>", "preventive", "<Tab>", "it cannot travel", "<C-s>")
    for kind, material in (("cons", "b72"), ("fill", "b72")):
        bench.shows("Record a step of a plan", "not chosen")
        bench.do(kind, "<Tab>", "brushed", "<Tab>", material, "<C-s>")
        _until(bench, partial(_is_planned, demo, kind))
    bench.shows("Record a step of a plan", "not chosen")
    bench.do("<Escape>")
    bench.loses("Record a step of a plan")
    assert bench.counted("plan with two steps") <= 20

    bench.key("n", "a")
    bench.shows("Record an authorisation")
    bench.do("<Tab>", "cura", "<Tab>", "Rosalind Thaxter", "<Tab>", "auth", "<C-s>")
    bench.shows("saved: ")
    assert bench.counted("authorisation") <= 12

    bench.key("v")
    bench.shows("Tick by words")
    bench.do("surface", "<Enter>")
    bench.shows("12 ticked")
    bench.key("s")
    bench.shows("over 12 locations")
    bench.do("cons", "<Tab>", "b72", "<Tab>", "3 % w/v", "<C-s>")
    _reasons(bench)
    bench.shows("saved: ", "12 locations")
    assert bench.counted("consolidation over twelve") < 25

    bench.key("n", "r")
    bench.shows("Record a removal")
    bench.do("L14f; L15a; L01a", "<Tab>", "part", "<C-s>")
    _reasons(bench)
    bench.shows("saved: ")
    assert bench.counted("removal in part at three joints") < 25

    bench.key("u")
    bench.shows("Amend object")
    bench.do("<Tab>", " of 1741", "<C-s>")
    bench.shows("Why is this changed?")
    bench.do("checked", "<Enter>")
    bench.shows("amended: object SQ.1902.7; change set")
    assert bench.counted("amended once") < 10

    bench.do("<C-z>")
    bench.shows("undone: change set")
    assert bench.counted("undone once") == 1
    bench.do("<C-q>")
    bench.shows("status 0")


def test_a_killed_program_leaves_a_draft(bench: Bench, demo: Path, tmp_path: Path) -> None:
    open_joint(bench)
    bench.key("n", "o")
    bench.shows("Record an observation")
    bench.do("<Tab>", "a word that must not be lost")
    bench.shows("must not be lost")
    _until(bench, lambda: any(Path(os.environ["CONSERVEDB_STATE"], "drafts").glob("*.json")))
    time.sleep(1)  # the last letters are kept a moment after they were typed
    os.kill(_program(bench), signal.SIGKILL)
    bench.shows("status 137")
    folder = tmp_path / "again"
    folder.mkdir()
    again = Bench(folder, demo)
    try:
        again.start(demo)
        again.shows("Drafts not saved", "Record an observation")
        again.press("Down", "Home", "Enter")
        again.shows("a draft of", "a word that must not be lost")
    finally:
        again.close()


def _program(bench: Bench) -> int:
    """The process of the interface: it is the one that has this test's database as its word."""
    found = subprocess.run(
        ["pgrep", "-f", str(bench.path)], capture_output=True, text=True, check=True
    )
    (process,) = [int(one) for one in found.stdout.split() if _is_python(int(one))]
    return process


def _is_python(process: int) -> bool:
    return b"python" in Path(f"/proc/{process}/cmdline").read_bytes().split(b"\0")[0]


def _are_seen(path: Path, number: int) -> bool:
    return len(rows(path, "SELECT 1 FROM observation WHERE seen LIKE 'opening _'")) == number


def _is_planned(path: Path, kind: str) -> bool:
    (last,) = rows(path, "SELECT kind FROM planned_step ORDER BY id DESC LIMIT 1")[0]
    return str(last).startswith(kind)


def _until(bench: Bench, holds: Callable[[], bool]) -> None:
    end = time.monotonic() + SECONDS
    while not holds():
        assert time.monotonic() < end, bench.screen()
        time.sleep(0.05)


def _reasons(bench: Bench) -> None:
    """Where the rules object, give a reason for each and go on."""
    screen = bench.shows_one("saved: ", "The rules object", "not saved: ")
    while "The rules object" in screen:
        bench.do("seen to by hand", "<Enter>")
        time.sleep(0.5)
        screen = bench.screen()
