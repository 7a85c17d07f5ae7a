"""Lists of things found, and of things that need attention, in groups with a heading."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from textual.content import Content

from conservedb.questions.answers import Hit
from conservedb.questions.find_answers import KIND_WORDS
from conservedb.tui.text import QUIET, STRONG, joined, plain, two_ends
from conservedb.tui.widgets.lines import Drawer, Item, line_item

if TYPE_CHECKING:
    from conservedb.questions.answers import StartAnswer
    from conservedb.questions.find_answers import FoundAnswer

NEAR = "near"
"""Not a record: words that find something, to be looked for instead of those typed."""
FOUND = "bold underline"
"""The style of words that were looked for: it can be seen without colours too."""
_NO_SCREEN = {
    "source": "a paper has no screen yet; open an object to read what it says",
    "term": "a word of the trade has no screen; all that is on record of it stands here",
    "batch": "a batch has no screen yet; open an object to read where it was used",
    "rule": "a rule has no screen; conservedb check says what it finds",
    "climate": "a room has no screen; conservedb whatif says what it does to materials",
    "saved question": "a question that is kept is asked again on the research screen: F4",
}
_INDENT = "    "
NUMBER_WIDTH = 12
MARK_WIDTH = 5
Spans = Sequence[tuple[int, int]]


@dataclass(frozen=True, slots=True)
class Group:
    """A heading, what stands under it, what to say where that is nothing, and how many it is of."""

    title: str
    hits: Sequence[Hit]
    empty: str = ""
    count: str = ""


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


def found_groups(answer: FoundAnswer, nearest: str = "") -> list[Group]:
    """What was found, by kind; what belongs to the object numbered `nearest` comes first."""
    groups = []
    for found in answer.groups:
        hits = sorted(found.hits, key=lambda hit: hit.object != nearest)
        count = found.said if len(hits) == found.total else f"{len(hits)} of {found.said}"
        groups.append(Group(KIND_WORDS[found.kind][1], hits, count=count))
    if answer.near:
        meant = [Hit(NEAR, "", "", words, "") for words in answer.near]
        groups.append(Group("Did you mean", meant))
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
            items.append(Item(key, _drawer(hit), 2 if _apart(hit) else 1))
    return items, hits


def no_screen(hit: Hit) -> str:
    """What to say to somebody who opens what has no screen."""
    return _NO_SCREEN.get(hit.kind, "this cannot be opened")


def _heading(group: Group, *, first: bool) -> Item:
    above = () if first else (Content(""),)
    title = plain(group.title, "bold $marked")
    beside = group.count if group.hits else group.empty
    if beside:
        title = joined((title, plain(f"  {beside}", QUIET)))
    lines = (*above, title)
    return line_item(f"heading:{group.title}", *lines)


def _apart(hit: Hit) -> bool:
    """Whether the sentence in which the words stand needs a line of its own."""
    return bool(hit.sentence) and hit.sentence not in (hit.label, hit.detail)


def _drawer(hit: Hit) -> Drawer:
    label_spans = hit.spans if hit.sentence in ("", hit.label) else ()
    detail_spans = hit.spans if hit.sentence and hit.sentence == hit.detail else ()

    def draw(width: int) -> tuple[Content, ...]:
        number = plain(hit.object, STRONG if not hit.mark else "")
        left = [_column(number, NUMBER_WIDTH)] if hit.object else []
        if hit.mark and hit.object:
            left.append(_column(plain(hit.mark, STRONG), MARK_WIDTH))
        left.append(marked(hit.label, label_spans, "" if hit.object else STRONG))
        line = joined(left, " ")
        told = ", ".join(filter(None, (hit.detail, hit.used)))
        if not told:
            return (line.truncate(width, ellipsis=True), *below(width))
        room = max(width - min(line.cell_length, width * 3 // 5) - 2, 8)
        detail = marked(*_cut(told, detail_spans, room), QUIET).truncate(room, ellipsis=True)
        return (two_ends(line, detail, width), *below(width))

    def below(width: int) -> tuple[Content, ...]:
        if not _apart(hit):
            return ()
        room = max(width - len(_INDENT), 1)
        said = marked(*_cut(hit.sentence, hit.spans, room), QUIET)
        return (joined((plain(_INDENT), said)).truncate(width, ellipsis=True),)

    return draw


def marked(text: str, spans: Spans, style: str = "") -> Content:
    """Text typed by people as one line, the words that were looked for made plain to see."""
    pieces, at = [], 0
    for first, last in spans:
        pieces += [plain(text[at:first], style), plain(text[first:last], FOUND)]
        at = last
    return joined((*pieces, plain(text[at:], style)))


def _cut(text: str, spans: Spans, width: int) -> tuple[str, Spans]:
    """Without the beginning of the text where the first word found would be out of sight."""
    if not spans or spans[0][1] < width:
        return text, spans
    start = max(spans[0][0] - width // 3, 0)
    moved = tuple((first - start + 1, last - start + 1) for first, last in spans)
    return f"…{text[start:]}", moved


def _column(content: Content, width: int) -> Content:
    return content.pad_right(max(width - content.cell_length, 0))
