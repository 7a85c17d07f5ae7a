"""A field for text: one line that wraps and grows, or several lines; any text is safe in it."""

from __future__ import annotations

import re

from rich.text import Text
from textual.binding import Binding
from textual.events import Key
from textual.widgets import TextArea

from conservedb.questions.display import UNSEEN, show

NUL = "\0"
NUL_REFUSED = (
    "what was pasted holds a NUL character, which no record can hold; nothing was taken, paste it"
    " without"
)
DOTTED = "┄" * 24  # the dotted line of a paper form

_PRIVATE, _TAGS = 0xF0000, 0xE000
_PERHAPS = re.compile("[\U000f0000-\U000fffff]")


def lines_joined(text: str) -> str:
    """The text with each end of line written as one line feed."""
    return text.replace("\r\n", "\n").replace("\r", "\n")


def held(text: str) -> str:
    """Text for the editor: what a terminal would obey has a private character as its stand-in.

    The stand-in is one cell wide, can be seen, passed and deleted, and ends no line.
    """
    return UNSEEN.sub(_stand_in, text)


def given(text: str) -> str:
    """The text that was meant, from that of the editor."""
    return _PERHAPS.sub(lambda match: _meant(match[0]), text)


def _stand_in(match: re.Match[str]) -> str:
    code = ord(match[0])
    return chr(_PRIVATE + (code if code < 0x10000 else _TAGS + (code & 0x7F)))


def _meant(character: str) -> str:
    """The character that another stands in for, or itself."""
    code = ord(character) - _PRIVATE
    meant = chr(0xE0000 + code - _TAGS if _TAGS <= code < _TAGS + 0x80 else code)
    return meant if UNSEEN.fullmatch(meant) else character


def _picture(match: re.Match[str]) -> str:
    """One cell for a character that is not to reach the terminal."""
    shown = show(_meant(match[0]))
    return shown if len(shown) == 1 else "\N{REPLACEMENT CHARACTER}"


class TextEntry(TextArea):
    """Text that wraps, so that nothing typed is out of sight; Enter makes a line where it may."""

    ACTIONS_OF_KEYS = {  # noqa: RUF012
        key: binding.action
        for binding in TextArea.BINDINGS
        if isinstance(binding, Binding)
        for key in binding.key.split(",")
    }
    DEFAULT_CSS = """
    TextEntry {
        height: auto; min-height: 1; max-height: 8; border: none; padding: 0 1;
        background: $background; scrollbar-size-vertical: 1;
        &:focus { border: none; background: $cursor; }
        & .text-area--cursor-line { background: transparent; }
        & .text-area--placeholder { color: $line; }
    }
    TextEntry.-long { min-height: 2; }
    """

    def __init__(self, text: str, *, long: bool = False) -> None:
        super().__init__(held(lines_joined(text)), highlight_cursor_line=False, placeholder=DOTTED)
        self.cursor_blink = False
        self.match_cursor_bracket = False
        self._long = long
        self.set_class(long, "-long")

    def on_mount(self) -> None:
        """Go on at the end of what is there."""
        self.move_cursor(self.document.end)

    @property
    def value(self) -> str:
        """What is typed."""
        return given(self.text)

    @value.setter
    def value(self, text: str) -> None:
        self.load_text(held(lines_joined(text)))
        self.move_cursor(self.document.end)

    @property
    def long(self) -> bool:
        """Whether Enter makes a line: by its kind, or because it holds several already."""
        return self._long or self.document.line_count > 1

    @property
    def at(self) -> int:
        """How many characters stand before the cursor."""
        row, column = self.cursor_location
        return sum(len(line) + 1 for line in self.document.lines[:row]) + column

    def put(self, start: int, end: int, text: str) -> None:
        """Put text in the place of some characters; the cursor comes after it. Can be undone."""
        new = held(lines_joined(text))
        self.replace(new, self._location(start), self._location(end))
        self.move_cursor(self._location(start + len(new)))

    async def press(self, event: Key) -> bool:
        """Obey a key if it is one of text; whether it was."""
        key = event.key
        if event.is_printable or (key == "enter" and self.long):
            await super()._on_key(event)
            return True
        if (key == "up" and self._on_first_line) or (key == "down" and self._on_last_line):
            return False
        action = self.ACTIONS_OF_KEYS.get(key)
        if action is None:
            return False
        await self.run_action(action)
        return True

    def paste(self, text: str) -> str:
        """Take a paste with all its lines, or say why not."""
        if NUL in text:
            return NUL_REFUSED
        result = self._replace_via_keyboard(held(lines_joined(text)), *self.selection)
        if result is not None:
            self.move_cursor(result.end_location)
        return ""

    def action_paste(self) -> None:
        """From the clipboard of the program."""
        self.paste(self.app.clipboard)

    @property
    def selected_text(self) -> str:
        """What is marked, for the clipboard."""
        return given(super().selected_text)

    def get_line(self, line_index: int) -> Text:
        """A line as it is drawn."""
        line = _PERHAPS.sub(_picture, self.document.get_line(line_index))
        return Text(line, end="", no_wrap=True)

    @property
    def _on_first_line(self) -> bool:
        return self.navigator.is_first_wrapped_line(self.cursor_location)

    @property
    def _on_last_line(self) -> bool:
        return self.navigator.is_last_wrapped_line(self.cursor_location)

    def _location(self, at: int) -> tuple[int, int]:
        for row, line in enumerate(self.document.lines):
            if at <= len(line):
                return row, at
            at -= len(line) + 1
        return self.document.end
