import pytest

from conservedb import dates
from conservedb.dates import DateError, Found, read

# The first block is the table of the design; conventions are stated in conservedb/dates/words.py.
TABLE = [
    ("before 1899", "../1898"),
    ("by 1899", "../1899"),
    ("not after 1899", "../1899"),
    ("after 1950", "1951/.."),
    ("not before 1950", "1950/.."),
    ("since 1950", "1950/.."),
    ("from 1950", "1950/.."),
    ("c. 1890", "1890~"),
    ("c.1890", "1890~"),
    ("ca 1890", "1890~"),
    ("ca. 1890", "1890~"),
    ("circa 1890", "1890~"),
    ("about 1890", "1890~"),
    ("about 1890s", "189X~"),
    ("1930s", "193X"),
    ("the 1930s", "193X"),
    ("early 1930s", "1930/1933"),
    ("mid 1930s", "1934/1936"),
    ("mid-1930s", "1934/1936"),
    ("late 1930s", "1937/1939"),
    ("19th century", "18XX"),
    ("early 19th century", "1800/1833"),
    ("mid-19th century", "1834/1866"),
    ("late 19th century", "1867/1899"),
    ("1st century", "00XX"),
    ("between 1920 and 1925", "1920/1925"),
    ("1920-1925", "1920/1925"),
    ("1920–1925", "1920/1925"),
    ("1920 — 1925", "1920/1925"),
    ("1920s-1930s", "192X/193X"),
    ("June 1920 – May 1921", "1920-06/1921-05"),
    ("spring 1934", "1934-21"),
    ("summer 1934", "1934-22"),
    ("autumn 1934", "1934-23"),
    ("fall 1934", "1934-23"),
    ("winter 1934", "1934-24"),
    ("June 1956", "1956-06"),
    ("jun 1956", "1956-06"),
    ("Jun. 1956", "1956-06"),
    ("Sept. 1956", "1956-09"),
    ("14 June 1950", "1950-06-14"),
    ("14th June, 1950", "1950-06-14"),
    ("June 14, 1950", "1950-06-14"),
    ("Feb 29 1952", "1952-02-29"),
    ("perhaps 1950", "1950?"),
    ("probably June 1950", "1950-06?"),
    ("possibly 1950s", "195X?"),
    ("1950 (?)", "1950?"),
    ("June 1956?", "1956-06?"),
    ("summer 1934?", "1934-22?"),
    ("1868 or 1871", "[1868,1871]"),
    ("before June 1950", "../1950-05"),
    ("before January 1950", "../1949-12"),
    ("before 1 March 1952", "../1952-02-29"),
    ("before 1930s", "../1929"),
    ("before the 19th century", "../1799"),
    ("before 0000", "../-0001"),
    ("by 14 June 1950", "../1950-06-14"),
    ("not after 1930s", "../1939"),
    ("after June 1950", "1950-07/.."),
    ("after 31 December 1950", "1951-01-01/.."),
    ("after 1930s", "1940/.."),
    ("after the 19th century", "1900/.."),
    ("after 1950-06", "1950-07/.."),
    ("since the 1930s", "1930/.."),
    ("c. June 1950", "1950-06~"),
    ("ca. 14 June 1950", "1950-06-14~"),
    ("circa 18th century", "17XX~"),
    ("c. 1920-1925", "1920~/1925~"),
    ("c. early 1930s", "1930~/1933~"),
    ("mid-19th century?", "1834?/1866?"),
]


@pytest.mark.parametrize(("words", "edtf"), TABLE)
def test_the_table_of_plain_words(words: str, edtf: str) -> None:
    parsed = dates.parse_edtf(edtf)
    for text in (words, words.upper(), f"  {words.replace(' ', '   ')} "):
        found = read(text)
        assert found == Found(text.strip(), edtf, parsed[1], parsed[2], parsed[3], "words")
        assert read(dates.cell(found)) == found


