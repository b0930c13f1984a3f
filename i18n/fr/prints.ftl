# Everything on paper: labels, card, cautions and worksheet.

## Errors of printing

print-error-words-incomplete = Il manque des textes, donc rien n’a été imprimé : { $faults }
print-error-no-glyph = « { $text } » ne peut pas être imprimé : il n’y a pas de lettre pour { $characters }. Écrivez-le avec d’autres lettres.
print-error-too-long = { $percent ->
    [0] { $document } : il n’y a pas de place pour « { $text } ». Trop de pièces sont branchées l’une sur l’autre.
   *[other] { $document } : « { $text } » est trop long pour être imprimé assez gros. Raccourcissez-le à environ { $percent } % de sa longueur.
  }
print-error-off-page = { $document }, page { $page } : « { $text } » déborderait du papier. Rien n’a été imprimé.
print-error-too-small = { $document }, page { $page } : « { $text } » serait trop petit pour être lu, à { $percent } % de la hauteur qu’il faut. Rien n’a été imprimé. Agrandissez-le dans votre modèle, ou enlevez-le.
print-error-unknown-stock = Il n’y a pas de planche d’étiquettes nommée « { $name } ». Il y a { $known }.
print-error-bad-stock = La planche d’étiquettes « { $name } » est inutilisable : { $message }
print-error-bad-start = La planche a { $count } étiquettes, donc l’impression ne peut pas commencer à { $start }.
print-error-template = Le modèle { $file } a échoué à la ligne { $line }, colonne { $column } : { $message }

## Shared

print-several = { $name } × { $count }
print-generator = { -generator(form: "One") }
print-cord = Rallonge
print-adapter = Adaptateur
print-box = Coffret
print-camper = { -camper(form: "One") }
print-for-hours = 3 heures ou plus
print-for-short = moins de 3 heures
print-for-any = sans limite de durée
print-brief-hours = 3 h ou plus
print-brief-short = moins de 3 h
# An old print is told from a new one by it: $code is five digits.
print-code = code { $code }
print-for-seconds = quelques secondes
print-all-for-hours = en tout, 3 heures ou plus
print-all-for-any = en tout, sans limite de durée
print-all-running = en tout, en continu

## What sets a limit. $id is the part.

print-set-by-rated-power = Limite { -generator(form: "of") }. Au-delà : coupure ou calage.
print-set-by-rated-power-unguarded = Limite { -generator(form: "of") }. Au-delà, peut-être aucune coupure : surchauffe possible.
print-set-by-one-leg = Limite d’une moitié { -generator(form: "of") }. Au-delà, peut-être aucune coupure : surchauffe possible.
print-set-by-breaker = Limite du disjoncteur « { $id } », qui se déclenche au-delà.
print-set-by-trips-early = Le disjoncteur « { $id } » s’est déclenché juste au-dessus. N’allez pas plus haut.
print-set-by-receptacle = La prise « { $id } » fixe cette limite.
print-set-by-plug = Sa fiche fixe cette limite : { $id }.
print-set-by-cord-ampacity = Le fil de la rallonge « { $id } » fixe cette limite.
print-set-by-cord-mark = Marquage usuel pour « { $id } ». Lisez le sien ; le plus petit compte.
print-set-by-coiled-cord = Rallonge « { $id } » enroulée : elle supporte moins. Déroulez-la toute.
print-set-by-coiled-cord-guessed = Nous ignorons si « { $id } » est enroulée et avons supposé que oui. Déroulez-la toute.
print-set-by-hot-cord = Rallonge « { $id } » : un air si chaud réduit sa limite. Posez-la à l’ombre.
print-set-by-hot-cord-guessed = Nous ignorons la chaleur et avons supposé { $air } à « { $id } ». Posez-la à l’ombre.
print-set-by-wiring = Son câblage fixe cette limite : { $id }.
print-set-by-not-fed = Mauvaise tension pour sa forme. Traitez-la comme sous tension.
print-set-by-share-breaker = Au-delà de 80 %, le disjoncteur de « { $id } » peut couper.
print-set-by-share-trips-early = 80 % d’un peu moins que ce qui a déclenché le disjoncteur « { $id } ».
print-set-by-share-receptacle = 80 % de ce que « { $id } » supporte.
print-set-by-share-wiring = 80 % de ce que supporte le câblage de « { $id } ».
print-set-by-two = 3 heures ou plus : { $hours } Moins : { $past }
print-set-by-parallel-kit = Limite du kit de mise en parallèle. Il peut ne pas se déclencher au-delà.

## Labels

