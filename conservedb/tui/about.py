"""What a form is about, and the kinds of record that can be made. Plain data, nothing heavy."""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass, replace

_TEXTS = ("database", "kind", "number", "record")
_LISTS = ("places", "components", "layers")


@dataclass(frozen=True, slots=True)
class About:
    """What a form is about; as text it is the key of the drafts of that form.

    Attributes:
        database: the file.
        kind: name of a `Kind`, or of a file of records.
        number: of the object; "" for what all objects share.
        record: key of the record that is amended; "" for a new one.
        places, components, layers: marks and refs that the new record is about.
        given: further fields that are filled in, as pairs of name and value.
    """

    database: str
    kind: str
    number: str = ""
    record: str = ""
    places: tuple[str, ...] = ()
    components: tuple[str, ...] = ()
    layers: tuple[str, ...] = ()
    given: tuple[tuple[str, str], ...] = ()

    @property
    def key(self) -> str:
        """The key of its drafts."""
        return json.dumps(asdict(self))

    def new(self, kind: str, **given: str) -> About:
        """About another new record at the same places."""
        return replace(self, kind=kind, record="", given=tuple(given.items()))


def about_of(key: str) -> About | None:
    """What a draft is about; None where the key is of no such form."""
    try:
        read = json.loads(key)
        places, components, layers = (tuple(read[name]) for name in _LISTS)
        given = tuple((str(name), str(value)) for name, value in read["given"])
        database, kind, number, record = (str(read[name]) for name in _TEXTS)
    except (ValueError, KeyError, TypeError):
        return None
    return About(database, kind, number, record, places, components, layers, given)


@dataclass(frozen=True, slots=True)
class Kind:
    """Something that can be recorded.

    Attributes:
        name: tells it from the others.
        letter: its key in the menu; "" where it is not listed there.
        label: what the menu calls it.
        subject: the file of records it goes to.
        title: the first line of its form.
        follows: the kind whose form opens after it is saved, again and again until Esc.
    """

    name: str
    letter: str
    label: str
    subject: str
    title: str
    follows: str = ""


KINDS = (
    Kind("step", "s", "step at the bench", "interventions", "Record a step"),
    Kind("removal", "r", "removal of a layer", "removals", "Record a removal"),
    Kind("spot test", "t", "spot test on a layer", "spot_tests", "Record a spot test"),
    Kind("sighting", "v", "layer looked for", "sightings", "Record that a layer was looked for"),
    Kind(
        "observation",
        "o",
        "observation",
        "observations",
        "Record an observation",
        follows="observation",
    ),
    Kind("reading", "m", "reading (measured)", "readings", "Record a reading"),
    Kind("sample", "p", "sample", "samples", "Record a sample"),
    Kind(
        "examination",
        "e",
        "examination",
        "interventions",
        "Record an examination",
        follows="observation",
    ),
    Kind("joint event", "j", "joint moving, open", "joint_events", "Record what a joint did"),
    Kind("warning", "w", "warning, check due", "warnings", "Record a warning"),
    Kind("treatment", "c", "treatment (case)", "treatments", "Open a treatment"),
    Kind("closing", "z", "close a treatment", "treatments", "Close a treatment"),
    Kind("plan", "l", "plan", "plans", "Record a plan", follows="planned step"),
    Kind(
        "planned step",
        "n",
        "step of a plan",
        "planned_steps",
        "Record a step of a plan",
        follows="planned step",
    ),
    Kind("authorisation", "a", "authorisation", "authorisations", "Record an authorisation"),
    Kind("whereabouts", "h", "whereabouts", "whereabouts", "Record where it is kept"),
    Kind("component", "d", "part", "components", "Add a part"),
    Kind("place", "g", "location", "places", "Add a location"),
    Kind("batch", "b", "batch made up", "batches", "Record a batch made up"),
    Kind("material", "i", "material", "materials", "Add a material"),
    Kind("person", "u", "person", "people", "Add a person"),
    Kind("source", "q", "paper or picture", "sources", "Add a paper or picture"),
    Kind("term", "x", "word of a list", "terms", "Add a word of a list"),
    Kind("object", "", "object", "objects", "Add an object"),
)
"""What can be recorded from the object screen, in the order of its menu; the object itself."""
MENDING = (
    Kind("split", "S", "split this part", "components", "A part broke into fragments"),
    Kind("retire", "R", "retire this part", "components", "A part was taken out for good"),
    Kind(
        "replace", "N", "a new part for this one", "components", "A new part in place of this one"
    ),
    Kind("reidentify", "M", "layer: another material", "layers", "A layer is another material"),
    Kind("merge people", "U", "two people are one", "people", "Two people that are one"),
    Kind(
        "merge materials", "I", "two materials are one", "materials", "Two materials that are one"
    ),
)
"""What can be mended from there: records that stand wrongly, or no longer stand."""
BY_KIND = {one.name: one for one in (*KINDS, *MENDING)}
MENDS = frozenset(one.name for one in MENDING)
OVER_MANY = ("step", "removal", "examination", "planned step")
"""Kinds recorded over all that is ticked; the others are about what is under the cursor."""
