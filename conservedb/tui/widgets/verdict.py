"""What must be said before any option: load, support, verdict."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from textual.content import Content
from textual.widgets import Static

from conservedb.tui.text import QUIET, STRONG, UNSURE, WARNING, joined, plain, styled

if TYPE_CHECKING:
    from conservedb.knowledge.plan import Plan

_SURE = ("analysed", "documented by the maker")


class Verdict(Static):
    """A few sentences; the load comes first, for a released joint falls."""

    def __init__(self) -> None:
        super().__init__(id="verdict")

    def show_plan(self, plan: Plan) -> None:
        """Say what holds of another plan."""
        self.update(joined(tuple(_lines(plan)), "\n"))

    def show_trouble(self, sentence: str) -> None:
        """Say why there is none."""
        self.update(plain(f"{sentence}. Esc goes back.", WARNING))


def _lines(plan: Plan) -> Iterator[Content]:
    if plan.study_only:
        study = styled(" STUDY ONLY ", "reverse bold $hazard")
        yield joined((study, plain(f"{plan.support}: nothing may be loosened yet", WARNING)), " ")
    elif plan.support:
        yield joined((styled("support", QUIET), plain(plan.support)), "  ")
    if plan.carries:
        yield plain(f"! {plan.carries}", WARNING)
    reason = plain(plan.verdict_reason)
    yield joined((plain(plan.verdict, STRONG), reason), ": ")
    identity = plan.target.identified
    if identity not in _SURE or plan.target.alternatives:
        said = f"identity {identity}" if identity else "how its identity is known is not recorded"
        others = " or ".join(plan.target.alternatives)
        yield plain(f"{said}{f'; may also be {others}' if others else ''}", UNSURE)
