"""Random work on a database: whatever a form or a command can do, in any order.

Most of what is tried is sensible, some is not; what is refused must leave everything as it was.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import partial

from sqlalchemy import Engine

from conservedb.exchange.amending import FIXED, amend
from conservedb.exchange.cells import escape
from conservedb.exchange.columns import Date
from conservedb.exchange.deeds import (
    Removing,
    Step,
    compose_removing,
    compose_simple,
    compose_step,
)
from conservedb.exchange.entering import Entry, Refs, Written, enter
from conservedb.exchange.reading_cells import cells_of
from conservedb.exchange.subject import Subject
from conservedb.exchange.subjects import BY_NAME
from conservedb.exchange.undoing import take_back
from conservedb.recording.undoing import CannotUndo
from conservedb.recording.withdrawing import CannotWithdraw, withdraw
from conservedb.records.observations import SAMPLE_KINDS
from conservedb.records.treatments import AGENT_FORMS, INTERVENTION_KINDS
from conservedb.store.connect import reading, writing
from conservedb.store.log import Author
from tests.conftest import TODAY
from tests.exchange.random_behaviour import DATES
from tests.exchange.random_tables import LATER
from tests.nasty import NASTY

WHO = "A. Tester"
AMENDED = [
    "objects",
    "components",
    "places",
    "near",
    "treatments",
    "plans",
    "planned_steps",
    "interventions",
    "authorisations",
    "agents",
    "joint_events",
    "layers",
    "removals",
    "sightings",
    "spot_tests",
    "observations",
    "readings",
    "samples",
    "acceptances",
    "statements",
    "warnings",
    "whereabouts",
    "people",
    "sources",
    "materials",
    "material_classes",
    "batches",
    "standing_approvals",
    "settings",
    "rules",
    "terms",
]
"""Kinds of records that are amended and withdrawn."""


@dataclass
class RandomSteps:
    """Does one random thing after the other.

    Attributes:
        done: what was tried, in words, with the change set or the reason of its refusal.
        sets: the change sets that were made.
    """

    engine: Engine
    seed: int
    done: list[str] = field(default_factory=list)
    sets: list[int] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.chance = random.Random(f"steps {self.seed}")

    def one(self) -> None:
        """Do one thing."""
        kinds: tuple[tuple[Callable[[], Written | str], int], ...] = (
            (self._step, 4),
            (self._removing, 3),
            (self._simple, 5),
            (self._amending, 8),
            (self._renaming, 1),
            (self._withdrawing, 2),
            (self._taking_back, 1),
        )
        chosen = self.chance.choices([kind for kind, _ in kinds], [often for _, often in kinds])[0]
        name = chosen.__name__.strip("_")
        before = self._last_set()
        told = chosen()
        made = self._last_set()
        if made != before:
            self.sets.append(made)
        said = told if isinstance(told, str) else "; ".join(f.sentence() for f in told.faults)
        self.done.append(f"{name}: {said[:300]}" + (f" -> {made}" if made != before else ""))

    def _last_set(self) -> int:
        with reading(self.engine) as connection:
            return int(connection.exec_driver_sql("SELECT max(id) FROM change_set").scalar_one())

    # -- what is there ---------------------------------------------------------------------

    def _column(self, statement: str, *values: object) -> list[str]:
        with reading(self.engine) as connection:
            return [row[0] for row in connection.exec_driver_sql(statement, values)]

    def _object(self) -> str:
        return self.chance.choice(self._column("SELECT number FROM object"))

    def _of(self, table: str, number: str, key: str = "ref") -> list[str]:
        return self._column(
            f"SELECT t.{key} FROM {table} t JOIN object o ON o.id = t.object_id"
            " WHERE o.number = ? ORDER BY t.id",
            number,
        )

    def _some(self, values: list[str], most: int) -> tuple[str, ...]:
        return tuple(self.chance.sample(values, min(len(values), self.chance.randint(0, most))))

    def _date(self) -> str:
        return self.chance.choice((*DATES, *LATER, TODAY.isoformat(), TODAY.isoformat()))

    def _text(self) -> str:
        return self.chance.choice(("", "plain words", *NASTY))

    def _material(self) -> str:
        key = self.chance.choice(self._column("SELECT key FROM material ORDER BY id"))
        return self.chance.choice(("", escape(key), escape(key), "PVA"))

    # -- what is done ----------------------------------------------------------------------

    def _entered(self, compose: Callable[[Refs], list[Entry]]) -> Written:
        return enter(self.engine, compose, Author(WHO, "recorded"), TODAY)

    def _step(self) -> Written:
        number = self._object()
        step = Step(
            number,
            self.chance.choice(INTERVENTION_KINDS),
            self._date(),
            components=self._some(self._of("component", number, "mark"), 3),
            places=self._some(self._of("place", number, "mark"), 5),
            material=self._material(),
            agent=self.chance.choice(("", "acetone")),
            form=self.chance.choice(("", *AGENT_FORMS)),
            role=self.chance.choice(("", "facing", "adhesive")),
            side=self.chance.choice(("", "", "A")),
            cycles=self.chance.choice(("", "3")),
            people=self.chance.choice(("", "", "", "Nobody Known (mason)")),
            note=self._text(),
        )
        return self._entered(partial(compose_step, step=step, who=WHO, today=TODAY))

    def _removing(self) -> Written:
        number = self._object()
        removing = Removing(
            number,
            date=self._date(),
            layers=self._some(self._of("layer", number), 3),
            extent=self.chance.choice(("all", "part", "attempted")),
            side=self.chance.choice(("", "", "B")),
            kept_what=self._text(),
        )
        return self._entered(partial(compose_removing, removing=removing, who=WHO, today=TODAY))

    def _simple(self) -> Written:
        number = self._object()
        layers, places = self._of("layer", number), self._of("place", number, "mark")
        layer, at = self.chance.choice(layers or [""]), self.chance.choice(places or [""])
        subject, cells = self.chance.choice(
            (
                ("sightings", {"layer": layer, "result": "seen", "date": self._date()}),
                ("sightings", {"layer": layer, "result": "not found", "side": "A"}),
                ("removals", {"layer": layer, "extent": "all", "date": self._date()}),
                (
                    "spot_tests",
                    {"layer": layer, "agent": "acetone 50; ethanol 50", "wet": "no effect"},
                ),
                ("observations", {"place": at, "seen": self._text() or "crack", "date": "2026"}),
                ("readings", {"place": at, "quantity": "crack width", "value": "1.5"}),
                ("samples", {"layer": layer, "kind": self.chance.choice(SAMPLE_KINDS)}),
                ("warnings", {"place": at, "kind": "k", "text": self._text() or "w"}),
                ("joint_events", {"place": at, "event": "opened", "date": self._date()}),
                ("whereabouts", {"place_name": "store", "since": self._date()}),
                ("sources", {"kind": "report", "citation": self._text(), "date": self._date()}),
                ("treatments", {"title": self._text(), "begun": self._date()}),
                ("components", {"mark": f"new{len(self.done)}", "lost": self._date()}),
                ("objects", {"number": f"O.{self.seed}.{len(self.done)}", "title": "new"}),
                ("people", {"name": f"Person {len(self.done)}", "aliases": "x; y"}),
            )
        )
        return self._entered(
            partial(
                compose_simple,
                subject=subject,
                object_number=number,
                cells=cells,
                who=WHO,
            )
        )

    def _record(self, subject: Subject, of: str = "") -> tuple[str, str, int] | None:
        """A random record of a subject: the number of its object, its key, its id."""
        if subject.in_object:
            number = of or self._object()
            statement = (
                f"SELECT t.{subject.key[-1]}, t.id FROM {subject.table.name} t JOIN object o"
                " ON o.id = t.object_id WHERE o.number = ? ORDER BY t.id"
            )
            values: tuple[str, ...] = (number,)
        else:
            number, values = "", ()
            statement = f"SELECT {subject.key[-1]}, id FROM {subject.table.name} ORDER BY id"
        with reading(self.engine) as connection:
            rows = connection.exec_driver_sql(statement, values).all()
        if not rows:
            return None
        key, record = self.chance.choice(rows)
        return number, key, record

    def _amending(self) -> Written | str:
        """Some fields of a record take the words of another one of its kind, a date, or none."""
        subject = BY_NAME[self.chance.choice(AMENDED)]
        record = self._record(subject)
        if record is None:
            return f"no {subject.singular}"
        number, key, _ = record
        other = self._record(subject, number)
        assert other is not None
        with reading(self.engine) as connection:
            theirs = cells_of(connection, subject, other[2])
        dates = {c.name for c in subject.plain if isinstance(c, Date)}
        free = [h for h in subject.headers if h not in (*FIXED, *subject.key)]
        cells = {}
        for header in self.chance.sample(free, min(len(free), self.chance.randint(1, 3))):
            if header in dates:
                cells[header] = self._date()
            elif header == "note":
                cells[header] = self._text()
            else:
                cells[header] = self.chance.choice((theirs[header], theirs[header], ""))
        return self._amended(subject, number, key, cells)

    def _renaming(self) -> Written | str:
        subject = BY_NAME[self.chance.choice(("components", "places", "layers", "interventions"))]
        record = self._record(subject)
        if record is None:
            return f"no {subject.singular}"
        mark = self.chance.choice((f"renamed {len(self.done)}", record[1].swapcase()))
        cells = {subject.key[-1]: mark, "note": self._text()}
        return self._amended(subject, record[0], record[1], cells)

    def _amended(
        self, subject: Subject, number: str, key: str, cells: dict[str, str]
    ) -> Written | str:
        author = Author(WHO, "amended", "read again")
        written = amend(self.engine, subject.name, number, key, cells, author, TODAY)
        said = f"{subject.singular} {number} {key!r}: {cells!r}"
        return written if written.faults else said

    def _withdrawing(self) -> str:
        subject = BY_NAME[self.chance.choice(AMENDED)]
        record = self._record(subject)
        if record is None:
            return f"no {subject.singular}"
        try:
            with writing(self.engine, Author(WHO, "withdrawn", "wrong object")) as connection:
                gone = withdraw(
                    connection,
                    subject.table.name,
                    record[2],
                    together=self.chance.random() < 0.7,
                )
        except CannotWithdraw as refused:
            return str(refused)
        return ", ".join(gone.labels)

    def _taking_back(self) -> str:
        """Something in the midst of it is taken back at once."""
        if not self.sets:
            return "nothing yet"
        try:
            return take_back(self.engine, WHO, self.chance.choice(self.sets)).what
        except CannotUndo as refused:
            return str(refused)
