# Wörter, die Bildschirm und Papier teilen.

signal-danger = GEFAHR
signal-warning = WARNUNG
signal-caution = VORSICHT
signal-notice = HINWEIS

# Der Name, den jemand einem Teil oder Gerät gegeben hat, mitten im Satz.
id-quoted = „{ $id }“

clock-am = { $time }
clock-pm = { $time }
clock-midnight = { $time }
clock-noon = { $time }
clock-span = { $from } bis { $to }

list-comma = ,{" "}
list-semicolon = ;{" "}
list-and = { $first } und { $last }

# Wie eine Angabe geprüft wurde.
mark-confirmed = bestätigt
mark-secondary = aus zweiter Hand
mark-memory = aus dem Gedächtnis, nicht geprüft
mark-common-practice = übliche Praxis, keine Quelle