@pytest.mark.parametrize(
    "words",
    [
        "Easter 1956", "unknown", "undated", "n.d.", "-", "?", "after the war", "19th century BC",
        "early 1934", "before summer 1934", "winter 1934/35", "June", "14 June", "June-August 1956",
        "before 1899?", "after before 1950", "c. c. 1950", "1920 or", "between 1920", "0th century",
        "1950 or Easter 1956", "14 June 1950-1955", "early 1930s-1940s", "restored 5/6/1956", "use",
        "Weihnachten 1923", "1950年", "XX", "treated 3 times", "open",
    ],
)  # fmt: skip
def test_other_words_are_kept_with_unknown_bounds(words: str) -> None:
    found = read(words)
    assert found == Found(words, "", dates.UNKNOWN_START, dates.UNKNOWN_END, 0, "not understood")
    assert read(dates.cell(found)) == found
    with pytest.raises(DateError, match="not in the table"):
        dates.read_span(words)


@pytest.mark.parametrize(
    ("text", "reason", "remedy"),
    [
        ("5/6/1956", "either order",
         "write 1956-06-05 or 1956-05-06, or `5/6/1956 = 1956-06-05` once somebody has decided"),
        ("5.6.1956", "either order", "write 1956-06-05 or 1956-05-06"),
        ("12-5-1923", "either order", "write 1923-05-12 or 1923-12-05"),
        ("5 6 1956", "either order", "write 1956-06-05 or 1956-05-06"),
        ("13/6/1956", "year has to stand first", "write 1956-06-13, or"),
        ("1956/6/5", "either order", "write 1956-06-05 or 1956-05-06"),
        ("before 5/6/1956", "either order", "write 1956-06-05 or 1956-05-06"),
        ("31/2/1956", "no such day", "check the day and month"),
        ("5/6/56", "two digits", "four digits"),
        ("5.6.56", "two digits", "four digits"),
        ("'56", "two digits", "four digits"),
        ("’56", "two digits", "four digits"),
        ("56", "two digits", "four digits"),
        ("c. '56", "two digits", "four digits"),
        ("'30s", "two digits", "four digits"),
        ("30s", "two digits", "four digits"),
        ("56-57", "two digits", "four digits"),
        ("June 56", "two digits", "four digits"),
        ("June '56", "two digits", "four digits"),
        ("14 June 56", "two digits", "four digits"),
        ("June 14, '56", "two digits", "four digits"),
        ("summer '34", "two digits", "four digits"),
        ("1868 or 71", "two digits", "four digits"),
        ("between 1920 and 25", "two digits", "four digits"),
        ("1956/57", "two digits", "1956/1957"),
        ("1956-57", "two digits", "1956/1957"),
        ("1956–57", "two digits", "1956/1957"),
        ("1898/02", "a year or a month", "write 1898/1902 for the years, or February 1898"),
        ("1904–05", "a year or a month", "write 1904/1905 for the years, or May 1904"),
        ("1934-35", "years to 1935", "1934/1935"),
        ("1921-24", "years to 1924", "1921/1924"),
        ("1934-35?", "years to 1935", "1934/1935"),
        ("c. 1934-35", "two digits", "1934/1935"),
        ("c. 1904-05", "a year or a month", "write 1904/1905 for the years, or May 1904"),
        ("1920-39", "years to 1939", "`1920-39 = 1920-39`"),
        ("45/1956", "a year has four digits", "write the year in full"),
        ("6/1956", "year first", "1956-06"),
        ("1900s", "ten years or a hundred", "190X for the decade or 19XX for the century"),
        ("before the 1800s", "ten years or a hundred", "180X"),
        ("early 1900s", "ten years or a hundred", "190X"),
        ("1890s-1900s", "ten years or a hundred", "190X"),
        ("31 February 1950", "no such day", "check"),
        ("February 29, 1951", "no such day", "check"),
        ("before 31 June 1950", "no such day", "check"),
        ("0 June 1950", "no such day", "check"),
        ("1925-1920", "ends before it begins", "1920/1925"),
        ("between 1925 and 1920", "ends before it begins", "1920/1925"),
        ("after 9999", "beyond the year 9999", "up to 9999"),
        ("1950\u200b", "other than plain digits", "type it"),
        ("１９５０", "other than plain digits", "type it"),
        ("1950\x00", "printable", "remove"),
        ("Easter\n1956", "printable", "remove"),
        ("\x1b[1m1950", "printable", "remove"),
        ("word " * 50, "characters", "shorten"),
        ("../..", "neither end", "blank"),
    ],
)  # fmt: skip
def test_ambiguous_or_impossible_dates_are_refused(text: str, reason: str, remedy: str) -> None:
    with pytest.raises(DateError) as caught:
        read(text)
    assert reason in caught.value.reason
    assert remedy in caught.value.remedy
    assert caught.value.value == text.strip()


