"""What to beware of: warnings on an object, and agents not shown to have been cleared."""

from __future__ import annotations

from sqlalchemy import BindParameter, Connection, bindparam, exists, or_, select, union_all

from conservedb.questions.answers import AsOf, Residue, Warning_
from conservedb.questions.asking import Question, blank, cited, dated
from conservedb.questions.evidence import source_of, when
from conservedb.records.materials import material
from conservedb.records.objects import component, warning
from conservedb.records.places import place
from conservedb.records.sources import source
from conservedb.records.treatments import agent, agent_place, intervention, intervention_place

_WARNINGS = Question(
    select(
        warning.c.ref,
        blank(component.c.mark).label("component"),
        blank(place.c.mark).label("place"),
        blank(warning.c.kind).label("kind"),
        blank(warning.c.text).label("text"),
        *dated(warning, "since"),
        *dated(warning, "until"),
        *cited(source),
    )
    .outerjoin_from(warning, component, component.c.id == warning.c.component_id)
    .outerjoin(place, place.c.id == warning.c.place_id)
    .outerjoin(source, source.c.id == warning.c.source_id)
    .where(warning.c.object_id == bindparam("object"))
    .order_by(warning.c.id)
)
_SINCE, _UNTIL, _SOURCE = (_WARNINGS.at(n) for n in ("since_words", "until_words", "source_ref"))

_HERE: BindParameter[int] = bindparam("place")
_RESIDUES = Question(
    select(
        agent.c.ref,
        material.c.key.label("material"),
        blank(material.c.name).label("material_name"),
        *(
            blank(agent.c[name]).label(name)
            for name in ("material_words", "concentration", "form", "cleared", "note")
        ),
        intervention.c.ref.label("intervention"),
        *dated(intervention, "date"),
        *cited(source),
    )
    .join_from(agent, intervention, intervention.c.id == agent.c.intervention_id)
    .outerjoin(material, material.c.id == agent.c.material_id)
    .outerjoin(source, source.c.id == intervention.c.source_id)
    .where(
        or_(agent.c.cleared.is_(None), agent.c.cleared != "yes"),
        agent.c.id.in_(
            union_all(
                select(agent_place.c.agent_id).where(agent_place.c.place_id == _HERE),
                select(agent.c.id)
                .join_from(
                    intervention_place,
                    agent,
                    agent.c.intervention_id == intervention_place.c.intervention_id,
                )
                .where(
                    intervention_place.c.place_id == _HERE,
                    ~exists().where(agent_place.c.agent_id == agent.c.id),
                ),
            )
        ),
    )
    .order_by(intervention.c.date_latest, agent.c.id)
)
_DATE, _CITED = _RESIDUES.at("date_words"), _RESIDUES.at("source_ref")
STATEMENTS = (_WARNINGS, _RESIDUES)


def warnings_on(connection: Connection, owner: int) -> tuple[Warning_, ...]:
    """Every hazard of an object and every limit on handling it, whatever the day."""
    return tuple(
        Warning_(
            row.ref,
            row.component,
            row.place,
            row.kind,
            row.text,
            when(row, _SINCE),
            when(row, _UNTIL),
            source_of(row, _SOURCE),
        )
        for row in _WARNINGS.all(connection, object=owner)
    )


def residues_at(connection: Connection, at: int, on: AsOf) -> tuple[Residue, ...]:
    """Agents used at a place by the day asked for that nobody says were cleared.

    An agent recorded without a place counts at every place of its intervention.
    """
    return tuple(
        Residue(
            row.ref,
            row.material,
            row.material_name or row.material or row.material_words,
            row.concentration,
            row.form,
            row.cleared,
            row.intervention,
            when(row, _DATE),
            source_of(row, _CITED),
            row.note,
        )
        for row in _RESIDUES.all(connection, place=at)
        if row.date_earliest <= on.last
    )
