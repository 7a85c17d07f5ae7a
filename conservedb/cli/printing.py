"""Answers on paper: `label: value` lines made for reading aloud, and JSON.

All text passes the display filter here and nowhere else.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterable, Iterator
from typing import Any

import click

from conservedb.cli.ending import leave_quietly
from conservedb.questions.display import escape_json, show

_INDENT = "  "


class Lines:
    """Lines of text, indented by what they belong to. Blank values leave no line."""

    def __init__(self) -> None:
        self._lines: list[str] = []

    def add(self, label: str, *values: str, depth: int = 0) -> None:
        """A line `label: value, value`; further lines of a value stand indented below it."""
        value = _one_after_another([one for one in values if one])
        if value:
            margin = _INDENT * depth
            below = f"\n{margin}{_INDENT * 2}"
            text = show(value.replace("\r\n", "\n")).replace("\n", below)
            self._lines.append(f"{margin}{show(label)}: {text}")

    def gap(self) -> None:
        """An empty line, once."""
        if self._lines and self._lines[-1]:
            self._lines.append("")

    def __iter__(self) -> Iterator[str]:
        return iter(self._lines)


def _one_after_another(values: list[str]) -> str:
    """Values with commas between them, except after one that ends a sentence of its own."""
    joined = ""
    for value in values:
        ended = joined.rstrip().endswith((".", "!", "?"))
        joined += f"{' ' if ended else ', '}{value}" if joined else value
    return joined


def print_lines(lines: Iterable[str]) -> None:
    """Print lines of text that has been filtered."""
    _print("\n".join(lines))


def print_json(value: Any) -> None:  # noqa: ANN401 (whatever json takes)
    """Print JSON; characters that a terminal would obey are written as escapes."""
    _print(escape_json(json.dumps(value, ensure_ascii=False, indent=2)))


def _print(text: str) -> None:
    try:
        click.echo(text)
        sys.stdout.flush()
    except BrokenPipeError:
        leave_quietly()
