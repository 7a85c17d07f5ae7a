"""The cases of the department of `checking`: for each rule one that breaks it, and others."""

from __future__ import annotations

from typing import Any

Made = Any
"""`checking.Tables`, which imports this module."""


def fill(made: Made) -> None:
    _shared(made)
    for cases in (_barriers, _warmth, _steps, _additions, _metals, _periods, _conduct, _accepted):
        cases(made)


def _shared(made: Made) -> None:
    for name in ("Ines Calder", "Tom Aldous"):
        made.add("people", name=name)
    made.add("sources", ref="REP", kind="report", citation="Report of treatment", date="2012-11-30")
    made.add("sources", ref="LOG", kind="report", citation="Logger sheets", date="2026-09")
    made.add("sources", ref="PHO", kind="photograph", citation="Faces of J1", date="2024-05-09")
    made.add("settings", name="conduct from", value="2020-01-01")
    for room, warmest, use in (("Cold room", "14", "storage"), ("Hall", "26", "display")):
        made.add("climates", key=room, room=room, use=use, max_c=warmest, source="LOG")
    made.add("climates", key="van", room="Van", use="transport", max_c="41", source="LOG")


def _barriers(made: Made) -> None:
    made.joint("bare.none")
    made.layer("bare.none", "L1", "epoxy", source="REP")
    made.add(
        "statements", key="st1", table="place", object="bare.none", ref="J1", field="barrier",
        value="none", source="REP", page="9",
    )  # fmt: skip
    made.joint("bare.missed")
    made.layer("bare.missed", "L1", "b72", "barrier", stack="0", side="A", dry="yes")
    made.layer("bare.missed", "L2", "epoxy", stack="1")
    made.layer("bare.missed", "L3", "b72", "barrier", stack="2", side="B", dry="yes")
    made.add(
        "sightings", object="bare.missed", ref="s1", layer="L1", date="2012-02-21",
        result="not found", source="REP",
    )  # fmt: skip
    made.joint("bare.unrecorded")
    made.layer("bare.unrecorded", "L1", "polyester", date="1967-03")
    made.joint("bare.unidentified")
    made.layer("bare.unidentified", "L1", "", identified="unknown")
    for number, dry, days in (("dry.no", "no", "1989-05-16"), ("dry.blank", "", "1989-05-18")):
        made.joint(number)
        made.layer(number, "L1", "b72", "barrier", "1989-05-16", stack="0", side="A", dry=dry)
        made.layer(number, "L2", "epoxy", date=days, stack="1")
        made.layer(number, "L3", "b72", "barrier", "1989-05-16", stack="2", side="B", dry=dry)
    made.joint("dry.yes")
    made.layer("dry.yes", "L1", "b72", "barrier", "2012-03-12", stack="0", side="A", dry="yes")
    made.layer("dry.yes", "L2", "epoxy", date="2012-04-24", stack="1")
    made.layer("dry.yes", "L3", "b72", "barrier", "2012-03-12", stack="2", side="B", dry="yes")
    for number, body in (("strong.marble", "marble"), ("strong.slate", "slate")):
        made.joint(number, body=body)
        made.layer(number, "L1", "polyester")
    made.joint("strong.weak", body="marble")
    made.layer("strong.weak", "L1", "b72", stack="1")


def _warmth(made: Made) -> None:
    for number, room in (
        ("creep.hall", "Hall, case 2"),
        ("creep.cold", "Cold room"),
        ("creep.nowhere", "Attic"),
    ):
        made.joint(number, room=room)
        made.layer(number, "L1", "b72", carrier="acetone")
    made.joint("creep.free", room="Hall", load="0")
    made.layer("creep.free", "L1", "b72")
    made.joint("creep.open", room="Hall")
    made.layer("creep.open", "L1", "b72")
    made.add("joint_events", object="creep.open", place="J1", ref="e1", event="closed", date="1990")
    made.add(
        "joint_events", object="creep.open", place="J1", ref="e2", event="opened", date="2012-05"
    )
    made.joint("soft.van", room="Van")
    made.layer("soft.van", "L1", "b72")
    made.joint("soft.fresh", room="Cold room")
    made.layer("soft.fresh", "L1", "b72", date="2026-09-01", carrier="acetone")
    made.joint("soft.dispersion", room="Cold room")
    made.layer("soft.dispersion", "L1", "b72", date="2026-09-01", carrier="water")
    made.joint("soft.unknown", room="Hall")
    made.layer("soft.unknown", "L1", "", identified="unknown")
    made.joint("soft.heavy", room="Hall", load="540")
    made.layer("soft.heavy", "L1", "b72")
    made.joint("soft.class", room="Hall")
    made.layer("soft.class", "L1", "acrylic-resin")
    made.joint("two.places", room="Attic")
    made.add(
        "places", object="two.places", mark="J2", kind="joint", component="B1",
        other_component="B2",
    )  # fmt: skip
    for place in ("J1", "J2"):
        made.layer("two.places", f"L{place}", "b72", place=place)
    made.joint("soft.mortar", room="Hall")
    made.layer("soft.mortar", "L1", "lime-mortar", "bedding")


