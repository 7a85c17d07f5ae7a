"""Release by hand, by heat and by waiting: what is offered, refused, or must be asked."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from conservedb.knowledge import cautions
from conservedb.knowledge.behaviour import Lying, Matter, Neighbour
from conservedb.knowledge.evidence import NOTHING, RULE, binders
from conservedb.knowledge.plan import Option, Reading, Refused
from conservedb.knowledge.warming import heat_option, may_be_nitrate

_PAINTED = ("gilding", "inpainting", "paint", "patination", "polychromy")
"""Roles of layers that carry colour (common practice, no source)."""


def heat(
    target: Lying,
    neighbours: Sequence[Neighbour],
    beware: Sequence[str],
    depression: Callable[[Lying], float],
) -> tuple[list[Option], tuple[Refused, ...]]:
    """Warming, if a softening figure is on record and nothing near forbids it.

    Refused near cellulose nitrate. Near lead, polychromy, stone that may be wet or matter that
    nobody has identified it needs the approval of a named person.
    """
    option = heat_option(target, neighbours, depression)
    if option is None:
        return [], ()
    lying = [target, *(near.lying for near in neighbours)]
    nitrate = nitrate_near(lying)
    if nitrate:
        return [], (Refused(option.title, nitrate),)
    asked = [f"needs the approval of a named person: {why}" for why in _approvals(lying, beware)]
    warnings = (*asked, cautions.HOT, cautions.BANNER)
    return [replace(option, cautions=warnings)], ()


def nitrate_near(lying: Sequence[Lying]) -> str:
    """Why nothing warm may be used near these layers, "" where no nitrate is on record."""
    names = [
        one.name
        for one in lying
        if any(may_be_nitrate(m) for whole in one.matters for m in (whole, *binders(whole)))
    ]
    listed = ", ".join(dict.fromkeys(names))
    return f"cellulose nitrate is or may be near ({listed}): it burns" if names else ""


def _approvals(lying: Sequence[Lying], beware: Sequence[str]) -> list[str]:
    """Why heat needs a named approval here, each reason once with what is concerned."""
    reasons: tuple[tuple[str, Callable[[Lying], bool]], ...] = (
        ("lead near", lambda one: _any(one, "lead")),
        ("polychromy or oil", _coloured),
        ("matter not identified", _unidentified),
        ("stone or ceramic, none of it recorded as dry", _may_be_wet),
    )
    found = list(beware)
    for reason, concerns in reasons:
        names = list(dict.fromkeys(one.name for one in lying if concerns(one)))
        if names:
            found.append(f"{reason} ({'; '.join(names)})")
    return found


def _unidentified(one: Lying) -> bool:
    return one.matter is None or one.matter.is_class


def _coloured(one: Lying) -> bool:
    return one.role.lower() in _PAINTED or _any(one, "drying oil")


def _may_be_wet(one: Lying) -> bool:
    return _any(one, "porous") and _any(one, "no solvent")


def _any(lying: Lying, trait: str) -> bool:
    return any(m.has(trait) for one in lying.matters for m in (one, *binders(one)))


def by_hand(target: Lying, is_joint: bool) -> list[Option]:
    """Taking it off with tools; what that does to neighbours is never known beforehand."""
    title = "mechanical, from the edge" if is_joint else "mechanical, with hand tools"
    reason = "how hard it sits is not recorded: it shows at the first touch"
    strong = [m for m in target.matters if _stronger(m)]
    warnings = [cautions.BY_HAND, cautions.DUST, cautions.BANNER]
    if strong:
        warnings.insert(
            0, f"{strong[0].name} may be stronger than the body: the body may give first"
        )
    reading = Reading("cannot tell", NOTHING, reason=reason)
    return [Option("mechanical", title, (), reading, cautions=tuple(warnings))]


def _stronger(matter: Matter) -> bool:
    return any(b.has("cross-linked") for b in binders(matter))


def waiting(target: Lying) -> list[Option]:
    """Letting a volatile binder go off by itself."""
    if target.matter is None or not target.matter.has("sublimes"):
        return []
    trait = target.matter.traits["sublimes"]
    reason = trait.effect or "it goes off as vapour; slower from pores and when packed"
    reading = Reading("mobilises", RULE, trait.source, None, reason)
    warnings = ("air the room; let nothing near take up the vapour", cautions.BANNER)
    return [Option("wait", "let it sublime", (), reading, cautions=warnings)]
