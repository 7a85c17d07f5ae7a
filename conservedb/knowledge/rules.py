"""The rules of the trade, each by its key, and the order in which their findings are told.

A rule says what is broken, or what cannot be told because a fact is not recorded. It never says
that something is right: where no rule finds anything, that is all that can be said.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import NamedTuple

from conservedb.knowledge import (
    rule_additions,
    rule_barriers,
    rule_conduct,
    rule_heat,
    rule_metals,
    rule_periods,
    rule_steps,
    rule_strength,
    rule_warmth,
)
from conservedb.knowledge.rule_case import BROKEN, Case, Finding

SEVERITIES = ("block", "warn", "inform")

RULES: dict[str, Callable[[Case], Iterable[Finding]]] = {
    "cross-linked-without-barrier": rule_barriers.cross_linked_without_barrier,
    "barrier-not-dry": rule_barriers.barrier_not_dry,
    "adhesive-stronger-than-body": rule_strength.adhesive_stronger_than_body,
    "creep-temperature": rule_warmth.creep_temperature,
    "softening-temperature": rule_warmth.softening_temperature,
    "heat-near-softening": rule_heat.heat_near_softening,
    "water-near-sensitive": rule_steps.water_near_sensitive,
    "acid-on-calcite": rule_steps.acid_on_calcite,
    "inpainting-without-isolation": rule_additions.inpainting_without_isolation,
    "inpainting-solvent-attacks-isolation": rule_additions.inpainting_solvent_attacks_isolation,
    "fill-not-detachable": rule_additions.fill_not_detachable,
    "temporary-still-on": rule_additions.temporary_still_on,
    "iron-in-stone": rule_metals.iron_in_stone,
    "dissimilar-metals": rule_metals.dissimilar_metals,
    "off-gassing-near-lead-or-shell": rule_metals.off_gassing,
    "before-its-time": rule_periods.before_its_time,
    "earliest-date-of-undated": rule_periods.earliest_date_of_undated,
    "cellulose-nitrate-age": rule_periods.cellulose_nitrate_age,
    "closed-without-photograph": rule_conduct.closed_without_photograph,
    "loaded-without-support-record": rule_conduct.loaded_without_support_record,
    "no-spot-test-before-solvent": rule_conduct.no_spot_test_before_solvent,
}
CONDUCT = ("closed-without-photograph", "no-spot-test-before-solvent")
"""Rules that judge how work was done; the others judge the object, or a step, as it is now."""
OF_STEPS = (
    "heat-near-softening",
    "water-near-sensitive",
    "acid-on-calcite",
    "loaded-without-support-record",
    "no-spot-test-before-solvent",
)
"""Rules that judge a planned step."""
OF_OBJECTS = tuple(key for key in RULES if key not in OF_STEPS[:3])
"""Rules that judge an object as it is; heat, water and acid are judged where they are planned."""


_UNRECORDED_KG = 0.001


class Rule(NamedTuple):
    """A recorded rule: `severity` is "block", "warn" or "inform", `judges` safety or conduct."""

    key: str
    title: str
    severity: str
    judges: str
    sentence: str = ""
    basis: str = ""
    source: str = ""


def found(case: Case, rules: Iterable[Rule]) -> list[Finding]:
    """Everything that some rules find in a case.

    Rules that the program does not know find nothing; nor do those of conduct while no day is
    set from which it is judged.
    """
    conduct = case.settled.conduct_from is not None
    return [
        finding
        for rule in rules
        if rule.key in RULES and (conduct or rule.judges != "conduct")
        for finding in RULES[rule.key](case)
    ]


def ranked(findings: Iterable[Finding], rules: Mapping[str, Rule]) -> list[Finding]:
    """Findings, those of most consequence first: severity, then load carried, then certainty."""
    return sorted(findings, key=lambda finding: consequence(finding, rules))


def consequence(finding: Finding, rules: Mapping[str, Rule]) -> tuple[int, float, int]:
    """Where a finding stands among others, the lowest first.

    A load that is not recorded comes after every recorded one but nothing: it may be any.
    """
    severity = SEVERITIES.index(rules[finding.rule].severity)
    load = finding.load_kg if finding.load_kg is not None else _UNRECORDED_KG
    sure = 0 if finding.outcome == BROKEN and finding.certain else 1
    return severity, -load, sure if finding.outcome == BROKEN else 2