def _steps(made: Made) -> None:
    made.joint("step.near", room="Cold room")
    made.surface("step.near")
    made.surface("step.near", "S2", "B2")
    made.layer("step.near", "L1", "b72", carrier="acetone")
    made.add(
        "near", object="step.near", ref="n1", place="S1", other_place="J1", distance_mm="2",
        path="open", source="REP",
    )  # fmt: skip
    made.add("places", object="step.near", mark="M1", kind="body", component="B1")
    made.layer("step.near", "LM", "alkali-sulphate", "salts", place="M1", origin="arisen", zone="")
    made.joint("step.far", room="Cold room")
    made.surface("step.far")
    made.layer("step.far", "L1", "b72")
    made.joint("step.tight", body="porcelain", room="Cold room")
    made.surface("step.tight")
    made.layer("step.tight", "L1", "animal-glue")
    made.layer("step.tight", "L2", "", place="S1", role="coating", identified="unknown")
    made.add("near", object="step.tight", ref="n1", place="J1", other_place="S1", path="tight")
    made.joint("step.hard", body="porcelain", load="0")
    made.surface("step.hard")


def _additions(made: Made) -> None:
    for number in ("paint.bare", "paint.isolated", "paint.attacked", "paint.unknown", "paint.none"):
        made.joint(number)
        made.surface(number)
    made.layer("paint.bare", "L1", "acrylic-paint", "inpainting", place="S1", stack="1")
    made.layer("paint.none", "L1", "acrylic-paint", "inpainting", place="S1", stack="1")
    made.add(
        "statements", key="st2", table="place", object="paint.none", ref="S1", field="barrier",
        value="none", source="REP",
    )  # fmt: skip
    for number, carrier in (
        ("paint.isolated", "water"),
        ("paint.attacked", "acetone"),
        ("paint.unknown", ""),
    ):
        made.layer(number, "L1", "b72", "isolating layer", place="S1", stack="0")
        made.layer(
            number, "L2", "acrylic-paint", "inpainting", place="S1", stack="1", carrier=carrier
        )
    for number in ("fill.bare", "fill.none", "fill.barrier", "fill.acrylic"):
        made.joint(number)
        made.surface(number)
    made.layer("fill.bare", "L1", "portland-cement", "fill", place="S1", stack="1")
    made.layer("fill.none", "L1", "polyester-stone", "fill", place="S1", stack="1")
    made.add(
        "statements", key="st3", table="place", object="fill.none", ref="S1", field="barrier",
        value="none", source="REP",
    )  # fmt: skip
    made.layer("fill.barrier", "L0", "b72", "barrier", place="S1", stack="0", dry="yes")
    made.layer("fill.barrier", "L1", "gypsum-plaster", "fill", place="S1", stack="1")
    made.layer("fill.acrylic", "L1", "acrylic-fill", "fill", place="S1", stack="1")
    for number in ("temporary.on", "temporary.perhaps", "temporary.off"):
        made.joint(number)
        made.surface(number)
        day = "2026-06~" if number == "temporary.perhaps" else "2026-06-01"
        made.layer(number, "L1", "tissue", "facing", day, "S1")
    made.add(
        "removals", object="temporary.off", ref="r1", layer="L1", date="2026-07-01", extent="all"
    )


