"""conservedb undo [SET]: take a change set back; conservedb redo [SET]: put it in force again.

JSON: {"change_set": number of the new one, "undoes": the one taken back, "what": its line}.
"""

from __future__ import annotations

import click

from conservedb.cli.ending import DONE, NO, Failed
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened


@click.command("undo")
@click.argument("number", metavar="[SET]", required=False, type=int)
@click.option("--reason", default="", help="Why; it stays on record.")
@who_option
@shared_options
@click.pass_obj
def command(settings: Settings, number: int | None, reason: str) -> int:
    """Take back the last thing that you wrote, or the change set of that number.

    What somebody else has changed since is not overwritten: it is named, and nothing is done.
    `conservedb log` lists the change sets.
    """
    return _take_back(settings, number, reason, undone=False)


@click.command("redo")
@click.argument("number", metavar="[SET]", required=False, type=int)
@click.option("--reason", default="", help="Why; it stays on record.")
@who_option
@shared_options
@click.pass_obj
def redo(settings: Settings, number: int | None, reason: str) -> int:
    """Put in force again what you took back last, or what that change set took back."""
    return _take_back(settings, number, reason, undone=True)


def _take_back(settings: Settings, number: int | None, reason: str, *, undone: bool) -> int:
    from conservedb.exchange.undoing import take_back
    from conservedb.recording.undoing import CannotUndo

    with opened(settings) as (engine, _):
        try:
            done = take_back(engine, settings.who(), number, reason, undone=undone)
        except CannotUndo as problem:
            raise Failed(str(problem), NO) from problem
    if settings.json:
        print_json({"change_set": done.number, "undoes": done.undoes, "what": done.what})
        return DONE
    lines = Lines()
    lines.add("put in force again" if undone else "taken back", done.what)
    lines.add("change set", str(done.number))
    print_lines(lines)
    return DONE
