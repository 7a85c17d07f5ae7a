"""What practice has found, held against plans made from the shipped tables.

Each row is a behaviour that the trade has published; its source stands beside it. The facts lie
in the shipped tables: what is tested is that a plan made of them answers as practice does.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from conservedb.knowledge.behaviour import Agent, Lying, Part
from conservedb.knowledge.evidence import ACTING, on_target
from conservedb.knowledge.mixing import separates_when_damp
from conservedb.knowledge.plan import Reading
from conservedb.knowledge.verdicts import verdict
from conservedb.questions.behaviour import Materials, materials
from conservedb.store.connect import reading
from conservedb.store.create import create
from conservedb.store.opening import open_database

LAID = (700_000, 700_001)


@pytest.fixture(scope="module")
def known(tmp_path_factory: pytest.TempPathFactory) -> Materials:
    path: Path = tmp_path_factory.mktemp("practice") / "reference.db"
    create(path)
    engine, _ = open_database(path)
    with reading(engine) as connection:
        found = materials(connection)
        found.solvents()
    engine.dispose()
    return found


def lying(known: Materials, key: str, *, soaked: bool = False) -> Lying:
    matter = known.named(key, "")
    assert matter is not None, key
    return Lying("L", "J", key, (matter,), role="adhesive", laid=LAID, soaked=soaked)


def read(known: Materials, key: str, agent: str, form: str = "") -> Reading:
    parts = tuple(
        Part(name, float(share) if share else 100.0)
        for name, _, share in (one.strip().partition(" ") for one in agent.split(";"))
    )
    return on_target(lying(known, key), Agent(parts, form), known.solvents(), fresh=False)


@pytest.mark.parametrize(
    ("layer", "agent", "form", "effects"),
    [
        ("b72", "acetone", "", ("dissolves",)),  # 23 years old: Koob 2007
        ("b72", "ethanol", "", ("dissolves",)),  # though RED is 1.52: Vincotte et al. 2019
        ("shellac", "acetone 50; ethanol 50", "bath", ("dissolves", "mobilises")),  # Koob 2007
        ("shellac", "ethanol", "poultice", ("softens", "swells", "undecided")),  # often fails
        ("shellac", "methanol", "", ("dissolves", "mobilises")),  # better: Day 2007
        ("shellac", "morpholine", "", ("dissolves", "mobilises")),  # Miller 2007
        ("cn", "acetone", "", ("dissolves",)),  # Neiro 2003, Bradley 2001
        ("animal-glue", "ethanol", "", ("no effect expected",)),  # CAMEO, Glue
        ("pvb-b98", "ethanol", "", ("dissolves",)),  # Goldberg and Davidson 2014
        ("pvb-b98", "acetone", "", ("no effect expected", "undecided")),  # the same
        ("soluble-nylon", "ethanol", "", ("no effect expected", "undecided", "swells")),  # Sease
        ("pvac-emulsion", "acetone", "", ("softens", "swells", "mobilises", "undecided")),  # Down
        ("casein", "acetone 50; water 50", "", ("softens", "swells")),  # Jaeschke 1998
        ("casein", "ethanol 50; water 50", "", ("softens", "swells")),
    ],
)
def test_what_acts(
    known: Materials, layer: str, agent: str, form: str, effects: tuple[str, ...]
) -> None:
    found = read(known, layer, agent, form)
    assert found.effect in effects, found


@pytest.mark.parametrize("layer", ["epoxy", "epoxy-optical", "hxtal", "polyester"])
def test_no_solvent_dissolves_a_cured_resin(known: Materials, layer: str) -> None:
    """CAMEO, Epoxy; Ellis and Heginbotham 2004."""
    for key, liquid in known.solvents().items():
        if liquid.has("organic solvent"):
            assert read(known, layer, key).effect not in ("dissolves", "mobilises"), key


def test_animal_glue_yields_to_water_alone(known: Materials) -> None:
    """CAMEO, Glue: warm water; not ethanol or other organic solvents."""
    facts = lying(known, "animal-glue").matters[0].facts
    acting = {f.agent.parts[0].solvent for f in facts if f.effect in ACTING and f.counts}
    assert acting == {"water"}


def test_poly_vinyl_alcohol_aged(known: Materials) -> None:
    """Mibach 1998: cold water softens it, hot water dissolves it if anything does."""
    facts = [f for f in lying(known, "pval").matters[0].facts if f.state == "aged"]
    cold = [f.effect for f in facts if (f.agent.temperature_c or 20) < 40]
    assert cold and "dissolves" not in cold


@pytest.mark.parametrize(
    ("layer", "word"),
    [
        ("cdd", "goes by itself"),  # Stein et al. 2000
        ("soluble-nylon", "not reversible"),  # Sease 1981
        ("portland-cement", "mechanical only"),  # Griswold and Uricheck 1998
        ("b72", "re-dissolves"),
    ],
)
def test_verdicts(known: Materials, layer: str, word: str) -> None:
    assert verdict(lying(known, layer)).word == word


def test_what_a_porous_body_took_up_is_never_removed(known: Materials) -> None:
    """UCLA thesis on shellac in ceramics: stains and residue stay."""
    assert verdict(lying(known, "b72", soaked=True)).word == "can be mobilised, not removed"


def test_ethanol_in_white_spirit_separates_when_damp(known: Materials) -> None:
    """Hook, JAIC 27, 1988: 15 % of ethanol with 5 % of water in 85 % of white spirit."""
    liquids = known.solvents()
    assert separates_when_damp(liquids["ethanol"], liquids["white-spirit"])
