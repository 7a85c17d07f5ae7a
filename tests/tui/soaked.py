"""A reading whose every answer has the same text in every field that people fill in."""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from typing import Any, TypeVar

from conservedb.questions.answers import (
    AsOf,
    HistoryAnswer,
    ObjectAnswer,
    PlaceAnswer,
    StartAnswer,
)
from conservedb.questions.find_answers import FoundAnswer
from conservedb.questions.material_answers import MaterialAnswer
from conservedb.questions.removal_answers import RemovalAnswer
from conservedb.questions.treatment_answers import TreatmentAnswer, TreatmentsAnswer
from tests.tui.canned import Canned

WORDS_OF_OURS = {
    "state", "possible", "side", "sides", "zone", "extent", "result", "origin", "coverage",
    "remains", "by_side", "kind", "edtf", "derived", "on", "mark", "place", "component",
    "other_component", "parent", "bridges", "object", "number", "ref", "followed", "counts",
    "throughout", "at_some_time", "possibly", "condition", "known_from", "layer", "effect",
    "group", "path", "band", "widest_band", "key", "solvent", "material", "outcome", "level",
    "field",
}  # fmt: skip
"""Fields with a closed list of words, and those by which records are told apart."""

Answer = TypeVar("Answer")


def soak(value: Answer, text: str) -> Answer:
    """The same answer with `text` in every field of free text, also in those left blank."""
    changed: dict[str, Any] = {}
    for name in _names(value):
        held = getattr(value, name)
        if _names(held):
            changed[name] = held if isinstance(held, AsOf) else soak(held, text)
        elif isinstance(held, tuple) and held and _names(held[0]):
            changed[name] = tuple(soak(one, text) for one in held)
        elif name in WORDS_OF_OURS:
            continue
        elif isinstance(held, str):
            changed[name] = text
        elif isinstance(held, tuple) and held and isinstance(held[0], str):
            changed[name] = (text,)
    if isinstance(value, tuple):
        return value._replace(**changed)  # type: ignore[attr-defined,no-any-return]
    return replace(value, **changed)  # type: ignore[type-var]


def _names(value: object) -> tuple[str, ...]:
    """The fields of a record, none where it is a plain value."""
    if is_dataclass(value):
        return tuple(each.name for each in fields(value))
    return getattr(value, "_fields", ())


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

    def find(self, text: str) -> FoundAnswer:
        return soak(super().find("d"), self.text)

    def object(self, number: str, on: AsOf) -> ObjectAnswer:
        return soak(super().object(number, on), self.text)

    def place(self, number: str, mark: str, on: AsOf) -> PlaceAnswer:
        return soak(super().place(number, mark, on), self.text)

    def history(self, number: str, mark: str) -> HistoryAnswer:
        return soak(super().history(number, mark), self.text)

    def material(self, word: str, on: AsOf) -> MaterialAnswer:
        return soak(super().material(word, on), self.text)

    def removal(self, number: str, mark: str, layer: str, on: AsOf, band: str) -> RemovalAnswer:
        return soak(super().removal(number, mark, layer, on, band), self.text)

    def treatments(self, number: str) -> TreatmentsAnswer:
        return soak(super().treatments(number), self.text)

    def treatment(self, number: str, ref: str) -> TreatmentAnswer:
        return soak(super().treatment(number, ref), self.text)
