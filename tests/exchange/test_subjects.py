"""Every column of the schema goes out, or is named here as derived; the guide lists them all."""

from __future__ import annotations

from pathlib import Path

from conservedb.exchange.columns import Choice
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.subjects import SUBJECTS
from conservedb.records import log
from conservedb.records.every import metadata
from conservedb.records.layers import BOUNDS

GUIDE = Path(__file__).parents[2] / "DEVELOPERS.md"

DERIVED = {
    ("database", name) for name in ("id", "uuid", "name", "created", "fixed_today", "edition")
}  # describes the file, not the records
DERIVED |= {("layer", name) for name in BOUNDS}  # worked out from dates, removals, sightings
DERIVED |= {("layer_side", name) for name in ("layer_id", "side", *BOUNDS)}
DERIVED |= {("shipped", name) for name in ("subject", "record_id", "content")}
# what the program put into this file; another one remembers its own
DERIVED |= {(t.name, c.name) for t in (log.change_set, log.change) for c in t.columns}
# how this file came to be; another one has its own log


def exported() -> set[tuple[str, str]]:
    """Table columns that some CSV column is made of, or that are keys the files express."""
    found: set[tuple[str, str]] = set()
    for subject in SUBJECTS:
        table = subject.table.name
        found.add((table, "id"))
        found.update((table, field) for field in subject.fields)
        for column in subject.columns:
            if isinstance(column, ListColumn):
                links = metadata.tables[column.table]
                found.update((column.table, field) for field in column.fields)
                found.add((column.table, column.owner))
                found.update((column.table, n) for n in ("object_id", "position") if n in links.c)
    return found


def test_every_column_is_exported_or_derived() -> None:
    schema = {(t.name, c.name) for t in metadata.tables.values() for c in t.columns}
    assert schema - exported() == DERIVED
    assert not exported() - schema


THE_ISSUE_ASKS = {
    "objects": "number, title, kind, maker, made, whereabouts, note",
    "components": "object, mark, parent, name, kind, origin, material, bridges, width_mm,"
    " height_mm, depth_mm, mass_kg, mass_basis, made, lost, kept_at, note",
    "places": "object, mark, kind, component, other_component, name, geometry, arose, fit,"
    " load_kg, access, note",
    "joint_events": "object, place, ref, event, date, intervention, where, source, note",
    "people": "name, aliases, role, organisation, active, note",
    "sources": "ref, kind, citation, date, note",
    "materials": "key, name, class, aliases, note",
    "material_classes": "key, name, parent",
    "treatments": "object, ref, title, purpose, status, begun, ended, lead, note",
    "interventions": "object, ref, treatment, kind, technique, aims, date, date_basis, people,"
    " components, places, source, recorded, recorded_by, note",
    "agents": "object, intervention, ref, material, place, concentration, form, temperature_c,"
    " dwell_min, cleared, note",
    "layers": "object, place, ref, intervention, date, origin, material, role, stack, side, zone,"
    " coverage, concentration, carrier, dry, identified, significance, source, note",
    "removals": "object, ref, layer, intervention, date, cause, extent, side, source, note",
    "sightings": "object, ref, layer, date, result, side, people, source, note",
    "statements": "table, object, ref, field, value, source, page, people, date, followed, note",
    "warnings": "object, component, place, kind, text, since, until, source",
}


def test_fixed_names_stay() -> None:
    """Departments have files with these headers; they are never renamed."""
    headers = {subject.name: set(subject.headers) for subject in SUBJECTS}
    for name, columns in THE_ISSUE_ASKS.items():
        assert set(columns.split(", ")) <= headers[name]


def table_of_files() -> list[str]:
    lines = []
    for subject in SUBJECTS:
        names = [f"**{h}**" if h in subject.key else h for h in subject.headers]
        lines.append(f"| `{subject.file}` | {', '.join(names)} |")
    return lines


def table_of_words() -> list[str]:
    return [
        f"| `{subject.file}` {column.name} | {', '.join(column.values)} |"
        for subject in SUBJECTS
        for column in subject.columns
        if isinstance(column, Choice)
    ]


def test_the_guide_lists_files_and_words() -> None:
    guide = GUIDE.read_text(encoding="utf-8")
    for line in (*table_of_files(), *table_of_words()):
        assert line in guide
