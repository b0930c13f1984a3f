# Words shared by screen and paper.

signal-danger = DANGER
signal-warning = AVERTISSEMENT
signal-caution = ATTENTION
signal-notice = AVIS

# The name that the user gave a part or a load, inside a sentence.
id-quoted = « { $id } »

clock-am = { $time }
clock-pm = { $time }
clock-midnight = { $time }
clock-noon = { $time }
clock-span = { $from } à { $to }

list-comma = ,{" "}
list-semicolon =  ;{" "}
list-and = { $first } et { $last }

# How a figure was checked.
mark-confirmed = confirmé
mark-secondary = d’après une copie secondaire
mark-memory = de mémoire, non vérifié
mark-common-practice = pratique courante, sans source
