"""Entries of a history in the words of the trade, without date, hands and source."""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.questions.answers import Retired
from conservedb.questions.asking import Row, Rows
from conservedb.questions.wording import clearing, listed

_DONE = {
    "examine": "examined",
    "sample": "sampled",
    "clean": "cleaned",
    "desalinate": "desalinated",
    "consolidate": "consolidated",
    "join": "joined",
    "take apart": "taken apart",
    "fill": "filled",
    "integrate": "integrated",
    "coat": "coated",
    "support": "supported",
    "remove earlier work": "earlier work removed",
    "other": "other work",
}
_ORIGINS = {"applied": "applied", "maker": "laid by the maker", "arisen": "arisen"}
_EXTENTS = {"all": "removed", "part": "removed in part", "attempted": "removal attempted"}
_ENDED = {"all": "gone", "part": "gone in part", "attempted": "removal attempted"}
_RESULTS = {
    "seen": "seen",
    "not found": "looked for and not found",
    "not accessible": "could not be reached",
}


def sentence(text: str) -> str:
    """The text with a capital first letter."""
    return text[:1].upper() + text[1:]


def layer_name(row: Row, places: Sequence[str]) -> str:
    """ "Portland cement mortar, pointing, at J14, edge (L14d)"."""
    what = row.material or "material not recorded"
    role = f", {row.role}" if row.role else ""
    at = f" at {' or '.join(places)}" if places else ""
    zone = f", {row.zone}" if row.zone and places else ""
    return f"{what}{role}{at}{zone} ({row.ref})"


def done(row: Row) -> str:
    """What an intervention was: its kind, and how it was done."""
    kind = _DONE.get(row.kind, row.kind or "intervention of a kind not recorded")
    return f"{kind}: {row.technique}" if row.technique else kind


def laid(row: Row, name: str) -> str:
    """How a layer came."""
    return f"{_ORIGINS.get(row.origin, 'laid')}: {name}"


def removed(row: Row, name: str) -> str:
    """What an intervention took off."""
    return _off(_EXTENTS.get(row.extent, "removal, extent not recorded"), row, name)


def ended(row: Row, name: str) -> str:
    """What went without an intervention."""
    said = _off(_ENDED.get(row.extent, "ended, extent not recorded"), row, name)
    return said if row.cause else f"{said}; cause not recorded"


def _off(verb: str, row: Row, name: str) -> str:
    side = f" on side {row.side}" if row.side else ""
    cause = f"; {row.cause}" if row.cause else ""
    return f"{verb}{side}: {name}{cause}"


def joint(row: Row) -> str:
    """What a joint did."""
    event = "found moving" if row.event == "moving" else row.event or "event not recorded"
    return f"{row.place} {event}{f', {row.location}' if row.location else ''}"


def used(row: Row) -> str:
    """An agent, how it was used, and whether it was cleared."""
    how = [row.concentration, row.form]
    if row.temperature_c is not None:
        how.append(f"{row.temperature_c:g} °C")
    if row.dwell_min is not None:
        how.append(f"{row.dwell_min:g} min")
    words = ", ".join(word for word in (row.material or "agent not recorded", *how) if word)
    by = f" ({row.cleared_how})" if row.cleared_how else ""
    return f"used: {words}; {clearing(row.cleared)}{by}"


def looked(result: str, side: str, names: Sequence[str]) -> str:
    """What somebody saw, or did not."""
    said = _RESULTS.get(result, "looked at, result not recorded")
    where = f" on side {side}" if side else ""
    if len(names) == 1:
        return f"{said}{where}: {names[0]}"
    return f"{said}{where}: {len(names)} layers"


def aims(words: Sequence[str]) -> str:
    """Why it was done."""
    return f"aim: {listed(words)}"


def component_name(row: Row) -> str:
    """ "B07, basin lip"."""
    return ", ".join(word for word in (row.mark, row.name or row.kind) if word)


def retired(found: Retired) -> str:
    """ "retired: rusted through; replaced by K3n"."""
    successor = f"replaced by {found.replaced_by}" if found.replaced_by else ""
    how = "; ".join(one for one in (found.why, successor) if one)
    return f"retired: {how}" if how else "retired"


def arisen(row: Row) -> str:
    """How a place came about."""
    name = f", {row.name}" if row.name else ""
    how = f" by {row.arose}" if row.arose else ""
    return f"{row.kind or 'location'} {row.mark}{name} arose{how}"


def notes(rows: Rows) -> str:
    """The notes of several records, each once."""
    return "; ".join(dict.fromkeys(row.note for row in rows if row.note))
