"""The conditions of a researcher's question on matter and on what was done, as SQL.

What is not recorded is not "no": it holds perhaps. What no intervention made has none, which is
known. Words are compared without the case of their plain letters.
"""

from __future__ import annotations

from collections.abc import Callable

from sqlalchemy import and_, false, func, literal_column, or_, select

from conservedb.dates import OPEN_END, OPEN_START, read
from conservedb.knowledge.layers import GONE, NOT_YET, PRESENT, REDUCED
from conservedb.knowledge.research import EVER, Condition
from conservedb.questions.asking import Selection, blank
from conservedb.questions.research_occurrences import (
    AGENT,
    ALWAYS_HOLDS,
    LAYER,
    NEVER_HOLDS,
    Holds,
    Occurrence,
    any_row,
)
from conservedb.questions.research_terms import (
    TODAY,
    Meant,
    Test,
    Value,
    begins_words,
    given,
    has_words,
    is_any,
    one_of_ids,
)
from conservedb.questions.states import is_one, mask_at, rests_on_qualified
from conservedb.records.layers import layer
from conservedb.records.materials import material
from conservedb.records.objects import object_
from conservedb.records.people import person
from conservedb.records.sources import source, statement, statement_person
from conservedb.records.treatments import intervention, intervention_aim, intervention_person
from conservedb.store.keys import fold

_MASKS = {
    "there": PRESENT | REDUCED,
    "in place": PRESENT,
    "partly removed": REDUCED,
    "gone": GONE,
    "not yet": NOT_YET,
}
_UNSURE = ("inferred", "unknown")


def _recorded(column: Value, matches: Test) -> Holds:
    """A condition on a column: it holds perhaps where nothing is recorded."""
    return Holds(and_(column.is_not(None), matches), or_(column.is_(None), matches))


# -- matter -------------------------------------------------------------------------------


def materials_meant(meant: Meant) -> Selection:
    """The ids of the materials that are meant."""
    column = material.c.class_id if meant.classes else material.c.id
    return select(material.c.id).where(one_of_ids(column, meant.classes or meant.ids))


def stated(owner: str, ids: Value, materials: Selection) -> Test:
    """Whether a statement names one of some materials as that of a record."""
    return any_row(
        statement,
        statement.c[f"{owner}_id"] == ids,
        statement.c.field == "material",
        statement.c.material_id.is_not(None),
        statement.c.material_id.in_(materials),
    )


def matter_is(occurrence: Occurrence, meant: Meant, materials: Selection) -> Holds:
    """Sure where material or class are among those meant and the identity is sure.

    Perhaps where only a class is known of which some are meant, where a statement says so, or
    where nobody identified it and it was only called so.
    """
    c = occurrence.table.c
    known = c.material_class_id.is_not(None)
    own = and_(c.material_id.is_not(None), c.material_id.in_(materials))
    below = and_(known, one_of_ids(c.material_class_id, meant.classes))
    loosely = and_(known, one_of_ids(c.material_class_id, (*meant.classes, *meant.above)))
    called = or_(false(), *(begins_words(c.material_words, one) for one in meant.words))
    sure, may = or_(own, below), or_(own, loosely, and_(occurrence.nameless, called))
    if not occurrence.is_layer:
        return Holds(sure, may)
    identity = blank(layer.c.identified).not_in([literal_column(f"'{one}'") for one in _UNSURE])
    said = stated("layer", layer.c.id, materials)
    return Holds(and_(identity, sure), or_(may, said))


