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

page-checks = Ce qu’elle vérifie
page-hurts = Pourquoi c’est dangereux
page-arithmetic = Le calcul
page-do = Que faire
page-sources = Sources

source-table = tableau { $clause }
source-tables = tableaux { $clause }
source-tables-metric = tableaux { $clause }, pour les cordons marqués en mm²
source-table-note-9 = tableau { $clause }, note 9
source-chapter-9-table-8 = chapitre 9, tableau 8
source-class = classe { $clause }
source-informational = { $clause }, note d’information
source-exception = { $clause }, exception
source-class-a = article { $clause }, note sur la classe A
source-building-sites = { $clause }, empruntée aux chantiers
source-camper-outlets = { $clause }, n’en exige pas aux prises de { -camper } de 30 A et 50 A
source-floating-outlets = { $clause }, { -generator(form: "many") } à neutre flottant avec des prises de 125 V et de 125/250 V
source-small-two-wire = { $clause }, chantiers ; en exempte les { -generator(form: "many") } de petite taille à deux fils
source-cord-sets = rallonges selon la longueur, tableaux { $clause }
source-letter = lettre d’interprétation
source-extension-cords = conseils sur les rallonges
source-generators = conseils sur les { -generator(form: "many") }
source-portable-generators = conseils sur les { -generator(form: "many") } mobiles
source-monoxide = conseils sur le monoxyde de carbone
source-monoxide-levels = niveaux de monoxyde de carbone
source-generators-monoxide = { -generator(form: "many") } mobiles et monoxyde de carbone
source-alarm-times = délais d’alarme
source-deaths = morts dues aux { -generator(form: "many") } mobiles, communiqué
source-clear-space = espace libre de tous les côtés
source-power-taps = guide, catégorie { $clause }, multiprises
source-heaters = conseils sur les chauffages électriques
source-heating = conseils de prévention sur le chauffage
source-fire-hazards = risques d’incendie des { -generator(form: "many") }
source-fire-order = ordonnance { $clause }, restrictions de feu
source-spark-arresters = homologation des pare-étincelles, telle que la cite US Army TM 9-6115-673-13&P
source-propane = fournisseurs de propane, conseils aux clients
source-oxygen = fournisseurs d’oxygène à domicile, conseils aux patients
source-oxygen-pages = pages Web sur l’alimentation de secours pour l’oxygène à domicile, 300 à 600 W
source-leakage = courant de fuite
source-calibration = étalonnage
source-trip-time = temps de déclenchement
source-range-a = { $clause }, comme plage A d’ANSI C84.1
source-volts-in-use = selon Pacific Gas and Electric et un projet de révision, tension d’utilisation de 120 V
source-colors-and-positions = couleurs et positions de la broche de terre
