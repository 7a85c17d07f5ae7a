"""What the shipped rows say of materials: facts with their sources, traits with their bearers."""

from __future__ import annotations

from collections import defaultdict
from functools import cache

import pytest

from tests.reference.shipped import Row, table, values


def facts(material: str, agent: str, state: str) -> set[tuple[str, str, str]]:
    """(effect, form, source) of what is recorded of an agent on a material."""
    return {
        (row["effect"], row["form"], row["source"])
        for row in table("solubilities")
        if (row["material"], row["agent"], row["state"]) == (material, agent, state)
    }


@pytest.mark.parametrize(
    ("material", "agent", "state", "effect", "form", "source"),
    [
        # Table O10 of the fact base; each with the print it names, read again where at hand.
        ("b72", "acetone", "aged", "dissolves", "", "lit.KOOB07"),
        ("b72", "ethanol", "fresh", "dissolves", "", "lit.VIN19"),
        ("b72", "ethanol", "fresh", "dissolves", "", "lit.WB72"),
        ("b72", "xylenes", "fresh", "dissolves", "", "lit.ELL04"),
        ("b72", "acetone", "fresh", "dissolves", "vapour", "lit.POD01"),
        ("shellac", "ethanol", "fresh", "dissolves", "", "lit.HWSH"),
        ("shellac", "acetone 50; ethanol 50", "aged", "dissolves", "bath", "lit.KOOBSH"),
        ("shellac", "ethanol", "aged", "softens", "poultice", "lit.KOOBSH"),
        ("shellac", "methanol", "aged", "dissolves", "", "lit.SH1374"),
        ("shellac", "morpholine", "aged", "dissolves", "", "lit.SH1373"),
        ("cn", "acetone", "aged", "dissolves", "", "lit.NEI03"),
        ("cn", "acetone", "aged", "dissolves", "", "lit.BRAD01"),
        ("animal-glue", "water", "fresh", "dissolves", "", "lit.CGLUE"),
        ("animal-glue", "ethanol", "fresh", "no effect", "", "lit.CGLUE"),
        ("animal-glue", "toluene", "fresh", "no effect", "", "lit.CGLUE"),
        ("epoxy", "dichloromethane", "not stated", "swells", "vapour", "lit.POD01"),
        ("polyester", "dichloromethane", "not stated", "swells", "vapour", "lit.POD01"),
        ("pvb-b98", "ethanol", "fresh", "dissolves", "", "lit.AMNH14"),
        ("pvb-b98", "acetone", "fresh", "no effect", "", "lit.AMNH14"),
        ("soluble-nylon", "ethanol", "aged", "no effect", "", "lit.SEA81"),
        ("pval", "water", "aged", "softens", "", "lit.PVOH98"),
        ("pval", "water", "aged", "dissolves", "", "lit.PVOH98"),
        ("pvac-emulsion", "acetone", "aged", "softens", "", "lit.DUR03"),
        ("cdd", "xylenes", "fresh", "dissolves", "", "lit.STE00"),
        ("casein", "acetone 50; water 50", "aged", "softens", "", "lit.PLA98"),
        ("casein", "ethanol 50; water 50", "aged", "softens", "", "lit.PLA98"),
    ],
)
def test_published_facts(
    material: str, agent: str, state: str, effect: str, form: str, source: str
) -> None:
    assert (effect, form, source) in facts(material, agent, state)


def test_the_bath_for_aged_shellac_takes_an_hour() -> None:
    # Koob, DistList 21:35: "at least 1 hour"; a poultice does not give the same result.
    (row,) = (r for r in table("solubilities") if r["form"] == "bath")
    assert (row["material"], row["dwell_min"], row["page"]) == ("shellac", "60", "")


def test_aged_poly_vinyl_alcohol_wants_hot_water() -> None:
    rows = {
        row["effect"]: float(row["temperature_c"])
        for row in table("solubilities")
        if (row["material"], row["state"]) == ("pval", "aged")
    }
    assert rows == {"softens": 20, "dissolves": 85}


