"""conservedb demo: an invented department to look around in.

JSON: {"database": path, "answers": [place, place]}: the answers of `conservedb place` for one
joint of the fountain, today and in 1950.
"""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE
from conservedb.cli.settings import Settings, shared_options

if TYPE_CHECKING:
    from conservedb.questions.answers import PlaceAnswer


@click.command("demo")
@shared_options
@click.pass_obj
def command(settings: Settings) -> int:
    """Look around an invented department, in a fresh database in the temporary folder.

    --db PATH puts it elsewhere, never over a file. Where there is no terminal to open, the
    answer to "what is on this joint of the fountain, now and in 1950?" is printed instead.
    """
    from conservedb.demo.build import load
    from conservedb.questions.display import show

    path = settings.path() if settings.db else _fresh()
    load(path)
    click.echo(f"conservedb: the demonstration is in {show(str(path))}", err=True)
    if settings.interface is not None and not settings.json and sys.stdout.isatty():
        return settings.interface(path)
    settings.db = str(path)
    _print(settings, path)
    return DONE


def _fresh() -> Path:
    """A name nobody else has, in a new folder of the system's temporary folder."""
    return Path(tempfile.mkdtemp(prefix="conservedb-demo-")) / "demo.db"


def _print(settings: Settings, path: Path) -> None:
    from conservedb.cli.place import place_lines
    from conservedb.cli.place_json import place_json
    from conservedb.cli.printing import print_json, print_lines

    answers = _answers(settings)
    if settings.json:
        print_json({"database": str(path), "answers": [place_json(answer) for answer in answers]})
        return
    for answer in answers:
        print_lines([*place_lines(answer), ""])


def _answers(settings: Settings) -> list[PlaceAnswer]:
    from conservedb.cli.settings import asking
    from conservedb.demo.build import JOINT, NUMBER, THEN
    from conservedb.questions.asof import as_of
    from conservedb.questions.place import place

    with asking(settings) as (connection, today):
        return [place(connection, NUMBER, JOINT, as_of(on, today)) for on in (None, THEN)]
