"""A paste that holds escape characters comes as one paste, with all that is in it.

By itself the toolkit takes an escape character inside a paste for the beginning of a key: the
letters behind it come as keys, before the paste and not as part of it, and might even save a form.
"""

from __future__ import annotations

import sys
from collections.abc import Iterable

from textual._xterm_parser import XTermParser
from textual.driver import Driver
from textual.events import Paste
from textual.message import Message

ESCAPE = "\x1b"
BEGIN, END = "\x1b[200~", "\x1b[201~"  # bracketed paste, as xterm's control sequences have it
STAND_IN = "\U000f001b"


class WholePastes(XTermParser):
    """Reads what a terminal sends; an escape character in a paste has a stand-in on the way."""

    def __init__(self, debug: bool = False) -> None:
        super().__init__(debug)
        self._pasting = False
        self._mark = ""  # as much of BEGIN or END as has come

    def feed(self, data: str) -> Iterable[Message]:
        """The events that the data make; none is made of an escape character in a paste."""
        # "" says that the terminal is gone, so it is passed on; but not where all of it waits.
        ready = "".join(map(self._passed, data))
        for message in super().feed(ready) if ready or not data else ():
            if isinstance(message, Paste):
                yield Paste(message.text.replace(STAND_IN, ESCAPE))
            else:
                yield message

    def _passed(self, sign: str) -> str:
        """What the toolkit may have of a character and those that waited for it."""
        sought = END if self._pasting else BEGIN
        before, self._mark = self._mark, self._mark + sign
        if not sought.startswith(self._mark):
            self._mark = sign if sign == ESCAPE else ""
            return _shielded(before) + ("" if self._mark else sign) if self._pasting else sign
        if self._mark == sought:
            self._pasting, self._mark = not self._pasting, ""
            return END if sought == END else sign
        return "" if self._pasting else sign


def _shielded(text: str) -> str:
    return text.replace(ESCAPE, STAND_IN)


def with_whole_pastes(driver: type[Driver]) -> type[Driver]:
    """Have the driver of a terminal read with `WholePastes`; it offers no other way."""
    module = sys.modules[driver.__module__]
    if hasattr(module, XTermParser.__name__):
        setattr(module, XTermParser.__name__, WholePastes)
    return driver