print-labels-title = Étiquettes : { $site }
print-face-alt = Face d’une prise { $shape }
print-nothing-trips = Additionnez tous les ampères ici. Au-delà de { $limit }, surchauffe possible : aucun disjoncteur ne coupe.
print-nothing-below = Additionnez tous les ampères ici. Au-delà de { $limit }, surchauffe possible : le disjoncteur ne coupe qu’à { $amps }.
print-nothing-below-set = Additionnez tous les ampères ici. Au-delà de { $limit }, surchauffe possible : { -generator(form: "the") } ne coupe qu’au-dessus de { $amps }.
print-shock-yes = GFCI : OUI. Appuyez sur TEST avant l’usage.
print-shock-yes-at = GFCI : OUI. Appuyez sur TEST de « { $at } » avant l’usage.
print-shock-no = GFCI : NON. Rien ici ne coupe en cas de choc.
print-shock-unknown = GFCI : INCONNU. Nous avons supposé NON. Cherchez TEST et RESET.
# Inside a camper, which has its own.
print-shock-camper = GFCI : aucun en amont. Appuyez sur TEST de celui de la { -camper } avant l’usage.
print-short-add-up = Additionnez les ampères
print-short-gfci = GFCI : OUI. Testez d’abord.
# Where there is least room.
print-tiny-gfci = GFCI : OUI
print-tiny-no-gfci = GFCI : NON
print-tiny-gfci-unknown = GFCI : INCONNU
print-plug-in = À brancher ici
print-plugs-more = { $loads } + { $count } de plus
# Nothing forbids to use it, but no GFCI works there: nobody is invited to.
print-idle = RIEN DE PRÉVU ICI
print-idle-how = Avant de brancher quoi que ce soit ici, ajoutez-le au plan et vérifiez de nouveau.
# The plan has something here that is too much, or must not be used.
print-leave-empty = LAISSER VIDE
print-leave-empty-how = Ne branchez rien ici. Ce que le plan prévoit ici est de trop ou ne doit pas servir.
print-comes-from = Vient de
print-leg = phase { $leg }
print-leg-unknown = phase inconnue
print-leg-unknown-brief = phase ?
# Where both feed it; and the same on a label with little room.
print-leg-both = phases A et B
print-leg-both-brief = A et B
# After the amps of a leg, in front of how long they hold.
print-on-both = sur A et { $amps } sur B, { $how_long }
# In a table of outlets.
print-amps-both-brief = A : { $amps }, B : { $amps }
print-legs = Phases
print-legs-value = A et B : les deux moitiés de sa puissance.
print-not-all-at-once = pas tout à la fois : { $loads }
print-not-together = { $loads } ; pas ensemble : { $sets }
print-one-at-a-time = un à la fois : { $loads }
print-only-these = SEULEMENT { $parts } ici. Aucun appareil.
print-short-only = AUCUN APPAREIL ICI
print-short-only-camper = DISJONCTEUR PRINCIPAL : { $amps }
print-short-only-generator = PAS SUR UNE AUTRE SOURCE
only-if-camper = SEULEMENT pour une { -camper } dont le disjoncteur principal porte { $amps } ou moins.
only-if-generator = SEULEMENT avec { -generator(form: "this") } : une autre source peut surcharger ceci.
print-bonding-plug = fiche de liaison
print-bonding-plug-stays = La fiche de liaison reste. { $title }
# With what plugged in: a box, or a bonding plug in an outlet.
print-shock-blind = GFCI : NON. Avec « { $joint } » branché, il ne coupe aucun choc.
print-shock-blind-plug = GFCI : NON. Avec la fiche de liaison dans « { $joint } », il ne coupe aucun choc.
print-shock-doubtful = GFCI : NON. Avec « { $joint } » branché, il peut ne pas couper un choc.
print-shock-doubtful-plug = GFCI : NON. Avec une fiche de liaison dans « { $joint } », il peut ne pas couper un choc.
print-do-not-use = NE PAS UTILISER
print-apart = NE PAS COUPLER EN PARALLÈLE
print-apart-brief = NE PAS COUPLER
print-guarded = RALLONGE GFCI SEULEMENT
print-guarded-brief = GFCI SEULEMENT
# The GFCI cord goes in nearer the generator, ahead of this.
print-guarded-ahead = RALLONGE GFCI EN AMONT
print-guarded-ahead-brief = GFCI EN AMONT
# On a cord, of whatever is plugged in at its far end: one outlet or several.
print-guarded-cord = AU BOUT : RALLONGE GFCI SEULE
print-guarded-cord-do = Dans chaque prise de cette rallonge, branchez seulement une rallonge GFCI (boutons TEST et RESET). Aucun appareil. Branchez les appareils sur cette rallonge GFCI.
# With that cord plugged in.
print-guarded-most = puis { $amps } au plus
print-guarded-do = { $fix } Puis { $amps } au plus.
print-behind = Alimenté par « { $id } », à ne pas utiliser.
print-dead-end = Rien de ce qui y est branché ne doit servir.
print-refused-alt = Signe d’interdiction : ne pas utiliser { $id }
# Of a cord or box that must not be used: its outlets.
print-refused-ends = Avec { $ends }
print-do = À faire
print-fold = Pliez ici autour de la rallonge
print-flag-alt = La même chose, pour l’autre côté de la rallonge
print-scale-bar = Cette barre doit mesurer { $measure ->
        [metric] 50 mm
       *[customary] 1,97 pouce
    }. Sinon, réimprimez à 100 %.
print-shared-sockets = { $count ->
    [2] Les deux prises se partagent cette limite.
   *[other] Les { $count } prises se partagent cette limite.
  }
# Where nobody said how many plugs the outlet takes.
print-shared-plugs = Tout ce qui s’y branche se partage cette limite.
print-shared-outlets = Limite partagée avec { $others }.
print-shared-ends = Les { $count } sorties de « { $owner } » ensemble : { $amps }. Pas chacune.
print-shared-box = Tout « { $owner } » ensemble : { $amps }.
print-short-shared = « { $at } » : { $amps } total
print-short-shared-here = Pour toutes les fiches, au total
print-plug-into = Branchez à
print-plug-into-shared = « { $at } », { $amps } en tout avec { $others }
print-plug-into-nothing = rien dans ce plan
print-feeds = Alimente
# What runs in a camper.
print-inside = Dedans
print-cord-facts = { $wire } · { $length }
print-wire-unknown = calibre inconnu
print-length-unknown = longueur inconnue
print-cord-unknown = calibre, longueur inconnus
print-box-headline = Entrée { $inlet }
print-camper-headline = Fiche { $inlet }
print-generator-headline = { $rated } en continu · { $peak } quelques secondes
print-generator-headline-one = { $rated } en continu
print-neutral = Neutre
print-neutral-bonded = Relié au châssis (bonded).
print-neutral-floating = Flottant (relié à rien). Un testeur de prise peut afficher OPEN GROUND ici.
print-neutral-plug = Flottant, relié à la terre par une fiche de liaison.
print-neutral-plug-unknown = Flottant, sauf si une fiche de liaison est dans une prise. Cherchez-la.
print-neutral-unknown = Inconnu. Cherchez « floating » ou « bonded neutral » dans la notice.
print-reachable = Par les prises utilisées
print-reachable-value = { $reachable } sur { $rated }
print-rated-guessed = Sa puissance
print-rated-guessed-value = Inconnue. Nous avons supposé { $taken }. Lisez la plaque.
print-rated-guessed-less = Inconnue. Nous avons supposé { $taken } : il reste { $left } à cette altitude et cette chaleur. Lisez la plaque.
print-tank = Un plein dure
print-tank-value = environ { $hours }
print-tank-value-with = environ { $hours } avec { $with } en marche
print-refuel = Plein
print-refuel-value = Arrêtez le moteur, laissez refroidir { $cooling } minutes. Jamais de plein moteur en marche.
print-air = Échappement
print-air-value = Les gaz tuent, sans odeur. Dehors seulement, échappement à l’opposé, à au moins { $ample } des tentes, véhicules, portes, fenêtres et gens.

