"""Finding anything by the words that are written of it: numbers, marks, names, notes, papers.

Every word typed must begin a word of the same record, in any order; case, accents and joining
signs are left aside. What is called exactly so comes first, then names before other words. The
number of an object before the rest looks at that object first. Where little begins so, a part of
a word of a name counts; where nothing is found, words like those typed that find something are
offered.
"""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field

from sqlalchemy import Connection, Table, bindparam, select

from conservedb.questions import find_near
from conservedb.questions.asking import Question
from conservedb.questions.find_answers import FoundAnswer, FoundGroup
from conservedb.questions.find_hits import (
    Candidate,
    Typed,
    candidate,
    fits,
    hit,
    is_exact,
    ranked,
)
from conservedb.questions.find_records import SHOWN
from conservedb.records.layers import layer
from conservedb.records.materials import material, material_alias, material_class
from conservedb.records.objects import component, object_
from conservedb.records.people import person
from conservedb.records.places import place
from conservedb.records.treatments import intervention, treatment
from conservedb.store import search
from conservedb.store.keys import fold

MOST = 8
"""Records of a kind that are shown, unless more are asked for."""
_CONSIDERED = 60
"""Of so many records of a kind, the newest, those that fit best are shown."""
_ON_OBJECT = 500
_COUNTED = 10_000
_FEW = 3
_BEYOND = "\U0010ffff"


def _called(table: Table, column: str, key: str = "id") -> Question:
    found = select(table.c[key].label("record")).where(table.c[column] == bindparam("name"))
    return Question(found.order_by(table.c[key].desc()).limit(_CONSIDERED))


def _of_object(table: Table, column: str) -> Question:
    """What of the object with a number is called by something that begins so."""
    numbered = select(object_.c.id).where(object_.c.number_folded == bindparam("number"))
    found = select(table.c.id.label("record")).where(
        table.c.object_id.in_(numbered),
        table.c[column] >= bindparam("first"),
        table.c[column] < bindparam("last"),
    )
    return Question(found.order_by(table.c[column]).limit(_CONSIDERED))


_EXACT = (
    ("object", _called(object_, "number_folded")),
    ("component", _called(component, "mark_folded")),
    ("place", _called(place, "mark_folded")),
    ("material", _called(material, "key")),
    ("material", _called(material, "name_folded")),
    ("material", _called(material_alias, "alias_folded", "material_id")),
    ("material_class", _called(material_class, "key")),
    ("person", _called(person, "name_folded")),
)
_MARKED = (
    ("place", _of_object(place, "mark_folded")),
    ("component", _of_object(component, "mark_folded")),
)
_CITED = tuple((table.name, _of_object(table, "ref")) for table in (treatment, intervention, layer))
_NUMBERED = Question(select(object_.c.number).where(object_.c.number_folded == bindparam("number")))
STATEMENTS = (
    *(question for shown in SHOWN.values() for question in (shown.rows, shown.owned)),
    *(question for _, question in (*_EXACT, *_MARKED, *_CITED)),
    _NUMBERED,
    *find_near.STATEMENTS,
)


@dataclass(slots=True)
class _Of:
    """What was found of one table, by key.

    `first` is called so and comes first, in its order, then what is `on` the object whose number
    was typed; `inside` has the words somewhere in a name, perhaps. There are `total` of
    `records`, or more.
    """

    first: list[int] = field(default_factory=list)
    on: list[int] = field(default_factory=list)
    records: list[int] = field(default_factory=list)
    inside: list[int] = field(default_factory=list)
    total: int = 0
    more: bool = False


Gathered = defaultdict[str, _Of]


def find(connection: Connection, text: str, most: int = MOST) -> FoundAnswer:
    """Records whose words begin with those typed; nothing for blank text.

    Args:
        most: how many records of a kind are given; all are counted.
    """
    whole = text.encode("utf-8", "replace").decode().strip()  # halves of surrogate pairs
    words = search.words_of(whole)
    typed = Typed(whole, words[: search.MOST_WORDS])
    found: Gathered = defaultdict(_Of)
    if whole:
        _exactly(connection, whole, found)
    if not words:
        groups = _groups(connection, typed, found, most)
        nothing = "there is no letter and no digit in it to look for"
        return FoundAnswer(groups, (), nothing if whole and not groups else "")
    _on_object(connection, typed, found)
    _beginning(connection, typed.words, _CONSIDERED, found)
    if _few(found):
        for table, records in find_near.inside(connection, typed.words).items():
            found[table].inside += records
    groups = _groups(connection, typed, found, most)
    remark = ""
    if len(words) > search.MOST_WORDS:
        remark = f"only the first {search.MOST_WORDS} words were looked for"
    if groups:
        return FoundAnswer(groups, (), remark)
    return FoundAnswer((), *find_near.instead(connection, typed.words, remark))


