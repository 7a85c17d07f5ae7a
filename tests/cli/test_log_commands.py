"""Who, log, withdraw, undo, redo, verify as a person types them."""

from __future__ import annotations

import shutil
import sqlite3
from pathlib import Path

import pytest

from conservedb.questions.display import show
from tests.cli.conftest import Command
from tests.nasty import NASTY


@pytest.fixture
def own(conservedb: Command, department: Path, tmp_path: Path) -> Command:
    """Runs a command on a copy of the department that may be changed."""
    path = tmp_path / "own.db"
    shutil.copy(department, path)
    return lambda *arguments: conservedb(*arguments, "--db", str(path))


def last(own: Command) -> dict[str, object]:
    found: dict[str, object] = own("log", "--last", "1", "--json").json["sets"][0]
    return found


def test_who_is_set_once_and_shown(own: Command, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("CONSERVEDB_WHO")
    asked = own("who", "--json").json
    assert asked["set"] is False
    assert asked["who"].startswith("account ")
    assert own("who", "Ida", "Holm").lines == ["you write as: Ida Holm"]
    assert own("who", "--json").json == {"who": "Ida Holm", "set": True}
    assert own("who", " ").status == 2
    assert own("who", "Ida\x1b[2J").status == 2
    monkeypatch.setenv("CONSERVEDB_WHO", "Someone Else")
    assert own("who", "--json").json["who"] == "Someone Else"


def test_a_record_is_withdrawn_and_comes_back(own: Command) -> None:
    before = own("place", "Q.1", "J1")
    refs = [layer["ref"] for layer in own("place", "Q.1", "J1", "--json").json["layers"]]
    loose = None
    for ref in refs:
        ended = own("withdraw", "layer", "Q.1", ref, "--reason", "entered twice", "--together")
        if ended.status == 0:
            loose = ref
            break
        assert "nothing was withdrawn" in ended.err
    assert loose is not None
    assert f"layer {loose} of Q.1" in ended.lines[0]
    now = [layer["ref"] for layer in own("place", "Q.1", "J1", "--json").json["layers"]]
    assert now == [ref for ref in refs if ref != loose]
    assert (last(own)["kind"], last(own)["reason"]) == ("withdrawn", "entered twice")
    undone = own("undo", "--json")
    assert undone.status == 0
    assert undone.json["undoes"] == undone.json["change_set"] - 1
    assert own("place", "Q.1", "J1").out == before.out
    assert own("redo").status == 0
    assert [r["ref"] for r in own("place", "Q.1", "J1", "--json").json["layers"]] == now
    assert own("undo").status == 0
    assert own("place", "Q.1", "J1").out == before.out
    assert own("verify").status == 0


def test_there_may_be_nothing_to_take_back(own: Command) -> None:
    assert "Nobody has written nothing here" in own("undo", "--who", "Nobody").err
    assert own("undo", "--who", "Nobody").status == 1
    assert "no change set 99" in own("undo", "99").err
    assert "it stays" in own("undo", "1").err


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (("withdraw", "leyer", "Q.1", "L1", "--reason", "x"), "did you mean layers"),
        (("withdraw", "layer", "Q.1", "nothing", "--reason", "x"), "no layer of Q.1"),
        (("withdraw", "layer", "Q.9", "L1", "--reason", "x"), "Q.9"),
        (("withdraw", "layer", "Q.1", "L1", "--reason", " "), "write why"),
        (("withdraw", "layer", "Q.1", "L1"), "--reason"),
        (("log", "--set", "999"), "no change set"),
        (("log", "Q.9"), "Q.9"),
        (("verify", "--head", "12"), "a hash of 64 letters"),
    ],
)
def test_wrong_use_gets_a_sentence(own: Command, arguments: tuple[str, ...], sentence: str) -> None:
    ended = own(*arguments)
    assert ended.status in (1, 2)
    assert sentence in ended.err
    assert "Traceback" not in ended.err


def test_the_log_tells_what_changed_field_by_field(own: Command) -> None:
    ref = own("place", "Q.1", "J1", "--json").json["layers"][0]["ref"]
    gone = own("withdraw", "place", "Q.1", "J1", "--reason", "x")
    assert gone.status == 1  # layers name it
    own("withdraw", "layer", "Q.1", ref, "--reason", "wrong joint", "--together")
    number = last(own)["number"]
    told = own("log", "--set", str(number), "--json").json
    assert told["records"][-1]["what"] == f"layer {ref}"
    assert told["records"][-1]["happened"] == "withdrawn"
    assert f"layer {ref}: withdrawn" in own("log", "--set", str(number)).out
    assert number in [one["number"] for one in own("log", "Q.1", "--json").json["sets"]]


def test_the_end_of_the_log_is_held_against_what_was_written_down(
    own: Command, tmp_path: Path
) -> None:
    head = own("log", "--json").json["head"]
    written = f"{head['number']} {head['hash']}"
    assert own("verify", "--head", written).status == 0
    forged = f"{head['number']} {head['hash'][::-1]}"
    ended = own("verify", "--head", forged, "--json")
    assert ended.status == 1
    assert ended.json["found"][0]["part"] == "head"


def test_rows_changed_behind_the_log_are_named_and_may_be_accepted(
    own: Command, tmp_path: Path
) -> None:
    raw = sqlite3.connect(tmp_path / "own.db")
    triggers = raw.execute("SELECT name FROM sqlite_schema WHERE type = 'trigger'").fetchall()
    for (name,) in triggers:
        raw.execute(f"DROP TRIGGER {name}")
    raw.execute("UPDATE object SET title = 'forged' WHERE number = 'Q.1'")
    raw.commit()
    raw.close()
    ended = own("verify", "--json")
    assert ended.status == 1
    assert {one["part"] for one in ended.json["found"]} == {"schema", "rows"}
    assert "made anew" in own("object", "Q.1").err
    ended = own("verify")
    assert ended.lines[0].startswith("rows: row 1 of object was changed behind the log's back: ti")
    assert own("verify", "--accept", "seen and left", "--who", "Ida Holm").status == 0
    assert last(own)["kind"] == "accepted"
    assert own("verify").status == 0


@pytest.mark.parametrize("text", [t for t in NASTY if t.strip() and "\0" not in t])
def test_reasons_and_names_are_shown_harmlessly(own: Command, text: str) -> None:
    ended = own("verify", "--accept", text, "--who", text)
    assert ended.status == 0
    for command in (("log",), ("log", "--json"), ("log", "--by", text), ("undo", "--who", text)):
        told = own(*command)
        assert show(told.out) == told.out
        assert show(told.err) == told.err


def test_a_whole_import_is_taken_back_only_by_its_number(own: Command, tmp_path: Path) -> None:
    folder = tmp_path / "in"
    folder.mkdir()
    (folder / "people.csv").write_text("name\nNobody Else\n")
    assert own("import", str(folder)).status == 0
    number = last(own)["number"]
    told = own("undo")
    assert told.status == 1
    assert f"to take all of it back: conservedb undo {number}" in told.err
    assert own("undo", str(number)).status == 0
    assert own("find", "Nobody Else").status == 1
