"""The forms that mend: a part broken, taken out or replaced, a layer renamed, two that are one."""

from __future__ import annotations

import datetime
from dataclasses import replace

from conservedb.exchange.subjects import BY_NAME
from conservedb.questions.completing import there_at
from conservedb.tui.about import About
from conservedb.tui.forms_of_records import fields_for
from conservedb.tui.reading import Connection
from conservedb.tui.recording import Field

_PART = Field("part", "part", "component", required=True)
_ON = Field("on", "on", "date", required=True, hint="when it was taken out; unknown is an answer")
_REASON = Field(
    "reason", "why", required=True, hint="stays on record, and in the change log for ever"
)
_COLUMNS = {
    "part": ("observations", "component"),
    "on": ("components", "retired"),
    "layer": ("removals", "layer"),
    "identified": ("layers", "identified"),
    "source": ("layers", "source"),
}
_MERGED = {"merge people": ("batches", "made_by"), "merge materials": ("batches", "material")}
"""Field -> a file and column that holds the like; what is typed is checked as if it stood there."""


def mending_fields(connection: Connection, about: About, today: datetime.date) -> tuple[Field, ...]:
    """What a form that mends asks; the part, layer and day at hand are filled in."""
    part = replace(_PART, value=about.components[0] if len(about.components) == 1 else "")
    on = replace(_ON, value=today.isoformat())
    match about.kind:
        case "split":
            hint = "marks for the pieces, with semicolons between them: B12a; B12b"
            pieces = Field("fragments", "broke into", hint=hint, required=True)
            return (part, pieces, _REASON)
        case "retire":
            return (part, on, _REASON)
        case "replace":
            new = Field("new", "new part", hint="a mark for it, not used yet", required=True)
            return (
                part,
                new,
                replace(on, hint="when the one was exchanged for the other"),
                _REASON,
            )
        case "reidentify":
            return _another_material(connection, about, today)
    what = about.kind.removeprefix("merge ")
    kind = "person" if what == "people" else "material"
    keep = Field("keep", "stays", kind, required=True, hint="whatever named the other names it")
    gone = Field("gone", "goes", kind, required=True, hint="its names become names of the other")
    return (keep, gone, _REASON)


def mending_column(kind: str, field: str) -> tuple[str, str]:
    """The file and column by which a field is checked; ("", "") where there is none."""
    if field in ("keep", "gone"):
        return _MERGED[kind]
    return ("batches", field) if field == "material" else _COLUMNS.get(field, ("", ""))


def _another_material(
    connection: Connection, about: About, today: datetime.date
) -> tuple[Field, ...]:
    """The layer under the cursor, or the only one there."""
    layers = about.layers
    if not layers and about.places:
        there = there_at(connection, about.number, about.places, today.toordinal())
        layers = tuple(there) if len(there) == 1 else ()
    layer = Field("layer", "layer", "layer", layers[0] if layers else "", required=True)
    given = {"identified": "analysed"}
    material, identified, source = fields_for(
        BY_NAME["layers"], ("material", "identified", "source"), given
    )
    return (
        layer,
        replace(material, label="it is", required=True, hint="the former stays beside it"),
        replace(identified, label="how known", required=True),
        replace(source, required=True, hint="what says so; Ctrl+N adds it"),
        _REASON,
    )
