"""The list of all actions, to be chosen by name: made from the registry like everything else."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from textual.command import DiscoveryHit, Hit, Hits, Provider

from conservedb.tui.action import Action
from conservedb.tui.actions import actions_of
from conservedb.tui.app import where


class ActionProvider(Provider):
    """Actions of the screen from which the palette was called."""

    async def discover(self) -> Hits:
        """All of them."""
        for action in actions_of(where(self.screen)):
            yield DiscoveryHit(_title(action), self._runner(action), help=action.help)

    async def search(self, query: str) -> Hits:
        """Those whose title or help holds the letters typed."""
        matcher = self.matcher(query)
        for action in actions_of(where(self.screen)):
            title = _title(action)
            score = max(matcher.match(title), matcher.match(action.help) / 2)
            if score > 0:
                yield Hit(score, matcher.highlight(title), self._runner(action), title, action.help)

    def _runner(self, action: Action) -> Callable[[], object]:
        return partial(self.screen.call_later, self.screen.run_action, action.target)


def _title(action: Action) -> str:
    return f"{action.title}  ({action.shown})"
