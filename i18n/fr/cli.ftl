# The command line: help, results and failures.

cli-about = Tapez simplement tallywatt : il vous pose une question à la fois, et imprime à la fin. Il planifie le courant d’un campement avec { -generator(form: "a") } : ce que chaque prise peut supporter, ce qui peut fonctionner ensemble, ce qui est dangereux. Il imprime les étiquettes et la carte qui le disent.
cli-after = Ce qu’il vous dit ne remplace ni { -local-codes } ni un { -electrician }.
cli-heading-usage = Utilisation :
cli-heading-commands = Commandes
cli-heading-options = Options
cli-heading-arguments = Arguments
cli-more = Pour des exemples et les états de sortie, lancez « { $help } ».
cli-heading-examples = Exemples :
cli-heading-status = État de sortie :
# Behind its number in a list.
cli-status-done = c’est fait
cli-status-clear = rien de pire qu’un point d’attention
cli-status-warning = un avertissement, et aucun danger
cli-status-danger = un danger
cli-status-danger-or-lost = un danger, ou un appareil indispensable sans prise
cli-status-yes = oui
cli-status-no = non
cli-status-right = rien n’est faux
cli-status-wrong = quelque chose est faux
cli-status-usage = nous ne comprenons pas la commande
cli-status-plan = le plan a une erreur
cli-status-write = nous ne pouvons pas l’écrire ou l’imprimer
cli-status-stopped = vous l’avez arrêté
cli-help = Montrer l’aide d’une commande
cli-help-command = La commande ; sans elle, l’aide de tout le programme
cli-arg-answers = Lire les réponses dans ce fichier, une par ligne, au lieu de poser les questions ; "-" lit l’entrée standard
cli-arg-plain = Demander ligne par ligne, l’une après l’autre, pour les lecteurs d’écran
cli-arg-language = La langue de l’écran et des impressions, comme es ou fr-CA ; par défaut, celle du plan ou du système
cli-arg-units = Pieds, gallons et °F, ou mètres, litres et °C ; par défaut, selon la région de la langue
cli-arg-color = Couleurs à l’écran ; "auto" les utilise dans un terminal, sauf si NO_COLOR existe
cli-arg-print-language = La langue des impressions, si ce n’est pas celle de l’écran ; énumérez-en plusieurs (es,fr) pour les avoir dans chacune
cli-arg-help = Montrer l’aide ; --help montre aussi des exemples
cli-arg-version = Montrer la version

cli-ask = Changer un fichier du plan en répondant à des questions ; les commentaires que vous y avez écrits restent en place
cli-ask-plan = Le fichier du plan
cli-ask-answers = { cli-arg-answers }
cli-ask-plain = { cli-arg-plain }
# What stands for a value. Capitals.
cli-value-options = [OPTIONS]
cli-value-command = [COMMANDE]
cli-value-card = FORMAT
cli-value-code = CODE
cli-value-dir = DOSSIER
cli-value-file = FICHIER
cli-value-format = FORMAT
cli-value-ink = ENCRE
cli-value-language = LANGUE
cli-value-load = APPAREIL
cli-value-n = NOMBRE
cli-value-new = NOUVEAU
cli-value-name = NOM
cli-value-new-toml = NOUVEAU.toml
cli-value-old = ANCIEN
cli-value-paper = PAPIER
cli-value-plan = PLAN
cli-value-print = IMPRESSION
cli-value-right-down = DROITE, BAS
cli-value-signal = SIGNAL
cli-value-units = UNITÉS
cli-value-when = QUAND
cli-value-words = MOTS
cli-value-yyyy-mm-dd = AAAA-MM-JJ
cli-values = [{ $values }]
cli-default = [par défaut : { $value }]

