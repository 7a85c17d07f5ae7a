"""Kinds of record by the words of a command: a step, a removal, or one row of any file."""

from __future__ import annotations

import datetime
from collections.abc import Iterable, Mapping
from dataclasses import fields

from conservedb.exchange.cells import split_list, unescape
from conservedb.exchange.deeds import (
    Removing,
    Step,
    compose_removing,
    compose_simple,
    compose_step,
)
from conservedb.exchange.entering import Compose
from conservedb.exchange.reading_cells import subject_named
from conservedb.questions.answers import NoSuch

STEP, REMOVAL = "step", "removal"
_DEEDS: dict[str, type[Step] | type[Removing]] = {STEP: Step, REMOVAL: Removing}
_LISTS = ("components", "places", "layers")


class NoSuchField(NoSuch):
    """A kind of record has no field of that name."""

    def __init__(
        self, kind: str, field: str, nearest: tuple[str, ...], known: Iterable[str]
    ) -> None:
        hint = (
            f"did you mean {' or '.join(nearest)}?"
            if nearest
            else f"its fields are {', '.join(known)}"
        )
        LookupError.__init__(self, f"{kind}: there is no field {field!r}; {hint}")
        self.what, self.value, self.nearest = "field", field, nearest


def singular(kind: str) -> str:
    """What a kind is called in sentences.

    Raises:
        NoSuch: there is no such kind of record.
    """
    word = _words(kind)
    return word if word in _DEEDS else subject_named(word).singular


def subject_of(kind: str) -> str:
    """The file in which a record of a kind stands as one row.

    Raises:
        NoSuch: there is no such kind of record.
    """
    return subject_named(_words(kind)).name


def is_step(kind: str) -> bool:
    """Whether a kind is the step at the bench."""
    return _words(kind) == STEP


def belongs_to_object(kind: str) -> bool:
    """Whether a record of a kind is one of some object."""
    word = _words(kind)
    return word in _DEEDS or subject_named(word).in_object


def check_fields(kind: str, given: Iterable[str], *, deeds: bool = True) -> None:
    """Refuse the first field that a kind of record does not have.

    Args:
        deeds: whether a step and a removal are those at the bench, not rows of a file.

    Raises:
        NoSuch: there is no such kind of record.
        NoSuchField: it has no such field.
    """
    word = _words(kind)
    if deeds and word in _DEEDS:
        known = tuple(field.name for field in fields(_DEEDS[word]))
    else:
        known = subject_named(word).headers
    for name in given:
        if name not in known:
            from difflib import get_close_matches

            near = tuple(get_close_matches(name, known, 2))
            raise NoSuchField(singular(kind), name, near, known)


def composing(kind: str, given: Mapping[str, str], who: str, today: datetime.date) -> Compose:
    """What makes the records of a kind from its fields, which have been checked."""
    word = _words(kind)
    if word == STEP:
        step = Step(**_deed(given))  # type: ignore[arg-type]
        return lambda refs: compose_step(refs, step, who, today)
    if word == REMOVAL:
        removing = Removing(**_deed(given))  # type: ignore[arg-type]
        return lambda refs: compose_removing(refs, removing, who, today)
    subject = subject_named(word)
    number = given.get("object", "")
    return lambda refs: compose_simple(refs, subject.name, number, given, who)


def _deed(given: Mapping[str, str]) -> dict[str, str | tuple[str, ...]]:
    return {
        name: tuple(map(unescape, split_list(text))) if name in _LISTS else text
        for name, text in given.items()
    }


def _words(kind: str) -> str:
    """ "planned-step", "Planned step" -> "planned step"."""
    return " ".join(kind.replace("-", " ").replace("_", " ").lower().split())