def _few(found: Gathered) -> bool:
    """Whether little begins so, and nothing is called exactly so."""
    some = sum(of.total + len(of.on) for of in found.values())
    return some < _FEW and not any(of.first for of in found.values())


def _exactly(connection: Connection, whole: str, found: Gathered) -> None:
    """What is called so, also where it is called by signs only."""
    folded = fold(whole)
    for table, question in _EXACT:
        found[table].first += (row.record for row in question.all(connection, name=folded))


def _on_object(connection: Connection, typed: Typed, found: Gathered) -> None:
    """Where the number of an object is typed first: what of it the rest stands for."""
    split = typed.whole.split()
    for at in range(min(len(split), search.MOST_WORDS) - 1, 0, -1):
        number, rest = fold(" ".join(split[:at])), " ".join(split[at:])
        row = _NUMBERED.first(connection, number=number)
        if row is None:
            continue
        for questions, begin in ((_MARKED, fold(rest)), (_CITED, rest)):
            reach = {"first": begin, "last": begin + _BEYOND}
            for table, question in questions:
                rows = question.all(connection, number=number, **reach)
                found[table].first += (row.record for row in rows)
        words = search.words_of(rest)
        if words:
            _within_object(connection, row.number, words, found)
        return


def _within_object(
    connection: Connection, number: str, words: Sequence[str], found: Gathered
) -> None:
    """Records of one object in which the words stand."""
    anywhere: Gathered = defaultdict(_Of)
    _beginning(connection, words, _ON_OBJECT, anywhere)
    for table, of in anywhere.items():
        rows = SHOWN[table].owned.all(connection, wanted=json.dumps(of.records), number=number)
        found[table].on += (row.id for row in rows)
        found[table].more |= of.more


def _beginning(
    connection: Connection, words: Sequence[str], considered: int, found: Gathered
) -> None:
    """Records in which every word begins some word, the newest of each table.

    The entries of a table lie together: where there are many of one, those left are leapt over.
    """
    below = None
    while True:
        numbers = search.matching(connection, words, below=below, most=considered)
        by_table: dict[str, list[int]] = {}
        for table, record in map(search.entry, numbers):
            by_table.setdefault(table, []).append(record)
        cut = "" if len(numbers) < considered else next(reversed(by_table))
        for table, records in by_table.items():
            if table != cut:
                found[table].records += records
                found[table].total += len(records)
        if not cut:
            return
        _many(connection, words, cut, considered, found[cut])
        below = search.first(cut)


def _many(
    connection: Connection, words: Sequence[str], table: str, considered: int, of: _Of
) -> None:
    """Of a table with more than can be looked at: those called so before the others; a count."""
    above = search.above(table)
    for names in (True, False):
        numbers = search.matching(connection, words, names=names, below=above, most=considered)
        entries = map(search.entry, numbers)
        of.records += (entry.record for entry in entries if entry.table == table)
        if len(of.records) >= considered:
            break
    of.total = search.count(connection, words, table, _COUNTED)
    of.more = of.total == _COUNTED


def _groups(
    connection: Connection, typed: Typed, found: Gathered, most: int
) -> tuple[FoundGroup, ...]:
    """What was found by kind; kinds of which something is called exactly so first."""
    groups: dict[str, FoundGroup] = {}
    called: set[str] = set()
    for table in SHOWN:
        of = found[table]
        listed, total = _listed(connection, table, of, typed)
        if not listed:
            continue
        kind = listed[0].kind
        before = groups.get(kind, FoundGroup(kind, (), 0))
        hits = tuple(hit(one, typed) for one in listed[:most])
        if kind not in called and (of.first or is_exact(listed[0], typed)):
            called.add(kind)
            hits = (*hits, *before.hits)
        else:
            hits = (*before.hits, *hits)
        groups[kind] = FoundGroup(kind, hits[:most], before.total + total, before.more or of.more)
    return tuple(sorted(groups.values(), key=lambda group: group.kind not in called))


def _listed(
    connection: Connection, table: str, of: _Of, typed: Typed
) -> tuple[list[Candidate], int]:
    """The records of a table in their order, and how many there are in all."""
    ahead = [*of.first, *of.on]
    first = {record: at for at, record in reversed(list(enumerate(ahead)))}
    wanted = {**first, **dict.fromkeys(of.records), **dict.fromkeys(of.inside)}
    if not wanted:
        return [], 0
    shown = SHOWN[table]
    rows = shown.rows.all(connection, wanted=json.dumps(list(wanted)))
    known = {*ahead, *of.records}
    made = (candidate(shown, row, inside=row.id not in known) for row in rows)
    kept = [one for one in made if fits(one, typed)]
    listed = ranked(kept, typed)
    listed.sort(key=lambda one: first.get(one.row.id, len(first)))
    if of.total > len(set(of.records)):  # what is called exactly so was counted with the others
        return listed, of.total
    return listed, of.total + sum(one.row.id not in of.records for one in kept)
