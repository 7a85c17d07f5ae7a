"""Rules about a planned step: what heat, water or acid brought to one place may reach.

What lies at the place, what bears it, what crosses it, what has soaked into the bearer, and
what lies at places recorded as near are held to be within reach. What else lies on the same
component, at no recorded distance, is named as not known.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_case import Case, Finding, KnownLayer, KnownPlace, Step
from conservedb.knowledge.rule_reach import Reached, reached, unmeasured
from conservedb.knowledge.rule_warmth import (
    figure_sources,
    figures_words,
    lowering,
    softening,
)
from conservedb.knowledge.rule_words import bracketed, layer_words, listed, load_words
from conservedb.knowledge.warming import GYPSUM_C

STEAM_C = 100.0
"""Water boils at 100 C under normal pressure."""
_WETTED = ("water-sensitive", "gypsum", "soluble salt", "iron")
_HARM = {
    "water-sensitive": "suffers from water",
    "gypsum": "gypsum, which water dissolves slowly",
    "soluble salt": "a soluble salt, which water moves",
    "iron": "iron, which rusts",
    "acid-sensitive": "acid eats it",
}
_NAMED = 8


class _Effect(NamedTuple):
    """What heat does to a material; `sure` where that is more than a memory."""

    words: str
    sure: bool = True
    sources: tuple[str, ...] = ()


# -- heat ---------------------------------------------------------------------------------


def heat_near_softening(case: Case) -> Iterator[Finding]:
    """Steam, hot water or hot air near a layer that softens, burns or suffers below it."""
    step = case.step
    if step is None or not (step.agent.has("heat") or step.temperature_c is not None):
        return
    hot = _temperature(step)
    for one in reached(case, step):
        if one.crossing:
            continue  # a pin: what heat does to what it is set in is said of that
        effects = _heated(case, one, hot)
        missing = _not_known(one, "softens with heat")
        if effects and hot is None:
            missing.append(f"how hot the {step.agent.name} gets")
        if effects or missing:
            yield _finding("heat-near-softening", step, hot, one, effects, missing)
    low = [
        (place, layer) for place, layer in unmeasured(case, step) if _layer_heated(case, layer, hot)
    ]
    if low:
        yield _elsewhere("heat-near-softening", step, low, "suffer from such heat")


def _temperature(step: Step) -> float | None:
    if step.temperature_c is None and step.agent.has("heat") and step.agent.has("water"):
        return STEAM_C
    return step.temperature_c


def _heated(case: Case, one: Reached, hot: float | None) -> list[_Effect]:
    if one.layer is not None:
        return _layer_heated(case, one.layer, hot)
    return [effect for matter in one.matters if (effect := _suffers(matter, 0.0, hot))]


def _layer_heated(case: Case, layer: KnownLayer, hot: float | None) -> list[_Effect]:
    lowered = lowering(layer, case.day, case.settled)
    return [effect for matter in layer.matters if (effect := _suffers(matter, lowered, hot))]


def _suffers(matter: Matter, lowered: float, hot: float | None) -> _Effect | None:
    """What a heat, or one of unknown degree, does to a material; None where it softens above."""
    if matter.has("cellulose nitrate"):
        return _Effect(f"{matter.name} decays and may burn with heat")
    found = softening(matter, lowered)
    if found is not None and (hot is None or hot >= found.low):
        low = "; lowered while solvent may remain" if lowered else ""
        words = f"{matter.name} softens from {found.low:g} C: {figures_words(found)}{low}"
        certain = hot is None or hot >= found.low + lowered
        return _Effect(words, certain and not found.remembered, figure_sources(found))
    if matter.has("gypsum") and (hot is None or hot >= GYPSUM_C):
        return _Effect(f"{matter.name}: gypsum loses water from {GYPSUM_C:g} C (CCI Notes 12/2)")
    if matter.has("heat-sensitive"):
        trait = matter.traits["heat-sensitive"]
        why = trait.effect or "is recorded as sensitive to heat"
        return _Effect(
            f"{matter.name}: {why}{bracketed(shortly(trait.source))}", True, (trait.source,)
        )
    return None


# -- water and acid -----------------------------------------------------------------------


def water_near_sensitive(case: Case) -> Iterator[Finding]:
    """Water near gypsum, iron, soluble salts, or what water harms."""
    yield from _wetted(case, "water-near-sensitive", "water", _WETTED)


def acid_on_calcite(case: Case) -> Iterator[Finding]:
    """Acid on calcite, or on another material that it eats."""
    yield from _wetted(case, "acid-on-calcite", "acid", ("acid-sensitive",))


def _wetted(case: Case, rule: str, agent: str, traits: tuple[str, ...]) -> Iterator[Finding]:
    step = case.step
    if step is None or not step.agent.has(agent):
        return
    unrecorded: list[Reached] = []
    for one in reached(case, step):
        effects = [effect for matter in one.matters for effect in _harmed(matter, traits)]
        missing = _not_known(one, f"suffers from {agent}")
        if effects and not one.sure:
            missing.append(f"whether the {step.agent.name} gets there")
        if effects or missing:
            yield _finding(rule, step, step.temperature_c, one, effects, missing)
        elif any(not _ruled_out(matter, traits) for matter in one.matters):
            unrecorded.append(one)
    if unrecorded:
        yield _bearing(rule, step, agent, unrecorded)


def _harmed(matter: Matter, traits: tuple[str, ...]) -> list[_Effect]:
    """Why a material suffers, or its parts; none where none of the traits is recorded."""
    for trait in traits:
        if matter.has(trait):
            found = matter.traits[trait]
            why = f"{found.effect or _HARM[trait]}{bracketed(shortly(found.source))}"
            return [_Effect(f"{matter.name}: {why}", sources=(found.source,))]
    return [effect for part in matter.parts for effect in _harmed(part, traits)]


def _ruled_out(matter: Matter, traits: tuple[str, ...]) -> bool:
    """Whether somebody recorded that the material itself does not suffer."""
    return matter.lacks(traits[0])


def _not_known(one: Reached, suffers: str) -> list[str]:
    if one.matters:
        return []
    ref = one.layer.ref if one.layer is not None else one.part.mark if one.part else ""
    return [f"what {ref} is made of, and whether it {suffers}"]


# -- wording ------------------------------------------------------------------------------


def _finding(
    rule: str,
    step: Step,
    hot: float | None,
    one: Reached,
    effects: list[_Effect],
    missing: list[str],
) -> Finding:
    harm = listed(effect.words for effect in effects) or "what it would do cannot be told"
    sure = not effects or any(effect.sure for effect in effects)
    load = f"; {load_words(one.place)}" if one.place.kind == "joint" else ""
    sentence = (
        f"{step_words(step, hot)} at {step.place}: {one.name}"
        f"{' crosses the joint' if one.crossing else ' lies'} {one.words}"
        f"{f' ({one.place.mark})' if one.place.mark != step.place else ''}; {harm}{load}."
    )
    return Finding(
        rule,
        sentence,
        places=tuple(dict.fromkeys((one.place.mark, step.place))),
        components=(one.part.mark,) if one.part is not None else (),
        layers=(one.layer.ref,) if one.layer is not None else (),
        missing=tuple(missing),
        certain=one.sure and one.known and sure,
        load_kg=one.place.load_kg if one.place.kind == "joint" else None,
        sources=tuple(source for effect in effects for source in effect.sources if source),
    )


def step_words(step: Step, hot: float | None = None) -> str:
    """A planned step: agent, form, temperature and dwell."""
    said = [step.agent.name, step.form]
    if hot is not None:
        said.append(f"{hot:g} C")
    if step.dwell_min is not None:
        said.append(f"{step.dwell_min:g} min")
    return ", ".join(word for word in said if word)


def _elsewhere(
    rule: str, step: Step, layers: list[tuple[KnownPlace, KnownLayer]], suffer: str
) -> Finding:
    named = [f"{place.mark} {layer_words(layer)}" for place, layer in layers[:_NAMED]]
    more = f" and {len(layers) - _NAMED} more" if len(layers) > _NAMED else ""
    places = tuple(dict.fromkeys(place.mark for place, _ in layers))
    return Finding(
        rule,
        f"on the same component as {step.place} lie layers that would {suffer}:"
        f" {'; '.join(named)}{more}.",
        places=(step.place, *places),
        layers=tuple(layer.ref for _, layer in layers),
        missing=(
            f"how far {listed(places)} {'is' if len(places) == 1 else 'are'} from {step.place}",
        ),
        certain=False,
    )


def _bearing(rule: str, step: Step, agent: str, unrecorded: list[Reached]) -> Finding:
    trait = f"{agent}-sensitive"
    names = dict.fromkeys(
        f"{matter.name}{bracketed(matter.traits[trait].effect) if trait in matter.traits else ''}"
        for one in unrecorded
        for matter in one.matters
        if not matter.lacks(trait)
    )
    return Finding(
        rule,
        f"{step_words(step, step.temperature_c)} at {step.place} also reaches what is of"
        f" {listed(names)}.",
        places=tuple(dict.fromkeys((step.place, *(one.place.mark for one in unrecorded)))),
        layers=tuple(one.layer.ref for one in unrecorded if one.layer is not None),
        components=tuple(one.part.mark for one in unrecorded if one.part is not None),
        missing=(f"whether each of these bears {agent}",),
        certain=False,
    )
