"""conservedb ask "QUESTION": what a researcher asks of the whole record.

JSON: {"question": as `conservedb ask` takes it, "description": the same as a sentence, "saved":
name or "", "rows": what they are (layers, places, interventions, objects), "counts": {"certain",
"possible", "unidentified"}, "order", "descending", "found": the first of them, as many as --limit
says [ROW]}. With --compare: {"question", "description", "compared": the question that was put for
each day, which asks for what is there then where the other says nothing of it, "days": [ON, ON],
"counts": for each day, "only_first", "only_second": what answers on that day and not at all on
the other [ROW], "surer", "less_sure": what answers more or less surely on the
second day than on the first [ROW with "before": its sureness on the first]}. With --describe:
{"question", "description"}. With --list: {"saved": [{"name", "question", "description" ("" where it
cannot be read), "saved": DATE, "person", "note"}]}. With --save also "change_set": number, null
where it was on record already. With --csv, --jsonl or --xlsx: {"file": path, "rows": number}.

ROW is {"sureness" (certain, possible, unidentified: its matter is on record neither as a material
nor as a class), "object", "title", "place": mark, "J1 or J2" where either may be meant, "J1, J2"
where an agent was used at both, "what" (layer, agent, ""), "ref", "intervention", "material": key,
words as found or class, "matter": its name, else the same, "role", "kind", "people", "date": DATE,
its earliest and latest day those that all else on record leaves, of a place or object the first,
"date_qualifiers": approximate, uncertain, both or "", "state": today, or on the day compared, in
the words of the question (in place, partly removed, gone, not yet, perhaps: several are possible),
"layers": how many layers, uses of agents and other steps answer as surely as the row does, 0 where
it is asked only what is not there}. Files have the same fields, but "date" as "date_words",
"date_edtf", "date_first_day", "date_last_day".
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.out_options import Out, chosen, out_options, write_out
from conservedb.cli.settings import Connection, Settings, asking, shared_options, who_option

if TYPE_CHECKING:
    import datetime
    from collections.abc import Iterable
    from pathlib import Path

    from conservedb.cli.json_shapes import Json
    from conservedb.cli.printing import Lines
    from conservedb.knowledge.research import Research
    from conservedb.questions.research_answers import Counts, ResearchRow

_MORE = """\b
Write `certainly` after the colon to leave out what holds only possibly:
  conservedb ask 'material: certainly shellac'
The keys that `rule` takes stand in the view v_rules:
  conservedb sql "SELECT key, title FROM v_rules"