def _material_is(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    if not occurrence.of_matter:
        return NEVER_HOLDS
    return matter_is(occurrence, meant, materials_meant(meant))


def _reversible_as(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    """By what is known of a layer of its material; an agent was not meant to stay."""
    if not occurrence.is_layer:
        return NEVER_HOLDS
    return matter_is(
        occurrence, meant, select(material.c.id).where(one_of_ids(material.c.id, meant.ids))
    )


def _identified_as(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    if not occurrence.is_layer:
        return NEVER_HOLDS
    return _recorded(layer.c.identified, is_any(layer.c.identified, meant.words))


def _role_is(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    if not occurrence.is_layer:
        return NEVER_HOLDS
    return _recorded(layer.c.role, is_any(func.lower(layer.c.role), meant.words))


def _laid_as(occurrence: Occurrence, condition: Condition, _: Meant) -> Holds:
    asked = LAYER if condition.value == "layer" else AGENT
    return ALWAYS_HOLDS if occurrence.what == asked else NEVER_HOLDS


def _state_is(occurrence: Occurrence, condition: Condition, meant: Meant) -> Holds:
    """How a layer stands at the close of a day; an agent was not laid."""
    if not occurrence.is_layer:
        return NEVER_HOLDS
    if condition.on == EVER:
        sure = and_(layer.c.came_to <= TODAY, layer.c.came_flags == 0)
        return Holds(sure, layer.c.came_from <= TODAY)
    mask = mask_at(layer.c, TODAY if meant.day is None else literal_column(str(meant.day)))
    plain = ~rests_on_qualified(layer.c, mask)
    if condition.value == "perhaps":
        return Holds(~is_one(mask), or_(~is_one(mask), ~plain))
    wanted = _MASKS[condition.value]
    others = (PRESENT | REDUCED | GONE | NOT_YET) - wanted
    none_other = mask.bitwise_and(literal_column(str(others))) == 0
    return Holds(
        and_(none_other, plain),
        mask.bitwise_and(literal_column(str(wanted))) != literal_column("0"),
    )


# -- what was done ------------------------------------------------------------------------


def _done(occurrence: Occurrence, holds: Holds) -> Holds:
    """A condition on the intervention: what arose, or is the maker's, has none."""
    return Holds(and_(~occurrence.natural, holds.sure), and_(~occurrence.natural, holds.may))


def _kind_is(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    kind = intervention.c.kind
    return _done(occurrence, _recorded(kind, is_any(kind, meant.words)))


def _technique_has(occurrence: Occurrence, condition: Condition, _: Meant) -> Holds:
    technique = intervention.c.technique
    return _done(occurrence, _recorded(technique, has_words(technique, condition.value)))


def _aim_is(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    own = intervention_aim.c.intervention_id == occurrence.deed
    sure = any_row(intervention_aim, own, is_any(intervention_aim.c.aim, meant.words))
    return _done(occurrence, Holds(sure, or_(sure, ~any_row(intervention_aim, own))))


def _person_did(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    """Perhaps, too, where a source names the person, or nobody is on record in their working life.

    A working life is known where it is on record from when to when, without a qualifier.
    """
    deed = occurrence.deed
    own = intervention_person.c.intervention_id == deed
    sure = any_row(intervention_person, own, one_of_ids(intervention_person.c.person_id, meant.ids))
    said = any_row(
        statement.join(statement_person, statement_person.c.statement_id == statement.c.id),
        statement.c.intervention_id == deed,
        statement.c.field == "people",
        one_of_ids(statement_person.c.person_id, meant.ids),
    )
    date, active = occurrence.date, person.c
    working = any_row(
        person,
        one_of_ids(active.id, meant.ids),
        or_(
            active.active_edtf.is_(None),
            ~active.active_edtf.contains("/"),
            active.active_flags != 0,
            and_(
                active.active_earliest <= date["latest"], active.active_latest >= date["earliest"]
            ),
        ),
    )
    nobody = and_(~any_row(intervention_person, own), working)
    return _done(occurrence, Holds(sure, or_(sure, nobody, said)))


def span_of(condition: Condition) -> tuple[int, int, bool]:
    """The first and last day asked for, and whether they are given without a qualifier."""
    found = read(condition.value)
    return found.earliest, found.latest, not found.flags


def _done_in(occurrence: Occurrence, condition: Condition, _: Meant) -> Holds:
    """Sure where all days that the date may mean lie in the span, without a qualifier."""
    first, last, plain = span_of(condition)
    date = occurrence.date
    within = [date["flags"] == 0]
    if first != OPEN_START:
        within.append(date["earliest"] >= literal_column(str(first)))
    if last != OPEN_END:
        within.append(date["latest"] <= literal_column(str(last)))
    overlaps = and_(
        date["earliest"] <= literal_column(str(last)),
        date["latest"] >= literal_column(str(first)),
    )
    return Holds(and_(*within) if plain else NEVER_HOLDS.sure, overlaps)


def _known_from(occurrence: Occurrence, _: Condition, meant: Meant) -> Holds:
    """The kind of the source of the layer, and of that of its intervention."""
    papers = [intervention.c.source_id]
    if occurrence.is_layer:
        papers.append(layer.c.source_id)
    asked = select(source.c.id).where(is_any(source.c.kind, meant.words))
    kinds = select(source.c.id).where(source.c.kind.is_not(None))
    sure = or_(*(and_(one.is_not(None), one.in_(asked)) for one in papers))
    known = or_(*(and_(one.is_not(None), one.in_(kinds)) for one in papers))
    unread = or_(*(and_(one.is_not(None), one.not_in(kinds)) for one in papers))
    return Holds(sure, or_(sure, ~known, unread))


# -- the object ---------------------------------------------------------------------------


def objects_meant(value: str) -> Selection:
    """The ids of objects with that number, or with the words of it at starts of words in titles."""
    title = literal_column("' '").concat(func.coalesce(object_.c.title_folded, ""))
    words = fold(value).split()
    titled = [func.instr(title, given(f" {word}")) > 0 for word in words]
    numbered = object_.c.number_folded == given(fold(value))
    return select(object_.c.id).where(or_(numbered, and_(*titled) if titled else false()))


def is_object(owner: Value, condition: Condition, _: Meant) -> Holds:
    """Whether the object of an id is meant."""
    found = owner.in_(objects_meant(condition.value))
    return Holds(found, found)


def is_of_kind(owner: Value, _: Condition, meant: Meant) -> Holds:
    """Whether the object of an id is of a kind; perhaps where none is recorded."""
    alike = owner.in_(select(object_.c.id).where(is_any(object_.c.kind, meant.words)))
    unknown = owner.in_(select(object_.c.id).where(object_.c.kind.is_(None)))
    return Holds(alike, or_(alike, unknown))


Judge = Callable[[Occurrence, Condition, Meant], Holds]
JudgeById = Callable[[Value, Condition, Meant], Holds]


def _of_its_object(judge: JudgeById) -> Judge:
    return lambda one, condition, meant: judge(one.table.c.object_id, condition, meant)


ON_MATTER: dict[str, Judge] = {"material": _material_is, "reversibility": _reversible_as}
"""Conditions that are judged twice where neither material nor class is on record."""
JUDGES: dict[str, Judge] = {
    "as": _laid_as,
    "role": _role_is,
    "identified": _identified_as,
    "state": _state_is,
    "kind": _kind_is,
    "aim": _aim_is,
    "technique": _technique_has,
    "person": _person_did,
    "date": _done_in,
    "source": _known_from,
    "object": _of_its_object(is_object),
    "object kind": _of_its_object(is_of_kind),
}
