"""What every answer is made of: dates, people, sources, rival statements; and "no such thing"."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.dates import Found, say
from conservedb.questions.display import shortened


class NoSuch(LookupError):
    """Nothing of that name is on record; `.nearest` holds what comes closest."""

    def __init__(self, what: str, value: str, nearest: tuple[str, ...] = ()) -> None:
        self.what, self.value, self.nearest = what, value, nearest
        hint = f"; did you mean {' or '.join(nearest)}?" if nearest else ""
        super().__init__(f"no {what} {shortened(value)!r} on record{hint}")


class Ambiguous(NoSuch):
    """A word that several things bear.

    `.meanings` holds name and key of each, `.nearest` the keys, which tell them apart.
    """

    def __init__(self, value: str, meanings: tuple[tuple[str, str], ...]) -> None:
        self.meanings = meanings
        LookupError.__init__(
            self,
            f"{value!r} can mean {' or '.join(f'{name} ({key})' for name, key in meanings)};"
            " ask for one of them by the word in brackets",
        )
        self.what, self.value = "single meaning of", value
        self.nearest = tuple(key for _, key in meanings)


@dataclass(frozen=True, slots=True)
class When:
    """A recorded date: words as found, EDTF ("" where not understood), bounds, qualifiers."""

    words: str
    edtf: str
    earliest: int
    latest: int
    flags: int = 0
    derived: str = ""

    @property
    def recorded(self) -> bool:
        """Whether any date was written down."""
        return bool(self.words or self.edtf)

    @property
    def said(self) -> str:
        """The date as the trade says it; "undated" where none was written down."""
        derived = self.derived or ("edtf" if self.words == self.edtf else "words")
        found = Found(self.words, self.edtf, self.earliest, self.latest, self.flags, derived)
        return say(found) if self.recorded else "undated"


@dataclass(frozen=True, slots=True)
class Retired:
    """A part taken out of its object for good: when, why, and the mark of what replaced it.

    `known` is a day, as ISO text, by which that was on record.
    """

    date: When
    why: str
    replaced_by: str
    known: str | None = None


@dataclass(frozen=True, slots=True)
class AsOf:
    """The day, or the span of days, for which a question is asked."""

    words: str
    edtf: str
    first: int
    last: int

    @property
    def is_span(self) -> bool:
        """Whether more than one day is meant."""
        return self.first != self.last


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody who did or saw something, with the role recorded for it."""

    name: str
    role: str = ""


@dataclass(frozen=True, slots=True)
class Source:
    """Where something is known from."""

    ref: str
    kind: str
    citation: str
    page: str = ""


@dataclass(frozen=True, slots=True)
class Rival:
    """What a source states about a field: `followed` is "yes", "no" or "" (undecided).

    `subject` is the kind of record that the field belongs to ("layer", "intervention" ...),
    `of` its mark or ref where the answer is about a larger thing than that record.
    """

    field: str
    value: str
    source: Source | None
    people: tuple[Person, ...]
    date: When
    followed: str
    decided_by: str
    reason: str
    note: str
    subject: str = ""
    of: str = ""
