"""What words may name that meet in several records of one object, and the layers where they meet.

Only the newest of what is called so is looked at: 20 objects, 500 places, 60 materials, as many
classes and as many people.
"""

from __future__ import annotations

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

from conservedb.knowledge.roles import ROLES
from conservedb.questions.asking import Question, Selection, blank
from conservedb.questions.find_words import holds_all
from conservedb.questions.meanings import classes_below
from conservedb.questions.research_on_record import terms
from conservedb.records.layers import BOUNDS, layer
from conservedb.records.materials import material, material_class
from conservedb.records.objects import object_
from conservedb.records.places import place
from conservedb.records.treatments import intervention
from conservedb.store import search
from conservedb.store.keys import fold

MOST_OBJECTS = 20
PLACES = 500
MATERIALS = 60
MOST_PEOPLE = 60
ROWS = 1000
_SHORTEST_ROLE = 3
"""Letters with which a word of a role is begun."""


class Split(NamedTuple):
    """Words shared out among what they name."""

    object: tuple[str, ...] = ()
    place: tuple[str, ...] = ()
    material: tuple[str, ...] = ()
    role: tuple[str, ...] = ()
    person: tuple[str, ...] = ()


def given(name: str) -> Selection:
    """The ids of a list in JSON."""
    return select(func.json_each(bindparam(name)).table_valued("value").alias("wanted").c.value)


_CLASSES = classes_below(
    select(material_class.c.id).where(material_class.c.id.in_(given("classes")))
)
MATERIAL_IDS = all_of(
    given("materials"), select(material.c.id).where(material.c.class_id.in_(_CLASSES))
)
OWN_NAME = blank(material_class.c.name)
ABOUT = (
    object_.c.id.label("owner"),
    object_.c.number.label("object"),
    blank(object_.c.title).label("title"),
)

PEOPLE: ColumnElement[str] = literal_column(
    "coalesce((SELECT group_concat(p.name, ', ') FROM person p WHERE p.id IN"
    " (SELECT i.person_id FROM intervention_person i WHERE i.intervention_id = intervention.id)),"
    " '')"
).label("people")
"""Who took part in an intervention."""


def meant(table: Table) -> ColumnElement[bool]:
    """Whether a row is of the materials or classes: +, so that it is not looked up by these."""
    return or_(
        literal_column(f"+{table.name}.material_id").in_(MATERIAL_IDS),
        literal_column(f"+{table.name}.material_class_id").in_(_CLASSES),
    )


def class_of(table: Table) -> ColumnElement[bool]:
    """Whether a class is that of the material of a row, or the class where only that is known."""
    return material_class.c.id == func.coalesce(material.c.class_id, table.c.material_class_id)


def matter_of(table: Table) -> ColumnElement[str]:
    """What the material of a row is called, else the words that were found for it."""
    named = func.coalesce(material.c.name, material.c.key, table.c.material_words, "")
    return named.label("material")


def layers(at: ColumnElement[bool], which: ColumnElement[bool]) -> Question:
    """Layers of some materials or roles, found by where they lie or who laid them."""
    return Question(
        select(
            *ABOUT,
            blank(place.c.mark).label("mark"),
            blank(place.c.name).label("name"),
            blank(place.c.kind).label("kind"),
            layer.c.ref,
            blank(layer.c.role).label("role"),
            blank(intervention.c.ref).label("step"),
            PEOPLE,
            matter_of(layer),
            OWN_NAME.label("class_name"),
            *(layer.c[name] for name in BOUNDS),
        )
        .outerjoin_from(layer, object_, object_.c.id == layer.c.object_id)
        .outerjoin(place, place.c.id == layer.c.place_id)
        .outerjoin(intervention, intervention.c.id == layer.c.intervention_id)
        .outerjoin(material, material.c.id == layer.c.material_id)
        .outerjoin(material_class, class_of(layer))
        .where(at, which)
        .limit(ROWS)
    )


class Named:
    """What bears some words as its name, asked for once each."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._known: dict[tuple[str, tuple[str, ...]], list[int]] = {}
        self._roles: tuple[str, ...] | None = None

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
        return self.ids("place", words, PLACES)

    def materials(self, words: tuple[str, ...]) -> dict[str, list[int]]:
        """The materials and the classes called so."""
        return {
            "materials": self.ids("material", words, MATERIALS),
            "classes": self.ids("material_class", words, MATERIALS),
        }

    def people(self, words: tuple[str, ...]) -> list[int]:
        """The people called so."""
        return self.ids("person", words, MOST_PEOPLE)

    def roles(self, words: tuple[str, ...]) -> list[str]:
        """The roles of layers, of the trade and of the department, that are called so."""
        if not words or any(len(word) < _SHORTEST_ROLE for word in words):
            return []
        if self._roles is None:
            listed = (*ROLES, *terms(self._connection, "role"))
            self._roles = tuple(dict.fromkeys(map(fold, listed)))
        return [role for role in self._roles if holds_all(role, words)]

    def kinds(self, words: tuple[str, ...]) -> list[str]:
        """What all of these words may name together: fields of `Split`."""
        found = {
            "object": self.objects(words),
            "place": self.places(words),
            "material": any(self.materials(words).values()),
            "role": self.roles(words),
            "person": self.people(words),
        }
        return [kind for kind, some in found.items() if some]

    def bears(self, split: Split) -> bool:
        """Whether something bears each share of the words."""
        shares = split._asdict().items()
        return all(kind in self.kinds(words) for kind, words in shares if words)
