"""A reader of the source: text of records reaches widgets through conservedb.tui.text alone."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import conservedb.tui

FOLDER = Path(conservedb.tui.__file__).parent
FILES = sorted(path for path in FOLDER.rglob("*.py") if path.name != "text.py")

PARSE_MARKUP = {"from_markup", "from_text", "assemble", "notify", "RichLog", "Label", "escape"}
"""Names that read a text as markup, or may."""

TAKE_TEXT = {"Static", "update", "styled", "Content"}
"""Names whose first argument must be a text of ours, or content already made."""

PROPERTIES = {"border_title", "border_subtitle", "tooltip", "placeholder"}


def name_of(function: ast.expr) -> str:
    return function.attr if isinstance(function, ast.Attribute) else getattr(function, "id", "")


def is_ours(argument: ast.expr) -> bool:
    """A constant, a repeated constant, or content made by a function of conservedb.tui.text."""
    if isinstance(argument, ast.Constant):
        return True
    if isinstance(argument, ast.BinOp):
        return isinstance(argument.left, ast.Constant) and isinstance(argument.op, ast.Mult)
    if isinstance(argument, ast.Call):
        return name_of(argument.func) in {"plain", "prose", "styled", "joined", "two_ends"}
    return False


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_no_other_way_to_a_widget(path: Path) -> None:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        where = f"{path.name}:{getattr(node, 'lineno', 0)}"
        if isinstance(node, ast.Call):
            name = name_of(node.func)
            assert name not in PARSE_MARKUP, f"{where}: {name} reads markup"
            if name in TAKE_TEXT and node.args:
                assert is_ours(node.args[0]), f"{where}: {name} of text that did not pass plain()"
        if isinstance(node, ast.Assign):
            for target in node.targets:
                if isinstance(target, ast.Attribute) and target.attr in PROPERTIES:
                    assert is_ours(node.value), f"{where}: {target.attr} did not pass plain()"
        if isinstance(node, ast.Subscript) and isinstance(node.value, ast.Name):
            assert node.value.id != "Markdown", f"{where}: markup"


def test_the_rule_would_catch_it() -> None:
    assert not is_ours(ast.parse("row.name", mode="eval").body)
    assert not is_ours(ast.parse("f'{row.name}'", mode="eval").body)
    assert is_ours(ast.parse("plain(row.name)", mode="eval").body)
