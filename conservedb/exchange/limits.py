"""What the cells of one row must be to each other, before the database refuses it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from conservedb.exchange.cells import show_number


@dataclass(frozen=True)
class Limit:
    """`broken` gives the reason against the values of `fields`, "" where there is none."""

    subject: str
    column: str
    fields: tuple[str, ...]
    broken: Callable[..., str]
    remedy: str


def _in_order(low: float | None, high: float | None) -> str:
    if low is None or high is None or low <= high:
        return ""
    return f"the lower value {show_number(low)} is above the higher one {show_number(high)}"


def _low_first(low: float | None, high: float | None) -> str:
    return "gives a higher value and no lower one" if low is None and high is not None else ""


def _whole(d: float | None, p: float | None, h: float | None) -> str:
    if d is None or p is None or h is None or 99 <= d + p + h <= 101:
        return ""
    return f"the fractions d, p and h sum to {show_number(round(d + p + h, 2))}, not to 100"


def _one_bearer(material: int | None, klass: int | None) -> str:
    if material is None and klass is None:
        return "names neither a material nor a class"
    return "" if material is None or klass is None else "names both a material and a class"


def _two_places(place: int | None, other: int | None) -> str:
    return "is the same place on both sides" if place is not None and place == other else ""


def _ends_before(starts: int, ends: int) -> str:
    return "would end before it began" if ends < starts else ""


LIMITS = (
    Limit(
        "material_values",
        "low",
        ("low", "high"),
        _low_first,
        "one number goes into low; of a range give both",
    ),
    Limit(
        "material_values", "high", ("low", "high"), _in_order, "write the lower of the two into low"
    ),
    Limit(
        "climates", "max_c", ("min_c", "max_c"), _in_order, "write the colder of the two into min_c"
    ),
    Limit(
        "teas",
        "",
        ("d", "p", "h"),
        _whole,
        "look them up again; a published row with such a sum has a misprint",
    ),
    Limit("traits", "", ("material_id", "class_id"), _one_bearer, "name one of the two"),
    Limit("near", "other_place", ("place_id", "other_place_id"), _two_places, "name two places"),
    Limit(
        "authorisations",
        "expires",
        ("date_earliest", "expires_latest"),
        _ends_before,
        "mend whichever date is wrong",
    ),
    Limit(
        "standing_approvals",
        "until",
        ("since_earliest", "until_latest"),
        _ends_before,
        "mend whichever date is wrong",
    ),
)
