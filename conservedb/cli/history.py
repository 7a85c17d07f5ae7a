"""conservedb history NUMBER [MARK]: everything that happened, in order of time.

JSON, in the shapes of `json_shapes`:
{"object", "title", "mark" ("" for the whole object), "name",
 "rows": [{"kind" (made, lost, retired, intervention, joint, layer, ended, sighting, observation,
   reading, sample, spot test, plan, authorisation), "ref", "date": DATE, "sentence",
   "detail": list, "people": PEOPLE, "treatment": ref or "", "components": marks, "places": marks,
   "source": SOURCE, "rivals": RIVALS, "note", "amended": AMENDED}]}
 With --withdrawn: {"object", "withdrawn": [{"what", "when", "who", "reason", "change_set",
 "fields": [{"name", "value"}]}]}.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, shared_options

if TYPE_CHECKING:
    from conservedb.cli.json_shapes import Json
    from conservedb.cli.printing import Lines
    from conservedb.questions.answers import HistoryAnswer, HistoryRow
    from conservedb.questions.withdrawn import Withdrawn


@click.command("history")
@click.argument("number")
@click.argument("mark", default="")
@click.option("--withdrawn", is_flag=True, help="What was withdrawn of it, by whom and why.")
@shared_options
@click.pass_obj
def command(settings: Settings, number: str, mark: str, withdrawn: bool) -> None:
    """Everything that happened to object NUMBER, or to the part or place MARK of it.

    What was amended says how it read before. Example: conservedb history SQ.1902.7 B12
    """
    if withdrawn:
        if mark.strip():
            raise click.UsageError("--withdrawn lists those of the whole object; leave MARK away.")
        _print_withdrawn(settings, number)
        return
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.history import history

    with asking(settings) as (connection, _):
        answer = history(connection, number, mark)
    if settings.json:
        print_json(history_json(answer))
    else:
        print_lines(history_lines(answer))


def _print_withdrawn(settings: Settings, number: str) -> None:
    from conservedb.cli.printing import Lines, print_json, print_lines
    from conservedb.questions.withdrawn import withdrawn

    with asking(settings) as (connection, _):
        answer = withdrawn(connection, number)
    if settings.json:
        print_json({"object": answer.object, "withdrawn": [_gone(one) for one in answer.records]})
        return
    lines = Lines()
    lines.add("object", answer.object, answer.title)
    if not answer.records:
        lines.add("withdrawn", "nothing")
    for one in answer.records:
        lines.gap()
        lines.add("withdrawn", one.what, f"{one.when} by {one.who}", one.reason)
        for field in one.fields:
            lines.add(field.name, field.before, depth=1)
        lines.add("change set", str(one.set_number), depth=1)
    print_lines(lines)


def _gone(one: Withdrawn) -> Json:
    return {
        "what": one.what,
        "when": one.when,
        "who": one.who,
        "reason": one.reason,
        "change_set": one.set_number,
        "fields": [{"name": field.name, "value": field.before} for field in one.fields],
    }


def history_json(answer: HistoryAnswer) -> Json:
    """The answer as JSON."""
    return {
        "object": answer.object,
        "title": answer.title,
        "mark": answer.mark,
        "name": answer.name,
        "rows": [_row(row) for row in answer.rows],
    }


def _row(row: HistoryRow) -> Json:
    from conservedb.cli import json_shapes as shape

    return {
        "kind": row.kind,
        "ref": row.ref,
        "date": shape.date(row.date),
        "sentence": row.sentence,
        "detail": list(row.detail),
        "people": shape.people(row.people),
        "treatment": row.treatment,
        "components": list(row.components),
        "places": list(row.places),
        "source": shape.source(row.source),
        "rivals": [shape.rival(stated) for stated in row.rivals],
        "note": row.note,
        "amended": shape.amended(row.amended),
    }


def history_lines(answer: HistoryAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines
    from conservedb.questions.wording import cited, hands

    lines = Lines()
    lines.add("object", answer.object, answer.title)
    lines.add("history of", answer.mark, answer.name)
    if not answer.rows:
        lines.add("history", "nothing on record")
    for row in answer.rows:
        lines.gap()
        unknown = "hands not recorded" if row.kind == "intervention" else ""
        who = hands(row.people, unknown)
        lines.add(saying.dated(row.date), row.sentence, who, row.ref, cited(row.source))
        for line in row.detail:
            lines.add("detail", line, depth=1)
        lines.add("parts", ", ".join(row.components), depth=1)
        lines.add("locations", ", ".join(row.places), depth=1)
        lines.add("treatment", row.treatment, depth=1)
        lines.add("note", row.note, depth=1)
        saying.add_rivals(lines, row.rivals, depth=1)
        saying.add_amended(lines, row.amended, depth=1)
    return lines
