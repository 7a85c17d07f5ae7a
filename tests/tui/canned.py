"""A reading without a database: the fountain, a dozen of its parts, three of its locations."""

from __future__ import annotations

import datetime
import re
from dataclasses import replace

from conservedb.dates import DateError, day_number, read
from conservedb.questions.answers import (
    AsOf,
    ComponentRow,
    Deed,
    Fixing,
    HistoryAnswer,
    HistoryRow,
    Hit,
    JointCondition,
    Layer,
    NoSuch,
    ObjectAnswer,
    Person,
    PlaceAnswer,
    PlaceRow,
    Residue,
    Rival,
    Seen,
    Side,
    Source,
    StartAnswer,
    Warning_,
    When,
)
from conservedb.questions.asof import as_of
from conservedb.questions.find_answers import FoundAnswer, FoundGroup
from conservedb.questions.material_answers import MaterialAnswer
from conservedb.questions.removal_answers import RemovalAnswer
from conservedb.questions.treatment_answers import TreatmentAnswer, TreatmentsAnswer
from conservedb.tui.reading import Unanswered
from tests.tui import canned_treatment
from tests.tui.canned_plans import ACRYLIC, RESINS, removal

NUMBER = "SQ.1902.7"
TITLE = "The Four Winds, wall fountain"
TODAY = datetime.date(2026, 11, 2)
NEVER = day_number(9999)


def when(words: str = "") -> When:
    return When(*read(words))


def people(*names: str) -> tuple[Person, ...]:
    return tuple(Person(name) for name in names)


def source(ref: str, citation: str = "", page: str = "") -> Source:
    return Source(ref, "report", citation, page)


RIVAL = Rival(
    "material",
    "Roman cement",
    source("BILL-1868", "Bill of Abel Crane & Son, masons"),
    people("Abel Crane"),
    when("1868-11-02"),
    "no",
    "Ines Calder",
    "No shellac on the bill, but a mason would not have bought it",
    "",
)


def layer(ref: str, material: str, role: str, laid: str, by: str = "", **more: object) -> Layer:
    """A layer with everything that is not named left as nobody recorded it."""
    values: dict[str, object] = {
        "ref": ref, "stack": 0, "side": "", "zone": "face", "role": role,
        "material": material.replace(" ", "-") or None, "material_name": material,
        "material_words": "", "material_class": "", "origin": "applied", "coverage": "whole",
        "concentration": "", "carrier": "", "dry": "", "identified": "inferred",
        "significance": "undecided", "significance_by": "Ines Calder", "note": "",
        "state": "present", "possible": ("present",), "by_side": {}, "held": None,
        "qualified": "", "remains": "", "candidates": (), "last_seen": None, "sightings": (),
        "laid": Deed(when(laid), "I1", "join", "", people(*([by] if by else []))),
        "removed": (), "sources": (), "rivals": (), "settle": "",
    }  # fmt: skip
    return Layer(**{**values, **more})  # type: ignore[arg-type]


SEEN = Seen(when("2012-05-09"), "seen", "", people("Ines Calder"), source("REP-2012"))
PARED = Deed(when("2012-05"), "I9", "remove earlier work", "", people("Ines Calder"), "part", "A")

J14_LAYERS = (
    layer("L14a", "trass-lime mortar", "bedding", "1741", "Jerrold Haske", origin="maker",
          last_seen=SEEN, sightings=(SEEN,), remains="split unknown"),
    layer("L14b", "shellac", "adhesive", "before 1872", side="A", coverage="spots",
          state="uncertain", possible=("present", "gone"), qualified="date approximate",
          settle="look at the joint faces when it is next open", rivals=(RIVAL,)),
    layer("L14c", "Roman cement mortar", "pointing", "1868", "Abel Crane", zone="edge"),
    layer("L14d", "Portland cement mortar", "pointing", "1934-06-14", "Walter Orde", zone="edge",
          removed=(PARED,)),
    layer("L14e", "epoxy resin", "grout", "1989-05-18", "Philip Garrod", zone="core"),
)  # fmt: skip

LIVES = {
    "L14a": ("1741-12-31", None, None), "L14b": ("1871-12-31", None, None),
    "L14c": ("1868-12-31", None, "1934-05-31"), "L14d": ("1934-06-14", "2012-05-31", None),
    "L14e": ("1989-05-18", None, None),
}  # fmt: skip
"""Ref -> last day on which it may have come, been reduced, gone."""

S02_LAYERS = (
    layer("LS2a", "linseed oil", "coating", "c. 1868", state="reduced", possible=("reduced",)),
    layer("LS2b", "", "consolidant", "1976", "Margit Hollander", material_words="silane",
          concentration="5 %", state="uncertain", possible=("present",),
          candidates=("S02", "M07")),
)  # fmt: skip

