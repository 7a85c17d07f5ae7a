"""A few materials and solvents, typed in with their sources, to plan removals with.

Hansen spheres: Hansen, A User's Handbook, 2nd ed. 2007, table A.2, rows 365, 219, 408; solvents
as in `tests/knowledge/test_solvents.py`. Solubility: Koob 2007; Vincotte 2019; CAMEO.
"""

from __future__ import annotations

from conservedb.knowledge.behaviour import (
    Agent,
    Fact,
    Hansen,
    Hazard,
    Lying,
    Matter,
    Neighbour,
    Part,
    Solvent,
    Sphere,
    Trait,
    Warmth,
)
from conservedb.knowledge.reversal import Situation

YES, NO = Trait("yes"), Trait("no")
DAY = 739_000
"""In the year 2024."""
OLD = (720_000, 720_010)
"""In 1972."""


def liquid(key: str, *at: tuple[float, float, float], band: str = "B", **other: object) -> Solvent:
    traits = {"water": YES} if key == "water" else {"organic solvent": YES}
    boiling = {"acetone": 56.1, "ethanol": 78.4, "xylenes": 140.0, "n-heptane": 98.4}
    hazards = (Hazard("H225", "Highly flammable liquid and vapour", "A"),)
    return Solvent(
        key,
        key,
        tuple(Hansen(*one) for one in at),
        band,
        hazards,
        boiling_c=boiling.get(key, 100.0),
        traits=traits,
        **other,  # type: ignore[arg-type]
    )


SOLVENTS = {
    one.key: one
    for one in (
        liquid("acetone", (15.5, 10.4, 7.0)),
        liquid("ethanol", (15.8, 8.8, 19.4), band="A"),
        liquid("xylenes", (17.6, 1.0, 3.1)),
        liquid("n-heptane", (15.3, 0.0, 0.0)),
        liquid("dichloromethane", (17.0, 7.3, 7.1), (18.2, 6.3, 6.1), band="C"),
        liquid("dmf", (17.4, 13.7, 11.3), band="D"),
        liquid("water", (15.5, 16.0, 42.3), band="A"),
    )
}


def fact(agent: str, effect: str, **other: object) -> Fact:
    return Fact(Agent((Part(agent),)), effect, source="a source", **other)  # type: ignore[arg-type]


B72 = Matter(
    "b72",
    "Paraloid B-72",
    {"keeps its solubility": YES},
    (Sphere(Hansen(17.6, 7.4, 5.6), 9.4),),
    (
        fact("acetone", "dissolves", state="aged"),
        fact("ethanol", "dissolves", state="fresh"),
        fact("n-heptane", "no effect"),
    ),
    (Warmth("glass transition", 40, 40), Warmth("glass transition", 37, 40)),
)
SHELLAC = Matter(
    "shellac",
    "shellac",
    {},
    (Sphere(Hansen(19.7, 10.1, 15.1), 10.7),),
    (fact("ethanol", "dissolves", state="fresh"), fact("xylenes", "no effect")),
)
EPOXY = Matter(
    "epoxy",
    "epoxy",
    {"cross-linked": YES},
    (Sphere(Hansen(16.8, 10.8, 8.8), 8.2, "swelling only"),),
    (fact("dichloromethane", "swells"),),
)
GLUE = Matter(
    "animal-glue",
    "animal glue",
    {"no Hansen verdict": YES, "water-sensitive": YES},
    (),
    (fact("water", "dissolves"), fact("ethanol", "no effect")),
)
NITRATE = Matter("cn", "cellulose nitrate", {"cellulose nitrate": YES})
GYPSUM = Matter(
    "gypsum", "gypsum", {"no solvent": YES, "gypsum": YES, "water-sensitive": YES, "porous": YES}
)
LIMESTONE = Matter(
    "limestone",
    "limestone",
    {"no solvent": YES, "porous": YES, "water-sensitive": NO, "heat-sensitive": NO},
)
SOLUBLE_NYLON = Matter(
    "nylon",
    "soluble nylon",
    {"loses its solubility": YES},
    (),
    (fact("ethanol", "dissolves", state="fresh"),),
)
CYCLODODECANE = Matter("cdd", "cyclododecane", {"sublimes": YES})


def lying(ref: str, *matters: Matter, **other: object) -> Lying:
    given: dict[str, object] = {"laid": OLD, "role": "adhesive"} | other
    return Lying(ref, "J1", matters[0].name if matters else "?", matters, **given)  # type: ignore[arg-type]


def case(target: Lying, *others: Lying, **more: object) -> Situation:
    given: dict[str, object] = {"is_joint": True, "closed": True, "porous": True} | more
    given.setdefault("neighbours", tuple(Neighbour(one) for one in others))
    return Situation(
        target,
        (target, *others),
        solvents=SOLVENTS,
        day=DAY,
        **given,  # type: ignore[arg-type]
    )
