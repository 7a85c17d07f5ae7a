"""conservedb sheet NUMBER [PLAN]: a sheet for work away from the screen, and its way back.

JSON: {"object", "title", "plan", "about", "day", "database", "identity": uuid of the database,
"head": {"number", "hash"} or null, "rows": [{"row", "key", "object", "plan", "step",
"component", "place", "there", "kind", "planned_material", "planned_recipe", "name", "what"}],
"csv": path or null}. With --typed: {"recorded": [{"row", "ref"}], "before": [{"row", "ref"}] (on
record from another time), "not_done": [row], "notices": [sentence], "blank": how many,
"change_set": number or null}.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE, NO, Failed
from conservedb.cli.mended import add_set
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, asking, shared_options, who_option
from conservedb.cli.typed import override_option
from conservedb.cli.writing import opened

if TYPE_CHECKING:
    from conservedb.exchange.bench_sheet import Sheet, SheetRow
    from conservedb.exchange.sheet_typing import Typed

WIDTH = 80
_MARGIN = "    "


@click.command("sheet")
@click.argument("number")
@click.argument("plan", default="")
@click.option("--place", "places", multiple=True, metavar="MARK", help="Only these places.")
@click.option("--csv", "table", type=click.Path(path_type=Path), help="Write it as a CSV table.")
@click.option(
    "--typed", type=click.Path(path_type=Path), help="Read a filled-in CSV table of it back."
)
@override_option
@who_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    number: str,
    plan: str,
    places: tuple[str, ...],
    table: Path | None,
    typed: Path | None,
    overrides: dict[str, str],
) -> int:
    """Print a sheet for work on object NUMBER: the steps of PLAN in order, or its places.

    The numbered rows have blank lines to fill in. With --csv they are written as a table, which
    --typed reads back: each filled row becomes a step, in the order of the sheet; a row typed in
    before is left as it is. One fault keeps everything out.
    Example: conservedb sheet SQ.1902.7 P2 --csv tuesday.csv
    """
    if typed is not None:
        return _type(settings, number, plan, typed, overrides)
    if plan.strip() and places:
        raise click.UsageError("--place is for a sheet without a plan; a plan names its places.")
    from conservedb.exchange.bench_sheet import bench_sheet, write_sheet

    with asking(settings) as (connection, today):
        sheet = bench_sheet(connection, number, plan, places, today)
    if table is not None:
        write_sheet(sheet, table)
    if settings.json:
        rows = [asdict(row) for row in sheet.rows]
        said = asdict(sheet) | {
            "head": None if sheet.head is None else sheet.head._asdict(),
            "rows": rows,
            "csv": None if table is None else str(table),
        }
        said.pop("warnings")
        print_json(said)
    elif table is not None:
        lines = Lines()
        lines.add("written", str(table), f"{len(sheet.rows)} rows")
        print_lines(lines)
    else:
        print_lines(sheet_lines(sheet))
    return DONE


def _type(settings: Settings, number: str, plan: str, path: Path, overrides: dict[str, str]) -> int:
    from conservedb.exchange.sheet_typing import type_sheet
    from conservedb.store.log import Author

    with opened(settings) as (engine, today):
        author = Author(settings.who(), "recorded", f"typed from sheet {path.name}")
        typed = type_sheet(engine, number, plan, path, author, today, overrides)
    if typed.faults:
        raise Failed("; ".join(typed.faults) + "; nothing was written", NO)
    if settings.json:
        print_json(_typed_json(typed))
        return DONE
    lines = Lines()
    for row, ref in typed.recorded:
        lines.add(f"row {row}", f"recorded as {ref}")
    for notice in typed.notices:
        lines.add("notice", notice)
    for row, ref in typed.before:
        lines.add(f"row {row}", f"on record already as {ref}; left as it is there")
    for row in typed.not_done:
        lines.add(f"row {row}", "not done; no step was recorded")
    lines.add("left blank", str(typed.blank))
    if typed.set_number is not None:
        add_set(lines, typed.set_number)
    print_lines(lines)
    return DONE


def _typed_json(typed: Typed) -> dict[str, object]:
    return {
        "recorded": [{"row": row, "ref": ref} for row, ref in typed.recorded],
        "before": [{"row": row, "ref": ref} for row, ref in typed.before],
        "not_done": typed.not_done,
        "notices": typed.notices,
        "blank": typed.blank,
        "change_set": typed.set_number,
    }


def sheet_lines(sheet: Sheet) -> Iterator[str]:
    """The sheet as it is printed, eighty columns wide at most."""
    from conservedb.knowledge.cautions import BANNER, GENERAL

    yield from _wrapped("Bench sheet: ", f"{sheet.object} {sheet.title}")
    if sheet.plan:
        yield from _wrapped("plan: ", f"{sheet.plan}, {sheet.about}")
    yield from _wrapped("printed: ", f"{sheet.day} from {sheet.database or 'a database'}")
    for caution in sheet.warnings:
        where = caution.place or caution.component
        at = f" (at {where})" if where else ""
        yield from _wrapped("warning: ", f"{caution.kind}: {caution.text}{at}")
    for row in sheet.rows:
        yield "-" * WIDTH
        yield from _row_lines(row)
    if not sheet.rows:
        yield "nothing is planned, and no place is on record"
    yield "=" * WIDTH
    yield from _wrapped("caution: ", f"{BANNER}.")
    yield from _wrapped("caution: ", f"{GENERAL}.")
    yield from _wrapped("database: ", sheet.identity)
    end = sheet.head
    yield f"end of its log: change set {end.number}" if end else "end of its log: nothing sealed"
    if end:
        yield f"  {end.hash}"
        yield '  to check: conservedb verify --head "NUMBER HASH"'


def _row_lines(row: SheetRow) -> Iterator[str]:
    where = " ".join(part for part in (row.place or row.component, row.name) if part)
    number = f"{row.row:>2}. "
    yield from _wrapped(
        number, f"{row.object}: {where}" + (f" (step {row.step})" if row.step else "")
    )
    for label, text in (
        ("there: ", row.there),
        ("planned: ", row.what or row.kind),
        ("material: ", row.planned_material),
        ("recipe: ", row.planned_recipe),
    ):
        if text:
            yield from _wrapped(_MARGIN + label, text)
    if not row.step:
        yield _blank("kind of step")
    yield ""
    yield f"{_MARGIN}date {'_' * 20}   done:  yes [  ]   no [  ]   otherwise [  ]"
    yield ""
    yield _blank("who")
    yield ""
    yield _blank("material (blank: as planned)" if row.step else "material")
    yield ""
    yield f"{_MARGIN}concentration {'_' * 22}   batch {'_' * (WIDTH - 49)}"
    yield ""
    yield _blank("note")
    yield ""
    yield _blank("")


def _blank(label: str) -> str:
    start = f"{_MARGIN}{label} " if label else _MARGIN
    return start + "_" * (WIDTH - len(start))


def _wrapped(label: str, text: str) -> Iterator[str]:
    """Text in lines that fit, those after the first below it; user text as data."""
    import textwrap

    from conservedb.questions.display import show

    said = " ".join(show(text).split())
    below = " " * min(len(label), 12)
    yield from textwrap.wrap(
        said, WIDTH, initial_indent=label, subsequent_indent=below, break_long_words=True
    ) or [label.rstrip()]
