"""The colours of the interface: one theme of its own, and what stands in for it elsewhere.

Colour never carries meaning alone: states are words, roles are hatches. Hues come from the
palette of Okabe and Ito (Color Universal Design, 2002), lightened to keep a contrast of 4.5 or
more on every ground used here; a test checks that, and that they stay apart for people who do
not tell red from green.
"""

from __future__ import annotations

from textual.theme import Theme

NAME = "conservedb"

GROUNDS = {
    "background": "#15181b",
    "surface": "#1c2024",
    "resting": "#22272c",
    "cursor": "#2c3a46",
}
INKS = {
    "foreground": "#e6e2d8",
    "quiet": "#9ba3a8",
    "hazard": "#ff8552",
    "unsure": "#f0c930",
    "marked": "#62b8f0",
}
"""What words are written in: text, less important text, danger, doubt, and the asked day."""

HATCHES = {
    "substrate": "#a8a294",
    "mortar": "#d8bf93",
    "resin": "#e69f00",
    "barrier": "#62b8f0",
    "soaked": "#38bd94",
    "film": "#d896ba",
    "arisen": "#f0e442",
    "metal": "#c3ccd4",
}
"""A tint for each family of hatches: a help to those who see it, and nothing more."""

LINE = "#3a4249"

OWN = {**GROUNDS, **INKS, **HATCHES, "line": LINE}

IN_ANSI = {
    **dict.fromkeys(("resting", "cursor"), "ansi_default"),
    "quiet": "ansi_default",
    "hazard": "ansi_red",
    "unsure": "ansi_yellow",
    "marked": "ansi_cyan",
    **dict.fromkeys(HATCHES, "ansi_default"),
    "line": "ansi_default",
}
"""Under a theme that follows the terminal's own palette, the sixteen colours stand in."""

THEME = Theme(
    name=NAME,
    primary=INKS["marked"],
    secondary=INKS["quiet"],
    accent=INKS["marked"],
    warning=INKS["unsure"],
    error=INKS["hazard"],
    success=INKS["marked"],
    foreground=INKS["foreground"],
    background=GROUNDS["background"],
    surface=GROUNDS["surface"],
    panel=GROUNDS["resting"],
    dark=True,
    variables={
        **{name: OWN[name] for name in OWN if name not in ("foreground", "background", "surface")},
        "block-cursor-background": GROUNDS["cursor"],
        "block-cursor-foreground": INKS["foreground"],
        "input-selection-background": GROUNDS["cursor"],
        "scrollbar": LINE,
        "scrollbar-hover": INKS["quiet"],
        "scrollbar-active": INKS["marked"],
        "scrollbar-background": GROUNDS["background"],
        "scrollbar-corner-color": GROUNDS["background"],
    },
)
