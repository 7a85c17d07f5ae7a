"""What a researcher's question answers with: counts, and rows a page at a time."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from conservedb.dates import iso
from conservedb.knowledge.research import Research
from conservedb.questions.basics import When

CERTAIN, POSSIBLE, UNIDENTIFIED = "certain", "possible", "unidentified"
SURENESS = (CERTAIN, POSSIBLE, UNIDENTIFIED)
"""How far a row is an answer. Unidentified: it is one only if its matter, of which neither
material nor class is on record, is of the kind asked for."""
COLUMNS = (
    *("sureness", "object", "title", "place", "what", "ref", "material", "role", "kind"),
    *("people", "date", "state"),
)
"""The columns of a row, in their order; by each of them the rows can be sorted."""


class ResearchRow(NamedTuple):
    """One row; what does not belong to the kind of row asked for is "".

    Attributes:
        place: a mark; "J1 or J2" where a layer may lie at either, "J1, J2" where an agent was
            used at both.
        what: "layer" or "agent"; "" for other rows than layers.
        ref: of the layer or agent, or of the intervention; "" for rows of places and objects.
        material, matter: the key of the material, and its name; else the words found or the class.
        date: when it was done, in the words found, and of a layer the days that all else on record
            leaves of it; of a place or object the first of these.
        state: of a layer, on the day that is today for the question.
        layers: how many layers, uses of agents and other steps answer here, of those that do so
            most surely; 1 for rows of layers, none where it was asked only what is not there.
    """

    sureness: str
    object: str
    title: str
    place: str
    what: str
    ref: str
    intervention: str
    material: str
    matter: str
    role: str
    kind: str
    people: str
    date: When
    state: str
    layers: int

    @property
    def dated(self) -> str:
        """The date as the trade says it; where none was written down, the days that are left.

        "" of a row that was asked only what is not there.
        """
        if self.date.recorded or not self.layers:
            return self.date.said if self.layers else ""
        first, last = iso(self.date.earliest), iso(self.date.latest)
        return f"undated; between {first} and {last}" if first and last else "undated"


@dataclass(frozen=True, slots=True)
class Counts:
    """How many rows answer, apart by how far they do."""

    certain: int
    possible: int
    unidentified: int

    @property
    def total(self) -> int:
        """All rows of the answer."""
        return self.certain + self.possible + self.unidentified

    @property
    def sentence(self) -> str:
        """ "214 certainly, 37 possibly, 12 unidentified"."""
        return (
            f"{self.certain:,} certainly, {self.possible:,} possibly,"
            f" {self.unidentified:,} unidentified"
        )


@dataclass(frozen=True, slots=True)
class Page:
    """Some rows of an answer, in an order."""

    research: Research
    rows: tuple[ResearchRow, ...]
    start: int