# A call that is wrong.
usage-unknown-argument = il n’y a pas d’option ni d’argument { $argument } ici
usage-unknown-command = il n’y a pas de commande { $argument }
usage-wrong-value = { $argument } ne peut pas être « { $value } »
usage-no-value = { $argument } demande une valeur
usage-missing = { $argument } manque
usage-conflict = { $argument } et { $other } ne vont pas ensemble
usage-twice = { $argument } a été donné deux fois
usage-answers = --answers ne s’emploie qu’avec les questions : seul, ou avec ask
usage-other = impossible de comprendre cet appel : { $argument }
usage-allowed = Choisissez parmi : { $allowed }.
usage-nearest = Vouliez-vous dire { $nearest } ?
usage-help = Lancez « { $help } » pour voir les options.
usage-plan = C’est un plan. Pour le vérifier, lancez : { $command }
usage-plan-first = Nommez d’abord le plan : { $command }
usage-date = Écrivez un jour du calendrier comme AAAA-MM-JJ, par exemple 2026-07-04, ou "today".
usage-no-language = il n’y a pas de langue « { $tag } » ici
cli-demo = Faire toutes les impressions d’un exemple inventé, sans aucune question
cli-demo-fixed = Le même exemple, ses dangers éliminés
cli-demo-into = Le dossier où écrire ; par défaut, tallywatt-demo

cli-check = Vérifier des plans et dire ce qui ne va pas, le pire d’abord
cli-check-plans = Fichiers de plan ; "-" en lit un sur l’entrée standard
cli-check-long = Dire aussi pourquoi, et ce que chaque prise supporte
cli-check-format = "text" pour les gens ; "json" pour les programmes, un rapport par plan
cli-check-fail-on = Finir avec l’état 0 sauf si un constat est aussi grave ou pire

cli-print = Imprimer un plan : étiquettes pour le matériel, carte à suspendre, précautions à cocher, note de calcul de tous les nombres
cli-print-plan = Le fichier du plan ; "-" le lit sur l’entrée standard
cli-print-into = Le dossier où écrire
cli-print-paper = Le papier dans l’imprimante
cli-print-stock = La planche d’étiquettes par son nom, comme letter-30 ou roll-24, ou votre propre fichier en .toml ; un nom inconnu affiche la liste
cli-print-start-at = La première étiquette à imprimer, si la planche est entamée
cli-print-copies = Combien de chaque étiquette
cli-print-offset = Déplacer les étiquettes à droite et vers le bas sur leur planche, de { $measure ->
        [metric] 10 mm
       *[customary] 0,39 in
    } au plus, pour une imprimante qui décale : { $measure ->
        [metric] "1 mm, -0.5 mm"
       *[customary] "0.04 in, -0.02 in"
    }
cli-print-alignment = Imprimer aussi une page avec des règles qui montre où tombent les étiquettes, à comparer avec une planche
cli-print-only = Faire seulement cette impression ; répétez l’option pour plusieurs
cli-print-card = Le format de la carte : une feuille par face ; une demi-feuille (A5, demi-lettre) ou le format poche, à plier. Pour le téléphone : une colonne étroite, avec des images
cli-print-ink = "black" imprime en noir sur blanc, sans couleurs ni gris
cli-print-date = La date à imprimer sur chaque feuille ; les fichiers sont alors faits pour durer des années (PDF/A-2a)
cli-print-png = Écrire aussi une image de chaque page, et contact.png avec toutes
cli-print-templates = Un dossier avec vos propres modèles ; "tallywatt templates" écrit ceux dont on part

cli-templates = Écrire les modèles des impressions dans un dossier, pour les changer et imprimer avec les vôtres
cli-templates-into = Le dossier où écrire ; un fichier qui existe n’est pas touché
templates-how = Changez ce que vous voulez. Puis imprimez avec "tallywatt print PLAN --into DOSSIER --templates { $dir }". S’il manque un modèle dans le dossier, le programme prend le sien.
templates-none = il n’y a pas de modèles dans { $path }
templates-none-hint = "tallywatt templates --into DOSSIER" écrit ceux dont on part.
templates-failed-hint = Les modèles de { $path } sont peut-être d’une autre version de tallywatt. Lancez "tallywatt templates --into DOSSIER" avec un nouveau dossier, refaites-y vos changements et imprimez avec ce dossier.

