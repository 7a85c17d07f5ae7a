"""A material and a plan for removal without a database: the acrylic barrier under the epoxy."""

from __future__ import annotations

from dataclasses import replace

from conservedb.dates import read
from conservedb.knowledge.behaviour import Hansen, Part
from conservedb.knowledge.plan import (
    HazardLine,
    Hold,
    OnNeighbour,
    Option,
    Plan,
    Reading,
    Refused,
    Step,
    Target,
    Via,
)
from conservedb.knowledge.solvents import Teas, teas
from conservedb.questions.answers import AsOf, Source, When
from conservedb.questions.material_answers import (
    Decade,
    Fractions,
    HazardRow,
    LimitRow,
    MaterialAnswer,
    Name,
    Parameters,
    Period,
    Property,
    RestrictionRow,
    Solubility,
    Told,
    TraitRow,
    Value,
    Whereabouts,
)
from conservedb.questions.material_answers import Part as RecipePart
from conservedb.questions.removal_answers import Band, Choice, RemovalAnswer
from conservedb.questions.uses_answers import AgentUse, UsesLayer


def when(words: str = "") -> When:
    return When(*read(words))


# -- a material -----------------------------------------------------------------------------


def told(basis: str = "published", ref: str = "lit.H07", page: str = "", **more: str) -> Told:
    paper = Source(ref, "literature", f"Handbook {ref}", page) if ref else None
    return Told(basis, paper, more.get("by", ""), when(more.get("on", "")), more.get("note", ""))


MEMORY = told("from memory", "")


def value(low: float | None, high: float | None = None, words: str = "", **more: object) -> Value:
    made = Value(low, high, "", words, "", told())
    return replace(made, **more)  # type: ignore[arg-type]


def laid(
    number: str, mark: str, layer: str, words: str, mask: int = 2, certain: int = 1
) -> UsesLayer:
    date = when(words)
    days = (date.earliest, date.latest, date.flags)
    return UsesLayer(
        number, mark, layer, "b72", "", "barrier", 1, mask, certain, 0, words, date.edtf, *days, 1
    )


WHERE = Whereabouts(
    now_certain=12,
    now_possible=3,
    gone_certain=4,
    gone_possible=1,
    decades=(Decade(1970, 0, 1), Decade(1980, 9, 2), Decade(2010, 6, 0)),
    undated=2,
    layers=(
        laid("SQ.1902.7", "J14", "L14g", "16 May 1989"),
        laid("SQ.1902.7", "J16", "L16g", "1989", mask=8),
        laid("SQ.1902.7", "M06", "L6a", "c. 1976", mask=10, certain=0),
    ),
    places=1234,
    uses=(
        AgentUse("SQ.1938.2", "I4", "A1", "b72", "", ("S1", "S2"), when("2021-04"), "5 %", "free",
                 "", True),
    ),
    uses_certain=1,
    uses_possible=0,
    unidentified=19,
)  # fmt: skip
TG = Property(
    "glass transition",
    (
        value(40, 40, unit="C", told=told("measured", "lit.K96", "12")),
        value(15, 25, unit="C", condition="while solvent remains", told=told(ref="lit.V19")),
        value(55, unit="C", told=MEMORY, of="another resin"),
    ),
    "sources differ",
)
ACRYLIC = MaterialAnswer(
    word="b72",
    kind="material",
    key="b72",
    name="acrylic resin B-72",
    on=AsOf("today", "2026-11-02", 0, 0),
    note="Ethanol dissolves it although its number says otherwise.",
    aliases=("B72", "P(EMA/MA)"),
    trade_names=("Paraloid B-72",),
    classes=(Name("acrylic-resin", "acrylic resin"), Name("thermoplastic", "thermoplastic resin")),
    behaves_as=Name("acrylic", "acrylic resin"),
    subclasses=(),
    members=(),
    parts=(RecipePart("acetone", "acetone", 78.0, "% by volume", "as bought"),),
    recipes=(Name("acrylic-fill", "acrylic resin bulked with stone powder"),),
    properties=(
        TG,
        Property("refractive index", (value(1.49, told=MEMORY),), ""),
        Property(
            "ageing",
            (value(None, words="little yellowing; flows in the cold above 30 C, takes dirt"),),
            "",
        ),
    ),
    hansen=tuple(
        Parameters(at, radius, "dissolution", quality, "", first, teas(at), told(ref="lit.A2"))
        for at, radius, quality, first in (
            (Hansen(17.6, 7.4, 5.6), 9.4, "section on paintings", True),
            (Hansen(19.2, 11.2, 1.8), 11.0, "not too reliable", False),
        )
    ),
    teas=(Fractions(Teas(58, 24, 18), MEMORY),),
    solubilities=(
        Solubility("acetone", "aged", "dissolves", "bath", 20, 60, "films of 1984", told()),
        Solubility("50 % acetone + 50 % ethanol", "fresh", "dissolves", "", None, None, "", told()),
        Solubility("water", "not stated", "no effect", "", None, None, "", MEMORY),
    ),
    traits=(
        TraitRow("cross-linked", "no", "", Name("b72", "acrylic resin B-72"), False, True, told()),
        TraitRow("creeps under load", "yes", "flows under a constant load",
                 Name("thermoplastic", "thermoplastic resin"), True, True,
                 told("common practice", "")),
        TraitRow("creeps under load", "unknown", "", Name("resin", "resin"), True, False, told()),
    ),
    periods=(Period("first made", when("c. 1950"), MEMORY),),
    hazards=(
        HazardRow("H225", "Highly flammable liquid and vapour", "A", when("2026-01"), told()),
        HazardRow("H319", "Causes serious eye irritation", "A", when(), told()),
    ),
    limits=(
        LimitRow("TWA", 500, None, "yes", "Somewhere", when("2024"), 487.9, told()),
    ),
    restrictions=(RestrictionRow("Somewhere", "licence needed", when("2010"), told()),),
    where=WHERE,
)  # fmt: skip
RESINS = replace(
    ACRYLIC, word="resin", kind="material class", key="resin", name="resin", note="",
    aliases=(), trade_names=(), classes=(), behaves_as=None,
    subclasses=(Name("acrylic-resin", "acrylic resin"),),
    members=(Name("b72", "acrylic resin B-72"), Name("epoxy", "epoxy resin")),
    parts=(), recipes=(), properties=(), hansen=(), teas=(), solubilities=(), periods=(),
    hazards=(), limits=(), restrictions=(),
)  # fmt: skip


