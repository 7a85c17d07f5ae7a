"""conservedb treatment NUMBER [REF]: the treatments of an object, or the life of one of them.

JSON of the list (no REF), in the shapes of `json_shapes`:
{"object", "title", "treatments": the latest begun first [{"ref", "title", "state": begun and
 ended in words, "status", "lead", "versions": numbers of the versions of its plan,
 "authorised": what was decided on the newest version, in words, "steps": number on record}]}

JSON of one treatment:
{"object", "object_title", "ref", "title", "purpose", "status", "state", "begun": DATE,
 "ended": DATE, "closed": true where an end is on record, "lead", "note", "result",
 "recommendations", "next_check": DATE, "check_passed": true or false,
 "plans": versions, the newest last [{"ref", "version", "date": DATE, "authors": PEOPLE, "aims",
   "justification", "alternatives", "risks", "source": SOURCE, "note", "decisions": [DECISION],
   "steps": [{"ref", "position", "kind", "sentence", "components", "places": marks, "note",
     "state" (no step on record, in part, done, done otherwise, done otherwise, no reason
     recorded), "progress": one sentence, "by": refs of steps, "to_begin": [FINDING] where it
     has no record, as if it were begun today}]}],
 "steps": in order of time [{"ref", "kind", "sentence", "date": DATE done, "time_of_day",
   "date_basis", "recorded": DATE written down, "recorded_by", "recorded_over": number or null,
   "people": PEOPLE, "aims", "standing" (planned, routine care, first aid, historic, ""),
   "planned": ref of the planned step or "", "beside": why it is beside the newest plan or "",
   "deviation", "unauthorised_reason", "unauthorised_by", "circumstances", "methods",
   "components", "places": marks, "source": SOURCE, "note", "needed": capacities,
   "authority": [FINDING], "start": FINDING of a start before authorisation, or null,
   "did": [{"kind" (layer, removal, agent, joint, reading, sample, spot test), "ref",
     "sentence", "detail": list}],
   "observations": [{"ref", "date": DATE, "where", "condition", "seen", "presumed", "extent",
     "people": PEOPLE, "source": SOURCE, "note"}], "rivals": RIVALS}],
 "decisions": those on steps only [DECISION], "to_ratify": sentences,
 "head": the end of the change log {"number", "hash"} or null,
 "asked": [{"of": the record, "asked": [{"field", "level" (must, should), "source": short names,
   "sentence"}]}], "guidelines": {short name: citation in full}, "rivals": RIVALS}

FINDING is {"outcome": one of `authority_outcomes.OUTCOMES`, "sentence", "capacity", "ref" of the
authorisation it rests on}. DECISION is {"ref", "decision" (authorised, refused, ratified, ""),
"capacity", "person", "version": number or null, "intervention", "date": DATE, "expires": DATE,
"scope", "steps": refs, "conditions", "evidence", "source": SOURCE, "note"}. No finding ever says
that a step is safe.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, shared_options

if TYPE_CHECKING:
    from conservedb.cli.printing import Lines
    from conservedb.questions.treatment_answers import (
        DecisionEntry,
        PlanEntry,
        PlannedEntry,
        StepEntry,
        TreatmentAnswer,
        TreatmentsAnswer,
    )


@click.command("treatment")
@click.argument("number")
@click.argument("ref", default="")
@shared_options
@click.pass_obj
def command(settings: Settings, number: str, ref: str) -> None:
    """The treatments of object NUMBER; with REF the plan, authorisation and steps of one.

    Example: conservedb treatment SQ.1902.7 T2026
    """
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.cli.treatment_json import treatment_json, treatments_json
    from conservedb.questions.treatment import treatment, treatments
    from conservedb.store.connect import raw_of
    from conservedb.store.log import head

    shown: dict[str, object] | Lines

    with asking(settings) as (connection, today):
        if ref.strip():
            one = treatment(connection, number, ref, today)
            end = head(raw_of(connection))
            if settings.json:
                shown = treatment_json(one) | {"head": end and end._asdict()}
            else:
                shown = treatment_lines(one)
                shown.gap()
                shown.add("end of the change log", str(end or "nothing sealed"))
        else:
            several = treatments(connection, number)
            shown = treatments_json(several) if settings.json else treatments_lines(several)
    if isinstance(shown, dict):
        print_json(shown)
    else:
        print_lines(shown)


def treatments_lines(answer: TreatmentsAnswer) -> Lines:
    """The treatments of an object, a line each."""
    from conservedb.cli.printing import Lines
    from conservedb.questions.wording import counted

    lines = Lines()
    lines.add("object", answer.object, answer.title)
    if not answer.rows:
        lines.add("treatments", "none on record")
    for row in answer.rows:
        steps = f"{counted(row.steps, 'step')} on record"
        who = f"led by {row.lead}" if row.lead else ""
        lines.add(row.ref, row.title, row.status, row.state, who, steps)
        lines.add("plan", row.authorised, depth=1)
    return lines


def treatment_lines(answer: TreatmentAnswer) -> Lines:
    """One treatment, to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines

    lines = Lines()
    lines.add("object", answer.object, answer.object_title)
    lines.add("treatment", answer.ref, answer.title, answer.status)
    lines.add("state", answer.state)
    lines.add("purpose", answer.purpose)
    lines.add("led by", answer.lead)
    lines.add("note", answer.note)
    for sentence in answer.to_ratify:
        lines.add("to be ratified", sentence)
    lines.add("result", answer.result or "not recorded")
    lines.add("recommendations", answer.recommendations)
    if answer.next_check.recorded:
        passed = "the day has passed" if answer.check_passed else ""
        lines.add("next check", saying.dated(answer.next_check), passed)
    else:
        lines.add("next check", "not recorded")
    saying.add_rivals(lines, answer.rivals)
    if not answer.plans:
        lines.gap()
        lines.add("plan", "none on record")
    for plan in answer.plans:
        _add_plan(lines, plan)
    for decision in answer.decisions:
        lines.gap()
        _add_decision(lines, decision, depth=0)
    if not answer.steps:
        lines.gap()
        lines.add("steps", "none on record")
    for step in answer.steps:
        _add_step(lines, step)
    _add_asked(lines, answer)
    return lines


