"""Counting the rows of an answer, apart by how far each is one: by any word, or by decade.

What may belong to several groups is counted once in the total and in each group that it names;
what may lie in several decades is possible in each of them and certain in none.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import NamedTuple

from conservedb.dates import civil, is_known

NOT_RECORDED = "not recorded"
WIDEST = 10
"""A date that may lie in more decades than these names none."""


class Count(NamedTuple):
    """How many things: certainly, possibly, and of which nobody knows what they are made of."""

    certain: int = 0
    possible: int = 0
    unidentified: int = 0

    @property
    def total(self) -> int:
        """All of them."""
        return sum(self)

    def and_one(self, sureness: str) -> Count:
        """The count with one thing more. ValueError where there is no such sureness."""
        at = self._fields.index(sureness)
        return Count(*(count + (place == at) for place, count in enumerate(self)))


class Thing(NamedTuple):
    """What is counted: how far it is an answer ("certain" ...), its date, and its labels.

    Attributes:
        earliest, latest: the days that its date may mean (see `conservedb.dates`).
        flags: of its date; one that is approximate or uncertain makes a decade possible only.
        labels: the groups that it belongs to; none where that is not recorded.
    """

    sureness: str
    earliest: int
    latest: int
    flags: int = 0
    labels: tuple[str, ...] = ()


class Group(NamedTuple):
    """The things of one label."""

    label: str
    counts: Count


class Decade(NamedTuple):
    """The things of one decade, by its first year; of several where nothing lies between.

    Attributes:
        first, last: the first years of the first and of the last decade, the same for one.
    """

    first: int
    last: int
    counts: Count

    @property
    def label(self) -> str:
        """ "1930s", "1750s to 1820s", "9 BC to 1 BC"."""
        if self.first == self.last:
            return decade_name(self.first)
        if self.first > 0:
            return f"{self.first}s to {self.last}s"
        return f"{_year(self.first)} to {_year(self.last + 9)}"


class Tally(NamedTuple):
    """Groups of things, and all of them once.

    Attributes:
        groups: the largest first, equal ones by label; what has no label comes last.
        shared: how many things stand in several groups.
    """

    groups: tuple[Group, ...]
    total: Count
    shared: int


class Decades(NamedTuple):
    """Things by decade, and all of them once.

    Attributes:
        decades: those in which something may lie, in the order of time.
        undated: things whose date names no decade, however they are answers.
        several: how many dated things may lie in several decades, or in one by a qualified date.
    """

    decades: tuple[Decade, ...]
    undated: Count
    total: Count
    several: int


def tally(things: Iterable[Thing]) -> Tally:
    """The things by their labels.

    Raises:
        ValueError: one of them is neither certain, possible nor unidentified.
    """
    counts: dict[str, Count] = defaultdict(Count)
    total, shared = Count(), 0
    for thing in things:
        labels = _labels(thing)
        for label in labels:
            counts[label] = counts[label].and_one(thing.sureness)
        total = total.and_one(thing.sureness)
        shared += len(labels) > 1
    ordered = sorted(counts.items(), key=_largest_first)
    return Tally(tuple(Group(*one) for one in ordered), total, shared)


def _largest_first(group: tuple[str, Count]) -> tuple[bool, int, int, str]:
    label, count = group
    return label == NOT_RECORDED, -count.total, -count.certain, label


def by_decade(things: Iterable[Thing]) -> Decades:
    """The things by the decades in which they may lie. A vague date is never sharpened.

    Raises:
        ValueError: one of them is neither certain, possible nor unidentified.
    """
    counts: dict[int, Count] = defaultdict(Count)
    undated, total, several = Count(), Count(), 0
    for thing in things:
        total = total.and_one(thing.sureness)
        span = decades_of(thing.earliest, thing.latest)
        if not span:
            undated = undated.and_one(thing.sureness)
            continue
        sureness = thing.sureness
        if len(span) > 1 or thing.flags:
            several += 1
            sureness = "possible" if sureness == "certain" else sureness
        for first in span:
            counts[first] = counts[first].and_one(sureness)
    decades = tuple(Decade(first, first, counts[first]) for first in sorted(counts))
    return Decades(decades, undated, total, several)


@lru_cache(maxsize=4096)
def decades_of(earliest: int, latest: int) -> range:
    """The first years of the decades that a date may lie in; none where it names none."""
    if not (is_known(earliest) and is_known(latest)):
        return range(0)
    first, last = (civil(day)[0] // 10 * 10 for day in (earliest, latest))
    span = range(first, last + 1, 10)
    return span if len(span) <= WIDEST else range(0)


def with_gaps(decades: Sequence[Decade]) -> tuple[Decade, ...]:
    """The decades with the empty ones between them, which stand together as one."""
    found: list[Decade] = []
    for decade in decades:
        if found and found[-1].last + 10 < decade.first:
            found.append(Decade(found[-1].last + 10, decade.first - 10, Count()))
        found.append(decade)
    return tuple(found)


def decade_name(first: int) -> str:
    """ "1930s"; before the year 10, where nobody says so, the years: "1 BC to 9"."""
    return f"{first}s" if first > 0 else f"{_year(first)} to {_year(first + 9)}"


def _year(year: int) -> str:
    return str(year) if year > 0 else f"{1 - year} BC"


class LabelledDecades(NamedTuple):
    """The things of one label by decade."""

    label: str
    decades: Decades


def by_label_and_decade(things: Iterable[Thing]) -> tuple[LabelledDecades, ...]:
    """The things of each label by decade, in the order of `tally`.

    Raises:
        ValueError: one of them is neither certain, possible nor unidentified.
    """
    listed = tuple(things)
    labelled: dict[str, list[Thing]] = defaultdict(list)
    for thing in listed:
        for label in _labels(thing):
            labelled[label].append(thing)
    order = (group.label for group in tally(listed).groups)
    return tuple(LabelledDecades(label, by_decade(labelled[label])) for label in order)


def _labels(thing: Thing) -> tuple[str, ...]:
    return tuple(dict.fromkeys(thing.labels)) or (NOT_RECORDED,)
