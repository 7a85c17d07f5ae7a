"""What an import keeps, refuses and leaves alone."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine

from conservedb.dates import iso
from conservedb.exchange.importing import ImportReport, import_folder
from conservedb.recording.bounds import check_bounds
from conservedb.store.connect import reading
from tests.conftest import TODAY

Make = Callable[[str], Engine]
Tables = dict[str, str]

BASE: Tables = {
    "objects": "number,title,made\nN.1,Fountain,1741\n",
    "components": "object,mark,name,made,lost\nN.1,B1,basin,,\nN.1,B2,dolphin,1868,\n",
    "places": "object,mark,kind,component,other_component\n"
    "N.1,J1,joint,B1,B2\nN.1,S1,surface,B1,\n",
    "people": "name,aliases\nEdith Marsh,E.M.; Ned\nEva Moor,E.M.\n",
    "materials": "key,name,aliases\nshellac,Shellac,lac\nepoxy,Epoxy resin,\n",
    "interventions": "object,ref,kind,date,people,places\nN.1,i1,join,1967,Ned (mason),J1\n",
    "layers": "object,place,ref,intervention,material\nN.1,J1,l1,i1,epoxy\nN.1,S1,l2,,lac\n",
    "removals": "object,ref,layer,date,extent\nN.1,r1,l1,1989,all\n",
}


@pytest.fixture
def put(tmp_path: Path) -> Callable[..., Path]:
    """Writes tables into a new folder: `BASE` with some replaced, or only those given."""

    def write(name: str = "in", only: bool = False, **tables: str | bytes) -> Path:
        folder = tmp_path / name
        folder.mkdir()
        for file, text in ({} if only else BASE | {}).items():
            tables.setdefault(file, text)
        for file, content in tables.items():
            data = content if isinstance(content, bytes) else content.encode()
            (folder / f"{file}.csv").write_bytes(data)
        return folder

    return write


def take(engine: Engine, folder: Path, **options: Any) -> ImportReport:
    report = import_folder(engine, folder, today=TODAY, who="A. Tester", **options)
    for count in report.counts:
        parts = count.added + count.changed + count.unchanged + count.refused
        assert count.rows == parts, count
    if report.written:
        with reading(engine) as connection:
            objects = connection.exec_driver_sql("SELECT id FROM object").scalars().all()
            assert check_bounds(connection, list(objects)) == []
    return report


def said(report: ImportReport) -> list[str]:
    return [fault.sentence() for fault in report.faults]


def value(engine: Engine, sql: str) -> Any:
    with reading(engine) as connection:
        return connection.exec_driver_sql(sql).scalar()


def row(engine: Engine, sql: str) -> tuple[Any, ...]:
    with reading(engine) as connection:
        return tuple(connection.exec_driver_sql(sql).one())


def test_a_small_folder(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    report = take(engine, put())
    assert said(report) == []
    bounds = row(engine, "SELECT came_from, came_to, gone_from, gone_to FROM layer WHERE ref='l1'")
    assert [iso(day) for day in bounds] == ["1967-01-01", "1967-12-31", "1989-01-01", "1989-12-31"]
    undated = row(engine, "SELECT came_from, came_to FROM layer WHERE ref = 'l2'")
    assert [iso(day) for day in undated] == ["1741-01-01", TODAY.isoformat()]
    hand = row(
        engine, "SELECT name, ip.role FROM person JOIN intervention_person ip ON person_id=id"
    )
    assert hand == ("Edith Marsh", "mason")


def test_the_same_again_changes_nothing(new_database: Make, put: Callable[..., Path]) -> None:
    engine, folder = new_database("a.db"), put()
    take(engine, folder)
    before = [value(engine, f"SELECT group_concat(uuid) FROM {t}") for t in ("layer", "person")]
    report = take(engine, folder)
    assert sum(c.added + c.changed + c.refused for c in report.counts) == 0
    after = [value(engine, f"SELECT group_concat(uuid) FROM {t}") for t in ("layer", "person")]
    assert before == after


def test_other_cells_are_a_fault_that_names_both(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put())
    other = put("b", only=True, objects="number,title\nN.1,Wall fountain\n")
    assert said(take(engine, other)) == [
        'objects.csv, line 2, column title "Wall fountain": the database has "Fountain" for this'
        " object; to replace it, import with --update; to keep it, blank the cell"
    ]
    assert value(engine, "SELECT title FROM object") == "Fountain"
    report = take(engine, other, update=True)
    assert report.counts[0].changed == 1
    assert value(engine, "SELECT title FROM object") == "Wall fountain"


def test_a_blank_cell_never_erases(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    take(engine, put())
    blank = put("b", only=True, objects="number,title,made\nN.1,, \n")
    report = take(engine, blank, update=True)
    assert report.counts[0].unchanged == 1
    assert row(engine, "SELECT title, made_words FROM object") == ("Fountain", "1741")


def test_a_new_date_of_a_deed_moves_the_layers(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put())
    later = put("b", only=True, interventions="object,ref,date\nN.1,i1,1970\n")
    assert take(engine, later, update=True).written
    bounds = row(engine, "SELECT came_from, came_to FROM layer WHERE ref = 'l1'")
    assert [iso(day) for day in bounds] == ["1970-01-01", "1970-12-31"]
    impossible = put("c", only=True, interventions="object,ref,date\nN.1,i1,1995\n")
    (fault,) = said(take(engine, impossible, update=True))
    assert fault.startswith("interventions.csv, line 2: with this change layer l1 is impossible")


def test_a_new_date_is_held_against_the_parts_on_record(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put(layers="object\n", removals="object\n"))
    early = put("b", only=True, interventions="object,ref,date\nN.1,i1,1850\n")
    (fault,) = said(take(engine, early, update=True))
    assert fault.startswith("interventions.csv, line 2, column date: lies before B2 was made")


def test_a_later_folder_may_remove_what_an_earlier_laid(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put())
    take(engine, put("b", only=True, removals="object,layer,date,extent\nN.1,l2,2012,all\n"))
    bounds = row(engine, "SELECT gone_from, gone_to FROM layer WHERE ref = 'l2'")
    assert [iso(day) for day in bounds] == ["2012-01-01", "2012-12-31"]


def test_a_part_lost_later_is_held_against_what_is_on_record(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put(interventions="object,ref,date,components\nN.1,i1,1967,B1\n"))
    lost = put("b", only=True, components="object,mark,lost\nN.1,B1,1900\n")
    (fault,) = said(take(engine, lost))
    assert fault.startswith(
        "components.csv, line 2: with this change intervention i1 is impossible: it lies after B1"
    )


def test_one_broken_order_charges_only_what_it_rests_on(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put())
    folder = put(
        "b",
        only=True,
        interventions="object,ref,date\nN.1,i1,1995\n",
        people="name,role\nEva Moor,mason\n",
        places="object,mark,name\nN.1,S1,rim\n",
    )
    report = take(engine, folder, update=True, keep_good=True)
    assert {c.file: c.refused for c in report.counts} == {
        "interventions.csv": 1,
        "people.csv": 0,
        "places.csv": 0,
    }


def test_work_goes_on_where_one_side_was_lost(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    components = "object,mark,made,lost\nN.1,B1,,\nN.1,B2,1868,1900\n"
    layers = "object,place,ref,date,side\nN.1,J1,l1,1950,A\nN.1,S1,l2,,\n"
    report = take(engine, put(components=components, layers=layers))
    assert report.written, said(report)
    bounds = row(engine, "SELECT came_from, gone_to FROM layer WHERE ref = 'l1'")
    assert [iso(day) for day in bounds] == ["1950-01-01", "1989-12-31"]


def test_a_removal_of_unrecorded_extent_leaves_all_open(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put(removals="object,ref,layer,date,extent\nN.1,r1,l1,1989,\n"))
    bounds = row(engine, "SELECT reduced_from, gone_from, gone_to FROM layer WHERE ref = 'l1'")
    assert [iso(day) for day in bounds] == ["1989-01-01", "1989-01-01", None]


def test_a_later_folder_may_tell_only_of_a_sighting(
    new_database: Make, put: Callable[..., Path]
) -> None:
    engine = new_database("a.db")
    take(engine, put())
    seen = put("b", only=True, sightings="object,layer,date,result\nN.1,l2,2001,seen\n")
    report = take(engine, seen)
    assert report.written, said(report)
    bounds = row(engine, "SELECT came_to, gone_from FROM layer WHERE ref = 'l2'")
    assert iso(bounds[0]) == "2001-12-31"


def test_a_part_may_be_older_than_its_object(new_database: Make, put: Callable[..., Path]) -> None:
    """Where the making of the part is known, it is the floor and not that of the object."""
    engine = new_database("a.db")
    components = "object,mark,made\nN.1,B1,1650\nN.1,B2,1868\n"
    report = take(engine, put(components=components))
    assert report.written, said(report)
    bounds = row(engine, "SELECT came_from, came_to FROM layer WHERE ref = 'l2'")
    assert [iso(day) for day in bounds] == ["1650-01-01", TODAY.isoformat()]


FAULTS: dict[str, tuple[Tables, str]] = {
    "an alias that two bear": (
        {"interventions": "object,ref,people\nN.1,i1,E.M.\n"},
        'interventions.csv, line 2, column people "E.M.": is an alias of 2 people: Edith Marsh,'
        " Eva Moor; write the full name of the one meant",
    ),
    "a person nobody knows": (
        {"interventions": "object,ref,people\nN.1,i1,Edith March\n"},
        'interventions.csv, line 2, column people "Edith March": names no person in the folder or'
        " the database; did you mean Edith Marsh? else add it to people.csv, or leave the cell"
        " blank",
    ),
    "an unknown object": (
        {"places": "object,mark,kind,component\nN.2,J1,joint,B1\n"},
        'places.csv, line 2, column object "N.2": names no object in the folder or the database;',
    ),
    "a deed before its part was made": (
        {"interventions": "object,ref,date,places\nN.1,i1,1850,J1\n"},
        "interventions.csv, line 2, column date: lies before B2 was made (not before 1868-01-01)",
    ),
    "a deed after its part was lost": (
        {
            "components": "object,mark,lost\nN.1,B1,1900\nN.1,B2,\n",
            "interventions": "object,ref,date,components\nN.1,i1,1967,B1\n",
        },
        "interventions.csv, line 2, column date: lies after B1 was lost (not after 1900-12-31)",
    ),
    "a deed on a joint of which both sides were lost": (
        {"components": "object,mark,lost\nN.1,B1,1900\nN.1,B2,1901\n"},
        "interventions.csv, line 2, column date: lies after B1 was lost (not after 1900-12-31)",
    ),
    "a layer at places that were all lost": (
        {
            "components": "object,mark,lost\nN.1,B1,1900\nN.1,B2,1901\n",
            "layers": "object,place,ref,date\nN.1,J1;S1,l1,1950\nN.1,S1,l2,1850\n",
        },
        "layers.csv, line 2, column date: this layer lies after B1 was lost",
    ),
    "a layer before its object": (
        {"layers": "object,place,ref,date\nN.1,J1,l1,1967\nN.1,S1,l2,1700\n"},
        "layers.csv, line 3, column date: this layer lies before B1 was made (not before 1741",
    ),
    "a layer before its joint": (
        {"layers": "object,place,ref,date\nN.1,J1,l1,1800\nN.1,S1,l2,\n"},
        "layers.csv, line 2, column date: this layer lies before B2 was made",
    ),
    "a removal before the layer": (
        {"removals": "object,ref,layer,date,extent\nN.1,r1,l1,1950,all\n"},
        "removals.csv, line 2, column date: ",
    ),
    "seen after it was gone": (
        {"sightings": "object,layer,date,result\nN.1,l1,2001,seen\n"},
        "sightings.csv, line 2, column date: ",
    ),
    "an impossible day": (
        {"objects": "number,made\nN.1,1985-02-29\n"},
        'objects.csv, line 2, column made "1985-02-29": ',
    ),
    "two readings of a date": (
        {"removals": "object,ref,layer,date,extent\nN.1,r1,l1,5/6/1956,all\n"},
        'removals.csv, line 2, column date "5/6/1956": ',
    ),
    "a key twice": (
        {
            "places": "object,mark,kind,component\n"
            "N.1,J1,joint,B1\nN.1,S1,surface,B1\nN.1,j1,body,B2\n"
        },
        'places.csv, line 4, column mark "j1": stands for another place on line 2 already; give'
        " one of them another key",
    ),
    "a cycle of parts": (
        {"components": "object,mark,parent\nN.1,B1,B2\nN.1,B2,B1\n"},
        'components.csv, line 2, column parent "B2": this component would contain itself through'
        " its parents",
    ),
    "a side of a surface": (
        {
            "places": "object,mark,kind,component,other_component\n"
            "N.1,J1,joint,B1,B2\nN.1,S1,surface,B1,B2\n"
        },
        'places.csv, line 3, column other_component "B2": only a joint has a second side',
    ),
    "a word outside its list": (
        {"places": "object,mark,kind,component\nN.1,J1,seam,B1\nN.1,S1,surface,B1\n"},
        'places.csv, line 2, column kind "seam": is not one of the words used here; use joint,'
        " surface, body, cavity",
    ),
    "a decimal comma": (
        {"components": 'object,mark,mass_kg\nN.1,B1,"12,5"\nN.1,B2,\n'},
        'components.csv, line 2, column mass_kg "12,5": is not a number; write digits with a'
        ' decimal point, such as "12.5"',
    ),
    "a removal of nothing": (
        {"removals": "object,ref,layer,extent\nN.1,r1,,all\n"},
        "removals.csv, line 2, column layer: names no layer; fill it in",
    ),
    "an unknown column": (
        {"people": "name,colour\nEdith Marsh,blue\n"},
        'people.csv, line 1, column (first line) "colour": is no column of this file; use name,',
    ),
    "a missing key column": (
        {"places": "object,kind\nN.1,joint\n"},
        "places.csv, line 1: column mark is missing; every row needs its key",
    ),
    "semicolons between columns": (
        {"people": "name;aliases\nEdith Marsh;Ned\n"},
        "people.csv, line 1: its columns are separated by semicolons; save it with commas",
    ),
    "an empty file": (
        {"people": ""},
        "people.csv: is empty; the first line must hold the names of the columns",
    ),
    "a ragged row": (
        {"people": "name,aliases\nEdith Marsh,E.M.; Ned,mason\nEva Moor,\n"},
        "people.csv, line 2: has 3 cells where the first line names 2 columns",
    ),
    "an unclosed quote": (
        {"people": 'name,aliases\nEva Moor,\n"Edith Marsh,E.M.\nOther,\n'},
        "people.csv, line 3: a quotation mark opened here is never closed, so that lines 3 to 4"
        " cannot be told apart; close it",
    ),
    "text after a quote": (
        {"people": 'name,aliases\n"Edith" Marsh,Ned\n'},
        "people.csv, line 2: text follows a closing quotation mark",
    ),
    "a NUL": (
        {"people": "name,aliases\nEdith Marsh,N\0d\n"},
        'people.csv, line 2, column aliases "N\0d": holds a NUL character; take it out',
    ),
    "a statement about nothing": (
        {"statements": "table,object,ref,field,value\nlayer,N.1,l9,material,x\n"},
        'statements.csv, line 2, column ref "l9": names no layer in the folder or the database',
    ),
    "a statement about no object": (
        {"statements": "table,object,ref,field,value\nlayer,,l1,material,x\n"},
        "statements.csv, line 2, column object: is blank; write the number of the object",
    ),
    "one of several places": (
        {"layers": "object,place,ref\nN.1,J1; J7,l1\nN.1,S1,l2\n"},
        'layers.csv, line 2, column place "J7": names no place in the folder or the database',
    ),
    "a material nobody lists": (
        {"layers": "object,place,ref,material\nN.1,J1,l1,expoxy\nN.1,S1,l2,\n"},
        'layers.csv, line 2, column material "expoxy": names no material in the folder or the'
        " database; did you mean epoxy?",
    ),
    "several joints": (
        {"layers": "object,place,ref\nN.1,several joints,l1\nN.1,S1,l2\n"},
        'layers.csv, line 2, column place "several joints": names no place in the folder or the'
        " database; where several are possible, name each, separated by semicolons",
    ),
}


@pytest.mark.parametrize(("tables", "expected"), FAULTS.values(), ids=FAULTS.keys())
def test_faults(
    new_database: Make, put: Callable[..., Path], tables: Tables, expected: str
) -> None:
    engine = new_database("a.db")
    report = take(engine, put(**tables))
    assert any(sentence.startswith(expected) for sentence in said(report)), said(report)
    assert not report.written
    assert all(value(engine, f"SELECT count(*) FROM {t}") == 0 for t in ("object", "person"))


@pytest.mark.parametrize(("tables", "expected"), FAULTS.values(), ids=FAULTS.keys())
def test_good_rows_can_be_kept(
    new_database: Make, put: Callable[..., Path], tables: Tables, expected: str
) -> None:
    """What is refused, put right in its own folder, completes the import."""
    engine = new_database("a.db")
    report = take(engine, put(**tables), keep_good=True)
    assert report.written
    assert report.refused_folder is not None
    reasons = (report.refused_folder / "reasons.txt").read_text(encoding="utf-8")
    assert expected in reasons
    kept = {path.stem for path in report.refused_folder.glob("*.csv")}
    assert kept == {count.file[:-4] for count in report.counts if count.refused}


def test_refused_rows_mended_go_in(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    places = "object,mark,kind,component\nN.1,J1,seam,B1\nN.1,S1,surface,B1\n"
    report = take(engine, put(places=places), keep_good=True)
    assert {c.file: c.refused for c in report.counts if c.refused} == {
        "places.csv": 1,
        "interventions.csv": 1,
        "layers.csv": 1,
        "removals.csv": 1,
    }
    folder = report.refused_folder
    assert folder is not None
    assert "layers.csv, line 2: depends on" in (folder / "reasons.txt").read_text()
    (folder / "places.csv").write_text("object,mark,kind,component\nN.1,J1,joint,B1\n")
    again = take(engine, folder)
    assert again.written, said(again)
    assert value(engine, "SELECT count(*) FROM layer") == 2
    assert value(engine, "SELECT count(*) FROM removal") == 1


def test_ambiguous_words_are_kept_and_offered(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    layers = "object,place,ref,material\nN.1,J1,l1,cement\nN.1,S1,l2,lac\n"
    classes = "key,name\nmineral,Mineral binders\ncement,Cements\n"
    report = take(engine, put(layers=layers, material_classes=classes, removals=BASE["removals"]))
    notices = [notice.sentence() for notice in report.notices]
    assert any(n.startswith('layers.csv, line 2, column material "cement"') for n in notices)
    kept = row(engine, "SELECT material_id, material_words FROM layer WHERE ref = 'l1'")
    assert kept == (None, "cement")
    klass = "SELECT key FROM material_class JOIN layer ON material_class_id = material_class.id"
    assert value(engine, klass) == "cement"
    resolved = row(
        engine, "SELECT m.key, material_words FROM layer JOIN material m ON m.id = material_id"
    )
    assert resolved == ("shellac", "lac")


def test_rows_under_a_wrong_first_line_are_counted_and_named(
    new_database: Make, put: Callable[..., Path]
) -> None:
    places = "object,mark,kind,colour\nN.1,J1,joint,red\nN.1,S1,surface,\n"
    report = take(new_database("a.db"), put(places=places))
    assert {c.file: c.rows for c in report.counts}["places.csv"] == 2
    assert len(report.faults) == 1
    assert report.faults[0].value == "colour"


def test_commas_left_at_the_end_of_lines_are_nothing(
    new_database: Make, put: Callable[..., Path]
) -> None:
    folder = put("b", only=True, people="name,role,,\nEdith Marsh,mason,,\nEva Moor,,,\n,,,\n")
    report = take(new_database("a.db"), folder)
    assert report.written, said(report)
    assert report.counts[0].added == 2


def test_two_files_of_one_subject(new_database: Make, put: Callable[..., Path]) -> None:
    folder = put("b", only=True, people="name\nEdith Marsh\n")
    (folder / "People.csv").write_text("name\nEva Moor\n")
    if len(list(folder.iterdir())) == 1:
        return  # this file system takes both names for one file
    report = take(new_database("a.db"), folder)
    assert [s for s in said(report) if "is a second people.csv beside People.csv" in s]
    assert not report.written


def test_a_long_cell_is_taken(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    assert take(engine, put("b", only=True, people=f"name,note\nEva,{'x' * 200_000}\n")).written
    assert value(engine, "SELECT length(note) FROM person") == 200_000


@pytest.mark.parametrize("encoding", ["utf-16", "utf-8"])
def test_utf_16_is_named(new_database: Make, put: Callable[..., Path], encoding: str) -> None:
    engine = new_database("a.db")
    sixteen = put("b", only=True, people="name,role\nEva Moor,mason\n".encode("utf-16"))
    report = take(engine, sixteen, encoding=encoding)
    assert report.written == (encoding == "utf-16")
    if not report.written:
        assert "--encoding utf-16" in said(report)[0]
    eight = put("c", only=True, people="name,role\nEva Moor,mason\nx")
    assert take(engine, eight, encoding="utf-16").written is False


def test_a_bad_byte_in_the_first_line(new_database: Make, put: Callable[..., Path]) -> None:
    folder = put("b", only=True, people="name,r\xf6le\nEva,\n".encode("latin-1"))
    (fault,) = said(take(new_database("a.db"), folder))
    assert fault.startswith("people.csv, line 1: the first line is not UTF-8 text; save the file")
    assert "--encoding cp1252" in fault


def test_a_word_kept_at_class_level_stays(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    classes = "key,name\nresin,natural resin\n"
    layers = "object,place,ref,material\nN.1,J1,l1,natural resin\nN.1,S1,l2,lac\n"
    take(engine, put(layers=layers, material_classes=classes))
    take(engine, put("b", only=True, materials="key,name\nnr,Natural resin\n"))
    report = take(engine, put("c", only=True, layers=layers))
    assert (report.counts[0].unchanged, said(report)) == (2, [])
    kept = row(engine, "SELECT material_id, material_words FROM layer WHERE ref = 'l1'")
    assert kept == (None, "natural resin")


def test_other_bytes_name_their_line(new_database: Make, put: Callable[..., Path]) -> None:
    people = "name,role\nEdith Marsh,mason\nJürgen Groß,maçon\n".encode("cp1252")
    folder = put("b", only=True, people=people)
    engine = new_database("a.db")
    (first, *_) = said(take(engine, folder))
    assert first.startswith("people.csv, line 3, column name")
    assert "--encoding cp1252" in first
    assert take(engine, folder, encoding="cp1252").written
    assert value(engine, "SELECT count(*) FROM person WHERE name = 'Jürgen Groß'") == 1


def test_a_byte_order_mark_is_no_text(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    folder = put("b", only=True, people="\ufeffname\nEdith Marsh\n")
    assert take(engine, folder).written
    assert value(engine, "SELECT name FROM person") == "Edith Marsh"


def test_blank_refs_come_out_the_same(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    layers = "object,place,date,role\nN.1,J1,1967,adhesive\nN.1,S1,,wax\n"
    folder = put(layers=layers, removals="object,layer,date\n")
    take(engine, folder)
    refs = value(engine, "SELECT group_concat(ref) FROM layer")
    shuffled = "role,object,place,date\nwax,N.1,S1,\nadhesive,N.1,J1,1967\n"
    report = take(engine, put("b", only=True, layers=shuffled))
    assert report.counts[0].unchanged == 2
    assert value(engine, "SELECT group_concat(ref) FROM layer") == refs


def test_the_same_row_twice_counts_once(new_database: Make, put: Callable[..., Path]) -> None:
    engine = new_database("a.db")
    report = take(engine, put(people="name,aliases\nEdith Marsh,Ned\nEdith Marsh,Ned\n"))
    assert report.written, said(report)
    assert any("is the same row as line 2" in n.sentence() for n in report.notices)


def test_files_that_are_not_ours(new_database: Make, put: Callable[..., Path]) -> None:
    folder = put(only=True, people="name\nEdith Marsh\n", owners="a\n1\n")
    (folder / "notes.txt").write_text("x")
    engine = new_database("a.db")
    report = take(engine, folder)
    assert [s for s in said(report) if s.startswith("owners.csv: is no file of this program")]
    assert any(n.file == "notes.txt" for n in report.notices)
    with pytest.raises(NotADirectoryError):
        import_folder(engine, folder / "none", who="A. Tester")
