"""A researcher's question told as sentences."""

from __future__ import annotations

from conservedb.knowledge.research import (
    EVER,
    And,
    Condition,
    Has,
    Not,
    Or,
    Research,
    Tree,
    joined,
    on_rows,
)

_ROWS_SAID = {
    "layers": "Layers and uses of agents",
    "places": "Places",
    "interventions": "Interventions",
    "objects": "Objects",
}
_SAID = {
    "material": "it is, belongs to, or was called, {}",
    "role": "its role is {}",
    "kind": "the intervention is of the kind {}",
    "aim": "an aim of the intervention is {}",
    "technique": "the technique has the words {}",
    "person": "{} took part in the intervention",
    "date": "it was done {}",
    "object": "the object has the number, or the words in its title, {}",
    "object kind": "the object is of the kind {}",
    "part material": "the part that bears it is of {}",
    "environment": "the object was then kept: {}",
    "observed": "{} was observed there afterwards",
    "source": "it is known from a source of the kind {}",
    "identified": "it is identified: {}",
    "reversibility": "as a material of its kind it is: {}",
    "rule": "the rule {} is broken by it or where it is",
}
_STATES_SAID = {
    "there": "there, wholly or in part",
    "perhaps": "perhaps there, perhaps not: more than one state is possible",
}


def describe(research: Research) -> str:
    """The question as a sentence to be read aloud."""
    rows = _ROWS_SAID[research.rows]
    if research.where == And():
        return f"{rows}: all on record."
    if research.rows == "layers":
        return f"{rows} of which this holds: {_tell(research.where)}."
    asked = on_rows(research.where, research.rows)
    if isinstance(asked, Has):
        one = joined(And, asked.parts)
        whole = "" if isinstance(one, Condition) else f" {_OF_ONE.format(rows=research.rows)}"
        return f"{rows} with something that fits: {_tell(one)}.{whole}"
    return f"{rows} of which this holds: {_tell(asked)}."


_OF_ONE = """All of this is asked of one and the same layer, use or step: {rows} answer that have \
such a one, whatever else they have."""


def _tell(tree: Tree) -> str:
    if isinstance(tree, Condition):
        told = _tell_condition(tree)
        return f"for certain {told}" if tree.certainly else told
    if isinstance(tree, Has):
        return f"it has something that fits: ({_tell(joined(And, tree.parts))})"
    if isinstance(tree, Not) and isinstance(tree.part, Has):
        inner = _tell(joined(And, tree.part.parts))
        return f"it has nothing on record that fits: ({inner})"
    if isinstance(tree, Not) and isinstance(tree.part, Not):
        return _tell(tree.part.part)
    if isinstance(tree, Not):
        return f"not that {_in_brackets(tree.part)}"
    joining = ", and " if isinstance(tree, And) else ", or "
    return joining.join(map(_in_brackets, tree.parts))


def _in_brackets(tree: Tree) -> str:
    told = _tell(tree)
    return f"({told})" if isinstance(tree, And | Or) else told


def _tell_condition(condition: Condition) -> str:
    if condition.field == "as":
        return "it was laid" if condition.value == "layer" else "it was used and not laid"
    if condition.field != "state":
        return _SAID[condition.field].format(f"\u201c{condition.value}\u201d")
    state = _STATES_SAID.get(condition.value, condition.value)
    if condition.on == EVER:
        return f"it is or was at some time {state}"
    if not condition.on:
        return f"today it is {state}"
    return f"at the close of \u201c{condition.on}\u201d it is {state}"


def sentence(condition: Condition) -> str:
    """One condition, as it is told within the whole question."""
    return _tell(condition)
