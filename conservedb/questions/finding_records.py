"""What was found: observations, readings of instruments, samples and spot tests."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass

from sqlalchemy import Connection, Table, func, literal_column, select

from conservedb.questions.asking import Question, Rows, Selection, blank, cited, dated
from conservedb.questions.evidence import People, by_owner, people_of
from conservedb.records.layers import layer
from conservedb.records.materials import material
from conservedb.records.objects import component
from conservedb.records.observations import (
    observation,
    observation_person,
    reading,
    reading_person,
    sample,
    sample_person,
)
from conservedb.records.places import place
from conservedb.records.sources import source
from conservedb.records.spot_tests import spot_test, spot_test_part, spot_test_person
from conservedb.records.treatments import intervention

_TEXTS = {
    observation: ("condition", "seen", "presumed", "extent"),
    reading: ("quantity", "unit", "instrument", "spot"),
    sample: ("kind", "what", "box", "remainder", "result", "analysed_by"),
    spot_test: (
        *("form", "pressure", "magnification", "wet", "dry"),
        *("next_day", "swab_colour", "tide_line"),
    ),
}
_LINKS = {
    observation: observation_person,
    reading: reading_person,
    sample: sample_person,
    spot_test: spot_test_person,
}
_MEASURES = {reading: ("value",), spot_test: ("area_mm2", "temperature_c", "dwell_min")}


@dataclass(frozen=True, slots=True)
class Findings:
    """Rows in the order of writing, with the people of each kind by its table's name."""

    observations: Rows
    readings: Rows
    samples: Rows
    tests: Rows
    agents: Mapping[int, tuple[str, ...]]
    people: Mapping[str, People]


class Asked:
    """The questions for what was found in a scope, built once."""

    def __init__(self, scope: Mapping[str, Selection]) -> None:
        self.rows = {table.name: _found(table, scope[table.name]) for table in _LINKS}
        self.people = {
            table.name: people_of(link, scope[table.name]) for table, link in _LINKS.items()
        }
        self.agents = Question(
            select(
                spot_test_part.c.spot_test_id,
                func.coalesce(material.c.name, material.c.key).label("name"),
                spot_test_part.c.share,
            )
            .join_from(spot_test_part, material, material.c.id == spot_test_part.c.material_id)
            .where(spot_test_part.c.spot_test_id.in_(scope["spot_test"]))
            .order_by(spot_test_part.c.spot_test_id, spot_test_part.c.position)
        )
        self.questions = (*self.rows.values(), *self.people.values(), self.agents)

    def findings(self, connection: Connection, scope: int) -> Findings:
        """Everything found in the scope with this id."""
        rows = {name: asked.all(connection, scope=scope) for name, asked in self.rows.items()}
        agents: dict[int, tuple[str, ...]] = defaultdict(tuple)
        if rows["spot_test"]:
            for test, name, share in self.agents.all(connection, scope=scope):
                agents[test] += (name if share is None else f"{name} {share:g} %",)
        return Findings(
            rows["observation"],
            rows["reading"],
            rows["sample"],
            rows["spot_test"],
            agents,
            {
                name: by_owner(asked.all(connection, scope=scope)) if rows[name] else {}
                for name, asked in self.people.items()
            },
        )


def _found(table: Table, ids: Selection) -> Question:
    """One kind of finding, with the part, place and layer that it is about."""
    of_layer = table is spot_test  # which stands on a layer, and so names no part and no place
    part = literal_column("''") if of_layer else blank(component.c.mark)
    at = layer.c.place_id if of_layer else func.coalesce(table.c.place_id, layer.c.place_id)
    statement = (
        select(
            table.c.id,
            table.c.intervention_id,
            table.c.ref,
            blank(intervention.c.ref).label("intervention"),
            part.label("component"),
            blank(place.c.mark).label("place"),
            blank(layer.c.ref).label("layer"),
            blank(func.coalesce(material.c.name, material.c.key, layer.c.material_words)).label(
                "material"
            ),
            *(blank(table.c[name]).label(name) for name in (*_TEXTS[table], "note")),
            *(table.c[name] for name in _MEASURES.get(table, ())),
            *dated(table, "date"),
            *cited(source),
        )
        .outerjoin_from(table, intervention, intervention.c.id == table.c.intervention_id)
        .outerjoin(layer, layer.c.id == table.c.layer_id)
        .outerjoin(place, place.c.id == at)
        .outerjoin(material, material.c.id == layer.c.material_id)
        .outerjoin(source, source.c.id == table.c.source_id)
    )
    if not of_layer:
        statement = statement.outerjoin(component, component.c.id == table.c.component_id)
    return Question(statement.where(table.c.id.in_(ids)).order_by(table.c.id))
