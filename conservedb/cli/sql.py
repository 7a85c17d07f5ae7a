"""conservedb sql "SELECT ...": a question in SQL, for those who know it; it can only read.

JSON: {"columns": names, "rows": [[cells: text, number or null; bytes as "x'0a'"]], "more": true
where rows were left out}; with a file {"file": path, "rows": number}; with `--views` {"days": how
days are told, "today": how to ask for today or a day, "views": [{"name", "meaning", "columns":
[{"name", "meaning"}]}]}. Status 1 where the question took too long, 2 where it is not one SELECT
that SQLite understands.
"""

from __future__ import annotations

import sys
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE, MISUSED, Failed
from conservedb.cli.out_options import Out, chosen, out_options, write_out
from conservedb.cli.settings import Settings, asking, shared_options

if TYPE_CHECKING:
    from collections.abc import Sequence

    from conservedb.exchange.answers_out import Row
    from conservedb.store.raw_questions import RawAnswer

_SHOWN = 1000
_WIDEST = 40
_ONE_LINE = str.maketrans({"\n": "\u240a", "\r": "\u240d", "\t": "\u2409"})


@click.command("sql")
@click.argument("sql", required=False, default="", metavar="SELECT|-")
@click.option("--views", is_flag=True, help="The views to ask, with their columns.")
@click.option(
    "--limit",
    type=click.IntRange(1),
    help=f"So many rows at most; else {_SHOWN} on the screen, and all into a file.",
)
@click.option(
    "--seconds",
    type=click.IntRange(1, 3600),
    default=30,
    help="Stop the question after so many seconds; else 30.",
)
@out_options
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    sql: str,
    views: bool,
    limit: int | None,
    seconds: int,
    csv: Path | None,
    jsonl: Path | None,
    xlsx: Path | None,
) -> int:
    """Put a question in SQL; "-" reads it from standard input.

    Nothing can be written, attached or loaded. Ask the views: their names and columns stay the
    same; those of the tables change with the program. While a question runs, others wait to save.

    Example: conservedb sql "SELECT role, count(*) FROM v_layers GROUP BY role"
    """
    if views:
        _tell_views(settings.json)
        return DONE
    out = chosen(csv, jsonl, xlsx)
    question = sys.stdin.buffer.read().decode("utf-8", "replace") if sql == "-" else sql
    if not question.strip():
        raise click.UsageError("write a SELECT, or - to read it from standard input.")
    _answer(settings, question, limit, seconds, out)
    return DONE


def _answer(
    settings: Settings,
    question: str,
    limit: int | None,
    seconds: int,
    out: Out | None,
) -> None:
    from conservedb.exchange.answers_out import about_answer
    from conservedb.store.raw_questions import (
        QuestionRefused,
        QuestionStopped,
        ask,
        is_current,
        reading_only,
        today,
    )

    path = settings.path()
    if not is_current(path):
        with asking(settings):  # completes it, or says why it cannot be asked
            pass
    with reading_only(path, seconds) as raw:
        about = about_answer(raw, today(raw).isoformat(), question.strip())
        try:
            answer = ask(raw, question, seconds)
            if out is not None:
                rows = islice(answer.rows, limit)
                write_out(out, about, answer.columns, rows, as_json=settings.json)
                return
            shown = list(islice(answer.rows, (limit or _SHOWN) + 1))
        except QuestionRefused as problem:
            raise Failed(str(problem), MISUSED) from problem
        except QuestionStopped as problem:
            raise Failed(str(problem)) from problem
    more = len(shown) > (limit or _SHOWN)
    _print(answer, shown[: limit or _SHOWN], more, settings.json)


def _print(answer: RawAnswer, rows: Sequence[Row], more: bool, as_json: bool) -> None:
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.exchange.answers_out import plain

    cells = [[plain(cell) for cell in row] for row in rows]
    if as_json:
        print_json({"columns": answer.columns, "rows": cells, "more": more})
        return
    words = [[_shown(cell) for cell in row] for row in (answer.columns, *cells)]
    widths = [min(_WIDEST, max(map(len, column))) for column in zip(*words, strict=True)]
    lines = [
        " | ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip()
        for row in words
    ]
    if more:
        lines.append(f"more: only the first {len(rows)} rows; --limit shows more")
    print_lines(lines)


def _shown(cell: object) -> str:
    from conservedb.questions.display import show

    return "" if cell is None else show(str(cell).translate(_ONE_LINE))


def _tell_views(as_json: bool) -> None:
    from conservedb.cli.printing import Lines, print_json, print_lines
    from conservedb.store.view_shape import DAY_NUMBERS, TODAY_IN_SQL
    from conservedb.store.views import VIEWS

    if as_json:
        told = [
            {
                "name": view.name,
                "meaning": view.meaning,
                "columns": [{"name": c.name, "meaning": c.meaning} for c in view.columns],
            }
            for view in VIEWS
        ]
        print_json({"days": DAY_NUMBERS, "today": TODAY_IN_SQL, "views": told})
        return
    lines = Lines()
    lines.add("today or a day", TODAY_IN_SQL)
    lines.add("days", DAY_NUMBERS)
    lines.gap()
    for view in VIEWS:
        lines.add(view.name, view.meaning)
        for column in view.columns:
            lines.add(column.name, column.meaning, depth=1)
        lines.gap()
    print_lines(lines)
