"""What is commonly measured on an object, and the units in which a reading of it can be given.

Units are those of the International System and its accepted non-SI units (BIPM, SI Brochure,
9th ed., tables 2 to 8) with their decimal prefixes; which quantities conservators read is common
practice, no source.
"""

from __future__ import annotations

_LENGTHS = ("mm", "µm", "cm", "m")
UNITS: dict[str, tuple[str, ...]] = {
    "crack width": _LENGTHS,
    "gap": _LENGTHS,
    "step": _LENGTHS,
    "depth": _LENGTHS,
    "thickness": _LENGTHS,
    "mass": ("g", "kg", "mg", "t"),
    "conductivity": ("µS/cm", "mS/cm", "S/m"),
    "relative humidity": ("%",),
    "moisture content": ("%",),
    "temperature": ("°C", "K"),
    "uptake": ("g", "mg", "kg", "ml", "l", "%", "g/m²", "kg/m²"),
    "tilt": ("°", "mm/m", "rad", "mrad"),
}
"""Quantity -> the units of a reading of it, the usual one first."""
_MICRO = str.maketrans({"\u03bc": "\u00b5"})
"""Greek mu is written for the micro sign: a keyboard has one or the other."""


def odd_unit(quantity: str, unit: str) -> str:
    """Why a unit does not go with a quantity, in a clause; "" where nothing speaks against it.

    A quantity that is not in the list may have any unit.
    """
    known = UNITS.get(" ".join(quantity.casefold().split()))
    written = "".join(unit.split()).translate(_MICRO)
    if known is None or not written or written in known:
        return ""
    return f"is no unit in which {quantity.strip()} is read; usual are {', '.join(known)}"
