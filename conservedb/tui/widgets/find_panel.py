"""A line to find anything, and below it what was found; one focus, two ways to move."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.containers import Vertical
from textual.events import Key
from textual.message import Message
from textual.timer import Timer
from textual.widgets import Input, Static

from conservedb.questions.display import shortened
from conservedb.tui.asking import Asking
from conservedb.tui.hits import NEAR, Group, found_groups, items_of
from conservedb.tui.text import QUIET, plain, styled
from conservedb.tui.widgets.line import Line
from conservedb.tui.widgets.lines import Lines

if TYPE_CHECKING:
    from conservedb.questions.answers import Hit
    from conservedb.questions.find_answers import FoundAnswer
    from conservedb.tui.reading import Reading

SHORTEST = 2
PAUSE = 0.15
HINT = "number, mark, name, material, person, paper or any word"


class FindPanel(Vertical):
    """Searches as you type, from the second letter. Before that it shows what it was given."""

    DEFAULT_CSS = """
    FindPanel { height: 1fr; }
    FindPanel #find-line { height: 1; border: none; padding: 0; background: $surface; }
    FindPanel #found-count { height: 1; color: $quiet; }
    FindPanel #found { height: 1fr; }
    """

    class Opened(Message):
        """This was chosen."""

        def __init__(self, hit: Hit) -> None:
            super().__init__()
            self.hit = hit

    def __init__(self, reading: Reading, nearest: str = "") -> None:
        super().__init__(id="find")
        self.reading = reading
        self.nearest = nearest
        self._hits: dict[str, Hit] = {}
        self._before: Sequence[Group] = ()
        self._pause: Timer | None = None
        self._found_for = ""
        self._eager = ""

    def compose(self) -> ComposeResult:
        """The line, the count, the list."""
        yield Line(placeholder=f"Find: {HINT}", id="find-line", select_on_focus=False)
        hint = "two letters or more; Esc leaves" if self.nearest else ""
        yield Static(plain(hint, QUIET), id="found-count")
        yield Lines("found")

    @property
    def line(self) -> Input:
        """The line that is typed in."""
        return self.query_one("#find-line", Input)

    @property
    def words(self) -> str:
        """What is typed, without spaces around it."""
        return self.line.value.strip()

    def show_before(self, groups: Sequence[Group]) -> None:
        """What to show while nothing is typed."""
        self._before = groups
        if len(self.words) < SHORTEST:
            self._list(groups)

    def show_found(self, words: str, answer: FoundAnswer) -> None:
        """What was found for words that are still those typed."""
        if words != self.words:
            return
        self._list(found_groups(answer, self.nearest))
        self._found_for = words
        self.query_one("#found-count", Static).update(plain(_told(words, answer), QUIET))
        if self._eager == words:
            self._eager = ""
            self.query_one("#found", Lines).action_choose()

    def show_problem(self, sentence: str) -> None:
        """Why nothing can be found."""
        self.query_one("#found-count", Static).update(plain(sentence, "$hazard"))

    def clear(self) -> None:
        """Forget what was typed."""
        self.line.value = ""
        self.screen.set_focus(self.line)

    @on(Input.Changed, "#find-line")
    def _typed(self, event: Input.Changed) -> None:
        event.stop()
        if event.value.startswith("/"):  # the key that leads here never begins a search
            self.line.value = event.value.lstrip("/")
            return
        if self._pause is not None:
            self._pause.stop()
        if len(self.words) < SHORTEST:
            self.query_one("#found-count", Static).update(styled("", QUIET))
            self._found_for = self._eager = ""
            self._list(self._before)
        else:
            self._pause = self.set_timer(PAUSE, self._want)

    def _want(self) -> None:
        words, screen = self.words, self.screen
        assert isinstance(screen, Asking)
        screen.ask(
            "find",
            lambda: self.reading.find(words),
            lambda answer: self.show_found(words, answer),
            self.show_problem,
        )

    @on(Input.Submitted, "#find-line")
    def _submitted(self, event: Input.Submitted) -> None:
        event.stop()
        if len(self.words) >= SHORTEST and self._found_for != self.words:
            self._eager = self.words  # typed faster than found: open it when it comes
        else:
            self.query_one("#found", Lines).action_choose()

    @on(Lines.Chosen, "#found")
    def _chosen(self, event: Lines.Chosen) -> None:
        event.stop()
        hit = self._hits.get(event.key)
        if hit is None:
            return
        if hit.kind == NEAR:
            self.line.value = hit.label
            self.line.cursor_position = len(hit.label)
            self.screen.set_focus(self.line)
        else:
            self.post_message(self.Opened(hit))

    def on_key(self, event: Key) -> None:
        """Down leads from the line into the list, up from its top back to the line."""
        found = self.query_one("#found", Lines)
        if self.line.has_focus and event.key in ("down", "pagedown"):
            self.screen.set_focus(found)
        elif self.line.has_focus and event.key == "escape" and self.line.value:
            self.line.value = ""
        elif found.has_focus and event.key == "up" and found.at_first:
            self.screen.set_focus(self.line)
        else:
            return
        event.stop()
        event.prevent_default()

    def _list(self, groups: Sequence[Group]) -> None:
        items, self._hits = items_of(groups)
        self.query_one("#found", Lines).show_items(items)


def _told(words: str, answer: FoundAnswer) -> str:
    """How many were found, or why none was."""
    if answer.groups:
        more = " or more" if any(group.more for group in answer.groups) else ""
        return "; ".join(filter(None, (f"{answer.total}{more} found", answer.remark)))
    why = answer.remark or ("" if answer.near else "try fewer letters")
    return "; ".join(filter(None, (f"nothing has all of “{shortened(words)}”", why)))
