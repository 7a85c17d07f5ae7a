"""conservedb check [NUMBER] [PLACE] [--step AGENT] [--on DATE]: what the rules of the trade say.

JSON for one object, a place of it, or a planned step, in the shapes of `json_shapes`:
{"object", "title", "place": mark or "", "step": the planned step in words or "", "on": ON,
 "findings": those of most consequence first [FINDING],
 "accepted": [{"finding": FINDING, "by": {"ref", "person", "reason", "date": DATE,
   "review": DATE, "note"}}],
 "overdue": refs of acceptances whose day of review has passed; their findings stand again,
 "rules": keys of the rules that judged,
 "silent": [{"rule", "reason"}] for rules that did not judge,
 "notes": settings that could not be read, "cautions": list of sentences,
 "see": the command that says what a planned solvent does to the layers there, "" for others}

FINDING: {"rule", "title", "severity" (block, warn, inform), "judges" (safety, conduct),
 "outcome" (broken, cannot tell), "certain": true or false, "sentence", "missing": facts not
 recorded, "places": marks, "components": marks, "layers": refs, "load_kg": number or null,
 "says": what the recorded rule says, "basis", "source": of the rule, "sources": of the published
 facts that the sentence names in short}

JSON for the collection (no NUMBER):
{"on": ON, "objects": how many were looked at,
 "rows": [{"object", "title", "rule", "severity", "judges", "broken", "cannot_tell", "accepted",
   "foremost": FINDING}],
 "accepted": number, "rules", "silent", "notes", "cautions"}

No finding ever says that something is right.
"""

from __future__ import annotations

from math import isfinite
from typing import TYPE_CHECKING

import click

from conservedb.cli.settings import Settings, asking, on_option, shared_options

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from conservedb.cli.printing import Lines
    from conservedb.knowledge.rule_case import Finding
    from conservedb.questions.checks_answers import (
        AcceptedFinding,
        CheckAnswer,
        CollectionCheck,
        Judgement,
    )

FORMS = ("free", "swab", "gel", "poultice", "vapour", "bath")


def _finite(_: click.Context, __: click.Parameter, value: float | None) -> float | None:
    if value is not None and not isfinite(value):
        raise click.BadParameter(f"{value:g} is no number that can be meant; write one such as 60.")
    return value


@click.command("check")
@click.argument("number", required=False)
@click.argument("place", required=False)
@click.option("--step", metavar="AGENT", help="Judge a planned step at PLACE: key or name of it.")
@click.option("--form", type=click.Choice(FORMS), help="How the agent of the step is brought.")
@click.option(
    "--temperature", type=float, callback=_finite, metavar="C", help="How hot the step gets."
)
@click.option(
    "--dwell", type=float, callback=_finite, metavar="MINUTES", help="How long the step takes."
)
@on_option
@shared_options
@click.pass_obj
def command(
    settings: Settings,
    number: str | None,
    place: str | None,
    step: str | None,
    form: str | None,
    temperature: float | None,
    dwell: float | None,
    on: str | None,
) -> None:
    """What the rules of the trade find of an object, of a planned step, or of the collection.

    A finding says that a rule is broken, or that this cannot be told because a fact is not
    recorded. It never says that something is right.

    Example: conservedb check SQ.1902.7 S02 --step steam
    """
    from conservedb.questions.asof import as_of
    from conservedb.questions.checks import check, check_all, check_step
    from conservedb.questions.checks_answers import PlannedStep

    if step is None and (form or temperature is not None or dwell is not None):
        raise click.UsageError("--form, --temperature and --dwell belong to --step AGENT.")
    if step is not None and (number is None or place is None):
        raise click.UsageError("--step needs the object and the place where it is planned.")
    planned = None if step is None else PlannedStep(step, form or "", temperature, dwell)
    with asking(settings) as (connection, today):
        day = as_of(on, today)
        if number is None:
            _print(settings, check_all(connection, day))
        elif planned is not None and place is not None:
            _print(settings, check_step(connection, number, place, planned, day))
        else:
            _print(settings, check(connection, number, day, place or ""))


def _print(settings: Settings, answer: CheckAnswer | CollectionCheck) -> None:
    from conservedb.cli.printing import print_json, print_lines
    from conservedb.questions.checks_answers import CheckAnswer

    if settings.json:
        from conservedb.cli.check_json import answer_json

        print_json(answer_json(answer))
    elif isinstance(answer, CheckAnswer):
        print_lines(check_lines(answer))
    else:
        print_lines(collection_lines(answer))


