"""Cautions beside every way of release, and the limits of the method, in general terms.

They defer to safety data sheets, local codes and licensed practice, and never replace them.
Statements and precautions: UN GHS, Annex 3. Figures of handling: common practice, no source,
unless one is named.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from conservedb.knowledge.agents import Liquids
from conservedb.knowledge.behaviour import Part, Solvent
from conservedb.knowledge.plan import HazardLine
from conservedb.knowledge.solvents import vapour_hazard_ratio

BANNER = (
    "Not a safety data sheet: read the supplier's sheet; local codes and licensed practice decide"
)
GENERAL = (
    "wear gloves and eye protection that the supplier's sheet names for this liquid; draw the"
    " vapour off where it arises"
)
FLAMMABLE_BELOW_C = 23.0
"""Flash point below which a liquid is highly flammable (UN GHS, category 2)."""
_BY_CODE: tuple[tuple[tuple[str, ...], str], ...] = (
    (
        ("H224", "H225"),
        "no flame, spark or hot air; earth metal containers; put soaked swabs into a closed metal"
        " bin (P210, P233, P240 to P243)",
    ),
    (("H304",), "if swallowed, do not make the person vomit; call for help (P301, P331)"),
    (("H314", "H318"), "face shield; eyewash within reach (P280, P305)"),
    (("H317", "H334"), "may make a person allergic for life: no skin contact (P261, P280)"),
    (
        ("H340", "H341", "H350", "H351", "H360", "H361"),
        "look for a substitute first; not in pregnancy; keep a record of exposure",
    ),
    (("H370", "H371", "H372", "H373"), "harms organs by single or repeated exposure: extraction"),
    (("H400", "H410", "H411", "H412"), "not down the drain (P273, P501)"),
)
VAPOUR = (
    "a closed chamber of solvent vapour forms an explosive atmosphere: no ignition source in or"
    " near it, and a person licensed for such work decides"
)
SWELLING = "swelling in a closed joint may burst the edges or pull the face off"
DUST = (
    "dust of stone, cement, plaster or old paint may hold silica, lead or asbestos: have it"
    " tested, work damp where the object bears it, and wear the mask the sheet or code names"
)
BY_HAND = "stop where the original gives before the old work does; it may be the weaker of the two"
HOT = "no heat near open solvent; the tool's own temperature is not that of the joint: measure both"
SCALE = "release times from small coupons say nothing of blocks"

_LIMITS: tuple[tuple[str, str], ...] = (
    (
        "",
        "says nothing of dissolving against swelling; oil paint swells on no single scale (Phenix"
        " 1998, 2002)",
    ),
    (
        "",
        "aged films differ from fresh ones: oxidation and cross-linking move what dissolves them"
        " (Phenix 2002)",
    ),
    (
        "",
        "a solvent may leach small molecules and embrittle what stays, unfelt at work (Phenix and"
        " Sutherland)",
    ),
    (
        "",
        f"equilibrium only, no minutes or hours; {SCALE} (Koob 2007 needed an hour's immersion"
        " where a poultice failed)",
    ),
    (
        "porous",
        "in porous bodies what dissolves is driven deeper; stains and barrier residue may"
        " stay for good",
    ),
    (
        "joint",
        "solvent reaches a tight joint only from its edge or as vapour; a barrier that was"
        " not dry or not whole fails (Podany et al. 2001)",
    ),
    (
        "blend",
        "a blend drifts towards its slow part as it dries; water in denatured alcohol can"
        " split it in two (Hook 1988)",
    ),
    ("heat", "published softening points are of clean, dry, fresh resin at no load"),
    ("", "the recorded name may be wrong, and makers changed what they sold under it"),
    ("", "acids, bases, ions, surfactants and enzymes are outside the method"),
    ("", "hazard codes and exposure limits are no assessment of risk"),
)


def limits(about: Iterable[str]) -> tuple[str, ...]:
    """What the method cannot know, as far as it bears on this plan.

    Args:
        about: any of "porous", "joint", "blend", "heat".
    """
    topics = {"", *about}
    return tuple(words for topic, words in _LIMITS if topic in topics)


def of_agent(parts: Sequence[Part], liquids: Liquids, jurisdiction: str) -> tuple[str, ...]:
    """Cautions for an agent, from its hazard statements, flash point, traits and the law."""
    found: list[str] = []
    for part in parts:
        liquid = liquids.get(part.solvent)
        if liquid is None:
            found.append(f"{part.solvent}: no hazards on record, which is not 'none'")
            continue
        found += _of_liquid(liquid, jurisdiction)
    if any(not liquids[p.solvent].has("water") for p in parts if p.solvent in liquids):
        found.append(GENERAL)
    return (*dict.fromkeys(found), BANNER)


def _of_liquid(liquid: Solvent, jurisdiction: str) -> list[str]:
    codes = {one.code[:4] for one in liquid.hazards}
    if liquid.flash_c is not None and liquid.flash_c < FLAMMABLE_BELOW_C:
        codes.add("H225")
    found = [words for group, words in _BY_CODE if codes.intersection(group)]
    if not liquid.hazards and not liquid.has("water"):
        found.append(f"{liquid.name}: no hazard statement on record, which is not 'none'")
    if liquid.has("carries matter through skin"):
        found.append(f"{liquid.name} goes through skin and takes with it what it has dissolved")
    if liquid.boiling_c is not None and liquid.boiling_c > 180 and not liquid.has("water"):
        found.append(f"{liquid.name} boils at {liquid.boiling_c:g} C: it stays long in the object")
    for law in liquid.restrictions:
        if jurisdiction and law.jurisdiction.casefold() == jurisdiction.casefold():
            found.append(f"restricted where you work ({law.jurisdiction}): {law.text}; look it up")
        elif not jurisdiction:
            found.append(f"restricted in {law.jurisdiction}: {law.text}; whether here is not set")
    return found


def hazards_of(parts: Sequence[Part], liquids: Liquids) -> tuple[HazardLine, ...]:
    """Every hazard statement of every part, with its meaning and source."""
    return tuple(
        HazardLine(liquids[p.solvent].name, one.code, one.wording, one.source, one.checked)
        for p in parts
        if p.solvent in liquids
        for one in liquids[p.solvent].hazards
    )


def figures_of(parts: Sequence[Part], liquids: Liquids) -> tuple[str, ...]:
    """Flash point, exposure limits with jurisdiction and date, and vapour hazard ratio."""
    found: list[str] = []
    for part in parts:
        liquid = liquids.get(part.solvent)
        if liquid is None or liquid.has("water"):
            continue
        found.append(f"{liquid.name}: flash point {_flash(liquid)}")
        for limit in liquid.limits:
            amount = f"{limit.ppm:g} ppm" if limit.ppm is not None else f"{limit.mg_m3} mg/m3"
            skin = ", also through skin" if limit.skin else ""
            dated = limit.as_of or "date of the table not recorded"
            found.append(
                f"{liquid.name}: exposure limit {limit.kind} {amount}{skin} ({limit.jurisdiction},"
                f" {dated})"
            )
        if not liquid.limits:
            found.append(f"{liquid.name}: exposure limit not recorded")
        found += _ratio(liquid)
    return tuple(found)


def _flash(liquid: Solvent) -> str:
    if liquid.flash_c is not None:
        return f"{liquid.flash_c:g} C"
    return liquid.flash or "not recorded"


def _ratio(liquid: Solvent) -> list[str]:
    ppm = [one.ppm for one in liquid.limits if one.kind == "TWA" and one.ppm]
    if not ppm or liquid.pressure_kpa is None:
        return []
    ratio = vapour_hazard_ratio(liquid.pressure_kpa, min(ppm))
    return [f"{liquid.name}: saturated air at 20 C holds {ratio:.0f} times the exposure limit"]
