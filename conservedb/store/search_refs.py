"""Finding by reference what has no words: plain indexes beside the one of words.

Of layers, removals and the like the index of words holds only the rows that something is written
about (`Searched.sparse`). The others are found by their ref alone: an ordinary index holds the ref
of each without its joining signs, twelve bytes a row or so. Its rows are those that the index of
words leaves out, so that what is found by the two adds up. Letters are compared by NOCASE, which
is the same in every SQLite program; `lower` is not.
"""

from __future__ import annotations

from collections.abc import Iterator

from conservedb.store.keys import fold
from conservedb.store.search import JOINED, squeezed
from conservedb.store.search_tables import SEARCHED, Searched

_PARTING = f" {JOINED}"


def _plain() -> str:
    plain = "ref"
    for sign in _PARTING:
        plain = f"replace({plain}, '{sign.replace(chr(39), chr(39) * 2)}', '')"
    return plain


PLAIN = f"{_plain()} COLLATE NOCASE"
"""The ref of a row without signs and blanks, as SQL; the index is used for just this text."""


def unwritten(one: Searched) -> str:
    """As SQL, whether nothing but its ref says something of a row of a sparse table."""
    return " AND ".join(f"{column} IS NULL" for column in one.words)


def statements() -> Iterator[str]:
    """The text of the indexes. Their names begin like everything that belongs to finding."""
    for one in SEARCHED:
        if one.sparse:
            yield (
                f"CREATE INDEX search_{one.table}_ref ON {one.table} ({PLAIN})\n"
                f"WHERE {unwritten(one)}"
            )


def spellings(text: str) -> tuple[str, ...]:
    """What somebody typed as a ref may be written in the index.

    NOCASE knows the letters of ASCII only: others are looked for in each of their forms.
    """
    plain = squeezed("".join(text.split()))
    forms = (plain,) if plain.isascii() else (plain, plain.lower(), plain.upper(), fold(plain))
    return tuple(dict.fromkeys(form for form in forms if form))
