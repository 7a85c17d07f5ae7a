"""Published guidelines on the record of conservation work, and what each asks to be recorded.

In our own words; nothing here is the wording of a guideline. Those marked "from memory" were
not at hand when this was written: check them before a dispute rests on them.
"""

from __future__ import annotations

from dataclasses import dataclass

_COMMENTARIES = (
    "http://www.conservation-us.org/our-organizations/association-(aic)/governance/"
    "code-of-ethics-and-guidelines-for-practice/"
    "commentaries-to-the-guidelines-for-practice-(html)"
)

SOURCES = {
    "AIC C17": "American Institute for Conservation, Commentary 17, Sampling and Testing (1998), "
    f"{_COMMENTARIES}/17",
    "AIC C24": f"American Institute for Conservation, Commentary 24, Documentation, "
    f"{_COMMENTARIES}/24",
    "AIC C25": "American Institute for Conservation, Commentary 25, Documentation of Examination, "
    f"{_COMMENTARIES}/25",
    "AIC C26": "American Institute for Conservation, Guidelines for Practice 26 and Commentary "
    "26, Treatment Plan (from memory)",
    "AIC C27": "American Institute for Conservation, Commentary 27, Documentation of Treatment, "
    f"{_COMMENTARIES}/27",
    "AIC GfP 27": "American Institute for Conservation, Guidelines for Practice 27, Documentation "
    "of Treatment (from memory)",
    "ECCO 10": "E.C.C.O. Professional Guidelines (II), Code of Ethics (2003), Article 10, "
    "http://www.encore-edu.org/ecco2.html",
    "ECCO": "E.C.C.O. Professional Guidelines (II), Code of Ethics (2003), on removed original "
    "material (from memory)",
    "EN 16085": "EN 16085:2012, Sampling from materials of cultural property (from memory)",
    "EN 16095": "EN 16095:2012, Condition recording for movable cultural heritage (scope read, "
    "contents from memory), https://standards.iteh.ai/catalog/standards/sist/"
    "ceed8aab-d16f-476c-9aae-4baf81bc7fba/sist-en-16095-2012",
    "EN 16853": "EN 16853:2017, Conservation process: decision making, planning and "
    "implementation (scope read), https://standards.iteh.ai/catalog/standards/cen/"
    "34e89480-48a5-4db7-9824-fcf97ff01344/en-16853-2017",
    "ICOM-CC 2008": "ICOM-CC, Terminology to characterize the conservation of tangible cultural "
    "heritage (New Delhi, 2008), "
    "https://documents.pub/document/icom-cc-new-delhi-en-fr-esp-2008.html",
    "common practice": "common practice, no source: AIC Commentary 17 asks that the taking of a "
    "sample be recorded, not that it be photographed",
    "Spectrum": "Collections Trust, Spectrum 5: Collections care and conservation; Condition "
    "checking and technical assessment (2017, 2022; its units of information from memory), "
    "https://collectionstrust.org.uk/resource/"
    "collections-care-and-conservation-the-spectrum-standard/",
}
"""Short name -> full citation."""

EXAMINATION = "examination"
PLAN = "plan"
IN_PROGRESS = "treatment in progress"
CLOSED = "closed treatment"
STAGES = (EXAMINATION, PLAN, IN_PROGRESS, CLOSED)
"""The records that are checked."""


@dataclass(frozen=True, slots=True)
class Demand:
    """A field that guidelines ask for.

    `level` is "must" or "should"; `where_it_applies` fields concern only some records (what was
    removed, a deviation), and are asked for only where the record says that they apply.
    """

    field: str
    label: str
    level: str
    source: str
    stages: tuple[str, ...]
    where_it_applies: bool = False


_EVERY = STAGES
_WORK = (IN_PROGRESS, CLOSED)
_CONDITION = (EXAMINATION,)

