"""Recording from the object screen: on what is under the cursor, or on all that is ticked."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from conservedb.questions.answers import ComponentRow, HistoryRow, Layer, Residue, Warning_
from conservedb.tui.about import KINDS, MENDING, OVER_MANY, About
from conservedb.tui.recording import Field, Form, Outcome
from conservedb.tui.screens.sheet import FactSheet
from conservedb.tui.screens.ticking import Ticking
from conservedb.tui.text import QUIET, STRONG, joined, plain
from conservedb.tui.widgets.history import History
from conservedb.tui.widgets.parts import Parts
from conservedb.tui.widgets.section import Section

if TYPE_CHECKING:
    from conservedb.exchange.amending import Shown
    from conservedb.tui.desk import Desk
    from conservedb.tui.screens.desk_form import DeskForm

_OF_HISTORY = {
    "intervention": "interventions",
    "joint": "joint_events",
    "ended": "removals",
    "sighting": "sightings",
    "layer": "layers",
    "observation": "observations",
    "reading": "readings",
    "sample": "samples",
    "spot test": "spot_tests",
    "plan": "plans",
    "authorisation": "authorisations",
}
"""Kind of an entry of a history -> the file of its record."""
_LONGEST = 300


class RecordingHere(Ticking):
    """The part of the object screen that records."""

    saved_before: Outcome | None = None
    _said: Outcome | None = None

    def action_step(self) -> None:
        """The form of a step."""
        self.settled(lambda: self._open_form("step"))

    def action_same(self) -> None:
        """The last step once more, after one key."""
        self.settled(self._same)

    def action_record(self) -> None:
        """Everything else, by its letter."""
        self.settled(self._menu)

    def action_amend(self) -> None:
        """The form of the record under the cursor."""
        self.settled(self._amend)

    def action_withdraw(self) -> None:
        """Withdraw the record under the cursor."""
        self.settled(self._ask_to_withdraw)

    def _same(self) -> None:
        if self.desk_or_say() is None:
            return
        about = self._about("step")
        if not about.places and not about.components:
            self.tell("choose a location or a part first: the same is recorded there")
            return
        self._make(about, self._confirm)

    def _menu(self) -> None:
        if self.desk_or_say() is not None:
            from conservedb.tui.screens.menu import MenuSheet

            def chosen(kind: str | None) -> None:
                if kind is not None:
                    self._open_form(kind)

            listed = [one for one in KINDS if one.letter]
            title = f"Record {self._where_words()}"
            self.open_over(MenuSheet(title, listed, ("Mend", MENDING)), chosen)

    def _amend(self) -> None:
        about = self._record_here()
        if about is not None and self.desk_or_say() is not None:
            self._make(about, self._show_form)

    def _ask_to_withdraw(self) -> None:
        about, desk = self._record_here(), self.desk_or_say()
        if about is None or desk is None:
            return
        self.hold("seen")

        def look() -> Shown:
            desk.ensure_writable()  # nobody types for nothing
            return desk.shown(about)

        def go_on(seen: Shown) -> None:
            self._withdraw_seen(desk, about, seen)
            self.release("seen")

        def refused(sentence: str) -> None:
            self.say(sentence)
            self.release("seen")

        self.ask("seen", look, go_on, refused)

    def _withdraw_seen(self, desk: Desk, about: About, seen: Shown) -> None:
        """Ask why a record goes, with what it says; only as it is shown is it withdrawn."""
        from conservedb.tui.screens.entry_sheet import EntrySheet

        what = f"{about.kind.removesuffix('s').replace('_', ' ')} {about.record}"
        words = (
            plain(_as_recorded(seen.cells)),
            plain("It leaves every answer, and stays whole in the change log for ever."),
        )
        fields = (
            Field("reason", "why", required=True),
            Field("together", "with what came with it", "choice", "no", ("no", "yes")),
        )

        def go_on(answers: Mapping[str, str] | None) -> None:
            if answers is not None:
                reason, together = answers["reason"], answers["together"] == "yes"
                self._do(lambda: desk.withdraw(about, reason, seen.version, together=together))

        foot = "Enter in the last line withdraws it, Esc goes back"
        self.open_over(EntrySheet(f"Withdraw {what}?", [(words, fields)], foot), go_on)

    def action_told(self) -> None:
        """All that came with what was saved last."""
        if self._said is None:
            self.tell("nothing was saved from here yet")
            return
        told = [(f"to know {index}", one) for index, one in enumerate(self._said.notices, 1)]
        blocks = [[("saved", self._said.saved.removeprefix("saved: "))], told]
        self.app.push_screen(FactSheet("What the last save said", blocks))

    def action_undo(self) -> None:
        """Take my last change back."""
        desk = self.desk_or_say()
        if desk is not None:
            self._do(lambda: desk.take_back(undone=False))

    def action_redo(self) -> None:
        """Put in force again what I took back."""
        desk = self.desk_or_say()
        if desk is not None:
            self._do(lambda: desk.take_back(undone=True))

    # What is meant

    def _about(self, kind: str) -> About:
        """What is ticked, where that kind is recorded over many; else what is under the cursor."""
        assert self.desk is not None
        parts, row, section = self.query_one(Parts), self.row, self.query_one(Section)
        places, components = parts.ticked_places, parts.ticked_parts
        if kind not in OVER_MANY or not parts.ticked:
            places, components = (), ()
        if not (places or components) and row is not None and row.mark:
            places, components = ((row.mark,), ()) if row.is_place else ((), (row.mark,))
        band = section.band
        here = self.place is not None and row is not None and self.place.place == row.mark
        layers = (band.ref,) if isinstance(band, Layer) and section.has_focus and here else ()
        return About(
            self.desk.database,
            kind,
            self.number,
            places=places,
            components=components,
            layers=layers,
        )

    def _record_here(self) -> About | None:
        """The record under the cursor, to be amended or withdrawn."""
        desk = self.desk_or_say()
        if desk is None:
            return None
        kind, key = self._kind_and_key()
        if not (kind and key):
            self.tell("no record is under the cursor that could be amended here")
            return None
        return About(desk.database, kind, self.number, key)

    def _kind_and_key(self) -> tuple[str, str]:
        history, row = self.query_one(History), self.row
        entry = history.row_of(history.current.key) if history.current else None
        if history.has_focus and isinstance(entry, HistoryRow):
            return _OF_HISTORY.get(entry.kind, ""), entry.ref
        if self.query_one(Section).has_focus:
            match self._record():
                case Layer() as layer:
                    return "layers", layer.ref
                case Residue() as residue:
                    return "layers", residue.ref
                case Warning_() as warning:
                    return "warnings", warning.ref
                case ComponentRow() as part:
                    return "components", part.mark
        if row is None or not row.mark:
            return "objects", self.number
        return ("places" if row.is_place else "components"), row.mark

    def _where_words(self) -> str:
        about = self._about("step")
        marks = (*about.places, *about.components)
        if len(marks) > 1:
            return f"over {len(marks)} ticked"
        return f"at {marks[0]}" if marks else f"on {self.number}"

    # Doing it

    def _open_form(self, kind: str) -> None:
        if self.desk_or_say() is not None:
            self._make(self._about(kind), self._show_form)

    def _make(self, about: About, then: Callable[[Form], None]) -> None:
        """Have a form made; keys wait for it."""
        desk = self.desk
        assert desk is not None
        self.hold("form")

        def refused(sentence: str) -> None:
            self.say(sentence)
            self.release("form")

        def made(form: Form) -> None:
            then(form)
            self.release("form")

        self.ask("form", lambda: desk.form(about), made, refused)

    def _show_form(self, form: Form, *, at_once: bool = False, told: str = "") -> None:
        desk = self.desk
        assert desk is not None
        from conservedb.tui.screens.desk_form import DeskForm

        screen = DeskForm(form, desk, at_once=at_once, told=told)
        self.open_over(screen, lambda outcome: self._recorded(screen, outcome))

    def _confirm(self, form: Form) -> None:
        from conservedb.tui.screens.confirm import ConfirmSheet

        values = {field.name: field.value for field in form.fields}
        if not values.get("kind"):
            self.tell("no step is on record for this object that could be done again: s opens one")
            return
        named = ("material", "concentration", "carrier", "agent", "batch", "technique")
        said = [values[name] for name in named if values.get(name)]
        where = form.subtitle.partition("  ")[0]
        lines = (
            plain(f"{values['kind']}: {', '.join(said) or 'no material'}"),
            joined((plain(where), plain(f"{values['date']}, {values['people']}", QUIET)), "  "),
        )

        def go_on(agreed: bool | None) -> None:
            if agreed:
                self._show_form(form, at_once=True)

        self.open_over(ConfirmSheet("The same as last time", lines), go_on)

    def _recorded(self, screen: DeskForm, outcome: Outcome | None) -> None:
        """Saved: read again, say what, and open the form that follows."""
        if outcome is None:
            if screen.told and self._said is not None and not screen.typed:
                self.tell_saved(self._said)
            return
        if screen.form.kind in OVER_MANY:
            self.untick_all()
        self.read_again()
        self.tell_saved(outcome)
        desk, form, values = screen.desk, screen.form, screen.values_saved
        self.hold("next")

        def opened(following: Form | None) -> None:
            if following is not None:
                self._show_form(following, told=outcome.saved)
            self.release("next")

        def refused(sentence: str) -> None:
            self.say(sentence)
            self.release("next")

        self.ask("next", lambda: desk.next_form(form, values, outcome), opened, refused)

    def tell_saved(self, outcome: Outcome) -> None:
        """Say what was saved, here or on the screen that led here; `h` tells all of it."""
        self._said = outcome
        self.tell(_said_briefly(outcome, self.app.size.width - 2), STRONG)

    def _do(self, work: Callable[[], str]) -> None:
        """Something that writes, and then a sentence what came of it."""
        self.hold("do")

        def done(sentence: str) -> None:
            self.read_again()
            self.tell(sentence, STRONG)
            self.release("do")

        def refused(sentence: str) -> None:
            self.say(sentence)
            self.release("do")

        self.ask("do", work, done, refused)

    def read_again(self) -> None:
        """Ask everything again; the cursor stays."""
        raise NotImplementedError


def _as_recorded(cells: Mapping[str, str]) -> str:
    """What a record says, in one line, without what every record has."""
    said = (
        f"{header.replace('_', ' ')} {' '.join(cell.split())}"
        for header, cell in cells.items()
        if cell.strip() and header not in ("object", "uuid", "entered")
    )
    line = "; ".join(said)
    return line if len(line) <= _LONGEST else line[: _LONGEST - 3] + "..."


def _said_briefly(outcome: Outcome, room: int) -> str:
    """What was saved; that there is more to know is never cut off, for `h` tells all of it."""
    count = len(outcome.notices)
    if not count:
        return outcome.saved
    more = f"; {count} thing{'s' if count > 1 else ''} to know: h"
    return plain(outcome.saved).truncate(room - len(more), ellipsis=True).plain + more
