"""The rule about heat brought to a place: what softens, burns or suffers below it.

What is within reach is settled as for water and acid. Unknown softening is said to be unknown:
a layer known by its class only, or of a resin without a figure, is not held to bear heat.
"""

from __future__ import annotations

from collections.abc import Iterator

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_case import Case, Finding, KnownLayer, KnownPlace, Step
from conservedb.knowledge.rule_kinds import NITRATE, may_be
from conservedb.knowledge.rule_reach import Reached, reached, unmeasured
from conservedb.knowledge.rule_step_words import (
    Effect,
    elsewhere,
    not_known,
    step_finding,
    unrecorded,
)
from conservedb.knowledge.rule_warmth import figure_sources, figures_words, lowering, softening
from conservedb.knowledge.rule_words import bracketed
from conservedb.knowledge.warming import GYPSUM_C

STEAM_C = 100.0
"""Water boils at 100 C under normal pressure."""
_RULE = "heat-near-softening"
_BURNS = "decays and may burn with heat"
_MANNERS = (
    "would suffer from such heat",
    f"may be {NITRATE}, which {_BURNS}",
    "may suffer from such heat",
)


def heat_near_softening(case: Case) -> Iterator[Finding]:
    """Steam, hot water or hot air near a layer that softens, burns or suffers below it."""
    step = case.step
    if step is None or not (step.agent.has("heat") or step.temperature_c is not None):
        return
    hot = _temperature(step)
    doubtful: list[Reached] = []
    for one in reached(case, step):
        if one.crossing:
            continue  # a pin: what heat does to what it is set in is said of that
        effects = _heated(case, one, hot)
        missing = [*not_known(one, "softens with heat"), *_perhaps_nitrate(one)]
        if effects and hot is None:
            missing.append(f"how hot the {step.agent.name} gets")
        if effects or missing:
            yield step_finding(_RULE, step, hot, one, effects, missing)
        elif any(map(_unknown, one.matters)):
            doubtful.append(one)
    if doubtful:
        yield _bearing(step, hot, doubtful)
    yield from _elsewhere(case, step, hot)


def _temperature(step: Step) -> float | None:
    if step.temperature_c is None and step.agent.has("heat") and step.agent.has("water"):
        return STEAM_C
    return step.temperature_c


def _heated(case: Case, one: Reached, hot: float | None) -> list[Effect]:
    if one.layer is not None:
        return _layer_heated(case, one.layer, hot)
    return [effect for matter in one.matters if (effect := _suffers(matter, 0.0, hot))]


def _layer_heated(case: Case, layer: KnownLayer, hot: float | None) -> list[Effect]:
    lowered = lowering(layer, case.day, case.settled)
    return [effect for matter in layer.matters if (effect := _suffers(matter, lowered, hot))]


def _suffers(matter: Matter, lowered: float, hot: float | None) -> Effect | None:
    """What a heat, or one of unknown degree, does to a material; None where it softens above."""
    if matter.has(NITRATE):
        return Effect(f"{matter.name} {_BURNS}")
    found = softening(matter, lowered)
    if found is not None and (hot is None or hot >= found.low):
        low = "; lowered while solvent may remain" if lowered else ""
        words = f"{matter.name} softens from {found.low:g} C: {figures_words(found)}{low}"
        certain = hot is None or hot >= found.low + lowered
        return Effect(words, certain and not found.remembered, figure_sources(found))
    if matter.has("gypsum") and (hot is None or hot >= GYPSUM_C):
        return Effect(f"{matter.name}: gypsum loses water from {GYPSUM_C:g} C (CCI Notes 12/2)")
    if matter.has("heat-sensitive"):
        trait = matter.traits["heat-sensitive"]
        why = trait.effect or "is recorded as sensitive to heat"
        return Effect(
            f"{matter.name}: {why}{bracketed(shortly(trait.source))}", True, (trait.source,)
        )
    return None


# -- what is not recorded -----------------------------------------------------------------


def _perhaps_nitrate(one: Reached) -> list[str]:
    """What is known by a class only may be nitrate, whatever else of its class it is."""
    ref = one.key[0] or one.key[1]
    perhaps = [it for it in one.matters if may_be(it, NITRATE) and not it.has(NITRATE)]
    nitrate = [f"whether {ref} ({it.name}) is {NITRATE}, which {_BURNS}" for it in perhaps]
    return nitrate + [what for it in perhaps if (what := _unknown(it))]


def _unknown(matter: Matter) -> str:
    """What is not recorded of a material that is not known to suffer; "" where it bears heat."""
    firm = matter.lacks("heat-sensitive") or matter.has("no solvent")
    if not firm and softening(matter) is None:
        return f"softening of {matter.name}"
    return f"whether {matter.name} bears heat" if may_be(matter, "heat-sensitive") else ""


def _bearing(step: Step, hot: float | None, doubtful: list[Reached]) -> Finding:
    found = [(one, matter) for one in doubtful for matter in one.matters if _unknown(matter)]
    names = [f"{matter.name}{bracketed(*one.key, _why(matter))}" for one, matter in found]
    missing = [_unknown(matter) for _, matter in found]
    return unrecorded(_RULE, step, hot, doubtful, names, missing)


def _why(matter: Matter) -> str:
    trait = matter.traits.get("heat-sensitive")
    return trait.effect if trait is not None else ""


def _elsewhere(case: Case, step: Step, hot: float | None) -> Iterator[Finding]:
    """What lies on the same component at no recorded distance: what suffers, what may suffer."""
    found: dict[str, list[tuple[KnownPlace, KnownLayer]]] = {manner: [] for manner in _MANNERS}
    suffer, nitrate, doubtful = found.values()
    for place, layer in unmeasured(case, step):
        if _layer_heated(case, layer, hot):
            suffer.append((place, layer))
        elif any(may_be(matter, NITRATE) for matter in layer.matters):
            nitrate.append((place, layer))
        elif not layer.matters or any(map(_unknown, layer.matters)):
            doubtful.append((place, layer))
    for manner, layers in found.items():
        if layers:
            yield elsewhere(_RULE, step, layers, manner)
