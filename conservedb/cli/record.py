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
from conservedb.cli.settings import Settings, shared_options, tell, who_option
from conservedb.cli.typed import fields_option, override_option

if TYPE_CHECKING:
    import datetime

    from sqlalchemy import Connection, Engine

    from conservedb.exchange.entering import Entry
    from conservedb.exchange.judging import JudgedWritten


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
    from conservedb.exchange.judging import enter_judged
    from conservedb.exchange.kinds import composing
    from conservedb.store.log import Author
    from conservedb.store.opening import open_database

    who = settings.who()
    engine, upgraded = open_database(settings.path())
    tell(upgraded)
    try:
        today = prepare(engine, kind, fields, over_matching)
        number = fields.get("object", "")
        compose = composing(kind, fields, who, today)
        author = Author(who, "recorded", reason)
        told = enter_judged(engine, compose, author, today, number, overrides, trial=dry_run)
        records = recorded(engine, told, versions=told.kept and not dry_run)
    finally:
        engine.dispose()
    if settings.json:
        _print_json(told, records, dry_run)
    else:
        _print(told, records, dry_run)
    return DONE if told.kept else NO


def prepare(
    engine: Engine, kind: str, fields: dict[str, str], matching: str | None
) -> datetime.date:
    """Check the names of the fields, add the places that match words; return today."""
    from conservedb.exchange.kinds import STEP, NoSuchField, belongs_to_object, check_fields
    from conservedb.store.connect import reading
    from conservedb.store.opening import today

    try:
        check_fields(kind, fields)
    except NoSuchField as problem:
        raise Failed(str(problem), MISUSED, {"nearest": list(problem.nearest)}) from problem
    if belongs_to_object(kind) and not fields.get("object", "").strip():
        raise Failed(f"no object is named; write object=NUMBER for a {kind}", MISUSED)
    with reading(engine) as connection:
        if matching is not None:
            if kind.lower() != STEP:
                raise Failed("--over-matching selects the places of a step; leave it away", MISUSED)
            fields["places"] = _matching(connection, fields, matching)
        return today(connection)


def _matching(connection: Connection, fields: dict[str, str], words: str) -> str:
    from conservedb.exchange.cells import escape
    from conservedb.exchange.deed_places import places_where

    found = places_where(connection, fields["object"], words)
    if not found:
        raise Failed(f"no location of {fields['object']} matches {words!r}")
    return "; ".join(filter(None, (fields.get("places", ""), *map(escape, found))))


def recorded(engine: Engine, told: JudgedWritten, *, versions: bool) -> list[dict[str, Any]]:
    """The records of a deed, each with its key and, once written, its version."""
    from conservedb.exchange.amending import shown
    from conservedb.exchange.subjects import BY_NAME
    from conservedb.store.connect import reading

    records: list[dict[str, Any]] = []
    with reading(engine) as connection:
        for entry, key in zip(told.entries, _keys(told), strict=True):
            subject = BY_NAME[entry.subject]
            number = entry.cells.get("object", "") if subject.in_object else ""
            version = None
            if versions and len(subject.key) == 1:
                version = shown(connection, entry.subject, number, key).version
            records.append(
                {
                    "kind": subject.singular,
                    "object": number,
                    "key": key,
                    "version": version,
                    "cells": {name: cell for name, cell in entry.cells.items() if cell.strip()},
                }
            )
    return records if told.kept else []


def _keys(told: JudgedWritten) -> Sequence[str]:
    return told.written.keys or [_key(entry) for entry in told.entries]


def _key(entry: Entry) -> str:
    from conservedb.exchange.subjects import BY_NAME

    return entry.cells.get(BY_NAME[entry.subject].key[-1], "")


def findings_json(told: JudgedWritten) -> list[dict[str, Any]]:
    """The rules that need a reason."""
    names = ("rule", "title", "severity", "sentence", "places", "certain")
    return [{name: getattr(one, name) for name in names} for one in told.findings]


def _print_json(told: JudgedWritten, records: list[dict[str, Any]], trial: bool) -> None:
    from conservedb.cli.printing import print_json

    print_json(
        {
            "written": told.kept and not trial,
            "trial": trial,
            "set": None if trial else told.written.set_number,
            "records": records,
            "notices": list(told.notices),
            "faults": list(told.sentences),
            "findings": findings_json(told),
        }
    )


def _print(told: JudgedWritten, records: Iterable[dict[str, Any]], trial: bool) -> None:
    from conservedb.cli.printing import Lines, print_lines

    say_why(told)
    lines = Lines()
    if not told.kept:
        lines.add("result", "nothing was written")
    for record in records:
        version = f"version {record['version']}" if record["version"] else ""
        lines.add(record["kind"], record["key"], version)
        if trial:
            for name, cell in record["cells"].items():
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
