# The interview. `ask-ID` is a question, under 60 columns; `.why` one line on why, or where to
# read the answer; `.help` is what `?` tells; `.row` the question's name on the review page.

progress = Partie { $number } sur { $total } : { $part }
# The same for the things to look at. “More”: what earlier answers led to.
progress-look = À vérifier : { $number } sur { $total }
progress-look-more = Encore à vérifier : { $number } sur { $total }
part-asked-generator = { -generator(form: "the") }
part-asked-outlets = ses prises
part-asked-loads = ce que vous branchez
part-asked-site = le lieu
part-asked-gear = rallonges et coffrets

# Said before the first question.
interview-welcome =
    De courtes questions, en cinq parties : { -generator(form: "the") }, ses prises, ce que vous branchez, le lieu, vos rallonges et coffrets.
    Entrée prend la réponse entre parenthèses ou marquée *. Dans le doute, choisissez « Je ne sais pas » : nous supposons alors la réponse la plus dangereuse, et nous le disons. Ctrl-C arrête et garde vos réponses.

hint-list = Flèches ou texte, Entrée. Esc retour
hint-many = Entrée coche/décoche. ← → nombre. Tab : au début. Esc retour
list-nothing = Rien de tel. Esc : tout revoir
# Together under 38 columns: a hint that wraps is drawn badly by a narrow terminal.
hint-keys = ? aide, Esc retour
hint-go-on = Entrée : continuer
hint-unknown = ou inconnu
hint-none = aucun
hint-enter-unknown = Entrée : inconnu
hint-between = ,{" "}

# The word between a level and its distance, as in "58 dBA at 23 ft".
typed-at = à
# Words ahead of a figure that is judged by eye, and past it, small letters, set apart by commas. The figure
# counts as typed. What makes it larger, smaller or doubtful, such as "au moins", has no place here.
typed-about = environ, à peu près, a peu pres, approximativement, approx., approx, autour de, env., ~, ≈
    .after = environ, à peu près, a peu pres, ou à peu près, approximativement, approx., approx, plus ou moins, env.
# Words for units that somebody may type, small letters, set apart by spaces. Each attribute is
# named by the unit that is meant: feet, metres, inches, amperes, volts, watts, hours, minutes,
# US gallons, litres. A word that means anything else to anybody has no place here: "gallon" is
# the imperial one to many in Canada.
typed-unit = -
    .ft = pieds pied pi
    .m = mètres mètre metres metre
    .in = pouces pouce po
    .A = ampères ampère amperes ampere amps amp
    .V = volts volt
    .W = watts watt
    .h = heures heure
    .min = minutes minute
    .gal = gal
    .L = litres litre
    .step = pas

typed-unknown = inconnu
    .also = inconnue, je ne sais pas, je sais pas, j'sais pas, sais pas, ne sais pas, aucune idée, aucune idee, pas sûr, pas sûre, j'ignore, unknown
typed-not-bought = pas acheté
    .also = à acheter, pas encore acheté
typed-none = aucun
    .also = aucune, rien, non
typed-picture = arbre
    .also = schéma, schema, dessin

# `.also`: other ways to type it.
pick-yes = Oui
    .also = o
pick-no = Non
    .also = n
pick-unknown = Je ne sais pas
    .also = je sais pas jsp inconnu
pick-look-first = Je ne sais pas : arrêter, aller voir
pick-explain = ? Dites-m’en plus
pick-picture = Montrer les branchements jusqu’ici
pick-removed = Retirer ceci

label-place = { $id } ({ $shape })
about-gear = { $id }, { $what }
# Something in this part is not known, and taken for the unsafe case.
label-marked = ! { $row }
label-row = { $title } : { $shown }
# What a part is called until somebody names it, with a number behind it if need be: one short
# word in small letters, without spaces. The first four are outlets by their shape: the household
# kind, that for a camper, that which is twisted, the large ones.
id-regular = normale
id-camper = prise-{ -camper }
id-twist = tournante
id-large = grosse
id-outlet = prise
id-cord = rallonge
id-box = coffret
id-left = gauche
id-right = droite
id-top = haut
id-bottom = bas
id-middle = milieu
id-load = appareil
id-our-camper = notre-{ -camper }
id-regular-cord = rallonge-normale
id-twist-cord = rallonge-tournante
id-four-wire-cord = rallonge-quatre-fils
id-camper-cord = rallonge-{ -camper }
id-three-way = rallonge-triple
id-strip = multiprise
id-splitter = répartiteur
id-twist-splitter = répartiteur-tournant
id-four-wire-splitter = répartiteur-quatre-fils
id-adapter = adaptateur
id-camper-adapter = adaptateur-{ -camper }
id-regular-adapter = adaptateur-normal
id-twist-adapter = adaptateur-tournant
id-twist-box = coffret-tournant
id-four-wire-box = coffret-quatre-fils
id-camper-box = coffret-{ -camper }
id-large-box = gros-coffret
# A cord or box named by its color. $color and $word are English words, such as red and box, for the ending of the
# color; $called: what it is called without one.
id-colored = { $called }-{ $color ->
    [orange] orange
    [yellow] jaune
    [green] { $word ->
        [cord] verte
        [three-way] verte
        [strip] verte
       *[other] vert
    }
    [black] { $word ->
        [cord] noire
        [three-way] noire
        [strip] noire
       *[other] noir
    }
    [blue] { $word ->
        [cord] bleue
        [three-way] bleue
        [strip] bleue
       *[other] bleu
    }
    [red] rouge
    [gray] { $word ->
        [cord] grise
        [three-way] grise
        [strip] grise
       *[other] gris
    }
    [white] { $word ->
        [cord] blanche
        [three-way] blanche
        [strip] blanche
       *[other] blanc
    }
   *[brown] marron
}

shown-unknown = inconnu
shown-open-one = non demandé
shown-unused = ne pas utiliser encore
shown-in = dans { $place }
shown-times = { $count } fois

suggest-generator-name = { -generator }
suggest-load-name = Un appareil
suggest-site-name = Sortie de camping

# What somebody may answer, in the reader's units.
example-tank = { $measure ->
    [metric] 4,5 L
   *[customary] 1,2 gal
}
example-noise-far = { $measure ->
    [metric] 7 m
   *[customary] 23 ft
}
example-noise-near = { $measure ->
    [metric] 3 m
   *[customary] 10 ft
}
example-near = { $measure ->
    [metric] 12 m
   *[customary] 40 ft
}
example-altitude = { $measure ->
    [metric] 900 m
   *[customary] 4200 ft
}
example-sea = { $measure ->
    [metric] 0 m
   *[customary] 0 ft
}
example-air = { $measure ->
    [metric] 31 C
   *[customary] 88 F
}
example-length = { $measure ->
    [metric] 15 m
   *[customary] 50 ft
}

# ---- The generator

ask-generator-name = Comment appelez-vous { -generator(form: "the") } ?
    .why = Ce nom va sur son étiquette.
    .help = N’importe quel nom court : sa couleur, son propriétaire. Vous pourrez le changer plus tard.
    .row = Nom

ask-generator-rated = Combien de watts donne { -generator(form: "the") } ?
    .why = Lisez sa plaque (étiquette). Deux nombres ? Tapez les deux : 2800 W, 3300 W.
    .help =
        Cherchez deux nombres sur la plaque ou dans le manuel. Le plus petit est la puissance nominale (running, rated) : celle que l’on a pendant des heures. Le plus grand est la pointe : quelques secondes, pour démarrer un moteur. Tapez les deux, séparés par une virgule.
        S’il n’y en a qu’un, tapez celui-là. Nous demandons ensuite laquelle des deux c’est. Le grand nombre du nom du modèle est souvent la pointe.
        Si la plaque ne donne que des ampères et des volts, multipliez-les : 20 A à 120 V font 2400 W.
    .row = Puissance nominale

