"""What the question for a warmer room answers with; rows stay as the database gave them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby
from typing import NamedTuple

from conservedb.knowledge.rule_warmth import MAY_CREEP, SOFTENS
from conservedb.questions.basics import AsOf

EFFECTS = (SOFTENS, MAY_CREEP)
LEAST_C, MOST_C = -50.0, 150.0
"""Between these a temperature can be asked for: colder than any store, hotter than any van."""
CAUTIONS = (
    "Published figures are of fresh or tested material, not of this layer: a joint that is not"
    " listed is not said to hold.",
    "Joints that are open on the day are left out; layers on surfaces are not counted.",
    "Local codes and the judgement of licensed practitioners come first.",
)


class WhatIfLayer(NamedTuple):
    """A layer at a joint that softens or may creep; rows sort by what they begin with.

    Attributes:
        unsure: 0 where nothing is doubtful, and the figure is more than a memory and does not
            rest on solvent that may remain; else 1.
        effect_at: place in EFFECTS.
        lightness: the load in kg, below zero; 0 where none is recorded.
        margin_c: degrees between the temperature and the figure that counts.
        young: 1 where solvent may remain and lowers the figure.
        doubtful: 0 where the layer is certainly there, and of that material; else 1.
        load_kg: None where not recorded.
        figure: place in `WhatIfAnswer.figures`.
    """

    unsure: int
    effect_at: int
    lightness: float
    margin_c: float
    object_sort: str
    place_id: int
    layer_id: int
    object: str
    place: str
    name: str
    layer: str
    role: str
    young: int
    doubtful: int
    carrier: str
    load_kg: float | None
    figure: int

    @property
    def effect(self) -> str:
        """ "softens" or "may creep"."""
        return EFFECTS[self.effect_at]


class Figure(NamedTuple):
    """The figures of one material: the lowest that counts, each in words, and their sources."""

    material: str
    name: str
    low: float
    lines: tuple[str, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class WhatIfAnswer:
    """Joints that may creep or soften at a temperature, those of most consequence first.

    Attributes:
        object: the number of the only object asked about, "" for the whole collection.
        figures: the materials concerned; rows point into it.
        without_figure: layers at joints of a material without a softening figure, by its name.
        class_only, unidentified: layers at joints of which no more than that is known.
        soft_metal: layers in loaded joints of metal that is of lead or tin, by its name; how far
            it creeps under load is not recorded.
        not_creeping: layers at joints, without a figure, that are mineral or metal, or recorded
            as not creeping under load.
    """

    temperature: float
    on: AsOf
    object: str
    margin: float
    depression: float
    layers: tuple[WhatIfLayer, ...]
    figures: tuple[Figure, ...]
    joints: int
    objects: int
    without_figure: tuple[tuple[str, int], ...]
    class_only: int
    unidentified: int
    not_creeping: int
    notes: tuple[str, ...]
    soft_metal: tuple[tuple[str, int], ...] = ()

    def by_joint(self) -> Iterator[tuple[WhatIfLayer, ...]]:
        """The layers of each joint together, joints in the order of their worst layer."""
        first: dict[int, int] = {}
        for at, row in enumerate(self.layers):
            first.setdefault(row.place_id, at)
        together = sorted(self.layers, key=lambda row: first[row.place_id])
        for _, rows in groupby(together, key=lambda row: row.place_id):
            yield tuple(rows)
