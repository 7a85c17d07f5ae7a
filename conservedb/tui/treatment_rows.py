"""A treatment as entries of a list: what frames it, examinations, plans, steps, what is asked."""

from __future__ import annotations

from collections.abc import Iterable

from conservedb.knowledge.authority import Finding
from conservedb.knowledge.authority_outcomes import (
    CANNOT_TELL,
    HISTORIC,
    IN_FORCE,
    NONE_NEEDED,
    NOT_RECORDED,
    RATIFIED,
    STANDING,
)
from conservedb.knowledge.work_done import DONE, IN_PART, NO_STEP, OTHERWISE, UNEXPLAINED
from conservedb.questions.treatment_answers import (
    Observation,
    PlanEntry,
    PlannedEntry,
    StepEntry,
    TreatmentAnswer,
)
from conservedb.questions.treatment_words import decision_words, recorded_over
from conservedb.questions.wording import hands
from conservedb.tui import treatment_facts as facts
from conservedb.tui.plan_facts import Blocks
from conservedb.tui.plan_rows import Rows
from conservedb.tui.text import QUIET, STRONG, UNSURE, WARNING
from conservedb.tui.value_lines import value_lines

SIGNS = {NO_STEP: "○", IN_PART: "◐", DONE: "●", OTHERWISE: "◆", UNEXPLAINED: "◇"}
_SETTLED = (IN_FORCE, RATIFIED, STANDING, HISTORIC, NONE_NEEDED)
_UNKNOWN = (CANNOT_TELL, NOT_RECORDED)

Below = tuple[str, str]
"""Words below an entry, and their style; blank words leave no line."""


def treatment_rows(answer: TreatmentAnswer, width: int) -> Rows:
    """The treatment, composed for `width` cells: what is unfinished comes before what is done."""
    rows = Rows(width)
    _frame(rows, answer)
    for one in answer.examinations:
        rows.heading("Examination", one.ref)
        _step(rows, one)
        for seen in one.observations:
            _observation(rows, seen)
    for at, plan in enumerate(reversed(answer.plans)):
        _plan(rows, plan, newest=at == 0)
    _steps(rows, answer)
    _asked(rows, answer)
    return rows


def _entry(
    rows: Rows,
    key: str,
    label: str,
    value: str,
    below: Iterable[Below],
    full: tuple[str, Blocks],
    style: str = "",
) -> None:
    """A labelled entry with further lines below its value."""
    lines = value_lines(label, value, None, rows.width, style=style)
    for words, tone in below:
        if words:
            lines += value_lines("", words, None, rows.width, style=tone)
    while key in rows.full:
        key += "+"
    rows.add(key, lines, *full)


def _frame(rows: Rows, answer: TreatmentAnswer) -> None:
    full = ("About the treatment", facts.frame_facts(answer))
    for label, value, style in (
        *(("to be ratified", sentence, WARNING) for sentence in answer.to_ratify),
        ("purpose", answer.purpose or "not recorded", ""),
        ("note", answer.note, ""),
        ("result", answer.result or "not recorded", ""),
        ("recommended", answer.recommendations, ""),
        ("next check", _check(answer), WARNING if answer.check_passed else ""),
    ):
        if value:
            _entry(rows, f"frame:{label}", label, value, (), full, style)


def _check(answer: TreatmentAnswer) -> str:
    if not answer.next_check.recorded:
        return "not recorded"
    return f"{answer.next_check.said}{', which has passed' if answer.check_passed else ''}"


def _observation(rows: Rows, one: Observation) -> None:
    place = one.where or "the object as a whole"
    said = f"{place}: {one.condition}" if one.condition else place
    below = (
        (one.seen or "what was seen is not recorded", ""),
        (f"presumed, not seen: {one.presumed}" if one.presumed else "", UNSURE),
        (one.extent, QUIET),
    )
    full = (f"Observation {one.ref}", (tuple(facts.observation_facts(one)),))
    _entry(rows, f"seen:{one.ref}", one.ref, said, below, full, STRONG)


# -- plans ----------------------------------------------------------------------------------