ask-generator-peak = Combien de watts au plus, pendant quelques secondes ?
    .why = Cherchez sur sa plaque : watts de pointe, starting, surge ou peak.
    .help = Un moteur prend un instant deux à six fois sa puissance de marche quand il démarre. Un frigo en a un. La pointe nous dit si { -generator(form: "the") } peut le démarrer.
    .row = Puissance de pointe

ask-generator-figure = Est-ce la puissance nominale ou la pointe ?
    .why = Le nombre dans le nom du modèle est souvent la pointe.
    .help =
        Vous avez donné un seul nombre. S’il fait partie du nom, ou s’il est seul sur la boîte, c’est souvent la pointe : ce que l’on a quelques secondes. S’il porte « running », « rated » ou « continuous », c’est la puissance nominale.
        Si vous ne savez pas, nous supposons que c’est la pointe, et que la puissance nominale en est les trois quarts.
    .row = Ce nombre est
pick-generator-figure-running = La puissance nominale
pick-generator-figure-peak = La puissance de pointe

ask-generator-voltage = Quelle tension donne { -generator(form: "the") } ?
    .why = La plupart des petits modèles ne donnent que 120 V. Lisez la plaque.
    .help =
        La prise ordinaire d’une maison nord-américaine est de 120 V. Un modèle 120/240 V a aussi une prise à quatre fentes pour de grosses fiches, ou porte 120/240 V sur sa plaque.
        Un tel modèle a deux moitiés. Chaque prise de 120 V ne peut utiliser qu’une moitié de la puissance.
    .row = Tension
pick-generator-voltage-120 = 120 V seulement
pick-generator-voltage-120-240 = 120 V et 240 V

ask-generator-neutral = Son manuel dit-il neutre flottant ou neutre relié ?
    .why = Neutre : le fil du retour du courant. Dans le doute : « Je ne sais pas ».
    .help =
        L’essai des prises en dépend. Cherchez dans le manuel ou près des prises « floating neutral » (neutre flottant : relié à rien) ou « neutral bonded to frame » (neutre relié au châssis).
        Y a-t-il dans une prise une fiche sans cordon (une fiche de liaison) ? Laissez-la, et demandez au propriétaire. N’en mettez jamais une vous-même, sauf si un { -electrician } vous le dit.
        N’ouvrez pas { -generator(form: "the") }, et ne reliez rien vous-même. Si vous ne savez pas, nous supposons flottant pour les essais, et le pire des deux pour les chocs.
    .row = Neutre
pick-generator-neutral-floating = Flottant : relié à rien
pick-generator-neutral-plug = Avec fiche de liaison (sans cordon)
pick-generator-neutral-bonded = Relié au châssis

ask-generator-inverter = Est-ce { -generator(form: "a") } à onduleur ?
    .why = « Inverter » est écrit dessus. Souvent silencieux, fermé de partout.
    .help =
        Un modèle à onduleur est d’habitude silencieux, fermé, avec un interrupteur qui laisse ralentir le moteur. Sa plaque ou son manuel dit « inverter » (onduleur).
        Un cadre ouvert avec un réservoir rond sur le dessus n’en est en général pas un.
    .row = Onduleur

ask-generator-sets = Est-ce { -generator(form: "a") }, ou deux ensemble par un kit ?
    .why = Par un kit (en parallèle). À part : un plan pour chaque { -generator }.
    .help =
        Seuls certains modèles à onduleur peuvent être joints, et seulement par le kit que leur fabricant vend pour eux.
        Deux modèles qui tournent à part, chacun avec ses rallonges, ne sont pas joints : faites un plan pour chacun.
    .row = En parallèle
pick-generator-sets-1 = À part, sans kit
pick-generator-sets-2 = Deux ensemble, par un kit
pick-generator-sets-3 = Trois ensemble, par un kit
pick-generator-sets-4 = Quatre ensemble, par un kit

# Safety.
ask-generator-kit = Est-ce le kit du fabricant pour ces modèles exacts ?
    .why = Avec autre chose, tout peut brûler, et des lames restent nues sous tension.
    .help = Le manuel du kit nomme les modèles auxquels il convient. Si les vôtres n’y sont pas, ou si le cordon entre eux est fait maison, la réponse est non. Si vous ne savez pas, nous supposons que non.
    .row = Kit du fabricant

ask-generator-limit = Pour combien d’ampères le kit est-il fait ?
    .why = Sur le kit, près de sa prise ou de son disjoncteur. Exemple : 30 A.
    .help = Si vous ne savez pas, nous supposons qu’il n’est pas fait pour plus que n’en donne un seul modèle.
    .row = Kit fait pour

ask-generator-fuel = Quel carburant utilise le moteur ?
    .why = Il change la puissance et la durée d’un réservoir.
    .help = S’il en brûle plusieurs, nommez celui que vous apporterez. Si vous ne savez pas, nous supposons le propane, avec lequel il donne un peu moins.
    .row = Carburant
pick-generator-fuel-gasoline = Essence
pick-generator-fuel-propane = Propane
pick-generator-fuel-diesel = Diesel

ask-generator-rated-on = Pour quel carburant ces watts sont-ils donnés ?
    .why = Au propane, environ un dixième de moins. Lisez sa plaque.
    .help = Un modèle à deux carburants a deux lignes de watts dans son manuel. Laquelle avez-vous donnée comme puissance ? Si vous ne savez pas, nous supposons que c’était celle de l’essence, et comptons un dixième de moins au propane.
    .row = Watts donnés pour
pick-generator-rated-on-gasoline = Essence
pick-generator-rated-on-propane = Propane

ask-generator-tank = Combien de carburant contient le réservoir ?
    .why = Voyez le manuel. Exemple : { example-tank }.
    .help = Pour le propane, tapez ce que la bouteille contient en liquide, ou inconnu.
    .row = Réservoir

ask-generator-runtime = Combien de temps dure un réservoir ?
    .why = Voyez le manuel. Exemple : 25 % 8,5 h, 100 % 3,1 h.
    .help =
        Les fabricants publient des heures pour une part de la charge nominale. Tapez le pourcentage, puis les heures, avec une virgule entre les paires.
        Une paire suffit. Deux, c’est mieux.
    .row = Durée

ask-generator-noise = Quel bruit, et mesuré à quelle distance ?
    .why = Voyez le manuel. Exemple : 58 dBA à { example-noise-far }, 25 %.
    .help =
        Le nombre seul dit peu : 58 dBA à { example-noise-far } est plus bruyant que 58 dBA à { example-noise-near }. La plupart des fabricants mesurent à { example-noise-far } et à un quart de la charge.
        Vous pouvez omettre le pourcentage de charge, à la fin.
    .row = Bruit

# ---- Its outlets

ask-outlet-list = Ses prises : à quoi ressemblent les trous ?
    .why = Comparez trous et nom (5-20R). Chercher : grosse, 4 fentes. ? : dessins.
    .help =
        Un disjoncteur est le petit bouton ou interrupteur près de la prise, qui la coupe quand trop d’appareils marchent. Il porte un nombre : 15, 20, 30. Vérifiez-le : ce n’est pas toujours le nombre qui va avec la forme de la prise. S’il est autre, ou illisible, choisissez « autre disj. ».
        Regardez les trous et le nom moulé à côté. Deux prises côte à côte sur un seul disjoncteur comptent pour une. S’il y en a deux pareilles sur deux disjoncteurs, cochez-en 2.
    .row = Prises
pick-outlet-list-done = Ce sont toutes ses prises

ask-outlets-places = Comment sont disposées les prises semblables ?
    .why = Les étiquettes et la carte le diront ainsi.
    .help = Côte à côte, elles s’appellent gauche et droite. L’une au-dessus de l’autre, haut et bas. Avec des numéros, vous choisissez laquelle est la 1 en collant les étiquettes.
    .row = Prises semblables
pick-outlets-places-across = { pick-out-places-across }
pick-outlets-places-down = { pick-out-places-down }
pick-outlets-places-number = { pick-out-places-number }

