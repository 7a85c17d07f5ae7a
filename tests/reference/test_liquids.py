"""Liquids against the tables of the `chemicals` package, row by row.

Its Hansen parameters are in Pa^0.5 (acetone 15500), ours in MPa^0.5; its temperatures in kelvin.
The sets within it share their ancestry, so that agreement between them proves little.
"""

from __future__ import annotations

import math
import re

import chemicals
import pytest
from chemicals import safety, solubility, vapor_pressure

from tests.reference.shipped import Row, cas_numbers, liquids, table, values

SETS = {
    "lit.MR22": "MANUEL_RUBEN_2022",
    "lit.ALSH": "ALSHERI_HANSEN",
    "lit.HSPI": "HSPIPY",
    "lit.SCHR": "WDR_SCHRIER",
}
FLASH = {
    "lit.IEC10": "IEC 60079-20-1 (2010)",
    "lit.NFPA08": "NFPA 497 (2008)",
    "lit.SERAT17": "Serat DIPPR (2017)",
    "lit.WIKI": "WIKIDATA",
}
CONFLICTS = {
    "methanol",
    "cyclohexanone",
    "dimethyl-carbonate",
    "diethyl-carbonate",
    "gamma-butyrolactone",
    "dichloromethane",
    "dioxane",
    "2-ethoxyethanol",
    "nitromethane",
    "morpholine",
}
"""Solvents whose published sets differ from each other."""
NO_DATASET = {"white-spirit", "white-spirit-dearomatised"}
"""Mixtures that no set holds: their parameters are from memory, or computed from such."""
ROOM_K = 293.15
MOLAR_VOLUME = 24.45
"""Litres of a mole of gas at 25 C and 101.325 kPa."""


def at(row: Row) -> tuple[float, ...]:
    return tuple(float(row[axis]) for axis in "dph")


def held(cas: str, method: str) -> tuple[float, ...]:
    """The parameters of one set of `chemicals`, in MPa^0.5; () where it has none."""
    if method not in solubility.hansen_delta_d_methods(cas):
        return ()
    asked = (
        solubility.hansen_delta_d,
        solubility.hansen_delta_p,
        solubility.hansen_delta_h,
    )
    return tuple(round(ask(cas, method=method) / 1000, 3) for ask in asked)


def test_acetone_is_where_the_package_has_it() -> None:
    # From memory, too: Hansen 2007, Table A.1.
    assert held("67-64-1", "MANUEL_RUBEN_2022") == (15.5, 10.4, 7.0)
    assert at(liquids()["acetone"][0]) == (15.5, 10.4, 7.0)


def test_there_are_forty_eight_liquids() -> None:
    assert len(liquids()) == 48


def numbered() -> list[Row]:
    return [row for row in table("hansen") if row["page"].startswith("CAS ")]


@pytest.mark.parametrize("row", numbered(), ids=lambda row: row["key"])
def test_parameters_are_those_of_the_named_set(row: Row) -> None:
    cas = row["page"].removeprefix("CAS ")
    assert at(row) == held(cas, SETS[row["source"]])


@pytest.mark.parametrize("solvent", sorted(set(liquids()) - NO_DATASET - {"turpentine"}))
def test_no_set_is_left_out_and_conflicts_are_named(solvent: str) -> None:
    cas = cas_numbers()[solvent]
    sets = {held(cas, method) for method in SETS.values()} - {()}
    ours = {at(row) for row in liquids()[solvent] if row["page"] == f"CAS {cas}"}
    assert ours == sets
    assert (len(sets) > 1) == (solvent in CONFLICTS)


@pytest.mark.parametrize("solvent", sorted(set(liquids()) - NO_DATASET))
def test_the_newest_set_stands_first(solvent: str) -> None:
    first = liquids()[solvent][0]
    newest = held(first["page"].removeprefix("CAS "), "MANUEL_RUBEN_2022")
    if newest:
        assert (at(first), first["source"]) == (newest, "lit.MR22")
    else:
        assert solvent == "xylenes"  # only one set holds the mixed isomers


def test_a_stand_in_is_marked_as_one() -> None:
    proxies = {row["material"] for row in numbered() if row["use"] == "proxy"}
    assert proxies == {"turpentine"}
    assert {liquids()[key][0]["basis"] for key in NO_DATASET} == {"from memory"}


# -- boiling, flash, vapour ---------------------------------------------------------------


def of(name: str, *sources: str) -> list[Row]:
    rows = table("material_values")
    return [row for row in rows if row["property"] == name and row["source"] in sources]


@pytest.mark.parametrize("row", of("boiling point", "lit.CHEM"), ids=lambda row: row["material"])
def test_boiling_points(row: Row) -> None:
    named = re.search(r"CAS ([\d-]+)", row["condition"])
    cas = named[1] if named else cas_numbers()[row["material"]]
    method = row["page"].rpartition(", ")[2]
    expected = chemicals.Tb(cas, method=None if named else method) - 273.15
    assert float(row["low"]) == pytest.approx(expected, abs=0.6)


@pytest.mark.parametrize("row", of("flash point", *FLASH), ids=lambda row: row["key"])
def test_flash_points(row: Row) -> None:
    material = row["material"]
    cas = "8052-41-3" if material.startswith("white-spirit") else cas_numbers()[material]
    expected = chemicals.T_flash(cas, method=FLASH[row["source"]]) - 273.15
    assert float(row["low"]) == pytest.approx(expected, abs=0.06)


