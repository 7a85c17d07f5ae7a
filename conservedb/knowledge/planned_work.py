"""A plan in one of its versions, and a step as it is recorded: what both checks on it look at."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from conservedb.dates.days import UNKNOWN_END, UNKNOWN_START
from conservedb.knowledge.narrowing import Interval

UNDATED = Interval(UNKNOWN_START, UNKNOWN_END)
"""When nobody knows: a date that is blank or was not understood."""


@dataclass(frozen=True, slots=True)
class Substance:
    """A material as it is written down: known by name, by its class, or in words only.

    Args:
        shown: what a sentence calls it.
        key: of the material, "" where only a class or words are recorded.
        classes: keys of its class and of those above it, the nearest first; none where unknown.
        parts: keys of the materials that it is made up of.
    """

    shown: str
    key: str = ""
    classes: tuple[str, ...] = ()
    parts: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """A step as a plan foresees it; no places and no components means that it names none.

    Args:
        borne_by: the components that bear a place it names, by the mark of the place.
        substance: the material it names, None where it names none.
    """

    ref: str
    kind: str
    places: tuple[str, ...] = ()
    components: tuple[str, ...] = ()
    borne_by: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    substance: Substance | None = None


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
        places: those that it names, laid a layer at or used an agent at.
        components: those that it names.
        borne_by: the components that bear one of these places, by the mark of the place.
        within: the components that one of all these components is part of, by its mark.
        laid, used, taken: the materials of its layers, of its agents, and of what it took off.
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
    borne_by: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    within: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    laid: tuple[Substance, ...] = ()
    used: tuple[Substance, ...] = ()
    taken: tuple[Substance, ...] = ()
    unauthorised_reason: str = ""
    unauthorised_by: str = ""


def begun_as_planned(planned: PlannedStep, when: Interval) -> RecordedStep:
    """The step that somebody would record who began a planned step as it is planned."""
    return RecordedStep(
        "",
        planned.kind,
        planned.ref,
        "planned",
        when,
        places=planned.places,
        components=planned.components,
        borne_by=planned.borne_by,
    )
