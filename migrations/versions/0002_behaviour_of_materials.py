"""behaviour of materials"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "shipped",
        sa.Column("subject", sa.Text(), nullable=False),
        sa.Column("record_id", sa.Integer(), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("subject", "record_id", name=op.f("pk_shipped")),
        sqlite_strict=True,
    )
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
            "use IN ('display', 'storage', 'transport')", name=op.f("ck_climate_use_known")
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
    op.create_index(op.f("ix_climate_room_folded"), "climate", ["room_folded"], unique=False)
    op.create_table(
        "hazard_statement",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("code", sa.Text(), nullable=False),
        sa.Column("wording", sa.Text(), nullable=False),
        sa.Column("band", sa.Text(), nullable=True),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("checked_words", sa.Text(), nullable=True),
        sa.Column("checked_edtf", sa.Text(), nullable=True),
        sa.Column("checked_earliest", sa.Integer(), nullable=False),
        sa.Column("checked_latest", sa.Integer(), nullable=False),
        sa.Column("checked_flags", sa.Integer(), nullable=False),
        sa.Column("checked_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "band IN ('A', 'B', 'C', 'D')", name=op.f("ck_hazard_statement_band_known")
        ),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_hazard_statement_basis_known"),
        ),
        sa.CheckConstraint(
            "checked_earliest <= checked_latest", name=op.f("ck_hazard_statement_checked_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_hazard_statement_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_hazard_statement")),
        sa.UniqueConstraint("code", name=op.f("uq_hazard_statement_code")),
        sa.UniqueConstraint("uuid", name=op.f("uq_hazard_statement_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "rule",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("title", sa.Text(), nullable=False),
        sa.Column("severity", sa.Text(), nullable=False),
        sa.Column("judges", sa.Text(), nullable=False),
        sa.Column("needs", sa.Text(), nullable=True),
        sa.Column("sentence", sa.Text(), nullable=False),
        sa.Column("active", sa.Text(), nullable=True),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("active IN ('yes', 'no')", name=op.f("ck_rule_active_known")),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_rule_basis_known"),
        ),
        sa.CheckConstraint("judges IN ('safety', 'conduct')", name=op.f("ck_rule_judges_known")),
        sa.CheckConstraint(
            "severity IN ('block', 'warn', 'inform')", name=op.f("ck_rule_severity_known")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_rule_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rule")),
        sa.UniqueConstraint("key", name=op.f("uq_rule_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_rule_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "setting",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_setting_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_setting")),
        sa.UniqueConstraint("name", name=op.f("uq_setting_name")),
        sa.UniqueConstraint("uuid", name=op.f("uq_setting_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_table(
        "exposure_limit",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.Text(), nullable=False),
        sa.Column("ppm", sa.REAL(), nullable=True),
        sa.Column("mg_m3", sa.REAL(), nullable=True),
        sa.Column("skin", sa.Text(), nullable=True),
        sa.Column("jurisdiction", sa.Text(), nullable=False),
        sa.Column("as_of_words", sa.Text(), nullable=True),
        sa.Column("as_of_edtf", sa.Text(), nullable=True),
        sa.Column("as_of_earliest", sa.Integer(), nullable=False),
        sa.Column("as_of_latest", sa.Integer(), nullable=False),
        sa.Column("as_of_flags", sa.Integer(), nullable=False),
        sa.Column("as_of_derived", sa.Text(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_exposure_limit_basis_known"),
        ),
        sa.CheckConstraint(
            "kind IN ('TWA', 'STEL', 'ceiling')", name=op.f("ck_exposure_limit_kind_known")
        ),
        sa.CheckConstraint("skin IN ('yes', 'no')", name=op.f("ck_exposure_limit_skin_known")),
        sa.CheckConstraint(
            "as_of_earliest <= as_of_latest", name=op.f("ck_exposure_limit_as_of_in_order")
        ),
        sa.CheckConstraint("ppm > 0 AND mg_m3 > 0", name=op.f("ck_exposure_limit_limit_positive")),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_exposure_limit_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_exposure_limit_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_exposure_limit")),
        sa.UniqueConstraint("key", name=op.f("uq_exposure_limit_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_exposure_limit_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_exposure_limit_material_id"), "exposure_limit", ["material_id"], unique=False
    )
    op.create_table(
        "hansen",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("d", sa.REAL(), nullable=False),
        sa.Column("p", sa.REAL(), nullable=False),
        sa.Column("h", sa.REAL(), nullable=False),
        sa.Column("r0", sa.REAL(), nullable=True),
        sa.Column("use", sa.Text(), nullable=True),
        sa.Column("quality", sa.Text(), nullable=True),
        sa.Column("condition", sa.Text(), nullable=True),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("confirmed_by_id", sa.Integer(), nullable=True),
        sa.Column("confirmed_words", sa.Text(), nullable=True),
        sa.Column("confirmed_edtf", sa.Text(), nullable=True),
        sa.Column("confirmed_earliest", sa.Integer(), nullable=False),
        sa.Column("confirmed_latest", sa.Integer(), nullable=False),
        sa.Column("confirmed_flags", sa.Integer(), nullable=False),
        sa.Column("confirmed_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_hansen_basis_known"),
        ),
        sa.CheckConstraint(
            "use IN ('dissolution', 'swelling only', 'proxy')", name=op.f("ck_hansen_use_known")
        ),
        sa.CheckConstraint(
            "confirmed_earliest <= confirmed_latest", name=op.f("ck_hansen_confirmed_in_order")
        ),
        sa.CheckConstraint(
            "d > 0 AND p >= 0 AND h >= 0 AND r0 > 0", name=op.f("ck_hansen_parameters_positive")
        ),
        sa.ForeignKeyConstraint(
            ["confirmed_by_id"], ["person.id"], name=op.f("fk_hansen_confirmed_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_hansen_material_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_hansen_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_hansen")),
        sa.UniqueConstraint("key", name=op.f("uq_hansen_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_hansen_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_hansen_material_id_position"), "hansen", ["material_id", "position"], unique=False
    )
    op.create_table(
        "hazard",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("statement_id", sa.Integer(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("checked_words", sa.Text(), nullable=True),
        sa.Column("checked_edtf", sa.Text(), nullable=True),
        sa.Column("checked_earliest", sa.Integer(), nullable=False),
        sa.Column("checked_latest", sa.Integer(), nullable=False),
        sa.Column("checked_flags", sa.Integer(), nullable=False),
        sa.Column("checked_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_hazard_basis_known"),
        ),
        sa.CheckConstraint(
            "checked_earliest <= checked_latest", name=op.f("ck_hazard_checked_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_hazard_material_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_hazard_source_id")),
        sa.ForeignKeyConstraint(
            ["statement_id"], ["hazard_statement.id"], name=op.f("fk_hazard_statement_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_hazard")),
        sa.UniqueConstraint("key", name=op.f("uq_hazard_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_hazard_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_hazard_material_id"), "hazard", ["material_id"], unique=False)
    op.create_index(op.f("ix_hazard_statement_id"), "hazard", ["statement_id"], unique=False)
    op.create_table(
        "material_value",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("property", sa.Text(), nullable=False),
        sa.Column("low", sa.REAL(), nullable=True),
        sa.Column("high", sa.REAL(), nullable=True),
        sa.Column("words", sa.Text(), nullable=True),
        sa.Column("condition", sa.Text(), nullable=True),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("confirmed_by_id", sa.Integer(), nullable=True),
        sa.Column("confirmed_words", sa.Text(), nullable=True),
        sa.Column("confirmed_edtf", sa.Text(), nullable=True),
        sa.Column("confirmed_earliest", sa.Integer(), nullable=False),
        sa.Column("confirmed_latest", sa.Integer(), nullable=False),
        sa.Column("confirmed_flags", sa.Integer(), nullable=False),
        sa.Column("confirmed_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_material_value_basis_known"),
        ),
        sa.CheckConstraint(
            "property IN ('glass transition', 'softening', 'melting', 'density', 'refractive index', 'pH', 'tensile strength', 'shear strength', 'boiling point', 'flash point', 'vapour pressure', 'evaporation rate', 'molar volume', 'water miscibility', 'hazard band', 'carcinogen group', 'CAS number', 'light stability', 'reversibility', 'ageing', 'solubility in words', 'note')",
            name=op.f("ck_material_value_property_known"),
        ),
        sa.CheckConstraint(
            "confirmed_earliest <= confirmed_latest",
            name=op.f("ck_material_value_confirmed_in_order"),
        ),
        sa.CheckConstraint("low <= high", name=op.f("ck_material_value_low_below_high")),
        sa.CheckConstraint(
            "low IS NOT NULL OR high IS NULL", name=op.f("ck_material_value_low_with_high")
        ),
        sa.ForeignKeyConstraint(
            ["confirmed_by_id"], ["person.id"], name=op.f("fk_material_value_confirmed_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_material_value_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_material_value_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_material_value")),
        sa.UniqueConstraint("key", name=op.f("uq_material_value_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_material_value_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_material_value_material_id_property"),
        "material_value",
        ["material_id", "property"],
        unique=False,
    )
    op.create_index(
        op.f("ix_material_value_property"), "material_value", ["property"], unique=False
    )
    op.create_table(
        "period",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("mark", sa.Text(), nullable=False),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("confirmed_by_id", sa.Integer(), nullable=True),
        sa.Column("confirmed_words", sa.Text(), nullable=True),
        sa.Column("confirmed_edtf", sa.Text(), nullable=True),
        sa.Column("confirmed_earliest", sa.Integer(), nullable=False),
        sa.Column("confirmed_latest", sa.Integer(), nullable=False),
        sa.Column("confirmed_flags", sa.Integer(), nullable=False),
        sa.Column("confirmed_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_period_basis_known"),
        ),
        sa.CheckConstraint(
            "mark IN ('first made', 'in use from', 'given up')", name=op.f("ck_period_mark_known")
        ),
        sa.CheckConstraint(
            "confirmed_earliest <= confirmed_latest", name=op.f("ck_period_confirmed_in_order")
        ),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_period_date_in_order")),
        sa.ForeignKeyConstraint(
            ["confirmed_by_id"], ["person.id"], name=op.f("fk_period_confirmed_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_period_material_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_period_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_period")),
        sa.UniqueConstraint("key", name=op.f("uq_period_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_period_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_period_material_id"), "period", ["material_id"], unique=False)
    op.create_table(
        "restriction",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("jurisdiction", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("since_words", sa.Text(), nullable=True),
        sa.Column("since_edtf", sa.Text(), nullable=True),
        sa.Column("since_earliest", sa.Integer(), nullable=False),
        sa.Column("since_latest", sa.Integer(), nullable=False),
        sa.Column("since_flags", sa.Integer(), nullable=False),
        sa.Column("since_derived", sa.Text(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_restriction_basis_known"),
        ),
        sa.CheckConstraint(
            "since_earliest <= since_latest", name=op.f("ck_restriction_since_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_restriction_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["source_id"], ["source.id"], name=op.f("fk_restriction_source_id")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_restriction")),
        sa.UniqueConstraint("key", name=op.f("uq_restriction_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_restriction_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_restriction_material_id"), "restriction", ["material_id"], unique=False
    )
    op.create_table(
        "solubility",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("state", sa.Text(), nullable=True),
        sa.Column("effect", sa.Text(), nullable=False),
        sa.Column("form", sa.Text(), nullable=True),
        sa.Column("temperature_c", sa.REAL(), nullable=True),
        sa.Column("dwell_min", sa.REAL(), nullable=True),
        sa.Column("condition", sa.Text(), nullable=True),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("confirmed_by_id", sa.Integer(), nullable=True),
        sa.Column("confirmed_words", sa.Text(), nullable=True),
        sa.Column("confirmed_edtf", sa.Text(), nullable=True),
        sa.Column("confirmed_earliest", sa.Integer(), nullable=False),
        sa.Column("confirmed_latest", sa.Integer(), nullable=False),
        sa.Column("confirmed_flags", sa.Integer(), nullable=False),
        sa.Column("confirmed_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_solubility_basis_known"),
        ),
        sa.CheckConstraint(
            "effect IN ('dissolves', 'mobilises', 'swells', 'softens', 'attacked', 'no effect')",
            name=op.f("ck_solubility_effect_known"),
        ),
        sa.CheckConstraint(
            "form IN ('free', 'swab', 'gel', 'poultice', 'vapour', 'bath')",
            name=op.f("ck_solubility_form_known"),
        ),
        sa.CheckConstraint(
            "state IN ('fresh', 'aged', 'not stated')", name=op.f("ck_solubility_state_known")
        ),
        sa.CheckConstraint(
            "confirmed_earliest <= confirmed_latest", name=op.f("ck_solubility_confirmed_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["confirmed_by_id"], ["person.id"], name=op.f("fk_solubility_confirmed_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_solubility_material_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_solubility_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_solubility")),
        sa.UniqueConstraint("key", name=op.f("uq_solubility_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_solubility_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_solubility_material_id"), "solubility", ["material_id"], unique=False)
    op.create_table(
        "stand_in",
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("as_id", sa.Integer(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint("as_id <> material_id", name=op.f("ck_stand_in_not_itself")),
        sa.ForeignKeyConstraint(["as_id"], ["material.id"], name=op.f("fk_stand_in_as_id")),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_stand_in_material_id")
        ),
        sa.PrimaryKeyConstraint("material_id", name=op.f("pk_stand_in")),
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_stand_in_as_id"), "stand_in", ["as_id"], unique=False)
    op.create_table(
        "teas",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("d", sa.REAL(), nullable=False),
        sa.Column("p", sa.REAL(), nullable=False),
        sa.Column("h", sa.REAL(), nullable=False),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("confirmed_by_id", sa.Integer(), nullable=True),
        sa.Column("confirmed_words", sa.Text(), nullable=True),
        sa.Column("confirmed_edtf", sa.Text(), nullable=True),
        sa.Column("confirmed_earliest", sa.Integer(), nullable=False),
        sa.Column("confirmed_latest", sa.Integer(), nullable=False),
        sa.Column("confirmed_flags", sa.Integer(), nullable=False),
        sa.Column("confirmed_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_teas_basis_known"),
        ),
        sa.CheckConstraint(
            "confirmed_earliest <= confirmed_latest", name=op.f("ck_teas_confirmed_in_order")
        ),
        sa.CheckConstraint("d + p + h BETWEEN 99 AND 101", name=op.f("ck_teas_sums_to_100")),
        sa.ForeignKeyConstraint(
            ["confirmed_by_id"], ["person.id"], name=op.f("fk_teas_confirmed_by_id")
        ),
        sa.ForeignKeyConstraint(["material_id"], ["material.id"], name=op.f("fk_teas_material_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_teas_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_teas")),
        sa.UniqueConstraint("key", name=op.f("uq_teas_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_teas_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_teas_material_id"), "teas", ["material_id"], unique=False)
    op.create_table(
        "trade_name",
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("alias", sa.Text(), nullable=False),
        sa.Column("alias_folded", sa.Text(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_trade_name_material_id")
        ),
        sa.PrimaryKeyConstraint("material_id", "position", name=op.f("pk_trade_name")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_trade_name_alias_folded"), "trade_name", ["alias_folded"], unique=False
    )
    op.create_table(
        "trait",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=True),
        sa.Column("class_id", sa.Integer(), nullable=True),
        sa.Column("trait", sa.Text(), nullable=False),
        sa.Column("holds", sa.Text(), nullable=False),
        sa.Column("effect", sa.Text(), nullable=True),
        sa.Column("basis", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("page", sa.Text(), nullable=True),
        sa.Column("confirmed_by_id", sa.Integer(), nullable=True),
        sa.Column("confirmed_words", sa.Text(), nullable=True),
        sa.Column("confirmed_edtf", sa.Text(), nullable=True),
        sa.Column("confirmed_earliest", sa.Integer(), nullable=False),
        sa.Column("confirmed_latest", sa.Integer(), nullable=False),
        sa.Column("confirmed_flags", sa.Integer(), nullable=False),
        sa.Column("confirmed_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "basis IN ('measured', 'published', 'common practice', 'from memory')",
            name=op.f("ck_trait_basis_known"),
        ),
        sa.CheckConstraint("holds IN ('yes', 'no', 'unknown')", name=op.f("ck_trait_holds_known")),
        sa.CheckConstraint(
            "trait IN ('cross-linked', 'no solvent', 'no Hansen verdict', 'sublimes', 'keeps its solubility', 'loses its solubility', 'porous', 'water-sensitive', 'acid-sensitive', 'alkali-sensitive', 'heat-sensitive', 'gypsum', 'soluble salt', 'iron', 'lead', 'shell', 'metal', 'copper alloy', 'aluminium', 'noble or stainless metal', 'cellulose nitrate', 'gives off acid vapour', 'drying oil', 'creeps under load', 'water', 'acid', 'alkali', 'heat', 'organic solvent', 'carries matter through skin', 'self-heats in rags', 'dust harms')",
            name=op.f("ck_trait_trait_known"),
        ),
        sa.CheckConstraint(
            "(material_id IS NULL) <> (class_id IS NULL)", name=op.f("ck_trait_one_bearer")
        ),
        sa.CheckConstraint(
            "confirmed_earliest <= confirmed_latest", name=op.f("ck_trait_confirmed_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["class_id"], ["material_class.id"], name=op.f("fk_trait_class_id")
        ),
        sa.ForeignKeyConstraint(
            ["confirmed_by_id"], ["person.id"], name=op.f("fk_trait_confirmed_by_id")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_trait_material_id")
        ),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_trait_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_trait")),
        sa.UniqueConstraint("key", name=op.f("uq_trait_key")),
        sa.UniqueConstraint("uuid", name=op.f("uq_trait_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_trait_class_id"), "trait", ["class_id"], unique=False)
    op.create_index(op.f("ix_trait_material_id"), "trait", ["material_id"], unique=False)
    op.create_index(op.f("ix_trait_trait"), "trait", ["trait"], unique=False)
    op.create_table(
        "solubility_part",
        sa.Column("solubility_id", sa.Integer(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("share", sa.REAL(), nullable=True),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "share > 0 AND share <= 100", name=op.f("ck_solubility_part_share_in_percent")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_solubility_part_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["solubility_id"], ["solubility.id"], name=op.f("fk_solubility_part_solubility_id")
        ),
        sa.PrimaryKeyConstraint("solubility_id", "material_id", name=op.f("pk_solubility_part")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_solubility_part_material_id"), "solubility_part", ["material_id"], unique=False
    )
    op.create_table(
        "near",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("place_id", sa.Integer(), nullable=False),
        sa.Column("other_place_id", sa.Integer(), nullable=False),
        sa.Column("distance_mm", sa.REAL(), nullable=True),
        sa.Column("path", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "path IN ('open', 'tight', 'porous', 'unknown')", name=op.f("ck_near_path_known")
        ),
        sa.CheckConstraint("distance_mm >= 0", name=op.f("ck_near_distance_positive")),
        sa.CheckConstraint("place_id <> other_place_id", name=op.f("ck_near_two_places")),
        sa.ForeignKeyConstraint(
            ["object_id", "other_place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_near_object_id_other_place_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_near_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_near_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_near_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_near")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_near_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_near_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(op.f("ix_near_other_place_id"), "near", ["other_place_id"], unique=False)
    op.create_index(op.f("ix_near_place_id"), "near", ["place_id"], unique=False)
    op.create_table(
        "acceptance",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("uuid", sa.Text(), nullable=False),
        sa.Column("entered", sa.Text(), nullable=False),
        sa.Column("object_id", sa.Integer(), nullable=False),
        sa.Column("ref", sa.Text(), nullable=False),
        sa.Column("rule_id", sa.Integer(), nullable=False),
        sa.Column("component_id", sa.Integer(), nullable=True),
        sa.Column("place_id", sa.Integer(), nullable=True),
        sa.Column("layer_id", sa.Integer(), nullable=True),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("date_words", sa.Text(), nullable=True),
        sa.Column("date_edtf", sa.Text(), nullable=True),
        sa.Column("date_earliest", sa.Integer(), nullable=False),
        sa.Column("date_latest", sa.Integer(), nullable=False),
        sa.Column("date_flags", sa.Integer(), nullable=False),
        sa.Column("date_derived", sa.Text(), nullable=False),
        sa.Column("review_words", sa.Text(), nullable=True),
        sa.Column("review_edtf", sa.Text(), nullable=True),
        sa.Column("review_earliest", sa.Integer(), nullable=False),
        sa.Column("review_latest", sa.Integer(), nullable=False),
        sa.Column("review_flags", sa.Integer(), nullable=False),
        sa.Column("review_derived", sa.Text(), nullable=False),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "date_earliest <= date_latest", name=op.f("ck_acceptance_date_in_order")
        ),
        sa.CheckConstraint(
            "review_earliest <= review_latest", name=op.f("ck_acceptance_review_in_order")
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "component_id"],
            ["component.object_id", "component.id"],
            name=op.f("fk_acceptance_object_id_component_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_acceptance_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "place_id"],
            ["place.object_id", "place.id"],
            name=op.f("fk_acceptance_object_id_place_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_acceptance_object_id")),
        sa.ForeignKeyConstraint(["person_id"], ["person.id"], name=op.f("fk_acceptance_person_id")),
        sa.ForeignKeyConstraint(["rule_id"], ["rule.id"], name=op.f("fk_acceptance_rule_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_acceptance")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_acceptance_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_acceptance_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_acceptance_object_id_rule_id"),
        "acceptance",
        ["object_id", "rule_id"],
        unique=False,
    )
    op.create_table(
        "spot_test",
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
        sa.Column("form", sa.Text(), nullable=True),
        sa.Column("area_mm2", sa.REAL(), nullable=True),
        sa.Column("temperature_c", sa.REAL(), nullable=True),
        sa.Column("dwell_min", sa.REAL(), nullable=True),
        sa.Column("pressure", sa.Text(), nullable=True),
        sa.Column("magnification", sa.Text(), nullable=True),
        sa.Column("wet", sa.Text(), nullable=True),
        sa.Column("dry", sa.Text(), nullable=True),
        sa.Column("next_day", sa.Text(), nullable=True),
        sa.Column("swab_colour", sa.Text(), nullable=True),
        sa.Column("tide_line", sa.Text(), nullable=True),
        sa.Column("source_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "dry IN ('dissolves', 'mobilises', 'swells', 'softens', 'attacked', 'no effect')",
            name=op.f("ck_spot_test_dry_known"),
        ),
        sa.CheckConstraint(
            "form IN ('free', 'swab', 'gel', 'poultice', 'vapour', 'bath')",
            name=op.f("ck_spot_test_form_known"),
        ),
        sa.CheckConstraint(
            "next_day IN ('dissolves', 'mobilises', 'swells', 'softens', 'attacked', 'no effect')",
            name=op.f("ck_spot_test_next_day_known"),
        ),
        sa.CheckConstraint(
            "tide_line IN ('yes', 'no', 'unknown')", name=op.f("ck_spot_test_tide_line_known")
        ),
        sa.CheckConstraint(
            "wet IN ('dissolves', 'mobilises', 'swells', 'softens', 'attacked', 'no effect')",
            name=op.f("ck_spot_test_wet_known"),
        ),
        sa.CheckConstraint(
            "area_mm2 > 0 AND dwell_min >= 0", name=op.f("ck_spot_test_measures_positive")
        ),
        sa.CheckConstraint("date_earliest <= date_latest", name=op.f("ck_spot_test_date_in_order")),
        sa.ForeignKeyConstraint(
            ["object_id", "intervention_id"],
            ["intervention.object_id", "intervention.id"],
            name=op.f("fk_spot_test_object_id_intervention_id"),
        ),
        sa.ForeignKeyConstraint(
            ["object_id", "layer_id"],
            ["layer.object_id", "layer.id"],
            name=op.f("fk_spot_test_object_id_layer_id"),
        ),
        sa.ForeignKeyConstraint(["object_id"], ["object.id"], name=op.f("fk_spot_test_object_id")),
        sa.ForeignKeyConstraint(["source_id"], ["source.id"], name=op.f("fk_spot_test_source_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_spot_test")),
        sa.UniqueConstraint("object_id", "id", name=op.f("uq_spot_test_object_id_id")),
        sa.UniqueConstraint("object_id", "ref", name=op.f("uq_spot_test_object_id_ref")),
        sa.UniqueConstraint("uuid", name=op.f("uq_spot_test_uuid")),
        sqlite_autoincrement=True,
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_spot_test_intervention_id"), "spot_test", ["intervention_id"], unique=False
    )
    op.create_index(op.f("ix_spot_test_layer_id"), "spot_test", ["layer_id"], unique=False)
    op.create_table(
        "spot_test_part",
        sa.Column("spot_test_id", sa.Integer(), nullable=False),
        sa.Column("material_id", sa.Integer(), nullable=False),
        sa.Column("share", sa.REAL(), nullable=True),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.CheckConstraint(
            "share > 0 AND share <= 100", name=op.f("ck_spot_test_part_share_in_percent")
        ),
        sa.ForeignKeyConstraint(
            ["material_id"], ["material.id"], name=op.f("fk_spot_test_part_material_id")
        ),
        sa.ForeignKeyConstraint(
            ["spot_test_id"], ["spot_test.id"], name=op.f("fk_spot_test_part_spot_test_id")
        ),
        sa.PrimaryKeyConstraint("spot_test_id", "material_id", name=op.f("pk_spot_test_part")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_spot_test_part_material_id"), "spot_test_part", ["material_id"], unique=False
    )
    op.create_table(
        "spot_test_person",
        sa.Column("spot_test_id", sa.Integer(), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_spot_test_person_person_id")
        ),
        sa.ForeignKeyConstraint(
            ["spot_test_id"], ["spot_test.id"], name=op.f("fk_spot_test_person_spot_test_id")
        ),
        sa.PrimaryKeyConstraint("spot_test_id", "position", name=op.f("pk_spot_test_person")),
        sqlite_strict=True,
    )
    op.create_index(
        op.f("ix_spot_test_person_person_id"), "spot_test_person", ["person_id"], unique=False
    )
    op.add_column("database", sa.Column("edition", sa.Text(), nullable=True))
