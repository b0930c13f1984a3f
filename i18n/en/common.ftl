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

# A time of day. $time is "10:30" here, and "22:30" in the other languages.
clock-am = { $time } AM
clock-pm = { $time } PM
# $time is "00:00" or "24:00", for a language that has no word.
clock-midnight = midnight
# $time is "12:00".
clock-noon = noon
# A part of the day.
clock-span = { $from } to { $to }

list-comma = ,{" "}
list-semicolon = ;{" "}
list-and = { $first } and { $last }

# How a figure was checked.
mark-confirmed = confirmed
mark-secondary = from a secondary copy
mark-memory = from memory, not verified
mark-common-practice = common practice, no source
