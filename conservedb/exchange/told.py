"""Faults of entries as sentences for whoever typed them: the place or layer first."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.entering import Entry
from conservedb.exchange.faults import Fault
from conservedb.exchange.subjects import BY_NAME

_BY_LIST = ("places", "components", "people", "aims", "steps")
"""Columns whose fault names the one item that is wrong."""
_LONGEST = 80


def told(faults: Iterable[Fault], entries: Sequence[Entry]) -> tuple[str, ...]:
    """One sentence for each thing that is wrong, each once: "J15: ..."."""
    return tuple(dict.fromkeys(_sentence(fault, entries) for fault in faults))


def _sentence(fault: Fault, entries: Sequence[Entry]) -> str:
    entry = entries[fault.row - 1] if 0 < fault.row <= len(entries) else None
    if entry is None or f"{entry.subject}.csv" != fault.file:
        return _plain(fault, "")
    return _plain(fault, _bearer(fault, entry))


def _bearer(fault: Fault, entry: Entry) -> str:
    """What the sentence is about: the place or layer of the entry, else its kind."""
    if fault.column in ("place", "layer", *_BY_LIST) and fault.value:
        return fault.value
    layer = entry.cells.get("layer", "").strip()
    places = [unescape(item) for item in split_list(entry.cells.get("place", ""))]
    if entry.subject == "layers" and len(places) == 1:
        return places[0]
    return layer or BY_NAME[entry.subject].singular


def _plain(fault: Fault, bearer: str) -> str:
    """ "J15: cycles "x" is not a whole number; write digits only"."""
    reason, remedy = fault.reason, fault.remedy
    if reason.startswith("names no ") and reason.endswith(" in the folder or the database"):
        named = reason.removeprefix("names no ").removesuffix(" in the folder or the database")
        reason = f"is no {named} on record"
        near = remedy.split("? else ")[0] if remedy.startswith("did you mean ") else ""
        remedy = f"{near}?" if near else "write it otherwise, or add it first"
    value = _shortened(fault.value)
    if bearer and bearer == fault.value:
        return f"{_shortened(bearer)}: {reason}; {remedy}"
    column = f"{fault.column.replace('_', ' ')} " if fault.column else ""
    quoted = f'"{value}" ' if fault.column and value else ""
    where = f"{_shortened(bearer)}: " if bearer else ""
    return f"{where}{column}{quoted}{reason}; {remedy}"


def _shortened(text: str) -> str:
    return text if len(text) <= _LONGEST else text[: _LONGEST - 3] + "..."
