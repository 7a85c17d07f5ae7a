"""The words of the trade for what the records keep in short words."""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.dates import describe_flags
from conservedb.questions.answers import Person, Retired, Reworded, Seen, Source

STATE_WORDS = {
    "not yet": "not yet there",
    "present": "in place (on record)",
    "reduced": "partly removed: residue left",
    "gone": "removed or lost",
    "retired": "retired",
    "uncertain": "not established",
}
_ASKED = {"present": "in place", "reduced": "partly removed", "uncertain": "perhaps"}
_NUMBERS = ("0", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")


def state_words(state: str, possible: Sequence[str] = ()) -> str:
    """A state as the trade says it, with what it may be where it is not established."""
    said = STATE_WORDS.get(state, state)
    if state != "uncertain" or not possible:
        return said
    return f"{said}: {' or '.join(STATE_WORDS.get(word, word) for word in possible)}"


def asked_state(state: str) -> str:
    """A state in the word by which a researcher's question asks for it (`research.STATES`)."""
    return _ASKED.get(state, state)


def qualifiers(flags: int) -> str:
    """ "approximate", "uncertain", "uncertain and approximate", or "" for a plain date."""
    return describe_flags(flags).removeprefix("date ")


def retired_words(found: Retired | None) -> str:
    """When a part was taken out for good, and what replaced it."""
    if found is None:
        return ""
    successor = f", replaced by {found.replaced_by}" if found.replaced_by else ""
    return f"taken out for good: {found.date.said}{successor}"


def counted(number: int, noun: str, plural: str = "") -> str:
    """ "one pin", "two pins", "14 pins"."""
    said = _NUMBERS[number] if number < len(_NUMBERS) else str(number)
    return f"{said} {noun if number == 1 else plural or noun + 's'}"


def listed(words: Sequence[str]) -> str:
    """ "a", "a and b", "a, b and c"."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"


def hands(people: Sequence[Person], blank: str = "hands not recorded") -> str:
    """The people, each with the role recorded for it."""
    said = [f"{p.name} ({p.role})" if p.role else p.name for p in people]
    return ", ".join(said) or blank


def cited(source: Source | None) -> str:
    """A source by its short reference, with the page where one is given."""
    if source is None:
        return "source not recorded"
    page = source.page
    return f"{source.ref}, p. {page}" if page.isdigit() else f"{source.ref}, {page}".rstrip(", ")


def last_seen_words(seen: Seen | None) -> str:
    """When something was last seen; that nobody is on record as having looked is said too."""
    return f"last seen {seen.date.said}" if seen else "no sighting on record"


def clearing(words: str) -> str:
    """Whether an agent was cleared, as recorded; free words are passed on, not judged."""
    known = {"": "clearing not recorded", "yes": "cleared", "no": "recorded as not cleared"}
    return known.get(words.strip().lower(), f"clearing recorded as: {words}")


def reworded(one: Reworded) -> str:
    """An amendment in words: day, person, reason, and what read otherwise before."""
    why = f" ({one.reason})" if one.reason else ""
    which = f"{one.of}: " if one.of else ""
    was = "; ".join(f"{field.name} was {field.before or 'blank'}" for field in one.fields)
    return f"{one.when} by {one.who}{why}: {which}{was}"
