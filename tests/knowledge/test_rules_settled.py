"""Settings as people write them: what is used, and what is said of odd words."""

from __future__ import annotations

import csv
from math import isfinite
from pathlib import Path

import pytest

import conservedb.reference
from conservedb.knowledge.settled import Settled, band, number

TABLE = Path(conservedb.reference.__file__).parent / "tables" / "settings.csv"
NUMBERS = (
    "creep margin",
    "solvent hold months",
    "solvent depression",
    "cellulose nitrate age",
    "test interval years",
)


@pytest.mark.parametrize("name", NUMBERS)
def test_the_shipped_values_are_those_of_the_table(name: str) -> None:
    with TABLE.open(encoding="utf-8", newline="") as file:
        shipped = {row["name"]: row["value"] for row in csv.DictReader(file)}
    assert number(name, "") == number(name, shipped[name]) == (float(shipped[name]), "")
    assert band(shipped["hazard band"]) == band("") == ("C", "")


@pytest.mark.parametrize(
    "words", ["inf", "-inf", "nan", "NaN", "1e999", "-5", "1e9", "lots", "5,5"]
)
@pytest.mark.parametrize("name", NUMBERS)
def test_odd_words_are_never_used(name: str, words: str) -> None:
    value, note = number(name, words)
    assert isfinite(value) and value == number(name, "")[0]
    assert f"{name!r} reads {words!r}" in note and "write a number from 0 to" in note


@pytest.mark.parametrize(
    ("name", "words", "value"),
    [
        ("creep margin", "0", 0),
        ("creep margin", " 12.5 ", 12.5),
        ("solvent hold months", "600", 600),
        ("solvent depression", "100", 100),
        ("cellulose nitrate age", "500", 500),
        ("test interval years", "100", 100),
    ],
)
def test_sensible_words_are_used(name: str, words: str, value: float) -> None:
    assert number(name, words) == (value, "")


def test_a_setting_that_is_no_number_has_no_number() -> None:
    with pytest.raises(KeyError):
        number("jurisdiction", "5")


@pytest.mark.parametrize("words", ["A", "b", " c ", "D"])
def test_a_band(words: str) -> None:
    assert band(words) == (words.strip().upper(), "")


@pytest.mark.parametrize("words", ["E", "AB", "mild", "1"])
def test_no_band(words: str) -> None:
    worst, note = band(words)
    assert worst == "C" and f"reads {words!r}" in note and "A, B, C, D" in note


def test_the_rules_start_from_the_shipped_values() -> None:
    assert Settled() == Settled(15, 12, 30, 30, None)
