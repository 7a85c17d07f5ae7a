"""Barriers: what lies between an irreversible layer and the original, and what it promises.

A barrier releases only if it was thin, whole and fully dry, and lies on the faces that are to
come apart (Podany et al. 2001; Ellis and Heginbotham 2004). Anything short of that on record
leaves "not established".
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from conservedb.knowledge.behaviour import Lying
from conservedb.knowledge.evidence import binders
from conservedb.knowledge.plan import Via


def irreversible(lying: Lying) -> bool:
    """Whether some material that a layer may be is cross-linked, or has no solvent."""
    return any(
        binder.has("cross-linked") or binder.has("no solvent")
        for matter in lying.matters
        for binder in binders(matter)
    )


def under(layer: Lying, layers: Sequence[Lying]) -> tuple[Lying, ...]:
    """The layers recorded as barriers under a layer, which may themselves be dissolved.

    One that was laid after the layer, lies in another zone or outside it in the build-up, is
    cross-linked or mineral, or is known only as a class, is none.
    """
    if layer.role == "barrier":
        return ()
    return tuple(one for one in layers if one.role == "barrier" and _is_under(one, layer))


def _is_under(barrier: Lying, layer: Lying) -> bool:
    matter = barrier.matter
    if matter is None or matter.is_class or irreversible(barrier):
        return False
    if barrier.laid[0] > layer.laid[1]:
        return False
    if barrier.zone and layer.zone and barrier.zone != layer.zone:
        return False
    if barrier.stack is None or layer.stack is None:
        return True
    if barrier.side == "B":
        return barrier.stack > layer.stack
    return barrier.stack < layer.stack


def shortcomings(barriers: Sequence[Lying]) -> tuple[str, ...]:
    """Why it is not established that these barriers release; none where the record is whole."""
    return tuple(dict.fromkeys(words for one in barriers for words in _lacks(one))) + tuple(
        _faces(barriers)
    )


def _lacks(barrier: Lying) -> Iterator[str]:
    if barrier.dry == "no":
        yield "recorded as not dry when covered: it may not release"
    elif barrier.dry != "yes":
        yield "cannot tell: whether it was dry when covered is not recorded"
    if barrier.coverage != "whole":
        covered = barrier.coverage or "not recorded"
        yield f"coverage: {covered}; where it is missing the face is bonded to the original"
    if not barrier.certain:
        yield "the barrier is not certainly there"


def _faces(barriers: Sequence[Lying]) -> Iterator[str]:
    sides = {one.side for one in barriers}
    if "" in sides:
        yield "cannot tell: on which faces it lies is not recorded"
    elif len(sides) == 1:
        yield f"recorded on side {sides.pop()} only: only that face releases"


def via(barriers: Sequence[Lying]) -> Via:
    """What a plan says of the barriers through which a layer is to be released."""
    first = best(barriers)
    sides = tuple(sorted({one.side for one in barriers if one.side}))
    conditions = (
        "releases only if the barrier was thin, whole and fully dry (Podany et al. 2001)",
        *shortcomings(barriers),
        "residue of the barrier stays on the original",
    )
    return Via(first.ref, first.name, sides, conditions)


def best(barriers: Sequence[Lying]) -> Lying:
    """The barrier of which most is sure."""
    return min(barriers, key=lambda one: (not one.certain, one.dry != "yes", one.stack or 0))
