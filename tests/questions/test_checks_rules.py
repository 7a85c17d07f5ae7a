"""Each rule on a database: where it is broken, where it cannot tell, and where it is silent.

The values are those of the shipped reference tables; where they and the rules come from stands
beside each.
"""

from __future__ import annotations

import re

import pytest
from sqlalchemy import Connection

from tests.questions.checking import checked, connection, found

__all__ = ["checked", "connection"]

BROKEN, CANNOT_TELL, SILENT = "broken", "cannot tell", ""

CASES = [
    # Podany et al., JAIC 40-1 (2001), sections 3 and 8: a barrier lets hard resins off stone.
    ("cross-linked-without-barrier", "bare.none", BROKEN, r"recorded as none \(REP, p\. 9\)"),
    ("cross-linked-without-barrier", "bare.missed", BROKEN, r"not found when looked for .*side A"),
    ("cross-linked-without-barrier", "bare.unrecorded", CANNOT_TELL, r"no barrier is on record"),
    ("cross-linked-without-barrier", "bare.unidentified", CANNOT_TELL, r"not identified"),
    ("cross-linked-without-barrier", "dry.yes", SILENT, ""),
    ("cross-linked-without-barrier", "strong.weak", SILENT, ""),  # an acrylic re-dissolves
    ("cross-linked-without-barrier", "nitrate.old", SILENT, ""),
    # The same paper: fully dry; its test waited one month.
    ("barrier-not-dry", "dry.no", BROKEN, r"not dry .*on the same day.*one month"),
    ("barrier-not-dry", "dry.blank", CANNOT_TELL, r"2 days, less than that"),
    ("barrier-not-dry", "dry.yes", SILENT, ""),
    # Section 6: marble failed beside polyester at 4616 kPa in tension, beside epoxy at 4519.
    ("adhesive-stronger-than-body", "strong.marble", BROKEN, r"may be stronger .*4616 kPa"),
    ("adhesive-stronger-than-body", "strong.slate", CANNOT_TELL, r"not known"),
    ("adhesive-stronger-than-body", "strong.weak", SILENT, ""),
    # Risser and Podany (2005): creep under constant load; B-72 37 to 40 C (Cardiff 2022), 40 C
    # (Koob 1996); a margin of 15 C.
    ("creep-temperature", "creep.hall", BROKEN, r"11 C below .*26 C.*37 to 40 C.*carries 85 kg"),
    ("creep-temperature", "creep.nowhere", CANNOT_TELL, r"L1"),
    ("creep-temperature", "soft.unknown", CANNOT_TELL, r"not identified"),
    ("creep-temperature", "soft.class", CANNOT_TELL, r"L1"),
    ("creep-temperature", "creep.cold", SILENT, ""),
    ("creep-temperature", "creep.free", SILENT, ""),
    ("creep-temperature", "creep.open", SILENT, ""),
    ("creep-temperature", "soft.mortar", SILENT, ""),
    ("softening-temperature", "soft.van", BROKEN, r"softens, in Van .*41 C"),
    # Vincotte et al. (2019): up to 30 C lower while solvent remains; 37 - 30 = 7 C.
    ("softening-temperature", "soft.fresh", BROKEN, r"14 C; .*lowered while solvent may remain"),
    ("softening-temperature", "soft.dispersion", SILENT, ""),
    ("softening-temperature", "creep.hall", SILENT, ""),
    # Common practice: inpainting stands on a layer that its own liquid does not dissolve.
    ("inpainting-without-isolation", "paint.none", BROKEN, r"recorded as none"),
    ("inpainting-without-isolation", "paint.bare", CANNOT_TELL, r"no isolating layer"),
    ("inpainting-without-isolation", "paint.isolated", SILENT, ""),
    # Vincotte et al. (2019): acetone dissolves B-72.
    ("inpainting-solvent-attacks-isolation", "paint.attacked", BROKEN, r"acetone, which acts"),
    ("inpainting-solvent-attacks-isolation", "paint.unknown", CANNOT_TELL, r"isolating layer"),
    ("inpainting-solvent-attacks-isolation", "paint.bare", SILENT, ""),
    # Common practice: a fill is an insert, or has a barrier beneath.
    ("fill-not-detachable", "fill.none", BROKEN, r"recorded as none"),
    ("fill-not-detachable", "fill.bare", CANNOT_TELL, r"no barrier is on record"),
    ("fill-not-detachable", "fill.barrier", SILENT, ""),
    ("fill-not-detachable", "fill.acrylic", SILENT, ""),
    # Common practice: what was put on for a time is taken off, and that is recorded.
    ("temporary-still-on", "temporary.on", BROKEN, r"never meant to stay"),
    ("temporary-still-on", "temporary.perhaps", CANNOT_TELL, r"not certainly there"),
    ("temporary-still-on", "temporary.off", SILENT, ""),
    # Pung, Conservation DistList (1998): iron dowels crack stone.
    ("iron-in-stone", "iron.cramp", BROKEN, r"cramp K1 \(wrought iron\), which swells"),
    ("iron-in-stone", "iron.unknown", CANNOT_TELL, r"known from a picture only"),
    ("iron-in-stone", "iron.stainless", SILENT, ""),
    # Common practice: of two unlike metals the less noble one corrodes.
    ("dissimilar-metals", "metals.touch", BROKEN, r"nothing is on record between"),
    ("dissimilar-metals", "metals.parted", CANNOT_TELL, r"lies between"),
    ("dissimilar-metals", "metals.alike", SILENT, ""),
    # Shashoua, Bradley and Daniels (1992): nitrate gives off nitrogen oxides.
    ("off-gassing-near-lead-or-shell", "vapour.lead", BROKEN, r"gives off acid vapour"),
    ("off-gassing-near-lead-or-shell", "vapour.stone", SILENT, ""),
    # The shipped period of cyanoacrylate is published: 1958; that of Roman cement a memory.
    ("before-its-time", "early.cyano", BROKEN, r"dated 1950.*first made 1958"),
    ("before-its-time", "early.perhaps", SILENT, ""),
    ("before-its-time", "early.memory", SILENT, ""),
    ("earliest-date-of-undated", "undated.cyano", CANNOT_TELL, r"not before 1958-01-01"),
    ("earliest-date-of-undated", "undated.lime", SILENT, ""),
    ("earliest-date-of-undated", "early.perhaps", SILENT, ""),
    # Noake, Lau and Nel (2017): joints of nitrate; from 30 years, a setting.
    ("cellulose-nitrate-age", "nitrate.old", BROKEN, r"at least 73 years old"),
    ("cellulose-nitrate-age", "nitrate.undated", CANNOT_TELL, r"not established"),
    ("cellulose-nitrate-age", "nitrate.young", SILENT, ""),
    # Commentary 27 to the guidelines of the American Institute for Conservation: pictures of
    # whatever becomes hidden. Conduct is judged from 2020 on here.
    ("closed-without-photograph", "photo.none", BROKEN, r"no photograph dated between 1998-05-01"),
    ("closed-without-photograph", "photo.undated", CANNOT_TELL, r"no photograph"),
    ("closed-without-photograph", "photo.yes", SILENT, ""),
    ("closed-without-photograph", "photo.before", SILENT, ""),
    ("closed-without-photograph", "photo.vague", SILENT, ""),
    # Commentary 16: solvent tests are routine before work.
    ("no-spot-test-before-solvent", "swab.untested", BROKEN, r"S1: acetone was used in i1"),
    ("no-spot-test-before-solvent", "swab.tested", SILENT, ""),
    ("no-spot-test-before-solvent", "swab.long-ago", SILENT, ""),
    # Common practice: a released joint falls.
    ("loaded-without-support-record", "support.moves", CANNOT_TELL, r"moves; carries 85 kg"),
    ("loaded-without-support-record", "support.held", SILENT, ""),
    ("loaded-without-support-record", "support.quiet", SILENT, ""),
]


