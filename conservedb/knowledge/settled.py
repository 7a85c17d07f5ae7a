"""Settings as people write them: the value to use, and what is odd about the words.

Degrees Celsius, months and years. A setting that is no number, or lies outside what can be
meant, is never used as it stands: the shipped value is taken, and a sentence says so.
"""

from __future__ import annotations

from math import isfinite
from typing import NamedTuple

BANDS = ("A", "B", "C", "D")
"""Hazard bands from the mildest to the worst."""
_WORST_SHOWN = "C"


class _Number(NamedTuple):
    """The shipped value of a setting, and between what it makes sense."""

    shipped: float
    least: float
    most: float
    unit: str


_NUMBERS = {
    "creep margin": _Number(15.0, 0.0, 100.0, "degrees C"),
    "solvent hold months": _Number(12.0, 0.0, 600.0, "months"),
    "solvent depression": _Number(30.0, 0.0, 100.0, "degrees C"),
    "cellulose nitrate age": _Number(30.0, 0.0, 500.0, "years"),
    "test interval years": _Number(10.0, 0.0, 100.0, "years"),
}


class Settled(NamedTuple):
    """What the department has settled for the rules.

    Attributes:
        creep_margin: degrees below softening from which a loaded joint may creep.
        hold_months: how long a film is held to keep some of its solvent.
        depression: degrees by which solvent that remains lowers a glass transition.
        nitrate_years: age from which a joint of cellulose nitrate is to be looked at.
        conduct_from: the day from which the conduct of work is judged; None: not at all.
    """

    creep_margin: float = _NUMBERS["creep margin"].shipped
    hold_months: float = _NUMBERS["solvent hold months"].shipped
    depression: float = _NUMBERS["solvent depression"].shipped
    nitrate_years: float = _NUMBERS["cellulose nitrate age"].shipped
    conduct_from: int | None = None


def number(name: str, words: str) -> tuple[float, str]:
    """The value to use for a setting, and a sentence for the person; "" where all is well.

    Args:
        words: as they stand in the setting; blank takes the shipped value.

    Raises:
        KeyError: no setting of that name is a number.
    """
    known = _NUMBERS[name]
    if not words.strip():
        return known.shipped, ""
    try:
        value = float(words)
    except ValueError:
        return known.shipped, _told(name, words, "is no number", known)
    if not isfinite(value):
        return known.shipped, _told(name, words, "is no finite number", known)
    if not known.least <= value <= known.most:
        return known.shipped, _told(name, words, "is out of range", known)
    return value, ""


def _told(name: str, words: str, wrong: str, known: _Number) -> str:
    return (
        f"the setting {name!r} reads {words!r}, which {wrong}; {known.shipped:g} {known.unit} was"
        f" taken; write a number from {known.least:g} to {known.most:g}"
    )


def band(words: str) -> tuple[str, str]:
    """The worst hazard band to show, "A" to "D", and a sentence for the person; "" if all is well.

    Args:
        words: as they stand in the setting; blank takes the shipped "C".
    """
    letter = words.strip().upper()
    if not letter:
        return _WORST_SHOWN, ""
    if letter in BANDS:
        return letter, ""
    return _WORST_SHOWN, (
        f"the setting 'hazard band' reads {words!r}, which is no hazard band; {_WORST_SHOWN} was"
        f" taken; write one of {', '.join(BANDS)}"
    )
