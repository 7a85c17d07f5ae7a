"""Every shipped statement finds its rows through indexes, at any size, whatever is known of it.

The same question written as a join can be a thousand times slower at one size, with one state
of the statistics and not another; a timing test on a small database would not show it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Connection, Engine

from conservedb.exchange.importing import import_folder
from conservedb.questions import (
    authority,
    behaviour,
    checks,
    find,
    history,
    material,
    objects,
    place,
    removal,
    research,
    research_saved,
    start,
    survival,
    tally,
    treatment,
    uses,
    whatif,
)
from conservedb.questions.asking import Question
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.bench.collection import make_collection

QUESTIONS = list(
    dict.fromkeys(
        question
        for module in (
            *(place, objects, history, uses, find, start),
            *(behaviour, removal, material, checks, whatif, authority, treatment),
            *(tally, survival, research, research_saved),
        )
        for question in module.STATEMENTS
    )
)
READ_WHOLE = {"material", "material_class", "material_alias", "object", "treatment", "person"}
READ_WHOLE |= {"trade_name", "source", "below", "above", "touched", "CONSTANT", "wanted"}
READ_WHOLE |= {"material_part", "material_value", "hansen", "solubility", "solubility_part"}
READ_WHOLE |= {"trait", "hazard", "hazard_statement", "exposure_limit", "restriction", "setting"}
READ_WHOLE |= {"rule", "period", "climate", "standing_approval", "needed_authorisation"}
READ_WHOLE |= {"whereabouts", "person_alias", "saved_question", "few"}
"""What may be read from end to end: lists of words, what is counted, what is made on the way."""
FEW = 1000
"""With statistics, a table known to have fewer rows than this may be read from end to end."""
PARTIAL = ("ix_layer_temporary", "ix_joint_event_restless")
"""Indexes of a few chosen rows."""
STATISTICS = {
    "none": (),
    "limited": ("PRAGMA analysis_limit=400", "ANALYZE"),
    "full": ("PRAGMA analysis_limit=0", "ANALYZE"),
}


@pytest.fixture(scope="module", params=[300, pytest.param(20_000, marks=pytest.mark.campaign)])
def collection(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp(f"layers{request.param}")
    make_collection(folder / "tables", request.param)
    path = folder / "collection.db"
    create(path)
    engine, _ = open_database(path)
    assert import_folder(engine, folder / "tables", who="A. Tester").written
    engine.dispose()
    return path


@pytest.fixture(params=STATISTICS)
def analysed(collection: Path, request: pytest.FixtureRequest) -> Iterator[Engine]:
    engine, _ = open_database(collection)
    with engine.connect() as connection:
        connection.exec_driver_sql("ANALYZE sqlite_schema")
        for statement in ("DELETE FROM sqlite_stat1", *STATISTICS[request.param]):
            connection.exec_driver_sql(statement)
        connection.commit()
    engine.dispose()
    yield engine
    engine.dispose()


def plan(connection: Connection, question: Question) -> list[str]:
    sql, order, constants = question.compiled(connection)
    assert order is not None
    values = [constants[name] if constants.get(name) is not None else 1 for name in order]
    rows = connection.connection.cursor().execute(f"EXPLAIN QUERY PLAN {sql}", values)
    return [row[3] for row in rows]


def few_rows(connection: Connection) -> set[str]:
    """Tables that the statistics, where there are any, know to be small."""
    rows = connection.exec_driver_sql("SELECT tbl, stat FROM sqlite_stat1")
    return {table for table, stat in rows if int(stat.split()[0]) < FEW}


def faults(steps: list[str], allowed: set[str]) -> list[str]:
    found = []
    for step in steps:
        scanned = re.match(r"SCAN (\w+)", step)
        fully = scanned and scanned[1] not in allowed and not any(i in step for i in PARTIAL)
        if fully or "AUTOMATIC" in step or "BLOOM" in step:
            found.append(step)
    return found


def test_every_statement_searches(analysed: Engine) -> None:
    assert len(QUESTIONS) > 90
    with reading(analysed) as connection:
        allowed = READ_WHOLE | few_rows(connection)
        bad = {
            question.compiled(connection)[0]: found
            for question in QUESTIONS
            if (found := faults(plan(connection, question), allowed))
        }
    assert not bad, "\n\n".join(f"{sql}\n-> {found}" for sql, found in bad.items())


def test_the_test_sees_a_scan(analysed: Engine) -> None:
    with reading(analysed) as connection:
        rows = connection.exec_driver_sql("EXPLAIN QUERY PLAN SELECT * FROM layer WHERE note = 'x'")
        assert faults([row[3] for row in rows], set()) == ["SCAN layer"]
