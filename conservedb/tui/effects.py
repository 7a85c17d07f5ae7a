"""What an option does to a layer, as a sign and a word: on the target wanted, nearby feared."""

from __future__ import annotations

from textual.content import Content

from conservedb.knowledge.plan import Option, Reading
from conservedb.tui.text import QUIET, STRONG, UNSURE, WARNING, plain

SIGNS = {
    "dissolves": "●",
    "mobilises": "◐",
    "swells": "◇",
    "softens": "≈",
    "attacked": "✖",
    "undecided": "?",
    "cannot tell": "?",
    "tested but for less": "?",
    "no effect expected": "○",
    "no effect when tested": "○",
}
SHORT = {
    "aged material": "aged",
    "published, fresh material": "fresh",
    "Hansen prediction": "prediction",
    "from memory, not confirmed": "from memory",
    "nothing recorded": "none",
}
"""Kinds of evidence where there is little room."""
BRIEF = {
    "no effect expected": "none expected",
    "no effect when tested": "none when tested",
    "tested but for less": "tested for less",
}
"""Effects where there is little room, under a heading that says what they are."""
_DOUBTS = ("undecided", "cannot tell", "tested but for less")


def effect_words(effect: str, *, wanted: bool, short: bool = False) -> Content:
    """A sign and the word; doubt and harm are set off, an effect that is wanted is strong."""
    if effect in _DOUBTS:
        style = UNSURE
    elif effect.startswith("no effect"):
        style = UNSURE if wanted else ""
    else:
        style = STRONG if wanted else WARNING
    words = BRIEF.get(effect, effect) if short else effect
    return plain(f"{SIGNS.get(effect, '?')} {words}", style)


def evidence_words(evidence: str, *, room: int) -> Content:
    """A kind of evidence; what is remembered and not confirmed is set off."""
    style = UNSURE if evidence.startswith("from memory") else QUIET
    words = evidence if len(evidence) <= room else SHORT.get(evidence, evidence)
    return plain(words, style)


def worst_nearby(option: Option, target: str) -> Reading | None:
    """The worst reading of all that should stay, None where nothing was judged.

    Args:
        target: the layer that is to come off; over a barrier it is among the neighbours.
    """
    from conservedb.knowledge.evidence import worst_of

    readings = [one.reading for one in option.neighbours if one.layer != target]
    return worst_of(readings) if readings else None