UNDATED = when("")
K3 = Fixing(
    "K3", "cramp, lip to dolphin", "cramp", "wrought iron", when("1741"), UNDATED, "documented",
    "present", ("present",), source("RAD-2011", "Radiographs, plates 1 to 14"), ("J35", "J36"), "",
)  # fmt: skip
P1 = Fixing(
    "P1", "pin seen at the front", "pin", "", UNDATED, UNDATED, "picture only", "present",
    ("present",), source("RAD-2011"), (), "",
)  # fmt: skip
RESIDUE = Residue("A2", "caustic-soda", "caustic soda", "10 %", "swab", "", "I4", when("1934"),
                  source("LEDG-1934"), "")  # fmt: skip


def component(mark: str, name: str, parent: str = "", **more: object) -> ComponentRow:
    row = ComponentRow(
        mark, parent, name, "block", "original", "oolitic limestone", "present", ("present",), "",
        None, "", (None, None, None), "seen", (), "",
    )  # fmt: skip
    return replace(row, **more)  # type: ignore[arg-type]


COMPONENTS = (
    component("B06", "basin lip, left"),
    component("B07", "basin lip, centre", mass_kg=141.0, mass_basis="weighed 2012"),
    component("B12", "dolphin, right"),
    component("B12a", "tail fin of the right dolphin", "B12", kept_at="Store 3, drawer 14"),
    component("B14", "urn, left", state="gone", possible=("gone",)),
    component("K3", "cramp, lip to dolphin", kind="cramp", origin="fixing", bridges=("J14",)),
    component("P1", "pin seen at the front", kind="pin", bridges=("J14",), known_from="suspected"),
)


def place_row(mark: str, kind: str, a: str, b: str, name: str, **more: object) -> PlaceRow:
    row = PlaceRow(mark, kind, a, b, name, 3, 0, "closed" if kind == "joint" else "", None)
    return replace(row, **more)  # type: ignore[arg-type]


PLACES = (
    place_row("J06", "joint", "B06", "B07", "lip left to lip centre", condition="moving"),
    place_row("J14", "joint", "B07", "B12", "basin lip to right dolphin", uncertain=1, load_kg=85),
    place_row("J35", "joint", "B07", "K3", "cramp K3 in the lip", certain=1),
    place_row("S02", "surface", "B07", "", "top and front of the centre lip", uncertain=1),
)
WARNINGS = (
    Warning_("W1", "B07", "J14", "lead", "Lead in the cramp sockets: wash hands.", when("1741"),
             UNDATED, source("RAD-2011")),
    Warning_("W2", "B12", "", "do not lift by", "Never lift the basin by the dolphin.",
             when("2012"), UNDATED, None),
)  # fmt: skip
EXAMINED = Deed(when("2026-09-14/2026-09-18"), "I12", "examine", "", people("Amara Whitlock"))


def event(
    day: str, sentence: str, *by: str, kind: str = "intervention", **more: object
) -> HistoryRow:
    row = HistoryRow(
        kind, "I1", when(day), sentence, ("bedding in trass-lime (L14a)",), people(*by), "T1",
        ("B07", "B12"), ("J14",), source("LEDG-1934", "Mason's day ledger", "41"), (), "",
    )  # fmt: skip
    return replace(row, **more)  # type: ignore[arg-type]


EVENTS = (
    event("1741", "Joined: bedding in trass-lime; cramps run in with lead", "Jerrold Haske"),
    event("1868", "Taken apart and moved", rivals=(RIVAL,)),
    event("1934-06-14", "Joined: repointed in Portland cement", "Walter Orde"),
    event("1967-03", "Filled: polyester stopping", "Ronald Tasker", places=("S02",)),
    event("1989-05-18", "Grouted with epoxy", "Philip Garrod"),
    event("2012-05-09", "Seen: trass-lime mortar, bedding (L14a)", "Ines Calder", kind="sighting"),
)


