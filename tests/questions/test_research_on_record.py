"""Words of a researcher's question that nothing on record has, words as found, and surnames.

What is expected stands in the tables below; no outside program decides what a department calls
its layers.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.knowledge.research import FIELDS, Condition, Research
from conservedb.knowledge.research_words import read
from conservedb.questions.answers import NoSuch
from conservedb.questions.basics import Ambiguous
from conservedb.questions.behaviour import Materials
from conservedb.questions.nearest import nearest
from conservedb.questions.research import counts, rows
from conservedb.questions.uses import uses
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.conftest import TODAY
from tests.questions.conftest import day
from tests.questions.exported import Tables
from tests.questions.research_by_hand import ByHand

TABLES = {
    "terms": "list,term\nrole,isolating layer\ntechnique,lining\ncondition,blistering\n",
    "objects": """number,title,kind
C.1,Marriage chest,oak chest
C.2,Tea box,boxwood box
C.3,Blanket chest,Chest of drawers
""",
    "components": "object,mark,name\nC.1,B1,lid\n",
    "places": "object,mark,kind,component\nC.1,S1,surface,B1\nC.2,S1,surface,\nC.3,S1,surface,\n",
    "people": """name,aliases
W. Orde,Wm. Orde
Ines Calder,
Ida Calder,
""",
    "sources": "ref,kind,citation\nA,bound ledger,Ledger\nB,letter,Letter\n",
    "material_classes": "key,name\nresin,Resin\n",
    "materials": """key,name,class,aliases
shellac,Shellac,resin,
acetone,Acetone,,
sloe,Sloe juice varnish,,lacquer
""",
    "interventions": """object,ref,kind,technique,people
C.1,i1,coat,french polishing,W. Orde
C.2,i1,coat,brushed on twice,Ines Calder
""",
    "agents": "object,intervention,ref,material\nC.1,i1,g1,PVA\nC.1,i1,g2,\n",
    "layers": """object,place,ref,intervention,origin,material,role,source
