"""JSON of `conservedb place`. Shapes named here in capitals are those of `json_shapes`.

{"object", "title", "place", "kind" (joint, surface, body, cavity), "name", "geometry",
 "arose", "arose_date": DATE, "fit", "load_kg": number or null (not recorded),
 "load_source": SOURCE, "access", "note", "on": ON, "summary": one sentence,
 "sides": [{"side" ("A", "B"; "" where there is one), "component", "name", "material", "kind"}],
 "condition": null unless a joint, else {"state" (closed, moving, opened, failed, uncertain, not
   recorded), "possible": list, "qualified", "since": DATE, "source": SOURCE, "note"},
 "fixings": [{"component", "name", "kind", "material", "state", "possible", "made": DATE,
   "lost": DATE, "retired": RETIRED or null, "known_from", "joints": marks of its own joints,
   "source": SOURCE, "note"}],
 "layers": in build-up order from side A or the substrate outward, gone ones too [{"ref",
   "stack": integer or null, "side", "zone", "role", "material": key or null, "material_name",
   "material_words": as found, "material_class": key, "origin", "coverage", "concentration",
   "carrier", "dry", "identified", "significance", "significance_by", "note",
   "state" (not yet, present, reduced, gone, uncertain), "possible": list in order of time,
   "by_side": {"A": {"state", "possible"}, "B": ...} where the sides differ, else {},
   "qualified" ("", "date approximate", "date uncertain" or both), "remains" ("" or on which
   side of a joint opened since), "candidates": marks of the places where it may lie,
   "last_seen": SEEN, "sightings": [SEEN], "laid": DEED, "removed": [DEED],
   "sources": [SOURCE], "rivals": RIVALS, "amended": AMENDED,
   "settle": what would settle an uncertain state; for a span also "throughout",
   "at_some_time", "possibly": lists of states}],
 "residues": agents not shown to have been cleared [{"agent", "material": key or null,
   "material_name", "concentration", "form", "cleared", "intervention", "date": DATE,
   "source": SOURCE, "note"}],
 "warnings": WARNINGS of the object, "rivals": RIVALS about the place, "last_seen": SEEN,
 "amended": AMENDED of the place}
"""

from __future__ import annotations

from conservedb.cli import json_shapes as shape
from conservedb.cli.json_shapes import Json
from conservedb.questions.answers import Fixing, JointCondition, Layer, PlaceAnswer, Residue


def place_json(answer: PlaceAnswer) -> Json:
    """The answer as JSON."""
    return {
        "object": answer.object,
        "title": answer.title,
        "place": answer.place,
        "kind": answer.kind,
        "name": answer.name,
        "geometry": answer.geometry,
        "arose": answer.arose,
        "arose_date": shape.date(answer.arose_date),
        "fit": answer.fit,
        "load_kg": answer.load_kg,
        "load_source": shape.source(answer.load_source),
        "access": answer.access,
        "note": answer.note,
        "on": shape.asked(answer.on),
        "summary": answer.summary,
        "sides": [
            {
                "side": side.side,
                "component": side.component,
                "name": side.name,
                "material": side.material,
                "kind": side.kind,
            }
            for side in answer.sides
        ],
        "condition": _condition(answer.condition),
        "fixings": [_fixing(fixing) for fixing in answer.fixings],
        "layers": [_layer(layer) for layer in answer.layers],
        "residues": [_residue(residue) for residue in answer.residues],
        "warnings": [shape.warning(caution) for caution in answer.warnings],
        "rivals": [shape.rival(stated) for stated in answer.rivals],
        "last_seen": shape.seen(answer.last_seen),
        "amended": shape.amended(answer.amended),
    }


def _condition(found: JointCondition | None) -> Json | None:
    if found is None:
        return None
    return {
        "state": found.state,
        "possible": list(found.possible),
        "qualified": found.qualified,
        "since": shape.date(found.since),
        "source": shape.source(found.source),
        "note": found.note,
    }


def _fixing(fixing: Fixing) -> Json:
    return {
        "component": fixing.component,
        "name": fixing.name,
        "kind": fixing.kind,
        "material": fixing.material,
        "state": fixing.state,
        "possible": list(fixing.possible),
        "made": shape.date(fixing.made),
        "lost": shape.date(fixing.lost),
        "retired": shape.retired(fixing.retired),
        "known_from": fixing.known_from,
        "joints": list(fixing.joints),
        "source": shape.source(fixing.source),
        "note": fixing.note,
    }


_PLAIN = (
    "ref",
    "stack",
    "side",
    "zone",
    "role",
    "material",
    "material_name",
    "material_words",
    "material_class",
    "origin",
    "coverage",
    "concentration",
    "carrier",
    "dry",
    "identified",
    "significance",
    "significance_by",
    "note",
    "state",
    "qualified",
    "remains",
    "settle",
)


def _layer(layer: Layer) -> Json:
    found: Json = {name: getattr(layer, name) for name in _PLAIN}
    found |= {
        "possible": list(layer.possible),
        "by_side": {
            side: {"state": of.state, "possible": list(of.possible)}
            for side, of in layer.by_side.items()
        },
        "candidates": list(layer.candidates),
        "last_seen": shape.seen(layer.last_seen),
        "sightings": [shape.seen(look) for look in layer.sightings],
        "laid": shape.deed(layer.laid),
        "removed": [shape.deed(done) for done in layer.removed],
        "sources": [shape.source(found) for found in layer.sources],
        "rivals": [shape.rival(stated) for stated in layer.rivals],
        "amended": shape.amended(layer.amended),
    }
    if layer.held is not None:
        found |= {
            "throughout": list(layer.held.throughout),
            "at_some_time": list(layer.held.at_some_time),
            "possibly": list(layer.held.possibly),
        }
    return found


def _residue(residue: Residue) -> Json:
    return {
        "agent": residue.ref,
        "material": residue.material,
        "material_name": residue.material_name,
        "concentration": residue.concentration,
        "form": residue.form,
        "cleared": residue.cleared,
        "intervention": residue.intervention,
        "date": shape.date(residue.date),
        "source": shape.source(residue.source),
        "note": residue.note,
    }
