"""What a form that mends holds, done: by the same functions as the commands that mend."""

from __future__ import annotations

import datetime
from collections.abc import Mapping, Sequence

from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.entering import Written
from conservedb.exchange.faults import Fault
from conservedb.exchange.mending import Analysis, reidentify, replace, retire, split
from conservedb.exchange.merging import Merged, merge
from conservedb.exchange.one_cell import fault_in
from conservedb.store.connect import reading
from conservedb.store.log import Author
from conservedb.tui.about import About
from conservedb.tui.forms_of_mending import mending_column
from conservedb.tui.reading import Engine
from conservedb.tui.recording import Outcome, Problem
from conservedb.tui.saying_faults import sentence_of

_DONE = {
    "split": "split",
    "retire": "retired",
    "replace": "replaced",
    "reidentify": "reidentified",
}
"""Kind of form -> the word for it in the change log."""
_FIELDS = {
    "split": {"mark": "fragments"},
    "retire": {"mark": "part"},
    "replace": {"mark": "new", "replaced_by": "new"},
    "reidentify": {"ref": "layer", "value": "material"},
}
"""Kind of form -> column of a fault -> the field in which it can be mended."""


def mend(
    engine: Engine, about: About, values: Mapping[str, str], who: str, today: datetime.date
) -> Outcome:
    """Do what the form says: all of it, or nothing.

    Raises:
        DatabaseProblem, NoSuch: the file cannot be written, or what is mended is not on record.
    """
    held = {name: text.strip() for name, text in values.items()}
    wrong = _not_on_record(engine, about, held)
    if wrong:
        return Outcome(problems=wrong)
    if about.kind.startswith("merge "):
        author = Author(who, "merged", held["reason"])
        subject = about.kind.removeprefix("merge ")
        return _united(merge(engine, subject, held["keep"], held["gone"], author, today), held)
    author = Author(who, _DONE[about.kind], held["reason"])
    written, sentence = _mended(engine, about, held, author, today)
    if written.faults:
        return Outcome(problems=_problems(about.kind, written.faults, held))
    notices = tuple(dict.fromkeys(sentence_of(one) for one in written.notices))
    return Outcome(f"{sentence}; change set {written.set_number}", notices=notices)


def _not_on_record(engine: Engine, about: About, held: Mapping[str, str]) -> tuple[Problem, ...]:
    """Fields that name nothing on record."""
    found = []
    with reading(engine) as connection:
        for name, text in held.items():
            subject, header = mending_column(about.kind, name)
            fault = fault_in(connection, subject, about.number, header, text) if subject else None
            if fault is not None:
                found.append(Problem(name, sentence_of(fault)))
    return tuple(found)


def _mended(
    engine: Engine, about: About, held: Mapping[str, str], author: Author, today: datetime.date
) -> tuple[Written, str]:
    """What became of it, and a sentence for where it was done."""
    number, part = about.number, held.get("part", "")
    match about.kind:
        case "split":
            pieces = tuple(map(unescape, split_list(held["fragments"])))
            written = split(engine, number, part, pieces, author, today)
            return written, f"saved: {part} broke into {', '.join(pieces)}"
        case "retire":
            written = retire(engine, number, part, held["on"], author, today)
            return written, f"saved: {part} taken out"
        case "replace":
            new = held["new"]
            written = replace(engine, number, part, new, held["on"], author, today)
            return written, f"saved: {new} in place of {part}"
    layer, material = held["layer"], held["material"]
    found = Analysis(material, held["source"], held["identified"])
    written, _ = reidentify(engine, number, layer, found, author, today)
    return written, f"saved: {layer} is {material}"


def _united(done: Merged, held: Mapping[str, str]) -> Outcome:
    """What became of a merging; what now names the one kept is worth knowing."""
    if done.faults:
        return Outcome(problems=tuple(Problem("gone", sentence_of(one)) for one in done.faults))
    keep, gone = held["keep"], held["gone"]
    counted = ", ".join(f"{count} x {what}" for what, count in done.moved)
    moved = (f"{counted}: named {gone}, and name {keep} from now on",) if counted else ()
    noted = tuple(f"in the note of {keep} now: {words}" for words in done.noted)
    return Outcome(f"saved: {gone} is {keep}; change set {done.set_number}", notices=moved + noted)


def _problems(kind: str, faults: Sequence[Fault], held: Mapping[str, str]) -> tuple[Problem, ...]:
    """Each fault at its field, said once."""
    return tuple(
        dict.fromkeys(Problem(_field(kind, one, held), sentence_of(one)) for one in faults)
    )


def _field(kind: str, fault: Fault, held: Mapping[str, str]) -> str:
    if fault.column == "mark" and fault.value == held.get("part"):
        return "part"
    shared = {"retired": "on", "retired_why": "reason"}
    return {**shared, **_FIELDS[kind]}.get(fault.column, fault.column)
