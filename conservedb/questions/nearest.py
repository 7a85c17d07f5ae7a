"""Near misses: which of some words somebody may have meant by one that is none of them."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import islice

MOST = 3
_ALIKE = 0.6
_COMPARED = 5000
"""Of the first so many names it is asked whether they are nearly spelt so."""
_BEGUN = 2
"""Fewer letters than these begin too many names."""


def nearest(word: str, written: Mapping[str, str], most: int = MOST) -> tuple[str, ...]:
    """What begins as typed, then what has a word that does, then what is nearly spelt so.

    Args:
        word: folded, as `store.keys.fold` does.
        written: each folded name with what is offered for it; of equals the first goes first.
    """
    found: list[str] = []
    if len(word) >= _BEGUN:
        found += [name for name in written if name.startswith(word)]
        found += [name for name in written if f" {word}" in name]
    if len(found) < most:
        from difflib import get_close_matches

        found += get_close_matches(word, islice(written, _COMPARED), most, _ALIKE)
    return tuple(dict.fromkeys(written[name] for name in found))[:most]
