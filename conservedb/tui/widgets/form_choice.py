"""A field for one of a few words."""

from __future__ import annotations

from time import monotonic

from textual.app import RenderResult
from textual.content import Content
from textual.events import Click, Key
from textual.widget import Widget

from conservedb.tui.text import ACCENT, QUIET, joined, plain, styled

TOGETHER = 1.0  # seconds within which letters belong to one word
BLANK = "not chosen"


class ChoiceEntry(Widget, can_focus=True):
    """Left, Right or Space go through the words; letters go to the first that begins so."""

    DEFAULT_CSS = """
    ChoiceEntry { width: 1fr; height: 1; padding: 0 1; }
    ChoiceEntry:focus { background: $cursor; }
    """

    def __init__(self, value: str, words: tuple[str, ...]) -> None:
        super().__init__()
        self.words = words
        self._value = value
        self._typed, self._typed_at = "", 0.0

    @property
    def value(self) -> str:
        """The word chosen, or ""."""
        return self._value

    @value.setter
    def value(self, text: str) -> None:
        self._value = text
        self.refresh()

    async def press(self, event: Key) -> bool:
        """Obey a key if it chooses; whether it did. Letters are never meant for others."""
        if event.key in ("left", "right", "space"):
            self._step(-1 if event.key == "left" else 1)
        elif event.key in ("backspace", "delete"):
            self.value = ""
        elif event.is_printable and event.character:
            self._letter(event.character)
        else:
            return False
        return True

    def paste(self, text: str) -> str:
        """Choose the word that was pasted, or say why not."""
        wanted = text.strip().casefold()
        found = next((word for word in self.words if word.casefold() == wanted), None)
        if found is None:
            return f"what was pasted is none of the words to choose from: {', '.join(self.words)}"
        self.value = found
        return ""

    def render(self) -> RenderResult:
        """The word; while in use, the others beside it if there is room."""
        if not self.has_focus:
            return plain(self.value) if self.value else plain(BLANK, QUIET)
        chosen = joined((styled("‹ ", ACCENT), self._shown(), styled(" ›", ACCENT)))
        row = joined(
            [
                chosen if word == self.value else plain(word, QUIET)
                for word in (*(() if self.value in self.words else (self.value,)), *self.words)
            ],
            "  ",
        )
        if row.cell_length <= self.content_size.width:
            return row
        others = plain(f"  one of {len(self.words)}", QUIET)
        return joined((chosen, others)).truncate(self.content_size.width, ellipsis=True)

    def on_click(self, event: Click) -> None:
        """A click on the field in use goes on by one word."""
        if self.has_focus and event.chain > 1:
            self._step(1)

    def _shown(self) -> Content:
        return plain(self.value, "bold") if self.value else plain(BLANK, QUIET)

    def _step(self, by: int) -> None:
        self._typed = ""
        if not self.words:
            return
        if self.value in self.words:
            self.value = self.words[(self.words.index(self.value) + by) % len(self.words)]
        else:
            self.value = self.words[0 if by > 0 else -1]

    def _letter(self, letter: str) -> None:
        now = monotonic()
        begun = self._typed if now - self._typed_at < TOGETHER else ""
        self._typed_at = now
        for typed in (begun + letter.casefold(), letter.casefold()):
            for word in self.words:
                if word.casefold().startswith(typed):
                    self._typed, self.value = typed, word
                    return