print-air-brief = Gaz mortels : { $ample } au moins.
print-symbol-general = Signe d’avertissement
print-symbol-electric = Signe d’avertissement : électricité
print-symbol-hot = Signe d’avertissement : chaleur
print-symbol-toxic = Signe d’avertissement : poison
print-symbol-fire = Signe d’avertissement : feu

## Alignment page

print-alignment-title = Où tombent les étiquettes
print-alignment-head = Où tombent les étiquettes
print-alignment-1 = Imprimez ceci à 100 % sur du papier ordinaire. Tenez la feuille à contre-jour avec une planche d’étiquettes.
print-alignment-2 = Si les cadres sont trop à gauche ou trop haut, lisez de combien sur les règles, et réimprimez avec --offset { $measure ->
        [metric] "1 mm, 0.5 mm"
       *[customary] "0.04 in, 0.02 in"
    } : d’abord vers la droite, puis vers le bas.
print-alignment-3 = S’ils sont trop à droite ou trop bas, écrivez un signe moins devant ce nombre.

## Card

print-card-title = Carte : { $site }
print-card-one = Face 1 : brancher
print-card-two = Face 2 : quand quelque chose tourne mal
print-card-alarm = { -alarm(form: "One") } de CO là où l’on dort.
print-card-now = Alarme de CO, vertige, mal de tête ? Tous dehors. Appelez le { $call }.
print-card-turn = Tournez.
print-card-see = Voyez la face 2.
print-card-on = Suite de la face 1
print-card-call = Appelez le { $call }
# To be filled in by hand.
print-card-site = Emplacement
print-card-ranger = Garde
print-card-hospital = Hôpital
print-card-flip = Imprimez recto verso, en retournant sur le bord long.
print-card-fold = Imprimez d’un seul côté. Pliez au milieu, impression dehors.
print-card-trim = Coupez le long des coins. La pochette colle sur { $measure ->
        [metric] 3 mm
       *[customary] 1/8 in
    } tout autour.
print-card-danger = { $count ->
    [one] 1 danger dans ce plan. Éliminez-le avant de démarrer { -generator(form: "the") } : voyez les précautions.
   *[other] { $count } dangers dans ce plan. Éliminez-les avant de démarrer { -generator(form: "the") } : voyez les précautions.
  }
print-no-breaker = Additionnez : au-delà de { $limit }, rien ne coupe à temps
# On a small card.
print-no-breaker-brief = Additionnez : rien ne coupe
print-row-gfci = GFCI
print-loose = Non branché :
print-unplaced = NE BRANCHEZ PAS : { $loads }. Aucune prise de ce plan ne convient.
print-too-large = NE BRANCHEZ PAS : { $loads }. C’est trop pour sa prise ou pour { -generator(form: "the") }.
print-felt-hot = NE BRANCHEZ PAS : { $loads }. L’appareil ou sa prise a chauffé ou donné un choc.
print-none-free = NE BRANCHEZ PAS : { $loads }. Aucune prise libre et permise ne convient.
# Every outlet left is one that must not be used.
print-refused = NE BRANCHEZ PAS : { $loads }. Aucune prise libre et utilisable ne convient.
print-misplaced = NE BRANCHEZ PAS CECI là où le plan le met : { $loads }. Une autre prise convient à chacun.
# Of what someone’s health depends on.
print-life-battery = { $life } : gardez prête une batterie prévue pour cela et qui dure toute la nuit.
print-unplaced-life = Faites marcher { $life } uniquement sur une batterie prévue pour cela et qui dure toute la nuit.
print-unplaced-life-maybe = Si la santé de quelqu’un dépend de { $life } : à faire marcher uniquement sur une batterie prévue pour cela et qui dure toute la nuit.
print-together-title = Ensemble
print-together-title-danger = Ensemble, quand il ne reste aucun danger
print-together-one = Tout ceci peut marcher en même temps, et rien d’autre : { $loads }.
print-together-how = Tout ce qui a un point peut marcher en même temps, et rien d’autre.
print-together-pick = Choisissez une colonne.
print-together-number = Un nombre : autant de ceux-là, n’importe lesquels.
print-together-dot = peut marcher
print-more = Ou un autre groupe : { $count } de plus dans la note de calcul.
print-more-left-out = D’autres groupes sont possibles. Pour en essayer un : tallywatt may.
print-together-elsewhere = Ce qui peut marcher ensemble : voyez la note de calcul.
print-never-more = … et { $count } de plus à ne jamais réunir, dans la note de calcul.
print-never-unlisted = Nous n’avons pas calculé tous les mélanges. Pour en essayer un : tallywatt may.
# A group of the worksheet, and when the plan needs it.
print-choice = { $number } ({ $times })
print-when-breakfast = matin
print-when-midday = midi
print-when-afternoon = après-midi
print-when-evening = soir
print-when-night = nuit
print-never-title = Jamais ensemble
print-never-how = Chaque ▸ commence un groupe. Jamais tout un groupe en marche à la fois.
# What a meter reads at a box or receptacle, at least.
print-start-meter = { $on ->
    [all] Tout en marche
   *[column] Toute la colonne 1 en marche
  }, un voltmètre dans toute prise de « { $at } » doit montrer { $volts } ou plus, si la prise { -generator(form: "of") } montre { $nominal }. Bien moins : arrêtez un appareil.