ask-outlet-face = Quelle prise, et quel nombre sur son disjoncteur ?
    .why = Pour chercher, tapez 30, tourner ou ordinaire.
    .help =
        Un disjoncteur est le petit bouton ou interrupteur près de la prise, qui la coupe quand trop d’appareils marchent. Il porte un nombre : 15, 20, 30. Vérifiez-le : ce n’est pas toujours le nombre qui va avec la forme de la prise. S’il est autre, ou illisible, choisissez « autre disj. ».
        Regardez les trous et le nom moulé à côté. Deux prises pareilles côte à côte sont une seule sorte. Les prises qui ont des disjoncteurs différents se nomment une par une.
    .row = Forme
# Under 37 columns: a longer row is cut on a narrow terminal.
pick-face-usual = { $shape } ({ $code }), disj. { $amps } A
pick-face-other = { $shape } ({ $code }), autre disj.
pick-face-end = { $shape } ({ $code })

ask-outlet-breaker = Quel nombre porte son disjoncteur ?
    .why = { $about }. Un bouton ou interrupteur, comme 20 A.
    .help =
        Un disjoncteur est le petit bouton ou interrupteur près de la prise, qui la coupe quand trop d’appareils marchent. Il porte un nombre : 15, 20, 30. Tapez-le avec son unité : 20 A.
        Vérifiez-le : ce n’est pas toujours le nombre qui va avec la forme de la prise. S’il n’y a pas de nombre, tapez inconnu. Nous supposons alors que rien ne protège les rallonges, et nous le disons.
    .row = Disjoncteur

ask-outlet-name = Comment appeler cette prise ?
    .why = { $about }. Court, sans espaces : avant, gauche.
    .help = Lettres et chiffres, - et _, sans espaces. Ce nom va sur l’étiquette à côté de la prise.
    .row = Nom

ask-outlet-sockets = Combien de fiches reçoit-elle ?
    .why = { $about }. Une prise double en reçoit 2.
    .help = Comptez les endroits où brancher une fiche, sur ce seul disjoncteur.
    .row = Fiches

ask-outlet-leg = Quelle moitié { -generator(form: "of") } l’alimente ?
    .why = { $about }. Voyez le schéma du manuel.
    .help = Un modèle 120/240 V a deux moitiés, A et B. Si vous ne savez pas, nous supposons la pire.
    .row = Moitié
pick-outlet-leg-a = Moitié A
pick-outlet-leg-b = Moitié B

ask-outlets-gfci = Quelles prises ont des boutons TEST et RESET ?
    .why = Ce sont des { -gfci(form: "many") }, faits pour couper en cas de choc.
    .help =
        Les deux boutons sont sur la prise, ou sur le panneau avec les lettres GFCI ou « ground fault ». Un disjoncteur à un seul bouton n’est pas un { -gfci }.
        Un { -gfci } est fait pour couper vite si du courant traverse une personne. Il peut tomber en panne : appuyez sur TEST avant chaque usage.
        Si vous ne savez pas, nous supposons qu’il n’y en a pas, et nous le disons.
    .row = { -gfci(form: "One") }
pick-outlets-gfci-all = Toutes
pick-outlets-gfci-none = Aucune
pick-outlets-gfci-some = Certaines : je dirai lesquelles

ask-outlets-odd = Ses disjoncteurs ont-ils quelque chose de spécial ?
    .why = Partagé ou déclenché trop tôt, un disjoncteur donne moins de courant.
    .help =
        Deux prises peuvent se partager un disjoncteur : ce que vous prenez à l’une manque alors à l’autre. Le schéma du manuel le montre ; un panneau avec moins de disjoncteurs que de prises aussi.
        Si un disjoncteur s’est déclenché au-dessous de son nombre, nous restons désormais sous ce nombre plus bas.
    .row = Disjoncteurs
pick-outlets-odd-no = Rien que je sache
pick-outlets-odd-share = Des prises en partagent un
pick-outlets-odd-early = L’un se déclenche trop tôt
pick-outlets-odd-both = Les deux : partagé, et trop tôt

ask-outlet-gfci = Celle-ci a-t-elle des boutons TEST et RESET ?
    .why = { $about }.
    .help = Les deux boutons sont sur la prise, ou à côté sur le panneau.
    .row = { -gfci(form: "One") }

ask-outlets-bonding = Dans quelle prise est la fiche de liaison ?
    .why = Dans un { -gfci } (TEST et RESET), elle l’empêche de se déclencher.
    .help =
        Une fiche de liaison est une fiche sans cordon. Regardez les prises ordinaires { -generator(form: "of") }.
        Sa place est dans une prise sans boutons TEST et RESET. N’ouvrez rien, ne câblez rien.
    .row = Fiche de liaison dans

ask-outlet-shares = De quelle prise partage-t-elle le disjoncteur ?
    .why = { $about }. Coupez le disjoncteur : qu’est-ce qui s’éteint ?
    .help = Mettez une lampe dans chaque prise et coupez un disjoncteur. Les lampes qui s’éteignent sont sur ce disjoncteur.
    .row = Partage le disjoncteur de
pick-outlet-shares-own = Le sien

ask-outlet-trips = À combien d’ampères s’est-il déclenché ?
    .why = { $about }. Exemple : 17 A. Sinon, tapez aucun.
    .help = Additionnez ce qui marchait quand il s’est déclenché : des watts divisés par 120 font des ampères. S’il ne s’est jamais déclenché au-dessous de son nombre, tapez aucun.
    .row = S’est déclenché à
pick-outlet-trips-none = jamais trop tôt

# ---- What is to run

ask-load-list = Qu’allez-vous brancher ?
    .why = Tapez pour chercher : bouilloire. Cochez tout, ou une liste toute faite.
    .help =
        Les watts sont typiques, plutôt élevés. La plaque de l’appareil vaut mieux : choisissez-le ici, et changez ses watts à la dernière page.
        Les listes toutes faites nomment plusieurs appareils d’un coup. Retirez plus tard ce que vous n’avez pas. S’il y en a deux pareils, cochez-en 2.
        S’il n’est pas dans la liste, choisissez « Autre chose ».
    .row = Quoi
pick-load-list-done = C’est tout

ask-load-what = Qu’allez-vous brancher ?
    .why = Tapez pour chercher : bouilloire.
    .help = S’il n’est pas dans la liste, choisissez « Autre chose ».
    .row = Quoi
pick-load-what-own = Autre chose, que je décrirai
pick-load-what-appliance = { $name }, { $watts } W
pick-load-what-occasion = { $name } : { $count } appareils
    .also = habituel liste occasion modèle

ask-load-name = Comment s’appelle-t-il ?
    .why = Ce nom va sur la carte.
    .help = N’importe quel nom court : pompe à air, ampli de Sam.
    .row = Nom

ask-load-kind = Que fait-il surtout ?
    .why = { $about }. Un moteur prend plus de puissance au démarrage.
    .help = S’il a un moteur et un élément chauffant, comme un sèche-cheveux, choisissez ce qui prend le plus de puissance. Nous supposons que ce qui sert à cuisiner ne marche pas la nuit. Le reste de ce qui chauffe, peut-être. Si la santé de quelqu’un en dépend, un fauteuil roulant aussi, choisissez toujours cela. Si vous ne savez pas, nous supposons le pire de chaque genre, et que la santé de quelqu’un peut en dépendre.
    .row = Genre
pick-load-kind-heater = Chauffe : pièce, lit, cheveux, outil
pick-load-kind-cooker = Cuisine, ou chauffe de l’eau
pick-load-kind-motor = Tourne, pompe ou refroidit (moteur)
pick-load-kind-electronic = Électronique : chargeur, télé, son
pick-load-kind-lamp = Éclaire
pick-load-kind-medical = La santé de quelqu’un en dépend

ask-load-draw = Combien consomme-t-il ? Voyez sa plaque.
    .why = { $about }. Exemples : 1500 W, 12,5 A ou 1/2 hp.
    .help =
        La plaque est derrière ou dessous. W veut dire watts, A veut dire ampères à 120 V, ou à 240 V pour un appareil qui utilise 240 V. Pour un moteur, vous pouvez taper les chevaux (hp), et sa lettre de code si la plaque en a une : 1/2 hp code G.
        La plaque d’un chargeur a deux lignes : prenez INPUT (entrée), pas output (sortie). Vous pouvez la taper telle quelle : 100-240V 50/60Hz 1.5A.
    .row = Consomme

