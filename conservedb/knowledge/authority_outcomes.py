"""The outcomes of asking whether a step is authorised: each a word and a plain sentence."""

IN_FORCE = "in force"
RATIFIED = "ratified"
REFUSED = "refused"
CANNOT_TELL = "cannot tell"
EXPIRED = "expired"
AFTERWARDS = "authorised after the start"
OTHER_VERSION = "another version"
NOT_COVERED = "not covered"
HISTORIC = "historic"
NONE_NEEDED = "none needed"
NOT_RECORDED = "needs not recorded"
STANDING = "standing approval"
TO_BE_RATIFIED = "to be ratified"
AUTHOR_ALONE = "author alone"
MISSING = "missing"
STARTED = "started before authorisation"
UNEXPLAINED = "reason or name missing"

OUTCOMES = {
    HISTORIC: "Historic work needs no authorisation.",
    NONE_NEEDED: "The department's table says that this kind of step needs no authorisation.",
    NOT_RECORDED: "Which authorisations this kind of step needs is not recorded.",
    STANDING: "Routine care, covered by a standing approval in force on that day.",
    IN_FORCE: "Authorised, and in force on that day.",
    RATIFIED: "Begun without authorisation, and ratified afterwards.",
    TO_BE_RATIFIED: "First aid that has not been ratified yet.",
    REFUSED: "Authorisation was refused.",
    EXPIRED: "The authorisation had expired on that day.",
    AUTHOR_ALONE: "Authorised by an author of the plan alone, which the table does not allow.",
    AFTERWARDS: "The authorisation was given after the step had begun.",
    OTHER_VERSION: "Another version of the plan was authorised, not this one.",
    NOT_COVERED: "What was authorised does not cover this step.",
    MISSING: "No authorisation in this capacity is on record.",
    CANNOT_TELL: "Whether it is authorised cannot be told from what is recorded.",
    STARTED: "Begun before it was authorised; a reason and a name are recorded.",
    UNEXPLAINED: "Begun before it was authorised; the reason or the name is missing.",
}
"""Every word that `Finding.outcome` may be, each with what it means."""
