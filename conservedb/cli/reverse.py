"""conservedb reverse NUMBER PLACE [LAYER]: how a layer may come off, and what that does nearby.

JSON, in the shapes of `json_shapes`:
{"object", "title", "place", "on": ON, "band": worst hazard band shown ("A" to "D"),
 "target": {"layer": ref, "name", "material", "alternatives": names, "role", "identified",
   "state"},
 "verdict": one of the words of `knowledge.plan.VERDICTS`, "verdict_reason",
 "opens": what holds of the whole joint ("" where it is none),
 "carries", "support", "study_only": true or false,
 "holds": [{"what", "layers": refs, "verdict", "reason"}],
 "via": {"layer", "name", "sides": list, "conditions": list} or null,
 "options": best first [{"kind" (solvent, vapour, water, heat, mechanical, wait), "title",
   "group", "agent": [{"solvent": key, "share": per cent by volume}], "form", "window",
   "target": READING, "neighbours": [{"layer", "place", "name", "path", "distance_mm", and the
   fields of READING}], "ranked_by": list, "cautions": list, "hazards": [{"agent", "code",
   "wording", "source", "checked"}], "figures": list, "band"}],
 "hidden": options beyond the band, "more": predictions left out,
 "refused": [{"title", "reason"}], "sequence": [{"title", "suggests", "withheld"}],
 "first_test", "cautions": list, "limits": list}

READING is "effect" (dissolves, mobilises, swells, softens, undecided, no effect expected,
no effect when tested, tested but for less, attacked, cannot tell), "evidence", "source",
"red": [low, high] or null, "reason", "losing": evidence that says otherwise.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from conservedb.cli.json_shapes import Json
    from conservedb.cli.printing import Lines
    from conservedb.knowledge.plan import Option, Plan, Reading
    from conservedb.questions.removal_answers import RemovalAnswer

SHOWN = 3
"""Options printed in full under each heading; the others have a line each."""
QUIET = ("no effect expected", "no effect when tested")
"""Effects on neighbours that are told together."""


@click.command("reverse")
@click.argument("number")
@click.argument("place")
@click.argument("layer", default="")
@click.option(
    "--band",
    type=click.Choice(("A", "B", "C", "D"), case_sensitive=False),
    default=None,
    help="The worst hazard band to show; else what the department has settled (C).",
)
@on_option
@shared_options
@click.pass_obj
def command(
    settings: Settings, number: str, place: str, layer: str, band: str | None, on: str | None
) -> None:
    """How LAYER at PLACE of object NUMBER may come off, and what that does to its neighbours.

    It says what is recorded and what to test first; it is no leave to go ahead.

    Example: conservedb reverse SQ.1902.7 J14 L14e
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.asof import as_of
    from conservedb.questions.removal import removal

    with asking(settings) as (connection, today):
        answer = removal(connection, number, place, layer, as_of(on, today), (band or "").upper())
    if settings.json:
        print_json(reverse_json(answer))
    else:
        print_lines(reverse_lines(answer))


def reverse_json(answer: RemovalAnswer) -> Json:
    """The answer as JSON."""
    from dataclasses import asdict

    from conservedb.cli import json_shapes as shape

    plan = answer.plan
    return {
        "object": answer.object,
        "title": answer.title,
        "place": answer.place,
        "on": shape.asked(answer.on),
        "band": answer.widest_band,
        "target": {
            "layer": plan.target.layer,
            "name": plan.target.name,
            "material": plan.target.material,
            "alternatives": list(plan.target.alternatives),
            "role": plan.target.role,
            "identified": plan.target.identified,
            "state": plan.target.state,
        },
        "verdict": plan.verdict,
        "verdict_reason": plan.verdict_reason,
        "opens": plan.opens,
        "carries": plan.carries,
        "support": plan.support,
        "study_only": plan.study_only,
        "holds": [asdict(one) for one in plan.holds],
        "via": asdict(plan.via) if plan.via else None,
        "options": [_option(one) for one in plan.options],
        "hidden": plan.hidden,
        "more": plan.more,
        "refused": [asdict(one) for one in plan.refused],
        "sequence": [asdict(one) for one in plan.sequence],
        "first_test": plan.first_test,
        "cautions": list(plan.cautions),
        "limits": list(plan.limits),
    }


def _option(one: Option) -> Json:
    from dataclasses import asdict

    return {
        "kind": one.kind,
        "title": one.title,
        "group": one.group,
        "agent": [{"solvent": part.solvent, "share": part.share} for part in one.agent],
        "form": one.form,
        "window": one.window,
        "target": _reading(one.target),
        "neighbours": [
            {
                "layer": near.layer,
                "place": near.place,
                "name": near.name,
                "path": near.path,
                "distance_mm": near.distance_mm,
                **_reading(near.reading),
            }
            for near in one.neighbours
        ],
        "ranked_by": list(one.ranked_by),
        "cautions": list(one.cautions),
        "hazards": [asdict(hazard) for hazard in one.hazards],
        "figures": list(one.figures),
        "band": one.band,
    }


def _reading(one: Reading) -> Json:
    return {
        "effect": one.effect,
        "evidence": one.evidence,
        "source": one.source,
        "red": [round(value, 3) for value in one.red] if one.red else None,
        "reason": one.reason,
        "losing": list(one.losing),
    }


