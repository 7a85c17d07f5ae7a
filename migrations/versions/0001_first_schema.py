"""first schema"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "database",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("created", sa.Text(), nullable=False),
        sa.Column("fixed_today", sa.Text(), nullable=True),
        sa.CheckConstraint("id = 1", name=op.f("ck_database_one_row")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_database")),
        sqlite_strict=True,
    )
    op.create_table(
        "material_class",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("name_folded", sa.Text(), nullable=True),
        sa.Column("parent_id", sa.Integer(), nullable=True),
        sa.CheckConstraint("parent_id <> id", name=op.f("ck_material_class_not_its_own_parent")),
        sa.ForeignKeyConstraint(
            ["parent_id"], ["material_class.id"], name=op.f("fk_material_class_parent_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_material_class")),
        sa.UniqueConstraint("key", name=op.f("uq_material_class_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_material_class_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_material_class_name_folded"), "material_class", ["name_folded"], unique=False
    )
    op.create_index(
        op.f("ix_material_class_parent_id"), "material_class", ["parent_id"], unique=False
    )
    op.create_table(
        "object",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("number", sa.Text(), nullable=False),
        sa.Column("number_sort", sa.Text(), nullable=False),
        sa.Column("number_folded", sa.Text(), nullable=False),
        sa.Column("title", sa.Text(), nullable=True),
        sa.Column("title_folded", sa.Text(), nullable=True),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("maker", sa.Text(), nullable=True),
        sa.Column("made_words", sa.Text(), nullable=True),
        sa.Column("made_edtf", sa.Text(), nullable=True),
        sa.Column("made_earliest", sa.Integer(), nullable=False),
        sa.Column("made_latest", sa.Integer(), nullable=False),
        sa.Column("made_flags", sa.Integer(), nullable=False),
        sa.Column("made_derived", sa.Text(), nullable=False),
        sa.Column("whereabouts", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("made_earliest <= made_latest", name=op.f("ck_object_made_in_order")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_object")),
        sa.UniqueConstraint("number_folded", name=op.f("uq_object_number_folded")),
        sa.UniqueConstraint("uuid", name=op.f("uq_object_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_object_number_sort"), "object", ["number_sort"], unique=False)
    op.create_index(op.f("ix_object_title_folded"), "object", ["title_folded"], unique=False)
    op.create_table(
        "person",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("name_folded", sa.Text(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.Column("organisation", sa.Text(), nullable=True),
        sa.Column("active_words", sa.Text(), nullable=True),
        sa.Column("active_edtf", sa.Text(), nullable=True),
        sa.Column("active_earliest", sa.Integer(), nullable=False),
        sa.Column("active_latest", sa.Integer(), nullable=False),
        sa.Column("active_flags", sa.Integer(), nullable=False),
        sa.Column("active_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "active_earliest <= active_latest", name=op.f("ck_person_active_in_order")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_person")),
        sa.UniqueConstraint("name_folded", name=op.f("uq_person_name_folded")),
        sa.UniqueConstraint("uuid", name=op.f("uq_person_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "source",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("citation", sa.Text(), nullable=True),
        sa.Column("citation_folded", sa.Text(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_source_date_in_order")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_source")),
        sa.UniqueConstraint("ref", name=op.f("uq_source_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_source_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_source_citation_folded"), "source", ["citation_folded"], unique=False)
    op.create_table(
        "term",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("list", sa.Text(), nullable=False),
        sa.Column("term", sa.Text(), nullable=False),
        sa.Column("definition", sa.Text(), nullable=True),
        sa.Column("thesaurus", sa.Text(), nullable=True),
        sa.Column("thesaurus_id", sa.Text(), nullable=True),
        sa.Column("checked_by", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_term")),
        sa.UniqueConstraint("list", "term", name=op.f("uq_term_list_term")),
        sa.UniqueConstraint("uuid", name=op.f("uq_term_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "material",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("name_folded", sa.Text(), nullable=True),
        sa.Column("class_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["class_id"], ["material_class.id"], name=op.f("fk_material_class_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_material")),
        sa.UniqueConstraint("key", name=op.f("uq_material_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_material_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_material_class_id"), "material", ["class_id"], unique=False)
    op.create_index(op.f("ix_material_name_folded"), "material", ["name_folded"], unique=False)
    op.create_table(
        "person_alias",
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("alias", sa.Text(), nullable=False),
        sa.Column("alias_folded", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_person_alias_person_id")
        ),
        sa.PrimaryKeyConstraint("person_id", "alias", name=op.f("pk_person_alias")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_person_alias_alias_folded"), "person_alias", ["alias_folded"], unique=False
    )
    op.create_table(
        "treatment",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("title", sa.Text(), nullable=True),
        sa.Column("purpose", sa.Text(), nullable=True),
        sa.Column("status", sa.Text(), nullable=True),
        sa.Column("begun_words", sa.Text(), nullable=True),
        sa.Column("begun_edtf", sa.Text(), nullable=True),
        sa.Column("begun_earliest", sa.Integer(), nullable=False),
        sa.Column("begun_latest", sa.Integer(), nullable=False),
        sa.Column("begun_flags", sa.Integer(), nullable=False),
        sa.Column("begun_derived", sa.Text(), nullable=False),
        sa.Column("ended_words", sa.Text(), nullable=True),
        sa.Column("ended_edtf", sa.Text(), nullable=True),
        sa.Column("ended_earliest", sa.Integer(), nullable=False),
        sa.Column("ended_latest", sa.Integer(), nullable=False),
        sa.Column("ended_flags", sa.Integer(), nullable=False),
        sa.Column("ended_derived", sa.Text(), nullable=False),
        sa.Column("lead_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "begun_earliest <= begun_latest", name=op.f("ck_treatment_begun_in_order")
        ),
        sa.CheckConstraint(
            "ended_earliest <= ended_latest", name=op.f("ck_treatment_ended_in_order")
        ),
        sa.ForeignKeyConstraint(["lead_id"], ["person.id"], name=op.f("fk_treatment_lead_id")),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_treatment_object_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_treatment")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_treatment_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_treatment_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_treatment_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_treatment_ended_derived_ended_latest"),
        "treatment",
        ["ended_derived", "ended_latest"],
        unique=False,
    )
    op.create_index(op.f("ix_treatment_lead_id"), "treatment", ["lead_id"], unique=False)
    op.create_table(
        "component",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("mark", sa.Text(), nullable=False),
        sa.Column("mark_folded", sa.Text(), nullable=False),
        sa.Column("parent_id", sa.Integer(), nullable=True),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("name_folded", sa.Text(), nullable=True),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("origin", sa.Text(), nullable=True),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("material_words", sa.Text(), nullable=True),
        sa.Column("width_mm", sa.REAL(), nullable=True),
        sa.Column("height_mm", sa.REAL(), nullable=True),
        sa.Column("depth_mm", sa.REAL(), nullable=True),
        sa.Column("mass_kg", sa.REAL(), nullable=True),
        sa.Column("mass_basis", sa.Text(), nullable=True),
        sa.Column("made_words", sa.Text(), nullable=True),
        sa.Column("made_edtf", sa.Text(), nullable=True),
        sa.Column("made_earliest", sa.Integer(), nullable=False),
        sa.Column("made_latest", sa.Integer(), nullable=False),
        sa.Column("made_flags", sa.Integer(), nullable=False),
        sa.Column("made_derived", sa.Text(), nullable=False),
        sa.Column("lost_words", sa.Text(), nullable=True),
        sa.Column("lost_edtf", sa.Text(), nullable=True),
        sa.Column("lost_earliest", sa.Integer(), nullable=False),
        sa.Column("lost_latest", sa.Integer(), nullable=False),
        sa.Column("lost_flags", sa.Integer(), nullable=False),
        sa.Column("lost_derived", sa.Text(), nullable=False),
        sa.Column("kept_at", sa.Text(), nullable=True),
        sa.Column("known_from", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "known_from IN ('seen', 'documented', 'picture only', 'suspected')",
            name=op.f("ck_component_known_from_known"),
        ),
        sa.CheckConstraint(
            "origin IN ('original', 'later', 'restoration', 'replacement', 'fixing', 'mount', 'uncertain')",
            name=op.f("ck_component_origin_known"),
        ),
        sa.CheckConstraint("lost_earliest <= lost_latest", name=op.f("ck_component_lost_in_order")),
        sa.CheckConstraint("made_earliest <= made_latest", name=op.f("ck_component_made_in_order")),
        sa.CheckConstraint("mass_kg >= 0", name=op.f("ck_component_mass_positive")),
        sa.CheckConstraint("parent_id <> id", name=op.f("ck_component_not_its_own_parent")),
        sa.CheckConstraint(
            "width_mm >= 0 AND height_mm >= 0 AND depth_mm >= 0",
            name=op.f("ck_component_size_positive"),
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_component_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "parent_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_component_object_id_parent_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_component_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_component_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_component")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_component_object_id_id")),
        sa.UniqueConstraint(
            "object_id", "mark_folded", name=op.f("uq_component_object_id_mark_folded")
        ),
        sa.UniqueConstraint("uuid", name=op.f("uq_component_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_component_mark_folded"), "component", ["mark_folded"], unique=False)
    op.create_index(op.f("ix_component_material_id"), "component", ["material_id"], unique=False)
    op.create_index(op.f("ix_component_name_folded"), "component", ["name_folded"], unique=False)
    op.create_index(op.f("ix_component_parent_id"), "component", ["parent_id"], unique=False)
    op.create_table(
        "intervention",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("treatment_id", sa.Integer(), nullable=True),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("technique", sa.Text(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("date_basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("recorded_words", sa.Text(), nullable=True),
        sa.Column("recorded_edtf", sa.Text(), nullable=True),
        sa.Column("recorded_earliest", sa.Integer(), nullable=False),
        sa.Column("recorded_latest", sa.Integer(), nullable=False),
        sa.Column("recorded_flags", sa.Integer(), nullable=False),
        sa.Column("recorded_derived", sa.Text(), nullable=False),
        sa.Column("recorded_by_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "kind IN ('examine', 'sample', 'clean', 'desalinate', 'consolidate', 'join', 'take apart', 'fill', 'integrate', 'coat', 'support', 'remove earlier work', 'other')",
            name=op.f("ck_intervention_kind_known"),
        ),
        sa.CheckConstraint(
            "date_earliest <= date_latest", name=op.f("ck_intervention_date_in_order")
        ),
        sa.CheckConstraint(
            "recorded_earliest <= recorded_latest", name=op.f("ck_intervention_recorded_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "treatment_id"],
            ["treatment.object_id", "treatment.id"],
            name=op.f("fk_intervention_object_id_treatment_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id"], ["object.id"], name=op.f("fk_intervention_object_id")
        ),
        sa.ForeignKeyConstraint(
            ["recorded_by_id"], ["person.id"], name=op.f("fk_intervention_recorded_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_intervention_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_intervention")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_intervention_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_intervention_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_intervention_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_intervention_date_latest"), "intervention", ["date_latest"], unique=False
    )
    op.create_index(
        op.f("ix_intervention_treatment_id"), "intervention", ["treatment_id"], unique=False
    )
    op.create_table(
        "material_alias",
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("alias", sa.Text(), nullable=False),
        sa.Column("alias_folded", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_material_alias_material_id")
        ),
        sa.PrimaryKeyConstraint("material_id", "alias", name=op.f("pk_material_alias")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_material_alias_alias_folded"), "material_alias", ["alias_folded"], unique=False
    )
    op.create_table(
        "material_part",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("part_id", sa.Integer(), nullable=False),
        sa.Column("amount", sa.REAL(), nullable=True),
        sa.Column("unit", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "part_id <> material_id", name=op.f("ck_material_part_not_part_of_itself")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_material_part_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["part_id"], ["material.id"], name=op.f("fk_material_part_part_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_material_part")),
        sa.UniqueConstraint(
            "material_id", "part_id", name=op.f("uq_material_part_material_id_part_id")
        ),
        sa.UniqueConstraint("uuid", name=op.f("uq_material_part_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_material_part_part_id"), "material_part", ["part_id"], unique=False)
    op.create_table(
        "agent",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("material_class_id", sa.Integer(), nullable=True),
        sa.Column("material_words", sa.Text(), nullable=True),
        sa.Column("concentration", sa.Text(), nullable=True),
        sa.Column("form", sa.Text(), nullable=True),
        sa.Column("temperature_c", sa.REAL(), nullable=True),
        sa.Column("dwell_min", sa.REAL(), nullable=True),
        sa.Column("cleared", sa.Text(), nullable=True),
        sa.Column("cleared_how", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "form IN ('free', 'swab', 'gel', 'poultice', 'vapour', 'bath')",
            name=op.f("ck_agent_form_known"),
        ),
        sa.ForeignKeyConstraint(
            ["material_class_id"], ["material_class.id"], name=op.f("fk_agent_material_class_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_agent_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_agent_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_agent_object_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_agent")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_agent_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_agent_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_agent_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_agent_intervention_id"), "agent", ["intervention_id"], unique=False)
    op.create_index(
        op.f("ix_agent_material_class_id"), "agent", ["material_class_id"], unique=False
    )
    op.create_index(op.f("ix_agent_material_id"), "agent", ["material_id"], unique=False)
    op.create_table(
        "intervention_aim",
        sa.Column("intervention_id", sa.Integer(), nullable=False),
        sa.Column("aim", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "aim IN ('preventive', 'remedial', 'restoration')",
            name=op.f("ck_intervention_aim_aim_known"),
        ),
        sa.ForeignKeyConstraint(
            ["intervention_id"],
            ["intervention.id"],
            name=op.f("fk_intervention_aim_intervention_id"),
        ),
        sa.PrimaryKeyConstraint("intervention_id", "aim", name=op.f("pk_intervention_aim")),
        sqlite_strict=True,
    )
    op.create_table(
        "intervention_component",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=False),
        sa.Column("component_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_intervention_component_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_intervention_component_object_id_intervention_id"),
        ),
        sa.PrimaryKeyConstraint(
            "intervention_id", "component_id", name=op.f("pk_intervention_component")
        ),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_intervention_component_component_id"),
        "intervention_component",
        ["component_id"],
        unique=False,
    )
    op.create_table(
        "intervention_person",
        sa.Column("intervention_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["intervention_id"],
            ["intervention.id"],
            name=op.f("fk_intervention_person_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_intervention_person_person_id")
        ),
        sa.PrimaryKeyConstraint("intervention_id", "position", name=op.f("pk_intervention_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_intervention_person_person_id"), "intervention_person", ["person_id"], unique=False
    )
    op.create_table(
        "place",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("mark", sa.Text(), nullable=False),
        sa.Column("mark_folded", sa.Text(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("other_component_id", sa.Integer(), nullable=True),
        sa.Column("name", sa.Text(), nullable=True),
        sa.Column("name_folded", sa.Text(), nullable=True),
        sa.Column("geometry", sa.Text(), nullable=True),
        sa.Column("arose", sa.Text(), nullable=True),
        sa.Column("arose_words", sa.Text(), nullable=True),
        sa.Column("arose_edtf", sa.Text(), nullable=True),
        sa.Column("arose_earliest", sa.Integer(), nullable=False),
        sa.Column("arose_latest", sa.Integer(), nullable=False),
        sa.Column("arose_flags", sa.Integer(), nullable=False),
        sa.Column("arose_derived", sa.Text(), nullable=False),
        sa.Column("fit", sa.Text(), nullable=True),
        sa.Column("load_kg", sa.REAL(), nullable=True),
        sa.Column("load_source_id", sa.Integer(), nullable=True),
        sa.Column("access", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("arose IN ('making', 'breaking')", name=op.f("ck_place_arose_known")),
        sa.CheckConstraint(
            "kind = 'joint' OR other_component_id IS NULL",
            name=op.f("ck_place_only_joints_have_side_b"),
        ),
        sa.CheckConstraint(
            "kind IN ('joint', 'surface', 'body', 'cavity')", name=op.f("ck_place_kind_known")
        ),
        sa.CheckConstraint("arose_earliest <= arose_latest", name=op.f("ck_place_arose_in_order")),
        sa.CheckConstraint("load_kg >= 0", name=op.f("ck_place_load_positive")),
        sa.ForeignKeyConstraint(
            ["load_source_id"], ["source.id"], name=op.f("fk_place_load_source_id")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_place_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "other_component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_place_object_id_other_component_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_place_object_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_place")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_place_object_id_id")),
        sa.UniqueConstraint(
            "object_id", "mark_folded", name=op.f("uq_place_object_id_mark_folded")
        ),
        sa.UniqueConstraint("uuid", name=op.f("uq_place_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_place_component_id"), "place", ["component_id"], unique=False)
    op.create_index(op.f("ix_place_mark_folded"), "place", ["mark_folded"], unique=False)
    op.create_index(op.f("ix_place_name_folded"), "place", ["name_folded"], unique=False)
    op.create_index(
        op.f("ix_place_other_component_id"), "place", ["other_component_id"], unique=False
    )
    op.create_table(
        "whereabouts",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_name", sa.Text(), nullable=True),
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
            "since_earliest <= since_latest", name=op.f("ck_whereabouts_since_in_order")
        ),
        sa.CheckConstraint(
            "until_earliest <= until_latest", name=op.f("ck_whereabouts_until_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_whereabouts_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id"], ["object.id"], name=op.f("fk_whereabouts_object_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_whereabouts_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_whereabouts")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_whereabouts_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_whereabouts_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "agent_place",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("agent_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "agent_id"],
            ["agent.object_id", "agent.id"],
            name=op.f("fk_agent_place_object_id_agent_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_agent_place_object_id_place_id"),
        ),
        sa.PrimaryKeyConstraint("agent_id", "place_id", name=op.f("pk_agent_place")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_agent_place_place_id"), "agent_place", ["place_id"], unique=False)
    op.create_table(
        "bridge",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("component_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_bridge_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_bridge_object_id_place_id"),
        ),
        sa.PrimaryKeyConstraint("component_id", "place_id", name=op.f("pk_bridge")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_bridge_place_id"), "bridge", ["place_id"], unique=False)
    op.create_table(
        "intervention_place",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_intervention_place_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_intervention_place_object_id_place_id"),
        ),
        sa.PrimaryKeyConstraint("intervention_id", "place_id", name=op.f("pk_intervention_place")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_intervention_place_place_id"), "intervention_place", ["place_id"], unique=False
    )
    op.create_table(
        "joint_event",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("event", sa.Text(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("step", sa.Integer(), nullable=True),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("location", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "event IN ('closed', 'moving', 'opened', 'failed')",
            name=op.f("ck_joint_event_event_known"),
        ),
        sa.CheckConstraint(
            "date_earliest <= date_latest", name=op.f("ck_joint_event_date_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_joint_event_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_joint_event_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id"], ["object.id"], name=op.f("fk_joint_event_object_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_joint_event_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_joint_event")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_joint_event_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_joint_event_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_joint_event_intervention_id"), "joint_event", ["intervention_id"], unique=False
    )
    op.create_index(op.f("ix_joint_event_place_id"), "joint_event", ["place_id"], unique=False)
    op.create_index(
        "ix_joint_event_restless",
        "joint_event",
        ["date_latest"],
        unique=False,
        sqlite_where=sa.text("event IN ('moving', 'failed')"),
    )
    op.create_table(
        "layer",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("origin", sa.Text(), nullable=True),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("material_class_id", sa.Integer(), nullable=True),
        sa.Column("material_words", sa.Text(), nullable=True),
        sa.Column("role", sa.Text(), nullable=True),
        sa.Column("stack", sa.Integer(), nullable=True),
        sa.Column("side", sa.Text(), nullable=True),
        sa.Column("zone", sa.Text(), nullable=True),
        sa.Column("coverage", sa.Text(), nullable=True),
        sa.Column("concentration", sa.Text(), nullable=True),
        sa.Column("carrier", sa.Text(), nullable=True),
        sa.Column("dry", sa.Text(), nullable=True),
        sa.Column("identified", sa.Text(), nullable=True),
        sa.Column("significance", sa.Text(), nullable=True),
        sa.Column("significance_by_id", sa.Integer(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.Column("came_from", sa.Integer(), nullable=False),
        sa.Column("came_to", sa.Integer(), nullable=False),
        sa.Column("reduced_from", sa.Integer(), nullable=False),
        sa.Column("reduced_to", sa.Integer(), nullable=False),
        sa.Column("gone_from", sa.Integer(), nullable=False),
        sa.Column("gone_to", sa.Integer(), nullable=False),
        sa.Column("came_flags", sa.Integer(), nullable=False),
        sa.Column("reduced_flags", sa.Integer(), nullable=False),
        sa.Column("gone_flags", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "coverage IN ('whole', 'part', 'spots', 'unknown')",
            name=op.f("ck_layer_coverage_known"),
        ),
        sa.CheckConstraint("dry IN ('yes', 'no', 'unknown')", name=op.f("ck_layer_dry_known")),
        sa.CheckConstraint(
            "identified IN ('analysed', 'documented by the maker', 'documented later', 'inferred', 'unknown')",
            name=op.f("ck_layer_identified_known"),
        ),
        sa.CheckConstraint(
            "origin IN ('applied', 'maker', 'arisen')", name=op.f("ck_layer_origin_known")
        ),
        sa.CheckConstraint("side IN ('A', 'B')", name=op.f("ck_layer_side_known")),
        sa.CheckConstraint(
            "significance IN ('keep', 'may go', 'undecided')",
            name=op.f("ck_layer_significance_known"),
        ),
        sa.CheckConstraint("zone IN ('face', 'edge', 'core')", name=op.f("ck_layer_zone_known")),
        sa.CheckConstraint(
            "came_from <= came_to AND reduced_from <= reduced_to AND gone_from <= gone_to",
            name=op.f("ck_layer_bounds_in_order"),
        ),
        sa.CheckConstraint(
            "came_to <= gone_to AND came_from <= gone_from AND came_to <= reduced_to AND came_from <= reduced_from",
            name=op.f("ck_layer_came_before_it_went"),
        ),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_layer_date_in_order")),
        sa.ForeignKeyConstraint(
            ["material_class_id"], ["material_class.id"], name=op.f("fk_layer_material_class_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_layer_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_layer_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_layer_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_layer_object_id")),
        sa.ForeignKeyConstraint(
            ["significance_by_id"], ["person.id"], name=op.f("fk_layer_significance_by_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_layer_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_layer")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_layer_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_layer_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_layer_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_layer_intervention_id"), "layer", ["intervention_id"], unique=False)
    op.create_index(
        op.f("ix_layer_material_class_id_place_id"),
        "layer",
        ["material_class_id", "place_id"],
        unique=False,
    )
    op.create_index(
        op.f("ix_layer_material_id_material_class_id"),
        "layer",
        ["material_id", "material_class_id"],
        unique=False,
    )
    op.create_index(op.f("ix_layer_place_id_stack"), "layer", ["place_id", "stack"], unique=False)
    op.create_index(
        "ix_layer_temporary",
        "layer",
        ["place_id"],
        unique=False,
        sqlite_where=sa.text(
            "role IN ('facing', 'temporary support', 'temporary fill', 'temporary consolidant')"
        ),
    )
    op.create_index(
        "ix_layer_unplaced",
        "layer",
        ["object_id"],
        unique=False,
        sqlite_where=sa.text("place_id IS NULL"),
    )
    op.create_table(
        "warning",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("kind", sa.Text(), nullable=True),
        sa.Column("text", sa.Text(), nullable=True),
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
            "since_earliest <= since_latest", name=op.f("ck_warning_since_in_order")
        ),
        sa.CheckConstraint(
            "until_earliest <= until_latest", name=op.f("ck_warning_until_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_warning_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_warning_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_warning_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_warning_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_warning")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_warning_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_warning_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_warning_until_latest"), "warning", ["until_latest"], unique=False)
    op.create_table(
        "layer_candidate",
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("layer_id", sa.Integer(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_layer_candidate_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_layer_candidate_object_id_place_id"),
        ),
        sa.PrimaryKeyConstraint("layer_id", "place_id", name=op.f("pk_layer_candidate")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_layer_candidate_place_id"), "layer_candidate", ["place_id"], unique=False
    )
    op.create_table(
        "layer_side",
        sa.Column("layer_id", sa.Integer(), nullable=False),
        sa.Column("side", sa.Text(), nullable=False),
        sa.Column("came_from", sa.Integer(), nullable=False),
        sa.Column("came_to", sa.Integer(), nullable=False),
        sa.Column("reduced_from", sa.Integer(), nullable=False),
        sa.Column("reduced_to", sa.Integer(), nullable=False),
        sa.Column("gone_from", sa.Integer(), nullable=False),
        sa.Column("gone_to", sa.Integer(), nullable=False),
        sa.Column("came_flags", sa.Integer(), nullable=False),
        sa.Column("reduced_flags", sa.Integer(), nullable=False),
        sa.Column("gone_flags", sa.Integer(), nullable=False),
        sa.CheckConstraint("side IN ('A', 'B')", name=op.f("ck_layer_side_side_known")),
        sa.CheckConstraint(
            "came_from <= came_to AND reduced_from <= reduced_to AND gone_from <= gone_to",
            name=op.f("ck_layer_side_bounds_in_order"),
        ),
        sa.CheckConstraint(
            "came_to <= gone_to AND came_from <= gone_from AND came_to <= reduced_to AND came_from <= reduced_from",
            name=op.f("ck_layer_side_came_before_it_went"),
        ),
        sa.ForeignKeyConstraint(["layer_id"], ["layer.id"], name=op.f("fk_layer_side_layer_id")),
        sa.PrimaryKeyConstraint("layer_id", "side", name=op.f("pk_layer_side")),
        sqlite_strict=True,
    )
    op.create_table(
        "removal",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("layer_id", sa.Integer(), nullable=False),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("cause", sa.Text(), nullable=True),
        sa.Column("extent", sa.Text(), nullable=True),
        sa.Column("side", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "extent IN ('all', 'part', 'attempted')", name=op.f("ck_removal_extent_known")
        ),
        sa.CheckConstraint("side IN ('A', 'B')", name=op.f("ck_removal_side_known")),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_removal_date_in_order")),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_removal_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_removal_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_removal_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_removal_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_removal")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_removal_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_removal_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_removal_intervention_id"), "removal", ["intervention_id"], unique=False
    )
    op.create_index(op.f("ix_removal_layer_id"), "removal", ["layer_id"], unique=False)
    op.create_table(
        "sighting",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("layer_id", sa.Integer(), nullable=False),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("result", sa.Text(), nullable=True),
        sa.Column("side", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "result IN ('seen', 'not found', 'not accessible')",
            name=op.f("ck_sighting_result_known"),
        ),
        sa.CheckConstraint("side IN ('A', 'B')", name=op.f("ck_sighting_side_known")),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_sighting_date_in_order")),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_sighting_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_sighting_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_sighting_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sighting")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_sighting_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_sighting_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_sighting_layer_id"), "sighting", ["layer_id"], unique=False)
    op.create_table(
        "sighting_person",
        sa.Column("sighting_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_sighting_person_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["sighting_id"], ["sighting.id"], name=op.f("fk_sighting_person_sighting_id")
        ),
        sa.PrimaryKeyConstraint("sighting_id", "position", name=op.f("pk_sighting_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_sighting_person_person_id"), "sighting_person", ["person_id"], unique=False
    )
    op.create_table(
        "statement",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("subject", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=True),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("layer_id", sa.Integer(), nullable=True),
        sa.Column("intervention_id", sa.Integer(), nullable=True),
        sa.Column("removal_id", sa.Integer(), nullable=True),
        sa.Column("sighting_id", sa.Integer(), nullable=True),
        sa.Column("joint_event_id", sa.Integer(), nullable=True),
        sa.Column("treatment_id", sa.Integer(), nullable=True),
        sa.Column("field", sa.Text(), nullable=True),
        sa.Column("value", sa.Text(), nullable=True),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("followed", sa.Text(), nullable=True),
        sa.Column("decided_by_id", sa.Integer(), nullable=True),
        sa.Column("reason", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("followed IN ('yes', 'no')", name=op.f("ck_statement_followed_known")),
        sa.CheckConstraint(
            "subject IN ('object', 'component', 'place', 'layer', 'intervention', 'removal', 'sighting', 'joint_event', 'treatment')",
            name=op.f("ck_statement_subject_known"),
        ),
        sa.CheckConstraint(
            "(object_id IS NOT NULL) + (component_id IS NOT NULL) + (place_id IS NOT NULL) + (layer_id IS NOT NULL) + (intervention_id IS NOT NULL) + (removal_id IS NOT NULL) + (sighting_id IS NOT NULL) + (joint_event_id IS NOT NULL) + (treatment_id IS NOT NULL) = 1",
            name=op.f("ck_statement_one_subject"),
        ),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_statement_date_in_order")),
        sa.ForeignKeyConstraint(
            ["component_id"], ["component.id"], name=op.f("fk_statement_component_id")
        ),
        sa.ForeignKeyConstraint(
            ["decided_by_id"], ["person.id"], name=op.f("fk_statement_decided_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["intervention_id"], ["intervention.id"], name=op.f("fk_statement_intervention_id")
        ),
        sa.ForeignKeyConstraint(
            ["joint_event_id"], ["joint_event.id"], name=op.f("fk_statement_joint_event_id")
        ),
        sa.ForeignKeyConstraint(["layer_id"], ["layer.id"], name=op.f("fk_statement_layer_id")),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_statement_material_id")
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_statement_object_id")),
        sa.ForeignKeyConstraint(["place_id"], ["place.id"], name=op.f("fk_statement_place_id")),
        sa.ForeignKeyConstraint(
            ["removal_id"], ["removal.id"], name=op.f("fk_statement_removal_id")
        ),
        sa.ForeignKeyConstraint(
            ["sighting_id"], ["sighting.id"], name=op.f("fk_statement_sighting_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_statement_source_id")),
        sa.ForeignKeyConstraint(
            ["treatment_id"], ["treatment.id"], name=op.f("fk_statement_treatment_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_statement")),
        sa.UniqueConstraint("key", name=op.f("uq_statement_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_statement_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_statement_component_id"), "statement", ["component_id"], unique=False)
    op.create_index(
        op.f("ix_statement_intervention_id"), "statement", ["intervention_id"], unique=False
    )
    op.create_index(
        op.f("ix_statement_joint_event_id"), "statement", ["joint_event_id"], unique=False
    )
    op.create_index(op.f("ix_statement_layer_id"), "statement", ["layer_id"], unique=False)
    op.create_index(op.f("ix_statement_material_id"), "statement", ["material_id"], unique=False)
    op.create_index(op.f("ix_statement_object_id"), "statement", ["object_id"], unique=False)
    op.create_index(op.f("ix_statement_place_id"), "statement", ["place_id"], unique=False)
    op.create_index(op.f("ix_statement_removal_id"), "statement", ["removal_id"], unique=False)
    op.create_index(op.f("ix_statement_sighting_id"), "statement", ["sighting_id"], unique=False)
    op.create_index(op.f("ix_statement_treatment_id"), "statement", ["treatment_id"], unique=False)
    op.create_table(
        "statement_person",
        sa.Column("statement_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_statement_person_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["statement_id"], ["statement.id"], name=op.f("fk_statement_person_statement_id")
        ),
        sa.PrimaryKeyConstraint("statement_id", "position", name=op.f("pk_statement_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_statement_person_person_id"), "statement_person", ["person_id"], unique=False
    )
