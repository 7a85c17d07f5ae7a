"""Where a material lies, lay or may lie, and which interventions used it as an agent.

A layer counts where its material or class is the one asked for or below it, unless it had
certainly not come by the day asked for. It is only
possible where the record names a class above (it may be this material), where a statement
names the material though another is followed, where it may lie at several places, where its
identity is inferred or unknown, or where state or date are not sure. What nobody identified is
counted apart, whatever it was called: `research` tells those apart that were called so.

The answer for a broad class has hundreds of thousands of rows: everything is worked out in
SQL, and each result row is a row of the answer.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    Table,
    and_,
    bindparam,
    case,
    false,
    func,
    literal_column,
    or_,
    select,
    union_all,
)
from sqlalchemy.sql.selectable import Select

from conservedb.questions import meanings
from conservedb.questions.answers import AsOf
from conservedb.questions.asking import (
    Question,
    Row,
    Selection,
    blank,
    dated,
    without_collecting,
)
from conservedb.questions.evidence import when
from conservedb.questions.states import is_one, mask_at, rests_on_qualified
from conservedb.questions.uses_answers import DERIVED, AgentUse, UsesAnswer, UsesLayer
from conservedb.records.base import DATE_PARTS
from conservedb.records.layers import IDENTIFIED, layer, layer_candidate
from conservedb.records.materials import material, material_class, material_part
from conservedb.records.objects import object_
from conservedb.records.places import place
from conservedb.records.sources import statement
from conservedb.records.treatments import agent, agent_place, intervention, intervention_place
from conservedb.store.keys import sort_key

Reference = ColumnElement[Any]
Condition = ColumnElement[bool]

_ID: BindParameter[int] = bindparam("id")
_DAY: BindParameter[int] = bindparam("day")
_UNSURE = ("inferred", "unknown")
_MASK = mask_at(layer.c, _DAY)
_SURE = and_(
    layer.c.place_id.is_not(None),
    is_one(_MASK),
    *(blank(layer.c.identified) != word for word in _UNSURE),
    ~rests_on_qualified(layer.c, _MASK),
)
"""Whether place, state, dates and identity of a layer are all sure."""


class Asked:
    """The questions for one kind of meaning.

    Args:
        materials: ids of the materials meant.
        classes: ids of the classes meant, with those below.
        above: ids of the classes above: what is known only as one of them may be meant.
    """

    def __init__(self, materials: Selection, classes: Selection | None, above: Selection) -> None:
        self.materials, self.classes = materials, classes
        loosely = union_all(classes, above) if classes is not None else above
        self.layers = Question(self._layers(loosely), UsesLayer)
        users = union_all(
            select(agent.c.id).where(agent.c.material_id.in_(materials)),
            select(agent.c.id).where(agent.c.material_class_id.in_(loosely)),
        )
        self.agents = Question(self._agents(users))
        self.places = Question(_agent_places(users))
        unidentified: list[ColumnElement[Any]] = [
            _how_many(layer, layer.c.id.in_(self._stated())).label("layers"),
            _how_many(agent, false()).label("agents"),
        ]
        self.unidentified = Question(select(*unidentified))

    def _meant(self, material_id: Reference, class_id: Reference) -> Condition:
        """Whether a record is sure to be of the material or class meant."""
        own = and_(material_id.is_not(None), material_id.in_(self.materials))
        if self.classes is None:
            return own
        return or_(own, and_(class_id.is_not(None), class_id.in_(self.classes)))

    def _stated(self) -> Select[Any]:
        """The ids of layers of which a statement names one of the materials."""
        return select(statement.c.layer_id).where(
            statement.c.material_id.in_(self.materials),
            statement.c.field == "material",
            statement.c.layer_id.is_not(None),
        )

    def _layers(self, loosely: Selection) -> Selection:
        ids = union_all(
            select(layer.c.id).where(layer.c.material_id.in_(self.materials)),
            select(layer.c.id).where(layer.c.material_class_id.in_(loosely)),
            self._stated(),
        )
        certain = and_(_SURE, self._meant(layer.c.material_id, layer.c.material_class_id))
        return (
            select(
                blank(object_.c.number).label("object"),
                blank(place.c.mark).label("place"),
                layer.c.ref.label("layer"),
                material.c.key.label("material"),
                blank(layer.c.material_words).label("material_words"),
                blank(layer.c.role).label("role"),
                _at(layer.c.identified, IDENTIFIED).label("identified_at"),
                _MASK.label("mask"),
                case((certain, literal_column("1")), else_=literal_column("0")).label("certain"),
                case(
                    (layer_candidate.c.place_id.is_(None), literal_column("0")),
                    else_=literal_column("1"),
                ).label("several"),
                *_laid(),
            )
            .outerjoin_from(layer, object_, object_.c.id == layer.c.object_id)
            .outerjoin(
                layer_candidate,
                and_(layer.c.place_id.is_(None), layer_candidate.c.layer_id == layer.c.id),
            )
            .outerjoin(
                place, place.c.id == func.coalesce(layer.c.place_id, layer_candidate.c.place_id)
            )
            .outerjoin(material, material.c.id == layer.c.material_id)
            .outerjoin(intervention, intervention.c.id == layer.c.intervention_id)
            .where(layer.c.id.in_(ids), layer.c.came_from <= _DAY)
        )

    def _agents(self, users: Selection) -> Selection:
        return (
            select(
                agent.c.id,
                agent.c.ref.label("agent"),
                object_.c.number.label("object"),
                intervention.c.ref.label("intervention"),
                material.c.key.label("material"),
                blank(agent.c.material_words).label("material_words"),
                *dated(intervention, "date"),
                *(
                    blank(agent.c[name]).label(name)
                    for name in ("concentration", "form", "cleared")
                ),
                case(
                    (
                        self._meant(agent.c.material_id, agent.c.material_class_id),
                        literal_column("1"),
                    ),
                    else_=literal_column("0"),
                ).label("certain"),
            )
            .outerjoin_from(agent, object_, object_.c.id == agent.c.object_id)
            .outerjoin(intervention, intervention.c.id == agent.c.intervention_id)
            .outerjoin(material, material.c.id == agent.c.material_id)
            .where(agent.c.id.in_(users))
        )


def _at(column: Reference, words: tuple[str, ...]) -> ColumnElement[int]:
    """The place of a word in a list, -1 where it is not there."""
    return case(
        *[(column == word, literal_column(str(at))) for at, word in enumerate(words)],
        else_=literal_column("-1"),
    )


def _laid() -> list[ColumnElement[Any]]:
    """The date of a layer; where it has none of its own, that of its intervention."""
    own = or_(layer.c.date_derived != "blank", layer.c.intervention_id.is_(None))
    parts: dict[str, ColumnElement[Any]] = {
        part: case((own, layer.c[f"date_{part}"]), else_=intervention.c[f"date_{part}"])
        for part in DATE_PARTS
    }
    derived = parts["derived"]
    parts["words"] = blank(parts["words"])
    parts["edtf"] = case((derived == "edtf", literal_column("''")), else_=blank(parts["edtf"]))
    parts["derived"] = _at(derived, DERIVED)
    return [column.label(f"laid_{part}") for part, column in parts.items()]


def _agent_places(users: Selection) -> Selection:
    """Where an agent was used: where it says so, else wherever its intervention took place."""
    recorded = select(agent_place.c.agent_id).where(agent_place.c.agent_id == agent.c.id)
    return union_all(
        select(agent_place.c.agent_id, place.c.mark)
        .join_from(agent_place, place, place.c.id == agent_place.c.place_id)
        .where(agent_place.c.agent_id.in_(users)),
        select(agent.c.id, place.c.mark)
        .join_from(
            agent,
            intervention_place,
            intervention_place.c.intervention_id == agent.c.intervention_id,
        )
        .join(place, place.c.id == intervention_place.c.place_id)
        .where(agent.c.id.in_(users), ~recorded.exists()),
    )


def _nameless(table: Table) -> Condition:
    """Whether neither material nor class is on record."""
    return and_(table.c.material_id.is_(None), table.c.material_class_id.is_(None))


def _how_many(table: Table, possible: Condition) -> ColumnElement[int]:
    """How many nobody identified, without those that are possible for another reason."""
    found = select(func.count()).select_from(table)
    return found.where(_nameless(table), ~possible).scalar_subquery()


_BELOW = meanings.classes_below(select(material_class.c.id).where(material_class.c.id == _ID))
_ASKED = {
    "material": Asked(
        select(material.c.id).where(material.c.id == _ID),
        None,
        meanings.classes_above(
            select(material.c.class_id.label("id")).where(
                material.c.id == _ID, material.c.class_id.is_not(None)
            )
        ),
    ),
    "material class": Asked(
        select(material.c.id).where(material.c.class_id.in_(_BELOW)),
        _BELOW,
        meanings.classes_above(
            select(material_class.c.parent_id.label("id")).where(
                material_class.c.id == _ID, material_class.c.parent_id.is_not(None)
            )
        ),
    ),
}
_RECIPES = {
    kind: Question(
        select(material.c.key)
        .where(
            material.c.id.in_(
                select(material_part.c.material_id).where(
                    material_part.c.part_id.in_(asked.materials)
                )
            ),
            material.c.id.not_in(asked.materials),
        )
        .order_by(material.c.key)
    )
    for kind, asked in _ASKED.items()
}
STATEMENTS = (
    *meanings.STATEMENTS,
    *(
        question
        for asked in _ASKED.values()
        for question in (asked.layers, asked.agents, asked.places, asked.unidentified)
    ),
    *_RECIPES.values(),
)
_USED = _ASKED["material"].agents.at("date_words")


def uses(connection: Connection, word: str, on: AsOf) -> UsesAnswer:
    """Every layer and every use as an agent of what a word means; states at the day asked for.

    Raises:
        NoSuch: no material and no class bears the word.
        Ambiguous: several do.
    """
    meant = meanings.meaning(connection, word)
    asked = _ASKED[meant.kind]
    with without_collecting():
        layers = asked.layers.all(connection, id=meant.id, day=on.last)
    agents = _agent_uses(connection, asked, meant.id)
    unidentified = asked.unidentified.first(connection, id=meant.id)
    return UsesAnswer(
        word,
        meant.kind,
        meant.key,
        meant.name or meant.key,
        on,
        tuple([row for row in layers if row.certain]),
        tuple([row for row in layers if not row.certain]),
        tuple(use for use in agents if use.certain),
        tuple(use for use in agents if not use.certain),
        unidentified.layers,
        unidentified.agents,
        tuple(row.key for row in _RECIPES[meant.kind].all(connection, id=meant.id)),
    )


def _agent_uses(connection: Connection, asked: Asked, meant: int) -> list[AgentUse]:
    places: dict[int, list[str]] = defaultdict(list)
    for user, mark in asked.places.all(connection, id=meant):
        places[user].append(mark)
    return [
        _agent_use(row, places.get(row.id, ())) for row in asked.agents.all(connection, id=meant)
    ]


def _agent_use(row: Row, places: Sequence[str]) -> AgentUse:
    return AgentUse(
        row.object,
        row.intervention,
        row.agent,
        row.material,
        row.material_words,
        tuple(sorted(places, key=sort_key)),
        when(row, _USED),
        row.concentration,
        row.form,
        row.cleared,
        bool(row.certain),
    )