def check_lines(answer: CheckAnswer) -> Lines:
    """The answer for one object as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines
    from conservedb.questions.checks_answers import MOST
    from conservedb.questions.wording import counted

    lines = Lines()
    lines.add("checked", answer.object, answer.title)
    lines.add("location", answer.place)
    lines.add("planned step", answer.step)
    lines.add("as of", saying.asked(answer.on))
    lines.add("findings", counted(len(answer.findings), "finding"))
    for heading, some in (
        ("of most consequence", answer.foremost),
        ("further", answer.findings[MOST:]),
    ):
        if some:
            lines.gap()
            lines.add(heading, counted(len(some), "finding"))
            _add_findings(lines, some)
    _add_accepted(lines, answer.accepted)
    for late in answer.overdue:
        lines.add("review overdue", late.ref, late.rule, f"since {late.review.said}", late.person)
    lines.gap()
    for source in _sources(answer.findings):
        lines.add("source", source)
    _add_end(lines, answer.silent, answer.notes)
    lines.add("what a solvent does to the layers here", see(answer))
    return lines


def see(answer: CheckAnswer) -> str:
    """The command to ask next about a planned solvent, "" about anything else."""
    if not answer.solvent:
        return ""
    from shlex import join

    return join(("conservedb", "reverse", answer.object, answer.place))


def _sources(findings: Iterable[Judgement]) -> list[str]:
    """What the short references of rules and facts stand for, each once."""
    found = [source for one in findings for source in (one.rule.source, *one.finding.sources)]
    return sorted({source for source in found if ": " in source})


def _add_findings(lines: Lines, findings: Iterable[Judgement]) -> None:
    said: set[str] = set()
    for one in findings:
        rule, finding = one.rule, one.finding
        unsure = "" if finding.certain or finding.missing else "possibly"
        lines.add(f"{rule.severity}, {rule.title}", finding.outcome, unsure, depth=1)
        lines.add("found", finding.sentence, depth=2)
        lines.add("cannot tell", _not_recorded(finding), depth=2)
        if rule.key not in said:
            whence = rule.source.partition(": ")[0] or rule.basis
            lines.add("recorded rule says", rule.sentence, whence, depth=2)
        said.add(rule.key)


def _not_recorded(finding: Finding) -> str:
    facts = "; ".join(finding.missing)
    return f"{facts}: not recorded" if facts else ""


def _add_accepted(lines: Lines, accepted: Sequence[AcceptedFinding]) -> None:
    if accepted:
        lines.gap()
    for one in accepted:
        rule, by = one.judgement.rule, one.by
        lines.add("accepted", rule.title, one.judgement.finding.sentence)
        review = f"review by {by.review.said}" if by.review.recorded else "no review set"
        lines.add("by", by.person, by.date.said, review, f"ref {by.ref}", depth=1)
        lines.add("because", by.reason, depth=1)


def _add_end(lines: Lines, silent: Sequence[tuple[str, str]], notes: Sequence[str]) -> None:
    from conservedb.questions.checks_answers import CAUTIONS

    lines.gap()
    for key, reason in silent:
        lines.add("did not judge", key, reason)
    for note in notes:
        lines.add("note", note)
    for caution in CAUTIONS:
        lines.add("caution", caution)


def collection_lines(answer: CollectionCheck) -> Lines:
    """The answer for the whole collection as lines to be read aloud."""
    from conservedb.cli import saying
    from conservedb.cli.printing import Lines
    from conservedb.questions.wording import counted

    lines = Lines()
    lines.add("checked", counted(answer.objects, "object"))
    lines.add("as of", saying.asked(answer.on))
    lines.gap()
    for row in answer.rows:
        lines.add(
            f"{row.object}, {row.rule.title}",
            row.rule.severity,
            f"{row.broken} broken" if row.broken else "",
            f"{row.cannot_tell} cannot tell" if row.cannot_tell else "",
            f"{row.accepted} accepted" if row.accepted else "",
        )
        lines.add("foremost", row.foremost.sentence, depth=1)
        lines.add("cannot tell", _not_recorded(row.foremost), depth=1)
    lines.gap()
    lines.add("accepted", counted(answer.accepted, "finding"))
    _add_end(lines, answer.silent, answer.notes)
    return lines
