"""How materials behave, each value with its condition and source; several may stand side by side.

`basis` says how a value is known. What is known from memory stays marked, and counts for
less than a prediction until somebody has confirmed it.
"""

from __future__ import annotations

from sqlalchemy import (
    REAL,
    CheckConstraint,
    Column,
    ForeignKey,
    Index,
    Integer,
    UniqueConstraint,
)
from sqlalchemy.schema import SchemaItem

from conservedb.records.base import dated, link_table, one_of, record_table, reference, text
from conservedb.records.treatments import AGENT_FORMS

BASES = ("measured", "published", "common practice", "from memory")
PROPERTIES = (
    "glass transition",
    "softening",
    "melting",
    "density",
    "refractive index",
    "pH",
    "tensile strength",
    "shear strength",
    "boiling point",
    "flash point",
    "vapour pressure",
    "evaporation rate",
    "molar volume",
    "water miscibility",
    "hazard band",
    "carcinogen group",
    "CAS number",
    "light stability",
    "reversibility",
    "ageing",
    "solubility in words",
    "note",
)
"""What a value is of; units are those of `UNITS`, other properties are words."""
UNITS = {
    "glass transition": "C",
    "softening": "C",
    "melting": "C",
    "density": "g/cm3",
    "refractive index": "",
    "pH": "",
    "tensile strength": "kPa",
    "shear strength": "kPa",
    "boiling point": "C",
    "flash point": "C",
    "vapour pressure": "kPa at 20 C",
    "evaporation rate": "n-butyl acetate = 1",
    "molar volume": "cm3/mol",
}
HANSEN_USES = ("dissolution", "swelling only", "proxy")
SOLUBILITY_STATES = ("fresh", "aged", "not stated")
SOLUBILITY_EFFECTS = ("dissolves", "mobilises", "swells", "softens", "attacked", "no effect")
HOLDS = ("yes", "no", "unknown")
TRAITS = (
    "cross-linked",
    "no solvent",
    "no Hansen verdict",
    "sublimes",
    "keeps its solubility",
    "loses its solubility",
    "porous",
    "water-sensitive",
    "acid-sensitive",
    "alkali-sensitive",
    "heat-sensitive",
    "gypsum",
    "soluble salt",
    "iron",
    "lead",
    "shell",
    "metal",
    "copper alloy",
    "aluminium",
    "noble or stainless metal",
    "cellulose nitrate",
    "gives off acid vapour",
    "drying oil",
    "creeps under load",
    "water",
    "acid",
    "alkali",
    "heat",
    "organic solvent",
    "carries matter through skin",
    "self-heats in rags",
    "dust harms",
)
"""Closed list of what rules and removal options ask of a material or of its class."""
PERIOD_MARKS = ("first made", "in use from", "given up")


def _told() -> tuple[SchemaItem, ...]:
    """How a value is known, and by whom confirmed."""
    return (
        text("basis"),
        reference("source_id", "source"),
        text("page"),
        reference("confirmed_by_id", "person"),
        *dated("confirmed"),
        text("note"),
        one_of("basis", BASES),
    )


material_value = record_table(
    "material_value",
    text("key", required=True),
    reference("material_id", "material", required=True),
    text("property", required=True),
    Column("low", REAL),
    Column("high", REAL),
    text("words"),
    text("condition"),
    *_told(),
    UniqueConstraint("key"),
    one_of("property", PROPERTIES),
    CheckConstraint("low <= high", name="low_below_high"),
    CheckConstraint("low IS NOT NULL OR high IS NULL", name="low_with_high"),
    Index(None, "material_id", "property"),
    Index(None, "property"),
)
"""One property of a material as one source has it; `low` = `high` where it is one number."""

hansen = record_table(
    "hansen",
    text("key", required=True),
    reference("material_id", "material", required=True),
    Column("d", REAL, nullable=False),
    Column("p", REAL, nullable=False),
    Column("h", REAL, nullable=False),
    Column("r0", REAL),
    text("use"),
    text("quality"),
    text("condition"),
    Column("position", Integer, nullable=False),
    *_told(),
    UniqueConstraint("key"),
    one_of("use", HANSEN_USES),
    CheckConstraint("d > 0 AND p >= 0 AND h >= 0 AND r0 > 0", name="parameters_positive"),
    Index(None, "material_id", "position"),
)
"""Hansen parameters in MPa^0.5; with a radius `r0` the sphere of a polymer. 0 is preferred."""

teas = record_table(
    "teas",
    text("key", required=True),
    reference("material_id", "material", required=True),
    Column("d", REAL, nullable=False),
    Column("p", REAL, nullable=False),
    Column("h", REAL, nullable=False),
    *_told(),
    UniqueConstraint("key"),
    CheckConstraint("d + p + h BETWEEN 99 AND 101", name="sums_to_100"),
    Index(None, "material_id"),
)
"""Published Teas fractions; they are not a function of today's Hansen parameters."""

solubility = record_table(
    "solubility",
    text("key", required=True),
    reference("material_id", "material", required=True),
    text("state"),
    text("effect", required=True),
    text("form"),
    Column("temperature_c", REAL),
    Column("dwell_min", REAL),
    text("condition"),
    *_told(),
    UniqueConstraint("key"),
    one_of("state", SOLUBILITY_STATES),
    one_of("effect", SOLUBILITY_EFFECTS),
    one_of("form", AGENT_FORMS),
    Index(None, "material_id"),
)
"""What an agent (`solubility_part`) was seen to do to a material, fresh or aged."""

solubility_part = link_table(
    "solubility_part",
    Column("solubility_id", Integer, ForeignKey("solubility.id"), primary_key=True),
    Column("material_id", Integer, ForeignKey("material.id"), primary_key=True),
    Column("share", REAL),
    Column("position", Integer, nullable=False),
    CheckConstraint("share > 0 AND share <= 100", name="share_in_percent"),
    Index(None, "material_id"),
)
"""Parts of an agent, in per cent by volume; no share where the agent is one liquid."""

trait = record_table(
    "trait",
    text("key", required=True),
    reference("material_id", "material"),
    reference("class_id", "material_class"),
    text("trait", required=True),
    text("holds", required=True),
    text("effect"),
    *_told(),
    UniqueConstraint("key"),
    one_of("trait", TRAITS),
    one_of("holds", HOLDS),
    CheckConstraint("(material_id IS NULL) <> (class_id IS NULL)", name="one_bearer"),
    Index(None, "material_id"),
    Index(None, "class_id"),
    Index(None, "trait"),
)
"""A class rule, or a trait of one material; the nearest (material, class, its parent) counts."""

period = record_table(
    "period",
    text("key", required=True),
    reference("material_id", "material", required=True),
    text("mark", required=True),
    *dated("date"),
    *_told(),
    UniqueConstraint("key"),
    one_of("mark", PERIOD_MARKS),
    Index(None, "material_id"),
)
"""When a substance could be had, was taken into use for repair, and was given up."""

stand_in = link_table(
    "stand_in",
    Column("material_id", Integer, ForeignKey("material.id"), primary_key=True),
    reference("as_id", "material", required=True),
    text("note"),
    CheckConstraint("as_id <> material_id", name="not_itself"),
    Index(None, "as_id"),
)
"""A department's material that behaves as another one: the values of that one are read for it."""

trade_name = link_table(
    "trade_name",
    Column("material_id", Integer, ForeignKey("material.id"), primary_key=True),
    text("alias", required=True),
    text("alias_folded", required=True),
    Column("position", Integer, primary_key=True),
    Index(None, "alias_folded"),
)
"""Names under which a material was sold. A trade name is a name, not a substance."""
