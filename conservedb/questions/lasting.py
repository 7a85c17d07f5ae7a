"""From when until when a component existed, with the same states as a layer."""

from __future__ import annotations

from conservedb.dates import NEVER
from conservedb.knowledge.layers import (
    Bounds,
    ImpossibleOrder,
    Interval,
    LayerFacts,
    Removal,
    bounds,
    names,
    possible,
    qualified,
    state,
)
from conservedb.questions.answers import When
from conservedb.questions.evidence import BLANK, interval


def object_made(made: When) -> Interval:
    """When an object was made, as the floor for everything on it."""
    return Interval(made.earliest, made.latest, made.flags)


def lasting(
    whole: Interval, made: When, lost: When, origin: str, ceiling: int | None, entered: str
) -> Bounds:
    """The bounds of a component's making and loss.

    A part called original without a date of its own is as old as the object (`whole`); any
    other was there by the day on which it was recorded.
    """
    first = made
    if made is BLANK and origin == "original":
        first = When("", "", *whole)
    came = interval(first, whole.earliest, ceiling, entered)
    if lost is BLANK:
        return Bounds(*came[:2], NEVER, NEVER, NEVER, NEVER, came.flags, 0, 0)
    gone = interval(lost, came.earliest, ceiling, entered)
    try:
        return bounds(LayerFacts(came, (Removal(gone, "all"),))).whole
    except ImpossibleOrder:
        return Bounds(*came[:2], NEVER, NEVER, *gone[:2], came.flags, 0, gone.flags)


def on_day(lasts: Bounds, day: int) -> tuple[str, tuple[str, ...], int]:
    """State, possible states, and the flags of the dates that these rest on."""
    mask = possible(lasts, day)
    return state(mask), names(mask), qualified(lasts, mask)
