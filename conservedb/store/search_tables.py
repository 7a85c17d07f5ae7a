"""What can be found by its words: which tables, and which of their columns.

The names of a record are what it is called by (numbers, marks, titles, keys, aliases), its words
are everything else that was written about it.
"""

from __future__ import annotations

from typing import NamedTuple


class Searched(NamedTuple):
    """A table whose rows can be found.

    Attributes:
        names: columns that say what the record is called; folded ones where there are any.
        words: columns with what was written about it.
        aliases: tables of further names of it (`alias_folded`).
        sparse: only rows with something in one of `words` can be found, so that the many
            rows without any cost nothing.
    """

    table: str
    names: tuple[str, ...]
    words: tuple[str, ...] = ()
    aliases: tuple[str, ...] = ()
    sparse: bool = False


SEARCHED = (
    Searched("object", ("number_folded", "title_folded"), ("kind", "maker", "whereabouts", "note")),
    Searched("component", ("mark_folded", "name_folded"), ("kind", "material_words", "note")),
    Searched("place", ("mark_folded", "name_folded"), ("kind", "geometry", "access", "note")),
    Searched("material", ("key", "name_folded"), ("note",), ("material_alias", "trade_name")),
    Searched("material_class", ("key", "name_folded")),
    Searched("person", ("name_folded",), ("role", "organisation", "note"), ("person_alias",)),
    Searched("source", ("ref", "citation_folded"), ("kind", "note")),
    Searched(
        "treatment",
        ("ref", "title"),
        ("purpose", "status", "result", "recommendations", "note"),
    ),
    Searched(
        "intervention",
        ("ref",),
        ("kind", "technique", "circumstances", "methods", "deviation", "note"),
    ),
    Searched("plan", ("ref",), ("justification", "alternatives", "risks", "note")),
    Searched("planned_step", ("ref",), ("kind", "technique", "material_words", "note")),
    Searched("warning", ("ref",), ("kind", "text", "note")),
    Searched("observation", ("ref",), ("condition", "seen", "presumed", "extent", "note")),
    Searched(
        "sample", ("ref",), ("kind", "what", "box", "remainder", "result", "analysed_by", "note")
    ),
    Searched("reading", ("ref",), ("quantity", "instrument", "spot", "note")),
    Searched("spot_test", ("ref",), ("wet", "dry", "next_day", "swab_colour", "tide_line", "note")),
    Searched("layer", ("ref",), ("material_words", "carrier", "note"), sparse=True),
    Searched(
        "removal",
        ("ref",),
        ("cause", "residue", "kept_what", "kept_where", "note"),
        sparse=True,
    ),
    Searched("agent", ("ref",), ("material_words", "cleared_how", "note"), sparse=True),
    Searched("joint_event", ("ref",), ("location", "note"), sparse=True),
    Searched("sighting", ("ref",), ("note",), sparse=True),
    Searched("whereabouts", ("ref",), ("place_name", "note")),
    Searched("authorisation", ("ref",), ("scope", "conditions", "evidence", "note")),
    Searched("acceptance", ("ref",), ("reason", "note")),
    Searched("near", ("ref",), ("path", "note")),
    Searched("statement", ("key",), ("value", "reason", "note")),
    Searched("batch", ("ref", "lot"), ("material_words", "concentration", "carrier", "note")),
    Searched("term", ("term",), ("list", "definition", "note")),
    Searched("rule", ("key", "title"), ("sentence", "note")),
    Searched("climate", ("key", "room_folded"), ("use", "note")),
    Searched("saved_question", ("name_folded",), ("conditions", "note")),
    Searched("standing_approval", ("ref",), ("conditions", "note")),
)
"""In the order in which what was found is listed."""
