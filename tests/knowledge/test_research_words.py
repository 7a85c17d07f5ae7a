"""The words of a researcher's question: read, written back, told, and refused with a reason."""

from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from conservedb.knowledge.research import (
    FIELDS,
    ROWS,
    STATES,
    And,
    Condition,
    Has,
    Not,
    Or,
    Research,
    Tree,
    on_rows,
)
from conservedb.knowledge.research_told import describe
from conservedb.knowledge.research_words import AskError, read, read_conditions, say, say_conditions
from conservedb.records.research import RESEARCH_ROWS
from tests.nasty import NASTY

READ = {
    "": None,
    "layers": Research("layers"),
    "objects": Research("objects"),
    "material: shellac": Research("layers", Condition("material", "shellac")),
    'Places WHERE Material: "a (b) and ""c"""': Research(
        "places", Condition("material", 'a (b) and "c"')
    ),
    'objects where material: "cellulose nitrate" and state: there on 1950'
    ' and not (person: "W. Orde" or kind: join)': Research(
        "objects",
        And(
            (
                Condition("material", "cellulose nitrate"),
                Condition("state", "there", "1950"),
                Not(Or((Condition("person", "W. Orde"), Condition("kind", "join")))),
            )
        ),
    ),
    "role: fill or role: wax and kind: join": Research(
        "layers",
        Or(
            (
                Condition("role", "fill"),
                And((Condition("role", "wax"), Condition("kind", "join"))),
            )
        ),
    ),
    "date: between 1919 and 1939 and kind: take apart": Research(
        "layers", And((Condition("date", "between 1919 and 1939"), Condition("kind", "take apart")))
    ),
    "date: certainly 1930s": Research("layers", Condition("date", "1930s", certainly=True)),
    "date: possibly not before 1950": Research("layers", Condition("date", "not before 1950")),
    "state: not yet on 14 June 1950": Research(
        "layers", Condition("state", "not yet", "14 June 1950")
    ),
    "state: in place in 1950": Research("layers", Condition("state", "in place", "1950")),
    "state: there now": Research("layers", Condition("state", "there")),
    "state: ever": Research("layers", Condition("state", "there", "ever")),
    'state: gone on "between 1919 and 1939"': Research(
        "layers", Condition("state", "gone", "between 1919 and 1939")
    ),
    'technique: "certainly"': Research("layers", Condition("technique", "certainly")),
    "object: SQ.1902.7": Research("layers", Condition("object", "SQ.1902.7")),
    "part material: oak and object kind: chest": Research(
        "layers", And((Condition("part material", "oak"), Condition("object kind", "chest")))
    ),
    "not not as: Agent": Research("layers", Not(Not(Condition("as", "agent")))),
}


@pytest.mark.parametrize("text", [text for text in READ if text])
def test_questions_are_read(text: str) -> None:
    assert read(text) == READ[text]


REFUSED = {
    "": "nothing is asked",
    "materiel: shellac": "no field 'materiel'; did you mean material? (at character 1",
    "role: fill and kind": "a field, a colon and a value",
    "role: fill kind: join": "double quotes",
    "role: fill not kind: join": 'and or or before "not"',
    "role:": 'a value is missing after "role:" (at the end)',
    'role: " "': 'a value is missing after "role:"',
    "(role: fill": "close it",
    "role: fill)": "join conditions",
    'role: "fill': "a double quote is open",
    'role: a "b"': "in double quotes as a whole",
    "objects where": 'missing after "where"',
    "role: fill or": "a field, a colon and a value",
    "date: 30 Feb 1950": "no such day",
    "date: some time": "no date to ask for",
    "date: 1985/": "no date to ask for",
    "state: broken": "the state is none of there, in place",
    "state: gone ever": '"there ever"',
    "state: there 1950": 'stands a day: "there on 1950"',
    "state: there on before 1950": "two known ends",
    "as: glue": "neither layer nor agent",
    "(" * 500: "deep",
    " and ".join(["role: fill"] * 100): "more than 60 conditions",
    "role: \udcff": "cannot be stored",
}


@pytest.mark.parametrize("text", REFUSED, ids=lambda text: ascii(text)[:40])
def test_what_cannot_be_read_is_told_in_one_sentence(text: str) -> None:
    with pytest.raises(AskError) as refused:
        read(text)
    assert REFUSED[text] in str(refused.value)
    assert "\n" not in str(refused.value)


_values = st.one_of(
    st.sampled_from(NASTY),
    st.text(st.characters(codec="utf-8"), min_size=1, max_size=20),
    st.sampled_from(("and", "or not", "not yet", "certainly x", " a  b ", 'x"y', "between", "a:b")),
).filter(lambda value: bool(value.strip()))
_days = st.sampled_from(("", "1950", "14 June 1950", "between 1919 and 1939", "193X"))
_plain = sorted(set(FIELDS) - {"state", "date", "as"})
_conditions = st.one_of(
    st.builds(Condition, st.sampled_from(_plain), _values, st.just(""), st.booleans()),
    st.builds(Condition, st.just("state"), st.sampled_from(STATES), _days, st.booleans()),
    st.builds(
        Condition,
        st.just("date"),
        st.sampled_from(("1950", "before 1950", "between 1919 and 1939", "not after 1899")),
    ),
    st.builds(Condition, st.just("as"), st.sampled_from(("layer", "agent"))),
    st.just(Condition("state", "there", "ever")),
)


