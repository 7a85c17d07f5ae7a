"""CSV files about how materials behave, each value with its condition and source."""

from __future__ import annotations

from sqlalchemy import Table

from conservedb.exchange.columns import Choice, Column, Date, Number, Ref, Whole
from conservedb.exchange.lists import ListColumn
from conservedb.exchange.mixtures import mixture
from conservedb.exchange.subject import NOTE, RECORD, Subject, person, ref, source
from conservedb.records import behaviour
from conservedb.records.treatments import AGENT_FORMS

MATERIAL = Ref("material", "material_id", subject="materials")
BASIS = Choice("basis", values=behaviour.BASES)
TOLD = (
    BASIS,
    source(),
    Column("page"),
    person("confirmed_by"),
    Date("confirmed"),
    NOTE,
    *RECORD,
)
"""How a value is known, and by whom confirmed."""


def _about_material(
    name: str, singular: str, table: Table, *columns: Column | ListColumn
) -> Subject:
    """A file of what is told of materials; a blank key is made from the row."""
    return Subject(
        name,
        singular,
        table,
        ("key",),
        (ref("key"), MATERIAL, *columns, *TOLD),
        in_object=False,
        makes_key=True,
    )


MATERIAL_VALUES = _about_material(
    "material_values",
    "material value",
    behaviour.material_value,
    Choice("property", values=behaviour.PROPERTIES),
    Number("low", positive=False),
    Number("high", positive=False),
    Column("words"),
    Column("condition"),
)

HANSEN = _about_material(
    "hansen",
    "Hansen entry",
    behaviour.hansen,
    Number("d", above_zero=True),
    Number("p"),
    Number("h"),
    Number("r0", above_zero=True),
    Choice("use", values=behaviour.HANSEN_USES),
    Column("quality"),
    Column("condition"),
    Whole("position", default=0),
)

TEAS = _about_material("teas", "Teas entry", behaviour.teas, Number("d"), Number("p"), Number("h"))

SOLUBILITIES = _about_material(
    "solubilities",
    "solubility",
    behaviour.solubility,
    mixture("solubility_part", "solubility_id"),
    Choice("state", values=behaviour.SOLUBILITY_STATES),
    Choice("effect", values=behaviour.SOLUBILITY_EFFECTS),
    Choice("form", values=AGENT_FORMS),
    Number("temperature_c", positive=False),
    Number("dwell_min"),
    Column("condition"),
)

TRAITS = _about_material(
    "traits",
    "trait",
    behaviour.trait,
    Ref("class", "class_id", subject="material_classes"),
    Choice("trait", values=behaviour.TRAITS),
    Choice("holds", values=behaviour.HOLDS),
    Column("effect"),
)

PERIODS = _about_material(
    "periods",
    "period of use",
    behaviour.period,
    Choice("mark", values=behaviour.PERIOD_MARKS),
    Date("date"),
)
