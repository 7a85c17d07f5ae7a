"""What is always in view of an object: number, title, whereabouts, warnings, examined, the day."""

from __future__ import annotations

from textual.app import RenderResult
from textual.content import Content
from textual.widget import Widget

from conservedb.questions.answers import AsOf, ObjectAnswer
from conservedb.tui import wording
from conservedb.tui.text import ACCENT, QUIET, STRONG, WARNING, joined, plain, styled, two_ends
from conservedb.tui.you import with_you


class Heading(Widget):
    """Two lines; a day in the past is set off so that it cannot be mistaken for today."""

    DEFAULT_CSS = """
    Heading { height: 2; padding: 0 1; background: $surface; }
    """

    def __init__(self, number: str) -> None:
        super().__init__(id="heading")
        self.number = number
        self.answer: ObjectAnswer | None = None
        self.is_today = True

    def show_object(self, answer: ObjectAnswer, *, is_today: bool) -> None:
        """Show the object on a day."""
        self.answer, self.is_today = answer, is_today
        self.refresh()

    def render(self) -> RenderResult:
        """Two lines."""
        width = self.size.width
        if self.answer is None:
            return joined((plain(self.number, STRONG), styled("reading ...", QUIET)), "  ")
        day = day_sign(self.answer.on, is_today=self.is_today)
        title = joined((plain(self.answer.number, STRONG), plain(self.answer.title, STRONG)), "  ")
        return Content("\n").join(
            (
                two_ends(title, with_you(self.app, day), width),
                self._second(),
            )
        )

    def _second(self) -> Content:
        assert self.answer is not None
        width = self.size.width
        examined = self.answer.last_examined
        right = styled("no examination on record", QUIET)
        if examined is not None:
            right = plain(wording.examined_words(examined), QUIET)
        where = plain(self.answer.whereabouts or "whereabouts not recorded")
        warned = _warnings(self.answer, max(width - where.cell_length - right.cell_length - 4, 14))
        left = joined((where, warned), "  ")
        return two_ends(left, right.truncate(max(width - 30, 10), ellipsis=True), width)


def day_sign(on: AsOf, *, is_today: bool) -> Content:
    """The day that is shown; a day in the past is set off."""
    words = wording.as_of_words(on)
    if is_today:
        return plain(f"today, {words}", QUIET)
    asked = f"as of the end of {words}" if on.is_span else f"as of {words}"
    return plain(f" {asked} ", f"reverse bold {ACCENT}")


def _warnings(answer: ObjectAnswer, room: int) -> Content:
    """As many warnings as there is room for, and how many more."""
    texts = list(dict.fromkeys(one.kind or one.text for one in answer.warnings))
    if not texts:
        return Content("")
    for shown in range(len(texts), 0, -1):
        left_out = sum((one.kind or one.text) not in texts[:shown] for one in answer.warnings)
        more = f" and {left_out} more" if left_out else ""
        words = plain(f"! {', '.join(texts[:shown])}{more}", WARNING)
        if words.cell_length <= room:
            return words
    return plain(f"! {len(answer.warnings)} warnings", WARNING)
