"""conservedb merge KIND KEEP GONE --reason WHY: two people, materials or sources that are one.

JSON: {"kept", "gone": what they are called, "moved": {kind of record: how many name KEEP from now
on}, "noted": [what differed, now in the note of KEEP], "change_set": number}.
"""

from __future__ import annotations

import click

from conservedb.cli.ending import DONE
from conservedb.cli.mended import add_set, reason_option, refuse
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened


@click.command("merge")
@click.argument("kind", metavar="KIND")
@click.argument("keep")
@click.argument("gone")
@reason_option
@who_option
@shared_options
@click.pass_obj
def command(settings: Settings, kind: str, keep: str, gone: str, reason: str) -> int:
    """Make one of two people, materials or sources that are one: KEEP stays, GONE goes.

    Everything that named GONE names KEEP, which takes over its names as aliases and what it says
    where KEEP is blank; what differs goes into the note. The change log keeps GONE whole.
    Example: conservedb merge person "Ida Holm" "I. Holm" --reason "same hand and address"
    """
    from conservedb.exchange.merging import merge
    from conservedb.store.log import Author

    with opened(settings) as (engine, today):
        author = Author(settings.who(), "merged", reason)
        done = merge(engine, kind, keep, gone, author, today)
    refuse(done.faults)
    if settings.json:
        print_json(
            {
                "kept": done.kept,
                "gone": done.gone,
                "moved": dict(done.moved),
                "noted": list(done.noted),
                "change_set": done.set_number,
            }
        )
        return DONE
    lines = Lines()
    lines.add("kept", done.kept)
    lines.add("gone", done.gone)
    for what, count in done.moved:
        lines.add("names the one kept", f"{count} x {what}")
    for words in done.noted:
        lines.add("in the note", words)
    add_set(lines, done.set_number)
    print_lines(lines)
    return DONE
