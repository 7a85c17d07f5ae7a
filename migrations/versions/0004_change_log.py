"""change log"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "change_set",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("who", sa.Text(), nullable=False),
        sa.Column("at", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("reason", sa.Text(), nullable=True),
        sa.Column("program", sa.Text(), nullable=False),
        sa.Column("undoes_id", sa.Integer(), nullable=True),
        sa.Column("changes", sa.Integer(), nullable=True),
        sa.Column("last_change", sa.Integer(), nullable=True),
        sa.Column("prev", sa.Text(), nullable=True),
        sa.Column("hash", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["undoes_id"], ["change_set.id"], name=op.f("fk_change_set_undoes_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_change_set")),
        sa.UniqueConstraint("prev", name=op.f("uq_change_set_prev")),
        sa.UniqueConstraint("hash", name=op.f("uq_change_set_hash")),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index(
        "ix_change_set_open", "change_set", ["hash"], sqlite_where=sa.text("hash IS NULL")
    )
    op.create_index(op.f("ix_change_set_undoes_id"), "change_set", ["undoes_id"])
    op.create_table(
        "change",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("set_id", sa.Integer(), nullable=False),
        sa.Column("table_name", sa.Text(), nullable=False),
        sa.Column("record_id", sa.Integer(), nullable=False),
        sa.Column("before", sa.Text(), nullable=True),
        sa.Column("after", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(["set_id"], ["change_set.id"], name=op.f("fk_change_set_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_change")),
        sqlite_strict=True,
        sqlite_autoincrement=True,
    )
    op.create_index(op.f("ix_change_table_name_record_id"), "change", ["table_name", "record_id"])
    op.create_index(
        "ix_change_gone", "change", ["table_name"], sqlite_where=sa.text("after IS NULL")
    )
