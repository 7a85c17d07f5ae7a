"""conservedb new PATH: make a new, empty database.

JSON: {"database": path as given}.
"""

from __future__ import annotations

from pathlib import Path

import click

from conservedb.cli.printing import print_json
from conservedb.cli.settings import Settings, shared_options


@click.command("new")
@click.argument("path", type=click.Path(path_type=Path))
@shared_options
@click.pass_obj
def command(settings: Settings, path: Path) -> None:
    """Make a new database at PATH, which holds the shipped reference tables and nothing else.

    It is never made over a file that is there.
    """
    from conservedb.questions.display import show
    from conservedb.store.create import create
    from conservedb.store.opening import surroundings

    create(path)
    if settings.json:
        print_json({"database": str(path)})
    else:
        click.echo(f"made: {show(str(path))}")
    warning = surroundings(path)
    if warning:
        click.echo(f"conservedb: {show(warning)}", err=True)