ask-load-count = Combien y en a-t-il ?
    .why = { $about }. Chacun avec sa propre fiche.
    .help = Dix guirlandes branchées l’une dans l’autre font une fiche ; dix chargeurs en font dix.
    .row = Combien

ask-load-starting = Combien prend-il au moment de démarrer ?
    .why = { $about }. Exemples : 2400 W, LRA 39 ; ou inconnu.
    .help = La plaque peut dire starting, surge (démarrage) ou LRA (ampères à rotor bloqué). Tapez les watts comme 2400 W, les ampères comme 39 A ou LRA 39, tels que la plaque les donne. Si vous ne savez pas, nous supposons une valeur prudente pour son genre, et nous le disons.
    .row = Démarrage

ask-load-factor = Quel nombre suit PF sur sa plaque ?
    .why = { $about }. Entre 0,1 et 1. Plus il est bas, plus il faut d’ampères.
    .help = PF est le facteur de puissance. La plaque peut aussi dire cos φ. Ce qui ne fait que chauffer a 1. Si vous ne savez pas, nous supposons une valeur prudente.
    .row = Facteur de puissance

ask-load-continuous = Marche-t-il trois heures ou plus d’affilée ?
    .why = { $about }. À la longue, rallonges et disjoncteurs chauffent.
    .help = Un frigo, un chauffage la nuit, des lumières pour la soirée : oui. Une bouilloire : non.
    .row = Trois heures ou plus

# Safety.
ask-load-backup = Qu’est-ce qui l’alimente si le moteur s’arrête ?
    .why = { $about }. Un moteur s’arrête, la nuit aussi.
    .help =
        { -generator(form: "A") } tombe en panne sèche, un disjoncteur se déclenche, ou quelqu’un arrête le moteur. Une personne endormie ne s’en aperçoit peut-être pas.
        Sa batterie : une batterie faite pour cet appareil, qui tient toute la nuit. Une batterie de voiture avec un convertisseur, ou une batterie que personne n’a essayée, ne compte pas.
        Si vous ne savez pas, nous supposons que rien ne l’alimente.
    .row = Si le courant s’arrête
pick-load-backup-battery = Sa batterie, toute la nuit
pick-load-backup-none = Sans batterie, ou pas toute la nuit

ask-load-plug = Quelle fiche a-t-il ?
    .why = { $about }. La plupart ont la fiche ordinaire.
    .help = Deux lames et une broche ronde : 5-15P. Deux lames seulement : 1-15P.
    .row = Fiche

ask-load-voltage = Quelle tension utilise-t-il ?
    .why = { $about }. Sa plaque dit 120 V, 240 V ou 120/240 V.
    .help = Sa fiche apporte 120 V et 240 V. Ce qui utilise 120 V, comme presque tout dans une { -camper }, est sur une moitié { -generator(form: "of") }. Un appareil pour 240 V seulement, comme un chauffe-eau, charge autant les deux moitiés. Un appareil pour 120/240 V, comme une sécheuse, peut tout mettre sur une moitié. Si vous ne savez pas, nous supposons le pire.
    .row = Tension qu’il utilise
pick-load-voltage-120 = 120 V seulement
pick-load-voltage-240 = 240 V seulement
pick-load-voltage-120-240 = 120 V et 240 V

ask-load-wanted = Quelle est son importance ?
    .why = { $about }. S’il manque de puissance, le facultatif attend.
    .help = L’indispensable a toujours son courant d’abord. Le facultatif prend son tour quand il en reste.
    .row = Importance
pick-load-wanted-must = Indispensable : il doit marcher
pick-load-wanted-wish = Facultatif

ask-load-hours = Quand fonctionne-t-il ?
    .why = { $about }. Exemple : 07:00-07:20, 19-21. À toute heure : aucun.
    .help = Tapez des heures de la journée, début et fin, avec des virgules entre les plages. Avec aucun, nous supposons qu’il peut fonctionner à toute heure.
    .row = Heures
pick-load-hours-none = à toute heure

ask-load-on = Où est-il branché ?
    .why = { $about }. Laissez-nous choisir, ou dites où il doit l’être.
    .help = Seules les prises libres où sa fiche entre sont montrées. Si vous nous laissez choisir, le plan trouve les prises où le plus d’appareils peuvent fonctionner à la fois.
    .row = Branché à
pick-load-on-any = Trouver la meilleure prise

# ---- The site

ask-site-name = Comment s’appelle cette sortie ?
    .why = Ce nom va sur chaque page imprimée.
    .help = Exemple : Sortie à l’anse aux Genévriers.
    .row = Nom

ask-site-ground = Comment est le sol là où vous utilisez le matériel ?
    .why = Un sol mouillé rend un choc bien plus dangereux.
    .help = Pluie, herbe mouillée, flaques, pieds nus au sortir du lac : mouillé. Rosée ou terre humide : humide. Un plancher sec sous un toit : sec. S’il peut pleuvoir, dites mouillé.
    .row = Sol
pick-site-ground-wet = Mouillé : pluie, herbe, flaques
pick-site-ground-damp = Humide : rosée, terre humide
pick-site-ground-dry = Sec : sol sec, sous un toit

ask-site-sleepers = À quelle distance de l’échappement y a-t-il des gens ?
    .why = Les gaz d’échappement tuent ceux qui dorment. Exemple : { example-near }.
    .help =
        Mesurez { -generator(form: "of") } jusqu’à la tente, au véhicule ou au bâtiment le plus proche où il y a des gens, ceux des voisins aussi. Où personne ne dort, comme à un marché, mesurez jusqu’où se tiennent les gens. Comptez chaque pas pour { $step }. Mieux vaut estimer trop court que trop long.
        Les gaz d’échappement contiennent du monoxyde de carbone, qui n’a pas d’odeur. Si vous ne connaissez pas la distance, nous supposons que c’est trop près, et nous le disons.
    .row = Gens les plus proches

ask-site-alarm = Un { -alarm } de monoxyde de carbone là où l’on dort ?
    .why = Un dans chaque tente ou véhicule, en état de marche, piles neuves.
    .help = Ce n’est pas la même chose qu’un { -alarm } de fumée : il porte CO ou monoxyde de carbone. Appuyez sur son bouton d’essai. S’il en manque un à un seul endroit où l’on dort, la réponse est non. Choisissez « Personne … » seulement si personne ne dort, les voisins non plus : un marché ou une corvée de jour.
    .row = { -alarm(form: "One") } de CO
pick-site-alarm-yes = Oui, à chaque endroit
pick-site-alarm-no = Non, ou pas partout
pick-site-alarm-nobody = Personne ne dort ici ni à côté

ask-site-stands = Qu’y a-t-il au-dessus et autour { -generator(form: "of") } ?
    .why = Les gaz doivent pouvoir s’échapper. S’il pleut, arrêtez le moteur.
    .help =
        Si vous déplacez { -generator(form: "the") } quand il pleut, répondez pour cet endroit.
        À l’air libre : rien au-dessus, et { $clear } libres tout autour. Sous un toit : un toit bien au-dessus, ouvert de tous côtés.
        Une tente même ouverte, un porche, une remorque, un garage ouvert ou une caisse comptent comme l’intérieur : des gens sont morts dans chacun. Une bâche ou une housse posée sur { -generator(form: "the") }, un auvent ou une tonnelle pliante au-dessus ou un mur tout près, c’est couvert.
        Si vous ne savez pas, nous supposons que c’est dans ou sous quelque chose, et nous le disons.
    .row = Endroit du moteur
pick-site-stands-open = À l’air libre, { $clear } libres autour
pick-site-stands-roof = Sous un toit haut, ouvert autour
pick-site-stands-covered = Sous bâche, auvent ou près d’un mur
pick-site-stands-enclosed = Dans tente, porche, véhicule, remise

