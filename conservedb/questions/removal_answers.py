"""How a layer may come off, with what stands around the plan itself."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.knowledge.plan import Plan
from conservedb.questions.basics import AsOf


@dataclass(frozen=True, slots=True)
class Band:
    """One band of the build-up around the target, from side A or the substrate outward.

    `layer` is "" for a bearer's own substance. `place` and `distance_mm` are set for what lies
    at another place nearby; `path` says how an agent may get there.
    """

    layer: str
    name: str
    role: str
    zone: str
    side: str
    state: str
    is_target: bool = False
    is_substrate: bool = False
    place: str = ""
    path: str = "same place"
    distance_mm: float | None = None


@dataclass(frozen=True, slots=True)
class Choice:
    """A layer that the question could be asked about."""

    layer: str
    name: str
    zone: str
    state: str


@dataclass(frozen=True, slots=True)
class RemovalAnswer:
    """The plan for one layer at a place on a day; `widest_band` is the worst hazard band shown."""

    object: str
    title: str
    place: str
    place_name: str
    on: AsOf
    plan: Plan
    choices: tuple[Choice, ...]
    bands: tuple[Band, ...]
    widest_band: str
