"""Rules about a planned step: what water or acid brought to one place may reach.

What lies at the place, what bears it, what crosses it, what has soaked into the bearer, and
what lies at places recorded as near are held to be within reach. What else lies on the same
component, at no recorded distance, is named as not known. Heat has a module of its own.
"""

from __future__ import annotations

from collections.abc import Iterator

from conservedb.knowledge.behaviour import Matter
from conservedb.knowledge.evidence import shortly
from conservedb.knowledge.rule_case import Case, Finding, KnownLayer, KnownPlace, Step
from conservedb.knowledge.rule_reach import Reached, reached, unmeasured
from conservedb.knowledge.rule_step_words import (
    Effect,
    elsewhere,
    not_known,
    step_finding,
    unrecorded,
)
from conservedb.knowledge.rule_words import bracketed

_WETTED = ("water-sensitive", "gypsum", "soluble salt", "iron")
_HARM = {
    "water-sensitive": "suffers from water",
    "gypsum": "gypsum, which water dissolves slowly",
    "soluble salt": "a soluble salt, which water moves",
    "iron": "iron, which rusts",
    "acid-sensitive": "acid eats it",
}


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
    doubtful: list[Reached] = []
    for one in reached(case, step):
        effects = [effect for matter in one.matters for effect in _harmed(matter, traits)]
        missing = not_known(one, f"suffers from {agent}")
        if effects and not one.sure:
            missing.append(f"whether the {step.agent.name} gets there")
        if effects or missing:
            yield step_finding(rule, step, step.temperature_c, one, effects, missing)
        elif any(not _ruled_out(matter, traits) for matter in one.matters):
            doubtful.append(one)
    if doubtful:
        yield _bearing(rule, step, agent, traits, doubtful)
    yield from _elsewhere(case, rule, step, agent, traits)


def _harmed(matter: Matter, traits: tuple[str, ...]) -> list[Effect]:
    """Why a material suffers, or its parts; none where none of the traits is recorded."""
    for trait in traits:
        if matter.has(trait):
            found = matter.traits[trait]
            why = f"{found.effect or _HARM[trait]}{bracketed(shortly(found.source))}"
            return [Effect(f"{matter.name}: {why}", sources=(found.source,))]
    return [effect for part in matter.parts for effect in _harmed(part, traits)]


def _ruled_out(matter: Matter, traits: tuple[str, ...]) -> bool:
    """Whether somebody recorded that the material itself does not suffer, and nobody doubts it."""
    return matter.lacks(traits[0]) and not _doubts(matter, traits)


def _doubts(matter: Matter, traits: tuple[str, ...]) -> list[str]:
    """The traits that are recorded as not known."""
    return [one for one in traits if one in matter.traits and matter.traits[one].holds == "unknown"]


def _bearing(
    rule: str, step: Step, agent: str, traits: tuple[str, ...], doubtful: list[Reached]
) -> Finding:
    names = [
        f"{matter.name}{bracketed(*(matter.traits[one].effect for one in _doubts(matter, traits)))}"
        for one in doubtful
        for matter in one.matters
        if not _ruled_out(matter, traits)
    ]
    missing = (f"whether each of these bears {agent}",)
    return unrecorded(rule, step, step.temperature_c, doubtful, names, missing)


def _elsewhere(
    case: Case, rule: str, step: Step, agent: str, traits: tuple[str, ...]
) -> Iterator[Finding]:
    """What lies on the same component at no recorded distance: what suffers, what may suffer."""
    suffering: list[tuple[KnownPlace, KnownLayer]] = []
    doubtful: list[tuple[KnownPlace, KnownLayer]] = []
    for place, layer in unmeasured(case, step):
        if any(_harmed(matter, traits) for matter in layer.matters):
            suffering.append((place, layer))
        elif not layer.matters or any(_doubts(matter, traits) for matter in layer.matters):
            doubtful.append((place, layer))
    for manner, layers in (("would", suffering), ("may", doubtful)):
        if layers:
            yield elsewhere(rule, step, layers, f"{manner} suffer from {agent}")
