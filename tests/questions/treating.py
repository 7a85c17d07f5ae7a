"""One object with treatments at every stage: planned, deviating, unauthorised, ratified, old."""

from __future__ import annotations

from pathlib import Path

from conservedb.exchange.importing import import_folder
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.conftest import TODAY

TABLES = {
    "objects": "number,title,kind,maker,made\nT.1,Urn,garden urn,,\nT.2,Bare,box,,\n",
    "components": """object,mark,name,kind,material
T.1,B1,bowl,block,
T.1,B2,foot,block,
""",
    "places": """object,mark,kind,component,other_component
T.1,J1,joint,B1,B2
T.1,S1,surface,B1,
T.1,S2,surface,B2,
""",
    "people": "name\nAnn Author\nCora Curator\nEve Engineer\nHal Head\n",
    "sources": """ref,kind,citation
REP,report,Report of the work
PHO,photograph,Before and after
""",
    "materials": "key,name\nglue,Test glue\nspirit,Test spirit\n",
    "batches": "ref,material,lot\nBA1,glue,LOT 7\n",
    "needed_authorisations": """kind,capacity,author_alone
join,curator,no
take apart,curator,no
take apart,engineer,no
clean,head of conservation,yes
fill,curator,no
""",
    "standing_approvals": """ref,kinds,capacity,person,since,until,conditions
SA1,clean,head of conservation,Hal Head,2020-01-01,2027-12-31,dry only
""",
    "treatments": """object,ref,title,purpose,begun,ended,lead,result,recommendations,next_check
T.1,T1,Joint remade,It moved,2026-03-02,,Ann Author,,Look each spring.,2026-10
T.1,T0,Old works,,1934,1934,,,,
T.1,T2,Not begun,,,,,,,
""",
    "plans": """object,ref,treatment,version,date,aims,justification,alternatives,risks,people
T.1,P1,T1,1,2026-02-01,remedial,It moves.,To leave it.,It may chip.,Ann Author
T.1,P2,T1,2,2026-03-01,remedial,It moves more.,,,Ann Author
""",
    "planned_steps": """object,ref,plan,position,kind,technique,material,components,places
T.1,a1,P1,1,take apart,by hand,,B1; B2,J1
T.1,b1,P2,1,take apart,by hand,,B1; B2,J1
T.1,b2,P2,2,clean,dry,,,S1; S2
T.1,b3,P2,3,join,glued,glue,B1; B2,J1
T.1,b4,P2,4,fill,toned,,,J1
T.1,b5,P2,5,take apart,pin drawn,,B2,
""",
    "interventions": """\
object,ref,treatment,planned_step,deviation,standing,unauthorised_reason,unauthorised_by,kind,\
technique,aims,date,time_of_day,circumstances,methods,people,components,places,recorded_over,\
source,recorded,recorded_by
T.1,e1,T1,,,,,,examine,by lamp,,2026-01-10,,On the bench,lamp,Ann Author,,J1,,REP,\
2026-01-12,Ann Author
T.1,d1,T1,b1,,planned,,,take apart,by hand,remedial,2026-03-05,morning,,,Ann Author,,J1,,\
REP,2026-03-05,Ann Author
T.1,d2,T1,b2,,planned,,,clean,dry,,2026-03-06,,,,Ann Author,,S1,12,,2026-03-08,Ann Author
T.1,d3,T1,b3,colder than planned,planned,It could not wait.,Ann Author,join,glued,\
remedial,2026-03-07,,,,Ann Author,,J1,,,,
T.1,d4,T1,,,first aid,,,fill,flake laid,,2026-03-08,,,,Ann Author,,S1,,,,
T.1,d5,T1,,,first aid,,,fill,flake laid,,2026-03-09,,,,Ann Author,,S2,,,,
T.1,d6,T1,,,routine care,,,clean,dusted,,2026-04-01,,,,Ann Author,,S1,,,,
T.1,h1,T0,,,historic,,,join,stuck,,1934,,,,,,J1,,,,
""",
    "authorisations": """\
object,ref,plan,intervention,capacity,person,decision,steps,conditions,date,expires,evidence
T.1,U1,P1,,curator,Cora Curator,authorised,,,2026-02-10,,letter
T.1,U2,P2,,curator,Cora Curator,authorised,b1; b2; b5,Keep the pin.,2026-03-02,2026-12-31,letter
T.1,U3,P2,,engineer,Eve Engineer,authorised,b1; b5,,2026-03-02,2026-12-31,letter
T.1,U4,P2,,head of conservation,Hal Head,authorised,,,2026-03-02,,letter
T.1,U5,,d4,curator,Cora Curator,ratified,,,2026-03-20,,signed
""",
    "agents": """object,intervention,ref,material,place,form,cleared
T.1,d2,g1,spirit,S2,swab,yes
""",
    "layers": """\
object,place,ref,intervention,origin,material,batch,role,concentration,carrier,temperature_c,\
treated_from,cycles,uptake_g,depth_mm,depth_known
T.1,J1,L0,h1,applied,,,adhesive,,,,,,,,
T.1,J1,L1,d3,applied,glue,BA1,adhesive,20 %,spirit,18,face,2,3.5,4,estimated
""",
    "removals": """object,ref,layer,intervention,extent,kept_what,kept_where,residue_side,residue
T.1,r1,L0,d1,part,crumbs,box 3,A,a thin film
""",
    "observations": """object,ref,intervention,place,date,condition,seen,presumed,extent,people
T.1,O1,e1,J1,2026-01-10,crack,It opens.,The glue is old.,all round,Ann Author
T.1,O2,,S1,2026-02-02,,Dust.,,,
""",
    "readings": """object,ref,intervention,place,date,quantity,value,unit,instrument,spot
T.1,R1,e1,J1,2026-01-10,gap,0.4,mm,feeler,left
""",
    "samples": """object,ref,intervention,place,date,kind,what,box,remainder,result,analysed_by
T.1,SM1,e1,J1,2026-01-10,sample,crumb,box 3,half,bone glue,Joan
""",
    "spot_tests": """object,layer,ref,agent,intervention,date,form,wet,dry,next_day,swab_colour
T.1,L0,ST1,spirit,e1,2026-01-10,swab,swells,no effect,,brown
""",
    "statements": """table,object,ref,field,value,source,followed
intervention,T.1,d1,people,Nobody,REP,no
treatment,T.1,T1,purpose,Another,REP,
""",
}  # fmt: skip


def make_workshop(folder: Path) -> Path:
    """The object as a database file."""
    tables = folder / "tables"
    tables.mkdir()
    for name, text in TABLES.items():
        (tables / f"{name}.csv").write_text(text, encoding="utf-8")
    path = folder / "workshop.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    report = import_folder(engine, tables, today=TODAY, who="A. Tester")
    engine.dispose()
    assert report.written, [fault.sentence() for fault in report.faults]
    return path
