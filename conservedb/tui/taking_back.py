"""Withdrawing a record, and undoing and redoing one's own last change, from the screens."""

from __future__ import annotations

from conservedb.exchange.reading_cells import find_record
from conservedb.exchange.undoing import take_back
from conservedb.recording.undoing import CannotUndo
from conservedb.recording.withdrawing import CannotWithdraw, withdraw
from conservedb.store.connect import raw_of, writing
from conservedb.store.log import Author, open_number
from conservedb.tui.about import About
from conservedb.tui.forms_of_records import subject_of
from conservedb.tui.reading import Engine, Unanswered


def withdraw_record(
    engine: Engine,
    about: About,
    who: str,
    reason: str,
    version: int,
    *,
    together: bool = False,
) -> str:
    """Withdraw a record as it stood at a version; a sentence what went.

    Raises:
        Unanswered: it cannot go; the sentence says why.
    """
    subject = subject_of(about.kind)
    try:
        with writing(engine, Author(who, "withdrawn", reason)) as connection:
            record = find_record(connection, subject, about.number, about.record)
            gone = withdraw(
                connection, subject.table.name, record, together=together, version=version
            )
            made = open_number(raw_of(connection))
    except CannotWithdraw as problem:
        raise Unanswered(str(problem).replace(" (--together)", "")) from problem
    more = f" and {len(gone.labels) - 1} more with it" if len(gone.labels) > 1 else ""
    return f"withdrawn: {gone.labels[0]}{more}; change set {made}; Ctrl+Z brings it back"


def take_mine_back(engine: Engine, who: str, *, undone: bool) -> str:
    """Undo one's own last change, or redo what was undone; a sentence what was done.

    Raises:
        Unanswered: it cannot be; the sentence says why.
    """
    if not who:
        raise Unanswered("nobody is named yet, so that no change is yours; nothing was done")
    try:
        taken = take_back(engine, who, undone=undone)
    except CannotUndo as problem:
        raise Unanswered(str(problem)) from problem
    done = "done again" if undone else "undone"
    return f"{done}: {taken.what}"
