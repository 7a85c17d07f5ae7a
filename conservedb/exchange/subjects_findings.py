"""CSV files about what was found on an object: observations, readings, samples."""

from __future__ import annotations

from sqlalchemy import Table

from conservedb.exchange.columns import Choice, Column, Date, Number
from conservedb.exchange.lists import people
from conservedb.exchange.subject import NOTE, RECORD, Subject, local, ref, source
from conservedb.records import observations


def _found(singular: str, table: Table, *columns: Column) -> Subject:
    """A file of what was found on a day, on a part, place or layer; `columns` say what."""
    return Subject(
        f"{singular}s",
        singular,
        table,
        ("ref",),
        (
            ref(),
            local("intervention", "intervention_id", "interventions"),
            local("component", "component_id", "components"),
            local("place", "place_id", "places"),
            local("layer", "layer_id", "layers"),
            Date("date"),
            *columns,
            source(),
            people(f"{table.name}_person", f"{table.name}_id"),
            NOTE,
            *RECORD,
        ),
        makes_key=True,
    )


OBSERVATIONS = _found(
    "observation",
    observations.observation,
    Column("condition"),
    Column("seen"),
    Column("presumed"),
    Column("extent"),
)

READINGS = _found(
    "reading",
    observations.reading,
    Column("quantity"),
    Number("value", positive=False),
    Column("unit"),
    Column("instrument"),
    Column("spot"),
)

SAMPLES = _found(
    "sample",
    observations.sample,
    local("removal", "removal_id", "removals"),
    Choice("kind", values=observations.SAMPLE_KINDS),
    Column("what"),
    Column("box"),
    Column("remainder"),
    Column("result"),
    Column("analysed_by"),
)
