"""Words that meet in no record of their own, and do in several of one object.

"fountain acrylic" is the title of an object and the class of a material; "cellulose nitrate J07" a
material and the mark of a place. Each word is taken to name an object, a place or a material, in
every way in which something bears the words so shared out; where a layer of the material lies at
the place or on the object, a part is made of it, or it was used there as an agent, that is the
answer. Only the newest of
what is called so is looked at: 20 objects, 500 places, 60 materials and as many classes. More than
five words are not shared out.
"""

from __future__ import annotations

import itertools
import json
from collections import defaultdict
from collections.abc import Iterator, Sequence
from functools import partial
from typing import NamedTuple

from sqlalchemy import (
    ColumnElement,
    Connection,
    Table,
    bindparam,
    func,
    literal_column,
    or_,
    select,
)
from sqlalchemy import union_all as all_of

from conservedb.knowledge.layers import Bounds, names, possible, state
from conservedb.questions.answers import Hit
from conservedb.questions.asking import Question, Row, Selection, blank
from conservedb.questions.find_answers import FoundGroup
from conservedb.questions.find_words import holds_all, spans
from conservedb.questions.meanings import classes_below
from conservedb.questions.wording import state_words
from conservedb.records.layers import BOUNDS, layer
from conservedb.records.materials import material, material_class
from conservedb.records.objects import component, object_
from conservedb.records.places import place
from conservedb.records.treatments import agent, agent_place, intervention, intervention_place
from conservedb.store import search
from conservedb.store.keys import sort_key

MOST_WORDS = 5
MOST_OBJECTS = 20
_PLACES = 500
_MATERIALS = 60
_ROWS = 1000
_ORDER = ("place", "layer", "component", "agent")


class Split(NamedTuple):
    """Words shared out among what they name."""

    object: tuple[str, ...]
    place: tuple[str, ...]
    material: tuple[str, ...]


def _given(name: str) -> Selection:
    """The ids of a list in JSON."""
    return select(func.json_each(bindparam(name)).table_valued("value").alias("wanted").c.value)


_CLASSES = classes_below(
    select(material_class.c.id).where(material_class.c.id.in_(_given("classes")))
)
_MATERIAL_IDS = all_of(
    _given("materials"), select(material.c.id).where(material.c.class_id.in_(_CLASSES))
)
_OWN_NAME = blank(material_class.c.name)
_ABOUT = (
    object_.c.id.label("owner"),
    object_.c.number.label("object"),
    blank(object_.c.title).label("title"),
)


def _meant(table: Table) -> ColumnElement[bool]:
    """Whether a row is of the materials or classes: +, so that it is not looked up by these."""
    return or_(
        literal_column(f"+{table.name}.material_id").in_(_MATERIAL_IDS),
        literal_column(f"+{table.name}.material_class_id").in_(_CLASSES),
    )


def _class_of(table: Table) -> ColumnElement[bool]:
    return material_class.c.id == func.coalesce(material.c.class_id, table.c.material_class_id)


def _matter_of(table: Table) -> ColumnElement[str]:
    named = func.coalesce(material.c.name, material.c.key, table.c.material_words, "")
    return named.label("material")


def _layers(at: ColumnElement[bool]) -> Question:
    """Layers of the materials or classes, found by where they lie."""
    return Question(
        select(
            *_ABOUT,
            blank(place.c.mark).label("mark"),
            blank(place.c.name).label("name"),
            blank(place.c.kind).label("kind"),
            layer.c.ref,
            _matter_of(layer),
            _OWN_NAME.label("class_name"),
            *(layer.c[name] for name in BOUNDS),
        )
        .outerjoin_from(layer, object_, object_.c.id == layer.c.object_id)
        .outerjoin(place, place.c.id == layer.c.place_id)
        .outerjoin(material, material.c.id == layer.c.material_id)
        .outerjoin(material_class, _class_of(layer))
        .where(at, _meant(layer))
        .limit(_ROWS)
    )