ask-site-building = Alimentera-t-on le câblage d’une maison ou d’un chalet ?
    .why = Cela peut tuer ceux qui travaillent sur la ligne, et vous.
    .help = Répondez Non si vous branchez seulement des choses sur { -generator(form: "the") }, ses rallonges et ses coffrets. Répondez Oui si une rallonge va de là à une prise murale, une entrée ou un panneau d’un bâtiment. Ne branchez jamais une telle rallonge. Seul un { -electrician } peut relier { -generator(form: "the") } à un bâtiment, avec un inverseur de source, qui sépare le bâtiment de la rue. Si vous ne savez pas, nous supposons que oui.
    .row = Alimente un bâtiment

ask-site-altitude = À quelle altitude est-ce ?
    .why = L’air raréfié fait perdre de la puissance. Exemple : { example-altitude }.
    .help = Une carte ou un téléphone le dit. Près de la mer, tapez { example-sea }. Dans le doute, tapez trop haut plutôt que trop bas.
    .row = Altitude

ask-site-air = Quelle température fera-t-il au plus chaud ?
    .why = La chaleur fait perdre de la puissance. Exemple : { example-air }.
    .help = Tapez le maximum prévu, et plus si le moteur est au soleil.
    .row = Air le plus chaud

ask-site-quiet = Quand faut-il le silence au camping ?
    .why = Exemples : 22:00-06:00, 10pm-6am. Sinon, tapez aucun.
    .help = Bien des campings interdisent les { -generator(form: "many") } la nuit. Demandez à l’entrée. 10pm-6am va aussi. Si un panneau donne des heures permises, comme 8am-10am et 4pm-8pm, tapez le reste du jour : 10am-4pm, 8pm-8am.
    .row = Heures de silence
pick-site-quiet-none = aucune

# ---- Cords, adapters and boxes

ask-gear-list = Quels coffrets, adaptateurs et rallonges avez-vous ?
    .why = Cochez tout, même ce que vous ne pensez pas utiliser.
    .help = Indiquez aussi les adaptateurs bizarres : ce sont souvent les plus dangereux. Le nom entre parenthèses, comme L5-30, est moulé près des trous ou des lames. S’il y en a deux pareils, cochez-en 2.
    .row = Quoi
pick-gear-list-done = C’est tout

ask-gear-what = Quels coffrets, adaptateurs et rallonges avez-vous ?
    .why = Choisissez ce que c’est.
    .help = Indiquez aussi les adaptateurs bizarres : ce sont souvent les plus dangereux. Le nom entre parenthèses, comme L5-30, est moulé près des trous ou des lames.
    .row = Quoi
pick-gear-what-extension = Rallonge ordinaire (5-15)
pick-gear-what-three-way = Rallonge, 3 prises ordinaires (5-15)
pick-gear-what-strip = Multiprise, 6 prises (5-15)
pick-gear-what-twist-30 = Rallonge 30 A à tourner (L5-30)
pick-gear-what-camper-30 = Cordon 30 A de { -camper } (TT-30)
pick-gear-what-twist-30-four = Rallonge 30 A à tourner, 4 (L14-30)
pick-gear-what-split-30 = Répartiteur L5-30 vers 3 ordinaires
pick-gear-what-split-30-four = Répartiteur L14-30 vers 4 ordinaires
pick-gear-what-camper-to-twist = Adaptateur fiche L5-30 vers TT-30
pick-gear-what-camper-to-home = Adaptateur fiche 5-15 vers TT-30
pick-gear-what-home-to-camper = Adaptateur fiche TT-30 vers 5-15
pick-gear-what-four-to-twist = Adaptateur fiche L14-30 vers L5-30
pick-gear-what-cord = Autre rallonge ou adaptateur
    .also = fil cordon
pick-gear-what-box-twist-30 = Coffret, disjoncteurs, entrée L5-30
pick-gear-what-box-camper-30 = Coffret, disjoncteurs, entrée TT-30
pick-gear-what-box-twist-30-four = Coffret, disjoncteurs, entrée L14-30
pick-gear-what-box-50 = Coffret, disjoncteurs, entrée 14-50
pick-gear-what-box = Autre coffret à disjoncteurs
    .also = gris boîte tableau métal
pick-gear-what-camper = { -camper(form: "One") } ou autocaravane (VR)
    .also = roulotte fourgon

ask-gear-plug = Quelle fiche y a-t-il dessus ?
    .why = { $about } : le bout avec des lames.
    .help = Cherchez le nom moulé entre les lames.
    .row = Fiche

# Safety.
ask-gear-main = Quel nombre porte son disjoncteur principal ?
    .why = { $about } : l’interrupteur marqué « Main », en ampères.
    .help = Il est à l’intérieur, avec les autres disjoncteurs. Ne dévissez rien. Si vous ne savez pas, nous supposons ce pour quoi sa fiche est faite.
    .row = Disj. principal

ask-gear-inside = Qu’est-ce qui marche à l’intérieur ?
    .why = { $about }. Cochez ce qui y est câblé ou branché.
    .help = Cochez tout ce qui marche dedans : le climatiseur, le chauffe-eau, un ordinateur. Tout cela passe par la fiche et le disjoncteur principal, et n’a besoin d’aucune autre prise.
    .row = Marche à l’intérieur
pick-gear-inside-done = C’est tout ce qui marche dedans

ask-gear-ends = Quelles prises y a-t-il à l’autre bout ?
    .why = { $about }. Cochez chacune, et combien.
    .help = Regardez les trous et le nom moulé à côté. Cochez chaque forme. S’il y en a plusieurs pareilles, cochez combien.
    .row = Bouts
pick-gear-ends-done = Ce sont tous ses bouts

ask-gear-jacket = Qu’est-ce qui est imprimé le long de la rallonge ?
    .why = { $about }. Exemple : SJTW 12/3. 12/3 seul suffit.
    .help =
        C’est imprimé le long de la gaine, à peu près à chaque pied. 12/3 veut dire trois fils de calibre 12. Un numéro plus petit (AWG, le calibre américain) est un fil plus gros. Les lettres disent de quoi est faite la gaine : avec un W, elle peut servir dehors.
        Les rallonges métriques disent 3G1.5 ou 3x2.5 mm2.
        Si vous ne pouvez pas lire, tapez inconnu. Nous supposons alors une rallonge mince, d’intérieur, et nous le disons.
    .row = Imprimé dessus

ask-gear-length = Quelle est sa longueur ?
    .why = { $about }. Exemple : { example-length }.
    .help = L’envergure de vos bras est à peu près votre taille : comptez les brassées le long de la rallonge. S’il faut encore l’acheter, tapez jusqu’où elle doit aller.
    .row = Longueur

ask-gear-outdoor = Est-elle marquée pour l’extérieur ?
    .why = { $about }. Le soleil et l’eau fendent une gaine d’intérieur.
    .help = Cherchez « outdoor » (extérieur) sur son étiquette, ou un W dans les lettres le long de la gaine.
    .row = Extérieur

ask-gear-coiled = En restera-t-il en rouleau ou sur un dévidoir ?
    .why = { $about }. Enroulée, elle ne refroidit pas et peut fondre.
    .help = Déroulez toujours toute la rallonge. Si elle reste sur un dévidoir ou en tas, la réponse est oui.
    .row = Enroulée

ask-hot = Cela a-t-il déjà chauffé ou ramolli, fiche comprise ?
    .why = { $about }. Une connexion lâche chauffe, et peut mettre le feu.
    .help = Tiède est normal sous forte charge. Si vous ne pouviez pas y laisser la main, ou si c’est bruni ou mou, répondez oui. Nous disons alors de ne plus s’en servir.
    .row = A chauffé

ask-bought = L’avez-vous déjà ?
    .why = S’il reste à l’acheter, nous disons ce qu’il faut chercher.
    .help = Répondez Non pour ce que vous pensez seulement acheter. Dites ce que vous savez, et « Je ne sais pas » pour le reste. Nous disons alors ce qui doit figurer sur l’emballage.
    .row = Déjà là
