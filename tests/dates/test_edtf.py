"""EDTF against the examples of its specification.

edtf_examples.csv: the examples of the Library of Congress, Extended Date/Time Format (EDTF)
Specification, 4 February 2019, https://www.loc.gov/standards/datetime/. The bounds follow from
its text; for seasons from the convention named in the last column.
"""

import csv
from pathlib import Path
from time import process_time

import pytest

from conservedb import dates
from conservedb.dates import APPROXIMATE, UNCERTAIN, DateError, parse_edtf

EXAMPLES = list(
    csv.DictReader((Path(__file__).parent / "edtf_examples.csv").read_text("utf-8").splitlines())
)
OUT_OF_SCOPE = {
    "longyear": "more than four digits",
    "expyear": "exponent",
    "sigdig": "significant digits",
}
ENDS = {
    ("earliest", "-inf"): dates.OPEN_START,
    ("earliest", "unknown"): dates.UNKNOWN_START,
    ("latest", "+inf"): dates.OPEN_END,
    ("latest", "unknown"): dates.UNKNOWN_END,
}


def bounds(text: str) -> tuple[str | None, str | None]:
    parsed = parse_edtf(text)
    return dates.iso(parsed.earliest), dates.iso(parsed.latest)


def expected_end(row: dict[str, str], side: str) -> int:
    known = ENDS.get((side, row[side]))
    return dates.from_iso(row[side]) if known is None else known


def test_the_table_of_examples_is_whole() -> None:
    assert len(EXAMPLES) == 67  # counted in the specification
    assert sum(row["feature"] in OUT_OF_SCOPE for row in EXAMPLES) == 6


@pytest.mark.parametrize("row", EXAMPLES, ids=[row["edtf"] for row in EXAMPLES])
def test_example_of_the_specification(row: dict[str, str]) -> None:
    if row["feature"] in OUT_OF_SCOPE:
        with pytest.raises(DateError, match=OUT_OF_SCOPE[row["feature"]]):
            parse_edtf(row["edtf"])
        return
    parsed = parse_edtf(row["edtf"])
    assert parsed.edtf == row["edtf"]
    assert parsed.earliest == expected_end(row, "earliest")
    assert parsed.latest == expected_end(row, "latest")


@pytest.mark.parametrize("row", EXAMPLES, ids=[row["edtf"] for row in EXAMPLES])
def test_a_cell_reads_every_example_as_edtf(row: dict[str, str]) -> None:
    if row["feature"] in OUT_OF_SCOPE:
        with pytest.raises(DateError, match=OUT_OF_SCOPE[row["feature"]]):
            dates.read(row["edtf"])
        return
    found = dates.read(row["edtf"])
    assert found.derived == "edtf"
    assert found[1:5] == tuple(parse_edtf(row["edtf"]))


# Codes 21 to 41: ISO 8601-2:2019 4.8, as quoted by the specification; days are our convention.
@pytest.mark.parametrize(
    ("text", "first", "last"),
    [
        ("1934-21", "1934-03-01", "1934-05-31"),
        ("1935-24", "1935-12-01", "1936-02-29"),
        ("1934-25", "1934-03-01", "1934-05-31"),
        ("1934-28", "1934-12-01", "1935-02-28"),
        ("1934-29", "1934-09-01", "1934-11-30"),
        ("1934-30", "1934-12-01", "1935-02-28"),
        ("1934-31", "1934-03-01", "1934-05-31"),
        ("1934-32", "1934-06-01", "1934-08-31"),
        ("1934-33", "1934-01-01", "1934-03-31"),
        ("1934-36", "1934-10-01", "1934-12-31"),
        ("1934-37", "1934-01-01", "1934-04-30"),
        ("1934-39", "1934-09-01", "1934-12-31"),
        ("1934-40", "1934-01-01", "1934-06-30"),
        ("1934-41", "1934-07-01", "1934-12-31"),
        ("9999-24", "9999-12-01", "9999-12-31"),
        ("193X-24", "1930-12-01", "1940-02-29"),
        ("-0001-24", "-0001-12-01", "0000-02-29"),
    ],
)
def test_parts_of_a_year(text: str, first: str, last: str) -> None:
    assert bounds(text) == (first, last)
    assert parse_edtf(f"{text}?").flags == UNCERTAIN


