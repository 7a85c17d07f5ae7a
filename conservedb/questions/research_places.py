"""The conditions of a researcher's question on the place: its parts, and what was seen there."""

from __future__ import annotations

from sqlalchemy import and_, case, func, or_, select

from conservedb.knowledge.research import Condition
from conservedb.questions.research_conditions import Judge, materials_meant, stated
from conservedb.questions.research_environment import kept_in
from conservedb.questions.research_occurrences import (
    NEVER_HOLDS,
    PERHAPS_HOLDS,
    Holds,
    Occurrence,
    any_of,
    any_row,
)
from conservedb.questions.research_terms import Listed, Meant, Test, Value, given, has_words
from conservedb.records.layers import layer
from conservedb.records.objects import component
from conservedb.records.observations import observation
from conservedb.records.places import place
from conservedb.records.treatments import intervention

_spot, _part, _lying = place.alias("spot"), component.alias("part"), layer.alias("lying")
_seen, _examined = observation.alias("seen"), intervention.alias("examined")


def _borne_by(occurrence: Occurrence, condition: Condition, meant: Meant) -> Holds:
    return occurrence.at_places(lambda at: is_borne_by(at, condition, meant), PERHAPS_HOLDS)


def is_borne_by(place_id: Value, _: Condition, meant: Meant) -> Holds:
    """Whether a part of some material bears the place of an id.

    Of a joint either side bears it; perhaps where the matter of one is not recorded.
    """
    sides = or_(_part.c.id == _spot.c.component_id, _part.c.id == _spot.c.other_component_id)
    parts, here = _spot.join(_part, sides), _spot.c.id == place_id
    own = and_(_part.c.material_id.is_not(None), _part.c.material_id.in_(materials_meant(meant)))
    said = stated("component", _part.c.id, materials_meant(meant))
    sure = any_row(parts, here, own)
    perhaps = any_row(parts, here, or_(_part.c.material_id.is_(None), said))
    return Holds(sure, or_(sure, perhaps, ~any_row(parts, here)))


def _observed_after(occurrence: Occurrence, condition: Condition, _: Meant) -> Holds:
    """An observation at the place, on its part or on the layer, after this had come."""
    after = _After(occurrence, condition.value)
    at_place = occurrence.at_places(after.at, NEVER_HOLDS)
    if not occurrence.is_layer:
        return at_place
    return any_of([after.holds(_seen.c.layer_id == layer.c.id), at_place])


def _breaks(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    """What `research_rules` found: of layers, of uses, of places, or of objects as a whole."""
    found = meant.broken
    c = occurrence.table.c
    own = (c.id, found.layers) if occurrence.is_layer else (occurrence.deed, found.interventions)
    parts = [_listed(c.object_id, found.objects), _listed(*own)]
    at_places = occurrence.at_places(lambda at: _listed(at, found.places), NEVER_HOLDS)
    return any_of([*parts, at_places])


def is_broken_at(place_id: Value, owner: Value, meant: Meant) -> Holds:
    """Whether a rule is broken at the place of an id by anything, or by its object as a whole."""
    found = meant.broken
    return any_of([_listed(place_id, found.rows_of_places), _listed(owner, found.objects)])


def is_broken_by(object_id: Value, meant: Meant) -> Holds:
    """Whether a rule is broken by anything of the object of an id."""
    return _listed(object_id, meant.broken.rows_of_objects)


def _listed(column: Value, ids: Listed) -> Holds:
    sure, perhaps = (
        column.in_(select(func.json_each(given(text)).table_valued("value").c.value))
        for text in ids
    )
    return Holds(sure, or_(sure, perhaps))


class _After:
    """Observations with some words after an occurrence had come."""

    def __init__(self, occurrence: Occurrence, words: str) -> None:
        self._words = has_words(_seen.c.condition, words)
        own = or_(_seen.c.date_derived != "blank", _seen.c.intervention_id.is_(None))
        earliest, latest, flags = (
            case((own, _seen.c[f"date_{part}"]), else_=_examined.c[f"date_{part}"])
            for part in ("earliest", "latest", "flags")
        )
        came = (occurrence.date[part] for part in ("earliest", "latest", "flags"))
        if occurrence.is_layer:
            came = (layer.c[f"came_{part}"] for part in ("from", "to", "flags"))
        first, last, came_flags = came
        self._surely = and_(earliest > last, flags == 0, came_flags == 0)
        self._perhaps = latest >= first

    def at(self, place_id: Value) -> Holds:
        """At a place, on a part of which it is, or on a layer there."""
        parts = [
            select(side).where(_spot.c.id == place_id, side.is_not(None)).correlate_except(_spot)
            for side in (_spot.c.component_id, _spot.c.other_component_id)
        ]
        layers = select(_lying.c.id).where(_lying.c.place_id == place_id).correlate_except(_lying)
        return any_of(
            [
                self.holds(_seen.c.place_id == place_id),
                *(self.holds(_seen.c.component_id.in_(part)) for part in parts),
                self.holds(_seen.c.layer_id.in_(layers)),
            ]
        )

    def holds(self, where: Test) -> Holds:
        """On what a condition says."""
        rows = _seen.outerjoin(_examined, _examined.c.id == _seen.c.intervention_id)
        return Holds(
            any_row(rows, where, self._words, self._surely, self._perhaps),
            any_row(rows, where, self._words, self._perhaps),
        )


ON_PLACES: dict[str, Judge] = {
    "part material": _borne_by,
    "observed": _observed_after,
    "environment": kept_in,
    "rule": _breaks,
}