@pytest.mark.parametrize(("rule", "number", "outcome", "says"), CASES, ids=lambda part: str(part))
def test_rule(connection: Connection, rule: str, number: str, outcome: str, says: str) -> None:
    findings = found(connection, number, rule)
    if outcome == SILENT:
        assert findings == []
        return
    (finding,) = findings
    assert finding.outcome == outcome
    assert re.search(says, finding.sentence), finding.sentence
    assert bool(finding.missing) is (outcome == CANNOT_TELL)


@pytest.mark.parametrize(
    ("rule", "number", "missing"),
    [
        ("cross-linked-without-barrier", "bare.unrecorded", "whether there was a barrier"),
        ("barrier-not-dry", "dry.blank", "whether L1 and L3 was dry when covered"),
        ("creep-temperature", "creep.nowhere", "how warm Attic gets"),
        ("creep-temperature", "soft.unknown", "what L1 is made of"),
        ("iron-in-stone", "iron.unknown", "what K1 is made of"),
        ("temporary-still-on", "temporary.perhaps", "whether L1 is still there"),
        ("earliest-date-of-undated", "undated.cyano", "the date of L1"),
        ("inpainting-solvent-attacks-isolation", "paint.unknown", "the carrier of L2"),
        ("loaded-without-support-record", "support.moves", "whether J1 is supported"),
    ],
)
def test_the_missing_fact_is_named(
    connection: Connection, rule: str, number: str, missing: str
) -> None:
    (finding,) = found(connection, number, rule)
    assert missing in finding.missing


def test_what_rests_on_lowering_or_a_picture_is_only_possible(connection: Connection) -> None:
    for number, rule in (
        ("soft.fresh", "softening-temperature"),
        ("iron.unknown", "iron-in-stone"),
        ("strong.marble", "adhesive-stronger-than-body"),
    ):
        (finding,) = found(connection, number, rule)
        assert not finding.certain
    (finding,) = found(connection, "creep.hall", "creep-temperature")
    assert finding.certain


def test_every_published_figure_is_named(connection: Connection) -> None:
    (finding,) = found(connection, "creep.hall", "creep-temperature")
    assert "glass transition 40 C (lit.KOOB96)" in finding.sentence
    assert "glass transition 37 to 40 C (lit.CARD22)" in finding.sentence
    assert [source.partition(": ")[0] for source in finding.sources] == ["lit.KOOB96", "lit.CARD22"]