print-start-meter-outlet = { $on ->
    [all] Tout en marche
   *[column] Toute la colonne 1 en marche
  }, un voltmètre en « { $at } » doit montrer { $volts } ou plus, si la prise { -generator(form: "of") } montre { $nominal }. Bien moins : arrêtez un appareil.
print-setup-title = Mise en place
print-setup-alarm = Mettez un { -alarm } de monoxyde de carbone qui marche là où l’on dort.
print-setup-alarm-test = Appuyez sur le bouton d’essai de chaque { -alarm } de monoxyde de carbone, là où l’on dort : il doit sonner.
print-setup-place = Placez { -generator(form: "the") } dehors, à au moins { $ample } des tentes, véhicules, portes, fenêtres et gens. Dirigez l’échappement à l’opposé.
print-setup-clear = Sol sec et plat, { $clear } libres de tous côtés. Rien au-dessus sauf un toit haut, ouvert de tous côtés.
print-setup-look = Regardez chaque rallonge et chaque fiche. N’utilisez ni rallonge coupée ou roussie, ni fiche lâche ou dont la broche de terre est arrachée.
print-setup-uncoil = Déroulez toutes les rallonges. Pas de fiche dans l’herbe mouillée.
print-setup-plug = Laissez les appareils débranchés. Branchez rallonges et coffrets à partir { -generator(form: "of") }, seulement comme sur la face 1.
print-setup-plug-skip = Laissez ce qui porte { print-do-not-use }.
print-setup-plug-guarded = Où il est écrit { print-guarded }, branchez d’abord une rallonge GFCI.
print-setup-plug-ahead = { print-guarded-ahead } : branchez une rallonge GFCI entre ceci et { -generator(form: "the") }.
print-setup-start = Démarrez le moteur. Laissez tourner deux minutes.
print-setup-test = Faites tout ce que dit « Essai », chaque fois.
print-setup-load = Branchez alors les appareils, à l’arrêt, seulement comme sur la face 1. Mettez-les en marche un à un.
print-test-title = Essai
print-test-button = À chaque GFCI (TEST et RESET), branchez une lampe. Appuyez sur TEST : déclic, et elle s’éteint. Sinon, n’utilisez pas cette prise.
print-test-reset = Appuyez sur RESET. La lampe doit se rallumer.
print-test-none = Nous ne connaissons aucune prise ici avec un GFCI qui marche. Sur sol mouillé, n’utilisez qu’une rallonge GFCI certifiée par un laboratoire.
print-stop-title = Arrêt et plein
print-stop-life = Mettez d’abord { $life } sur batterie. Sans batterie qui marche, réveillez la personne.
print-stopped-life = Que quelqu’un mette { $life } sur batterie.
print-stop-1 = Arrêtez les appareils, le plus gros d’abord. Puis le moteur.
print-stop-2 = Laissez-le refroidir { $cooling } minutes. Puis faites le plein, loin des flammes et des gens.
print-stop-3 = Si du carburant coule, éloignez-vous. Démarrez seulement une fois les vapeurs dissipées. Carburant dehors, loin des tentes.
print-stop-2-propane = Laissez-le refroidir { $cooling } minutes. Fermez le robinet. Puis changez la bouteille, loin des flammes et des gens.
print-stop-3-propane = Odeur de gaz : fermez le robinet, éloignez-vous, et laissez-le se dissiper. Bouteilles debout, dehors, loin des tentes.
print-plot-title = Plus loin
print-plot-how = Si la rallonge « { $cord } » était plus longue que { $length }, et { -generator(form: "the") } plus loin d’autant. Le point, c’est ce plan.
print-plot-how-volts = Si la rallonge « { $cord } » était plus longue que { $length }. Le point, c’est ce plan.
print-plot-volts = Volts restants : { $load }
print-plot-noise = Bruit là où l’on dort, à la minute la plus chargée
print-plot-lost = { $percent } perdus
print-plot-along = Longueur de la rallonge « { $cord } »
print-plot-alt = Courbes. Le point, c’est ce plan : avec la rallonge « { $cord } » de { $length }, il reste { $volts } pour { $load }.
print-plot-alt-noise = Là où l’on dort, le bruit est de { $noise }.
print-defer = { -local-codes(form: "One") } et un { -electrician } ont le dernier mot. N’ouvrez et ne recâblez rien, ne reliez pas neutre et terre.

## Safety. What to do when something goes wrong: the same on the card and the cautions. $call is the emergency number.

