"""conservedb look QUESTION: what answers a question, counted, drawn, and how long it lasts.

JSON: {"question": its text, "said": as a sentence, "rows": layers, places, interventions or
objects, "on": ISO day, "picture": path or null} with what was looked at; COUNT stands for
"certain", "possible" and "unidentified", each a number:
- by decade: "by", "decades": [{"first": year, "label", COUNT}], "undated": {COUNT}: their date
  names no decade, "several": how many may lie in several decades or have a date that is
  approximate or uncertain, "total": {COUNT}, each thing once.
- by class, person, object-kind: "by", "groups": the largest first [{"label", COUNT}], "shared": how
  many stand in several groups, "total": {COUNT}.
- --decades: "materials": [{"material", "decades", "undated", "several", "total"}].
- --survival: "layers": how many it rests on, "qualified": of how many a date is approximate or
  uncertain, "unseen": how many nobody saw since they were laid, "left_out": {"possible",
  "unidentified", "agents", "not_come"}, "chosen": fields of the question that choose by lasting,
  "exact": whether every end is known to the day, "ages": [{"years", "recorded": SHARE, "seen":
  SHARE or null, "with_possible": SHARE or null, "band": SHARE or null, "soonest": SHARE or null,
  "last": SHARE, "there", "ended", "unknown", "followed": on how many it still rests}], "jumps":
  [{"first_day", "last_day": ages in days, null for no end, "share"}] as recorded. SHARE is {"low",
  "high"}, from 0 to 1.

Where nothing answers there is nothing to draw: status 1, and no picture is written.
"""

from __future__ import annotations

import shutil
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any, NamedTuple

import click

from conservedb.cli.ending import MISUSED, Failed
from conservedb.cli.settings import Settings, asking, shared_options

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence
    from datetime import date

    from conservedb.exchange.pictures import Drawing
    from conservedb.knowledge.research import Research
    from conservedb.questions.survival import AtAge

WAYS = ("decade", "class", "person", "object-kind")
_NARROWEST = 40


class Looked(NamedTuple):
    """An answer in all its forms; the picture is only drawn when it is called for."""

    json: dict[str, Any]
    lines: Sequence[str]
    remarks: Sequence[str]
    drawing: Callable[[], Drawing]


@click.command("look")
@click.argument("question", nargs=-1, required=True)
@click.option("--by", type=click.Choice(WAYS), help="Bars, by this; by decade unless said.")
@click.option("--decades", is_flag=True, help="A table of materials by decade.")
@click.option("--survival", is_flag=True, help="How many are still there, by age.")
@click.option(
    "--picture",
    type=click.Path(path_type=Path),
    metavar="FILE",
    help="Write it as a picture too; FILE is new and ends with .svg or .png.",
)
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    question: tuple[str, ...],
    by: str | None,
    decades: bool,
    survival: bool,
    picture: Path | None,
) -> None:
    """What answers QUESTION as bars, as a table, or how long it lasts.

    Certain and possible answers are told apart, in bars by different signs. What may lie in
    several decades is possible in each.

    Example: conservedb look 'material: "cellulose nitrate" and date: ../1960' --survival
    """
    if (by is not None) + decades + survival > 1:
        raise click.UsageError("--by, --decades and --survival exclude each other; give one.")
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.knowledge.research_told import describe
    from conservedb.knowledge.research_words import AskError, read, say

    try:
        research = read(" ".join(question))
        with asking(settings) as (connection, today):
            if decades:
                looked = _table(connection, research, today)
            elif survival:
                looked = _survival(connection, research, today)
            else:
                looked = _bars(connection, research, today, by or WAYS[0])
    except AskError as problem:
        raise Failed(str(problem), MISUSED) from problem
    if picture is not None:
        from conservedb.exchange.pictures import write_picture

        write_picture(looked.drawing(), picture)
    if settings.json:
        asked = {"question": say(research), "said": describe(research), "rows": research.rows}
        path = None if picture is None else str(picture)
        print_json(asked | {"on": today.isoformat()} | looked.json | {"picture": path})
    else:
        print_lines(_lines(describe(research), today, looked, picture))


def _bars(connection: Any, research: Research, today: date, by: str) -> Looked:  # noqa: ANN401
    from conservedb.cli import look_json
    from conservedb.exchange.bars import bar_lines, bars_of
    from conservedb.exchange.looking import bars_drawing, nothing_answers, remarks
    from conservedb.questions.research import rows
    from conservedb.questions.tally import counted

    found = counted(connection, research, rows(connection, research, today), by)
    if not found.total.total:
        raise Failed(nothing_answers(research))
    return Looked(
        {"by": by, **look_json.counted(found)},
        list(bar_lines(bars_of(found), _width(), plain=is_plain())),
        remarks(found),
        lambda: bars_drawing(found, research, by, today),
    )


def _table(connection: Any, research: Research, today: date) -> Looked:  # noqa: ANN401
    from conservedb.cli import look_json
    from conservedb.exchange.bars import grid_lines, grid_of
    from conservedb.exchange.looking import nothing_answers
    from conservedb.questions.research import rows
    from conservedb.questions.tally import materials_by_decade

    found = materials_by_decade(research, rows(connection, research, today))
    if not found:
        raise Failed(nothing_answers(research))
    return Looked(
        look_json.materials(found),
        list(grid_lines(grid_of(found), _width(), plain=is_plain())),
        ("numbers are certain + possible + not identified",),
        _no_picture,
    )


def _survival(connection: Any, research: Research, today: date) -> Looked:  # noqa: ANN401
    from conservedb.cli import look_json
    from conservedb.exchange.looking import nothing_lasts, remarks_of_survival, survival_drawing
    from conservedb.questions.research import rows
    from conservedb.questions.survival import survival

    found = survival(connection, research, rows(connection, research, today), today)
    if not found.layers:
        raise Failed(nothing_lasts(found, research))
    return Looked(
        look_json.survival(found),
        [line for one in found.ages for line in _age_lines(one)],
        remarks_of_survival(found),
        lambda: survival_drawing(found, research, today),
    )


def _no_picture() -> Drawing:
    raise click.UsageError("a table makes no picture; leave --picture or --decades away.")


def _lines(described: str, today: date, looked: Looked, picture: Path | None) -> Iterator[str]:
    from conservedb.cli.printing import Lines
    from conservedb.cli.saying import day

    head, foot = Lines(), Lines()
    head.add("question", described)
    head.add("as on record", day(today.toordinal()))
    head.gap()
    foot.gap()
    for remark in looked.remarks:
        foot.add("note", remark)
    if picture is not None:
        foot.add("picture written", str(picture))
    yield from head
    yield from looked.lines
    yield ""
    yield from foot


def _age_lines(one: AtAge) -> Iterator[str]:
    from conservedb.cli.printing import Lines
    from conservedb.exchange.looking import said_of_age

    lines, said = Lines(), said_of_age(one)
    share = f"{said.share} of the layers"
    lines.add(f"still there after {one.years} years", share, *said.standing)
    lines.add("estimated, if what is not known went as the rest", *said.estimate, depth=1)
    if said.with_possible:
        lines.add("with the possible answers too", said.with_possible, depth=1)
    yield from lines


def _width() -> int:
    """The columns of the terminal; 80 on paper."""
    if not sys.stdout.isatty():
        return 80
    return max(shutil.get_terminal_size().columns, _NARROWEST)


def is_plain() -> bool:
    """Whether the terminal lacks the signs of which bars are made."""
    from conservedb.exchange.bars import SIGNS

    try:
        f"{SIGNS}…".encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return True
    return False
