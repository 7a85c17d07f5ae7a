"""A researcher's question as lines, one for each condition, and what can be changed at a line.

A line is named by its path: how many parts stand before it, in the whole and then in each group.
What is negated is one line with what it negates.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import NamedTuple, TypeAlias

from conservedb.knowledge.research import And, Condition, Has, Not, Or, Tree, asks_has
from conservedb.knowledge.research_told import sentence

Path: TypeAlias = tuple[int, ...]
Group: TypeAlias = And | Or | Has
Change: TypeAlias = Callable[[Tree, Path], Tree]
ROOT: Path = ()
HAS = "it has something that fits all of these:"
HAS_NONE = "it has nothing on record that fits all of these:"


class Line(NamedTuple):
    """A condition, or the head of a group.

    Attributes:
        joins: what leads over from the line before: "and", "or", or "" at the first.
        said: the sentence of a condition; what holds of a group.
        is_group: whether lines below belong to it.
    """

    path: Path
    joins: str
    said: str
    is_group: bool


def grouped(tree: Tree) -> Group:
    """The whole as a group, to which conditions can be added."""
    return tree if isinstance(tree, And | Or) else And((tree,))


def lines_of(tree: Tree) -> tuple[Line, ...]:
    """The whole question, from its head down."""
    return tuple(_lines(tree, ROOT, ""))


def _lines(tree: Tree, path: Path, joins: str) -> Iterator[Line]:
    bare, negations = _bare(tree)
    if isinstance(bare, Condition):
        yield Line(path, joins, f"{'not that ' * negations}{sentence(bare)}", is_group=False)
        return
    yield Line(path, joins, _head(bare, negations), is_group=True)
    word = "or" if isinstance(bare, Or) else "and"
    for index, part in enumerate(bare.parts):
        yield from _lines(part, (*path, index), word if index else "")


def _head(group: Group, negations: int) -> str:
    if not group.parts:
        return "all on record"
    if isinstance(group, Has):
        return HAS if negations % 2 == 0 else HAS_NONE
    if isinstance(group, Or) and negations == 1:
        return "none of these holds:"
    holds = "all of these hold:" if isinstance(group, And) else "at least one of these holds:"
    return f"{'not ' * negations}{holds}"


def _bare(tree: Tree) -> tuple[Condition | Group, int]:
    """What stands below its negations, and how many these are."""
    negations = 0
    while isinstance(tree, Not):
        tree, negations = tree.part, negations + 1
    return tree, negations


def at(tree: Tree, path: Path) -> Condition | Group:
    """What a line is about, without its negations."""
    bare, _ = _bare(tree)
    for index in path:
        assert not isinstance(bare, Condition)
        bare, _ = _bare(bare.parts[index])
    return bare


def added(tree: Tree, path: Path, part: Tree) -> tuple[Tree, Path]:
    """With one more part, at the end of the group at a line or right below a condition; its path.

    Args:
        path: of the line.
    """
    here = at(tree, path)
    if isinstance(here, Condition):
        above, index = path[:-1], path[-1] + 1
    else:
        above, index = path, len(here.parts)
    return _with_parts(tree, above, lambda parts: (*parts[:index], part, *parts[index:])), (
        *above,
        index,
    )


def removed(tree: Tree, path: Path) -> Tree:
    """Without a line and all that belongs to it; of a group left empty nothing stays."""
    if path == ROOT:
        return And()
    index = path[-1]
    left = _with_parts(tree, path[:-1], lambda parts: (*parts[:index], *parts[index + 1 :]))
    above = at(left, path[:-1])
    return left if isinstance(above, Condition) or above.parts else removed(left, path[:-1])


def replaced(tree: Tree, path: Path, condition: Condition) -> Tree:
    """With another condition at a line; whether it is negated stays."""
    return _changed(tree, path, lambda _: condition)


def negated(tree: Tree, path: Path) -> Tree:
    """With the line negated, or no longer so; of nothing asked there is nothing to negate."""
    if path == ROOT:
        return _turned(tree) if tree != And() else tree
    index = path[-1]
    return _with_parts(
        tree,
        path[:-1],
        lambda parts: (*parts[:index], _turned(parts[index]), *parts[index + 1 :]),
    )


def _turned(tree: Tree) -> Tree:
    bare, negations = _bare(tree)
    return bare if negations else Not(bare)


def switched(tree: Tree, path: Path) -> Tree:
    """With "or" for "and", or "and" for "or", in the group at a line or of a condition."""
    above = path[:-1] if isinstance(at(tree, path), Condition) else path

    def turned(group: Condition | Group) -> Tree:
        assert not isinstance(group, Condition)
        if isinstance(group, Has):
            return Has((Or(group.parts),)) if len(group.parts) > 1 else group
        return Or(group.parts) if isinstance(group, And) else And(group.parts)

    return _changed(tree, above, turned) if tree != And() else tree


def bracketed(tree: Tree, path: Path) -> Tree:
    """With a condition in a group of its own, joined the other way; a group is dissolved."""
    here = at(tree, path)
    if path == ROOT:
        return tree
    if isinstance(here, Condition):
        above = at(tree, path[:-1])
        return _changed(tree, path, lambda c: And((c,)) if isinstance(above, Or) else Or((c,)))
    index = path[-1]
    return _with_parts(
        tree, path[:-1], lambda parts: (*parts[:index], *here.parts, *parts[index + 1 :])
    )


def asked_to_have(tree: Tree, path: Path) -> Tree:
    """With what is at a line asked of a layer or use by itself; once more, no longer.

    At the head of the whole, all of it is asked so. Within what is asked so, nothing changes.
    """
    here = at(tree, path)
    if isinstance(here, Has):
        return bracketed(tree, path)
    within = any(isinstance(at(tree, path[:end]), Has) for end in range(len(path)))
    if here == And() or within or asks_has(here):
        return tree
    if path == ROOT:
        return And((_having(tree),))
    return _changed(tree, path, _having)


def _having(tree: Tree) -> Has:
    return Has(tree.parts if isinstance(tree, And) else (tree,))


def surer(tree: Tree, path: Path) -> Tree:
    """With only what is certain at a condition, or with what is possible too."""
    here = at(tree, path)
    if not isinstance(here, Condition):
        return tree
    return replaced(tree, path, replace(here, certainly=not here.certainly))


def _with_parts(
    tree: Tree, path: Path, change: Callable[[tuple[Tree, ...]], tuple[Tree, ...]]
) -> Tree:
    """With other parts in the group at a line."""

    def changed(group: Condition | Group) -> Tree:
        assert not isinstance(group, Condition)
        return replace(group, parts=change(group.parts))

    return _changed(tree, path, changed)


def _changed(tree: Tree, path: Path, change: Callable[[Condition | Group], Tree]) -> Tree:
    """With something else at a line, below the negations that stand there."""
    if isinstance(tree, Not):
        return Not(_changed(tree.part, path, change))
    if path == ROOT:
        return change(tree)
    assert not isinstance(tree, Condition)
    index, below = path[0], path[1:]
    part = _changed(tree.parts[index], below, change)
    return replace(tree, parts=(*tree.parts[:index], part, *tree.parts[index + 1 :]))
