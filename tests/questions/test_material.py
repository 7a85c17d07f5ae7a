"""What is on record about a material: values with sources, conflicts in view, where it lies."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from sqlalchemy import Connection

from conservedb.exchange.importing import import_folder
from conservedb.questions.answers import NoSuch
from conservedb.questions.material import material_answer
from conservedb.questions.material_answers import Decade, MaterialAnswer, Value
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.conftest import TODAY
from tests.nasty import NASTY
from tests.questions.conftest import day

ODD = " ¦ ".join(NASTY[:13])

TABLES = {
    "people": "name\nInes Calder\n",
    "sources": """ref,kind,citation,date
X1,publication,A handbook,1990
X2,publication,A paper,2015
""",
    "material_classes": """key,name,parent
x-matter,test matter,
x-resin,test resin,x-matter
x-net,test network resin,x-resin
""",
    "materials": f"""key,name,class,aliases,trade_names,behaves_as,note
x-gum,Test gum,x-resin,gummy,Stickfast; Holdall,,Found in every drawer.
x-gum-b,Test gum of the workshop,x-net,,,x-gum,
x-spirit,Test spirit,,,,,
x-odd,"{ODD.replace('"', '""')}",,,,,
""",
    "material_parts": """\
material,part,amount,unit,note
x-gum-b,x-spirit,3,part by volume,as found
""",
    "material_values": """\
key,material,property,low,high,words,condition,basis,source,page,confirmed_by,confirmed,note
v1,x-gum,glass transition,37,40,,,published,X1,12,,,
v2,x-gum,glass transition,55,55,,,from memory,,,,,
v3,x-gum,glass transition,38,38,,,measured,X2,,Ines Calder,2025-03-01,
v4,x-gum,refractive index,1.48,1.49,,,published,X1,,,,
v5,x-gum,refractive index,1.49,,,,published,X2,,,,
v6,x-gum,density,1.1,,,dry,published,X1,,,,
v7,x-gum,density,1.3,,,wet,published,X2,,,,
v8,x-gum,ageing,,,yellows a little,,published,X1,,,,
v9,x-gum,ageing,,,keeps its colour,,published,X2,,,,
v10,x-gum,CAS number,,,1-2-3,,published,X1,,,,
v11,x-gum,CAS number,,,1-2-4,,published,X2,,,,
v12,x-gum,pH,5,,,,published,X1,3,,,
v13,x-gum,pH,6,,,,published,X1,4,,,
v14,x-spirit,vapour pressure,24.7,,,,published,X1,,,,
v15,x-gum-b,flash point,,,none,,published,X1,,,,
v16,x-gum-b,flash point,12,,,,published,X2,,,,
v17,x-odd,note,,,odd words,odd condition,from memory,,,,,odd note
""",
    "hansen": """\
key,material,d,p,h,r0,use,quality,condition,position,basis,source,page,confirmed_by,confirmed,note
h1,x-gum,19.2,11.2,1.8,11,dissolution,poor,,1,published,X1,,,,
h2,x-gum,17.6,7.4,5.6,9.4,dissolution,good,at 10 %,0,published,X2,,,,
h3,x-spirit,15.5,10.4,7.0,,,,,0,published,X1,,,,
""",
    "teas": """key,material,d,p,h,basis,source,page,confirmed_by,confirmed,note
t1,x-spirit,47,32,21,from memory,,,,,
""",
    "solubilities": """\
key,material,agent,state,effect,form,temperature_c,dwell_min,condition,basis,source,page,\
confirmed_by,confirmed,note
s1,x-gum,x-spirit,fresh,dissolves,,,,,published,X1,,,,
s2,x-gum,x-spirit 60; x-odd 40,aged,swells,gel,40,30,light-aged,measured,X2,,,,
s3,x-gum,x-odd,,no effect,,,,,from memory,,,,,
""",
    "traits": """key,material,class,trait,holds,effect,basis,source,page,confirmed_by,confirmed,note
r1,,x-matter,porous,no,,published,X1,,,,
r2,,x-resin,cross-linked,no,,published,X1,,,,
r3,,x-net,cross-linked,yes,it swells,published,X2,,,,
r4,x-gum,,keeps its solubility,yes,,from memory,,,,,
""",
    "periods": """key,material,mark,date,basis,source,page,confirmed_by,confirmed,note
