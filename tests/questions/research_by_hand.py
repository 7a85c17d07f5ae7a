"""A researcher's question answered by hand: row by row in Python, without a statement of SQL.

All that is read is what `conservedb export` wrote (`exported`). All that the program makes of it,
from "what is not recorded is not no" to the best of several occurrences, is done anew here; only
what the rules of the trade find and how a material reads as to reversibility is asked of the
program, where other tests hold it right.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cache
from typing import Any

from conservedb.dates import OPEN_END, OPEN_START, read, read_span
from conservedb.knowledge.behaviour import Lying
from conservedb.knowledge.research import And, Condition, Has, Not, Or, Research, Tree
from conservedb.knowledge.verdicts import verdict
from conservedb.questions.checks_reference import begins_with
from conservedb.store.keys import fold
from tests.conftest import TODAY
from tests.questions.exported import Row, Tables

NO, MAYBE, YES = 0, 1, 2
STATES = {"there": {2, 4}, "in place": {2}, "partly removed": {4}, "gone": {8}, "not yet": {1}}


@dataclass
class Occurrence:
    """A layer, a use of an agent, or work of which neither is on record.

    `places` has several where an agent was used, or work done, at several.
    """

    what: str
    row: Row
    deed: Row
    places: list[int]
    several: bool = False
    alone: bool = False

    @property
    def date(self) -> tuple[int, int, int]:
        if self.what == "layer":
            return self.row["came_from"], self.row["came_to"], self.row["came_flags"]
        return self.deed["date_earliest"], self.deed["date_latest"], self.deed["date_flags"]

    @property
    def natural(self) -> bool:
        return self.what == "layer" and not self.deed and self.row["origin"] in ("maker", "arisen")

    @property
    def nameless(self) -> bool:
        if self.what == "work":
            return False
        return self.row["material_id"] is None and self.row["material_class_id"] is None


def occurrences(tables: Tables) -> Iterator[Occurrence]:
    for row in tables.rows["layer"]:
        deed = tables.get("intervention", row["intervention_id"])
        if row["place_id"] is not None:
            yield Occurrence("layer", row, deed, [row["place_id"]])
        else:
            candidates = [r["place_id"] for r in tables.of("layer_candidate", layer_id=row["id"])]
            yield Occurrence("layer", row, deed, candidates, several=bool(candidates))
    for row in tables.rows["agent"]:
        deed = tables.get("intervention", row["intervention_id"])
        places = [r["place_id"] for r in tables.of("agent_place", agent_id=row["id"])]
        if not places:
            wanted = row["intervention_id"]
            places = [
                r["place_id"] for r in tables.of("intervention_place", intervention_id=wanted)
            ]
        yield Occurrence("agent", row, deed, places)
    for deed in tables.rows["intervention"]:
        own = {"intervention_id": deed["id"]}
        if not tables.of("layer", **own) and not tables.of("agent", **own):
            done = [r["place_id"] for r in tables.of("intervention_place", **own)]
            yield Occurrence("work", deed, deed, done)


OF_MATTER = ("material", "reversibility", "role", "identified", "state", "as")
OF_ROWS = {
    "places": ("object", "object kind", "part material", "rule"),
    "interventions": ("object", "object kind"),
    "objects": ("object", "object kind", "rule"),
}


def mentions(tree: Tree, kind: type) -> list[Any]:
    """All of a kind that stand in a tree."""
    if isinstance(tree, kind):
        return [tree]
    if isinstance(tree, Condition):
        return []
    parts = (tree.part,) if isinstance(tree, Not) else tree.parts
    return [found for part in parts for found in mentions(part, kind)]


def by_itself(tree: Tree, rows: str) -> bool:
    asked = mentions(tree, Condition)
    own = all(one.field in OF_ROWS[rows] for one in asked)
    return bool(asked) and own and not mentions(tree, Has)


def bare(tree: Tree, rows: str) -> Tree:
    """A row has what it is itself."""
    if isinstance(tree, Has) and by_itself(And(tree.parts), rows):
        return And(tree.parts)
    return tree


def split(tree: And | Or, rows: str) -> tuple[list[Tree], list[Tree]]:
    """What is asked of the row part by part, and what of one and the same occurrence."""
    apart = [one for one in tree.parts if by_itself(one, rows) or mentions(one, Has)]
    rest = tuple(one for one in tree.parts if one not in apart)
    return apart, [type(tree)(rest)] if rest else []


def asked_for(tree: Tree, rows: str, wanted: bool = True) -> Iterator[tuple[Tree, bool]]:
    """What rows are asked to have, or not to have."""
    tree = bare(tree, rows)
    if by_itself(tree, rows):
        return
    if isinstance(tree, Not) and mentions(tree, Has):
        yield from asked_for(tree.part, rows, not wanted)
    elif isinstance(tree, And | Or):
        apart, together = split(tree, rows)
        for part in apart:
            yield from asked_for(part, rows, wanted)
        yield from ((one, wanted) for one in together)
    else:
        yield tree, wanted


@dataclass(eq=False)
class ByHand:
    """Answers questions on some tables, on a day."""

    tables: Tables
    today: int
    broken: dict[str, Callable[[Occurrence, int | None], int]] = field(default_factory=dict)
    broken_rows: dict[str, Callable[[int, int | None], int]] = field(default_factory=dict)

    def answer(self, research: Research) -> dict[Any, tuple[int, int]]:
        """Each row by its key, with its score (3 certain, 2 possible, 1 unidentified).

        And how many occurrences it has of what it is asked to have.
        """
        if research.rows == "layers":
            return {
                (one.what, one.row["id"]): (score, 1)
                for one in occurrences(self.tables)
                if one.what != "work" and (score := self.score(one, research.where))
            }
        answers: dict[Any, tuple[int, int]] = {}
        table = research.rows.removesuffix("s")
        mine: dict[Any, list[Occurrence]] = defaultdict(list)
        for one in occurrences(self.tables):
            for key in self._keys(one, research.rows):
                several = one.several or not one.places
                here = Occurrence(one.what, one.row, one.deed, [key], several, alone=True)
                mine[key].append(here if research.rows == "places" else one)
        for row in self.tables.rows[table]:
            there = mine[row["id"]]
            high, low = (self.of_row(research, row, there, most) for most in (YES, NO))
            score = (0, 2, 3)[high] if high == low else 1
            if score:
                answers[row["id"]] = score, self.shown(research, there)
        return answers

    def _keys(self, one: Occurrence, rows: str) -> list[Any]:
        if rows == "places":
            anywhere = self.tables.of("place", object_id=one.row["object_id"])
            return one.places or [row["id"] for row in anywhere]
        return [one.row["object_id"]] if rows == "objects" else [one.deed.get("id")]

    def of_row(self, research: Research, row: Row, mine: list[Occurrence], most: int) -> int:
        """How far a row answers if what nobody identified is as it must be to hold most, or least.

        What one condition takes it for says nothing of another.
        """

        def best(tree: Tree, most: int) -> int:
            score = max((self.score_here(one, tree) for one in mine), default=0)
            return {0: NO, 1: most, 2: MAYBE, 3: YES}[score]

        def judge(tree: Tree, most: int) -> int:
            tree = bare(tree, research.rows)
            if by_itself(tree, research.rows):
                return self.itself(research.rows, row, tree)
            if isinstance(tree, Not) and mentions(tree, Has):
                return YES - judge(tree.part, YES - most)
            if isinstance(tree, And | Or):
                apart, together = split(tree, research.rows)
                values = [judge(one, most) for one in apart] + [best(one, most) for one in together]
                return max(values) if isinstance(tree, Or) else min(values, default=YES)
            return best(tree, most)

        return judge(research.where, most)

    def itself(self, rows: str, row: Row, tree: Tree) -> int:
        """How far a row answers by what it is itself."""
        if isinstance(tree, Not):
            return YES - self.itself(rows, row, tree.part)
        if isinstance(tree, Condition):
            owner = row["id"] if rows == "objects" else row["object_id"]
            places = [row["id"]] if rows == "places" else []
            if tree.field == "rule":
                value = self.broken_rows[tree.value](owner, places[0] if places else None)
                return value if value == YES or not tree.certainly else NO
            value = self.condition(Occurrence("work", {"object_id": owner}, {}, places), tree, None)
            return value if value == YES or not tree.certainly else NO
        values = [self.itself(rows, row, part) for part in tree.parts]
        return max(values) if isinstance(tree, Or) else min(values)

    def shown(self, research: Research, mine: list[Occurrence]) -> int:
        """How many occurrences there are of what a row is asked to have."""
        asked = list(asked_for(research.where, research.rows))
        wanted = [tree for tree, wanted in asked if wanted] if asked else [research.where]
        scores = [max((self.score_here(one, tree) for tree in wanted), default=0) for one in mine]
        return scores.count(max(scores, default=0)) if any(scores) else 0

    def score_here(self, one: Occurrence, tree: Tree) -> int:
        score = self.score(one, tree)
        return min(score, 2) if one.several and one.alone else score

    def score(self, one: Occurrence, tree: Tree) -> int:
        if not one.nameless:
            return (0, 2, 3)[self.holds(one, tree, None)]
        best, worst = self.holds(one, tree, YES), self.holds(one, tree, NO)
        return (0, 2, 3)[best] if best == worst else 1

    def holds(self, one: Occurrence, tree: Tree, matter: int | None) -> int:
        if isinstance(tree, And | Has):
            return min((self.holds(one, part, matter) for part in tree.parts), default=YES)
        if isinstance(tree, Or):
            return max(self.holds(one, part, matter) for part in tree.parts)
        if isinstance(tree, Not):
            return YES - self.holds(one, tree.part, None if matter is None else YES - matter)
        value = self.condition(one, tree, matter)
        return value if value == YES or not tree.certainly else NO

    def condition(self, one: Occurrence, asked: Condition, matter: int | None) -> int:
        if one.what == "work" and asked.field in OF_MATTER:
            return NO
        if asked.field in ("material", "reversibility"):
            return self.on_matter(one, asked, matter)
        name = asked.field.replace(" ", "_")
        if name in ("kind", "aim", "technique", "person") and one.natural:
            return NO
        judge: Callable[[Occurrence, Condition], int] = getattr(self, f"has_{name}")
        return judge(one, asked)

    # -- matter -------------------------------------------------------------------------

    @cache  # noqa: B019 (lives as long as a test)
    def meant(self, word: str) -> tuple[set[int], set[int], set[int]]:
        """Ids of the materials meant, of the classes with those below, of the classes above."""
        tables = self.tables
        for row in tables.rows["material_class"]:
            if row["key"] in (word.strip(), fold(word)):
                below = {c for c in tables.parent if row["id"] in tables.path(c)}
                materials = {m["id"] for m in tables.rows["material"] if m["class_id"] in below}
                return materials, below, set(tables.path(row["parent_id"]))
        for row in tables.rows["material"]:
            if row["key"] in (word.strip(), fold(word)):
                return {row["id"]}, set(), set(tables.path(row["class_id"]))
        return set(), set(), set()  # words as found, at the most

    @cache  # noqa: B019 (lives as long as a test)
    def reversible(self, word: str) -> tuple[set[int], set[int], set[int]]:
        reads = {row["id"]: self.reads_as(row["key"], "") for row in self.tables.rows["material"]}
        materials = {one for one, found in reads.items() if found == word}
        classes = {
            row["id"]
            for row in self.tables.rows["material_class"]
            if self.reads_as(None, row["key"]) == word
        }
        some = {
            klass
            for one in materials
            for klass in self.tables.path(self.tables.get("material", one)["class_id"])
        }
        return materials, classes, some

    def reads_as(self, material: str | None, klass: str) -> str:
        """How a layer of nothing else reads as to reversibility, in a word."""
        matter = self.tables.materials.named(material, klass)
        assert matter is not None
        return verdict(Lying("", "", "", (matter,))).word

    def on_matter(self, one: Occurrence, asked: Condition, matter: int | None) -> int:
        lonely = asked.field == "reversibility"
        if lonely and one.what == "agent":
            return NO
        if matter is not None and lonely and asked.value == "unknown":
            return YES
        materials, classes, loosely = (
            self.reversible(asked.value) if lonely else self.meant(asked.value)
        )
        said = one.what == "layer" and any(
            row["material_id"] in materials
            for row in self.tables.of("statement", layer_id=one.row["id"], field="material")
        )
        called = not lonely and _was_called(one.row["called"] or "", asked.value)
        if matter is not None:
            return MAYBE if said or called else matter
        if one.row["material_id"] in materials or one.row["material_class_id"] in classes:
            unsure = one.what == "layer" and one.row["identified"] in ("inferred", "unknown")
            return MAYBE if unsure else YES
        return MAYBE if said or one.row["material_class_id"] in loosely else NO

    # -- words of the record --------------------------------------------------------------

    def has_as(self, one: Occurrence, asked: Condition) -> int:
        return YES if one.what == asked.value else NO

    def has_role(self, one: Occurrence, asked: Condition) -> int:
        return self._same(one, "role", asked.value)

    def has_identified(self, one: Occurrence, asked: Condition) -> int:
        return self._same(one, "identified", asked.value)

    def _same(self, one: Occurrence, name: str, value: str) -> int:
        if one.what == "agent":
            return NO
        recorded = one.row[name]
        if recorded is None:
            return MAYBE
        return YES if recorded.lower() == value.strip().lower() else NO

    def has_kind(self, one: Occurrence, asked: Condition) -> int:
        kind = one.deed.get("kind")
        return MAYBE if kind is None else YES if kind == asked.value else NO

    def has_technique(self, one: Occurrence, asked: Condition) -> int:
        text = one.deed.get("technique")
        if text is None:
            return MAYBE
        return YES if _has_words(text, asked.value) else NO

    def has_aim(self, one: Occurrence, asked: Condition) -> int:
        aims = self.tables.of("intervention_aim", intervention_id=one.deed.get("id"))
        if not aims:
            return MAYBE
        return YES if asked.value in [row["aim"] for row in aims] else NO

    def has_person(self, one: Occurrence, asked: Condition) -> int:
        deed = one.deed.get("id")
        asked_for = {
            row["id"]
            for row in self.tables.rows["person"]
            if fold(row["name"]) == fold(asked.value)
        } | {
            row["person_id"]
            for row in self.tables.rows["person_alias"]
            if fold(row["alias"]) == fold(asked.value)
        }
        asked_for = asked_for or self.with_the_words(asked.value)
        people = {
            row["person_id"] for row in self.tables.of("intervention_person", intervention_id=deed)
        }
        if people & asked_for:
            return YES
        said = deed is not None and any(
            row["person_id"] in asked_for
            for told in self.tables.of("statement", intervention_id=deed, field="people")
            for row in self.tables.of("statement_person", statement_id=told["id"])
        )
        lives = [row for row in self.tables.rows["person"] if row["id"] in asked_for]
        working = any(self.may_have_worked(row, one) for row in lives)
        return MAYBE if said or (not people and working) else NO

    def with_the_words(self, value: str) -> set[int]:
        """People one of whose names has the words, each as a whole."""
        names = [(row["id"], row["name"]) for row in self.tables.rows["person"]]
        names += [(row["person_id"], row["alias"]) for row in self.tables.rows["person_alias"]]
        return {one for one, name in names if _words(value) <= _words(name)}

    def may_have_worked(self, life: Row, one: Occurrence) -> bool:
        """A span without a qualifier says from when to when somebody worked."""
        if "/" not in (life["active_edtf"] or "") or life["active_flags"]:
            return True
        earliest, latest, _ = one.date
        return bool(life["active_earliest"] <= latest and earliest <= life["active_latest"])

    def has_date(self, one: Occurrence, asked: Condition) -> int:
        found = read(asked.value)
        first = -(10**9) if found.earliest == OPEN_START else found.earliest
        last = 10**9 if found.latest == OPEN_END else found.latest
        earliest, latest, flags = one.date
        if latest < first or earliest > last:
            return NO
        return YES if first <= earliest and latest <= last and not flags | found.flags else MAYBE

    def has_source(self, one: Occurrence, asked: Condition) -> int:
        papers = {one.deed.get("source_id"), one.row.get("source_id")} - {None}
        kinds = [self.tables.get("source", paper)["kind"] for paper in papers]
        if any(kind is not None and _begin_words(kind, asked.value) for kind in kinds):
            return YES
        return MAYBE if not kinds or None in kinds else NO

    def has_object(self, one: Occurrence, asked: Condition) -> int:
        row = self.tables.get("object", one.row["object_id"])
        title = " " + fold(row["title"] or "")
        words = fold(asked.value).split()
        titled = bool(words) and all(f" {word}" in title for word in words)
        return YES if fold(row["number"]) == fold(asked.value) or titled else NO

    def has_object_kind(self, one: Occurrence, asked: Condition) -> int:
        kind = self.tables.get("object", one.row["object_id"])["kind"]
        return MAYBE if kind is None else YES if _begin_words(kind, asked.value) else NO

    # -- state ----------------------------------------------------------------------------

    def has_state(self, one: Occurrence, asked: Condition) -> int:
        if one.what == "agent":
            return NO
        row = one.row
        if asked.on == "ever":
            if row["came_from"] > self.today:
                return NO
            return YES if row["came_to"] <= self.today and not row["came_flags"] else MAYBE
        day = min(read_span(asked.on).latest, TODAY.toordinal()) if asked.on else self.today
        states = _states(row, day)
        shaky = any(
            row[f"{event}_flags"] and states & rests
            for event, rests in (("came", {1, 2}), ("reduced", {2, 4}), ("gone", {2, 4, 8}))
        )
        if asked.value == "perhaps":
            return YES if len(states) > 1 else MAYBE if shaky else NO
        wanted = STATES[asked.value]
        if not states & wanted:
            return NO
        return YES if states <= wanted and not shaky else MAYBE

    # -- places ---------------------------------------------------------------------------

    def at_places(
        self, one: Occurrence, at: Callable[[int | None], int], unplaced: int | None
    ) -> int:
        if not one.places:
            return at(None) if unplaced is None else unplaced
        best = max(map(at, one.places))
        return min(best, MAYBE) if one.several and not one.alone else best

    def sides(self, place: int) -> set[int]:
        row = self.tables.get("place", place)
        return {row["component_id"], row["other_component_id"]} - {None}

    def has_part_material(self, one: Occurrence, asked: Condition) -> int:
        materials, _, _ = self.meant(asked.value)

        def at(place: int | None) -> int:
            assert place is not None
            parts = self.sides(place)
            own = [self.tables.get("component", part)["material_id"] for part in parts]
            if set(own) & materials:
                return YES
            said = any(
                row["material_id"] in materials
                for part in parts
                for row in self.tables.of("statement", component_id=part, field="material")
            )
            return MAYBE if said or not own or None in own else NO

        return self.at_places(one, at, MAYBE)

    def has_observed(self, one: Occurrence, asked: Condition) -> int:
        if one.what == "layer":
            came = one.row["came_from"], one.row["came_to"], one.row["came_flags"]
        else:
            came = one.date
        own, there = NO, []
        for row in self.tables.rows["observation"]:
            if not _has_words(row["condition"] or "", asked.value):
                continue
            dated = row
            if row["date_derived"] == "blank" and row["intervention_id"] is not None:
                dated = self.tables.get("intervention", row["intervention_id"])
            if dated["date_latest"] < came[0]:
                continue
            plain = not dated["date_flags"] and not came[2]
            value = YES if dated["date_earliest"] > came[1] and plain else MAYBE
            if one.what == "layer" and row["layer_id"] == one.row["id"]:
                own = max(own, value)
            lying = self.tables.get("layer", row["layer_id"]).get("place_id")
            there.append((row, lying, value))

        def at(place: int | None) -> int:
            assert place is not None
            return max(
                (
                    value
                    for row, lying, value in there
                    if place in (row["place_id"], lying) or row["component_id"] in self.sides(place)
                ),
                default=NO,
            )

        return max(own, self.at_places(one, at, NO))

    def has_environment(self, one: Occurrence, asked: Condition) -> int:
        earliest, latest, flags = one.date
        stays = [
            row
            for row in self.tables.of("whereabouts", object_id=one.row["object_id"])
            if row["place_name"] is not None
        ]

        def possible(stay: Row) -> bool:
            if stay["since_earliest"] > latest or stay["until_latest"] < earliest:
                return False
            return not any(
                other["component_id"] == stay["component_id"]
                and other["since_earliest"] > stay["since_latest"]
                and other["since_latest"] <= earliest
                for other in stays
            )

        def use(stay: Row) -> str:
            """The one use that its room surely had then; "" where there is none."""
            uses = {
                row["use"]
                for row in self.tables.rows["climate"]
                if row["use"] is not None
                and begins_with(fold(stay["place_name"]), fold(row["room"]))
                and (row["since_derived"] == "blank" or row["since_latest"] <= earliest)
                and (row["until_derived"] == "blank" or latest <= row["until_earliest"])
            }
            if asked.value in uses and len(uses) > 1:
                return ""
            return asked.value if asked.value in uses else "another" if uses else ""

        def covers(stay: Row) -> bool:
            open_ = stay["until_derived"] == "blank" or stay["until_earliest"] >= latest
            plain = not stay["since_flags"] and not stay["until_flags"]
            return plain and stay["since_latest"] <= earliest and open_

        def at(place: int | None) -> int:
            found = [stay for stay in stays if possible(stay)]
            apart = [s for s in found if place and s["component_id"] in self.sides(place)]
            counted = apart or [s for s in found if s["component_id"] is None]
            if flags or not any(map(covers, counted)):
                return MAYBE
            uses = set(map(use, counted))
            return (
                {asked.value: YES, "another": NO}.get(uses.pop(), MAYBE)
                if len(uses) == 1
                else MAYBE
            )

        return self.at_places(one, at, None)

    def has_rule(self, one: Occurrence, asked: Condition) -> int:
        broken = self.broken[asked.value]
        own = broken(one, None)
        return max(own, self.at_places(one, lambda place: broken(one, place), NO))


def _states(row: Row, day: int) -> set[int]:
    """The table of the design (section 3), line by line."""
    found = set()
    if day < row["came_to"]:
        found.add(1)
    if row["came_from"] <= day < min(row["reduced_to"], row["gone_to"]):
        found.add(2)
    if row["reduced_from"] <= day < row["gone_to"]:
        found.add(4)
    if row["gone_from"] <= day:
        found.add(8)
    return found


def _words(text: str) -> set[str]:
    """Runs of letters and digits."""
    return set("".join(c if c.isalnum() or c == "_" else " " for c in fold(text)).split())


def _was_called(text: str, value: str) -> bool:
    """Whether each word of the value, as typed or without accents, stands after a blank."""
    lowered = " " + _plain_lower(text)
    return bool(value.split()) and all(
        any(way and f" {way}" in lowered for way in (_plain_lower(word), word.lower(), fold(word)))
        for word in value.split()
    )


def _plain_lower(text: str) -> str:
    return "".join(letter.lower() if letter.isascii() else letter for letter in text)


def _begin_words(text: str, value: str) -> bool:
    """Whether each word of the value stands in the text where no letter goes before it."""
    folded, words = " " + fold(text), fold(value).split()
    return bool(words) and all(
        any(
            folded.startswith(word, at) and not (folded[at - 1].isalnum() or folded[at - 1] == "_")
            for at in range(1, len(folded))
        )
        for word in words
    )


def _has_words(text: str, words: str) -> bool:
    def lower(given: str) -> str:
        return "".join(c.lower() if c.isascii() else c for c in given)

    return all(lower(word) in lower(text) for word in words.split())
