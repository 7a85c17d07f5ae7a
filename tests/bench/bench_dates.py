"""What reading a date costs, as a multiple of one compiled match of a full date."""

import re
from collections.abc import Callable
from datetime import date
from time import perf_counter

import pytest

from conservedb.dates import parse_edtf, read

LIMIT = 20.0  # a bulk import must not be held up by its dates
REPEATS = 7
FIRST_DAY = date(1600, 1, 1).toordinal()
MATCH = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}").fullmatch

DAYS = [date.fromordinal(FIRST_DAY + 7 * step).isoformat() for step in range(20_000)]
MONTHS = [f"{year:04}-{month:02}" for year in range(1, 1700) for month in range(1, 13)][:20_000]
YEARS = [f"{year:04}" for year in range(10_000)]
QUALIFIED = [f"{day}~" for day in DAYS]
SPANS = [f"{month}/.." for month in MONTHS]
PHRASES = [f"{word} {year}" for year in YEARS[1000:4000] for word in ("before", "c.", "spring")]


def measure() -> dict[str, float]:
    """Cost of each kind of reading per distinct text, divided by that of the bare match."""
    floor = _best(MATCH, DAYS)
    return {
        "parse_edtf of days": _best(parse_edtf, DAYS) / floor,
        "parse_edtf of months": _best(parse_edtf, MONTHS) / floor,
        "parse_edtf of years": _best(parse_edtf, YEARS) / floor,
        "parse_edtf of qualified days": _best(parse_edtf, QUALIFIED) / floor,
        "parse_edtf of open spans": _best(parse_edtf, SPANS) / floor,
        "read of days": _best(read, DAYS) / floor,
        "read of months": _best(read, MONTHS) / floor,
        "read of years": _best(read, YEARS) / floor,
        "read of words": _best(read, PHRASES) / floor,
    }


def _best(reader: Callable[[str], object], texts: list[str]) -> float:
    """Seconds per text, the best of several passes."""
    passes = []
    for _ in range(REPEATS):
        start = perf_counter()
        for text in texts:
            reader(text)
        passes.append(perf_counter() - start)
    return min(passes) / len(texts)


@pytest.mark.bench
def test_plain_dates_cost_at_most_twenty_matches() -> None:
    ratios = measure()
    for kind in ("days", "months", "years"):
        assert ratios[f"parse_edtf of {kind}"] <= LIMIT, ratios
        assert ratios[f"read of {kind}"] <= LIMIT, ratios


if __name__ == "__main__":
    for name, ratio in measure().items():
        print(f"{name:30} {ratio:6.1f} matches")
