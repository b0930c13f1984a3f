# What was taken for an answer nobody gave. Each message says what is not known, what was taken,
# and how to find the real answer. { $part } is the part or load it is about; { $field } is the
# line of the plan file, for those who edit it by hand.

assumed-yes = oui
assumed-no = non
assumed-none = aucun
assumed-leg-both = les deux moitiés
assumed-worst-kind = le pire de chaque genre
assumed-one-leg = une seule moitié

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } De même pour { $parts }.

assume-altitude = Nous ignorons l’altitude ici et avons donc supposé { $value }. L’air raréfié fait perdre de la puissance.
    .look = Cherchez l’altitude sur une carte ou un téléphone.
assume-air = Nous ignorons quelle chaleur il fera et avons donc supposé { $value }. L’air chaud fait perdre de la puissance.
    .look = Cherchez dans les prévisions la plus haute température de votre séjour.
assume-rated = Nous ignorons ce que { -generator(form: "the") } peut fournir et avons donc supposé { $value }, comme un tout petit modèle. Presque tout ici dépend de ce nombre.
    .look = Cherchez les watts « nominaux », « running » ou « rated » sur la plaque.
assume-rated-of-peak = Nous ignorons ce que { -generator(form: "the") } peut fournir et avons donc supposé { $value }, trois quarts de sa pointe. Presque tout ici dépend de ce nombre.
    .look = Cherchez les watts « nominaux », « running » ou « rated » sur la plaque.
assume-voltage = Nous ignorons quelle tension donne { -generator(form: "the") } et avons donc supposé { $value }. Chaque prise de 120 V ne peut alors utiliser que la moitié de la puissance.
    .look = Cherchez « 120 V » ou « 120/240 V » sur la plaque.
assume-inverter = Nous ignorons si c’est { -generator(form: "a") } à onduleur et avons donc supposé chaque fois le pire. Le moteur peut ne pas s’arrêter de lui-même en surcharge, et un court-circuit (des fils nus qui se touchent) peut ne déclencher aucun disjoncteur.
    .look = Cherchez « inverter » (onduleur) dessus.
assume-peak = Nous ignorons la puissance de pointe { -generator(form: "of") }. Pour les démarrages, nous n’avons supposé que la puissance nominale, { $value }. Pour juger si des pièces surchauffent, nous avons supposé plus.
    .look = Cherchez « pointe », « peak », « starting » ou « max » dessus.
assume-no-gfci = Nous ignorons si « { $part } » a un { -gfci } et avons donc supposé que non.
    .look = Cherchez des boutons marqués TEST et RESET.
assume-no-breaker = Nous ignorons si « { $part } » a son propre disjoncteur et avons donc supposé que non.
    .look = Cherchez à côté un bouton ou un interrupteur marqué en ampères.
assume-breaker-unknown = Nous ignorons la taille du disjoncteur de « { $part } ». Nous avons donc supposé qu’il ne se déclenche pas à temps, et que la prise ne donne que les ampères de sa forme.
    .look = Cherchez un bouton ou un interrupteur marqué en ampères.
assume-camper-main = Nous ignorons le disjoncteur principal de « { $part } » et avons donc supposé { $value }, ce pour quoi sa fiche est faite.
    .look = Regardez à l’intérieur, là où l’on manœuvre ses disjoncteurs : l’un porte « Main ». Lisez ses ampères. Ne dévissez rien.
assume-leg = Nous ignorons quelle moitié alimente « { $part } » et avons donc compté dans { $value } ce qui y est branché. C’est le moins de puissance possible.
    .look = Cherchez dans le manuel quelles prises partagent une moitié (phase).
assume-box-wire = Nous ignorons la grosseur du fil vers « { $part } » dans son coffret et avons donc supposé { $value }, le plus mince.
    .look = Lisez ses papiers, ou demandez à qui l’a fabriqué, ou à un { -electrician }. Ne l’ouvrez pas.
assume-cord-wire = Nous ignorons le calibre de « { $part } » et avons donc supposé { $value }, le plus mince.
    .look = Lisez ce qui est imprimé le long de la rallonge : « 12/3 », c’est le calibre 12 AWG, et trois conducteurs.
assume-cord-conductors = Nous ignorons combien de fils a « { $part } » et avons donc supposé { $value } : pas de { -ground-wire }.
    .look = Lisez ce qui est imprimé le long de la rallonge : « 12/3 », c’est le calibre 12 AWG, et trois conducteurs.
assume-cord-length = Nous ignorons la longueur de « { $part } ». Pour les volts perdus, nous avons supposé { $value }. Pour juger si elle va assez loin, nous avons supposé que non.
    .look = Mesurez-la au pas : comptez chaque pas pour { $step }.
assume-cord-coiled = Nous ignorons si « { $part } » est toute déroulée pendant l’usage et avons donc supposé que non. Enroulée, une rallonge ne supporte que le tiers.
    .look = Déroulez tout, puis changez votre réponse.
assume-load-kind = Nous ignorons ce que « { $part } » fait surtout et avons donc supposé { $value }. Il peut consommer autant qu’un chauffage et démarrer comme un moteur, et la santé de quelqu’un peut en dépendre.
    .look = Demandez à son propriétaire.
assume-load-plug = Nous ignorons la fiche de « { $part } » et avons donc supposé { $value }, la plus courante.
    .look = Regardez sa fiche.
assume-load-one-leg = Nous ignorons ce que « { $part } » prend sur chaque moitié (phase) et avons donc tout mis sur { $value }.
    .look = Si sa plaque donne les ampères de chaque moitié, mettez-les dans le plan (current). D’ici là, faites-y marcher moins de choses à la fois.
