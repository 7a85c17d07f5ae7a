"""A researcher's question: conditions on what was laid or used, joined by and, or, not.

The question is about occurrences: a layer at a place, or an agent that an intervention used. Each
condition holds of an occurrence certainly, possibly or not; together they do too. How the words
of a question are read stands in `research_words`.
"""

from __future__ import annotations

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
    "state": "how a layer stands on a day: in place, partly removed, gone, not yet, there",
    "observed": "a condition observed at the place afterwards",
    "source": "the kind of paper that it is known from",
    "identified": "how well the material is known: analysed, inferred ...",
    "reversibility": "what is known of its removal as a material of its kind",
    "rule": "a rule of the trade that is broken there, by its key",
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


Tree: TypeAlias = "Condition | Not | And | Or"


@dataclass(frozen=True, slots=True)
class Research:
    """A whole question: what the rows are, and the conditions."""

    rows: str = "layers"
    where: Tree = And()
