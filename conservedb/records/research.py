"""Questions of researchers, kept under a name to be asked again."""

from __future__ import annotations

from sqlalchemy import UniqueConstraint

from conservedb.records.base import dated, one_of, record_table, reference, text

RESEARCH_ROWS = ("layers", "places", "interventions", "objects")

saved_question = record_table(
    "saved_question",
    text("name", required=True),
    text("name_folded", required=True),
    text("rows", required=True),
    text("conditions"),
    *dated("saved"),
    reference("person_id", "person"),
    text("note"),
    UniqueConstraint("name_folded"),
    one_of("rows", RESEARCH_ROWS),
)
"""`rows` is what the rows of the answer are, `conditions` are written as in `conservedb ask`."""