C.1,S1,L1,i1,applied,PVA,glue,A
C.1,S1,L2,i1,applied,white glue,coating,B
C.1,S1,L3,i1,applied,,coating,
C.1,S1,L4,i1,applied,shellac,coating,
C.2,S1,L1,i1,applied,Lacquer,coating,
C.2,S1,L2,i1,applied,gum,coating,
""",
    "observations": "object,ref,place,date,condition\nC.1,o1,S1,2020,fine crack\n",
    "statements": "table,object,ref,field,value,source\nlayer,C.1,L3,material,shellac,B\n",
}


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("words")
    (folder / "tables").mkdir()
    for name, text in TABLES.items():
        (folder / "tables" / f"{name}.csv").write_text(text, encoding="utf-8")
    path: Path = folder / "words.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    report = import_folder(engine, folder / "tables", today=TODAY, who="A. Tester")
    engine.dispose()
    assert report.written, [fault.sentence() for fault in report.faults]
    return path


@pytest.fixture(scope="module")
def words(path: Path) -> Engine:
    return open_database(path)[0]


def found(engine: Engine, text: str, sureness: str = "") -> list[str]:
    with reading(engine) as connection:
        answer = rows(connection, read(text), TODAY)
        return sorted(f"{one.object} {one.ref}" for one in answer if sureness in ("", one.sureness))


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("role: gluee", "no role 'gluee' on record; did you mean glue?"),
        ("role: consol", "no role 'consol' on record; did you mean consolidant"),
        (
            "technique: polishng",
            "no technique 'polishng' on record; did you mean french polishing or polishing?",
        ),
        (
            "technique: lininng",
            "no technique 'lininng' on record; did you mean lining or polishing?",
        ),
        ("source: legder", "no kind of source 'legder' on record"),
        ("source: bund ledger", "'bund ledger' on record; did you mean bound ledger?"),
        ("object kind: boxwod", "no kind of object 'boxwod' on record; did you mean boxwood"),
        ("object kind: oak tree", "no kind of object 'oak tree' on record"),
        ("observed: crakc", "no observed condition 'crakc' on record; did you mean crack?"),
        ("observed: crack coarse", "no observed condition 'crack coarse' on record"),
        ("object: C.", "no object 'C.' on record; did you mean C.1 or C.2 or C.3?"),
        (
            "object: marrage",
            "no object 'marrage' on record; did you mean marriage chest or",
        ),
        ("material: shelac", "no material or class 'shelac' on record; did you mean shellac"),
        ("part material: PVA", "no material or class 'PVA' on record"),
    ],
)
def test_what_nothing_has_is_refused_with_what_comes_near(
    words: Engine, text: str, sentence: str
) -> None:
    with reading(words) as connection, pytest.raises(NoSuch) as problem:
        counts(connection, read(text), TODAY)
    assert sentence in str(problem.value)


@pytest.mark.parametrize(
    "text",
    [
        "role: biofilm",
        "role: Isolating Layer",
        "technique: lining",
        "observed: blistering",
        "kind: desalinate",
        "environment: storage",
    ],
)
def test_a_listed_word_that_nobody_used_yet_is_no_mistake(words: Engine, text: str) -> None:
    assert found(words, text, "certain") == []


def test_words_of_kinds_stand_at_starts_of_words(words: Engine) -> None:
    first = [f"C.1 {ref}" for ref in ("L1", "L2", "L3", "L4", "g1", "g2")]
    assert found(words, "object kind: chest") == first
    assert found(words, "object kind: CHEST oak", "certain") == first
    assert found(words, "object kind: box") == ["C.2 L1", "C.2 L2"]
    assert found(words, "source: ledger", "certain") == ["C.1 L1"]
    with pytest.raises(NoSuch):
        found(words, "object kind: hest")  # within a word only


def test_what_was_only_called_so_is_possible_and_not_unidentified(words: Engine) -> None:
    assert found(words, "material: PVA", "certain") == []
    assert found(words, "material: pva", "possible") == ["C.1 L1", "C.1 g1"]
    others = ["C.1 L2", "C.1 L3", "C.1 g2", "C.2 L1", "C.2 L2"]
    assert found(words, "material: PVA", "unidentified") == others
    assert found(words, "material: certainly PVA", "certain") == []
    assert "C.1 L1" in found(words, "not material: PVA", "possible")
    assert "C.1 L4" in found(words, "not material: PVA", "certain")
    assert found(words, "material: glue whi", "possible") == ["C.1 L2"]


def test_a_sign_without_a_letter_is_called_nothing(words: Engine) -> None:
    with pytest.raises(NoSuch):
        found(words, "material: \u0351")
    for field in ("role", "technique", "observed", "object", "object kind", "source", "person"):
        with pytest.raises(NoSuch), reading(words) as connection:
            counts(connection, Research("layers", Condition(field, "\u0351")), TODAY)


def test_a_material_takes_in_what_was_only_called_so(words: Engine) -> None:
    assert found(words, "material: lacquer", "certain") == []
    assert found(words, "material: lacquer", "possible") == ["C.2 L1"]
    assert "C.2 L1" not in found(words, "material: lacquer", "unidentified")
    assert "C.2 L1" in found(words, "material: shellac", "unidentified")
    assert found(words, "material: shellac", "possible") == ["C.1 L3"]  # a statement says so


@pytest.mark.parametrize("text", ["material: PVA", "material: sloe", "object kind: chest"])
@pytest.mark.parametrize("field", ["", "person: Orde and ", "role: coating or "])
def test_the_same_is_found_by_hand(words: Engine, tmp_path: Path, text: str, field: str) -> None:
    with reading(words) as connection:
        export_folder(connection, tmp_path / "exported")
        tables = Tables(tmp_path / "exported", Materials(connection))
        by_hand = ByHand(tables, TODAY.toordinal())
        research = read(f"{field}{text}")
        scores = [score for score, _ in by_hand.answer(research).values()]
        told = counts(connection, research, TODAY)
    assert (told.certain, told.possible, told.unidentified) == tuple(map(scores.count, (3, 2, 1)))
    assert told.total


def test_uses_count_as_a_question_does_but_for_what_was_called_so(words: Engine) -> None:
    with reading(words) as connection:
        for word in ("shellac", "acetone", "resin", "lacquer"):
            used = uses(connection, word, day("today"))
            told = counts(connection, read(f"material: {word}"), TODAY)
            layers = {f"{row.object} {row.layer}" for row in used.layers_possible}
            possible = found(words, f"material: {word}", "possible")
            called = [one for one in possible if one not in layers]
            assert called == (["C.2 L1"] if word == "lacquer" else [])
            in_all = used.unidentified + used.unidentified_agents
            assert in_all - len(called) == told.unidentified


def test_a_surname_that_one_person_has_is_enough(words: Engine) -> None:
    assert found(words, "person: Orde", "certain") == found(words, "person: W. Orde", "certain")
    assert found(words, "person: orde wm", "certain") == found(words, "person: W. Orde", "certain")
    with pytest.raises(Ambiguous) as several:
        found(words, "person: Calder")
    assert several.value.nearest == ("Ida Calder", "Ines Calder")
    with pytest.raises(NoSuch, match=r"no person 'Ord' on record; did you mean W\. Orde"):
        found(words, "person: Ord")


def test_near_misses_prefer_beginnings(words: Engine) -> None:
    written = {one: one for one in ("cullule", "acid cellulose", "cellulose nitrate", "celloidin")}
    assert nearest("cellu", written) == ("cellulose nitrate", "acid cellulose", "cullule")
    assert nearest("c", written) == ()
    with reading(words) as connection, pytest.raises(NoSuch) as problem:
        counts(connection, read("material: cellu"), TODAY)
    assert problem.value.nearest[0] == "cellulose nitrate"


@pytest.fixture(scope="module")
def empty(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Engine]:
    path = tmp_path_factory.mktemp("empty") / "empty.db"
    create(path)
    engine, _ = open_database(path)
    yield engine
    engine.dispose()


@pytest.mark.parametrize("field", [one for one in FIELDS if one not in ("state", "date", "as")])
def test_an_empty_database_answers_clearly(empty: Engine, field: str) -> None:
    with reading(empty) as connection:
        try:
            told = counts(connection, Research("layers", Condition(field, "adhesive")), TODAY)
        except NoSuch as problem:
            assert "'adhesive' on record" in str(problem)
        else:
            assert told.total == 0
            assert field in ("role", "material", "part material")
