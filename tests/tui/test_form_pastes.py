"""A paste with escape characters in it, as a terminal sends it."""

from __future__ import annotations

import os

import pytest
from textual.driver import Driver
from textual.events import Key, Paste
from textual.message import Message

from conservedb.tui.app import ConservedbApp
from conservedb.tui.whole_pastes import BEGIN, END, WholePastes
from tests.tui.canned import Canned
from tests.tui.conftest import screen_text, settle

TEXTS = (
    "alpha\nbeta\n\x1b[31mgamma\ndelta\n",
    "\x1b\x1b[20\x1b",
    "a\x1b[200~b\x13\x1b[",
    "plain",
)


@pytest.mark.parametrize("text", TEXTS)
@pytest.mark.parametrize("size", [1, 2, 3, 5, 7, 1000])
def test_it_is_one_paste_however_it_comes(text: str, size: int) -> None:
    parser = WholePastes()
    sent = f"x{BEGIN}{text}{END}y\x1b[A"
    came: list[Message] = []
    for start in range(0, len(sent), size):
        came += parser.feed(sent[start : start + size])
    read = [one.text if isinstance(one, Paste) else one for one in came]
    assert [one.key if isinstance(one, Key) else one for one in read] == ["x", text, "y", "up"]


@pytest.mark.skipif(os.name == "nt", reason="the terminals of Windows have another reader")
def test_the_terminal_is_read_so() -> None:
    from textual.drivers import linux_driver

    driver: type[Driver] = ConservedbApp(Canned()).driver_class
    assert driver is linux_driver.LinuxDriver
    assert vars(linux_driver)["XTermParser"] is WholePastes


async def test_no_escape_character_reaches_the_line_to_find_in() -> None:
    app = ConservedbApp(Canned())
    async with app.run_test() as pilot:
        await settle(pilot)
        app.post_message(Paste("a\x1b[31mb\x9bc"))
        await settle(pilot)
        screen = screen_text(app)
        assert "a [31mb c" in screen and "\x1b" not in screen and "\x9b" not in screen