# -- a plan ---------------------------------------------------------------------------------

NO_EFFECT = Reading("no effect expected", "class rule", reason="mineral: has no solvent")
TESTED = Reading("no effect when tested", "tested here", "REP-2012", None, "for 2 min, swab")
LESS = Reading("tested but for less", "tested here", "REP-2012")


def on(layer: str, name: str, reading: Reading, place: str = "J14", **more: object) -> OnNeighbour:
    return replace(OnNeighbour(layer, place, name, reading), **more)  # type: ignore[arg-type]


def near(shellac: Reading, mortar: Reading = NO_EFFECT) -> tuple[OnNeighbour, ...]:
    return (
        on("L14e", "epoxy resin", Reading("swells", "Hansen prediction", red=(0.39, 0.39))),
        on("L14b", "shellac", shellac),
        on("L14a", "trass-lime mortar", mortar),
        on("B07", "basin lip (oolitic limestone)", NO_EFFECT),
        on("LS2a", "linseed oil", Reading("cannot tell", "nothing recorded"), "S02", path="open",
           distance_mm=3.0),
    )  # fmt: skip


XYLENES = Option(
    kind="vapour",
    title="xylenes",
    agent=(Part("xylenes"),),
    target=Reading(
        "dissolves", "published, fresh material", "lit.E04", (0.74, 1.12),
        "dissolves (as vapour; lit.E04, fresh)", ("swells: RED 1.12 by one sphere",),
    ),
    neighbours=near(TESTED),
    form="vapour",
    ranked_by=("no effect expected on neighbours (mortar)", "hazard band C"),
    cautions=("a closed chamber of solvent vapour forms an explosive atmosphere",),
    hazards=(HazardLine("xylenes", "H226", "Flammable liquid and vapour", "lit.GHS", "2026-01"),),
    figures=("xylenes: flash point 25 C",),
    band="C",
)  # fmt: skip
ACETONE = replace(
    XYLENES,
    title="acetone",
    agent=(Part("acetone"),),
    target=Reading("dissolves", "aged material", "lit.K07", (0.57, 0.57)),
    neighbours=near(Reading("attacked", "from memory, not confirmed"), LESS),
    group="acts on neighbours too",
    band="B",
)
BLEND = replace(
    ACETONE,
    title="45 % ethanol, 55 % n-heptane",
    agent=(Part("ethanol", 45), Part("n-heptane", 55)),
    target=Reading("undecided", "from memory, not confirmed"),
    neighbours=near(Reading("mobilises", "Hansen prediction")),
    window="works from 35 to 60 % ethanol",
    group="acts only in part",
)
BY_HAND = Option(
    "mechanical", "mechanical, from the edge", (), Reading("cannot tell", "nothing recorded"),
    group="by hand or by heat", cautions=("stop where the original gives first",),
)  # fmt: skip
PLAN = Plan(
    target=Target("L14e", "J14", "epoxy resin", "epoxy resin", "inferred", "present", "adhesive",
                  ("Roman cement",)),
    verdict="releases through the barrier",
    verdict_reason="cross-linked: no solvent dissolves it; over acrylic resin B-72",
    carries="carries 85 kg (REP-2012): support before you loosen",
    support="no support step recorded",
    study_only=True,
    holds=(
        Hold("zone face", ("L14e",), "releases through the barrier", "over acrylic resin B-72"),
        Hold("pin P1", (), "not established", "known from a picture only"),
    ),
    via=Via("L14g", "acrylic resin B-72", ("A",), ("recorded on side A only", "residue stays")),
    options=(XYLENES, BY_HAND, BLEND, ACETONE),
    refused=(Refused("warmth, 60 C", "cellulose nitrate near: it burns"),),
    sequence=(),
    first_test="xylenes on acrylic resin B-72, by swab, on a spot where it shows least; read it"
    " wet, dry and after a day",
    limits=("equilibrium only, no minutes or hours", "the recorded name may be wrong"),
    hidden=2,
    cautions=("access: front and left edge", "closed joint: an agent reaches it from the edge"),
    opens="not established: pin P1, known from a picture only",
    more=7,
)  # fmt: skip
BANDS = (
    Band("", "B07 basin lip, centre oolitic limestone", "block", "", "A", "", is_substrate=True),
    Band("L14a", "trass-lime mortar", "bedding", "face", "", "reduced"),
    Band("L14b", "shellac", "adhesive", "face", "A", "uncertain"),
    Band("L14g", "acrylic resin B-72", "barrier", "face", "A", "present"),
    Band("L14e", "epoxy resin", "adhesive", "core", "", "present", is_target=True),
    Band("", "B12 dolphin, right oolitic limestone", "block", "", "B", "", is_substrate=True),
    Band("", "K3 cramp wrought iron", "cramp", "", "", ""),
    Band("LS2a", "linseed oil", "coating", "", "", "present", place="S02", path="open",
         distance_mm=3.0),
)  # fmt: skip
CHOICES = (
    Choice("L14b", "shellac", "face", "uncertain"),
    Choice("L14g", "acrylic resin B-72", "face", "present"),
    Choice("L14e", "epoxy resin", "core", "present"),
)
UNKNOWN = replace(
    PLAN,
    target=replace(PLAN.target, layer="L14b", name="unidentified layer", material="",
                   identified="unknown", alternatives=()),
    verdict="unknown",
    verdict_reason="what it is made of is not established",
    via=None,
    options=(BY_HAND,),
    sequence=(
        Step("look under UV and under magnification", "orange may be shellac; none proves a thing"),
        Step("swab of water, a spot", "if it swells: a glue", "no water: salts lie near"),
    ),
    first_test="begin with what takes nothing",
    hidden=0,
    more=0,
)  # fmt: skip


def removal(number: str, title: str, place: str, layer: str, day: AsOf, band: str) -> RemovalAnswer:
    """The plan for the epoxy, or for the layer that nobody has identified (L14b)."""
    unknown = layer == "L14b"
    bands = [replace(one, is_target=one.layer == layer) for one in BANDS] if unknown else BANDS
    widest = band or "C"
    plan = UNKNOWN if unknown else PLAN
    kept = tuple(one for one in plan.options if (one.band or "A") <= widest)
    shown = replace(plan, options=kept)
    name = "basin lip to right dolphin"
    return RemovalAnswer(number, title, place, name, day, shown, CHOICES, tuple(bands), widest)
