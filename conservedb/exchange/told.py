"""Faults of entries as sentences for whoever typed them: the place or layer first."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.entering import Entry
from conservedb.exchange.faults import Fault
from conservedb.exchange.subjects import BY_NAME

_BY_LIST = ("places", "components", "people", "aims", "steps")
"""Columns whose fault names the one item that is wrong."""
_NAMES, _NOWHERE = "names no ", " in the folder or the database"
_LONGEST = 80
_MOST = 12


def told(faults: Iterable[Fault], entries: Sequence[Entry]) -> tuple[str, ...]:
    """One sentence for each thing that is wrong: "J15: ...", or "J14, J15: ..."."""
    about: dict[str, list[str]] = {}
    for fault in faults:
        bearer = _bearer(fault, entries)
        bearers = about.setdefault(_said(fault, bearer), [])
        if bearer and bearer not in bearers:
            bearers.append(bearer)
    return tuple(f"{_joined(those)}{said}" for said, those in about.items())


def _bearer(fault: Fault, entries: Sequence[Entry]) -> str:
    """What the sentence is about: the place or layer of the entry, else its kind."""
    entry = entries[fault.row - 1] if 0 < fault.row <= len(entries) else None
    if entry is None or f"{entry.subject}.csv" != fault.file:
        return fault.value if fault.column in _BY_LIST else ""
    if fault.column in ("place", "layer", *_BY_LIST) and fault.value:
        return fault.value
    layer = entry.cells.get("layer", "").strip()
    places = [unescape(item) for item in split_list(entry.cells.get("place", ""))]
    if entry.subject == "layers" and len(places) == 1:
        return places[0]
    return layer or BY_NAME[entry.subject].singular


def _said(fault: Fault, bearer: str) -> str:
    """What is wrong and what to do: "cycles "x" is not a whole number; write digits only"."""
    reason, remedy = fault.reason, fault.remedy
    if reason.startswith(_NAMES) and reason.endswith(_NOWHERE):
        reason = f"is no {reason.removeprefix(_NAMES).removesuffix(_NOWHERE)} on record"
        near = remedy.split("? else ")[0] if remedy.startswith("did you mean ") else ""
        remedy = f"{near}?" if near else "write it otherwise, or add it first"
    column = f"{fault.column.replace('_', ' ')} " if fault.column else ""
    quoted = f'"{_shortened(fault.value)}" ' if fault.column and fault.value else ""
    named = "" if bearer and bearer == fault.value else f"{column}{quoted}"
    return f"{named}{reason}; {remedy}"


def _joined(bearers: Sequence[str]) -> str:
    if not bearers:
        return ""
    shown = ", ".join(map(_shortened, bearers[:_MOST]))
    more = f" and {len(bearers) - _MOST} more" if len(bearers) > _MOST else ""
    return f"{shown}{more}: "


def _shortened(text: str) -> str:
    return text if len(text) <= _LONGEST else text[: _LONGEST - 3] + "..."
