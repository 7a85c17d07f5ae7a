"""Text that has broken other programs, in every field and on every screen: shown as data."""

from __future__ import annotations

import fcntl
import os
import pty
import re
import select
import struct
import subprocess
import sys
import termios
import time
from collections.abc import Iterable

import pytest
from textual.content import Content
from textual.pilot import Pilot
from textual.widgets import Static

from conservedb.questions.display import show
from conservedb.tui.app import ConservedbApp
from conservedb.tui.screens.material import MaterialScreen
from conservedb.tui.screens.object import ObjectScreen
from conservedb.tui.screens.removal import RemovalScreen
from conservedb.tui.screens.treatment import TreatmentScreen
from conservedb.tui.text import LONGEST_LINE, plain, prose
from conservedb.tui.widgets.lines import Lines
from tests.nasty import NASTY
from tests.tui.conftest import WIDE, press, screen_text, sitting, type_in
from tests.tui.soaked import Soaked

UNPRINTABLE = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069\ud800-\udfff]")
MORE = ("half \ud83d of a pair", "[@click=app.quit]", "\x1bP+q544e\x1b\\", "$quiet [$", "")


def unbroken(text: str) -> str:
    """The text without blanks and line breaks, as these move when lines are wrapped."""
    return re.sub(r"[\s⏎]+", "", text)


def written(lists: Iterable[Lines]) -> str:
    """Everything that lists hold, also what is out of view, uncut."""
    parts = []
    for each in lists:
        for item in each.items:
            parts += [content.plain for content in item.draw(90_000)]
    return unbroken("".join(parts))


def check(pilot: Pilot[None], text: str) -> None:
    """The screen holds no character that a terminal would obey; panels hold the text."""
    assert UNPRINTABLE.search(screen_text(pilot.app)) is None
    for static in pilot.app.screen.query(Static):
        assert isinstance(static.content, Content) or static.content == ""
    held = written(pilot.app.screen.query(Lines))
    assert unbroken(show(text[:LONGEST_LINE])) in held


ALL = (*NASTY, *MORE)
BATCHES = [" ¦ ".join(text[:700] for text in ALL[start::2]) for start in range(2)]


@pytest.mark.campaign
@pytest.mark.parametrize("text", BATCHES, ids=range(2))
async def test_every_screen_shows_them(text: str) -> None:
    await walk_through(text)


@pytest.mark.campaign
@pytest.mark.parametrize("text", ALL[::3], ids=range(0, len(ALL), 3))
async def test_every_screen_shows_each(text: str) -> None:
    await walk_through(text)


async def walk_through(text: str) -> None:
    """Every screen, with the text in every field; clicks where it stands."""
    async with sitting(Soaked(text), WIDE) as pilot:
        check(pilot, text)
        await type_in(pilot, "ab")
        check(pilot, text)
        await press(pilot, "down", "up", "down", "down", "enter")
        await press(pilot, "w")
        check(pilot, text)
        await press(pilot, "escape")
        for mark in ("", "B07", "S02", "J14"):
            await visit(pilot, mark)
            check(pilot, text)
        for key in ("tab", "down", "g", "f"):
            await press(pilot, key)
            check(pilot, text)
        assert unbroken(show(text)) in written(pilot.app.screen.query(Lines))
        await pilot.click("#sheet", offset=(20, 4))
        await press(pilot, "escape")
        await beyond(pilot, text)
        for where in ("#summary", "#section", "#history", "#parts", "#heading"):
            await pilot.click(where, offset=(8, 0))
            await press(pilot)
            if len(pilot.app.screen_stack) > 2:  # a click on the line under the cursor opens it
                await press(pilot, "escape")
        assert pilot.app.is_running


async def beyond(pilot: Pilot[None], text: str) -> None:
    """The material and the plans for removal, with all that is laid over them; and back."""
    app = pilot.app
    assert isinstance(app, ConservedbApp)
    today, depth = app.reading.as_of(""), len(app.screen_stack)
    material = MaterialScreen(app.reading, "b72", today)
    removal = RemovalScreen(app.reading, "SQ.1902.7", "J14", "", today)
    ways = (
        (material, (("f",), ("tab", "down", "f"))),
        (MaterialScreen(app.reading, "resin", today), ()),
        (removal, (("f",), ("c",), ("i",))),
        (RemovalScreen(app.reading, "SQ.1902.7", "J14", "L14b", today), ()),
        (TreatmentScreen(app.reading, "SQ.1902.7", "T2026"), (("f",), ("a",))),
        (TreatmentScreen(app.reading, "SQ.1902.7", "T1934"), (("f",),)),
    )
    for screen, sheets in ways:
        await app.push_screen(screen)
        await press(pilot, "end", "pagedown", "home")
        check(pilot, text)
        for keys in sheets:
            await press(pilot, *keys)
            check(pilot, text)
            await press(pilot, "escape")
        await press(pilot, "escape")
    assert len(app.screen_stack) == depth


async def visit(pilot: Pilot[None], mark: str) -> None:
    """Open the object there."""
    app = pilot.app
    assert isinstance(app, ConservedbApp)
    while len(app.screen_stack) > 1:
        await press(pilot, "escape")
    await app.push_screen(ObjectScreen(app.reading, "SQ.1902.7", mark))
    await press(pilot)


@pytest.mark.parametrize("text", ALL, ids=range(len(ALL)))
def test_nothing_is_lost_on_the_way_to_the_screen(text: str) -> None:
    assert prose(text).plain == show(text)
    line = unbroken(plain(text).plain)
    assert line == unbroken(show(text)) or line == unbroken(show(text[:LONGEST_LINE])) + "…"
    assert not prose(text).spans


SCRIPT = """
import sys
from conservedb.tui.app import ConservedbApp
from tests.tui.soaked import Soaked
from tests.nasty import NASTY
ConservedbApp(Soaked(" ".join(NASTY[9:17]))).run()
"""


def test_no_raw_sequence_reaches_a_terminal() -> None:
    """In a pseudo-terminal: what is written holds none of the sequences that records hold."""
    main, other = pty.openpty()
    fcntl.ioctl(main, termios.TIOCSWINSZ, struct.pack("HHHH", 40, 140, 0, 0))
    environment = {**os.environ, "TERM": "xterm-256color", "TEXTUAL_ANIMATIONS": "none"}
    process = subprocess.Popen(
        [sys.executable, "-c", SCRIPT], stdin=other, stdout=other, stderr=other, env=environment
    )
    try:
        seen = b"".join(_until(main, b"Open treatments", 20))
        os.write(main, b"\x1b[B\r")
        seen += b"".join(_until(main, b"authorisation, steps", 20))
        os.write(main, b"p")
        seen += b"".join(_until(main, b"History", 20))
        os.write(main, b"\x11")
        seen += b"".join(_until(main, b"\x1b[?1049l", 10))
    finally:
        process.kill()
        process.wait()
        os.close(main)
        os.close(other)
    assert b"History" in seen
    assert b"owned" in seen  # the text of the title sequence is shown
    for sequence in (b"\x1b]0;owned", b"\x1b]52;c;aGk=", b"\x1b[2J title", b"\xc2\x9b31m"):
        assert sequence not in seen
    assert "\u202e".encode() not in seen


def _until(terminal: int, marker: bytes, seconds: float) -> Iterable[bytes]:
    """What the terminal is sent, until the marker has come by or time is up."""
    end, whole = time.monotonic() + seconds, b""
    while marker not in whole and time.monotonic() < end:
        if select.select([terminal], [], [], 0.2)[0]:
            try:
                part = os.read(terminal, 65536)
            except OSError:
                return
            whole += part
            yield part
