"""The command `look`: bars, tables and survival read aloud, as JSON and as pictures."""

from __future__ import annotations

from io import BytesIO, TextIOWrapper
from pathlib import Path

import pytest

from conservedb.cli.look import WAYS, is_plain
from conservedb.questions import tally
from tests.cli.conftest import Command


def test_bars_by_decade(ask: Command) -> None:
    ended = ask("look", "material: epoxy")
    assert ended.status == 0
    assert ended.lines == [
        "question: Layers and uses of agents of which this holds: it is, belongs to, or was called,"
        " “epoxy”.",
        "as on record: 2 November 2026",
        "",
        "1950s               0 + 1  ▒",
        "1960s                   0",
        "1970s               0 + 1  ▒",
        "1980s                   2  ██",
        "1990s to 2010s          0",
        "2020s           0 + 0 + 1  ░",
        "",
        "█ certain + ▒ possible + ░ not identified",
        "",
        "note: In all 3 certain, 1 possible and 1 not identified, each counted once.",
        "note: 1 may lie in several decades, or have a date that is approximate or uncertain:"
        " these are possible in each decade and certain in none.",
    ]


@pytest.mark.parametrize(
    ("by", "line"),
    [
        ("class", "Epoxy resins          3  ███"),
        ("person", "Walter Orde           1  █"),
        ("object-kind", "wall fountain  3 + 1 + 1  ███▒░"),
    ],
)
def test_bars_by_other_ways(ask: Command, by: str, line: str) -> None:
    assert line in ask("look", "material: epoxy", "--by", by).lines


def test_the_ways_are_those_of_the_question() -> None:
    assert WAYS == tally.WAYS


def test_words_need_no_quotes(ask: Command) -> None:
    assert ask("look", "material:", "epoxy").out == ask("look", "material: epoxy").out


def test_a_table(ask: Command) -> None:
    lines = ask("look", "material: epoxy", "--decades").lines
    assert lines[3:6] == [
        "                    1950s      1970s      1980s      2020s",
        "Epoxy adhesive      0 + 1                     2",
        "not recorded                   0 + 1             0 + 0 + 1",
    ]


def test_survival(ask: Command) -> None:
    lines = ask("look", "material: epoxy", "--survival").lines
    went = "  estimated, if what is not known went as the rest"
    few = "2 layers still followed"
    at = lines.index(
        "still there after 35 years: 100 % of the layers, 2 there for certain,"
        " 0 ended for certain, 0 not known"
    )
    assert lines[at + 1 : at + 3] == [
        f"{went}: 100 % as recorded, 100 % as last seen, {few}",
        "  with the possible answers too: 100 %",
    ]
    at = lines.index(
        "still there after 40 years: 0 to 100 % of the layers, 0 there for certain,"
        " 0 ended for certain, 2 not known"
    )
    one = "1 layer still followed"
    assert lines[at + 1] == f"{went}: 0 to 100 % as recorded, 0 to 100 % as last seen, {one}"
    assert any(
        line.startswith("note: Fewer than 5 layers are followed at any age") for line in lines
    )
    assert "note: Of 1 a date is approximate or uncertain; it is taken as written." in lines


def test_as_json(ask: Command) -> None:
    told = ask("look", "material: epoxy", "--json").json
    assert {
        name: told[name] for name in ("question", "rows", "on", "by", "several", "picture")
    } == {
        "question": "layers where material: epoxy",
        "rows": "layers",
        "on": "2026-11-02",
        "by": "decade",
        "several": 1,
        "picture": None,
    }
    assert told["decades"][0] == {
        "first": 1950,
        "label": "1950s",
        "certain": 0,
        "possible": 1,
        "unidentified": 0,
    }
    assert told["total"] == {"certain": 3, "possible": 1, "unidentified": 1}
    grouped = ask("look", "material: epoxy", "--by", "class", "--json").json
    assert [one["label"] for one in grouped["groups"]] == ["Epoxy resins", "not recorded"]
    table = ask("look", "material: epoxy", "--decades", "--json").json
    assert [one["material"] for one in table["materials"]] == ["Epoxy adhesive", "not recorded"]


