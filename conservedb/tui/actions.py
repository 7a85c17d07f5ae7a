"""Every action of the interface, once: bindings, key line, help and palette are made from this.

`where` says on which screens an action works. The action itself is a method `action_<name>` of
these screens, or of the app where it works on every screen.
"""

from __future__ import annotations

from itertools import accumulate

from textual.binding import Binding, BindingType

from conservedb.tui.action import FORM, Action, Motion
from conservedb.tui.actions_recording import RECORDING
from conservedb.tui.actions_research import RESEARCH, RESEARCH_MOTIONS

NARROW = 80  # cells of the narrowest terminal
GAP = 3  # cells between two keys
SCREENS = ("start", "object", "material", "removal", "treatment", "research")


_READING = (
    Action(
        "help",
        ("f1", "question_mark"),
        "F1",
        "help",
        "Help",
        "Every key of this screen. The question mark does the same outside a line of text.",
        rank=1,
    ),
    Action(
        "find",
        ("slash",),
        "/",
        "find",
        "Find anything",
        "Find an object, part, location, material, person or paper by the start of a word.",
        SCREENS,
        2,
    ),
    Action(
        "earlier",
        ("left_square_bracket",),
        "[",
        "earlier",
        "Step to the event before",
        "Go back to the day of the event before, in the history of what is selected.",
        ("object",),
    ),
    Action(
        "later",
        ("right_square_bracket",),
        "]",
        "later",
        "Step to the next event",
        "Go on to the day of the next event in the history of what is selected.",
        ("object",),
    ),
    Action(
        "day",
        ("d",),
        "d",
        "day",
        "Go to a day",
        "Type any date, in words or EDTF: 14 June 1950, May 1934, 193X. All panels show that day.",
        ("object", "research"),
        9,
    ),
    Action(
        "today",
        ("t",),
        "t",
        "today",
        "Return to today",
        "Show everything as it is today.",
        ("object", "research"),
    ),
    Action(
        "gone",
        ("g",),
        "g",
        "gone",
        "Show or hide what is gone",
        "Layers removed, lost or not yet applied on this day are listed too, quietly, or left out.",
        ("object",),
    ),
    Action(
        "legend",
        ("l",),
        "l",
        "legend",
        "Legend of the hatching",
        "What each hatch and sign of a drawing stands for.",
        ("object", "removal"),
    ),
    Action(
        "warnings",
        ("w",),
        "w",
        "warnings",
        "Warnings on this object",
        "Read every hazard and limit on handling in full.",
        ("object",),
    ),
    Action(
        "full",
        ("f",),
        "f",
        "full text",
        "Full text of what is selected",
        "Everything on record about the line under the cursor, nothing shortened.",
        ("object", "material", "removal", "treatment"),
        8,
    ),
    Action(
        "treatments",
        ("a",),
        "a",
        "treatments",
        "Treatments of this object",
        "Plan, authorisation, steps and next check of a treatment; of several, choose one.",
        ("object", "treatment"),
        8,
    ),
    Action(
        "whole",
        ("p",),
        "p",
        "object",
        "Open the object",
        "The parts and locations of the object that is treated, as they are today.",
        ("treatment",),
        6,
    ),
    Action(
        "fold",
        ("e",),
        "e",
        "fold",
        "Unfold or fold the tree",
        "Show all parts and locations in the tree, or only the top ones.",
        ("object",),
    ),
    Action(
        "removal",
        ("o",),
        "o",
        "removal",
        "Options for removal",
        "How the layer under the cursor may come off, and what that would do to its neighbours.",
        ("object", "material"),
        6,
    ),
    Action(
        "material",
        ("m",),
        "m",
        "material",
        "About the material",
        "How the material of the line under the cursor behaves, who says so, and where it lies.",
        ("object", "removal", "research"),
    ),
    Action(
        "layer",
        ("c",),
        "c",
        "layer",
        "Choose another layer",
        "Ask the same about another layer of this location.",
        ("removal",),
        3,
    ),
    Action(
        "wider",
        ("plus",),
        "+",
        "band",
        "Show a worse hazard band",
        "List agents of the next worse hazard band too; D is the worst. A is the mildest.",
        ("removal",),
        4,
    ),
    Action(
        "narrower",
        ("minus",),
        "-",
        "band",
        "Hide the worst hazard band",
        "Leave out agents of the worst hazard band that is listed.",
        ("removal",),
        5,
    ),
    Action(
        "limits",
        ("i",),
        "i",
        "limits",
        "Limits of the method",
        "What this kind of plan cannot know.",
        ("removal",),
        6,
    ),
    Action(
        "back",
        ("escape",),
        "Esc",
        "back",
        "Back",
        "Close what is open in front, or return to the start. A form keeps a draft of what was"
        " typed; research first stops what is being asked.",
        (*SCREENS, FORM),
        7,
    ),
    Action(
        "refresh",
        ("r",),
        "r",
        "read again",
        "Read again from the database",
        "Ask the database again, in case somebody else has written to it.",
        SCREENS,
    ),
    Action(
        "command_palette",
        ("ctrl+p",),
        "Ctrl+P",
        "actions",
        "All actions",
        "A list of all actions, to be chosen by name.",
        rank=10,
    ),
    Action(
        "quit",
        ("ctrl+q", "q"),
        "Ctrl+Q",
        "quit",
        "Quit",
        "Leave the program. A form that is not saved is kept as a draft. A plain q does the same"
        " outside a line of text.",
        rank=9,
    ),
)

