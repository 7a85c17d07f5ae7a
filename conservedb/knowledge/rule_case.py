"""What the rules of the trade look at: one object as it is known on a day, and what they find.

Days are day numbers of `conservedb.dates`, temperatures degrees Celsius. `there` says how sure
it is that something is on the object on the day: "certain", "possible" or "gone"; what had
certainly not come yet is left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

from conservedb.dates import NEVER, UNKNOWN_END, UNKNOWN_START, Found
from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.joints import JointEvent
from conservedb.knowledge.settled import Settled

UNDATED = Found("", "", UNKNOWN_START, UNKNOWN_END, 0, "blank")
BROKEN, CANNOT_TELL = "broken", "cannot tell"
_UNSURE = ("inferred", "unknown")


_SHIPPED = Settled()


class Period(NamedTuple):
    """When a substance was "first made", "in use from" or "given up"."""

    mark: str
    date: Found
    from_memory: bool
    source: str


class Strength(NamedTuple):
    """A published strength in kPa: `kind` is "tensile strength" or "shear strength"."""

    kind: str
    low: float
    high: float
    condition: str
    source: str


class Climate(NamedTuple):
    """How warm a room gets; `use` is "display", "storage", "transport" or ""."""

    room: str
    use: str
    max_c: float
    source: str


class Dated(NamedTuple):
    """Something cited for a place, and the days between which it was made or done."""

    ref: str
    earliest: int
    latest: int


class Support(NamedTuple):
    """A support put in by an intervention; `mark` is the place or part it is recorded for."""

    ref: str
    date: Found
    mark: str


@dataclass(frozen=True, slots=True)
class KnownLayer:
    """A layer as it is known on the day.

    Attributes:
        matters: everything it may be made of, the one followed first; none: not identified.
        carrier_matter: what the words of `carrier` name, None where they name no material.
        came, went: the first and last day on which it can have come, and gone.
        only_stated: whether a source names what it is made of, and the record does not.
        reduced: whether part of it was certainly taken away.
        missed: when somebody looked for it and did not find it, with the source.
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
    carrier_matter: Matter | None = None
    dry: str = ""
    identified: str = ""
    date: Found = UNDATED
    came: tuple[int, int] = (UNKNOWN_START, UNKNOWN_END)
    went: tuple[int, int] = (NEVER, NEVER)
    there: str = "certain"
    reduced: bool = False
    only_stated: bool = False
    missed: str = ""
    cited: str = ""

    @property
    def identity_sure(self) -> bool:
        """Whether just one material or class is named, and not merely inferred."""
        named = len(self.matters) == 1 and not self.only_stated
        return named and self.identified not in _UNSURE

    @property
    def sure(self) -> bool:
        """Whether it is certainly there and what it is made of is sure."""
        return self.there == "certain" and self.identity_sure

    def has(self, trait: str) -> bool:
        """Whether what it is, or may be, made of has a trait."""
        return any(matter.has(trait) for matter in self.matters)


@dataclass(frozen=True, slots=True)
class KnownPart:
    """A component; `classes` are the keys of the classes of its material, nearest first."""

    mark: str
    name: str
    kind: str = ""
    origin: str = ""
    matter: Matter | None = None
    material_words: str = ""
    classes: tuple[str, ...] = ()
    made: Found = UNDATED
    there: str = "certain"
    known_from: str = ""
    cited: str = ""

    @property
    def sure(self) -> bool:
        """Whether somebody has seen it, or a paper records it, and it is certainly there."""
        return self.there == "certain" and self.known_from in ("", "seen", "documented")


