"""The search index: it says what the records say, whatever is done to them, and can be mended."""

from __future__ import annotations

import random
import re
import sqlite3
import unicodedata
from collections.abc import Callable, Iterator, Sequence
from functools import cache
from pathlib import Path

import pytest
from sqlalchemy import Connection, Engine

from conservedb.exchange.amending import amend
from conservedb.exchange.entering import enter
from conservedb.exchange.exporting import export_folder
from conservedb.exchange.importing import import_folder
from conservedb.exchange.merging import merge
from conservedb.exchange.undoing import take_back
from conservedb.recording.verifying import rebuild_search
from conservedb.recording.withdrawing import withdraw
from conservedb.records.every import metadata
from conservedb.store import derived, search
from conservedb.store.connect import connect_sqlite, raw_of, reading, writing
from conservedb.store.keys import fold
from conservedb.store.log import Author
from conservedb.store.logging_triggers import logged_tables
from conservedb.store.opening import open_database
from conservedb.store.problems import DatabaseProblem
from conservedb.store.search_tables import SEARCHED
from conservedb.store.verify import verify
from tests.conftest import TODAY
from tests.exchange.random_tables import RandomTables
from tests.recording.conftest import ME, OBJECT, engine, entries
from tests.store.older import load_old

__all__ = ["engine"]
Entries = set[tuple[str, int]]
Texts = tuple[str, int, tuple[str, ...]]
ALL = 100_000


def found(connection: Connection, text: str) -> Entries:
    """Every record with all the words."""
    numbers = search.matching(connection, search.words_of(text), most=ALL)
    return {(one.table, one.record) for one in map(search.entry, numbers)}


def test_every_column_is_one_of_the_tables() -> None:
    for one in SEARCHED:
        columns = metadata.tables[one.table].c
        assert {*one.names, *one.words} <= set(columns.keys())
        assert all("alias_folded" in metadata.tables[link].c for link in one.aliases)


def test_every_note_can_be_found() -> None:
    """What holds a note and is left out says something of a material's behaviour, not of work."""
    noted = {table.name for table in metadata.sorted_tables if "note" in table.c}
    left_out = noted - {one.table for one in SEARCHED if "note" in one.words}
    assert left_out == {
        *("exposure_limit", "hansen", "hazard", "hazard_statement", "material_part"),
        *("material_value", "needed_authorisation", "period", "restriction", "setting"),
        *("solubility", "stand_in", "teas", "trait"),
    }


# The rule, once more and in plain Python: SQLite's documentation of `unicode61` ("Unicode61
# Tokenizer", FTS5): letters and digits are tokens, accents are taken off, all else parts them.


LATIN = (*range(0xC0, 0x250), *range(0x1E00, 0x1F00))
ACCENTS = {sign for letter in LATIN for sign in unicodedata.normalize("NFD", chr(letter))[1:]}
"""What Latin letters are composed with; other marks part words, as in U+0310 over an a."""


def tokens(text: str) -> list[str]:
    apart = (sign for whole in text for sign in unicodedata.normalize("NFD", whole).lower())
    plain = (sign for sign in apart if sign not in ACCENTS)
    return "".join(s if unicodedata.category(s)[0] in "LN" else " " for s in plain).split()


cached = cache(tokens)


def begins(typed: str, text: str) -> bool:
    """Whether the parts of a word stand in a row, the last of them begun."""
    wanted, held = tokens(typed), cached(text)
    return any(
        held[at : at + len(wanted) - 1] == wanted[:-1]
        and held[at + len(wanted) - 1].startswith(wanted[-1])
        for at in range(len(held) - len(wanted) + 1)
    )


def spelt(text: str) -> str:
    return text.replace("ß", "ss").replace("ﬁ", "fi").replace("ﬂ", "fl")


def bare(text: str) -> str:
    return re.sub("[-./_'’]", "", text)


def texts_of(connection: Connection) -> Iterator[Texts]:
    """Table, key and texts of every record that can be found, from the tables themselves."""
    for one in SEARCHED:
        for row in connection.exec_driver_sql(f"SELECT * FROM {one.table}").mappings().all():
            if one.sparse and not any(row[name] is not None for name in one.words):
                continue
            names = [row[name] or "" for name in one.names]
            for link in one.aliases:
                sql = f"SELECT alias_folded FROM {link} WHERE {one.table}_id = ?"
                names.append(" ".join(connection.exec_driver_sql(sql, (row["id"],)).scalars()))
            called = spelt(" ".join(names))
            words = spelt(" ".join(row[name] or "" for name in one.words))
            yield one.table, row["id"], (called, bare(called), words)