ACTIONS = (*_READING, *RECORDING, *RESEARCH)

MOTIONS = (
    Motion("Tab, Shift+Tab", "go to the next panel, or the one before"),
    Motion("Up, Down", "move in a list; PgUp, PgDn, Home and End move further"),
    Motion("Right, Left", "unfold or fold a part of the tree; on the time rule, step in time"),
    Motion(
        "Enter",
        "open what is found, a value, an option or a location; go from the tree into the section;"
        " go to a day of the history",
    ),
    Motion(
        "Mouse",
        "click a line to select it, and again to open it; click the time rule, or a key below",
    ),
)

FORM_MOTIONS = (
    Motion("Tab, Enter, Down", "go to the next field; in a field of several lines, Tab does"),
    Motion("Shift+Tab, Up", "go to the field before"),
    Motion("Left, Right, Space", "in a field of words to choose from, choose; or type its letters"),
    Motion(
        "Down, Up",
        "in the list under a field, mark what is meant; Enter or Tab takes it, a semicolon takes it"
        " and begins the next one; in a field just typed in, Down opens the list",
    ),
    Motion("Ctrl+U, Ctrl+K", "in a field of text, empty the line before or behind the cursor"),
    Motion("Ctrl+Z, Ctrl+Y", "in a field of text, take back, and do again"),
    Motion("Mouse", "click a field to go there, or a key below"),
)


def motions_of(where: str) -> tuple[Motion, ...]:
    """How one moves on a screen."""
    return {FORM: FORM_MOTIONS, "research": RESEARCH_MOTIONS}.get(where, MOTIONS)


def actions_of(where: str) -> tuple[Action, ...]:
    """What can be done on a screen."""
    return tuple(one for one in ACTIONS if not one.where or where in one.where)


def bindings(where: str = "") -> list[BindingType]:
    """Bindings of the actions of a screen, or of those of the app where none is named.

    Those of screens come before anything else, so that a key takes effect before the next one
    is looked at, however fast they come. Letters typed into a line stay letters all the same.
    Escape first belongs to whatever is open.
    """
    return [
        Binding(
            ",".join(action.keys),
            action.name,
            action.label,
            show=False,
            priority=bool(where) and "escape" not in action.keys,
        )
        for action in ACTIONS
        if (where in action.where if where else not action.where)
    ]


def key_line(where: str, width: int = NARROW) -> tuple[Action, ...]:
    """The actions worth a place in a key line of so many cells, as many as have room."""
    ranked = sorted((one for one in actions_of(where) if one.rank), key=lambda one: one.rank)
    ends = accumulate(len(one.shown) + 1 + len(one.label) + GAP for one in ranked)
    return tuple(one for one, end in zip(ranked, ends, strict=True) if 1 + end - GAP < width)
