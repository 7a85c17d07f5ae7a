"""conservedb record KIND FIELD=VALUE ...: record a step, a removal, or one of anything.

JSON: {"written": bool, "trial": bool, "set": number of the change set or null,
"records": what was written, or with --dry-run would be [{"kind", "object": number or "",
"key": mark, ref or key, "version": number to give to `conservedb amend`, null where nothing was
written, "cells": the fields that are not blank}], "notices": [sentence], "faults": [sentence],
"findings": rules that need a reason (--override) [{"rule", "title", "severity" (block, warn),
"sentence", "places": marks, "certain": true or false}]}. Status 1 where nothing was written
because of faults or findings.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any

import click

from conservedb.cli.ending import DONE, MISUSED, NO, Failed
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.typed import fields_option, override_option
from conservedb.cli.writing import opened

if TYPE_CHECKING:
    from conservedb.exchange.judging import JudgedWritten
    from conservedb.exchange.results import Record


@click.command("record")
@click.argument("kind")
@fields_option
@click.option(
    "--reason", metavar="WHY", default="", help="Why; asked for where a record is closed."
)
@override_option
@click.option(
    "--over-matching",
    metavar="WORDS",
    help="For a step: at each place with these words in mark, name, kind or material.",
)
@click.option("--dry-run", is_flag=True, help="Say what would be written; write nothing.")
@who_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    kind: str,
    fields: dict[str, str],
    reason: str,
    overrides: dict[str, str],
    over_matching: str | None,
    dry_run: bool,
) -> int:
    """Record something: a step over one place or many, a removal, or one row of any table.

    KIND is step, removal, observation, reading, sample, sighting, person, or any other kind
    of record, in the singular. Nothing is written unless all of it can be.

    Example: conservedb record step object=SQ.1902.7 kind=consolidate places="J14; J15"
    material=paraloid-b-72 concentration="5 %" date=2026-11-02
    """
    from conservedb.exchange.deed_places import places_where
    from conservedb.exchange.judging import enter_judged
    from conservedb.exchange.kinds import composing
    from conservedb.exchange.results import records_of
    from conservedb.store.connect import reading
    from conservedb.store.log import Author

    _check(kind, fields, over_matching)
    who = settings.who()
    with opened(settings) as (engine, day):
        number = fields.get("object", "")
        if over_matching is not None:
            with reading(engine) as connection:
                found = places_where(connection, number, over_matching)
            fields = _with_places(fields, found, over_matching)
        compose = composing(kind, fields, who, day)
        author = Author(who, "recorded", reason)
        told = enter_judged(engine, compose, author, day, number, overrides, trial=dry_run)
        with reading(engine) as connection:
            records = records_of(connection, told, trial=dry_run)
    if settings.json:
        _print_json(told, records, dry_run)
    else:
        _print(told, records, dry_run)
    return DONE if told.kept else NO


def _check(kind: str, fields: dict[str, str], matching: str | None) -> None:
    """Refuse fields that the kind does not have, and an object that is not named."""
    from conservedb.exchange.kinds import NoSuchField, belongs_to_object, check_fields, is_step

    try:
        check_fields(kind, fields)
    except NoSuchField as problem:
        raise Failed(str(problem), MISUSED, {"nearest": list(problem.nearest)}) from problem
    if belongs_to_object(kind) and not fields.get("object", "").strip():
        raise Failed(f"no object is named; write object=NUMBER for a {kind}", MISUSED)
    if matching is not None and not is_step(kind):
        raise Failed("--over-matching selects the places of a step; leave it away", MISUSED)


def _with_places(fields: dict[str, str], found: Sequence[str], words: str) -> dict[str, str]:
    """The fields with the places found by words beside those named."""
    from conservedb.exchange.cells import escape

    if not found:
        raise Failed(f"no location of {fields['object']} matches {words!r}")
    places = filter(None, (fields.get("places", ""), *map(escape, found)))
    return {**fields, "places": "; ".join(places)}


def findings_json(told: JudgedWritten) -> list[dict[str, Any]]:
    """The rules that need a reason."""
    names = ("rule", "title", "severity", "sentence", "places", "certain")
    return [{name: getattr(one, name) for name in names} for one in told.findings]


def _print_json(told: JudgedWritten, records: Iterable[Record], trial: bool) -> None:
    from conservedb.cli.printing import print_json

    names = ("kind", "object", "key", "version", "cells")
    print_json(
        {
            "written": told.kept and not trial,
            "trial": trial,
            "set": None if trial else told.written.set_number,
            "records": [{name: getattr(one, name) for name in names} for one in records],
            "notices": list(told.notices),
            "faults": list(told.sentences),
            "findings": findings_json(told),
        }
    )


def _print(told: JudgedWritten, records: Iterable[Record], trial: bool) -> None:
    from conservedb.cli.printing import Lines, print_lines

    say_why(told)
    lines = Lines()
    if not told.kept:
        lines.add("result", "nothing was written")
    for record in records:
        version = f"version {record.version}" if record.version else ""
        lines.add(record.kind, record.key, version)
        if trial:
            for name, cell in record.cells.items():
                lines.add(name, cell, depth=1)
    if trial and told.kept:
        lines.add("result", "this would be written; nothing was")
    elif told.kept:
        number = told.written.set_number
        lines.add("change set", str(number) if number else "none: it was on record already")
    print_lines(lines)


def say_why(told: JudgedWritten) -> None:
    """Faults, findings and notices, on stderr."""
    for label, sentences in (
        ("fault", told.sentences),
        (
            "needs a reason",
            [
                f"{one.sentence} (severity: {one.severity}; to record it all the same: --override"
                f' {one.rule}="WHY")'
                for one in told.findings
            ],
        ),
        ("notice", told.notices),
    ):
        for sentence in sentences:
            say(label, sentence)


def say(label: str, sentence: str) -> None:
    """One line on stderr."""
    from conservedb.questions.display import show

    line = show(sentence).replace("\r", "\\r").replace("\n", "\\n")
    click.echo(f"{label}: {line}", err=True)
