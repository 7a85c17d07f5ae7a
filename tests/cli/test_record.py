"""Recording and amending by command: what a form can, a script can."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import Engine

from conservedb.questions.display import show
from conservedb.store.connect import raw_of, reading
from conservedb.store.verify import verify
from tests.cli.conftest import Command, Ended
from tests.exchange.bench import OBJECT, TWELVE, authorise, cells, count, fill
from tests.nasty import NASTY

TEXTS = [text for text in NASTY if "\0" not in text and len(text) < 1000]
STEP = (
    "record", "step", f"object={OBJECT}", "kind=clean", "date=2026-10-30", "standing=routine care",
)  # fmt: skip
ACID = (*STEP, "places=S1", "agent=formic-acid", "form=swab")


@pytest.fixture
def engine(new_database: Callable[[str], Engine], monkeypatch: pytest.MonkeyPatch) -> Engine:
    authorise(monkeypatch)
    return fill(new_database("bench.db"))


@pytest.fixture
def run(conservedb: Command, engine: Engine, tmp_path: Path) -> Command:
    return lambda *arguments: conservedb(*arguments, "--db", str(tmp_path / "bench.db"))


def test_a_step_over_twelve_places_is_one_command(run: Command, engine: Engine) -> None:
    ended = run(
        "record", "step", f"object={OBJECT}", "kind=coat", "material=paraloid b-72",
        "date=1990", "--over-matching", "bed limestone", "--json",
    )  # fmt: skip
    assert ended.status == 0, ended.err
    assert ended.json["written"] is True
    assert isinstance(ended.json["set"], int)
    laid = [one for one in ended.json["records"] if one["kind"] == "layer"]
    assert [one["cells"]["place"] for one in laid] == list(TWELVE)
    assert {one["cells"]["recorded_over"] for one in laid} == {"12"}
    assert all(isinstance(one["version"], int) for one in laid)
    with reading(engine) as connection:
        assert cells(connection, "interventions", "I2")["recorded_over"] == "12"


def test_a_bad_place_is_named_and_nothing_is_written(run: Command, engine: Engine) -> None:
    before = count(engine, "change")
    ended = run(
        "record", "step", f"object={OBJECT}", "kind=coat", "material=paraloid b-72",
        f"places={'; '.join((*TWELVE[:11], 'J77'))}",
    )  # fmt: skip
    assert ended.status == 1
    assert ended.err.startswith("fault: J77: is no place on record")
    assert ended.lines == ["result: nothing was written"]
    assert count(engine, "change") == before


def test_a_broken_rule_needs_a_reason(run: Command, engine: Engine) -> None:
    ended = run(*ACID, "--json")
    assert ended.status == 1
    (finding,) = ended.json["findings"]
    assert (finding["rule"], finding["severity"]) == ("acid-on-calcite", "block")
    assert ended.json["written"] is False
    assert ended.json["records"] == []
    told = run(*ACID)
    assert '--override acid-on-calcite="WHY"' in told.err
    assert run(*ACID, "--override", "acid-on-calcite= ").status == 2
    kept = run(*ACID, "--override", "acid-on-calcite=tried on a chip", "--who", "Ida Holm")
    assert kept.status == 0, kept.err
    assert kept.lines[0].startswith("intervention: I2, version ")
    assert kept.lines[-1].startswith("change set: ")
    with reading(engine) as connection:
        why = cells(connection, "acceptances", "X1")
    assert (why["person"], why["reason"]) == ("Ida Holm", "tried on a chip")


def test_a_dry_run_writes_nothing_and_shows_all(run: Command, engine: Engine) -> None:
    before = count(engine, "change")
    ended = run(*STEP, "places=S1", "--dry-run")
    assert ended.status == 0
    assert "intervention: I2" in ended.lines
    assert "  places: S1" in ended.lines
    assert ended.lines[-1] == "result: this would be written; nothing was"
    assert run(*ACID, "--dry-run").status == 1
    as_json = run(*STEP, "places=S1", "--dry-run", "--json").json
    assert (as_json["written"], as_json["trial"], as_json["set"]) == (False, True, None)
    assert count(engine, "change") == before


@pytest.mark.parametrize(
    ("command", "said"),
    [
        (("record", "step", f"object={OBJECT}", "materal=x"), "did you mean material?"),
        (("record", "observation", f"object={OBJECT}", "sen=crack"), "did you mean seen?"),
        (("record", "step", "kind=clean"), "write object=NUMBER"),
        (("record", "step", "clean"), "is not of the form FIELD=VALUE"),
        (("record", "person", "name=A", "name=B"), "given twice"),
        (("record", "reading", f"object={OBJECT}", "--over-matching", "x"), "places of a step"),
        (("amend", "place", OBJECT, "S1", "--reason", "x"), "nothing is given to change"),
        (("amend", "place", OBJECT, "S1", "name=x", "--reason", " "), "the reason is empty"),
        (("amend", "place", OBJECT, "S1", "uuid=x", "--reason", "x"), "uuid is never changed"),
        (("amend", "place", OBJECT, "S1", "nme=x", "--reason", "x"), "did you mean name?"),
    ],
)
def test_wrong_use_is_told_in_a_sentence(run: Command, command: tuple[str, ...], said: str) -> None:
    ended = run(*command)
    assert ended.status == 2
    assert said in ended.err
    assert len(ended.err.splitlines()) == 1


@pytest.mark.parametrize(
    "command",
    [
        ("record", "obserwation", "x=y"),
        ("record", "reading", "object=X.2", "value=1", "unit=mm"),
        ("record", "step", "object=X.2", "places=J01", "material=limestone"),
        ("record", "step", f"object={OBJECT}", "--over-matching", "no such words"),
        ("amend", "layer", OBJECT, "L99", "note=x", "--reason", "y"),
        ("amend", "layer", OBJECT, "L1", "note=x", "--reason", "y", "--version", "1"),
    ],
)
def test_what_is_not_there_is_told(run: Command, engine: Engine, command: tuple[str, ...]) -> None:
    before = count(engine, "change")
    ended = run(*command)
    assert ended.status == 1
    assert ended.err
    assert count(engine, "change") == before


@pytest.mark.parametrize(
    "command",
    [
        ("person", "name=Zoe Marsh", "role=mason"),
        ("material", "key=house-wax", "name=House wax"),
        ("term", "list=condition", "term=loose"),
        ("source", "kind=letter", "citation=Letter of the steward"),
        ("object", "number=X.9", "title=Jar"),
        ("component", f"object={OBJECT}", "mark=B50", "kind=block"),
        ("place", f"object={OBJECT}", "mark=S50", "kind=surface", "component=B01"),
        ("observation", f"object={OBJECT}", "place=S1", "seen=grey veil", "presumed=gypsum"),
        ("spot-test", f"object={OBJECT}", "layer=L1", "agent=acetone", "form=swab"),
        ("sighting", f"object={OBJECT}", "layer=L1", "result=seen", "date=2026-11-01"),
        ("sample", f"object={OBJECT}", "place=S1", "kind=sample", "box=4"),
        ("treatment", f"object={OBJECT}", "title=Cleaning"),
        ("batch", "material=paraloid b-72", "lot=7", "concentration=5 %"),
        ("warning", f"object={OBJECT}", "kind=lift", "text=not by the rim"),
        (
            "statement", "table=place", f"object={OBJECT}", "ref=S1", "field=fit",
            "value=tight", "followed=no",
        ),
    ],
    ids=lambda command: command[0],
)  # fmt: skip
def test_any_kind_is_recorded_and_amended(run: Command, command: tuple[str, ...]) -> None:
    ended = run("record", *command, "--json")
    assert ended.status == 0, ended.out
    made = ended.json["records"][-1]
    assert made["kind"] == command[0].replace("-", " ")
    if made["kind"] == "term":  # known by its list and itself
        return
    amended = run(
        "amend", command[0], made["object"] or "-", made["key"], "note=by script",
        "--reason", "a trial", "--version", str(made["version"]), "--json",
    )  # fmt: skip
    assert amended.status == 0, amended.out
    assert amended.json["version"] > made["version"]


def test_a_removal_in_part(run: Command, engine: Engine) -> None:
    ended = run(
        "record", "removal", f"object={OBJECT}", "layers=L1; L2", "extent=part", "date=2026-10-01",
        "standing=routine care", "kept_where=box 4",
    )  # fmt: skip
    assert ended.status == 0, ended.err
    assert [line.split(",")[0] for line in ended.lines[-3:-1]] == ["removal: R1", "removal: R2"]


def test_what_somebody_else_changed_is_not_overwritten(run: Command, engine: Engine) -> None:
    def amend(*words: str) -> Ended:
        return run("amend", "layer", OBJECT, "L1", *words, "--reason", "read again", "--json")

    seen = amend("carrier=water").json["version"]
    theirs = amend("carrier=ethanol", "--who", "Ida Holm")
    clash = amend("carrier=acetone", "--version", str(seen))
    assert clash.status == 1
    (one,) = clash.json["clashes"]
    assert (one["field"], one["shown"], one["mine"], one["theirs"], one["by"]) == (
        "carrier", "water", "acetone", "ethanol", "Ida Holm",
    )  # fmt: skip
    assert clash.json["written"] is False
    assert clash.json["version"] == theirs.json["version"]
    told = run(
        "amend", "layer", OBJECT, "L1", "carrier=acetone", "--reason", "x", "--version", str(seen)
    )
    assert "carrier was changed by Ida Holm" in told.err
    assert "  theirs: ethanol" in told.lines
    other = amend("note=thin", "place=J03; J04", "--version", str(seen))
    assert other.status == 0, other.out  # another field


def test_a_list_is_shown_as_it_was_at_a_version(run: Command, engine: Engine) -> None:
    def amend(places: str, *more: str) -> Ended:
        command = ("amend", "layer", OBJECT, "L1", f"place={places}", "--reason", "x", "--json")
        return run(*command, *more)

    seen = amend("J03; J05").json["version"]
    assert amend("J04").status == 0
    (one,) = amend("J06; J07", "--version", str(seen)).json["clashes"]
    assert (one["shown"], one["theirs"]) == ("J03; J05", "J04")


def test_a_renamed_record_is_named_anew(run: Command) -> None:
    ended = run("amend", "place", OBJECT, "S1", "mark=S01", "--reason", "two digits", "--json")
    assert ended.json["key"] == "S01"


@pytest.mark.parametrize("text", TEXTS)
def test_text_is_kept_as_typed_and_shown_harmlessly(
    run: Command, engine: Engine, text: str
) -> None:
    tried = run(*STEP, "places=S1", f"technique={text}", f"note={text}", "--dry-run")
    wrong = run(*STEP, f"places=Q{text}", f"agent={text}")
    kept = run(*STEP, "places=S1", f"note={text}", "--json")
    amended = run("amend", "place", OBJECT, "S1", f"note={text}", "--reason", f"r {text}")
    assert [tried.status, wrong.status, kept.status, amended.status] == [0, 1, 0, 0]
    for one in (tried, wrong, kept, amended):
        assert show(one.out) == one.out
        assert show(one.err) == one.err
    with reading(engine) as connection:
        assert cells(connection, "interventions", "I2")["note"] == text or not text.strip()
        assert cells(connection, "places", "S1")["note"] == text or not text.strip()
        assert list(verify(raw_of(connection))) == []


@pytest.mark.parametrize("text", TEXTS[::6])
def test_odd_words_are_refused_harmlessly(run: Command, text: str) -> None:
    for words in (("step", f"Q{text}=1"), (f"Q{text}",), ("step", f"object=Q{text}")):
        for as_json in ((), ("--json",)):
            ended = run("record", *words, *as_json)
            assert ended.status in (1, 2)
            assert show(ended.err + ended.out) == ended.err + ended.out
