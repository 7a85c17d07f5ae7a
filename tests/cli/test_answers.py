"""What the reading commands print, as lines to be read aloud and as documented JSON."""

from __future__ import annotations

import re

import pytest

from tests.cli.conftest import Command

READING = (
    ("object", "Q.1"),
    ("place", "Q.1", "J1"),
    ("place", "Q.1", "S1", "--on", "1985/2005"),
    ("history", "Q.1"),
    ("history", "Q.1", "B2"),
    ("uses", "epoxy"),
    ("uses", "acetone"),
    ("find", "Q.1", "J1"),
)


@pytest.mark.parametrize("command", READING, ids=" ".join)
def test_lines_are_labels_and_values(ask: Command, command: tuple[str, ...]) -> None:
    ended = ask(*command)
    assert ended.status == 0 and ended.err == ""
    for line in ended.lines:
        assert line == "" or re.match(r" *[^:]+: .+", line), line
    assert not set("│─┌┐└┘|+") & set(ended.out)


def test_place_in_lines(ask: Command) -> None:
    lines = ask("place", "Q.1", "J1", "--on", "14 June 1950").lines
    assert lines[:4] == [
        "object: Q.1, Fountain",
        "location: J1, joint, lip to dolphin",
        "as of: 14 June 1950",
        "in short: Closed 1741 with Limestone; barrier not recorded; carries 85 kg;"
        " two cramps suspected; no sighting on record",
    ]
    assert "side B: B2, dolphin, Limestone" in lines
    assert "layer 2: Portland cement, pointing, edge, ref L2" in lines
    assert "  state: in place (on record)" in lines


def test_place_in_json(ask: Command) -> None:
    answer = ask("place", "Q.1", "J1", "--on", "1950", "--json").json
    assert {"object", "place", "kind", "on", "sides", "condition", "fixings", "layers"} <= set(
        answer
    )
    assert answer["on"] == {
        "words": "1950",
        "edtf": "1950",
        "from": "1950-01-01",
        "to": "1950-12-31",
    }
    assert answer["sides"][0] == {
        "side": "A",
        "component": "B1",
        "name": "basin",
        "material": "Limestone",
        "kind": "block",
    }
    assert answer["condition"]["possible"] == ["closed"]
    pointing = answer["layers"][1]
    assert pointing["laid"]["earliest"] == "1934-01-01"
    assert pointing["laid"]["people"] == [{"name": "Walter Orde", "role": "mason"}]
    assert pointing["removed"][0]["extent"] == "part"
    assert pointing["possible"] == ["present"] == pointing["throughout"]
    assert pointing["at_some_time"] == ["present"] == pointing["possibly"]
    assert pointing["by_side"]["A"] == {"state": "present", "possible": ["present"]}


FIELDS = """
    ref stack side zone role material material_name origin concentration carrier state possible
    by_side qualified last_seen laid removed identified sources rivals settle
"""
DEED = "words edtf earliest latest intervention people extent cause"


def test_every_promised_field_of_a_layer(ask: Command) -> None:
    for layer in ask("place", "Q.1", "S1", "--json").json["layers"]:
        assert set(layer) >= set(FIELDS.split())
        assert "throughout" not in layer  # a day, not a span
        for deed in (layer["laid"], *layer["removed"]):
            assert set(deed) >= set(DEED.split())
    unknown = ask("place", "Q.1", "S1", "--json").json["layers"][2]
    assert unknown["material"] is None
    open_start = ask("place", "Q.1", "S1", "--json").json["layers"][0]["laid"]
    assert (open_start["earliest"], open_start["latest"]) == (None, "1955-12-31")


