"""Recording into a database file. Nothing of the store is imported before it is asked for."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, TypeVar

from conservedb.tui.about import About, about_of
from conservedb.tui.reading import Connection, Database, Unanswered
from conservedb.tui.recording import NOTHING, Completion, Form, Outcome

if TYPE_CHECKING:
    import datetime

    from conservedb.exchange.amending import Shown

Answer = TypeVar("Answer")


class DatabaseRecorder:
    """Records into the file that a `Database` reads."""

    def __init__(self, reading: Database) -> None:
        from conservedb.store.who import own_name

        self._reading = reading
        self.database = str(reading.path.absolute())
        self.who = own_name()

    def set_who(self, name: str) -> None:
        """See `Recorder`; the name is kept for this account."""
        from conservedb.store.who import set_name

        try:
            self.who = set_name(name)
        except (ValueError, OSError) as problem:
            raise Unanswered(str(problem)) from problem

    def complete(
        self, lookup: str, typed: str, form: Form, values: Mapping[str, str]
    ) -> tuple[Completion, ...]:
        """See `Recorder`."""
        from conservedb.questions.completing import complete
        from conservedb.tui import completing as asked

        about = self._about(form)
        if lookup == "liquid" and asked.is_mixture(typed):
            return (Completion(typed, typed, exact=True),)

        def question(connection: Connection, today: datetime.date) -> tuple[Completion, ...]:
            found = complete(
                connection,
                asked.word(lookup),
                typed,
                number=about.number,
                places=asked.places(about, values),
                day=today.toordinal(),
            )
            return asked.with_writer(lookup, typed, self.who, (Completion(*one) for one in found))

        return self._ask(question)

    def check(self, form: Form, field: str, values: Mapping[str, str]) -> str:
        """See `Recorder`."""
        from conservedb.exchange.one_cell import fault_in
        from conservedb.tui import completing as asked
        from conservedb.tui.making_forms import header_of
        from conservedb.tui.saying_faults import sentence_of

        about, text = self._about(form), values.get(field, "")
        subject, header = header_of(about, field)
        if not text.strip() or not subject:
            return ""

        def question(connection: Connection, _: datetime.date) -> str:
            number = about.number if about.kind != "object" else ""
            fault = fault_in(connection, subject, number, header, text)
            if fault is None or asked.same_name(fault.value, self.who):
                return ""  # the writer is put on record with what is saved
            return sentence_of(fault)

        return self._ask(question)

    def read_date(self, text: str) -> str:
        """See `Recorder`."""
        from conservedb.tui import completing as asked

        return asked.date_words(text)

    def new_entry(self, lookup: str, typed: str, form: Form) -> Form | None:
        """See `Recorder`."""
        from conservedb.tui import completing as asked

        about = asked.new_about(self._about(form), lookup, typed)
        return self.form(about) if about is not None else None

    def ensure_writable(self) -> None:
        """See `Desk`."""
        from conservedb.store.connect import ensure_writable

        self._reading.answered(lambda: ensure_writable(self._reading.engine()))

    def form(self, about: About) -> Form:
        """See `Desk`; nobody types into a form that cannot be saved."""
        from conservedb.tui.making_forms import make_form

        self.ensure_writable()
        return self._ask(lambda connection, today: make_form(connection, about, self.who, today))

    def kind_chosen(self, form: Form, values: Mapping[str, str]) -> Mapping[str, str]:
        """See `Desk`."""
        from conservedb.tui.forms_of_steps import cells_of_step, first_step

        about, kind = self._about(form), values["kind"]
        return self._ask(
            lambda connection, today: cells_of_step(
                first_step(connection, about, self.who, today, kind)
            )
        )

    def next_form(self, form: Form, values: Mapping[str, str], outcome: Outcome) -> Form | None:
        """See `Desk`."""
        from conservedb.tui.making_forms import next_about

        about = next_about(self._about(form), values, outcome.key)
        return self.form(about) if about is not None else None

    def save(
        self,
        form: Form,
        values: Mapping[str, str],
        *,
        reason: str = "",
        override: Mapping[str, str] = NOTHING,
        over: Mapping[str, str] = NOTHING,
    ) -> Outcome:
        """See `Recorder`."""
        from conservedb.store.opening import today
        from conservedb.tui.saving import Saving, save

        about, who = self._about(form), self.who
        engine = self._reading.engine()
        day = self._reading.ask(today)
        one = Saving(engine, about, form, values, who, day, reason, override, over)
        return self._reading.answered(lambda: save(one))

    def like(self, number: str, mark: str) -> tuple[str, ...]:
        """See `Desk`."""
        from conservedb.exchange.deed_places import all_like

        return self._ask(lambda connection, _: all_like(connection, number, mark))

    def where(self, number: str, words: str) -> tuple[str, ...]:
        """See `Desk`."""
        from conservedb.exchange.deed_places import places_where

        return self._ask(lambda connection, _: places_where(connection, number, words))

    def shown(self, about: About) -> Shown:
        """See `Desk`."""
        from conservedb.exchange.amending import shown
        from conservedb.tui.forms_of_records import subject_of

        name = subject_of(about.kind).name
        return self._ask(lambda c, _: shown(c, name, about.number, about.record))

    def withdraw(self, about: About, reason: str, version: int, *, together: bool = False) -> str:
        """See `Desk`."""
        from conservedb.tui.taking_back import withdraw_record

        engine = self._reading.engine()
        return self._reading.answered(
            lambda: withdraw_record(engine, about, self.who, reason, version, together=together)
        )

    def take_back(self, *, undone: bool) -> str:
        """See `Desk`."""
        from conservedb.tui.taking_back import take_mine_back

        engine = self._reading.engine()
        return self._reading.answered(lambda: take_mine_back(engine, self.who, undone=undone))

    def _about(self, form: Form) -> About:
        about = about_of(form.draft_key)
        assert about is not None, form.draft_key
        return about

    def _ask(self, question: Callable[[Connection, datetime.date], Answer]) -> Answer:
        from conservedb.store.opening import today

        return self._reading.ask(lambda connection: question(connection, today(connection)))