def _plan(rows: Rows, plan: PlanEntry, *, newest: bool) -> None:
    age = "the newest" if newest else "earlier"
    rows.heading(f"Plan, version {plan.version}", f"{age}; {plan.ref}, {plan.date.said}")
    full = (f"Plan {plan.ref}", facts.plan_blocks(plan))
    authors = hands(plan.authors, "authors not recorded")
    below = ((plan.justification or "justification not recorded", QUIET),)
    _entry(rows, f"plan:{plan.ref}", "written by", authors, below, full)
    if not plan.decisions:
        _entry(rows, f"undecided:{plan.ref}", "decision", "none on record", (), full, UNSURE)
    for one in plan.decisions:
        style = WARNING if one.decision == "refused" else STRONG
        expires = f"expires {one.expires.said}" if one.expires.recorded else ""
        conditions = f"on conditions: {one.conditions}" if one.conditions else ""
        more = ((conditions, UNSURE), (expires, QUIET))
        decided = (f"Decision {one.ref}", (tuple(facts.decision_facts(one)),))
        _entry(rows, f"decision:{one.ref}", one.ref, decision_words(one), more, decided, style)
    for step in plan.steps:
        _planned(rows, step)


def _planned(rows: Rows, step: PlannedEntry) -> None:
    where = ", ".join((*step.components, *step.places))
    progress = f"{SIGNS.get(step.state, '?')} {step.progress}"
    doubt = step.state in (IN_PART, UNEXPLAINED)
    below = (
        (where, QUIET),
        (progress, UNSURE if doubt else ""),
        *((f"if begun today: {one.sentence}", _tone(one)) for one in step.to_begin),
    )
    full = (f"Planned step {step.ref}", (facts.planned_facts(step),))
    label = f"{step.position} {step.ref}"
    _entry(rows, f"planned:{step.ref}", label, step.sentence, below, full, STRONG)


# -- steps ----------------------------------------------------------------------------------


def _steps(rows: Rows, answer: TreatmentAnswer) -> None:
    steps = [one for one in answer.steps if one not in answer.examinations]
    remark = f"{len(steps)}, in order of time" if steps else "none beside examinations"
    rows.heading("Steps on record", remark)
    for one in steps:
        _step(rows, one)
    for one_decision in answer.decisions:
        full = (f"Decision {one_decision.ref}", (tuple(facts.decision_facts(one_decision)),))
        said = f"{one_decision.intervention}: {decision_words(one_decision)}"
        _entry(rows, f"decision:{one_decision.ref}", one_decision.ref, said, (), full)


def _step(rows: Rows, step: StepEntry) -> None:
    """A step: done on and written on, by whom, by what leave, and what it did."""
    written = "when it was written down is not recorded"
    if step.recorded.recorded:
        written = f"written down {step.recorded.said}"
    done = ", ".join(word for word in (step.date.said, step.time_of_day) if word)
    below = (
        (f"{done}; {hands(step.people)}", QUIET),
        (written, QUIET),
        (recorded_over(step.recorded_over), QUIET),
        (step.circumstances, QUIET),
        (step.methods, QUIET),
        (f"done otherwise: {step.deviation}" if step.deviation else "", UNSURE),
        (step.beside, UNSURE),
        *((one.sentence, _tone(one)) for one in step.findings),
        (step.start.sentence if step.start is not None else "", WARNING),
        *((f"{line.kind}: {line.sentence}", "") for line in step.lines),
    )
    full = (f"Step {step.ref}", facts.step_facts(step))
    _entry(rows, f"step:{step.ref}", step.ref, step.sentence, below, full, STRONG)


def _tone(finding: Finding) -> str:
    """What is missing warns, what cannot be told is set off, what is on record is calm."""
    if finding.outcome in _SETTLED:
        return ""
    return UNSURE if finding.outcome in _UNKNOWN else WARNING


# -- guidelines -----------------------------------------------------------------------------


def _asked(rows: Rows, answer: TreatmentAnswer) -> None:
    for group in answer.asked:
        rows.heading("Guidelines still ask of", group.of)
        for one in group.asked:
            named = facts.guideline_facts(answer, one.source.split("; "))
            full = ("What guidelines ask", ((("", one.sentence),), named))
            _entry(rows, f"asked:{group.of}:{one.field}", one.level, one.sentence, (), full)
