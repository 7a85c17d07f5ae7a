"""`--csv`, `--jsonl` and `--xlsx`: an answer into a file instead of onto the screen."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

import click

from conservedb.cli.settings import Function

if TYPE_CHECKING:
    from conservedb.exchange.answers_out import About, Row

_FORMS = {
    "csv": "Write the rows into a new CSV file, safe for spreadsheets; the question, the day and"
    " the version stand in the name of its last column, which is blank otherwise.",
    "jsonl": "Write the rows into a new file of JSON lines; the first says what they answer.",
    "xlsx": 'Write the rows into a new Excel workbook; its sheet "about" says what they answer.',
}


class Out(NamedTuple):
    """Where an answer goes: a new file, and its form."""

    path: Path
    form: str


def out_options(function: Function) -> Function:
    """`--csv`, `--jsonl`, `--xlsx`; which the command hands to `chosen`."""
    for form, words in reversed(_FORMS.items()):
        option = click.option(
            f"--{form}", metavar="FILE", type=click.Path(path_type=Path), help=words
        )
        function = option(function)
    return function


def chosen(csv: Path | None, jsonl: Path | None, xlsx: Path | None) -> Out | None:
    """The one file that was named, None where the answer goes onto the screen.

    Raises:
        click.UsageError: several were named.
    """
    given = {"csv": csv, "jsonl": jsonl, "xlsx": xlsx}
    named = [Out(path, form) for form, path in given.items() if path is not None]
    if len(named) > 1:
        raise click.UsageError("name one file: --csv, --jsonl or --xlsx.")
    return named[0] if named else None


def write_out(
    out: Out, about: About, header: Sequence[str], rows: Iterable[Row], *, as_json: bool
) -> None:
    """Write the file and say so; with `--json` as {"file": path, "rows": number}.

    Raises:
        conservedb.store.problems.DatabaseProblem: the file is there already, or cannot be written.
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.exchange.answers_out import write_answer
    from conservedb.questions.display import show
    from conservedb.questions.wording import counted

    count = write_answer(out.path, out.form, about, header, rows)
    if as_json:
        print_json({"file": str(out.path), "rows": count})
    else:
        print_lines([f"{counted(count, 'row')} written to {show(str(out.path))}"])
