"""A layer that is to come off, with everything on record that bears on it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from conservedb.knowledge.behaviour import Lying, Neighbour, Solvent
from conservedb.knowledge.verdicts import Fixing

FRESH_DAYS = 365
"""A film younger than this may still hold solvent and counts as fresh (Vincotte et al. 2019)."""


@dataclass(frozen=True, slots=True)
class Settings:
    """What the department has settled: worst hazard band shown, and where it works."""

    widest_band: str = "C"
    jurisdiction: str = ""
    depression_c: float = 30.0
    hold_days: float = 365.0
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Situation:
    """A layer at a place on a day, with everything that bears on taking it off.

    `layers` are all that may be at the place, the target among them, from side A or the
    substrate outward. `closed` holds unless a joint is certainly open. `carries` and `support`
    are sentences of the record, "" where there is none. `porous` is whether a bearer is porous
    (None where not recorded). `beware` are warnings that bear on heat, each in words;
    `other_support` is support recorded that does not count, and why.
    """

    target: Lying
    layers: tuple[Lying, ...]
    neighbours: tuple[Neighbour, ...]
    solvents: Mapping[str, Solvent]
    day: int
    settings: Settings = Settings()
    is_joint: bool = False
    closed: bool = False
    load_kg: float | None = None
    load_source: str = ""
    support: str = ""
    porous: bool | None = None
    access: str = ""
    state: str = "present"
    fixings: tuple[Fixing, ...] = ()
    beware: tuple[str, ...] = ()
    other_support: str = ""

    def depression(self, layer: Lying) -> float:
        """How far solvent that may remain lowers where a layer softens: while it may be young."""
        young = layer.laid[1] > self.day - self.settings.hold_days
        return self.settings.depression_c if young else 0.0
