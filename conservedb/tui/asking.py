"""Questions put from a screen: answered in a thread, stale answers dropped."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from textual.message import Message
from textual.screen import Screen, ScreenResultType

from conservedb.tui.reading import Unanswered

Answer = TypeVar("Answer")


class Asking(Screen[ScreenResultType]):
    """A screen that asks. Each question has a slot; a newer question in it outdates older ones."""

    class Answered(Message):
        """An answer came, or the reason why there is none."""

        def __init__(self, slot: str, turn: int, then: Callable[[], None]) -> None:
            super().__init__()
            self.slot, self.turn, self.then = slot, turn, then

    def __init__(self) -> None:
        super().__init__()
        self._turns: dict[str, int] = {}

    def ask(
        self,
        slot: str,
        question: Callable[[], Answer],
        then: Callable[[Answer], None],
        otherwise: Callable[[str], None] | None = None,
    ) -> None:
        """Answer `question` in a thread, then call `then` here unless something newer was asked.

        Args:
            slot: what is asked about.
            question: blocks; may raise `Unanswered`.
            then: takes the answer.
            otherwise: takes the sentence of an `Unanswered`; by default it is shown.
        """
        turn = self._turns[slot] = self._turns.get(slot, 0) + 1
        refuse = otherwise or self.refuse

        def work() -> None:
            if turn != self._turns[slot]:
                return  # outdated before its turn came: spare the database
            try:
                answer = question()
            except Unanswered as problem:
                sentence = str(problem)
                self.post_message(self.Answered(slot, turn, lambda: refuse(sentence)))
            else:
                self.post_message(self.Answered(slot, turn, lambda: then(answer)))

        self.run_worker(work, group=slot, thread=True)

    def forget(self, slot: str) -> None:
        """Whatever is still to come for this slot is stale."""
        self._turns[slot] = self._turns.get(slot, 0) + 1

    def on_asking_answered(self, message: Answered) -> None:
        """Use an answer unless it is stale."""
        message.stop()
        if message.turn == self._turns.get(message.slot):
            message.then()

    def refuse(self, sentence: str) -> None:
        """Show why there is no answer."""
        raise NotImplementedError