def _larger(trees: st.SearchStrategy[Tree]) -> st.SearchStrategy[Tree]:
    several = st.lists(trees, min_size=2, max_size=4).map(tuple)
    return st.one_of(st.builds(Not, trees), st.builds(And, several), st.builds(Or, several))


_trees = st.recursive(_conditions, _larger, max_leaves=12)


@settings(max_examples=400, deadline=None)
@given(st.builds(Research, st.sampled_from(ROWS), st.one_of(_trees, st.just(And()))))
def test_what_is_said_is_read_as_the_same(research: Research) -> None:
    assert read(say(research)) == research
    assert read_conditions(say_conditions(research)) == research.where
    assert describe(research).endswith(".")


@settings(max_examples=400, deadline=None)
@given(st.text(max_size=60))
def test_any_text_is_read_or_refused(text: str) -> None:
    try:
        research = read(text)
    except AskError:
        return
    assert read(say(research)) == research


def test_a_question_is_told_as_a_sentence() -> None:
    text = (
        'objects where material: "cellulose nitrate" and state: there on 1950'
        ' and not (person: "W. Orde" or kind: join)'
    )
    assert describe(read(text)) == (
        "Objects with something that fits: it is, belongs to, or was called, “cellulose nitrate”,"
        " and at the close of “1950” it is there, wholly or in part, and not that (“W. Orde” took"
        " part in the intervention, or the intervention is of the kind “join”). All of this is"
        " asked of one and the same layer, use or step: objects answer that have such a one,"
        " whatever else they have."
    )
    assert describe(
        read("objects where object kind: chest and has (role: fill) and has none (kind: join)")
    ) == (
        "Objects of which this holds: it has something that fits: (its role is “fill”), and it has"
        " nothing on record that fits: (the intervention is of the kind “join”), and the object is"
        " of the kind “chest”."
    )
    assert describe(read("places where object: A.1")) == (
        "Places of which this holds: the object has the number, or the words in its title, “A.1”."
    )
    assert describe(read("not not role: fill")) == (
        "Layers and uses of agents of which this holds: its role is “fill”."
    )
    assert describe(read("places")) == "Places: all on record."
    assert describe(read("date: certainly 1930s")) == (
        "Layers and uses of agents of which this holds: for certain it was done “1930s”."
    )


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("has (role: fill)", '"has" is asked of places, interventions or objects, not of a layer'),
        ("objects where has role: fill", 'after "has" or "has none" stand conditions in brackets'),
        ("objects where has (has (role: fill))", "cannot stand within another"),
        ("objects where has none ()", "a condition is a field, a colon and a value"),
        ("objects where has (role: fill", "a bracket is open"),
    ],
)
def test_what_rows_have_is_asked_rightly(text: str, problem: str) -> None:
    with pytest.raises(AskError, match=re.escape(problem)):
        read(text)


def test_what_rows_have_and_have_not() -> None:
    fill, join = Condition("role", "fill"), Condition("kind", "join")
    text = "objects where has (role: fill and kind: join) and not has (kind: join)"
    asked = read(text)
    assert asked.where == And((Has((fill, join)), Not(Has((join,)))))
    assert say(asked) == ("objects where has (role: fill and kind: join) and has none (kind: join)")
    assert read(say(asked)) == asked


@pytest.mark.parametrize(
    ("text", "same"),
    [
        ("role: fill and kind: join", "has (role: fill and kind: join)"),
        (
            "role: fill and has none (kind: join) and date: 1950",
            "has none (kind: join) and has (role: fill and date: 1950)",
        ),
        ("object: A.1 and has none (kind: join)", "has none (kind: join) and object: A.1"),
        (
            "object: A.1 or role: fill or kind: join",
            "object: A.1 or has (role: fill or kind: join)",
        ),
        ("not (role: fill or has (kind: join))", "not (has (kind: join) or has (role: fill))"),
        ("not role: fill", "has (not role: fill)"),
        ("not object: A.1", "not object: A.1"),
        ("has none (rule: x)", "not rule: x"),
    ],
)
def test_conditions_joined_by_and_are_asked_of_one_occurrence(text: str, same: str) -> None:
    asked = on_rows(read(f"objects where {text}").where, "objects")
    assert asked == read(f"objects where {same}").where
    assert on_rows(asked, "objects") == asked


def test_every_field_can_be_told() -> None:
    for field in FIELDS:
        value = {"state": "gone", "as": "layer"}.get(field, "xyz")
        told = describe(Research("layers", Condition(field, value)))
        assert "{" not in told
        assert value in told or field == "as"


def test_the_records_know_the_same_rows() -> None:
    assert RESEARCH_ROWS == ROWS
