"""Keys for forms, obeyed one after the other, however fast they come.

By itself the toolkit hands each key at once to the widget that has the focus then. Where one key
moves the focus or opens a sheet, those typed right behind it have already gone to the old place.
Here a key waits until the one before it has had its full effect.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Awaitable, Callable
from typing import TypeVar

from textual.app import App
from textual.events import Event, Key, Paste
from textual.screen import Screen, ScreenResultType

from conservedb.tui.asking import Asking

Answer = TypeVar("Answer")
ANSWERED = "answered"


class Holding(Asking[ScreenResultType]):
    """A screen that can make keys wait until something has come or is closed."""

    def hold(self, why: str) -> None:
        """What is typed from now on waits until `release` with the same word."""
        keep_order(self).hold(f"{id(self)} {why}")

    def release(self, why: str) -> None:
        """What was typed meanwhile goes on to whichever screen is in front."""
        keep_order(self).release(f"{id(self)} {why}")

    def on_unmount(self) -> None:
        """Nothing waits for a screen that is gone."""
        keep_order(self).release_all(f"{id(self)} ")

    def open_over(
        self, screen: Typed[Answer], then: Callable[[Answer | None], Awaitable[None] | None]
    ) -> None:
        """Open a screen on top; what is typed after its answer waits until `then` has used it."""

        async def use(answer: Answer | None) -> None:
            result = then(answer)
            if result is not None:
                await result
            keep_order(self).release(ANSWERED)

        screen.awaited = True
        self.app.push_screen(screen, use)


class Typed(Holding[ScreenResultType]):
    """A screen that is given its keys and pastes in order, once it is `ready`."""

    ready = False
    awaited = False

    async def take(self, event: Key | Paste) -> None:
        """Obey one key or paste."""
        raise NotImplementedError

    def begin(self) -> None:
        """The screen is complete: what was typed ahead may come."""
        self.ready = True
        keep_order(self).release("")

    def answer(self, result: ScreenResultType) -> None:
        """Close this screen with an answer, and whatever was opened over it."""
        while self.app.screen is not self:
            self.app.pop_screen()
        if self.awaited:
            keep_order(self).hold(ANSWERED)
        self.dismiss(result)


class InOrder(App[None]):
    """An app that keeps the order of keys for screens of the kind `Typed`."""

    def __init__(self) -> None:
        super().__init__()
        self._typed_ahead: deque[Key | Paste] = deque()
        self._holds: set[str] = set()

    def hold(self, why: str) -> None:
        """Keys wait."""
        self._holds.add(why)

    def release(self, why: str) -> None:
        """Keys go on, unless there is another cause to wait."""
        self._holds.discard(why)
        self.call_later(self._give_out)

    def release_all(self, begin: str) -> None:
        """Forget every cause to wait that begins so."""
        self._holds = {why for why in self._holds if not why.startswith(begin)}
        self.call_later(self._give_out)

    async def on_event(self, event: Event) -> None:
        """Keys and pastes wait their turn; anything else goes its usual way."""
        if isinstance(event, Key | Paste) and not event.is_forwarded and self._keeps_order():
            self.app_focus = True
            self._typed_ahead.append(event)
            await self._give_out()
        else:
            if isinstance(event, Key | Paste) and not event.is_forwarded:
                self.before_key()
            await super().on_event(event)

    def before_key(self) -> None:
        """A key or paste is about to have its effect."""

    def _keeps_order(self) -> bool:
        return bool(self._typed_ahead or self._holds) or isinstance(self._front(), Typed)

    def _front(self) -> Screen[object] | None:
        return self.screen_stack[-1] if self.screen_stack else None

    async def _give_out(self) -> None:
        while self._typed_ahead and not self._holds:
            front = self._front()
            if isinstance(front, Typed) and not front.ready:
                return
            self.before_key()
            if isinstance(front, Typed):
                await front.take(self._typed_ahead.popleft())
            else:
                await super().on_event(self._typed_ahead.popleft())


def keep_order(screen: Screen[ScreenResultType]) -> InOrder:
    """The app of a screen that is given its keys in order."""
    app = screen.app
    assert isinstance(app, InOrder)
    return app