p1,x-gum,first made,c. 1932,published,X1,,,,
""",
    "hazard_statements": """code,wording,band,basis,source,checked,note
H225,Highly flammable liquid and vapour,A,published,X1,2026-01,
""",
    "hazards": """key,material,code,basis,source,checked,note
z1,x-spirit,H225,published,X1,2026-01-15,
""",
    "exposure_limits": """\
key,material,kind,ppm,mg_m3,skin,jurisdiction,as_of,basis,source,note
e1,x-spirit,TWA,500,,yes,Somewhere,2024,published,X1,
e2,x-spirit,STEL,750,1780,,Somewhere,2024,published,X1,
""",
    "restrictions": """key,material,jurisdiction,text,since,basis,source,note
a1,x-spirit,Somewhere,licence needed,2010,published,X1,
""",
    "objects": "number,title,made\nM.1,Urn,1800\nM.2,Jar,1800\n",
    "components": "object,mark,name\nM.1,B1,body\nM.2,B1,body\n",
    "places": """object,mark,kind,component,name
M.1,S1,surface,B1,front
M.1,S2,surface,B1,back
M.2,S1,surface,B1,front
""",
    "interventions": """object,ref,kind,date,people,places
M.1,i1,clean,1980,Ines Calder,S1
""",
    "agents": "object,intervention,ref,material,place,form\nM.1,i1,g1,x-spirit,S1,swab\n",
    "layers": """object,place,ref,date,origin,material,role,stack,identified
M.1,S1,L1,1934-06-14,applied,x-gum,coating,0,analysed
M.1,S1,L2,1938,applied,x-gum,coating,1,analysed
M.1,S2,L3,1955/1965,applied,x-gum,coating,0,analysed
M.1,S1; S2,L4,1989-05,applied,x-gum,fill,,analysed
M.2,S1,L5,c. 1935,applied,x-gum,coating,0,analysed
M.2,S1,L6,before 1900,applied,x-gum,coating,-1,inferred
M.2,S1,L7,1951,applied,x-gum,coating,1,analysed
""",
    "removals": """object,ref,layer,date,cause,extent
