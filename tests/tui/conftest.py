"""What tests of the screens share: an app on a canned reading, and a screen as plain text."""

from __future__ import annotations

import asyncio
import contextlib
import shutil
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from textual.app import App
from textual.pilot import Pilot
from textual.worker import WorkerCancelled

from conservedb.tui.app import ConservedbApp
from conservedb.tui.reading import Reading
from conservedb.tui.screens.object import ObjectScreen
from tests.tui.canned import NUMBER, Canned

SCREENS = Path(__file__).parent / "screens"
NARROW, WIDE = (80, 24), (140, 40)

Sitting = Callable[..., contextlib.AbstractAsyncContextManager[Pilot[None]]]


@pytest.fixture(autouse=True)
def _calm(monkeypatch: pytest.MonkeyPatch) -> None:
    """No animation, no blinking, no settings of whoever runs the tests."""
    monkeypatch.setattr("textual.constants.TEXTUAL_ANIMATIONS", "none")
    for name in ("NO_COLOR", "TEXTUAL_THEME"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr("conservedb.tui.screens.object.SETTLE", 0.001)
    monkeypatch.setattr("conservedb.tui.widgets.find_panel.PAUSE", 0.001)


def screen_text(app: App[None]) -> str:
    """The screen as lines of plain text, without the blanks at their ends."""
    strips = app.screen._compositor.render_strips()
    return "\n".join(strip.text.rstrip() for strip in strips) + "\n"


async def settle(pilot: Pilot[None]) -> None:
    """Until every question is answered and shown; an answer may lead to another question."""
    for _ in range(3):
        await asyncio.sleep(0.004)
        with contextlib.suppress(WorkerCancelled):  # another question took its place
            await pilot.app.workers.wait_for_complete()
    await pilot.pause(0.01)
    await pilot.pause()


async def press(pilot: Pilot[None], *keys: str) -> None:
    """Press keys, and let their answers come."""
    await pilot.press(*keys)
    await settle(pilot)


async def type_in(pilot: Pilot[None], words: str) -> None:
    """Type words into the line that has the focus."""
    await press(pilot, *("space" if sign == " " else sign for sign in words))


@asynccontextmanager
async def sitting(
    reading: Reading | None = None,
    size: tuple[int, int] = NARROW,
    mark: str | None = None,
    number: str = NUMBER,
) -> AsyncIterator[Pilot[None]]:
    """The app on a reading; at an object, if a mark of it ("" for the whole) is given."""
    chosen = reading or Canned()
    app = ConservedbApp(chosen)
    async with app.run_test(size=size) as pilot:
        await settle(pilot)
        if mark is not None:
            await app.push_screen(ObjectScreen(chosen, number, mark))
            await settle(pilot)
        yield pilot


@pytest.fixture
def same_screen(request: pytest.FixtureRequest) -> Callable[[Pilot[None], str], None]:
    """Compares the screen with the text kept under that name; --update-screens keeps it anew."""

    def check(pilot: Pilot[None], name: str) -> None:
        size = pilot.app.size
        path = SCREENS / f"{name}_{size.width}x{size.height}.txt"
        text = screen_text(pilot.app)
        if request.config.getoption("--update-screens", default=False):
            path.write_text(text, encoding="utf-8")
        assert path.is_file(), f"no {path.name} yet: run pytest --update-screens"
        assert text == path.read_text(encoding="utf-8"), f"{path.name} differs"

    return check


@pytest.fixture(scope="session")
def _demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The demonstration, opened once so that everything derived is there."""
    from conservedb.demo.build import load
    from conservedb.store.opening import open_database

    path = tmp_path_factory.mktemp("demonstration") / "demo.db"
    load(path)
    engine, _ = open_database(path)
    engine.dispose()
    return path


@pytest.fixture
def demo(_demo: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A copy of the demonstration, with drafts of its own."""
    monkeypatch.setenv("CONSERVEDB_STATE", str(tmp_path / "state"))
    path = tmp_path / "demo.db"
    shutil.copy(_demo, path)
    return path
