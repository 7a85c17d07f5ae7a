"""When layers of a material were laid: a bar a decade, certain ones solid, possible hatched."""

from __future__ import annotations

from textual.content import Content
from textual.events import Resize

from conservedb.questions.material_answers import Decade, Whereabouts
from conservedb.tui.text import QUIET, STRONG, UNSURE, joined, plain, styled
from conservedb.tui.widgets.lines import Item, Lines, line_item

CERTAIN_SIGN, POSSIBLE_SIGN = "█", "╱"
LABEL = 6
FIGURES = 10
LEAST_BAR = 4


def count_words(certain: int, possible: int) -> str:
    """ "3, 1?" is three certain and one possible, as everywhere on screen."""
    counts = [str(certain)] if certain or not possible else []
    return ", ".join([*counts, f"{possible}?"] if possible else counts)


class Decades(Lines):
    """How many layers are there, are gone, and were laid in which decade."""

    def __init__(self) -> None:
        super().__init__("decades", marked=False)
        self._where: Whereabouts | None = None

    def show_where(self, where: Whereabouts) -> None:
        """Show other counts."""
        self._where = where
        self._draw_bars()

    def on_resize(self, event: Resize) -> None:
        """Bars are as long as there is room."""
        super().on_resize(event)
        self._draw_bars()

    def _draw_bars(self) -> None:
        if self._where is not None and self.room:
            self.show_items(decade_items(self._where, self.room))


def decade_items(where: Whereabouts, width: int) -> list[Item]:
    """Counts, then the bars, in lines of `width` cells."""
    there = count_words(where.now_certain, where.now_possible)
    gone = count_words(where.gone_certain, where.gone_possible)
    words = [plain("in place ", QUIET), plain(there, STRONG)]
    words += [plain("   gone ", QUIET), plain(gone, STRONG)]
    items = [line_item("counts", joined((Content(" "), *words)))]
    if not where.decades:
        items.append(line_item("none", styled(" no dated layer on record", QUIET)))
    room = max(width - LABEL - FIGURES - 3, LEAST_BAR)
    most = max((one.certain + one.possible for one in where.decades), default=1)
    before: int | None = None
    for one in where.decades:
        if before is not None and one.first > before + 10:
            items.append(line_item(f"gap:{one.first}", styled("     ·", QUIET)))
        before = one.first
        items.append(line_item(f"decade:{one.first}", _bar(one, room, most)))
    if where.undated:
        line = joined((plain(str(where.undated), STRONG), styled("dated to no decade", QUIET)), " ")
        items.append(line_item("undated", joined((Content(" "), line))))
    legend = (
        plain(f" {CERTAIN_SIGN} certain  ", QUIET),
        plain(POSSIBLE_SIGN, UNSURE),
        styled(" possible", QUIET),
    )
    if where.decades:
        items.append(line_item("legend", joined(legend)))
    return items


def _bar(one: Decade, room: int, most: int) -> Content:
    share = min(room / most, 1.0)
    solid = max(round(one.certain * share), bool(one.certain))
    hatched = min(max(round(one.possible * share), bool(one.possible)), max(room - solid, 1))
    return joined(
        (
            plain(f" {decade_name(one.first)} ".rjust(LABEL + 1), QUIET),
            plain(CERTAIN_SIGN * solid),
            plain(POSSIBLE_SIGN * hatched, UNSURE),
            plain(f" {count_words(one.certain, one.possible)}", STRONG),
        )
    )


def decade_name(first: int) -> str:
    """ "1930s"; years before 1 as BC."""
    return f"{first}s" if first > 0 else f"{10 - first}s BC"
