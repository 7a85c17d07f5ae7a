"""Asks once who is recording."""

from __future__ import annotations

from conservedb.tui.recording import Field, Recorder
from conservedb.tui.screens.entry_sheet import EntrySheet
from conservedb.tui.text import plain


class WhoSheet(EntrySheet):
    """The full name, as it will stand beside everything this person records."""

    NEEDED = "type your full name, as Ada Brown; initials can be told apart by nobody later"

    def __init__(self, recorder: Recorder) -> None:
        words = [plain("Your full name will stand beside everything you record from here.")]
        field = Field("who", "full name", value=recorder.who, required=True)
        super().__init__("Who is recording?", [(words, (field,))], "Enter goes on, Esc goes back")
        self._recorder = recorder

    async def action_accept(self) -> None:
        """Tell the recorder; only then go on."""
        if self.lacking(self.NEEDED):
            return
        answers = self.answers()
        name = answers["who"].strip()
        self.hold("who")

        def refused(sentence: str) -> None:
            self.refuse(sentence)
            self.release("who")

        def taken(_: None) -> None:
            self.answer(answers)
            self.release("who")

        self.ask("who", lambda: self._recorder.set_who(name), taken, refused)
