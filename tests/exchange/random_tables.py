"""Random small databases, full of nasty text, as CSV folders that must import without fault."""

from __future__ import annotations

import csv
from pathlib import Path

from conservedb.exchange.cells import escape, split_list
from conservedb.exchange.subjects import BY_NAME
from conservedb.records.layers import COVERAGES, DRY, IDENTIFIED, LAYER_ORIGINS, SIGNIFICANCE
from conservedb.records.objects import COMPONENT_ORIGINS, KNOWN_FROM
from conservedb.records.places import JOINT_EVENTS, PLACE_KINDS
from conservedb.records.treatments import AGENT_FORMS, AIMS, INTERVENTION_KINDS
from tests.exchange.random_work import RandomWork

LATER = ("1991", "1995-02-03", "199X", "after 1990", "in the time of the old chief", "2001~")


class RandomTables(RandomWork):
    """One random database; the same seed gives the same one."""

    def __init__(self, seed: int) -> None:
        super().__init__(seed)
        self._shared()
        self._work_shared()
        for number in range(self.chance.randint(1, 3)):
            self._object(f"N.{number}.{self.chance.randint(1, 99)}")

    def write(self, folder: Path) -> None:
        """Write the folder, rows in random order."""
        folder.mkdir()
        for name, rows in self.rows.items():
            self.chance.shuffle(rows)
            with (folder / f"{name}.csv").open("w", encoding="utf-8", newline="") as file:
                writer = csv.DictWriter(file, BY_NAME[name].headers, restval="")
                writer.writeheader()
                writer.writerows(rows)

    def _object(self, number: str) -> None:
        self._add(
            "objects",
            number=number,
            title=self._text(),
            maker=self._text(),
            made=self.chance.choice(("", "1741", "c. 1741", "18th century")),
            whereabouts=self._text(),
            note=self._text(),
        )
        parts: list[str] = []
        joints: list[str] = []
        for _ in range(self.chance.randint(1, 5)):
            parts.append(self._component(number, parts))
        places = [self._place(number, parts, joints) for _ in range(self.chance.randint(1, 6))]
        self._add(
            "components", object=number, mark=self._key(), kind="pin", bridges=self._some(joints)
        )
        treatment, plan, step = self._planned(number, parts, places)
        deeds = [
            self._deed(number, parts, places, treatment, step)
            for _ in range(self.chance.randint(1, 4))
        ]
        self._authorised(number, plan, step, deeds[0])
        for joint in joints:
            self._joint_event(number, joint, deeds)
        layers = [
            self._layer(number, places, joints, deeds) for _ in range(self.chance.randint(1, 8))
        ]
        self._test(number, self.chance.choice(layers), self.chance.choice(["", *deeds]))
        self._accept(number, parts[0], places[0], layers[0])
        removals = [
            row["ref"]
            for row in self.rows.get("removals", [])
            if row["object"] == number and row["ref"]
        ]
        on = {"component": parts, "place": places, "layer": layers}
        self._found(number, on, deeds[0], removals)
        if len(places) > 1:
            self._near(number, *self.chance.sample(places, 2))
        self._about(number, parts, places, deeds)

    def _component(self, number: str, parts: list[str]) -> str:
        mark = self._key()
        self._add(
            "components",
            object=number,
            mark=mark,
            parent=self._one(tuple(parts)),
            name=self._text(),
            kind=self._text(),
            origin=self._one(COMPONENT_ORIGINS),
            material=self._material(),
            width_mm=self._number(),
            mass_kg=self._number(),
            made=self.chance.choice(("", "1741", "1741~")),
            lost=self.chance.choice(("", "", "", "2005")),
            retired=self._date(),
            retired_why=self._text(),
            replaced_by=self._one(tuple(parts)),
            known_from=self._one(KNOWN_FROM),
            note=self._text(),
        )
        return mark

    def _place(self, number: str, parts: list[str], joints: list[str]) -> str:
        mark, kind = self._key(), self.chance.choice(PLACE_KINDS)
        if kind == "joint":
            joints.append(mark)
        self._add(
            "places",
            object=number,
            mark=mark,
            kind=kind,
            component=self.chance.choice(parts),
            other_component=self._one(tuple(parts)) if kind == "joint" else "",
            name=self._text(),
            load_kg=self._number(),
            arose_date=self._date(),
            note=self._text(),
        )
        return mark

    def _deed(
        self, number: str, parts: list[str], places: list[str], treatment: str, step: str
    ) -> str:
        ref = self._key()
        self._add(
            "interventions",
            object=number,
            ref=ref,
            treatment=self._one((treatment,)),
            kind=self._one(INTERVENTION_KINDS),
            technique=self._text(),
            aims=self._some(list(AIMS)),
            date=self._date(),
            people=self._who(),
            components=self._some(parts),
            places=self._some(places),
            source=self._one(tuple(self.sources)),
            note=self._text(),
            **self._step_done(step),
        )
        self._add(
            "agents",
            object=number,
            intervention=ref,
            material=self._material(),
            place=self._some(places),
            form=self._one(AGENT_FORMS),
            temperature_c=self.chance.choice(("", "-5", "20.5")),
            batch=self._one(tuple(self.batches)),
            note=self._text(),
        )
        return ref

    def _joint_event(self, number: str, joint: str, deeds: list[str]) -> None:
        self._add(
            "joint_events",
            object=number,
            place=joint,
            ref=self.chance.choice(("", self._key())),
            event=self.chance.choice(JOINT_EVENTS),
            date=self._date(),
            intervention=self._one(tuple(deeds)),
            where=self._text(),
        )

    def _layer(self, number: str, places: list[str], joints: list[str], deeds: list[str]) -> str:
        ref, at = self._key(), self._some(places, 2)
        sided = any(escape(joint) in split_list(at) for joint in joints)
        sides = ("A", "B") if sided else ()  # only a joint has two
        self._add(
            "layers",
            object=number,
            place=at,
            ref=ref,
            intervention=self._one(tuple(deeds)),
            date=self._date(),
            origin=self._one(LAYER_ORIGINS),
            material=self._material(),
            role=self._text(),
            stack=self.chance.choice(("", "-2", "0", "7")),
            side=self._one(sides),
            coverage=self._one(COVERAGES),
            dry=self._one(DRY),
            identified=self._one(IDENTIFIED),
            significance=self._one(SIGNIFICANCE),
            significance_by=self._one(tuple(self.people)),
            source=self._one(tuple(self.sources)),
            note=self._text(),
            **self._soaked(),
        )
        if self.chance.random() < 0.5:
            self._add(
                "removals",
                object=number,
                ref=self.chance.choice(("", self._key())),
                layer=ref,
                date=self.chance.choice(LATER),
                extent=self.chance.choice(("all", "part", "attempted")),
                side=self._one(sides),
                cause=self._text(),
                **self._kept(),
            )
        if self.chance.random() < 0.4:
            self._add(
                "sightings",
                object=number,
                layer=ref,
                date="1990",
                result=self.chance.choice(("seen", "not accessible")),
                people=self._who(),
                note=self._text(),
            )
        self._add(
            "statements",
            table="layer",
            object=number,
            ref=ref,
            field=self.chance.choice(("material", "date", "note")),
            value=self.chance.choice((self._text() or "x", self.chance.choice(self.materials))),
            source=self._one(tuple(self.sources)),
            people=self._who(),
            followed=self._one(("yes", "no")),
        )
        return ref

    def _about(self, number: str, parts: list[str], places: list[str], deeds: list[str]) -> None:
        self._add(
            "warnings",
            object=number,
            component=self._one(tuple(parts)),
            place=self._one(tuple(places)),
            kind=self._text(),
            text=self._text(),
            since=self._date(),
        )
        self._add("whereabouts", object=number, place_name=self._text(), since=self._date())
        for table, ref in (("place", places[0]), ("intervention", deeds[0]), ("object", "")):
            self._add(
                "statements", table=table, object=number, ref=ref, field="note", value=self._text()
            )
