"""conservedb ask: the answers of the questions, on paper and as JSON; kept and compared."""

from __future__ import annotations

import csv
import shlex
import shutil
from pathlib import Path

import pytest

from conservedb.knowledge.research_words import read
from conservedb.questions.research import counts, rows
from conservedb.store.connect import reading
from conservedb.store.opening import open_database
from tests.cli.conftest import Command, department
from tests.cli.test_endings import loaded
from tests.cli.test_hostile_text import TEXTS
from tests.conftest import TODAY

__all__ = ["department"]


@pytest.fixture
def writing(conservedb: Command, department: Path, tmp_path: Path) -> Command:
    """Runs a command on a copy of the department."""
    copy = tmp_path / "copy.db"
    shutil.copy(department, copy)
    return lambda *arguments: conservedb(*arguments, "--db", str(copy))


def test_the_answer_is_that_of_the_question(ask: Command, department: Path) -> None:
    text = "objects where material: epoxy or role: coating"
    shown = ask("ask", text, "--order", "title", "--descending", "--json").json
    engine, _ = open_database(department)
    with reading(engine) as connection:
        found = list(rows(connection, read(text), TODAY, "title", True))
        told = counts(connection, read(text), TODAY)
    engine.dispose()
    assert [row["object"] for row in shown["found"]] == [row.object for row in found]
    assert shown["counts"] == {
        "certain": told.certain,
        "possible": told.possible,
        "unidentified": told.unidentified,
    }
    assert shown["rows"] == "objects"
    assert shown["question"] == text
    assert set(shown["found"][0]) == {
        *(
            "sureness",
            "object",
            "title",
            "place",
            "what",
            "ref",
            "intervention",
            "material",
            "matter",
        ),
        *("role", "kind", "people", "date", "date_qualifiers", "state", "layers"),
    }


def test_lines_say_question_counts_and_rows(ask: Command) -> None:
    ended = ask("ask", "material: epoxy", "--limit", "2")
    assert ended.status == 0
    assert ended.lines[0].startswith("question: Layers and uses of agents of which")
    assert ended.lines[1] == "answer: layers: 3 certainly, 1 possibly, 1 unidentified"
    assert sum(line.startswith("  Q.") for line in ended.lines) == 2
    assert "--limit 0 shows all" in ended.lines[-1]
    assert len(ask("ask", "material: epoxy", "--limit", "0", "--json").json["found"]) == 5


def test_rows_and_describe(ask: Command) -> None:
    assert ask("ask", "material: epoxy", "--rows", "objects", "--json").json["rows"] == "objects"
    shown = ask("ask", "role: fill", "--describe", "--json").json
    assert shown == {
        "question": "layers where role: fill",
        "description": "Layers and uses of agents of which this holds: its role is “fill”.",
    }


def test_a_question_is_kept_asked_again_withdrawn_and_brought_back(writing: Command) -> None:
    kept = writing("ask", "places where material: epoxy", "--save", "Epoxy", "--json").json
    assert kept["saved"] == "Epoxy" and kept["change_set"] > 1
    again = writing("ask", "--saved", "epoxy", "--json").json
    assert again["found"] == kept["found"]
    (listed,) = writing("ask", "--list", "--json").json["saved"]
    assert listed["question"] == "places where material: epoxy"
    assert listed["person"] == "A. Tester"
    taken = writing("ask", "layers", "--save", "EPOXY")
    assert taken.status == 1 and "kept already" in taken.err
    assert writing("withdraw", "saved question", "Epoxy", "--reason", "a trial").status == 0
    assert writing("ask", "--list").lines == ["kept: none"]
    assert writing("ask", "--saved", "Epoxy").status == 1
    assert writing("undo").status == 0
    assert writing("ask", "--saved", "Epoxy", "--json").json["found"] == kept["found"]
    amended = writing(
        "amend", "saved question", "-", "Epoxy", "conditions=material: (", "--reason", "why"
    )
    assert amended.status == 1 and "(at character" in amended.err
    assert writing("verify").status == 0


