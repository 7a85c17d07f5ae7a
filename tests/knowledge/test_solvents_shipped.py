"""The arithmetic on the values that the program ships."""

from __future__ import annotations

import pytest

from conservedb.knowledge.behaviour import Hansen, Solvent, Sphere, Trait
from conservedb.knowledge.blends import candidates, search
from conservedb.knowledge.mixing import SEPARATING, SEPARATING_WHEN_DAMP
from conservedb.knowledge.solvents import Teas, teas, teas_problem, vapour_hazard_ratio
from conservedb.reference.tables import rows

HANSEN = [(row["material"], row) for row in rows("hansen")]
VALUES = {(row["material"], row["property"]): row for row in rows("material_values")}
PUBLISHED = {
    row["material"]: Teas(float(row["d"]), float(row["p"]), float(row["h"])) for row in rows("teas")
}


def at(row: dict[str, str]) -> Hansen:
    return Hansen(float(row["d"]), float(row["p"]), float(row["h"]))


def liquids() -> list[Solvent]:
    """Every shipped liquid that a source gives a hazard band and parameters for."""
    return [
        Solvent(
            key,
            key,
            tuple(at(row) for material, row in HANSEN if material == key and not row["r0"]),
            band=VALUES[key, "hazard band"]["words"],
            boiling_c=_number(key, "boiling point"),
            traits={"water": Trait("yes")} if key == "water" else {},
        )
        for key, named in VALUES
        if named == "hazard band"
    ]


def _number(key: str, named: str) -> float | None:
    low = VALUES.get((key, named), {"low": ""})["low"]
    return float(low) if low else None


def spheres(key: str) -> list[Sphere]:
    return [
        Sphere(at(row), float(row["r0"]), row["use"])
        for material, row in HANSEN
        if material == key and row["r0"]
    ]


def test_every_liquid_of_a_separating_pair_is_shipped_under_that_name() -> None:
    shipped = {one.key for one in liquids()}
    assert {key for pair in SEPARATING | SEPARATING_WHEN_DAMP for key in pair} <= shipped


def test_every_shipped_teas_row_makes_100() -> None:
    assert [teas_problem(fractions) for fractions in PUBLISHED.values()] == [None] * len(PUBLISHED)


def test_published_teas_fractions_stray_from_the_converted_ones_where_that_is_known() -> None:
    """The conflicts by name; the others lie within 4.5 units."""
    strays = {
        key: max(abs(a - b) for a, b in zip(teas(at(row)), PUBLISHED[key], strict=True))
        for key, row in reversed(HANSEN)
        if key in PUBLISHED
    }
    assert {key for key, worst in strays.items() if worst > 4.5} == {
        "diethyl-carbonate",
        "turpentine",
        "water",
        "dioxane",
        "ethyl-acetate",
        "cyclohexane",
        "propylene-carbonate",
        "dichloromethane",
    }
    assert max(strays, key=lambda key: strays[key]) == "diethyl-carbonate"


@pytest.mark.parametrize(
    ("key", "expected"),
    [("acetone", 488), ("2-propanol", 216), ("n-heptane", 116), ("chloroform", 20723)],
)
def test_vapour_hazard_ratios_of_shipped_values(key: str, expected: float) -> None:
    """Worked out once from the same pressures and limits (Perry's 8th ed.; Ontario)."""
    kpa = _number(key, "vapour pressure")
    limit = next(
        row for row in rows("exposure_limits") if row["material"] == key and row["kind"] == "TWA"
    )
    assert kpa is not None
    assert vapour_hazard_ratio(kpa, float(limit["ppm"])) == pytest.approx(expected, rel=0.03)


def test_aged_shellac_among_all_shipped_liquids() -> None:
    """Acetone with ethanol, as published (Koob, DistList 21:35, 2007), is among those found."""
    table = candidates(liquids(), widest_band="C")
    found = search(spheres("shellac"), [], table, known={"ethanol": "softens"})
    pairs = [{part.solvent for part in window.parts} for window in found]
    assert {"acetone", "ethanol"} in pairs
    assert not any("water" in pair for pair in pairs)
