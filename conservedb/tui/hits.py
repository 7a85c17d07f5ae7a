"""Lists of things found, and of things that need attention, in groups with a heading."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from textual.content import Content

from conservedb.tui.text import QUIET, STRONG, joined, plain, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, line_item

if TYPE_CHECKING:
    from conservedb.questions.answers import Hit, StartAnswer

KINDS = (
    ("object", "Objects"),
    ("component", "Parts"),
    ("place", "Locations"),
    ("material", "Materials"),
    ("person", "People"),
    ("source", "Papers and pictures"),
)
_NO_SCREEN = {
    "person": "a person has no screen yet; open an object to read who did what",
    "source": "a paper has no screen yet; open an object to read what it says",
}
NUMBER_WIDTH = 12
MARK_WIDTH = 5


@dataclass(frozen=True, slots=True)
class Group:
    """A heading, what stands under it, and what to say where that is nothing."""

    title: str
    hits: Sequence[Hit]
    empty: str = ""


def start_groups(answer: StartAnswer) -> list[Group]:
    """What the start screen shows before anything is typed."""
    if not answer.counts.get("objects", len(answer.recent_objects)):
        return [Group("No objects yet", (), "bring tables in with: conservedb import FOLDER")]
    return [
        Group("Open treatments", answer.open_treatments, "none is open"),
        Group("Temporary materials still on", answer.temporary_layers, "none on record"),
        Group("Joints moving or failed", answer.restless_joints, "none on record"),
        Group("Checks due", answer.checks_due, "none is due"),
        Group("Objects worked on last", answer.recent_objects, "none on record"),
    ]


def found_groups(hits: Iterable[Hit], nearest: str = "") -> list[Group]:
    """What was found, by kind; what belongs to the object numbered `nearest` comes first."""
    by_kind: dict[str, list[Hit]] = {}
    for hit in hits:
        by_kind.setdefault(hit.kind, []).append(hit)
    groups = []
    for kind, title in KINDS:
        found = sorted(by_kind.get(kind, ()), key=lambda hit: hit.object != nearest)
        if found:
            groups.append(Group(title, found))
    return groups


def items_of(groups: Iterable[Group]) -> tuple[list[Item], dict[str, Hit]]:
    """The groups as entries of a list, and the hit behind each key."""
    items: list[Item] = []
    hits: dict[str, Hit] = {}
    for group in groups:
        items.append(_heading(group, first=not items))
        for index, hit in enumerate(group.hits):
            key = f"{group.title}:{index}"
            hits[key] = hit
            items.append(Item(key, _drawer(hit)))
    return items, hits


def no_screen(hit: Hit) -> str:
    """What to say to somebody who opens what has no screen."""
    return _NO_SCREEN.get(hit.kind, "this cannot be opened")


def _heading(group: Group, *, first: bool) -> Item:
    above = () if first else (Content(""),)
    title = plain(group.title, "bold $marked")
    if not group.hits:
        title = joined((title, plain(f"  {group.empty}", QUIET)))
    lines = (*above, title)
    return line_item(f"heading:{group.title}", *lines)


def _drawer(hit: Hit) -> Drawer:
    def draw(width: int) -> tuple[Content]:
        number = plain(hit.object, STRONG if not hit.mark else "")
        left = [_column(number, NUMBER_WIDTH)] if hit.object else []
        if hit.mark and hit.object:
            left.append(_column(plain(hit.mark, STRONG), MARK_WIDTH))
        left.append(plain(hit.label, "" if hit.object else STRONG))
        line = joined(left, " ")
        if not hit.detail:
            return (line.truncate(width, ellipsis=True),)
        room = max(width - min(line.cell_length, width * 3 // 5) - 2, 8)
        detail = plain(hit.detail, QUIET).truncate(room, ellipsis=True)
        return (two_ends(line, detail, width),)

    return draw


def _column(content: Content, width: int) -> Content:
    return content.pad_right(max(width - content.cell_length, 0))