cli-may = Demander avant de brancher : peut-on mettre ceci en marche, dans quel ordre, et que montrera un voltmètre
cli-may-plan = Le fichier du plan ; "-" le lit sur l’entrée standard
cli-may-loads = Ce que vous voulez mettre en marche, par son nom ; mettez entre guillemets un nom qui a des espaces
cli-may-while = Ce qui fonctionne déjà
cli-may-format = "text" pour les gens ; "json" pour les programmes

cli-learned = Mettre dans le plan ce que vous avez vu au camp : ce qui s’est déclenché, ce qui a chauffé, une mesure, les heures d’un réservoir
cli-learned-plan = Le fichier du plan ; il est modifié, et ses commentaires restent
cli-learned-words = Ce que vous avez vu, par exemple : front déclenché à 13 A
cli-learned-date = Le jour où vous l’avez vu ; par défaut, aujourd’hui

cli-reprint = Dire quelles étiquettes et feuilles d’un ancien plan réimprimer pour un nouveau
cli-reprint-old = Le plan que vous avez imprimé
cli-reprint-new = Le plan tel qu’il est maintenant

cli-mend = Trouver les changements les plus simples qui éliminent des dangers et laissent marcher tout l’indispensable, et dire ce qui reste
cli-mend-plan = Le fichier du plan ; "-" le lit sur l’entrée standard
cli-mend-into = Écrire le plan changé dans ce nouveau fichier ; un fichier qui existe n’est pas touché
cli-mend-warnings = Éliminer aussi les avertissements, autant que des changements le peuvent
cli-mend-format = "text" pour les gens ; "json" pour les programmes : le rapport, avec les corrections

cli-explain = Expliquer une règle : ce qu’elle vérifie, pourquoi c’est dangereux, le calcul, que faire
cli-explain-code = Le code de la règle, comme AIR001 ; sans lui, toutes les règles sont énumérées

cli-words = Pour les traducteurs : imprimer chaque message à côté de ses traductions, en une page pour le navigateur
cli-words-languages = Dossiers de langue ; par défaut, tous
cli-words-check = Dire plutôt ce qui ne va pas dans ces dossiers
cli-words-from = Lire les dossiers de langue dans ce dossier au lieu de ceux du programme

failure-lead = tallywatt :
failure-hint = Conseil :
failure-output = impossible d’écrire le résultat : { $reason }
failure-output-full = il n’y a plus de place pour écrire le résultat
failure-no-rule = il n’y a pas de règle { $code }
failure-no-rule-hint = "tallywatt explain" les énumère toutes.
failure-json = impossible d’écrire le rapport en JSON

check-plan = { $name }
check-none = Nous n’avons trouvé aucun problème dans ce plan. Nous pouvons en manquer.
check-dangers = À éliminer avant de démarrer le moteur :
check-next = Que faire maintenant
next-none = Aucune règle n’a trouvé de danger ni d’avertissement. { -local-codes(form: "One") } ont quand même le dernier mot.
next-trouble = { $title }.
check-looks = Vérifiez aussi ceci, dans cet ordre. Ne devinez pas.
check-buy = Pas encore acheté
check-guessed = Là où nous n’en savons pas assez, nous avons supposé le pire : vérifiez d’abord.
check-found = Tout ce que nous avons trouvé, le pire d’abord
check-long = Pour savoir pourquoi, et ce que chaque prise supporte, lancez « tallywatt check --long » sur ce plan.
check-count = { $dangers ->
        [0] aucun danger
        [one] 1 danger
       *[other] { $dangers } dangers
    }, { $warnings ->
        [0] aucun avertissement
        [one] 1 avertissement
       *[other] { $warnings } avertissements
    }, { $cautions ->
        [0] aucun point d’attention
        [one] 1 point d’attention
       *[other] { $cautions } points d’attention
    }, { $notices ->
        [0] aucun avis
        [one] 1 avis
       *[other] { $notices } avis
    }.