def test_a_missing_flash_point_is_never_read_as_none() -> None:
    # The package gives None both for what has no flash point and for what it does not know.
    points = [row for row in table("material_values") if row["property"] == "flash point"]
    none = {row["material"] for row in points if row["words"] == "none"}
    assert none == {
        "water",
        "dichloromethane",
        "chloroform",
        "carbon-tetrachloride",
        "trichloroethylene",
        "trichloroethane",
    }
    assert chemicals.T_flash("100-51-6") is None
    assert float(values("benzyl-alcohol", "flash point")[0]["low"]) > 90


def perry(cas: str) -> float:
    row = vapor_pressure.Psat_data_Perrys2_8.loc[cas]
    c1, c2, c3, c4, c5 = (float(row[f"C{n}"]) for n in range(1, 6))
    return math.exp(c1 + c2 / ROOM_K + c3 * math.log(ROOM_K) + c4 * ROOM_K**c5) / 1000


def vdi(cas: str) -> float:
    row = vapor_pressure.Psat_data_VDI_PPDS_3.loc[cas]
    terms = (float(row[name]) for name in "ABCD")
    pascal = vapor_pressure.Wagner(ROOM_K, float(row["Tc"]), float(row["Pc"]), *terms)
    return float(pascal) / 1000


@pytest.mark.parametrize(
    "row", of("vapour pressure", "lit.PERRY8", "lit.VDI"), ids=lambda row: row["material"]
)
def test_vapour_pressures(row: Row) -> None:
    computed = perry if row["source"] == "lit.PERRY8" else vdi
    assert float(row["low"]) == pytest.approx(computed(cas_numbers()[row["material"]]), rel=0.01)


# -- limits -------------------------------------------------------------------------------

ASK = {"TWA": safety.TWA, "STEL": safety.STEL, "ceiling": safety.Ceiling}
GAS = {"ammonia": "7664-41-7"}


def number_of_limit(material: str) -> str:
    """The CAS number under which the package holds the limit of a material."""
    if material.startswith("white-spirit"):
        return "8052-41-3"
    return GAS.get(material) or cas_numbers()[material]


@pytest.mark.parametrize("row", table("exposure_limits"), ids=lambda row: row["key"])
def test_limits_are_those_of_ontario(row: Row) -> None:
    cas = number_of_limit(row["material"])
    ppm, unit = ASK[row["kind"]](cas)
    assert unit == "ppm"
    if row["ppm"]:
        assert float(row["ppm"]) == pytest.approx(ppm, rel=1e-4)
    else:  # set in mg/m3, which the package has turned into ppm
        given = ppm * chemicals.MW(cas) / MOLAR_VOLUME
        assert float(row["mg_m3"]) == pytest.approx(given, rel=0.01)
    assert row["skin"] == ("yes" if safety.Skin(cas) else "no")
    assert (row["jurisdiction"], row["as_of"]) == ("Ontario", "")
    assert row["note"].startswith("edition not stated")


@pytest.mark.parametrize("solvent", sorted(liquids()))
def test_no_limit_of_a_solvent_is_left_out(solvent: str) -> None:
    cas = number_of_limit(solvent)
    expected = {kind for kind, ask in ASK.items() if ask(cas) is not None}
    rows = [row for row in table("exposure_limits") if row["material"] == solvent]
    assert {row["kind"] for row in rows} == expected


@pytest.mark.parametrize("row", of("carcinogen group", "lit.IARC"), ids=lambda row: row["material"])
def test_carcinogen_groups(row: Row) -> None:
    found = safety.Carcinogen(cas_numbers()[row["material"]])
    group = row["words"].removeprefix("IARC group ")
    assert f"({group})" in found["International Agency for Research on Cancer"]


# -- Teas ---------------------------------------------------------------------------------


def test_the_single_values_printed_in_1989() -> None:
    # Conservation DistList, 25 July 1989 (cdl/1989/0040): carbon tetrachloride 85/2/13,
    # o-xylene 83/5/12. The third row worked back there, propylene glycol 34/15/60, sums to 109.
    printed = {row["material"]: row for row in table("teas") if row["source"] == "lit.CDL89"}
    assert set(printed) == {"carbon-tetrachloride", "xylenes"}
    assert [float(printed["carbon-tetrachloride"][axis]) for axis in "dph"] == [85, 2, 13]
    assert [float(printed["xylenes"][axis]) for axis in "dph"] == [83, 5, 12]


def test_teas_fractions_are_not_worked_out_from_todays_parameters() -> None:
    # Published sets that no conversion gives (differences as published in the fact base).
    for solvent, most in (("diethyl-carbonate", 13.3), ("turpentine", 9.7), ("water", 6.3)):
        hansen = at(liquids()[solvent][0])
        converted = [100 * value / sum(hansen) for value in hansen]
        (row,) = (row for row in table("teas") if row["material"] == solvent)
        differences = [abs(float(row[axis]) - c) for axis, c in zip("dph", converted, strict=True)]
        assert max(differences) == pytest.approx(most, abs=0.06)


def test_there_are_forty_one_published_sets_and_one_more() -> None:
    teas = [row["material"] for row in table("teas")]
    assert len(teas) == 42 and len(set(teas)) == 42
