# What was taken for an answer nobody gave. Each message says what is not known, what was taken,
# and how to find the real answer. { $part } is the part or load it is about; { $field } is the
# line of the plan file, for those who edit it by hand.

assumed-yes = oui
assumed-no = non
assumed-none = aucun
assumed-leg-a = phase A
assumed-leg-b = phase B
assumed-worst-kind = le pire de chaque genre
assumed-one-leg = une seule phase

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } De même pour { $parts }.

assume-altitude = On ignore l’altitude du lieu ; on a donc retenu { $value }. L’air raréfié fait perdre de la puissance.
    .look = Cherchez l’altitude sur une carte ou un téléphone.
assume-air = On ignore quelle chaleur il fera ; on a donc retenu { $value }. L’air chaud coûte de la puissance.
    .look = Cherchez la plus haute température que vous prévoyez.
assume-rated = On ignore ce que { -generator(form: "the") } peut fournir en continu ; on a donc retenu { $value }, comme pour les plus petits modèles.
    .look = Cherchez les watts « nominaux », « running » ou « rated » sur la plaque : cela décide de presque tout ici.
assume-rated-of-peak = Nous ignorons ce que { -generator(form: "the") } peut fournir en continu ; nous avons supposé { $value }, trois quarts de sa pointe.
    .look = Cherchez les watts « nominaux », « running » ou « rated » sur la plaque : cela décide de presque tout ici.
assume-voltage = On ignore la tension { -generator(form: "of") } ; on a donc retenu { $value } : chaque prise de 120 V n’atteint alors que la moitié de la puissance.
    .look = Cherchez « 120 V » ou « 120/240 V » sur la plaque.
assume-inverter = On ignore si c’est { -generator(form: "a") } à onduleur ; on a donc retenu chaque fois le pire : le courant peut ne pas se couper de lui-même en cas de surcharge, et un court-circuit peut ne déclencher aucun disjoncteur.
    .look = Cherchez « inverter » (onduleur) dessus.
assume-peak = On ignore la puissance de pointe { -generator(form: "of") }. Pour ce qui démarre, on n’a pas retenu plus que la puissance nominale, { $value } ; pour ce qui peut brûler, davantage.
    .look = Cherchez « pointe », « peak », « starting » ou « max » dessus.
assume-no-gfci = On ignore si « { $part } » a une protection contre les chocs ; on n’en a donc compté aucune.
    .look = Cherchez des boutons marqués TEST et RESET.
assume-no-breaker = On ignore si « { $part } » a son propre disjoncteur ; on n’en a donc compté aucun.
    .look = Cherchez à côté un bouton ou un interrupteur marqué en ampères.
assume-breaker-unknown = On ignore le disjoncteur de « { $part } ». On n’a pas compté qu’il se déclenche à temps, ni pour plus d’ampères que la forme de la prise n’en permet.
    .look = Cherchez un bouton ou un interrupteur marqué en ampères.
assume-camper-main = On ignore le disjoncteur principal de « { $part } » ; on a donc supposé { $value }, ce pour quoi sa fiche est faite.
    .look = Regardez à l’intérieur, là où l’on manœuvre ses disjoncteurs : l’un porte « Main ». Lisez ses ampères. Ne dévissez rien.
assume-leg = On ignore sur quelle phase est « { $part } » ; on a donc retenu : { $value }, avec toutes les autres comme elle. C’est le moins de puissance qu’elles peuvent avoir ensemble.
    .look = Cherchez dans le manuel quelles prises partagent une phase.
assume-box-wire = On ignore le fil dans le coffret derrière « { $part } » ; on a donc retenu { $value }, le plus mince.
    .look = Lisez ses papiers, ou demandez à qui l’a fabriqué, ou à un { -electrician }. Ne l’ouvrez pas.
assume-cord-wire = On ignore le calibre de « { $part } » ; on a donc retenu { $value }, le plus mince.
    .look = Lisez ce qui est imprimé le long de la rallonge : « 12/3 », c’est 12 AWG et trois conducteurs.
assume-cord-conductors = On ignore combien de fils a « { $part } » ; on en a donc compté { $value } : pas de { -ground-wire }.
    .look = Lisez ce qui est imprimé le long de la rallonge : « 12/3 », c’est 12 AWG et trois conducteurs.
