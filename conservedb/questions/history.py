"""The history of an object, or of one part or place of it, in order of time."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from sqlalchemy import Connection, bindparam, select

from conservedb.dates import is_known
from conservedb.questions import history_words as words
from conservedb.questions import naming
from conservedb.questions.answers import (
    HistoryAnswer,
    HistoryRow,
    Person,
    Reworded,
    Rival,
    When,
)
from conservedb.questions.asking import Question, Row, Rows, blank
from conservedb.questions.evidence import BLANK, source_of, when
from conservedb.questions.history_entry import entry
from conservedb.questions.history_findings import finding_rows, plan_rows
from conservedb.questions.history_records import ASKED, Records
from conservedb.questions.history_records import STATEMENTS as _RECORD_STATEMENTS
from conservedb.questions.retiring import retired_of
from conservedb.questions.rewordings import of, rewordings
from conservedb.records.objects import component
from conservedb.records.places import place
from conservedb.store.keys import fold, sort_key

_MARKED = {
    table.name: Question(
        select(table.c.id, table.c.mark, blank(table.c.name).label("name")).where(
            table.c.object_id == bindparam("object"), table.c.mark_folded == bindparam("mark")
        )
    )
    for table in (component, place)
}
STATEMENTS = (*naming.STATEMENTS, *_MARKED.values(), *_RECORD_STATEMENTS)
_OBJECT_MADE = naming.OBJECT.at("made_words")
_SUBJECTS = {
    "interventions": "intervention",
    "events": "joint_event",
    "layers": "layer",
    "removals": "removal",
    "sightings": "sighting",
}
_DATES = {name: ASKED["object"].rows[name].at("date_words") for name in _SUBJECTS}
_SOURCES = {
    name: ASKED["object"].rows[name].at("source_ref") for name in (*_SUBJECTS, "components")
}
_KINDS = (
    *("made", "plan", "authorisation", "layer", "intervention", "joint"),
    *("observation", "reading", "sample", "spot test", "sighting", "ended", "lost", "retired"),
)


def history(connection: Connection, number: str, mark: str = "") -> HistoryAnswer:
    """Everything that happened to an object; or to a part with its places; or at one place.

    Raises:
        NoSuch: no such object, or it has no part or place of that mark.
    """
    owner = naming.find_object(connection, number)
    if not mark.strip():
        records = ASKED["object"].records(connection, owner.id)
        made = when(owner, _OBJECT_MADE)
        rows = list(_rows(records))
        if made is not BLANK:
            rows.insert(0, _object_row(connection, owner, made, records))
        return _answer(owner, "", "", rows)
    for kind, question in _MARKED.items():
        found = question.first(connection, object=owner.id, mark=fold(mark))
        if found is not None:
            records = ASKED[kind].records(connection, found.id)
            return _answer(owner, found.mark, found.name, list(_rows(records)))
    raise naming.no_such_mark(connection, owner, tuple(_MARKED), mark)


def _answer(owner: Row, mark: str, name: str, rows: list[HistoryRow]) -> HistoryAnswer:
    rows.sort(key=_in_time)
    return HistoryAnswer(owner.number, owner.title, mark, name, tuple(rows))


def _in_time(row: HistoryRow) -> tuple[int, int, int]:
    """By the first day it may lie on; where that is not known, by the last."""
    earliest, latest = row.date.earliest, row.date.latest
    return (earliest if is_known(earliest) else latest, latest, _KINDS.index(row.kind))


def _object_row(connection: Connection, owner: Row, made: When, records: Records) -> HistoryRow:
    amended = rewordings(connection, {"object": [owner.id]})
    return entry(
        "made",
        owner.number,
        made,
        f"{owner.title or 'Object'} made",
        people=(Person(owner.maker, "maker"),) if owner.maker else (),
        rivals=tuple(records.rivals.get(("object", owner.id), ())),
        amended=of(amended, "object", owner.id),
    )


def _rows(records: Records) -> Iterator[HistoryRow]:
    places = _layer_places(records)
    names = {row.id: words.layer_name(row, places[row.id]) for row in records.layers}
    yield from _component_rows(records)
    yield from _place_rows(records)
    yield from _intervention_rows(records, names)
    for row in records.events:
        if row.intervention_id is None:
            yield _record("joint", "events", row, words.joint(row), records, [row.place])
    for row in records.layers:
        if row.intervention_id is None:
            text = words.laid(row, names[row.id])
            yield _record("layer", "layers", row, text, records, places[row.id])
    for row in records.removals:
        if row.intervention_id is None:
            text = words.ended(row, names[row.layer_id])
            yield _record("ended", "removals", row, text, records, places[row.layer_id])
    yield from _sighting_rows(records, names, places)
    yield from finding_rows(records.findings, records.amended)
    yield from plan_rows(records.plans, records.amended)


def _record(
    kind: str, table: str, row: Row, text: str, records: Records, places: Sequence[str]
) -> HistoryRow:
    """The entry for something that no intervention did."""
    rivals = records.rivals.get((_SUBJECTS[table], row.id), ())
    return entry(
        kind,
        row.ref,
        when(row, _DATES[table]),
        text,
        places=places,
        source=source_of(row, _SOURCES[table]),
        rivals=rivals,
        note=row.note,
        amended=of(records.amended, _SUBJECTS[table], row.id),
    )


def _component_rows(records: Records) -> Iterator[HistoryRow]:
    asked = ASKED["object"].rows["components"]
    for row in records.components:
        rivals = records.rivals.get(("component", row.id), ())
        for kind in ("made", "lost"):
            date = when(row, asked.at(f"{kind}_words"))
            if date is not BLANK:
                yield entry(
                    kind,
                    row.mark,
                    date,
                    f"{words.component_name(row)} {kind}",
                    components=[row.mark],
                    source=source_of(row, _SOURCES["components"]),
                    rivals=[rival for rival in rivals if rival.field == kind],
                    note=row.note,
                    amended=of(records.amended, "component", row.id),
                )
        retired = retired_of(row, asked.at("retired_words"))
        if retired is not None:
            yield entry(
                "retired",
                row.mark,
                retired.date,
                words.retired(retired),
                components=[row.mark],
                rivals=[rival for rival in rivals if rival.field == "retired"],
                note=row.note,
                amended=of(records.amended, "component", row.id),
            )


def _place_rows(records: Records) -> Iterator[HistoryRow]:
    at = ASKED["object"].rows["places"].at("arising_words")
    for row in records.places:
        date = when(row, at)
        if date is not BLANK:
            rivals = records.rivals.get(("place", row.id), ())
            text = words.arisen(row)
            yield entry(
                "made",
                row.mark,
                date,
                text,
                places=[row.mark],
                rivals=rivals,
                amended=of(records.amended, "place", row.id),
            )


def _layer_places(records: Records) -> dict[int, list[str]]:
    several = _grouped(records.candidates)
    return {
        row.id: several.get(row.id) or ([row.place] if row.place else []) for row in records.layers
    }


def _grouped(rows: Rows) -> dict[int, list[str]]:
    found: dict[int, list[str]] = defaultdict(list)
    for owner, word in rows:
        found[owner].append(word)
    return found


def _intervention_rows(records: Records, names: dict[int, str]) -> Iterator[HistoryRow]:
    detail, rivals = _details(records, names), deed_rivals(records)
    amended = _deed_rewordings(records)
    parts, places = _grouped(records.parts_touched), _grouped(records.places_touched)
    for row in records.interventions:
        yield entry(
            "intervention",
            row.ref,
            when(row, _DATES["interventions"]),
            words.done(row),
            detail=detail[row.id],
            people=records.hands.get(row.id, ()),
            treatment=row.treatment,
            components=sorted(parts.get(row.id, ()), key=sort_key),
            places=sorted(places.get(row.id, ()), key=sort_key),
            source=source_of(row, _SOURCES["interventions"]),
            rivals=rivals[row.id],
            note=row.note,
            amended=amended[row.id],
        )


def _details(records: Records, names: dict[int, str]) -> dict[int, list[str]]:
    """What each intervention did to layers and joints, with what, why, and how it is dated."""
    found: dict[int, list[str]] = defaultdict(list)
    for row in records.layers:
        found[row.intervention_id].append(words.laid(row, names[row.id]))
    for row in records.removals:
        found[row.intervention_id].append(words.removed(row, names[row.layer_id]))
    for row in records.events:
        found[row.intervention_id].append(words.joint(row))
    for row in records.agents:
        found[row.intervention_id].append(words.used(row))
    for deed, aims in _grouped(records.aims).items():
        found[deed].append(words.aims(aims))
    for row in records.interventions:
        if row.date_basis:
            found[row.id].append(f"dated by: {row.date_basis}")
    return found


def deed_rivals(records: Records) -> dict[int, list[Rival]]:
    """What is disputed about each intervention, and about what it laid, took off and moved."""
    found: dict[int, list[Rival]] = defaultdict(list)
    for row in records.interventions:
        found[row.id] += records.rivals.get(("intervention", row.id), ())
    for table in ("layers", "removals", "events"):
        for row in getattr(records, table):
            found[row.intervention_id] += records.rivals.get((_SUBJECTS[table], row.id), ())
    return found


def _deed_rewordings(records: Records) -> dict[int, list[Reworded]]:
    """How each intervention read before, and what it laid, took off, moved and used."""
    found: dict[int, list[Reworded]] = defaultdict(list)
    if not records.amended:
        return found
    for row in records.interventions:
        found[row.id] += of(records.amended, "intervention", row.id)
    for name, table in (*_SUBJECTS.items(), ("agents", "agent")):
        for row in getattr(records, name) if name not in ("interventions", "sightings") else ():
            called = f"{table.replace('_', ' ')} {row.ref}"
            found[row.intervention_id] += of(records.amended, table, row.id, called)
    return found


def _sighting_rows(
    records: Records, names: dict[int, str], places: dict[int, list[str]]
) -> Iterator[HistoryRow]:
    """One entry for all that the same people saw, or missed, on the same occasion."""
    occasions: dict[tuple[object, ...], list[Row]] = defaultdict(list)
    for row in records.sightings:
        people = records.seen_by.get(row.id, ())
        occasions[when(row, _DATES["sightings"]), row.result, row.side, people, row.source_ref] += [
            row
        ]
    for rows in occasions.values():
        first, seen = rows[0], [names[row.layer_id] for row in rows]
        at = [mark for row in rows for mark in places[row.layer_id]]
        yield entry(
            "sighting",
            first.ref,
            when(first, _DATES["sightings"]),
            words.looked(first.result, first.side, seen),
            detail=seen if len(seen) > 1 else (),
            people=records.seen_by.get(first.id, ()),
            places=sorted(set(at), key=sort_key),
            source=source_of(first, _SOURCES["sightings"]),
            rivals=[r for row in rows for r in records.rivals.get(("sighting", row.id), ())],
            note=words.notes(rows),
            amended=[
                one
                for row in rows
                for one in of(records.amended, "sighting", row.id, row.ref if len(rows) > 1 else "")
            ],
        )
