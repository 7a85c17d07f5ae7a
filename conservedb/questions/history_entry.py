"""One entry of a history, made from the few things that it has."""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.questions.answers import HistoryRow, Person, Reworded, Rival, Source, When
from conservedb.questions.history_words import sentence


def entry(
    kind: str,
    ref: str,
    date: When,
    text: str,
    *,
    detail: Sequence[str] = (),
    people: tuple[Person, ...] = (),
    treatment: str = "",
    components: Sequence[str] = (),
    places: Sequence[str] = (),
    source: Source | None = None,
    rivals: Sequence[Rival] = (),
    note: str = "",
    amended: Sequence[Reworded] = (),
) -> HistoryRow:
    """An entry of a history; what is not given is blank."""
    return HistoryRow(
        kind,
        ref,
        date,
        sentence(text),
        tuple(detail),
        people,
        treatment,
        tuple(components),
        tuple(places),
        source,
        tuple(rivals),
        note,
        tuple(amended),
    )
