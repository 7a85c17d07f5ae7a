"""Finding by words: the one place that knows SQLite's full-text index, FTS5.

The index holds no text of its own: it points at the rows of the view `search_text`, which is made
of one view for each table. Triggers take the words of a row out before it changes and put them
back afterwards. Letters are compared without case and accents by the index itself (`unicode61`),
so that any SQLite program can read and check it. Signs part words: "SQ.1902.7" is "sq", "1902",
"7"; so that "sq19027" is found as well, names stand in it once more without their signs.
"""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, NamedTuple

from conservedb.store.keys import fold
from conservedb.store.problems import DatabaseProblem
from conservedb.store.search_tables import SEARCHED, Searched

if TYPE_CHECKING:
    from sqlalchemy import Connection

INDEX = "search"
TEXT = "search_text"
_COLUMNS = "names, plain, words"
_UNSEEN = "\u061c\u2066\u2067\u2068\u2069"
"""Signs of direction that SQLite takes for letters: its Unicode (6.1) is older than they are."""
_VIRTUAL = (
    f"CREATE VIRTUAL TABLE {INDEX} USING fts5({_COLUMNS}, content='{TEXT}', content_rowid='id',"
    " prefix='1 2 3', tokenize=\"unicode61 remove_diacritics 2 separators"
    f" '{_UNSEEN}'\")"
)
_ROOM = 1 << 40
"""The entries of a table lie together, the first of `SEARCHED` last: there is room for so many."""
JOINED = ".-/_'’"
"""Signs within numbers and marks that somebody may leave out."""
_LETTERS = (("ß", "ss"), ("ﬁ", "fi"), ("ﬂ", "fl"))
"""Letters that `fold` writes as two, and the index does not."""
_WORD = re.compile(r"[^\W_]")
MOST_WORDS = 20


class Entry(NamedTuple):
    """Something found: the table and the row's key in it."""

    table: str
    record: int


_TABLES = tuple(one.table for one in SEARCHED)


def statements() -> Iterator[str]:
    """The text of the index, its views and its triggers, in the order in which they are made."""
    for one in SEARCHED:
        yield f"CREATE VIEW {INDEX}_{one.table} AS\n{_rows(one)}"
    whole = "\nUNION ALL\n".join(
        f"SELECT id + {first(one.table)} AS id, {_COLUMNS} FROM {INDEX}_{one.table}"
        for one in SEARCHED
    )
    yield f"CREATE VIEW {TEXT} AS\n{whole}"
    yield _VIRTUAL
    for one in SEARCHED:
        yield from _triggers(one)


def fill(raw: sqlite3.Connection) -> None:
    """Read the words of all records into the index, inside the caller's transaction."""
    raw.execute(f"INSERT INTO {INDEX} ({INDEX}) VALUES ('rebuild')")


def remove(raw: sqlite3.Connection) -> None:
    """Take the index away, inside the caller's transaction, however damaged it is.

    SQLite drops no index that FTS5 cannot read: of such a one the name goes first, which makes
    plain tables of those it kept its words in.
    """
    try:
        raw.execute(f"DROP TABLE IF EXISTS {INDEX}")
    except sqlite3.DatabaseError:
        raw.execute("PRAGMA writable_schema=ON")
        raw.execute("DELETE FROM sqlite_schema WHERE name = ?", (INDEX,))
        raw.execute("PRAGMA writable_schema=RESET")
    for kept in ("data", "idx", "content", "docsize", "config"):
        raw.execute(f"DROP TABLE IF EXISTS {INDEX}_{kept}")


def rebuild(raw: sqlite3.Connection) -> None:
    """Make the index anew, inside the caller's transaction; its views must be there."""
    remove(raw)
    raw.execute(_VIRTUAL)
    fill(raw)


def check(raw: sqlite3.Connection) -> list[str]:
    """A sentence for each way in which the index is not what the records say.

    It is looked at in a copy: FTS5 counts its own check as writing.
    """
    copy = sqlite3.connect("", isolation_level=None)  # in memory as long as it is small
    try:
        raw.backup(copy)
        return list(_faults(copy))
    except sqlite3.DatabaseError as problem:
        return [f"the search index is damaged ({problem})"]
    finally:
        copy.close()


