"""The command `material`: read aloud, as JSON, and with text that a terminal would obey."""

from __future__ import annotations

from pathlib import Path

import pytest

from conservedb.exchange.importing import import_folder
from conservedb.store.create import create
from conservedb.store.opening import open_database
from tests.cli.conftest import Command, Ended
from tests.conftest import TODAY
from tests.questions.test_material import TABLES


@pytest.fixture(scope="module")
def stock(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The materials of the question's tests, as a file."""
    folder = tmp_path_factory.mktemp("stock")
    (folder / "tables").mkdir()
    for name, text in TABLES.items():
        (folder / "tables" / f"{name}.csv").write_text(text, encoding="utf-8")
    path = folder / "stock.db"
    create(path, today=TODAY.isoformat())
    engine, _ = open_database(path)
    assert import_folder(engine, folder / "tables", today=TODAY, who="A. Tester").written
    engine.dispose()
    return path


def test_it_is_read_aloud(conservedb: Command, stock: Path) -> None:
    ended = conservedb("material", "gummy", "--db", str(stock))
    assert ended.status == 0
    for line in (
        "material: Test gum, key x-gum",
        "sold as: Stickfast; Holdall",
        "sources differ: glass transition",
        "glass transition: 55 C, from memory, not confirmed",
        "in Test spirit: dissolves, fresh material, published, X1: A handbook",
        "cross-linked: no, rule of the class test resin, published, X1: A handbook",
        "lies now: three layers, 3 possible",
        "laid in the 1930s: 2 certain, 1 possible",
    ):
        assert line in ended.lines, line
    assert "  as Teas fractions: 57.5 / 24.2 / 18.3, converted, not published" in ended.lines


def test_hazards_are_never_without_their_banner(conservedb: Command, stock: Path) -> None:
    lines = conservedb("material", "x-spirit", "--db", str(stock)).lines
    at = lines.index(
        "hazards: Not a safety data sheet. Read the supplier's sheet and your local code."
    )
    assert lines[at + 1].startswith("hazard H225: Highly flammable liquid and vapour, band A")
    assert "  saturated air exceeds it: 488 times" in lines


def test_as_json(conservedb: Command, stock: Path) -> None:
    told = conservedb("material", "x-spirit", "--json", "--db", str(stock)).json
    assert told["meant"] == {"kind": "material", "key": "x-spirit", "name": "Test spirit"}
    assert told["teas"][0]["standing"] == "from memory, not confirmed"
    assert told["hansen"][0]["converted"] == [47.11, 31.61, 21.28]
    assert told["limits"][0]["jurisdiction"] == "Somewhere"
    assert round(told["limits"][0]["vapour_hazard_ratio"]) == 488
    assert told["where"]["uses"][0]["places"] == ["S1"]
    assert told["banner"].startswith("Not a safety data sheet")


def test_hostile_text_is_shown(conservedb: Command, stock: Path) -> None:
    for ended in (
        conservedb("material", "x-odd", "--db", str(stock)),
        conservedb("material", "x-gum", "--json", "--db", str(stock)),
    ):
        assert ended.status == 0 and "\x1b" not in ended.out and "owned" in ended.out


def test_an_unknown_word_ends_with_status_1(conservedb: Command, stock: Path) -> None:
    ended: Ended = conservedb("material", "x-gumm", "--db", str(stock))
    assert ended.status == 1
    assert "no material or class 'x-gumm' on record; did you mean x-gum" in ended.err
