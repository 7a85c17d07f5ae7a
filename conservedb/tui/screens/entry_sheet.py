"""A sheet that asks for a few words before something goes on."""

from __future__ import annotations

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.containers import Vertical, VerticalScroll
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import Static

from conservedb.tui.recording import Field
from conservedb.tui.screens.rows import Rows
from conservedb.tui.text import WARNING, joined, plain, prose
from conservedb.tui.widgets.form_row import label_width
from conservedb.tui.widgets.key_line import KeyLine, Shown

Block = tuple[Sequence[Content], tuple[Field, ...]]
Answers = dict[str, str]


class EntrySheet(Rows[Answers | None], ModalScreen[Answers | None]):
    """Words to read, with fields between them; answers with what they hold, or None."""

    CSS_PATH = "entry_sheet.tcss"
    KEYS = {  # noqa: RUF012
        "escape": "leave",
        "ctrl+s": "accept",
        "pagedown": "page(1)",
        "pageup": "page(-1)",
        "ctrl+q": "app.quit",
        "f1": "app.help",
    }
    SHOWN: tuple[Shown, ...] = (
        Shown("F1", "help", "app.help"),
        Shown("Tab", "next field", "next_field"),
        Shown("Ctrl+S", "done", "accept"),
        Shown("Esc", "back", "leave"),
    )
    """Keys that are shown at the foot of the screen while the sheet is open."""
    NEEDED = "a few words are needed here; Esc goes back without saving"

    def __init__(self, title: str, blocks: Sequence[Block], foot: str) -> None:
        super().__init__()
        self._title, self._blocks, self._foot = title, blocks, foot

    def compose(self) -> ComposeResult:
        """Title, blocks, and at the foot what the keys do."""
        width = label_width(tuple(field for _, fields in self._blocks for field in fields))
        with Vertical(id="entry-sheet") as sheet:
            sheet.border_title = plain(self._title)
            sheet.border_subtitle = plain(self._foot)
            yield Static(id="entry-refusal")
            with VerticalScroll(id="entry-blocks", can_focus=False):
                for words, fields in self._blocks:
                    yield Static(joined(words, "\n"), classes="words")
                    yield from self.rows_of(fields, width)
        yield KeyLine(keys=self.SHOWN)

    async def action_next_field(self) -> None:
        """What Tab does, for a click on it."""
        row = self.current
        if row is not None:
            await self.move(row, "tab")

    def action_leave(self) -> None:
        """Back, with nothing done."""
        self.answer(None)

    async def action_accept(self) -> None:
        """Go on with what was typed."""
        if not self.lacking(self.NEEDED):
            self.answer(self.answers())

    def action_page(self, by: int) -> None:
        """Read on, or back; the cursor stays in its field."""
        blocks = self.query_one("#entry-blocks", VerticalScroll)
        blocks.scroll_relative(y=by * (blocks.size.height - 2), animate=False, immediate=True)

    def answers(self) -> Answers:
        """What goes back."""
        return self.values()

    async def at_end(self) -> None:
        """Enter in the last field."""
        await self.action_accept()

    def refuse(self, sentence: str) -> None:
        """Show why it cannot be."""
        refusal = self.query_one("#entry-refusal", Static)
        refusal.display = bool(sentence)
        refusal.update(plain(f"! {sentence}", WARNING))


def reason_sheet(title: str, because: str = "") -> EntrySheet:
    """Asks why a record is changed; `because` says why that is asked."""
    field = Field("reason", "why", required=True)
    words = [plain("The former wording stays on record; this word why is kept beside it.")]
    if because:
        words.insert(0, prose(f"{because}: a reason is needed"))
    return EntrySheet(f"Why is this changed?  {title}", [(words, (field,))], FOOT)


FOOT = "Enter saves, Esc goes back"
