"""Where a step on record is not what was planned: another kind, material, place or component.

What a plan leaves open binds nobody, and where the record is too loose to compare, that is said;
it is not taken for a difference.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from conservedb.knowledge.planned_work import PlannedStep, RecordedStep, Substance

_NAMED = 3


@dataclass(frozen=True, slots=True)
class Departure:
    """One difference in a clause; `certain` is False where the record leaves it open."""

    certain: bool
    clause: str


def departures(planned: PlannedStep, step: RecordedStep) -> tuple[Departure, ...]:
    """How a step differs from the planned step that it is linked to, most weighty first.

    A layer of another material is a difference, whatever else was used; where no layer was laid,
    one of the agents must be the material planned. A part of a planned component is planned with
    it, and so is a place on it, unless the plan names places on that very component.
    """
    return (*_kind(planned, step), *_material(planned, step), *_where(planned, step))


def differs(planned: PlannedStep, step: RecordedStep) -> bool:
    """Whether a step is certainly not what was planned."""
    return any(one.certain for one in departures(planned, step))


def _kind(planned: PlannedStep, step: RecordedStep) -> Iterable[Departure]:
    if not (planned.kind and step.kind):
        clause = f"whether the step is of the kind planned as {planned.ref} is not recorded"
        yield Departure(False, clause)
    elif planned.kind != step.kind:
        yield Departure(True, f"planned as {planned.kind} ({planned.ref}), not {step.kind}")


def _material(planned: PlannedStep, step: RecordedStep) -> Iterable[Departure]:
    wanted = planned.substance
    if wanted is None:
        return
    if step.laid:
        judged = [(one, same(wanted, one)) for one in step.laid]
    else:
        judged = [(one, same(wanted, one)) for one in step.used]
        if any(found for _, found in judged):
            return
        if any(same(wanted, one) for one in step.taken):
            return  # the plan names what was to come off, not what with
    other = [one.shown for one, found in judged if found is False]
    open_ = [one.shown for one, found in judged if found is None]
    if other and (step.laid or not open_):
        clause = f"planned with {wanted.shown} ({planned.ref}), and done with {_listed(other)}"
        yield Departure(True, clause)
    elif open_:
        clause = (
            f"whether {_listed(open_)} is {wanted.shown}, as planned in {planned.ref},"
            " is not recorded"
        )
        yield Departure(False, clause)


def same(planned: Substance, found: Substance) -> bool | None:
    """Whether a material on record is the one planned, a made-up one or its part included.

    Returns:
        None where that cannot be told: one of the two is known by its class or in words only.
    """
    if planned.key and found.key:
        return planned.key == found.key or found.key in planned.parts or planned.key in found.parts
    if not (planned.classes and found.classes):
        alike = planned.shown.strip().casefold() == found.shown.strip().casefold()
        return True if alike else None
    finer = planned.classes[0] in found.classes
    if finer and not planned.key:
        return True
    return None if finer or found.classes[0] in planned.classes else False


def _where(planned: PlannedStep, step: RecordedStep) -> Iterable[Departure]:
    if not (planned.places or planned.components):
        return
    if not (step.places or step.components):
        yield Departure(
            False,
            f"at which place or component planned as {planned.ref} it was done is not recorded",
        )
        return
    places = [place for place in step.places if not _place_planned(planned, step, place)]
    components = [mark for mark in step.components if not _component_planned(planned, step, mark)]
    beside = (*places, *components)
    if beside:
        named = _listed((*planned.places, *planned.components))
        yield Departure(True, f"planned at {named} ({planned.ref}), and done at {_listed(beside)}")


def _place_planned(planned: PlannedStep, step: RecordedStep, place: str) -> bool:
    if place in planned.places:
        return True
    detailed = {mark for marks in planned.borne_by.values() for mark in marks}
    bearers = step.borne_by.get(place, ())
    return any(
        mark in planned.components
        for bearer in bearers
        if bearer not in detailed
        for mark in (bearer, *step.within.get(bearer, ()))
    )


def _component_planned(planned: PlannedStep, step: RecordedStep, mark: str) -> bool:
    wanted = {*planned.components, *(one for some in planned.borne_by.values() for one in some)}
    return bool(wanted & {mark, *step.within.get(mark, ())})


def _listed(words: Sequence[str]) -> str:
    some = list(dict.fromkeys(words))
    more = f" and {len(some) - _NAMED} more" if len(some) > _NAMED else ""
    return ", ".join(some[:_NAMED]) + more
