"""The list of all that is on record about a material."""

from __future__ import annotations

from typing import TYPE_CHECKING

from conservedb.tui.material_rows import Rows, material_rows
from conservedb.tui.widgets.told import Told

if TYPE_CHECKING:
    from conservedb.questions.material_answers import MaterialAnswer


class Values(Told["MaterialAnswer", Rows]):
    """Values in groups; the one under the cursor can be read in full."""

    def __init__(self) -> None:
        super().__init__("values")

    def compose_rows(self, answer: MaterialAnswer, width: int) -> Rows:
        """See `Told`."""
        return material_rows(answer, width)

    def leads_to(self, key: str) -> str:
        """The key of the material or class to which an entry leads, "" if to none."""
        return self.rows.leads.get(key, "") if self.rows else ""
