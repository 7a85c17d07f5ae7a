"""Views of what records refer to (materials, people, rules), of kept questions, of the log."""

from __future__ import annotations

from conservedb.store.view_shape import UUID, View, days, given, listed, own

CLASSES = View(
    "v_classes",
    "the tree of classes of materials",
    (
        *own("cl", key="key of the class", name="what it is called"),
        given("parent", "pa.key", "key of the class above it"),
        *own("cl", uuid=UUID),
    ),
    "FROM material_class cl\nLEFT JOIN material_class pa ON pa.id = cl.parent_id",
)

MATERIALS = View(
    "v_materials",
    "substances, and recipes of parts",
    (
        *own("ma", key="key of the material", name="what it is called"),
        given("class", "cl.key", "key of its class, see v_classes"),
        given(
            "aliases",
            listed("li.alias", "material_alias li", "li.material_id = ma.id"),
            "other names; ...",
        ),
        given(
            "trade_names",
            listed("li.alias", "trade_name li", "li.material_id = ma.id"),
            "names under which it was sold; ...",
        ),
        given(
            "parts",
            listed(
                "coalesce(pa.amount || ' ' || coalesce(pa.unit || ' ', ''), '') || pm.key",
                "material_part pa JOIN material pm ON pm.id = pa.part_id",
                "pa.material_id = ma.id",
                "pa.id",
            ),
            "amount, unit and key of the parts of a recipe; ...",
        ),
        *own("ma", note="remarks", uuid=UUID),
    ),
    "FROM material ma\nLEFT JOIN material_class cl ON cl.id = ma.class_id",
)

PEOPLE = View(
    "v_people",
    "everybody who is named",
    (
        *own("pe", name="full name"),
        given(
            "aliases",
            listed("li.alias", "person_alias li", "li.person_id = pe.id"),
            "initials and spellings found in papers; ...",
        ),
        *own("pe", role="what they are", organisation="where they work"),
        *days("pe", active="when they worked"),
        *own("pe", note="remarks", uuid=UUID),
    ),
    "FROM person pe",
)

SOURCES = View(
    "v_sources",
    "papers and other sources",
    (
        *own("so", ref="ref of the source", kind="report, card, letter ...", citation="in full"),
        *days("so", date="when it was written"),
        *own("so", note="remarks", uuid=UUID),
    ),
    "FROM source so",
)

RULES = View(
    "v_rules",
    "rules of the trade, by which records and work are judged",
    (
        *own("ru", key="key of the rule, as conservedb ask takes it: rule: KEY"),
        *own("ru", title="what it is called", severity="block, warn or inform"),
        given(
            "active", "coalesce(ru.active, 'yes')", "yes or no: whether anything is judged by it"
        ),
        given(
            "judges",
            "CASE ru.judges WHEN 'safety' THEN 'objects' WHEN 'conduct' THEN 'steps' END",
            "objects: how safe they are now; steps: how work is done",
        ),
        *own("ru", sentence="what it says", note="remarks", uuid=UUID),
    ),
    "FROM rule ru",
)

QUESTIONS = View(
    "v_questions",
    "questions of researchers that are kept under a name",
    (
        *own("sq", name="under which it is kept: conservedb ask --saved NAME"),
        given(
            "question",
            "sq.rows || coalesce(' where ' || sq.conditions, '')",
            "the question as conservedb ask takes it",
        ),
        *own("sq", rows="what its rows are: layers, places, interventions, objects"),
        *own("sq", conditions="its conditions; NULL where there are none"),
        *days("sq", saved="when it was kept"),
        given("person", "pe.name", "who kept it"),
        *own("sq", note="remarks", uuid=UUID),
    ),
    "FROM saved_question sq\nLEFT JOIN person pe ON pe.id = sq.person_id",
)

CHANGES = View(
    "v_changes",
    "the change log: one row of one table before and after; in the order of writing by change",
    (
        given("change_set", "cs.id", "number of the change set: one transaction"),
        given("changed_by", "cs.who", "who changed it"),
        given("changed_at", "cs.at", "when, in UTC, ISO 8601"),
        given("deed", "cs.kind", "recorded, amended, withdrawn, undone, imported ..."),
        given("reason", "cs.reason", "why"),
        given("undoes", "cs.undoes_id", "number of the change set that it takes back"),
        given("change", "ch.id", "number of the change"),
        given("table_name", "ch.table_name", "the table of the record"),
        given("record_number", "ch.record_id", "number of the record in its table"),
        given("before", "ch.before", "the row before: name=value, blank fields left out"),
        given("after", "ch.after", "the row after; NULL where it was taken away"),
        given("hash", "cs.hash", "SHA-256 that seals the change set; NULL while it is open"),
    ),
    "FROM change ch\nJOIN change_set cs ON cs.id = ch.set_id",
)
