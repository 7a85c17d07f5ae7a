"""Which database is meant, and the options that every command shares."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeAlias, TypeVar

import click

from conservedb.cli.ending import UNUSABLE, Failed

if TYPE_CHECKING:
    import datetime

    from conservedb.store.upgrade import Upgraded

VARIABLE = "CONSERVEDB_DB"
_SQLITE = "sqlite:///"
Interface = Callable[[Path], int]
Function = TypeVar("Function", bound=Callable[..., Any])


class Settings:
    """What was said about all commands: the database, the form of the answer."""

    def __init__(self, interface: Interface | None = None) -> None:
        self.db: str | None = None
        self.json = False
        self.by = ""
        self.interface = interface
        """Opens the terminal interface on a file; set by the program's entry."""

    def path(self) -> Path:
        """The database file: `--db`, else CONSERVEDB_DB, else the configured one.

        Raises:
            click.UsageError: none of them is given.
            Failed: a URL of a kind of database that this version cannot open.
        """
        named = self.db or os.environ.get(VARIABLE) or _configured()
        if not named:
            raise click.UsageError(
                f"no database is named; give --db PATH, or set {VARIABLE}, or write its path"
                f" into {_configuration()}; conservedb demo shows an invented one."
            )
        return _path(named)

    def who(self) -> str:
        """Who writes: `--who`, else CONSERVEDB_WHO, else the name set once, else the account."""
        from conservedb.store.who import who

        return self.by or who()


def _path(named: str) -> Path:
    if named.startswith(_SQLITE):
        from urllib.parse import unquote

        return Path(unquote(named.removeprefix(_SQLITE)))
    if "://" in named:
        raise Failed(f"{named}: this version opens SQLite files only; give a path", UNUSABLE)
    return Path(named).expanduser()


def _configuration() -> Path:
    from platformdirs import user_config_path

    return user_config_path("conservedb") / "database"


def _configured() -> str:
    """The path in the one-line configuration file, "" where there is none."""
    try:
        return _configuration().read_text(encoding="utf-8").strip()
    except FileNotFoundError:
        return ""


def _remember_db(context: click.Context, _: click.Parameter, value: str | None) -> None:
    if value is not None:
        context.ensure_object(Settings).db = value


def _remember_json(context: click.Context, _: click.Parameter, value: bool) -> None:
    if value:
        context.ensure_object(Settings).json = True


def shared_options(function: Function) -> Function:
    """`--db` and `--json`, which may stand before or after the command."""
    for option in (
        click.option(
            "--json",
            is_flag=True,
            expose_value=False,
            callback=_remember_json,
            help="Print the answer as JSON.",
        ),
        click.option(
            "--db",
            metavar="PATH|URL",
            expose_value=False,
            callback=_remember_db,
            help=f"The database; else ${VARIABLE}, else the configured one.",
        ),
    ):
        function = option(function)
    return function


def _remember_who(context: click.Context, _: click.Parameter, value: str | None) -> None:
    if value is None:
        return
    if not value.strip():
        raise click.BadParameter("is empty; write your full name")
    context.ensure_object(Settings).by = value.strip()


def who_option(function: Function) -> Function:
    """`--who`: in whose name something is written."""
    option = click.option(
        "--who",
        metavar="NAME",
        expose_value=False,
        callback=_remember_who,
        help="Who writes; else $CONSERVEDB_WHO, else the name set with: conservedb who NAME.",
    )
    return option(function)


def _not_blank(_: click.Context, __: click.Parameter, value: str | None) -> str | None:
    """An empty date is a slip (an unset variable of a script), not today."""
    if value is not None and not value.strip():
        raise click.BadParameter("is empty; write a date, or leave --on away for today")
    return value


def on_option(function: Function) -> Function:
    """`--on`: the day or span of days that is asked for."""
    option = click.option(
        "--on",
        metavar="DATE",
        callback=_not_blank,
        help='A day, any EDTF, or words such as "the 1930s"; else today.',
    )
    return option(function)


def tell(upgraded: Upgraded | None) -> None:
    """Say what was done to the file where it was not of this version."""
    if upgraded is not None:
        from conservedb.questions.display import show

        for remark in upgraded.remarks:
            click.echo(f"conservedb: {show(remark)}", err=True)


Connection: TypeAlias = Any
"""What questions are put to; the interfaces hold no SQL and need not know more of it."""


@contextmanager
def asking(settings: Settings) -> Iterator[tuple[Any, datetime.date]]:
    """A connection to ask questions through, and the day that is today for this database."""
    from conservedb.store.connect import reading
    from conservedb.store.opening import open_database, today

    engine, upgraded = open_database(settings.path())
    tell(upgraded)
    try:
        with reading(engine) as connection:
            yield connection, today(connection)
    finally:
        engine.dispose()