def _faults(raw: sqlite3.Connection) -> Iterator[str]:
    missing, left = (
        raw.execute(f"SELECT count(*) FROM {one} WHERE id NOT IN (SELECT id FROM {other})")
        for one, other in ((TEXT, f"{INDEX}_docsize"), (f"{INDEX}_docsize", TEXT))
    )
    counts = missing.fetchone()[0], left.fetchone()[0]
    if counts[0]:
        yield f"records that cannot be found by their words: {counts[0]}"
    if counts[1]:
        yield f"records that are no longer there and are still found: {counts[1]}"
    if any(counts):
        return
    try:
        raw.execute(f"INSERT INTO {INDEX} ({INDEX}, rank) VALUES ('integrity-check', 1)")
    except sqlite3.DatabaseError:
        yield "the words in the search index are not those of the records"


def words_of(text: str) -> tuple[str, ...]:
    """The words of what somebody typed that hold a letter or a digit, each once."""
    plain = text.replace("\0", " ")  # where FTS5 would stop reading
    return tuple(dict.fromkeys(word for word in plain.split() if _WORD.search(word)))


def squeezed(word: str) -> str:
    """A word without the signs that numbers and marks are written with."""
    return word.translate({ord(sign): None for sign in JOINED})


def matching(
    connection: Connection,
    words: Sequence[str],
    *,
    most: int,
    names: bool = False,
    below: int | None = None,
) -> list[int]:
    """Entries in which every word begins some word, the newest of the first table first.

    Args:
        words: see `words_of`; at most `MOST_WORDS`.
        names: look only at what records are called by.
        below: only entries with a lower number.

    Raises:
        DatabaseProblem: the index is damaged.
    """
    limit = above(_TABLES[0]) if below is None else below
    rows = _answer(connection, MATCHING, (_asked(words, names=names), limit, most))
    return [number for (number,) in rows]


def within(connection: Connection, words: Sequence[str], table: str, *, most: int) -> list[int]:
    """Keys of records of one table in whose names every word begins some word, the newest first.

    Raises:
        DatabaseProblem: the index is damaged.
    """
    reach = (first(table), above(table))
    rows = _answer(connection, WITHIN, (_asked(words, names=True), *reach, most))
    return [entry(number).record for (number,) in rows]


def count(connection: Connection, words: Sequence[str], table: str, most: int) -> int:
    """How many records of a table have all the words; counted up to `most`.

    Raises:
        DatabaseProblem: the index is damaged.
    """
    reach = (first(table), above(table))
    return int(_answer(connection, COUNTING, (_asked(words), *reach, most))[0][0])


def _answer(
    connection: Connection, sql: str, values: tuple[str | int, ...]
) -> list[tuple[int, ...]]:
    from conservedb.store.connect import raw_of  # raw questions load no SQLAlchemy

    try:
        return raw_of(connection).execute(sql, values).fetchall()
    except sqlite3.DatabaseError as problem:
        raise DatabaseProblem(
            f"the search index cannot be read ({problem}); mend it with: conservedb verify"
            " --rebuild-search"
        ) from problem


MATCHING = (
    f"SELECT rowid FROM {INDEX} WHERE {INDEX} MATCH ? AND rowid < ? ORDER BY rowid DESC LIMIT ?"
)
WITHIN = (
    f"SELECT rowid FROM {INDEX} WHERE {INDEX} MATCH ? AND rowid >= ? AND rowid < ?"
    " ORDER BY rowid DESC LIMIT ?"
)
COUNTING = (
    f"SELECT count(*) FROM (SELECT 1 FROM {INDEX} WHERE {INDEX} MATCH ?"
    " AND rowid >= ? AND rowid < ? LIMIT ?)"
)


def entry(number: int) -> Entry:
    """The record that an entry stands for."""
    code, record = divmod(number, _ROOM)
    return Entry(_TABLES[-1 - code], record)


def first(table: str) -> int:
    """The lowest number that an entry of the table may have."""
    return (len(SEARCHED) - 1 - _TABLES.index(table)) * _ROOM


