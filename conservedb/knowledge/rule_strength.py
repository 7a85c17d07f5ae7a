"""The rule that a joint should give way before the body does.

Where the adhesive is the stronger, the next break goes through the stone (Podany, Garland,
Freeman and Rogers, JAIC 40-1, 2001, on marble).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_barriers import bearers
from conservedb.knowledge.rule_case import (
    Case,
    Finding,
    KnownLayer,
    KnownPart,
    KnownPlace,
    Strength,
    most_load,
)
from conservedb.knowledge.rule_words import bracketed, listed, material_words


class _Compared(NamedTuple):
    """How adhesive and body compare: "stronger", "may be stronger", "unknown" or ""."""

    word: str
    figures: str = ""
    sources: tuple[str, ...] = ()


class _Bond(NamedTuple):
    place: KnownPlace
    layer: KnownLayer


def adhesive_stronger_than_body(case: Case) -> Iterator[Finding]:
    """An adhesive that is likely to be stronger than what it joins."""
    bonds: dict[tuple[str, str, _Compared], list[_Bond]] = defaultdict(list)
    for place in case.joints:
        for layer in place.present:
            if layer.role in ("", "adhesive"):
                for _, part in bearers(case, place, layer):
                    found = _compared(case, layer, part)
                    if found.word:
                        key = (layer.name, material_words(part), found)
                        bonds[key].append(_Bond(place, layer))
    for (adhesive, body, found), those in bonds.items():
        yield _finding(adhesive, body or "a body of no recorded material", found, those)


def _compared(case: Case, layer: KnownLayer, part: KnownPart) -> _Compared:
    hard = layer.has("cross-linked") and not layer.has("drying oil")
    ours = [one for matter in layer.matters for one in _strengths(case, matter)]
    if not ours and not hard:
        return _Compared("")
    theirs = _strengths(case, part.matter) if part.matter is not None else ()
    pairs = [(a, b) for a in ours for b in theirs if a.kind == b.kind]
    for word, stronger in (
        ("stronger", [(a, b) for a, b in pairs if a.low > b.high]),
        ("may be stronger", [(a, b) for a, b in pairs if a.high > b.low]),
    ):
        if stronger:
            sources = dict.fromkeys(one.source for pair in stronger for one in pair)
            figures = listed(_figures(*pair) for pair in stronger)
            return _Compared(word, figures, tuple(sources))
    return _Compared("" if pairs else "unknown")


def _strengths(case: Case, matter: Matter) -> Sequence[Strength]:
    return case.strengths.get(matter.key) or case.strengths.get(matter.stand_in, ())


def _figures(ours: Strength, theirs: Strength) -> str:
    return f"{ours.kind} {_kpa(ours)} against {_kpa(theirs)}"


def _kpa(one: Strength) -> str:
    figure = f"{one.low:g}" if one.low == one.high else f"{one.low:g} to {one.high:g}"
    return f"{figure} kPa{bracketed(one.condition, shortly(one.source))}"


def _finding(adhesive: str, body: str, found: _Compared, bonds: Sequence[_Bond]) -> Finding:
    places = {bond.place.mark: bond.place for bond in bonds}
    layers = {bond.layer.ref: bond.layer for bond in bonds}
    where = f"{listed(places)}: {adhesive} ({', '.join(layers)})"
    missing: tuple[str, ...] = ()
    if found.word == "unknown":
        missing = (f"the strengths of {adhesive} and of {body}, measured in the same way",)
        sentence = f"{where} on {body}: whether the next break goes through the body is not known."
    else:
        is_stronger = "is" if found.word == "stronger" else "may be"
        sentence = (
            f"{where} {is_stronger} stronger than {body}: {found.figures}; the next break is"
            " likely to go through the body, not the joint."
        )
    return Finding(
        "adhesive-stronger-than-body",
        sentence,
        places=tuple(places),
        layers=tuple(layers),
        missing=missing,
        certain=found.word == "stronger" and all(layer.sure for layer in layers.values()),
        load_kg=most_load(places.values()),
        sources=found.sources,
    )
