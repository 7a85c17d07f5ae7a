"""The layers at a place with all that is known of them, in build-up order."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection

from conservedb.dates import describe_flags
from conservedb.knowledge.joints import JointEvent, remains
from conservedb.knowledge.layers import (
    Bounds,
    LayerBounds,
    held,
    names,
    possible,
    qualified,
    settle,
    state,
)
from conservedb.knowledge.layers import Sighting as Look
from conservedb.questions.answers import AsOf, Deed, Held, Layer, Reworded, Rival, Seen, State
from conservedb.questions.asking import Row
from conservedb.questions.evidence import BLANK, People, distinct, interval, source_of, when
from conservedb.questions.layer_records import (
    AT_BOUNDS,
    AT_LAID,
    AT_LOOKED,
    AT_LOOKED_IN,
    AT_TAKEN,
    LAYERS,
    PLAIN,
    LayerEvidence,
    gathered,
)
from conservedb.questions.rewordings import of
from conservedb.records.layers import BOUNDS


def layers_at(
    connection: Connection, at: int, on: AsOf, events: Sequence[JointEvent], floor: int
) -> tuple[Layer, ...]:
    """The layers at a place, from side A or the substrate outward, gone ones among them."""
    rows = LAYERS.all(connection, place=at)
    if not rows:
        return ()
    rows.sort(key=_build_up)
    evidence = gathered(connection, at, rows)
    return tuple(_layer(row, evidence, on, events, floor) for row in rows)


def _build_up(row: Row) -> tuple[bool, int, int, int, int]:
    return (row.stack is None, row.stack or 0, row.came_from, row.came_to, row.id)


def _layer(
    row: Row, evidence: LayerEvidence, on: AsOf, events: Sequence[JointEvent], floor: int
) -> Layer:
    own = Bounds(*row[AT_BOUNDS : AT_BOUNDS + len(BOUNDS)])
    sides = evidence.sides.get(row.id, {})
    looks = evidence.sightings.get(row.id, ())
    known = [_look(look, floor) for look in looks]
    seen = tuple(_seen(look, evidence.seen_by) for look in looks)
    candidates = tuple(evidence.candidates.get(row.id, ()))
    removed = [_removed(taken, evidence.hands) for taken in evidence.removals.get(row.id, ())]
    removed.sort(key=lambda deed: (deed.date.latest, deed.date.earliest))
    rivals = _rivals(row, evidence)
    mask = possible(own, on.last)
    return Layer(  # type: ignore[misc]
        *row[:PLAIN],  # the plain fields, in the order of the class
        state="uncertain" if candidates else state(mask),
        possible=names(mask),
        by_side={side: _state(of, on.last) for side, of in sides.items()},
        held=_held(own, on),
        qualified=describe_flags(qualified(own, mask)),
        remains=remains(LayerBounds(own, sides), events, known, on.last) if events else "",
        candidates=candidates,
        last_seen=_last_seen(seen, known, on),
        sightings=seen,
        laid=_laid(row, evidence.hands),
        removed=tuple(removed),
        sources=distinct(
            [
                source_of(row, AT_LAID[2]),
                source_of(row, AT_LAID[3]),
                *(rival.source for rival in rivals),
            ]
        ),
        rivals=rivals,
        settle=_settle(own, on.last, known, candidates),
        came=(own.came_from, own.came_to),
        amended=_amended(row, evidence) if evidence.amended else (),
    )


def _state(of: Bounds, day: int) -> State:
    mask = possible(of, day)
    return State(state(mask), names(mask))


def _held(of: Bounds, on: AsOf) -> Held | None:
    if not on.is_span:
        return None
    throughout, at_some_time, possibly = held(of, on.first, on.last)
    return Held(names(throughout), names(at_some_time), names(possibly))


def _settle(of: Bounds, day: int, known: Sequence[Look], candidates: tuple[str, ...]) -> str:
    what = settle(of, day, known)
    if not candidates:
        return what
    where = f"establish at which of {', '.join(candidates)} it lies"
    return f"{where}; {what}" if what else where


def _laid(row: Row, hands: People) -> Deed:
    own = when(row, AT_LAID[0])
    return Deed(
        when(row, AT_LAID[1]) if own is BLANK else own,
        row.intervention,
        row.kind,
        row.technique,
        hands.get(row.intervention_id, ()),
        source=source_of(row, AT_LAID[2]) or source_of(row, AT_LAID[3]),
        note=row.done_note,
    )


def _removed(row: Row, hands: People) -> Deed:
    own = when(row, AT_TAKEN[0])
    return Deed(
        when(row, AT_TAKEN[1]) if own is BLANK else own,
        row.intervention,
        row.kind,
        row.technique,
        hands.get(row.intervention_id, ()),
        row.extent,
        row.side,
        row.cause,
        source_of(row, AT_TAKEN[2]) or source_of(row, AT_TAKEN[3]),
        row.note,
    )


def _seen(row: Row, seen_by: People) -> Seen:
    return Seen(
        when(row, AT_LOOKED),
        row.result,
        row.side,
        seen_by.get(row.id, ()),
        source_of(row, AT_LOOKED_IN),
        row.note,
    )


def _look(row: Row, floor: int) -> Look:
    days = interval(when(row, AT_LOOKED), floor, row.source_latest, row.entered)
    return Look(days, row.result, row.side)


def _last_seen(seen: Sequence[Seen], known: Sequence[Look], on: AsOf) -> Seen | None:
    """The latest sighting of something seen, not after the day asked for."""
    found = [
        (look.when.latest, at)
        for at, look in enumerate(known)
        if look.result == "seen" and look.when.latest <= on.last
    ]
    return seen[max(found)[1]] if found else None


def _amended(row: Row, evidence: LayerEvidence) -> tuple[Reworded, ...]:
    """How the layer read before, and the steps and looks that it is known by."""
    found = list(of(evidence.amended, "layer", row.id))
    if row.intervention:
        called = f"intervention {row.intervention}"
        found += of(evidence.amended, "intervention", row.intervention_id, called)
    for taken in evidence.removals.get(row.id, ()):
        found += of(evidence.amended, "removal", taken.id, "removal")
    for look in evidence.sightings.get(row.id, ()):
        found += of(evidence.amended, "sighting", look.id, "sighting")
    return tuple(found)


def _rivals(row: Row, evidence: LayerEvidence) -> tuple[Rival, ...]:
    found = list(evidence.rivals.get(("layer", row.id), ()))
    found += evidence.rivals.get(("intervention", row.intervention_id), ())
    for taken in evidence.removals.get(row.id, ()):
        found += evidence.rivals.get(("removal", taken.id), ())
        found += evidence.rivals.get(("intervention", taken.intervention_id), ())
    for look in evidence.sightings.get(row.id, ()):
        found += evidence.rivals.get(("sighting", look.id), ())
    return tuple(dict.fromkeys(found))
