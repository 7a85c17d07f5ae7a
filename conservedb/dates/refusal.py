"""Why a date cannot be taken, in one sentence, and what to write instead."""

import re

LONGEST = 200  # characters in one date

# Control characters and halves of surrogate pairs cannot be stored and shown faithfully.
_UNREADABLE = re.compile(r"[\x00-\x1f\x7f-\x9f\ud800-\udfff]")


class DateError(ValueError):
    """A date that cannot be taken: ``value`` as given, the ``reason``, and a ``remedy``."""

    def __init__(self, value: str, reason: str, remedy: str) -> None:
        super().__init__(value, reason, remedy)
        self.value = value
        self.reason = reason
        self.remedy = remedy

    def __str__(self) -> str:
        shown = self.value if len(self.value) <= 60 else self.value[:57] + "..."
        return f"the date {shown!r} cannot be read: {self.reason}; {self.remedy}"


def refuse_unreadable(text: str) -> None:
    """DateError when the text holds a control character or a broken one."""
    found = _UNREADABLE.search(text)
    if found is not None:
        raise DateError(
            text,
            f"character {found.start() + 1} is not a printable one ({found[0]!a})",
            "remove it, or type the date again",
        )


def refuse_long(text: str, longest: int = LONGEST) -> None:
    """DateError when the text has more characters than a date can have."""
    if len(text) > longest:
        raise DateError(
            text,
            f"it has {len(text)} characters, and a date has at most {longest}",
            "shorten it, and put remarks in the notes",
        )


# What people write that is not EDTF as accepted here: pattern, reason, remedy. First match counts.
_NAMED: tuple[tuple[str, str, str], ...] = (
    (
        r"^[/.]*$",
        "it holds no date",
        "give at least one end, or leave the date blank",
    ),
    (
        r"[^\x00-\x7f]",
        "it holds characters other than plain digits and signs",
        "type it with the digits 0 to 9 and the plain hyphen",
    ),
    (
        r"[0-9][Ss][0-9]",
        "significant digits (S) are not accepted",
        "write the years it stands for, such as 1900/1999",
    ),
    (
        r"[Yy]-?[0-9]+[Ee]",
        "years with an exponent (E) are not accepted",
        "write a year of four digits, from -9999 to 9999",
    ),
    (
        r"[Yy]",
        "years of more than four digits (Y) are not accepted",
        "write a year of four digits, from -9999 to 9999",
    ),
    (
        r"(?i)unknown",
        "'unknown' comes from the draft of 2012",
        "leave that end empty, such as 1985/",
    ),
    (
        r"(?i)open",
        "'open' comes from the draft of 2012",
        "write .. for an open end, such as 1985/..",
    ),
    (
        r"[0-9Xx-][uU]|[uU][0-9uU-]",
        "'u' for a digit not known comes from the draft of 2012",
        "write X for each digit not known, such as 199X",
    ),
    (
        r"[0-9X]x|x[0-9x-]",
        "a small x does not stand for a digit",
        "write a capital X for each digit not known, such as 199X",
    ),
    (
        r"\?~|~\?",
        "two qualifiers together come from the draft of 2012",
        "write % for uncertain and approximate",
    ),
    (
        r"[()]",
        "brackets around part of a date come from the draft of 2012",
        "put ?, ~ or % beside the part it belongs to, such as 2004-%06",
    ),
    (
        r"^-?[0-9X]{4}-[0-9X]{2}-[0-9X]{2} +[0-9]",
        "date and time of day stand apart",
        "join them with T, such as 1985-04-12T23:20:30, or leave the time out",
    ),
    (
        r"T.*[/\],}]|/.*T",
        "a span or a set holds dates without a time of day",
        "leave the time of day out",
    ),
    (
        r"T",
        "the time of day is not complete or not possible",
        "write a full date and time such as 1985-04-12T23:20:30, or leave the time out",
    ),
    (
        r"\s",
        "there is a space in it",
        "write it without spaces, such as 1985-04 or [1667,1668]",
    ),
    (
        r"^[0-9]{8}$",
        "the hyphens are missing",
        "write year, month and day with hyphens, such as 1985-04-12",
    ),
    (
        r"(?<![0-9X])-?[0-9]{4}-[0-9](?![0-9X])|-[0-9]{2}-[0-9](?![0-9X])",
        "month and day need two digits",
        "write a zero before a single digit, such as 1985-04-02",
    ),
    (
        r"^[^/\[{]*,",
        "several dates stand side by side",
        "write [1868,1871] for one of them, {1868,1871} for all of them",
    ),
    (
        r"^[-?~%]*[0-9X]{1,3}(?![0-9X])|^[-?~%]*[0-9X]{5,}",
        "a year has four digits",
        "write the year in full with four digits, such as 1956 or 0850",
    ),
)


def refusal(text: str) -> DateError:
    """The error for a text that is not EDTF as accepted here, naming the form when it is known."""
    if not text:
        return DateError(text, "it is blank", "write a date such as 1950 or 1950-06-14")
    for pattern, reason, remedy in _NAMED:
        if re.search(pattern, text):
            return DateError(text, reason, remedy)
    return DateError(
        text, "it is not written as EDTF", "write a date such as 1950, 1950-06-14 or 1920/1925"
    )
