"""A step at the bench as the records it consists of: one step over one place or over many.

What was done once over many places is one intervention, with a layer of its own at each place;
every one of these records says for ever over how many it was recorded at once.
"""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import dataclass, replace

from sqlalchemy import select

from conservedb.exchange.cells import escape, join_role, split_list, split_role
from conservedb.exchange.deed_places import free_mark, next_outward, place_borne, places_of_layers
from conservedb.exchange.entering import Entry, Refs, Refused
from conservedb.exchange.faults import Fault
from conservedb.exchange.reading_cells import cells_of
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.writer import writer
from conservedb.store.keys import fold

ROLES = {
    "consolidate": "consolidant",
    "join": "adhesive",
    "fill": "fill",
    "coat": "coating",
    "integrate": "inpainting",
    "support": "temporary support",
}
"""What a material is there for, by the kind of step that lays it, where nothing else is said."""
_DONE = (
    "treatment",
    "planned_step",
    "deviation",
    "standing",
    "unauthorised_reason",
    "unauthorised_by",
    "kind",
    "technique",
    "aims",
    "date",
    "time_of_day",
    "people",
    "note",
)
LAID = (
    "material",
    "batch",
    "role",
    "side",
    "zone",
    "coverage",
    "concentration",
    "carrier",
    "temperature_c",
    "treated_from",
    "cycles",
    "uptake_g",
    "depth_mm",
    "depth_known",
    "dry",
    "stack",
)
"""Fields of a step that go to the layer at each place, under the same names."""
USED = {
    "agent": "material",
    "form": "form",
    "agent_temperature_c": "temperature_c",
    "dwell_min": "dwell_min",
    "cleared": "cleared",
    "cleared_how": "cleared_how",
}
"""Fields of a step that go to the agent used, with the names they have there."""


@dataclass(frozen=True, slots=True)
class _Deed:
    """What every deed says: on what, when, by whom, by what right, and with what agent."""

    object: str
    kind: str = ""
    date: str = ""
    technique: str = ""
    aims: str = ""
    people: str = ""
    treatment: str = ""
    planned_step: str = ""
    standing: str = ""
    deviation: str = ""
    unauthorised_reason: str = ""
    unauthorised_by: str = ""
    time_of_day: str = ""
    note: str = ""
    agent: str = ""
    form: str = ""
    agent_temperature_c: str = ""
    dwell_min: str = ""
    cleared: str = ""
    cleared_how: str = ""


@dataclass(frozen=True, slots=True)
class Step(_Deed):
    """A step done, in the words of a form; "" where nothing is said.

    Attributes:
        people: "Name (role); Name"; the writer where nobody is named.
        components, places: marks of what it was done to; a material is laid at each place.
            Where only components are named, at the one body (consolidate) or surface of each.
        role: what the material is there for; else what `ROLES` says of the kind.
        batch: what was made up; its material, concentration and carrier where these are blank.
        stack: its order in the build-up; else next outward of what is recorded at each place.
        agent: what was used and not meant to stay.
    """

    components: tuple[str, ...] = ()
    places: tuple[str, ...] = ()
    material: str = ""
    role: str = ""
    concentration: str = ""
    carrier: str = ""
    batch: str = ""
    temperature_c: str = ""
    side: str = ""
    zone: str = ""
    coverage: str = ""
    dry: str = ""
    treated_from: str = ""
    cycles: str = ""
    uptake_g: str = ""
    depth_mm: str = ""
    depth_known: str = ""
    stack: str = ""

    @property
    def lays(self) -> bool:
        """Whether it lays a material: one that names no material, batch or role lays nothing."""
        return bool(self.material.strip() or self.batch.strip() or self.role.strip())


@dataclass(frozen=True, slots=True)
class Removing(_Deed):
    """Layers taken away, wholly, in part or in an attempt.

    Attributes:
        layers: refs of the layers.
        extent: all, part or attempted.
        kept_what, kept_where: what was kept of it, and the sample or box.
        residue, residue_side: what is left, and on which side.
    """

    kind: str = "remove earlier work"
    layers: tuple[str, ...] = ()
    extent: str = ""
    side: str = ""
    kept_what: str = ""
    kept_where: str = ""
    residue: str = ""
    residue_side: str = ""


def compose_step(refs: Refs, step: Step, who: str, today: datetime.date) -> list[Entry]:
    """The records of a step: an intervention, a layer at each place, the agent used.

    Args:
        who: the writer.

    Raises:
        Refused: a material is laid, and there is no place for it.
    """
    step = _from_batch(refs, step)
    places, added = _once(step.places), list[Entry]()
    if not places:
        places, added = _places_for(refs, step)
    components = _once(step.components)
    over = len(places) or len(components)
    many = str(over) if over > 1 else ""
    entries, intervention = _intervention(refs, step, who, today, components, places, many)
    if step.agent.strip():
        entries.append(_agent(refs, step, intervention, places))
    if step.lays:
        outward = next_outward(refs.connection, step.object, places)
        outward |= dict.fromkeys((fold(one.cells["mark"]) for one in added), "0")
        doers = {fold(split_role(item)[0]) for item in split_list(step.people)}
        laid = {name: getattr(step, name) for name in LAID}
        laid["role"] = step.role or ROLES.get(step.kind, "")
        if not doers or fold(who) in doers:
            laid["identified"] = "documented by the maker"
        for place in places:
            own = {
                "ref": refs.next("layers", step.object),
                "intervention": intervention,
                "place": escape(place),
                "origin": "applied",
                "stack": step.stack or outward.get(fold(place), ""),
                "recorded_over": many,
            }
            entries.append(Entry("layers", {"object": step.object} | laid | own))
    return [*added, *entries]


