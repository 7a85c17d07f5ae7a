"""A treatment without a database: examined, planned twice, partly done, first aid not ratified."""

from __future__ import annotations

from dataclasses import replace

from conservedb.dates import read
from conservedb.knowledge.authority import Finding
from conservedb.knowledge.due import Asked
from conservedb.questions.answers import Person, Rival, Source, When
from conservedb.questions.treatment_answers import (
    AskedOf,
    DecisionEntry,
    Line,
    Observation,
    PlanEntry,
    PlannedEntry,
    StepEntry,
    TreatmentAnswer,
    TreatmentRow,
    TreatmentsAnswer,
)


def when(words: str = "") -> When:
    return When(*read(words))


REPORT = Source("REP-2026", "report", "Condition survey before the move")
AMARA, BRUNO = Person("Amara Whitlock", "conservator"), Person("Bruno Castell")
RIVAL = Rival("date", "2026-10-20", REPORT, (BRUNO,), when(), "no", "", "", "")

SEEN = Observation(
    "O1", when("2026-09-15"), "J14, on acrylic fill, L14f", "crack", "Open 0.3 mm at the front.",
    "The seat works as the store warms and cools.", "210 mm", (AMARA,), REPORT, "",
)  # fmt: skip
BARE = replace(SEEN, ref="O2", where="", condition="", seen="", presumed="", extent="")


def step(ref: str, kind: str, sentence: str, date: str, **more: object) -> StepEntry:
    """A step with everything that is not named left as nobody recorded it."""
    values: dict[str, object] = {
        "ref": ref, "kind": kind, "sentence": sentence, "date": when(date), "time_of_day": "",
        "date_basis": "", "people": (AMARA,), "recorded": when(), "recorded_by": "",
        "recorded_over": None, "aims": (), "standing": "", "planned": "", "deviation": "",
        "unauthorised_reason": "", "unauthorised_by": "", "circumstances": "", "methods": "",
        "components": (), "places": (), "source": None, "note": "", "needed": (), "findings": (),
        "start": None, "beside": "", "lines": (), "observations": (), "rivals": (),
    }  # fmt: skip
    return StepEntry(**{**values, **more})  # type: ignore[arg-type]


STEPS = (
    step("I1", "examine", "Examined: condition survey", "2026-09-15", recorded=when("2026-09-18"),
         recorded_by="Amara Whitlock", circumstances="Store 3, 18 C", methods="raking light",
         places=("J14",), source=REPORT, observations=(SEEN, BARE),
         findings=(Finding("needs not recorded",
                           "Which authorisations this kind of step needs is not recorded."),),
         lines=(Line("reading", "R4", "Read at J14: crack width 0.3 mm (crack gauge 1)"),)),
    step("I2", "support", "Supported: flutes faced with tissue", "2026-10-19", aims=("preventive",),
         people=(AMARA, BRUNO), time_of_day="morning", recorded=when("2026-10-21"),
         recorded_over=12, standing="planned", planned="PS2", needed=("curator",),
         findings=(Finding("in force", "Curator: in force on the day of the step: R. Thaxter as"
                           " curator (AU2).", "curator", "AU2"),),
         lines=(Line("layer", "LS7e", "Applied: cyclododecane, facing at S07 (LS7e)",
                     ("melt, at 65 C", "batch BT2, lot CD-114")),), rivals=(RIVAL,)),
    step("I3", "take apart", "Taken apart: shell lifted", "2026-10-20", deviation="One slab held.",
         planned="PS4", unauthorised_reason="It rained in.", unauthorised_by="Bruno Castell",
         findings=(Finding("missing", "Engineer: no authorisation on record.", "engineer"),),
         start=Finding("started before authorisation",
                       "Started before authorisation by Bruno Castell: It rained in.")),
    step("I4", "fill", "Filled: flake laid back", "2026-10-22", standing="first aid", people=(),
         beside="I4 (fill, 22 October 2026) was not planned: first aid.",
         findings=(Finding("to be ratified", "Curator: first aid, to be ratified; no"
                           " authorisation on record.", "curator"),)),
)  # fmt: skip
DECISION = DecisionEntry(
    "AU2", "authorised", "curator", "Rosalind Thaxter", 2, "", when("2026-10-12"),
    when("2027-12-31"), "facing only", ("PS2",), "Off again before the wall is closed.",
    "letter in the file", REPORT, "",
)  # fmt: skip
REFUSED = replace(DECISION, ref="AU1", decision="refused", version=1, expires=when(), steps=(),
                  scope="", conditions="", evidence="", source=None)  # fmt: skip
