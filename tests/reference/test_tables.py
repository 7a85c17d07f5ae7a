"""The shipped tables hold together: references, closed lists, dates, sources, names."""

from __future__ import annotations

import re
from collections import Counter, defaultdict

import pytest

from conservedb import dates
from conservedb.knowledge.rules import CONDUCT, RULES
from conservedb.records import behaviour, hazards, materials, rules, sources
from conservedb.records.treatments import AGENT_FORMS
from conservedb.reference.edition import EDITION
from conservedb.reference.tables import SUBJECTS
from conservedb.reference.words import AMBIGUOUS
from conservedb.store.keys import fold
from tests.reference.shipped import keys, table

HOUSE = {
    "sources": (sources.source, "ref"),
    "material_classes": (materials.material_class, "key"),
    "materials": (materials.material, "key"),
    "material_values": (behaviour.material_value, "key"),
    "hansen": (behaviour.hansen, "key"),
    "teas": (behaviour.teas, "key"),
    "solubilities": (behaviour.solubility, "key"),
    "traits": (behaviour.trait, "key"),
    "periods": (behaviour.period, "key"),
    "hazard_statements": (hazards.hazard_statement, "code"),
    "hazards": (hazards.hazard, "key"),
    "exposure_limits": (hazards.exposure_limit, "key"),
    "restrictions": (hazards.restriction, "key"),
    "rules": (rules.rule, "key"),
    "settings": (rules.setting, "name"),
}
"""Subject -> its table and the column by which its rows are told apart."""

CLOSED = [
    ("material_values", "property", behaviour.PROPERTIES),
    ("hansen", "use", behaviour.HANSEN_USES),
    ("solubilities", "state", behaviour.SOLUBILITY_STATES),
    ("solubilities", "effect", behaviour.SOLUBILITY_EFFECTS),
    ("solubilities", "form", AGENT_FORMS),
    ("traits", "trait", behaviour.TRAITS),
    ("traits", "holds", behaviour.HOLDS),
    ("periods", "mark", behaviour.PERIOD_MARKS),
    ("hazard_statements", "band", ("A", "B", "C", "D")),
    ("exposure_limits", "kind", hazards.EXPOSURE_KINDS),
    ("exposure_limits", "skin", ("yes", "no")),
    ("rules", "severity", rules.SEVERITIES),
    ("rules", "judges", rules.JUDGES),
    ("rules", "active", ("yes", "no")),
]
DATED = [
    ("sources", "date"),
    ("periods", "date"),
    ("hazard_statements", "checked"),
    ("hazards", "checked"),
    ("exposure_limits", "as_of"),
    ("restrictions", "since"),
]
TOLD = [subject for subject in SUBJECTS if "basis" in table(subject)[0]]


def test_the_edition_is_a_day() -> None:
    assert re.fullmatch(r"\d{4}-\d{2}-\d{2}", EDITION)
    assert dates.read(EDITION).edtf == EDITION


@pytest.mark.parametrize("subject", SUBJECTS)
def test_no_row_is_ragged_and_no_cell_has_stray_blanks(subject: str) -> None:
    for row in table(subject):
        assert None not in row and None not in row.values(), row
        assert all(cell == cell.strip() for cell in row.values()), row


@pytest.mark.parametrize("subject", HOUSE)
def test_keys_are_unique(subject: str) -> None:
    column = HOUSE[subject][1]
    repeated = [key for key, n in Counter(row[column] for row in table(subject)).items() if n > 1]
    assert not repeated
    assert "" not in keys(subject, column)


@pytest.mark.parametrize("subject", HOUSE)
def test_headers_are_fields_of_the_table(subject: str) -> None:
    known = HOUSE[subject][0].c
    parts = {"aliases", "trade_names", "behaves_as", "agent", "code"}
    for header in table(subject)[0]:
        held = {header, f"{header}_id", f"{header}_words"}
        assert header in parts or held & set(known.keys()), header


@pytest.mark.parametrize(("subject", "column", "words"), CLOSED)
def test_words_are_of_the_closed_lists(subject: str, column: str, words: tuple[str, ...]) -> None:
    used = {row[column] for row in table(subject)} - {""}
    assert used <= set(words)


@pytest.mark.parametrize("subject", SUBJECTS)
def test_every_reference_is_shipped(subject: str) -> None:
    targets = {
        "material": keys("materials"),
        "part": keys("materials"),
        "behaves_as": keys("materials"),
        "class": keys("material_classes"),
        "parent": keys("material_classes"),
        "source": keys("sources", "ref"),
    }
    if subject == "hazards":
        targets["code"] = keys("hazard_statements", "code")
    for row in table(subject):
        for column, known in targets.items():
            assert not row.get(column) or row[column] in known, row


def test_the_classes_are_a_tree() -> None:
    parent = {row["key"]: row["parent"] for row in table("material_classes")}
    for key in parent:
        path = [key]
        while parent[path[-1]]:
            path.append(parent[path[-1]])
            assert len(path) == len(set(path)), path