pick-not-bought = Pas encore acheté

ask-gear-gfci = A-t-elle des boutons TEST et RESET ?
    .why = { $about }. Ils veulent dire qu’elle a un { -gfci } intégré.
    .help = Un petit boîtier sur la rallonge, avec deux boutons et les lettres GFCI.
    .row = { -gfci(form: "One") }

ask-gear-listed = Le coffret est-il d’usine, certifié par un laboratoire ?
    .why = { $about }. Fait maison, il peut lui manquer ce qui protège.
    .help = Cherchez la marque d’un laboratoire d’essai sur son étiquette : le coffret est alors certifié (« listed »). Un coffret que quelqu’un a monté n’est pas certifié, si bien monté soit-il.
    .row = D’usine, certifié

ask-gear-bond = Neutre et terre sont-ils reliés dans le coffret ?
    .why = { $about }. Ses papiers le disent. Ne l’ouvrez pas.
    .help = Le courant revient par le neutre. Le fil de terre est là pour la sécurité. Cherchez « neutral bonded » (neutre relié) ou « isolated neutral » (neutre isolé) dans ses papiers. Ne l’ouvrez pas pour le savoir. Si vous ne savez pas, nous vous disons ce que cela veut dire.
    .row = Neutre relié dedans

ask-gear-from = À quoi est-ce branché ?
    .why = { $about }. Si vous avez le choix : au plus près { -generator(form: "of") }.
    .help = Seules les prises libres où sa fiche entre sont montrées. S’il n’y en a pas, ou si cela ne sert pas, choisissez « Rien ».
    .row = Branché à
pick-gear-from-none = Rien : cela ne sert pas

ask-gear-color = Quelle est sa couleur ?
    .why = { $about }. Elle va sur son étiquette.
    .help = Un camp a beaucoup de rallonges. À sa couleur, chacun trouve la bonne. Si elle n’a pas de couleur nette, mettez du ruban d’une seule couleur aux deux bouts, et choisissez celle-là. Ou choisissez « Autre chose », et tapez votre propre mot.
    .row = Couleur
pick-gear-color-orange = Orange
pick-gear-color-yellow = Jaune
pick-gear-color-green = Vert
pick-gear-color-black = Noir
pick-gear-color-blue = Bleu
pick-gear-color-red = Rouge
pick-gear-color-gray = Gris
pick-gear-color-white = Blanc
pick-gear-color-brown = Marron
pick-gear-color-own = Autre chose : je vais le taper
pick-gear-color-none = Aucune de celles-ci : pas de nom

ask-gear-name = Comment l’appelez-vous ?
    .why = { $about }. Son étiquette le dit, pour la reconnaître : rayée.
    .help = Lettres et chiffres, - et _. Ce nom va sur son étiquette, pour savoir laquelle est laquelle.
    .row = Nom

ask-out-list = Quelles prises a le coffret ?
    .why = { $about }. Cochez, et combien. Deux sur un disjoncteur : 1.
    .help = Cochez chaque forme avec le nombre de son disjoncteur. S’il y en a plus, chacune avec son disjoncteur, cochez combien. Comptez les disjoncteurs, pas les trous.
    .row = Prises
pick-out-list-done = Ce sont toutes ses prises

ask-out-face = Quelles prises, et quel nombre par disjoncteur ?
    .why = { $about }.
    .help = Des prises de même forme avec le même disjoncteur sont une seule sorte.
    .row = Forme

ask-out-count = Combien comme cela, chacune avec son disjoncteur ?
    .why = { $about }. Deux prises sur un disjoncteur comptent pour 1.
    .help = Comptez les disjoncteurs, pas les trous.
    .row = Combien

ask-out-breaker = { $about } : quel nombre porte chaque disjoncteur ?
    .why = Exemple : 20 A. S’il n’y en a pas, tapez aucun.
    .help = Un répartiteur sans disjoncteurs ne protège rien : tapez aucun. S’il y a des disjoncteurs sans nombre lisible, tapez inconnu.
    .row = Disjoncteur
pick-out-breaker-none = pas de disjoncteur

ask-out-gfci = { $about } : boutons TEST et RESET ?
    .why = Ils sont faits pour couper en cas de choc.
    .help = Sur la prise elle-même ou sur son disjoncteur, avec les lettres GFCI. Si seulement certaines en ont, répondez non.
    .row = { -gfci(form: "One") }

ask-out-places = Comment sont-elles disposées ?
    .why = { $about }. Les étiquettes et la carte les nomment ainsi.
    .help = Côte à côte, elles s’appellent gauche et droite. L’une au-dessus de l’autre, haut et bas. Avec des numéros, vous choisissez laquelle est la 1 en collant les étiquettes.
    .row = Disposition
pick-out-places-across = Côte à côte : gauche, droite
pick-out-places-down = L’une sur l’autre : haut, bas
pick-out-places-number = Par numéro : 1, 2

ask-out-leg = { $about } : quelle moitié { -generator(form: "of") } ?
    .why = A ou B ; ou une lettre par prise, A A B B.
    .help = Un modèle 120/240 V a deux moitiés, A et B. Un coffret répartit ses prises entre elles. Ses papiers disent laquelle est sur quelle moitié ; n’ouvrez pas le coffret. Une seule lettre vaut pour toutes. Ou tapez-en une par prise, de la première à la dernière : A A B B. Si vous ne savez pas, nous supposons que toutes sont sur A : ensemble, elles ont alors le moins de puissance.
    .row = Moitié

ask-out-wire = { $about } : quel calibre de fil disent ses papiers ?
    .why = Exemple : 12 AWG, dans ses papiers. N’ouvrez jamais le coffret.
    .help = Seuls ses papiers le disent. AWG est le calibre du fil : un numéro plus petit est un fil plus gros. N’ouvrez pas le coffret pour le savoir.
    .row = Fil

# ---- The shapes, in short

face-5-15R = Ordinaire
    .also = normale maison mur plate
face-5-20R = Ordinaire, en T
    .also = normale maison mur
face-TT-30R = { -camper(form: "One") }
    .also = autocaravane roulotte grosse
face-L5-20R = À tourner, 3
    .also = ronde tourne verrouillage trois fentes 3 fentes
face-L5-30R = À tourner, 3
    .also = ronde tourne verrouillage trois fentes 3 fentes
face-L14-20R = À tourner, 4
    .also = ronde tourne verrouillage quatre fentes 4 fentes
face-L14-30R = À tourner, 4
    .also = ronde tourne verrouillage quatre fentes 4 fentes
face-14-30R = Grosse, 4
    .also = carrée sécheuse quatre fentes 4 fentes
face-14-50R = Grosse, 4
    .also = carrée autocaravane quatre fentes 4 fentes
face-6-20R = 240 V seul
    .also = fente couchée
face-1-15R = Sans terre
    .also = vieille deux fentes plate

shape-5-15R = Ordinaire, 15 A (5-15R)
shape-5-20R = Ordinaire avec fente en T, 20 A (5-20R)
shape-TT-30R = { -camper(form: "One") }, 30 A (TT-30R)
shape-L5-20R = À tourner, 3 fentes, 20 A (L5-20R)
shape-L5-30R = À tourner, 3 fentes, 30 A (L5-30R)
shape-L14-20R = À tourner, 4 fentes, 20 A (L14-20R)
shape-L14-30R = À tourner, 4 fentes, 30 A (L14-30R)
shape-14-30R = Droite, 4 fentes, 30 A (14-30R)
shape-14-50R = Droite, 4 fentes, 50 A (14-50R)
shape-6-20R = 240 V seulement, 20 A (6-20R)
shape-1-15R = Ordinaire, sans terre, 15 A (1-15R)
shape-5-15P = Ordinaire, 3 broches, 15 A (5-15P)
shape-5-20P = Une lame tournée, 20 A (5-20P)
shape-TT-30P = { -camper(form: "One") }, 30 A (TT-30P)
shape-L5-20P = À tourner, 3 lames, 20 A (L5-20P)
shape-L5-30P = À tourner, 3 lames, 30 A (L5-30P)
shape-L14-20P = À tourner, 4 lames, 20 A (L14-20P)
shape-L14-30P = À tourner, 4 lames, 30 A (L14-30P)
shape-14-30P = Droite, 4 lames, 30 A (14-30P)
shape-14-50P = Droite, 4 lames, 50 A (14-50P)
shape-6-20P = 240 V seulement, 20 A (6-20P)
shape-1-15P = Ordinaire, sans terre, 15 A (1-15P)

