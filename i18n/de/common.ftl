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

page-checks = Was sie prüft
page-hurts = Warum es schadet
page-arithmetic = Die Rechnung
page-do = Was zu tun ist
page-sources = Quellen

source-table = Tabelle { $clause }
source-tables = Tabellen { $clause }
source-tables-metric = Tabellen { $clause }, für Kabel mit Aufdruck in mm²
source-table-note-9 = Tabelle { $clause }, Anmerkung 9
source-chapter-9-table-8 = Kapitel 9, Tabelle 8
source-class = Klasse { $clause }
source-informational = { $clause }, unverbindliche Anmerkung
source-exception = { $clause }, Ausnahme
source-class-a = Artikel { $clause }, Anmerkung zu Klasse A
source-building-sites = { $clause }, von Baustellen übernommen
source-camper-outlets = { $clause }, verlangt keinen an Wohnwagen-Steckdosen für 30 A und 50 A
source-floating-outlets = { $clause }, Generatoren mit erdfreiem Neutralleiter, die Steckdosen für 125 V und für 125/250 V haben
source-small-two-wire = { $clause }, Baustellen; nimmt kleine Generatoren mit zwei Leitern aus
source-cord-sets = Verlängerungskabel nach Länge, Tabellen { $clause }
source-letter = Auslegungsschreiben
source-extension-cords = Rat zu Verlängerungskabeln
source-generators = Rat zu Generatoren
source-portable-generators = Rat zu tragbaren Generatoren
source-monoxide = Rat zu Kohlenmonoxid
source-monoxide-levels = Werte von Kohlenmonoxid
source-generators-monoxide = tragbare Generatoren und Kohlenmonoxid
source-alarm-times = Zeiten bis zum Alarm
source-deaths = Tote durch tragbare Generatoren, Mitteilung
source-clear-space = freier Raum nach allen Seiten
source-power-taps = Leitfaden, Kategorie { $clause }, Steckdosenleisten
source-heaters = Tipps zu elektrischen Heizgeräten
source-heating = Rat zum Brandschutz beim Heizen
source-fire-hazards = Brandgefahr durch Generatoren
source-fire-order = Anordnung { $clause }, Feuerbeschränkungen
source-spark-arresters = Zulassung von Funkenfängern, wie US Army TM 9-6115-673-13&P sie anführt
source-propane = Propanlieferanten, Rat an Kunden
source-oxygen = Lieferanten von Sauerstoff für zu Hause, Rat an Patienten
source-oxygen-pages = Webseiten zu Notstrom für Sauerstoff zu Hause, 300 bis 600 W
source-leakage = Ableitstrom
source-calibration = Auslösezeiten
source-trip-time = Auslösezeit
source-range-a = { $clause }, als Bereich A von ANSI C84.1
source-volts-in-use = wie Pacific Gas and Electric und ein Entwurf der Neufassung es angeben, Spannung am Gerät bei 120 V
source-colors-and-positions = Farben und Lage des Schutzkontakts
