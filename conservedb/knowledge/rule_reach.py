"""What a planned step may reach from the place where it is planned."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.rule_case import Case, KnownLayer, KnownPart, KnownPlace, Step
from conservedb.knowledge.rule_words import bracketed, layer_words, listed, part_words


class Reached(NamedTuple):
    """A layer, or a component, that a step may reach; `sure` where its path is established."""

    place: KnownPlace
    words: str
    matters: tuple[Matter, ...]
    layer: KnownLayer | None
    part: KnownPart | None
    sure: bool
    known: bool
    crossing: bool = False

    @property
    def key(self) -> tuple[str, str]:
        """Ref of the layer, and mark of the component."""
        return (
            self.layer.ref if self.layer is not None else "",
            self.part.mark if self.part is not None else "",
        )

    @property
    def name(self) -> str:
        """The layer or component in words."""
        if self.layer is not None:
            return layer_words(self.layer)
        return part_words(self.part) if self.part is not None else ""


def reached(case: Case, step: Step) -> list[Reached]:
    """What a step at a place may reach, the place itself first; each thing once."""
    first: dict[tuple[str, str], Reached] = {}
    for one in _reached(case, step):
        first.setdefault(one.key, one)
    return list(first.values())


def _reached(case: Case, step: Step) -> Iterator[Reached]:
    place = case.places[step.place]
    yield from _at(case, place, "at the place itself", sure=True)
    marks = {place.mark}
    for bond in case.near:
        if place.mark in (bond.place, bond.other):
            other = case.places[bond.other if bond.place == place.mark else bond.place]
            marks.add(other.mark)
            words = _distance(bond.distance_mm, bond.path, bond.cited)
            yield from _at(case, other, words, sure=bond.path in ("open", "porous"))
    for body in case.places.values():
        if body.kind == "body" and body.mark not in marks and set(body.sides) & set(place.sides):
            for layer in body.present:
                yield _layer(body, layer, f"in the body of {listed(body.sides)}", sure=True)


def _at(case: Case, place: KnownPlace, words: str, sure: bool) -> Iterator[Reached]:
    for layer in place.present:
        yield _layer(place, layer, words, sure)
    for mark in (*place.sides, *place.fixings):
        part = case.parts.get(mark)
        if part is not None and part.there != "gone":
            matters = (part.matter,) if part.matter is not None else ()
            crossing = mark in place.fixings
            known = bool(matters) and part.sure
            yield Reached(place, words, matters, None, part, sure, known, crossing)


def _layer(place: KnownPlace, layer: KnownLayer, words: str, sure: bool) -> Reached:
    return Reached(place, words, layer.matters, layer, None, sure, layer.sure)


def _distance(distance_mm: float | None, path: str, cited: str) -> str:
    away = "distance not recorded" if distance_mm is None else f"{distance_mm:g} mm away"
    return f"{away}, path {path or 'not recorded'}{bracketed(cited)}"


def unmeasured(case: Case, step: Step) -> Iterator[tuple[KnownPlace, KnownLayer]]:
    """Layers on the same components at places of no recorded distance."""
    place = case.places[step.place]
    near = {
        mark
        for bond in case.near
        for mark in (bond.place, bond.other)
        if place.mark in (bond.place, bond.other)
    }
    for other in case.places.values():
        apart = other.mark not in near and other.mark != place.mark and other.kind != "body"
        if apart and set(other.sides) & set(place.sides):
            for layer in other.present:
                yield other, layer