# At most 38 columns and 13 lines, so that a question fits below it. Drawn as on the labels.
drawn-faces =
    Le nom moulé près des trous décide.
    Dessins de mémoire, parfois à
    l’envers sur les vôtres.
    {" "}
    {" "}5-15R   5-20R   TT-30R  6-20R
    {" "}|   |  -|   |   /   \   |   -
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30R  L14-30R 14-50R  1-15R
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20R, L14-20R : comme 30, plus petit.
# The same for plugs, seen from their blades: left and right are changed.
drawn-plugs =
    Le nom moulé entre les broches décide.
    Dessins de mémoire, parfois à
    l’envers sur les vôtres.
    {" "}
    {" "}5-15P   5-20P   TT-30P  6-20P
    {" "}|   |   |   -   /   \   -   |
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30P  L14-30P 14-50P  1-15P
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20P, L14-20P : comme 30, plus petit.

# ---- The review page

ask-review = Est-ce juste ?
    .why = Choisissez une ligne à changer. ! : nous avons supposé le pire.
    .help = Chaque ligne est une partie de votre plan. Choisissez-en une pour voir et changer ses réponses. Là où il y a un !, nous avons supposé le cas le plus dangereux, et la vérification le dit. Le nombre après « Vérifier » compte les questions à ce sujet.
pick-review-check = Vérifier ce plan
# $count: how many questions that is.
pick-review-look = Vérifier ce que nous ignorons ({ $count })
pick-review-add = Ajouter prise, appareil ou rallonge
pick-review-add-outlet = Ajouter une prise
pick-review-add-load = Ajouter un appareil à brancher
pick-review-add-gear = Ajouter rallonge ou coffret
pick-review-quit = Arrêter ici, garder mes réponses
pick-review-stay = Continuer avec le plan

ask-review-add = Que faut-il ajouter ?
    .why = Ses questions viennent ensuite.
    .help = Esc ramène au plan entier.

ask-review-quit = Arrêter ici ?
    .why = Nous gardons vos réponses.
    .help = Esc ramène au plan entier.

ask-review-part = { $about } : que changer ?
    .why = Choisissez une ligne pour y répondre de nouveau.
    .help = Esc ramène au plan entier.
pick-review-back = Rien de plus ici : retour

part-generator = { -generator(form: "One") }
part-fuel = Carburant et bruit
part-outlets = { -gfci(form: "One") }
part-site = Lieu
part-load = Autre chose
part-out = Prises de { $box }

# ---- Between questions

# A bare number, with the unit it was taken in.
note-unit = Compris : { $answer }.
note-added = Ajouté ({ $count }) : { $things }.
# Of generators that run as one.
note-joined = Nous comptons { $rated } pour chaque { -generator }. Si c’est pour l’ensemble, revenez en arrière et tapez les watts de chaque { -generator }.
note-load-left = Votre liste fait { $all } sur { $rated } jusqu’ici. Reste { $left }, moins en altitude ou par temps chaud.
note-load-named = Votre liste fait { $all } jusqu’ici. Nous ignorons ce que { -generator(form: "the") } donne.
note-load-turns = { $all } en tout, mais { -generator(form: "the") } donne { $rated } : pas tout à la fois. Les appareils peuvent marcher à tour de rôle.
note-load-cannot-start = { $load } : pour démarrer, il faut { $starting } un instant. { -generator(form: "The") } donne { $peak } au plus : cet appareil ne peut pas démarrer.
note-load-too-large = { $load } : cet appareil seul demande { $this }. { -generator(form: "The") } donne { $rated } : il ne peut pas fonctionner.

# The first line stands out.
note-danger =
    { $signal } : { $title }
    Pourquoi : { $why }
    À faire : { $fix }
# Safety. The same where the title says already what we do not know.
note-danger-unknown =
    { $signal } : { $title }
    À faire : { $fix }
# $more: the parts that it was not told of before; $named: whether the title names them.
note-danger-also = { $named ->
        [yes] { $signal }, aussi : { $title }
       *[no] { $signal }, aussi pour { $more } : { $title }
    }
# It was a danger, and is not gone.
note-danger-milder =
    Maintenant seulement { $signal } : { $title }
    À faire : { $fix }
note-danger-gone = Ce danger est éliminé : { $title }
# Only because these parts are in no outlet now; $named: whether the title names them.
note-danger-unplugged = { $named ->
        [yes] Ce n’est pas branché, donc pas de danger pour l’instant : { $title }
       *[no] Plus branché : { $more }. Donc pas de danger pour l’instant : { $title }
    }

picture-set = { $name }
picture-place = - { $id } ({ $shape }) : { $amps }
picture-refused = - { $id } ({ $shape }) : ne pas utiliser
picture-guarded = - { $id } ({ $shape }) : branchez seulement une rallonge GFCI
picture-guarded-ahead = - { $id } ({ $shape }) : branchez une rallonge GFCI en amont
picture-load = * { $load }
picture-unplaced = Pas de prise jusqu’ici pour : { $ids }
picture-loose = Non branché : { $ids }

note-unknown = Noté comme inconnu.
# Safety. $part: the id of a cord or box, and what it is; $rest: what is plugged in past it, and $count how many.
note-unplugged = { $part } : non branché dans le plan{ $count ->
        [0] {""}
       *[other] , et rien de ce qui suit n’a de courant : { $rest }
    }. Nous ne l’avons donc pas vérifié. Ne l’utilisez pas avant de savoir. Choisissez alors sa ligne à la dernière page.
# It fits one place, and nobody is asked. $part, $place: ids.
note-plugged = « { $part } » se branche dans « { $place } » : aucune autre prise libre ne convient.
# Safety.
note-fits-nowhere = Aucune prise jusqu’ici ne reçoit la fiche de « { $part } ». S’il n’en vient pas d’autre, laissez-la débranchée. Ne limez, ne pliez, ne coupez jamais une fiche.
# Safety. $adapters: one or more of the list, each in quotation marks.
note-fits-by-adapter = Aucune prise jusqu’ici ne reçoit la fiche de « { $part } ». Cet adaptateur, oui : { $adapters }. N’en utilisez qu’un certifié par un laboratoire, et cochez-le avec vos rallonges. Ne limez, ne pliez, ne coupez jamais une fiche.
# What was read on a cord. $wire: 12 AWG; $count: how many wires, or unknown.
note-jacket = Nous avons lu : calibre { $wire }{ $count ->
        [unknown] {""}
       *[other] , { $count } conducteurs
    }{ $outdoor ->
        [yes] , pour l’extérieur
        [no] , pour l’intérieur
       *[unknown] {""}
    }.
note-first-line = Nous n’en avons pris que la première ligne.
note-not-bought = À la fin, nous disons ce qu’il faut chercher en l’achetant.
plain-list-long = { $count } choix. Tapez une partie d’un nom pour voir ceux qui correspondent.
plain-list-found = Ceux-ci correspondent. Tapez un nombre ou une plus grande partie du nom.
plain-not-text = Nous ne pouvons pas lire une lettre de cette ligne. Tapez-la encore une fois.
plain-keys = Tapez un nombre ou une partie d’un nom. ? : aide, < : retour
plain-many-keys = Tapez des numéros ou des noms, avec des virgules. 2 x 5 : deux fois le numéro 5. ? : aide, < : retour
plain-line-keys = ? : aide, < : retour
plain-row = { $number }. { $text }
plain-default = Entrée : { $text }

