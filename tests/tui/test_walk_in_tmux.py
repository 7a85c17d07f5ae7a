"""A walk through the demonstration in a real terminal: what a conservator does on a first day."""

from __future__ import annotations

import shlex
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from conservedb.demo.build import load

pytestmark = pytest.mark.campaign
RUN = (
    "import sys; from pathlib import Path; from conservedb.tui import run;"
    " sys.exit(run(Path(sys.argv[1])))"
)
SECONDS = 20.0


class Terminal:
    """A terminal of 80 by 24 in a tmux server of its own."""

    def __init__(self, folder: Path, columns: int = 80, rows: int = 24) -> None:
        self._tmux = ("tmux", "-S", str(folder / "socket"), "-f", "/dev/null")
        self._call("new-session", "-d", "-x", str(columns), "-y", str(rows), "sh")

    def _call(self, *words: str) -> str:
        run = subprocess.run([*self._tmux, *words], capture_output=True, text=True, check=True)
        return run.stdout

    def start(self, path: Path) -> None:
        """Start the interface; its exit status is printed when it ends."""
        self.run(sys.executable, "-c", RUN, str(path))

    def run(self, *command: str) -> None:
        """Run a command of ours; its exit status is printed when it ends."""
        self.type(f"LANG=C.UTF-8 PYTHONPATH={Path.cwd()} {shlex.join(command)}; echo status $?")
        self.press("Enter")

    def press(self, *keys: str) -> None:
        self._call("send-keys", *keys)

    def type(self, words: str) -> None:
        self._call("send-keys", "-l", words)

    def screen(self) -> str:
        return self._call("capture-pane", "-p")

    def shows(self, *texts: str) -> str:
        """The screen, once it holds all these texts."""
        end = time.monotonic() + SECONDS
        while time.monotonic() < end:
            screen = self.screen()
            if all(text in screen for text in texts):
                return screen
            time.sleep(0.1)
        raise AssertionError(f"never came to show {texts}:\n{self.screen()}")

    def loses(self, text: str) -> None:
        """Wait until the text has gone (a key after Escape at once would mean Alt and that key)."""
        end = time.monotonic() + SECONDS
        while text in self.screen():
            assert time.monotonic() < end, f"{text} never went"
            time.sleep(0.1)

    def close(self) -> None:
        subprocess.run([*self._tmux, "kill-server"], capture_output=True, check=False)


@pytest.fixture
def terminal(tmp_path: Path) -> Iterator[Terminal]:
    started = Terminal(tmp_path)
    yield started
    started.close()


def test_from_the_start_to_a_joint_in_1950_and_back(terminal: Terminal, tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    load(path)
    terminal.start(path)
    terminal.shows("Open treatments", "Joints moving or failed", "J14")
    terminal.type("dolphin")
    terminal.shows("found", "dolphin, right")
    for _ in "dolphin":
        terminal.press("BSpace")
    terminal.type("SQ.1902.7 J14")
    terminal.press("Enter")
    terminal.shows("SQ.1902.7", "The Four Winds", "J14  joint: B07", "trass-lime mortar", "today")
    terminal.press("Tab", "Down", "Down")
    terminal.shows("shellac (L14b)")
    terminal.press("o")
    terminal.shows("removal of shellac", "STUDY ONLY", "carries 85 kg", "Options for removal")
    terminal.press("+")
    terminal.shows("hazard bands A to D")
    terminal.press("End")
    terminal.shows("no leave to go ahead")
    terminal.press("Escape")
    terminal.loses("STUDY ONLY")
    terminal.press("m")
    terminal.shows("What is on record", "natural resin", "Where it lies")
    terminal.press("Escape")
    terminal.loses("What is on record")
    terminal.press("d")
    terminal.shows("as of", "Enter goes there")
    terminal.type("14 June 1950")
    terminal.press("Enter")
    terminal.shows("as of 14 June 1950", "shellac")
    terminal.press("g")
    terminal.press("End")
    terminal.shows("K3 cramp")
    terminal.press("[")
    terminal.shows("as of 14 June 1934")
    terminal.press("t")
    terminal.shows("today, 2 November 2026")
    terminal.press("F1")
    terminal.shows("Keys", "Step to the event before")
    terminal.press("Escape")
    terminal.loses("Step to the event before")
    terminal.press("/")
    terminal.shows("Find: number")
    terminal.type("urn")
    terminal.shows("urn, left")
    terminal.press("Enter")
    terminal.shows("B14  urn, left", "lost by this day")
    terminal.press("Escape")
    terminal.shows("3 found")  # what was typed is still there
    terminal.press("Escape")
    terminal.shows("Open treatments")
    terminal.press("C-q")
    terminal.shows("status 0")


def test_a_file_that_is_not_there(terminal: Terminal, tmp_path: Path) -> None:
    terminal.start(tmp_path / "none.db")
    terminal.shows("! there is no database at", "conservedb new")
    terminal.press("C-q")
    terminal.shows("status 0")
