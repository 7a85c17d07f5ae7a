"""One field of a form: mark, label, what is typed, a word beside it, a sentence under it."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.events import Click
from textual.widgets import Static

from conservedb.tui.recording import Field
from conservedb.tui.text import ACCENT, QUIET, WARNING, joined, plain, prose
from conservedb.tui.widgets.form_choice import ChoiceEntry
from conservedb.tui.widgets.form_found import Found
from conservedb.tui.widgets.form_text import TextEntry
from conservedb.tui.widgets.lines import MARKER

Entry = TextEntry | ChoiceEntry
WIDEST_LABEL = 26


def label_width(fields: tuple[Field, ...]) -> int:
    """Cells for the labels of these fields."""
    return min(
        max((plain(label_of(field)).cell_length for field in fields), default=0) + 1, WIDEST_LABEL
    )


def label_of(field: Field) -> str:
    """What stands before a field, with its unit."""
    return f"{field.label}, {field.unit}" if field.unit else field.label


class FieldRow(Vertical):
    """A field. What is wrong with it stands under it and never stops anybody."""

    DEFAULT_CSS = """
    FieldRow { height: auto; }
    FieldRow Horizontal { height: auto; }
    FieldRow .mark { width: 2; height: 1; }
    FieldRow .label { height: auto; }
    FieldRow .beside { width: auto; max-width: 45%; height: auto; margin-left: 1; color: $quiet; }
    FieldRow .under { height: auto; display: none; }
    """

    def __init__(self, field: Field, width: int) -> None:
        super().__init__()
        self.field = field
        self.entry = _entry(field)
        self.found = Found()
        self.settled = field.value  # what was looked up and found, or never touched
        self._width = width
        self._mark = Static(classes="mark")
        self._label = Static(plain(label_of(field), QUIET), classes="label")
        self._beside = Static(classes="beside")
        self._under = Static(classes="under")
        self._in_use, self._problem, self._remark = False, "", ""

    def compose(self) -> ComposeResult:
        """The line, and what may come under it."""
        self._label.styles.width = self._width
        for below in (self._under, self.found):
            below.styles.margin = (0, 0, 0, self._width + 3)
        with Horizontal():
            yield self._mark
            yield self._label
            yield self.entry
            yield self._beside
        yield self._under
        yield self.found

    @property
    def value(self) -> str:
        """What is typed or chosen."""
        return self.entry.value

    @value.setter
    def value(self, text: str) -> None:
        if text != self.entry.value:
            self.entry.value = text

    @property
    def problem(self) -> str:
        """What is wrong with it, as far as is known."""
        return self._problem

    def use(self, *, in_use: bool) -> None:
        """Mark the row as the one that takes the keys, or no longer."""
        self._in_use = in_use
        self._mark.update(plain(MARKER if in_use else "", ACCENT))
        self._label.update(plain(label_of(self.field), "bold" if in_use else QUIET))
        if not in_use:
            self.found.hide()
        self._draw()

    def show_problem(self, sentence: str) -> None:
        """Say what is wrong; "" takes it back."""
        self._problem = sentence
        self._draw()

    def show_remark(self, sentence: str) -> None:
        """Say something that is not wrong."""
        self._remark = sentence
        self._draw()

    def show_beside(self, words: str) -> None:
        """A few words beside what is typed."""
        self._beside.update(prose(words, QUIET))

    def on_click(self, event: Click) -> None:
        """A click anywhere in the row goes to its field."""
        self.screen.set_focus(self.entry)

    def _draw(self) -> None:
        hint = self.field.hint if self._in_use else ""
        if self._in_use and self.field.required and not (self.value.strip() or self._problem):
            hint = joined_words("needed", hint)
        lines = []
        if self._problem:
            lines.append(prose(f"! {self._problem}", WARNING))
        if self._remark or hint:
            lines.append(prose(self._remark or hint, QUIET))
        self._under.display = bool(lines)
        self._under.update(joined(lines, "\n"))


def joined_words(*words: str) -> str:
    """Remarks one after the other."""
    return "; ".join(word for word in words if word)


def _entry(field: Field) -> Entry:
    if field.kind == "choice":
        more = (field.unknown,) if field.unknown and field.unknown not in field.choices else ()
        return ChoiceEntry(field.value, (*field.choices, *more))
    return TextEntry(field.value, long=field.kind == "long")