reject-choice = Choisissez-en un dans la liste.
reject-nothing-inside = Rien du tout ? Si rien ne marche à l’intérieur, appuyez encore sur Entrée.
reject-mark-one = Cochez-en au moins une.
reject-ready-made = Une liste toute faite compte une fois. S’il y a deux fois la même chose, cochez cette chose avec 2.
reject-yes-no = Répondez oui ou non.
reject-empty-text = Tapez un nombre avec son unité ({ $units }).
reject-no-number = Commencez par un nombre, puis son unité ({ $units }).
reject-no-unit = « { $found } » n’a pas d’unité. Ajoutez-la : { $units }.
reject-unknown-unit = « { $found } » ne va pas ici. Prenez l’une de ces unités : { $units }.
reject-out-of-range = { $field } : il faut de { $least } à { $most }. Cherchez une faute de frappe ou une mauvaise unité.
reject-zero = Il faut plus que zéro.
reject-ratio = Un nombre de { $least } à { $most }, comme 0,8.
reject-count = Un nombre entier de { $least } à { $most }.
# $decimals is the one reading, $thousands the other.
reject-two-readings = { $found } peut vouloir dire { $decimals } ou { $thousands }. Tapez l’un des deux.
reject-ident = Lettres et chiffres, - et _, sans espaces, 40 au plus.
reject-ident-taken = Une autre partie a ce nom. Choisissez-en un autre.
reject-name-empty = Tapez un nom.
reject-name-long = Au plus { $most } lettres, pour tenir sur une étiquette.
reject-name-signs = Ce signe ne peut pas être dans un nom.
reject-name-letters = Nous n’avons pas de lettres pour imprimer { $characters }. Utilisez d’autres lettres.
reject-wire = Un calibre de fil, comme 12 AWG ou 2,5 mm².
reject-jacket = Comme 12/3, SJTW 12/3, 14 AWG ou 3G1.5 ; ou inconnu.
reject-unknown-shape = Comparez avec ces dessins. Si aucun ne ressemble, ne la mettez pas dans le plan et n’y branchez rien. Collez du ruban adhésif dessus : NE PAS UTILISER. Puis choisissez-en une que vous connaissez, ou continuez. Si vous n’en connaissez aucune, demandez à quelqu’un qui les connaît : Ctrl-C arrête et garde vos réponses.
reject-noise = Le niveau, puis la distance : 58 dBA à { example-noise-far }. Ou inconnu.
reject-runtime = Un pourcentage, puis des heures : 25 % 8,5 h, 100 % 3,1 h. Ou inconnu.
reject-span = De et à : 22:00-06:00, ou 10pm-6am.
reject-draw = Watts, ampères ou chevaux : 1500 W, 12,5 A, 1/2 hp.
reject-draw-code = La lettre de code est une lettre de A à V : 1/2 hp code G.
reject-start = Watts ou ampères : 2400 W, 39 A ou LRA 39. Ou inconnu.
reject-plug-amps = Cela fait { $amps }. Sa fiche, { $plug }, est faite pour { $rating }. Aucun fabricant ne vend un tel appareil : la fiche ou le nombre n’est pas juste. Relisez sa plaque, et regardez sa fiche.
reject-legs = A ou B pour toutes, ou une lettre par prise : A A B B. Ou inconnu.
reject-legs-count = Une lettre pour toutes, ou { $count } lettres, une par prise.
reject-peak = La pointe n’est jamais sous la puissance nominale, { $rated }. Ou tapez inconnu.
reject-starting = Le démarrage ne demande jamais moins que la marche, { $running }. Ou tapez inconnu.
reject-trips = C’est au-dessus de son nombre, { $marked }. Trop tôt veut dire au-dessous.
reject-shares = Un disjoncteur a un seul nombre. Ici c’est { $own }, là { $other }. Revenez en arrière et corrigez, ou choisissez-en un autre.
reject-no-unknown = Impossible de continuer sans cette réponse. Tapez ? pour savoir où la trouver.
reject-no-skip = Il faut une réponse ici. Tapez ? pour de l’aide.
reject-first = C’est la première question. Ctrl-C arrête et garde vos réponses.
reject-full = Un plan ne peut pas en contenir plus.

interview-no-terminal = il faut un terminal ou des réponses pour les questions, et il n’y a ni l’un ni l’autre
interview-no-terminal-help = Vérifiez plutôt un fichier du plan : tallywatt check PLAN. Ou donnez les réponses, une par ligne : tallywatt --answers FICHIER.
interview-too-large = { $path } a plus de parties que les questions ne peuvent en parcourir
interview-too-large-help = Changez-le avec un éditeur de texte, puis : { $command }.
interview-saved = Enregistré dans { $path }. Pour imprimer : { $command }
interview-goes-on = Nous reprenons vos changements de ce plan qui n’étaient pas encore enregistrés.
interview-no-home = il n’y a pas de dossier pour elles ; indiquez-en un dans TALLYWATT_DATA
interview-terminal = le terminal ne répond plus : { $reason }
interview-not-kept = Nous ne pouvons pas garder vos réponses au fur et à mesure ({ $reason }). Si vous arrêtez avant la fin, elles sont perdues. À la fin, vous pouvez encore enregistrer le plan.
interview-draft-lost = Nous ne pouvons pas lire le brouillon { $path }. Il reste tel quel.
interview-stopped-lost = Arrêté. Vos réponses n’ont pas été gardées.
interview-kept = Vos réponses sont gardées, dans le brouillon « { $draft } ».
interview-stopped = arrêté ; rien n’a changé
interview-resume = Lancez de nouveau tallywatt pour continuer à partir de là.
interview-resume-question = Continuer un plan inachevé ?
interview-resume-why = Nous gardons chacun jusqu’à l’impression.
interview-resume-help = Choisissez-en un par son numéro ou par le début de sa ligne, et continuez là où vous étiez. Nous gardons les autres.
# Cut after 36 columns on a small screen, so what tells drafts apart comes first and the age last.
interview-resume-row = { $draft }, { $date } : { $name }, { $age }
interview-resume-row-bare = { $draft }, { $date }, { $age }
interview-age-minutes = { $count ->
        [0] à l’instant
        [one] il y a 1 minute
       *[other] il y a { $count } minutes
    }
interview-age-hours = { $count ->
        [one] il y a 1 heure
       *[other] il y a { $count } heures
    }
interview-age-days = { $count ->
        [one] hier
       *[other] il y a { $count } jours
    }
interview-resume-new = Commencer un nouveau plan

interview-effect = Ce que votre changement a fait :
interview-effect-gone = - éliminé : { $signal }, { $title }
interview-effect-new = - nouveau : { $signal }, { $title }
interview-effect-none = - les constats sont les mêmes qu’avant
interview-file-changed = Quelqu’un d’autre a changé { $path } entre-temps. Nous avons ajouté vos changements à la nouvelle version. Vérifiez de nouveau.
interview-after = Et maintenant ?
    .why = Ce qu’il faut faire d’abord est au-dessus.
    .none = Imprimez-le, et posez les étiquettes avant de brancher.
interview-after-save = Enregistrer le fichier du plan
interview-after-print = Imprimer les étiquettes et la carte
interview-after-change = Changer quelque chose
interview-after-look = Vérifier ce que nous ignorons
interview-after-all = Voir tout ce que nous avons trouvé
interview-after-mend = Montrer les changements faciles
interview-after-take = Choisir des changements, un par un
interview-take = Quels changements mettre dans le plan ?
    .why = Tous sont cochés. Décochez ceux que vous ne ferez pas.
interview-take-done = Mettre dans le plan ce qui est coché
interview-after-leave = Arrêter ici, garder mes réponses
interview-folder = Dans quel dossier les mettre ?
    .why = Il est créé s’il n’existe pas. Le plan y va aussi.
    .help = Tapez un nom, comme : impressions. Entrée prend le nom montré. Un dossier qui contient un autre plan n’est pas accepté.
interview-folder-taken = Il y a déjà un plan dans { $dir }. Donnez un autre dossier.