def test_what_disagrees_stands_side_by_side() -> None:
    water = facts("acrylic-dispersion", "water", "not stated")
    assert {("swells", "", "lit.KOOB16"), ("no effect", "", "lit.B60A16")} <= water
    acetone = facts("ms2a", "acetone", "fresh")
    assert acetone == {("no effect", "", "lit.CMS2A"), ("dissolves", "", "")}


def test_shellac_in_hydrocarbons_is_from_memory_only() -> None:
    for agent in ("toluene", "xylenes"):
        assert facts("shellac", agent, "fresh") == {("no effect", "", "")}


def test_nothing_is_taken_off_by_what_attacks_it() -> None:
    # A fact "attacked" would be offered as a way of release; traits say what attacks what.
    assert not [row for row in table("solubilities") if row["effect"] == "attacked"]


# -- figures ------------------------------------------------------------------------------


def numbers(material: str, name: str) -> list[tuple[float, float, str]]:
    return [
        (float(row["low"]), float(row["high"]), row["source"])
        for row in values(material, name)
        if row["low"]
    ]


def test_softening_figures_of_the_fact_base() -> None:
    assert numbers("b72", "glass transition") == [(40, 40, "lit.KOOB96"), (37, 40, "lit.CARD22")]
    assert numbers("cn", "softening") == [(80, 90, "lit.KOOB96")]
    assert numbers("pvb", "glass transition")[0] == (62, 72, "lit.CBUT")
    assert numbers("acrylic-dispersion", "glass transition")[0] == (16, 16, "lit.KOOB16")
    assert numbers("epoxy", "glass transition") == [(45, 65, "")]
    assert numbers("beeswax", "melting")[0] == (62, 70, "lit.CBEES")


def test_matter_that_depends_on_humidity_has_no_number_for_softening() -> None:
    for row in table("materials"):
        if under(row["class"], "protein") or under(row["class"], "polysaccharide"):
            figures = numbers(row["key"], "glass transition") + numbers(row["key"], "softening")
            assert not figures, row["key"]


def test_strengths_are_those_of_the_joints_that_broke_the_marble() -> None:
    # Podany et al. 2001, section 6: kPa, averages; the marble failed in all but the bulked one.
    assert numbers("epoxy", "shear strength") == [(4742, 4742, "lit.POD01")]
    assert numbers("epoxy", "tensile strength") == [(4519, 4519, "lit.POD01")]
    assert numbers("polyester", "shear strength") == [(4101, 4101, "lit.POD01")]
    assert numbers("polyester", "tensile strength") == [(4616, 4616, "lit.POD01")]
    assert numbers("epoxy-silica", "shear strength") == [(15474, 15474, "lit.POD01")]


# -- traits -------------------------------------------------------------------------------


@cache
def parents() -> dict[str, str]:
    return {row["key"]: row["parent"] for row in table("material_classes")}


def under(klass: str, above: str) -> bool:
    while klass and klass != above:
        klass = parents()[klass]
    return klass == above


@cache
def bearers() -> dict[tuple[str, str], dict[str, Row]]:
    found: dict[tuple[str, str], dict[str, Row]] = defaultdict(dict)
    for row in table("traits"):
        kind, key = ("class", row["class"]) if row["class"] else ("material", row["material"])
        found[kind, key][row["trait"]] = row
    return dict(found)


def holds(material: str, trait: str) -> str:
    """The nearest word: that of the material, of its class, of the classes above; else ""."""
    (row,) = (row for row in table("materials") if row["key"] == material)
    path = [("material", material)]
    klass = row["class"]
    while klass:
        path.append(("class", klass))
        klass = parents()[klass]
    for bearer in path:
        if trait in bearers().get(bearer, {}):
            return bearers()[bearer][trait]["holds"]
    return ""


def test_each_bearer_says_each_trait_once() -> None:
    said = [(row["material"], row["class"], row["trait"]) for row in table("traits")]
    assert len(said) == len(set(said))
    assert all(bool(row["material"]) != bool(row["class"]) for row in table("traits"))


def test_nothing_remembered_clears_a_neighbour() -> None:
    sensitive = [row for row in table("traits") if row["trait"].endswith("sensitive")]
    cleared = [row for row in sensitive if row["holds"] == "no"]
    assert cleared and all(row["basis"] != "from memory" for row in cleared)
    assert all(row["effect"] for row in cleared)