def above(table: str) -> int:
    """A number above those of all the entries of the table, and of the tables after it."""
    return first(table) + _ROOM


def _asked(words: Sequence[str], *, names: bool = False) -> str:
    asked = " AND ".join(map(_spellings, words))
    return f"{{names plain}} : ({asked})" if names else asked


def _spellings(word: str) -> str:
    """A word as FTS5 takes it: in quotes, where nothing is a command; the last part begun.

    Its signs part it; it is asked for without them too, and as `fold` writes it.
    """
    written = dict.fromkeys(
        spelling
        for text in (word, fold(word))
        for spelling in (text, squeezed(text))
        if _WORD.search(spelling)
    )
    doubled = (spelling.replace('"', '""') for spelling in written)
    return "({})".format(" OR ".join(f'"{one}"*' for one in doubled))


def _rows(one: Searched) -> str:
    """A SELECT of the key, names and words of the rows of a table."""
    names = [_text(column) for column in one.names]
    names += [
        f"coalesce((SELECT group_concat(alias_folded, ' ') FROM {link}"
        f" WHERE {one.table}_id = t.id), '')"
        for link in one.aliases
    ]
    words = " || ' ' || ".join(map(_text, one.words)) or "''"
    inner = (
        f"SELECT t.id AS id, {_spelt(_blanks(names))} AS names, {_spelt(words)} AS words"
        f" FROM {one.table} t"
    )
    if one.sparse:
        inner += " WHERE " + " OR ".join(f"t.{column} IS NOT NULL" for column in one.words)
    bare = "names"
    for sign in JOINED:
        bare = f"replace({bare}, '{sign.replace(chr(39), chr(39) * 2)}', '')"
    return f"SELECT id, names, nullif({bare}, names) AS plain, words FROM ({inner})"


def _text(column: str) -> str:
    return f"coalesce(t.{column}, '')"


def _blanks(parts: Sequence[str]) -> str:
    return " || ' ' || ".join(parts)


def _spelt(text: str) -> str:
    for letter, letters in _LETTERS:
        text = f"replace({text}, '{letter}', '{letters}')"
    return text


def _triggers(one: Searched) -> Iterator[str]:
    columns = (*one.names, *one.words)
    changed = " OR ".join(f"OLD.{column} IS NOT NEW.{column}" for column in columns)
    update = f"UPDATE OF {', '.join(columns)} ON {one.table} WHEN {changed}"
    for when, moment, row, act in (
        ("in", f"AFTER INSERT ON {one.table}", "NEW", _put_in),
        ("before", f"BEFORE {update}", "OLD", _take_out),
        ("after", f"AFTER {update}", "NEW", _put_in),
        ("out", f"BEFORE DELETE ON {one.table}", "OLD", _take_out),
    ):
        yield (
            f"CREATE TRIGGER {INDEX}_{one.table}_{when} {moment}\n"
            f"BEGIN {act(one.table, f'{row}.id')}; END"
        )
    for link in one.aliases:
        for moment, row in (("INSERT", "NEW"), ("UPDATE", "OLD"), ("DELETE", "OLD")):
            for when, act in (("BEFORE", _take_out), ("AFTER", _put_in)):
                yield (
                    f"CREATE TRIGGER {INDEX}_{link}_{moment.lower()}_{when.lower()}"
                    f" {when} {moment} ON {link}\n"
                    f"BEGIN {act(one.table, f'{row}.{one.table}_id')}; END"
                )


def _put_in(table: str, record: str) -> str:
    return (
        f"INSERT INTO {INDEX} (rowid, {_COLUMNS})"
        f" SELECT id + {first(table)}, {_COLUMNS} FROM {INDEX}_{table} WHERE id = {record}"
    )


def _take_out(table: str, record: str) -> str:
    return (
        f"INSERT INTO {INDEX} ({INDEX}, rowid, {_COLUMNS})"
        f" SELECT 'delete', id + {first(table)}, {_COLUMNS}"
        f" FROM {INDEX}_{table} WHERE id = {record}"
    )
