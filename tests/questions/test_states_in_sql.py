"""The states as SQL give what the states in Python give, for any bounds and any day."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import BindParameter, Connection, bindparam, create_engine, select

from conservedb.dates import (
    MAX_DAY,
    MIN_DAY,
    NEVER,
    OPEN_END,
    OPEN_START,
    UNKNOWN_END,
    UNKNOWN_START,
)
from conservedb.knowledge.layers import (
    GONE,
    NOT_YET,
    STATE_NAMES,
    Bounds,
    held,
    possible,
    qualified,
)
from conservedb.questions.asking import Question
from conservedb.questions.states import (
    certainly_there,
    is_one,
    mask_at,
    possibly_held,
    possibly_there,
    rests_on_qualified,
    surely_held,
)
from conservedb.records.layers import BOUNDS, layer_side

FIRST: BindParameter[int] = bindparam("first")
LAST: BindParameter[int] = bindparam("last")
BY_SQL = Question(
    select(  # type: ignore[arg-type]
        mask_at(layer_side.c, LAST).label("mask"),
        is_one(mask_at(layer_side.c, LAST)).label("one"),
        rests_on_qualified(layer_side.c, mask_at(layer_side.c, LAST)).label("qualified"),
        certainly_there(layer_side.c, LAST).label("certainly"),
        possibly_there(layer_side.c, LAST).label("possibly"),
        possibly_held(layer_side.c, FIRST, LAST).label("held_possibly"),
        surely_held(layer_side.c, FIRST, LAST).label("held_surely"),
    )
)
ENDS = (OPEN_START, UNKNOWN_START, MIN_DAY, MAX_DAY, UNKNOWN_END, OPEN_END, NEVER)
days = st.one_of(st.integers(0, 12), st.integers(715_000, 715_400), st.sampled_from(ENDS))
asked = st.one_of(st.integers(-1, 13), st.integers(714_999, 715_401), st.sampled_from(ENDS[2:4]))


@st.composite
def all_bounds(draw: st.DrawFn) -> Bounds:
    """Bounds as they are stored: each interval in order, and coming before what ends it."""
    came = sorted((draw(days), draw(days)))
    ends = []
    for _ in range(2):
        low, high = sorted((draw(days), draw(days)))
        ends.append((max(low, came[0]), max(high, came[1], low)))
    reduced, gone = ends
    if draw(st.booleans()):
        reduced = (NEVER, NEVER)
    else:
        reduced = (reduced[0], min(reduced[1], gone[1]))
        reduced = (min(reduced), reduced[1])
        gone = (max(gone[0], reduced[0]), gone[1])
    flags = [draw(st.integers(0, 3)) for _ in range(3)]
    return Bounds._make([*came, *reduced, *gone, *flags])


@pytest.fixture(scope="module")
def one_row() -> Iterator[Connection]:
    """A table of bounds that holds just the row asked about."""
    engine = create_engine("sqlite://")
    with engine.connect() as connection:
        columns = ", ".join(f"{name} INTEGER" for name in BOUNDS)
        connection.exec_driver_sql(f"CREATE TABLE layer_side ({columns})")
        connection.exec_driver_sql(f"INSERT INTO layer_side VALUES ({', '.join('0' * 9)})")
        yield connection


def by_sql(connection: Connection, b: Bounds, first: int, last: int) -> tuple[int, ...]:
    raw = connection.connection.dbapi_connection
    assert isinstance(raw, sqlite3.Connection)
    raw.execute(f"UPDATE layer_side SET ({', '.join(BOUNDS)}) = ({', '.join('?' * 9)})", b)
    return tuple(BY_SQL.first(connection, first=first, last=last))


@settings(max_examples=2000, deadline=None)
@given(bounds=all_bounds(), one=asked, other=asked)
def test_sql_gives_what_python_gives(
    one_row: Connection, bounds: Bounds, one: int, other: int
) -> None:
    first, last = sorted((one, other))
    mask = possible(bounds, last)
    over = held(bounds, first, last)
    there = ~(NOT_YET | GONE)
    assert by_sql(one_row, bounds, first, last) == (
        mask,
        mask in STATE_NAMES,
        bool(qualified(bounds, mask)),
        mask != 0 and not mask & ~there & 15,
        bool(mask & there),
        over.possibly,
        over.at_some_time,
    )


@given(bounds=all_bounds(), day=asked)
def test_what_is_stored_leaves_a_state_possible(bounds: Bounds, day: int) -> None:
    assert bounds.came_from <= bounds.came_to <= bounds.gone_to
    assert possible(bounds, day)