@pytest.mark.parametrize(
    ("material", "trait", "word"),
    [
        ("epoxy", "cross-linked", "yes"),
        ("urushi", "cross-linked", "yes"),
        ("oil-mastic", "cross-linked", "yes"),
        ("cyano", "cross-linked", "unknown"),
        ("soluble-nylon", "cross-linked", "yes"),
        ("epoxy-uncured", "cross-linked", ""),
        ("animal-glue", "no Hansen verdict", "yes"),
        ("mcwax", "no Hansen verdict", "yes"),
        ("pval", "no Hansen verdict", "yes"),
        ("peg", "no Hansen verdict", "yes"),
        ("gypsum-plaster", "no solvent", "yes"),
        ("bronze", "no solvent", "yes"),
        ("ethyl-silicate", "no solvent", "yes"),
        ("sulphur", "no solvent", "no"),
        ("cdd", "sublimes", "yes"),
        ("b72", "keeps its solubility", "yes"),
        ("k80", "loses its solubility", "yes"),
        ("marble", "porous", "yes"),
        ("porcelain", "porous", "no"),
        ("stoneware", "porous", "unknown"),
        ("soda-glass", "porous", "no"),
        ("limestone", "water-sensitive", "no"),
        ("alabaster", "water-sensitive", "yes"),
        ("bole", "water-sensitive", "yes"),
        ("iron", "water-sensitive", "yes"),
        ("stainless-steel", "water-sensitive", "no"),
        ("terracotta", "water-sensitive", "unknown"),
        ("marble", "acid-sensitive", "yes"),
        ("lime-mortar", "acid-sensitive", "yes"),
        ("shell", "acid-sensitive", "yes"),
        ("lead", "acid-sensitive", "yes"),
        ("oil-paint", "alkali-sensitive", "yes"),
        ("cn", "heat-sensitive", "yes"),
        ("plaster-cast", "gypsum", "yes"),
        ("black-crust", "gypsum", "yes"),
        ("chloride-salt", "soluble salt", "yes"),
        ("mild-steel", "iron", "yes"),
        ("stainless-steel", "iron", "no"),
        ("stainless-steel", "noble or stainless metal", "yes"),
        ("lead-run", "lead", "yes"),
        ("oak", "gives off acid vapour", "yes"),
        ("silicone-rubber", "gives off acid vapour", "unknown"),
        ("pvac", "creeps under load", "yes"),
        ("epoxy", "creeps under load", ""),
        ("deionised-water", "water", "yes"),
        ("muriatic-acid", "acid", "yes"),
        ("edta", "acid", "yes"),
        ("ammonia", "alkali", "yes"),
        ("steam", "heat", "yes"),
        ("steam", "water", "yes"),
        ("acetone", "organic solvent", "yes"),
        ("dmso", "carries matter through skin", "yes"),
        ("linseed-oil", "self-heats in rags", "yes"),
        ("portland-cement", "dust harms", "yes"),
    ],
)
def test_traits_as_they_are_inherited(material: str, trait: str, word: str) -> None:
    assert holds(material, trait) == word


def test_every_substrate_says_whether_it_is_porous() -> None:
    for row in table("materials"):
        if under(row["class"], "substrate"):
            assert holds(row["key"], "porous"), row["key"]


def test_every_fill_or_adhesive_has_a_rule_or_evidence() -> None:
    known = {row["material"] for row in table("solubilities")}
    known |= {row["material"] for row in table("material_parts")}
    kinds = ("synthetic-thermoplastic", "natural-resin", "protein", "polysaccharide", "wax")
    for row in table("materials"):
        if any(under(row["class"], kind) for kind in kinds):
            assert row["key"] in known or row["behaves_as"], row["key"]


def test_a_recipe_that_has_dried_behaves_as_its_binder() -> None:
    standing = {row["key"]: row["behaves_as"] for row in table("materials") if row["behaves_as"]}
    assert standing["b72-22-acetone"] == "b72"
    assert standing["deionised-water"] == "water"
    assert standing["stucco-marble"] == "gypsum-plaster"
    assert all(other not in standing for other in standing.values())
