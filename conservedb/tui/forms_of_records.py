"""Forms made from the columns of a file of records. Heavy: imported when a form is asked for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from conservedb.exchange.amending import FIXED
from conservedb.exchange.columns import Choice, Column, Date, Material, Number, Ref, Whole
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.tui.field_words import HINTS, LONG, LOOKUPS, WORD_LISTS, label_of, unit_of
from conservedb.tui.recording import Field

_WHERE = ("place", "component", "layer")
_WHEN = ("date", "people", "intervention", "source", "note")

ASKED: Mapping[str, tuple[str, ...]] = {
    "spot test": (
        *("layer", "agent", "form", "dwell_min", "wet", "dry", "next_day", "swab_colour"),
        *("tide_line", "area_mm2", "temperature_c", "pressure", "magnification", *_WHEN),
    ),
    "sighting": ("layer", "result", "side", "date", "people", "source", "note"),
    "observation": ("condition", "seen", "presumed", "extent", *_WHERE, *_WHEN),
    "reading": ("quantity", "value", "unit", "instrument", "spot", *_WHERE, *_WHEN),
    "sample": (
        *("kind", "what", "box", "layer", "place", "component", "removal", "remainder"),
        *("result", "analysed_by", *_WHEN),
    ),
    "examination": (
        *("circumstances", "methods", "places", "components", "date", "people", "treatment"),
        *("time_of_day", "source", "note"),
    ),
    "joint event": ("place", "event", "date", "where", "step", "intervention", "source", "note"),
    "warning": ("kind", "text", "place", "component", "since", "until", "source", "note"),
    "treatment": ("title", "purpose", "begun", "lead", "status", "next_check", "ref", "note"),
    "closing": ("ref", "result", "recommendations", "next_check", "ended", "status"),
    "plan": (
        *("treatment", "aims", "justification", "alternatives", "risks", "date", "people"),
        *("version", "source", "note"),
    ),
    "planned step": (
        *("kind", "technique", "material", "concentration", "carrier", "places", "components"),
        *("plan", "position", "note"),
    ),
    "authorisation": (
        *("plan", "capacity", "person", "decision", "date", "expires", "scope", "steps"),
        *("conditions", "evidence", "source", "intervention", "note"),
    ),
    "whereabouts": ("place_name", "component", "since", "until", "source", "note"),
    "component": (
        *("mark", "parent", "name", "kind", "origin", "material", "bridges", "width_mm"),
        *("height_mm", "depth_mm", "mass_kg", "mass_basis", "made", "kept_at", "known_from"),
        *("source", "note"),
    ),
    "place": (
        *("mark", "kind", "component", "other_component", "name", "geometry", "arose"),
        *("arose_date", "fit", "load_kg", "load_source", "access", "note"),
    ),
    "batch": ("material", "concentration", "carrier", "lot", "made", "made_by", "ref", "note"),
    "material": ("key", "name", "class", "aliases", "trade_names", "behaves_as", "note"),
    "person": ("name", "role", "organisation", "aliases", "active", "note"),
    "source": ("ref", "kind", "citation", "date", "note"),
    "term": ("list", "term", "definition", "thesaurus", "thesaurus_id", "checked_by", "note"),
    "object": ("number", "title", "kind", "maker", "made", "whereabouts", "note"),
}
"""Kind of form -> the headers that it asks, the most typed first."""

_COUNTED = ("version", "position")
"""Numbered by the program where they are left blank."""


def fields_for(
    subject: Subject, headers: Sequence[str], values: Mapping[str, str]
) -> tuple[Field, ...]:
    """Fields for some headers of a file, filled in."""
    columns = {name: column for column in subject.columns for name in column.names}
    return tuple(
        field_of(subject, header, columns[header], values.get(header, "")) for header in headers
    )


def all_headers(subject: Subject) -> tuple[str, ...]:
    """Every header that may be amended."""
    return tuple(one for one in subject.headers if one not in FIXED)


def field_of(subject: Subject, header: str, column: Column | ListColumn, value: str = "") -> Field:
    """The field for one column."""
    kind, lookup = _kind(subject, header, column)
    choices = column.values if isinstance(column, Choice) else ()
    hint = HINTS.get(header, "")
    if isinstance(column, Date) and not hint:
        hint = HINTS["date"]
    if header == "extent" and not choices:
        hint = "how far it goes: whole length, 210 mm"
    return Field(
        header,
        label_of(header),
        kind,
        value,
        choices,
        unit_of(header) if kind in ("number", "whole") else "",
        hint,
        required=_required(subject, header, column),
        lookup=lookup,
        unknown="unknown" if "unknown" in choices else "",
    )


def _kind(subject: Subject, header: str, column: Column | ListColumn) -> tuple[str, str]:
    """The kind of field, and what is looked up where that is not the kind itself."""
    if isinstance(column, ListColumn):
        kinds = {"people": "people", "components": "components", "places": "places"}
        if column.subject in kinds and header in ("people", "components", "places", "place"):
            return kinds[column.subject], ""
        if header == "agent":
            return "text", "liquid"
        return ("planned steps", "") if column.table == "authorisation_step" else ("text", "")
    match column:
        case Choice():
            return "choice", ""
        case Date():
            return "date", ""
        case Number():
            return "number", ""
        case Whole():
            return "whole", ""
        case Material():
            return "material", ""
        case Ref():
            return LOOKUPS.get(column.subject, "text"), ""
    words = WORD_LISTS.get((subject.name, header), "")
    if words:
        return "text", words
    return ("long" if header in LONG else "text"), ""


def _required(subject: Subject, header: str, column: Column | ListColumn) -> bool:
    """Whether a record cannot be without it."""
    if header in subject.key:
        return not subject.makes_key
    if isinstance(column, ListColumn):
        return column.required
    if isinstance(column, Date) or header in _COUNTED:
        return False
    field = column.fields[0]
    return field in subject.table.c and not subject.table.c[field].nullable


def subject_of(kind: str) -> Subject:
    """The file that a kind of form writes to."""
    from conservedb.tui.about import BY_KIND

    return BY_NAME[BY_KIND[kind].subject if kind in BY_KIND else kind]
