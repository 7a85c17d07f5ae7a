"""conservedb amend KIND NUMBER KEY FIELD=VALUE ...: change fields of a record, with the reason.

JSON: {"written": bool, "set": number of the change set or null, "kind", "object": number or "",
"key": mark, ref or key as it is now, "version": number of its last change, "notices": [sentence],
"faults": [sentence], "findings": as of `conservedb record`, "clashes": fields that somebody else
changed since --version [{"field", "shown": as it was then, "mine", "theirs": as it is now, "by",
"at"}]}. Status 1 where nothing was written because of faults, findings or clashes.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE, MISUSED, NO, Failed
from conservedb.cli.record import findings_json, say, say_why
from conservedb.cli.settings import Settings, shared_options, who_option
from conservedb.cli.typed import fields_option, override_option
from conservedb.cli.writing import opened

if TYPE_CHECKING:
    from collections.abc import Sequence

    from conservedb.exchange.amending import Clash
    from conservedb.exchange.judging import JudgedWritten


@click.command("amend")
@click.argument("kind")
@click.argument("number")
@click.argument("key")
@fields_option
@click.option("--reason", metavar="WHY", required=True, help="Why it is changed.")
@click.option(
    "--version",
    type=int,
    metavar="N",
    help="The version that you saw; what somebody else changed since is not overwritten.",
)
@override_option
@who_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    kind: str,
    number: str,
    key: str,
    fields: dict[str, str],
    reason: str,
    version: int | None,
    overrides: dict[str, str],
) -> int:
    """Change fields of a record; the former wording stays in the change log.

    NUMBER is that of its object, - where it belongs to none (a person, a material). A field
    left blank (FIELD=) is blanked.

    Example: conservedb amend layer SQ.1902.7 L14b carrier=ethanol --reason "label read again"
    """
    from conservedb.exchange.amending import shown
    from conservedb.exchange.judging import amend_judged
    from conservedb.exchange.past_cells import shown_at
    from conservedb.exchange.reading_cells import subject_named
    from conservedb.store.connect import reading
    from conservedb.store.log import Author

    subject = _checked(kind, fields, reason)
    known = subject_named(subject)
    owner = number if known.in_object else ""
    with opened(settings) as (engine, day):
        seen = None
        if version is not None:
            with reading(engine) as connection:
                seen = shown_at(connection, subject, owner, key, version)
        author = Author(settings.who(), "amended", reason)
        told = amend_judged(engine, subject, owner, key, fields, author, day, seen, overrides)
        if told.kept and fields.get(known.key[-1], "").strip():
            key = fields[known.key[-1]].strip()
        with reading(engine) as connection:
            last = shown(connection, subject, owner, key).version
    if settings.json:
        _print_json(told, known.singular, owner, key, last)
    else:
        _print(told, known.singular, key, last)
    return DONE if told.kept else NO


def _checked(kind: str, fields: dict[str, str], reason: str) -> str:
    """The subject meant; its fields and the reason are looked at."""
    from conservedb.exchange.amending import FIXED
    from conservedb.exchange.kinds import NoSuchField, check_fields, subject_of

    subject = subject_of(kind)
    try:
        check_fields(subject, fields, deeds=False)
    except NoSuchField as problem:
        raise Failed(str(problem), MISUSED, {"nearest": list(problem.nearest)}) from problem
    if not reason.strip():
        raise Failed("the reason is empty; say why it is changed", MISUSED)
    if not fields:
        raise Failed("nothing is given to change; write FIELD=VALUE", MISUSED)
    for name in FIXED:
        if name in fields:
            raise Failed(f"{name} is never changed; leave it away", MISUSED)
    return subject


def _clashes(told: JudgedWritten) -> Sequence[Clash]:
    from conservedb.exchange.amending import Amended

    return told.written.clashes if isinstance(told.written, Amended) else ()


def _print_json(told: JudgedWritten, kind: str, number: str, key: str, version: int) -> None:
    from conservedb.cli.printing import print_json

    names = ("field", "shown", "mine", "theirs", "by", "at")
    print_json(
        {
            "written": told.kept,
            "set": told.written.set_number,
            "kind": kind,
            "object": number,
            "key": key,
            "version": version,
            "notices": list(told.notices),
            "faults": list(told.sentences),
            "findings": findings_json(told),
            "clashes": [{name: getattr(one, name) for name in names} for one in _clashes(told)],
        }
    )


def _print(told: JudgedWritten, kind: str, key: str, version: int) -> None:
    from conservedb.cli.printing import Lines, print_lines

    say_why(told)
    lines = Lines()
    for one in _clashes(told):
        say("clash", f"{one.field} was changed by {one.by} on {one.at} since you saw it")
        lines.add("field", one.field)
        for label in ("shown", "mine", "theirs"):
            lines.add(label, getattr(one, label) or "(blank)", depth=1)
    if not told.kept:
        lines.add("result", "nothing was written")
    lines.add(kind, key, f"version {version}")
    if told.kept:
        number = told.written.set_number
        lines.add("change set", str(number) if number else "none: nothing was changed")
    print_lines(lines)
