"""conservedb log [NUMBER]: who changed what, when and why; the latest first.

JSON: {"sets": [SET], "more": how many are not shown, "head": {"number", "hash"} or null}; with
`--set`: SET and "records": [{"what", "happened" (entered, amended, withdrawn), "fields":
[{"name", "before", "after"}]}]. SET is {"number", "who", "at": UTC, "kind", "reason", "undoes":
number or null, "undone_by": number or null, "changes", "counts": {table: rows}, "hash"}.
"""

from __future__ import annotations

from dataclasses import asdict
from typing import TYPE_CHECKING

import click

from conservedb.cli.ending import DONE
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings, asking, shared_options

if TYPE_CHECKING:
    from conservedb.questions.log import LogAnswer, RecordChange, SetLine

_KINDS = 6


@click.command("log")
@click.argument("number", required=False, default="")
@click.option("--by", "who", default="", metavar="NAME", help="Only what this person wrote.")
@click.option("--last", "limit", default=30, type=click.IntRange(1), help="How many; else 30.")
@click.option(
    "--set", "set_number", type=click.IntRange(1, 2**62), help="One change set, record by record."
)
@shared_options
@click.pass_obj
def command(settings: Settings, number: str, who: str, limit: int, set_number: int | None) -> int:
    """The change log, of everything or of the object NUMBER.

    The last line is the end of the chain. Written down elsewhere it proves later that nothing
    before it was changed: conservedb verify --head "NUMBER HASH".
    """
    from conservedb.questions.log import log, set_changes, set_line

    with asking(settings) as (connection, _):
        if set_number is not None:
            one = set_line(connection, set_number)
            records = set_changes(connection, set_number)
            if settings.json:
                print_json(_set_json(one) | {"records": [asdict(r) for r in records]})
            else:
                print_lines(_set(one, records))
            return DONE
        answer = log(connection, number=number, who=who, limit=limit)
    if settings.json:
        head = answer.head
        print_json(
            {
                "sets": [_set_json(one) for one in answer.sets],
                "more": answer.more,
                "head": None if head is None else {"number": head.number, "hash": head.hash},
            }
        )
    else:
        print_lines(_lines(answer))
    return DONE


def _set_json(one: SetLine) -> dict[str, object]:
    return asdict(one) | {"counts": dict(one.counts)}


def _lines(answer: LogAnswer) -> Lines:
    lines = Lines()
    for one in answer.sets:
        lines.add(f"change set {one.number}", *_told(one))
    if not answer.sets:
        lines.add("change log", "nothing on record")
    if answer.more:
        lines.add("more", f"{answer.more} earlier; --last shows more")
    lines.gap()
    lines.add("end of the log", str(answer.head or "nothing sealed"))
    return lines


def _told(one: SetLine) -> list[str]:
    counts = ", ".join(f"{n} {name.replace('_', ' ')}" for name, n in one.counts[:_KINDS])
    if len(one.counts) > _KINDS:
        counts += f" and rows of {len(one.counts) - _KINDS} more tables"
    after = "".join(
        (
            f"; takes back change set {one.undoes}" if one.undoes else "",
            f"; see change set {one.undone_by}" if one.undone_by else "",
            "" if one.hash else "; not sealed",
        )
    )
    when = f"{one.at[:16].replace('T', ' ')} UTC"
    reason = f'"{one.reason}"' if one.reason else ""
    return [when, one.who, f"{one.kind} {counts or 'bounds of layers'}{after}", reason]


def _set(one: SetLine, records: tuple[RecordChange, ...]) -> Lines:
    lines = Lines()
    lines.add(f"change set {one.number}", *_told(one))
    for record in records:
        lines.gap()
        lines.add(record.what, record.happened)
        for field in record.fields:
            was, now = field.before or "blank", field.after or "blank"
            text = now if record.happened == "entered" else was
            shown = f"{was} -> {now}" if record.happened == "amended" else text
            lines.add(field.name.replace("_", " "), shown, depth=1)
    lines.gap()
    lines.add("hash", one.hash or "not sealed")
    return lines