def compose_removing(refs: Refs, removing: Removing, who: str, today: datetime.date) -> list[Entry]:
    """The records of a removal: an intervention, a removal for each layer, the agent used.

    That a joint was opened by it is not assumed.
    """
    layers = _once(removing.layers)
    if not layers:
        fault = Fault("interventions.csv", 1, "layers", "", "names no layer", "name what came off")
        raise Refused([fault])
    places = places_of_layers(refs.connection, removing.object, layers)
    many = str(len(layers)) if len(layers) > 1 else ""
    entries, intervention = _intervention(refs, removing, who, today, (), places, many)
    if removing.agent.strip():
        entries.append(_agent(refs, removing, intervention, places))
    said = ("extent", "side", "kept_what", "kept_where", "residue", "residue_side")
    for layer in layers:
        cells = {
            "object": removing.object,
            "ref": refs.next("removals", removing.object),
            "layer": layer,
            "intervention": intervention,
        }
        entries.append(Entry("removals", cells | {name: getattr(removing, name) for name in said}))
    return entries


def compose_simple(
    refs: Refs, subject: str, object_number: str, cells: Mapping[str, str], who: str
) -> list[Entry]:
    """One record of any kind, with a fresh ref; the people are the writer where nobody is named."""
    known = BY_NAME[subject]
    given = dict(cells)
    entries: list[Entry] = []
    if known.in_object:
        given["object"] = object_number
    if known.makes_key and not given.get(known.key[-1], "").strip():
        given[known.key[-1]] = refs.next(subject, object_number)
    if "people" in known.headers and not given.get("people", "").strip():
        entries += writer(refs, who)
        given["people"] = join_role(who, "")
    return [*entries, Entry(subject, given)]


def _intervention(
    refs: Refs,
    deed: _Deed,
    who: str,
    today: datetime.date,
    components: tuple[str, ...],
    places: tuple[str, ...],
    many: str,
) -> tuple[list[Entry], str]:
    """The intervention, and a record of the writer where there is none; with its ref."""
    ref = refs.next("interventions", deed.object)
    said = {name: getattr(deed, name) for name in _DONE}
    if deed.planned_step.strip() and not deed.standing.strip():
        said["standing"] = "planned"  # it carries out a step of a plan
    own = {
        "object": deed.object,
        "ref": ref,
        "people": deed.people if deed.people.strip() else join_role(who, ""),
        "components": _listed(components),
        "places": _listed(places),
        "recorded_over": many,
        "recorded": today.isoformat(),
        "recorded_by": who,
    }
    return [*writer(refs, who), Entry("interventions", said | own)], ref


def _agent(refs: Refs, deed: _Deed, intervention: str, places: tuple[str, ...]) -> Entry:
    cells = {
        "object": deed.object,
        "ref": refs.next("agents", deed.object),
        "intervention": intervention,
        "place": _listed(places),
    }
    return Entry("agents", cells | {own: getattr(deed, name) for name, own in USED.items()})


def _from_batch(refs: Refs, step: Step) -> Step:
    """The step with what its batch says, where it says nothing itself."""
    batches = BY_NAME["batches"]
    statement = select(batches.table.c.id).where(batches.table.c.ref == step.batch.strip())
    found = refs.connection.execute(statement).scalar() if step.batch.strip() else None
    if found is None:
        return step
    made = cells_of(refs.connection, batches, found)
    material, concentration, carrier = (
        getattr(step, name) if getattr(step, name).strip() else made[name]
        for name in ("material", "concentration", "carrier")
    )
    return replace(step, material=material, concentration=concentration, carrier=carrier)


def _places_for(refs: Refs, step: Step) -> tuple[tuple[str, ...], list[Entry]]:
    """Where a material is laid if only components are named, and the places added for that.

    It is consolidated into the body of each, else laid on its surface; a component that has no
    such place on record gets one.
    """
    if not step.lays:
        return (), []
    components = _once(step.components)
    if not components:
        reason = "names no place for the material that is laid"
        fault = Fault("interventions.csv", 1, "places", "", reason, "name each place it went to")
        raise Refused([fault])
    kind = "body" if step.kind == "consolidate" else "surface"
    added, places = [], []
    for component, place in place_borne(refs.connection, step.object, components, kind).items():
        mark = place or free_mark(refs.connection, step.object, f"{component} {kind}")
        if not place:
            cells = {"mark": mark, "kind": kind, "component": component}
            added.append(Entry("places", {"object": step.object} | cells))
        places.append(mark)
    return tuple(places), added


def _once(marks: tuple[str, ...]) -> tuple[str, ...]:
    """Marks without blanks, each once, as first written."""
    return tuple({fold(mark): mark.strip() for mark in reversed(marks) if mark.strip()}.values())[
        ::-1
    ]


def _listed(marks: tuple[str, ...]) -> str:
    return "; ".join(map(escape, marks))
