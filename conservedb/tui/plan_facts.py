"""The parts of a removal plan in full, as blocks of labelled lines."""

from __future__ import annotations

from collections.abc import Iterator

from conservedb.knowledge.cautions import BANNER
from conservedb.knowledge.evidence import span
from conservedb.knowledge.plan import Hold, OnNeighbour, Option, Plan, Reading, Refused, Step
from conservedb.tui.details import Fact
from conservedb.tui.removal_drawing import PATHS, judged_layer

Blocks = tuple[tuple[Fact, ...], ...]
NO_LEAVE = "says what is recorded and what to test; it is no leave to go ahead"


def plan_blocks(plan: Plan) -> Blocks:
    """What the plan says as a whole."""
    target = plan.target
    study = "study only: support the parts, and record it, before anything is loosened"
    head: tuple[Fact, ...] = (
        ("carries", plan.carries),
        ("support", plan.support),
        ("this plan", study if plan.study_only else ""),
        ("this plan", NO_LEAVE),
    )
    about: tuple[Fact, ...] = (
        ("layer", f"{target.layer} {target.name}"),
        ("role", target.role),
        ("material", target.material or "not established"),
        ("identity", target.identified or "not recorded how it is known"),
        *(("may also be", one) for one in target.alternatives),
        ("verdict", plan.verdict),
        ("because", plan.verdict_reason),
        ("whole joint", plan.opens),
        *_via(plan),
    )
    last = (
        ("first test", plan.first_test),
        *(("bear in mind", one) for one in plan.cautions),
    )
    return head, about, last


def _via(plan: Plan) -> Iterator[Fact]:
    if plan.via is None:
        return
    yield "through", f"{plan.via.layer} {plan.via.name}"
    yield "on sides", ", ".join(plan.via.sides)
    for condition in plan.via.conditions:
        yield "condition", condition


def option_blocks(plan: Plan, option: Option) -> Blocks:
    """An option of a plan with all its reasons."""
    head: tuple[Fact, ...] = (
        ("way", option.title),
        ("used as", option.form),
        ("works", option.window),
        ("hazard band", option.band),
        ("on", " ".join(judged_layer(plan, option))),
        *_reading("effect", option.target),
    )
    ranks: tuple[Fact, ...] = tuple(("ranked by", one) for one in option.ranked_by)
    cautions: tuple[Fact, ...] = tuple(("caution", one) for one in option.cautions)
    hazards = tuple(_hazards(option))
    figures: tuple[Fact, ...] = tuple(("figure", one) for one in option.figures)
    near = tuple(tuple(_neighbour(one)) for one in option.neighbours)
    none: tuple[Fact, ...] = (("neighbours", "not judged for this way: look before you try"),)
    blocks = (head, *(near or (none,)), ranks, cautions, hazards, figures)
    return tuple(block for block in blocks if block)


def _reading(label: str, reading: Reading) -> Iterator[Fact]:
    yield label, reading.effect
    yield "evidence", reading.evidence
    yield "because", reading.reason
    yield "source", reading.source
    if reading.red is not None:
        yield "RED", f"{span(reading.red)} (below 1 acts, above 2 no effect expected)"
    for line in reading.losing:
        yield "ranks below", line


def _neighbour(near: OnNeighbour) -> Iterator[Fact]:
    yield "on", " ".join(one for one in (near.layer, near.name) if one)
    if near.path != "same place":
        far = f"{near.distance_mm:g} mm away" if near.distance_mm is not None else "near by"
        yield "where", f"{far}, at {near.place}; {PATHS.get(near.path, near.path)}"
    yield from _reading("effect", near.reading)


def _hazards(option: Option) -> Iterator[Fact]:
    if option.hazards:
        yield "hazards", BANNER
    for one in option.hazards:
        checked = f"checked {one.checked}" if one.checked else "not checked"
        source = ", ".join(word for word in (one.source, checked) if word)
        yield one.code, f"{one.agent}: {one.wording} ({source})"


def limit_facts(plan: Plan) -> tuple[Fact, ...]:
    """What the method cannot know."""
    return tuple((str(at), words) for at, words in enumerate(plan.limits, 1))


def hold_facts(hold: Hold) -> tuple[Fact, ...]:
    """What must let go before the joint opens."""
    return (
        ("what", hold.what),
        ("layers", ", ".join(hold.layers)),
        ("verdict", hold.verdict),
        ("because", hold.reason),
    )


def refused_facts(one: Refused) -> tuple[Fact, ...]:
    """A way that is not offered."""
    return (("way", one.title), ("refused", one.reason))


def step_facts(step: Step) -> tuple[Fact, ...]:
    """A step towards knowing what a layer is."""
    return (
        ("step", step.title),
        ("may suggest", step.suggests),
        ("withheld", step.withheld),
        ("", "an answer suggests what it may be; it never establishes it"),
    )
