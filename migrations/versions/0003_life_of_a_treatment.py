"""the life of a treatment"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    _new_tables()
    _new_columns()
    op.create_index("ix_removal_in_object", "removal", ["object_id", "id"], unique=True)
    for table, column, name in (
        ("agent", "batch_id", "ix_agent_batch"),
        ("intervention", "planned_step_id", "ix_intervention_planned"),
        ("layer", "batch_id", "ix_layer_batch"),
    ):
        where = sa.text(f"{column} IS NOT NULL")
        op.create_index(name, table, [column], unique=False, sqlite_where=where)


def _new_columns() -> None:
    """Constraints stand in the columns: SQLite adds none to a table that is there already."""
    _text("treatment", "result", "recommendations")
    _date("treatment", "next_check")
    _pointer("intervention", "planned_step_id", "planned_step")
    _text("intervention", "deviation")
    _word("intervention", "standing", "planned", "routine care", "first aid", "historic")
    _text("intervention", "unauthorised_reason")
    _pointer("intervention", "unauthorised_by_id", "person")
    _text("intervention", "circumstances", "methods")
    _number("intervention", "recorded_over", "INTEGER", "recorded_over_some", ">= 1")
    _text("intervention", "time_of_day")
    _pointer("layer", "batch_id", "batch")
    _add("layer", "temperature_c REAL")
    _text("layer", "treated_from")
    _number("layer", "cycles", "INTEGER", "cycles_positive", ">= 0")
    _number("layer", "uptake_g", "REAL", "uptake_positive", ">= 0")
    _number("layer", "depth_mm", "REAL", "depth_positive", ">= 0")
    _word("layer", "depth_known", "measured", "sampled", "estimated", "assumed")
    _number("layer", "recorded_over", "INTEGER", "recorded_over_some", ">= 1")
    _pointer("agent", "batch_id", "batch")
    _text("removal", "kept_what", "kept_where")
    _word("removal", "residue_side", "A", "B", "both", "none seen", "unknown")
    _text("removal", "residue")
    _date("component", "retired")
    _text("component", "retired_why")
    _pointer(
        "component",
        "replaced_by_id",
        "component",
        " CONSTRAINT ck_component_not_its_own_successor CHECK (replaced_by_id <> id)",
    )


def _add(table: str, column: str) -> None:
    op.execute(f"ALTER TABLE {table} ADD COLUMN {column}")


def _text(table: str, *names: str) -> None:
    for name in names:
        _add(table, f"{name} TEXT")


def _word(table: str, name: str, *words: str) -> None:
    listed = ", ".join(f"'{word}'" for word in words)
    check = f"CONSTRAINT ck_{table}_{name}_known CHECK ({name} IN ({listed}))"
    _add(table, f"{name} TEXT {check}")


def _number(table: str, name: str, kind: str, rule: str, condition: str) -> None:
    check = f"CONSTRAINT ck_{table}_{rule} CHECK ({name} {condition})"
    _add(table, f"{name} {kind} {check}")


def _pointer(table: str, name: str, target: str, more: str = "") -> None:
    pointer = f"CONSTRAINT fk_{table}_{name} REFERENCES {target} (id)"
    _add(table, f"{name} INTEGER {pointer}{more}")


def _date(table: str, name: str) -> None:
    """Blank in the rows that are there already."""
    in_order = f"CHECK ({name}_earliest <= {name}_latest)"
    _text(table, f"{name}_words", f"{name}_edtf")
    _add(table, f"{name}_earliest INTEGER NOT NULL DEFAULT -8000000")
    _add(
        table,
        f"{name}_latest INTEGER NOT NULL DEFAULT 8000000"
        f" CONSTRAINT ck_{table}_{name}_in_order {in_order}",
    )
    _add(table, f"{name}_flags INTEGER NOT NULL DEFAULT 0")
    _add(table, f"{name}_derived TEXT NOT NULL DEFAULT 'blank'")


def _new_tables() -> None:
    op.create_table(
        "needed_authorisation",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("capacity", sa.Text(), nullable=False),
        sa.Column("author_alone", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "author_alone IN ('yes', 'no')", name=op.f("ck_needed_authorisation_author_alone_known")
        ),
        sa.CheckConstraint(
            "capacity IN ('owner', 'lender', 'curator', 'head of conservation', 'engineer', 'statutory body', 'nobody')",
            name=op.f("ck_needed_authorisation_capacity_known"),
        ),
        sa.CheckConstraint(
            "kind IN ('examine', 'sample', 'clean', 'desalinate', 'consolidate', 'join', 'take apart', 'fill', 'integrate', 'coat', 'support', 'remove earlier work', 'other')",
            name=op.f("ck_needed_authorisation_kind_known"),
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_needed_authorisation")),
        sa.UniqueConstraint("kind", "capacity", name=op.f("uq_needed_authorisation_kind_capacity")),
        sa.UniqueConstraint("uuid", name=op.f("uq_needed_authorisation_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "standing_approval",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("capacity", sa.Text(), nullable=True),
        sa.Column("person_id", sa.Integer(), nullable=True),
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
        sa.Column("conditions", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "capacity IN ('owner', 'lender', 'curator', 'head of conservation', 'engineer', 'statutory body')",
            name=op.f("ck_standing_approval_capacity_known"),
        ),
        sa.CheckConstraint(
            "since_earliest <= since_latest", name=op.f("ck_standing_approval_since_in_order")
        ),
        sa.CheckConstraint(
            "until_earliest <= until_latest", name=op.f("ck_standing_approval_until_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_standing_approval_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_standing_approval_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_standing_approval")),
        sa.UniqueConstraint("ref", name=op.f("uq_standing_approval_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_standing_approval_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "batch",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("material_class_id", sa.Integer(), nullable=True),
        sa.Column("material_words", sa.Text(), nullable=True),
        sa.Column("lot", sa.Text(), nullable=True),
        sa.Column("made_words", sa.Text(), nullable=True),
        sa.Column("made_edtf", sa.Text(), nullable=True),
        sa.Column("made_earliest", sa.Integer(), nullable=False),
        sa.Column("made_latest", sa.Integer(), nullable=False),
        sa.Column("made_flags", sa.Integer(), nullable=False),
        sa.Column("made_derived", sa.Text(), nullable=False),
        sa.Column("made_by_id", sa.Integer(), nullable=True),
        sa.Column("concentration", sa.Text(), nullable=True),
        sa.Column("carrier", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("made_earliest <= made_latest", name=op.f("ck_batch_made_in_order")),
        sa.ForeignKeyConstraint(["made_by_id"], ["person.id"], name=op.f("fk_batch_made_by_id")),
        sa.ForeignKeyConstraint(
            ["material_class_id"], ["material_class.id"], name=op.f("fk_batch_material_class_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_batch_material_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_batch")),
        sa.UniqueConstraint("ref", name=op.f("uq_batch_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_batch_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_batch_material_class_id"), "batch", ["material_class_id"], unique=False
    )
    op.create_index(op.f("ix_batch_material_id"), "batch", ["material_id"], unique=False)
    op.create_table(
        "plan",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("treatment_id", sa.Integer(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("justification", sa.Text(), nullable=True),
        sa.Column("alternatives", sa.Text(), nullable=True),
        sa.Column("risks", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_plan_date_in_order")),
        sa.CheckConstraint("version >= 1", name=op.f("ck_plan_version_from_one")),
        sa.ForeignKeyConstraint(
            ["object_id", "treatment_id"],
            ["treatment.object_id", "treatment.id"],
            name=op.f("fk_plan_object_id_treatment_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_plan_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_plan_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_plan")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_plan_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_plan_object_id_ref")),
        sa.UniqueConstraint("treatment_id", "version", name=op.f("uq_plan_treatment_id_version")),
        sa.UniqueConstraint("uuid", name=op.f("uq_plan_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "standing_approval_kind",
        sa.Column("standing_approval_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "kind IN ('examine', 'sample', 'clean', 'desalinate', 'consolidate', 'join', 'take apart', 'fill', 'integrate', 'coat', 'support', 'remove earlier work', 'other')",
            name=op.f("ck_standing_approval_kind_kind_known"),
        ),
        sa.ForeignKeyConstraint(
            ["standing_approval_id"],
            ["standing_approval.id"],
            name=op.f("fk_standing_approval_kind_standing_approval_id"),
        ),
        sa.PrimaryKeyConstraint(
            "standing_approval_id", "kind", name=op.f("pk_standing_approval_kind")
        ),
        sqlite_strict=True,
    )
    op.create_table(
        "plan_aim",
        sa.Column("plan_id", sa.Integer(), nullable=False),
        sa.Column("aim", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "aim IN ('preventive', 'remedial', 'restoration')", name=op.f("ck_plan_aim_aim_known")
        ),
        sa.ForeignKeyConstraint(["plan_id"], ["plan.id"], name=op.f("fk_plan_aim_plan_id")),
        sa.PrimaryKeyConstraint("plan_id", "aim", name=op.f("pk_plan_aim")),
        sqlite_strict=True,
    )
    op.create_table(
        "plan_person",
        sa.Column("plan_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_plan_person_person_id")
        ),
        sa.ForeignKeyConstraint(["plan_id"], ["plan.id"], name=op.f("fk_plan_person_plan_id")),
        sa.PrimaryKeyConstraint("plan_id", "position", name=op.f("pk_plan_person")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_plan_person_person_id"), "plan_person", ["person_id"], unique=False)
    op.create_table(
        "planned_step",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("plan_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("technique", sa.Text(), nullable=True),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("material_class_id", sa.Integer(), nullable=True),
        sa.Column("material_words", sa.Text(), nullable=True),
        sa.Column("concentration", sa.Text(), nullable=True),
        sa.Column("carrier", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "kind IN ('examine', 'sample', 'clean', 'desalinate', 'consolidate', 'join', 'take apart', 'fill', 'integrate', 'coat', 'support', 'remove earlier work', 'other')",
            name=op.f("ck_planned_step_kind_known"),
        ),
        sa.ForeignKeyConstraint(
            ["material_class_id"],
            ["material_class.id"],
            name=op.f("fk_planned_step_material_class_id"),
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_planned_step_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "plan_id"],
            ["plan.object_id", "plan.id"],
            name=op.f("fk_planned_step_object_id_plan_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id"], ["object.id"], name=op.f("fk_planned_step_object_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_planned_step")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_planned_step_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_planned_step_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_planned_step_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_planned_step_material_class_id"),
        "planned_step",
        ["material_class_id"],
        unique=False,
    )
    op.create_index(
        op.f("ix_planned_step_material_id"), "planned_step", ["material_id"], unique=False
    )
    op.create_index(
        op.f("ix_planned_step_plan_id_position"),
        "planned_step",
        ["plan_id", "position"],
        unique=False,
    )
    op.create_table(
        "planned_step_component",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("planned_step_id", sa.Integer(), nullable=False),
        sa.Column("component_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_planned_step_component_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "planned_step_id"],
            ["planned_step.object_id", "planned_step.id"],
            name=op.f("fk_planned_step_component_object_id_planned_step_id"),
        ),
        sa.PrimaryKeyConstraint(
            "planned_step_id", "component_id", name=op.f("pk_planned_step_component")
        ),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_planned_step_component_component_id"),
        "planned_step_component",
        ["component_id"],
        unique=False,
    )
    op.create_table(
        "planned_step_place",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("planned_step_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_planned_step_place_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "planned_step_id"],
            ["planned_step.object_id", "planned_step.id"],
            name=op.f("fk_planned_step_place_object_id_planned_step_id"),
        ),
        sa.PrimaryKeyConstraint("planned_step_id", "place_id", name=op.f("pk_planned_step_place")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_planned_step_place_place_id"), "planned_step_place", ["place_id"], unique=False
    )
    op.create_table(
        "authorisation",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("plan_id", sa.Integer(), nullable=True),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("capacity", sa.Text(), nullable=True),
        sa.Column("person_id", sa.Integer(), nullable=True),
        sa.Column("decision", sa.Text(), nullable=True),
        sa.Column("scope", sa.Text(), nullable=True),
        sa.Column("conditions", sa.Text(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("expires_words", sa.Text(), nullable=True),
        sa.Column("expires_edtf", sa.Text(), nullable=True),
        sa.Column("expires_earliest", sa.Integer(), nullable=False),
        sa.Column("expires_latest", sa.Integer(), nullable=False),
        sa.Column("expires_flags", sa.Integer(), nullable=False),
        sa.Column("expires_derived", sa.Text(), nullable=False),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("evidence", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "capacity IN ('owner', 'lender', 'curator', 'head of conservation', 'engineer', 'statutory body')",
            name=op.f("ck_authorisation_capacity_known"),
        ),
        sa.CheckConstraint(
            "decision IN ('authorised', 'refused', 'ratified')",
            name=op.f("ck_authorisation_decision_known"),
        ),
        sa.CheckConstraint(
            "date_earliest <= date_latest", name=op.f("ck_authorisation_date_in_order")
        ),
        sa.CheckConstraint(
            "expires_earliest <= expires_latest", name=op.f("ck_authorisation_expires_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_authorisation_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "plan_id"],
            ["plan.object_id", "plan.id"],
            name=op.f("fk_authorisation_object_id_plan_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id"], ["object.id"], name=op.f("fk_authorisation_object_id")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_authorisation_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_authorisation_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_authorisation")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_authorisation_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_authorisation_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_authorisation_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_authorisation_intervention_id"), "authorisation", ["intervention_id"], unique=False
    )
    op.create_index(op.f("ix_authorisation_plan_id"), "authorisation", ["plan_id"], unique=False)
    op.create_table(
        "authorisation_step",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("authorisation_id", sa.Integer(), nullable=False),
        sa.Column("planned_step_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "authorisation_id"],
            ["authorisation.object_id", "authorisation.id"],
            name=op.f("fk_authorisation_step_object_id_authorisation_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "planned_step_id"],
            ["planned_step.object_id", "planned_step.id"],
            name=op.f("fk_authorisation_step_object_id_planned_step_id"),
        ),
        sa.PrimaryKeyConstraint(
            "authorisation_id", "planned_step_id", name=op.f("pk_authorisation_step")
        ),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_authorisation_step_planned_step_id"),
        "authorisation_step",
        ["planned_step_id"],
        unique=False,
    )
    op.create_table(
        "observation",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("layer_id", sa.Integer(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("condition", sa.Text(), nullable=True),
        sa.Column("seen", sa.Text(), nullable=True),
        sa.Column("presumed", sa.Text(), nullable=True),
        sa.Column("extent", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "date_earliest <= date_latest", name=op.f("ck_observation_date_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_observation_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_observation_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_observation_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_observation_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id"], ["object.id"], name=op.f("fk_observation_object_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_observation_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_observation")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_observation_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_observation_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_observation_component_id"), "observation", ["component_id"], unique=False
    )
    op.create_index(
        op.f("ix_observation_intervention_id"), "observation", ["intervention_id"], unique=False
    )
    op.create_index(op.f("ix_observation_layer_id"), "observation", ["layer_id"], unique=False)
    op.create_index(op.f("ix_observation_place_id"), "observation", ["place_id"], unique=False)
    op.create_table(
        "reading",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("layer_id", sa.Integer(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("quantity", sa.Text(), nullable=True),
        sa.Column("value", sa.REAL(), nullable=False),
        sa.Column("unit", sa.Text(), nullable=False),
        sa.Column("instrument", sa.Text(), nullable=True),
        sa.Column("spot", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_reading_date_in_order")),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_reading_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_reading_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_reading_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_reading_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_reading_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_reading_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_reading")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_reading_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_reading_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_reading_component_id"), "reading", ["component_id"], unique=False)
    op.create_index(
        op.f("ix_reading_intervention_id"), "reading", ["intervention_id"], unique=False
    )
    op.create_index(op.f("ix_reading_layer_id"), "reading", ["layer_id"], unique=False)
    op.create_index(op.f("ix_reading_place_id"), "reading", ["place_id"], unique=False)
    op.create_table(
        "observation_person",
        sa.Column("observation_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["observation_id"],
            ["observation.id"],
            name=op.f("fk_observation_person_observation_id"),
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_observation_person_person_id")
        ),
        sa.PrimaryKeyConstraint("observation_id", "position", name=op.f("pk_observation_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_observation_person_person_id"), "observation_person", ["person_id"], unique=False
    )
    op.create_table(
        "reading_person",
        sa.Column("reading_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_reading_person_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["reading_id"], ["reading.id"], name=op.f("fk_reading_person_reading_id")
        ),
        sa.PrimaryKeyConstraint("reading_id", "position", name=op.f("pk_reading_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_reading_person_person_id"), "reading_person", ["person_id"], unique=False
    )
    op.create_table(
        "sample",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("layer_id", sa.Integer(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("removal_id", sa.Integer(), nullable=True),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("what", sa.Text(), nullable=True),
        sa.Column("box", sa.Text(), nullable=True),
        sa.Column("remainder", sa.Text(), nullable=True),
        sa.Column("result", sa.Text(), nullable=True),
        sa.Column("analysed_by", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "kind IN ('sample', 'removed matter')", name=op.f("ck_sample_kind_known")
        ),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_sample_date_in_order")),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_sample_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_sample_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_sample_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_sample_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "removal_id"],
            ["removal.object_id", "removal.id"],
            name=op.f("fk_sample_object_id_removal_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_sample_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_sample_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sample")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_sample_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_sample_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_sample_component_id"), "sample", ["component_id"], unique=False)
    op.create_index(op.f("ix_sample_intervention_id"), "sample", ["intervention_id"], unique=False)
    op.create_index(op.f("ix_sample_layer_id"), "sample", ["layer_id"], unique=False)
    op.create_index(op.f("ix_sample_place_id"), "sample", ["place_id"], unique=False)
    op.create_index(op.f("ix_sample_removal_id"), "sample", ["removal_id"], unique=False)
    op.create_table(
        "sample_person",
        sa.Column("sample_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_sample_person_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["sample_id"], ["sample.id"], name=op.f("fk_sample_person_sample_id")
        ),
        sa.PrimaryKeyConstraint("sample_id", "position", name=op.f("pk_sample_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_sample_person_person_id"), "sample_person", ["person_id"], unique=False
    )