@pytest.mark.parametrize(
    ("text", "first", "last"),
    [
        ("1985-02-2X", "1985-02-20", "1985-02-28"),
        ("1984-02-2X", "1984-02-20", "1984-02-29"),
        ("198X-02-2X", "1980-02-20", "1989-02-28"),
        ("XXXX-02-29", "0000-02-29", "9996-02-29"),
        ("19XX-02-29", "1904-02-29", "1996-02-29"),
        ("XX00-02-29", "0000-02-29", "9600-02-29"),
        ("1985-XX-31", "1985-01-31", "1985-12-31"),
        ("1985-X2-29", "1985-12-29", "1985-12-29"),
        ("1985-0X-0X", "1985-01-01", "1985-09-09"),
        ("XXXX-XX-XX", "0000-01-01", "9999-12-31"),
        ("XXXX", "0000-01-01", "9999-12-31"),
        ("-XXXX", "-9999-01-01", "-0001-12-31"),
        ("-019X", "-0199-01-01", "-0190-12-31"),
        ("-000X-02-29", "-0008-02-29", "-0004-02-29"),
        ("1X85", "1085-01-01", "1985-12-31"),
        ("1985-02-3X/1985-03-XX", None, None),
    ],
)
def test_masked_days_are_days_that_exist(text: str, first: str | None, last: str | None) -> None:
    if first is None:
        with pytest.raises(DateError, match="no such day"):
            parse_edtf(text)
        return
    assert bounds(text) == (first, last)


@pytest.mark.parametrize(
    ("text", "flags"),
    [
        ("1984", 0),
        ("1984?", UNCERTAIN),
        ("1984~", APPROXIMATE),
        ("1984%", UNCERTAIN | APPROXIMATE),
        ("?2004-06-~11", UNCERTAIN | APPROXIMATE),
        ("2004?-06~-11", UNCERTAIN | APPROXIMATE),
        ("~-0044-03-15", APPROXIMATE),
        ("1984~/2004-06?", UNCERTAIN | APPROXIMATE),
        ("[1868?,1871]", UNCERTAIN),
        ("2001-%21", UNCERTAIN | APPROXIMATE),
        ("193X~", APPROXIMATE),
    ],
)
def test_qualifiers(text: str, flags: int) -> None:
    assert parse_edtf(text).flags == flags


