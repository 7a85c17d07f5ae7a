"""A line to type in."""

from __future__ import annotations

import re

from textual.binding import Binding
from textual.events import Key
from textual.widgets import Input

_CONTROLS = re.compile("[\x00-\x1f\x7f-\x9f]")  # what a terminal would obey


class Line(Input):
    """Obeys all keys in the order in which they were pressed, however fast they come.

    By itself a key bound to an action (backspace, enter) takes a longer way than a letter and
    may be overtaken by letters typed after it.
    """

    ACTIONS_OF_KEYS = {  # noqa: RUF012
        key: binding.action
        for binding in Input.BINDINGS
        if isinstance(binding, Binding)
        for key in binding.key.split(",")
    }

    def validate_value(self, value: str) -> str:
        """A control character, pasted, is a space: nothing on record is looked for by one."""
        return _CONTROLS.sub(" ", value)

    async def _on_key(self, event: Key) -> None:
        action = self.ACTIONS_OF_KEYS.get(event.key)
        if action is None:
            await super()._on_key(event)
            return
        event.stop()
        event.prevent_default()
        await self.run_action(action)
