"""A form of the desk: the kind of a step chosen anew fills the rest in anew."""

from __future__ import annotations

from collections.abc import Mapping

from conservedb.tui.desk import Desk
from conservedb.tui.drafts import Drafts
from conservedb.tui.recording import Form, Outcome
from conservedb.tui.screens.form import FormScreen
from conservedb.tui.text import STRONG
from conservedb.tui.widgets.form_row import FieldRow

_RECIPE = (
    *("concentration", "carrier", "batch", "temperature_c", "treated_from", "cycles", "role"),
    *("coverage", "dry"),
)
_STAYS = ("kind", "date", "people", "places", "components")


class DeskForm(FormScreen):
    """A form on a database.

    Args:
        at_once: save it as it was filled in, unless a draft is there.
        told: what was saved with the form before this one, which this one hides.
    """

    def __init__(
        self,
        form: Form,
        desk: Desk,
        drafts: Drafts | None = None,
        *,
        at_once: bool = False,
        told: str = "",
    ) -> None:
        super().__init__(form, desk, drafts)
        self.desk, self.told, self._at_once = desk, told, at_once
        self._kind_changed = self._save_then = False
        self.values_saved: dict[str, str] = {}
        self._filled = {field.name: field.value for field in self.form.fields}

    def on_mount(self) -> None:
        """Save at once what needs no look; say what was saved before."""
        super().on_mount()
        if self.told:
            self.tell(self.told, STRONG)
        if self._at_once and self._draft is None:
            self.hold("at once")
            self.call_after_refresh(self._save_at_once)

    def changed(self, row: FieldRow) -> None:
        """Another kind of step: the rest is filled in anew once the field is left."""
        super().changed(row)
        self._kind_changed |= row.field.name == "kind" and self.form.kind == "step"

    def left(self, row: FieldRow) -> None:
        """The kind of step is settled."""
        super().left(row)
        self._drop_recipe()
        if self._kind_changed:
            self._fill_in_again()

    async def action_save(self) -> None:
        """Saved from the very field in which the kind was chosen, the rest comes first."""
        self._drop_recipe()
        if self._kind_changed:
            self._fill_in_again()
            self._save_then = True
        else:
            await super().action_save()

    def action_afresh(self) -> None:
        """What was filled in is then that of the form that is shown."""
        super().action_afresh()
        self._filled = {field.name: field.value for field in self.form.fields}

    def done(self, outcome: Outcome) -> None:
        """Saved: what the fields held is known to whoever opened the form."""
        self.values_saved = self.values()
        super().done(outcome)

    async def _save_at_once(self) -> None:
        await self.action_save()
        self.release("at once")

    def _drop_recipe(self) -> None:
        """Another material: what was filled in of the recipe of the last one is not its own."""
        row = self.row("material")
        if self.form.kind != "step" or row is None or row.value == self._filled["material"]:
            return
        self._filled["material"] = row.value
        for name in _RECIPE:
            other = self.row(name)
            if other is not None and other.value == self._filled[name]:
                other.value = other.settled = self._filled[name] = ""

    def _fill_in_again(self) -> None:
        """What was filled in becomes that of the last step of this kind; keys wait for it."""
        form, values = self.form, self.values()
        self._kind_changed = False
        self.hold("kind")
        self.ask("kind", lambda: self.desk.kind_chosen(form, values), self._fill_anew, self._stay)

    def _stay(self, sentence: str) -> None:
        self.notice(f"! {sentence}")
        self.release("kind")

    async def _save_after(self) -> None:
        await self.action_save()
        self.release("kind")

    def _fill_anew(self, values: Mapping[str, str]) -> None:
        """Only what nobody has typed over."""
        for row in self.rows:
            name = row.field.name
            if name in values and name not in _STAYS and row.value == self._filled.get(name, ""):
                row.value = self._filled[name] = values[name]
                row.settled = row.value
        if self._save_then:
            self._save_then = False
            self.call_later(self._save_after)
        else:
            self.release("kind")
