"""What the question about a material answers with; every value says how it is known.

`of` names the material whose value it is, where that is another one as which this one behaves;
it is "" for a value of its own.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from conservedb.knowledge.behaviour import Hansen
from conservedb.knowledge.solvents import Teas
from conservedb.questions.basics import AsOf, Source, When
from conservedb.questions.uses_answers import AgentUse, UsesLayer

BANNER = "Not a safety data sheet. Read the supplier's sheet and your local code."
"""What stands over the hazards of a material, wherever they are shown."""
UNCONFIRMED = "from memory, not confirmed"


class Name(NamedTuple):
    """A material or class by its key and name."""

    key: str
    name: str

    @property
    def said(self) -> str:
        """The name, with the key where it says something else."""
        return self.name if self.key == self.name else f"{self.name} ({self.key})"


class Part(NamedTuple):
    """A part of a recipe."""

    key: str
    name: str
    amount: float | None
    unit: str
    note: str


@dataclass(frozen=True, slots=True)
class Told:
    """How a value is known: `basis` is a word of the records, "" where nobody wrote it down."""

    basis: str
    source: Source | None
    confirmed_by: str
    confirmed: When
    note: str

    @property
    def standing(self) -> str:
        """The basis in words; what is remembered and not confirmed always says so."""
        day = f", {self.confirmed.said}" if self.confirmed.recorded else ""
        confirmed = f"confirmed by {self.confirmed_by}{day}" if self.confirmed_by else ""
        if self.basis == "from memory" and not confirmed:
            return UNCONFIRMED
        basis = self.basis or "how it is known is not recorded"
        return f"{basis}, {confirmed}" if confirmed else basis

    @property
    def unsure(self) -> bool:
        """Whether it is remembered and nobody has confirmed it."""
        return self.standing == UNCONFIRMED


@dataclass(frozen=True, slots=True)
class Value:
    """A value of a property: a number, a range, words, or a number with words."""

    low: float | None
    high: float | None
    unit: str
    words: str
    condition: str
    told: Told
    of: str = ""

    @property
    def said(self) -> str:
        """The value with its unit."""
        if self.low is None:
            return self.words or "not recorded"
        high = self.low if self.high is None else self.high
        figure = f"{self.low:g}" if high == self.low else f"{self.low:g} to {high:g}"
        unit = f" ({self.unit})" if "=" in self.unit else f" {self.unit}" if self.unit else ""
        return f"{figure}{unit}{f', {self.words}' if self.words else ''}"


@dataclass(frozen=True, slots=True)
class Property:
    """All values of one property, side by side.

    `differ` is "" where sources do not contradict each other, else how they do.
    """

    name: str
    values: tuple[Value, ...]
    differ: str


@dataclass(frozen=True, slots=True)
class Parameters:
    """Published Hansen parameters, in MPa^0.5; with `r0` the sphere of a polymer.

    `converted` are the Teas fractions that follow from them; published ones are kept apart.
    """

    at: Hansen
    r0: float | None
    use: str
    quality: str
    condition: str
    preferred: bool
    converted: Teas
    told: Told
    of: str = ""


@dataclass(frozen=True, slots=True)
class Fractions:
    """Published Teas fractions."""

    at: Teas
    told: Told
    of: str = ""


@dataclass(frozen=True, slots=True)
class Solubility:
    """What an agent was seen to do: `state` is "fresh", "aged" or "not stated"."""

    agent: str
    state: str
    effect: str
    form: str
    temperature_c: float | None
    dwell_min: float | None
    condition: str
    told: Told
    of: str = ""

    @property
    def use(self) -> str:
        """How the agent was used, in words; "" where nobody wrote it down."""
        warm = f"{self.temperature_c:g} C" if self.temperature_c is not None else ""
        long = f"{self.dwell_min:g} min" if self.dwell_min is not None else ""
        return ", ".join(one for one in (self.form, warm, long) if one)


@dataclass(frozen=True, slots=True)
class TraitRow:
    """A trait: `bearer` is the material or class that has it, `inherited` whether a class.

    Of several rows for one trait the nearest counts; the others are set aside.
    """

    trait: str
    holds: str
    effect: str
    bearer: Name
    inherited: bool
    counts: bool
    told: Told


@dataclass(frozen=True, slots=True)
class Period:
    """A date of a substance: first made, in use from, given up."""

    mark: str
    date: When
    told: Told
    of: str = ""


@dataclass(frozen=True, slots=True)
class HazardRow:
    """A hazard statement; `band` is "A" (mildest) to "D" or ""."""

    code: str
    wording: str
    band: str
    checked: When
    told: Told


@dataclass(frozen=True, slots=True)
class LimitRow:
    """An exposure limit; `ratio` is how many times saturated air exceeds it, None if unknown."""

    kind: str
    ppm: float | None
    mg_m3: float | None
    skin: str
    jurisdiction: str
    as_of: When
    ratio: float | None
    told: Told

    @property
    def said(self) -> str:
        """The limit in figures."""
        figures = [
            f"{figure:g} {unit}"
            for figure, unit in ((self.ppm, "ppm"), (self.mg_m3, "mg/m3"))
            if figure is not None
        ]
        skin = " (also through skin)" if self.skin == "yes" else ""
        return f"{self.kind} {' = '.join(figures) or 'not recorded'}{skin}"


@dataclass(frozen=True, slots=True)
class RestrictionRow:
    """What the law of a jurisdiction says."""

    jurisdiction: str
    text: str
    since: When
    told: Told


class Decade(NamedTuple):
    """Layers laid in ten years from `first`; `possible` may stand in several decades."""

    first: int
    certain: int
    possible: int


@dataclass(frozen=True, slots=True)
class Whereabouts:
    """Where it lies now and ever; layers are counted once, however many places they may lie at.

    Attributes:
        now_certain: layers certainly of it and certainly there on the day, whole or reduced.
        now_possible: layers that may be of it and there.
        gone_certain: layers certainly of it and certainly gone.
        gone_possible: layers that may have been of it, and are not there.
        decades: by when they were laid; certain where the layer is and its date lies in one
            decade, possible in every decade in which the date may lie.
        undated: layers whose date names no decade.
        layers: the first places, by object and mark; a layer stands once for each place.
        places: how many places there are in all.
        uses: the first interventions that used it as an agent, by object and date.
        uses_certain, uses_possible: how many there are in all.
        unidentified: layers in the whole database of which nobody knows the material.
    """

    now_certain: int
    now_possible: int
    gone_certain: int
    gone_possible: int
    decades: tuple[Decade, ...]
    undated: int
    layers: tuple[UsesLayer, ...]
    places: int
    uses: tuple[AgentUse, ...]
    uses_certain: int
    uses_possible: int
    unidentified: int


@dataclass(frozen=True, slots=True)
class MaterialAnswer:
    """Everything on record about a material, or about a class with all that is in it.

    Attributes:
        kind: "material" or "material class".
        classes: the class it is in and those above, nearest first.
        behaves_as: the material whose values are read for it.
        subclasses, members: of a class, those directly below it and all materials in it.
        recipes: materials that contain it as a part.
    """

    word: str
    kind: str
    key: str
    name: str
    on: AsOf
    note: str
    aliases: tuple[str, ...]
    trade_names: tuple[str, ...]
    classes: tuple[Name, ...]
    behaves_as: Name | None
    subclasses: tuple[Name, ...]
    members: tuple[Name, ...]
    parts: tuple[Part, ...]
    recipes: tuple[Name, ...]
    properties: tuple[Property, ...]
    hansen: tuple[Parameters, ...]
    teas: tuple[Fractions, ...]
    solubilities: tuple[Solubility, ...]
    traits: tuple[TraitRow, ...]
    periods: tuple[Period, ...]
    hazards: tuple[HazardRow, ...]
    limits: tuple[LimitRow, ...]
    restrictions: tuple[RestrictionRow, ...]
    where: Whereabouts