def _metals(made: Made) -> None:
    for number, metal, seen in (
        ("iron.cramp", "iron", "seen"),
        ("iron.unknown", "", "picture only"),
        ("iron.stainless", "stainless-steel", "seen"),
    ):
        made.joint(number)
        made.add(
            "components", object=number, mark="K1", kind="cramp", origin="fixing", material=metal,
            bridges="J1", known_from=seen, made="1868",
        )  # fmt: skip
    made.joint("metals.touch", body="bronze", other="iron")
    made.joint("metals.parted", body="bronze", other="iron")
    made.layer("metals.parted", "L1", "b72", "barrier", dry="yes")
    made.joint("metals.alike", body="bronze", other="brass")
    made.joint("vapour.lead", body="lead")
    made.surface("vapour.lead")
    made.layer("vapour.lead", "L1", "cn", "coating", "2010", "S1")
    made.joint("vapour.stone")
    made.layer("vapour.stone", "L1", "cn", date="2010")


def _periods(made: Made) -> None:
    for number, material, date in (
        ("early.cyano", "cyano", "1950"),
        ("early.perhaps", "cyano", "1950/1965"),
        ("early.memory", "roman-cement", "1760"),
        ("undated.cyano", "cyano", ""),
        ("undated.lime", "lime-mortar", ""),
        ("nitrate.old", "cn", "1952"),
        ("nitrate.undated", "cn", "1900/2020"),
        ("nitrate.young", "cn", "2015"),
    ):
        made.joint(number, body="porcelain")
        made.layer(number, "L1", material, date=date)


def _conduct(made: Made) -> None:
    for number, day in (
        ("photo.none", "2024-05-10"),
        ("photo.yes", "2024-05-10"),
        ("photo.undated", "2024-05-10"),
        ("photo.before", "1998-05-10"),
        ("photo.vague", "2019/2021"),
    ):
        made.joint(number)
        made.layer(number, "L1", "b72", date="1980", source="PHO" if number == "photo.yes" else "")
        made.add(
            "joint_events", object=number, place="J1", ref="e1", event="opened", date="1998-05-01"
        )
        made.add("joint_events", object=number, place="J1", ref="e2", event="closed", date=day)
    made.add("sources", ref="UND", kind="photograph", citation="Undated prints")
    made.add(
        "sightings", object="photo.undated", ref="s1", layer="L1", date="2024-05-05",
        result="seen", source="UND",
    )  # fmt: skip
    for number, ref, day in (
        ("swab.untested", "i1", "2022-03-01"),
        ("swab.tested", "i1", "2022-03-01"),
        ("swab.long-ago", "i1", "1976-03-01"),
    ):
        made.joint(number)
        made.surface(number)
        made.layer(number, "L1", "dammar", "varnish", "1950", "S1")
        made.add(
            "interventions", object=number, ref=ref, kind="clean", date=day, places="S1",
            people="Ines Calder",
        )  # fmt: skip
        made.add("agents", object=number, intervention=ref, ref="g1", material="acetone")
    made.add(
        "spot_tests", object="swab.tested", layer="L1", ref="t1", agent="acetone",
        date="2022-02-20", form="swab", wet="dissolves", people="Ines Calder",
    )  # fmt: skip
    for number in ("support.moves", "support.held", "support.quiet"):
        made.joint(number)
        made.layer(number, "L1", "lime-mortar", "bedding", "1741")
    for number in ("support.moves", "support.held"):
        made.add(
            "joint_events", object=number, place="J1", ref="e1", event="moving", date="2024-04-30"
        )
    made.add(
        "joint_events", object="support.held", place="J1", ref="e0", event="closed", date="1989"
    )
    made.add(
        "interventions", object="support.held", ref="i1", kind="support", date="2024-05-02",
        places="J1", people="Tom Aldous",
    )  # fmt: skip


def _accepted(made: Made) -> None:
    for number, review in (
        ("accepted.still", "2027-06-01"),
        ("accepted.over", "2025-03-20"),
        ("accepted.for-good", ""),
    ):
        made.joint(number)
        made.layer(number, "L1", "epoxy")
        made.add(
            "acceptances", object=number, ref="a1", rule="cross-linked-without-barrier",
            place="J1", person="Ines Calder", reason="Carries nothing since the frame of 2013.",
            date="2013-01-10", review=review,
        )  # fmt: skip
