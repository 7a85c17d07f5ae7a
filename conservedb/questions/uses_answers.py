"""What the question for a material answers with; rows stay as the database gave them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from conservedb.knowledge.layers import names, state
from conservedb.questions.answers import AsOf, When
from conservedb.records.layers import IDENTIFIED

DERIVED = ("edtf", "words", "decided", "not understood", "blank")
"""How a date was derived; result rows carry the place in this list."""


class UsesLayer(NamedTuple):
    """A layer whose material is, was or may be the one asked for, at one of its places.

    Words that thousands of rows share are numbers here: fewer bytes, and faster.

    Attributes:
        identified_at: place in IDENTIFIED, -1 where not recorded.
        mask: the sum of the numbers of the states possible on the day.
        certain: 1 where material, place, state and dates are all sure, else 0.
        several: 1 where the layer is recorded for several places, and this is one of them.
        laid_edtf: "" where the words are EDTF.
        laid_derived: place in DERIVED.
    """

    object: str
    place: str
    layer: str
    material: str | None
    material_words: str
    role: str
    identified_at: int
    mask: int
    certain: int
    several: int
    laid_words: str
    laid_edtf: str
    laid_earliest: int
    laid_latest: int
    laid_flags: int
    laid_derived: int

    @property
    def identified(self) -> str:
        """How well its identity is known; "" where not recorded."""
        return IDENTIFIED[self.identified_at] if self.identified_at >= 0 else ""

    @property
    def state(self) -> str:
        """The state on the day, or "uncertain"."""
        return "uncertain" if self.several else state(self.mask)

    @property
    def possible(self) -> tuple[str, ...]:
        """The states possible on the day, in the order of time."""
        return names(self.mask)

    @property
    def laid(self) -> When:
        """When the layer came."""
        derived = DERIVED[self.laid_derived]
        edtf = self.laid_words if derived == "edtf" else self.laid_edtf
        return When(
            self.laid_words, edtf, self.laid_earliest, self.laid_latest, self.laid_flags, derived
        )


class AgentUse(NamedTuple):
    """An intervention that used the material as an agent; `certain` where the material is sure."""

    object: str
    intervention: str
    agent: str
    material: str | None
    material_words: str
    places: tuple[str, ...]
    date: When
    concentration: str
    form: str
    cleared: str
    certain: bool


@dataclass(frozen=True, slots=True)
class UsesAnswer:
    """Where a material, or a class with everything below it, lies, lay or may lie.

    Attributes:
        kind: "material" or "material class".
        layers_certain, layers_possible: in the order of entry.
        unidentified: how many layers have neither material nor class on record, whatever they
            were called, without those that are possible since a statement names the material.
        unidentified_agents: how many uses as an agent have neither.
        recipes: keys of materials that contain it as a part, and are not counted here.
    """

    word: str
    kind: str
    key: str
    name: str
    on: AsOf
    layers_certain: tuple[UsesLayer, ...]
    layers_possible: tuple[UsesLayer, ...]
    agents_certain: tuple[AgentUse, ...]
    agents_possible: tuple[AgentUse, ...]
    unidentified: int
    unidentified_agents: int
    recipes: tuple[str, ...]
