"""First usable paint of the demonstration against a bare Textual app, in a pseudo-terminal."""

from __future__ import annotations

import fcntl
import os
import pty
import signal
import statistics
import struct
import sys
import termios
import time
from pathlib import Path

import pytest

from conservedb.demo.build import load
from conservedb.store.opening import open_database

BUDGET = 1.6
ROUNDS = 9
BARE = """
from textual.app import App
from textual.widgets import Input

class Bare(App):
    def compose(self):
        yield Input(placeholder="Find: anything")

Bare().run()
"""
OURS = "import sys; sys.argv = ['conservedb', '--db', {path!r}]; import runpy;" + (
    "runpy.run_module('conservedb', run_name='__main__')"
)
PAINTED = b"ind: "  # the cursor stands on the F


def seconds_to_paint(code: str, environment: dict[str, str]) -> float:
    """Seconds from the start of the process until its find line is on the screen."""
    started = time.perf_counter()
    child, terminal = pty.fork()
    if child == 0:
        os.execve(sys.executable, [sys.executable, "-c", code], environment)
    fcntl.ioctl(terminal, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
    shown = b""
    try:
        while PAINTED not in shown:
            shown += os.read(terminal, 65536)
        return time.perf_counter() - started
    finally:
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        os.close(terminal)


@pytest.mark.bench
def test_first_paint(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    load(path)
    open_database(path)[0].dispose()
    environment = os.environ | {
        "PYTHONPYCACHEPREFIX": str(tmp_path / "cache"),  # compiled, as an installed program is
        "TERM": "xterm-256color",
        "LANG": "C.UTF-8",
    }
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    ours, bare = OURS.format(path=str(path)), BARE
    for code in (ours, bare):
        seconds_to_paint(code, environment)
        time.sleep(0.5)
    times = [
        (seconds_to_paint(ours, environment), seconds_to_paint(bare, environment))
        for _ in range(ROUNDS)
    ]
    first, floor = (statistics.median(one) for one in zip(*times, strict=True))
    print(f"first paint of the demonstration: {first / floor:.2f} x a bare app ({floor:.2f} s)")
    assert first / floor <= BUDGET