def test_a_plain_year_and_month_of_edtf_is_a_month() -> None:
    assert read("1904-05").edtf == "1904-05"
    assert read("2001-21") == Found("2001-21", *dates.parse_edtf("2001-21"), "edtf")


@pytest.mark.parametrize(
    ("text", "words", "edtf"),
    [
        ("5/6/1956 = 1956-06-05", "5/6/1956", "1956-06-05"),
        ("'56=1956?", "'56", "1956?"),
        ("Easter 1956   =   1956-04-01", "Easter 1956", "1956-04-01"),
        ("1934-35 = 1934/1935", "1934-35", "1934/1935"),
        ("1934-35 = 1934-35", "1934-35", "1934-35"),
        ("a = b = ../1898", "a = b", "../1898"),
        ("1950 = 1950", "1950", "1950"),
        ("w" * 200 + " = 1950", "w" * 200, "1950"),
    ],
)
def test_words_with_the_date_somebody_decided(text: str, words: str, edtf: str) -> None:
    found = read(text)
    assert found == Found(words, *dates.parse_edtf(edtf), "decided")
    assert dates.cell(found) == f"{words} = {edtf}"
    assert read(dates.cell(found)) == found


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("5/6/1956 = Easter", "has to be EDTF"),
        ("5/6/1956 = June 1956", "has to be EDTF"),
        ("5/6/1956 =", "has to be EDTF: it is blank"),
        ("5/6/1956 = 1956-02-30", "has to be EDTF: there is no such day"),
        ("= 1950", "nothing stands before"),
        ("w" * 201 + " = 1950", "characters"),
        ("w\x00 = 1950", "printable"),
    ],
)
def test_a_decision_has_to_be_edtf(text: str, reason: str) -> None:
    with pytest.raises(DateError) as caught:
        read(text)
    assert reason in caught.value.reason


def test_blank_cells() -> None:
    for text in ("", " ", "\t\n", "\u00a0\u2003"):
        found = read(text)
        assert found == Found("", "", dates.UNKNOWN_START, dates.UNKNOWN_END, 0, "blank")
        assert read(dates.cell(found)) == found


def test_span_of_a_question() -> None:
    assert dates.read_span("1930s")[2:4] == dates.parse_edtf("1930/1939")[1:3]
    assert dates.read_span("about 1890").flags == dates.APPROXIMATE
    assert dates.read_span("14 June 1950").edtf == "1950-06-14"


@pytest.mark.parametrize("text", ["after 1950", "1950/", "/1950", "[..1984]", "by 1899"])
def test_a_question_needs_two_known_ends(text: str) -> None:
    with pytest.raises(DateError, match="two known ends"):
        dates.read_span(text)


@pytest.mark.parametrize("text", ["", "  "])
def test_a_question_needs_a_date(text: str) -> None:
    with pytest.raises(DateError, match="blank"):
        dates.read_span(text)
