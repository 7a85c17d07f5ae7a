"""Days that cannot be meant: work of the future, and what ends before it begins."""

from __future__ import annotations

import datetime

from conservedb.dates import OPEN_START, UNKNOWN_END, iso
from conservedb.exchange.record import Record
from conservedb.exchange.subject import Subject
from conservedb.exchange.taking import Taking

DONE = (
    "interventions",
    "removals",
    "sightings",
    "spot_tests",
    "observations",
    "readings",
    "samples",
)
"""Subjects whose `date` is that of something done or seen."""
SPANS = {"treatments": ("begun", "ended"), "whereabouts": ("since", "until")}


def refuse_untimely(taking: Taking, today: datetime.date) -> None:
    """Charge what is typed with a day that is yet to come, or the wrong way round."""
    for subject, records in taking.present():
        for record in records.values():
            if record.bad:
                continue
            if subject.name in DONE:
                _refuse_future(taking, subject, record, today.toordinal())
            if subject.name in SPANS:
                _refuse_reversed(taking, subject, record, *SPANS[subject.name])


def _refuse_future(taking: Taking, subject: Subject, record: Record, today: int) -> None:
    earliest = record.values[subject.position["date_earliest"]]
    if earliest > OPEN_START and today < earliest:
        taking.charge(
            subject,
            record,
            "date",
            "",
            f"lies in the future (not before {iso(earliest)})",
            "write when it was done; what is still to be done belongs into a plan",
        )


def _refuse_reversed(
    taking: Taking, subject: Subject, record: Record, first: str, last: str
) -> None:
    begun = record.values[subject.position[f"{first}_earliest"]]
    ended = record.values[subject.position[f"{last}_latest"]]
    if begun > OPEN_START and ended < UNKNOWN_END and ended < begun:
        taking.charge(
            subject,
            record,
            last,
            "",
            f"ends (by {iso(ended)}) before it begins (not before {iso(begun)})",
            "mend whichever day is wrong",
        )
