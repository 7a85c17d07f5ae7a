"""What the section panel lists where no single location is selected."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from textual.content import Content

from conservedb.questions.answers import ComponentRow, ObjectAnswer
from conservedb.tui import wording
from conservedb.tui.part_rows import Row
from conservedb.tui.text import (
    CERTAIN,
    QUIET,
    STRONG,
    UNSURE,
    WARNING,
    joined,
    plain,
    two_ends,
)
from conservedb.tui.widgets.lines import Item, always, line_item

TONES = {"certain": CERTAIN, "unsure": UNSURE, "hazard": WARNING, "quiet": QUIET}


def part_sentence(part: ComponentRow) -> str:
    """A part in one sentence."""
    words = [part.kind, part.origin, part.material or "material not recorded"]
    if part.mass_kg is not None:
        words.append(f"{part.mass_kg:g} kg")
    if part.kept_at:
        words.append(f"kept at {part.kept_at}")
    if part.known_from in ("suspected", "picture only"):
        words.append(f"known from: {part.known_from}")
    if part.state == "gone":
        words.append("lost by this day")
    elif part.state == "retired":
        words.append("retired by this day")
    elif part.state == "not yet":
        words.append("not yet made on this day")
    elif part.state == "uncertain":
        words.append("whether it was there on this day is not established")
    return "; ".join(one for one in words if one)


def part_items(rows: Sequence[Row], row: Row) -> list[Item]:
    """The locations on a part, and the parts that belong to it."""
    start = rows.index(row) + 1
    below = [one for one in rows[start : start + row.inside] if one.depth == row.depth + 1]
    groups = (
        ("locations on it", [one for one in below if one.is_place]),
        ("parts of it", [one for one in below if not one.is_place]),
    )
    return _grouped(groups) or [_line("none", "no location or part of it is on record")]


def object_items(answer: ObjectAnswer, rows: Sequence[Row]) -> list[Item]:
    """What to know before touching the object: warnings, restless joints, open questions."""
    items: list[Item] = []
    if answer.warnings:
        items.append(_line("warnings", "warnings"))
        for warning in answer.warnings:
            where = ", ".join(one for one in (warning.component, warning.place) if one)
            words = [plain(f"! {warning.kind or 'warning'}", WARNING), plain(warning.text)]
            line = joined((*words, plain(where and f"({where})", QUIET)), "  ")
            items.append(Item(f"warning:{warning.ref}", always(line)))
    by_mark = {row.mark: row for row in rows if row.is_place and "@" not in row.key}
    listed = [(place, by_mark[place.mark]) for place in answer.places if place.mark in by_mark]
    restless = [row for place, row in listed if place.condition in wording.RESTLESS]
    unsure = [row for place, row in listed if place.uncertain and row not in restless]
    groups = (
        ("joints open, moving, failed or not established", restless),
        ("locations where a layer is not established", unsure),
    )
    grouped = _grouped(groups, after=bool(items))
    items += grouped + _unplaced(answer, after=bool(items or grouped))
    if items:
        return items
    return [_line("none", "no warning and no open question on record; choose a part below")]


def _unplaced(answer: ObjectAnswer, *, after: bool) -> list[Item]:
    """Layers of which nobody wrote down where they lie."""
    if not answer.unplaced:
        return []
    items = [_line("gap:unplaced", "")] if after else []
    items.append(_line("unplaced", "layers whose location is not recorded"))
    for hit in answer.unplaced:
        name = plain(hit.label or "material not recorded", STRONG)
        line = joined((name, plain(hit.detail, QUIET), plain(hit.mark, QUIET)), "  ")
        items.append(Item(f"unplaced:{hit.mark}", always(line)))
    return items


def _grouped(groups: Iterable[tuple[str, Sequence[Row]]], *, after: bool = False) -> list[Item]:
    items: list[Item] = []
    for title, rows in groups:
        if rows:
            if items or after:
                items.append(_line(f"gap:{title}", ""))
            items.append(_line(title, title))
            items += [_row_item(row) for row in rows]
    return items


def _line(key: str, words: str) -> Item:
    return line_item(key, plain(words, QUIET))


def _row_item(row: Row) -> Item:
    def draw(width: int) -> tuple[Content]:
        left = joined((plain(row.mark, STRONG), plain(row.label)), "  ")
        return (two_ends(left, plain(row.right, TONES[row.tone]), width),)

    return Item(f"go:{row.mark}", draw)


def object_sentence(answer: ObjectAnswer) -> str:
    """The object in one sentence."""
    made = answer.made.said if answer.made.recorded else "date not recorded"
    return "; ".join(one for one in (answer.kind, answer.maker, made) if one)
