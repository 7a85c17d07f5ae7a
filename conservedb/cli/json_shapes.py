"""The shapes that the JSON of several commands shares. Fields are only ever added.

- date: {"words", "edtf", "earliest", "latest"}: as found, as EDTF ("" where not recorded or not
  understood), first and last possible day as ISO dates (null: unknown, open or none).
- source: {"ref", "kind", "citation", "page"} or null.
- people: [{"name", "role"}].
- deed: a date with "intervention" (its ref, "" for none), "kind", "technique", "people",
  "extent" (all, part, attempted; removals only), "side", "cause", "source", "note".
- seen: a date with "result", "side", "people", "source", "note"; or null.
- rivals: [{"subject", "of", "field", "value", "source", "people", "date", "followed",
  "decided_by", "reason", "note"}]; "followed" is "yes", "no" or "" (undecided); "of" is the mark
  or ref of a part or treatment where the answer is about its object, else "".
- warnings: [{"ref", "component", "place", "kind", "text", "since", "until", "source"}].
- retired: {"date": date, "why", "replaced_by": mark of another part or ""}.
- amended: [{"when": day, "who", "reason", "of": the record, "" for the one that the answer or entry
  is about, "fields": [{"name", "before", "after"}]}]; "" where a field was blank.
- on: {"words", "edtf", "from", "to"}: the day or span asked for.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import asdict
from typing import Any

from conservedb.dates import iso
from conservedb.questions.answers import (
    AsOf,
    Deed,
    Person,
    Retired,
    Reworded,
    Rival,
    Seen,
    Source,
    Warning_,
    When,
)

Json = dict[str, Any]


def date(when: When | None) -> Json | None:
    """A recorded date."""
    if when is None:
        return None
    return {
        "words": when.words,
        "edtf": when.edtf,
        "earliest": iso(when.earliest),
        "latest": iso(when.latest),
    }


def retired(found: Retired | None) -> Json | None:
    """How a part was taken out for good."""
    if found is None:
        return None
    return {"date": date(found.date), "why": found.why, "replaced_by": found.replaced_by}


def amended(found: Iterable[Reworded]) -> list[Json]:
    """How a record read before."""
    return [asdict(one) for one in found]


def asked(on: AsOf) -> Json:
    """The day or span that was asked for."""
    return {"words": on.words, "edtf": on.edtf, "from": iso(on.first), "to": iso(on.last)}


def source(found: Source | None) -> Json | None:
    """Where something is known from."""
    if found is None:
        return None
    return {
        "ref": found.ref,
        "kind": found.kind,
        "citation": found.citation,
        "page": found.page,
    }


def people(those: Iterable[Person]) -> list[Json]:
    """Who did or saw something."""
    return [{"name": one.name, "role": one.role} for one in those]


def deed(done: Deed) -> Json:
    """How a layer came, or how it or part of it went."""
    return {
        **(date(done.date) or {}),
        "intervention": done.intervention,
        "kind": done.kind,
        "technique": done.technique,
        "people": people(done.people),
        "extent": done.extent,
        "side": done.side,
        "cause": done.cause,
        "source": source(done.source),
        "note": done.note,
    }


def seen(look: Seen | None) -> Json | None:
    """Somebody looked."""
    if look is None:
        return None
    return {
        **(date(look.date) or {}),
        "result": look.result,
        "side": look.side,
        "people": people(look.people),
        "source": source(look.source),
        "note": look.note,
    }


def rival(stated: Rival) -> Json:
    """What a source states about a field."""
    return {
        "subject": stated.subject,
        "of": stated.of,
        "field": stated.field,
        "value": stated.value,
        "source": source(stated.source),
        "people": people(stated.people),
        "date": date(stated.date),
        "followed": stated.followed,
        "decided_by": stated.decided_by,
        "reason": stated.reason,
        "note": stated.note,
    }


def warning(caution: Warning_) -> Json:
    """A hazard of an object or a limit on handling it."""
    return {
        "ref": caution.ref,
        "component": caution.component,
        "place": caution.place,
        "kind": caution.kind,
        "text": caution.text,
        "since": date(caution.since),
        "until": date(caution.until),
        "source": source(caution.source),
    }