def expected(known: Sequence[Texts], words: Sequence[str]) -> Entries:
    def holds(word: str, texts: tuple[str, ...]) -> bool:
        spellings = {word, fold(word), bare(word), bare(fold(word))}
        return any(begins(s, text) for s in spellings if tokens(s) for text in texts)

    return {
        (table, record)
        for table, record, texts in known
        if all(holds(word, texts) for word in words)
    }


def typed_words(known: Sequence[Texts], chance: random.Random) -> Iterator[list[str]]:
    """What somebody might type: words that are there, whole or begun, also with odd signs."""
    held = [word for _, _, texts in known for text in texts for word in text.split()]
    plain = [word for word in held if re.fullmatch(r"[\w.\-/'()\"*:äöéŽß]+", word)]
    for _ in range(60):
        words = []
        for _ in range(chance.choice((1, 1, 1, 2, 2, 3))):
            word = chance.choice(plain)[:40]
            begun = word[: chance.randint(1, len(word))]
            words.append(chance.choice((begun, begun.upper(), word, f"{begun}*", f'"{begun}"')))
        if search.words_of(" ".join(words)) == tuple(words):
            yield words


@pytest.mark.parametrize("seed", range(3))
def test_it_finds_what_plain_python_finds(
    new_database: Callable[[str], Engine], tmp_path: Path, seed: int
) -> None:
    RandomTables(seed).write(tmp_path / "tables")
    engine = new_database("random.db")
    assert import_folder(engine, tmp_path / "tables", today=TODAY, who="A. Tester").written
    some = 0
    with reading(engine) as connection:
        assert search.check(raw_of(connection)) == []
        known = list(texts_of(connection))
        for words in typed_words(known, random.Random(seed)):
            wanted = expected(known, words)
            assert found(connection, " ".join(words)) == wanted, words
            some += bool(wanted)
    assert some > 30
    engine.dispose()


def in_step(engine: Engine) -> bool:
    with reading(engine) as connection:
        return search.check(raw_of(connection)) == []


def kinds(engine: Engine, text: str) -> list[str]:
    with reading(engine) as connection:
        return sorted(table for table, _ in found(connection, text))


def test_it_is_kept_in_step_with_all_that_is_done(engine: Engine) -> None:
    assert kinds(engine, "zwölfter") == []
    layer = {"ref": "L3", "place": "S1", "role": "wax", "note": "Zwölfter Anstrich"}
    assert not enter(engine, lambda _: entries(layers=[layer]), ME, TODAY).faults
    assert kinds(engine, "zwolfter ANSTRICH") == ["layer"]
    why = Author("A. Tester", "amended", "spelling")
    assert not amend(engine, "layer", OBJECT, "L3", {"note": "Elfter"}, why, TODAY).faults
    assert (kinds(engine, "zwölfter"), kinds(engine, "elfter")) == ([], ["layer"])
    with writing(engine, Author("A. Tester", "withdrawn", "wrong object")) as connection:
        ((_, record),) = found(connection, "elfter")
        withdraw(connection, "layer", record)
    assert kinds(engine, "elfter") == []
    take_back(engine, "A. Tester")
    assert kinds(engine, "elfter") == ["layer"]
    take_back(engine, "A. Tester", undone=True)
    assert kinds(engine, "elfter") == []
    assert in_step(engine)


def test_names_that_moved_are_found_where_they_are(engine: Engine) -> None:
    people = [{"name": "Ada Holm", "aliases": "A.H."}, {"name": "A. Hulme", "aliases": "Hulmy"}]
    assert not enter(engine, lambda _: entries(people=people), ME, TODAY).faults
    assert kinds(engine, "holm hulmy") == []
    merge(engine, "person", "Ada Holm", "A. Hulme", Author("A. Tester", "merged", "one"), TODAY)
    assert kinds(engine, "holm hulmy") == ["person"]
    assert in_step(engine)
    take_back(engine, "A. Tester")
    assert kinds(engine, "holm hulmy") == []
    assert kinds(engine, "hulmy") == ["person"]
    assert in_step(engine)


