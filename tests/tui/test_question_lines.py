"""A question as lines: told from the head down, changed at a line, and still the same question."""

from __future__ import annotations

import pytest

from conservedb.knowledge.research import And, Condition, Not, Research, Tree
from conservedb.knowledge.research_words import read, say_conditions
from conservedb.tui import question_lines as lines
from conservedb.tui.question_lines import ROOT, Path

WORDS = "role: fill and not (person: Orde or kind: join) and state: there on 1950"


def tree(words: str) -> Tree:
    return lines.grouped(read(words).where)


def said(changed: Tree) -> str:
    return say_conditions(Research("layers", changed))


def test_each_condition_is_a_line_below_its_group() -> None:
    assert [(one.path, one.joins, one.said) for one in lines.lines_of(tree(WORDS))] == [
        ((), "", "all of these hold:"),
        ((0,), "", "its role is “fill”"),
        ((1,), "and", "none of these holds:"),
        ((1, 0), "", "“Orde” took part in the intervention"),
        ((1, 1), "or", "the intervention is of the kind “join”"),
        ((2,), "and", "at the close of “1950” it is there, wholly or in part"),
    ]


def test_nothing_asked_is_one_line() -> None:
    assert [one.said for one in lines.lines_of(And())] == ["all on record"]


@pytest.mark.parametrize(
    ("path", "now"),
    [
        (ROOT, f"{WORDS} and aim: remedial"),
        ((0,), WORDS.replace("fill and", "fill and aim: remedial and")),
        ((1,), WORDS.replace("join)", "join or aim: remedial)")),
        ((1, 0), WORDS.replace("Orde or", "Orde or aim: remedial or")),
    ],
)
def test_a_condition_is_added_where_the_cursor_is(path: Path, now: str) -> None:
    new = Condition("aim", "remedial")
    changed, at = lines.added(tree(WORDS), path, new)
    assert said(changed) == now
    assert lines.at(changed, at) == new


@pytest.mark.parametrize(
    ("path", "now"),
    [
        (ROOT, ""),
        ((0,), WORDS.removeprefix("role: fill and ")),
        ((1,), "role: fill and state: there on 1950"),
        ((1, 1), "role: fill and not (person: Orde) and state: there on 1950"),
    ],
)
def test_a_line_is_taken_away(path: Path, now: str) -> None:
    assert said(lines.removed(tree(WORDS), path)) == now


def test_of_a_group_left_empty_nothing_stays() -> None:
    left = lines.removed(lines.removed(tree(WORDS), (1, 0)), (1, 0))
    assert said(left) == "role: fill and state: there on 1950"
    assert lines.removed(lines.removed(left, (0,)), (0,)) == And()


@pytest.mark.parametrize(
    ("change", "path", "now"),
    [
        (lines.negated, (0,), f"not {WORDS}"),
        (lines.negated, (1,), WORDS.replace("not ", "")),
        (lines.switched, (1, 0), WORDS.replace(" or ", " and ")),
        (
            lines.bracketed,
            (1,),
            "role: fill and person: Orde and kind: join and state: there on 1950",
        ),
        (lines.surer, (0,), WORDS.replace("fill", "certainly fill", 1)),
    ],
)
def test_a_line_is_changed(change: lines.Change, path: Path, now: str) -> None:
    assert said(change(tree(WORDS), path)) == now


def test_what_is_changed_twice_is_as_before() -> None:
    for change in (lines.negated, lines.switched, lines.surer):
        for line in lines.lines_of(tree(WORDS)):
            once = change(tree(WORDS), line.path)
            assert change(once, line.path) == tree(WORDS)
    assert lines.negated(tree(WORDS), ROOT) == Not(tree(WORDS))


def test_nothing_asked_stays_so() -> None:
    for change in (lines.negated, lines.switched, lines.bracketed, lines.surer, lines.removed):
        assert change(And(), ROOT) == And()


def test_a_condition_in_a_group_of_its_own_can_be_joined_the_other_way() -> None:
    alone = lines.bracketed(tree("role: fill and kind: join"), (1,))
    assert said(alone) == "role: fill and (kind: join)"
    joined, _ = lines.added(alone, (1,), Condition("aim", "remedial"))
    assert said(joined) == "role: fill and (kind: join or aim: remedial)"


HAVING = "object: A.1 and has (role: fill and kind: join) and has none (role: wax)"


def rows_tree(words: str) -> Tree:
    return lines.grouped(read(f"objects where {words}").where)


def test_what_a_row_has_is_a_group_of_its_own() -> None:
    assert [(one.path, one.joins, one.said) for one in lines.lines_of(rows_tree(HAVING))] == [
        ((), "", "all of these hold:"),
        ((0,), "", "the object has the number, or the words in its title, “A.1”"),
        ((1,), "and", lines.HAS),
        ((1, 0), "", "its role is “fill”"),
        ((1, 1), "and", "the intervention is of the kind “join”"),
        ((2,), "and", lines.HAS_NONE),
        ((2, 0), "", "its role is “wax”"),
    ]


@pytest.mark.parametrize(
    ("words", "path", "now"),
    [
        ("role: fill and kind: join", (0,), "has (role: fill) and kind: join"),
        ("role: fill and kind: join", ROOT, "has (role: fill and kind: join)"),
        ("role: fill or kind: join", ROOT, "has (role: fill or kind: join)"),
        ("not role: fill and kind: join", (0,), "has none (role: fill) and kind: join"),
        ("has (role: fill) and kind: join", (0,), "role: fill and kind: join"),
        ("has (role: fill) and kind: join", (0, 0), "has (role: fill) and kind: join"),
        ("has (role: fill) and kind: join", ROOT, "has (role: fill) and kind: join"),
        ("", ROOT, ""),
    ],
)
def test_a_line_is_asked_of_what_a_row_has(words: str, path: Path, now: str) -> None:
    tree = rows_tree(words) if words else And()
    assert said(lines.asked_to_have(tree, path)) == now


def test_what_a_row_has_is_changed_as_any_group() -> None:
    tree = rows_tree("has (role: fill and kind: join) and date: 1950")
    assert said(lines.negated(tree, (0,))) == "has none (role: fill and kind: join) and date: 1950"
    assert said(lines.switched(tree, (0, 1))) == "has (role: fill or kind: join) and date: 1950"
    assert said(lines.removed(tree, (0, 1))) == "has (role: fill) and date: 1950"
    added, at = lines.added(tree, (0, 0), Condition("aim", "remedial"))
    assert said(added) == "has (role: fill and aim: remedial and kind: join) and date: 1950"
    assert at == (0, 1)
