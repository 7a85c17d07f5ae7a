"""Where an object, and each part of it that is kept apart, is on a day."""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.questions.asking import Row

Kept = dict[int | None, tuple[str, ...]]
"""Component -> where it may be on the day; None stands for the object."""


def kept_on(owner: Row, parts: Sequence[Row], rows: Sequence[Row], day: int) -> Kept:
    """Where the object and its parts may be on a day, by what is recorded of either.

    A part of which nothing is recorded is where its object is. Of stays that may cover the day,
    one that certainly ended where another began is left out.
    """
    stays: dict[int | None, list[Row]] = {}
    for row in rows:
        if row.since_earliest <= day <= row.until_latest and row.place_name:
            stays.setdefault(row.component_id, []).append(row)
    found: Kept = {who: _last(those) for who, those in stays.items()}
    found.setdefault(None, (owner.whereabouts,) if owner.whereabouts else ())
    for part in parts:
        if part.kept_at:
            found.setdefault(part.id, (part.kept_at,))
    return found


def _last(stays: Sequence[Row]) -> tuple[str, ...]:
    """Those after which no other certainly began."""
    latest = max(row.since_earliest for row in stays)
    return tuple(row.place_name for row in stays if row.since_latest >= latest)
