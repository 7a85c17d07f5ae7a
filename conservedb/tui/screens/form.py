"""The form: every record is made and amended here; what was typed is never lost."""

from __future__ import annotations

import contextlib
from dataclasses import replace

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.timer import Timer
from textual.widgets import Static

from conservedb.tui.action import FORM
from conservedb.tui.actions import actions_of
from conservedb.tui.drafts import Draft, Drafts, now
from conservedb.tui.reading import Unanswered
from conservedb.tui.recording import Form, Outcome, Recorder
from conservedb.tui.screens.form_found import item_here
from conservedb.tui.screens.form_saving import SavingForm, with_key
from conservedb.tui.text import QUIET, STRONG, UNSURE, WARNING, plain, prose
from conservedb.tui.widgets.form_row import FieldRow, label_width
from conservedb.tui.widgets.key_line import KeyLine
from conservedb.tui.widgets.title import Title

KEPT_AFTER = 0.3  # seconds after something was typed


class FormScreen(SavingForm):
    """Fields one under another. Answers with what was saved, or None."""

    NAME = FORM
    CSS_PATH = "form.tcss"
    KEYS = {  # noqa: RUF012
        key: action.target for action in actions_of(FORM) for key in action.keys
    }

    def __init__(self, form: Form, recorder: Recorder, drafts: Drafts | None = None) -> None:
        super().__init__()
        self.form, self.recorder = form, recorder
        self.drafts = drafts or Drafts()
        self._started = form
        self._draft = self.drafts.take(form.draft_key)
        self._thrown: tuple[Form, dict[str, str]] | None = None
        self._keeping: Timer | None = None
        self._saved = False
        self._written = self._draft.typed if self._draft is not None else {}
        if self._draft is not None:
            self.form = _as_it_was(form, self._draft)

    def compose(self) -> ComposeResult:
        """What is recorded and by whom, a word about the draft, the fields, the keys."""
        yield Title(self.form.title, signed=False)
        yield Static(id="form-notice")
        with VerticalScroll(id="form-rows", can_focus=False):
            yield from self.rows_of(self.form.fields, label_width(self.form.fields))
        yield KeyLine(self.NAME)

    def on_mount(self) -> None:
        """Fill in the draft, if there is one."""
        self.show_who()
        if self._draft is not None:
            self._fill_in(self._draft)
        for row in self.rows:
            if row.field.kind == "date":
                self.read_date(row)

    def on_unmount(self) -> None:
        """However the form is left, what was typed stays."""
        self._keep()

    @property
    def typed(self) -> dict[str, str]:
        """What differs from what was shown."""
        shown = {field.name: field.value for field in self.form.fields}
        return {name: value for name, value in self.values().items() if value != shown[name]}

    def changed(self, row: FieldRow) -> None:
        """A draft is kept a moment later, also if the typing goes on."""
        super().changed(row)
        if self._keeping is None:
            self._keeping = self.set_timer(KEPT_AFTER, self._keep_in_thread)

    def left(self, row: FieldRow) -> None:
        """The draft is kept at once."""
        super().left(row)
        if self.typed != self._written:
            self._keep_in_thread()

    def action_back(self) -> None:
        """Put the list away, or leave; the draft stays."""
        if self.saving or self.close_list():
            return
        self._keep()
        if self.typed:
            self._tell_below(f"{self.form.title}: not saved; what you typed is kept as a draft")
        self.answer(None)

    def action_afresh(self) -> None:
        """Throw the draft away; once more brings it back."""
        if self.saving:
            return
        if self.typed:
            self._thrown = self.form, self.values()
            self.form = self._started
            values = {field.name: field.value for field in self.form.fields}
            self.notice("the draft is thrown away; Ctrl+D once more brings it back")
        elif self._thrown is not None:
            (self.form, values), self._thrown = self._thrown, None
            self.notice("the draft is here again")
        else:
            self.tell("nothing was typed that could be thrown away")
            return
        for row in self.rows:
            row.value = values.get(row.field.name, row.value)
            row.show_problem("")
            row.show_remark("")
            row.found.hide()
            if row.field.kind == "date":
                self.read_date(row)
        self._keep()

    def action_add(self) -> None:
        """Open the form that adds what is not on record."""
        row = self.current
        if row is None or not row.field.completes:
            self.tell("there is nothing to add in this field; what is typed stands as it is")
            return
        lookup, typed, form = row.field.asked_for, item_here(row).text, self.form
        self.hold("add")

        def refused(sentence: str) -> None:
            row.show_problem(sentence)
            self.release("add")

        def opened(new: Form | None) -> None:
            if new is None:
                row.show_problem("nothing new can be added from this field")
            else:
                self.open_over(
                    FormScreen(new, self.recorder, Drafts(self.drafts.folder)),
                    lambda outcome: self._added(row, outcome),
                )
            self.release("add")

        self.ask("add", lambda: self.recorder.new_entry(lookup, typed, form), opened, refused)

    def done(self, outcome: Outcome) -> None:
        """Saved: the draft has done its duty."""
        self._stop_keeping()
        self._saved = True
        self.drafts.drop(self.form.draft_key)
        self.answer(with_key(outcome, self.values()))

    def show_who(self) -> None:
        """Two lines: the form and who records; about what."""
        who = f"recorded by {self.recorder.who}" if self.recorder.who else "nobody named yet"
        self.query_one(Title).show(
            (plain(self.form.title, STRONG), plain(who, QUIET)),
            (plain(self.form.subtitle, QUIET), plain("")),
        )

    def notice(self, sentence: str) -> None:
        """Say something about the form as a whole."""
        notice = self.query_one("#form-notice", Static)
        notice.display = bool(sentence)
        notice.update(prose(sentence, WARNING if sentence.startswith("!") else UNSURE))

    def tell(self, sentence: str, ink: str = WARNING) -> None:
        """Show a message for a while."""
        self.query_one(KeyLine).tell(sentence, ink)

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer."""
        self.tell(sentence)

    def _added(self, row: FieldRow, outcome: Outcome | None) -> None:
        if outcome is not None:
            self.put_here(row, outcome.key)
            self.tell(outcome.saved, STRONG)

    def _fill_in(self, draft: Draft) -> None:
        for row in self.rows:
            row.value = draft.values.get(row.field.name, row.value)
        changed = self._started.version != draft.version
        also = "; the record was changed since" if changed else ""
        self.notice(f"a draft of {draft.clock} is here and filled in{also}; Ctrl+D starts afresh")

    def _tell_below(self, sentence: str) -> None:
        below = self.app.screen_stack[-2] if len(self.app.screen_stack) > 1 else None
        tell = getattr(below, "tell", None)
        if tell is not None:
            tell(sentence)

    def _stop_keeping(self) -> None:
        if self._keeping is not None:
            self._keeping.stop()
            self._keeping = None

    def _draft_now(self) -> Draft | None:
        """Of a new record all fields: what a later form fills in by itself may be another's."""
        typed = self.typed
        if not typed:
            return None
        values = typed if self.form.version else self.values()
        shown = {one.name: one.value for one in self.form.fields if one.name in values}
        form = self.form
        return Draft(
            form.draft_key, form.kind, form.title, form.subtitle, now(), form.version, values, shown
        )

    def _keep(self) -> None:
        """Keep what is typed, here and now; after a save there is nothing to keep."""
        self._stop_keeping()
        if not self._saved and self.typed != self._written:
            with contextlib.suppress(Unanswered):
                self._write(self._draft_now(), self.drafts.turn())

    def _keep_in_thread(self) -> None:
        self._stop_keeping()
        draft, turn = self._draft_now(), self.drafts.turn()
        self.ask("draft", lambda: self._write(draft, turn), lambda _: None, self.notice)

    def _write(self, draft: Draft | None, turn: int) -> None:
        """Keep a draft, or none.

        Raises:
            Unanswered: the folder cannot be written.
        """
        try:
            if draft is None:
                self.drafts.drop(self.form.draft_key, turn)
            else:
                self.drafts.keep(draft, turn)
        except OSError as problem:
            raise Unanswered(
                f"! no draft can be kept in {self.drafts.folder} ({problem.strerror}): save before"
                " you leave"
            ) from problem
        self._written = draft.typed if draft is not None else {}


def _as_it_was(form: Form, draft: Draft) -> Form:
    """The form as it was shown to whoever typed the draft.

    What others changed since in the same fields then comes to light as a clash when it is saved.
    """
    fields = tuple(replace(one, value=draft.shown.get(one.name, one.value)) for one in form.fields)
    return replace(form, fields=fields, version=draft.version)
