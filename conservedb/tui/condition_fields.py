"""How a condition is asked for: the menu of fields, and what is typed for each."""

from __future__ import annotations

from conservedb.knowledge.research import And, Condition, Research
from conservedb.knowledge.research_words import read, say
from conservedb.tui.about import Kind
from conservedb.tui.recording import Field

_MENU = (
    ("material", "m", "material or class"),
    ("as", "a", "laid, or only used"),
    ("role", "r", "role of the layer"),
    ("identified", "f", "how it was identified"),
    ("reversibility", "y", "what is known of removal"),
    ("state", "s", "how it stands on a day"),
    ("date", "d", "when it was done"),
    ("kind", "k", "kind of intervention"),
    ("aim", "i", "aim of it"),
    ("technique", "t", "technique"),
    ("person", "p", "who took part"),
)
_MENU_OF_OBJECT = (
    ("object", "o", "number or title"),
    ("object kind", "j", "kind of object"),
    ("part material", "b", "material of the part"),
    ("environment", "e", "where it was kept"),
    ("observed", "v", "condition seen later"),
    ("source", "u", "kind of paper"),
    ("rule", "l", "rule that is broken"),
)
HEADING = "The object, and how it is known"
TODAY = "blank is today"
LISTED = "Down or F2 lists what is on record"
POSSIBLY, CERTAINLY = "certainly or possibly", "certainly"


def fields() -> tuple[Kind, ...]:
    """The fields on what was laid or used, for a menu."""
    return tuple(_kind(*one) for one in _MENU)


def fields_of_object() -> tuple[Kind, ...]:
    """The fields on objects and papers, for a menu."""
    return tuple(_kind(*one) for one in _MENU_OF_OBJECT)


def _kind(name: str, letter: str, label: str) -> Kind:
    return Kind(name, letter, label, "", "")


def asked_for(condition: Condition, closed: tuple[str, ...]) -> tuple[Field, ...]:
    """What is typed or chosen for a condition, filled in with what it asks.

    Args:
        closed: the words of which its value is one, if it is.
    """
    name = condition.field
    lookup = "" if closed or name == "date" else name
    kind = "choice" if closed else "date" if name == "date" else "text"
    value = Field(
        "value",
        name,
        kind,
        condition.value,
        closed,
        hint=LISTED if lookup else f"one of {', '.join(closed)}" if closed else "",
        required=True,
        lookup=lookup,
    )
    day = Field("on", "on", "date", condition.on, hint=f"a day or a span; {TODAY}; or ever")
    sure = Field(
        "sure",
        "holds",
        "choice",
        CERTAINLY if condition.certainly else POSSIBLY,
        (POSSIBLY, CERTAINLY),
        required=True,
    )
    return (value, day, sure) if name == "state" else (value, sure)


def condition_from(field: str, values: dict[str, str]) -> Condition:
    """The condition that was typed, read as in the text of a question.

    Raises:
        AskError: it cannot be asked.
    """
    on = " ".join(values.get("on", "").split())
    on = on.lower() if on.lower() == "ever" else on
    typed = Condition(field, values["value"].strip(), on, values["sure"] == CERTAINLY)
    found = read(say(Research("layers", And((typed,))))).where
    assert isinstance(found, Condition)
    return found
