"""How a form is saved: what is asked before, and what is done with the answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from conservedb.tui.recording import Clash, Finding, Outcome, Problem
from conservedb.tui.screens.form_found import FindingForm
from conservedb.tui.widgets.form_row import FieldRow

NEEDED = "this is needed before the form can be saved"
SAVING = "saving ..."


class SavingForm(FindingForm):
    """The part of the form that saves: once, and all of it or nothing."""

    def __init__(self) -> None:
        super().__init__()
        self.saving = False
        self._reason = ""
        self._override: dict[str, str] = {}
        self._over: set[str] = set()

    async def action_save(self) -> None:
        """Ask what has to be asked first, then save."""
        if self.saving or not self.is_active:
            return
        if self.lacking(NEEDED):
            return
        if not self.recorder.who:
            from conservedb.tui.screens.who import WhoSheet

            self.open_over(WhoSheet(self.recorder), self._named)
        elif self.form.reason and not self._reason:
            self._ask_why("")
        else:
            self._send()

    def changed(self, row: FieldRow) -> None:
        """A reason given for another wording of the step is none for this one."""
        super().changed(row)
        self._override = {}

    async def at_end(self) -> None:
        """Enter in the last field."""
        await self.action_save()

    def done(self, outcome: Outcome) -> None:
        """It is saved."""
        raise NotImplementedError

    async def _named(self, answers: Mapping[str, str] | None) -> None:
        self.show_who()
        if answers is not None:
            await self.action_save()

    def show_who(self) -> None:
        """The name of who records is shown always."""
        raise NotImplementedError

    def _ask_why(self, because: str) -> None:
        from conservedb.tui.screens.entry_sheet import reason_sheet

        self.open_over(reason_sheet(self.form.title, because), self._give_reason)

    async def _give_reason(self, answers: Mapping[str, str] | None) -> None:
        if answers is not None:
            self._reason = answers["reason"]
            await self.action_save()

    def _send(self) -> None:
        self.saving = True
        self.hold("save")
        self.notice(SAVING)
        form, values, reason, override = self.form, self.values(), self._reason, self._override
        over = {name: values[name] for name in self._over if name in values}
        self.ask(
            "save",
            lambda: self.recorder.save(form, values, reason=reason, override=override, over=over),
            self._answered,
            self._not_saved,
        )

    def _not_saved(self, sentence: str) -> None:
        self.saving = False
        self.notice(f"! not saved: {sentence}")
        self.release("save")

    def _answered(self, outcome: Outcome) -> None:
        self.saving = False
        self.notice("; ".join(outcome.notices))
        if outcome.saved:
            self.done(outcome)
        elif outcome.complete:
            self._ask_why(outcome.complete)
        elif outcome.problems:
            self._show_problems(outcome.problems)
        elif outcome.clashes:
            self._settle_clashes(outcome.clashes)
        elif outcome.judged:
            self._judged(outcome.judged)
        self.release("save")

    def notice(self, sentence: str) -> None:
        """Say something about the form as a whole."""
        raise NotImplementedError

    def _show_problems(self, problems: tuple[Problem, ...]) -> None:
        general = []
        wrong = []
        for one in problems:
            row = self.row(one.field)
            if row is None:
                general.append(one.sentence)
            else:
                wrong.append((row, one.sentence))
        self.notice(f"! {' '.join(general)}" if general else "! not saved: see below")
        if wrong:
            self.go(wrong[0][0])
        for row, sentence in wrong:
            self.forget(f"check {row.field.name}")
            self.forget(f"names {row.field.name}")
            row.show_problem(sentence)

    def _settle_clashes(self, clashes: tuple[Clash, ...]) -> None:
        from conservedb.tui.screens.clash import ClashSheet

        def choose(chosen: Mapping[str, str] | None) -> None:
            if chosen is None:
                self.notice("not saved: somebody else changed this record meanwhile")
                return
            for name, value in chosen.items():
                row = self.row(name)
                if row is not None:
                    row.value = value
            self._over |= set(chosen)
            self._send()

        self.open_over(ClashSheet(clashes), choose)

    def _judged(self, findings: tuple[Finding, ...]) -> None:
        from conservedb.tui.screens.judged import judged_sheet

        def go_on(reasons: Mapping[str, str] | None) -> None:
            if reasons is None:
                self.notice("not saved: the rules object to this step")
                return
            self._override = {**self._override, **reasons}
            self._send()

        self.open_over(judged_sheet(findings), go_on)


def with_key(outcome: Outcome, values: Mapping[str, str]) -> Outcome:
    """The outcome with a key by which other fields call the new record."""
    return replace(outcome, key=outcome.key or next(iter(values.values()), "").strip())
