"""A sheet laid over the screen: help, legend, warnings, or a record in full."""

from __future__ import annotations

from collections.abc import Sequence

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import Static

from conservedb.tui.actions import MOTIONS, actions_of
from conservedb.tui.hatching import LEGEND, drawn
from conservedb.tui.text import STRONG, joined, plain, styled

SAMPLE = 12
STATES = (
    ("present", "whole", "in place"),
    ("reduced", "whole", "partly removed: residue left"),
    ("uncertain", "whole", "not established"),
    ("gone", "whole", "removed or lost, or not yet there"),
    ("present", "part", "covers a part"),
    ("present", "spots", "in spots"),
)


class Sheet(ModalScreen[None]):
    """Text in front of the screen; any of Esc, Enter, q puts it away."""

    CSS_PATH = "sheet.tcss"
    BINDINGS = [Binding("escape,enter,q,f1,question_mark", "dismiss", show=False)]  # noqa: RUF012
    AUTO_FOCUS = "#sheet"

    def __init__(self, title: str, body: Content) -> None:
        super().__init__()
        self._title, self._body = title, body

    def compose(self) -> ComposeResult:
        """A framed, scrolling text."""
        with VerticalScroll(id="sheet") as sheet:
            sheet.border_title = plain(self._title)
            sheet.border_subtitle = plain("Esc closes")
            yield Static(self._body)


def help_sheet(where: str) -> Sheet:
    """Every key of a screen."""
    width = max(len(motion.shown) for motion in MOTIONS) + 2
    lines: list[Content] = []
    for action in actions_of(where):
        keys = ", ".join(dict.fromkeys((action.shown, *_other_keys(action.keys, action.shown))))
        lines.append(_entry(keys, f"{action.title}. {action.help}", width))
    lines.append(Content(""))
    lines += [_entry(motion.shown, motion.help, width) for motion in MOTIONS]
    return Sheet("Keys", joined_lines(lines))


def legend_sheet() -> Sheet:
    """Hatches of roles, and how states and coverage change them."""
    lines: list[Content] = [styled("Roles", STRONG)]
    for hatch in LEGEND:
        for row in (0, 1):
            sample = styled(drawn(hatch, SAMPLE, row), hatch.style)
            words = styled(hatch.words if row == 0 else "", "")
            lines.append(Content.assemble(sample, "  ", words))
    lines += [Content(""), styled("States and coverage, shown on an adhesive", STRONG)]
    adhesive = LEGEND[6]
    for state, cover, words in STATES:
        for row in (0, 1):
            sample = styled(drawn(adhesive, SAMPLE, row, state, cover), adhesive.style)
            lines.append(Content.assemble(sample, "  ", words if row == 0 else ""))
    lines += [Content(""), styled("Fixings that cross the joint", STRONG)]
    lines.append(styled("║  in place        ┊  not established"))
    return Sheet("Legend", joined_lines(lines))


def text_sheet(title: str, blocks: Sequence[Content]) -> Sheet:
    """Records in full."""
    return Sheet(title, Content("\n\n").join(blocks))


def joined_lines(lines: Sequence[Content]) -> Content:
    """Lines one below the other, empty ones kept."""
    return Content("\n").join(lines)


def _entry(keys: str, words: str, width: int) -> Content:
    return joined((styled(keys.ljust(width), "bold $marked"), styled(words)))


def _other_keys(keys: Sequence[str], shown: str) -> list[str]:
    written = {"question_mark": "?", "ctrl+q": "Ctrl+Q"}
    return [written[key] for key in keys if key in written and written[key] != shown]
