"""Hatches of the section: one pattern per role, told apart without any colour.

The patterns follow the habit of section drawings: stipple for mortars, slant for adhesives, a
double line for what separates, a mesh for what has soaked in, a thin line for a film.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Hatch:
    """A pattern of two lines that repeats sideways, its style, and what it stands for."""

    upper: str
    lower: str
    style: str
    words: str


SUBSTRATE = Hatch("▓", "▓", "$substrate", "original or other part")
UNKNOWN = Hatch("?  ", " ? ", "$unsure", "role not recorded")
OTHER = Hatch("#", "#", "$foreground", "another role")

_MORTAR = Hatch("∙ : ", ": ∙ ", "$mortar", "bedding, grout, mortar")
_POINTING = Hatch("▒", "▒", "$mortar", "pointing")
_FILL = Hatch("░", "░", "$mortar", "fill")
_METAL = Hatch("≡", "≡", "$metal", "lead run, solder, sulphur")
_MASTIC = Hatch("◦◦", "◦◦", "$mortar", "mastic, putty")
_ADHESIVE = Hatch("╱", "╱", "$resin", "adhesive")
_BARRIER = Hatch("═", "═", "$barrier", "barrier")
_CONSOLIDANT = Hatch("┼", "┼", "$soaked", "consolidant")
_COATING = Hatch("━", "━", "$film", "coating, wax, varnish")
_PAINT = Hatch("▪", "▪", "$film", "paint, inpainting")
_GILDING = Hatch("◆ ", " ◆", "$film", "gilding")
_PATINA = Hatch("≈", "≈", "$film", "patina")
_FACING = Hatch("╪", "╪", "$resin", "facing, temporary support")
_CRUST = Hatch("^", "^", "$arisen", "crust, corrosion")
_SALTS = Hatch("* ", " *", "$arisen", "salts")
_DEPOSIT = Hatch(", ", " ,", "$arisen", "deposit, growth")

ROLES = {
    "bedding": _MORTAR,
    "grout": _MORTAR,
    "setting": _MORTAR,
    "mortar": _MORTAR,
    "pointing": _POINTING,
    "fill": _FILL,
    "temporary fill": _FILL,
    "lead run": _METAL,
    "solder": _METAL,
    "sulphur": _METAL,
    "mastic": _MASTIC,
    "putty": _MASTIC,
    "adhesive": _ADHESIVE,
    "barrier": _BARRIER,
    "consolidant": _CONSOLIDANT,
    "temporary consolidant": _CONSOLIDANT,
    "coating": _COATING,
    "wax": _COATING,
    "varnish": _COATING,
    "paint": _PAINT,
    "inpainting": _PAINT,
    "gilding": _GILDING,
    "patina": _PATINA,
    "patination": _PATINA,
    "facing": _FACING,
    "temporary support": _FACING,
    "crust": _CRUST,
    "corrosion": _CRUST,
    "salts": _SALTS,
    "deposit": _DEPOSIT,
    "biofilm": _DEPOSIT,
    "": UNKNOWN,
}

LEGEND = (
    SUBSTRATE,
    _MORTAR,
    _POINTING,
    _FILL,
    _MASTIC,
    _METAL,
    _ADHESIVE,
    _BARRIER,
    _CONSOLIDANT,
    _COATING,
    _PAINT,
    _GILDING,
    _PATINA,
    _FACING,
    _CRUST,
    _SALTS,
    _DEPOSIT,
    OTHER,
    UNKNOWN,
)

SHAFTS = {"present": "║", "doubtful": "┊", "gone": "┈"}
"""How a fixing that crosses the joint is drawn; one that is gone only stands in the list."""


def hatch_of(role: str) -> Hatch:
    """The hatch of a role; a role without one of its own has the hatch of others."""
    return ROLES.get(role.casefold(), OTHER)


def drawn(hatch: Hatch, width: int, line: int, state: str = "present", cover: str = "whole") -> str:
    """One line of a band, `width` cells wide.

    A reduced layer is broken up, an uncertain one carries question marks, one that is gone or
    not yet there is an outline; partial coverage leaves the far end bare, spots leave gaps.
    """
    if state in ("gone", "not yet"):
        return ("┈" * width) if line == 0 else " " * width
    pattern = hatch.lower if line % 2 else hatch.upper
    cells = list((pattern * width)[:width])
    if cover == "spots":
        cells = [c if (i + 2 * line) % 4 < 2 else " " for i, c in enumerate(cells)]
    if cover == "part":
        bare = max(width // 3, 1)
        cells[width - bare :] = " " * bare
    if state == "reduced":
        cells = [c if (i + 3 * line) % 6 < 2 else " " for i, c in enumerate(cells)]
    if state == "uncertain" and line == 0:
        middle = max(width // 2 - 1, 0)
        cells[middle : middle + 3] = list(" ? ")[: width - middle]
    return "".join(cells)
