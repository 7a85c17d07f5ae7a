"""A place in one sentence, in the words of the trade."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from conservedb.questions.answers import Fixing, JointCondition, Layer, Rival, Seen
from conservedb.questions.wording import counted, last_seen_words, listed

_THERE = ("present", "reduced")
_SURE_ENOUGH = ("", "seen", "documented")


def summary(
    kind: str,
    load_kg: float | None,
    condition: JointCondition | None,
    fixings: Sequence[Fixing],
    layers: Sequence[Layer],
    rivals: Sequence[Rival],
    seen: Seen | None,
) -> str:
    """What somebody who is about to touch the place has to know first."""
    if condition is None:
        said = [_build_up(layers), last_seen_words(seen)]
    else:
        said = [
            _closing(condition, layers),
            _barrier(layers, rivals),
            _remains(layers),
            _load(load_kg),
            _crossing(fixings),
            last_seen_words(seen),
        ]
    sentence = "; ".join(part for part in said if part)
    return sentence[:1].upper() + sentence[1:]


def _closing(condition: JointCondition, layers: Sequence[Layer]) -> str:
    if condition.state == "not recorded":
        return "closing not recorded"
    if condition.state == "uncertain":
        return f"condition not established: {' or '.join(condition.possible)}"
    since = condition.since
    date = f" {since.said}" if since is not None and since.recorded else ""
    if since is not None and condition.qualified:
        date += f" ({condition.qualified})"
    binder = _binder(layers) if condition.state == "closed" else ""
    said = "found moving" if condition.state == "moving" else condition.state
    return f"{said}{date}{binder}"


def _binder(layers: Sequence[Layer]) -> str:
    """The latest layer on the faces of the joint that is there and no barrier."""
    there = [
        layer
        for layer in layers
        if layer.state in _THERE
        and layer.zone in ("", "face")
        and layer.role != "barrier"
        and not layer.remains
    ]
    if not there:
        return ""
    last = max(layer.came for layer in there)
    names = [layer.material_name for layer in there if layer.came == last]
    return f" with {listed(list(dict.fromkeys(name or 'something unnamed' for name in names)))}"


def _barrier(layers: Sequence[Layer], rivals: Sequence[Rival]) -> str:
    """Whether there is a layer that lets the joint go; asked only where something sticks."""
    for role in (layer for layer in layers if layer.role == "barrier"):
        if role.state in _THERE and not role.remains:
            return f"over a barrier of {role.material_name}"
        if any(state in _THERE for state in role.possible):
            return f"barrier of {role.material_name or 'something unnamed'} not established"
    stated = [rival for rival in rivals if rival.field == "barrier" and rival.followed != "no"]
    if stated:
        value = stated[0].value
        return f"barrier recorded as {value}" if len(stated) == 1 else "barrier disputed"
    sticks = any("adhesive" in layer.role and layer.state != "gone" for layer in layers)
    return "barrier not recorded" if sticks else ""


def _remains(layers: Sequence[Layer]) -> str:
    older = sum(1 for layer in layers if layer.remains)
    return f"remains of {counted(older, 'older layer')}" if older else ""


def _load(load_kg: float | None) -> str:
    if load_kg is None:
        return "load not recorded: treat as loaded"
    return f"carries {load_kg:g} kg"


def _crossing(fixings: Sequence[Fixing]) -> str:
    found: Counter[tuple[str, str]] = Counter()
    for fixing in fixings:
        if fixing.state in ("gone", "retired", "not yet"):
            continue
        known = fixing.known_from
        if known in _SURE_ENOUGH:
            known = "" if fixing.state in _THERE else "not established"
        elif known == "picture only":
            known = "known from a picture only"
        found[fixing.kind or "fixing", known] += 1
    return ", ".join(
        f"{counted(number, kind)} {known}".strip() for (kind, known), number in found.items()
    )


def _build_up(layers: Sequence[Layer]) -> str:
    if not layers:
        return "no layer on record"
    states = Counter(_standing(layer) for layer in layers)
    parts = [f"{states[word]} {word}" for word in _STANDINGS if states[word]]
    top = next((layer for layer in reversed(layers) if layer.state in _THERE), None)
    said = f"{counted(len(layers), 'layer')} on record: {', '.join(parts)}"
    if top is None:
        return said
    name = top.material_name or "material not recorded"
    outermost = ", ".join(word for word in (name, top.role, top.laid.date.said) if word)
    return f"{said}; outermost in place: {outermost}"


_WORDS = {
    "present": "in place",
    "reduced": "partly removed",
    "uncertain": "not established",
    "gone": "removed or lost",
    "not yet": "not yet there",
}
_STANDINGS = tuple(_WORDS.values())


def _standing(layer: Layer) -> str:
    return _WORDS.get(layer.state, "not established")