class Canned:
    """Answers like a database would, from what stands above."""

    @property
    def name(self) -> str:
        return "canned.db"

    def remarks(self) -> tuple[str, ...]:
        return ()

    def start(self) -> StartAnswer:
        hit = Hit("place", NUMBER, "J14", "basin lip to right dolphin", "moving, carries 85 kg")
        return StartAnswer(
            open_treatments=(
                Hit("treatment", NUMBER, "T2026", "Move to the new gallery", "begun 2026"),
            ),
            restless_joints=(hit,),
            recent_objects=(Hit("object", NUMBER, "", TITLE, "Store 3, bay 2"),),
            counts={"objects": 13, "treatments": 49},
        )

    def find(self, text: str) -> FoundAnswer:
        hits = (
            Hit("object", "SQ.1958.77", "", "Dolphin cup", "porcelain"),
            Hit("component", NUMBER, "B12", "dolphin, right", "block"),
            Hit("place", NUMBER, "J14", "basin lip to right dolphin", "joint"),
            Hit("material", "", "", "acrylic resin B-72", "b72"),
            Hit("person", "", "", "Dorothea Finch", "keeper"),
            Hit(
                *("step", NUMBER, "J14", "join, epoxy injected", "I1989-6, 1989-05-18"),
                "Ran out under the right dolphin and was wiped off at once.",
            ),
        )
        begun = re.compile(rf"\b{re.escape(text.strip())}\w*", re.IGNORECASE)
        groups = []
        for hit in hits:
            spans = tuple(one.span() for one in begun.finditer(hit.sentence or hit.label))
            if spans or begun.search(hit.mark):
                groups.append(FoundGroup(hit.kind, (replace(hit, spans=spans),), 1))
        near = ("dolphin",) if text.strip() == "dolfin" else ()
        return FoundAnswer(tuple(groups), near)

    def as_of(self, text: str) -> AsOf:
        try:
            return as_of(text, TODAY)
        except DateError as problem:
            raise Unanswered(str(problem)) from problem

    def object(self, number: str, on: AsOf) -> ObjectAnswer:
        if number != NUMBER:
            raise Unanswered(str(NoSuch("object", number)))
        return ObjectAnswer(
            NUMBER, TITLE, "wall fountain", "Jerrold Haske, sculptor", when("1741"),
            "Store 3, bay 2", "", on, WARNINGS, EXAMINED, COMPONENTS, PLACES, (),
        )  # fmt: skip

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        row = next(one for one in PLACES if one.mark == mark)
        layers = {"J14": J14_LAYERS, "S02": S02_LAYERS}.get(mark, J14_LAYERS[:1])
        lip, dolphin = ("B07", "basin lip, centre"), ("B12", "dolphin, right")
        sides = [Side("A", *lip, "oolitic limestone"), Side("B", *dolphin, "oolitic limestone")]
        joint = row.kind == "joint"
        source_1934 = source("LEDG-1934", "Mason's day ledger", "41")
        return PlaceAnswer(
            number, TITLE, mark, row.kind, row.name, "seat, cramped", "making", when("1741"),
            "gap 2 mm in front", row.load_kg, source("REP-2012"), "front and left edge", "", on,
            tuple(sides) if joint else (replace(sides[0], side=""),),
            JointCondition("closed", ("closed",), "", when("1934-06-14"), source_1934, "")
            if joint
            else None,
            (K3, P1) if mark == "J14" else (), tuple(_on(one, on.last) for one in layers),
            WARNINGS[:1], (), None, "Closed 14 June 1934; barrier not recorded; carries 85 kg; one"
            " cramp, one pin known from a picture only; last seen 9 May 2012.",
            () if joint else (RESIDUE,),
        )  # fmt: skip

    def history(self, number: str, mark: str) -> HistoryAnswer:
        events = [one for one in EVENTS if not mark or mark in (*one.places, *one.components)]
        return HistoryAnswer(number, TITLE, mark, "", tuple(events))

    def material(self, word: str, on: AsOf) -> MaterialAnswer:
        known = {"b72": ACRYLIC, "acetone": ACRYLIC, "resin": RESINS, "acrylic-resin": RESINS}
        if word not in known:
            raise Unanswered(str(NoSuch("material or class", word)))
        return replace(known[word], on=on)

    def removal(self, number: str, mark: str, layer: str, on: AsOf, band: str) -> RemovalAnswer:
        if mark == "S02":
            raise Unanswered(str(NoSuch("layer to take off at", mark)))
        return removal(number, TITLE, mark, layer, on, band)

    def treatments(self, number: str) -> TreatmentsAnswer:
        return canned_treatment.ROWS

    def treatment(self, number: str, ref: str) -> TreatmentAnswer:
        known = {one.ref: one for one in (canned_treatment.NEW, canned_treatment.OLD)}
        if ref not in known:
            raise Unanswered(str(NoSuch(f"treatment of {number}", ref)))
        return known[ref]


def _on(one: Layer, day: int) -> Layer:
    """The layer as it stood at the close of a day, by the table of lives."""
    if one.ref not in LIVES:
        return one
    came, reduced, gone = (
        datetime.date.fromisoformat(text).toordinal() if text else NEVER for text in LIVES[one.ref]
    )
    if day < came:
        return replace(one, state="not yet", possible=("not yet",), remains="")
    if day >= gone:
        return replace(one, state="gone", possible=("gone",))
    if day >= reduced:
        return replace(one, state="reduced", possible=("reduced",))
    return one
