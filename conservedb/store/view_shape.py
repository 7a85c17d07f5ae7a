"""What a view is made of: columns with their meaning, and the SQL that gives them.

The SQL uses only functions that every SQLite program has. NULL is "not recorded".
"""

from __future__ import annotations

from typing import NamedTuple

from conservedb.dates import (
    MAX_DAY,
    NEVER,
    OPEN_END,
    OPEN_START,
    UNKNOWN_END,
    UNKNOWN_START,
    day_number,
)

_FIRST_ISO = day_number(0)
_JULIAN = 1721424.5
"""What SQLite's julian day is ahead of a day number."""

DAY_NUMBERS = (
    "Days have two columns: an ISO day, NULL where it is not a day of the years 0 to 9999, and its"
    " number, by which days are compared: 0001-01-01 is 1, and what is no day is"
    f" {OPEN_START} (no beginning stated), {UNKNOWN_START} (began on an unknown day),"
    f" {UNKNOWN_END} (ended on an unknown day), {OPEN_END} (no end stated),"
    f" {NEVER} (not known to have happened)."
)
"""How to read the days of every view."""
_TODAY = "date('now', 'localtime')"
TODAY_IN_SQL = (
    f"Columns named ..._day are ISO text: compare them with {_TODAY} for today or with"
    " '2026-11-02' for a day. Columns named ..._number are no dates written as digits: compare them"
    f" with julianday({_TODAY}) - {_JULIAN} for today, julianday('2026-11-02') - {_JULIAN} for a"
    " day."
)
"""How to ask the views for today, or for a day."""


class ViewColumn(NamedTuple):
    """A column of a view: its name, what it means, and the SQL it comes from."""

    name: str
    meaning: str
    sql: str


class View(NamedTuple):
    """A view: its name, what its rows are, its columns, and where they come from."""

    name: str
    meaning: str
    columns: tuple[ViewColumn, ...]
    source: str

    @property
    def select(self) -> str:
        """The SELECT that gives the rows."""
        listed = ",\n  ".join(f"{column.sql} AS {column.name}" for column in self.columns)
        return f"SELECT\n  {listed}\n{self.source}"

    @property
    def statement(self) -> str:
        """The SQL that makes the view, with what it means: the file explains itself."""
        told = [f"{column.name}: {column.meaning}" for column in self.columns]
        if any(column.name.endswith("_number") for column in self.columns):
            told.append(DAY_NUMBERS)
        comments = "\n".join(f"-- {line}" for line in (self.meaning, *told))
        return f"CREATE VIEW {self.name} AS\n{comments}\n{self.select}"


def given(name: str, sql: str, meaning: str) -> ViewColumn:
    """A column of any SQL."""
    return ViewColumn(name, meaning, sql)


def own(alias: str, **meanings: str) -> tuple[ViewColumn, ...]:
    """Columns of a table under their own names, each with its meaning."""
    return tuple(given(name, f"{alias}.{name}", meaning) for name, meaning in meanings.items())


def days(alias: str, **meanings: str) -> tuple[ViewColumn, ...]:
    """The columns of recorded dates: words, EDTF, first and last day, qualifiers."""
    return tuple(
        column
        for prefix, meaning in meanings.items()
        for column in (
            given(f"{prefix}_words", f"{alias}.{prefix}_words", f"{meaning}: as found"),
            given(f"{prefix}_edtf", f"{alias}.{prefix}_edtf", f"{meaning}: as EDTF"),
            *day(f"{prefix}_first", f"{alias}.{prefix}_earliest", f"{meaning}: earliest"),
            *day(f"{prefix}_last", f"{alias}.{prefix}_latest", f"{meaning}: latest"),
            qualifiers(f"{prefix}_qualifiers", f"{alias}.{prefix}_flags"),
        )
    )


def day(name: str, sql: str, meaning: str) -> tuple[ViewColumn, ViewColumn]:
    """A day as ISO text, and as its number."""
    return (
        given(f"{name}_day", _iso(sql), f"{meaning} day"),
        given(f"{name}_number", sql, f"number of {name}_day"),
    )


def _iso(sql: str) -> str:
    return f"CASE WHEN {sql} BETWEEN {_FIRST_ISO} AND {MAX_DAY} THEN date({sql} + {_JULIAN}) END"


def qualifiers(name: str, sql: str) -> ViewColumn:
    """How a date is qualified, in words."""
    return given(
        name,
        f"CASE {sql} WHEN 1 THEN 'uncertain' WHEN 2 THEN 'approximate'"
        " WHEN 3 THEN 'uncertain and approximate' END",
        "whether that date is uncertain or approximate",
    )


def bounds(alias: str) -> tuple[ViewColumn, ...]:
    """When a layer came, was reduced and went, as far as all records together say."""
    return tuple(
        column
        for event, meaning in (
            ("came", "when it came"),
            ("reduced", "when it was first taken down in part"),
            ("gone", "when all of it was gone"),
        )
        for column in (
            *day(f"{event}_first", f"{alias}.{event}_from", f"{meaning}: earliest"),
            *day(f"{event}_last", f"{alias}.{event}_to", f"{meaning}: latest"),
            qualifiers(f"{event}_qualifiers", f"{alias}.{event}_flags"),
        )
    )


def people(owner: str, alias: str) -> ViewColumn:
    """The people of a record, with their roles, in their order."""
    return given(
        "people",
        listed(
            "pe.name || coalesce(' (' || li.role || ')', '')",
            f"{owner}_person li JOIN person pe ON pe.id = li.person_id",
            f"li.{owner}_id = {alias}.id",
        ),
        "who took part: Name (role); ...",
    )


def marks(
    name: str,
    meaning: str,
    link: str,
    where: str,
    target: str = "place",
    order: str = "li.position",
) -> ViewColumn:
    """The marks of the places or components that a record is tied to, in their order."""
    joined = f"{link} li JOIN {target} ta ON ta.id = li.{target}_id"
    return given(name, listed("ta.mark", joined, where, order), meaning)


def listed(sql: str, source: str, where: str, order: str = "li.position") -> str:
    """One text of several rows, separated by "; "."""
    inner = f"SELECT {sql} AS item FROM {source} WHERE {where} ORDER BY {order}"
    return f"(SELECT group_concat(item, '; ') FROM ({inner}))"


def matter(alias: str) -> tuple[ViewColumn, ...]:
    """The material of a layer or agent, or the class where only that is known."""
    return (
        given("material", "ma.key", "key of the material; NULL where not identified"),
        given("material_name", "ma.name", "its name"),
        given(
            "class",
            "coalesce(mc.key, cl.key)",
            "key of the class of the material, or of the class where only that is known",
        ),
        *own(alias, material_words="the material as found in the papers"),
    )


def matter_joins(alias: str) -> str:
    """The joins that `matter` needs."""
    return (
        f"LEFT JOIN material ma ON ma.id = {alias}.material_id\n"
        "LEFT JOIN material_class mc ON mc.id = ma.class_id\n"
        f"LEFT JOIN material_class cl ON cl.id = {alias}.material_class_id"
    )


OBJECT = given("object", "ob.number", "number of the object")
SOURCE = given("source", "so.ref", "ref of the source, see v_sources")
UUID = "its identity, the same in every copy"
