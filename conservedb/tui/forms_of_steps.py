"""The forms of a step at the bench and of a removal, and what they hold at first."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import fields, replace

from conservedb.exchange.cells import escape, join_role, split_list, unescape
from conservedb.exchange.deeds import LAID, USED, Removing, Step
from conservedb.exchange.last_time import NO_STEP, again, last_used
from conservedb.exchange.planned_for import open_treatments, planned_for
from conservedb.exchange.subjects import BY_NAME
from conservedb.questions.completing import there_at
from conservedb.tui.about import About
from conservedb.tui.forms_of_records import field_of
from conservedb.tui.reading import Connection
from conservedb.tui.recording import Field

_BY_RIGHT = (
    *("treatment", "planned_step", "standing", "deviation", "unauthorised_reason"),
    *("unauthorised_by", "aims", "time_of_day"),
)
_AGENT = ("agent", "form", "agent_temperature_c", "dwell_min", "cleared", "cleared_how")
STEP = (
    *("kind", "material", "concentration", "carrier", "batch", "technique", "date", "people"),
    *("places", "components", "role", "side", "zone", "coverage", "temperature_c"),
    *("treated_from", "cycles", "dry", "uptake_g", "depth_mm", "depth_known", "stack"),
    *(*_AGENT, *_BY_RIGHT, "note"),
)
REMOVAL = (
    *("layers", "extent", "side", "residue", "residue_side", "kept_what", "kept_where"),
    *("date", "people", "technique", *_AGENT, *_BY_RIGHT, "note"),
)
_MARKS = ("places", "components", "layers")
_AGENT_LABELS = {
    "form": "agent as",
    "agent_temperature_c": "agent at",
    "dwell_min": "agent left on",
    "cleared": "agent cleared",
}


def step_fields(step: Step) -> tuple[Field, ...]:
    """What the form of a step asks."""
    return tuple(_field("step", name, cells_of_step(step).get(name, "")) for name in STEP)


def removal_fields(removing: Removing) -> tuple[Field, ...]:
    """What the form of a removal asks."""
    return tuple(_field("removal", name, cells_of_step(removing).get(name, "")) for name in REMOVAL)


def column_of(kind: str, name: str) -> tuple[str, str]:
    """The file and header of a field of a step or removal; ("", "") for the layers."""
    if name in USED:
        return "agents", USED[name]
    if kind == "step" and name in LAID:
        return "layers", name
    if kind == "removal" and name in BY_NAME["removals"].headers and name not in _SHARED:
        return "removals", name
    return ("interventions", name) if name in BY_NAME["interventions"].headers else ("", "")


_SHARED = ("date", "note", "ref")


def field_named(kind: str, file: str, column: str) -> str:
    """The field of a step or removal in which a fault of a file is shown."""
    if file == "agents.csv":
        return next((name for name, header in USED.items() if header == column), column)
    if file == "removals.csv" and column == "layer":
        return "layers"
    if file == "layers.csv" and column == "place":
        return "places"
    return column


def first_step(
    connection: Connection, about: About, who: str, today: datetime.date, kind: str = ""
) -> Step:
    """The last step of a kind once more, here and today; else a blank one."""
    last = last_used(connection, about.number, kind, who)
    if last is None:
        last = Step(object=about.number, kind=kind)
    step = again(last, about.places, today)
    here = replace(step, components=about.components, people=_me(who))
    return by_right(connection, here)


def by_right(connection: Connection, step: Step) -> Step:
    """A step with the planned step that it carries out here, if there is one."""
    planned = planned_for(connection, step.object, step.kind, step.places, step.components)
    if planned is not None:
        ref, treatment = planned
        return replace(step, planned_step=ref, treatment=treatment, standing="planned")
    standing = "" if step.standing == "planned" else step.standing
    known = step.treatment in open_treatments(connection, step.object)
    treatment = step.treatment if known else ""
    return replace(step, planned_step="", standing=standing, treatment=treatment)


def first_removing(
    connection: Connection, about: About, who: str, today: datetime.date
) -> Removing:
    """A removal, with the layers under the cursor, or the one that is there; no extent."""
    layers = about.layers
    if not layers and about.places:
        there = there_at(connection, about.number, about.places, today.toordinal())
        layers = tuple(there) if len(there) == 1 else ()
    return Removing(object=about.number, layers=layers, date=today.isoformat(), people=_me(who))


def step_of(about: About, values: Mapping[str, str]) -> Step:
    """The step that a form holds."""
    return Step(object=about.number, **_given(Step, values))  # type: ignore[arg-type]


def removing_of(about: About, values: Mapping[str, str]) -> Removing:
    """The removal that a form holds."""
    return Removing(object=about.number, **_given(Removing, values))  # type: ignore[arg-type]


def cells_of_step(deed: Step | Removing) -> dict[str, str]:
    """A deed as the texts of a form."""
    found = {}
    for field in fields(deed):
        value = getattr(deed, field.name)
        found[field.name] = value if isinstance(value, str) else "; ".join(map(escape, value))
    return found


def _given(deed: type[Step] | type[Removing], values: Mapping[str, str]) -> dict[str, object]:
    names = {field.name for field in fields(deed)} - {"object"}
    return {
        name: tuple(map(unescape, split_list(text))) if name in _MARKS else text
        for name, text in values.items()
        if name in names
    }


def _field(kind: str, name: str, value: str) -> Field:
    if name == "layers":
        hint = "what came off; F2 lists what is really there; several with semicolons"
        return Field("layers", "layers", "layers", value, hint=hint, required=True)
    file, header = column_of(kind, name)
    column = next(one for one in BY_NAME[file].columns if header in one.names)
    made = replace(field_of(BY_NAME[file], header, column, value), name=name, required=False)
    if name == "kind":
        choices = tuple(one for one in made.choices if one not in NO_STEP)
        return replace(made, choices=choices, required=True)
    if name == "agent":
        hint = "what was used and is not meant to stay"
        return replace(made, label="agent used", hint=hint)
    if name in _AGENT_LABELS:
        return replace(made, label=_AGENT_LABELS[name])
    return replace(made, required=name == "extent")


def _me(who: str) -> str:
    return join_role(who, "") if who else ""
