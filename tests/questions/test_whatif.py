"""A warmer store: which joints may creep or soften, in what order, and what cannot be told."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Connection

from conservedb.questions.asof import as_of
from conservedb.questions.basics import NoSuch
from conservedb.questions.whatif import whatif
from conservedb.questions.whatif_answers import WhatIfAnswer, WhatIfLayer
from tests.conftest import TODAY
from tests.questions.checking import ON, Tables, asking, changed, import_tables

# Figures: B-72 37 to 40 C (Cardiff 2022) and 40 C (Koob 1996); PVAC 28 C (course notes);
# beeswax melts from 62 C (CAMEO); solvent lowers a glass transition by up to 30 C (Vincotte
# et al. 2019); a margin of 15 C (a proposal). At 28 C: PVAC softens, B-72 may creep (22 to
# 37 C), beeswax does neither (47 C and above).


def fill(made: Tables) -> None:
    for name, load in (("light", "2"), ("heavy", "540"), ("unknown", ""), ("free", "0")):
        made.joint(f"b72.{name}", load=load)
        made.layer(f"b72.{name}", "L1", "b72", carrier="acetone")
    made.joint("pvac.loaded", load="85")
    made.layer("pvac.loaded", "L1", "pvac")
    made.layer("pvac.loaded", "L2", "b72", "barrier")
    made.joint("pvac.perhaps", load="900")
    made.layer("pvac.perhaps", "L1", "pvac", identified="inferred")
    made.joint("b72.gone", load="85")
    made.layer("b72.gone", "L1", "b72")
    made.add("removals", object="b72.gone", ref="r1", layer="L1", date="2012", extent="all")
    made.joint("b72.open", load="85")
    made.joint("b72.reset", load="85")
    for number in ("b72.open", "b72.reset"):
        made.layer(number, "L1", "b72")
        made.add(
            "joint_events", object=number, place="J1", ref="e1", event="opened", date="2012-05"
        )
    made.add(
        "joint_events", object="b72.reset", place="J1", ref="e2", event="closed", date="2012-06"
    )
    made.joint("b72.fill", load="85")
    made.layer("b72.fill", "L1", "b72", "fill")
    made.joint("b72.fresh", load="85")
    made.layer("b72.fresh", "L1", "b72", date="2026-08-01", carrier="acetone")
    made.joint("b72.water", load="85")
    made.layer("b72.water", "L1", "b72", date="2026-08-01", carrier="water")
    made.surface("b72.water")
    made.layer("b72.water", "L2", "pvac", "coating", place="S1")
    made.joint("wax", load="85")
    made.layer("wax", "L1", "beeswax")
    made.joint("stated", load="85")
    made.layer("stated", "L1", "lime-mortar", "bedding")
    made.add(
        "statements", key="s1", table="layer", object="stated", ref="L1", field="material",
        value="pvac",
    )  # fmt: skip
    made.joint("said", load="80")
    made.layer("said", "L1", "", identified="")
    made.add(
        "statements", key="s3", table="layer", object="said", ref="L1", field="material",
        value="pvac",
    )  # fmt: skip
    made.joint("refused", load="85")
    made.layer("refused", "L1", "lime-mortar", "bedding")
    made.add(
        "statements", key="s2", table="layer", object="refused", ref="L1", field="material",
        value="pvac", followed="no",
    )  # fmt: skip
    made.joint("class", load="85")
    made.layer("class", "L1", "acrylic-resin")
    made.joint("nobody", load="85")
    made.layer("nobody", "L1", "", identified="unknown")
    made.add("materials", key="tin-solder", name="tin solder, no lead", **{"class": "melt-set"})
    for number, material, role, load in (
        ("lead.loaded", "lead-run", "lead run", "85"),
        ("lead.unrecorded", "lead-run", "lead run", ""),
        ("lead.free", "lead-run", "lead run", "0"),
        ("lead.fill", "lead-run", "fill", "85"),
        ("solder.soft", "soft-solder", "solder", "85"),
        ("solder.tin", "tin-solder", "solder", "85"),
        ("solder.tin-free", "tin-solder", "solder", "0"),
        ("solder.hard", "silver-solder", "solder", "85"),
        ("solder.class", "melt-set", "solder", "85"),
        ("metal.class", "metal", "setting", "85"),
        ("copper.class", "copper-alloy", "setting", "85"),
    ):
        made.joint(number, load=load)
        made.layer(number, "L1", material, role)
    made.joint("nylon", load="85")
    made.layer("nylon", "L1", "soluble-nylon")


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return import_tables(tmp_path_factory.mktemp("store"), fill)


@pytest.fixture
def connection(store: Path) -> Iterator[Connection]:
    with asking(store) as open_connection:
        yield open_connection


@pytest.fixture
def warm(connection: Connection) -> WhatIfAnswer:
    return whatif(connection, 28, ON)


def joints(answer: WhatIfAnswer) -> list[str]:
    return [rows[0].object for rows in answer.by_joint()]


def of(answer: WhatIfAnswer, number: str) -> list[WhatIfLayer]:
    return [row for row in answer.layers if row.object == number]


def test_certain_first_then_what_softens_then_the_load(warm: WhatIfAnswer) -> None:
    assert joints(warm) == [
        "pvac.loaded",  # softens for certain
        "b72.heavy",  # may creep, 540 kg
        "b72.reset",  # 85 kg
        "b72.water",
        "b72.light",  # 2 kg
        "b72.unknown",  # no load on record: held to be loaded
        "pvac.perhaps",  # softens, but identity only inferred; 900 kg
        "b72.fresh",  # softens only while solvent may remain
        "stated",  # a source says that it is of that material
        "said",
    ]
    assert (warm.joints, warm.objects, len(warm.layers)) == (10, 10, 11)


def test_the_layers_of_a_joint_stand_together(warm: WhatIfAnswer) -> None:
    first = next(warm.by_joint())
    assert [(row.layer, row.effect, row.margin_c) for row in first] == [
        ("L1", "softens", 0),
        ("L2", "may creep", 9),
    ]


def test_every_figure_is_named_with_its_source(warm: WhatIfAnswer) -> None:
    figure = warm.figures[of(warm, "b72.heavy")[0].figure]
    assert figure.low == 37
    assert len(figure.lines) == 2 and "lit.CARD22" in "".join(figure.lines)


def test_what_is_open_gone_free_or_fill_does_not_creep(warm: WhatIfAnswer) -> None:
    assert not {"b72.open", "b72.gone", "b72.free", "b72.fill", "wax"} & set(joints(warm))


def test_what_softens_is_listed_whatever_it_carries(connection: Connection) -> None:
    hot = whatif(connection, 40, ON)
    assert {"b72.free", "b72.fill"} <= set(joints(hot))
    assert {"b72.open", "b72.gone"}.isdisjoint(joints(hot))


def test_solvent_that_remains_lowers_the_figure_but_not_for_ever(
    connection: Connection, warm: WhatIfAnswer
) -> None:
    (fresh,) = of(warm, "b72.fresh")
    assert (fresh.effect, fresh.margin_c, fresh.young, fresh.unsure) == ("softens", -21, 1, 1)
    (dispersed,) = of(warm, "b72.water")
    assert (dispersed.effect, dispersed.margin_c, dispersed.young) == ("may creep", 9, 0)
    cool = whatif(connection, 10, ON)
    assert [row.object for row in cool.layers] == ["b72.fresh"]
    assert whatif(connection, 6, as_of("2030", TODAY)).layers == ()


def test_a_statement_that_was_decided_against_does_not_count(warm: WhatIfAnswer) -> None:
    (stated,), (said,) = of(warm, "stated"), of(warm, "said")
    assert stated.unsure and said.unsure and "refused" not in joints(warm)


def test_what_cannot_be_told_is_counted_apart(warm: WhatIfAnswer) -> None:
    assert dict(warm.without_figure) == {"N-methoxymethyl nylon": 1}
    # A class that may be lead is no more than a class: acrylic, melted setting, metal.
    assert (warm.class_only, warm.unidentified) == (3, 2)
    # Lime mortar twice, hard solder, a copper alloy, and solder that carries nothing.
    assert warm.not_creeping == 5


def test_lead_and_soft_solder_under_load_cannot_be_told(warm: WhatIfAnswer) -> None:
    # Common practice: lead and tin solder creep under load at room temperature; they melt at
    # 327 C and from 183 C (from memory), far above any margin.
    assert warm.soft_metal == (
        ("lead, run in molten", 2),
        ("soft solder (tin and lead)", 1),
        ("tin solder, no lead", 1),
    )


def test_one_object(connection: Connection) -> None:
    answer = whatif(connection, 28, ON, "B72.heavy")
    assert answer.object == "b72.heavy" and joints(answer) == ["b72.heavy"]
    assert (answer.unidentified, answer.class_only, answer.not_creeping) == (0, 0, 0)
    with pytest.raises(NoSuch):
        whatif(connection, 28, ON, "nothing")


def test_a_day_before_the_layer_came(connection: Connection) -> None:
    assert whatif(connection, 28, as_of("1985", TODAY)).layers == ()


def test_the_margin_is_the_setting(store: Path, tmp_path: Path) -> None:
    small = "UPDATE setting SET value = '5' WHERE name = 'creep margin'"
    with asking(changed(store, tmp_path / "small.db", small)) as connection:
        answer = whatif(connection, 28, ON)
    assert answer.margin == 5
    assert set(joints(answer)) == {
        "pvac.loaded",
        "pvac.perhaps",
        "b72.fresh",
        "stated",
        "said",
    }


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("solvent hold months", "inf"),
        ("solvent hold months", "nan"),
        ("solvent depression", "-40"),
        ("creep margin", "-inf"),
    ],
)
def test_an_odd_setting_is_said_and_not_used(
    store: Path, tmp_path: Path, warm: WhatIfAnswer, name: str, words: str
) -> None:
    odd = f"UPDATE setting SET value = '{words}' WHERE name = '{name}'"
    with asking(changed(store, tmp_path / "odd.db", odd)) as connection:
        answer = whatif(connection, 28, ON)
    assert joints(answer) == joints(warm)
    assert len(answer.notes) == 1 and f"{name!r} reads {words!r}" in answer.notes[0]


def test_the_rule_and_the_question_agree(store: Path, tmp_path: Path) -> None:
    """What the rules find in a room of 28 C is what the question lists for that object."""
    from conservedb.questions.checks import check

    warm = (
        "INSERT INTO climate (uuid, entered, key, room, room_folded, max_c, since_earliest,"
        " since_latest, since_flags, since_derived, until_earliest, until_latest, until_flags,"
        " until_derived) VALUES ('u', '2026-11-02', 'k', 'Cold room', 'cold room', 28, -8000000,"
        " 8000000, 0, 'blank', -8000000, 8000000, 0, 'blank')",
    )
    with asking(changed(store, tmp_path / "warm.db", *warm)) as connection:
        listed = whatif(connection, 28, ON)
        for row in listed.layers:
            rule = {"softens": "softening-temperature", "may creep": "creep-temperature"}
            judged = [
                one.finding
                for one in check(connection, row.object, ON).findings
                if one.finding.rule == rule[row.effect] and row.layer in one.finding.layers
            ]
            assert len(judged) == 1, (row.object, row.layer)
            assert judged[0].certain is not bool(row.unsure), (row.object, row.layer)
