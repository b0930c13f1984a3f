# Words shared by screen and paper.

# Safety. ANSI Z535.4, from a secondary copy. At most 14 columns, capitals.
signal-danger = DANGER
# Safety.
signal-warning = WARNING
# Safety.
signal-caution = CAUTION
# Safety.
signal-notice = NOTICE

# The name that the user gave a part or a load, inside a sentence.
id-quoted = “{ $id }”

list-comma = ,{" "}
list-semicolon = ;{" "}
list-and = { $first } and { $last }

# How a figure was checked.
mark-confirmed = confirmed
mark-secondary = from a secondary copy
mark-memory = from memory, not verified
mark-common-practice = common practice, no source
