"""Rules of the trade that a step breaks, and why it is saved all the same."""

from __future__ import annotations

from collections.abc import Sequence

from conservedb.tui.recording import Field, Finding
from conservedb.tui.screens.entry_sheet import Block, EntrySheet
from conservedb.tui.text import QUIET, WARNING, joined, plain, prose

SEVERITY = {"block": "STOP", "warn": "CAUTION", "inform": "TO KNOW"}
FOOT = "a reason for each, then Enter saves; Esc goes back to the form"


def judged_sheet(findings: Sequence[Finding]) -> EntrySheet:
    """Answers with rule and reason."""
    asked: set[str] = set()
    blocks: list[Block] = []
    for one in findings:
        inks = {"block": f"bold {WARNING}", "warn": "bold $unsure"}
        severity = plain(SEVERITY.get(one.severity, "CAUTION"), inks.get(one.severity, "bold"))
        words = [joined((severity, plain(f"rule {one.rule}", QUIET)), "  "), prose(one.sentence)]
        if one.severity == "inform" or one.rule in asked:
            blocks.append((words, ()))
        else:
            asked.add(one.rule)
            blocks.append((words, (Field(one.rule, "reason to go on", required=True),)))
    return EntrySheet("The rules object to this step", blocks, FOOT)
