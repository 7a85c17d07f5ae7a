"""How commands that mend records end: what was written, or why nothing was."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any, TypeVar

import click

from conservedb.cli.ending import DONE, NO, Failed
from conservedb.cli.printing import Lines, print_json, print_lines
from conservedb.cli.settings import Settings

if TYPE_CHECKING:
    from conservedb.exchange.entering import Written
    from conservedb.exchange.faults import Fault

Function = TypeVar("Function", bound=Callable[..., Any])


def _not_blank(context: click.Context, parameter: click.Parameter, value: str) -> str:
    if not value.strip():
        raise click.BadParameter("is empty; write why")
    return value


def reason_option(function: Function) -> Function:
    """`--reason`: why; asked for wherever records are mended."""
    option = click.option(
        "--reason", required=True, callback=_not_blank, help="Why; it stays on record."
    )
    return option(function)


def refuse(faults: Sequence[Fault]) -> None:
    """End the command where there are faults; each is told in a sentence.

    Raises:
        Failed: there is one.
    """
    if not faults:
        return
    said = "; ".join(dict.fromkeys(_sentence(fault) for fault in faults))
    raise Failed(f"{said}; nothing was written", NO)


def _sentence(fault: Fault) -> str:
    value = fault.value if len(fault.value) <= 80 else f"{fault.value[:77]}..."
    about = f"{fault.column} {value}".strip()
    return f"{about} {fault.reason}; {fault.remedy}"


def report(settings: Settings, written: Written, what: str, names: Sequence[str]) -> int:
    """Tell what was written under which keys, and how to take it back."""
    refuse(written.faults)
    if settings.json:
        print_json({what: list(names), "change_set": written.set_number})
        return DONE
    lines = Lines()
    for name in names:
        lines.add(what, name)
    add_set(lines, written.set_number)
    print_lines(lines)
    return DONE


def add_set(lines: Lines, number: int | None) -> None:
    """The change set, and how to take it back."""
    lines.add("change set", f"{number}; take it back with: conservedb undo {number}")
