"""A researcher's question finds its layers through indexes wherever one of its conditions can.

As `test_query_plans`, for statements that are made when they are asked.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from sqlalchemy import Connection

from conservedb.exchange.importing import import_folder
from conservedb.knowledge.research import ROWS
from conservedb.knowledge.research_words import read
from conservedb.questions.asking import Question
from conservedb.questions.research import meanings_on
from conservedb.questions.research_answers import COLUMNS
from conservedb.questions.research_statements import counting, paging
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench.collection import make_collection
from tests.conftest import TODAY

NARROWED = (
    "material: class3",
    "material: material7 and state: there on 1950",
    'person: "Worker Number5"',
    "object: CB.1 and not (role: fill or kind: join)",
    "date: 1930s and role: adhesive",
    "object kind: stone and environment: display",
    "kind: join and material: class1",
    "material: material7 or date: between 1919 and 1939",
    "observed: crack and material: material2 and part material: material1",
    "source: card and reversibility: re-dissolves and object: CB.1",
)
FEW = ("SEARCH object ", "SEARCH source ")
"""Tables of which there are few rows, and which may be indexed on the way."""
STATISTICS = (("none", ()), ("full", ("PRAGMA analysis_limit=0", "ANALYZE")))


@pytest.fixture(scope="module", params=STATISTICS, ids=[name for name, _ in STATISTICS])
def connection(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Connection]:
    folder = tmp_path_factory.mktemp("plans")
    make_collection(folder / "tables", 3000)
    create(folder / "plans.db")
    engine, _ = open_database(folder / "plans.db")
    assert import_folder(engine, folder / "tables", today=TODAY, who="A. Tester").written
    with engine.connect() as raw:
        raw.exec_driver_sql("ANALYZE sqlite_schema")
        for statement in ("DELETE FROM sqlite_stat1", *request.param[1]):
            raw.exec_driver_sql(statement)
        raw.commit()
    engine.dispose()
    engine, _ = open_database(folder / "plans.db")
    with reading(engine) as found:
        yield found
    engine.dispose()


def scans(connection: Connection, question: Question) -> list[str]:
    """Steps that read layers or agents from end to end, or make a large index on the way."""
    sql, order, constants = question.compiled(connection)
    assert order is not None
    values = [constants[name] if constants.get(name) is not None else 1 for name in order]
    steps = connection.connection.cursor().execute(f"EXPLAIN QUERY PLAN {sql}", values)
    return [
        step[3]
        for step in steps
        if step[3] in ("SCAN layer", "SCAN agent")
        or step[3].startswith(("SCAN layer USING", "SCAN agent USING"))
        or ("AUTOMATIC" in step[3] and not step[3].startswith(FEW))
    ]


@pytest.mark.parametrize("text", NARROWED)
def test_layers_are_searched(connection: Connection, text: str) -> None:
    for kind in ROWS:
        research = read(f"{kind} where {text}")
        meanings = meanings_on(connection, research, TODAY.toordinal())
        assert scans(connection, counting(research, meanings)) == []
        assert scans(connection, paging(research, meanings, "date", False)) == []


@pytest.mark.parametrize("rows", ROWS[1:])
def test_what_rows_have_is_searched_too(connection: Connection, rows: str) -> None:
    text = "has (material: material7 and role: fill) and has none (material: class1)"
    research = read(f"{rows} where {text}")
    meanings = meanings_on(connection, research, TODAY.toordinal())
    for question in (counting(research, meanings), paging(research, meanings, "date", False)):
        steps = scans(connection, question)
        assert all(" best_" in step or " numbered " in step for step in steps)


@pytest.mark.parametrize("column", COLUMNS)
def test_sorting_by_a_column_searches_too(connection: Connection, column: str) -> None:
    research = read("material: material7")
    meanings = meanings_on(connection, research, TODAY.toordinal())
    assert scans(connection, paging(research, meanings, column, True)) == []


def test_the_test_sees_a_scan(connection: Connection) -> None:
    research = read("role: fill")
    meanings = meanings_on(connection, research, TODAY.toordinal())
    assert any("SCAN layer" in step for step in scans(connection, counting(research, meanings)))
