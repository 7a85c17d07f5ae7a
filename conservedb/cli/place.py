"""conservedb place NUMBER MARK [--on DATE]: what lies at a place. JSON: see `place_json`."""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from conservedb.cli.printing import Lines
    from conservedb.questions.answers import Fixing, Layer, PlaceAnswer


@click.command("place")
@click.argument("number")
@click.argument("mark")
@on_option
@shared_options
@click.pass_obj
def command(settings: Settings, number: str, mark: str, on: str | None) -> None:
    """What lies at the place MARK of object NUMBER, since when, and how sure that is.

    Example: conservedb place SQ.1902.7 J14 --on "14 June 1950"
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.asof import as_of
    from conservedb.questions.place import place

    with asking(settings) as (connection, today):
        answer = place(connection, number, mark, as_of(on, today))
    if settings.json:
        from conservedb.cli.place_json import place_json

        print_json(place_json(answer))
    else:
        print_lines(place_lines(answer))


def place_lines(answer: PlaceAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines

    lines = Lines()
    lines.add("object", answer.object, answer.title)
    lines.add("location", answer.place, answer.kind, answer.name)
    lines.add("as of", saying.asked(answer.on))
    lines.add("in short", answer.summary)
    saying.add_warnings(lines, answer.warnings)
    for side in answer.sides:
        label = f"side {side.side}" if side.side else "on"
        lines.add(label, side.component, side.name, side.material or "material not recorded")
    _add_condition(lines, answer)
    lines.add("geometry", answer.geometry)
    lines.add("fit", answer.fit)
    lines.add("access", answer.access)
    lines.add("note", answer.note)
    saying.add_rivals(lines, answer.rivals)
    saying.add_amended(lines, answer.amended)
    for fixing in answer.fixings:
        _add_fixing(lines, fixing)
    for number, layer in enumerate(answer.layers, 1):
        lines.gap()
        _add_layer(lines, number, layer)
    lines.gap()
    if not answer.layers:
        lines.add("layers", "none on record")
    _add_residues(lines, answer)
    return lines


def _add_condition(lines: Lines, answer: PlaceAnswer) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import cited

    found = answer.condition
    if found is None:
        return
    since = f"since {saying.dated(found.since)}" if found.since else ""
    source = cited(found.source) if found.since else ""
    either = " or ".join(found.possible) if len(found.possible) > 1 else found.state
    unsure = "not established: " if len(found.possible) > 1 else ""
    lines.add("condition", f"{unsure}{either}", since, found.qualified, source, found.note)
    load = "not recorded: treat as loaded"
    if answer.load_kg is not None:
        load = f"{answer.load_kg:g} kg, {cited(answer.load_source)}"
    lines.add("load", load)


def _add_fixing(lines: Lines, fixing: Fixing) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import cited, retired_words, state_words

    lines.add(
        "fixing",
        fixing.component,
        fixing.name or fixing.kind,
        fixing.material or "material not recorded",
        state_words(fixing.state, fixing.possible),
        retired_words(fixing.retired),
        f"made {saying.dated(fixing.made)}" if fixing.made.recorded else "",
        f"known from: {fixing.known_from or 'not recorded'}",
        cited(fixing.source),
        f"set in {', '.join(fixing.joints)}" if fixing.joints else "",
        fixing.note,
    )


def _add_layer(lines: Lines, number: int, layer: Layer) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import STATE_WORDS, state_words

    name = layer.material_name or "material not recorded"
    side = f"side {layer.side}" if layer.side else ""
    lines.add(f"layer {number}", name, layer.role, layer.zone, side, f"ref {layer.ref}")
    lines.add("state", state_words(layer.state, layer.possible), layer.qualified, depth=1)
    for which, state in layer.by_side.items():
        lines.add(f"on side {which}", state_words(state.state, state.possible), depth=1)
    if layer.held is not None:
        throughout, at_some_time, possibly = (
            ", ".join(STATE_WORDS[word] for word in words)
            for words in (layer.held.throughout, layer.held.at_some_time, layer.held.possibly)
        )
        lines.add("throughout", throughout or "no single state", depth=1)
        lines.add("at some time", at_some_time, depth=1)
        lines.add("possibly", possibly, depth=1)
    lines.add("remains", layer.remains, depth=1)
    lines.add("may lie at", " or ".join(layer.candidates), depth=1)
    lines.add("to settle it", layer.settle, depth=1)
    lines.add("came", layer.origin, *saying.deed(layer.laid), depth=1)
    for done in layer.removed:
        what = {"all": "all of it", "part": "in part"}.get(done.extent, done.extent)
        side = f"side {done.side}" if done.side else ""
        lines.add("went", what, side, *saying.deed(done), done.cause, done.note, depth=1)
    for look in layer.sightings:
        lines.add("looked", *saying.seen(look), depth=1)
    _add_facts(lines, layer)


def _add_facts(lines: Lines, layer: Layer) -> None:
    from conservedb.cli import saying

    if not layer.last_seen:
        lines.add("last seen", "no sighting on record by this day", depth=1)
    lines.add("found as", layer.material_words, depth=1)
    lines.add("class", layer.material_class, depth=1)
    lines.add("identified", layer.identified or "not recorded", depth=1)
    lines.add("coverage", layer.coverage, depth=1)
    lines.add("concentration", layer.concentration, depth=1)
    lines.add("carrier", layer.carrier, depth=1)
    lines.add("dry when covered", layer.dry, depth=1)
    lines.add("significance", layer.significance, layer.significance_by, depth=1)
    lines.add("note", layer.note, depth=1)
    for source in layer.sources:
        lines.add("source", saying.sourced(source), depth=1)
    saying.add_rivals(lines, layer.rivals, depth=1)
    saying.add_amended(lines, layer.amended, depth=1)


def _add_residues(lines: Lines, answer: PlaceAnswer) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import clearing

    for residue in answer.residues:
        lines.add(
            "possible residue",
            residue.material_name or "agent not recorded",
            residue.concentration,
            residue.form,
            saying.dated(residue.date),
            f"intervention {residue.intervention}",
            clearing(residue.cleared),
            residue.note,
        )
