"""conservedb import FOLDER: take CSV tables in.

JSON: {"written": bool, "files": [{"file", "rows", "added", "changed", "unchanged", "refused"}],
"faults": [fault], "dependents": [fault], "notices": [fault], "refused_folder": path or null},
each fault {"file", "row", "column", "value", "reason", "remedy"}. Rows are always the sum of
added, changed, unchanged and refused; without `--keep-good` one fault refuses all.
"""

from __future__ import annotations

import codecs
from collections.abc import Sequence
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE, NO
from conservedb.cli.printing import print_json, print_lines
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened

if TYPE_CHECKING:
    from conservedb.exchange.faults import Fault
    from conservedb.exchange.importing import ImportReport


def _known_encoding(_: click.Context, __: click.Parameter, value: str) -> str:
    try:
        "".encode(value)  # refuses codecs that are no text encodings
        return codecs.lookup(value).name
    except (LookupError, ValueError, TypeError) as problem:
        raise click.BadParameter(
            f"{value} is no text encoding known here; try utf-8 or cp1252"
        ) from problem


@click.command("import")
@click.argument("folder", type=click.Path(path_type=Path))
@click.option(
    "--encoding",
    default="utf-8",
    callback=_known_encoding,
    help="Of the files; UTF-8 unless named (cp1252 for old Windows files).",
)
@click.option(
    "--update",
    is_flag=True,
    help="Let cells replace what the database has, unless amended since the export.",
)
@click.option(
    "--keep-good",
    is_flag=True,
    help="Write the good rows; put the others, with reasons, in a folder beside FOLDER.",
)
@who_option
@shared_options
@click.pass_obj
def command(settings: Settings, folder: Path, encoding: str, update: bool, keep_good: bool) -> int:
    """Take the CSV tables in FOLDER in; the database is made if there is none.

    All faults are named, with file, line and column. One fault keeps everything out, unless
    --keep-good is given. Doing it again changes nothing.
    """
    from conservedb.exchange.importing import import_folder
    from conservedb.store.create import create

    path = settings.path()
    made = folder.is_dir() and not path.exists()
    if made:
        create(path)
    written = False
    try:
        with opened(settings) as (engine, day):
            report = import_folder(
                engine,
                folder,
                encoding=encoding,
                update=update,
                keep_good=keep_good,
                today=day,
                who=settings.who(),
            )
        written = report.written
    finally:
        if made and not written:  # leave nothing behind, whatever went wrong
            for suffix in ("", "-journal"):
                path.with_name(path.name + suffix).unlink(missing_ok=True)
    if settings.json:
        print_json(_as_json(report))
    else:
        _print(report, path)
    return DONE if not report.faults else NO


def _as_json(report: ImportReport) -> dict[str, object]:
    refused = report.refused_folder
    return {
        "written": report.written,
        "files": [asdict(count) for count in report.counts],
        "faults": [asdict(fault) for fault in report.faults],
        "dependents": [asdict(fault) for fault in report.dependents],
        "notices": [asdict(fault) for fault in report.notices],
        "refused_folder": None if refused is None else str(refused),
    }


def _print(report: ImportReport, path: Path) -> None:
    from conservedb.questions.display import show

    _tell("fault", report.faults)
    if report.written:
        _tell("refused with it", report.dependents)
    _tell("notice", report.notices)
    lines = []
    for count in report.counts:
        parts = [
            f"{number} {word}"
            for number, word in (
                (count.added, "added"),
                (count.changed, "changed"),
                (count.unchanged, "unchanged"),
                (count.refused, "refused"),
            )
            if number
        ]
        lines.append(f"{count.file}: {count.rows} rows: {', '.join(parts) or 'none'}")
    if not report.written:
        lines.append(f"nothing was written to {show(str(path))}: mend the faults and import again")
    elif report.refused_folder is not None:
        lines.append(f"refused rows and reasons: {show(str(report.refused_folder))}")
        lines.append(f"the other rows were written to {show(str(path))}")
    else:
        lines.append(f"written to {show(str(path))}")

    print_lines(lines)


def _tell(label: str, faults: Sequence[Fault]) -> None:
    from conservedb.questions.display import show

    for fault in faults:
        sentence = show(fault.sentence()).replace("\n", "\\n")
        click.echo(f"{label}: {sentence}", err=True)
