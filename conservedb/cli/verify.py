"""conservedb verify: the file against its own log, and against an end of it written down elsewhere.

JSON: {"sound": bool, "found": [{"part" (file, schema, chain, rows, search, bounds, head),
"sentence"}], "head": {"number", "hash"} or null, "accepted": number of a change set or null,
"rebuilt": bool, whether the search index was read anew}.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE, NO
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.writing import opened

if TYPE_CHECKING:
    from conservedb.store.log import Head


@click.command("verify")
@click.option(
    "--head",
    "heads",
    multiple=True,
    metavar='"NUMBER HASH"',
    help="An end of the log that was written down or printed; may be given several times.",
)
@click.option(
    "--accept",
    default="",
    metavar="WHY",
    help="Take rows that were changed behind the log's back as they are, and log them so.",
)
@click.option(
    "--rebuild-search",
    "rebuild",
    is_flag=True,
    help="First read the words that records are found by anew; no record is changed.",
)
@who_option
@shared_options
@click.pass_obj
def command(settings: Settings, heads: tuple[str, ...], accept: str, rebuild: bool) -> int:
    """Hold the file against its log: rows, schema, chain of hashes, references, bounds of layers.

    What is found is named; nothing is mended unless you ask for it. A log that was cut off or
    written anew is whole in itself: it shows against an end that this computer remembers, or
    that you give with --head.
    """
    from conservedb.recording.verifying import accept_as_found, rebuild_search, verify_database
    from conservedb.store.connect import raw_of, reading
    from conservedb.store.log import head

    wanted = tuple(_head(text) for text in heads)
    accepted = None
    with opened(settings, mend=False, write=rebuild) as (engine, _):
        if rebuild:
            rebuild_search(engine)
        if accept.strip():
            accepted = accept_as_found(engine, settings.who(), accept)
        with reading(engine) as connection:
            found = list(verify_database(connection, wanted))
            end = head(raw_of(connection))
    if settings.json:
        print_json(
            {
                "sound": not found,
                "found": [one._asdict() for one in found],
                "head": None if end is None else end._asdict(),
                "accepted": accepted,
                "rebuilt": rebuild,
            }
        )
        return NO if found else DONE
    lines = Lines()
    if accepted is not None:
        lines.add("logged as found", f"change set {accepted}")
    if rebuild:
        lines.add("search index", "read anew")
    for one in found:
        lines.add(one.part, one.sentence)
    if not found:
        lines.add("verified", "file, schema, chain, rows, search and bounds agree with the log")
    lines.add("end of the log", str(end or "nothing sealed"))
    print_lines(lines)
    return NO if found else DONE


def _head(text: str) -> Head:
    from conservedb.store.log import Head

    words = text.replace(",", " ").replace("change set", " ").split()
    if len(words) != 2 or not words[0].isdigit() or len(words[1]) != 64:
        raise click.BadParameter(
            "is not a number and a hash of 64 letters and digits, as conservedb log prints them",
            param_hint="--head",
        )
    return Head(int(words[0]), words[1].lower())
