"""Which joints may creep or soften if it gets as warm as that.

A joint is listed where a layer of it is or may be there on the day, the joint is not certainly
open, and a figure recorded for its material says that it softens at the temperature, or may
creep under load. Joints of which a load of nothing is recorded do not creep; those of which no
load is recorded are held to be loaded. Everything that depends on the layer is worked out in
SQL, what depends on the material in Python: the answer for a warm room may have a hundred
thousand rows.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from sqlalchemy import Connection

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.rule_kinds import SOFT_METAL, may_be
from conservedb.knowledge.rule_warmth import CARRYING, MAY_CREEP, Warmed, softening, warmed
from conservedb.knowledge.rule_words import DAYS_A_MONTH
from conservedb.questions.answers import AsOf
from conservedb.questions.asking import Question, without_collecting
from conservedb.questions.checks_reference import STATEMENTS as _REFERENCE
from conservedb.questions.checks_reference import Reference, reference
from conservedb.questions.naming import find_object
from conservedb.questions.whatif_answers import EFFECTS, Figure, WhatIfAnswer, WhatIfLayer
from conservedb.questions.whatif_records import COLLECTION, ONE_OBJECT

STATEMENTS = (*COLLECTION.values(), *ONE_OBJECT.values(), *_REFERENCE)
_EVER = -20_000_000
"""Before every day."""


def whatif(
    connection: Connection, temperature: float, on: AsOf, number: str | None = None
) -> WhatIfAnswer:
    """The joints that may creep or soften at a temperature in C, in the collection or one object.

    Raises:
        NoSuch: no such object.
    """
    known = reference(connection)
    asked, scope, title = COLLECTION, {}, ""
    if number is not None:
        owner = find_object(connection, number)
        asked, scope, title = ONE_OBJECT, {"object": owner.id}, owner.number
    figures: list[Figure] = []
    with without_collecting():
        rows: list[WhatIfLayer] = []
        for values in _per_material(known, temperature, on.last, figures):
            rows += asked["rows"].all(connection, day=on.last, **values, **scope)
        rows = _once_each(_without_solvent(rows, known, figures, temperature))
    soft = dict(_soft_metal(connection, known, asked, temperature, day=on.last, **scope))
    return WhatIfAnswer(
        temperature,
        on,
        title,
        known.settled.creep_margin,
        known.settled.depression,
        tuple(rows),
        tuple(figures),
        len({row.place_id for row in rows}),
        len({row.object for row in rows}),
        *_not_told(connection, known, asked, soft, day=on.last, **scope),
        known.notes,
        tuple(sorted((known.kinds.of(of).name, layers) for of, layers in soft.items())),
    )


def _per_material(
    known: Reference, temperature: float, day: int, figures: list[Figure]
) -> Iterator[dict[str, Any]]:
    """What is to be asked of each material concerned; its figures are added to the list."""
    settled = known.settled
    young_after = day - int(settled.hold_months * DAYS_A_MONTH)
    for material_id in known.materials.ids():
        matter = known.materials.of(material_id)
        old = warmed(matter, temperature, 0.0, settled.creep_margin)
        young = warmed(matter, temperature, settled.depression, settled.creep_margin)
        if old is None or young is None or not young.verdict:
            continue
        at, same = len(figures), old.verdict == young.verdict
        figures += [_figure(matter, old), _figure(matter, young)]
        yield {
            "material": material_id,
            "young_after": young_after,
            "after": _EVER if old.verdict else young_after,
            **_of_age("old", old, temperature, at, sure=old.sure),
            **_of_age("young", young, temperature, at + 1, sure=old.sure and same),
        }


def _figure(matter: Matter, found: Warmed) -> Figure:
    return Figure(matter.key, matter.name, found.low, found.lines, found.sources)


def _of_age(age: str, found: Warmed, temperature: float, at: int, *, sure: bool) -> dict[str, Any]:
    return {
        f"effect_{age}": EFFECTS.index(found.verdict) if found.verdict else len(EFFECTS),
        f"margin_{age}": found.low - temperature,
        f"sure_{age}": int(sure),
        f"figure_{age}": at,
    }


def _without_solvent(
    rows: list[WhatIfLayer], known: Reference, figures: Sequence[Figure], temperature: float
) -> list[WhatIfLayer]:
    """Young layers laid in no organic solvent are judged by figures that are not lowered."""
    carriers = {row.carrier for row in rows if row.young}
    dry = {
        words
        for words in carriers
        if (found := known.carrier(words)) is not None and not found.has("organic solvent")
    }
    if not dry:
        return rows
    kept = []
    for row in rows:
        if row.young and row.carrier in dry:
            again = _unlowered(row, known, figures[row.figure - 1], temperature)
            if again is not None:
                kept.append(again)
        else:
            kept.append(row)
    return kept


def _unlowered(
    row: WhatIfLayer, known: Reference, figure: Figure, temperature: float
) -> WhatIfLayer | None:
    matter = known.materials.of(known.materials.known(figure.material) or 0)
    found = warmed(matter, temperature, 0.0, known.settled.creep_margin)
    if found is None or not found.verdict:
        return None
    if found.verdict == MAY_CREEP and (row.load_kg == 0 or row.role not in CARRYING):
        return None
    return row._replace(
        unsure=max(row.doubtful, int(not found.sure)),
        effect_at=EFFECTS.index(found.verdict),
        margin_c=found.low - temperature,
        young=0,
        figure=row.figure - 1,
    )


def _once_each(rows: list[WhatIfLayer]) -> list[WhatIfLayer]:
    """In order of consequence, each layer at a place once, by what it may be made of at worst."""
    rows.sort()
    if len({(row.layer_id, row.place_id) for row in rows}) == len(rows):
        return rows
    worst: dict[tuple[int, int], WhatIfLayer] = {}
    for row in rows:
        worst.setdefault((row.layer_id, row.place_id), row)
    return list(worst.values())


def _soft_metal(
    connection: Connection,
    known: Reference,
    asked: dict[str, Question],
    temperature: float,
    **values: int,
) -> Iterator[tuple[int, int]]:
    """How many layers of lead or solder lie in loaded joints: they creep far below melting."""
    for of in known.materials.ids():
        matter = known.kinds.of(of)
        if may_be(matter, SOFT_METAL):
            found = warmed(matter, temperature, 0.0, known.settled.creep_margin)
            if found is None or not found.verdict:
                layers = asked["loaded"].first(connection, material=of, **values).layers
                if layers:
                    yield of, layers


def _not_told(
    connection: Connection,
    known: Reference,
    asked: dict[str, Question],
    soft: Mapping[int, int],
    **values: int,
) -> tuple[tuple[tuple[str, int], ...], int, int, int]:
    """Layers of which it cannot be told: by material without a figure, by class, unidentified."""
    materials = known.materials
    without: list[tuple[str, int]] = []
    firm = 0
    for of, layers in asked["materials"].tuples(connection, **values):
        matter = materials.of(of)
        if softening(matter) is not None:
            continue
        if _is_firm(matter):
            firm += max(0, layers - soft.get(of, 0))
        else:
            without.append((matter.name, layers))
    loosely = 0
    for of, layers in asked["classes"].tuples(connection, **values):
        klass = known.kinds.of_class(of)
        if _is_firm(klass) and not may_be(klass, SOFT_METAL):
            firm += layers
        else:
            loosely += layers
    without.sort(key=lambda pair: (-pair[1], pair[0]))
    unidentified = asked["unidentified"].first(connection, **values).layers
    return tuple(without), loosely, unidentified, firm


def _is_firm(matter: Matter) -> bool:
    """Whether it is mineral or metal, or recorded as not creeping under load."""
    return matter.lacks("creeps under load") or matter.has("no solvent")
