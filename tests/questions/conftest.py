"""A small department, imported once: one fountain with what questions have to tell apart."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Connection, Engine

from conservedb.exchange.importing import import_folder
from conservedb.questions.answers import AsOf
from conservedb.questions.asof import as_of
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.conftest import TODAY

TABLES = {
    "objects": """number,title,kind,maker,made,whereabouts
Q.1,Fountain,wall fountain,A. Mason,1741,Store 3
Q.10,Plain box,box,,,
Q.2,Müller's vase,vase,,1880~,
""",
    "components": """\
object,mark,parent,name,kind,origin,material,bridges,made,lost,known_from,mass_kg
Q.1,B1,,basin,block,original,limestone,,,,,
Q.1,B2,,dolphin,block,,limestone,,1741~,,,85
Q.1,B2a,B2,fin,fragment,original,limestone,,,[1941..1944],documented,
Q.1,K1,,iron cramp,cramp,fixing,iron,J1,1741,,suspected,
Q.1,K2,,iron cramp,cramp,fixing,iron,J1,1741,,suspected,
Q.1,N9,,pin,pin,fixing,,J1,1990,,,
""",
    "places": """\
object,mark,kind,component,other_component,name,arose,arose_date,load_kg,load_source
Q.1,J1,joint,B1,B2,lip to dolphin,making,,85,REP
Q.1,J2,joint,B2,,broken across,breaking,1934,,
Q.1,J10,joint,B1,K1,cramp in basin,making,,,
Q.1,S1,surface,B1,,top of the lip,,,,
Q.1,M1,body,B1,,stone of the basin,,,,
""",
    "people": "name,aliases\nWalter Orde,W.O.\nInes Calder,\n",
    "sources": """ref,kind,citation,date
LET,letter,Letter of the steward,1871-03-09
REP,report,Report on treatment,2012-11-30
""",
    "material_classes": """key,name,parent
resin,Resin,
epoxy-resin,Epoxy resins,resin
natural-resin,Natural resins,resin
cement-like,Cements,
""",
    "materials": """key,name,class,aliases
epoxy,Epoxy adhesive,epoxy-resin,EP; glue
shellac,Shellac,natural-resin,lac; glue
portland,Portland cement,cement-like,
barrier-resin,Barrier resin,resin,
limestone,Limestone,,
iron,Wrought iron,,
acetone,Acetone,,
lacquer,Lac varnish,natural-resin,
""",
    "material_parts": "material,part\nlacquer,shellac\n",
    "treatments": """object,ref,title,begun,ended,lead
Q.1,T1,Old works,1934,1934,Walter Orde
Q.1,T2,Move,2026-09,,Ines Calder
""",
    "interventions": """\
object,ref,treatment,kind,technique,aims,date,people,components,places,source
Q.1,i1741,,join,bedded,,1741,,B1; B2,J1,
Q.1,i1934,T1,fill,pointed,remedial; restoration,1934,Walter Orde (mason),B2,J1,LET
Q.1,i1980,,clean,washed,,1980,W.O.,,S1,
Q.1,i1989,,join,injected,,1989-05-18,Ines Calder (conservator),,J1,REP
Q.1,i2012,,take apart,opened dry,,2012-05,Ines Calder,,J2,REP
Q.1,i2026,T2,examine,survey,,2026-09-15,Ines Calder,B1,J1,
""",
    "agents": """object,intervention,ref,material,place,form,cleared
Q.1,i1980,g1,acetone,,swab,
Q.1,i1980,g2,epoxy,S1,free,yes
""",
    "joint_events": """object,place,ref,event,date,step,intervention
Q.1,J1,e1,closed,,,i1741
Q.1,J1,e2,closed,1989-05-18,,i1989
Q.1,J1,e3,moving,2026-09-15,,i2026
Q.1,J2,e4,closed,1950,,
Q.1,J2,e5,opened,2012-05,,i2012
""",
    "layers": """\
object,place,ref,intervention,date,origin,material,role,stack,zone,identified,source
Q.1,J1,L1,i1741,,maker,limestone,bedding,0,face,analysed,
Q.1,J1,L2,i1934,,applied,portland,pointing,1,edge,documented by the maker,LET
Q.1,J1,L3,i1989,,applied,epoxy,adhesive,2,face,analysed,REP
Q.1,J2,L4,,1950,applied,shellac,adhesive,0,face,analysed,
Q.1,S1,L5,,c. 1950,applied,epoxy,coating,0,,analysed,
Q.1,S1; M1,L6,,1976,applied,,consolidant,1,,unknown,
Q.1,S1,L7,,2026-10-01,applied,,facing,5,,,
Q.1,S1,L8,,../1955,applied,some resin = shellac,coating,-1,,inferred,
Q.2,,L1,,1970,applied,barrier-resin,,,,analysed,
""",
    "removals": """object,ref,layer,intervention,date,cause,extent,side,source
Q.1,r1,L2,,2012-05,,part,A,REP
Q.1,r2,L1,i1989,,,attempted,,
Q.1,r3,L5,,1990/1999,weathered,all,,
""",
    "sightings": """object,ref,layer,date,result,side,people,source
Q.1,s1,L3,2012-05-09,seen,,Ines Calder,REP
Q.1,s2,L1,2012-05-09,seen,,Ines Calder,REP
Q.1,s3,L3,2026-09-15,seen,,Ines Calder,
Q.1,s4,L1,2026-09-15,not accessible,,Ines Calder,
Q.1,s5,L4,2012-05-20,seen,A,Ines Calder,REP
""",
    "statements": """table,object,ref,field,value,source,page,people,date,followed,decided_by,reason
layer,Q.1,L3,material,shellac,LET,3,Walter Orde,1871-03-09,no,Ines Calder,too hard
layer,Q.1,L6,material,epoxy,REP,,,,,,
intervention,Q.1,i1934,people,Nobody,LET,,,,no,,
place,Q.1,J1,load_kg,110,LET,,,,no,,
object,Q.1,,maker,B. Other,LET,,,,,,
""",
    "warnings": """object,component,place,kind,text,since,until
Q.1,,,lead,Lead in joints,1741,
Q.1,B1,,do not lift by,Not by the lip,2012,
Q.1,,S1,do not wet,Salts,1976,2020
""",
    "whereabouts": """object,ref,place_name,since,until
Q.1,w1,Custom House terrace,1868,1958
""",
}


@pytest.fixture(scope="session")
def department(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The department as a database file."""
    folder = tmp_path_factory.mktemp("department")
    tables = folder / "tables"
    tables.mkdir()
    for name, text in TABLES.items():
        (tables / f"{name}.csv").write_text(text, encoding="utf-8")
    path: Path = folder / "department.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    report = import_folder(engine, tables, today=TODAY, who="A. Tester")
    engine.dispose()
    assert report.written, [fault.sentence() for fault in report.faults]
    return path


@pytest.fixture(scope="session")
def sample(department: Path) -> Engine:
    """The department, opened."""
    engine, _ = open_database(department)
    return engine


@pytest.fixture
def connection(sample: Engine) -> Iterator[Connection]:
    """To ask the department through."""
    with reading(sample) as open_connection:
        yield open_connection


def day(text: str) -> AsOf:
    """A day or span to ask for, in words."""
    return as_of(text, TODAY)
