"""What checking by the rules of the trade answers with."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.knowledge.rule_case import Finding
from conservedb.knowledge.rules import Rule
from conservedb.questions.basics import AsOf, NoSuch, When

CAUTIONS = (
    "A finding says what a recorded rule makes of what is on record; it is no advice and no"
    " leave to go ahead.",
    "Where nothing is found, nothing is said: it does not mean that all is well.",
    "Safety data sheets, local codes and the judgement of licensed practitioners come first.",
)
MOST = 3
"""How many findings are held up as those of most consequence."""


@dataclass(frozen=True, slots=True)
class Judgement:
    """A finding, and the rule that speaks."""

    rule: Rule
    finding: Finding


@dataclass(frozen=True, slots=True)
class Acceptance:
    """A finding that somebody accepts; "" where no component, place or layer is named."""

    ref: str
    rule: str
    component: str
    place: str
    layer: str
    person: str
    reason: str
    date: When
    review: When
    note: str


@dataclass(frozen=True, slots=True)
class AcceptedFinding:
    """A finding with who accepts it, why, and until when."""

    judgement: Judgement
    by: Acceptance


class NoAgent(NoSuch):
    """A material or class with which no step can be planned."""

    def __init__(self, key: str, name: str) -> None:
        called = name if name == key else f"{name} ({key})"
        LookupError.__init__(
            self,
            f"{called} is no agent that the rules can judge a step with; ask for water, an"
            " acid, an alkali, an organic solvent, an abrasive, or heat or light, such as"
            " deionised-water, acetone or steam",
        )
        self.what, self.value, self.nearest = "agent", key, ()


@dataclass(frozen=True, slots=True)
class PlannedStep:
    """What somebody plans to bring to a place: the key or name of an agent, and how."""

    agent: str
    form: str = ""
    temperature_c: float | None = None
    dwell_min: float | None = None


@dataclass(frozen=True, slots=True)
class CheckAnswer:
    """What the rules find of an object, or of a step planned at a place of it.

    Attributes:
        place: the mark of the only place asked about, "" for the whole object.
        step: the planned step in words, "" where none was asked about.
        findings: those of most consequence first.
        overdue: acceptances whose day of review has passed; their findings stand above again.
        solvent: whether the planned step is one with an organic solvent.
        silent: keys of rules that did not run, each with the reason.
        notes: what could not be read of the settings.
    """

    object: str
    title: str
    place: str
    on: AsOf
    step: str
    findings: tuple[Judgement, ...]
    accepted: tuple[AcceptedFinding, ...]
    overdue: tuple[Acceptance, ...]
    ran: tuple[str, ...]
    silent: tuple[tuple[str, str], ...]
    notes: tuple[str, ...]
    solvent: bool = False

    @property
    def foremost(self) -> tuple[Judgement, ...]:
        """The three of most consequence."""
        return self.findings[:MOST]


@dataclass(frozen=True, slots=True)
class RuleOnObject:
    """What one rule finds of one object, in numbers, and its finding of most consequence."""

    object: str
    title: str
    rule: Rule
    broken: int
    cannot_tell: int
    accepted: int
    foremost: Finding


@dataclass(frozen=True, slots=True)
class CollectionCheck:
    """What the rules find in the whole collection, of most consequence first.

    `objects` counts those looked at, `accepted` the findings that somebody accepts.
    """

    on: AsOf
    objects: int
    rows: tuple[RuleOnObject, ...]
    accepted: int
    ran: tuple[str, ...]
    silent: tuple[tuple[str, str], ...]
    notes: tuple[str, ...]
