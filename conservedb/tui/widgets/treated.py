"""The list of all that is on record about a treatment."""

from __future__ import annotations

from typing import TYPE_CHECKING

from conservedb.tui.plan_rows import Rows
from conservedb.tui.treatment_rows import treatment_rows
from conservedb.tui.widgets.told import Told

if TYPE_CHECKING:
    from conservedb.questions.treatment_answers import TreatmentAnswer


class Treated(Told["TreatmentAnswer", Rows]):
    """Entries in groups; each can be read in full."""

    def __init__(self) -> None:
        super().__init__("treated")

    def compose_rows(self, answer: TreatmentAnswer, width: int) -> Rows:
        """See `Told`."""
        return treatment_rows(answer, width)
