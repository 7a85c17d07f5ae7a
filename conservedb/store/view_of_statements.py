"""The view of what sources say about fields of records: one SELECT for each kind of record.

Statements are few beside the records that they are about: each arm reads them, and looks up these.
"""

from __future__ import annotations

from conservedb.store.view_shape import OBJECT, SOURCE, UUID, View, days, given, own, people

_REFS = {
    "object": "NULL",
    "component": "re.mark",
    "place": "re.mark",
    "layer": "re.ref",
    "intervention": "re.ref",
    "removal": "re.ref",
    "sighting": "re.ref",
    "joint_event": "re.ref",
    "treatment": "re.ref",
}
"""The tables whose fields sources state something about (`records.sources.STATEMENT_SUBJECTS`), and
what their records are called on their object."""


def _about(table: str, ref: str) -> View:
    """The statements about the records of one table."""
    if table == "object":
        record = "JOIN object ob ON ob.id = st.object_id"
    else:
        record = f"JOIN {table} re ON re.id = st.{table}_id\nJOIN object ob ON ob.id = re.object_id"
    return View(
        "",
        "",
        (
            OBJECT,
            given("about", f"'{table.replace('_', ' ')}'", "the kind of record: " + _KINDS),
            given("ref", ref, "ref or mark of that record; NULL for the object itself"),
            *own("st", field="the field of the record that it is about"),
            *own("st", value="what is stated, as found"),
            given("material", "ma.key", "key of the material that is stated"),
            SOURCE,
            *own("st", page="the page of the source"),
            *days("st", date="when it was stated"),
            people("statement", "st"),
            *own("st", followed="yes, no; NULL while nobody has decided"),
            given("decided_by", "pe.name", "who decided whether it is followed"),
            *own("st", reason="why it is followed or not", note="remarks"),
            *own("st", key="key of the statement", uuid=UUID),
        ),
        f"FROM statement st\n{record}\n"
        "LEFT JOIN source so ON so.id = st.source_id\n"
        "LEFT JOIN material ma ON ma.id = st.material_id\n"
        "LEFT JOIN person pe ON pe.id = st.decided_by_id",
    )


_KINDS = ", ".join(table.replace("_", " ") for table in _REFS)
_ARMS = tuple(_about(table, ref) for table, ref in _REFS.items())

STATED = View(
    "v_statements",
    "what sources say about a field of a record, also where they disagree; whether it is followed",
    _ARMS[0].columns,
    "\nUNION ALL\n".join([_ARMS[0].source, *(arm.select for arm in _ARMS[1:])]),
)
