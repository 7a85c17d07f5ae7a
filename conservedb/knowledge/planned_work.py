"""A plan in one of its versions, and a step as it is recorded: what both checks on it look at."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.dates.days import UNKNOWN_END, UNKNOWN_START
from conservedb.knowledge.narrowing import Interval

UNDATED = Interval(UNKNOWN_START, UNKNOWN_END)
"""When nobody knows: a date that is blank or was not understood."""


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """A step as a plan foresees it; no places and no components means that it names none."""

    ref: str
    kind: str
    places: tuple[str, ...] = ()
    components: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class WorkPlan:
    """One version of the plan of a treatment; no authors means that they are not recorded."""

    ref: str
    version: int
    authors: tuple[str, ...]
    steps: tuple[PlannedStep, ...]

    def step(self, ref: str) -> PlannedStep | None:
        """The planned step of that reference, None where this version has no such step."""
        return next((step for step in self.steps if step.ref == ref), None)


@dataclass(frozen=True, slots=True)
class RecordedStep:
    """A step that is done, or about to be done (then `when` is today).

    Args:
        planned: the reference of the planned step it carries out, "" for none.
        standing: "planned", "routine care", "first aid", "historic", or "" for not recorded.
        when: the days on which it may lie.
        shown: its date in words, as a sentence shows it.
        deviation: why it is not as planned.
        unauthorised_reason, unauthorised_by: why it was begun before it was authorised, and
            who says so.
    """

    ref: str
    kind: str
    planned: str = ""
    standing: str = ""
    when: Interval = UNDATED
    shown: str = ""
    deviation: str = ""
    places: tuple[str, ...] = ()
    components: tuple[str, ...] = ()
    unauthorised_reason: str = ""
    unauthorised_by: str = ""
