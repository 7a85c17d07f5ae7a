"""questions of researchers"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "saved_question",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("name_folded", sa.Text(), nullable=False),
        sa.Column("rows", sa.Text(), nullable=False),
        sa.Column("conditions", sa.Text(), nullable=True),
        sa.Column("saved_words", sa.Text(), nullable=True),
        sa.Column("saved_edtf", sa.Text(), nullable=True),
        sa.Column("saved_earliest", sa.Integer(), nullable=False),
        sa.Column("saved_latest", sa.Integer(), nullable=False),
        sa.Column("saved_flags", sa.Integer(), nullable=False),
        sa.Column("saved_derived", sa.Text(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "rows IN ('layers', 'places', 'interventions', 'objects')",
            name=op.f("ck_saved_question_rows_known"),
        ),
        sa.CheckConstraint(
            "saved_earliest <= saved_latest", name=op.f("ck_saved_question_saved_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_saved_question_person_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_saved_question")),
        sa.UniqueConstraint("name_folded", name=op.f("uq_saved_question_name_folded")),
        sa.UniqueConstraint("uuid", name=op.f("uq_saved_question_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        "ix_layer_dated",
        "layer",
        ["date_latest"],
        sqlite_where=sa.text("date_derived != 'blank'"),
    )
    _climates_outdoors()


def _climates_outdoors() -> None:
    """SQLite changes no CHECK: the table is made anew. Nothing points at it; keys stay used up."""
    op.execute("CREATE TEMP TABLE kept AS SELECT * FROM climate")
    op.execute("CREATE TEMP TABLE used AS SELECT seq FROM sqlite_sequence WHERE name = 'climate'")
    op.drop_table("climate")
    op.create_table(
        "climate",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("room", sa.Text(), nullable=False),
        sa.Column("room_folded", sa.Text(), nullable=False),
        sa.Column("use", sa.Text(), nullable=True),
        sa.Column("min_c", sa.REAL(), nullable=True),
        sa.Column("max_c", sa.REAL(), nullable=True),
        sa.Column("since_words", sa.Text(), nullable=True),
        sa.Column("since_edtf", sa.Text(), nullable=True),
        sa.Column("since_earliest", sa.Integer(), nullable=False),
        sa.Column("since_latest", sa.Integer(), nullable=False),
        sa.Column("since_flags", sa.Integer(), nullable=False),
        sa.Column("since_derived", sa.Text(), nullable=False),
        sa.Column("until_words", sa.Text(), nullable=True),
        sa.Column("until_edtf", sa.Text(), nullable=True),
        sa.Column("until_earliest", sa.Integer(), nullable=False),
        sa.Column("until_latest", sa.Integer(), nullable=False),
        sa.Column("until_flags", sa.Integer(), nullable=False),
        sa.Column("until_derived", sa.Text(), nullable=False),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "use IN ('display', 'storage', 'transport', 'outdoors')",
            name=op.f("ck_climate_use_known"),
        ),
        sa.CheckConstraint("min_c <= max_c", name=op.f("ck_climate_cold_below_warm")),
        sa.CheckConstraint(
            "since_earliest <= since_latest", name=op.f("ck_climate_since_in_order")
        ),
        sa.CheckConstraint(
            "until_earliest <= until_latest", name=op.f("ck_climate_until_in_order")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_climate_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_climate")),
        sa.UniqueConstraint("key", name=op.f("uq_climate_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_climate_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_climate_room_folded"), "climate", ["room_folded"])
    op.execute("INSERT INTO climate SELECT * FROM kept")
    op.execute("DELETE FROM sqlite_sequence WHERE name = 'climate'")
    op.execute("INSERT INTO sqlite_sequence (name, seq) SELECT 'climate', seq FROM used")
    op.execute("DROP TABLE kept")
    op.execute("DROP TABLE used")
