"""Folders in which every text field of every table holds one nasty string."""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

from conservedb.exchange.cells import escape, join_role
from conservedb.exchange.columns import Column, KeyText, Name
from conservedb.exchange.subjects import BY_NAME
from conservedb.records.authorisations import CAPACITIES
from conservedb.records.treatments import INTERVENTION_KINDS
from tests.nasty import NASTY

SHORT = tuple(text for text in NASTY if len(text) < 1000)


def object_number(index: int) -> str:
    """The number of the object whose every field holds `SHORT[index]`."""
    return f"N.{index} {SHORT[index]}".strip()


def place_mark(index: int) -> str:
    """The mark of its joint."""
    return f"J {SHORT[index]}".strip()


def write_nasty(folder: Path) -> None:
    """Write one object, with all that can hang on it, for each nasty string."""
    folder.mkdir()
    rows: dict[str, list[dict[str, str]]] = {name: [] for name in BY_NAME}
    for index, text in enumerate(SHORT):
        _add(rows, index, text)
    for name, of_file in rows.items():
        with (folder / f"{name}.csv").open("w", encoding="utf-8", newline="") as file:
            writer = csv.DictWriter(file, BY_NAME[name].headers, restval="")
            writer.writeheader()
            writer.writerows(of_file)


def _text_of(name: str, text: str) -> dict[str, str]:
    """Every free-text column of a file, filled."""
    return {
        column.name: text
        for column in BY_NAME[name].plain
        if type(column) in (Column, Name) and not isinstance(column, KeyText)
    }


def _add(rows: dict[str, list[dict[str, str]]], index: int, text: str) -> None:
    key = f"k{index} {text}".strip()
    number, joint = object_number(index), place_mark(index)

    def put(file: str, /, **cells: str) -> None:
        rows[file].append(_text_of(file, text) | cells)

    who = join_role(key, text.strip())
    put("terms", list=key, term=key)
    put("material_classes", key=key)
    put("materials", key=key, aliases=escape(f"alias {key}"), **{"class": key})
    put("people", name=key, aliases=escape(f"alias {key}"))
    put("sources", ref=key, date="2003")
    put("batches", ref=key, material=key, made="1934", made_by=key)
    kind = INTERVENTION_KINDS[index % len(INTERVENTION_KINDS)]
    capacity = CAPACITIES[index // len(INTERVENTION_KINDS)]
    put("needed_authorisations", kind=kind, capacity=capacity)
    put("standing_approvals", ref=key, kinds="clean", capacity="curator", person=key, source=key)
    put("objects", number=number)
    put("components", object=number, mark="B1", material=key, source=key)
    put("components", object=number, mark=f"B {key}", parent="B1", material=key)
    put("components", object=number, mark="P1", bridges=escape(joint), material=key)
    put(
        "places",
        object=number,
        mark=joint,
        kind="joint",
        component="B1",
        other_component=f"B {key}",
        load_kg="85",
        load_source=key,
    )
    put("treatments", object=number, ref=key, lead=key, begun="1934")
    put("plans", object=number, ref=key, treatment=key, version="1", people=who, source=key)
    put(
        "planned_steps",
        object=number,
        ref=key,
        plan=key,
        position="1",
        kind="join",
        material=key,
        places=escape(joint),
    )
    put(
        "interventions",
        object=number,
        ref=key,
        treatment=key,
        date="1934",
        people=who,
        places=escape(joint),
        source=key,
        recorded_by=key,
        planned_step=key,
        unauthorised_by=key,
    )
    put(
        "authorisations",
        object=number,
        ref=key,
        plan=key,
        intervention=key,
        steps=escape(key),
        capacity="owner",
        person=key,
        decision="authorised",
        source=key,
    )
    put(
        "agents",
        object=number,
        ref=key,
        intervention=key,
        material=key,
        batch=key,
        place=escape(joint),
    )
    put(
        "joint_events",
        object=number,
        ref=key,
        place=joint,
        event="moving",
        date="1934",
        intervention=key,
        source=key,
    )
    put(
        "layers",
        object=number,
        place=escape(joint),
        ref=key,
        intervention=key,
        material=key,
        batch=key,
        significance_by=key,
        source=key,
        stack="0",
    )
    put("layers", object=number, place=escape(joint), ref=f"f{key}", role="facing", material=key)
    put("removals", object=number, ref=key, layer=key, date="1989?", extent="part", source=key)
    put("sightings", object=number, ref=key, layer=key, date="1988", result="seen", people=who)
    for table, ref in (("layer", key), ("place", joint), ("object", ""), ("intervention", key)):
        put(
            "statements",
            key=f"{table} {key}",
            table=table,
            object=number,
            ref=ref,
            source=key,
            people=who,
            decided_by=key,
            followed="no",
        )
    _add_behaviour(put, key)
    put(
        "spot_tests",
        object=number,
        ref=key,
        layer=key,
        agent="acetone",
        intervention=key,
        date="1990",
        wet="softens",
        people=who,
        source=key,
    )
    put("places", object=number, mark=f"S {key}", kind="surface", component="B1")
    put("near", object=number, ref=key, place=joint, other_place=f"S {key}", source=key)
    put(
        "acceptances",
        object=number,
        ref=key,
        rule="creep-temperature",
        place=joint,
        layer=key,
        person=key,
        reason=text.strip() or "none",
        date="2020",
    )
    found = {"object": number, "ref": key, "intervention": key, "layer": key, "source": key}
    found |= {"place": joint, "component": "B1", "date": "1990", "people": who}
    put("observations", **found)
    put("readings", **found, value="0.3", unit=text.strip() or "mm")
    put("samples", **found, removal=key, kind="sample")
    put("warnings", object=number, ref=key, place=joint, until="2000", source=key)
    put("whereabouts", object=number, ref=key, since="1950", source=key)


def _add_behaviour(put: Callable[..., None], key: str) -> None:
    """How the material of that key behaves, as far as nasty text can say it."""
    told = {"material": key, "basis": "published", "source": key, "confirmed_by": key}
    put("material_values", key=key, property="glass transition", low="20", high="30", **told)
    put("material_values", key=f"w{key}", property="note", **told)
    put("hansen", key=key, d="17", p="8", h="7", r0="9", position="0", **told)
    put("teas", key=key, d="40", p="30", h="30", **told)
    put("solubilities", key=key, agent="acetone", effect="dissolves", state="aged", **told)
    put("traits", key=key, trait="creeps under load", holds="yes", **told)
    put("periods", key=key, mark="first made", date="1900", **told)
    put("hazard_statements", code=key, wording=key, band="B", source=key)
    put("hazards", key=key, material=key, code=key, source=key)
    put("exposure_limits", key=key, material=key, kind="TWA", ppm="5", jurisdiction=key)
    put("restrictions", key=key, material=key, jurisdiction=key, text=key)
    put("climates", key=key, room=key, use="storage", max_c="28", source=key)
    put("settings", name=key, source=key)
    put("saved_questions", name=key, rows="layers", person=key)
    put("rules", key=key, title=key, severity="warn", judges="safety", sentence=key, source=key)
