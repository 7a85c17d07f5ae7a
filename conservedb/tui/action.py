"""What an action of the interface is."""

from __future__ import annotations

from dataclasses import dataclass

FORM = "form"


@dataclass(frozen=True, slots=True)
class Action:
    """Something a person can do.

    Attributes:
        name: the method is `action_<name>`.
        keys: names of keys as Textual calls them; the first is the one shown.
        shown: the key as it is written on the screen.
        label: one or two words for the key line.
        title: a short title for the palette.
        help: one sentence.
        where: the screens that have it; none where it is the app's and works on every screen.
        rank: place in the key line, lowest first, and of equal ones as written; 0 keeps it out.
    """

    name: str
    keys: tuple[str, ...]
    shown: str
    label: str
    title: str
    help: str
    where: tuple[str, ...] = ()
    rank: int = 0

    @property
    def others(self) -> tuple[str, ...]:
        """Further keys, as they are written on the screen."""
        written = {"question_mark": "?"}
        return tuple(written.get(key, key) for key in self.keys[1:])

    @property
    def target(self) -> str:
        """The action as Textual runs it from a screen."""
        return self.name if self.where else f"app.{self.name}"


@dataclass(frozen=True, slots=True)
class Motion:
    """Keys that move within a list or a line, listed in the help."""

    shown: str
    help: str
