"""What was perhaps meant: parts of words in names, and words that are nearly those typed."""

from __future__ import annotations

import difflib
import itertools
from collections.abc import Callable, Sequence
from typing import Any

from sqlalchemy import Connection, Table, bindparam, func, select
from sqlalchemy.sql.selectable import Select

from conservedb.questions.asking import Question
from conservedb.questions.find_refs import unwritten_rows
from conservedb.questions.find_words import letters, parts
from conservedb.records.every import metadata
from conservedb.store import search
from conservedb.store.keys import fold
from conservedb.store.search_tables import SEARCHED

SHORTEST = 4
"""Fewer letters than these stand inside of too many words, and are like too many."""
_NEWEST = 50_000
"""Of the newest so many rows of a table the names are looked through."""
_LISTED = 2000
"""Of the newest so many rows the names are held against words that nothing begins with."""
_MOST = 60
_OFFERED = 3
_ALIKE = 0.75
_TRIED = 24


def _named() -> list[tuple[str, Table, str, str]]:
    """Table of the record, table and column of a name of it, and the column of the record's key."""
    found = []
    for one in SEARCHED:
        table = metadata.tables[one.table]
        names = [(table, name, "id") for name in one.names if name not in ("ref", "key")]
        links = [(metadata.tables[a], "alias_folded", f"{one.table}_id") for a in one.aliases]
        found += [(one.table, *name) for name in (*names, *links) if one.table != "statement"]
    return found


def _newest(table: Table, name: str, key: str, rows: int) -> Select[Any]:
    newest = select(func.max(table.c[key]) - rows).scalar_subquery()
    return select(table.c[key].label("record"), table.c[name].label("name")).where(
        table.c[key] > newest
    )


_INSIDE = tuple(
    (
        owner,
        Question(
            _newest(table, name, key, _NEWEST)
            .where(func.instr(table.c[name], bindparam("inside")) > 0)
            .order_by(table.c[key].desc())
            .limit(_MOST)
        ),
    )
    for owner, table, name, key in _named()
)
_NAMES = tuple(
    Question(_newest(table, name.removesuffix("_folded"), key, _LISTED))
    for _, table, name, key in _named()
)
STATEMENTS = (*(question for _, question in _INSIDE), *_NAMES)


def inside(connection: Connection, words: Sequence[str]) -> dict[str, list[int]]:
    """By table, records with the longest of the words in a name; a short one finds none."""
    longest = fold(max(words, key=len))
    found: dict[str, list[int]] = {}
    if len(longest) >= SHORTEST:
        for table, question in _INSIDE:
            rows = question.all(connection, inside=longest)
            if rows:
                found.setdefault(table, []).extend(row.record for row in rows)
    return found


def instead(
    connection: Connection,
    words: Sequence[str],
    remark: str,
    together: Callable[[Sequence[str]], bool],
) -> tuple[tuple[str, ...], str]:
    """For words that find nothing: others that find something, and a remark.

    They differ from those typed where these find nothing.

    Args:
        together: whether several records of one object have all of some words.
    """
    choices: list[list[str]] = []
    known: dict[str, str] = {}
    for word in words:
        if search.matching(connection, (word,), most=1) or any(unwritten_rows(connection, word)):
            choices.append([word])
            continue
        typed, alike = letters(word)[:100], list[str]()
        if len(typed) >= SHORTEST:
            known = known or _known(connection)
            alike = difflib.get_close_matches(typed, known, _OFFERED, _ALIKE)
        choices.append([known[one] for one in alike])
    if all(choice == [word] for choice, word in zip(choices, words, strict=True)):
        return (), remark or "each of these words is on record, but no record has all of them"
    tried = list(itertools.islice(itertools.product(*choices), _TRIED))
    offered = (" ".join(one) for one in tried if search.matching(connection, one, most=1))
    near = tuple(itertools.islice(offered, _OFFERED))
    if not near:
        near = tuple(" ".join(one) for one in tried[:_OFFERED] if together(one))
    return near, remark


def _known(connection: Connection) -> dict[str, str]:
    """The words of the newest names: their letters alone, and as they are written."""
    rows = (row for question in _NAMES for row in question.all(connection) if row.name)
    written = {word for row in rows for word in row.name.split()}
    return {letters(part): part for word in sorted(written) for part in parts(word)}
