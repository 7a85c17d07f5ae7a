"""Words that meet in no record of their own, and do in several of one object.

"fountain acrylic" is the title of an object and the class of a material; "cellulose nitrate J07" a
material and the mark of a place; "adhesive fountain J14" the role of a layer too; "orde fountain"
a person with an object. Each word is taken to name an object, a place, a material, a role or a
person, in every way in which something bears the words so shared out. Where a layer of the
material or role lies at the place or on the object, a part is made of it, it was used there as an
agent, that person laid it, or worked on the object, that is the answer. Only the newest of what is
called so is looked at (`find_meeting`). More than five words are not shared out.
"""

from __future__ import annotations

import itertools
import json
from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from sqlalchemy import ColumnElement, Connection, func, literal_column, select
from sqlalchemy import union_all as all_of

from conservedb.knowledge.layers import Bounds, names, possible, state
from conservedb.questions import find_meeting, find_numbered
from conservedb.questions.answers import Hit
from conservedb.questions.asking import Question, Row, blank
from conservedb.questions.find_answers import FoundGroup
from conservedb.questions.find_meeting import (
    ABOUT,
    MATERIAL_IDS,
    OWN_NAME,
    PEOPLE,
    ROWS,
    Named,
    Split,
    class_of,
    given,
    layers,
    matter_of,
    meant,
)
from conservedb.questions.find_words import holds_all, spans
from conservedb.questions.wording import state_words
from conservedb.records.layers import BOUNDS, layer
from conservedb.records.materials import material, material_class
from conservedb.records.objects import component, object_
from conservedb.records.treatments import (
    agent,
    agent_place,
    intervention,
    intervention_person,
    intervention_place,
)
from conservedb.store.keys import fold, sort_key

MOST_WORDS = 5
_WAYS = 1000
"""Ways to share words out that are tried."""
_STEPS = 5000
"""Steps of people in which it is looked for what they laid."""
_ORDER = ("place", "layer", "component", "agent", "step")

_IN_PLACE = layer.c.place_id.in_(given("places"))
_ON_OBJECT = layer.c.object_id.in_(given("objects"))
_HAS_ROLE = func.lower(literal_column("+layer.role")).in_(given("roles"))
_WORK = select(intervention_person.c.intervention_id).where(
    intervention_person.c.person_id.in_(given("people"))
)
_AT_PLACES = layers(_IN_PLACE, meant(layer))
_ON_OBJECTS = layers(_ON_OBJECT, meant(layer))
_ROLE_AT_PLACES = layers(_IN_PLACE, _HAS_ROLE)
_ROLE_ON_OBJECTS = layers(_ON_OBJECT, _HAS_ROLE)
_LAID_BY = layers(layer.c.intervention_id.in_(_WORK.limit(_STEPS)), meant(layer))
_STEPS_BY = Question(
    select(
        *ABOUT,
        literal_column(
            "coalesce((SELECT p.mark FROM intervention_place i JOIN place p ON p.id = i.place_id"
            " WHERE i.intervention_id = intervention.id ORDER BY i.position LIMIT 1), '')"
        ).label("mark"),
        blank(intervention.c.technique).label("name"),
        blank(intervention.c.kind).label("kind"),
        intervention.c.ref,
        func.coalesce(intervention.c.date_words, intervention.c.date_edtf, "").label("date"),
        PEOPLE,
    )
    .outerjoin_from(intervention, object_, object_.c.id == intervention.c.object_id)
    .where(
        intervention.c.object_id.in_(given("objects")),
        _WORK.where(intervention_person.c.intervention_id == intervention.c.id).exists(),
    )
    .order_by(literal_column("+intervention.date_latest").desc())  # few are sorted
    .limit(ROWS)
)
_PARTS = Question(
    select(
        *ABOUT,
        component.c.mark,
        blank(component.c.name).label("name"),
        blank(component.c.kind).label("kind"),
        func.coalesce(material.c.name, material.c.key).label("material"),
        OWN_NAME.label("class_name"),
    )
    .outerjoin_from(component, object_, object_.c.id == component.c.object_id)
    .outerjoin(material, material.c.id == component.c.material_id)
    .outerjoin(material_class, material_class.c.id == material.c.class_id)
    .where(
        component.c.object_id.in_(given("objects")),
        literal_column("+component.material_id").in_(MATERIAL_IDS),
    )
    .limit(ROWS)
)


