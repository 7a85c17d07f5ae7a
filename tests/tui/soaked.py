"""A reading whose every answer has the same text in every field that people fill in."""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from typing import Any, TypeVar

from conservedb.questions.answers import (
    AsOf,
    HistoryAnswer,
    Hit,
    ObjectAnswer,
    PlaceAnswer,
    StartAnswer,
)
from tests.tui.canned import Canned

WORDS_OF_OURS = {
    "state", "possible", "side", "sides", "zone", "extent", "result", "origin", "coverage",
    "remains", "by_side", "kind", "edtf", "derived", "on", "mark", "place", "component",
    "other_component", "parent", "bridges", "object", "number", "ref", "followed", "counts",
    "throughout", "at_some_time", "possibly", "condition", "known_from",
}  # fmt: skip
"""Fields with a closed list of words, and those by which records are told apart."""

Answer = TypeVar("Answer")


def soak(value: Answer, text: str) -> Answer:
    """The same answer with `text` in every field of free text, also in those left blank."""
    changed: dict[str, Any] = {}
    assert is_dataclass(value)
    for each in fields(value):
        held = getattr(value, each.name)
        if each.name in WORDS_OF_OURS and not is_dataclass(held):
            if isinstance(held, tuple) and held and is_dataclass(held[0]):
                changed[each.name] = tuple(soak(one, text) for one in held)
        elif isinstance(held, str):
            changed[each.name] = text
        elif isinstance(held, tuple) and held and is_dataclass(held[0]):
            changed[each.name] = tuple(soak(one, text) for one in held)
        elif isinstance(held, tuple) and held and isinstance(held[0], str):
            changed[each.name] = (text,)
        elif is_dataclass(held) and not isinstance(held, AsOf):
            changed[each.name] = soak(held, text)
    return replace(value, **changed)  # type: ignore[type-var]


class Soaked(Canned):
    """The fountain, soaked."""

    def __init__(self, text: str) -> None:
        self.text = text

    @property
    def name(self) -> str:
        return self.text

    def remarks(self) -> tuple[str, ...]:
        return (self.text,)

    def start(self) -> StartAnswer:
        return soak(super().start(), self.text)

    def find(self, text: str) -> tuple[Hit, ...]:
        return tuple(soak(hit, self.text) for hit in super().find("o"))

    def object(self, number: str, on: AsOf) -> ObjectAnswer:
        return soak(super().object(number, on), self.text)

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        return soak(super().place(number, mark, on), self.text)

    def history(self, number: str, mark: str) -> HistoryAnswer:
        return soak(super().history(number, mark), self.text)
