"""What is wrong with a cell, a row or a file: where, what, why, and what to do."""

from __future__ import annotations

from dataclasses import dataclass


class CellProblem(ValueError):
    """A cell cannot be taken as it stands.

    `column` and `value` name the culprit where it is not the whole cell that was read.
    """

    def __init__(self, reason: str, remedy: str, column: str = "", value: str = "") -> None:
        self.reason, self.remedy, self.column, self.value = reason, remedy, column, value
        super().__init__(f"{reason}; {remedy}")


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that keeps a row (or a file, row 0) out, or only deserves notice.

    `row` is the line of the file on which the row begins; `column` is "" where the whole
    row is meant.
    """

    file: str
    row: int
    column: str
    value: str
    reason: str
    remedy: str

    def sentence(self) -> str:
        """The fault in one line of plain text; the value shortened, as a quotation."""
        where = self.file
        if self.row:
            where += f", line {self.row}"
        if self.column:
            where += f", column {self.column}"
        value = self.value if len(self.value) <= 80 else self.value[:77] + "..."
        quoted = f' "{value}"' if self.column and value else ""
        return f"{where}{quoted}: {self.reason}; {self.remedy}"
