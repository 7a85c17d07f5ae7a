"""How findings about a planned step speak: of what it reaches, and of what cannot be told."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from conservedb.knowledge.rule_case import Finding, KnownLayer, KnownPlace, Step
from conservedb.knowledge.rule_reach import Reached
from conservedb.knowledge.rule_words import layer_words, listed, load_words

_NAMED = 8


class Effect(NamedTuple):
    """What a step does to a material; `sure` where that is more than a memory."""

    words: str
    sure: bool = True
    sources: tuple[str, ...] = ()


def not_known(one: Reached, suffers: str) -> list[str]:
    """What is not recorded of something of which nobody knows what it is made of."""
    if one.matters:
        return []
    ref = one.layer.ref if one.layer is not None else one.part.mark if one.part else ""
    return [f"what {ref} is made of, and whether it {suffers}"]


def step_finding(
    rule: str,
    step: Step,
    hot: float | None,
    one: Reached,
    effects: Sequence[Effect],
    missing: Sequence[str],
) -> Finding:
    """What a step does, or may do, to one thing that it reaches."""
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


def elsewhere(
    rule: str, step: Step, layers: Sequence[tuple[KnownPlace, KnownLayer]], manner: str
) -> Finding:
    """Layers on the same component, at no recorded distance, that "would suffer" or the like."""
    named = [f"{place.mark} {layer_words(layer)}" for place, layer in layers[:_NAMED]]
    more = f" and {len(layers) - _NAMED} more" if len(layers) > _NAMED else ""
    places = tuple(dict.fromkeys(place.mark for place, _ in layers))
    return Finding(
        rule,
        f"on the same component as {step.place} lie layers that {manner}:"
        f" {'; '.join(named)}{more}.",
        places=(step.place, *places),
        layers=tuple(layer.ref for _, layer in layers),
        missing=(
            f"how far {listed(places)} {'is' if len(places) == 1 else 'are'} from {step.place}",
        ),
        certain=False,
    )


def unrecorded(
    rule: str,
    step: Step,
    hot: float | None,
    those: Sequence[Reached],
    names: Sequence[str],
    missing: Sequence[str],
) -> Finding:
    """What a step reaches, of which it is not recorded whether it suffers."""
    return Finding(
        rule,
        f"{step_words(step, hot)} at {step.place} also reaches what is of {listed(names)}.",
        places=tuple(dict.fromkeys((step.place, *(one.place.mark for one in those)))),
        layers=tuple(one.layer.ref for one in those if one.layer is not None),
        components=tuple(one.part.mark for one in those if one.part is not None),
        missing=tuple(dict.fromkeys(missing)),
        certain=False,
    )
