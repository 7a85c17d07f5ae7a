"""conservedb material WORD [--on DATE]: what is on record about a material, and where it lies.

JSON, in the shapes of `json_shapes`:
{"word", "meant": {"kind" (material, material class), "key", "name"}, "on": ON, "note",
 "aliases": list, "trade_names": list, "classes": [NAMED] nearest first,
 "behaves_as": NAMED or null, "subclasses": [NAMED], "members": [NAMED],
 "parts": [{"key", "name", "amount": number or null, "unit", "note"}], "recipes": [NAMED],
 "properties": [{"property", "differ" ("" or how sources contradict each other), "values": [{
   "low", "high": numbers or null, "unit", "words", "condition", "of", TOLD}]}],
 "hansen": [{"d", "p", "h", "r0": number or null, "use", "quality", "condition",
   "preferred": true or false, "converted": [d, p, h] as Teas fractions, "of", TOLD}],
 "teas": published fractions [{"d", "p", "h", "of", TOLD}],
 "solubilities": [{"agent", "state", "effect", "form", "temperature_c", "dwell_min",
   "condition", "of", TOLD}],
 "traits": [{"trait", "holds" (yes, no, unknown), "effect", "bearer": NAMED, "inherited",
   "counts": false where a nearer bearer says otherwise, TOLD}],
 "periods": [{"mark", "date": DATE, "of", TOLD}],
 "banner": what the hazards are not,
 "hazards": [{"code", "wording", "band", "checked": DATE, TOLD}],
 "limits": [{"kind", "ppm", "mg_m3", "skin", "jurisdiction", "as_of": DATE,
   "vapour_hazard_ratio": number or null, TOLD}],
 "restrictions": [{"jurisdiction", "text", "since": DATE, TOLD}],
 "where": {"now_certain", "now_possible", "gone_certain", "gone_possible": numbers of layers,
   "decades": [{"first": year, "certain", "possible"}], "undated": layers whose date names no
   decade, "places": number, "layers": the first of them [{"object", "place", "layer": ref,
   "material": key or null, "role", "state", "possible": list, "certain", "laid": DATE}],
   "uses_certain", "uses_possible": numbers, "uses": the first of them [{"object",
   "intervention": ref, "places": marks, "date": DATE, "certain"}],
   "unidentified": layers in the whole database that have no material on record}}

NAMED is {"key", "name"}. TOLD stands for the fields "basis" (measured, published, common
practice, from memory, ""), "standing": the same in words, "source": SOURCE, "confirmed_by",
"confirmed": DATE, "note". "of" names the material whose value is read, "" for its own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from conservedb.cli.printing import Lines
    from conservedb.questions.material_answers import MaterialAnswer, Told, Whereabouts


@click.command("material")
@click.argument("word", metavar="MATERIAL-OR-CLASS")
@on_option
@shared_options
@click.pass_obj
def command(settings: Settings, word: str, on: str | None) -> None:
    """What is on record about a material or a class, each value with how it is known.

    The word is a key, a name or an alias. Values of several sources stand side by side.

    Example: conservedb material acetone
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.asof import as_of
    from conservedb.questions.material import material_answer

    with asking(settings) as (connection, today):
        answer = material_answer(connection, word, as_of(on, today))
    if settings.json:
        from conservedb.cli.material_json import material_json

        print_json(material_json(answer))
    else:
        print_lines(material_lines(answer))


