"""Random rows about the life of a treatment: plans, authorisations, findings, batches."""

from __future__ import annotations

from conservedb.exchange.cells import escape
from conservedb.records.authorisations import CAPACITIES, DECISIONS
from conservedb.records.layers import DEPTH_KNOWN, RESIDUE_SIDES
from conservedb.records.observations import SAMPLE_KINDS
from conservedb.records.treatments import AIMS, INTERVENTION_KINDS, STANDINGS
from tests.exchange.random_behaviour import RandomBehaviour


class RandomWork(RandomBehaviour):
    """Adds rows of plans, authorisations, findings and batches."""

    def __init__(self, seed: int) -> None:
        super().__init__(seed)
        self.batches: list[str] = []

    def _material(self) -> str:
        key = self.chance.choice(self.materials)
        return self.chance.choice(("", key, f"old word = {key}", "PVA", "cement"))

    def _work_shared(self) -> None:
        """Batches, and what the department has settled about authorisations."""
        self.batches = [self._key(), self._key()]
        for ref in self.batches:
            self._add(
                "batches",
                ref=ref,
                material=self._material(),
                lot=self._text(),
                made=self._date(),
                made_by=self._one(tuple(self.people)),
                concentration=self._text(),
                carrier=self._text(),
                note=self._text(),
            )
        for kind in self.chance.sample(INTERVENTION_KINDS, 3):
            self._add(
                "needed_authorisations",
                kind=kind,
                capacity=self.chance.choice(CAPACITIES),
                author_alone=self._one(("yes", "no")),
                note=self._text(),
            )
        self._add(
            "standing_approvals",
            ref=self.chance.choice(("", self._key())),
            kinds=self._some(list(INTERVENTION_KINDS)),
            capacity=self._one(CAPACITIES),
            person=self._one(tuple(self.people)),
            since=self._date(),
            until="2030",
            conditions=self._text(),
            source=self._one(tuple(self.sources)),
            note=self._text(),
        )

    def _planned(self, number: str, parts: list[str], places: list[str]) -> tuple[str, str, str]:
        """A treatment with two versions of its plan; the treatment, its newest plan, a step."""
        treatment, plan, step = self._key(), "", ""
        self._add(
            "treatments",
            object=number,
            ref=treatment,
            title=self._text(),
            begun="1934",
            result=self._text(),
            recommendations=self._text(),
            next_check=self._date(),
        )
        for version in ("1", "2"):
            plan, step = self._key(), self._key()
            self._add(
                "plans",
                object=number,
                ref=plan,
                treatment=treatment,
                version=version,
                date=self._date(),
                aims=self._some(list(AIMS)),
                justification=self._text(),
                alternatives=self._text(),
                risks=self._text(),
                people=self._who(),
                source=self._one(tuple(self.sources)),
                note=self._text(),
            )
            self._add(
                "planned_steps",
                object=number,
                ref=step,
                plan=plan,
                position=self.chance.choice(("1", "-3", "40")),
                kind=self._one(INTERVENTION_KINDS),
                technique=self._text(),
                material=self._material(),
                concentration=self._text(),
                carrier=self._text(),
                components=self._some(parts),
                places=self._some(places),
                note=self._text(),
            )
        return treatment, plan, step

    def _authorised(self, number: str, plan: str, step: str, deed: str) -> None:
        said = self.chance.choice(({"plan": plan, "steps": escape(step)}, {"intervention": deed}))
        self._add(
            "authorisations",
            object=number,
            ref=self.chance.choice(("", self._key())),
            capacity=self._one(CAPACITIES),
            person=self._one(tuple(self.people)),
            decision=self._one(DECISIONS),
            scope=self._text(),
            conditions=self._text(),
            date=self._date(),
            expires=self.chance.choice(("", "2031", "2031?")),
            source=self._one(tuple(self.sources)),
            evidence=self._text(),
            note=self._words() + self._key(),
            **said,
        )

    def _step_done(self, step: str) -> dict[str, str]:
        """The cells of an intervention about how it came to be done."""
        return {
            "planned_step": self._one((step,)),
            "deviation": self._text(),
            "standing": self._one(STANDINGS),
            "unauthorised_reason": self._text(),
            "unauthorised_by": self._one(tuple(self.people)),
            "circumstances": self._text(),
            "methods": self._text(),
            "recorded_over": self._one(("1", "12")),
            "time_of_day": self._text(),
        }

    def _soaked(self) -> dict[str, str]:
        """The cells of a layer about how matter went in."""
        return {
            "batch": self._one(tuple(self.batches)),
            "temperature_c": self._one(("-5", "20.5")),
            "treated_from": self._text(),
            "cycles": self._one(("0", "7")),
            "uptake_g": self._number(),
            "depth_mm": self._number(),
            "depth_known": self._one(DEPTH_KNOWN),
            "recorded_over": self._one(("1", "12")),
        }

    def _kept(self) -> dict[str, str]:
        """The cells of a removal about what is left of it."""
        return {
            "kept_what": self._text(),
            "kept_where": self._text(),
            "residue_side": self._one(RESIDUE_SIDES),
            "residue": self._text(),
        }

    def _found(self, number: str, on: dict[str, list[str]], deed: str, removals: list[str]) -> None:
        """An observation, a reading and a sample, each on some of the keys of `on`, by column."""

        def cells() -> dict[str, str]:
            return {column: self._one(tuple(keys)) for column, keys in on.items()} | {
                "object": number,
                "ref": self.chance.choice(("", self._key())),
                "intervention": self._one((deed,)),
                "date": self._date(),
                "source": self._one(tuple(self.sources)),
                "people": self._who(),
                "note": self._words() + self._key(),
            }

        text = self._text
        said = {"condition": text(), "seen": text(), "presumed": text(), "extent": text()}
        self._add("observations", **cells(), **said)
        measured = {"value": self.chance.choice(("0.3", "-4", "0")), "unit": self._words()}
        where = {"quantity": text(), "instrument": text(), "spot": text()}
        self._add("readings", **cells(), **measured, **where)
        self._add(
            "samples",
            **cells(),
            removal=self._one(tuple(removals)),
            kind=self._one(SAMPLE_KINDS),
            what=text(),
            box=text(),
            remainder=text(),
            result=text(),
            analysed_by=text(),
        )
