"""conservedb export FOLDER: write everything out as CSV tables.

JSON: {"folder": path, "files": {file: rows}}.
"""

from __future__ import annotations

from pathlib import Path

import click

from conservedb.cli.printing import print_json, print_lines
from conservedb.cli.settings import Settings, asking, shared_options


@click.command("export")
@click.argument("folder", type=click.Path(path_type=Path))
@shared_options
@click.pass_obj
def command(settings: Settings, folder: Path) -> None:
    """Write every table and column, unaltered, as CSV files into FOLDER, which must be new.

    log-head.txt beside them holds the end of the change log and how to check it later.
    """
    from conservedb.exchange.exporting import export_folder
    from conservedb.questions.display import show

    with asking(settings) as (connection, _):
        files = export_folder(connection, folder)
    if settings.json:
        print_json({"folder": str(folder), "files": files})
        return
    lines = [f"{file}: {rows} rows" for file, rows in files.items()]
    print_lines([*lines, f"written to {show(str(folder))}"])
