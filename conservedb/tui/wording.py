"""Answers in the words of the trade: plain strings, still to pass the display filter."""

from __future__ import annotations

from collections.abc import Iterable

from conservedb.dates import civil, is_known
from conservedb.questions.answers import (
    AsOf,
    Deed,
    Fixing,
    JointCondition,
    Layer,
    Person,
    PlaceRow,
    Seen,
    Source,
    When,
)
from conservedb.questions.wording import cited, hands

MONTHS = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)

RESTLESS = ("moving", "failed", "opened", "uncertain")
IN_PLACE = "in place"
REDUCED = "partly removed: residue left"
GONE = "removed or lost"
UNSURE = "not established"
LAID = {"applied": "applied", "maker": "laid by the maker", "arisen": "arisen"}
REMAINS = {
    "A": "on A",
    "B": "on B",
    "both": "on both sides",
    "A at least": "on A at least",
    "B at least": "on B at least",
    "split unknown": f"side {UNSURE}",
}
NOT_YET = {"applied": "not yet applied", "maker": "not yet laid", "arisen": "not yet arisen"}


def day_words(day: int) -> str:
    """A day as "14 June 1950"; years before 1 as BC; "" where it is not a real day."""
    if not is_known(day):
        return ""
    year, month, of_month = civil(day)
    return f"{of_month} {MONTHS[month - 1]} {year if year > 0 else f'{1 - year} BC'}"


def as_of_words(on: AsOf) -> str:
    """The asked day or span, spelt out."""
    return on.words if on.is_span else day_words(on.first)


def bounds_words(when: When) -> str:
    """The earliest and latest day that a recorded date may mean."""
    first, last = day_words(when.earliest), day_words(when.latest)
    if first and first == last:
        return first
    if first and last:
        return f"{first} to {last}"
    return f"from {first}" if first else f"until {last}" if last else "no bounds"


def names(people: Iterable[Person]) -> str:
    """Who did it, without roles."""
    return ", ".join(one.name for one in people) or "hands not recorded"


def source_words(source: Source | None) -> str:
    """Where something is known from: reference, page, and what that paper is."""
    if source is None or not source.citation:
        return cited(source)
    return f"{cited(source)}: {source.citation}"


def source_or_not(source: Source | None) -> str:
    """The same beside a label that says it is a source."""
    return source_words(source) if source is not None else "not recorded"


def layer_name(layer: Layer) -> str:
    """The material as established, else the words of the paper, else the class."""
    return (
        layer.material_name
        or layer.material_words
        or layer.material_class
        or "material not recorded"
    )


def state_word(state: str, origin: str = "applied") -> str:
    """One of the possible states of a layer in the words of the trade."""
    if state == "not yet":
        return NOT_YET.get(origin, "not yet there")
    words = {"present": IN_PLACE, "reduced": REDUCED, "gone": GONE, "retired": "retired"}
    return words.get(state, UNSURE)


def standing(layer: Layer) -> str:
    """The state to draw: one that is not there at any place it may lie at is not in doubt."""
    if layer.state == "uncertain" and layer.possible in (("not yet",), ("gone",)):
        return layer.possible[0]
    return layer.state


def layer_state(layer: Layer) -> str:
    """The state of a layer on the asked day, with what it rests on where it is in place."""
    state = standing(layer)
    if state == "present":
        seen = layer.last_seen
        if seen is not None and seen.result == "seen":
            return f"{IN_PLACE}, seen {seen.date.said}"
        return f"{IN_PLACE} (on record)"
    return state_word(state, layer.origin)


def possible_words(layer: Layer) -> str:
    """What a layer in doubt may be, in time order; "" where only one thing is possible."""
    words = [state_word(state, layer.origin) for state in layer.possible]
    return f"possible: {'; '.join(words)}" if len(words) > 1 else ""


def laid_words(layer: Layer) -> str:
    """Role, date and hand of a layer; if all or part of it has gone, also when and by whom."""
    role = layer.role or "role not recorded"
    if layer.origin == "maker":
        role = f"maker's {role}"
    came = f"{role}, {'arisen ' if layer.origin == 'arisen' else ''}{layer.laid.date.said}"
    if layer.laid.people or layer.origin == "applied":
        came = f"{came}, {names(layer.laid.people)}"
    taken = [one for one in layer.removed if one.extent != "attempted"]
    if layer.state in ("gone", "reduced") and taken:
        verb = "removed" if taken[-1].intervention else "lost"
        verb = verb if layer.state == "gone" else f"in part {verb}"
        by = f", {names(taken[-1].people)}" if taken[-1].intervention else ""
        came = f"{came}; {verb} {taken[-1].date.said}{by}"
    return came


