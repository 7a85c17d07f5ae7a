"""People by full name; initials and spellings found in old papers are their aliases."""

from __future__ import annotations

from sqlalchemy import Column, ForeignKey, Index, Integer, Text, UniqueConstraint

from conservedb.records.base import dated, link_table, record_table, text

person = record_table(
    "person",
    text("name", required=True),
    text("name_folded", required=True),
    text("role"),
    text("organisation"),
    *dated("active"),
    text("note"),
    UniqueConstraint("name_folded"),
)

person_alias = link_table(
    "person_alias",
    Column("person_id", Integer, ForeignKey("person.id"), primary_key=True),
    Column("alias", Text, primary_key=True),
    text("alias_folded", required=True),
    Column("position", Integer, nullable=False),
    Index(None, "alias_folded"),
)