def material_lines(answer: MaterialAnswer) -> Lines:
    """The answer as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines

    lines = Lines()
    lines.add(answer.kind, answer.name, f"key {answer.key}")
    lines.add("class", ", in ".join(one.said for one in answer.classes))
    lines.add("also called", "; ".join(answer.aliases))
    lines.add("sold as", "; ".join(answer.trade_names))
    if answer.behaves_as:
        lines.add("behaves as", f"{answer.behaves_as.said}, whose values are read for it")
    for part in answer.parts:
        amount = f"{part.amount:g} {part.unit}" if part.amount is not None else part.unit
        lines.add("contains", part.name, amount, part.note)
    lines.add("is a part of", "; ".join(one.said for one in answer.recipes))
    lines.add("classes in it", "; ".join(one.said for one in answer.subclasses))
    lines.add("materials in it", "; ".join(one.said for one in answer.members))
    lines.add("note", answer.note)
    _add_values(lines, answer)
    _add_hazards(lines, answer)
    lines.gap()
    lines.add("as of", saying.asked(answer.on))
    _add_where(lines, answer.where)
    return lines


def _known(told: Told, of: str = "") -> tuple[str, ...]:
    """How a value is known, in the order in which it is read aloud."""
    from conservedb.cli import saying

    source = saying.sourced(told.source) if told.source else ""
    return (f"of {of}" if of else "", told.standing, source, told.note)


def _add_values(lines: Lines, answer: MaterialAnswer) -> None:
    lines.gap()
    for group in answer.properties:
        if group.differ:
            lines.add(group.differ, group.name)
        for value in group.values:
            lines.add(group.name, value.said, value.condition, *_known(value.told, value.of))
    for one in answer.hansen:
        figures = " / ".join(f"{part:g}" for part in one.at)
        radius = f"radius {one.r0:g}" if one.r0 is not None else ""
        first = "preferred" if one.preferred else ""
        how = (radius, first, one.use, one.quality, one.condition)
        lines.add("Hansen d/p/h", figures, *how, *_known(one.told, one.of))
        converted = " / ".join(f"{part:.1f}" for part in one.converted)
        lines.add("as Teas fractions", f"{converted}, converted, not published", depth=1)
    for fractions in answer.teas:
        figures = " / ".join(f"{part:g}" for part in fractions.at)
        lines.add("Teas, published", figures, *_known(fractions.told, fractions.of))
    for fact in answer.solubilities:
        state = f"{fact.state} material" if fact.state != "not stated" else "age not stated"
        said = (fact.effect, state, fact.use, fact.condition)
        lines.add(f"in {fact.agent}", *said, *_known(fact.told, fact.of))
    for trait in answer.traits:
        bearer = f"{'rule of the class' if trait.inherited else 'of'} {trait.bearer.name}"
        aside = "" if trait.counts else "set aside: a nearer rule counts"
        lines.add(f"{trait.trait}", trait.holds, trait.effect, bearer, aside, *_known(trait.told))
    for period in answer.periods:
        lines.add(period.mark, period.date.said, *_known(period.told, period.of))


def _add_hazards(lines: Lines, answer: MaterialAnswer) -> None:
    from conservedb.questions.material_answers import BANNER

    if not (answer.hazards or answer.limits or answer.restrictions):
        return
    lines.gap()
    lines.add("hazards", BANNER)
    for one in answer.hazards:
        band = f"band {one.band}" if one.band else ""
        checked = f"checked {one.checked.said}" if one.checked.recorded else "not checked"
        lines.add(f"hazard {one.code}", one.wording, band, checked, *_known(one.told))
    for limit in answer.limits:
        dated = limit.as_of.said if limit.as_of.recorded else "date of the table not recorded"
        times = f"{limit.ratio:.0f} times" if limit.ratio is not None else ""
        lines.add("exposure limit", limit.said, limit.jurisdiction, dated, *_known(limit.told))
        lines.add("saturated air exceeds it", times, depth=1)
    for law in answer.restrictions:
        since = f"since {law.since.said}" if law.since.recorded else ""
        lines.add("restricted in", law.jurisdiction, law.text, since, *_known(law.told))


def _add_where(lines: Lines, where: Whereabouts) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import counted, state_words

    lines.add("lies now", counted(where.now_certain, "layer"), f"{where.now_possible} possible")
    lines.add("gone", counted(where.gone_certain, "layer"), f"{where.gone_possible} possible")
    for decade in where.decades:
        said = f"{decade.certain} certain", f"{decade.possible} possible"
        lines.add(f"laid in the {decade.first}s", *said)
    if where.undated:
        lines.add("laid in no one decade", counted(where.undated, "layer"))
    if where.places > len(where.layers):
        lines.add("places", f"the first {len(where.layers)} of {where.places}")
    for row in where.layers:
        lines.add(
            f"{row.object} {row.place or 'place not recorded'}",
            row.role,
            "" if row.certain else "possible",
            state_words(row.state, row.possible),
            f"laid {saying.dated(row.laid)}",
            f"ref {row.layer}",
            depth=1,
        )
    total = where.uses_certain + where.uses_possible
    if total:
        lines.add("used as an agent", counted(total, "time"), f"{where.uses_possible} possible")
    for use in where.uses:
        lines.add(
            f"{use.object} {', '.join(use.places)}".strip(),
            saying.dated(use.date),
            f"intervention {use.intervention}",
            "" if use.certain else "possible",
            depth=1,
        )
    unknown = counted(where.unidentified, "layer")
    lines.add("not identified", f"{unknown} of any material, which may be this one")
