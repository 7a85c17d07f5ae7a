"""Hazard statements, the bands they make, and what flash and boiling points let one expect."""

from __future__ import annotations

import re

import pytest

from tests.reference.shipped import liquids, table, values

STRICTER_THAN_ITS_CODES = {"cyclopentanone": ("A", "B")}
"""Solvent -> (band by its statements, band adopted): the sources leave this unexplained."""
LATER_ENTRIES = {"mibk": "C", "dioxane": "D", "nitromethane": "C"}
"""Solvent -> band by a later adaptation of the EU list that is remembered, not seen."""
NO_STATEMENT = {"water", "dmso", "d5"}
DISPUTED_FLASH = {"n-butyl-acetate"}
"""Flash point 22 C (IEC 60079-20-1), which asks for H225, against H226 of the EU entry."""


def codes(material: str, *bases: str) -> set[str]:
    rows = [row for row in table("hazards") if row["material"] == material]
    return {row["code"] for row in rows if not bases or row["basis"] in bases}


def band(statements: set[str]) -> str:
    bands = {row["code"]: row["band"] for row in table("hazard_statements")}
    return max((bands[code] for code in statements), default="")


def later(solvent: str) -> set[str]:
    rows = [row for row in table("hazards") if row["material"] == solvent]
    return {row["code"] for row in rows if row["note"].startswith("later adaptation")}


def bands(solvent: str) -> list[str]:
    return [row["words"] for row in values(solvent, "hazard band")]


@pytest.mark.parametrize("solvent", sorted({*liquids(), "carbon-tetrachloride"} - NO_STATEMENT))
def test_the_band_is_that_of_the_worst_statement(solvent: str) -> None:
    by_codes = band(codes(solvent) - later(solvent))
    if solvent in STRICTER_THAN_ITS_CODES:
        assert (by_codes, bands(solvent)[-1]) == STRICTER_THAN_ITS_CODES[solvent]
    else:
        assert by_codes == bands(solvent)[-1]


@pytest.mark.parametrize("solvent", sorted(liquids()))
def test_a_remembered_stricter_entry_stands_before_the_seen_one(solvent: str) -> None:
    if solvent in LATER_ENTRIES:
        assert band(codes(solvent)) == LATER_ENTRIES[solvent] == bands(solvent)[0]
        assert len(bands(solvent)) == 2
    else:
        assert len(bands(solvent)) == 1
        assert band(codes(solvent)) == band(codes(solvent) - later(solvent))


@pytest.mark.parametrize("solvent", sorted(NO_STATEMENT))
def test_without_a_statement_the_band_is_given(solvent: str) -> None:
    assert not codes(solvent) and bands(solvent) == ["A"]


def test_every_code_that_is_used_has_its_wording() -> None:
    used = {row["code"] for row in table("hazards")}
    assert used <= {row["code"] for row in table("hazard_statements")}


@pytest.mark.parametrize(
    ("code", "wording", "its_band"),
    [
        # UN GHS, Annex 3, wording from memory; bands as in the ranking of removal options.
        ("H225", "Highly flammable liquid and vapour", "A"),
        ("H304", "May be fatal if swallowed and enters airways", "B"),
        ("H317", "May cause an allergic skin reaction", "C"),
        ("H336", "May cause drowsiness or dizziness", "B"),
        ("H351", "Suspected of causing cancer", "C"),
        ("H330", "Fatal if inhaled", "D"),
        ("H350", "May cause cancer", "D"),
    ],
)
def test_wording_and_band(code: str, wording: str, its_band: str) -> None:
    (row,) = (row for row in table("hazard_statements") if row["code"] == code)
    assert (row["wording"], row["band"]) == (wording, its_band)


def test_wordings_were_checked_and_classifications_were_not() -> None:
    assert {row["checked"] for row in table("hazard_statements")} == {"2026-11-25"}
    assert {row["checked"] for row in table("hazards")} == {""}
    assert all(
        "verify" in row["note"]
        or "read your own" in row["note"]
        or row["note"].startswith("added by notifiers")
        for row in table("hazards")
    )


# -- flammability (CLP thresholds, from memory: flash below 23 C and boiling above 35 C is
#    category 2, H225; 23 to 60 C is category 3, H226) ------------------------------------


def expected(solvent: str) -> str:
    flash = values(solvent, "flash point")[0]
    if flash["words"] == "none":
        return ""
    point = float(flash["low"])
    boils = float(values(solvent, "boiling point")[0]["low"])
    if point < 23:
        return "H225" if boils > 35 else "H224"
    return "H226" if point <= 60 else ""


@pytest.mark.parametrize("solvent", sorted(liquids()))
def test_flash_points_and_statements_agree(solvent: str) -> None:
    said = codes(solvent) & {"H224", "H225", "H226"}
    if solvent in DISPUTED_FLASH:
        assert (expected(solvent), said) == ("H225", {"H226"})
    else:
        assert said == ({expected(solvent)} - {""})


def test_the_dispute_about_butyl_acetate_is_told() -> None:
    (row,) = (row for row in table("materials") if row["key"] == "n-butyl-acetate")
    assert re.search(r"22 C .*H226.*disagree", row["note"])


# -- other hazardous matter ---------------------------------------------------------------


@pytest.mark.parametrize(
    ("material", "statements"),
    [
        # Supplier's sheet of one epoxy resin; the others from memory of the EU list.
        ("epoxy-uncured", {"H315", "H317", "H319", "H411"}),
        ("epoxy-hardener", {"H302", "H312", "H314", "H317", "H412"}),
        ("styrene", {"H226", "H315", "H319", "H332", "H361d", "H372"}),
        ("hydrofluoric-acid", {"H300", "H310", "H314", "H330"}),
        ("acetic-acid", {"H226", "H314"}),
        ("lead", {"H360FD", "H362", "H372", "H410"}),
    ],
)
def test_statements_of_other_matter(material: str, statements: set[str]) -> None:
    assert codes(material) == statements


def test_only_what_a_source_was_read_for_is_published() -> None:
    published = {row["material"] for row in table("hazards") if row["basis"] == "published"}
    assert {"acetone", "ethanol", "toluene", "nmp", "formaldehyde", "epoxy-uncured"} <= published
    assert codes("dichloromethane", "published") == {"H351"}
    assert not codes("turpentine", "published")


def test_restrictions_say_to_verify() -> None:
    for row in table("restrictions"):
        assert row["basis"] == "from memory" and "verify" in row["note"], row
