"""How a command ends: its status, and what it says where it could not do what was asked.

Status 0: done. 1: no such thing, or a check failed. 2: wrong use. 3: the database or a file
cannot be used. 130: stopped by the person at the keyboard.
"""

from __future__ import annotations

import json
import os
import sqlite3
import sys

import click

DONE, NO, MISUSED, UNUSABLE, STOPPED = 0, 1, 2, 3, 130


class Failed(Exception):
    """A command cannot do what was asked; one sentence, and the status to end with.

    `more` are further fields beside "error" in the JSON that `--json` prints.
    """

    def __init__(
        self, message: str, status: int = NO, more: dict[str, object] | None = None
    ) -> None:
        super().__init__(message)
        self.status, self.more = status, more or {}


def failure_of(problem: Exception) -> Failed | None:
    """What to tell the user about an exception; None where it is a fault of the program."""
    from conservedb.dates import DateError
    from conservedb.knowledge.research_words import AskError
    from conservedb.questions.basics import Ambiguous, NoSuch
    from conservedb.store.problems import DatabaseProblem

    if isinstance(problem, Failed):
        return problem
    if isinstance(problem, click.ClickException):
        return Failed(_usage(problem), problem.exit_code)
    if isinstance(problem, DateError | AskError):
        return Failed(str(problem), MISUSED)
    if isinstance(problem, Ambiguous):
        meanings = [{"key": key, "name": name} for name, key in problem.meanings]
        return Failed(str(problem), NO, {"meanings": meanings})
    if isinstance(problem, NoSuch):
        return Failed(str(problem), NO, {"nearest": list(problem.nearest)})
    if isinstance(problem, DatabaseProblem):
        return Failed(str(problem), UNUSABLE)
    if isinstance(problem, sqlite3.Error) or _is_sqlalchemy_error(problem):
        cause = getattr(problem, "orig", None) or problem
        return Failed(f"the database could not be read or written: {cause}", UNUSABLE)
    if isinstance(problem, OSError):
        return Failed(
            f"{problem.filename or 'the output'}: {problem.strerror or problem}", UNUSABLE
        )
    return None


def _usage(problem: click.ClickException) -> str:
    context = getattr(problem, "ctx", None)
    if context is None:
        return problem.format_message()
    return f"{problem.format_message()} See: {context.command_path} --help"


def _is_sqlalchemy_error(problem: Exception) -> bool:
    loaded = sys.modules.get("sqlalchemy.exc")
    return loaded is not None and isinstance(problem, loaded.SQLAlchemyError)


def tell(failed: Failed, as_json: bool) -> None:
    """Say on stderr what went wrong; with `--json` on stdout, as {"error": ...}."""
    from conservedb.questions.display import escape_json, show

    if not as_json:
        print(f"conservedb: {show(str(failed))}", file=sys.stderr)
        return
    said = {"error": str(failed), **failed.more}
    try:
        print(escape_json(json.dumps(said, ensure_ascii=False, indent=2)), flush=True)
    except BrokenPipeError:
        leave_quietly()
    except OSError as problem:
        leave_quietly()
        print(f"conservedb: {show(str(failed))} ({problem.strerror})", file=sys.stderr)


def leave_quietly() -> None:
    """After the reader of our output has gone: write no more, and complain about nothing."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, sys.stdout.fileno())
