"""What is known of materials and agents, as plain values; nothing is decided here.

Hansen parameters are in MPa^0.5, temperatures in degrees Celsius, shares in per cent by
volume. `basis` is one of "tested here", "measured", "published", "common practice" or
"from memory"; what is from memory counts for less than a prediction until confirmed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import NamedTuple


class Hansen(NamedTuple):
    """Dispersion, polarity and hydrogen bonding."""

    d: float
    p: float
    h: float


@dataclass(frozen=True, slots=True)
class Sphere:
    """The published solubility sphere of a polymer.

    `use` is "dissolution", "swelling only" or "proxy" (the sphere of a related product).
    """

    at: Hansen
    r0: float
    use: str = "dissolution"
    quality: str = ""
    basis: str = "published"
    source: str = ""


class Part(NamedTuple):
    """A liquid and its share of an agent; `solvent` is the key of its material."""

    solvent: str
    share: float = 100.0


@dataclass(frozen=True, slots=True)
class Agent:
    """What is brought to a layer. `form` is "" where it is not said, else a word of the records."""

    parts: tuple[Part, ...]
    form: str = ""
    temperature_c: float | None = None
    dwell_min: float | None = None


@dataclass(frozen=True, slots=True)
class Fact:
    """What an agent was seen to do to a material (`state` "fresh", "aged" or "not stated").

    `effect` is "dissolves", "mobilises", "swells", "softens", "attacked" or "no effect". For a
    spot test `basis` is "tested here" and `layer` names the layer tried.
    """

    agent: Agent
    effect: str
    state: str = "not stated"
    basis: str = "published"
    confirmed: bool = False
    source: str = ""
    condition: str = ""
    layer: str = ""

    @property
    def counts(self) -> bool:
        """Whether it may outrank a prediction."""
        return self.confirmed or self.basis != "from memory"


@dataclass(frozen=True, slots=True)
class Warmth:
    """A published range in which a material softens: `kind` names the property measured."""

    kind: str
    low: float
    high: float
    basis: str = "published"
    confirmed: bool = False
    source: str = ""
    condition: str = ""


@dataclass(frozen=True, slots=True)
class Trait:
    """Whether a trait holds ("yes", "no", "unknown"), and who says so; `via` is the bearer."""

    holds: str
    effect: str = ""
    basis: str = "published"
    source: str = ""
    via: str = ""


@dataclass(frozen=True, slots=True)
class Matter:
    """A material, or a class of materials where no more is known (`is_class`).

    `parts` are the materials of a recipe. `stand_in` is the key of the material whose values
    are read for it, "" where they are its own.
    """

    key: str
    name: str
    traits: Mapping[str, Trait] = field(default_factory=dict)
    spheres: tuple[Sphere, ...] = ()
    facts: tuple[Fact, ...] = ()
    warmth: tuple[Warmth, ...] = ()
    parts: tuple[Matter, ...] = ()
    is_class: bool = False
    stand_in: str = ""

    def has(self, trait: str) -> bool:
        """Whether the trait is recorded as holding; an unknown one is not held to hold."""
        found = self.traits.get(trait)
        return found is not None and found.holds == "yes"

    def lacks(self, trait: str) -> bool:
        """Whether the trait is recorded as not holding."""
        found = self.traits.get(trait)
        return found is not None and found.holds == "no"


@dataclass(frozen=True, slots=True)
class Hazard:
    """A hazard statement of the UN GHS on an agent."""

    code: str
    wording: str
    band: str
    basis: str = "published"
    source: str = ""
    checked: str = ""


@dataclass(frozen=True, slots=True)
class Limit:
    """An exposure limit of one jurisdiction; `as_of` says of what date the table is."""

    kind: str
    ppm: float | None
    mg_m3: float | None
    skin: bool
    jurisdiction: str
    as_of: str
    source: str = ""


@dataclass(frozen=True, slots=True)
class Restriction:
    """What the law of a jurisdiction says of an agent."""

    jurisdiction: str
    text: str
    since: str = ""
    basis: str = "published"
    source: str = ""


@dataclass(frozen=True, slots=True)
class Solvent:
    """A liquid that may be used as an agent.

    `at` holds every published set of parameters, the preferred first. `flash` and `miscible`
    ("yes", "limited", "no") are "" where not recorded; "none" as a flash point means that the
    source says there is none. `band` is "A" (mildest) to "D", "" where no hazard is recorded.
    """

    key: str
    name: str
    at: tuple[Hansen, ...]
    band: str = ""
    hazards: tuple[Hazard, ...] = ()
    flash: str = ""
    flash_c: float | None = None
    boiling_c: float | None = None
    pressure_kpa: float | None = None
    miscible: str = ""
    limits: tuple[Limit, ...] = ()
    restrictions: tuple[Restriction, ...] = ()
    traits: Mapping[str, Trait] = field(default_factory=dict)
    note: str = ""

    def has(self, trait: str) -> bool:
        """Whether the trait is recorded as holding."""
        found = self.traits.get(trait)
        return found is not None and found.holds == "yes"


@dataclass(frozen=True, slots=True)
class Lying:
    """A layer as it lies: what it may be made of, and what bears on taking it off.

    `matters` holds every material that it may be, the one followed first; none where it is
    unidentified. `laid` are the earliest and latest day on which it came. `soaked` says
    whether it has gone into a porous body (None where that is not known). `certain` is False
    where it is only possibly there.
    """

    ref: str
    place: str
    name: str
    matters: tuple[Matter, ...]
    role: str = ""
    zone: str = ""
    side: str = ""
    stack: int | None = None
    origin: str = ""
    coverage: str = ""
    carrier: str = ""
    dry: str = ""
    identified: str = ""
    significance: str = ""
    laid: tuple[int, int] = (0, 0)
    soaked: bool | None = None
    certain: bool = True
    tests: tuple[Fact, ...] = ()

    @property
    def matter(self) -> Matter | None:
        """The material that is followed."""
        return self.matters[0] if self.matters else None


@dataclass(frozen=True, slots=True)
class Neighbour:
    """A layer, or a bearer's own substance, that an agent may reach.

    `path` is "same place", or "open", "tight", "porous", "unknown" as recorded between two
    places; `between` orders layers of the same place by their distance from the target.
    """

    lying: Lying
    path: str = "same place"
    distance_mm: float | None = None
    between: int = 0
    is_substrate: bool = False
