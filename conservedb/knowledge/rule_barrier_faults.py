"""Why a barrier that is on record may not let off what lies on it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.evidence import binders
from conservedb.knowledge.rule_case import KnownLayer
from conservedb.knowledge.rule_words import bracketed, dated, listed

_FIXED = ("cross-linked", "no solvent")
_DOUBTED = {"cross-linked": "unknown", "no solvent": "unknown", "loses its solubility": "yes"}


class Fault(NamedTuple):
    """What is wrong with a barrier; `unknown` is the fact that is not recorded, "" where it is."""

    why: str
    unknown: str = ""


def faults(barrier: KnownLayer, layer: KnownLayer, side: str) -> list[Fault]:
    """Everything for which a barrier under a layer does not count, or not for certain.

    A barrier counts that is re-soluble, was laid first, covers the whole face and was not
    recorded as damp when it was covered.

    Args:
        side: "A" or "B" of a joint, "" elsewhere.
    """
    found = [*_matter_faults(barrier), *_laying_faults(barrier, layer)]
    if not _laid_first(barrier, layer, side):
        laid = f"not certainly laid first ({dated(barrier.date)}, {dated(layer.date)})"
        found.append(Fault(laid, f"whether {barrier.ref} was laid before {layer.ref}"))
    return found


def _matter_faults(barrier: KnownLayer) -> Iterator[Fault]:
    made_of = f"what {barrier.ref} is made of"
    if not barrier.matters:
        yield Fault("which is not identified", made_of)
        return
    fixed = [(matter.name, why) for matter in barrier.matters if (why := _fixed(matter))]
    if fixed and len(fixed) == len(barrier.matters):
        why = f"which does not dissolve again{bracketed(listed(why for _, why in fixed))}"
        yield Fault(why, "" if barrier.identity_sure else made_of)
    elif fixed:
        yield Fault(f"which may be {listed((name for name, _ in fixed), 'or')}", made_of)
    for matter in barrier.matters:
        doubt = "" if _fixed(matter) else _doubt(matter)
        if doubt:
            yield Fault(doubt, f"whether {matter.name} ({barrier.ref}) dissolves again")


def _fixed(matter: Matter) -> str:
    """The trait by which a material, or what binds it, never dissolves; "" where none is known."""
    bearers = (matter, *binders(matter))
    return next((trait for trait in _FIXED if any(one.has(trait) for one in bearers)), "")


def _doubt(matter: Matter) -> str:
    """Why it is not sure that a material dissolves again, "" where nothing speaks against it."""
    if matter.is_class:
        return "known by its class only"
    for one in (matter, *binders(matter)):
        for trait, holds in _DOUBTED.items():
            found = one.traits.get(trait)
            if found is not None and found.holds == holds:
                return found.effect or f"{trait}: {holds}"
    return ""


def _laid_first(barrier: KnownLayer, layer: KnownLayer, side: str) -> bool:
    """Whether a barrier was certainly laid before a layer, by the dates or by the build-up."""
    if barrier.came[1] < layer.came[0]:
        return True
    if barrier.stack is None or layer.stack is None:
        return barrier.came[1] == layer.came[0]
    return barrier.stack > layer.stack if side == "B" else barrier.stack < layer.stack


def _laying_faults(barrier: KnownLayer, layer: KnownLayer) -> Iterator[Fault]:
    if barrier.coverage != "whole":
        covers = "of no recorded coverage"
        if barrier.coverage not in ("", "unknown"):
            covers = f"recorded as covering {barrier.coverage} only"
        yield Fault(covers, f"whether {barrier.ref} covers all that {layer.ref} lies on")
    if barrier.dry == "no":
        yield Fault(
            "recorded as not dry when it was covered",
            f"whether {barrier.ref}, covered damp, parts {layer.ref} from the body",
        )
