"""Lists, people and numbers in one cell read back as they were meant."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from conservedb.exchange.cells import (
    escape,
    integer,
    join_role,
    number,
    show_number,
    split_list,
    split_role,
    unescape,
)
from conservedb.exchange.faults import CellProblem

ITEM = st.text(min_size=1).map(str.strip).filter(bool)


def test_lists() -> None:
    assert split_list("J14; J15 ;; ") == ["J14", "J15"]
    assert [unescape(i) for i in split_list(r"a\; b; c\\; d")] == ["a; b", "c\\", "d"]


def test_people() -> None:
    assert split_role("Edith Marsh (mason)") == ("Edith Marsh", "mason")
    assert split_role("Edith Marsh") == ("Edith Marsh", "")
    assert split_role(r"Edith \(Ned\) Marsh (mason)") == ("Edith (Ned) Marsh", "mason")


@given(st.lists(ITEM, max_size=5))
def test_any_list_reads_back(items: list[str]) -> None:
    assert [unescape(item) for item in split_list("; ".join(map(escape, items)))] == items


@given(ITEM, st.text().map(str.strip))
def test_any_person_and_role_read_back(name: str, role: str) -> None:
    (item,) = split_list(join_role(name, role))
    assert split_role(item) == (name, role)


@given(st.floats(allow_nan=False, allow_infinity=False))
def test_any_number_reads_back(value: float) -> None:
    assert number(show_number(value)) == value


@pytest.mark.parametrize("cell", ["12,5", "heavy", "nan", "inf", "1e999", "½", "١٢", "", "--1"])
def test_what_is_no_number(cell: str) -> None:
    with pytest.raises(CellProblem, match="is not a number"):
        number(cell)


@pytest.mark.parametrize("cell", ["1.5", "one", "", "²", "99999999999999999999"])
def test_what_is_no_whole_number(cell: str) -> None:
    with pytest.raises(CellProblem, match="is not a whole number"):
        integer(cell)
