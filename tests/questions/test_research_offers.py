"""What a condition may ask for: names on record, words of closed lists, keys of rules."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Connection

from conservedb.demo.build import load
from conservedb.knowledge.research import FIELDS, Condition, Not
from conservedb.knowledge.roles import ROLES
from conservedb.questions.answers import NoSuch
from conservedb.questions.research_meanings import meaning_of
from conservedb.questions.research_offers import closed, completed, ensure_known, offers
from conservedb.store.opening import open_database
from conservedb.tui import hatching

FREE = ("date", "state")
"""Fields of which a value is written, not looked up; a state is chosen and then dated."""


@pytest.fixture(scope="module")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Connection]:
    path: Path = tmp_path_factory.mktemp("offers") / "demo.db"
    load(path)
    engine, _ = open_database(path)
    with engine.connect() as connection:
        yield connection
    engine.dispose()


@pytest.mark.parametrize("field", [field for field in FIELDS if field not in FREE])
def test_whatever_is_offered_can_be_asked_for(demo: Connection, field: str) -> None:
    found = offers(demo, field, "")
    assert found
    for one in found:
        meaning_of(demo, Condition(field, one.text))


def test_both_materials_and_classes_are_offered(demo: Connection) -> None:
    assert {one.text for one in offers(demo, "material", "cellulose")} >= {"cn"}
    assert "no material" not in "".join(one.label for one in offers(demo, "material", "resin"))
    assert len(offers(demo, "part material", "lime")) > 1


def test_letters_choose_among_closed_words(demo: Connection) -> None:
    assert [one.text for one in offers(demo, "aim", "prev")] == ["preventive"]
    assert offers(demo, "aim", "PREVENTIVE")[0].exact
    assert offers(demo, "aim", "nothing such") == ()
    assert "preventive" in closed("aim") and closed("person") == ()


def test_what_is_not_on_record_is_refused(demo: Connection) -> None:
    ensure_known(demo, Not(Condition("material", "shellac")))
    with pytest.raises(NoSuch, match="no material or class 'shelac' on record"):
        ensure_known(demo, Not(Condition("material", "shelac")))


def test_what_was_typed_is_completed_only_where_it_names_nothing(demo: Connection) -> None:
    assert completed(demo, "material", "cellulose nit") == "cn"
    assert completed(demo, "material", "celulose") == "celulose"  # a near miss is not taken
    assert completed(demo, "role", "adh") == "adhesive"
    assert completed(demo, "person", "Orde") == "Orde"  # one person's alone
    assert completed(demo, "person", "Miss") == "Miss"  # two have it: a person chooses
    assert completed(demo, "aim", "prev") == "preventive"


def test_roles_of_the_trade_are_offered_and_drawn() -> None:
    assert {*ROLES, ""} == set(hatching.ROLES)