def _agents(at: ColumnElement[bool]) -> Question:
    """Agents of the materials or classes, found by where they were used."""
    return Question(
        select(
            *ABOUT,
            literal_column("''").label("mark"),
            blank(intervention.c.technique).label("name"),
            blank(intervention.c.ref).label("step"),
            agent.c.ref,
            matter_of(agent),
            OWN_NAME.label("class_name"),
        )
        .outerjoin_from(agent, object_, object_.c.id == agent.c.object_id)
        .outerjoin(intervention, intervention.c.id == agent.c.intervention_id)
        .outerjoin(material, material.c.id == agent.c.material_id)
        .outerjoin(material_class, class_of(agent))
        .where(at, meant(agent))
        .limit(ROWS)
    )


_STEPS_AT = select(intervention_place.c.intervention_id).where(
    intervention_place.c.place_id.in_(given("places"))
)
_USED_AT = _agents(
    agent.c.id.in_(
        all_of(
            select(agent_place.c.agent_id).where(agent_place.c.place_id.in_(given("places"))),
            select(agent.c.id).where(agent.c.intervention_id.in_(_STEPS_AT)),
        )
    )
)
_USED_ON = _agents(agent.c.object_id.in_(given("objects")))
STATEMENTS = (
    *(_AT_PLACES, _ON_OBJECTS, _ROLE_AT_PLACES, _ROLE_ON_OBJECTS, _LAID_BY),
    *(_STEPS_BY, _PARTS, _USED_AT, _USED_ON),
)
_BOUNDS = _AT_PLACES.at(BOUNDS[0])


def lying(
    connection: Connection, words: Sequence[str], day: int, most: int
) -> tuple[FoundGroup, ...]:
    """Places where something lies, parts made of it, and steps, that the words name together.

    Args:
        day: at the close of which the state of a layer is told.
        most: how many of a kind are given.
    """
    if not 1 < len(words) <= MOST_WORDS:
        return ()
    named = Named(connection)
    said: dict[tuple[str, str, str], _Met] = {}
    more = False
    spelt = (words, *find_numbered.as_marks(connection, words))
    for split in (split for one in spelt for split in _splits(named, one)):
        rows, cut = _rows(connection, named, split)
        more |= cut
        for kind, row in rows:
            which = row.ref if kind == "step" else row.mark or row.ref
            met = said.setdefault((kind, row.object, which), _Met(kind, []))
            met.matter.append((row, split))
    kinds = defaultdict(list)
    for key in sorted(said, key=lambda key: (sort_key(key[1]), sort_key(key[2]))):
        kinds[key[0]].append(said[key])
    return tuple(
        FoundGroup(kind, tuple(_hit(met, words, day) for met in of[:most]), len(of), more)
        for kind, of in sorted(kinds.items(), key=lambda one: _ORDER.index(one[0]))
    )


class _Met(NamedTuple):
    """A place, part, agent, step or unplaced layer: rows, each with what words mean."""

    kind: str
    matter: list[tuple[Row, Split]]


def _splits(named: Named, words: Sequence[str]) -> Iterator[Split]:
    """Every way to share the words out so that something bears each share, and some may meet."""
    choices = [named.kinds((word,)) for word in words]
    for kinds in itertools.islice(itertools.product(*choices), _WAYS):
        split = Split(*(_share(words, kinds, wanted) for wanted in Split._fields))
        if _may_meet(split) and named.bears(split):
            yield split


def _may_meet(split: Split) -> bool:
    """Whether it is asked what lies or was used somewhere, or what somebody did or laid."""
    if split.person:
        return not split.place and not split.role and bool(split.material or split.object)
    return bool(split.material or split.role) and bool(split.object or split.place)


def _share(words: Sequence[str], kinds: Sequence[str], wanted: str) -> tuple[str, ...]:
    return tuple(word for word, kind in zip(words, kinds, strict=True) if kind == wanted)


Found = tuple[list[tuple[str, Row]], bool]


