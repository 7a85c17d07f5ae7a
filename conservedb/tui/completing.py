"""What a field asks for when letters are typed into it, and the form that adds what is missing."""

from __future__ import annotations

import re
from collections.abc import Mapping

from conservedb.exchange.cells import split_list, unescape
from conservedb.tui.about import About

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
