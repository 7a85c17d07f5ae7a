"""What is on record about a material, as entries of a list in groups, each with its full text."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from textual.content import Content

from conservedb.questions.material_answers import (
    BANNER,
    MaterialAnswer,
    Name,
    Parameters,
    Property,
    Told,
    TraitRow,
)
from conservedb.tui import wording
from conservedb.tui.details import Fact
from conservedb.tui.text import QUIET, STRONG, UNSURE, WARNING, joined, plain
from conservedb.tui.value_lines import scales, value_lines
from conservedb.tui.widgets.lines import Item, always, line_item

HEADING = "bold $marked"


@dataclass
class Rows:
    """Entries of the list, what is read when one is opened, and to which material some lead."""

    width: int
    items: list[Item] = field(default_factory=list)
    full: dict[str, tuple[str, tuple[Fact, ...]]] = field(default_factory=dict)
    leads: dict[str, str] = field(default_factory=dict)

    def heading(self, title: str, remark: str = "") -> None:
        """The name of a group."""
        above = (Content(""),) if self.items else ()
        lines = [joined((plain(title, HEADING), plain(remark, QUIET)), "  ")]
        self.items.append(line_item(f"heading:{title}", *above, *lines))

    def add(self, key: str, title: str, lines: Sequence[Content], *facts: Fact) -> None:
        """An entry, and what is read when it is opened."""
        self.items.append(Item(key, always(*lines), len(lines)))
        self.full[key] = (title, facts)


def material_rows(answer: MaterialAnswer, width: int) -> Rows:
    """Every value on record, composed for `width` cells."""
    rows = Rows(width)
    _names(rows, answer)
    _hazards(rows, answer)
    _properties(rows, answer)
    _parameters(rows, answer)
    _solubilities(rows, answer)
    _traits(rows, answer)
    _periods(rows, answer)
    _relations(rows, answer)
    return rows


def told_facts(told: Told, of: str = "") -> Iterator[Fact]:
    """How a value is known, in full."""
    yield "known", told.standing
    yield "source", wording.source_or_not(told.source)
    yield "value of", of
    yield "note", told.note


# -- names ----------------------------------------------------------------------------------


def _names(rows: Rows, answer: MaterialAnswer) -> None:
    rows.heading("Names", "key " + answer.key)
    words = (
        ("also called", "; ".join(answer.aliases)),
        ("sold as", "; ".join(answer.trade_names)),
        ("note", answer.note),
    )
    for label, value in words:
        if value:
            lines = value_lines(label, value, None, rows.width, style="")
            rows.add(f"name:{label}", answer.name, lines, (label, value))
    if answer.behaves_as:
        _leads(rows, "behaves as", answer.behaves_as, "its values are read for this one")


def _relations(rows: Rows, answer: MaterialAnswer) -> None:
    """What leads to other materials: classes, recipes, members."""
    if answer.classes or answer.parts or answer.recipes:
        rows.heading("Classes and recipes", "Enter opens one")
    for above in answer.classes:
        _leads(rows, "in the class", above)
    for part in answer.parts:
        amount = f"{part.amount:g} {part.unit}" if part.amount is not None else part.unit
        how = ", ".join(one for one in (amount, part.note) if one)
        _leads(rows, "contains", Name(part.key, part.name), how)
    for recipe in answer.recipes:
        _leads(rows, "is a part of", recipe)
    for title, names in (
        ("Classes in it", answer.subclasses),
        ("Materials in it", answer.members),
    ):
        if names:
            rows.heading(title, str(len(names)))
        for name in names:
            _leads(rows, name.key, name)


def _leads(rows: Rows, label: str, name: Name, how: str = "") -> None:
    """A name that leads to another material or class."""
    lines = value_lines(label, name.name, None, rows.width, how=how, style="")
    key = f"go:{len(rows.leads)}"
    rows.add(key, name.name, lines, (label, name.said))
    rows.leads[key] = name.key


# -- values ---------------------------------------------------------------------------------


def _properties(rows: Rows, answer: MaterialAnswer) -> None:
    if not answer.properties:
        return
    rows.heading("Properties")
    for group in answer.properties:
        _property(rows, group)


def _property(rows: Rows, group: Property) -> None:
    label = group.name
    if group.differ:
        line = joined((plain(label, STRONG), plain(f"! {group.differ}", UNSURE)), "  ")
        rows.items.append(line_item(f"differ:{label}", line))
    shown = "" if group.differ else label
    for at, (value, scale) in enumerate(zip(group.values, scales(group.values), strict=True)):
        lines = value_lines(
            shown,
            value.said,
            value.told,
            rows.width,
            of=value.of,
            below=value.condition,
            scale=scale,
        )
        facts = (
            (label, value.said),
            ("condition", value.condition or "not recorded"),
            ("beside others", group.differ),
            *told_facts(value.told, value.of),
        )
        rows.add(f"value:{label}:{at}", label, lines, *facts)
        shown = ""


def _parameters(rows: Rows, answer: MaterialAnswer) -> None:
    if answer.hansen:
        rows.heading("Hansen parameters", "d / p / h in MPa^0.5, and the radius of a sphere")
    for at, one in enumerate(answer.hansen):
        figures = " / ".join(f"{part:g}" for part in one.at)
        radius = f"R0 {one.r0:g}" if one.r0 is not None else ""
        how = ", ".join(word for word in (radius, one.use) if word)
        below = "; ".join(word for word in (one.quality, one.condition) if word)
        label = "preferred" if one.preferred else "also published"
        lines = value_lines(label, figures, one.told, rows.width, of=one.of, how=how, below=below)
        rows.add(f"hansen:{at}", "Hansen parameters", lines, *_sphere_facts(one))
    _teas(rows, answer)


def _sphere_facts(one: Parameters) -> Iterator[Fact]:
    yield "d / p / h", " / ".join(f"{part:g}" for part in one.at) + " MPa^0.5"
    yield "radius", f"{one.r0:g} MPa^0.5" if one.r0 is not None else ""
    yield "preferred", "yes" if one.preferred else "no"
    yield "use", one.use
    yield "quality", one.quality
    yield "condition", one.condition
    yield "as Teas", f"{_thirds(one.converted)}: converted from these, not published"
    yield from told_facts(one.told, one.of)


def _thirds(fractions: Iterable[float]) -> str:
    return " / ".join(f"{part:.3g}" for part in fractions)


def _teas(rows: Rows, answer: MaterialAnswer) -> None:
    if not (answer.teas or answer.hansen):
        return
    rows.heading("Teas fractions", "d / p / h; published and converted are never mixed")
    for at, one in enumerate(answer.teas):
        figures = _thirds(one.at)
        lines = value_lines("published", figures, one.told, rows.width, of=one.of)
        facts = (("published", figures), *told_facts(one.told, one.of))
        rows.add(f"teas:{at}", "Teas fractions", lines, *facts)
    for sphere in answer.hansen[:1]:
        how = "from the preferred Hansen parameters"
        figures = _thirds(sphere.converted)
        lines = value_lines("converted", figures, None, rows.width, how=how, style="")
        rows.add("teas:converted", "Teas fractions", lines, ("converted", f"{figures}, {how}"))


def _solubilities(rows: Rows, answer: MaterialAnswer) -> None:
    if answer.solubilities:
        rows.heading("Solubility", "what agents were seen to do")
    for at, one in enumerate(answer.solubilities):
        age = "age not stated" if one.state == "not stated" else one.state
        below = "; ".join(word for word in (one.use, one.condition) if word)
        lines = value_lines(
            f"{age}: {one.effect}", one.agent, one.told, rows.width, of=one.of, below=below
        )
        facts = (
            ("agent", one.agent),
            ("effect", one.effect),
            ("material", age),
            ("use", one.use or "not recorded"),
            ("condition", one.condition),
            *told_facts(one.told, one.of),
        )
        rows.add(f"solubility:{at}", f"In {one.agent}", lines, *facts)


def _traits(rows: Rows, answer: MaterialAnswer) -> None:
    if answer.traits:
        rows.heading("Traits", "its own, and the rules of its classes")
    for at, one in enumerate(answer.traits):
        whose = _bearer(one)
        lines = value_lines(
            one.trait,
            one.holds,
            one.told,
            rows.width,
            how=whose if one.counts else f"set aside; {whose}",
            below=one.effect,
            style=STRONG if one.counts else QUIET,
        )
        aside = "" if one.counts else "a nearer rule says otherwise, and counts"
        facts = (
            (one.trait, one.holds),
            ("effect", one.effect),
            ("from", whose),
            ("set aside", aside),
            *told_facts(one.told),
        )
        rows.add(f"trait:{at}", one.trait, lines, *facts)


def _bearer(one: TraitRow) -> str:
    return f"{'class' if one.inherited else 'of'} {one.bearer.name}"


def _periods(rows: Rows, answer: MaterialAnswer) -> None:
    if answer.periods:
        rows.heading("Periods")
    for at, one in enumerate(answer.periods):
        lines = value_lines(one.mark, one.date.said, one.told, rows.width, of=one.of)
        facts = (
            (one.mark, one.date.said),
            ("between", wording.bounds_words(one.date)),
            *told_facts(one.told, one.of),
        )
        rows.add(f"period:{at}", "Period", lines, *facts)


# -- hazards --------------------------------------------------------------------------------


def _hazards(rows: Rows, answer: MaterialAnswer) -> None:
    if not (answer.hazards or answer.limits or answer.restrictions):
        return
    rows.heading("Hazards")
    rows.items.append(line_item("banner", plain(BANNER, WARNING)))
    for at, one in enumerate(answer.hazards):
        checked = f"checked {one.checked.said}" if one.checked.recorded else "not checked"
        band = f"{one.code}  band {one.band}" if one.band else one.code
        lines = value_lines(band, one.wording, one.told, rows.width, how=checked)
        facts = (
            (one.code, one.wording),
            ("band", one.band),
            ("checked", checked),
            *told_facts(one.told),
            ("", BANNER),
        )
        rows.add(f"hazard:{at}", f"Hazard {one.code}", lines, *facts)
    _limits(rows, answer)
    for at, law in enumerate(answer.restrictions):
        since = f"since {law.since.said}" if law.since.recorded else ""
        lines = value_lines("restricted", law.text, law.told, rows.width, how=law.jurisdiction)
        facts = (("in", law.jurisdiction), ("", law.text), ("since", since), *told_facts(law.told))
        rows.add(f"law:{at}", "Restriction", lines, *facts)


def _limits(rows: Rows, answer: MaterialAnswer) -> None:
    for at, one in enumerate(answer.limits):
        dated = one.as_of.said if one.as_of.recorded else "date of the table not recorded"
        times = f"saturated air at 20 C holds {one.ratio:.0f} times this" if one.ratio else ""
        lines = value_lines(
            "exposure limit",
            one.said,
            one.told,
            rows.width,
            how=f"{one.jurisdiction}, {dated}",
            below=times,
        )
        facts = (
            ("limit", one.said),
            ("jurisdiction", one.jurisdiction),
            ("as of", dated),
            ("vapour", times),
            *told_facts(one.told),
            ("", BANNER),
        )
        rows.add(f"limit:{at}", "Exposure limit", lines, *facts)