DEMANDS = (
    Demand("number", "the number of the object", "must", "AIC C24; Spectrum", _EVERY),
    Demand("owner", "the owner or custodian", "must", "AIC C24", _CONDITION),
    Demand("title", "the title or type of the object", "must", "AIC C24", _CONDITION),
    Demand("maker", "the maker or origin, or that it is unknown", "must", "AIC C24", _CONDITION),
    Demand("made", "the date of making, or that it is unknown", "must", "AIC C24", _CONDITION),
    Demand("dimensions", "the measurements", "must", "AIC C24; EN 16095", _CONDITION),
    Demand("marks", "marks, labels and features", "should", "AIC C24", _CONDITION),
    Demand(
        "components",
        "the components, with mounts, fixtures and housings",
        "must",
        "AIC C25",
        _CONDITION,
    ),
    Demand("purpose", "the purpose", "must", "AIC C24; AIC C25", (EXAMINATION, *_WORK)),
    Demand("date", "the date", "must", "AIC C24; Spectrum", (EXAMINATION, PLAN)),
    Demand(
        "people", "the names of those who did it", "must", "AIC C24; ECCO 10", (EXAMINATION, PLAN)
    ),
    Demand("recorded_by", "who wrote it down", "must", "AIC C24; Spectrum", (EXAMINATION, *_WORK)),
    Demand(
        "recorded", "when it was written down", "must", "AIC C24; Spectrum", (EXAMINATION, *_WORK)
    ),
    Demand("circumstances", "the circumstances", "must", "AIC C25", _CONDITION),
    Demand(
        "methods", "the methods (light, magnification, instrument)", "must", "AIC C25", _CONDITION
    ),
    Demand("seen", "what was seen, apart from what is presumed", "must", "AIC C25", _CONDITION),
    Demand("condition", "the condition, place by place", "must", "AIC C25; EN 16095", _CONDITION),
    Demand(
        "past_treatment",
        "evidence of past treatment, with references to earlier papers",
        "must",
        "AIC C25",
        _CONDITION,
    ),
    Demand("warnings", "hazards on the object", "should", "Spectrum", _CONDITION),
    Demand(
        "sample_place",
        "where the sample was taken",
        "must",
        "AIC C17; EN 16085",
        (EXAMINATION, *_WORK),
        True,
    ),
    Demand(
        "sample_consent",
        "the owner's consent to sampling",
        "must",
        "AIC C17",
        (EXAMINATION, *_WORK),
        True,
    ),
    Demand(
        "sample_remainder",
        "where the rest of the sample is kept",
        "must",
        "AIC C17; EN 16085",
        (EXAMINATION, *_WORK),
        True,
    ),
    Demand(
        "aims",
        "the aims (preventive, remedial, restoration)",
        "must",
        "AIC C26; EN 16853",
        (PLAN,),
    ),
    Demand("aims", "the aims of each step", "should", "ICOM-CC 2008", _WORK),
    Demand("justification", "the justification", "must", "AIC C26; EN 16853", (PLAN,)),
    Demand("alternatives", "the alternatives", "must", "AIC C26; EN 16853", (PLAN,)),
    Demand("risks", "the risks", "must", "AIC C26; EN 16853", (PLAN,)),
    Demand("planned_steps", "the course of the work, step by step", "must", "AIC C26", (PLAN,)),
    Demand(
        "authorisation",
        "the authorisation: by whom, when, of which version of the plan",
        "must",
        "Spectrum; AIC C26; EN 16853",
        (PLAN, *_WORK),
    ),
    Demand("begun", "the day it was begun", "must", "AIC C27; Spectrum", _WORK),
    Demand("step_date", "the date of each step", "must", "AIC C27; ECCO 10", _WORK),
    Demand(
        "step_people", "the names of those who did each step", "must", "AIC C27; ECCO 10", _WORK
    ),
    Demand("technique", "the technique of each step", "must", "AIC C27", _WORK),
    Demand("material_added", "the material added", "must", "AIC C27", _WORK, True),
    Demand(
        "concentration",
        "the composition and concentration of what was added",
        "must",
        "AIC C27; AIC GfP 27",
        _WORK,
        True,
    ),
    Demand(
        "carrier", "the solvent or carrier of what was added", "must", "AIC GfP 27", _WORK, True
    ),
    Demand("place", "where the material was added", "must", "AIC C27; AIC GfP 27", _WORK, True),
    Demand("material_removed", "the material removed", "must", "AIC C27", _WORK, True),
    Demand("kept_where", "where what was removed is kept", "must", "AIC C27; ECCO", _WORK, True),
    Demand("deviation", "why it was not done as planned", "must", "AIC C27", _WORK, True),
    Demand("ended", "the day it was ended", "must", "AIC C27; Spectrum", (CLOSED,)),
    Demand(
        "result",
        "the result: changes to the object, what was learnt, the state after",
        "must",
        "AIC C27; AIC GfP 27",
        (CLOSED,),
    ),
    Demand("report", "the report", "must", "AIC C27; ECCO 10", (CLOSED,)),
    Demand("recommendations", "recommendations", "should", "AIC GfP 27; Spectrum", (CLOSED,)),
    Demand("next_check", "the date of the next check", "should", "Spectrum", (CLOSED,)),
)
"""The fields asked for, in the order in which a record tells them."""

PHOTOGRAPHS = (
    Demand("before", "before treatment", "must", "AIC C27", _EVERY),
    Demand("hidden", "of whatever becomes hidden, before it is", "must", "AIC C27", _WORK),
    Demand(
        "samples",
        "of each sampling site",
        "should",
        "common practice",
        (EXAMINATION, *_WORK),
        True,
    ),
    Demand("after", "after treatment", "must", "AIC C27", (CLOSED,)),
)
"""The photographs asked for; a photograph of a sampling site only where samples were taken."""
