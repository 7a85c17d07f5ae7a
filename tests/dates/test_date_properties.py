import random

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from conservedb import dates
from conservedb.dates import DateError, parse_edtf, read

MONTH_NAMES = ["january", "Feb", "March", "sept.", "December"]


@st.composite
def calendar_dates(draw: st.DrawFn) -> str:
    """A year, month or day without marks."""
    year = draw(st.integers(-9999, 9999))
    text = f"{'-' if year < 0 else ''}{abs(year):04}"
    month = draw(st.none() | st.integers(1, 12))
    if month is None:
        return text
    day = draw(st.none() | st.integers(1, dates.last_day_of(year, month)))
    return f"{text}-{month:02}" + ("" if day is None else f"-{day:02}")


@st.composite
def masked_dates(draw: st.DrawFn) -> str:
    """A date that exists, some of its digits masked."""
    text = draw(calendar_dates())
    return "".join(
        "X" if mark.isdigit() and draw(st.integers(0, 3)) == 0 else mark for mark in text
    )


DIVISIONS = st.builds("{:04}-{}".format, st.integers(0, 9999), st.integers(21, 41))
SINGLES = calendar_dates() | masked_dates() | DIVISIONS
QUALIFIERS = st.sampled_from("?~%")
QUALIFIED = st.builds("{}{}".format, SINGLES, QUALIFIERS)
SETS = st.builds(
    lambda brackets, members: brackets[0] + ",".join(members) + brackets[1],
    st.sampled_from(["[]", "{}"]),
    st.lists(SINGLES | QUALIFIED, min_size=1, max_size=5),
)
INTERVALS = st.builds("{}/{}".format, SINGLES | st.just("..") | st.just(""), SINGLES) | st.builds(
    "{}/{}".format, SINGLES, st.sampled_from(["", ".."])
)
PHRASES = st.builds(
    "{}{}".format,
    st.sampled_from(["", "before ", "By ", "not after ", "c. ", "about ", "perhaps ", "since "]),
    st.builds("{:04}".format, st.integers(0, 9999))
    | st.builds("{:03}0s".format, st.integers(1, 999))
    | st.builds("{}th century".format, st.integers(1, 21))
    | st.builds("{} {:04}".format, st.sampled_from(MONTH_NAMES), st.integers(0, 9999)),
)
SOUP = st.text("0123456789X-/.?~%[]{},T:Z+ ='uySE–sthbeforcamind", max_size=40)
CELLS = SINGLES | QUALIFIED | SETS | INTERVALS | PHRASES | SOUP | st.text()
DECIDED = st.builds("{} = {}".format, st.text(max_size=30) | PHRASES, QUALIFIED | SETS | SINGLES)


@settings(max_examples=500)
@given(CELLS | DECIDED)
def test_any_text_gives_a_date_or_a_refusal_and_comes_back_from_its_cell(text: str) -> None:
    try:
        found = read(text)
    except DateError as error:
        assert error.reason and error.remedy
        assert str(error).isprintable()
        return
    assert read(dates.cell(found)) == found
    assert found.earliest <= found.latest
    assert dates.say(found)
    if found.edtf:
        assert parse_edtf(found.edtf) == found[1:5]


@settings(max_examples=300)
@given(st.text() | SOUP)
def test_the_parser_gives_a_date_or_a_refusal(text: str) -> None:
    try:
        parsed = parse_edtf(text)
    except DateError as error:
        assert error.reason and error.remedy
        return
    assert parsed.earliest <= parsed.latest
    assert parsed.edtf == text.strip()


def test_twenty_thousand_spoilt_dates() -> None:
    chance = random.Random(1741)
    seeds = ["1985-04-12", "2004-06-~01/2004-06-~20", "[1667,1668,1670..1672]", "156X-12-25",
             "early 19th century", "between 1920 and 1925", "14 June 1950", "5/6/1956 = 1956-06-05",
             "1985-04-12T23:20:30+04:30", "-0099", "not after 1930s", "1868 or 1871"]  # fmt: skip
    marks = "0123456789X-/.?~%[]{},T:Z+ =uySE'\u2013\u0661\uff11\x00\ud800\u200babcs"
    for _ in range(20_000):
        text = list(chance.choice(seeds))
        for _ in range(chance.randint(1, 4)):
            place = chance.randrange(len(text) + 1)
            text[place : place + chance.randint(0, 2)] = chance.choices(
                marks, k=chance.randint(0, 2)
            )
        try:
            found = read("".join(text))
        except DateError:
            continue
        assert found.earliest <= found.latest
        assert read(dates.cell(found)) == found


@given(masked_dates(), st.data())
def test_masking_a_digit_never_narrows(text: str, data: st.DataObject) -> None:
    digits = [place for place, mark in enumerate(text) if mark.isdigit()]
    assume(digits and "-0000" not in text)
    place = data.draw(st.sampled_from(digits))
    narrow, wide = parse_edtf(text), parse_edtf(f"{text[:place]}X{text[place + 1 :]}")
    assert wide.earliest <= narrow.earliest
    assert narrow.latest <= wide.latest


@given(SINGLES, st.data())
def test_qualifiers_never_move_the_bounds(text: str, data: st.DataObject) -> None:
    plain = parse_edtf(text)
    sign, parts = ("-", text[1:].split("-")) if text.startswith("-") else ("", text.split("-"))
    mark = st.sampled_from(["", "?", "~", "%"])
    first = data.draw(mark)
    marked = [f"{'' if place == 0 else data.draw(mark)}{part}{data.draw(mark)}"
              for place, part in enumerate(parts)]  # fmt: skip
    qualified = parse_edtf(first + sign + "-".join(marked))
    assert qualified[1:3] == plain[1:3]


@given(SINGLES | QUALIFIED, SINGLES | QUALIFIED)
def test_an_interval_has_the_bounds_of_its_ends(left: str, right: str) -> None:
    start, end = parse_edtf(left), parse_edtf(right)
    if start.earliest > end.latest:
        with pytest.raises(DateError, match="ends before it begins"):
            parse_edtf(f"{left}/{right}")
        return
    whole = parse_edtf(f"{left}/{right}")
    assert whole[1:3] == (start.earliest, end.latest)
    assert whole.flags == start.flags | end.flags
    assert parse_edtf(f"{left}/")[1:3] == (start.earliest, dates.UNKNOWN_END)
    assert parse_edtf(f"{left}/..")[1:3] == (start.earliest, dates.OPEN_END)
    assert parse_edtf(f"/{right}")[1:3] == (dates.UNKNOWN_START, end.latest)
    assert parse_edtf(f"../{right}")[1:3] == (dates.OPEN_START, end.latest)


@given(st.lists(SINGLES, min_size=1, max_size=5))
def test_a_set_reaches_from_its_first_to_its_last_member(members: list[str]) -> None:
    parsed = [parse_edtf(member) for member in members]
    for brackets in ("[]", "{}"):
        whole = parse_edtf(brackets[0] + ",".join(members) + brackets[1])
        assert whole.earliest == min(member.earliest for member in parsed)
        assert whole.latest == max(member.latest for member in parsed)


@given(masked_dates())
def test_masked_bounds_are_matching_days(text: str) -> None:
    assume("-0000" not in text)
    parsed = parse_edtf(text)
    for end in (parsed.earliest, parsed.latest):
        written = dates.iso(end)
        assert written is not None
        assert len(written) >= len(text)
        assert all(mark in ("X", digit) for mark, digit in zip(text, written, strict=False))
