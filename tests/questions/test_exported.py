"""What `exported` reads out of the tables of an export is what the database holds.

So an answer by hand rests on the same facts as one of the database, and a fact that an export
leaves out is found here: of every record each field that both have, whatever it points at, the
days of its dates, and when each layer came, was reduced and went.
"""

from __future__ import annotations

from typing import Any, NamedTuple

import pytest

from conservedb.demo.build import tables_folder
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.questions.behaviour import Materials
from conservedb.records.every import metadata
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench.collection import make_collection
from tests.conftest import TODAY
from tests.exchange.random_tables import RandomTables
from tests.questions.exported import LISTS, Row, Tables

LINKS = {each.table for each in LISTS.values()}
BOUNDS = {"came_from", "came_to", "reduced_from", "reduced_to", "gone_from", "gone_to"}
POINTERS = {"other_component": "component", "class": "material_class"}


class Both(NamedTuple):
    """The same tables, as the database holds them and as they were read back."""

    held: dict[str, list[Row]]
    read: dict[str, list[Row]]


@pytest.fixture(scope="module", params=["demo", "measured", *range(1, 7)])
def both(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Both:
    folder = tmp_path_factory.mktemp("exported")
    tables = folder / "tables"
    if request.param == "demo":
        tables = tables_folder()
    elif request.param == "measured":
        make_collection(tables, 100)
    else:
        RandomTables(request.param).write(tables)
    create(folder / "collection.db", today=TODAY.isoformat())
    engine, _ = open_database(folder / "collection.db")
    assert import_folder(engine, tables, today=TODAY, who="A. Tester").written
    with reading(engine) as connection:
        export_folder(connection, folder / "exported")
        read = Tables(folder / "exported", Materials(connection)).rows
        held = {
            name: [
                dict(row) for row in connection.execute(metadata.tables[name].select()).mappings()
            ]
            for name in read
        }
    engine.dispose()
    return Both(held, read)


def named(rows: dict[str, list[Row]]) -> dict[str, list[Row]]:
    """The rows with the UUID of what they point at, in place of a number."""
    uuids = {
        table: {row["id"]: row["uuid"] for row in found}
        for table, found in rows.items()
        if found and "uuid" in found[0]
    }

    def meant(table: str, field: str, value: Any) -> Any:
        name = field.removesuffix("_id")
        target = table if name == "parent" else POINTERS.get(name, name)
        points = field.endswith("_id") and target in uuids and value is not None
        return uuids[target][value] if points else value

    return {
        table: [
            {field: meant(table, field, value) for field, value in row.items()} for row in found
        ]
        for table, found in rows.items()
    }


def test_every_record_is_read_back_as_it_is_held(both: Both) -> None:
    held, read = (named(rows) for rows in both)
    for table, rows in held.items():
        if table in LINKS:
            continue
        known = {row["uuid"]: row for row in read[table]}
        assert len(known) == len(rows)
        for row in rows:
            found = known[row["uuid"]]
            fields = (row.keys() & found.keys()) - {"id"}
            assert table != "layer" or fields >= BOUNDS
            for field in fields:
                is_number = isinstance(found[field], str) and isinstance(row[field], int | float)
                value = float(found[field]) if is_number else found[field]
                assert value == row[field], (table, row["uuid"], field)


def test_every_list_is_read_back_as_it_is_held(both: Both) -> None:
    held, read = (named(rows) for rows in both)
    for table in LINKS:
        found = sorted(tuple(row.items()) for row in read[table])
        fields = [name for name, _ in found[0]] if found else []
        assert len(found) == len(held[table])
        assert found == sorted(tuple((name, row[name]) for name in fields) for row in held[table])