check-label-why = Pourquoi
check-label-look = Vérifier
check-label-do = À faire
check-label-also = Règle aussi
trouble-too = { $troubles }
trouble-also = { $title } ({ $code })
trouble-assumed = Au pire : { $title }
trouble-assumed-why = Nous ne le savons pas et avons donc supposé le pire. { $why }
trouble-look = Quand vous le savez, changez votre réponse et vérifiez de nouveau.
check-more = Pour en savoir plus sur l’un de ces points, lancez "tallywatt explain CODE".
check-limits = Ce que chaque prise peut supporter, sans rien d’autre en marche
check-limit-amps = { $amps } (environ { $watts })
check-limit-two = { $long } pour 3 heures ou plus, fixé par { $long_by }. { $short } pour moins de 3 heures, fixé par { $short_by }.
check-limit-refused = NE PAS UTILISER. Voyez { $code }.
check-limit-guarded = Seulement une rallonge GFCI (boutons TEST et RESET). Voyez { $code }.
check-limit-guarded-ahead = Seulement avec une rallonge GFCI (boutons TEST et RESET) en amont, plus près { -generator(form: "of") }. Voyez { $code }.
check-limit-behind = NE PAS UTILISER : { $count ->
        [one] elle reçoit
       *[other] elles reçoivent
    } le courant de « { $id } », à ne pas utiliser. Voyez { $code }.
check-limit-one = { $long }. Fixé par { $short_by }.
check-limit-same = { $long } pour 3 heures ou plus, { $short } pour moins de 3 heures. Fixé par { $short_by }.
check-limit-share = « { $id } » ({ $reason } ; si longtemps, ne comptez que sur 80 %)
check-limit-share-own = { $reason } (si longtemps, ne comptez que sur 80 %)
check-limit-by = « { $id } » ({ $reason })
check-limit-only = N’y branchez que { $parts }. { $limit }
check-limit-bonding-plug = N’y branchez que la fiche de liaison.
check-assumed = Nous ignorons ceci et avons donc supposé le cas dangereux
check-defer = { -local-codes(form: "One") } et un { -electrician } ont le dernier mot, pas cet outil.

reason-rated-power = la puissance { -generator(form: "of") }
reason-rated-power-unguarded = la puissance { -generator(form: "of") }, qui peut ne pas se couper au-delà
reason-one-leg = une moitié { -generator(form: "of") }, qui peut ne pas se couper au-delà
reason-breaker = son disjoncteur
reason-trips-early = son disjoncteur, qui se déclenche trop tôt
reason-receptacle = la capacité de la prise elle-même
reason-plug = la capacité de la fiche
reason-cord-ampacity = le fil de la rallonge ; aucun disjoncteur ne la protège
reason-cord-mark = les ampères souvent marqués sur une rallonge si mince et si longue ; lisez son étiquette, le plus petit nombre compte
reason-coiled-cord = la rallonge enroulée ; aucun disjoncteur ne la protège
reason-hot-cord = la rallonge dans un air si chaud ; aucun disjoncteur ne la protège
reason-wiring = le câblage du coffret
reason-not-fed = mauvaise tension pour sa forme ; traitez-la comme sous tension
reason-parallel-kit = le kit qui joint les { -generator(form: "many") }

demo-purpose = Cet exemple contient des erreurs exprès. S’il était à vous, voici quoi faire :
demo-wrote = Écrit dans { $dir } :
demo-file-labels = une étiquette pour chaque prise, rallonge, coffret, et pour { -generator(form: "the") }
demo-file-card = la carte à plastifier, deux faces
demo-file-look = la feuille de vérification : quoi aller voir, avec de la place pour écrire
demo-file-cautions = les précautions : quoi cocher, le pire d’abord
demo-file-worksheet = tous les nombres, pour un électricien
demo-file-report = le rapport pour d’autres programmes
demo-file-plan = le plan lui-même : changez-le et lancez "tallywatt print"
demo-other = "tallywatt demo --fixed" fait le même exemple, ses dangers éliminés.