assume-cord-length = On ignore la longueur de « { $part } » ; on a donc retenu { $value } pour la tension, et rien pour la portée.
    .look = Mesurez-la au pas : comptez chaque pas pour { $step }.
assume-cord-coiled = On ignore si « { $part } » est à plat pendant l’usage ; on l’a donc supposé enroulé. Enroulé, cela ne supporte que le tiers.
    .look = Déroulez tout, et dites-le dans le plan.
assume-load-kind = On ignore ce que « { $part } » fait surtout ; on a donc retenu { $value } : il peut consommer autant qu’un chauffage et démarrer aussi fort qu’un moteur, et la santé de quelqu’un peut en dépendre.
    .look = Demandez à son propriétaire.
assume-load-plug = On ignore la fiche de « { $part } » ; on a donc retenu { $value }, la plus courante.
    .look = Regardez sa fiche.
assume-load-one-leg = On ignore comment « { $part } » se répartit entre les deux phases ; on a donc tout mis sur { $value }, n’importe laquelle.
    .look = Une plaque qui donne les ampères de chaque phase le dirait : écrivez-les comme current. Faites-y marcher moins de choses à la fois.
assume-load-voltage = Nous ignorons si « { $part } » n’utilise que 240 V ou aussi 120 V ; nous avons tout mis sur { $value }, n’importe laquelle.
    .look = Cherchez « 240 V » ou « 120/240 V » sur sa plaque. Faites-y marcher moins de choses à la fois.
assume-power-factor = On ignore le facteur de puissance de « { $part } » ; on a donc retenu { $value } pour son genre. Il y passe plus de courant que ses watts ne le montrent.
    .look = Cherchez les ampères (A) sur sa plaque.
assume-running = On ignore ce que « { $part } » consomme ; on a donc retenu { $value }, le plus pour son genre et sa fiche.
    .look = Cherchez W, ou A, sur son étiquette.
assume-starting = On ignore ce qu’il faut à « { $part } » pour démarrer ; on a donc retenu { $value } pour son genre. Tout ce qui a un moteur demande bien plus au démarrage qu’en marche.
    .look = Cherchez sur sa plaque ou dans son manuel les watts ou les ampères de démarrage.
assume-starting-code-v = La lettre de code V de « { $part } » n’a pas de limite haute ; on a donc retenu { $value } pour démarrer, le moins possible. Il en faut peut-être plus : regardez et écoutez au démarrage.
assume-continuous = On ignore combien de temps « { $part } » fonctionne ; on a donc supposé trois heures ou plus d’affilée. Cela abaisse ce qu’il peut consommer.
    .look = Estimez combien de temps il marche sans pause.
assume-all-day = On ignore quand « { $part } » fonctionne ; on a donc compté { $value } par jour.
    .look = Décidez quand il marche.
assume-parallel-limit = On ignore ce que laisse passer le kit entre les deux ; on a donc retenu { $value }, comme pour une seule machine.
    .look = Lisez les ampères sur le kit.
assume-rated-on = Au propane, on a environ un dixième de moins qu’à l’essence. On a donc retenu { $value }.
    .look = Si la plaque donne des watts au propane, mettez rated_on = "propane" dans le plan.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what }: { $ask }
look-generator = { -generator(form: "The") }
look-clears-dangers = { $dangers ->
        [one] Cela peut écarter un danger.
       *[other] Cela peut écarter { $dangers } dangers.
    }
look-clears-warnings = { $warnings ->
        [one] Cela peut écarter un avertissement.
       *[other] Cela peut écarter { $warnings } avertissements.
    }

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Achetez-en un avec tout ceci sur l’emballage : { $list }.
buy-plug = fiche { $value }
buy-inlet = entrée { $value }
buy-ends = bout { $value }
buy-outlet = prises { $value }
buy-outdoor = « outdoor » (extérieur) ou un W dans ses lettres
buy-wire = { $value }, ou un numéro AWG plus petit
buy-conductors = { $value } fils
buy-length = { $value } ou moins
buy-listed = la marque d’un laboratoire d’essais
buy-gfci = boutons TEST et RESET (GFCI)
buy-rated = { $value } ou plus de puissance nominale
buy-peak = { $value } ou plus de puissance de pointe
buy-inverter = « inverter » (onduleur)
buy-co_alarm = avertisseur de monoxyde de carbone à piles avec la marque d’un laboratoire, un par tente ou véhicule
