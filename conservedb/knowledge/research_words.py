"""The words of a researcher's question: read, and written back.

    objects where material: "cellulose nitrate" and state: there on 1950
        and not (person: "W. Orde" or kind: join)

    objects where has (material: shellac) and has (material: epoxy) and has none (role: coating)

What the rows are comes first, "layers" where nothing is said. A condition is a field, a colon
and a value. A value stands in double quotes where it holds and, or, not, brackets, quotes or
a colon; a quote inside is written twice. Before a value, `certainly` leaves out what holds only
possibly; `possibly` takes both, as does no word. Of places, interventions and objects, `has`
asks for one layer or use of which all in its brackets holds, `has none` that there is none.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import NamedTuple

from conservedb.dates import UNKNOWN_END, UNKNOWN_START, DateError, read_span
from conservedb.dates import read as read_date
from conservedb.knowledge.research import (
    EVER,
    FIELDS,
    ROWS,
    STATES,
    And,
    Condition,
    Has,
    Not,
    Or,
    Research,
    Tree,
    asks_has,
    joined,
    parts_of,
)

_MOST = 60
"""More conditions than a person asks; a database refuses statements of any length."""
_DEEPEST = 20
_MOST_WORDS = 200
"""Words are looked for one by one, and a statement takes neither any number nor any depth."""
_TOKENS = re.compile(r'"(?:[^"]|"")*"|[()":]|[^\s()":]+')
_RESERVED = ("and", "or", "not", "where", "between", "certainly", "possibly")
_TODAY = ("today", "now")


class AskError(ValueError):
    """A question that cannot be read: what is wrong, where, and what to do."""


class _Token(NamedTuple):
    text: str
    at: int

    @property
    def word(self) -> str:
        return self.text.lower()

    @property
    def quoted(self) -> bool:
        return len(self.text) > 1 and self.text.startswith('"')


def read(text: str) -> Research:
    """The question that a text asks.

    Raises:
        AskError: it cannot be read.
    """
    return askable(_Reader(text).research())


def askable(research: Research) -> Research:
    """The question, unless it asks of rows what they cannot have.

    Raises:
        AskError: `has` is asked of a layer, or within another.
    """
    if not asks_has(research.where):
        return research
    if research.rows == ROWS[0]:
        raise AskError(
            f'"has" is asked of {", ".join(ROWS[1:-1])} or {ROWS[-1]}, not of a layer;'
            f' begin for example with "{ROWS[-1]} where has (...)"'
        )
    if _nested(research.where):
        raise AskError('"has" cannot stand within another "has"; join them with and or or')
    return research


def _nested(tree: Tree) -> bool:
    if isinstance(tree, Has):
        return any(map(asks_has, tree.parts))
    return any(map(_nested, parts_of(tree)))


def read_conditions(text: str) -> Tree:
    """Conditions alone; none hold of everything.

    Raises:
        AskError: they cannot be read.
    """
    return _Reader(text).conditions() if text.strip() else And()


class _Reader:
    """Reads a text from the left, one token after the other."""

    def __init__(self, text: str) -> None:
        if any("\ud800" <= character <= "\udfff" for character in text):
            raise AskError("a character of the question is broken and cannot be stored; retype it")
        self._text = text
        self._tokens = [_Token(one.group(), one.start()) for one in _TOKENS.finditer(text)]
        self._next = 0
        self._conditions = self._words = 0

    def research(self) -> Research:
        rows = self._rows()
        return Research(rows) if self._word() is None else Research(rows, self.conditions())

    def conditions(self) -> Tree:
        where = self._any(0)
        if self._next < len(self._tokens):
            raise self._error("join conditions with and or or")
        return where

    def _rows(self) -> str:
        if not self._tokens:
            raise AskError('nothing is asked; write for example "material: shellac"')
        first = self._word()
        if first not in ROWS or self._word(1) not in ("where", None):
            return ROWS[0]
        self._next = 2
        if self._word(-1) == "where" and self._word() is None:
            raise self._error('a condition is missing after "where"')
        return first

    def _word(self, ahead: int = 0) -> str | None:
        at = self._next + ahead
        return self._tokens[at].word if at < len(self._tokens) else None

    def _error(self, sentence: str) -> AskError:
        if self._next >= len(self._tokens):
            return AskError(f"{sentence} (at the end)")
        at = self._tokens[self._next].at
        return AskError(f"{sentence} (at character {at + 1}: {self._text[at : at + 20]!r})")

    def _any(self, depth: int) -> Tree:
        parts = [self._all(depth)]
        while self._word() == "or":
            self._next += 1
            parts.append(self._all(depth))
        return parts[0] if len(parts) == 1 else Or(tuple(parts))

    def _all(self, depth: int) -> Tree:
        parts = [self._one(depth)]
        while self._word() == "and":
            self._next += 1
            parts.append(self._one(depth))
        return parts[0] if len(parts) == 1 else And(tuple(parts))

    def _one(self, depth: int) -> Tree:
        if depth > _DEEPEST:
            raise self._error(f"conditions stand more than {_DEEPEST} deep; ask more simply")
        if self._word() == "not":
            self._next += 1
            return Not(self._one(depth + 1))
        if self._word() == "has":
            return self._has(depth)
        if self._word() != "(":
            return self._condition()
        return self._bracket(depth)

    def _has(self, depth: int) -> Tree:
        self._next += 1
        none = self._word() in ("no", "none")
        self._next += none
        if self._word() != "(":
            raise self._error('after "has" or "has none" stand conditions in brackets')
        inside = self._bracket(depth)
        found = Has(inside.parts if isinstance(inside, And) else (inside,))
        return Not(found) if none else found

    def _bracket(self, depth: int) -> Tree:
        self._next += 1
        inside = self._any(depth + 1)
        if self._word() != ")":
            raise self._error(
                'a bracket is open; close it with ")", join conditions with and or or'
            )
        self._next += 1
        return inside

    def _condition(self) -> Condition:
        self._conditions += 1
        if self._conditions > _MOST:
            raise self._error(f"there are more than {_MOST} conditions; ask more simply")
        field = self._field()
        certainly = self._word() == "certainly"
        if self._word() in ("certainly", "possibly"):
            self._next += 1
        begins = self._next
        tokens = self._value()
        if not tokens or not any(_plain(one).strip() for one in tokens):
            raise self._error(f'a value is missing after "{field}:"')
        self._words += sum(len(_plain(one).split()) for one in tokens)
        if self._words > _MOST_WORDS:
            self._next = begins
            raise self._error(f"there are more than {_MOST_WORDS} words; ask for fewer")
        try:
            if field == "state":
                return Condition(field, *_state(tokens), certainly)
            return Condition(field, _checked(field, _joined(tokens)), certainly=certainly)
        except AskError as problem:
            self._next = begins
            raise self._error(str(problem)) from None

    def _field(self) -> str:
        words: list[str] = []
        begins = self._next
        while self._word() not in (":", "(", ")", None) and len(words) < 3:
            words.append(self._word() or "")
            self._next += 1
        name = " ".join(words)
        if self._word() != ":":
            self._next = begins
            raise self._error('a condition is a field, a colon and a value, such as "role: fill"')
        if name not in FIELDS:
            self._next = begins
            raise self._error(f"there is no field {name!r}; {_near(name, tuple(FIELDS))}")
        self._next += 1
        return name

    def _value(self) -> list[_Token]:
        """The tokens up to where the next condition or bracket begins."""
        found: list[_Token] = []
        while (word := self._word()) not in (None, "(", ")", "or"):
            if word == "and" and not _between([one.word for one in found]):
                break
            if word == "not" and (found or self._word(1) not in ("yet", "before", "after")):
                raise self._error('join conditions with and or or before "not"')
            if word == ":":
                raise self._error("a value that holds a colon stands in double quotes")
            if word == '"':
                raise self._error("a double quote is open; close it")
            found.append(self._tokens[self._next])
            self._next += 1
        return found


def _between(words: Sequence[str]) -> bool:
    """Whether the next "and" belongs to "between 1919 and 1939"."""
    return "between" in words and "and" not in words


def _plain(token: _Token) -> str:
    return token.text[1:-1].replace('""', '"') if token.quoted else token.text


def _joined(tokens: Sequence[_Token]) -> str:
    if len(tokens) > 1 and any(one.quoted for one in tokens):
        raise AskError("a value stands in double quotes as a whole, or not at all")
    return " ".join(map(_plain, tokens))


def _state(tokens: Sequence[_Token]) -> tuple[str, str]:
    """The state and its day."""
    words = [one.word for one in tokens]
    if words == [EVER]:
        return STATES[0], EVER
    for state in STATES:
        length = 1 if tokens[0].quoted else len(state.split())
        if " ".join(map(_plain, tokens[:length])).lower() == state:
            return state, _day(state, words[length:], tokens[length:])
    raise AskError(f"the state is none of {', '.join(STATES)}")


def _day(state: str, words: Sequence[str], tokens: Sequence[_Token]) -> str:
    if not words or " ".join(words) in _TODAY:
        return ""
    if words == [EVER]:
        if state != STATES[0]:
            raise AskError(f'"ever" is asked of what is there: "there ever", not "{state} ever"')
        return EVER
    if words[0] not in ("on", "in") or len(words) == 1:
        raise AskError(f'after "{state}" stands a day: "{state} on 1950"')
    return checked_day(_joined(tokens[1:]))


def checked_day(words: str) -> str:
    """The words of a day or span with two known ends, "" for today.

    Raises:
        AskError: they are no such date, or one that is approximate or uncertain.
    """
    if words.strip().lower() in ("", *_TODAY):
        return ""
    try:
        found = read_span(words)
    except DateError as problem:
        raise AskError(str(problem)) from None
    if found.flags:
        raise AskError(
            f"{words!r} is no day at which layers stand one way; ask for a day, a year or a span"
            " without about and without a question mark"
        )
    return words


def _checked(field: str, value: str) -> str:
    if field == "date":
        try:
            found = read_date(value)
        except DateError as problem:
            raise AskError(str(problem)) from None
        bounded = found.earliest != UNKNOWN_START and found.latest != UNKNOWN_END
        if found.derived in ("blank", "not understood") or not bounded:
            raise AskError(f"{value!r} is no date to ask for; write a date such as 1950 or 1930s")
    if field == "as" and value.lower() not in ("layer", "agent"):
        raise AskError(f"{value!r} is neither layer nor agent")
    return value.lower() if field == "as" else value


def _near(word: str, known: Sequence[str]) -> str:
    from difflib import get_close_matches

    near = get_close_matches(word, known, 1)
    return f"did you mean {near[0]}?" if near else f"fields are {', '.join(known)}"


# -- written back -------------------------------------------------------------------------


def say(research: Research) -> str:
    """The text of a question, which `read` reads as the same question."""
    where = say_conditions(research)
    return f"{research.rows} where {where}" if where else research.rows


def say_conditions(research: Research) -> str:
    """The text of the conditions alone; "" where there are none."""
    return "" if research.where == And() else _say(research.where)


def _say(tree: Tree) -> str:
    if isinstance(tree, Condition):
        certainly = "certainly " if tree.certainly else ""
        value = tree.value if tree.field == "state" else _quoted(tree.value)
        return f"{tree.field}: {certainly}{value}{_say_day(tree.on)}"
    if isinstance(tree, Has):
        return f"has ({_say(joined(And, tree.parts))})"
    if isinstance(tree, Not):
        inner = _say(tree.part)
        if isinstance(tree.part, Has):
            return inner.replace("has", "has none", 1)
        return f"not ({inner})" if isinstance(tree.part, And | Or) else f"not {inner}"
    joining = " and " if isinstance(tree, And) else " or "
    bare = (Condition, Not, Has) if isinstance(tree, And) else (Condition, Not, Has, And)
    return joining.join(
        _say(part) if isinstance(part, bare) else f"({_say(part)})" for part in tree.parts
    )


def _say_day(on: str) -> str:
    if not on:
        return ""
    return f" {on}" if on == EVER else f" on {_quoted(on)}"


def _quoted(value: str) -> str:
    words = value.lower().split()
    plain = value == " ".join(value.split()) and not set('()":') & set(value)
    if plain and value and not set(_RESERVED) & set(words):
        return value
    return '"' + value.replace('"', '""') + '"'