def test_flags_in_words() -> None:
    assert dates.describe_flags(0) == ""
    assert dates.describe_flags(UNCERTAIN) == "date uncertain"
    assert dates.describe_flags(APPROXIMATE) == "date approximate"
    assert dates.describe_flags(UNCERTAIN | APPROXIMATE) == "date uncertain and approximate"


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("", "blank"),
        ("1985-02-29", "no such day"),
        ("1900-02-29", "no such day"),
        ("1985-04-31", "no such day"),
        ("1985-04-00", "no such day"),
        ("1985-02-3X", "no such day"),
        ("2023-02-3X", "no such day"),
        ("19X1-02-29", "no such day"),
        ("1985-13", "no month 13"),
        ("1985-00", "no month 00"),
        ("1985-2X", "no month 2X"),
        ("1985-21-01", "part of the year"),
        ("1985/1984", "ends before it begins"),
        ("2004-06-11/2004-06-10", "ends before it begins"),
        ("[1672..1670]", "ends before it begins"),
        ("{1667,1672..1670}", "ends before it begins"),
        ("1964/1970/1980", "more than one '/'"),
        ("Y170000002", "four digits"),
        ("Y1985", "four digits"),
        ("y170000002", "four digits"),
        ("Y-17E7", "exponent"),
        ("y17e7", "exponent"),
        ("1950S2", "significant digits"),
        ("Y3388E2S3", "significant digits"),
        ("199u", "'u' for a digit"),
        ("1999-uu", "'u' for a digit"),
        ("1985/unknown", "'unknown'"),
        ("unknown/1985", "'unknown'"),
        ("1985/open", "'open'"),
        ("1984?~", "two qualifiers"),
        ("(2004-06)~-11", "brackets"),
        ("156x", "small x"),
        ("-0000", "-0000 does not exist"),
        ("-0000-01-01", "-0000 does not exist"),
        ("1984/-0000", "-0000 does not exist"),
        ("/", "neither end"),
        ("/..", "neither end"),
        ("../", "neither end"),
        ("../..", "neither end"),
        ("..", "no date"),
        ("[..]", "stands alone"),
        ("[1667,..1668]", "middle of a set"),
        ("[1667..,1668]", "middle of a set"),
        ("[1667, 1668]", "space"),
        ("[]", "not written as EDTF"),
        ("[1667", "not written as EDTF"),
        ("{1667]", "not written as EDTF"),
        ("[1667,[1668]]", "not written as EDTF"),
        ("[1667/1668]", "not written as EDTF"),
        ("1868,1871", "side by side"),
        ("１９８５", "other than plain digits"),
        ("1985-０4", "other than plain digits"),
        ("1985–1990", "other than plain digits"),
        ("850", "four digits"),
        ("12345", "four digits"),
        ("+1985", "not written as EDTF"),
        ("19850412", "hyphens are missing"),
        ("1985-4-12", "two digits"),
        ("1985-04-2", "two digits"),
        ("1985-04-12T24:00:00", "time of day"),
        ("1985-04-12T23:60:00", "time of day"),
        ("1985-04-12T23:20", "time of day"),
        ("1985-04T23:20:30", "time of day"),
        ("1985-04-12~T23:20:30", "time of day"),
        ("1985-04-31T23:20:30", "no such day"),
        ("1985-04-12 23:20:30", "stand apart"),
        ("1985-04-12T23:20:30/1986", "without a time of day"),
        ("1985\n-04", "printable"),
        ("1985\x00", "printable"),
        ("\ud800", "printable"),
        ("[" + "1985," * 60 + "1985]", "has 306 characters"),
        ("Easter 1956", "space"),
    ],
)
def test_refused_with_the_reason(text: str, reason: str) -> None:
    with pytest.raises(DateError) as caught:
        parse_edtf(text)
    error = caught.value
    assert reason in error.reason
    assert error.value == text
    assert error.remedy
    assert str(error).endswith(f"{error.reason}; {error.remedy}")
    assert len(str(error)) < 400
    assert str(error).isprintable()


def test_blanks_around_are_not_part_of_the_date() -> None:
    assert parse_edtf(" 1985-04~\t") == parse_edtf("1985-04~")
    assert parse_edtf(" 1985 ") == parse_edtf("1985")


@pytest.mark.parametrize(
    "text",
    [
        "[" + ",".join(["XXX8-0X-XX"] * 18) + "]",
        "[" + ",".join(["XX04-02-29"] * 18) + "]",
        "XXX1-02-29",
        "X" * 200,
        "?" * 200,
        "1" * 10_000,
        "between " * 25,
        "1868 or " * 25,
        "1-" * 100,
        "9" * 1_000_000,
        " " * 1_000_000 + "1",
        "a=" * 500_000,
        "[" * 200,
        "'" * 200,
    ],
    ids=lambda text: text[:12],
)
def test_no_text_holds_the_reader_up(text: str) -> None:
    start = process_time()
    try:
        dates.read(text)
    except DateError as error:
        str(error)
    assert process_time() - start < 1  # a watchdog, of processor time: usually under 0.05
