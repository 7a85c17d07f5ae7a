"""What the forms need of whoever records: plain data, and one Protocol. Nothing heavy is imported.

A form says which fields there are and what they hold; it knows nothing of tables or rules.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Protocol

NOTHING: Mapping[str, str] = MappingProxyType({})
PLAIN = ("text", "long", "date", "choice", "number", "whole")
LISTS = ("places", "components", "people", "layers", "planned steps")


@dataclass(frozen=True, slots=True)
class Completion:
    """Something on record that a few letters may mean.

    Attributes:
        text: what goes into the field: the key or name.
        label: what is shown.
        near: whether it is only a near miss.
        exact: whether the letters are all of one of its names.
    """

    text: str
    label: str
    near: bool = False
    exact: bool = False


@dataclass(frozen=True, slots=True)
class Field:
    """One thing a form asks.

    Attributes:
        name: tells it from the others.
        label: what stands before it.
        kind: text, long, date, choice, number, whole; any other completes what is typed
            (material, person, place, component, layer, term), lists at a time where it is one
            of `LISTS`.
        value: what it holds at first.
        choices: the words to choose from.
        unit: stands after the label.
        hint: a sentence shown while the field is in use.
        required: whether the form cannot be saved without it.
        lookup: what `Recorder.complete` is asked for; the kind by default.
        unknown: the word that stands for "unknown" where that is an answer.
    """

    name: str
    label: str
    kind: str = "text"
    value: str = ""
    choices: tuple[str, ...] = ()
    unit: str = ""
    hint: str = ""
    required: bool = False
    lookup: str = ""
    unknown: str = ""

    @property
    def completes(self) -> bool:
        """Whether letters typed into it are looked up."""
        return bool(self.lookup) or self.kind not in PLAIN

    @property
    def is_list(self) -> bool:
        """Whether it holds several things, with semicolons between them."""
        return self.kind in LISTS

    @property
    def asked_for(self) -> str:
        """What is looked up."""
        return self.lookup or self.kind


@dataclass(frozen=True, slots=True)
class Form:
    """What is asked, one field under another.

    Attributes:
        kind: what is recorded with it.
        title: first line of the screen.
        subtitle: second line: about what.
        fields: in the order in which they are asked.
        draft_key: tells its drafts from those of other forms.
        version: of the record as it was shown; 0 for a new one.
        reason: whether a word why is asked before it is saved.
    """

    kind: str
    title: str
    subtitle: str
    fields: tuple[Field, ...]
    draft_key: str
    version: int = 0
    reason: bool = False


@dataclass(frozen=True, slots=True)
class Problem:
    """Why a field cannot be saved as it is; `field` is "" where it is the form as a whole."""

    field: str
    sentence: str


@dataclass(frozen=True, slots=True)
class Clash:
    """A field that somebody else changed meanwhile: as shown at first, mine and theirs."""

    field: str
    label: str
    shown: str
    mine: str
    theirs: str
    by: str
    at: str


@dataclass(frozen=True, slots=True)
class Finding:
    """A rule of the trade that the step breaks; severity is block, warn or inform."""

    rule: str
    severity: str
    sentence: str


@dataclass(frozen=True, slots=True)
class Outcome:
    """What came of saving.

    Attributes:
        saved: a sentence what was saved; "" if nothing was.
        problems: what must be mended first.
        clashes: what somebody else changed meanwhile.
        judged: rules of the trade that the step breaks.
        notices: sentences worth knowing.
        complete: why it is not saved without a reason: what it belongs to is complete.
        key: what other fields call the new record; the first field of the form if "".
    """

    saved: str = ""
    problems: tuple[Problem, ...] = ()
    clashes: tuple[Clash, ...] = ()
    judged: tuple[Finding, ...] = ()
    notices: tuple[str, ...] = ()
    key: str = ""
    complete: str = ""


class Recorder(Protocol):
    """Who records. Calls block and come from worker threads; any may raise `Unanswered`."""

    who: str

    def set_who(self, name: str) -> None:
        """From now on this person records."""

    def complete(
        self, lookup: str, typed: str, form: Form, values: Mapping[str, str]
    ) -> tuple[Completion, ...]:
        """What the letters typed may mean, near misses last."""

    def check(self, form: Form, field: str, values: Mapping[str, str]) -> str:
        """A sentence about what is wrong with a field, or ""."""

    def read_date(self, text: str) -> str:
        """A few words on how a date was read, or "" if it was not understood."""

    def new_entry(self, lookup: str, typed: str, form: Form) -> Form | None:
        """The form that adds what was not on record; None where nothing can be added."""

    def save(
        self,
        form: Form,
        values: Mapping[str, str],
        *,
        reason: str = "",
        override: Mapping[str, str] = NOTHING,
        over: Mapping[str, str] = NOTHING,
    ) -> Outcome:
        """Save all of it, or nothing.

        Args:
            form: as it was shown; its values are those before the change.
            values: what the fields hold now.
            reason: why, where the form asks for it.
            override: rule to the reason why it is set aside.
            over: field to the value chosen where it clashed.
        """
