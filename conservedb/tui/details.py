"""Everything on record about what the cursor rests on, as labelled lines."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from conservedb.dates import describe_flags
from conservedb.questions.answers import (
    ComponentRow,
    Deed,
    Fixing,
    HistoryRow,
    Layer,
    ObjectAnswer,
    PlaceAnswer,
    Residue,
    Retired,
    Reworded,
    Rival,
    Side,
    Warning_,
    When,
)
from conservedb.questions.wording import hands, reworded
from conservedb.tui import wording

Fact = tuple[str, str]
"""A label and a value; without a value it is left out, without a label it goes on from above."""


COVERS = {
    "whole": "over the whole",
    "part": "over a part",
    "spots": "in spots",
    "unknown": "coverage not known",
}


def layer_facts(layer: Layer) -> Iterator[Fact]:
    """A layer: what it is, how it came and went, who saw it, how sure that is."""
    yield "state", _layer_state(layer)
    for side, state in sorted(layer.by_side.items()):
        possible = " or ".join(wording.state_word(one, layer.origin) for one in state.possible)
        yield f"on side {side}", possible or wording.state_word(state.state, layer.origin)
    yield "to settle it", layer.settle
    yield "as written", layer.material_words if layer.material_words != layer.material_name else ""
    yield "class", layer.material_class
    yield "role", layer.role or "not recorded"
    yield "where", _where(layer)
    verb = wording.LAID.get(layer.origin, "")
    yield "laid", f"{verb} {layer.laid.date.said}, {hands(layer.laid.people)}".strip()
    yield "that is", wording.bounds_words(layer.laid.date)
    yield "how", _of(layer.laid.kind, layer.laid.technique)
    yield "from", _papers(layer.laid)
    yield "concentration", layer.concentration
    yield "carrier", layer.carrier
    yield "dry then", layer.dry or "not recorded"
    for deed in layer.removed:
        yield "removal", wording.removal_words(deed)
        yield "", _papers(deed)
    for seen in layer.sightings:
        yield "sighting", f"{wording.seen_words(seen)}; {wording.source_words(seen.source)}"
        yield "", seen.note
    if not layer.sightings:
        yield "sightings", "none on record"
    yield "identity", layer.identified or "not recorded"
    yield "significance", _by(_significance(layer.significance), layer.significance_by)
    yield from rival_facts(layer.rivals)
    for source in layer.sources:
        if source != layer.laid.source:
            yield "source", wording.source_or_not(source)
    yield "note", layer.note
    yield from _amended(layer.amended)


def fixing_facts(fixing: Fixing) -> Iterator[Fact]:
    """A fixing that crosses the joint."""
    yield "state", wording.fixing_state(fixing)
    yield "kind", fixing.kind
    yield "material", fixing.material or "not recorded"
    yield "made", wording.made_words(fixing.made)
    yield "lost", fixing.lost.said if fixing.lost.recorded else ""
    yield from _retired(fixing.retired)
    yield "known from", fixing.known_from
    yield "source", wording.source_or_not(fixing.source)
    yield "its holes", ", ".join(fixing.joints)
    yield "note", fixing.note


def side_facts(side: Side, answer: PlaceAnswer) -> Iterator[Fact]:
    """One side of a joint, or what bears the layers."""
    yield "material", side.material or "not recorded"
    yield "kind", side.kind
    yield from place_facts(answer)


def place_facts(answer: PlaceAnswer) -> Iterator[Fact]:
    """A joint or other location itself."""
    yield "in short", answer.summary
    yield "location", f"{answer.place} {answer.name}".strip()
    yield "geometry", answer.geometry
    yield "condition", wording.condition_words(answer.condition)
    if answer.condition is not None:
        yield "", answer.condition.note
    yield "arose by", _of(answer.arose, _recorded(answer.arose_date))
    yield "fit", answer.fit
    if answer.load_kg is not None:
        yield "carries", f"{answer.load_kg:g} kg; {wording.source_words(answer.load_source)}"
    yield "access", answer.access
    yield from rival_facts(answer.rivals)
    yield "note", answer.note
    yield from _amended(answer.amended)


def _retired(found: Retired | None) -> Iterator[Fact]:
    """When a part was taken out for good, why, and what replaced it."""
    if found is not None:
        yield "retired", found.date.said
        yield "why retired", found.why
        yield "replaced by", found.replaced_by


def part_facts(part: ComponentRow) -> Iterator[Fact]:
    """A part of the object."""
    yield "kind", part.kind
    yield "origin", part.origin
    yield "material", part.material or "not recorded"
    if part.state != "present":
        possible = {"not yet": "not yet made", "present": "there", "gone": "lost"}
        yield "state", " or ".join(possible.get(one, one) for one in part.possible or (part.state,))
    yield from _retired(part.retired)
    yield "kept at", part.kept_at
    size = " x ".join("?" if one is None else f"{one:g}" for one in part.size_mm)
    yield "size", f"{size} mm (w x h x d)" if any(part.size_mm) else ""
    if part.mass_kg is not None:
        yield "mass", f"{part.mass_kg:g} kg ({part.mass_basis or 'basis not recorded'})"
    yield "known from", part.known_from
    yield "bridges", ", ".join(part.bridges)
    yield "note", part.note


def object_facts(answer: ObjectAnswer) -> Iterator[Fact]:
    """The object as a whole."""
    yield "kind", answer.kind
    yield "maker", answer.maker or "not recorded"
    yield "made", _recorded(answer.made) or "not recorded"
    yield "whereabouts", answer.whereabouts or "not recorded"
    if answer.last_examined is not None:
        yield "examined", wording.examined_words(answer.last_examined)
        yield "", _papers(answer.last_examined)
    yield "parts", f"{len(answer.components)}, with {len(answer.places)} locations"
    yield from rival_facts(answer.rivals)
    yield "note", answer.note


def event_facts(row: HistoryRow) -> Iterator[Fact]:
    """An entry of the history."""
    yield "event", row.sentence
    yield "date", row.date.said
    if row.date.recorded:
        yield "between", wording.bounds_words(row.date)
        yield "", describe_flags(row.date.flags)
    yield "by", hands(row.people)
    for detail in row.detail:
        yield "", detail
    yield "treatment", row.treatment
    yield "parts", ", ".join(row.components)
    yield "locations", ", ".join(row.places)
    yield "source", wording.source_or_not(row.source)
    yield from rival_facts(row.rivals)
    yield "note", row.note
    yield from _amended(row.amended)


def residue_facts(residue: Residue) -> Iterator[Fact]:
    """An agent that may have left something behind."""
    yield "agent", residue.material_name or "not recorded"
    yield "used", residue.date.said
    yield "concentration", residue.concentration
    yield "form", residue.form
    yield "cleared", residue.cleared or "not recorded"
    yield "intervention", residue.intervention
    yield "source", wording.source_or_not(residue.source)
    yield "note", residue.note


def warning_facts(warning: Warning_) -> Iterator[Fact]:
    """A hazard or a limit on handling."""
    yield warning.kind or "warning", warning.text
    yield "on", _of(warning.component, warning.place)
    yield "since", _recorded(warning.since)
    yield "until", _recorded(warning.until)
    yield "source", wording.source_or_not(warning.source)


def _layer_state(layer: Layer) -> str:
    remarks = [wording.layer_state(layer), *(words for words, _ in wording.remarks(layer))]
    return "; ".join(remarks)


def _where(layer: Layer) -> str:
    zone = {"": "", "face": "on the face", "edge": "at the edge", "core": "in the core"}
    side = f"side {layer.side}" if layer.side else ""
    covers = COVERS.get(layer.coverage, layer.coverage)
    order = f"place {layer.stack} in the build-up" if layer.stack is not None else ""
    return ", ".join(one for one in (zone.get(layer.zone, layer.zone), side, covers, order) if one)


def _papers(deed: Deed) -> str:
    source = wording.source_words(deed.source) if deed.source else ""
    return "; ".join(one for one in (source, deed.note) if one)


def _amended(found: Iterable[Reworded]) -> Iterator[Fact]:
    for one in found:
        yield "amended", reworded(one)


def rival_facts(rivals: Iterable[Rival]) -> Iterator[Fact]:
    """What sources state, also against each other."""
    for rival in rivals:
        weight = {"yes": "followed", "no": "not followed"}.get(rival.followed, "undecided")
        decided = f" ({weight}{f' by {rival.decided_by}' if rival.decided_by else ''})"
        said = f"{rival.field} {rival.value!s}{decided}: {wording.source_words(rival.source)}"
        yield "stated", "; ".join(one for one in (said, rival.reason, rival.note) if one)


def _recorded(when: When) -> str:
    return when.said if when.recorded else ""


def _significance(word: str) -> str:
    return {"keep": "to be kept", "may go": "may be removed"}.get(word, word)


def _of(first: str, second: str) -> str:
    return ", ".join(one for one in (first, second) if one)


def _by(words: str, who: str) -> str:
    return f"{words}, says {who}" if words and who else words or "not recorded"


Record = Layer | Fixing | Side | Residue | Warning_ | HistoryRow | ComponentRow
"""What a line of a panel may stand for."""


def material_word(record: Record) -> str:
    """The word by which the material of a record can be asked about; "" where it has none."""
    match record:
        case Layer():
            return record.material or record.material_class
        case Residue():
            return record.material or ""
        case Fixing() | Side() | ComponentRow():
            return record.material
    return ""


def details_of(record: Record, place: PlaceAnswer | None) -> tuple[str, Iterator[Fact]]:
    """Title and facts of a record."""
    match record:
        case Layer():
            return f"{wording.layer_name(record)} ({record.ref})", layer_facts(record)
        case Fixing():
            return f"{record.component}  {record.name}", fixing_facts(record)
        case Residue():
            return f"{record.material_name} ({record.ref})", residue_facts(record)
        case Warning_():
            return f"Warning: {record.kind}", warning_facts(record)
        case HistoryRow():
            return f"{record.date.said}", event_facts(record)
        case ComponentRow():
            return f"{record.mark}  {record.name}", part_facts(record)
    assert place is not None
    where = f"{place.place}, side {record.side}" if record.side else place.place
    return f"{where}: {record.component} {record.name}".strip(), side_facts(record, place)
