"""Words for what a layer is there for. A role may be any words; these the trade has for it."""

from __future__ import annotations

ROLES = (
    *("adhesive", "barrier", "bedding", "biofilm", "coating", "consolidant", "corrosion"),
    *("crust", "deposit", "facing", "fill", "gilding", "grout", "inpainting", "lead run"),
    *("mastic", "mortar", "paint", "patina", "patination", "pointing", "putty", "salts"),
    *("setting", "solder", "sulphur", "temporary consolidant", "temporary fill"),
    *("temporary support", "varnish", "wax"),
)
"""Each has a hatch of its own in a section; one may be asked for before any layer has it."""
