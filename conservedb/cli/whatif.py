"""conservedb whatif --temperature C [NUMBER] [--on DATE]: joints that may creep or soften then.

JSON, in the shapes of `json_shapes`:
{"temperature_c", "object": number or "", "on": ON, "margin_c": degrees below softening from
   which a loaded joint may creep, "depression_c": degrees by which solvent may lower a figure,
 "joints": those of most consequence first [{"object", "place", "name", "load_kg": number or
   null, "certain": true or false, "layers": worst first [{"layer": ref, "role", "material": key,
   "name", "effect" (softens, may creep), "margin_c": degrees up to the figure that counts, below
   zero where it is passed, "softens_from_c", "lowered": true where solvent may remain,
   "figures": each in words, "sources": of these in full, "certain"}]}],
 "counts": {"joints", "objects", "layers"},
 "cannot_tell": {"by_material": [{"material": name, "layers"}], "class_only", "unidentified",
   "soft_metal": [{"material": name, "layers"}] in loaded joints, of lead or tin, which creep
   under load at room temperature},
 "not_creeping": layers of no known figure that are mineral or metal, or recorded as not creeping,
 "notes", "cautions": lists of sentences}

Joints that are certainly open on the day are left out. Layers on surfaces are not counted.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from collections.abc import Sequence

    from conservedb.cli.json_shapes import Json
    from conservedb.cli.printing import Lines
    from conservedb.questions.whatif_answers import WhatIfAnswer, WhatIfLayer


def _sensible(_: click.Context, __: click.Parameter, value: float) -> float:
    """Colder or hotter than any room is a slip, and so is what is no number."""
    from conservedb.questions.whatif_answers import LEAST_C, MOST_C

    if not LEAST_C <= value <= MOST_C:
        raise click.BadParameter(
            f"{value:g} is no temperature of a room; write one from {LEAST_C:g} to {MOST_C:g} C."
        )
    return value


@click.command("whatif")
@click.argument("number", required=False)
@click.option(
    "--temperature",
    type=float,
    required=True,
    callback=_sensible,
    metavar="C",
    help="How warm it gets, in C.",
)
@on_option
@shared_options
@click.pass_obj
def command(settings: Settings, number: str | None, temperature: float, on: str | None) -> None:
    """Which joints may creep or soften if the room gets that warm: all objects, or one.

    Certain before possible, softening before creeping, the heaviest load first. Layers of
    which no softening temperature is recorded are counted apart.

    Example: conservedb whatif --temperature 28
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.asof import as_of
    from conservedb.questions.whatif import whatif

    with asking(settings) as (connection, today):
        answer = whatif(connection, temperature, as_of(on, today), number)
    if settings.json:
        print_json(whatif_json(answer))
    else:
        print_lines(whatif_lines(answer))


def whatif_json(answer: WhatIfAnswer) -> Json:
    """The answer as JSON."""
    from conservedb.cli import json_shapes as shape
    from conservedb.questions.whatif_answers import CAUTIONS

    return {
        "temperature_c": answer.temperature,
        "object": answer.object,
        "on": shape.asked(answer.on),
        "margin_c": answer.margin,
        "depression_c": answer.depression,
        "joints": [_joint(answer, rows) for rows in answer.by_joint()],
        "counts": {
            "joints": answer.joints,
            "objects": answer.objects,
            "layers": len(answer.layers),
        },
        "cannot_tell": {
            "by_material": [
                {"material": name, "layers": number} for name, number in answer.without_figure
            ],
            "class_only": answer.class_only,
            "unidentified": answer.unidentified,
            "soft_metal": [
                {"material": name, "layers": number} for name, number in answer.soft_metal
            ],
        },
        "not_creeping": answer.not_creeping,
        "notes": list(answer.notes),
        "cautions": list(CAUTIONS),
    }


def _joint(answer: WhatIfAnswer, rows: Sequence[WhatIfLayer]) -> Json:
    first = rows[0]
    return {
        "object": first.object,
        "place": first.place,
        "name": first.name,
        "load_kg": first.load_kg,
        "certain": not first.unsure,
        "layers": [_layer(answer, row) for row in rows],
    }


def _layer(answer: WhatIfAnswer, row: WhatIfLayer) -> Json:
    figure = answer.figures[row.figure]
    return {
        "layer": row.layer,
        "role": row.role,
        "material": figure.material,
        "name": figure.name,
        "effect": row.effect,
        "margin_c": row.margin_c,
        "softens_from_c": figure.low,
        "lowered": bool(row.young),
        "figures": list(figure.lines),
        "sources": list(figure.sources),
        "certain": not row.unsure,
    }


def whatif_lines(answer: WhatIfAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines
    from conservedb.questions.whatif_answers import CAUTIONS
    from conservedb.questions.wording import counted

    lines = Lines()
    lines.add("at", f"{answer.temperature:g} C", answer.object)
    lines.add("as of", saying.asked(answer.on))
    lines.add(
        "joints that may creep or soften",
        counted(answer.joints, "joint"),
        f"on {counted(answer.objects, 'object')}",
        f"creep from {answer.margin:g} C below softening",
    )
    lines.gap()
    for rows in answer.by_joint():
        _add_joint(lines, answer, rows)
    lines.gap()
    _add_not_told(lines, answer)
    for source in _sources(answer):
        lines.add("source", source)
    for words in (*(("note", note) for note in answer.notes), *(("caution", c) for c in CAUTIONS)):
        lines.add(*words)
    return lines


def _add_not_told(lines: Lines, answer: WhatIfAnswer) -> None:
    """What cannot be told, and what does not creep; nothing is said of no layers."""
    from conservedb.questions.wording import counted

    for name, number in answer.soft_metal:
        creeps = "creeps under load at room temperature, how far is not recorded"
        lines.add("cannot tell", name, f"{counted(number, 'layer')} in loaded joints: {creeps}")
    for name, number in answer.without_figure:
        lines.add("cannot tell", name, f"{counted(number, 'layer')}: no softening figure recorded")
    for label, number, words in (
        ("cannot tell", answer.class_only, "known by class of material only"),
        ("cannot tell", answer.unidentified, "not identified"),
        ("not creeping under load", answer.not_creeping, "of mineral or metal"),
    ):
        if number:
            lines.add(label, f"{counted(number, 'layer')} {words}")


def _sources(answer: WhatIfAnswer) -> list[str]:
    """What the short references of the figures stand for, each once."""
    shown = {row.figure for row in answer.layers}
    return sorted({source for at in shown for source in answer.figures[at].sources})


def _add_joint(lines: Lines, answer: WhatIfAnswer, rows: Sequence[WhatIfLayer]) -> None:
    first = rows[0]
    load = "load not recorded: treat as loaded"
    if first.load_kg is not None:
        load = f"carries {first.load_kg:g} kg"
    unsure = "possibly" if first.unsure else ""
    lines.add(f"{first.object} {first.place}", first.effect, unsure, first.name, load)
    for row in rows:
        figure = answer.figures[row.figure]
        lines.add(
            row.layer,
            f"{figure.name} ({row.role or 'role not recorded'})",
            row.effect,
            f"lowest figure {figure.low:g} C",
            "lowered while solvent may remain" if row.young else "",
            "; ".join(figure.lines),
            "" if not row.unsure else "possibly",
            depth=1,
        )
