"""What finding answers with: records in groups of their kind, and what was perhaps meant."""

from __future__ import annotations

from dataclasses import dataclass

from conservedb.questions.answers import Hit

KIND_WORDS = {
    "object": ("object", "Objects"),
    "component": ("part", "Parts"),
    "place": ("location", "Locations"),
    "material": ("material", "Materials"),
    "person": ("person", "People"),
    "source": ("source", "Papers and pictures"),
    "treatment": ("treatment", "Treatments"),
    "step": ("step", "Steps"),
    "plan": ("plan", "Plans"),
    "planned step": ("planned step", "Planned steps"),
    "warning": ("warning", "Warnings"),
    "observation": ("observation", "Observations"),
    "sample": ("sample", "Samples"),
    "reading": ("reading", "Readings"),
    "spot test": ("spot test", "Spot tests"),
    "layer": ("layer", "Layers"),
    "removal": ("removal", "Removals"),
    "agent": ("agent", "Agents"),
    "joint event": ("joint event", "What joints did"),
    "sighting": ("sighting", "Sightings"),
    "whereabouts": ("whereabouts", "Whereabouts"),
    "authorisation": ("decision", "Decisions"),
    "acceptance": ("finding accepted", "Findings accepted"),
    "near": ("locations nearby", "Locations nearby"),
    "statement": ("statement", "Statements of sources"),
    "batch": ("batch", "Batches"),
    "term": ("term", "Words of the trade"),
    "rule": ("rule", "Rules of the trade"),
    "climate": ("room", "Rooms"),
    "saved question": ("question", "Questions kept"),
    "standing approval": ("standing approval", "Standing approvals"),
}
"""Each kind in the words of the trade: of one, and as a heading."""


@dataclass(frozen=True, slots=True)
class FoundGroup:
    """Records of one kind, those called exactly so first.

    Attributes:
        hits: the first of them.
        total: how many there are; where there are `more`, at least so many.
    """

    kind: str
    hits: tuple[Hit, ...]
    total: int
    more: bool = False

    @property
    def said(self) -> str:
        """How many there are, in words."""
        return f"{self.total} or more" if self.more else str(self.total)


@dataclass(frozen=True, slots=True)
class FoundAnswer:
    """What was found for some words.

    Attributes:
        groups: what is called exactly so first, then in the order of `KIND_WORDS`.
        near: where nothing was found, words like those typed that find something.
        remark: what the reader should know, a sentence without a full stop; often "".
    """

    groups: tuple[FoundGroup, ...] = ()
    near: tuple[str, ...] = ()
    remark: str = ""

    @property
    def hits(self) -> tuple[Hit, ...]:
        """Everything found, in the order of the groups."""
        return tuple(hit for group in self.groups for hit in group.hits)

    @property
    def total(self) -> int:
        """How many records there are at least."""
        return sum(group.total for group in self.groups)
