"""Tables of how materials behave: what they keep, and what is refused before the database does."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import CheckConstraint, Engine

from conservedb.exchange.columns import Choice
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import ImportReport, import_folder
from conservedb.exchange.subjects import SUBJECTS
from conservedb.records.every import metadata
from conservedb.store.connect import reading
from tests.conftest import TODAY

Make = Callable[[str], Engine]
Tables = dict[str, str]

BASE: Tables = {
    "objects": "number\nN.1\n",
    "components": "object,mark\nN.1,B1\n",
    "places": "object,mark,kind,component\nN.1,S1,surface,B1\nN.1,S2,surface,B1\n",
    "layers": "object,place,ref\nN.1,S1,l1\n",
    "people": "name\nEva Moor\n",
    "material_classes": "key,name\nours,Ours\n",
    "materials": "key,name,trade_names,behaves_as\n"
    "x1,Resin X,Brand X; Brand Y,\nx2,Resin X in acetone,,x1 (thinned)\nacetone 50,Odd name,,\n",
    "rules": "key,title,severity,judges,sentence\nown,Own rule,warn,safety,Mind it.\n",
}


def take(engine: Engine, folder: Path, tables: Tables, **options: Any) -> ImportReport:
    folder.mkdir()
    for name, text in tables.items():
        (folder / f"{name}.csv").write_text(text, encoding="utf-8")
    return import_folder(engine, folder, today=TODAY, who="A. Tester", **options)


def said(report: ImportReport) -> list[str]:
    return [fault.sentence() for fault in report.faults]


def ask(engine: Engine, sql: str) -> list[tuple[Any, ...]]:
    with reading(engine) as connection:
        return [tuple(row) for row in connection.exec_driver_sql(sql)]


FAULTS: dict[str, tuple[Tables, str]] = {
    "ck_material_value_low_below_high": (
        {"material_values": "material,property,low,high\nx1,softening,60,40\n"},
        "material_values.csv, line 2, column high: the lower value 60 is above the higher one 40;"
        " write the lower of the two into low",
    ),
    "ck_material_value_low_with_high": (
        {"material_values": "material,property,high\nx1,softening,40\n"},
        "material_values.csv, line 2, column low: gives a higher value and no lower one; one"
        " number goes into low; of a range give both",
    ),
    "a value of nothing known": (
        {"material_values": "material,property,low\nx1,colour,40\n"},
        'material_values.csv, line 2, column property "colour": is not one of the words used here',
    ),
    "a value of no property": (
        {"material_values": "material,low\nx1,40\n"},
        "material_values.csv, line 2, column property: is blank; fill it in",
    ),
    "a value of no material": (
        {"material_values": "property,low\nsoftening,40\n"},
        "material_values.csv, line 2, column material: names no material; fill it in",
    ),
    "ck_hansen_parameters_positive": (
        {"hansen": "material,d,p,h,r0\nx1,17,5,5,0\n"},
        'hansen.csv, line 2, column r0 "0": is zero; give a number above zero, or leave the cell',
    ),
    "a dispersion of zero": (
        {"hansen": "material,d,p,h\nx1,0,5,5\n"},
        'hansen.csv, line 2, column d "0": is zero',
    ),
    "a negative polarity": (
        {"hansen": "material,d,p,h\nx1,17,-5,5\n"},
        'hansen.csv, line 2, column p "-5": is below zero',
    ),
    "no hydrogen bonding": (
        {"hansen": "material,d,p\nx1,17,5\n"},
        "hansen.csv, line 2, column h: is blank; fill it in",
    ),
    # 79.5 % n-pentane + 20.5 % propylene glycol as printed in the Conservation DistList of
    # 25 July 1989 (cool.culturalheritage.org): the row sums to 101.85
    "ck_teas_sums_to_100": (
        {"teas": "material,d,p,h\nx1,86.49,3.07,12.29\n"},
        "teas.csv, line 2: the fractions d, p and h sum to 101.85, not to 100; look them up again",
    ),
    "ck_solubility_part_share_in_percent": (
        {"solubilities": "material,agent,effect\nx1,acetone 150; ethanol -50,swells\n"},
        'solubilities.csv, line 2, column agent "acetone 150": is no share in per cent; write each'
        " part with its per cent by volume, such as: acetone 50; ethanol 50",
    ),
    "a share of zero": (
        {"solubilities": "material,agent,effect\nx1,acetone 100; ethanol 0,swells\n"},
        'solubilities.csv, line 2, column agent "ethanol 0": is no share in per cent',
    ),
    "shares that are not whole": (
        {"solubilities": "material,agent,effect\nx1,acetone 50; ethanol 40,swells\n"},
        'solubilities.csv, line 2, column agent "acetone 50; ethanol 40": the shares sum to 90 per'
        " cent, not to 100; write each part",
    ),
    "half of one liquid": (
        {"solubilities": "material,agent,effect\nx1,acetone 45,swells\n"},
        'solubilities.csv, line 2, column agent "acetone 45": the shares sum to 45 per cent',
    ),
    "a part without share": (
        {"solubilities": "material,agent,effect\nx1,acetone 50; ethanol,swells\n"},
        'solubilities.csv, line 2, column agent "ethanol": has no share; write each part with its',
    ),
    "a part twice": (
        {"solubilities": "material,agent,effect\nx1,acetone 50; propanone 50,swells\n"},
        'solubilities.csv, line 2, column agent "propanone 50": stands twice; name each liquid',
    ),
    "a part nobody knows": (
        {"solubilities": "material,agent,effect\nx1,ethanoll 50; acetone 50,swells\n"},
        'solubilities.csv, line 2, column agent "ethanoll 50": names no material in the folder or'
        " the database; did you mean ethanol",
    ),
    "a decimal comma in a share": (
        {"solubilities": 'material,agent,effect\nx1,"acetone 50,5; ethanol 49.5",swells\n'},
        'solubilities.csv, line 2, column agent "acetone 50,5": is not a number',
    ),
    "an ambiguous part": (
        {"solubilities": "material,agent,effect\nx1,cement,swells\n"},
        'solubilities.csv, line 2, column agent "cement": may mean several things: Portland',
    ),
    "no agent": (
        {"solubilities": "material,effect\nx1,swells\n"},
        "solubilities.csv, line 2, column agent: names no material; fill it in",
    ),
    "ck_trait_one_bearer": (
        {"traits": "material,class,trait,holds\nx1,ours,porous,yes\n"},
        "traits.csv, line 2: names both a material and a class; name one of the two",
    ),
    "a trait of nothing": (
        {"traits": "trait,holds\nporous,yes\n"},
        "traits.csv, line 2: names neither a material nor a class; name one of the two",
    ),
    "ck_stand_in_not_itself": (
        {"materials": BASE["materials"] + "x3,Resin,,x3\n"},
        'materials.csv, line 5, column behaves_as "x3": this material would behave as itself;',
    ),
    "behaves as itself through another": (
        {"materials": "key,behaves_as\nx1,x2\nx2,x1\n"},
        'materials.csv, line 2, column behaves_as "x2": this material would behave as itself;',
    ),
    "behaves as two": (
        {"materials": "key,behaves_as\nx1,acetone; ethanol\n"},
        'materials.csv, line 2, column behaves_as "acetone; ethanol": names 2 of them; name no',
    ),
    "ck_exposure_limit_limit_positive": (
        {"exposure_limits": "material,kind,jurisdiction,ppm\nacetone,TWA,Here,0\n"},
        'exposure_limits.csv, line 2, column ppm "0": is zero',
    ),
    "a limit in milligrams of zero": (
        {"exposure_limits": "material,kind,jurisdiction,mg_m3\nacetone,TWA,Here,0\n"},
        'exposure_limits.csv, line 2, column mg_m3 "0": is zero',
    ),
    "a limit of nowhere": (
        {"exposure_limits": "material,kind,ppm\nacetone,TWA,500\n"},
        "exposure_limits.csv, line 2, column jurisdiction: is blank; fill it in",
    ),
    "a hazard nobody words": (
        {"hazards": "material,code\nacetone,H999\n"},
        'hazards.csv, line 2, column code "H999": names no hazard statement in the folder or the',
    ),
    "ck_spot_test_measures_positive": (
        {"spot_tests": "object,layer,agent,area_mm2\nN.1,l1,acetone,0\n"},
        'spot_tests.csv, line 2, column area_mm2 "0": is zero',
    ),
    "a dwell below zero": (
        {"spot_tests": "object,layer,agent,dwell_min\nN.1,l1,acetone,-1\n"},
        'spot_tests.csv, line 2, column dwell_min "-1": is below zero',
    ),
    "ck_spot_test_part_share_in_percent": (
        {"spot_tests": "object,layer,agent\nN.1,l1,acetone 0; ethanol 100\n"},
        'spot_tests.csv, line 2, column agent "acetone 0": is no share in per cent',
    ),
    "a test of no layer": (
        {"spot_tests": "object,layer,agent\nN.1,,acetone\n"},
        "spot_tests.csv, line 2, column layer: names no layer; fill it in",
    ),
    "a test of no agent": (
        {"spot_tests": "object,layer\nN.1,l1\n"},
        "spot_tests.csv, line 2, column agent: names no material; fill it in",
    ),
    "ck_climate_cold_below_warm": (
        {"climates": "room,min_c,max_c\nStore 3,25,18\n"},
        "climates.csv, line 2, column max_c: the lower value 25 is above the higher one 18; write"
        " the colder of the two into min_c",
    ),
    "a climate of no room": (
        {"climates": "use,max_c\nstorage,25\n"},
        "climates.csv, line 2, column room: is blank; fill it in",
    ),
    "ck_near_two_places": (
        {"near": "object,place,other_place\nN.1,S1,s1\n"},
        "near.csv, line 2, column other_place: is the same place on both sides; name two places",
    ),
    "ck_near_distance_positive": (
        {"near": "object,place,other_place,distance_mm\nN.1,S1,S2,-2\n"},
        'near.csv, line 2, column distance_mm "-2": is below zero',
    ),
    "near nothing": (
        {"near": "object,place\nN.1,S1\n"},
        "near.csv, line 2, column other_place: names no place; fill it in",
    ),
    "a rule that says nothing": (
        {"rules": "key,title,severity,judges\nown,Own rule,warn,safety\n"},
        "rules.csv, line 2, column sentence: is blank; fill it in",
    ),
    "accepted without a reason": (
        {"acceptances": "object,rule,person\nN.1,own,Eva Moor\n"},
        "acceptances.csv, line 2, column reason: is blank; fill it in",
    ),
    "accepted by nobody": (
        {"acceptances": "object,rule,reason\nN.1,own,old\n"},
        "acceptances.csv, line 2, column person: names no person; fill it in",
    ),
}


@pytest.mark.parametrize(("tables", "expected"), FAULTS.values(), ids=FAULTS.keys())
def test_faults(new_database: Make, tmp_path: Path, tables: Tables, expected: str) -> None:
    engine = new_database("a.db")
    report = take(engine, tmp_path / "in", BASE | tables)
    assert any(sentence.startswith(expected) for sentence in said(report)), said(report)
    assert not report.written


TABLES = {"material_value", "hansen", "teas", "solubility", "solubility_part", "trait", "period"}
TABLES |= {"stand_in", "hazard_statement", "hazard", "exposure_limit", "restriction", "rule"}
TABLES |= {"setting", "climate", "near", "acceptance", "spot_test", "spot_test_part"}


def checks() -> set[str]:
    """The names of the CHECKs of these tables that are neither a list of words nor a date."""
    names = {
        str(constraint.name)
        for table in TABLES
        for constraint in metadata.tables[table].constraints
        if isinstance(constraint, CheckConstraint)
    }
    return {name for name in names if not name.endswith(("_known", "_in_order"))}


def test_every_check_has_its_sentence() -> None:
    assert checks() <= set(FAULTS)


def test_every_closed_list_is_a_closed_list_of_the_schema() -> None:
    for subject in (one for one in SUBJECTS if one.table.name in TABLES):
        known = {
            str(constraint.sqltext)
            for constraint in subject.table.constraints
            if isinstance(constraint, CheckConstraint) and "_known" in str(constraint.name)
        }
        for column in subject.columns:
            if isinstance(column, Choice):
                listed = ", ".join(f"'{value}'" for value in column.values)
                assert f"{column.fields[0]} IN ({listed})" in known, (subject.name, column.name)


def test_an_agent_reads_and_is_written_as_it_was(new_database: Make, tmp_path: Path) -> None:
    """One liquid has no share; a material whose name ends in a number is still itself."""
    engine = new_database("a.db")
    rows = ("acetone", "acetone 100", "acetone 50;ethanol 50 %", "acetone 50")
    text = "key,material,agent,effect\n"
    text += "".join(f"s{number},x1,{agent},swells\n" for number, agent in enumerate(rows))
    assert said(take(engine, tmp_path / "in", BASE | {"solubilities": text})) == []
    parts = "SELECT s.key, m.key, share FROM solubility_part JOIN solubility s"
    parts += " ON s.id = solubility_id JOIN material m ON m.id = solubility_part.material_id"
    assert ask(engine, f"{parts} WHERE s.key GLOB 's[0-9]' ORDER BY s.key, position") == [
        ("s0", "acetone", None),
        ("s1", "acetone", None),
        ("s2", "acetone", 50.0),
        ("s2", "ethanol", 50.0),
        ("s3", "acetone 50", None),
    ]
    with reading(engine) as connection:
        export_folder(connection, tmp_path / "out")
    lines = (tmp_path / "out" / "solubilities.csv").read_text(encoding="utf-8").splitlines()
    written = [line.split(",")[2] for line in lines if line.startswith(("s0", "s1", "s2", "s3"))]
    assert written == ["acetone", "acetone", "acetone 50; ethanol 50", "acetone 50"]


def test_a_trade_name_resolves_as_an_alias_does(new_database: Make, tmp_path: Path) -> None:
    engine = new_database("a.db")
    layers = "object,place,ref,material\nN.1,S1,l1,brand x\nN.1,S1,l2,Paraloid B-72\n"
    assert said(take(engine, tmp_path / "in", BASE | {"layers": layers})) == []
    words = "SELECT m.key, material_words FROM layer JOIN material m ON m.id = material_id"
    assert ask(engine, words) == [("x1", "brand x"), ("b72", "Paraloid B-72")]


def test_a_trade_name_of_two_resolves_to_neither(new_database: Make, tmp_path: Path) -> None:
    engine = new_database("a.db")
    materials = "key,name,trade_names,class\nx1,Resin X,Brand,ours\nx2,Resin Y,Brand,ours\n"
    layers = "object,place,ref,material\nN.1,S1,l1,Brand\n"
    report = take(engine, tmp_path / "in", BASE | {"materials": materials, "layers": layers})
    assert any("(possible: x1; x2)" in notice.sentence() for notice in report.notices)
    assert ask(engine, "SELECT material_id, material_words FROM layer") == [(None, "Brand")]


def test_the_departments_own_name_goes_before_a_shipped_one(
    new_database: Make, tmp_path: Path
) -> None:
    """A word of the department's papers means what the department lists under it."""
    engine = new_database("a.db")
    materials = BASE["materials"] + "x9,Our tin,Paraloid B-72,\n"
    layers = "object,place,ref,material\nN.1,S1,l1,Paraloid B-72\n"
    tables = BASE | {"materials": materials, "layers": layers}
    assert said(take(engine, tmp_path / "in", tables)) == []
    keys = "SELECT m.key FROM layer JOIN material m ON m.id = material_id"
    assert ask(engine, keys) == [("x9",)]
