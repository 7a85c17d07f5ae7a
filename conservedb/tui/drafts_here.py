"""Drafts that are not saved, as a group of the start screen."""

from __future__ import annotations

from conservedb.questions.answers import Hit
from conservedb.tui.about import about_of
from conservedb.tui.drafts import Drafts
from conservedb.tui.hits import Group

DRAFT = "draft"


def draft_group(database: str) -> tuple[Group, ...]:
    """The drafts of this database, the newest first; no group where there is none."""
    hits: dict[str, Hit] = {}  # of two drafts of one form the newer, which opens first
    for draft in Drafts().drafts():
        about = about_of(draft.key)
        if about is not None and about.database == database:
            where = ", ".join(one for one in (draft.subtitle, draft.clock) if one)
            hits.setdefault(draft.key, Hit(DRAFT, "", draft.key, draft.title, where))
    return (Group("Drafts not saved", tuple(hits.values())),) if hits else ()
