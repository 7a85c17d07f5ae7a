"""Rules of the trade that a step breaks, and why it is saved all the same."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from textual.content import Content

from conservedb.tui.recording import Field, Finding
from conservedb.tui.screens.entry_sheet import Block, EntrySheet
from conservedb.tui.text import QUIET, WARNING, joined, plain, prose

SEVERITY = {"block": "STOP", "warn": "CAUTION", "inform": "TO KNOW"}
_INKS = {"block": f"bold {WARNING}", "warn": "bold $unsure", "inform": "bold"}
FOOT = "PgDn reads on; a reason for each rule, then Enter; Esc goes back"


def judged_sheet(findings: Sequence[Finding]) -> EntrySheet:
    """Answers with rule and reason; what one rule says stands together, the gravest first."""
    of_rules: dict[str, list[Finding]] = {}
    for one in sorted(findings, key=lambda finding: list(SEVERITY).index(finding.severity)):
        of_rules.setdefault(one.rule, []).append(one)
    blocks = [block for these in of_rules.values() for block in _blocks(these)]
    return EntrySheet("The rules object to this step", blocks, FOOT)


def _blocks(findings: Sequence[Finding]) -> Iterator[Block]:
    """The first with the reason that is asked, so that both are seen; then the others."""
    first, *others = findings
    head = [_severity(first), plain(f"rule {first.rule}", QUIET)]
    asked = first.severity != "inform"
    if others:
        one_reason = ", one reason for all" if asked else ""
        head.append(plain(f"{len(findings)} times{one_reason}", QUIET))
    field = Field(first.rule, "reason to go on", required=True)
    yield [joined(head, "  "), prose(first.sentence)], (field,) if asked else ()
    for one in others:
        same = one.severity == first.severity
        before = plain("and also", QUIET) if same else _severity(one)
        yield [joined((before, prose(one.sentence)), "  ")], ()


def _severity(finding: Finding) -> Content:
    return plain(SEVERITY[finding.severity], _INKS[finding.severity])
