"""What a form holds, as records: composed, written, and what came of it in words."""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from conservedb.exchange.amending import Amended, Shown, shown
from conservedb.exchange.completed import GIVE_A_REASON
from conservedb.exchange.deeds import compose_removing, compose_simple, compose_step
from conservedb.exchange.entering import Entry, Refs
from conservedb.exchange.faults import Fault
from conservedb.exchange.judging import JudgedWritten, amend_judged, enter_judged
from conservedb.exchange.numbering import next_position, next_version
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.writer import writer
from conservedb.store.connect import reading
from conservedb.store.log import Author
from conservedb.tui.about import MENDS, About
from conservedb.tui.field_words import label_of
from conservedb.tui.forms_of_records import subject_of
from conservedb.tui.forms_of_steps import field_named, removing_of, step_of
from conservedb.tui.reading import Engine
from conservedb.tui.recording import Clash, Finding, Form, Outcome, Problem
from conservedb.tui.saving_mending import mend
from conservedb.tui.saying_faults import sentence_of

DEEDS = ("step", "removal")
_NAMED = 4
_PEOPLE = ("people", "person", "lead", "made_by", "recorded_by", "unauthorised_by")
"""Fields in which the writer may stand before there is a record of the writer."""


@dataclass(frozen=True, slots=True)
class Saving:
    """A form to be saved, by whom and when.

    Attributes:
        reason: why, where the form asks for it.
        override: rule to the reason why it is set aside.
        over: field to the value chosen where it clashed.
    """

    engine: Engine
    about: About
    form: Form
    values: Mapping[str, str]
    who: str
    today: datetime.date
    reason: str = ""
    override: Mapping[str, str] = field(default_factory=dict)
    over: Mapping[str, str] = field(default_factory=dict)


def save(one: Saving) -> Outcome:
    """Save a form: all of it, or nothing.

    Raises:
        DatabaseProblem, NoSuch: the file cannot be written, or what is amended is gone.
    """
    if one.about.kind in MENDS:
        return mend(one.engine, one.about, one.values, one.who, one.today)
    if one.about.record:
        return _amend(one, one.about.record, one.values)
    if one.about.kind == "closing":
        cells = {name: text for name, text in one.values.items() if text.strip()}
        return _amend(one, cells.pop("ref", ""), cells)
    author = Author(one.who, "recorded", one.reason)
    number = one.about.number if subject_of(one.about.kind).in_object else ""
    done = enter_judged(
        one.engine,
        lambda refs: _entries(refs, one),
        author,
        one.today,
        number,
        one.override,
    )
    if not done.kept:
        return _not_saved(one, done)
    keys = list(zip(done.entries, done.written.keys, strict=True))
    return Outcome(
        saved=_saved(one.about, keys, done.written.set_number),
        notices=done.notices,
        key=_key_of(one.about, keys),
    )


def _not_saved(one: Saving, done: JudgedWritten) -> Outcome:
    """What must be mended, explained or settled first."""
    faults = done.written.faults
    unreasoned = next((fault for fault in faults if fault.remedy == GIVE_A_REASON), None)
    if unreasoned is not None and not one.reason:
        return Outcome(complete=unreasoned.reason)
    if isinstance(done.written, Amended) and done.written.clashes:
        clashes = (
            Clash(c.field, label_of(c.field), c.shown, c.mine, c.theirs, c.by, _clock(c.at))
            for c in done.written.clashes
        )
        return Outcome(clashes=tuple(clashes))
    if faults:
        return Outcome(problems=_problems(one.about.kind, faults, done.entries))
    judged = tuple(Finding(f.rule, f.severity, f.sentence) for f in done.findings)
    return Outcome(judged=judged, notices=done.notices)


