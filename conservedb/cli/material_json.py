"""JSON of `conservedb material`, as the command documents it."""

from __future__ import annotations

from collections.abc import Iterable

from conservedb.cli import json_shapes as shape
from conservedb.cli.json_shapes import Json
from conservedb.questions.material_answers import (
    BANNER,
    MaterialAnswer,
    Name,
    Told,
    Whereabouts,
)


def material_json(answer: MaterialAnswer) -> Json:
    """The answer as JSON."""
    return {
        "word": answer.word,
        "meant": {"kind": answer.kind, "key": answer.key, "name": answer.name},
        "on": shape.asked(answer.on),
        "note": answer.note,
        "aliases": list(answer.aliases),
        "trade_names": list(answer.trade_names),
        "classes": _named(answer.classes),
        "behaves_as": answer.behaves_as._asdict() if answer.behaves_as else None,
        "subclasses": _named(answer.subclasses),
        "members": _named(answer.members),
        "parts": [part._asdict() for part in answer.parts],
        "recipes": _named(answer.recipes),
        **_values_json(answer),
        "banner": BANNER,
        **_hazards_json(answer),
        "where": _where_json(answer.where),
    }


def _named(names: Iterable[Name]) -> list[Json]:
    return [name._asdict() for name in names]


def _told_json(told: Told) -> Json:
    return {
        "basis": told.basis,
        "standing": told.standing,
        "source": shape.source(told.source),
        "confirmed_by": told.confirmed_by,
        "confirmed": shape.date(told.confirmed),
        "note": told.note,
    }


def _fields(record: object, *names: str) -> Json:
    """Some fields of a record, as they are."""
    return {name: getattr(record, name) for name in names}


def _values_json(answer: MaterialAnswer) -> Json:
    value = ("low", "high", "unit", "words", "condition", "of")
    sphere = ("r0", "use", "quality", "condition", "preferred", "of")
    fact = ("agent", "state", "effect", "form", "temperature_c", "dwell_min", "condition", "of")
    trait = ("trait", "holds", "effect", "inherited", "counts")
    return {
        "properties": [
            {
                "property": group.name,
                "differ": group.differ,
                "values": [_fields(one, *value) | _told_json(one.told) for one in group.values],
            }
            for group in answer.properties
        ],
        "hansen": [
            one.at._asdict()
            | _fields(one, *sphere)
            | {"converted": [round(part, 2) for part in one.converted]}
            | _told_json(one.told)
            for one in answer.hansen
        ],
        "teas": [one.at._asdict() | {"of": one.of} | _told_json(one.told) for one in answer.teas],
        "solubilities": [_fields(one, *fact) | _told_json(one.told) for one in answer.solubilities],
        "traits": [
            _fields(one, *trait) | {"bearer": one.bearer._asdict()} | _told_json(one.told)
            for one in answer.traits
        ],
        "periods": [
            _fields(one, "mark", "of") | {"date": shape.date(one.date)} | _told_json(one.told)
            for one in answer.periods
        ],
    }


def _hazards_json(answer: MaterialAnswer) -> Json:
    limit = ("kind", "ppm", "mg_m3", "skin", "jurisdiction")
    return {
        "hazards": [
            _fields(one, "code", "wording", "band")
            | {"checked": shape.date(one.checked)}
            | _told_json(one.told)
            for one in answer.hazards
        ],
        "limits": [
            _fields(one, *limit)
            | {"as_of": shape.date(one.as_of), "vapour_hazard_ratio": one.ratio}
            | _told_json(one.told)
            for one in answer.limits
        ],
        "restrictions": [
            _fields(one, "jurisdiction", "text")
            | {"since": shape.date(one.since)}
            | _told_json(one.told)
            for one in answer.restrictions
        ],
    }


def _where_json(where: Whereabouts) -> Json:
    counts = ("now_certain", "now_possible", "gone_certain", "gone_possible", "undated", "places")
    layer = ("object", "place", "layer", "material", "role", "state")
    return {
        **_fields(where, *counts, "uses_certain", "uses_possible", "unidentified"),
        "decades": [decade._asdict() for decade in where.decades],
        "layers": [
            _fields(row, *layer)
            | {
                "possible": list(row.possible),
                "certain": bool(row.certain),
                "laid": shape.date(row.laid),
            }
            for row in where.layers
        ],
        "uses": [
            _fields(use, "object", "intervention", "certain")
            | {"places": list(use.places), "date": shape.date(use.date)}
            for use in where.uses
        ],
    }
