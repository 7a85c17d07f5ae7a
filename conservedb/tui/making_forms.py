"""Which fields a form has and what they hold at first, for every kind of record."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import replace

from conservedb.exchange.amending import shown
from conservedb.exchange.cells import escape, join_role
from conservedb.exchange.planned_for import open_treatments
from conservedb.questions.completing import complete
from conservedb.questions.naming import find_object
from conservedb.tui.about import BY_KIND, MENDS, OVER_MANY, About
from conservedb.tui.forms_of_mending import mending_column, mending_fields
from conservedb.tui.forms_of_records import ASKED, all_headers, fields_for, subject_of
from conservedb.tui.forms_of_steps import (
    column_of,
    first_removing,
    first_step,
    removal_fields,
    step_fields,
)
from conservedb.tui.reading import Connection
from conservedb.tui.recording import Form

_TODAY = {
    "observation": "date",
    "examination": "date",
    "reading": "date",
    "sample": "date",
    "sighting": "date",
    "spot test": "date",
    "joint event": "date",
    "warning": "since",
    "treatment": "begun",
    "closing": "ended",
    "plan": "date",
    "authorisation": "date",
    "whereabouts": "since",
    "batch": "made",
}
"""Kind of form -> the date that is today until somebody says otherwise."""
_OF_TREATMENT = ("plan", "examination", "closing")
_OF_PLAN = ("planned step", "authorisation")
"""Forms that are filled in with the newest treatment that is not ended, or the newest plan."""
_KEPT = ("date", "people", "intervention", "place", "component", "plan", "source")
"""What is filled in again where one form follows another."""
_LISTED = 6


def make_form(connection: Connection, about: About, who: str, today: datetime.date) -> Form:
    """The form for a new record, or for amending one.

    Raises:
        NoSuch: there is no such object or record.
    """
    if about.record:
        return _amending(connection, about)
    kind = BY_KIND[about.kind]
    if about.kind == "step":
        fields = step_fields(first_step(connection, about, who, today))
    elif about.kind == "removal":
        fields = removal_fields(first_removing(connection, about, who, today))
    elif about.kind in MENDS:
        fields = mending_fields(connection, about, today)
    else:
        subject = subject_of(about.kind)
        values = _first_values(connection, about, who, today)
        fields = fields_for(subject, ASKED[about.kind], values)
        if about.kind == "closing":
            first = replace(fields[0], label="treatment", kind="treatment", hint="", required=True)
            fields = (first, *fields[1:])
    return Form(about.kind, kind.title, _subtitle(connection, about), fields, about.key)


def header_of(about: About, field: str) -> tuple[str, str]:
    """The file and column behind a field; ("", "") where there is none."""
    if about.kind in ("step", "removal") and not about.record:
        return column_of(about.kind, field)
    if about.kind in MENDS:
        return mending_column(about.kind, field)
    if about.kind == "closing" and field == "ref":
        return "", ""
    return subject_of(about.kind).name, field


def next_about(about: About, values: Mapping[str, str], key: str) -> About | None:
    """What the form is about that opens after this one, if any."""
    kind = BY_KIND.get(about.kind)
    if kind is None or not kind.follows or about.record:
        return None
    given = {name: values[name] for name in _KEPT if values.get(name, "").strip()}
    if about.kind == "examination":
        given |= {"intervention": key}
    if about.kind == "plan":
        given = {"plan": key}
    return about.new(kind.follows, **given)


def _amending(connection: Connection, about: About) -> Form:
    subject = subject_of(about.kind)
    seen = shown(connection, subject.name, about.number, about.record)
    fields = fields_for(subject, all_headers(subject), seen.cells)
    return Form(
        about.kind,
        f"Amend {subject.singular} {about.record}",
        _subtitle(connection, about),
        fields,
        about.key,
        seen.version,
        reason=True,
    )


def _first_values(
    connection: Connection, about: About, who: str, today: datetime.date
) -> dict[str, str]:
    values = {
        "place": _only(about.places),
        "places": "; ".join(map(escape, about.places)),
        "component": _only(about.components),
        "components": "; ".join(map(escape, about.components)),
        "layer": about.layers[0] if about.layers else "",
        "people": join_role(who, "") if who else "",
    }
    if about.kind == "component":
        values["parent"] = values["component"]
    if about.kind in _TODAY:
        values[_TODAY[about.kind]] = today.isoformat()
    if about.kind == "closing":
        values["status"] = "closed"
    if about.kind == "batch":
        values["made_by"] = who
    if about.kind in _OF_TREATMENT:
        field = "ref" if about.kind == "closing" else "treatment"
        values[field] = next(iter(open_treatments(connection, about.number)), "")
    if about.kind in _OF_PLAN:
        newest = complete(connection, "plan", "", number=about.number)
        values["plan"] = newest[0].text if newest else ""
    return values | dict(about.given)


def _only(marks: tuple[str, ...]) -> str:
    """The one that is meant; "" where there are several."""
    return marks[0] if len(marks) == 1 else ""


def _subtitle(connection: Connection, about: About) -> str:
    """The object, and where on it."""
    subject = subject_of(about.kind)
    if not subject.in_object:
        return "for all objects" if subject.name != "objects" else ""
    owner = find_object(connection, about.number)
    marks = (*about.places, *about.components)
    where = ""
    if len(marks) > 1 and about.kind not in OVER_MANY:
        where = ""
    elif len(marks) > 1:
        more = f" and {len(marks) - _LISTED} more" if len(marks) > _LISTED else ""
        what = "locations" if not about.components else "locations and parts"
        what = "parts" if not about.places else what
        where = f"over {len(marks)} {what}: {', '.join(marks[:_LISTED])}{more}"
    elif marks:
        where = f"at {marks[0]}"
    return "  ".join(one for one in (where, owner.number, owner.title) if one)