def reverse_lines(answer: RemovalAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli.printing import Lines

    plan, lines = answer.plan, Lines()
    lines.add("object", answer.object, answer.title)
    lines.add("location", answer.place, answer.place_name)
    lines.add("as of", answer.on.words)
    lines.add("carries", plan.carries)
    lines.add("support", plan.support)
    if plan.study_only:
        lines.add(
            "plan", "study only: support the parts, and record it, before anything is loosened"
        )
    _add_target(lines, plan)
    for caution in plan.cautions:
        lines.add("note", caution)
    _add_options(lines, plan, answer.widest_band)
    for one in plan.refused:
        lines.add("refused", one.title, one.reason)
    for number, step in enumerate(plan.sequence, 1):
        lines.add(f"step {number}", step.title)
        lines.add("may suggest", step.suggests, depth=1)
        lines.add("withheld", step.withheld, depth=1)
    lines.gap()
    lines.add("first test", plan.first_test)
    for source in _sources(plan):
        lines.add("source", source)
    for limit in plan.limits:
        lines.add("limit of the method", limit)
    lines.add("this plan", "says what is recorded and what to test; it is no leave to go ahead")
    return lines


def _sources(plan: Plan) -> list[str]:
    """The sources of what is printed, each once; reasons give their short references."""
    readings = [one.target for one in plan.options]
    readings += [near.reading for one in plan.options for near in one.neighbours]
    found = [source for one in readings for source in one.source.split("; ") if ": " in source]
    return sorted(dict.fromkeys(found))


def _add_target(lines: Lines, plan: Plan) -> None:
    one = plan.target
    lines.gap()
    lines.add("layer", f"{one.layer} {one.name}", one.role, one.state)
    lines.add("identity", one.identified or "not recorded how it is known", depth=1)
    lines.add("may also be", *one.alternatives, depth=1)
    lines.add("verdict", plan.verdict, plan.verdict_reason)
    lines.add("joint", plan.opens)
    for hold in plan.holds:
        lines.add("holds", hold.what, hold.verdict, hold.reason, depth=1)
    if plan.via is not None:
        lines.add("released through", f"{plan.via.layer} {plan.via.name}")
        for condition in plan.via.conditions:
            lines.add("condition", condition, depth=1)


def _add_options(lines: Lines, plan: Plan, band: str) -> None:
    listed = [one for one in plan.options if one.agent]
    common = list(listed[0].cautions) if listed else []
    common = [words for words in common if all(words in one.cautions for one in listed)]
    if common:
        lines.gap()
        for caution in common:
            lines.add("for every liquid below", caution)
    group, shown = "", 0
    for option in plan.options:
        if option.group != group:
            group, shown = option.group, 0
            lines.gap()
            lines.add("options", group)
        shown += 1
        if shown <= SHOWN:
            _add_option(lines, option, common)
        else:
            _add_briefly(lines, option, common)
    lines.gap()
    if plan.hidden:
        lines.add("hidden", f"{plan.hidden} options beyond hazard band {band}; see --band")
    if plan.more:
        lines.add("left out", f"{plan.more} predictions that rank below those listed")


def _add_briefly(lines: Lines, option: Option, common: list[str]) -> None:
    """An option in two lines, its cautions beside it; the first of its heading are told in full."""
    evidence = f"{option.target.effect} ({option.target.evidence})"
    band = f"band {option.band}" if option.band else ""
    lines.add("also", option.title, option.form, evidence, band, *option.ranked_by[:1], depth=1)
    own = [words for words in option.cautions if words not in common]
    codes = " ".join(dict.fromkeys(one.code for one in option.hazards))
    lines.add("cautions", "; ".join([*([codes] if codes else []), *own]), depth=2)


def _add_option(lines: Lines, option: Option, common: list[str]) -> None:
    band = f"hazard band {option.band}" if option.band else ""
    lines.add("option", option.title, option.form, option.window, band, depth=1)
    lines.add("on the layer", *_said(option.target), depth=2)
    for line in option.target.losing:
        lines.add("but", line, depth=3)
    _add_neighbours(lines, option)
    lines.add("ranked by", "; ".join(option.ranked_by), depth=2)
    for caution in option.cautions:
        if caution not in common:
            lines.add("caution", caution, depth=2)
    if option.hazards:
        checked = {hazard.checked for hazard in option.hazards} - {""}
        said = f"checked {', '.join(sorted(checked))}" if checked else "transcription, not checked"
        codes = [f"{one.code} {one.wording}" for one in option.hazards]
        lines.add("hazards", f"{'; '.join(codes)} ({said})", depth=2)
    lines.add("figures", "; ".join(option.figures), depth=2)


def _add_neighbours(lines: Lines, option: Option) -> None:
    """Those that are acted on, or of which nothing is known, one by one; the others together."""
    quiet: dict[tuple[str, str, str], list[str]] = {}
    for near in option.neighbours:
        far = f"{near.distance_mm:g} mm away" if near.distance_mm is not None else ""
        elsewhere = near.path != "same place"
        where = [near.place, far, f"path {near.path}"] if elsewhere else []
        name = " ".join(word for word in (near.layer, near.name) if word)
        if near.reading.effect in QUIET:
            key = near.reading.effect, near.reading.evidence, near.reading.reason
            told = ", ".join(word for word in where[:2] if word)
            quiet.setdefault(key, []).append(f"{name} ({told})" if told else name)
        else:
            lines.add(f"on {name}", *where, *_said(near.reading), depth=2)
    for (effect, evidence, reason), names in quiet.items():
        lines.add(effect, f"on {'; '.join(names)}", evidence, reason, depth=2)


def _said(reading: Reading) -> tuple[str, ...]:
    said = reading.reason.removeprefix(f"{reading.effect}: ")
    return reading.effect, reading.evidence, said
