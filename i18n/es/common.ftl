# Words shared by screen and paper.

signal-danger = PELIGRO
signal-warning = ADVERTENCIA
signal-caution = PRECAUCIÓN
signal-notice = AVISO

# The name that the user gave a part or a load, inside a sentence.
id-quoted = “{ $id }”

clock-am = { $time }
clock-pm = { $time }
clock-midnight = { $time }
clock-noon = { $time }
clock-span = { $from } a { $to }

list-comma = ,{" "}
list-semicolon = ;{" "}
list-and = { $first } y { $last }

# How a figure was checked.
mark-confirmed = confirmado
mark-secondary = de una copia secundaria
mark-memory = de memoria, sin verificar
mark-common-practice = práctica común, sin fuente
