"""A recorder that keeps what it is given in lists, and the form on which the tests type."""

from __future__ import annotations

import time
from collections.abc import Mapping
from dataclasses import dataclass, field

from conservedb.tui.reading import Unanswered
from conservedb.tui.recording import NOTHING, Completion, Field, Form, Outcome

MATERIALS = (
    Completion("b72", "Paraloid B-72 (ethyl methacrylate copolymer)"),
    Completion("b67", "Paraloid B-67 (isobutyl methacrylate)"),
    Completion("trass", "trass-lime mortar"),
    Completion("acetone", "acetone"),
)
PLACES = tuple(Completion(mark, f"{mark}  joint") for mark in ("J14", "J15", "J16"))
PEOPLE = (Completion("Ada Brown", "Ada Brown"), Completion("W. Orde", "W. Orde"))

STEP = Form(
    "step",
    "Consolidate",
    "SQ.1902.7  The Four Winds, wall fountain",
    (
        Field("date", "date", "date", required=True, hint="any date: 14 June 1950, 193X, c. 1890"),
        Field("material", "material", "material"),
        Field("places", "places", "places"),
        Field("concentration", "concentration", "number", unit="% w/v"),
        Field(
            "coverage", "coverage", "choice", choices=("whole", "part", "spots"), unknown="unknown"
        ),
        Field("people", "people", "people"),
        Field("technique", "technique", "term", lookup="technique"),
        Field("batch", "batch"),
        Field("note", "note", "long"),
    ),
    "step J14",
)


@dataclass
class Fake:
    """Answers from tables; `slow` seconds late."""

    who: str = "Ada Brown"
    slow: float = 0.0
    saves: list[dict[str, object]] = field(default_factory=list)
    outcomes: list[Outcome | Unanswered] = field(default_factory=list)
    asked: list[tuple[str, str]] = field(default_factory=list)
    new: Form | None = None

    def set_who(self, name: str) -> None:
        if " " not in name:
            raise Unanswered(f"{name} is no full name")
        self.who = name

    def complete(
        self, lookup: str, typed: str, form: Form, values: Mapping[str, str]
    ) -> tuple[Completion, ...]:
        time.sleep(self.slow)
        self.asked.append((lookup, typed))
        words = typed.casefold()
        rows = {"material": MATERIALS, "places": PLACES, "people": PEOPLE}.get(lookup, ())
        hits = tuple(
            one
            for one in rows
            if one.text.casefold().startswith(words) or one.label.casefold().startswith(words)
        )
        if not hits and lookup == "material" and words.startswith("parr"):
            return (Completion("b72", MATERIALS[0].label, near=True),)
        return hits

    def check(self, form: Form, field: str, values: Mapping[str, str]) -> str:
        text = values[field]
        if field == "concentration" and text and not text.isdigit():
            return f"“{text}” is no number; write it as 5 or 2.5"
        if field == "date" and text.startswith("Easter"):
            return f"“{text}” is not understood as a date"
        return ""

    def read_date(self, text: str) -> str:
        return "read as 1930..1933" if text == "early 1930s" else ""

    def new_entry(self, lookup: str, typed: str, form: Form) -> Form | None:
        if lookup != "material":
            return None
        fields = (Field("key", "key", value=typed), Field("name", "name", required=True))
        return Form("material", "Add a material", "", fields, f"material {typed}")

    def save(
        self,
        form: Form,
        values: Mapping[str, str],
        *,
        reason: str = "",
        override: Mapping[str, str] = NOTHING,
        over: Mapping[str, str] = NOTHING,
    ) -> Outcome:
        time.sleep(self.slow)
        self.saves.append(
            {
                "form": form,
                "values": dict(values),
                "reason": reason,
                "override": dict(override),
                "over": dict(over),
            }
        )
        if self.outcomes:
            outcome = self.outcomes.pop(0)
            if isinstance(outcome, Unanswered):
                raise outcome
            return outcome
        return Outcome(saved=f"{form.title}: saved")

    @property
    def values(self) -> dict[str, str]:
        """What was saved last."""
        found = self.saves[-1]["values"]
        assert isinstance(found, dict)
        return found