M.1,r1,L1,1990,weathered,all
M.2,r2,L7,1999,weathered,part
""",
}


@pytest.fixture(scope="module")
def stocked(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Connection]:
    """A database with materials of our own beside whatever new databases carry."""
    folder = tmp_path_factory.mktemp("materials")
    tables = folder / "tables"
    tables.mkdir()
    for name, text in TABLES.items():
        (tables / f"{name}.csv").write_text(text, encoding="utf-8")
    create(folder / "stock.db", today=TODAY.isoformat())
    engine, _ = open_database(folder / "stock.db")
    report = import_folder(engine, tables, today=TODAY, who="A. Tester")
    assert report.written, [fault.sentence() for fault in report.faults]
    with reading(engine) as connection:
        yield connection
    engine.dispose()


def ask(connection: Connection, word: str, on: str = "today") -> MaterialAnswer:
    return material_answer(connection, word, day(on))


def values(answer: MaterialAnswer, name: str) -> list[Value]:
    return [value for one in answer.properties if one.name == name for value in one.values]


def differ(answer: MaterialAnswer) -> dict[str, str]:
    return {one.name: one.differ for one in answer.properties}


def test_names_and_classes(stocked: Connection) -> None:
    answer = ask(stocked, "Gummy")
    assert (answer.kind, answer.key, answer.name) == ("material", "x-gum", "Test gum")
    assert answer.aliases == ("gummy",)
    assert answer.trade_names == ("Stickfast", "Holdall")
    assert [one.said for one in answer.classes] == [
        "test resin (x-resin)",
        "test matter (x-matter)",
    ]
    assert answer.note == "Found in every drawer."


def test_every_value_says_how_it_is_known(stocked: Connection) -> None:
    found = values(ask(stocked, "x-gum"), "glass transition")
    assert [(one.said, one.told.standing) for one in found] == [
        ("37 to 40 C", "published"),
        ("55 C", "from memory, not confirmed"),
        ("38 C", "measured, confirmed by Ines Calder, 1 March 2025"),
    ]
    source = found[0].told.source
    assert source is not None and (source.ref, source.page) == ("X1", "12")
    assert [one.told.unsure for one in found] == [False, True, False]


def test_what_is_confirmed_is_no_longer_unsure(stocked: Connection) -> None:
    told = values(ask(stocked, "x-gum"), "glass transition")[2].told
    assert not told.unsure and told.confirmed_by == "Ines Calder"


def test_sources_that_differ_are_said_to(stocked: Connection) -> None:
    assert differ(ask(stocked, "x-gum")) == {
        "glass transition": "sources differ",  # 37 to 40 against 55
        "density": "sources differ, under different conditions",
        "refractive index": "",  # 1.48 to 1.49 and 1.49 meet
        "pH": "",  # one paper says both
        "CAS number": "sources differ",
        "ageing": "",  # remarks, not one word
    }
    assert differ(ask(stocked, "x-gum-b"))["flash point"] == "sources differ"  # none, and 12


def test_spheres_stand_side_by_side_the_preferred_first(stocked: Connection) -> None:
    found = ask(stocked, "x-gum").hansen
    assert [(tuple(one.at), one.r0, one.preferred) for one in found] == [
        ((17.6, 7.4, 5.6), 9.4, True),
        ((19.2, 11.2, 1.8), 11.0, False),
    ]
    assert (found[0].quality, found[0].condition) == ("good", "at 10 %")


def test_published_and_converted_fractions_are_kept_apart(stocked: Connection) -> None:
    answer = ask(stocked, "x-spirit")
    assert [tuple(one.at) for one in answer.teas] == [(47.0, 32.0, 21.0)]
    assert answer.teas[0].told.unsure
    # Acetone 15.5, 10.4, 7.0 gives 47.1, 31.6, 21.3 (chemistry facts, solvent table).
    assert [round(value, 1) for value in answer.hansen[0].converted] == [47.1, 31.6, 21.3]


def test_solubility_aged_first_with_agent_and_use(stocked: Connection) -> None:
    found = ask(stocked, "x-gum").solubilities
    assert [(one.state, one.effect, one.use) for one in found] == [
        ("aged", "swells", "gel, 40 C, 30 min"),
        ("fresh", "dissolves", ""),
        ("not stated", "no effect", ""),
    ]
    assert found[0].agent == f"60 % Test spirit + 40 % {ODD}"
    assert found[2].told.unsure


def traits(answer: MaterialAnswer) -> list[tuple[str, str, str, bool, bool]]:
    return [
        (one.trait, one.holds, one.bearer.key, one.inherited, one.counts) for one in answer.traits
    ]


def test_class_rules_come_down_and_say_from_where(stocked: Connection) -> None:
    assert traits(ask(stocked, "x-gum")) == [
        ("keeps its solubility", "yes", "x-gum", False, True),
        ("cross-linked", "no", "x-resin", True, True),
        ("porous", "no", "x-matter", True, True),
    ]


def test_the_nearest_rule_counts_and_the_others_stay_in_view(stocked: Connection) -> None:
    assert traits(ask(stocked, "x-net")) == [
        ("cross-linked", "yes", "x-net", False, True),
        ("cross-linked", "no", "x-resin", True, False),
        ("porous", "no", "x-matter", True, True),
    ]


def test_a_stand_in_lends_its_values_by_name(stocked: Connection) -> None:
    answer = ask(stocked, "x-gum-b")
    assert answer.behaves_as is not None and answer.behaves_as.key == "x-gum"
    assert {one.of for one in values(answer, "glass transition")} == {"Test gum"}
    assert {one.of for one in values(answer, "flash point")} == {""}
    assert [one.of for one in answer.hansen] == ["Test gum", "Test gum"]
    # Its own class goes before the classes of the stand-in.
    assert ("cross-linked", "yes", "x-net", True, True) in traits(answer)
    assert ("keeps its solubility", "yes", "x-gum", False, True) in traits(answer)


def test_recipes_both_ways(stocked: Connection) -> None:
    parts = ask(stocked, "x-gum-b").parts
    assert [(one.key, one.amount, one.unit, one.note) for one in parts] == [
        ("x-spirit", 3.0, "part by volume", "as found")
    ]
    assert [one.key for one in ask(stocked, "x-spirit").recipes] == ["x-gum-b"]


def test_hazards_limits_and_law(stocked: Connection) -> None:
    answer = ask(stocked, "x-spirit")
    hazard = answer.hazards[0]
    assert (hazard.code, hazard.band, hazard.checked.said) == ("H225", "A", "15 January 2026")
    assert hazard.wording == "Highly flammable liquid and vapour"
    long, short = answer.limits
    assert (long.said, long.jurisdiction, long.as_of.said) == (
        "TWA 500 ppm (also through skin)",
        "Somewhere",
        "2024",
    )
    # Acetone, 24.7 kPa and 500 ppm: 488 (chemistry facts, solvent table).
    assert long.ratio is not None and round(long.ratio) == 488
    assert short.said == "STEL 750 ppm = 1780 mg/m3" and short.ratio is None
    law = answer.restrictions[0]
    assert (law.jurisdiction, law.text, law.since.said) == ("Somewhere", "licence needed", "2010")


def test_periods(stocked: Connection) -> None:
    period = ask(stocked, "x-gum").periods[0]
    assert (period.mark, period.date.said) == ("first made", "c. 1932")


def test_a_class_lists_what_is_in_it(stocked: Connection) -> None:
    answer = ask(stocked, "test resin")
    assert (answer.kind, answer.key) == ("material class", "x-resin")
    assert [one.key for one in answer.subclasses] == ["x-net"]
    assert [one.key for one in answer.members] == ["x-gum", "x-gum-b"]
    assert [one.key for one in answer.classes] == ["x-matter"]
    assert answer.properties == () and answer.hansen == ()


def test_where_it_lies_counts_each_layer_once(stocked: Connection) -> None:
    where = ask(stocked, "x-gum").where
    # In place: L2, L3, and L7 in part. Gone: L1. Possible: L4 (two places), L5 (c.), L6 (inferred).
    assert (where.now_certain, where.gone_certain) == (3, 1)
    assert (where.now_possible, where.gone_possible) == (3, 0)
    assert where.places == 8
    assert [(row.object, row.place, row.layer) for row in where.layers] == [
        ("M.1", "S1", "L1"),
        ("M.1", "S1", "L2"),
        ("M.1", "S1", "L4"),
        ("M.1", "S2", "L3"),
        ("M.1", "S2", "L4"),
        ("M.2", "S1", "L5"),
        ("M.2", "S1", "L6"),
        ("M.2", "S1", "L7"),
    ]


def test_decades_never_sharpen_a_date(stocked: Connection) -> None:
    where = ask(stocked, "x-gum").where
    assert where.decades == (
        Decade(1930, 2, 1),  # L1, L2; L5 is only about 1935
        Decade(1950, 1, 1),  # L7; L3 lies in one of two decades
        Decade(1960, 0, 1),
        Decade(1980, 0, 1),  # L4: at which of two places is not known
    )
    assert where.undated == 1  # L6, before 1900


def test_states_are_those_of_the_day(stocked: Connection) -> None:
    where = ask(stocked, "x-gum", "1950").where
    assert (where.now_certain, where.gone_certain) == (2, 0)
    assert [one.first for one in where.decades] == [1930]


def test_use_as_an_agent(stocked: Connection) -> None:
    where = ask(stocked, "x-spirit").where
    assert (where.uses_certain, where.uses_possible) == (1, 0)
    assert (where.uses[0].object, where.uses[0].places) == ("M.1", ("S1",))


def test_words_are_kept_as_they_are(stocked: Connection) -> None:
    answer = ask(stocked, "x-odd")
    assert answer.name == ODD
    assert answer.properties[0].values[0].told.note == "odd note"


def test_an_unknown_word(stocked: Connection) -> None:
    with pytest.raises(NoSuch, match="no material or class 'test gumm' on record; did you mean"):
        ask(stocked, "test gumm")
