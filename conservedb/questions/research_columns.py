"""The columns of a row of a researcher's answer, and how rows are sorted by each."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Integer,
    Text,
    and_,
    case,
    cast,
    func,
    literal_column,
    or_,
    select,
)
from sqlalchemy.sql.selectable import FromClause, Select, Subquery

from conservedb.questions.asking import blank
from conservedb.questions.research_occurrences import AGENT, LAYER
from conservedb.questions.research_terms import TODAY, Value
from conservedb.questions.states import mask_at
from conservedb.records.base import DATE_PARTS
from conservedb.records.layers import layer, layer_candidate
from conservedb.records.materials import material, material_class
from conservedb.records.objects import object_
from conservedb.records.people import person
from conservedb.records.places import place
from conservedb.records.treatments import (
    agent,
    agent_place,
    intervention,
    intervention_person,
    intervention_place,
)

_NOTHING: Value = literal_column("''")
_NO_STATE: Value = literal_column("0")
_BEFORE_A_NUMBER: Value = literal_column("'abcdefghijklmnopqrstuvwxyz .,-_/()'")
_A_LETTER_AND_A_NUMBER: Value = literal_column("'[a-z][0-9]*'")
_TEN_DIGITS: Value = literal_column("1000000000")
_IS_LAYER: Value = literal_column(str(LAYER))
_IS_AGENT: Value = literal_column(str(AGENT))
Key = Callable[[str, Subquery], Value | None]


def details(rows: str, page: Subquery) -> Select[Any]:
    """What is shown of the rows of a page."""
    single, deed = rows == "layers", rows in ("layers", "interventions")
    matter = func.coalesce(material.c.key, *_words_of_matter(), _NOTHING)
    named = func.coalesce(material.c.name, matter)
    return (
        select(
            page.c.score,
            object_.c.number,
            blank(object_.c.title).label("title"),
            (_marks(page) if single else _mark(rows)).label("place"),
            (page.c.what if single else literal_column("0")).label("what"),
            _ref(rows).label("ref"),
            (blank(intervention.c.ref) if deed else _NOTHING).label("intervention"),
            (matter if single else _NOTHING).label("material"),
            (named if single else _NOTHING).label("matter"),
            (blank(layer.c.role) if single else _NOTHING).label("role"),
            (blank(intervention.c.kind) if deed else _NOTHING).label("kind"),
            (_people(page) if deed else _NOTHING).label("people"),
            *_date(page),
            (_mask(page) if single else _NO_STATE).label("mask"),
            page.c.layers,
        )
        .select_from(page)
        .outerjoin(object_, object_.c.id == page.c.object_id)
        .outerjoin(intervention, intervention.c.id == page.c.intervention_id)
        .outerjoin(place, place.c.id == page.c.place_id)
        .outerjoin(layer, and_(page.c.what == _IS_LAYER, layer.c.id == page.c.id))
        .outerjoin(agent, and_(page.c.what == _IS_AGENT, agent.c.id == page.c.id))
        .outerjoin(
            material, material.c.id == func.coalesce(layer.c.material_id, agent.c.material_id)
        )
        .outerjoin(
            material_class,
            material_class.c.id
            == func.coalesce(layer.c.material_class_id, agent.c.material_class_id),
        )
    )


def _words_of_matter() -> tuple[Value, ...]:
    return layer.c.material_words, agent.c.material_words, material_class.c.key


def _ref(rows: str) -> Value:
    if rows == "layers":
        return func.coalesce(layer.c.ref, agent.c.ref, _NOTHING)
    return blank(intervention.c.ref) if rows == "interventions" else _NOTHING


def _mark(rows: str) -> Value:
    return blank(place.c.mark) if rows == "places" else _NOTHING


def _mask(page: Subquery) -> Value:
    return case((page.c.what == _IS_LAYER, mask_at(layer.c, TODAY)), else_=_NO_STATE)


def _date(page: Subquery) -> list[ColumnElement[Any]]:
    """In the words of the record; the days that it may mean are those that all else leaves."""
    own = and_(
        page.c.what == _IS_LAYER,
        or_(layer.c.date_derived != "blank", page.c.intervention_id.is_(None)),
    )
    words, edtf, derived = (
        case((own, layer.c[f"date_{part}"]), else_=intervention.c[f"date_{part}"])
        for part in ("words", "edtf", "derived")
    )
    columns = {part: page.c[part] for part in ("earliest", "latest", "flags")} | {
        "words": func.coalesce(words, _NOTHING),
        "edtf": func.coalesce(edtf, _NOTHING),
        "derived": func.coalesce(derived, literal_column("'blank'")),
    }
    return [columns[part].label(f"date_{part}") for part in DATE_PARTS]


def _people(lines: FromClause) -> Value:
    """Everybody who took part, in the order of the record."""
    names = (
        select(person.c.name.label("name"))
        .join_from(intervention_person, person, person.c.id == intervention_person.c.person_id)
        .where(intervention_person.c.intervention_id == lines.c.intervention_id)
        .order_by(intervention_person.c.position)
        .correlate(lines)
        .subquery("people")
    )
    joined = select(func.group_concat(names.c.name, literal_column("', '"))).scalar_subquery()
    return func.coalesce(joined, _NOTHING)


def _own_places(lines: FromClause) -> dict[str, Select[Any]]:
    """The marks of where a layer lies, may lie, or an agent was used, by how it is known."""
    return {
        "lies": select(place.c.mark.label("mark"), literal_column("0").label("position"))
        .join_from(layer, place, place.c.id == layer.c.place_id)
        .where(lines.c.what == _IS_LAYER, layer.c.id == lines.c.id),
        "may lie": select(place.c.mark, layer_candidate.c.position)
        .join_from(layer_candidate, place, place.c.id == layer_candidate.c.place_id)
        .where(lines.c.what == _IS_LAYER, layer_candidate.c.layer_id == lines.c.id),
        "used": select(place.c.mark, agent_place.c.position)
        .join_from(agent_place, place, place.c.id == agent_place.c.place_id)
        .where(lines.c.what == _IS_AGENT, agent_place.c.agent_id == lines.c.id),
        "deed": select(place.c.mark, intervention_place.c.position)
        .join_from(intervention_place, place, place.c.id == intervention_place.c.place_id)
        .where(
            lines.c.what == _IS_AGENT,
            intervention_place.c.intervention_id == lines.c.intervention_id,
        ),
    }


def _marks(lines: FromClause) -> Value:
    """ "J14"; "J14 or J15" of candidates; "J14, J15" where an agent was used at both."""
    found = _own_places(lines)

    def joined(selection: Select[Any], between: str) -> Value:
        ordered = selection.order_by(selection.selected_columns[1]).correlate(lines).subquery()
        return select(func.group_concat(ordered.c.mark, literal_column(between))).scalar_subquery()

    return func.coalesce(
        joined(found["lies"], "''"),
        joined(found["may lie"], "' or '"),
        joined(found["used"], "', '"),
        joined(found["deed"], "', '"),
        _NOTHING,
    )


# -- sorting ------------------------------------------------------------------------------


def sorting(rows: str, order: str, lines: Subquery) -> list[ColumnElement[Any]]:
    """By what the lines of an answer are sorted for a column, before all else."""
    if order == "sureness":
        return [-lines.c.score]
    if order == "what":
        return [lines.c.what]
    if order == "date":
        return [lines.c.latest, lines.c.earliest]
    if order == "state":
        return [_by_state(rows, lines)]
    found = _KEYS[order](rows, lines)
    return [] if found is None else [func.lower(func.coalesce(found, _NOTHING))]


def _one(selection: Select[Any], lines: Subquery) -> Value:
    return selection.correlate(lines).limit(literal_column("1")).scalar_subquery()


def _of_object(name: str) -> Key:
    def key(_: str, lines: Subquery) -> Value:
        return _one(select(object_.c[name]).where(object_.c.id == lines.c.object_id), lines)

    return key


def _by_place(rows: str, lines: Subquery) -> Value | None:
    if rows == "places":
        mark = _by_number(place.c.mark_folded)
        return _one(select(mark).where(place.c.id == lines.c.place_id), lines)
    if rows != "layers":
        return None
    lies = (
        select(_by_number(place.c.mark_folded))
        .join_from(layer, place, place.c.id == layer.c.place_id)
        .where(lines.c.what == _IS_LAYER, layer.c.id == lines.c.id)
    )
    several = select(func.lower(_marks(lines)).label("marks")).limit(literal_column("1"))
    told = several.correlate(lines).subquery("told")
    return func.coalesce(_one(lies, lines), _one(select(_by_number(told.c.marks)), lines))


def _by_number(mark: Value) -> Value:
    """A mark in lower case, so made that its first number sorts by size: "j2a" before "j10".

    What comes before the number, the number in ten digits, and the whole. The database has no
    other means to cut these out, and a function in Python would take several times as long; a
    mark of one letter and a number, as most are, takes half of what others do.
    """
    numbered = func.ltrim(mark, _BEFORE_A_NUMBER)
    first, rest = func.substr(mark, 1, 1), func.substr(mark, 2)
    return case(
        (mark.op("GLOB")(_A_LETTER_AND_A_NUMBER), first.concat(_ten_digits(rest))),
        else_=func.replace(mark, numbered, _NOTHING).concat(_ten_digits(numbered)),
    ).concat(mark)


def _ten_digits(text: Value) -> Value:
    """The number with which a text begins, 0 where none does, with a 1 before it."""
    return cast(_TEN_DIGITS + cast(text, Integer), Text)


def _by_ref(rows: str, lines: Subquery) -> Value | None:
    if rows == "interventions":
        return _of_deed("ref")(rows, lines)
    return _of_matter("ref", lines) if rows == "layers" else None


def _by_material(rows: str, lines: Subquery) -> Value | None:
    if rows != "layers":
        return None
    keys = [
        select(func.coalesce(material.c.name_folded, material.c.key))
        .join_from(table, material, material.c.id == table.c.material_id)
        .where(lines.c.what == what, table.c.id == lines.c.id)
        for table, what in ((layer, _IS_LAYER), (agent, _IS_AGENT))
    ]
    classes = [
        select(material_class.c.key)
        .join_from(table, material_class, material_class.c.id == table.c.material_class_id)
        .where(lines.c.what == what, table.c.id == lines.c.id)
        for table, what in ((layer, _IS_LAYER), (agent, _IS_AGENT))
    ]
    return func.coalesce(
        *(_one(key, lines) for key in keys),
        _of_matter("material_words", lines),
        *(_one(key, lines) for key in classes),
    )


def _of_matter(name: str, lines: Subquery) -> Value:
    found = [
        _one(select(table.c[name]).where(lines.c.what == what, table.c.id == lines.c.id), lines)
        for table, what in ((layer, _IS_LAYER), (agent, _IS_AGENT))
    ]
    return func.coalesce(*found)


def _by_state(rows: str, lines: Subquery) -> Value:
    """In the order of time; what is no layer has none."""
    if rows != "layers":
        return _NO_STATE
    mask = select(mask_at(layer.c, TODAY)).where(
        lines.c.what == _IS_LAYER, layer.c.id == lines.c.id
    )
    return func.coalesce(_one(mask, lines), _NO_STATE)


def _by_role(rows: str, lines: Subquery) -> Value | None:
    role = select(layer.c.role).where(lines.c.what == _IS_LAYER, layer.c.id == lines.c.id)
    return _one(role, lines) if rows == "layers" else None


def _of_deed(name: str) -> Key:
    def key(rows: str, lines: Subquery) -> Value | None:
        if rows not in ("layers", "interventions"):
            return None
        deed = select(intervention.c[name]).where(intervention.c.id == lines.c.intervention_id)
        return _one(deed, lines)

    return key


def _by_people(rows: str, lines: Subquery) -> Value | None:
    return _people(lines) if rows in ("layers", "interventions") else None


_KEYS: dict[str, Key] = {
    "object": _of_object("number_sort"),
    "title": _of_object("title_folded"),
    "place": _by_place,
    "ref": _by_ref,
    "material": _by_material,
    "role": _by_role,
    "kind": _of_deed("kind"),
    "people": _by_people,
}