def test_agents_are_shipped_liquids_in_shares_of_a_hundred() -> None:
    for row in table("solubilities"):
        parts = [part.strip() for part in row["agent"].split(";")]
        if len(parts) == 1:
            assert parts[0] in keys("materials"), row
            continue
        split = [part.rsplit(" ", 1) for part in parts]
        assert all(name in keys("materials") for name, _ in split), row
        assert sum(float(share) for _, share in split) == 100, row


@pytest.mark.parametrize(("subject", "column"), DATED)
def test_dates_are_understood(subject: str, column: str) -> None:
    for row in table(subject):
        found = dates.read(row.get(column, ""))
        assert found.derived != "not understood", row


@pytest.mark.parametrize("subject", TOLD)
def test_published_has_a_source_and_memory_has_none(subject: str) -> None:
    for row in table(subject):
        assert row["basis"] in behaviour.BASES, row
        assert bool(row["source"]) == (row["basis"] in ("published", "measured")), row
        assert not row.get("page") or row["source"], row


def test_nobody_has_confirmed_a_shipped_value() -> None:
    for subject in TOLD:
        for row in table(subject):
            assert not row.get("confirmed_by") and not row.get("confirmed"), row


def test_every_source_is_cited_or_named_by_the_program() -> None:
    named = {"lit.PHE98", "lit.HOOK88", "lit.BUR84", "lit.TEAS68", "lit.GRI03"}
    cited = {row.get("source", "") for subject in SUBJECTS for row in table(subject)}
    assert keys("sources", "ref") - cited == named
    assert all(row["kind"] == "literature" for row in table("sources"))
    assert all(row["ref"].startswith("lit.") for row in table("sources"))


# -- values -------------------------------------------------------------------------------


def test_values_say_something_in_numbers_or_in_words() -> None:
    for row in table("material_values"):
        low, high = row["low"], row["high"]
        assert bool(low) == bool(high), row
        assert low or row["words"], row
        assert not low or float(low) <= float(high), row
        assert not low or row["property"] in behaviour.UNITS, row


def test_teas_fractions_sum_to_a_hundred() -> None:
    for row in table("teas"):
        assert 99 <= sum(float(row[axis]) for axis in "dph") <= 101, row


def test_hansen_rows_are_in_order_and_spheres_say_their_use() -> None:
    positions = defaultdict(list)
    for row in table("hansen"):
        positions[row["material"]].append(int(row["position"]))
        assert float(row["d"]) > 0, row
        if row["r0"]:
            assert float(row["r0"]) > 0 and row["use"] and row["quality"], row
            assert row["page"].startswith("A2#"), row
    assert all(those == list(range(len(those))) for those in positions.values())


def test_a_network_has_no_sphere_of_dissolution() -> None:
    hard = {"epoxy", "epoxy-optical", "hxtal", "polyester", "silicone-rubber", "oil-paint"}
    uses = {(row["material"], row["use"]) for row in table("hansen")}
    assert {use for material, use in uses if material in hard} == {"swelling only"}
    assert ("epoxy-uncured", "dissolution") in uses


# -- names --------------------------------------------------------------------------------


def _words(row: dict[str, str]) -> set[str]:
    lists = f"{row['aliases']};{row['trade_names']}"
    return {fold(word) for word in (row["name"], *lists.split(";")) if word.strip()}


def test_a_name_is_borne_by_one_material() -> None:
    bearers = defaultdict(set)
    for row in table("materials"):
        for word in _words(row):
            bearers[word].add(row["key"])
    assert {word: those for word, those in bearers.items() if len(those) > 1} == {}


def test_no_material_bears_a_word_that_is_a_trap() -> None:
    for row in table("materials"):
        assert not _words(row) & {fold(word) for word in AMBIGUOUS}, row
    shelves = "Araldite Akemi Mowilith Paraloid Lascaux Primal Elvacite Lucite Klucel Mowital"
    alone = {fold(word) for word in f"{shelves} Butvar Plextol Rhoplex Acryloid PVA".split()}
    assert not alone & {word for row in table("materials") for word in _words(row)}


def test_no_material_bears_the_key_of_another() -> None:
    for row in table("materials"):
        assert not (_words(row) & keys("materials")) - {row["key"]}, row


# -- rules and settings -------------------------------------------------------------------


def test_every_rule_is_one_that_the_program_runs() -> None:
    assert keys("rules") == set(RULES)
    conduct = {row["key"] for row in table("rules") if row["judges"] == "conduct"}
    assert conduct == set(CONDUCT)


def test_a_rule_never_says_that_something_is_right() -> None:
    for row in table("rules"):
        assert row["needs"] and row["sentence"].endswith("."), row
        assert not re.search(r"\b(safe|right|correct|harmless)\b", row["sentence"]), row


def test_settings_are_those_the_program_asks_for() -> None:
    shipped = {row["name"]: row["value"] for row in table("settings")}
    assert shipped == {
        "creep margin": "15",
        "solvent hold months": "12",
        "solvent depression": "30",
        "hazard band": "C",
        "jurisdiction": "",
        "conduct from": "",
        "cellulose nitrate age": "30",
        "test interval years": "10",
    }
    assert all(row["note"] for row in table("settings"))
