"""Text that has broken programs like this one; every field must take it as data."""

from __future__ import annotations

NASTY = (
    "see [1] and [sic]",
    "size [10 x 12]",
    "a [/] b",
    "x [/red] y",
    "[bold]a[/italic]",
    "[b",
    "a = [b + c",
    "[true, false] [#1] [$primary]x[/]",
    "1923.45[a-c]",
    "[@click=app.quit]read me[/]",
    "[link=file:///etc/passwd]a[/link]",
    "C:\\[dir]\\",
    "clear \x1b[2J title \x1b]0;owned\x07 copy \x1b]52;c;aGk=\x07",
    "C1 \x9b31m del \x7f bell \x07 backspace \x08",
    "right \u202eto left\u202c \u2066isolated\u2069 \ufeff \u200b",
    "tags \U000e0041\U000e0042 family \U0001f468\u200d\U0001f469\u200d\U0001f467",
    "z\u0351\u0357a\u0310l\u0311g\u0309o",
    "שלום مرحبا",
    "'; DROP TABLE layer; --",
    'quote " comma , semicolon ; backslash \\; (role)',
    '=HYPERLINK("x") +1 -1 @SUM',
    "100 % _under_ *star* AND OR NOT NEAR(",
    "line one\nline two\r\nline three\rline four\ttab",
    "../../etc/passwd %n %s {0} ${HOME} `id`",
    "Ž\u00e4\u0308é ﬁ ½ ﷺ",
    "x" * 20_000,
)
