"""Where a material lies or may lie: the certain and the possible apart."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection

from conservedb.questions.answers import NoSuch
from conservedb.questions.basics import Ambiguous
from conservedb.questions.uses import uses
from conservedb.questions.uses_answers import UsesAnswer
from tests.questions.conftest import day


def ask(connection: Connection, word: str, on: str = "today") -> UsesAnswer:
    return uses(connection, word, day(on))


def certain(answer: UsesAnswer) -> list[str]:
    return [f"{row.object} {row.place} {row.layer} {row.state}" for row in answer.layers_certain]


def possible(answer: UsesAnswer) -> list[str]:
    return [f"{row.object} {row.place} {row.layer} {row.state}" for row in answer.layers_possible]


def test_a_material(connection: Connection) -> None:
    answer = ask(connection, "epoxy")
    assert (answer.kind, answer.key, answer.name) == ("material", "epoxy", "Epoxy adhesive")
    assert certain(answer) == ["Q.1 J1 L3 present", "Q.1 S1 L5 gone"]
    # L6: nobody knows what it is, and a statement says epoxy; it may lie at either place.
    assert possible(answer) == ["Q.1 S1 L6 uncertain", "Q.1 M1 L6 uncertain"]
    assert answer.layers_certain[0].laid.edtf == "1989-05-18"  # of its intervention
    assert answer.layers_possible[0].possible == ("present",)


def test_states_are_those_of_the_day(connection: Connection) -> None:
    # L3 came in 1989: in 1985 it is no use of epoxy, neither certain nor possible.
    assert certain(ask(connection, "epoxy", "1985")) == []
    assert not [one for one in possible(ask(connection, "epoxy", "1985")) if " L3 " in one]
    assert certain(ask(connection, "epoxy", "1990")) == ["Q.1 J1 L3 present"]
    # L5 is dated "c. 1950": while it was there, that is only possible.
    assert "Q.1 S1 L5 present" in possible(ask(connection, "epoxy", "1985"))
    assert "Q.1 S1 L5 uncertain" in possible(ask(connection, "epoxy", "1995-06-01"))


def test_a_rival_statement_is_possible_only(connection: Connection) -> None:
    answer = ask(connection, "shellac")
    assert certain(answer) == ["Q.1 J2 L4 present"]
    # L3 is followed as epoxy, a letter says shellac; L8 is "some resin", inferred.
    assert possible(answer) == ["Q.1 J1 L3 present", "Q.1 S1 L8 present"]


def test_a_class_takes_in_what_is_below_it(connection: Connection) -> None:
    answer = ask(connection, "resin")
    assert answer.kind == "material class"
    assert certain(answer) == ["Q.1 J1 L3 present", "Q.1 J2 L4 present", "Q.1 S1 L5 gone"]
    assert [row.layer for row in answer.layers_possible] == ["L6", "L6", "L8", "L1"]
    assert answer.layers_possible[-1].object == "Q.2"  # its place is not recorded
    assert ask(connection, "Epoxy Resins").key == "epoxy-resin"


def test_use_as_an_agent(connection: Connection) -> None:
    answer = ask(connection, "acetone")
    (use,) = answer.agents_certain
    assert (use.object, use.intervention, use.places) == ("Q.1", "i1980", ("S1",))
    assert (use.date.edtf, use.cleared) == ("1980", "")
    assert [u.agent for u in ask(connection, "epoxy").agents_certain] == ["g2"]
    assert [u.agent for u in ask(connection, "resin").agents_certain] == ["g2"]


def test_unidentified_layers_and_recipes_are_counted_apart(connection: Connection) -> None:
    answer = ask(connection, "shellac")
    assert answer.unidentified == 2  # L6, L7
    assert answer.recipes == ("lacquer",)


def test_an_ambiguous_word_is_offered_with_its_meanings(connection: Connection) -> None:
    with pytest.raises(Ambiguous) as raised:
        ask(connection, "Glue")
    assert raised.value.meanings == (("Epoxy adhesive", "epoxy"), ("Shellac", "shellac"))
    assert str(raised.value) == (
        "'Glue' can mean Epoxy adhesive (epoxy) or Shellac (shellac);"
        " ask for one of them by the word in brackets"
    )
    assert ask(connection, "lac").key == "shellac"


def test_an_unknown_word(connection: Connection) -> None:
    with pytest.raises(NoSuch, match="no material or class 'shelac' on record; did you mean shel"):
        ask(connection, "shelac")