@pytest.mark.parametrize(
    ("name", "said"),
    [("", "a name is missing"), (" ", "a name is missing"), ("n" * 201, "201 let")],
)
def test_a_name_nobody_could_ask_for_is_refused(writing: Command, name: str, said: str) -> None:
    refused = writing("ask", "layers", "--save", name)
    assert refused.status == 2 and said in refused.err
    assert "amend" not in refused.err and len(refused.err) < 200
    assert writing("ask", "layers", "--save", name[1:].strip() or "n" * 200).status == 0
    assert len(writing("ask", "--list").lines) == 1


def test_the_help_tells_of_certainly_and_of_the_keys_of_rules(ask: Command) -> None:
    """Each command that it names is carried out as a shell reads it."""
    told = ask("ask", "--help").out.partition("--help")[2].splitlines()
    named = [shlex.split(line)[1:] for line in told if line.strip().startswith("conservedb ")]
    assert [words[0] for words in named] == ["ask", "sql"]
    assert "certainly" in named[0][1] and "v_rules" in named[1][1]
    assert all(ask(*words).status in (0, 1) for words in named)


def test_uses_of_a_word_as_found_say_how_to_ask_for_it(writing: Command) -> None:
    """The command that is named finds the layer; a shell reads it as one word."""
    words = "GUM"
    made = writing("record", "layer", "object=Q.1", "place=S1", "ref=L90", f"material={words}")
    assert made.status == 0, made.err
    refused = writing("uses", words)
    assert refused.status == 1 and "it is a word as found: " in refused.err
    command = shlex.split(refused.err.partition("it is a word as found: ")[2])
    assert [row["ref"] for row in writing(*command[1:], "--json").json["found"]][:1] == ["L90"]
    assert "it is a word as found: conservedb ask" in writing("uses", words, "--json").json["error"]
    assert "as found" not in writing("uses", "nosuchlacquer").err


def test_a_name_that_is_taken_can_be_given_to_another_question(writing: Command) -> None:
    """The commands that the message names do what it says, as a shell reads them."""
    name, asked = "It's mine", 'places where technique: "a ""b"""'
    assert writing("record", "term", "list=technique", 'term=a "b"').status == 0
    assert writing("ask", "layers", "--save", name).status == 0
    taken = writing("ask", asked, "--save", name.upper())
    assert taken.status == 1 and "is kept already" in taken.err
    first, second = (
        shlex.split(part.partition(": ")[2]) for part in taken.err.strip().split("; ")[-2:]
    )
    assert (first[:2], second[:2]) == (["conservedb", "amend"], ["conservedb", "withdraw"])
    assert writing(*first[1:]).status == 0
    (listed,) = writing("ask", "--list", "--json").json["saved"]
    assert (listed["name"], listed["question"]) == (name, asked)
    assert writing(*second[1:]).status == 0
    assert writing("ask", "--list").lines == ["kept: none"]


def test_an_import_refuses_conditions_that_cannot_be_read(writing: Command, tmp_path: Path) -> None:
    (tmp_path / "tables").mkdir()
    file = tmp_path / "tables" / "saved_questions.csv"
    file.write_text("name,rows,conditions\nBad,layers,rol: fill\n", encoding="utf-8")
    refused = writing("import", str(tmp_path / "tables"))
    assert refused.status == 1
    assert "did you mean role" in refused.out + refused.err


def test_two_days(ask: Command) -> None:
    shown = ask("ask", "material: epoxy", "--compare", "1960", "today", "--json").json
    assert [row["ref"] for row in shown["only_first"]] == ["L5"]
    assert [row["ref"] for row in shown["only_second"]] == ["L6", "L3", "L7"]
    assert [day["to"] for day in shown["days"]] == ["1960-12-31", "2026-11-02"]
    lines = ask("ask", "material: epoxy", "--compare", "1960", "today").lines
    assert any(line == "only then: 3" for line in lines)
    assert any(line == "surer on the second day: none" for line in lines)


