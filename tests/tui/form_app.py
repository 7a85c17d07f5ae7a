"""A form on a terminal, for the test in tmux: writes down as JSON what was saved."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import conservedb
from conservedb.tui.app import ConservedbApp
from conservedb.tui.drafts import Drafts
from conservedb.tui.recording import Outcome
from conservedb.tui.screens.form import FormScreen
from tests.tui.canned import Canned
from tests.tui.form_recorder import STEP, Fake


class FormApp(ConservedbApp):
    """Opens a form at once and ends when it is saved."""

    CSS_PATH = str(Path(conservedb.__file__).parent / "tui" / "screens" / "start.tcss")

    def __init__(self, folder: Path) -> None:
        super().__init__(Canned())
        self.folder, self.recorder = folder, Fake(slow=0.05)

    def on_mount(self) -> None:
        self.push_screen(FormScreen(STEP, self.recorder, Drafts(self.folder)), self._done)

    def _done(self, outcome: Outcome | None) -> None:
        if outcome is not None:
            (self.folder / "saved").write_text(json.dumps(self.recorder.values))
        self.exit()


if __name__ == "__main__":
    FormApp(Path(sys.argv[1])).run()
