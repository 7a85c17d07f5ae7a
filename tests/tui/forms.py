"""Sitting at a form: keys at the speed of a person, or of a machine."""

from __future__ import annotations

import asyncio
import time
import unicodedata
from collections.abc import AsyncIterator, Callable, Iterable
from contextlib import asynccontextmanager
from pathlib import Path

from textual.events import Key, Paste
from textual.pilot import Pilot

from conservedb.tui.app import ConservedbApp
from conservedb.tui.drafts import Drafts
from conservedb.tui.recording import Field, Form, Outcome
from conservedb.tui.screens.form import FormScreen
from conservedb.tui.widgets.form_row import FieldRow
from tests.tui.canned import Canned
from tests.tui.conftest import NARROW, screen_text, settle
from tests.tui.form_recorder import STEP, Fake

ANSWERS: list[Outcome | None] = []


def one_field(field: Field, **more: object) -> Form:
    """A form of one field and a plain one after it."""
    return Form("test", "Test", "", (field, Field("last", "last")), "test", **more)  # type: ignore[arg-type]


def keys(*words: str) -> list[str]:
    """Names of keys: a word in angle brackets is one key, anything else is typed."""
    found: list[str] = []
    for word in words:
        if word.startswith("<"):
            found.append(word[1:-1])
        else:
            found += ["space" if sign == " " else sign for sign in word]
    return found


def events(*words: str) -> Iterable[Key]:
    """The same as events."""
    for name in keys(*words):
        sign = " " if name == "space" else name if len(name) == 1 else None
        if sign is not None and not sign.isalnum() and sign != " ":
            name = unicodedata.name(sign).lower().replace(" ", "_").replace("-", "_")
        yield Key(name, sign)


async def typed(pilot: Pilot[None], *words: str) -> None:
    """All keys at once, none waited for, as a machine types; then all that comes of them."""
    for event in events(*words):
        pilot.app.post_message(event)
    await calm(pilot)


async def paste(pilot: Pilot[None], text: str) -> None:
    """Paste into the field that has the focus."""
    pilot.app.post_message(Paste(text))
    await calm(pilot)


async def calm(pilot: Pilot[None]) -> None:
    """Until nothing is asked, held or typed ahead."""
    app = pilot.app
    assert isinstance(app, ConservedbApp)
    end = time.monotonic() + 5
    while True:
        await settle(pilot)
        if not (app._holds or app._typed_ahead):
            return
        assert time.monotonic() < end, f"still held: {app._holds}"
        await asyncio.sleep(0.005)


async def until(pilot: Pilot[None], holds: Callable[[], bool]) -> None:
    """Wait until something is so."""
    end = time.monotonic() + 5
    while not holds():
        assert time.monotonic() < end, screen_text(pilot.app)
        await pilot.pause(0.01)


def form_of(pilot: Pilot[None]) -> FormScreen:
    """The form in front."""
    screen = pilot.app.screen
    assert isinstance(screen, FormScreen), screen
    return screen


def row_of(pilot: Pilot[None], name: str) -> FieldRow:
    """A row of the form in front."""
    row = form_of(pilot).row(name)
    assert row is not None
    return row


def here(pilot: Pilot[None]) -> str:
    """The name of the field that takes the keys."""
    row = form_of(pilot).current
    return row.field.name if row is not None else ""


@asynccontextmanager
async def at_form(
    recorder: Fake,
    folder: Path,
    form: Form = STEP,
    size: tuple[int, int] = NARROW,
) -> AsyncIterator[Pilot[None]]:
    """A form over the start screen."""
    ANSWERS.clear()
    app = ConservedbApp(Canned())
    async with app.run_test(size=size) as pilot:
        app.push_screen(FormScreen(form, recorder, Drafts(folder)), ANSWERS.append)
        await calm(pilot)
        yield pilot