def _add_plan(lines: Lines, plan: PlanEntry) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import cited, hands, listed

    lines.gap()
    who = hands(plan.authors, "authors not recorded")
    lines.add(f"plan version {plan.version}", plan.ref, saying.dated(plan.date), who)
    lines.add("aims", listed(plan.aims), depth=1)
    for label, value in (
        ("justification", plan.justification),
        ("alternatives", plan.alternatives),
        ("risks", plan.risks),
        ("source", cited(plan.source) if plan.source else ""),
        ("note", plan.note),
    ):
        lines.add(label, value, depth=1)
    if not plan.decisions:
        lines.add("decision", "none on record", depth=1)
    for decision in plan.decisions:
        _add_decision(lines, decision, depth=1)
    for step in plan.steps:
        _add_planned(lines, step)


def _add_decision(lines: Lines, one: DecisionEntry, depth: int) -> None:
    from conservedb.cli import saying
    from conservedb.questions.treatment_words import decision_words
    from conservedb.questions.wording import cited

    about = f"on {one.intervention}" if one.intervention else ""
    lines.add("decision", one.ref, decision_words(one), about, depth=depth)
    for label, value in (
        ("scope", one.scope if one.steps else ""),
        ("conditions", one.conditions),
        ("expires", saying.dated(one.expires) if one.expires.recorded else ""),
        ("evidence", one.evidence),
        ("source", cited(one.source) if one.source else ""),
        ("note", one.note),
    ):
        lines.add(label, value, depth=depth + 1)


def _add_planned(lines: Lines, step: PlannedEntry) -> None:
    lines.add(f"step {step.position}", step.ref, step.sentence, depth=1)
    lines.add("parts", ", ".join(step.components), depth=2)
    lines.add("locations", ", ".join(step.places), depth=2)
    lines.add("note", step.note, depth=2)
    lines.add("progress", step.progress, depth=2)
    for finding in step.to_begin:
        lines.add("if begun today", finding.sentence, depth=2)


def _add_step(lines: Lines, step: StepEntry) -> None:
    from conservedb.cli import saying
    from conservedb.questions.treatment_words import recorded_over
    from conservedb.questions.wording import cited, hands, listed

    lines.gap()
    when = (saying.dated(step.date), step.time_of_day)
    lines.add("step", step.ref, step.sentence, *when, hands(step.people))
    written = saying.dated(step.recorded) if step.recorded.recorded else "day not recorded"
    by = f"by {step.recorded_by}" if step.recorded_by else "by whom, not recorded"
    for label, value in (
        ("written down", f"{written}, {by}"),
        ("dated by", step.date_basis),
        ("recorded at once", recorded_over(step.recorded_over)),
        ("standing", step.standing or "not recorded"),
        ("carries out", step.planned),
        ("beside the plan", step.beside),
        ("deviation", step.deviation),
        ("aims", listed(step.aims)),
        ("circumstances", step.circumstances),
        ("methods", step.methods),
        ("parts", ", ".join(step.components)),
        ("locations", ", ".join(step.places)),
        ("source", cited(step.source)),
        ("note", step.note),
    ):
        lines.add(label, value, depth=1)
    for finding in step.findings:
        lines.add("authority", finding.sentence, depth=1)
    if step.start is not None:
        lines.add("start", step.start.sentence, depth=1)
    for line in step.lines:
        ref = "" if f"({line.ref})" in line.sentence else line.ref
        lines.add(line.kind, line.sentence, ref, depth=1)
        for detail in line.detail:
            lines.add("detail", detail, depth=2)
    _add_observations(lines, step)
    saying.add_rivals(lines, step.rivals, depth=1)


def _add_observations(lines: Lines, step: StepEntry) -> None:
    from conservedb.cli import saying
    from conservedb.questions.wording import hands

    if step.kind == "examine" and not step.observations:
        lines.add("observations", "none on record", depth=1)
    for one in step.observations:
        where = one.where or "the object as a whole"
        day = saying.dated(one.date) if one.date.recorded else ""
        lines.add("observed", one.ref, where, one.condition, day, hands(one.people, ""), depth=1)
        lines.add("seen", one.seen or "not recorded", depth=2)
        lines.add("presumed, not seen", one.presumed, depth=2)
        lines.add("extent", one.extent, depth=2)
        lines.add("note", one.note, depth=2)


def _add_asked(lines: Lines, answer: TreatmentAnswer) -> None:
    for group in answer.asked:
        lines.gap()
        lines.add("guidelines ask of", group.of)
        for one in group.asked:
            lines.add(one.level, one.sentence, depth=1)
    if answer.guidelines:
        lines.gap()
        lines.add("guidelines", "named here in short")
    for short, full in answer.guidelines:
        lines.add(short, full, depth=1)
