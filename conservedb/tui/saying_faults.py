"""Faults of an import, said to somebody at a form."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from conservedb.exchange.faults import Fault

_LONGEST = 60
_ADD = re.compile(r"add it to \w+\.csv")
_WORDS = (
    (" in the folder or the database", " on record"),
    ("leave the cell blank", "leave the field blank"),
    ("one cell", "one field"),
    ("the cell", "the field"),
    ("(unauthorised_reason)", "(why unauthorised)"),
    ("(unauthorised_by)", "(begun on word of)"),
)


def sentence_of(fault: Fault) -> str:
    """What is wrong, and what to do, in the words of a form."""
    value = fault.value if len(fault.value) <= _LONGEST else fault.value[: _LONGEST - 3] + "..."
    said = f"{fault.reason}; {_ADD.sub('Ctrl+N adds it', fault.remedy)}"
    for found, better in _WORDS:
        said = said.replace(found, better)
    return f"“{value}” {said}" if value else said