def _rows(connection: Connection, named: Named, split: Split) -> Found:
    """What lies where the words say, with its kind; and whether there may be more."""
    if split.person:
        return _of_people(connection, named, split)
    meant = {name: json.dumps(ids) for name, ids in named.materials(split.material).items()}
    places, objects = named.places(split.place), named.objects(split.object)
    roles = named.roles(split.role)
    at = {"places": json.dumps(places), **meant}
    on = {"objects": json.dumps(objects), **meant}
    if not split.material:
        at["roles"] = on["roles"] = json.dumps(roles)
    on_objects = _ON_OBJECTS if split.material else _ROLE_ON_OBJECTS
    at_places = _AT_PLACES if split.material else _ROLE_AT_PLACES
    lying = on_objects.all(connection, **on) if objects else at_places.all(connection, **at)
    agents: list[Row] = []
    parts: list[Row] = []
    if not split.role:
        agents = _USED_AT.all(connection, **at) if places else _USED_ON.all(connection, **on)
        parts = _PARTS.all(connection, **on) if objects else []
    found = [
        ("place" if row.mark else "layer", row)
        for row in lying
        if not roles or fold(row.role) in roles
    ]
    found += [("component", row) for row in parts]
    if split.place:
        found = [one for one in found if holds_all(f"{one[1].mark} {one[1].name}", split.place)]
    found += [("agent", row) for row in agents if not objects or row.owner in objects]
    cut = len(objects) == find_meeting.MOST_OBJECTS or len(places) == find_meeting.PLACES
    return found, cut or ROWS in (len(lying), len(agents), len(parts))


def _of_people(connection: Connection, named: Named, split: Split) -> Found:
    """What people laid of a material, perhaps on some objects; or their steps on objects."""
    people, objects = named.people(split.person), named.objects(split.object)
    by = json.dumps(people)
    if not split.material:
        steps = _STEPS_BY.all(connection, people=by, objects=json.dumps(objects))
        found = [("step", row) for row in steps]
        return found, len(objects) == find_meeting.MOST_OBJECTS or len(found) == ROWS
    meant = {name: json.dumps(ids) for name, ids in named.materials(split.material).items()}
    laid = _LAID_BY.all(connection, people=by, **meant)
    found = [
        ("place" if row.mark else "layer", row)
        for row in laid
        if not objects or row.owner in objects
    ]
    return found, len(laid) == ROWS


def _matter(kind: str, row: Row, split: Split, day: int) -> str:
    """The material, with its class where that is what was looked for, and its state."""
    if kind == "step":
        return f"{row.name or row.kind or 'step'}, {row.people}"
    what, sought = row.material, split.material
    if row.class_name and not holds_all(what, sought) and holds_all(row.class_name, sought):
        what = f"{what} ({row.class_name})" if what else row.class_name
    if kind == "component":
        return f"made of {what}"
    if kind == "agent":
        return f"{what}, used in {row.step}" if row.step else what
    if not holds_all(what, split.role):
        what = f"{what or 'material not recorded'}, {row.role}"
    mask = possible(Bounds(*row[_BOUNDS : _BOUNDS + len(BOUNDS)]), day)
    told = f"{what}, {state_words(state(mask), names(mask))}"
    return f"{told}, laid in {row.step}, {row.people}" if split.person else told


def _hit(met: _Met, words: Sequence[str], day: int) -> Hit:
    row = met.matter[0][0]
    matter = dict.fromkeys(_matter(met.kind, one, split, day) for one, split in met.matter)
    at = row.ref if met.kind == "step" else row.mark or row.ref
    if met.kind == "layer":
        at += ", location not recorded"
    sentence = f"{at} of {row.object}: {'; '.join(matter)}"
    if row.title and not holds_all(sentence, words):
        sentence += f"; of {row.title}"
    found = spans(sentence, words)
    if met.kind == "step":
        label = ", ".join(filter(None, (row.kind, row.name)))
        detail = ", ".join(filter(None, (row.ref, row.date)))
        return Hit("step", row.object, row.mark, label, detail, sentence, found)
    label, detail = (row.material, row.ref) if row.mark == "" else (row.name, row.kind)
    return Hit(met.kind, row.object, row.mark, label, detail, sentence, found)
