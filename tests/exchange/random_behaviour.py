"""Random rows about materials, hazards and rules, some under keys that the program ships."""

from __future__ import annotations

import random
from collections.abc import Callable

from conservedb.exchange.cells import escape, join_role
from conservedb.records import behaviour, hazards, rules
from conservedb.records.spot_tests import TEST_RESULTS
from conservedb.records.treatments import AGENT_FORMS
from tests.nasty import NASTY

DATES = (
    "1934",
    "1934-06",
    "1934-06-14",
    "1934?",
    "1890~",
    "193X",
    "../1990",
    "1920/..",
    "1920/",
    "/1990",
    "[1920,1931]",
    "c. 1931",
    "early 1930s",
    "between 1920 and 1925",
    "Easter 1956",
    "Easter 1956 = 1956-04-01",
    "5/6/56 = 1956-06-05",
    "",
)
SHIPPED = ("acetone", "ethanol", "toluene")
"""Keys of materials that every new database has."""


class RandomBehaviour:
    """Rows by file, and the pieces of which they are made."""

    def __init__(self, seed: int) -> None:
        self.chance = random.Random(seed)
        self.rows: dict[str, list[dict[str, str]]] = {}
        self._made = 0
        self.classes: list[str] = []
        self.materials: list[str] = []
        self.people: list[str] = []
        self.sources: list[str] = []
        self.rules: list[str] = []

    # -- pieces -------------------------------------------------------------------------

    def _add(self, file: str, /, **cells: str) -> None:
        self.rows.setdefault(file, []).append(cells)

    def _text(self) -> str:
        return self.chance.choice(("", "plain words", *NASTY))

    def _words(self) -> str:
        return self.chance.choice(("plain words", *NASTY))

    def _key(self) -> str:
        """A key that people might really write, and some that nobody should."""
        self._made += 1
        tail = self.chance.choice(("", " [x]", " ; ,", " \\", " (a)", " é\u202e", ' "q"', " = b"))
        return f"k{self._made}{tail}"

    def _one(self, values: tuple[str, ...]) -> str:
        return self.chance.choice(("", *values))

    def _some(self, keys: list[str], most: int = 3, write: Callable[[str], str] = escape) -> str:
        chosen = self.chance.sample(keys, min(len(keys), self.chance.randint(0, most)))
        return "; ".join(write(key) for key in chosen)

    def _number(self) -> str:
        return self.chance.choice(("", "0", "12", "12.5", "0.1", "1e-3", "123456789.25"))

    def _date(self) -> str:
        return self.chance.choice(DATES)

    def _who(self) -> str:
        return self._some(self.people, 2, lambda name: join_role(name, self._role()))

    def _role(self) -> str:
        return self.chance.choice(("", "mason", "mason (head) ; \\", "[b]"))

    def _range(self) -> tuple[str, str]:
        return self.chance.choice((("", ""), ("40", ""), ("-5", "40.5"), ("1e-3", "1e-3")))

    def _agent(self) -> str:
        first, second = (escape(key) for key in self.chance.sample(self.materials, 2))
        return self.chance.choice(
            (first, f"{first} 50; {second} 50", f"{first} 33.3;{second} 66.7")
        )

    # -- materials and what is known of them --------------------------------------------

    def _shared(self) -> None:
        """Classes, materials, and everything else that all objects share."""
        self.classes = [self.chance.choice(("polymer", self._key())), self._key(), self._key()]
        for place, key in enumerate(self.classes):
            parent = self.classes[place - 1] if place else ""
            self._add("material_classes", key=key, name=self._text(), parent=parent)
        self.materials = [self._key() for _ in range(3)] + [self.chance.choice(SHIPPED)]
        for place, key in enumerate(self.materials):
            self._add(
                "materials",
                key=key,
                name=self._text(),
                note=self._text(),
                aliases="; ".join({escape(self._text()), "PVA"}),
                trade_names="; ".join((escape(self._text()), f"Brand {place}")),
                behaves_as=self._stand_in(place),
                **{"class": self._one(tuple(self.classes))},
            )
        first, second, *_ = self.materials
        self._add("material_parts", material=first, part=second, amount="2.5", note=self._text())
        self.people = [f"Person {self._key()}" for _ in range(3)]
        for name in self.people:
            alias = escape(f"alias of {name}")
            self._add("people", name=name, aliases=alias, active=self._date(), note=self._text())
        self.sources = [self._key() for _ in range(3)]
        for key in self.sources:
            self._add("sources", ref=key, citation=self._text(), date="2003", kind=self._text())
        self._add("terms", list="role", term=self._key(), definition=self._text())
        for key in self.materials:
            self._values(key)
        self._hazards()
        self._rules()

    def _stand_in(self, place: int) -> str:
        if not place or self.chance.random() < 0.5:
            return ""
        return join_role(self.chance.choice(self.materials[:place]), self._role())

    def _told(self) -> dict[str, str]:
        return {
            "key": self.chance.choice(("", self._key())),
            "basis": self._one(behaviour.BASES),
            "source": self._one(tuple(self.sources)),
            "note": self._words() + self._key(),
        }

    def _confirmed(self) -> dict[str, str]:
        said = {"page": self._text(), "confirmed_by": self._one(tuple(self.people))}
        return self._told() | said | {"confirmed": self._date()}

    def _values(self, material: str) -> None:
        add, one, number, text = self._add, self._one, self._number, self._text
        low, high = self._range()
        cells = {"material": material, "low": low, "high": high, "words": text()}
        kind = self.chance.choice(behaviour.PROPERTIES)
        add("material_values", property=kind, condition=text(), **cells, **self._confirmed())
        point = {"material": material, "d": "15.5", "p": "0", "h": number() or "7"}
        sphere = {"r0": one(("8", "0.5")), "position": one(("0", "2", "-1")), "quality": text()}
        add("hansen", use=one(behaviour.HANSEN_USES), **point, **sphere, **self._confirmed())
        add("teas", material=material, d="47", p="32", h="20.5", **self._confirmed())
        add(
            "solubilities",
            material=material,
            agent=self._agent(),
            state=one(behaviour.SOLUBILITY_STATES),
            effect=self.chance.choice(behaviour.SOLUBILITY_EFFECTS),
            form=one(AGENT_FORMS),
            temperature_c=one(("-5", "20")),
            dwell_min=number(),
            condition=text(),
            **self._confirmed(),
        )
        bearer = self.chance.choice(({"material": material}, {"class": self.classes[0]}))
        holds = self.chance.choice(behaviour.HOLDS)
        trait = self.chance.choice(behaviour.TRAITS)
        add("traits", trait=trait, holds=holds, effect=text(), **bearer, **self._confirmed())
        mark = self.chance.choice(behaviour.PERIOD_MARKS)
        add("periods", material=material, mark=mark, date=self._date(), **self._confirmed())

    def _hazards(self) -> None:
        codes = ["H225", self._key()]
        for code in codes:
            said = {"wording": self._words(), "band": self._one(("A", "D")), "checked": "2024"}
            self._add("hazard_statements", code=code, note=self._text(), **said)
        for material in self.materials:
            code = self.chance.choice(codes)
            self._add("hazards", material=material, code=code, **self._told())
            self._add(
                "exposure_limits",
                material=material,
                kind=self.chance.choice(hazards.EXPOSURE_KINDS),
                ppm=self._one(("500", "0.1")),
                mg_m3=self._one(("1200",)),
                skin=self._one(("yes", "no")),
                jurisdiction=self._words(),
                as_of=self._date(),
                **self._told(),
            )
            where = {"jurisdiction": self._words(), "text": self._words(), "since": self._date()}
            self._add("restrictions", material=material, **where, **self._told())

    def _rules(self) -> None:
        self.rules = [self._key(), self._key()]
        for key in self.rules:
            self._add(
                "rules",
                key=key,
                title=self._words(),
                severity=self.chance.choice(rules.SEVERITIES),
                judges=self.chance.choice(rules.JUDGES),
                needs=self._text(),
                sentence=self._words(),
                active=self._one(("yes", "no")),
                source=self._one(tuple(self.sources)),
                page=self._text(),
            )
        for name in ("creep margin", self._key()):
            self._add("settings", name=name, value=self._text(), note=self._text())
        low, high = self._range()
        room = {"room": self._words(), "use": self._one(rules.ROOM_USES)}
        self._add("climates", min_c=low, max_c=high, since=self._date(), **room)

    # -- on an object -------------------------------------------------------------------

    def _test(self, number: str, layer: str, deed: str) -> None:
        self._add(
            "spot_tests",
            object=number,
            layer=layer,
            ref=self.chance.choice(("", self._key())),
            agent=self._agent(),
            intervention=deed,
            date=self._date(),
            form=self._one(AGENT_FORMS),
            area_mm2=self._one(("4", "0.5")),
            dwell_min=self._number(),
            pressure=self._text(),
            magnification=self._text(),
            wet=self._one(TEST_RESULTS),
            dry=self._one(TEST_RESULTS),
            next_day=self._one(TEST_RESULTS),
            swab_colour=self._text(),
            tide_line=self._one(behaviour.HOLDS),
            people=self._who(),
            note=self._words() + self._key(),
        )

    def _accept(self, number: str, part: str, place: str, layer: str) -> None:
        self._add(
            "acceptances",
            object=number,
            rule=self.chance.choice(self.rules),
            component=self._one((part,)),
            place=self._one((place,)),
            layer=self._one((layer,)),
            person=self.chance.choice(self.people),
            reason=self._words(),
            date=self._date(),
            review=self._date(),
        )

    def _near(self, number: str, place: str, other: str) -> None:
        self._add(
            "near",
            object=number,
            place=place,
            other_place=other,
            distance_mm=self._number(),
            path=self._one(("open", "tight", "porous", "unknown")),
            note=self._text(),
        )
