"""What published guidelines ask of a record and is blank there, and which photographs.

A blank field says that nothing is on record, not that nothing was done.
"""

from __future__ import annotations

from collections.abc import Mapping, Sized
from dataclasses import dataclass

from conservedb.knowledge.guidelines import DEMANDS, PHOTOGRAPHS, STAGES, Demand


@dataclass(frozen=True, slots=True)
class Asked:
    """Something that guidelines ask for and that the record does not show.

    Args:
        level: "must" or "should".
        source: who asks, as the short names of `guidelines.SOURCES`, separated by "; ".
    """

    field: str
    level: str
    source: str
    sentence: str


def fields_asked(stage: str, recorded: Mapping[str, object]) -> tuple[Asked, ...]:
    """The fields of a record that are blank although guidelines ask for them.

    Args:
        stage: one of `guidelines.STAGES`.
        recorded: field -> what is recorded there. "unknown" is recorded; None, blank text and
            an empty list are not. Of a field of which there are many (the date of each step)
            give a value only where none is blank. Fields that concern only some records, such
            as `deviation`, are asked for only where they are named here.
    """
    return tuple(
        Asked(
            one.field,
            one.level,
            one.source,
            f"{_capital(one.label)}: {_by(one)}; not recorded.",
        )
        for one in _of(stage, DEMANDS)
        if is_blank(recorded.get(one.field)) and (not one.where_it_applies or one.field in recorded)
    )


def photographs_asked(stage: str, cited: int, *, samples: bool = False) -> tuple[Asked, ...]:
    """The photographs that guidelines ask for at a stage.

    Photographs cannot be tied to a stage yet. Where some are cited, which of those asked for
    are among them is not known, and the sentence says so.

    Args:
        stage: one of `guidelines.STAGES`.
        cited: how many papers of the kind photograph the record cites.
        samples: whether samples were taken.
    """
    linked = "none linked" if not cited else f"{cited} cited, what they show is not recorded"
    return tuple(
        Asked(
            f"photograph {one.field}",
            one.level,
            one.source,
            f"Photographs {one.label}: asked for; {linked} ({_by(one)}).",
        )
        for one in _of(stage, PHOTOGRAPHS)
        if samples or not one.where_it_applies
    )


def is_blank(value: object) -> bool:
    """Whether nothing is recorded: no value, blank text or an empty list; nought is a value."""
    if isinstance(value, str):
        return not value.strip()
    return value is None or (isinstance(value, Sized) and len(value) == 0)


def _of(stage: str, demands: tuple[Demand, ...]) -> tuple[Demand, ...]:
    if stage not in STAGES:
        raise ValueError(f"there is no stage {stage!r}; it is one of {', '.join(STAGES)}")
    return tuple(one for one in demands if stage in one.stages)


def _by(demand: Demand) -> str:
    verb = "required" if demand.level == "must" else "recommended"
    return f"{verb} by {demand.source.replace('; ', ', ')}"


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]
