"""Finding anything by the words that are written of it: numbers, marks, names, notes, papers.

Every word typed must begin a word of the same record, in any order; case, accents and joining
signs are left aside. What is called exactly so comes first, then names before other words. The
number of an object before or after the rest looks at that object first. A date finds what was done
then (`find_dated`), a kind of place with a number its mark (`find_numbered`). Where little begins
so, a part of a word of a name counts. Where no record has all the words, those of one object that
have them together are looked for: by the title of an object and the rest (`_on_called`), and by a
material, a role or a person where they meet (`find_together`). Where nothing is found at all,
words like those typed that find something are offered.
"""

from __future__ import annotations

import json
import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace

from sqlalchemy import Connection, Table, bindparam, func, select

from conservedb.questions import (
    find_dated,
    find_near,
    find_numbered,
    find_refs,
    find_together,
    find_used,
)
from conservedb.questions.answers import Hit
from conservedb.questions.asking import Question, blank
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
from conservedb.questions.find_meeting import MOST_OBJECTS
from conservedb.questions.find_records import SHOWN
from conservedb.questions.find_words import spans
from conservedb.records.behaviour import material_value
from conservedb.records.materials import material, material_alias, material_class
from conservedb.records.objects import component, object_
from conservedb.records.people import person
from conservedb.records.places import place
from conservedb.store import search
from conservedb.store.keys import fold
from conservedb.store.opening import today

MOST = 8
"""Records of a kind that are shown, unless more are asked for."""
_CONSIDERED = 60
"""Of so many records of a kind, the newest, those that fit best are shown."""
_ON_OBJECT = 500
_COUNTED = 10_000
_FEW = 3
_TOGETHER = "these have all the words only together with their object, material or people"
_PLACED = {"object", "component", "place"}


