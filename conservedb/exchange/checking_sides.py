"""What belongs to a side lies at a joint: only there are there two; and odd units are told."""

from __future__ import annotations

from sqlalchemy import Connection, select

from conservedb.exchange.stored import links_of
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.taking import Taking
from conservedb.knowledge.quantities import odd_unit
from conservedb.records.places import place

_REMEDY = "only a joint has the sides A and B; leave side blank, or name the joint"


def check_sides(connection: Connection, taking: Taking) -> None:
    """Charge layers, removals and sightings with a side where there is certainly no joint."""
    kinds = _Kinds(connection, taking)
    for name in ("layers", "removals", "sightings"):
        subject = BY_NAME[name]
        side, whose = subject.position["side"], subject.position.get("layer_id")
        for record in taking.records.get(name, {}).values():
            if record.bad or record.values[side] is None or not (record.new or record.changed):
                continue
            layer_id = record.id if whose is None else record.values[whose]
            found = kinds.of_layer(layer_id)
            if found and not found & {"joint", None}:
                reason = f"names a side of a {' or '.join(sorted(map(str, found)))}"
                taking.charge(subject, record, "side", record.values[side], reason, _REMEDY)


def tell_odd_units(taking: Taking) -> None:
    """Tell of readings whose unit does not go with what was read; they are kept as written."""
    subject = BY_NAME["readings"]
    quantity, unit = subject.position["quantity"], subject.position["unit"]
    for record in taking.records.get(subject.name, {}).values():
        if record.bad or not (record.new or record.changed):
            continue
        written = record.values[unit] or ""
        odd = odd_unit(record.values[quantity] or "", written)
        if odd:
            taking.keys.file, taking.keys.line = subject.file, record.row.first
            taking.keys.notice("unit", written, odd, "amend it if it was a slip")


class _Kinds:
    """Of which kind the places of a layer are, in the folder or else in the database."""

    def __init__(self, connection: Connection, taking: Taking) -> None:
        self._connection, self._taking = connection, taking
        self._known: dict[int, str | None] = {}

    def of_layer(self, layer_id: int | None) -> set[str | None]:
        """The kinds of its place, or of the places it may be at; None for one not recorded."""
        subject = BY_NAME["layers"]
        column = next(column for column in subject.lists if column.name == "place")
        record = self._taking.records.get(subject.name, {}).get(layer_id or 0)
        if layer_id is None:
            return set()
        if record is not None and record.values[subject.position["place_id"]] is not None:
            places = [(record.values[subject.position["place_id"]],)]
        elif record is not None and (column.name in record.links or record.new):
            places = record.links.get(column.name, [])
        else:
            places = links_of(self._connection, subject, column, layer_id)
        return {self._of_place(at) for (at,) in places}

    def _of_place(self, at: int) -> str | None:
        if at not in self._known:
            record = self._taking.records.get("places", {}).get(at)
            if record is not None and not record.bad:
                self._known[at] = record.values[BY_NAME["places"].position["kind"]]
            else:
                statement = select(place.c.kind).where(place.c.id == at)
                self._known[at] = self._connection.execute(statement).scalar()
        return self._known[at]
