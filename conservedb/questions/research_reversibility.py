"""Which materials read how of their removal: the verdict on a lone layer of each.

What lies beside a layer, a barrier under it or a body that took it up can make its own verdict
another one; here the material alone is asked about.
"""

from __future__ import annotations

from sqlalchemy import Connection

from conservedb.knowledge.behaviour import Lying, Matter
from conservedb.knowledge.verdicts import verdict
from conservedb.questions.behaviour import materials
from conservedb.questions.research_terms import Meant


def reversible(connection: Connection, word: str) -> Meant:
    """The materials of a verdict, the classes of it, and those with some such material in them."""
    known = materials(connection)
    ids = [one for one in known.ids() if _verdict(known.of(one)) == word]
    classes = [one for one in known.classes().values() if _verdict(known.of_class(one)) == word]
    keys = {key for one in ids for key in known.class_path(one)}
    above = [one for key, one in known.classes().items() if key in keys]
    return Meant(tuple(ids), tuple(classes), tuple(above))


def _verdict(matter: Matter) -> str:
    return verdict(Lying("", "", matter.name, (matter,))).word