print-emergency-title = Quand quelque chose tourne mal
print-emergency-fire = Feu
print-emergency-fire-away = Éloignez et réveillez tout le monde. Appelez le { $call }.
print-emergency-fire-engine = Arrêtez le moteur seulement si le chemin est libre.
print-emergency-fire-water = Pas d’eau sur du carburant en feu, ni sur ce qui peut être sous tension.
print-emergency-fire-extinguisher = Petit feu seulement, et la sortie dans le dos : extincteur ABC. S’il grandit, partez.
print-emergency-fire-clothes = Habits en feu : arrêtez-vous, jetez-vous à terre, roulez.
print-emergency-burns = Brûlures : sous l’eau courante fraîche pendant { $burn } minutes.
print-emergency-alarm = Alarme de CO, ou vertige, nausée, faiblesse, mal de tête
print-emergency-alarm-out = Même si une seule personne se sent mal : tous à l’air libre, tout de suite. Réveillez tout le monde. Comptez.
print-emergency-alarm-call = Appelez le { $call }. Dites : monoxyde de carbone.
print-emergency-alarm-sleeper = Si quelqu’un ne se réveille pas : de dehors, ouvrez en grand portes, fenêtres et tentes. N’entrez pas : le gaz peut vous terrasser aussi. Attendez les pompiers.
print-emergency-alarm-cpr = À l’air libre seulement : si quelqu’un ne respire pas, ou par à-coups, massage cardiaque. Appuyez fort et vite au milieu de la poitrine. Faites apporter un défibrillateur.
print-emergency-cpr = Si la personne ne respire pas, ou par à-coups : massage cardiaque. Appuyez fort et vite au milieu de la poitrine. Faites apporter un défibrillateur.
print-emergency-alarm-engine = Arrêtez le moteur seulement si vous le pouvez sans respirer ses gaz.
print-emergency-alarm-back = Personne n’y retourne avant que les pompiers le disent, même si chacun se sent mieux.
print-emergency-shock = Quelqu’un reçoit un choc
print-emergency-shock-off = Ne touchez pas encore la personne. Arrêtez le moteur. Puis débranchez la rallonge { -generator(form: "to") }.
print-emergency-shock-touch = Appelez le { $call }. Ne touchez la personne que moteur arrêté et rallonge débranchée.
print-emergency-shock-doctor = Après tout choc, même petit, voyez un médecin.
print-emergency-breaker = Disjoncteur déclenché
print-emergency-breaker-stop = Arrêtez le moteur. Ne tâtez rien tant qu’il tourne.
print-emergency-breaker-feel = Tâtez rallonge et fiches. Si c’est chaud, mou ou sent le brûlé, ne vous en servez plus.
print-emergency-breaker-once = Éteignez tout ce qui y est branché. Redémarrez le moteur. Réenclenchez le disjoncteur, une seule fois. Puis faites marcher moins d’appareils.
print-emergency-breaker-off = S’il se déclenche encore, laissez-le coupé et n’y utilisez rien.

## Cautions

## Safety. The sheet of what to go and look at.

print-look-title = À vérifier : { $site }
print-look-how = Prenez cette feuille et une lampe, moteur arrêté. Regardez seulement de l’extérieur et n’ouvrez rien. Cochez ou notez ce que vous voyez. Laissez vide ce qui ne se voit pas. Ne devinez pas. Ce qu’une ligne lève compte sur celles du dessus.
print-look-light = Si c’est peu lisible, éclairez de côté, tournez la pièce et agrandissez une photo.
print-look-count = Quand plusieurs prises sont pareilles, les numéros de leurs noms comptent depuis la gauche, rangée par rangée depuis le haut.
# What is asked of one outlet: $about names it.
print-look-of = { $about } : { $question }
print-look-none = Il n’y a rien à vérifier : le plan dit tout ce qui compte.
print-look-buy = À acheter : regardez sur l’emballage
print-look-first = Vérifiez d’abord ceci. Ne devinez pas.
print-look-after = Changez ensuite vos réponses : lancez « tallywatt ask » sur ce plan, choisissez « Vérifier ce que nous ignorons », et imprimez de nouveau.
# $lines: the numbers of lines on that sheet.
print-look-see = Voyez la feuille de vérification, { $count ->
        [one] ligne { $lines }.
       *[other] lignes { $lines }.
    }
print-next-title = Que faire maintenant

print-cautions-title = Précautions : { $site }
print-cautions-summary = { $danger ->
    [0] Aucun danger trouvé
    [one] 1 danger
   *[other] { $danger } dangers
  }, { $warning ->
    [0] aucun avertissement
    [one] 1 avertissement
   *[other] { $warning } avertissements
  }, { $rest ->
    [0] rien de plus
    [one] { $rest } autre point
   *[other] { $rest } autres points
  }.
print-cautions-rules = { $count ->
    [one] Règle : { $codes }
   *[other] Règles : { $codes }
  }
print-cautions-stop = Ne démarrez pas { -generator(form: "the") } avant que chacun de ces points soit réglé.
print-cautions-always = Cochez chaque point à chaque mise en place.
print-cautions-generator = Auprès { -generator(form: "of") }
print-cautions-people = Où l’on dort
print-cautions-gear = Rallonges, coffrets et prises
print-cautions-fuel = Carburant
print-cautions-leaving = Quand vous partez
print-look = À vérifier d’abord
print-look-then = Certains cadres disent « { print-look } ». Quand vous le savez, changez votre réponse dans le plan et vérifiez de nouveau.
print-ws-no-danger = Aucune règle n’a trouvé de danger. Ce n’est pas une promesse.
print-none-found = Nous n’avons rien trouvé dans ce plan. Ce n’est pas une promesse. Les points ci-dessus valent quand même.
print-always-1 = Utilisez { -generator(form: "the") } seulement dehors, échappement à l’opposé, à au moins { $ample } des tentes, véhicules, portes, fenêtres et gens. Les gaz contiennent du monoxyde de carbone : sans odeur, il tue.
print-always-2 = Mettez un { -alarm } de monoxyde de carbone là où l’on dort. Bouton d’essai : il doit sonner.
print-always-3 = Déroulez chaque rallonge, hors du sol mouillé. N’utilisez ni rallonge coupée ou roussie, ni fiche lâche ou dont la broche de terre est arrachée.
print-always-4 = Essayez chaque GFCI (boutons TEST et RESET) avec une lampe branchée : la lampe doit s’éteindre.
print-always-5 = Ne branchez jamais { -generator(form: "a") } au câblage d’un bâtiment.
print-always-6 = Avant le plein : arrêtez le moteur et laissez-le refroidir { $cooling } minutes. Pas de flammes.
print-always-7 = Avant de partir : arrêtez le moteur, laissez-le refroidir { $cooling } minutes et débranchez tout. Ne partez jamais pendant qu’il tourne.

## Worksheet