assume-load-voltage = Nous ignorons si « { $part } » n’utilise que 240 V ou aussi 120 V et avons donc tout mis sur { $value }.
    .look = Cherchez « 120 V », « 240 V » ou « 120/240 V » sur sa plaque. D’ici là, faites-y marcher moins de choses à la fois.
assume-load-amps-voltage = Nous ignorons si « { $part } » utilise 120 V ou 240 V et avons donc compté ses ampères sur { $value }.
    .look = Cherchez « 120 V », « 240 V » ou « 120/240 V » sur sa plaque.
assume-power-factor = Nous ignorons le facteur de puissance de « { $part } » et avons donc supposé { $value } pour son genre. Il y passe plus de courant que ses watts ne le montrent.
    .look = Cherchez les ampères (A) sur sa plaque.
assume-running = Nous ignorons ce que « { $part } » consomme et avons donc supposé { $value }, le plus pour son genre et sa fiche.
    .look = Cherchez W ou A sur sa plaque.
assume-starting = Nous ignorons ce qu’il faut à « { $part } » pour démarrer et avons donc supposé { $value } pour son genre. Tout ce qui a un moteur demande bien plus au démarrage qu’en marche.
    .look = Cherchez sur sa plaque ou dans son manuel les watts ou les ampères de démarrage.
assume-starting-code-v = La lettre de code V de « { $part } » n’a pas de limite haute : nous avons donc supposé { $value } pour démarrer, le minimum. Il en faut peut-être plus : regardez et écoutez au démarrage.
assume-continuous = Nous ignorons combien de temps « { $part } » fonctionne et avons donc supposé trois heures ou plus d’affilée. Pendant si longtemps, sa prise peut donner moins.
    .look = Estimez combien de temps il marche sans pause.
assume-all-day = Nous ignorons quand « { $part } » fonctionne et avons donc supposé { $value } par jour.
    .look = Décidez quand il marche.
assume-parallel-limit = Nous ignorons ce que supporte le kit entre les { -generator(form: "many") } et avons donc supposé { $value }, ce que donne un seul modèle.
    .look = Lisez les ampères sur le kit.
assume-rated-on = Au propane, { -generator(form: "a") } donne environ un dixième de moins qu’à l’essence : nous avons donc supposé { $value }.
    .look = Si la plaque donne des watts au propane, mettez rated_on = "propane" dans le plan.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what } : { $ask }
look-generator = { -generator(form: "The") }
# Ce qui disparaît après un coup d’œil : $found est fait des propositions look-if-…, $gone est un des look-gone-….
look-then = Si { $found }, { $gone }.
look-then-cord = Si { $found }, « { $part } » supporte { $amps } et { $gone }.
look-then-cord-only = Si { $found }, « { $part } » supporte { $amps }.
look-gone-dangers = { $count ->
        [one] ce danger disparaît : { $titles }
       *[other] ces dangers disparaissent : { $titles }
    }
look-gone-warnings = { $count ->
        [one] cet avertissement disparaît : { $titles }
       *[other] ces avertissements disparaissent : { $titles }
    }
look-gone-cautions = ceci disparaît : { $titles }
look-only = { $count ->
        [one] ceci passe à { $signal } : { $titles }
       *[other] ceux-ci passent à { $signal } : { $titles }
    }
look-if-gfci = TEST et RESET y sont
look-if-listed = la marque d’un laboratoire d’essai y est
look-if-print = on y lit { $prints }
look-if-conductors = on y compte { $value } fils
look-if-outdoor = « W » ou « outdoor » y est
look-if-breaker = on y lit { $value } ou moins
look-if-altitude = l’altitude est de { $value } ou moins
look-if-sleepers_at = la distance est de { $value } ou plus
look-if-length = sa longueur est de { $value } ou moins
look-if-coiled = tout est déroulé
look-if-stands = l’endroit est en plein air ou sous un toit haut
look-if-co_alarm = chaque endroit en a un qui sonne
look-if-well = tout va bien
look-clears-dangers = { $dangers ->
        [one] Si tout va bien, un danger disparaît.
       *[other] Si tout va bien, { $dangers } dangers disparaissent.
    }
look-clears-warnings = { $warnings ->
        [one] Si tout va bien, un avertissement disparaît.
       *[other] Si tout va bien, { $warnings } avertissements disparaissent.
    }

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Achetez-en un avec tout ceci sur l’emballage : { $list }.
buy-another = Ne l’achetez pas tel que dans le plan : ainsi, c’est un danger ici.
buy-plug = fiche { $value }
buy-inlet = entrée { $value } (où le courant arrive)
buy-ends = bout { $value }
buy-outlet = prises { $value }
buy-outdoor = « outdoor » (extérieur) ou un W dans ses lettres
buy-wire = calibre { $value }, ou un numéro AWG plus petit (fil plus gros)
buy-conductors = { $value } fils
buy-length = { $value } ou moins
buy-reach = { $value } ou plus, pour qu’elle aille assez loin
buy-long = { $value } de long
buy-listed = la marque d’un laboratoire d’essai
buy-gfci = boutons TEST et RESET ({ -gfci })
buy-rated = { $value } ou plus de puissance nominale
buy-peak = { $value } ou plus de puissance de pointe
buy-voltage = { $value }
buy-inverter = « inverter » (onduleur)
buy-co_alarm = { -alarm } de monoxyde de carbone à piles avec la marque d’un laboratoire, un par tente ou { -camper }