def test_uses_in_json(ask: Command) -> None:
    answer = ask("uses", "epoxy", "--on", "1990", "--json").json
    assert answer["meant"] == {"kind": "material", "key": "epoxy", "name": "Epoxy adhesive"}
    first = answer["layers"][0]
    assert {"object", "place", "layer", "material", "role", "state", "possible", "laid"} <= set(
        first
    )
    assert (first["layer"], first["state"], first["certain"]) == ("L3", "present", True)
    assert [row["certain"] for row in answer["layers"]] == [True, False, False, False]
    assert set(answer["agents"][0]) >= {"object", "intervention", "material", "places", "date"}
    assert answer["counts"] == {
        "layers_certain": 1,
        "layers_possible": 3,
        "agents_certain": 1,
        "agents_possible": 0,
        "unidentified": 1,  # L7; of L6 a statement says that it is epoxy, so it is possible
        "unidentified_agents": 0,
    }


def test_object_in_json(ask: Command) -> None:
    answer = ask("object", "q.1", "--json").json
    assert answer["object"] == "Q.1" and answer["made"]["edtf"] == "1741"
    assert [row["component"] for row in answer["components"]][:2] == ["B1", "B2"]
    assert answer["places"][0] == {
        "place": "J1",
        "kind": "joint",
        "component": "B1",
        "other_component": "B2",
        "name": "lip to dolphin",
        "certain": 3,
        "uncertain": 0,
        "condition": "moving",
        "load_kg": 85.0,
    }


def test_history_in_json(ask: Command) -> None:
    answer = ask("history", "Q.1", "J2", "--json").json
    assert [row["ref"] for row in answer["rows"]] == ["J2", "L4", "e4", "i2012", "s5"]
    assert answer["rows"][3]["people"] == [{"name": "Ines Calder", "role": ""}]


def test_find_in_json(ask: Command) -> None:
    assert ask("find", "Q.1", "J2", "--json").json == {
        "text": "Q.1 J2",
        "found": [
            {
                "kind": "place",
                "object": "Q.1",
                "mark": "J2",
                "label": "broken across",
                "detail": "joint",
                "sentence": "",
                "spans": [],
                "used": "",
            }
        ],
        "counts": [{"kind": "place", "total": 1, "more": False}],
        "near": [],
        "remark": "",
    }


def test_find_prints_groups_with_the_words_in_their_sentence(ask: Command) -> None:
    assert ask("find", "letter", "steward").lines == [
        "Papers and pictures: 1",
        "  source: LET",
        "    words: «Letter» of the «steward»",
    ]
    assert "Locations: 1 of 2" in ask("find", "Q.1", "J1", "--most", "1").lines


def test_what_was_perhaps_meant_is_told(ask: Command) -> None:
    mistyped = ask("find", "fuontain", "--json")
    assert (mistyped.status, mistyped.json["near"]) == (1, ["Fountain"])
    assert "nothing on record has all of 'fuontain'; did you mean: 'Fountain'" in (
        ask("find", "fuontain").err
    )


def test_the_search_index_is_read_anew_on_request(ask: Command) -> None:
    assert ask("verify", "--rebuild-search").lines[0] == "search index: read anew"
    assert ask("verify", "--rebuild-search", "--json").json["rebuilt"] is True


def test_new_makes_a_database(conservedb: Command, tmp_path: object) -> None:
    path = f"{tmp_path}/my.db"
    assert conservedb("new", path).lines == [f"made: {path}"]
    assert conservedb("object", "Q.1", "--db", path).status == 1
    again = conservedb("new", path, "--json")
    assert again.status == 3
    assert again.json == {"error": f"{path} already exists; choose another name"}


def test_find_says_how_much_there_is_of_a_material_and_what_lists_it(ask: Command) -> None:
    used = "two layers recorded, on one object, used one time as an agent"
    (line,) = (line for line in ask("find", "epoxy", "adhesive").lines if "used:" in line)
    assert line == f"    used: {used}, where: conservedb uses epoxy"
    assert ask("find", "epoxy", "adhesive", "--json").json["found"][0]["used"] == used
    assert "certain: two layers" in ask("uses", "epoxy").lines


@pytest.mark.parametrize("command", ["find", "object", "uses"])
def test_very_long_words_are_not_told_back_whole(ask: Command, command: str) -> None:
    for more in ((), ("--json",)):
        ended = ask(command, "x" * 100_000, *more)
        assert ended.status == 1
        assert len(ended.out + ended.err) < 300
        assert "x…" in ended.out + ended.err