def test_both_questions_of_two_days_are_told(ask: Command) -> None:
    """What is asked of each day is not always what was asked: presence is added where it lacks."""
    shown = ask("ask", "material: epoxy", "--compare", "1960", "today", "--json").json
    assert shown["question"] == "layers where material: epoxy"
    assert shown["compared"] == "layers where material: epoxy and state: there"
    told = "compared: on each day only what was there, not uses and steps"
    assert told in ask("ask", "material: epoxy", "--compare", "1960", "today").out
    shown = ask("ask", "state: gone", "--compare", "1960", "today", "--json").json
    assert shown["question"] == shown["compared"] == "layers where state: gone"
    assert told not in ask("ask", "state: gone", "--compare", "1960", "today").out


def test_what_became_surer_is_told_with_both_words(ask: Command) -> None:
    """L8 came some time from 1952 to 1975, and was seen in 1960: by 1970 it is certainly there."""
    shown = ask("ask", "layers", "--compare", "1950", "1970", "--json").json
    (surer,) = shown["surer"]
    assert (surer["ref"], surer["before"], surer["sureness"]) == ("L8", "possible", "certain")
    assert shown["less_sure"] == []
    assert "L8" not in [row["ref"] for row in shown["only_first"] + shown["only_second"]]
    lines = ask("ask", "layers", "--compare", "1950", "1970").lines
    at = lines.index("surer on the second day: 1")
    assert lines[at + 1].strip().startswith("Q.1 S1: possible, then certain")
    assert lines[at + 2] == "less sure on the second day: none"
    turned = ask("ask", "layers", "--compare", "1970", "1950", "--json").json
    (unsure,) = turned["less_sure"]
    assert (unsure["ref"], unsure["before"], unsure["sureness"]) == ("L8", "certain", "possible")


@pytest.mark.parametrize(
    ("arguments", "status", "said"),
    [
        ((), 2, "write a question"),
        (("material: epoxy", "--saved", "x"), 2, "write a question"),
        (("--save", "x"), 2, "write"),
        (("rol: fill",), 2, "did you mean role?"),
        (("date: 30 Feb 1950",), 2, "no such day"),
        (("material: nothing-known",), 1, "on record"),
        (("material: glue",), 1, "can mean"),
        (("role: adhesiv",), 1, "no role 'adhesiv' on record; did you mean adhesive?"),
        (("person: Nobody",), 1, "no person 'Nobody' on record"),
        (("layers", "--order", "colour"), 1, "column"),
        (("layers", "--limit", "-1"), 2, "--limit"),
        (("layers", "--compare", "1950", "some day"), 2, "date"),
        (("--saved", "none"), 1, "no saved question"),
    ],
)
def test_what_cannot_be_answered(
    ask: Command, arguments: tuple[str, ...], status: int, said: str
) -> None:
    ended = ask("ask", *arguments)
    assert ended.status == status
    assert said in ended.err
    assert "error" in ask("ask", *arguments, "--json").json


@pytest.mark.campaign
def test_a_hostile_name_and_question_are_kept_as_data(writing: Command, tmp_path: Path) -> None:
    (tmp_path / "listed").mkdir()
    with (tmp_path / "listed" / "terms.csv").open("w", encoding="utf-8", newline="") as file:
        csv.writer(file).writerows([("list", "term"), *(("technique", text) for text in TEXTS)])
    assert writing("import", str(tmp_path / "listed")).status == 0
    for number, text in enumerate(TEXTS):
        quoted = '"' + text.replace('"', '""') + '"'
        kept = writing("ask", f"technique: {quoted}", "--save", f"{number} {text}", "--json")
        assert kept.status == 0
        assert "\x1b" not in kept.out
    shown = writing("ask", "--list")
    assert "\x1b" not in shown.out
    assert len(writing("ask", "--list", "--json").json["saved"]) == len(TEXTS)
    for number, text in enumerate(TEXTS):
        assert writing("ask", "--saved", f"{number} {text}", "--json").status == 0


def test_asking_loads_no_interface_and_no_migrations(department: Path) -> None:
    modules = loaded("ask", "material: epoxy and kind: join", "--db", str(department))
    assert "sqlalchemy" in modules
    assert not modules & {"textual", "alembic", "sqlalchemy.orm", "rich", "openpyxl"}
