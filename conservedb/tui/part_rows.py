"""The tree of parts and locations, laid out as rows from an answer about the object."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from conservedb.questions.answers import ComponentRow, ObjectAnswer, PlaceRow
from conservedb.tui import wording

ROOT = "whole"


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the tree.

    Attributes:
        key: "whole", "part:B07", "place:J14", or "place:J14@B12" where a joint is listed again
            under its other side.
        mark: of the part or place; "" for the whole object.
        label: its name, or for a joint where it leads.
        right: state in a word or two.
        tone: "certain", "unsure", "hazard" or "quiet", for `right`.
        depth: levels below the object.
        inside: how many rows follow that belong to this one.
    """

    key: str
    mark: str
    label: str
    right: str
    tone: str
    depth: int
    inside: int

    @property
    def is_place(self) -> bool:
        """Whether this is a location, not a part."""
        return self.key.startswith("place:")


def rows_of(answer: ObjectAnswer) -> list[Row]:
    """All rows, unfolded, in the order in which they are listed."""
    tree = _Tree(answer)
    flat: list[tuple[int, str, str]] = [(0, ROOT, "")]
    stack: list[tuple[int, str, str]] = [(1, key, host) for key, host in reversed(tree.under[""])]
    listed: set[str] = set()
    while stack:
        depth, key, host = stack.pop()
        twin = key in listed
        if twin and key.startswith("part:"):
            continue
        listed.add(key)
        flat.append((depth, f"{key}@{host}" if twin else key, host))
        if not twin:
            stack += [(depth + 1, k, h) for k, h in reversed(tree.under[key])]
    inside = _sizes([depth for depth, _, _ in flat])
    return [
        tree.row(depth, key, host, size)
        for (depth, key, host), size in zip(flat, inside, strict=True)
    ]


def _sizes(depths: list[int]) -> list[int]:
    """For each row the number of rows after it that lie deeper without a break."""
    sizes = [0] * len(depths)
    open_rows: list[int] = []
    for index, depth in enumerate(depths):
        while open_rows and depths[open_rows[-1]] >= depth:
            start = open_rows.pop()
            sizes[start] = index - start - 1
        open_rows.append(index)
    for start in open_rows:
        sizes[start] = len(depths) - start - 1
    return sizes


class _Tree:
    """Who is listed under whom: a fixing under the joint it crosses, its holes under it."""

    def __init__(self, answer: ObjectAnswer) -> None:
        self.answer = answer
        self.parts = {row.mark: row for row in answer.components}
        self.places = {row.mark: row for row in answer.places}
        self.under: dict[str, list[tuple[str, str]]] = defaultdict(list)
        for place in answer.places:
            for host in self._hosts(place):
                self.under[f"part:{host}" if host in self.parts else ""].append(
                    (f"place:{place.mark}", host)
                )
        for part in answer.components:
            self.under[self._above(part)].append((f"part:{part.mark}", part.parent))
        for key in self._lost_in_circles():
            self.under[""].append((key, ""))

    def _hosts(self, place: PlaceRow) -> Iterator[str]:
        sides = [place.component]
        if place.other_component and place.other_component != place.component:
            sides.append(place.other_component)
        fixings = [s for s in sides if s in self.parts and self.parts[s].bridges]
        yield from fixings if len(fixings) == 1 else sides

    def _above(self, part: ComponentRow) -> str:
        if part.parent in self.parts:
            return f"part:{part.parent}"
        for joint in part.bridges:
            if joint in self.places:
                return f"place:{joint}"
        return ""

    def _lost_in_circles(self) -> Iterator[str]:
        """Whatever cannot be reached from the top, so that nothing is ever left unlisted."""
        reached: set[str] = set()
        waiting = [key for key, _ in self.under[""]]
        everything = [f"part:{mark}" for mark in self.parts] + [
            f"place:{mark}" for mark in self.places
        ]
        for start in ("", *everything):
            if start and start not in reached:
                yield start
                waiting.append(start)
            while waiting:
                key = waiting.pop()
                if key not in reached:
                    reached.add(key)
                    waiting += [below for below, _ in self.under.get(key, ())]

    def row(self, depth: int, key: str, host: str, inside: int) -> Row:
        """The row of a part or place."""
        if key == ROOT:
            return Row(ROOT, "", "whole object", "", "quiet", 0, inside)
        kind, _, mark = key.partition("@")[0].partition(":")
        if kind == "part":
            part = self.parts[mark]
            right, tone = _part_state(part)
            return Row(key, mark, part.name, right, tone, depth, inside)
        place = self.places[mark]
        return Row(
            key, mark, self._leads(place, host), wording.place_counts(place), _tone(place), depth,
            inside,
        )  # fmt: skip

    def _leads(self, place: PlaceRow, host: str) -> str:
        """For a joint the part it leads to, seen from `host`; else its name."""
        if place.kind != "joint":
            return place.name
        other = place.other_component if host == place.component else place.component
        if not other or other == host:
            return place.name
        name = self.parts[other].name if other in self.parts else ""
        return f"to {other} {name}".strip()


def _part_state(part: ComponentRow) -> tuple[str, str]:
    """What must be said of a part in a word: lost, retired, not established; else nothing."""
    if part.state == "gone":
        return "lost", "quiet"
    if part.state == "retired":
        return "retired", "quiet"
    if part.state == "not yet":
        return "not yet", "quiet"
    if part.state == "uncertain":
        return "?", "unsure"
    if part.known_from == "suspected":
        return "suspected", "unsure"
    return ("apart", "unsure") if part.kept_at else ("", "quiet")


def _tone(place: PlaceRow) -> str:
    if place.condition in ("moving", "failed"):
        return "hazard"
    return "unsure" if place.uncertain or place.condition == "uncertain" else "quiet"
