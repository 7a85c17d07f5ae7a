"""Materials and classes as the rules look at them: with what those known by class may be."""

from __future__ import annotations

from functools import cached_property

from sqlalchemy import Connection

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.rule_kinds import NITRATE, with_soft_metal, with_unknown
from conservedb.questions.behaviour import Materials
from conservedb.questions.behaviour_records import CLASSES

STATEMENTS = (CLASSES,)


class Kinds:
    """Every material and class of one database, each made when asked for."""

    def __init__(self, connection: Connection, known: Materials) -> None:
        self._known = known
        self._classes = {row.id: row for row in CLASSES.all(connection)}
        self._of: dict[int, Matter] = {}
        self._of_class: dict[int, Matter] = {}

    def of(self, material_id: int) -> Matter:
        """A material by the id of its record."""
        if material_id not in self._of:
            self._of[material_id] = with_soft_metal(
                self._known.of(material_id), self._known.class_path(material_id)
            )
        return self._of[material_id]

    def of_class(self, class_id: int) -> Matter:
        """A class by the id of its record."""
        if class_id not in self._of_class:
            path = self.path(class_id)
            found = with_soft_metal(self._known.of_class(class_id), path)
            # A class below that of nitrate may be nitrate for all that is recorded: it burns.
            if NITRATE not in found.traits and self._of_nitrate & set(path):
                found = with_unknown(found, NITRATE)
            self._of_class[class_id] = found
        return self._of_class[class_id]

    def path(self, class_id: int) -> tuple[str, ...]:
        """The keys of a class and of those above it, nearest first."""
        path: list[int] = []
        at: int | None = class_id
        while at is not None and at not in path:
            path.append(at)
            at = self._classes[at].parent_id
        return tuple(self._classes[one].key for one in path)

    @cached_property
    def _of_nitrate(self) -> set[str]:
        """The keys of the classes in which a nitrate is recorded."""
        nitrates = [one for one in self._known.ids() if self._known.of(one).has(NITRATE)]
        return {key for one in nitrates for key in self._known.class_path(one)[:1]}
