# Words shared by screen and paper.

signal-danger = DANGER
signal-warning = WARNING
signal-caution = CAUTION
signal-notice = NOTICE

# The name that the user gave a part or a load, inside a sentence.
id-quoted = “{ $id }”

list-comma = ,{" "}
list-and = { $first } and { $last }

# How a figure was checked.
mark-confirmed = confirmed
mark-secondary = from a secondary copy
mark-memory = from memory, not verified
mark-common-practice = common practice, no source
