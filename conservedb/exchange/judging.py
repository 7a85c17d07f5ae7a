"""Keeping a step only after the rules of the trade, and its authorisations, were asked.

Work that is certainly older than a year is history and is not judged. A rule that a step breaks
is set aside only with a reason, which is recorded with the writer's name in the same transaction.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from sqlalchemy import Connection, Engine

from conservedb.exchange import amending
from conservedb.exchange.amending import Amended, Clashing, Shown, amend_within
from conservedb.exchange.authorised import Standing, lacking, standing
from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.entering import (
    Compose,
    Entry,
    Refs,
    Refused,
    Written,
    put,
    refuse_unreasoned,
)
from conservedb.exchange.faults import Fault
from conservedb.exchange.judged import Bench, Judged, is_of_step, may_be_recent, told_of
from conservedb.exchange.reading_cells import cells_of, find_record, subject_named
from conservedb.exchange.told import told
from conservedb.exchange.writer import writer
from conservedb.knowledge.rule_case import Finding
from conservedb.questions.asof import as_of
from conservedb.questions.basics import NoSuch
from conservedb.questions.checks_answers import Judgement
from conservedb.questions.naming import find_object
from conservedb.store.connect import writing
from conservedb.store.log import Author

HISTORY = (
    "Work done more than a year ago is history: the rules of the trade did not judge it, nor were"
    " authorisations asked for."
)
NONE: Mapping[str, str] = {}
UNNEEDED = "The reason given for"
"""How the notice begins that a rule was set aside which nothing breaks."""


@dataclass(frozen=True, slots=True)
class JudgedWritten:
    """What became of a step.

    Attributes:
        written: what was written; nothing where there are faults, clashes or findings.
        findings: rules that it breaks and that need a reason before it is kept.
        notices: what else is to be known, in sentences.
        sentences: the faults for whoever typed them, each place named first.
        entries: what was, or was to be, written.
    """

    written: Written | Amended
    findings: tuple[Judged, ...] = ()
    notices: tuple[str, ...] = ()
    sentences: tuple[str, ...] = ()
    entries: tuple[Entry, ...] = ()

    @property
    def kept(self) -> bool:
        """Whether it was kept, or had been there already."""
        clashes = isinstance(self.written, Amended) and self.written.clashes
        return not (self.written.faults or self.findings or clashes)


class Unexplained(Exception):
    """Rules are broken without a reason; ends the transaction."""

    def __init__(self, findings: Sequence[Judged], notices: Sequence[str]) -> None:
        super().__init__("; ".join(one.sentence for one in findings))
        self.findings, self.notices = tuple(findings), tuple(notices)


class _Trial(Exception):
    """Ends the transaction of what was only to be tried."""

    def __init__(self, would: JudgedWritten) -> None:
        super().__init__("tried only")
        self.would = would


def enter_judged(
    engine: Engine,
    compose: Compose,
    author: Author,
    today: datetime.date,
    number: str,
    overrides: Mapping[str, str] = NONE,
    *,
    trial: bool = False,
) -> JudgedWritten:
    """Write entries as `entering.enter` does, after the rules of the trade were asked.

    Args:
        number: the object that they are about, "" for none.
        overrides: the reason for each rule, by its key, that is broken all the same.
        trial: keep nothing, and say what would be kept.

    Raises:
        NoSuch: the entries are composed for an object that is not on record.
        DatabaseProblem: the file cannot be written.
    """
    entries: list[Entry] = []
    try:
        with writing(engine, author) as connection:
            entries += compose(Refs(connection))
            refuse_unreasoned(connection, entries, author)
            judging = Judging(connection, number, author, today, overrides)
            judging.look_before(entries)
            written = put(connection, entries, today)
            notices = [*_added(entries), *judging.judge(), *told(written.notices, entries)]
            would = JudgedWritten(written, (), tuple(notices), (), tuple(entries))
            if trial:
                raise _Trial(would)
            return would
    except _Trial as tried:
        return tried.would
    except Unexplained as found:
        return JudgedWritten(Written(), found.findings, found.notices, (), tuple(entries))
    except Refused as refused:
        return _refusal(Written(refused.faults, refused.notices), entries)


def amend_judged(
    engine: Engine,
    subject: str,
    number: str,
    key: str,
    cells: Mapping[str, str],
    author: Author,
    today: datetime.date,
    seen: Shown | None = None,
    overrides: Mapping[str, str] = NONE,
) -> JudgedWritten:
    """Amend a record as `amending.amend` does, after the rules of the trade were asked.

    Raises:
        NoSuch: there is no such record.
        DatabaseProblem: the file cannot be written.
    """
    known = subject_named(subject)
    entries: list[Entry] = []
    try:
        with writing(engine, author) as connection:
            amending.refuse_unreasoned(connection, known, number, key, author)
            now = cells_of(connection, known, find_record(connection, known, number, key))
            entries.append(Entry(known.name, {**now, **cells}))
            judging = Judging(connection, number, author, today, overrides)
            judging.look_before(entries, [Entry(known.name, now)])
            written = amend_within(connection, known, number, key, cells, today, seen)
            notices = [*judging.judge(), *told(written.notices, entries)]
            amended = Amended((), written.notices, written.keys, written.set_number)
            return JudgedWritten(amended, (), tuple(notices), (), tuple(entries))
    except Unexplained as found:
        return JudgedWritten(Amended(), found.findings, found.notices, (), tuple(entries))
    except Refused as refused:
        return _refusal(Amended(refused.faults, refused.notices), entries)
    except Clashing as clashing:
        return JudgedWritten(Amended(clashes=clashing.clashes), entries=tuple(entries))


def _refusal(written: Written, entries: Sequence[Entry]) -> JudgedWritten:
    notices = told(written.notices, entries)
    return JudgedWritten(written, (), notices, told(written.faults, entries), tuple(entries))


class Judging:
    """The rules and the authorisations around one writing."""

    def __init__(
        self,
        connection: Connection,
        number: str,
        author: Author,
        today: datetime.date,
        overrides: Mapping[str, str],
    ) -> None:
        self._connection, self._number, self._today = connection, number, today
        self._author = author
        self._reasons = {rule: reason for rule, reason in overrides.items() if reason.strip()}
        self._bench = Bench(connection, number, as_of(None, today))
        self._entries: Sequence[Entry] = ()
        self._recent: list[Entry] = []
        self._stood: dict[str, Standing] = {}

    def look_before(self, entries: Sequence[Entry], were: Sequence[Entry] = ()) -> None:
        """Look at the object as it stands; `were` are the records to be amended."""
        self._entries = entries
        self._recent = may_be_recent(self._connection, self._number, entries, self._today)
        if not self._recent:
            return
        self._bench.look_before(self._recent)
        self._bench.forget(were)
        for ref in _steps_of((*self._recent, *were)):
            self._stood[ref] = self._standing(ref)

    def judge(self) -> list[str]:
        """Judge what was written, and return what is to be known.

        Raises:
            Refused: a step is not authorised.
            Unexplained: a rule is broken, and no reason is given.
        """
        old = any(is_of_step(one) and one not in self._recent for one in self._entries)
        notices = [HISTORY] if old else []
        if self._recent:
            notices += self._authorised()
            notices += self._by_the_rules(notices)
        return notices

    def _standing(self, ref: str) -> Standing:
        """How a step of the object stands by now; nothing where the object is new itself."""
        try:
            owner = find_object(self._connection, self._number).id
        except NoSuch:
            return Standing()
        return standing(self._connection, owner, ref)

    def _authorised(self) -> list[str]:
        faults: list[Fault] = []
        notices: list[str] = []
        for ref in _steps_of(self._recent):
            now = self._standing(ref)
            faults += lacking(now, self._stood.get(ref, Standing()))
            notices += now.notices
        if faults:
            raise Refused(faults)
        return notices

    def _by_the_rules(self, told_already: Sequence[str]) -> list[str]:
        found = self._bench.new()
        notices = list(self._bench.notices)
        broken = [one for one in found if told_of(one).needs_reason]
        notices += [_noticed(told_of(one)) for one in found if one not in broken]
        open_ = [told_of(one) for one in broken if one.rule.key not in self._reasons]
        if open_:
            raise Unexplained(open_, [*told_already, *notices])
        notices += self._accept(broken)
        unused = set(self._reasons) - {one.rule.key for one in broken}
        notices += [f"{UNNEEDED} {rule} was not needed." for rule in sorted(unused)]
        return notices

    def _accept(self, broken: Sequence[Judgement]) -> list[str]:
        """Record for each place that a rule was set aside, by whom and why."""
        if not broken:
            return []
        refs = Refs(self._connection)
        entries = writer(refs, self._author.who)
        about = dict.fromkeys(
            (one.rule.key, *place) for one in broken for place in self._places(one.finding)
        )
        notices = []
        for rule, place, component, layer in about:
            ref = refs.next("acceptances", self._number)
            cells = {
                "object": self._number,
                "ref": ref,
                "rule": rule,
                "place": place,
                "component": component,
                "layer": layer,
                "person": self._author.who,
                "reason": self._reasons[rule],
                "date": self._today.isoformat(),
            }
            entries.append(Entry("acceptances", cells))
            where = f" at {place or component}" if place or component else ""
            notices.append(f"{rule}{where}: set aside with a reason ({ref}).")
        put(self._connection, entries, self._today)
        return notices

    def _places(self, finding: Finding) -> list[tuple[str, str, str]]:
        """Place, component and layer of each acceptance of a finding."""
        laid = {
            one.cells.get("ref", ""): [
                unescape(item).casefold() for item in split_list(one.cells.get("place", ""))
            ]
            for one in self._entries
            if one.subject == "layers"
        }
        if not finding.places:
            layer = next(iter(finding.layers), "")
            return [("", next(iter(finding.components), ""), layer)]
        only = finding.layers[0] if len(finding.layers) == 1 and len(finding.places) == 1 else ""
        return [
            (
                place,
                "",
                next((r for r in finding.layers if place.casefold() in laid.get(r, ())), only),
            )
            for place in finding.places
        ]


def _added(entries: Sequence[Entry]) -> list[str]:
    """The places that a step over components brought with it."""
    if not any(one.subject == "interventions" for one in entries):
        return []
    places = (one.cells for one in entries if one.subject == "places")
    return [f"{one['mark']}: added as the {one['kind']} of {one['component']}" for one in places]


def _steps_of(entries: Iterable[Entry]) -> tuple[str, ...]:
    """The refs of the steps that entries are, or belong to."""
    named = (
        entry.cells.get("ref" if entry.subject == "interventions" else "intervention", "")
        for entry in entries
    )
    return tuple(dict.fromkeys(ref.strip() for ref in named if ref.strip()))


def _noticed(finding: Judged) -> str:
    said = "" if finding.broken else "Cannot tell: "
    return f"{said}{finding.sentence} ({finding.rule})"
