"""conservedb split, retire and replace: what became of a part of an object.

conservedb split NUMBER MARK NEWMARK ... --reason WHY: {"split": [marks of the fragments],
"change_set": number}; conservedb retire NUMBER MARK --on DATE --reason WHY: {"retired": [mark],
"change_set"}; conservedb replace NUMBER MARK NEWMARK --on DATE --reason WHY: {"replaced": [mark of
the new part, mark of the old one], "change_set"}.
"""

from __future__ import annotations

import click

from conservedb.cli.mended import Function, reason_option, report
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened


def _day(_: click.Context, __: click.Parameter, value: str) -> str:
    if not value.strip():
        raise click.BadParameter("is empty; write a date, or unknown")
    return value


def _on_option(function: Function) -> Function:
    option = click.option(
        "--on", required=True, callback=_day, metavar="DATE", help="When; any EDTF or plain words."
    )
    return option(function)


@click.command("split")
@click.argument("number")
@click.argument("mark")
@click.argument("fragments", metavar="NEWMARK...", nargs=-1, required=True)
@reason_option
@who_option
@shared_options
@click.pass_obj
def split(
    settings: Settings, number: str, mark: str, fragments: tuple[str, ...], reason: str
) -> int:
    """Record that part MARK of object NUMBER broke into fragments; it stays as their parent.

    Example: conservedb split SQ.1902.7 B12 B12a B12b --reason "fell on 3 May"
    """
    from conservedb.exchange.mending import split as broken
    from conservedb.store.log import Author

    with opened(settings) as (engine, today):
        author = Author(settings.who(), "split", reason)
        written = broken(engine, number, mark, fragments, author, today)
    return report(settings, written, "split", written.keys)


@click.command("retire")
@click.argument("number")
@click.argument("mark")
@_on_option
@reason_option
@who_option
@shared_options
@click.pass_obj
def retire(settings: Settings, number: str, mark: str, on: str, reason: str) -> int:
    """Record that part MARK of object NUMBER was taken out of it for good.

    Example: conservedb retire SQ.1902.7 K3 --on 2026-05-03 --reason "rusted through"
    """
    from conservedb.exchange.mending import retire as taken_out
    from conservedb.store.log import Author

    with opened(settings) as (engine, today):
        author = Author(settings.who(), "retired", reason)
        written = taken_out(engine, number, mark, on, author, today)
    return report(settings, written, "retired", written.keys)


@click.command("replace")
@click.argument("number")
@click.argument("mark")
@click.argument("new", metavar="NEWMARK")
@_on_option
@reason_option
@who_option
@shared_options
@click.pass_obj
def replace(settings: Settings, number: str, mark: str, new: str, on: str, reason: str) -> int:
    """Record that part NEWMARK stands in the place of part MARK, which was taken out.

    Example: conservedb replace SQ.1902.7 K3 K3n --on 2026-05-03 --reason "rusted through"
    """
    from conservedb.exchange.mending import replace as put_in
    from conservedb.store.log import Author

    with opened(settings) as (engine, today):
        author = Author(settings.who(), "replaced", reason)
        written = put_in(engine, number, mark, new, on, author, today)
    return report(settings, written, "replaced", written.keys)
