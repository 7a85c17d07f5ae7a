"""The terminal interface: shows what lies where, on any day, and records what is done."""

from __future__ import annotations

import sys
from pathlib import Path


def run(path: Path) -> int:
    """Open the interface on a database file; returns the exit status (0 done, 3 cannot).

    What is wrong with the file, if anything, is said on the start screen.
    """
    trouble = _unfit_terminal()
    if trouble:
        print(trouble, file=sys.stderr)
        return 3
    from conservedb.tui.app import ConservedbApp
    from conservedb.tui.database_recorder import DatabaseRecorder
    from conservedb.tui.database_researcher import DatabaseResearcher
    from conservedb.tui.reading import Database

    database = Database(path)
    app = ConservedbApp(database, DatabaseRecorder(database), DatabaseResearcher(database))
    app.run()
    return app.return_code or 0


def _unfit_terminal() -> str:
    """Why the interface cannot be shown here, or ""."""
    if not (sys.stdin.isatty() and sys.stdout.isatty()):
        return (
            "conservedb: the interface needs a terminal, and this is none; the commands"
            " object, place, history and find print the same answers"
        )
    encoding = (sys.stdout.encoding or "").lower().replace("-", "").replace("_", "")
    if encoding != "utf8":
        return (
            f"conservedb: this terminal is set to {sys.stdout.encoding}, and the interface needs"
            " UTF-8; set LANG to a UTF-8 locale (for example C.UTF-8), or PYTHONUTF8=1"
        )
    return ""
