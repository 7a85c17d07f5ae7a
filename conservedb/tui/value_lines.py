"""Lines for a labelled value with how it is known, and values of several sources on one scale."""

from __future__ import annotations

from collections.abc import Sequence

from textual.content import Content

from conservedb.questions.material_answers import Told, Value
from conservedb.questions.wording import cited
from conservedb.tui.text import QUIET, STRONG, UNSURE, joined, plain, prose

LABEL = 18
VALUE = 16
SCALE = 11
NARROWEST = 12


def known_words(told: Told, of: str = "") -> str:
    """How a value is known: its basis first, so that what is remembered shows in a short line."""
    source = cited(told.source) if told.source else ""
    return "; ".join(one for one in (told.standing, source, f"of {of}" if of else "") if one)


def value_lines(
    label: str,
    value: str,
    told: Told | None,
    width: int,
    *,
    of: str = "",
    how: str = "",
    below: str = "",
    scale: str = "",
    style: str = STRONG,
) -> list[Content]:
    """A value in `width` cells: beside its label, how it is known beside it or below.

    Args:
        how: what is said before the basis.
        below: a line of its own under the value.
        scale: where the value lies among the others, drawn.
    """
    known = "; ".join(one for one in (how, known_words(told, of) if told else "") if one)
    remembered = told is not None and told.unsure
    tail = plain(known, UNSURE if remembered else QUIET)
    margin = Content(" " * (LABEL + 1))
    room = max(width - LABEL - 1, NARROWEST)
    head = plain(label, QUIET).truncate(LABEL, ellipsis=True)
    start = joined((head.pad_right(LABEL + 1 - head.cell_length),))
    said = prose(value, style)
    lines = said.wrap(room) or [Content("")]
    column = VALUE + (SCALE + 1 if scale else 0)
    if len(lines) == 1 and lines[0].cell_length <= VALUE and tail.cell_length <= room - column - 1:
        drawn = plain(scale, QUIET) if scale else Content("")
        cell = lines[0].pad_right(VALUE + 1 - lines[0].cell_length)
        lines = [joined((cell, drawn, Content(" ") if scale else Content(""), tail))]
    else:
        if scale and lines[0].cell_length <= VALUE:
            cell = lines[0].pad_right(VALUE + 1 - lines[0].cell_length)
            lines[0] = joined((cell, plain(scale, QUIET)))
        lines += tail.wrap(room) if known else []
    if below:
        lines += prose(below, QUIET).wrap(room)
    return [joined((start if at == 0 else margin, line)) for at, line in enumerate(lines)]


def scales(values: Sequence[Value]) -> list[str]:
    """Where each value lies between the lowest and the highest of all; "" where none is to see."""
    ends = [
        (one.low, one.low if one.high is None else one.high) if one.low is not None else None
        for one in values
    ]
    known = [pair for pair in ends if pair is not None]
    low = min((pair[0] for pair in known), default=0.0)
    high = max((pair[1] for pair in known), default=0.0)
    if len(known) < 2 or not high > low:
        return [""] * len(values)
    return ["" if pair is None else _bar(pair, low, high) for pair in ends]


def _bar(pair: tuple[float, float], low: float, high: float) -> str:
    first, last = (round((end - low) / (high - low) * (SCALE - 1)) for end in pair)
    body = "●" if first == last else f"├{'─' * (last - first - 1)}┤"
    return f"{'·' * first}{body}{'·' * (SCALE - 1 - last)}"
