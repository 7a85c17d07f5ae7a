"""A researcher's question: conditions on what was laid or used, joined by and, or, not.

The question is about occurrences: a layer at a place, an agent that an intervention used, or an
intervention of which neither is on record. Each condition holds of an occurrence certainly,
possibly or not; together they do too. A place, an intervention or an object answers that has
such a one; `Has` asks that of each of several, which need not be the same, and of "none". How
the words of a question are read stands in `research_words`.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeAlias

NO, POSSIBLE, CERTAIN = 0, 1, 2
"""How far a condition holds; "and" takes the least, "or" the most, "not" turns them round."""

ROWS = ("layers", "places", "interventions", "objects")
"""What the rows of the answer may be; a row holds as far as the best of its occurrences."""

FIELDS = {
    "material": "a material or a class of materials, with everything below it",
    "as": "whether it was laid (layer) or only used (agent)",
    "role": "the role of a layer: adhesive, fill, coating ...",
    "kind": "the kind of intervention that laid or used it",
    "aim": "an aim of that intervention: preventive, remedial, restoration",
    "technique": "words of its technique",
    "person": "a person who took part in it",
    "date": "when it was done: a day, a year, a span",
    "object": "the number of an object, or words of its title",
    "object kind": "what the object is",
    "part material": "the material of the part that bears it, or its class",
    "environment": "where the object was kept when it was done: outdoors, display, storage ...",
    "state": "how a layer stands on a day; there: in place or partly removed; perhaps: more than"
    " one state is possible",
    "observed": "a condition observed at the place afterwards",
    "source": "the kind of paper that it is known from",
    "identified": "how well the material is known: analysed, inferred ...",
    "reversibility": "what is known of its removal as a material of its kind",
    "rule": "a rule of the trade that is broken by it or where it is, by its key",
}
"""The fields that a condition may be about, each with what its value means."""

STATES = ("there", "in place", "partly removed", "gone", "not yet", "perhaps")
"""How a layer may stand. There: in place or partly removed; perhaps: several are possible."""
EVER = "ever"


@dataclass(frozen=True, slots=True)
class Condition:
    """One field and a value; a state has a day too.

    Attributes:
        on: the day of a state: "" for today, "ever" for any day up to today.
        certainly: whether what holds only possibly does not count.
    """

    field: str
    value: str
    on: str = ""
    certainly: bool = False


@dataclass(frozen=True, slots=True)
class Not:
    """What does not hold."""

    part: Tree


@dataclass(frozen=True, slots=True)
class And:
    """All of these hold; none at all holds of everything."""

    parts: tuple[Tree, ...] = ()


@dataclass(frozen=True, slots=True)
class Or:
    """At least one of these holds."""

    parts: tuple[Tree, ...]


@dataclass(frozen=True, slots=True)
class Has:
    """A row has at least one occurrence of which all of these hold; negated, it has none."""

    parts: tuple[Tree, ...] = ()


Tree: TypeAlias = "Condition | Not | And | Or | Has"


@dataclass(frozen=True, slots=True)
class Research:
    """A whole question: what the rows are, and the conditions."""

    rows: str = "layers"
    where: Tree = And()


_OF_OBJECT = ("object", "object kind")
OF_ROWS = {
    "layers": (),
    "places": (*_OF_OBJECT, "part material", "rule"),
    "interventions": _OF_OBJECT,
    "objects": (*_OF_OBJECT, "rule"),
}
"""The conditions that a row answers by itself, whether or not anything was laid or used there."""


def conditions(tree: Tree) -> Iterator[Condition]:
    """Every condition of a question, from the left."""
    if isinstance(tree, Condition):
        yield tree
        return
    for part in parts_of(tree):
        yield from conditions(part)


def parts_of(tree: Tree) -> tuple[Tree, ...]:
    """What stands directly within: of a condition nothing."""
    if isinstance(tree, Condition):
        return ()
    return (tree.part,) if isinstance(tree, Not) else tree.parts


def asks_has(tree: Tree) -> bool:
    """Whether `Has` stands anywhere in it."""
    return isinstance(tree, Has) or any(map(asks_has, parts_of(tree)))


def each_has(tree: Tree) -> Iterator[Has]:
    """Every `Has` of a question, from the left."""
    if isinstance(tree, Has):
        yield tree
        return
    for part in parts_of(tree):
        yield from each_has(part)


def on_rows(tree: Tree, rows: str) -> Tree:
    """The same asked of rows: `Has`, and conditions that a row answers by itself.

    Conditions of an occurrence that are joined by "and" are asked of one and the same.
    """
    if isinstance(tree, Has):
        whole = joined(And, tree.parts)
        return whole if _by_itself(whole, rows) else tree
    if _by_itself(tree, rows):
        return tree
    if isinstance(tree, And):
        one = tuple(part for part in tree.parts if not asks_has(part))
        rest = tuple(on_rows(part, rows) for part in tree.parts if asks_has(part))
        apart = not one or _by_itself(And(one), rows)
        return joined(And, (*rest, *one) if apart else (*rest, Has(one)))
    if isinstance(tree, Or):
        bare = tuple(part for part in tree.parts if _of_occurrences(part, rows))
        rest = tuple(on_rows(part, rows) for part in tree.parts if part not in bare)
        return joined(Or, (*rest, Has((joined(Or, bare),))) if bare else rest)
    if isinstance(tree, Not) and asks_has(tree.part):
        return Not(on_rows(tree.part, rows))
    return Has((tree,))


def with_condition(tree: Tree, rows: str, condition: Condition) -> Tree:
    """The same with one more condition on each occurrence that is asked for."""
    if asks_has(tree):
        return _within_has(on_rows(tree, rows), condition)
    parts = tree.parts if isinstance(tree, And) else (tree,)
    return And((*parts, condition)) if parts else condition


def _within_has(tree: Tree, condition: Condition) -> Tree:
    if isinstance(tree, Condition):
        return tree
    if isinstance(tree, Not):
        return Not(_within_has(tree.part, condition))
    if isinstance(tree, Has):
        return Has((*tree.parts, condition))
    return type(tree)(tuple(_within_has(part, condition) for part in tree.parts))


def joined(kind: type[And] | type[Or], parts: tuple[Tree, ...]) -> Tree:
    """Parts joined by and or by or; one alone as it is."""
    return parts[0] if len(parts) == 1 else kind(parts)


def _by_itself(tree: Tree, rows: str) -> bool:
    """Whether it has conditions, and a row answers each by itself."""
    fields = [one.field for one in conditions(tree)]
    return bool(fields) and all(field in OF_ROWS[rows] for field in fields) and not asks_has(tree)


def _of_occurrences(tree: Tree, rows: str) -> bool:
    return not asks_has(tree) and not _by_itself(tree, rows)
