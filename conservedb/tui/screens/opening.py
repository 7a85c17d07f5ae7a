"""Which screen shows what was found."""

from __future__ import annotations

from typing import TYPE_CHECKING

from textual.screen import Screen

if TYPE_CHECKING:
    from conservedb.questions.answers import AsOf, Hit
    from conservedb.tui.reading import Reading


def screen_of(reading: Reading, hit: Hit, on: AsOf | None = None) -> Screen[None] | None:
    """The screen of a treatment, object, part, location or material; None for what has none.

    Of a person it is research, asked for what that person took part in.

    Args:
        on: the day on which a material is to be shown; today by default.
    """
    if hit.kind == "treatment":
        from conservedb.tui.screens.treatment import TreatmentScreen

        return TreatmentScreen(reading, hit.object, hit.mark)
    if hit.object:
        from conservedb.tui.screens.object import ObjectScreen

        return ObjectScreen(reading, hit.object, hit.mark)
    if hit.kind == "material":
        from conservedb.tui.screens.material import MaterialScreen

        return MaterialScreen(reading, hit.detail, on)
    if hit.kind == "person":
        from conservedb.knowledge.research import Condition, Research
        from conservedb.tui.screens.research import ResearchScreen

        took_part = Research("interventions", Condition("person", hit.label))
        return ResearchScreen(reading, took_part)
    return None