_AT_PLACES = _layers(layer.c.place_id.in_(_given("places")))
_ON_OBJECTS = _layers(layer.c.object_id.in_(_given("objects")))
_PARTS = Question(
    select(
        *_ABOUT,
        component.c.mark,
        blank(component.c.name).label("name"),
        blank(component.c.kind).label("kind"),
        func.coalesce(material.c.name, material.c.key).label("material"),
        _OWN_NAME.label("class_name"),
    )
    .outerjoin_from(component, object_, object_.c.id == component.c.object_id)
    .outerjoin(material, material.c.id == component.c.material_id)
    .outerjoin(material_class, material_class.c.id == material.c.class_id)
    .where(
        component.c.object_id.in_(_given("objects")),
        literal_column("+component.material_id").in_(_MATERIAL_IDS),
    )
    .limit(_ROWS)
)


def _agents(at: ColumnElement[bool]) -> Question:
    """Agents of the materials or classes, found by where they were used."""
    return Question(
        select(
            *_ABOUT,
            literal_column("''").label("mark"),
            blank(intervention.c.technique).label("name"),
            blank(intervention.c.ref).label("step"),
            agent.c.ref,
            _matter_of(agent),
            _OWN_NAME.label("class_name"),
        )
        .outerjoin_from(agent, object_, object_.c.id == agent.c.object_id)
        .outerjoin(intervention, intervention.c.id == agent.c.intervention_id)
        .outerjoin(material, material.c.id == agent.c.material_id)
        .outerjoin(material_class, _class_of(agent))
        .where(at, _meant(agent))
        .limit(_ROWS)
    )


_STEPS_AT = select(intervention_place.c.intervention_id).where(
    intervention_place.c.place_id.in_(_given("places"))
)
_USED_AT = _agents(
    agent.c.id.in_(
        all_of(
            select(agent_place.c.agent_id).where(agent_place.c.place_id.in_(_given("places"))),
            select(agent.c.id).where(agent.c.intervention_id.in_(_STEPS_AT)),
        )
    )
)
_USED_ON = _agents(agent.c.object_id.in_(_given("objects")))
STATEMENTS = (_AT_PLACES, _ON_OBJECTS, _PARTS, _USED_AT, _USED_ON)
_BOUNDS = _AT_PLACES.at(BOUNDS[0])