@dataclass(frozen=True, slots=True)
class KnownPlace:
    """A place with everything at it; `sides` are the marks of the components that bear it.

    Attributes:
        condition: the conditions possible on the day, for a joint.
        fixings: marks of the components that cross it.
        no_barrier: who says that there is no barrier, "" where nobody does.
        supported: supports recorded for it, for what bears it, and for other places of that.
        kept: where its object, or a part of it that is kept apart, is on the day.
        apart: whether its sides are kept in different places, so that it carries nothing.
    """

    mark: str
    kind: str
    name: str = ""
    sides: tuple[str, ...] = ()
    load_kg: float | None = None
    load_source: str = ""
    layers: tuple[KnownLayer, ...] = ()
    events: tuple[JointEvent, ...] = ()
    condition: tuple[str, ...] = ()
    fixings: tuple[str, ...] = ()
    no_barrier: str = ""
    supported: tuple[Support, ...] = ()
    photographs: tuple[Dated, ...] = ()
    climates: tuple[Climate, ...] = ()
    kept: str = ""
    apart: bool = False

    @property
    def loaded(self) -> bool:
        """Whether it is a joint that carries, or for all that is recorded may carry, a load."""
        whole = self.condition != ("opened",) and not self.apart
        return self.kind == "joint" and self.load_kg != 0 and whole

    @property
    def present(self) -> Iterator[KnownLayer]:
        """The layers that are or may be there."""
        return (layer for layer in self.layers if layer.there != "gone")


class Nearness(NamedTuple):
    """Two places between which an agent, heat or vapour may pass."""

    place: str
    other: str
    distance_mm: float | None
    path: str
    cited: str


@dataclass(frozen=True, slots=True)
class KnownUse:
    """An agent used in an intervention (`ref`, `kind`, `date`), and where."""

    ref: str
    kind: str
    date: Found
    places: tuple[str, ...]
    agent: Matter


class KnownTest(NamedTuple):
    """A spot test at a place: keys of what was tried, and its first and last possible day."""

    ref: str
    place: str
    agents: frozenset[str]
    earliest: int
    latest: int


@dataclass(frozen=True, slots=True)
class Step:
    """A step that somebody plans: an agent brought to a place."""

    place: str
    agent: Matter
    form: str = ""
    temperature_c: float | None = None
    dwell_min: float | None = None


@dataclass(frozen=True)
class Case:
    """An object on a day, with everything that some rule asks for."""

    number: str
    day: int
    parts: Mapping[str, KnownPart] = field(default_factory=dict)
    places: Mapping[str, KnownPlace] = field(default_factory=dict)
    near: tuple[Nearness, ...] = ()
    uses: tuple[KnownUse, ...] = ()
    tests: tuple[KnownTest, ...] = ()
    periods: Mapping[str, tuple[Period, ...]] = field(default_factory=dict)
    strengths: Mapping[str, tuple[Strength, ...]] = field(default_factory=dict)
    settled: Settled = _SHIPPED
    step: Step | None = None

    def sides(self, place: KnownPlace) -> list[KnownPart]:
        """The components that bear a place: A and B of a joint, else the one."""
        return [self.parts[mark] for mark in place.sides if mark in self.parts]

    @cached_property
    def fixings(self) -> frozenset[str]:
        """Marks of the components that cross some joint."""
        return frozenset(mark for place in self.places.values() for mark in place.fixings)

    @cached_property
    def joints(self) -> tuple[KnownPlace, ...]:
        """The joints among the places."""
        return tuple(place for place in self.places.values() if place.kind == "joint")


@dataclass(frozen=True, slots=True)
class Finding:
    """What a rule says of an object: that it is broken, or that this cannot be told.

    Attributes:
        places, components, layers: marks and refs of what it is about.
        interventions: refs of those of which a use of an agent breaks it, and nothing else there.
        missing: the facts that are not recorded; with any the outcome is "cannot tell".
        certain: False where it rests on what is only possible.
        load_kg: the most that one of the joints carries, None where nothing is recorded.
        sources: of the published facts it rests on, in full; the sentence has them in short.
    """

    rule: str
    sentence: str
    places: tuple[str, ...] = ()
    components: tuple[str, ...] = ()
    layers: tuple[str, ...] = ()
    interventions: tuple[str, ...] = ()
    missing: tuple[str, ...] = ()
    certain: bool = True
    load_kg: float | None = None
    sources: tuple[str, ...] = ()

    @property
    def outcome(self) -> str:
        """ "broken" or "cannot tell"."""
        return CANNOT_TELL if self.missing else BROKEN


def most_load(places: Iterable[KnownPlace]) -> float | None:
    """The heaviest recorded load of some places."""
    return max((one.load_kg for one in places if one.load_kg is not None), default=None)