def test_survival_as_json(ask: Command) -> None:
    told = ask("look", "material: epoxy", "--survival", "--json").json
    assert (told["layers"], told["exact"], told["chosen"]) == (2, False, [])
    assert told["left_out"] == {"possible": 1, "unidentified": 1, "agents": 1, "not_come": 0}
    assert told["ages"][0] == {
        "years": 5,
        "recorded": {"low": 1, "high": 1},
        "seen": {"low": 1, "high": 1},
        "with_possible": {"low": 1, "high": 1},
        "band": None,
        "soonest": {"low": 1, "high": 1},
        "last": {"low": 1, "high": 1},
        "there": 2,
        "ended": 0,
        "unknown": 0,
        "followed": 2,
    }
    assert told["jumps"] == [{"first_day": 14246, "last_day": 18261, "share": 1}]


@pytest.mark.parametrize("name", ["a.svg", "a.png"])
@pytest.mark.parametrize("what", ["--survival", "--by=person"])
def test_a_picture(ask: Command, tmp_path: Path, name: str, what: str) -> None:
    path = tmp_path / name
    ended = ask("look", "material: epoxy", what, "--picture", str(path))
    assert ended.status == 0 and ended.lines[-1] == f"picture written: {path}"
    made = path.read_bytes()
    assert made.startswith((b"<?xml", b"\x89PNG")) and len(made) > 2000
    again = ask("look", "material: epoxy", what, "--picture", str(path))
    assert (again.status, path.read_bytes()) == (3, made)
    assert again.err == f"conservedb: {path} already exists; name a new file\n"


@pytest.mark.parametrize(
    ("arguments", "status", "sentence"),
    [
        (("material epoxy",), 2, "a condition is a field, a colon and a value"),
        (("objects", "--by", "class"), 2, "objects cannot be counted by class; ask for layers"),
        (("objects", "--survival"), 2, "it is layers that last, not objects; ask for layers"),
        (("layers", "--by", "year"), 2, "'year' is not one of"),
        (("layers", "--decades", "--survival"), 2, "exclude each other; give one."),
        (("layers", "--decades", "--picture", "a.svg"), 2, "a table makes no picture"),
        (("layers", "--picture", "a.gif"), 3, "end it with .svg or .png"),
        (("material: epoxi",), 1, "'epoxi'"),
    ],
)
def test_wrong_use(ask: Command, arguments: tuple[str, ...], status: int, sentence: str) -> None:
    ended = ask("look", *arguments)
    assert ended.status == status and ended.out == "" and sentence in ended.err


@pytest.mark.parametrize(
    ("encoding", "plain"), [("utf-8", False), ("ascii", True), ("cp437", True)]
)
def test_a_terminal_without_the_signs(
    monkeypatch: pytest.MonkeyPatch, encoding: str, plain: bool
) -> None:
    with monkeypatch.context() as patch:
        patch.setattr("sys.stdout", TextIOWrapper(BytesIO(), encoding=encoding))
        assert is_plain() is plain


@pytest.mark.parametrize("what", ["--by=decade", "--by=person", "--decades", "--survival"])
def test_nothing_answers(ask: Command, tmp_path: Path, what: str) -> None:
    picture = () if what == "--decades" else ("--picture", str(tmp_path / "a.svg"))
    ended = ask("look", "object: Q.10", what, *picture)
    assert (ended.status, ended.out) == (1, "")
    assert ended.err == (
        "conservedb: nothing on record answers: Layers and uses of agents of which this holds:"
        " the object has the number, or the words in its title, “Q.10”.\n"
    )
    assert not list(tmp_path.glob("a.svg*"))
    assert ask("look", "object: Q.10", what, "--json").json == {
        "error": ended.err.removeprefix("conservedb: ").strip()
    }


def test_no_layer_answers_for_certain(ask: Command) -> None:
    ended = ask("look", "material: acetone", "--survival")
    assert (ended.status, ended.out) == (1, "")
    assert ended.err.startswith(
        "conservedb: no layer answers for certain, so that nothing tells how long they last (left"
        " out: "
    )
    assert "1 use of an agent" in ended.err


def test_an_empty_database(conservedb: Command, tmp_path: Path) -> None:
    path = str(tmp_path / "new.db")
    assert conservedb("new", path).status == 0
    for what in ("--by=decade", "--decades", "--survival"):
        ended = conservedb("look", "layers", what, "--db", path)
        assert (ended.status, ended.out) == (1, "")
        assert ended.err.count("\n") == 1 and "nothing on record answers: " in ended.err
