"""How findings speak of layers, parts, places, days and figures."""

from __future__ import annotations

from collections.abc import Iterable

from conservedb.dates import Found, iso, say
from conservedb.knowledge.rule_case import KnownLayer, KnownPart, KnownPlace

_DAYS_A_YEAR = 365.2425
DAYS_A_MONTH = _DAYS_A_YEAR / 12


def layer_words(layer: KnownLayer) -> str:
    """A layer with its role, ref, and what is not sure about it."""
    unsure = ["residue left"] if layer.reduced else []
    if layer.there == "possible":
        unsure.append("not certainly there")
    if len(layer.matters) > 1:
        unsure.append(f"or {listed([other.name for other in layer.matters[1:]], 'or')}")
    elif layer.matters and layer.only_stated:
        unsure.append("by a statement only")
    elif layer.matters and not layer.identity_sure:
        unsure.append(f"identity {layer.identified}")
    name = layer.name or "something"
    if not layer.matters:
        unsure.append("not identified")
    return f"{name} ({', '.join([layer.role or 'role not recorded', layer.ref, *unsure])})"


def part_words(part: KnownPart) -> str:
    """A component with its kind and material."""
    material = material_words(part) or "material not recorded"
    return f"{part.kind or part.name or 'part'} {part.mark} ({material})"


def material_words(part: KnownPart) -> str:
    """What a component is made of, "" where that is not recorded."""
    return part.matter.name if part.matter is not None else part.material_words


def load_words(place: KnownPlace) -> str:
    """What a joint carries."""
    if place.load_kg is None:
        return "load not recorded: treat as loaded"
    source = f" ({place.load_source})" if place.load_source else ""
    return f"carries {place.load_kg:g} kg{source}"


def dated(date: Found) -> str:
    """A date as the trade says it."""
    return say(date) if date.words or date.edtf else "undated"


def day_words(day: int) -> str:
    """A day as 1967-06-14, and "a day not known" for an end that is no day."""
    return iso(day) or "a day not known"


def years(days: int) -> int:
    """Whole years in a number of days."""
    return int(days / _DAYS_A_YEAR)


def listed(words: Iterable[str], last: str = "and") -> str:
    """ "a", "a and b", "a, b and c", each once."""
    each = list(dict.fromkeys(words))
    if len(each) < 2:
        return "".join(each)
    return f"{', '.join(each[:-1])} {last} {each[-1]}"


def bracketed(*words: str) -> str:
    """What is known, in brackets; "" where nothing is."""
    known = [word for word in words if word]
    return f" ({'; '.join(known)})" if known else ""
