"""A form in a real terminal: whole lines sent at once, and a paste."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.tui.test_walk_in_tmux import Terminal

pytestmark = pytest.mark.campaign
APP = Path(__file__).parent / "form_app.py"


@pytest.fixture
def terminal(tmp_path: Path) -> Iterator[Terminal]:
    started = Terminal(tmp_path)
    yield started
    started.close()


def test_whole_lines_sent_at_once_land_in_order(terminal: Terminal, tmp_path: Path) -> None:
    terminal.run(sys.executable, str(APP), str(tmp_path))
    terminal.shows("Consolidate", "date")
    words = ["early 1930s", "par", "J14; J15", "5"]
    terminal.type(f"{words[0]}\t{words[1]}\x1b[B\x1b[B\r{words[2]}\t{words[3]}\tsp\t\t\r")
    terminal.type("lot\x7ft 7\t\x1b[200~first\nsecond\n\x1b[31m\nfourth\x1b[201~\r!")
    terminal.shows("fourth")
    terminal.press("C-s")
    terminal.shows("status 0")
    assert json.loads((tmp_path / "saved").read_text()) == {
        "date": "early 1930s",
        "material": "b67",
        "places": "J14; J15",
        "concentration": "5",
        "coverage": "spots",
        "people": "",
        "technique": "",
        "batch": "lot 7",
        "note": "first\nsecond\n\x1b[31m\nfourth\n!",
    }
