"""Records full of what breaks terminals: shown by every command, obeyed by none."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import pytest

from conservedb.exchange.importing import import_folder
from conservedb.questions.display import show
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.cli.conftest import Command
from tests.conftest import TODAY
from tests.nasty import NASTY

pytestmark = pytest.mark.campaign  # seconds each: the long runs have them

TEXTS = [text for text in NASTY if "\r" not in text and len(text) < 1000]


@pytest.fixture(scope="module")
def hostile(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """One object, part, place, layer and paper for each nasty text, which fills every field."""
    folder = tmp_path_factory.mktemp("hostile")
    tables = folder / "tables"
    tables.mkdir()
    write(tables, "materials", ("key", "name", "note"), [(f"m{i}", t, t) for i, t in all_of()])
    write(tables, "sources", ("ref", "kind", "citation"), [(f"s{i}", t, t) for i, t in all_of()])
    write(
        tables,
        "objects",
        ("number", "title", "kind", "maker", "whereabouts", "note"),
        [(f"N.{i}", t, t, t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "components",
        ("object", "mark", "name", "kind", "kept_at", "mass_basis", "note"),
        [(f"N.{i}", "B1", t, t, t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "places",
        ("object", "mark", "kind", "component", "name", "geometry", "fit", "access", "note"),
        [(f"N.{i}", "J1", "joint", "B1", t, t, t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "treatments",
        ("object", "ref", "title", "purpose", "status", "result", "recommendations", "note"),
        [(f"N.{i}", "T1", t, t, t, t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "plans",
        ("object", "ref", "treatment", "version", "justification", "alternatives", "risks"),
        [(f"N.{i}", "p1", "T1", "1", t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "interventions",
        (
            *("object", "ref", "treatment", "kind", "technique", "date", "date_basis", "places"),
            *("source", "note", "deviation", "circumstances", "methods", "unauthorised_reason"),
        ),
        [
            (f"N.{i}", "i1", "T1", "join", t, "1950", t, "J1", f"s{i}", t, t, t, t, t)
            for i, t in all_of()
        ],
    )
    write(
        tables,
        "authorisations",
        ("object", "ref", "plan", "decision", "scope", "conditions", "evidence", "note"),
        [(f"N.{i}", "u1", "p1", "authorised", t, t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "observations",
        ("object", "ref", "intervention", "place", "condition", "seen", "presumed", "extent"),
        [(f"N.{i}", "o1", "i1", "J1", t, t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "layers",
        ("object", "place", "ref", "intervention", "material", "role", "carrier", "note"),
        [(f"N.{i}", "J1", "L1", "i1", f"m{i}", t, t, t) for i, t in all_of()],
    )
    write(
        tables,
        "warnings",
        ("object", "kind", "text"),
        [(f"N.{i}", t, t) for i, t in all_of()],
    )
    path = folder / "hostile.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    report = import_folder(engine, tables, today=TODAY, who="A. Tester")
    engine.dispose()
    assert report.written, [fault.sentence() for fault in report.faults][:3]
    return path


def all_of() -> list[tuple[int, str]]:
    return list(enumerate(TEXTS))


def write(folder: Path, name: str, header: tuple[str, ...], rows: list[tuple[str, ...]]) -> None:
    with (folder / f"{name}.csv").open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows([header, *rows])


@pytest.mark.parametrize("number", range(len(TEXTS)))
def test_every_command_shows_it_and_obeys_nothing(
    conservedb: Command, hostile: Path, number: int
) -> None:
    text = TEXTS[number]
    shown = show(text).split("\n")[0]
    for command in (
        ("object", f"N.{number}"),
        ("place", f"N.{number}", "J1"),
        ("history", f"N.{number}"),
        ("treatment", f"N.{number}"),
        ("treatment", f"N.{number}", "T1"),
        ("uses", f"m{number}"),
        ("find", f"N.{number}"),
    ):
        ended = conservedb(*command, "--db", str(hostile))
        assert ended.status == 0, ended.err
        assert shown in ended.out
        assert show(ended.out) == ended.out
        as_json = conservedb(*command, "--json", "--db", str(hostile))
        assert show(as_json.out) == as_json.out
        assert json.dumps(text)[1:-1] in json.dumps(as_json.json)


@pytest.mark.parametrize("text", TEXTS)
def test_what_is_typed_is_shown_back_harmlessly(
    conservedb: Command, hostile: Path, text: str
) -> None:
    odd = "zz" + text
    for command in (
        ("object", odd),
        ("place", odd, odd),
        ("treatment", odd, odd),
        ("uses", odd),
        ("find", odd),
    ):
        ended = conservedb("--db", str(hostile), *command)
        assert ended.status == 1
        assert show(ended.err) == ended.err


@pytest.mark.parametrize("number", range(len(TEXTS)))
def test_what_is_counted_is_shown_and_obeys_nothing(
    conservedb: Command, hostile: Path, number: int, tmp_path: Path
) -> None:
    """A long label is cut off in bars; as JSON it is whole."""
    asked = ("look", f"object: N.{number}", "--by", "object-kind", "--db", str(hostile))
    ended = conservedb(*asked, "--picture", str(tmp_path / "a.svg"))
    assert ended.status == 0, ended.err
    assert " ".join(show(TEXTS[number]).split())[:20] in ended.out
    assert show(ended.out) == ended.out and "  1  █" in ended.out
    assert conservedb(*asked, "--json").json["groups"][0]["label"] == TEXTS[number]
    assert (tmp_path / "a.svg").read_bytes().endswith(b"</svg>\n")
