"""What a field asks for when letters are typed into it, and the form that adds what is missing."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from conservedb.exchange.cells import split_list, unescape
from conservedb.store.keys import fold
from conservedb.tui.about import About
from conservedb.tui.recording import Completion

_SHARE = re.compile(r"\s[\d.,]+\s*%?$")
_SINGULAR = {"layers": "layer", "planned steps": "planned step", "liquid": "material"}
_KEY = re.compile(r"[^a-z0-9]+")
_ADDED = {
    "material": ("material", "name"),
    "liquid": ("material", "name"),
    "person": ("person", "name"),
    "people": ("person", "name"),
    "batch": ("batch", "ref"),
    "place": ("place", "mark"),
    "places": ("place", "mark"),
    "component": ("component", "mark"),
    "components": ("component", "mark"),
    "source": ("source", "citation"),
    "treatment": ("treatment", "title"),
    "technique": ("term", "term"),
    "condition": ("term", "term"),
}
"""What is looked up -> the kind of record that adds it, and the field that takes the letters."""


def word(lookup: str) -> str:
    """The word by which the question is put."""
    return _SINGULAR.get(lookup, lookup)


def is_mixture(typed: str) -> bool:
    """Whether it is one part of a mixture with its share: "acetone 50"."""
    return ";" in typed or bool(_SHARE.search(typed))


def places(about: About, values: Mapping[str, str]) -> tuple[str, ...]:
    """The locations that the form is about: those it names, else those it was opened for."""
    named = values.get("places") or values.get("place") or ""
    return tuple(map(unescape, split_list(named))) or about.places


def same_name(text: str, who: str) -> bool:
    """Whether a name is that of the writer."""
    return bool(who) and fold(text) == fold(who)


def with_writer(
    lookup: str, typed: str, who: str, found: Iterable[Completion]
) -> tuple[Completion, ...]:
    """What was found, and the writer, who may not be on record yet."""
    known = tuple(found)
    begun = who and lookup in ("person", "people") and fold(who).startswith(fold(typed))
    if not begun or any(same_name(one.text, who) for one in known):
        return known
    you = Completion(who, f"{who}  you", exact=same_name(typed, who))
    return (you, *(one for one in known if not one.near))


def date_words(text: str) -> str:
    """How the words of a date were read; "" where they were not understood."""
    from conservedb.dates import DateError, read
    from conservedb.questions.basics import When
    from conservedb.tui.wording import bounds_words

    try:
        found = When(*read(text))
    except DateError:
        return ""
    return bounds_words(found)


def new_about(about: About, lookup: str, typed: str) -> About | None:
    """About the record that is not there yet, with the letters typed in it."""
    added = _ADDED.get(lookup)
    if added is None:
        return None
    kind, field = added
    given = {field: typed}
    if kind == "material" and typed:
        given["key"] = _KEY.sub("-", typed.casefold()).strip("-")
    if kind == "term":
        given["list"] = lookup
    new = about.new(kind, **given)
    return About(new.database, kind, new.number, given=new.given)
