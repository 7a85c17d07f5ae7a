"""How a layer may come off at a place on a day: gathers the record, and lets knowledge plan."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from sqlalchemy import Connection

from conservedb.knowledge import settled
from conservedb.knowledge.behaviour import Fact, Lying, Neighbour, Part
from conservedb.knowledge.reversal import Settings, Situation, plan
from conservedb.knowledge.verdicts import Fixing
from conservedb.knowledge.warming import may_be_nitrate
from conservedb.questions import behaviour, place, removal_records
from conservedb.questions.answers import AsOf, Layer, NoSuch, PlaceAnswer, Warning_
from conservedb.questions.behaviour import Materials, materials
from conservedb.questions.removal_answers import Band, Choice, RemovalAnswer
from conservedb.questions.removal_records import Bearer, Surroundings, surroundings
from conservedb.questions.wording import cited

BANDS = ("A", "B", "C", "D")
STATEMENTS = (*behaviour.STATEMENTS, *removal_records.STATEMENTS)
_SURE = ("analysed", "documented by the maker")
_HEAT_WARNINGS = ("damp", "do not heat", "polychromy", "nitrate")
_FIRST = ("adhesive", "grout", "fill", "pointing", "bedding")
"""Roles about which the question is meant where no layer is named, first first."""


def removal(
    connection: Connection, number: str, mark: str, layer: str, on: AsOf, band: str = ""
) -> RemovalAnswer:
    """How a layer may come off, what that does to its neighbours, and what to test first.

    Args:
        layer: the ref of a layer at the place; "" takes the one that most likely holds it.
        band: the worst hazard band to show, "A" to "D"; "" takes the department's setting.

    Raises:
        NoSuch: no such object, place or layer; or nothing is on record as lying there.
    """
    here = place.place(connection, number, mark, on)
    known = materials(connection)
    around = surroundings(
        connection,
        number,
        mark,
        on,
        laid=max((one.came[1] for one in here.layers if _may_be_there(one)), default=0),
        test_years=settled.number("test interval years", known.setting("test interval years"))[0],
        nitrate=lambda material, klass: _may_be_nitrate(known, material, klass),
    )
    lying = [_lying(one, here, known, around) for one in here.layers if _may_be_there(one)]
    target = _chosen(here, lying, layer)
    band = band or settled.band(known.setting("hazard band"))[0]
    case = _situation(here, target, lying, known, around, band)
    return RemovalAnswer(
        here.object,
        here.title,
        here.place,
        here.name,
        on,
        plan(case),
        tuple(_choice(one) for one in here.layers if _may_be_there(one)),
        tuple(_bands(here, case, around)),
        band,
    )


def _may_be_there(layer: Layer) -> bool:
    return bool({"present", "reduced"} & {*layer.possible, layer.state})


def _chosen(here: PlaceAnswer, lying: Sequence[Lying], ref: str) -> Lying:
    if ref:
        for one in lying:
            if one.ref == ref:
                return one
        if any(one.ref == ref for one in here.layers):
            raise NoSuch(f"layer at {here.place} on that day", ref, tuple(o.ref for o in lying))
        raise NoSuch(f"layer at {here.place}", ref, tuple(one.ref for one in here.layers))
    if not lying:
        raise NoSuch("layer to take off at", here.place)
    return min(lying, key=_likely)


def _likely(one: Lying) -> tuple[bool, int, int]:
    role = one.role.lower()
    return (not one.certain, _FIRST.index(role) if role in _FIRST else len(_FIRST), -one.laid[1])


# -- layers -------------------------------------------------------------------------------


def _lying(layer: Layer, at: PlaceAnswer, known: Materials, around: Surroundings) -> Lying:
    main = known.named(layer.material, layer.material_class)
    found = [main] if main is not None else []
    for rival in layer.rivals:
        settled = rival.followed == "no" and layer.identified in _SURE
        if rival.field == "material" and not settled:
            other = known.named(rival.value, "")
            if other is not None and other not in found:
                found.append(other)
    return Lying(
        ref=layer.ref,
        place=at.place,
        name=_name(layer),
        matters=tuple(found),
        role=layer.role,
        zone=layer.zone,
        side=layer.side,
        stack=layer.stack,
        origin=layer.origin,
        coverage=layer.coverage,
        carrier=layer.carrier,
        dry=layer.dry,
        identified=layer.identified,
        significance=layer.significance,
        laid=layer.came,
        soaked=_soaked(layer, at),
        certain=layer.state in ("present", "reduced"),
        tests=tuple(_as_known(one, known) for one in around.tests.get(layer.ref, ())),
    )


def _as_known(test: Fact, known: Materials) -> Fact:
    """A test with an agent that behaves as another, as a test with that one."""
    parts = tuple(Part(known.same_as(part.solvent), part.share) for part in test.agent.parts)
    return replace(test, agent=replace(test.agent, parts=parts))


def _name(layer: Layer) -> str:
    return layer.material_name or layer.material_words or "unidentified layer"


def _soaked(layer: Layer, at: PlaceAnswer) -> bool | None:
    """Whether it has gone into a body: by its place, or by what it was put there for."""
    if at.kind == "body" or "consolidant" in layer.role.lower():
        return True
    return None


# -- what is around -----------------------------------------------------------------------


def _situation(
    here: PlaceAnswer,
    target: Lying,
    lying: Sequence[Lying],
    known: Materials,
    around: Surroundings,
    band: str,
) -> Situation:
    bearers = [_bearer(one, here.place, known) for one in around.bearers]
    neighbours = [Neighbour(one) for one in lying if one is not target]
    neighbours += [Neighbour(one, is_substrate=True) for one in bearers]
    for near in around.near:
        lying_there = [
            _lying(one, near.answer, known, around)
            for one in near.answer.layers
            if _may_be_there(one)
        ]
        bearing = [_bearer(one, near.answer.place, known) for one in near.bearers]
        neighbours += [Neighbour(one, near.path, near.distance_mm) for one in lying_there]
        neighbours += [
            Neighbour(one, near.path, near.distance_mm, is_substrate=True) for one in bearing
        ]
    is_joint = here.kind == "joint"
    state = here.condition.state if here.condition else ""
    layer = next(one for one in here.layers if one.ref == target.ref)
    return Situation(
        target=target,
        layers=tuple(lying),
        neighbours=tuple(neighbours),
        solvents=known.solvents(),
        day=here.on.last,
        settings=_settings(known, band),
        is_joint=is_joint,
        closed=is_joint and state not in ("opened",),
        load_kg=here.load_kg,
        load_source=cited(here.load_source),
        support=around.support if is_joint else "",
        other_support=around.other_support if is_joint else "",
        porous=_porous(bearers),
        access=here.access,
        state=layer.state,
        fixings=tuple(
            Fixing(
                one.component,
                one.name or one.kind,
                one.material,
                one.known_from,
                one.state in ("present", "reduced"),
            )
            for one in here.fixings
            if one.state not in ("gone", "retired")
        ),
        beware=(
            *(f"{one.kind}: {one.text}" for one in here.warnings if _heat(one, here)),
            *(f"cellulose nitrate may lie at {mark} on the same parts" for mark in around.nitrates),
        ),
    )


def _heat(one: Warning_, here: PlaceAnswer) -> bool:
    """Whether a warning bears on heat here: lead anywhere on the object, the others near."""
    kind = one.kind.lower()
    parts = {side.component for side in here.sides}
    near = one.place in ("", here.place) and (not one.component or one.component in parts)
    return kind == "lead" or (kind in _HEAT_WARNINGS and near)


def _may_be_nitrate(known: Materials, material: int | None, klass: int | None) -> bool:
    if material is not None:
        return may_be_nitrate(known.of(material))
    return klass is not None and may_be_nitrate(known.of_class(klass))


def _settings(known: Materials, band: str) -> Settings:
    numbers = {
        name: settled.number(name, known.setting(name))
        for name in ("solvent depression", "solvent hold months", "test interval years")
    }
    odd = [settled.band(known.setting("hazard band"))[1], *(told for _, told in numbers.values())]
    return Settings(
        widest_band=band,
        jurisdiction=known.setting("jurisdiction"),
        depression_c=numbers["solvent depression"][0],
        hold_days=numbers["solvent hold months"][0] * 365 / 12,
        notes=tuple(words for words in odd if words),
    )


def _bearer(one: Bearer, at: str, known: Materials) -> Lying:
    matter = known.of(one.material_id) if one.material_id is not None else None
    name = f"{one.name or one.mark} ({matter.name if matter else one.words or 'not recorded'})"
    return Lying(one.mark, at, name, (matter,) if matter is not None else (), role=one.kind)


def _porous(bearers: Sequence[Lying]) -> bool | None:
    matters = [one.matter for one in bearers]
    if any(m is not None and m.has("porous") for m in matters):
        return True
    if matters and all(m is not None and m.lacks("porous") for m in matters):
        return False
    return None


# -- the drawing --------------------------------------------------------------------------


def _choice(layer: Layer) -> Choice:
    return Choice(layer.ref, _name(layer), layer.zone, layer.state)


def _bands(here: PlaceAnswer, case: Situation, around: Surroundings) -> list[Band]:
    states = {one.ref: one.state for one in here.layers}
    sides = [one for one in around.bearers if one.side]
    found = [_substrate(one) for one in sides[:1]]
    found += [
        Band(one.ref, one.name, one.role, one.zone, one.side, states[one.ref], one is case.target)
        for one in case.layers
    ]
    found += [_substrate(one) for one in sides[1:]]
    found += [
        replace(_substrate(one), is_substrate=False) for one in around.bearers if not one.side
    ]
    for near in case.neighbours:
        if near.path != "same place":
            found.append(_near(near))
    return found


def _substrate(one: Bearer) -> Band:
    name = " ".join(words for words in (one.mark, one.name, one.words) if words)
    return Band("", name, one.kind, "", one.side, "", is_substrate=True)


def _near(near: Neighbour) -> Band:
    one = near.lying
    return Band(
        one.ref,
        one.name,
        one.role,
        one.zone,
        one.side,
        "" if one.certain else "uncertain",
        is_substrate=near.is_substrate,
        place=one.place,
        path=near.path,
        distance_mm=near.distance_mm,
    )
