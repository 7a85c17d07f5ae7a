"""conservedb object NUMBER [--on DATE]: an object with its parts and places.

JSON, in the shapes of `json_shapes`:
{"object", "title", "kind", "maker", "made": DATE, "whereabouts", "note", "on": ON,
 "last_examined": DEED or null, "warnings": WARNINGS,
 "components": in natural order of their marks [{"component", "parent", "name", "kind",
   "origin", "material", "state" (retired, or as of a layer), "possible", "qualified",
   "kept_at", "mass_kg", "mass_basis",
   "width_mm", "height_mm", "depth_mm", "known_from", "bridges": marks of joints that it crosses,
   "made": DATE, "lost": DATE, "retired": RETIRED or null, "note"}],
 "places": in natural order [{"place", "kind", "component", "other_component", "name",
   "certain", "uncertain": numbers of layers that are certainly, possibly there,
   "condition": of a joint, else "", "load_kg": number or null}],
 "unplaced": layers with no recorded place [{"layer": ref, "material_name", "role"}],
 "rivals": RIVALS about the object, its parts and its treatments}
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from conservedb.cli.json_shapes import Json
    from conservedb.cli.printing import Lines
    from conservedb.questions.answers import ComponentRow, ObjectAnswer, PlaceRow


@click.command("object")
@click.argument("number")
@on_option
@shared_options
@click.pass_obj
def command(settings: Settings, number: str, on: str | None) -> None:
    """Object NUMBER on a day: its parts and places, its warnings, who last examined it.

    Example: conservedb object SQ.1902.7 --on "before 1934"
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.asof import as_of
    from conservedb.questions.objects import object_on

    with asking(settings) as (connection, today):
        answer = object_on(connection, number, as_of(on, today))
    if settings.json:
        print_json(object_json(answer))
    else:
        print_lines(object_lines(answer))


def object_json(answer: ObjectAnswer) -> Json:
    """The answer as JSON."""
    from conservedb.cli import json_shapes as shape

    examined = answer.last_examined
    return {
        "object": answer.number,
        "title": answer.title,
        "kind": answer.kind,
        "maker": answer.maker,
        "made": shape.date(answer.made),
        "whereabouts": answer.whereabouts,
        "note": answer.note,
        "on": shape.asked(answer.on),
        "last_examined": None if examined is None else shape.deed(examined),
        "warnings": [shape.warning(caution) for caution in answer.warnings],
        "components": [_component(row) for row in answer.components],
        "places": [_place(row) for row in answer.places],
        "unplaced": [
            {"layer": hit.mark, "material_name": hit.label, "role": hit.detail}
            for hit in answer.unplaced
        ],
        "rivals": [shape.rival(stated) for stated in answer.rivals],
    }


def _component(row: ComponentRow) -> Json:
    from conservedb.cli import json_shapes as shape

    width, height, depth = row.size_mm
    return {
        "component": row.mark,
        "parent": row.parent,
        "name": row.name,
        "kind": row.kind,
        "origin": row.origin,
        "material": row.material,
        "state": row.state,
        "possible": list(row.possible),
        "qualified": row.qualified,
        "kept_at": row.kept_at,
        "mass_kg": row.mass_kg,
        "mass_basis": row.mass_basis,
        "width_mm": width,
        "height_mm": height,
        "depth_mm": depth,
        "known_from": row.known_from,
        "bridges": list(row.bridges),
        "made": shape.date(row.made),
        "lost": shape.date(row.lost),
        "retired": shape.retired(row.retired),
        "note": row.note,
    }


def _place(row: PlaceRow) -> Json:
    return {
        "place": row.mark,
        "kind": row.kind,
        "component": row.component,
        "other_component": row.other_component,
        "name": row.name,
        "certain": row.certain,
        "uncertain": row.uncertain,
        "condition": row.condition,
        "load_kg": row.load_kg,
    }


def object_lines(answer: ObjectAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines

    lines = Lines()
    lines.add("object", answer.number, answer.title)
    lines.add("as of", saying.asked(answer.on))
    lines.add("kind", answer.kind)
    lines.add("made", answer.maker, saying.dated(answer.made))
    lines.add("whereabouts", answer.whereabouts or "not recorded")
    examined = answer.last_examined
    lines.add(
        "last examined",
        *(saying.deed(examined) if examined else ("no examination on record by this day",)),
    )
    saying.add_warnings(lines, answer.warnings)
    lines.add("note", answer.note)
    saying.add_rivals(lines, answer.rivals)
    lines.gap()
    for row in answer.components:
        _add_component(lines, row)
    lines.gap()
    for place in answer.places:
        _add_place(lines, place)
    for hit in answer.unplaced:
        name = hit.label or "material not recorded"
        lines.add("layer, location not recorded", name, hit.detail, f"ref {hit.mark}")
    return lines


def _add_component(lines: Lines, row: ComponentRow) -> None:
    from conservedb.questions.wording import retired_words, state_words

    state = state_words(row.state, row.possible)
    if row.kept_at:
        apart = f"kept apart at {row.kept_at}, as last recorded"
        state = apart if row.state == "present" else f"{state}, {apart}"
    lines.add(
        "part",
        f"{row.mark} of {row.parent}" if row.parent else row.mark,
        row.name,
        row.kind,
        row.material or "material not recorded",
        row.origin,
        state,
        row.qualified,
        retired_words(row.retired),
        f"{row.mass_kg:g} kg" if row.mass_kg is not None else "",
        f"crosses {', '.join(row.bridges)}" if row.bridges else "",
        f"known from: {row.known_from}" if row.known_from else "",
    )


def _add_place(lines: Lines, row: PlaceRow) -> None:
    from conservedb.questions.wording import counted

    sides = " to ".join(mark for mark in (row.component, row.other_component) if mark)
    there = f"{counted(row.certain, 'layer')} in place" if row.certain else ""
    unsure = f"{counted(row.uncertain, 'layer')} not established" if row.uncertain else ""
    condition = {"uncertain": "condition not established", "not recorded": "closing not recorded"}
    load = f"carries {row.load_kg:g} kg" if row.load_kg is not None else "load not recorded"
    lines.add(
        "location",
        row.mark,
        f"{row.kind} {sides}".strip(),
        row.name,
        condition.get(row.condition, row.condition),
        there,
        unsure,
        "" if there or unsure else "no layer on record",
        load if row.kind == "joint" else "",
    )
