"""Spot tests as evidence: what was tried on a layer, and what was seen."""

from __future__ import annotations

from collections import defaultdict

from sqlalchemy import BindParameter, Connection, bindparam, select

from conservedb.knowledge.behaviour import Agent, Fact, Part
from conservedb.knowledge.evidence import ACTING
from conservedb.questions.answers import AsOf
from conservedb.questions.asking import Question, Row, blank, cited, dated
from conservedb.questions.evidence import BLANK, by_owner, source_of, when
from conservedb.questions.wording import cited as cited_words
from conservedb.questions.wording import hands
from conservedb.records.layers import layer
from conservedb.records.materials import material
from conservedb.records.people import person
from conservedb.records.sources import source
from conservedb.records.spot_tests import spot_test, spot_test_part, spot_test_person

_OBJECT: BindParameter[int] = bindparam("object")
_TESTS = Question(
    select(
        spot_test.c.id,
        layer.c.ref.label("layer"),
        *(
            blank(spot_test.c[name]).label(name)
            for name in ("form", "wet", "dry", "next_day", "swab_colour", "tide_line", "note")
        ),
        spot_test.c.temperature_c,
        spot_test.c.dwell_min,
        *dated(spot_test, "date"),
        *cited(source),
    )
    .join_from(spot_test, layer, layer.c.id == spot_test.c.layer_id)
    .outerjoin(source, source.c.id == spot_test.c.source_id)
    .where(spot_test.c.object_id == _OBJECT)
    .order_by(spot_test.c.date_latest.desc(), spot_test.c.id.desc())
)
_OF_OBJECT = select(spot_test.c.id).where(spot_test.c.object_id == _OBJECT)
_PARTS = Question(
    select(spot_test_part.c.spot_test_id, material.c.key, spot_test_part.c.share)
    .join_from(spot_test_part, material, material.c.id == spot_test_part.c.material_id)
    .where(spot_test_part.c.spot_test_id.in_(_OF_OBJECT))
    .order_by(spot_test_part.c.spot_test_id, spot_test_part.c.position)
)
_TESTED_BY = Question(
    select(
        spot_test_person.c.spot_test_id.label("owner"),
        person.c.name,
        blank(spot_test_person.c.role),
    )
    .join_from(spot_test_person, person, person.c.id == spot_test_person.c.person_id)
    .where(spot_test_person.c.spot_test_id.in_(_OF_OBJECT))
    .order_by(spot_test_person.c.spot_test_id, spot_test_person.c.position)
)
STATEMENTS = (_TESTS, _PARTS, _TESTED_BY)
_DATE, _SOURCE = _TESTS.at("date_words"), _TESTS.at("source_ref")
_READ = {
    "wet": _TESTS.at("wet"),
    "dry": _TESTS.at("dry"),
    "after a day": _TESTS.at("next_day"),
}
_NO_COLOUR = ("none", "no", "nil", "clear", "no colour", "uncoloured", "-")
"""What people write where the swab stayed clean."""


def tests_on(
    connection: Connection, owner: int, on: AsOf, oldest: int
) -> dict[str, tuple[Fact, ...]]:
    """The spot tests on an object by the day asked for, by the ref of the layer tried.

    Args:
        oldest: a test that did nothing before this day clears nothing any more.
    """
    parts: dict[int, list[Part]] = defaultdict(list)
    for test, key, share in _PARTS.all(connection, object=owner):
        parts[test].append(Part(key, 100.0 if share is None else share))
    people = by_owner(_TESTED_BY.all(connection, object=owner))
    found: dict[str, list[Fact]] = defaultdict(list)
    for row in _TESTS.all(connection, object=owner):
        effect = _effect(row)
        if effect and row.id in parts and row.date_earliest <= on.last:
            who = hands(people.get(row.id, ()), "")
            found[row.layer].append(
                _fact(row, effect, tuple(parts[row.id]), who, row.date_earliest < oldest)
            )
    return {ref: tuple(facts) for ref, facts in found.items()}


def _effect(row: Row) -> str:
    """The strongest effect of the three readings, "" where none is.

    Colour on the swab is matter taken off, and a tide-line is an effect.
    """
    read = [row.wet, row.dry, row.next_day]
    if row.swab_colour and row.swab_colour.strip().lower() not in _NO_COLOUR:
        read.append("mobilises")
    if row.tide_line == "yes":
        read.append("attacked")
    acting = sorted((one for one in read if one in ACTING), key=ACTING.index)
    if acting:
        return str(acting[0])
    return "no effect" if "no effect" in read else ""


def _fact(row: Row, effect: str, parts: tuple[Part, ...], who: str, old: bool) -> Fact:
    """A test as evidence; one that was not read to the end, or is too old, clears nothing."""
    missing = [name for name in ("wet", "dry", "after a day") if not row[_READ[name]]]
    missing += [] if row.swab_colour else ["colour on the swab"]
    missing += [] if row.tide_line == "no" else ["tide-line"]
    date = when(row, _DATE)
    use = [row.form or "form not recorded"]
    use += [f"{row.temperature_c:g} C"] if row.temperature_c is not None else []
    use += [f"{row.dwell_min:g} min"] if row.dwell_min is not None else ["dwell not recorded"]
    use += ["tide-line"] if row.tide_line == "yes" else []
    use += [f"swab: {row.swab_colour}"] if row.swab_colour else []
    use += [date.said if date is not BLANK else "undated", who]
    clears = not missing and not old
    if effect not in ACTING:
        use += [f"not recorded: {', '.join(missing)}"] if missing else []
        use += ["too long ago: test again"] if old else []
    return Fact(
        # without a form a test covers no use, and so clears nothing
        Agent(
            parts,
            row.form if clears or effect in ACTING else "",
            row.temperature_c,
            row.dwell_min,
        ),
        effect,
        "aged",
        "tested here",
        True,
        cited_words(source_of(row, _SOURCE)),
        ", ".join(word for word in use if word),
        row.layer,
    )
