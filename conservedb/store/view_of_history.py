"""The view of everything that happened to an object: one SELECT for each kind of record.

Each arm joins the object by itself, so that SQLite looks up the records of one object only.
"""

from __future__ import annotations

from conservedb.store.view_shape import OBJECT, View, ViewColumn, day, given, marks, people

_NONE = given("people", "NULL", "")
_OF_LAYER = "LEFT JOIN layer la ON la.id = {0}.layer_id\nLEFT JOIN place pl ON pl.id = la.place_id"
_DONE_BY = "LEFT JOIN intervention i ON i.id = {0}.intervention_id"


def _event(
    happened: str,
    table: str,
    kind: str,
    words: str,
    *,
    places: str = "pl.mark",
    joins: str = "",
    hands: ViewColumn = _NONE,
    undated: str = "",
) -> View:
    """The records of one table as events.

    Args:
        undated: the alias of the intervention whose date counts where the record has none.
    """

    def dated(part: str) -> str:
        own = f"ev.date_{part}"
        if not undated:
            return own
        return (
            f"CASE WHEN ev.date_derived = 'blank' AND {undated}.id IS NOT NULL"
            f" THEN {undated}.date_{part} ELSE {own} END"
        )

    return View(
        "",
        "",
        (
            OBJECT,
            *day("first", dated("earliest"), "earliest"),
            *day("last", dated("latest"), "latest"),
            given("date_words", dated("words"), "the date as found"),
            given("date_edtf", dated("edtf"), "the date as EDTF"),
            given("happened", f"'{happened}'", "the kind of record: " + ", ".join(_HAPPENED)),
            given("ref", "ev.ref", "ref of that record on its object"),
            given("kind", kind, "of an intervention its kind, of a layer its role, ..."),
            given("places", places, "marks of the places; ..."),
            given("words", words, "technique, material, cause ... as recorded"),
            given("people", hands.sql, "who took part: Name (role); ..."),
        ),
        f"FROM {table} ev\nJOIN object ob ON ob.id = ev.object_id\n{joins}".rstrip(),
    )


_HAPPENED = (
    "intervention",
    "layer",
    "removal",
    "sighting",
    "joint event",
    "observation",
    "reading",
    "sample",
)
_WORKED_ON = marks("places", "", "intervention_place", "li.intervention_id = ev.id")
_MATTER = (
    "LEFT JOIN place pl ON pl.id = ev.place_id\n"
    "LEFT JOIN material ma ON ma.id = ev.material_id\n"
    "LEFT JOIN material_class cl ON cl.id = ev.material_class_id"
)
_FOUND_AT = f"LEFT JOIN place pl ON pl.id = ev.place_id\n{_DONE_BY.format('ev')}"

_EVENTS = (
    _event(
        "intervention",
        "intervention",
        "ev.kind",
        "coalesce(ev.technique, ev.note)",
        places=_WORKED_ON.sql,
        hands=people("intervention", "ev"),
    ),
    _event(
        "layer",
        "layer",
        "ev.role",
        "coalesce(ma.name, ma.key, ev.material_words, cl.name, cl.key)",
        joins=f"{_MATTER}\n{_DONE_BY.format('ev')}",
        undated="i",
    ),
    _event(
        "removal",
        "removal",
        "ev.extent",
        "coalesce(ev.cause, ev.note)",
        joins=f"{_OF_LAYER.format('ev')}\n{_DONE_BY.format('ev')}",
        undated="i",
    ),
    _event(
        "sighting",
        "sighting",
        "ev.result",
        "ev.note",
        joins=_OF_LAYER.format("ev"),
        hands=people("sighting", "ev"),
    ),
    _event(
        "joint event",
        "joint_event",
        "ev.event",
        "coalesce(ev.location, ev.note)",
        joins=_FOUND_AT,
        undated="i",
    ),
    _event(
        "observation",
        "observation",
        "ev.condition",
        "ev.seen",
        joins=_FOUND_AT,
        hands=people("observation", "ev"),
        undated="i",
    ),
    _event(
        "reading",
        "reading",
        "ev.quantity",
        "ev.value || ' ' || ev.unit",
        joins=_FOUND_AT,
        hands=people("reading", "ev"),
        undated="i",
    ),
    _event(
        "sample",
        "sample",
        "ev.kind",
        "ev.what",
        joins=_FOUND_AT,
        hands=people("sample", "ev"),
        undated="i",
    ),
)

HISTORY = View(
    "v_history",
    "everything that happened to objects, as recorded; not in order: add"
    " ORDER BY first_number, last_number",
    _EVENTS[0].columns,
    "\nUNION ALL\n".join([_EVENTS[0].source, *(event.select for event in _EVENTS[1:])]),
)