def _called(table: Table, column: str, key: str = "id") -> Question:
    found = select(table.c[key].label("record")).where(table.c[column] == bindparam("name"))
    return Question(found.order_by(table.c[key].desc()).limit(_CONSIDERED))


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
_REGISTERED = Question(
    select(material_value.c.material_id.label("record")).where(
        material_value.c.property == "CAS number", material_value.c.words == bindparam("name")
    )
)
_LIKE_CAS = re.compile(r"[0-9]{2,7}-[0-9]{2}-[0-9]").fullmatch
_NUMBERED = Question(select(object_.c.number).where(object_.c.number_folded == bindparam("number")))
_CALLED = Question(
    select(object_.c.number, blank(object_.c.title).label("title")).where(
        object_.c.id.in_(
            select(
                func.json_each(bindparam("wanted")).table_valued("value").alias("wanted").c.value
            )
        )
    )
)
STATEMENTS = (
    *(question for shown in SHOWN.values() for question in (shown.rows, shown.owned)),
    *(question for _, question in _EXACT),
    _REGISTERED,
    _NUMBERED,
    _CALLED,
    *find_dated.STATEMENTS,
    *find_near.STATEMENTS,
    *find_numbered.STATEMENTS,
    *find_refs.STATEMENTS,
    *find_together.STATEMENTS,
    *find_used.STATEMENTS,
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
    sought = words[: search.MOST_WORDS]
    typed = Typed(whole, sought)
    if find_dated.is_about(whole):  # "c." would begin any word
        sought, typed = (whole,), Typed(whole, sought[1:] or sought)
    found: Gathered = defaultdict(_Of)
    if whole:
        _exactly(connection, whole, found)
    if not words:
        groups = _groups(connection, typed, found, most)
        nothing = "there is no letter and no digit in it to look for"
        return FoundAnswer(groups, (), nothing if whole and not groups else "")
    _on_object(connection, typed, found)
    _beginning(connection, sought, _CONSIDERED, found)
    _unwritten(connection, typed, found)
    _dated(connection, typed.whole, found)
    if _few(found):
        for table, records in find_near.inside(connection, sought).items():
            found[table].inside += records
    groups = _groups(connection, typed, found, most)
    remark = ""
    if len(words) > search.MOST_WORDS:
        remark = f"only the first {search.MOST_WORDS} words were looked for"
    together = () if _placed(found, groups) else _together(connection, typed, most, bool(groups))
    if together:
        several = sum(group.total for group in together) > 1 and not groups
        return FoundAnswer((*together, *groups), (), remark or _TOGETHER * several)
    if groups:
        return FoundAnswer(groups, (), remark)

    def finds(others: Sequence[str]) -> bool:
        return bool(_together(connection, Typed(" ".join(others), tuple(others)), 1, False))

    return FoundAnswer((), *find_near.instead(connection, typed.words, remark, finds))


def _few(found: Gathered) -> bool:
    """Whether little begins so, and nothing is called exactly so."""
    some = sum(of.total + len(of.on) for of in found.values())
    return some < _FEW and not any(of.first for of in found.values())


def _placed(found: Gathered, groups: Sequence[FoundGroup]) -> bool:
    """Whether the words lead to where something lies, or are what something is called."""
    called = any(of.first for of in found.values())
    return called or any(group.kind in _PLACED for group in groups)


def _exactly(connection: Connection, whole: str, found: Gathered) -> None:
    """What is called so, also where it is called by signs only."""
    folded = fold(whole)
    for table, question in _EXACT:
        found[table].first += (row.record for row in question.all(connection, name=folded))
    found["place"].first += find_numbered.numbered(connection, whole)
    if _LIKE_CAS(folded):
        rows = _REGISTERED.all(connection, name=folded)
        found["material"].first += (row.record for row in rows)


def _on_object(connection: Connection, typed: Typed, found: Gathered) -> None:
    """Where the number of an object is typed first or last: what of it the rest stands for."""
    for number, rest in _halves(typed.whole):
        row = _NUMBERED.first(connection, number=fold(number))
        if row is not None:
            _of_objects(connection, (row.number,), rest, found)
            return


def _halves(whole: str) -> Iterator[tuple[str, str]]:
    """The first words and the rest, the most first; then the last words and what is before."""
    split = whole.split()[: search.MOST_WORDS]
    parted = [(" ".join(split[:at]), " ".join(split[at:])) for at in range(len(split) - 1, 0, -1)]
    yield from parted
    yield from ((rest, first) for first, rest in reversed(parted))


def _of_objects(connection: Connection, numbers: Sequence[str], rest: str, found: Gathered) -> None:
    """What of these objects is called by the rest, then their records in which its words stand."""
    for table, record in find_refs.of_objects(connection, numbers, rest):
        found[table].first.append(record)
        found[table].more |= len(found[table].first) >= find_refs.CONSIDERED
    if numbers:
        found["place"].first += find_numbered.numbered(connection, rest, numbers)
    for number in numbers:
        _dated(connection, rest, found, number)
    words = search.words_of(rest)
    anywhere: Gathered = defaultdict(_Of)
    if words:
        _beginning(connection, words, _ON_OBJECT, anywhere)
    for table, of in anywhere.items():
        wanted = json.dumps(of.records)
        for number in numbers:
            rows = SHOWN[table].owned.all(connection, wanted=wanted, number=number)
            found[table].on += (row.id for row in rows)
        found[table].more |= of.more


def _unwritten(connection: Connection, typed: Typed, found: Gathered) -> None:
    """Records without words whose ref begins so, beside those with words."""
    for table, records, total, more in find_refs.unwritten_rows(connection, typed.whole):
        of = found[table]
        of.records += records
        of.total += total
        of.more |= more


def _dated(connection: Connection, typed: str, found: Gathered, number: str = "") -> None:
    """What was done within the date that was typed, or perhaps."""
    for table, records, more in find_dated.dated(connection, typed, number):
        found[table].on += records
        found[table].more |= more


def _together(
    connection: Connection, typed: Typed, most: int, found: bool
) -> tuple[FoundGroup, ...]:
    """What of one object has the words together: where materials lie, before the rest.

    Where some record was `found`, the rest is looked for only where it is a place by its number.
    """
    if len(typed.words) < 2:
        return ()
    day = today(connection).toordinal()
    lying = find_together.lying(connection, typed.words, day, most)
    numbered = any(find_numbered.is_numbered(rest) for _, rest in _halves(typed.whole))
    called = () if found and not numbered else _on_called(connection, typed, most)
    groups = {group.kind: group for group in lying}
    for group in called:
        before = groups.get(group.kind, FoundGroup(group.kind, (), 0))
        told = {(hit.object, hit.mark) for hit in before.hits}
        new = [hit for hit in group.hits if (hit.object, hit.mark) not in told]
        total = before.total + group.total - (len(group.hits) - len(new))
        hits = (*before.hits, *new)
        groups[group.kind] = FoundGroup(group.kind, hits, total, before.more or group.more)
    return tuple(replace(group, hits=group.hits[:most]) for group in groups.values())


def _on_called(connection: Connection, typed: Typed, most: int) -> tuple[FoundGroup, ...]:
    """What is on an object whose number and title have the first words, or the last."""
    for name, rest in _halves(typed.whole):
        words = search.words_of(name)
        if not words or not search.words_of(rest):
            continue
        objects = search.within(connection, words, "object", most=MOST_OBJECTS)
        rows = _CALLED.all(connection, wanted=json.dumps(objects))
        titles = {row.number: row.title for row in rows}
        found: Gathered = defaultdict(_Of)
        _of_objects(connection, tuple(titles), rest, found)
        groups = _groups(connection, typed, found, most)
        if groups:
            return tuple(
                replace(group, hits=tuple(_owned(hit, titles, typed) for hit in group.hits))
                for group in groups
            )
    return ()


def _owned(hit: Hit, titles: dict[str, str], typed: Typed) -> Hit:
    """A hit with a sentence that says whose it is, in the words that were looked for."""
    title = titles.get(hit.object, "")
    whose = f"{hit.object}, {title}" if title else hit.object
    said = f"{hit.mark} of {whose}" if hit.mark else whose
    if hit.sentence not in ("", hit.label, hit.mark):
        said = f"{said}: {hit.sentence}"
    return replace(hit, sentence=said, spans=spans(said, typed.words))


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
        hits = tuple(_hit(connection, table, one, typed) for one in listed[:most])
        if kind not in called and (of.first or is_exact(listed[0], typed)):
            called.add(kind)
            hits = (*hits, *before.hits)
        else:
            hits = (*before.hits, *hits)
        groups[kind] = FoundGroup(kind, hits[:most], before.total + total, before.more or of.more)
    return tuple(sorted(groups.values(), key=lambda group: group.kind not in called))


def _hit(connection: Connection, table: str, one: Candidate, typed: Typed) -> Hit:
    """A record as it is shown; a material with how much there is of it."""
    shown = hit(one, typed)
    if table not in find_used.KINDS:
        return shown
    return replace(shown, used=find_used.used(connection, table, one.row.id))


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