class _Named:
    """What bears some words as its name, asked for once each."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._known: dict[tuple[str, tuple[str, ...]], list[int]] = {}

    def ids(self, table: str, words: tuple[str, ...], most: int) -> list[int]:
        """The newest records of a table called so."""
        if not words:
            return []
        if (table, words) not in self._known:
            found = search.within(self._connection, words, table, most=most)
            self._known[table, words] = found
        return self._known[table, words]

    def objects(self, words: tuple[str, ...]) -> list[int]:
        """The newest objects called so."""
        return self.ids("object", words, MOST_OBJECTS)

    def places(self, words: tuple[str, ...]) -> list[int]:
        """The newest places called so."""
        return self.ids("place", words, _PLACES)

    def materials(self, words: tuple[str, ...]) -> dict[str, list[int]]:
        """The materials and the classes called so."""
        return {
            "materials": self.ids("material", words, _MATERIALS),
            "classes": self.ids("material_class", words, _MATERIALS),
        }

    def bears(self, split: Split) -> bool:
        """Whether something bears each share of the words."""
        return (
            (not split.object or bool(self.objects(split.object)))
            and (not split.place or bool(self.places(split.place)))
            and any(self.materials(split.material).values())
        )


def lying(
    connection: Connection, words: Sequence[str], day: int, most: int
) -> tuple[FoundGroup, ...]:
    """Places where a material lies, and parts made of it, that the words name together.

    Args:
        day: at the close of which the state of a layer is told.
        most: how many of a kind are given.
    """
    if not 1 < len(words) <= MOST_WORDS:
        return ()
    named = _Named(connection)
    said: dict[tuple[str, str, str], _Met] = {}
    more = False
    for split in _splits(named, words):
        rows, cut = _rows(connection, named, split)
        more |= cut
        for kind, row in rows:
            which = row.mark or row.ref
            met = said.setdefault((kind, row.object, which), _Met(kind, []))
            met.matter.append((row, split.material))
    kinds = defaultdict(list)
    for key in sorted(said, key=lambda key: (sort_key(key[1]), sort_key(key[2]))):
        kinds[key[0]].append(said[key])
    return tuple(
        FoundGroup(kind, tuple(_hit(met, words, day) for met in of[:most]), len(of), more)
        for kind, of in sorted(kinds.items(), key=lambda one: _ORDER.index(one[0]))
    )


class _Met(NamedTuple):
    """A place, a part, an agent or an unplaced layer: rows, each with the words for its matter."""

    kind: str
    matter: list[tuple[Row, Sequence[str]]]


def _splits(named: _Named, words: Sequence[str]) -> Iterator[Split]:
    """Every way to share the words out so that something bears each share."""
    choices = [
        [
            kind
            for kind, found in (
                ("object", named.objects((word,))),
                ("place", named.places((word,))),
                ("material", any(named.materials((word,)).values())),
            )
            if found
        ]
        for word in words
    ]
    for kinds in itertools.product(*choices):
        share = partial(_share, words, kinds)
        split = Split(share("object"), share("place"), share("material"))
        if split.material and (split.object or split.place) and named.bears(split):
            yield split


def _share(words: Sequence[str], kinds: Sequence[str], wanted: str) -> tuple[str, ...]:
    return tuple(word for word, kind in zip(words, kinds, strict=True) if kind == wanted)


def _rows(
    connection: Connection, named: _Named, split: Split
) -> tuple[list[tuple[str, Row]], bool]:
    """What lies where the words say, with its kind; and whether there may be more."""
    meant = {name: json.dumps(ids) for name, ids in named.materials(split.material).items()}
    places, objects = named.places(split.place), named.objects(split.object)
    at = {"places": json.dumps(places), **meant}
    on = {"objects": json.dumps(objects), **meant}
    layers = _ON_OBJECTS.all(connection, **on) if objects else _AT_PLACES.all(connection, **at)
    agents = _USED_AT.all(connection, **at) if places else _USED_ON.all(connection, **on)
    parts = _PARTS.all(connection, **on) if objects else []
    found = [("place" if row.mark else "layer", row) for row in layers]
    found += [("component", row) for row in parts]
    if split.place:
        found = [one for one in found if holds_all(f"{one[1].mark} {one[1].name}", split.place)]
    found += [("agent", row) for row in agents if not objects or row.owner in objects]
    cut = len(objects) == MOST_OBJECTS or len(places) == _PLACES
    return found, cut or _ROWS in (len(layers), len(agents), len(parts))


def _matter(kind: str, row: Row, sought: Sequence[str], day: int) -> str:
    """The material, with its class where that is what was looked for, and its state."""
    what = row.material
    if row.class_name and not holds_all(what, sought) and holds_all(row.class_name, sought):
        what = f"{what} ({row.class_name})" if what else row.class_name
    if kind == "component":
        return f"made of {what}"
    if kind == "agent":
        return f"{what}, used in {row.step}" if row.step else what
    mask = possible(Bounds(*row[_BOUNDS : _BOUNDS + len(BOUNDS)]), day)
    return f"{what}, {state_words(state(mask), names(mask))}"


def _hit(met: _Met, words: Sequence[str], day: int) -> Hit:
    row = met.matter[0][0]
    matter = dict.fromkeys(_matter(met.kind, one, sought, day) for one, sought in met.matter)
    at = row.mark or row.ref
    if met.kind == "layer":
        at += ", location not recorded"
    sentence = f"{at} of {row.object}: {'; '.join(matter)}"
    if row.title and not holds_all(sentence, words):
        sentence += f"; of {row.title}"
    label, detail = (row.material, row.ref) if row.mark == "" else (row.name, row.kind)
    return Hit(met.kind, row.object, row.mark, label, detail, sentence, spans(sentence, words))
