"""The person who writes, as a record: added where nobody of that name is on record."""

from __future__ import annotations

from sqlalchemy import select, union_all

from conservedb.exchange.entering import Entry, Refs
from conservedb.records.people import person, person_alias
from conservedb.store.keys import fold


def writer(refs: Refs, who: str) -> list[Entry]:
    """A record of the writer, unless there is a person of that name or alias."""
    folded = fold(who)
    known = union_all(
        select(person.c.id).where(person.c.name_folded == folded),
        select(person_alias.c.person_id).where(person_alias.c.alias_folded == folded),
    )
    if refs.connection.execute(known).first() is not None:
        return []
    return [Entry("people", {"name": who})]