"""
_USES = ("layer, use or step", "layers, uses or steps")
_ROWS = ("layers", "places", "interventions", "objects")


@click.command("ask", epilog=_MORE)
@click.argument("text", nargs=-1, metavar="QUESTION")
@click.option("--saved", metavar="NAME", help="Ask the question kept under this name.")
@click.option("--save", metavar="NAME", help="Keep the question under this name.")
@click.option("--list", "list_", is_flag=True, help="Show the questions that are kept.")
@click.option("--rows", type=click.Choice(_ROWS), help="What the rows are.")
@click.option(
    "--order",
    default="sureness",
    metavar="COLUMN",
    help="Sort by a column; else what is certain comes first, then by date.",
)
@click.option("--descending", is_flag=True, help="The last first.")
@click.option(
    "--limit",
    type=click.IntRange(min=0),
    default=50,
    metavar="N",
    help="How many rows to show; 50 unless said, 0 for all. A file holds every row.",
)
@click.option(
    "--compare",
    nargs=2,
    metavar="DAY DAY",
    help="What answers on one of two days only, or more surely on one.",
)
@click.option("--describe", is_flag=True, help="Only say the question as a sentence.")
@out_options
@who_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    text: tuple[str, ...],
    saved: str | None,
    save: str | None,
    list_: bool,
    rows: str | None,
    order: str,
    descending: bool,
    limit: int,
    compare: tuple[str, str] | None,
    describe: bool,
    csv: Path | None,
    jsonl: Path | None,
    xlsx: Path | None,
) -> None:
    """Ask for layers, places, interventions or objects by conditions joined by and, or, not.

    Fields: material, as, role, kind, aim, technique, person, date, object, object kind, part
    material, environment, state, observed, source, identified, reversibility, rule.

    Example: conservedb ask 'objects where material: "cellulose nitrate" and state: there on 1950
    and not (person: "W. Orde" or kind: join)'

    And: conservedb ask 'objects where has (material: shellac) and has none (role: coating)'
    """
    words = " ".join(text)
    out = chosen(csv, jsonl, xlsx)
    if out is not None:
        _refuse_beside_file(list_, compare, describe, save)
    if list_:
        _list(settings)
        return
    if bool(words.strip()) == bool(saved):
        raise click.UsageError(
            "write a question, or --saved NAME; --list shows those that are kept"
        )
    if save is not None and not words.strip():
        raise click.UsageError("--save keeps the question that is written; write one")
    with asking(settings) as (connection, today):
        research = _research(connection, words, saved, rows)
        if out is not None:
            _into_file(settings, connection, research, today, order, descending, out)
            return
        if compare:
            found, lines = _compared(connection, research, compare, today)
        elif describe:
            found, lines = _described(research)
        else:
            found, lines = _answer(connection, research, today, order, descending, limit)
    named: Json = {} if describe or compare else {"saved": saved or save or ""}
    if save is not None:
        named["change_set"] = _keep(settings, save, research, lines)
    if settings.json:
        from conservedb.cli.printing import print_json

        print_json(found | named)
    else:
        from conservedb.cli.printing import print_lines

        print_lines(lines)


def _refuse_beside_file(*others: object) -> None:
    if any(others):
        raise click.UsageError(
            "a file takes the rows of one answer; leave --list, --compare, --describe and --save"
            " away"
        )


def _research(connection: Connection, words: str, saved: str | None, rows: str | None) -> Research:
    from dataclasses import replace

    from conservedb.knowledge.research_words import read
    from conservedb.questions import research_saved

    research = research_saved.saved(connection, saved).research if saved else read(words)
    return replace(research, rows=rows) if rows else research


def _described(research: Research) -> tuple[Json, Lines]:
    from conservedb.cli.printing import Lines
    from conservedb.knowledge.research_told import describe
    from conservedb.knowledge.research_words import say

    lines = Lines()
    lines.add("question", describe(research))
    return {"question": say(research), "description": describe(research)}, lines


def _answer(
    connection: Connection,
    research: Research,
    today: datetime.date,
    order: str,
    descending: bool,
    limit: int,
) -> tuple[Json, Lines]:
    from conservedb.questions.research import counts, page
    from conservedb.questions.wording import counted

    found = counts(connection, research, today)
    rows = page(connection, research, today, order, descending, 0, limit or -1).rows
    answer, lines = _described(research)
    lines.add("answer", f"{research.rows}: {found.sentence}")
    lines.gap()
    _add_rows(lines, rows)
    if found.total > len(rows):
        lines.gap()
        more = counted(found.total - len(rows), "row")
        lines.add("not shown", f"{more}; --limit 0 shows all")
    answer |= {
        "rows": research.rows,
        "counts": _counts(found),
        "order": order,
        "descending": descending,
        "found": [_row(row) for row in rows],
    }
    return answer, lines


def _into_file(
    settings: Settings,
    connection: Connection,
    research: Research,
    today: datetime.date,
    order: str,
    descending: bool,
    out: Out,
) -> None:
    """Every row of the answer, with the question as it can be asked again."""
    from conservedb.exchange.answers_out import about_answer
    from conservedb.exchange.answers_out_research import HEADER, cells_of_row
    from conservedb.knowledge.research_told import describe
    from conservedb.knowledge.research_words import say
    from conservedb.questions.research import counts, rows
    from conservedb.store.connect import raw_of

    counted = f"{research.rows}: {counts(connection, research, today).sentence}"
    raw, day = raw_of(connection), today.isoformat()
    about = about_answer(raw, day, say(research), describe(research), counted)
    cells = map(cells_of_row, rows(connection, research, today, order, descending))
    write_out(out, about, HEADER, cells, as_json=settings.json)


def _compared(
    connection: Connection, research: Research, days: tuple[str, str], today: datetime.date
) -> tuple[Json, Lines]:
    from conservedb.cli import json_shapes as shape
    from conservedb.cli import saying
    from conservedb.knowledge.research_words import say
    from conservedb.questions.asof import as_of
    from conservedb.questions.research_compared import compare

    first, second = (as_of(words, today) for words in days)
    found = compare(connection, research, first, second)
    answer, lines = _described(research)
    lines.add("compared", found.added)
    for day, counts, only in zip(
        found.days, found.counts, (found.only_first, found.only_second), strict=True
    ):
        lines.gap()
        lines.add(saying.asked(day), f"{research.rows}: {counts.sentence}")
        lines.add("only then", f"{len(only):,}" if only else "none")
        _add_rows(lines, only)
    lines.gap()
    for name, changed in (("surer", found.surer), ("less sure", found.less_sure)):
        lines.add(f"{name} on the second day", f"{len(changed):,}" if changed else "none")
        both = (row._replace(sureness=f"{old}, then {row.sureness}") for old, row in changed)
        _add_rows(lines, both)
    answer |= {
        "compared": say(found.research),
        "days": [shape.asked(day) for day in found.days],
        "counts": [_counts(counts) for counts in found.counts],
        "only_first": [_row(row) for row in found.only_first],
        "only_second": [_row(row) for row in found.only_second],
        "surer": [_row(row) | {"before": before} for before, row in found.surer],
        "less_sure": [_row(row) | {"before": before} for before, row in found.less_sure],
    }
    return answer, lines


def _add_rows(lines: Lines, rows: Iterable[ResearchRow]) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import asked_state, counted

    for row in rows:
        number = f"{row.object} {row.place}".strip()
        lines.add(
            number,
            row.sureness,
            "" if row.what or row.ref else row.title,
            f"{row.what or 'intervention'} {row.ref}" if row.ref else "",
            (row.matter or "material not recorded") if row.what else "",
            row.role,
            row.kind,
            row.people,
            saying.dated(row.date) if row.date.recorded else row.dated,
            f"state: {asked_state(row.state)}" if row.state else "",
            "" if row.what or not row.layers else counted(row.layers, *_USES),
            depth=1,
        )


def _counts(found: Counts) -> Json:
    return {name: getattr(found, name) for name in found.__slots__}


def _row(row: ResearchRow) -> Json:
    from conservedb.cli import json_shapes as shape
    from conservedb.questions.wording import asked_state, qualifiers

    return row._asdict() | {
        "date": shape.date(row.date),
        "date_qualifiers": qualifiers(row.date.flags),
        "state": asked_state(row.state),
    }


def _keep(settings: Settings, name: str, research: Research, lines: Lines) -> int | None:
    """Keep the question; the number of the change set."""
    from conservedb.cli.ending import MISUSED, NO, Failed
    from conservedb.cli.writing import opened
    from conservedb.exchange.keeping_questions import keep_question

    with opened(settings) as (engine, today):
        written = keep_question(engine, name, research, settings.who(), today)
    if written.faults:
        taken = [one.value for one in written.faults if one.column == "name"]
        told = [
            f"{one.value!r} {one.reason}; {one.remedy}"
            if one.value
            else f"{one.reason}; {one.remedy}"
            for one in written.faults
        ]
        freed = [_how_to_free(one, research) for one in taken]
        raise Failed("; ".join((*told, *freed)), NO if taken else MISUSED)
    lines.gap()
    lines.add("kept as", name.strip())
    return written.set_number


def _how_to_free(name: str, research: Research) -> str:
    """How another question takes the place of a kept one, and how that is withdrawn."""
    from shlex import quote

    from conservedb.knowledge.research_words import say_conditions

    kept = f'"saved question" - {quote(name)}'
    fields = f"rows={research.rows} {quote(f'conditions={say_conditions(research)}')}"
    return (
        f"to put this one in its place: conservedb amend {kept} {fields} --reason WHY;"
        f" to withdraw it: conservedb withdraw {kept} --reason WHY"
    )


def _list(settings: Settings) -> None:
    from conservedb.cli import json_shapes as shape
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines, print_json, print_lines
    from conservedb.questions.research_saved import saved_questions

    with asking(settings) as (connection, _):
        kept = saved_questions(connection)
    if settings.json:
        names = ("name", "question", "description", "person", "note")
        print_json(
            {
                "saved": [
                    {name: getattr(one, name) for name in names} | {"saved": shape.date(one.saved)}
                    for one in kept
                ]
            }
        )
        return
    lines = Lines()
    for one in kept:
        lines.add(one.name, one.description or one.question, one.person, saying.dated(one.saved))
    if not kept:
        lines.add("kept", "none")
    print_lines(lines)
