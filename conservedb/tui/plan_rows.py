"""A removal plan as entries of a list: first test, steps, ranked options, and what stands below."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from textual.content import Content

from conservedb.knowledge.plan import GROUPS, Option, Plan
from conservedb.questions.removal_answers import RemovalAnswer
from conservedb.tui import plan_facts
from conservedb.tui.effects import effect_words, evidence_words, worst_nearby
from conservedb.tui.plan_facts import Blocks
from conservedb.tui.text import QUIET, STRONG, WARNING, joined, plain, prose, styled
from conservedb.tui.widgets.lines import Item, always, line_item

HEADING = "bold $marked"
INDENT = 4
EFFECT, WORST, BAND = 15, 19, 5
LEAST_TITLE, LEAST_EVIDENCE, MOST_EVIDENCE = 16, 12, 26


@dataclass
class Rows:
    """Entries of the list; the option, and the title and full text, behind each."""

    width: int
    items: list[Item] = field(default_factory=list)
    options: dict[str, Option] = field(default_factory=dict)
    full: dict[str, tuple[str, Blocks]] = field(default_factory=dict)

    def heading(self, title: str, remark: str = "") -> None:
        """The name of a group."""
        above = (Content(""),) if self.items else ()
        line = joined((plain(title, HEADING), plain(remark, QUIET)), "  ")
        self.items.append(line_item(f"heading:{title}", *above, line))

    def add(self, key: str, lines: Sequence[Content], title: str, blocks: Blocks) -> None:
        """An entry, and what is read when it is opened."""
        self.items.append(Item(key, always(*lines), len(lines)))
        self.full[key] = (title, blocks)

    def note(self, key: str, words: str, style: str = QUIET) -> None:
        """A remark at which the cursor does not stop, wrapped."""
        self.items.append(line_item(key, *prose(words, style).wrap(self.width)))

    def pair(self, key: str, left: Content, words: str, title: str, blocks: Blocks) -> None:
        """An entry of a name, and words beside it that go on below."""
        beside = left.cell_length + 2 <= self.width // 3
        margin = Content(" " * (left.cell_length + 2 if beside else INDENT))
        said = prose(words, QUIET).wrap(max(self.width - margin.cell_length, 12)) or [Content("")]
        lines = [joined((margin, one)) for one in said]
        if beside:
            lines[0] = joined((left, Content("  "), said[0]))
        else:
            lines.insert(0, left.truncate(self.width, ellipsis=True))
        self.add(key, lines, title, blocks)


def plan_rows(answer: RemovalAnswer, width: int) -> Rows:
    """The plan, composed for `width` cells."""
    rows, plan = Rows(width), answer.plan
    blocks = plan_facts.plan_blocks(plan)
    rows.pair("plan", plain("first test", STRONG), plan.first_test, "The plan", blocks)
    _steps(rows, plan)
    _options(rows, answer)
    _refused(rows, plan)
    _holds(rows, plan)
    _remarks(rows, plan)
    return rows


def first_entry(rows: Rows, plan: Plan) -> str:
    """Where to begin: at the best option, or at the steps where nobody knows what it is."""
    return "plan" if plan.sequence else next(iter(rows.options), "plan")


def _steps(rows: Rows, plan: Plan) -> None:
    if plan.sequence:
        rows.heading("Steps towards knowing what it is", "in this order; nothing concludes")
    for at, step in enumerate(plan.sequence, 1):
        withheld = plain("withheld" if step.withheld else "", WARNING)
        left = joined((plain(f"{at:2} {step.title}", STRONG), withheld), "  ")
        words = step.withheld or step.suggests
        rows.pair(f"step:{at}", left, words, f"Step {at}", (plan_facts.step_facts(step),))


# -- options --------------------------------------------------------------------------------


def _options(rows: Rows, answer: RemovalAnswer) -> None:
    plan = answer.plan
    if plan.sequence:
        rows.heading("Ways on what is recorded")
    if plan.options:
        rows.items.append(line_item("columns", _columns(plan, rows.width)))
    else:
        rows.note("none", "none to be offered on what is recorded")
    for group in GROUPS:
        found = [one for one in plan.options if one.group == group]
        if found:
            words = f"{group.capitalize()} ({len(found)})"
            rows.items.append(line_item(f"group:{group}", plain(words, "bold")))
        for option in found:
            _option(rows, plan, option)
    if plan.hidden:
        rows.note("hidden", f"{plan.hidden} beyond band {answer.widest_band} hidden (+ shows more)")
    if plan.more:
        rows.note("more", f"{plan.more} predictions that rank below these are left out")


def _option(rows: Rows, plan: Plan, option: Option) -> None:
    key = f"option:{option.kind}:{option.title}:{option.form}:{option.window}"
    while key in rows.options:
        key += "+"
    rows.options[key] = option
    lines = (option_line(option, plan.target.layer, rows.width),)
    rows.add(key, lines, option.title, plan_facts.option_blocks(plan, option))


def _evidence_room(width: int) -> int:
    """Cells for the evidence: what the other columns leave, between short words and full ones."""
    left = width - 2 - EFFECT - WORST - BAND
    return min(max(left - 34, LEAST_EVIDENCE), MOST_EVIDENCE)


def _title_room(width: int) -> int:
    return max(width - 2 - EFFECT - WORST - BAND - _evidence_room(width), LEAST_TITLE)


def _columns(plan: Plan, width: int) -> Content:
    target = "on the barrier" if plan.via else "on the layer"
    heads = ("  agent or way", target, "worst nearby", "band", "evidence")
    rooms = (_title_room(width) + 2, EFFECT, WORST, BAND, _evidence_room(width))
    cells = [plain(head.ljust(room)[:room], QUIET) for head, room in zip(heads, rooms, strict=True)]
    return joined(cells)


def option_line(option: Option, target: str, width: int) -> Content:
    """Title, effect on the target, worst effect nearby, hazard band, evidence."""
    room, last = _title_room(width), _evidence_room(width)
    form = "" if option.form in ("", "swab") else option.form
    words = joined((plain(option.title), plain(form, QUIET)), ", ")
    worst = worst_nearby(option, target)
    nearby = styled("not judged", QUIET)
    if worst is not None:
        nearby = effect_words(worst.effect, wanted=False, short=True)
    cells = (
        (words, room),
        (effect_words(option.target.effect, wanted=True, short=True), EFFECT),
        (nearby, WORST),
        (plain(option.band or "-", WARNING if option.band in ("C", "D") else ""), BAND),
        (evidence_words(option.target.evidence, room=last), last),
    )
    drawn = [_cell(content, size) for content, size in cells]
    return joined((Content("  "), *drawn)).truncate(width, ellipsis=True)


def _cell(content: Content, room: int) -> Content:
    """Content cut or filled to a width, with a gap at its end."""
    cut = content.truncate(max(room - 1, 1), ellipsis=True)
    return cut.pad_right(max(room - cut.cell_length, 0))


# -- below the options ----------------------------------------------------------------------


def _refused(rows: Rows, plan: Plan) -> None:
    if plan.refused:
        rows.heading("Not offered here")
    for at, one in enumerate(plan.refused):
        left = plain(one.title, WARNING)
        blocks = (plan_facts.refused_facts(one),)
        rows.pair(f"refused:{at}", left, one.reason, one.title, blocks)


def _holds(rows: Rows, plan: Plan) -> None:
    if plan.holds or plan.opens:
        rows.heading("What must let go before the joint opens")
    if plan.opens:
        rows.note("opens", f"whole joint: {plan.opens}", "")
    for at, hold in enumerate(plan.holds):
        left = joined((plain(hold.what, STRONG), plain(hold.verdict)), "  ")
        blocks = (plan_facts.hold_facts(hold),)
        rows.pair(f"hold:{at}", left, hold.reason, hold.what, blocks)
    if plan.via is not None:
        rows.heading("Released through", f"{plan.via.layer} {plan.via.name}")
        for at, condition in enumerate(plan.via.conditions):
            rows.note(f"condition:{at}", condition)


def _remarks(rows: Rows, plan: Plan) -> None:
    if plan.cautions:
        rows.heading("Bear in mind")
    for at, caution in enumerate(plan.cautions):
        lines = prose(caution).wrap(rows.width)
        rows.add(f"caution:{at}", lines, "Bear in mind", ((("", caution),),))
    rows.heading("Limits of the method", f"{len(plan.limits)}; i reads them all")
    words = f"this plan {plan_facts.NO_LEAVE}"
    lines = prose(words, QUIET).wrap(rows.width)
    rows.add("limits", lines, "Limits of the method", (plan_facts.limit_facts(plan),))
