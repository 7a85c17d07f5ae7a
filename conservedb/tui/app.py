"""The program on the screen: theme, actions that work anywhere, and what happens in a crash."""

from __future__ import annotations

import os
import traceback
from pathlib import Path
from typing import TYPE_CHECKING

from rich.text import Text
from textual.screen import Screen

from conservedb.tui.action import FORM
from conservedb.tui.actions import SCREENS, bindings
from conservedb.tui.in_order import InOrder
from conservedb.tui.researching import LastQuestion
from conservedb.tui.screens.start import StartScreen
from conservedb.tui.theme import IN_ANSI, NAME, OWN, THEME
from conservedb.tui.widgets.key_line import KeyLine

if TYPE_CHECKING:
    from textual.command import Provider
    from textual.driver import Driver

    from conservedb.tui.desk import Desk
    from conservedb.tui.reading import Reading
    from conservedb.tui.researching import Researcher


def _palette() -> type[Provider]:
    from conservedb.tui.palette import ActionProvider

    return ActionProvider


class ConservedbApp(InOrder):
    """Reads one database; records into it and researches it where there is who does."""

    TITLE = "conservedb"
    CSS_PATH = "screens/start.tcss"
    BINDINGS = bindings()
    COMMANDS = {_palette}  # noqa: RUF012

    def __init__(
        self, reading: Reading, desk: Desk | None = None, researcher: Researcher | None = None
    ) -> None:
        self.reading, self.desk, self.researcher = reading, desk, researcher
        self.last_question = LastQuestion()
        super().__init__()
        self.register_theme(THEME)
        if "TEXTUAL_THEME" not in os.environ:
            self.theme = NAME

    def get_theme_variable_defaults(self) -> dict[str, str]:
        """Our names for colours, for themes that do not know them."""
        return {**OWN, **IN_ANSI} if self.current_theme.ansi else OWN

    def get_driver_class(self) -> type[Driver]:
        """The terminal, read so that a paste stays whole."""
        from conservedb.tui.whole_pastes import with_whole_pastes

        return with_whole_pastes(super().get_driver_class())

    def get_default_screen(self) -> Screen[None]:
        """The start lies below everything else."""
        return StartScreen(self.reading)

    def before_key(self) -> None:
        """What was told by a key before has been read."""
        for screen in self.screen_stack:
            for line in screen.children:
                if isinstance(line, KeyLine):
                    line.clear()

    def action_help(self) -> None:
        """Every key of this screen."""
        from conservedb.tui.screens.sheet import help_sheet

        self.push_screen(help_sheet(where(self.screen)))

    def _fatal_error(self) -> None:
        """A fault of the program: two lines, and the account of it in a file, without values."""
        account = _keep_account(traceback.format_exc())
        self.panic(
            Text(
                "conservedb stopped because of a fault in the program; nothing was changed.\n"
                f"An account of the fault is in {account}; please hand it to whoever looks"
                " after the program."
            )
        )


def where(screen: Screen[object]) -> str:
    """Which set of actions a screen has; a sheet laid over it changes nothing."""
    names = (getattr(one, "NAME", "") for one in reversed(screen.app.screen_stack))
    return next((name for name in names if name in (*SCREENS, FORM)), StartScreen.NAME)


def _keep_account(account: str) -> Path:
    """Write the account of a fault beside the other logs of this person."""
    from platformdirs import user_log_path

    folder = user_log_path("conservedb")
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / "fault.txt"
    path.write_text(account, encoding="utf-8")
    return path
