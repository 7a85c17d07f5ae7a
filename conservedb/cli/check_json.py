"""Findings of the rules of the trade as JSON; the shapes are described in `check`."""

from __future__ import annotations

from conservedb.cli import json_shapes as shape
from conservedb.cli.check import see
from conservedb.cli.json_shapes import Json
from conservedb.knowledge.rule_case import Finding
from conservedb.knowledge.rules import Rule
from conservedb.questions.checks_answers import (
    CAUTIONS,
    AcceptedFinding,
    CheckAnswer,
    CollectionCheck,
)


def answer_json(answer: CheckAnswer | CollectionCheck) -> Json:
    """The answer for one object, or for the whole collection, as JSON."""
    return check_json(answer) if isinstance(answer, CheckAnswer) else collection_json(answer)


def check_json(answer: CheckAnswer) -> Json:
    """The answer for one object as JSON."""
    return {
        "object": answer.object,
        "title": answer.title,
        "place": answer.place,
        "step": answer.step,
        "on": shape.asked(answer.on),
        "findings": [_finding(one.rule, one.finding) for one in answer.findings],
        "accepted": [_accepted(one) for one in answer.accepted],
        "overdue": [one.ref for one in answer.overdue],
        "rules": list(answer.ran),
        "silent": [{"rule": key, "reason": reason} for key, reason in answer.silent],
        "notes": list(answer.notes),
        "cautions": list(CAUTIONS),
        "see": see(answer),
    }


def _finding(rule: Rule, finding: Finding) -> Json:
    return {
        "rule": rule.key,
        "title": rule.title,
        "severity": rule.severity,
        "judges": rule.judges,
        "outcome": finding.outcome,
        "certain": finding.certain,
        "sentence": finding.sentence,
        "missing": list(finding.missing),
        "places": list(finding.places),
        "components": list(finding.components),
        "layers": list(finding.layers),
        "load_kg": finding.load_kg,
        "says": rule.sentence,
        "basis": rule.basis,
        "source": rule.source,
        "sources": [one for one in finding.sources if one],
    }


def _accepted(one: AcceptedFinding) -> Json:
    return {
        "finding": _finding(one.judgement.rule, one.judgement.finding),
        "by": {
            "ref": one.by.ref,
            "person": one.by.person,
            "reason": one.by.reason,
            "date": shape.date(one.by.date),
            "review": shape.date(one.by.review),
            "note": one.by.note,
        },
    }


def collection_json(answer: CollectionCheck) -> Json:
    """The answer for the whole collection as JSON."""
    return {
        "on": shape.asked(answer.on),
        "objects": answer.objects,
        "rows": [
            {
                "object": row.object,
                "title": row.title,
                "rule": row.rule.key,
                "severity": row.rule.severity,
                "judges": row.rule.judges,
                "broken": row.broken,
                "cannot_tell": row.cannot_tell,
                "accepted": row.accepted,
                "foremost": _finding(row.rule, row.foremost),
            }
            for row in answer.rows
        ],
        "accepted": answer.accepted,
        "rules": list(answer.ran),
        "silent": [{"rule": key, "reason": reason} for key, reason in answer.silent],
        "notes": list(answer.notes),
        "cautions": list(CAUTIONS),
    }