def _entries(refs: Refs, one: Saving) -> list[Entry]:
    about, values = one.about, dict(one.values)
    if about.kind == "step":
        return compose_step(refs, step_of(about, values), one.who, one.today)
    if about.kind == "removal":
        return compose_removing(refs, removing_of(about, values), one.who, one.today)
    if about.kind == "plan" and not values["version"].strip():
        values["version"] = next_version(refs.connection, about.number, values["treatment"])
    if about.kind == "planned step" and not values["position"].strip():
        values["position"] = next_position(refs.connection, about.number, values["plan"])
    if about.kind == "examination":
        values |= {"kind": "examine", "recorded": one.today.isoformat(), "recorded_by": one.who}
    entries = compose_simple(refs, subject_of(about.kind).name, about.number, values, one.who)
    if any(one.who in values.get(name, "") for name in _PEOPLE):
        entries = [*writer(refs, one.who), *entries]
    return list({(entry.subject, str(entry.cells)): entry for entry in entries}.values())


def _amend(one: Saving, key: str, cells: Mapping[str, str]) -> Outcome:
    subject = subject_of(one.about.kind)
    number = one.about.number if subject.in_object else ""
    seen = None
    if one.about.record:
        seen = Shown({f.name: f.value for f in one.form.fields}, one.form.version)
        if one.over:
            with reading(one.engine) as connection:
                now = shown(connection, subject.name, number, key).cells
            seen = Shown({**seen.cells, **{name: now.get(name, "") for name in one.over}}, -1)
    author = Author(one.who, "amended", one.reason)
    done = amend_judged(
        one.engine, subject.name, number, key, cells, author, one.today, seen, one.override
    )
    if not done.kept:
        return _not_saved(one, done)
    if done.written.set_number is None:
        return Outcome(saved=f"{subject.singular} {key}: nothing was changed", key=key)
    saved = f"amended: {subject.singular} {key}; change set {done.written.set_number}"
    return Outcome(saved=saved, notices=done.notices, key=key)


def _clock(at: str) -> str:
    """The moment of the log, in UTC, without its seconds."""
    return f"{at[:16].replace('T', ', ')} UTC"


def _problems(kind: str, faults: Sequence[Fault], entries: Sequence[Entry]) -> tuple[Problem, ...]:
    """Each fault at its field; what several records say of the same cell is said once."""
    found: dict[tuple[str, str, str], Problem] = {}
    for fault in faults:
        problem = _problem(kind, fault, entries)
        found.setdefault((problem.field, fault.value, fault.reason), problem)
    return tuple(found.values())


def _problem(kind: str, fault: Fault, entries: Sequence[Entry]) -> Problem:
    """A fault at the field where it can be mended; it names the place where there are many."""
    name = field_named(kind, fault.file, fault.column) if kind in DEEDS else fault.column
    if not name and "unauthorised_reason" in fault.remedy:
        name = "unauthorised_reason"
    where = ""
    if 0 < fault.row <= len(entries) and len(entries) > 2 and fault.file == "layers.csv":
        where = f"{entries[fault.row - 1].cells.get('place', '')}: "
    return Problem(name, where + sentence_of(fault))


def _key_of(about: About, keys: Sequence[tuple[Entry, str]]) -> str:
    """What other fields call the new record: the deed, or the record itself."""
    wanted = "interventions" if about.kind in DEEDS else subject_of(about.kind).name
    return next((key for entry, key in keys if entry.subject == wanted), "")


def _saved(about: About, keys: Sequence[tuple[Entry, str]], change_set: int | None) -> str:
    """What was saved, by its refs."""
    named = [
        (entry.subject, key, entry.cells)
        for entry, key in keys
        if entry.subject != "people" or about.kind == "person"
    ]
    parts = []
    for subject in dict.fromkeys(subject for subject, _, _ in named):
        these = [(key, cells) for name, key, cells in named if name == subject]
        refs = ", ".join(key for key, _ in these)
        if len(these) > _NAMED:
            refs = f"{these[0][0]} to {these[-1][0]}"
        places = dict.fromkeys(str(cells.get("place", "")) for _, cells in these)
        where = ""
        if subject == "layers" and len(places) > 1:
            where = f" at {len(places)} locations"
        elif subject == "layers" and any(places):
            where = f" at {next(iter(places))}"
        parts.append(f"{refs or BY_NAME[subject].singular}{where}")
    return f"saved: {', '.join(parts)}; change set {change_set}"