print-ws-title = Note de calcul : { $site }
print-ws-intro = Tous les nombres des étiquettes et de la carte, et comment les recalculer à la main. Les limites sont arrondies vers le bas, les consommations vers le haut. Rien ici n’a été mesuré. Un numéro derrière une valeur est sa source, nommée à la fin. Une valeur sans marque se calcule avec les autres.
print-ws-source = Réf.
print-ws-not-known = inconnu
print-ws-power = Puissance { -generator(form: "of") }
print-ws-power-formula = Puissance restante = indiquée × (1 − perte d’altitude − perte de chaleur). Altitude : { $altitude-percent } % par { $altitude-per } au-dessus de { $altitude-above }. Chaleur : { $air-percent } % par { $air-per } au-dessus de { $air-above }.
print-ws-power-thumb = Règle empirique : { $altitude-percent } % par { $altitude-per } au-dessus de { $altitude-above }, et { $air-percent } % par { $air-per } au-dessus de { $air-above }.
print-ws-power-less = Nous prenons la plus petite des deux. Au propane, d’abord un dixième de moins, sauf si la plaque est pour le propane. En parallèle, le total est ce que laisse passer le kit.
print-ws-power-loss-formula = Perte d’altitude + de chaleur, par la formule
print-ws-power-loss-thumb = Perte d’altitude + de chaleur, par la règle empirique
print-ws-symbols-power = P₀ puissance indiquée, P₀′ puissance ici ; h altitude, t température de l’air ; k perte par pas Δ au-dessus de h₀ ou t₀
print-ws-power-marked = Puissance nominale indiquée
print-ws-power-peak-marked = Puissance de pointe indiquée
print-ws-power-altitude = Altitude
print-ws-power-air = Air
print-ws-power-rated = Puissance nominale ici
print-ws-power-peak = Puissance de pointe ici
print-ws-power-propane = Au propane : neuf dixièmes de la puissance indiquée
print-ws-power-reachable = À votre portée par les prises utilisées
print-ws-power-stranded = Hors de portée
print-ws-limits = Limite de chaque prise
print-ws-limits-long = En continu = la plus petite de : chaque valeur de la ligne × sa part, et la limite continue de ce qui l’alimente. Sans part, elle compte entière.
print-ws-limits-short = Bref = la plus petite de : chaque valeur de la ligne, et la limite brève de ce qui l’alimente.
print-ws-limits-watts = Watts (page 1) = ampères × volts.
print-ws-limits-80 = Le code limite tout ce qu’une prise alimente (210.21(B)(2)), et chaque appareil branché (210.23(B)(1) et (C)), à 12, 16 ou 24 A sur des circuits de 15, 20 ou 30 A à plusieurs prises. C’est ici la limite pour des heures. Pour peu de temps, tout le marquage compte.
print-ws-limits-first = La première ligne est { -generator(form: "the") } : sa puissance en continu ici ÷ volts, sur deux phases la moitié chacune. Ce que supporte une rallonge se calcule dans la section suivante.
print-ws-symbols-limits = I ampères : h en continu, s un court moment, c ce que la partie supporte ; s part en continu ; ′ de ce qui l’alimente ; P watts, U volts
print-ws-reason-rated-power = puissance nominale
print-ws-reason-rated-power-unguarded = puissance nominale
print-ws-reason-one-leg = une moitié
print-ws-reason-breaker = disjoncteur
print-ws-reason-trips-early = disjoncteur, là où il s’est déclenché
print-ws-reason-receptacle = prise
print-ws-reason-plug = fiche
print-ws-reason-cord-ampacity = fil
print-ws-reason-cord-mark = marquage usuel
print-ws-reason-coiled-cord = fil, enroulé
print-ws-reason-hot-cord = fil, air chaud
print-ws-reason-wiring = câblage
print-ws-reason-not-fed = mauvaise tension
print-ws-reason-parallel-kit = kit de parallèle
print-ws-protection = Parties plus petites que leur disjoncteur
print-ws-protection-how = La page 1 donne le disjoncteur de chaque partie. Il ne doit pas dépasser la capacité de la partie. Pour celles-ci il la dépasse, ou manque : la règle qui le permet est nommée.
print-ws-part-receptacle = prise
print-ws-part-cord = rallonge
print-ws-by-generator = { -generator(form: "The") } : impossible d’en tirer plus
print-ws-by-cord-set = NEC 240.5(B)(3) : rallonge certifiée, dans les limites de sa certification ; sinon (B)(4) : 16 AWG ou plus grosse, jusqu’à 20 A
print-ws-by-receptacles = NEC 210.21(B)(3) : au moins deux prises de 15 A sur 20 A
print-ws-by-appliance-cord = NEC 240.5(B)(1) : cordon d’un appareil certifié par un laboratoire
print-ws-by-listing = la certification du coffret
print-ws-by-camper-main = seul le disjoncteur principal de la { -camper }
print-ws-by-single = NEC 210.21(B)(1) demande un disjoncteur plus petit : ne dépassez pas ce que la prise admet
print-ws-by-nothing = RIEN : ne pas utiliser
print-ws-column-breaker = Disj.
print-ws-column-breaker-at = Disjoncteur de
print-ws-column-protected-by = Suffit grâce à
print-ws-cords = Rallonges
print-ws-cords-ohms =
    Ohms = ohms par { $measure ->
        [metric] mètre
       *[customary] pied
    } × longueur × 2, aller et retour, à { $hot }.
print-ws-cords-amps = Ampères : le plus petit de la capacité de la fiche, du courant admissible du fil (dans un air de plus de { $air } sa part, et le tiers de cela si elle est enroulée) et du marquage usuel des rallonges à fiche ordinaire de ce calibre et de cette longueur. Lisez les ampères sur l’étiquette de la rallonge ; le plus petit compte.
print-ws-cords-two = Deux conducteurs portent du courant. La terre ne compte pas, ni un neutre entre deux phases, qui ne porte que leur différence (NEC 400.5(A), 2023).
print-ws-symbols-cords =
    R ohms aller et retour, r ohms d’un fil par { $measure ->
        [metric] mètre
       *[customary] pied
    }, l longueur ; I ampères : p la fiche, w le fil, m le marquage usuel ; a part dans cet air ; le tiers seulement si elle est enroulée
