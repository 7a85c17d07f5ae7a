"""Words of a command of the form NAME=VALUE."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Any, TypeVar

import click

Function = TypeVar("Function", bound=Callable[..., Any])


def _pairs(words: Iterable[str], form: str) -> dict[str, str]:
    """NAME=VALUE as a mapping; each name once."""
    found: dict[str, str] = {}
    for word in words:
        name, sign, value = word.partition("=")
        name = name.strip()
        if not sign or not name:
            raise click.BadParameter(f"{word!r} is not of the form {form}.")
        if name in found:
            raise click.BadParameter(f"{name!r} is given twice; give it once.")
        found[name] = value
    return found


def _fields(_: click.Context, __: click.Parameter, words: tuple[str, ...]) -> dict[str, str]:
    return _pairs(words, "FIELD=VALUE")


def _overrides(_: click.Context, __: click.Parameter, words: tuple[str, ...]) -> dict[str, str]:
    found = _pairs(words, "RULE=REASON")
    for rule, reason in found.items():
        if not reason.strip():
            raise click.BadParameter(f"no reason is given for {rule!r}; write RULE=REASON.")
    return found


def fields_option(function: Function) -> Function:
    """The argument FIELD=VALUE, any number of times."""
    return click.argument("fields", metavar="FIELD=VALUE...", nargs=-1, callback=_fields)(function)


def override_option(function: Function) -> Function:
    """`--override RULE=REASON`, any number of times."""
    return click.option(
        "--override",
        "overrides",
        metavar="RULE=REASON",
        multiple=True,
        callback=_overrides,
        help="Why a rule of the trade is set aside; recorded with your name.",
    )(function)
