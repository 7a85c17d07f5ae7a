"""What a material or a class of materials may be, beyond what is recorded of it.

Lead and its solders creep under load at room temperature (common practice), far below where
they melt. A solder of tin alone has no trait by which to tell it, so it is told by its name.
"""

from __future__ import annotations

from collections.abc import Container
from dataclasses import replace

from conservedb.knowledge.behaviour import Matter, Trait

NITRATE = "cellulose nitrate"
SOFT_METAL = "lead or tin"
"""A trait that is worked out here, and not recorded: metal that is or may be of lead or tin."""
_SOFT = ("lead", "tin")
_MELT_SET = "melt-set"


def may_be(matter: Matter, trait: str) -> bool:
    """Whether a material has a trait, or for all that is recorded may have it."""
    found = matter.traits.get(trait)
    return found is not None and found.holds != "no"


def with_soft_metal(matter: Matter, classes: Container[str]) -> Matter:
    """A material or class, with the trait SOFT_METAL where it is or may be of lead or tin.

    Args:
        classes: the keys of its class and of those above it.
    """
    leaden = may_be(matter, "metal") and may_be(matter, "lead")
    if leaden or (_MELT_SET in classes and _names_soft_metal(matter)):
        return with_unknown(matter, SOFT_METAL)
    return matter


def _names_soft_metal(matter: Matter) -> bool:
    words = f"{matter.key} {matter.name}".lower().replace("-", " ").replace(",", " ").split()
    return any(word in words for word in _SOFT) or any(map(_names_soft_metal, matter.parts))


def with_unknown(matter: Matter, trait: str) -> Matter:
    """A material or class of which it is not known whether it has a trait."""
    return replace(matter, traits={**matter.traits, trait: Trait("unknown")})
