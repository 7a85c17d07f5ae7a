"""What questions answer with: plain values that the command line and the screens both print.

Words are those of the records; days are day numbers of `conservedb.dates`. Text typed by
people is kept verbatim in every field and must be displayed as data, never as markup.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from conservedb.questions.basics import AsOf, NoSuch, Person, Retired, Rival, Source, When

__all__ = [
    "AsOf",
    "ComponentRow",
    "Deed",
    "FieldChange",
    "Fixing",
    "Held",
    "HistoryAnswer",
    "HistoryRow",
    "Hit",
    "JointCondition",
    "Layer",
    "NoSuch",
    "ObjectAnswer",
    "Person",
    "PlaceAnswer",
    "PlaceRow",
    "Residue",
    "Retired",
    "Reworded",
    "Rival",
    "Seen",
    "Side",
    "Source",
    "StartAnswer",
    "State",
    "Warning_",
    "When",
]


@dataclass(frozen=True, slots=True)
class Side:
    """One side of a joint, or the bearer of a surface, body or cavity (side "")."""

    side: str
    component: str
    name: str
    material: str
    kind: str = ""


@dataclass(frozen=True, slots=True)
class Deed:
    """A dated act and its hands: how a layer came, or how (part of) it went.

    `extent`, `side` and `cause` are set for removals only; `intervention` is "" where the
    layer came or ended without one.
    """

    date: When
    intervention: str = ""
    kind: str = ""
    technique: str = ""
    people: tuple[Person, ...] = ()
    extent: str = ""
    side: str = ""
    cause: str = ""
    source: Source | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class Seen:
    """A sighting: somebody looked on that day."""

    date: When
    result: str
    side: str
    people: tuple[Person, ...]
    source: Source | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class State:
    """State at the close of a day: one of the four words or "uncertain", and what is possible."""

    state: str
    possible: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Held:
    """States over a span of days."""

    throughout: tuple[str, ...]
    at_some_time: tuple[str, ...]
    possibly: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class FieldChange:
    """A field before and after, "" where it was blank."""

    name: str
    before: str
    after: str


@dataclass(frozen=True, slots=True)
class Reworded:
    """An amendment: the day (UTC), by whom, why, and what read otherwise before.

    `of` names the record that was amended where it is not the one that an entry is about.
    """

    when: str
    who: str
    reason: str
    fields: tuple[FieldChange, ...]
    of: str = ""


@dataclass(frozen=True, slots=True)
class Layer:
    """One layer at a place, as it is known for the asked day or span (its last day)."""

    ref: str
    stack: int | None
    side: str
    zone: str
    role: str
    material: str | None
    material_name: str
    material_words: str
    material_class: str
    origin: str
    coverage: str
    concentration: str
    carrier: str
    dry: str
    identified: str
    significance: str
    significance_by: str
    note: str
    state: str
    possible: tuple[str, ...]
    by_side: dict[str, State]
    held: Held | None
    qualified: str
    remains: str
    candidates: tuple[str, ...]
    last_seen: Seen | None
    sightings: tuple[Seen, ...]
    laid: Deed
    removed: tuple[Deed, ...]
    sources: tuple[Source, ...]
    rivals: tuple[Rival, ...]
    settle: str
    came: tuple[int, int] = (0, 0)
    amended: tuple[Reworded, ...] = ()


@dataclass(frozen=True, slots=True)
class JointCondition:
    """Closed, moving, opened, failed, "uncertain" or "not recorded", with what is possible."""

    state: str
    possible: tuple[str, ...]
    qualified: str
    since: When | None
    source: Source | None
    note: str


@dataclass(frozen=True, slots=True)
class Fixing:
    """A pin, cramp, dowel or rod that crosses the joint."""

    component: str
    name: str
    kind: str
    material: str
    made: When
    lost: When
    known_from: str
    state: str
    possible: tuple[str, ...]
    source: Source | None
    joints: tuple[str, ...]
    note: str
    retired: Retired | None = None


@dataclass(frozen=True, slots=True)
class Warning_:
    """A hazard of the object or a limit on handling it."""

    ref: str
    component: str
    place: str
    kind: str
    text: str
    since: When
    until: When
    source: Source | None


@dataclass(frozen=True, slots=True)
class Residue:
    """An agent used at a place that is not shown to have been cleared."""

    ref: str
    material: str | None
    material_name: str
    concentration: str
    form: str
    cleared: str
    intervention: str
    date: When
    source: Source | None
    note: str


@dataclass(frozen=True, slots=True)
class PlaceAnswer:
    """What lies at a place: sides, condition of the joint, fixings, layers in build-up order."""

    object: str
    title: str
    place: str
    kind: str
    name: str
    geometry: str
    arose: str
    arose_date: When
    fit: str
    load_kg: float | None
    load_source: Source | None
    access: str
    note: str
    on: AsOf
    sides: tuple[Side, ...]
    condition: JointCondition | None
    fixings: tuple[Fixing, ...]
    layers: tuple[Layer, ...]
    warnings: tuple[Warning_, ...]
    rivals: tuple[Rival, ...]
    last_seen: Seen | None
    summary: str
    residues: tuple[Residue, ...] = ()
    amended: tuple[Reworded, ...] = ()


@dataclass(frozen=True, slots=True)
class ComponentRow:
    """A component in the tree of an object.

    `state` as for layers, from its making and loss; "retired" where it was taken out for good.
    """

    mark: str
    parent: str
    name: str
    kind: str
    origin: str
    material: str
    state: str
    possible: tuple[str, ...]
    kept_at: str
    mass_kg: float | None
    mass_basis: str
    size_mm: tuple[float | None, float | None, float | None]
    known_from: str
    bridges: tuple[str, ...]
    note: str
    made: When | None = None
    lost: When | None = None
    qualified: str = ""
    retired: Retired | None = None


@dataclass(frozen=True, slots=True)
class PlaceRow:
    """A place in the tree: how many layers are certainly and possibly there on the day."""

    mark: str
    kind: str
    component: str
    other_component: str
    name: str
    certain: int
    uncertain: int
    condition: str
    load_kg: float | None


@dataclass(frozen=True, slots=True)
class ObjectAnswer:
    """An object with its parts and places on a day, in natural order of their marks.

    `rivals` are about the object, its parts and its treatments; `unplaced` are layers of which
    nobody wrote down where they lie (`mark` is their ref).
    """

    number: str
    title: str
    kind: str
    maker: str
    made: When
    whereabouts: str
    note: str
    on: AsOf
    warnings: tuple[Warning_, ...]
    last_examined: Deed | None
    components: tuple[ComponentRow, ...]
    places: tuple[PlaceRow, ...]
    rivals: tuple[Rival, ...]
    unplaced: tuple[Hit, ...] = ()


@dataclass(frozen=True, slots=True)
class HistoryRow:
    """One entry of a history, in order of time.

    `kind` is "made", "lost", "retired", "intervention", "joint", "ended" (a layer that went
    without an intervention), "sighting", "layer" (one that came without one), "observation",
    "reading", "sample", "spot test", "plan" or "authorisation". `sentence`
    is the entry in words, without date, hands and source, which have fields of their own.
    """

    kind: str
    ref: str
    date: When
    sentence: str
    detail: tuple[str, ...]
    people: tuple[Person, ...]
    treatment: str
    components: tuple[str, ...]
    places: tuple[str, ...]
    source: Source | None
    rivals: tuple[Rival, ...]
    note: str
    amended: tuple[Reworded, ...] = ()


@dataclass(frozen=True, slots=True)
class HistoryAnswer:
    """The history of an object, or of one part or place of it (`mark`)."""

    object: str
    title: str
    mark: str
    name: str
    rows: tuple[HistoryRow, ...]


@dataclass(frozen=True, slots=True)
class Hit:
    """Something found: `kind` is one of `find_answers.KIND_WORDS`.

    On the start screen also treatment, layer or warning, each with its object and mark (of a
    treatment its ref). `sentence` is where the words looked for stand, "" where it is the label;
    `spans` are the places of these words in it, or in the label: first and after the last letter.
    `used` says of a material how much there is of it, "" of anything else.
    """

    kind: str
    object: str
    mark: str
    label: str
    detail: str
    sentence: str = ""
    spans: tuple[tuple[int, int], ...] = ()
    used: str = ""


@dataclass(frozen=True, slots=True)
class StartAnswer:
    """What the start screen shows before anything is typed."""

    open_treatments: tuple[Hit, ...] = ()
    temporary_layers: tuple[Hit, ...] = ()
    restless_joints: tuple[Hit, ...] = ()
    checks_due: tuple[Hit, ...] = ()
    recent_objects: tuple[Hit, ...] = ()
    counts: dict[str, int] = field(default_factory=dict)
