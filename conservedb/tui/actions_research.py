"""The actions of research: to the screen, on the question, and on its answer."""

from __future__ import annotations

from conservedb.tui.action import Action, Motion

_HERE = ("research",)

RESEARCH = (
    Action(
        "research",
        ("f4",),
        "F4",
        "research",
        "Research in all objects",
        "Ask for layers, places, interventions or objects by conditions. From a material, it is"
        " asked where else that is; from the start, the question that was left last is there again"
        " (Del on its first line takes all away).",
        ("start", "object", "material"),
        9,
    ),
    Action(
        "add_condition",
        ("a",),
        "a",
        "add",
        "Add a condition",
        "Choose what it is about by its letter, then say what. It comes below the condition under"
        " the cursor, or at the end of a group. Enter changes the condition under the cursor.",
        _HERE,
        3,
    ),
    Action(
        "take_away",
        ("delete", "x"),
        "Del",
        "take away",
        "Take a condition away",
        "The condition under the cursor no longer counts, nor does all that belongs to a group. On"
        " the first line it takes all away, to begin anew; Esc leaves the question for next time.",
        _HERE,
    ),
    Action(
        "negate",
        ("n",),
        "n",
        "not",
        "Negate, or no longer",
        "What is under the cursor must not hold; once more, it must.",
        _HERE,
        7,
    ),
    Action(
        "switch",
        ("o",),
        "o",
        "and, or",
        "All of them, or at least one",
        "The conditions of the group under the cursor are joined by or in place of and, or by and"
        " in place of or.",
        _HERE,
    ),
    Action(
        "bracket",
        ("b",),
        "b",
        "bracket",
        "Make a group, or dissolve it",
        "The condition under the cursor becomes a group, to which others can be added; a group"
        " goes up into the one above.",
        _HERE,
    ),
    Action(
        "has",
        ("h",),
        "h",
        "has",
        "Ask for what it has, or no longer",
        "Of places, interventions and objects: the condition or group under the cursor is asked of"
        " a layer or use by itself, and a adds others beside it; n on its line asks that there is"
        " none.",
        _HERE,
        7,
    ),
    Action(
        "surely",
        ("c",),
        "c",
        "certainly",
        "Only what is certain, or the possible too",
        "Whether what holds only possibly counts for the condition under the cursor.",
        _HERE,
    ),
    Action(
        "write_question",
        ("e",),
        "e",
        "as text",
        "Write the question as text",
        "The whole question in one line, as the command conservedb ask takes it.",
        _HERE,
        6,
    ),
    Action(
        "rows",
        ("w",),
        "w",
        "rows",
        "Ask for other rows",
        "Layers and uses of agents, places, interventions, objects: the next of these. What a row"
        " has is not asked of layers.",
        _HERE,
        4,
    ),
    Action(
        "sort",
        ("s",),
        "s",
        "sort",
        "Sort by a column",
        "Choose a column by its letter; the same column again turns the order round.",
        _HERE,
        5,
    ),
    Action(
        "keep_question",
        ("ctrl+s",),
        "Ctrl+S",
        "keep",
        "Keep the question under a name",
        "So that it can be asked again, here and with conservedb ask.",
        _HERE,
    ),
    Action(
        "kept_questions",
        ("l",),
        "l",
        "kept",
        "Questions that are kept",
        "All that are kept, each told in words: Enter asks one again, Del withdraws it.",
        _HERE,
        7,
    ),
    Action(
        "compare",
        ("v",),
        "v",
        "compare",
        "Compare two days",
        "Type two days: what answers on the one and not on the other, or less surely.",
        _HERE,
        7,
    ),
    Action(
        "bars",
        ("g",),
        "g",
        "bars",
        "Count the answer as bars",
        "By decade or kind of object, layers by class of material too, layers and interventions by"
        " person; certain and possible apart.",
        _HERE,
        7,
    ),
    Action(
        "survival",
        ("y",),
        "y",
        "lasting",
        "How long the layers last",
        "How many of the layers asked for are still there after so many years, as far as known.",
        _HERE,
        7,
    ),
    Action(
        "write_answer",
        ("p",),
        "p",
        "to a file",
        "Write the answer to a file",
        "Every row of it into a new file: CSV, JSON lines or a workbook.",
        _HERE,
        7,
    ),
    Action(
        "in_full",
        ("f",),
        "f",
        "full text",
        "The question or row in full",
        "In the question, the whole of it as a sentence, of which the title has room for one line,"
        " and as text; in the answer, all of the row under the cursor.",
        _HERE,
        8,
    ),
)

RESEARCH_MOTIONS = (
    Motion("Tab, Shift+Tab", "go from the question to the answer, and back"),
    Motion("Up, Down", "move in a list; PgUp, PgDn, Home and End move further"),
    Motion("Enter", "change the condition under the cursor; open a row at its place"),
    Motion("Mouse", "click a heading to sort by it; a line to select it, and again to open it"),
)
