"""conservedb uses WORD [--on DATE]: where a material or a class of materials lies or may lie.

JSON, in the shapes of `json_shapes`:
{"word", "meant": {"kind" (material, material class), "key", "name"}, "on": ON,
 "layers": certain ones first [{"object", "place" ("" where not recorded), "layer": ref,
   "material": key or null, "material_words": as found, "role", "identified", "state",
   "possible": list, "certain": true or false, "laid": DATE}],
 "agents": certain ones first [{"object", "intervention": ref, "agent": ref, "material": key or
   null, "material_words", "places": marks, "date": DATE, "concentration", "form", "cleared",
   "certain"}],
 "counts": {"layers_certain", "layers_possible", "agents_certain", "agents_possible",
   "unidentified": layers in the whole database that have no material on record, whatever they
   were called, and of which no statement names it, "unidentified_agents": uses without material},
 "recipes": keys of materials that contain it as a part; they are not counted here}

A layer that may lie at several places stands once for each, never certain. Where the word is only
what something was called that nobody identified, the error says how to ask for that.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Connection, Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from collections.abc import Sequence

    from conservedb.cli.json_shapes import Json
    from conservedb.cli.printing import Lines
    from conservedb.questions.answers import AsOf
    from conservedb.questions.uses_answers import AgentUse, UsesAnswer, UsesLayer


@click.command("uses")
@click.argument("word", metavar="MATERIAL-OR-CLASS")
@on_option
@shared_options
@click.pass_obj
def command(settings: Settings, word: str, on: str | None) -> None:
    """Where a material, or a class with everything in it, lies, lay or may lie.

    The word is a key, a name or an alias. Certain and possible are told apart, and layers
    that nobody has identified are counted.

    Example: conservedb uses epoxy-resin --on 1990
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.asof import as_of

    with asking(settings) as (connection, today):
        answer = _answer(connection, word, as_of(on, today))
    if settings.json:
        print_json(uses_json(answer))
    else:
        print_lines(uses_lines(answer))


def _answer(connection: Connection, word: str, on: AsOf) -> UsesAnswer:
    """The uses of what is meant; where only things as found are called so, how to ask for them."""
    from shlex import quote

    from conservedb.cli.ending import NO, Failed
    from conservedb.knowledge.research import Condition, Research
    from conservedb.knowledge.research_words import say_conditions
    from conservedb.questions.basics import Ambiguous, NoSuch
    from conservedb.questions.research_on_record import is_called
    from conservedb.questions.uses import uses

    try:
        return uses(connection, word, on)
    except Ambiguous:
        raise
    except NoSuch as problem:
        if not is_called(connection, word):
            raise
        asked = say_conditions(Research("layers", Condition("material", word)))
        said = str(problem).removesuffix("?")
        raise Failed(
            f"{said}; it is a word as found: conservedb ask {quote(asked)}",
            NO,
            {"nearest": list(problem.nearest)},
        ) from problem


def uses_json(answer: UsesAnswer) -> Json:
    """The answer as JSON."""
    from conservedb.cli import json_shapes as shape

    return {
        "word": answer.word,
        "meant": {"kind": answer.kind, "key": answer.key, "name": answer.name},
        "on": shape.asked(answer.on),
        "layers": [_layer(row) for row in (*answer.layers_certain, *answer.layers_possible)],
        "agents": [_agent(use) for use in (*answer.agents_certain, *answer.agents_possible)],
        "counts": {
            "layers_certain": len(answer.layers_certain),
            "layers_possible": len(answer.layers_possible),
            "agents_certain": len(answer.agents_certain),
            "agents_possible": len(answer.agents_possible),
            "unidentified": answer.unidentified,
            "unidentified_agents": answer.unidentified_agents,
        },
        "recipes": list(answer.recipes),
    }


def _layer(row: UsesLayer) -> Json:
    from conservedb.cli import json_shapes as shape

    return {
        "object": row.object,
        "place": row.place,
        "layer": row.layer,
        "material": row.material,
        "material_words": row.material_words,
        "role": row.role,
        "identified": row.identified,
        "state": row.state,
        "possible": list(row.possible),
        "certain": bool(row.certain),
        "laid": shape.date(row.laid),
    }


def _agent(use: AgentUse) -> Json:
    from conservedb.cli import json_shapes as shape

    return {
        "object": use.object,
        "intervention": use.intervention,
        "agent": use.agent,
        "material": use.material,
        "material_words": use.material_words,
        "places": list(use.places),
        "date": shape.date(use.date),
        "concentration": use.concentration,
        "form": use.form,
        "cleared": use.cleared,
        "certain": use.certain,
    }


def uses_lines(answer: UsesAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines
    from conservedb.questions.wording import counted

    lines = Lines()
    lines.add("uses of", answer.name, f"{answer.kind} {answer.key}")
    lines.add("as of", saying.asked(answer.on))
    for label, layers in (("certain", answer.layers_certain), ("possible", answer.layers_possible)):
        lines.gap()
        lines.add(label, counted(len(layers), "layer"))
        _add_layers(lines, layers)
    for label, agents in (("certain", answer.agents_certain), ("possible", answer.agents_possible)):
        if agents:
            lines.gap()
            lines.add(f"{label} as an agent", counted(len(agents), "use"))
            _add_agents(lines, agents)
    lines.gap()
    unidentified = counted(answer.unidentified, "layer")
    if answer.unidentified_agents:
        unidentified += f" and {counted(answer.unidentified_agents, 'use')} as an agent"
    called = "whatever it was called"
    lines.add("not identified", f"{unidentified} of any material, which may be this one", called)
    if answer.recipes:
        lines.add("also a part of", ", ".join(answer.recipes), "not counted here")
    return lines


def _add_layers(lines: Lines, layers: Sequence[UsesLayer]) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import state_words
    from conservedb.store.keys import sort_key

    for row in sorted(layers, key=lambda row: (sort_key(row.object), sort_key(row.place))):
        lines.add(
            f"{row.object} {row.place or 'place not recorded'}",
            row.material or row.material_words or "material not recorded",
            row.role,
            state_words(row.state, row.possible),
            f"laid {saying.dated(row.laid)}",
            f"identified: {row.identified or 'not recorded'}",
            f"ref {row.layer}",
            depth=1,
        )


def _add_agents(lines: Lines, agents: Sequence[AgentUse]) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import clearing
    from conservedb.store.keys import sort_key

    for use in sorted(agents, key=lambda use: (sort_key(use.object), use.date.latest)):
        lines.add(
            f"{use.object} {', '.join(use.places)}".strip(),
            use.material or use.material_words or "material not recorded",
            use.concentration,
            use.form,
            saying.dated(use.date),
            f"intervention {use.intervention}",
            clearing(use.cleared),
            depth=1,
        )
