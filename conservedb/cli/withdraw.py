"""conservedb withdraw KIND NUMBER KEY --reason WHY: take a record out of every answer.

JSON: {"withdrawn": what went, "change_set": number}.
"""

from __future__ import annotations

import click

from conservedb.cli.ending import DONE, NO, Failed
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened


@click.command("withdraw")
@click.argument("kind")
@click.argument("number")
@click.argument("key", required=False, default="")
@click.option("--reason", required=True, help="Why; it stays on record.")
@click.option(
    "--version",
    type=int,
    default=None,
    help="The version that you saw; what somebody else changed since is not withdrawn.",
)
@click.option("--together", is_flag=True, help="With what was recorded as part of it.")
@who_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    kind: str,
    number: str,
    key: str,
    reason: str,
    version: int | None,
    together: bool,
) -> int:
    """Withdraw a record: KIND is what its file is called, NUMBER that of its object, KEY its ref.

    A record of no object (a person, a material) is named by its key alone. It leaves every
    answer; the change log keeps it whole, and `conservedb undo` brings it back.
    Example: conservedb withdraw layer SQ.1902.7 L12 --reason "entered twice"
    """
    from conservedb.exchange.reading_cells import find_record, subject_named
    from conservedb.recording.withdrawing import CannotWithdraw, withdraw
    from conservedb.store.connect import raw_of, writing
    from conservedb.store.log import Author, open_number

    subject = subject_named(kind)
    if not reason.strip():
        raise click.BadParameter("is empty; write why", param_hint="--reason")
    if not subject.in_object:
        number, key = "", key or number
    with opened(settings) as (engine, _):
        author = Author(settings.who(), "withdrawn", reason)
        try:
            with writing(engine, author) as connection:
                record = find_record(connection, subject, number, key)
                gone = withdraw(
                    connection, subject.table.name, record, together=together, version=version
                )
                made = open_number(raw_of(connection))
        except CannotWithdraw as problem:
            raise Failed(str(problem), NO) from problem
    if settings.json:
        print_json({"withdrawn": gone.labels, "change_set": made})
        return DONE
    lines = Lines()
    for label in gone.labels:
        lines.add("withdrawn", label)
    lines.add("change set", f"{made}; bring it back with: conservedb undo {made}")
    print_lines(lines)
    return DONE
