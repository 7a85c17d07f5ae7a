"""How lists, people and numbers are written in one cell."""

from __future__ import annotations

import math
import re

from conservedb.exchange.faults import CellProblem

_ROLE = re.compile(r"(?s)(?P<name>.*\S)\s*(?<!\\)\((?P<role>(?:[^()\\]|\\.)*)\)")
_ESCAPED = re.compile(r"\\([\\;()])")
_NUMBER = re.compile(r"[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,3})?", re.ASCII)
_INTEGER = re.compile(r"[+-]?\d{1,18}", re.ASCII)


def split_list(cell: str) -> list[str]:
    r"""The items of a cell, separated by ";"; "\;" is a semicolon. Escapes are left in."""
    if ";" not in cell:
        items = [cell]
    else:
        items, item, escaped = [], "", False
        for character in cell:
            if character == ";" and not escaped:
                items.append(item)
                item = ""
                continue
            item += character
            escaped = character == "\\" and not escaped
        items.append(item)
    return [item.strip() for item in items if item.strip()]


def unescape(item: str) -> str:
    r"""An item as meant: "\;", "\(", "\)" and "\\" stand for the character itself."""
    return _ESCAPED.sub(r"\1", item) if "\\" in item else item


def escape(item: str) -> str:
    r"""An item as written in a list; the reverse of `unescape`."""
    return item.replace("\\", "\\\\").replace(";", "\\;")


def split_role(item: str) -> tuple[str, str]:
    """Name and role of an item "Name (role)"; the role is "" where none is given."""
    match = _ROLE.fullmatch(item)
    if match is None:
        return unescape(item), ""
    return unescape(match["name"]), unescape(match["role"]).strip()


def join_role(name: str, role: str) -> str:
    """The list item for a person in a role, so that `split_role` gives both back."""
    written = escape(name)
    if role:
        return f"{_parentheses(written)} ({_parentheses(escape(role))})"
    return _parentheses(written) if _ROLE.fullmatch(written) else written


def _parentheses(text: str) -> str:
    return text.replace("(", "\\(").replace(")", "\\)")


def number(cell: str) -> float:
    """A decimal number with a point.

    Raises:
        CellProblem: anything else, a decimal comma among them.
    """
    text = cell.strip()
    if not _NUMBER.fullmatch(text) or math.isinf(float(text)):
        raise CellProblem("is not a number", 'write digits with a decimal point, such as "12.5"')
    return float(text)


def integer(cell: str) -> int:
    """A whole number.

    Raises:
        CellProblem: anything else.
    """
    text = cell.strip()
    if not _INTEGER.fullmatch(text):
        raise CellProblem("is not a whole number", 'write digits only, such as "3" or "-1"')
    return int(text)


def show_number(value: float) -> str:
    """The shortest decimal that reads back as the same number."""
    return str(int(value)) if value.is_integer() and abs(value) < 1e15 else repr(value)