def remarks(layer: Layer) -> list[tuple[str, bool]]:
    """What must be said at a glance beside name and state, each with whether it is a doubt."""
    split = layer.remains.removeprefix("possibly ")
    perhaps = "possibly " if layer.remains != split else ""
    remains = f"{perhaps}older than an opening; {REMAINS.get(split, split)}" if split else ""
    places = ""
    if layer.candidates and standing(layer) == "uncertain":
        places = f"recorded for {' or '.join(layer.candidates)}: where, {UNSURE}"
    said = (
        (possible_words(layer), True),
        (places, True),
        (remains, bool(perhaps) or split not in ("A", "B", "both")),
        (held_words(layer), False),
        (layer.qualified, True),
    )
    return [one for one in said if one[0]]


def held_words(layer: Layer) -> str:
    """States over a span of days; "" where one held throughout, as the state says already."""
    held = layer.held
    if held is None or len({*held.throughout, *held.at_some_time, *held.possibly}) < 2:
        return ""
    shares = (
        ("throughout", held.throughout),
        ("at some time", tuple(s for s in held.at_some_time if s not in held.throughout)),
        ("possibly", tuple(s for s in held.possibly if s not in held.at_some_time)),
    )
    return "; ".join(
        f"{share} {' and '.join(state_word(state, layer.origin) for state in states)}"
        for share, states in shares
        if states
    )


def made_words(made: When) -> str:
    """When a part was made."""
    return f"made {made.said}" if made.recorded else "date not recorded"


def removal_words(deed: Deed) -> str:
    """How a layer, or part of it, went."""
    said = {"part": "partly removed", "attempted": "removal attempted"}.get(deed.extent, "removed")
    if not deed.intervention:
        said = "partly lost" if deed.extent == "part" else "lost"
        said = f"{said} ({deed.cause or 'cause not recorded'})"
    side = f" on side {deed.side}" if deed.side else ""
    by = f", {hands(deed.people)}" if deed.intervention else ""
    cause = f", {deed.cause}" if deed.cause and deed.intervention else ""
    return f"{said}{side} {deed.date.said}{by}{cause}"


def seen_words(seen: Seen) -> str:
    """A sighting."""
    result = {"seen": "seen", "not found": "looked for and not found"}.get(seen.result, seen.result)
    side = f" on side {seen.side}" if seen.side else ""
    by = f", {hands(seen.people)}" if seen.people else ""
    return f"{result}{side} {seen.date.said}{by}"


def condition_words(condition: JointCondition | None) -> str:
    """The state of a joint, with what is possible where it is not established."""
    if condition is None:
        return ""
    if condition.state == "uncertain":
        return f"{UNSURE}: {' or '.join(condition.possible)}"
    if condition.state == "not recorded":
        return "condition not recorded"
    since = f" since {condition.since.said}" if condition.since else ""
    return f"{condition.state}{since}"


def fixing_state(fixing: Fixing) -> str:
    """The state of a fixing; one known only from a picture or suspected is not established."""
    state = {
        "present": IN_PLACE,
        "gone": "gone",
        "retired": "retired",
        "not yet": "not yet there",
    }.get(fixing.state, f"{UNSURE}: {' or '.join(state_word(s) for s in fixing.possible)}")
    known = {"suspected": ", suspected", "picture only": ", known from a picture"}
    return state + known.get(fixing.known_from, "")


def place_counts(row: PlaceRow) -> str:
    """What stands at the right of a location: a joint that is not at rest, else how many layers.

    "3, 1?" is three layers in place and one not established.
    """
    if row.condition in RESTLESS:
        return {"uncertain": "in doubt"}.get(row.condition, row.condition)
    counts = [str(row.certain)] if row.certain or not row.uncertain else []
    if row.uncertain:
        counts.append(f"{row.uncertain}?")
    return ", ".join(counts)


def examined_words(deed: Deed) -> str:
    """When and by whom the object was last examined, as short as it can be said."""
    when, date = deed.date, deed.date.said
    if is_known(when.earliest) and is_known(when.latest) and when.earliest != when.latest:
        (first_year, first_month, _), (year, month, _) = civil(when.earliest), civil(when.latest)
        if (first_year, first_month) == (year, month):
            date = f"{MONTHS[month - 1]} {year}"
    others = f" and {len(deed.people) - 1} more" if len(deed.people) > 1 else ""
    first = deed.people[0].name if deed.people else names(())
    return f"examined {date}, {first}{others}"