working = En cours. Ctrl-C arrête, et rien n’est écrit.
print-wrote = Écrit dans { $dir } :
print-look-gone = Nous avons retiré du dossier l’ancien { $file } : il n’y a plus rien à vérifier.
# Safety.
print-dangers-left = { $count ->
    [one] Il reste 1 danger
   *[other] Il reste { $count } dangers
  } dans ce plan. Ne démarrez pas { -generator(form: "the") } avant { $count ->
    [one] de l’avoir éliminé
   *[other] de les avoir tous éliminés
  }. La feuille des précautions montre comment.
print-card-sheets = La carte prend { $count } feuilles : une seule est trop petite pour ce plan. Chacune dit laquelle elle est. Gardez-les ensemble.
print-card-sheets-half = { print-card-sheets } Une carte plus grande en prend peut-être moins : "--card sheet".
print-card-sheets-pocket = { print-card-sheets } Une carte plus grande en prend peut-être moins : "--card half" ou "--card sheet".
print-labels-used = { $count ->
        [one] Il y a 1 étiquette.
       *[other] Il y a { $count } étiquettes.
    } { $next ->
        [0] La dernière planche d’étiquettes sera pleine.
       *[other] Après l’impression, la prochaine libre de la dernière planche est la numéro { $next } : la prochaine fois, commencez-y avec "--start-at { $next }".
    }

# The names in the example plan.
demo-name-site = Séjour à l’Anse-au-Genévrier
demo-name-generator = le modèle bleu
demo-name-kettle = Bouilloire
demo-name-toaster = Grille-pain
demo-name-griddle = Plaque à griller
demo-name-coolbox = Glacière
demo-name-blanket = Couverture chauffante
demo-name-cpap = Appareil PPC
demo-name-cpap-battery = Batterie de la PPC
demo-name-lamps = Guirlande lumineuse
demo-name-chargers = Chargeurs de téléphone et d’appareil photo
demo-name-fan = Ventilateur
demo-name-pump = Gonfleur de matelas
# Les remarques des plans d’exemple.
demo-remark-packed =
    Un week-end en famille, en exemple : { -generator(form: "a") } de petite taille, un bac de rallonges, et trop d’appareils.
    Plusieurs choses sont fausses exprès. « tallywatt check » sur ce fichier dit lesquelles.
demo-remark-ground = au bord du lac, l’herbe ne sèche pas avant midi
demo-remark-sleepers = la tente la plus proche
demo-remark-tripped = l’été dernier, grille-pain et bouilloire ensemble
demo-remark-kitchen = La grosse rallonge vers la cuisine du campement.
demo-remark-splitter = Un répartiteur à trois prises, acheté d’occasion. Il n’a pas de disjoncteurs.
demo-remark-living-room = La rallonge du salon, vers les tentes.
demo-remark-through = Elle mène les 30 A entiers à un second coffret. Elle n’a pas de disjoncteur.
demo-remark-put-right =
    Le même week-end, arrangé avec ce que la famille a ou peut acheter à bas prix.
    Chaque changement porte le mot « maintenant ».
demo-remark-now-far = maintenant loin des tentes, échappement à l’opposé
demo-remark-now-alarms = maintenant un dans chaque tente
demo-remark-now-roof = maintenant sous un toit haut sur poteaux, ouvert de tous les côtés
demo-remark-now-home = Le répartiteur à trois prises reste maintenant à la maison.
demo-remark-now-cord = Maintenant une rallonge d’extérieur vers les tentes, avec un GFCI dans sa fiche.
demo-remark-now-socket = Maintenant dans l’autre prise, pour que seules des rallonges GFCI y soient branchées.
demo-remark-now-empty = Elle mène les 30 A entiers à un second coffret. Elle n’a pas de disjoncteur. Maintenant vide, couvercle fermé.
demo-remark-now-toaster = maintenant après la bouilloire
demo-remark-now-supper = maintenant les crêpes sont pour le souper
demo-remark-now-shut = Maintenant bien fermée la nuit, et pendant que le moteur refroidit pour le plein.
demo-remark-now-warm = maintenant elle chauffe le lit, éteinte la nuit
demo-remark-now-battery = L’appareil respiratoire marche maintenant la nuit sur sa batterie. Ceci la charge le jour.