print-ws-loads = Appareils
print-ws-loads-amps = Ampères = watts ÷ (volts × facteur de puissance), arrondis vers le haut. Les watts d’un appareil chauffant valent à 125 V : si sa fiche ordinaire les supporte là, on ne compte pas plus que les ampères × volts de la fiche. Un facteur de puissance supposé ne fait pas compter plus d’ampères que la fiche n’en supporte.
print-ws-loads-start = Démarrage : les watts donnés, ou les ampères de démarrage de la plaque × volts, ou les ampères × le facteur de son genre, ou les kVA de la lettre de code d’un moteur ÷ 115 V ou 230 V ; ses voltampères comptent alors comme des watts.
print-ws-loads-leg = Un appareil à deux phases et neutre compte tout entier sur une seule phase, à 120 V, n’importe laquelle. Si sa fiche ne le supporte pas : ce que la fiche supporte sur chaque phase, ou la moitié si c’est plus.
print-ws-symbols-loads = I ampères, P watts, U volts, λ facteur de puissance ; st au démarrage, k fois plus d’ampères
print-ws-symbols-longest =
    l longueur, d part des volts perdue, U volts, I ampères, r ohms d’un fil par { $measure ->
        [metric] mètre
       *[customary] pied
    }
print-ws-drops = Chute de tension
print-ws-drops-formula = Volts perdus = ampères × ohms, additionnés sur toutes les rallonges du chemin. Quand la tension baisse, les appareils de chauffage prennent moins d’ampères et tout le reste plus : ce sont ceux-là qui figurent ici.
print-ws-drops-start = Pendant un démarrage : les ampères des appareils à pleine tension, et pour celui qui démarre ceux du démarrage.
print-ws-drops-legs = Avec deux phases, les ampères de l’une comptent aller et retour, comme si l’autre était sans charge. Avec les deux chargées, la perte est moindre.
print-ws-symbols-drops = ΔU volts perdus, d leur part, I ampères, R ohms, U volts
print-ws-sharing = Ce qui fonctionne ensemble
print-ws-sharing-formula = Un groupe peut marcher ensemble quand, à chaque partie de chaque chemin, la somme de ses ampères ne dépasse pas la limite de cette partie, ni ses watts celle { -generator(form: "of") }.
print-ws-sharing-times = Selon l’heure, les groupes sont { $groups }.
print-ws-sharing-more = Nous avons omis { $count } autres groupes qui peuvent marcher ensemble. En aucun point l’un d’eux ne dépasse ceux de la liste.
print-ws-sharing-incomplete = La liste n’est pas complète. Seul ce qui y figure peut fonctionner ensemble.
print-ws-sums = Les sommes qui décident
print-ws-symbols-sums = S voltampères : k de ce qui fonctionne moins de trois heures, h de ce qui fonctionne plus longtemps, st de celui qui démarre ; s part de la limite pour des heures ; c ce que porte la partie, pk la pointe { -generator(form: "of") }
print-ws-sums-how = À chaque partie : les voltampères (ampères × volts) de ce qui y passe, additionnés ; ceux de ce qui fonctionne trois heures ou plus, ÷ la part de la limite pour des heures. La limite est ce que porte la partie × volts.
print-ws-sums-start = À la mise en marche : les voltampères de tout ce qui fonctionne et, pour l’appareil qui demande le plus en plus, ceux de son démarrage moins ceux en marche. Les voltampères y comptent pour des watts.
print-ws-sums-which = De chaque groupe permis : { -generator(form: "the") } et la partie la plus chargée en aval. De chaque groupe interdit : la partie qui dépasse le plus sa limite. Pour chacune de ces parties, nous montrons deux groupes : le permis qui la charge le plus, et l’interdit qui dépasse le moins.
print-ws-sum-peak = au démarrage
print-ws-sum-leg = { $part }, phase { $leg }
print-ws-starts = Mise en marche : les pointes, et ce que montre un voltmètre
print-ws-symbols-starts = S voltampères : on ce qui fonctionne déjà, st de celui qui démarre, pk la pointe
print-ws-starts-how = Pointe = voltampères de ce qui fonctionne déjà + voltampères de démarrage de celui qui démarre. Les voltampères y comptent pour des watts, donc les vrais watts ne sont pas plus.
print-ws-starts-then = « Ensuite » est ce qui fonctionne une fois qu’il a démarré : déjà en marche + ses voltampères en marche. La ligne suivante commence par là. Les appareils d’une même sorte sont une ligne, pour le dernier d’entre eux.
print-ws-starts-more = Seules les { $count } premières étapes sont ici.
print-ws-column-set = Groupe
print-ws-column-adds-up = S, appareil par appareil
print-ws-column-on-and-starts = Déjà en marche + démarrage
print-ws-column-sum = Somme
print-ws-column-limit = Limite
print-ws-column-then = Ensuite
print-ws-together-row = Ensemble, groupe { $number }
print-ws-never-row = Jamais ensemble { $number }
print-ws-energy = Énergie et carburant
print-ws-energy-formula = Wattheures = watts × heures, additionnés sur la journée. Réservoirs = heures ÷ heures d’un réservoir à cette consommation, additionnés. Carburant = réservoirs × contenu d’un réservoir, pour chaque { -generator }.
print-ws-energy-between = Un réservoir : entre deux durées publiées, les réservoirs brûlés en une heure (1 ÷ durée) sont sur une droite selon la charge, un dixième en plus, sans dépasser ceux de la charge publiée suivante. Au-dessus de la plus grande charge la durée baisse en proportion ; sous la plus petite elle ne grandit plus.
print-ws-symbols-energy = E wattheures, P watts, t heures de marche ; n réservoirs, t₀ durée d’un réservoir à cette consommation ; V carburant, V₀ contenu d’un réservoir
print-ws-energy-published = Durée publiée d’un réservoir à { $load } de charge
print-ws-energy-day = Énergie par jour
print-ws-energy-tank = Un réservoir dure, à la plus forte consommation
print-ws-energy-fuel = Carburant par jour
print-ws-energy-peak = Pointe de consommation, dès { $hour }
print-ws-energy-burns = À { $watts } : part d’un réservoir
print-ws-energy-tanks = Part d’un réservoir par jour
print-ws-energy-stretch = Le plus sans pause pour le plein, { $span }
print-ws-energy-size = Un réservoir contient
print-ws-noise = Bruit
print-ws-noise-formula = Niveau = niveau publié − 20 × log₁₀(distance ÷ distance publiée). Arbres, pentes et murs le changent.
print-ws-noise-free-field = En terrain découvert, depuis une petite source : 6 dB de moins chaque fois que la distance double.
print-ws-symbols-noise = L niveau à la distance d, L₀ niveau publié à la distance d₀ ; max à la minute la plus chargée ; x charge alors, b charge de la mesure, en pour cent, au moins 25
print-ws-set = groupe { $number }
print-ws-unplaced-row = Pas de prise pour { $load }
print-ws-no-receptacle-fits = aucune prise libre n’accepte sa fiche
print-ws-no-room = toutes les prises qui acceptent sa fiche sont pleines, sans GFCI, ou à ne pas utiliser
print-ws-too-large = aucune prise permise ne peut fournir assez
print-ws-impossible = selon le plan, prend plus que ce pour quoi sa fiche est faite
print-ws-hot = l’appareil ou sa prise a chauffé ou donné un choc
print-ws-no-power = ce à quoi il est branché n’est branché à rien
print-ws-refused = aucune prise libre et utilisable ne lui convient
print-ws-noise-published = Niveau publié
print-ws-noise-load = Charge lors de la mesure
print-ws-noise-sets = Ce qu’ajoutent { $sets } { -generator(form: "many") } semblables côte à côte
print-ws-noise-busiest-load = Charge à la minute la plus chargée
print-ws-noise-busiest = Ce qu’ajoute cette charge
print-ws-noise-sleepers = Là où l’on dort
print-ws-noise-50ft = Là où mesurent les parcs nationaux
print-ws-noise-sleepers-busiest = Là où l’on dort, à la minute la plus chargée
print-ws-noise-50ft-busiest = Là où mesurent les parcs nationaux, à la minute la plus chargée
print-ws-noise-sets-formula = Plusieurs { -generator(form: "many") } côte à côte : 10 × log₁₀(leur nombre) de plus.
print-ws-noise-busiest-formula = À la minute la plus chargée : niveau + ce qu’ajoute la charge. Aucune plaque ne dit combien : nous avons supposé 10 dB(A) du quart de la pleine charge, ou moins, à la pleine charge. Entre les deux : 10 dB(A) × (charge alors − charge de la mesure) ÷ 75 %.
print-ws-assumed = Ce que nous avons supposé
print-ws-assumed-how = Ce que nous ne savions pas, nous l’avons supposé dangereux.
print-ws-column-what = Quoi
print-ws-column-figure = Valeur
print-ws-column-part = Partie
print-ws-column-plug-amps = Fiche
print-ws-column-fed-by = Vient de
print-ws-column-factor = λ
print-ws-column-hours = Continu, A
print-ws-column-short = Bref, A
print-ws-column-hours-watts = Continu, W
print-ws-column-short-watts = Bref, W
print-ws-column-cord = Rallonge
print-ws-column-wire = Fil
print-ws-column-wire-amps = Fil
print-ws-column-length = Longueur
print-ws-column-ohms = R
print-ws-column-ohms-kilofoot = r, 1000 ft
print-ws-column-ohms-kilometre = r, 1 km
print-ws-column-rating = Supporte
print-ws-column-load = Appareil
print-ws-column-at = À
print-ws-column-watts = Watts
print-ws-column-watts-hours = Watts × heures
print-ws-column-volts = Volts
print-ws-column-amps = Ampères
print-ws-column-amps-ohms = I × R, rallonge par rallonge
print-ws-column-start-watts = Dém., W
print-ws-column-start-amps = Dém., A
print-ws-column-start-times = k
print-ws-column-lost = Perdus
print-ws-column-lost-percent = Part
print-ws-column-left = Reste
print-ws-column-level = Niveau
print-ws-column-which = Lequel
print-ws-column-coiled = Enroulée
print-ws-column-mark = Marque
print-ws-column-value = Valeur
print-ws-column-assumption = Hypothèse
print-ws-column-air-share = Air
print-ws-column-distance = Distance
print-ws-marks = Derrière une valeur :
print-ws-mark-plan = P
print-ws-mark-plan-is = de votre plan
print-ws-mark-assumed = S
print-ws-mark-assumed-is = inconnu de nous, donc supposé

