"""What a plan for taking a layer off consists of: values that both interfaces print.

A plan says what is recorded, by whom, and what to test first. It never says that something
is safe, and it is no leave to go ahead.
"""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.knowledge.behaviour import Part

EFFECTS = (
    "dissolves",
    "mobilises",
    "swells",
    "softens",
    "undecided",
    "no effect expected",
    "no effect when tested",
    "tested but for less",
    "attacked",
    "cannot tell",
)
"""Every word that `Reading.effect` may be."""
GROUPS = (
    "to test",
    "by hand or by heat",
    "acts only in part",
    "acts on neighbours too",
    "last resort",
)
"""Under which heading an option stands, in the order of the list."""


@dataclass(frozen=True, slots=True)
class Reading:
    """What an agent is held to do to a layer, and on what evidence.

    `red` is the lowest and highest relative energy difference over all published spheres and
    parameters, None where the method gives no verdict. `losing` are lines of evidence that say
    otherwise and rank below.
    """

    effect: str
    evidence: str
    source: str = ""
    red: tuple[float, float] | None = None
    reason: str = ""
    losing: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class OnNeighbour:
    """The worst plausible reading of what an option does to a neighbour."""

    layer: str
    place: str
    name: str
    reading: Reading
    path: str = "same place"
    distance_mm: float | None = None


@dataclass(frozen=True, slots=True)
class HazardLine:
    """A hazard of an agent: code, meaning, and where that is said."""

    agent: str
    code: str
    wording: str
    source: str
    checked: str


@dataclass(frozen=True, slots=True)
class Option:
    """A way that might take the layer off.

    `kind` is "solvent", "vapour", "water", "heat", "mechanical" or "wait". `window` says over
    which shares a blend works. `ranked_by` are the keys of its rank, each in words.
    """

    kind: str
    title: str
    agent: tuple[Part, ...]
    target: Reading
    neighbours: tuple[OnNeighbour, ...] = ()
    group: str = "to test"
    form: str = ""
    window: str = ""
    ranked_by: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    hazards: tuple[HazardLine, ...] = ()
    figures: tuple[str, ...] = ()
    band: str = ""
    temperature_c: float | None = None


@dataclass(frozen=True, slots=True)
class Refused:
    """A way that is not offered here, and why."""

    title: str
    reason: str


@dataclass(frozen=True, slots=True)
class Hold:
    """A zone or fixing that must let go before the joint opens."""

    what: str
    layers: tuple[str, ...]
    verdict: str
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Via:
    """The recorded barrier through which an irreversible layer is released."""

    layer: str
    name: str
    sides: tuple[str, ...]
    conditions: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Step:
    """One step towards knowing an unknown material: what to do, and what an answer suggests."""

    title: str
    suggests: str
    withheld: str = ""


@dataclass(frozen=True, slots=True)
class Target:
    """The layer that a plan is about."""

    layer: str
    place: str
    name: str
    material: str
    identified: str
    state: str
    role: str
    alternatives: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Plan:
    """The answer to "how does this come off".

    `verdict` is one of the words of `verdicts`; `study_only` holds while no support step is
    recorded. `hidden` counts options beyond the hazard band that was set. `opens` says what
    holds of the whole joint, whose verdict is that of its worst zone or fixing. `more` counts
    predictions left out because better ones of the same kind are listed.
    """

    target: Target
    verdict: str
    verdict_reason: str
    carries: str
    support: str
    study_only: bool
    holds: tuple[Hold, ...]
    via: Via | None
    options: tuple[Option, ...]
    refused: tuple[Refused, ...]
    sequence: tuple[Step, ...]
    first_test: str
    limits: tuple[str, ...]
    hidden: int = 0
    cautions: tuple[str, ...] = ()
    opens: str = ""
    more: int = 0


VERDICTS = (
    "re-dissolves",
    "can be mobilised, not removed",
    "swells and can be picked",
    "releases through the barrier",
    "softens with heat",
    "mechanical only",
    "goes by itself",
    "not reversible",
    "not established",
    "unknown",
)
"""Every word that `Plan.verdict` may be."""
