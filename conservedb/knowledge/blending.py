"""Options that are blends of two liquids: found by searching, read by evidence like any other."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace

from conservedb.knowledge.behaviour import (
    Agent,
    Hansen,
    Lying,
    Matter,
    Neighbour,
    Part,
    Solvent,
    Sphere,
)
from conservedb.knowledge.blends import Window, candidates, search
from conservedb.knowledge.evidence import ACTING, binders, on_target, rank_of
from conservedb.knowledge.plan import Option, Reading

Finish = Callable[[Agent, Reading, str], Option]
"""Makes an option of an agent, what it does to the target, and its window in words."""


def blend_options(
    target: Lying,
    neighbours: Sequence[Neighbour],
    solvents: Mapping[str, Solvent],
    widest_band: str,
    finish: Finish,
) -> list[Option]:
    """Blends worth a test, each with the window in which it works; none without a sphere.

    A target that is a mixture, or that has no Hansen verdict, has no blends by prediction.
    """
    if target.matter is None:
        return []
    found = binders(target.matter)
    if len(found) > 1 or not _has_verdict(found[0]):
        return []
    matter = found[0]
    windows = search(
        matter.spheres,
        [_spheres(near) for near in neighbours if not _is_mineral(near)],
        candidates(tuple(solvents.values()), widest_band=widest_band),
        attackers=[_attackers(near) for near in neighbours],
        non_solvents=_idle(matter, solvents),
        known=_known(matter),
    )
    return [_option(target, one, solvents, finish) for one in windows]


def _option(
    target: Lying, window: Window, solvents: Mapping[str, Solvent], finish: Finish
) -> Option:
    agent = Agent(window.parts)
    option = finish(agent, on_target(target, agent, solvents, fresh=True), window.words)
    if window.caution:
        return replace(option, cautions=(window.caution, *option.cautions))
    return option


def _has_verdict(matter: Matter) -> bool:
    return not any(
        matter.has(trait) for trait in ("no Hansen verdict", "no solvent", "cross-linked")
    )


def _is_mineral(near: Neighbour) -> bool:
    matters = _matters(near)
    return bool(matters) and all(matter.has("no solvent") for matter in matters)


def _spheres(near: Neighbour) -> list[Sphere]:
    """The spheres of a neighbour for which the method has a verdict."""
    return [
        sphere
        for matter in _matters(near)
        if not matter.has("no Hansen verdict")
        for sphere in matter.spheres
    ]


def _matters(near: Neighbour) -> list[Matter]:
    return [binder for one in near.lying.matters for binder in binders(one)]


def _attackers(near: Neighbour) -> frozenset[str]:
    """Liquids known, by any evidence, to act on a neighbour."""
    return frozenset(
        fact.agent.parts[0].solvent
        for matter in _matters(near)
        for fact in matter.facts
        if fact.effect in ACTING and len(fact.agent.parts) == 1
    )


def _idle(matter: Matter, solvents: Mapping[str, Solvent]) -> list[Hansen]:
    """Parameters of liquids published as doing nothing to the target."""
    return [
        at
        for fact in matter.facts
        if fact.effect == "no effect" and len(fact.agent.parts) == 1
        for at in _at(fact.agent.parts[0], solvents)
    ]


def _at(part: Part, solvents: Mapping[str, Solvent]) -> tuple[Hansen, ...]:
    return solvents[part.solvent].at if part.solvent in solvents else ()


def _known(matter: Matter) -> dict[str, str]:
    """The effect that the best evidence says a single liquid has; none from mere memory."""
    known = [fact for fact in matter.facts if fact.counts and len(fact.agent.parts) == 1]
    known.sort(key=rank_of, reverse=True)
    return {fact.agent.parts[0].solvent: fact.effect for fact in known}