## Note de calcul, page 1

print-ws-diagram = Schéma unifilaire
print-ws-diagram-fed = { $part }, alimenté par { $from }
print-ws-case-marked = { $name }, selon la plaque
print-ws-case-here = Ici
print-ws-case-powers = en continu { $running }, pointe { $peak }
print-ws-case-powers-here = { $running } ({ $kilowatts } kW) en continu, pointe { $peak }, à { $elevation } et { $air }
print-ws-case-system = Tension
print-ws-case-legs = { $volts } sur chacune des deux phases
print-ws-case-joined = Relié à la terre dans
print-ws-breaker-at = { $amps } ({ $at })
print-ws-gfci-works = sur { $by }
print-ws-gfci-no = NON
print-ws-gfci-unknown = INCONNU
print-ws-symbol-generator = { -generator }
print-ws-symbol-box = coffret
print-ws-column-type = Type
print-ws-column-gfci = GFCI
print-ws-column-parts = Parties
print-ws-dangers = Dangers
print-ws-assumed-more = { $count } de plus vers la fin.
print-ws-rules = Règles qui ont trouvé quelque chose, avec leurs sources
print-ws-sources = Sources
print-ws-sign-name = Vérifié par
print-ws-sign-license = Licence
print-ws-sign-date = Date
print-ws-sign-signature = Signature