APART = replace(DECISION, ref="AU3", decision="", version=None, intervention="I3", person="")


def planned(ref: str, position: int, kind: str, sentence: str, state: str, progress: str,
            *needs: Finding) -> PlannedEntry:  # fmt: skip
    return PlannedEntry(
        ref, position, sentence, kind, ("B13",), ("S07",), "", state, progress, (), needs
    )


PLANS = (
    PlanEntry("PL1", 1, when("2026-09-22"), (AMARA,), ("remedial",), "The seat moves.", "", "",
              None, "Given up.",
              (planned("PS1", 1, "take apart", "Take apart: dolphin lifted", "no step on record",
                       "PS1 (take apart): no step on record."),), (REFUSED,)),
    PlanEntry("PL2", 2, when("2026-10-05"), (AMARA, BRUNO), ("preventive",), "Nothing is opened.",
              "PL1", "It weighs 226 kg.", REPORT, "",
              (planned("PS2", 1, "support", "Support: flutes faced", "done",
                       "PS2 (support): done by I2, 19 October 2026."),
               planned("PS3", 2, "consolidate", "Consolidate: loose grains", "no step on record",
                       "PS3 (consolidate): no step on record.",
                       Finding("missing", "Curator: no authorisation on record.", "curator"),
                       Finding("cannot tell", "Engineer: cannot tell: vague.", "engineer")),
               planned("PS4", 3, "take apart", "Take apart: shell lifted", "done otherwise",
                       "PS4 (take apart): done otherwise by I3, 20 October 2026: One slab held.")),
              (DECISION,)),
)  # fmt: skip
ASKED = (
    AskedOf("examination I1", (
        Asked("owner", "must", "AIC C24", "The owner: required by AIC C24; not recorded."),)),
    AskedOf("photographs", (
        Asked("photograph before", "must", "AIC C27",
              "Photographs before treatment: asked for; none linked (required by AIC C27)."),)),
)  # fmt: skip

NEW = TreatmentAnswer(
    "SQ.1902.7", "The Four Winds, wall fountain", "T2026", "Move to the new gallery",
    "Make fit to be carried", "open", "begun September 2026, no end on record", when("2026-09"),
    when(), "Amara Whitlock", "No joint is opened.", "", "Read the gauge each month.",
    when("2026-10"), True, False, PLANS, STEPS, (APART,),
    ("I4, 22 October 2026: Curator: first aid, to be ratified; no authorisation on record.",),
    ASKED, (("AIC C24", "Commentary 24, Documentation"), ("AIC C27", "Commentary 27, Treatment")),
    (replace(RIVAL, field="purpose"),),
)  # fmt: skip
OLD = replace(
    NEW, ref="T1934", title="Washing", status="", state="begun 1934, ended 1934", closed=True,
    begun=when("1934"), ended=when("1934"), lead="", note="", purpose="", recommendations="",
    next_check=when(), check_passed=False, plans=(), steps=(), decisions=(), to_ratify=(),
    asked=(), guidelines=(), rivals=(),
)  # fmt: skip
ROWS = TreatmentsAnswer(
    NEW.object, NEW.object_title,
    (TreatmentRow("T2026", NEW.title, NEW.state, "open", NEW.lead, (1, 2),
                  "version 2: authorised 12 October 2026 by Rosalind Thaxter as curator, for PS2",
                  4),
     TreatmentRow("T1934", "Washing", OLD.state, "", "", (), "none on record", 1)),
)  # fmt: skip