@pytest.mark.parametrize("revision", ["0001", "0002"])
def test_an_upgraded_file_can_be_searched(tmp_path: Path, revision: str) -> None:
    load_old(tmp_path / "old.db", revision)
    engine, _ = open_database(tmp_path / "old.db")
    assert in_step(engine)
    assert "place" in kinds(engine, "J14 dolphin")
    assert "material" in kinds(engine, "b72")
    engine.dispose()


def test_it_is_no_record(engine: Engine, tmp_path: Path) -> None:
    """Neither logged nor exported; mending it changes no record."""
    assert not {one.name for one in logged_tables()} & {search.INDEX, search.TEXT}
    with reading(engine) as connection:
        export_folder(connection, tmp_path / "out")
        changes = connection.exec_driver_sql("SELECT count(*) FROM change").scalar()
    assert not list((tmp_path / "out").glob("search*"))
    rebuild_search(engine)
    with reading(engine) as connection:
        assert connection.exec_driver_sql("SELECT count(*) FROM change").scalar() == changes
        assert derived.present(raw_of(connection)) == derived.fingerprint()


def test_another_program_can_read_it(engine: Engine) -> None:
    with reading(engine) as connection:
        path = connection.exec_driver_sql("PRAGMA database_list").all()[0][2]
    raw = sqlite3.connect(path)
    sql = (
        "SELECT names FROM search_text WHERE id IN (SELECT rowid FROM search WHERE search MATCH ?)"
    )
    assert raw.execute(sql, (f'"{OBJECT}"',)).fetchall()
    raw.close()


TAKE_OUT = (
    "INSERT INTO search (search, rowid, names, plain, words)"
    " SELECT 'delete', id, names, plain, words FROM search_text ORDER BY id LIMIT 1"
)
TAMPERED = {
    "emptied": ("INSERT INTO search (search) VALUES ('delete-all')", "cannot be found by their"),
    "one taken out": (TAKE_OUT, "records that cannot be found by their words: 1"),
    "one added": (
        "INSERT INTO search (rowid, names) VALUES (77, 'forged')",
        "no longer there and are still found: 1",
    ),
    "one reworded": (
        f"{TAKE_OUT}; INSERT INTO search (rowid, names)"
        " SELECT id, 'forged' FROM search_text ORDER BY id LIMIT 1",
        "are not those of the records",
    ),
    "pages overwritten": ("UPDATE search_data SET block = zeroblob(40)", "search index"),
    "pages cut out": ("DELETE FROM search_data", "search index"),
    "a part dropped": ("DROP TABLE search_idx", "search index"),
    "its settings dropped": ("DROP TABLE search_config", "search index"),
    "all of it dropped": ("DROP TABLE search", "search index"),
}


@pytest.mark.parametrize(("statements", "sentence"), TAMPERED.values(), ids=TAMPERED.keys())
def test_what_was_done_to_it_is_named_and_mended(
    engine: Engine, statements: str, sentence: str
) -> None:
    with reading(engine) as connection:
        path = Path(connection.exec_driver_sql("PRAGMA database_list").all()[0][2])
    engine.dispose()
    raw = sqlite3.connect(path)
    raw.executescript(statements)
    raw.close()
    raw = connect_sqlite(path)
    told = [one for one in verify(raw) if one.part == "search"]
    raw.close()
    assert told
    assert sentence in told[0].sentence
    assert told[0].sentence.endswith("mend it with: conservedb verify --rebuild-search")
    again, _ = open_database(path, mend=False)
    rebuild_search(again)
    with reading(again) as connection:
        assert list(verify(raw_of(connection))) == []
        assert found(connection, OBJECT)
    again.dispose()


def test_a_damaged_index_is_told_in_a_sentence(engine: Engine) -> None:
    with reading(engine) as connection:
        raw_of(connection).execute("DELETE FROM search_data")
        with pytest.raises(
            DatabaseProblem, match=r"search index cannot be read .*--rebuild-search"
        ):
            found(connection, OBJECT)


def test_it_is_asked_by_its_words(engine: Engine) -> None:
    """FTS5 names what it looks up in its plan: M and the number of the column, or of all."""
    with reading(engine) as connection:
        raw = raw_of(connection)
        for sql, values in ((search.MATCHING, ("a", 1, 1)), (search.COUNTING, ("a", 1, 2, 1))):
            steps = [row[3] for row in raw.execute(f"EXPLAIN QUERY PLAN {sql}", values)]
            assert any(re.search(r"search VIRTUAL TABLE INDEX \d+:.*M\d", one) for one in steps)
            assert not any("TEMP B-TREE" in one for one in steps)
