# What can be wrong with a plan file, and with files as such. Each message is a title; `help`
# says what to do about it, and `help-near` does when there is a good guess at what was meant.

plan-problem = problème
plan-help = pour corriger
plan-first-here = donné ici d’abord
plan-nothing-done = { $count ->
    [one] Un problème dans { $path }. Rien n’a été vérifié ni imprimé.
   *[other] { $count } problèmes dans { $path }. Rien n’a été vérifié ni imprimé.
}
plan-more = { $count ->
    [one] Et un de plus, non montré.
   *[other] Et { $count } de plus, non montrés.
}
list-or = { $first } ou { $last }

# Kinds of value, as in "it should be ...".
plan-type-text = du texte entre guillemets droits
plan-type-quantity = un nombre avec son unité, entre guillemets droits
plan-type-whole = un nombre entier
plan-type-number = un nombre
plan-type-yes-no = true (vrai) ou false (faux)
plan-type-yes-no-unknown = true (vrai), false (faux) ou "unknown" (inconnu)
plan-type-date = une date ou une heure sans guillemets
plan-type-list = une liste entre crochets
plan-type-table = une table
plan-type-tables = une liste de tables, chacune sous son propre titre

# The TOML itself.
plan-duplicate-key = Ceci est dit deux fois
    .help = Chaque clé ne peut figurer qu’une fois sous un titre. Gardez l’une des deux. Une deuxième rallonge ou prise, un deuxième coffret ou appareil commence par son propre titre, comme [[cord]].
plan-unquoted = Ce texte n’a pas de guillemets
    .help = Mettez-le entre guillemets droits doubles. Seuls les nombres entiers, true et false s’écrivent sans.
plan-bad-string = Les guillemets ou le texte entre eux sont illisibles
    .help = Commencez et finissez sur la même ligne par un guillemet droit double. Écrivez un guillemet à l’intérieur \" et une barre oblique inverse \\.
plan-bad-number = Ce nombre est illisible
    .help = Mettez entre guillemets droits doubles un nombre avec unité, une forme ou une heure : "2800 W", "5-20R" ou "07:00-07:20". Un nombre sans guillemets est comme 2 ou 0.8.
plan-no-equals = Il n’y a pas de signe égal ici
    .help = Écrivez une clé, un signe égal et une valeur, comme : coiled = false
plan-no-value = Il n’y a rien après le signe égal
    .help = Écrivez la valeur après lui, "unknown" (inconnu) si vous ne la savez pas, ou retirez la ligne.
plan-bad-list = Cette liste est illisible
    .help = Écrivez-la entre crochets avec des virgules, comme : ends = ["5-15R", "5-15R"]
plan-bad-inline = La partie entre accolades est illisible
    .help = Écrivez-la entre accolades avec des virgules, comme : motor = {"{"} hp = "1/2", code = "G" {"}"}
plan-bad-heading = Ce titre est illisible
    .help = Mettez un crochet de chaque côté de [site] et [generator]. Mettez-en deux autour de ce qu’il peut y avoir plusieurs fois, comme [[cord]].
plan-bad-key = Cette clé est illisible
    .help = Une clé n’a que des lettres, des chiffres et des traits de soulignement, et se place devant un signe égal.
plan-extra = Il reste quelque chose sur cette ligne
    .help = Mettez une clé et une valeur par ligne. Un nombre avec son unité va entre guillemets droits doubles, comme "2800 W". Un commentaire commence par #.
plan-too-deep = Il y a trop de crochets dans des crochets
    .help = Aucun plan n’en demande plus de deux. Cherchez-en un qui n’a pas été fermé.
plan-bad-character = Il y a ici un caractère qu’aucun plan ne peut avoir
    .help = Effacez-le et tapez la ligne de nouveau.
plan-syntax = Cette ligne est illisible
    .help = Écrivez une clé, un signe égal et une valeur, comme : rated = "2800 W"

# The file as a whole.
plan-empty = Il n’y a rien dans ce fichier
    .help = Lancez tallywatt sans rien après : il vous demande ce qu’il doit savoir et écrit le plan.
plan-no-format = Le fichier ne dit pas quel format il a
    .help = Mettez ceci au début du fichier : format = 1
plan-newer-format = Un tallywatt plus récent a écrit ce plan : format { $found }. Celui-ci lit le format { $ours }
    .help = Procurez-vous le tallywatt plus récent. Ne changez pas seulement le nombre : le reste pourrait être mal lu, et un faux nombre ici peut blesser quelqu’un.
plan-no-such-format = Il n’y a pas de format { $found }
    .help = Écrivez : format = { $ours }
plan-too-many = Il y a { $found } { $what }, mais un plan ne peut en avoir que { $most }
    .help = Faites un plan pour chaque { -generator }, ou retirez ce que vous n’utilisez jamais.
    .parts = parties
    .loads = appareils à alimenter
plan-missing-table = Le plan ne dit rien de : { $table }
    .help = Ajoutez une partie qui commence par [{ $table }].

# Keys and values.
plan-missing-key = { $key } manque ici
    .help = Ajoutez une ligne comme : { $example }
plan-unknown-key = "{ $found } = " ne veut rien dire ici
    .help = Vous pouvez écrire : { $allowed }.
    .help-near = Vouliez-vous dire { $nearest } ? Vous pouvez écrire : { $allowed }.
plan-unknown-heading = [{ $found }] ne veut rien dire ici
    .help = Vous pouvez écrire : { $allowed }.
    .help-near = Vouliez-vous dire { $nearest } ? Vous pouvez écrire : { $allowed }.
plan-wrong-type = { $key } est { $found } ici
    .help = Il faudrait { $wanted }.
    .help-near = Il faudrait { $wanted }, comme : { $example }
plan-unknown-not-allowed = { $key } ne peut pas être inconnu
    .help = Nous ne pouvons rien calculer sans cela. Regardez l’étiquette de l’appareil lui-même, ou demandez à son propriétaire.
    .help-near = Retirez plutôt la ligne.
plan-empty-text = { $key } est vide
    .help = Écrivez quelque chose entre les guillemets, ou retirez la ligne.
plan-bad-text = { $key } est trop long à imprimer, ou a des caractères qui ne s’impriment pas
    .help = Prenez une seule ligne de { $most } caractères au plus.
plan-no-unit = { $key } n’a pas d’unité : { $found } quoi ?
    .help = Écrivez-le entre guillemets droits avec son unité, comme "{ $example }". Unités : { $allowed }.
plan-unknown-unit = { $key } ne se mesure pas en { $found }
    .help = Écrivez un nombre simple, puis son unité. Unités : { $allowed }. Cherchez une lettre dans le nombre.
plan-volt-amperes = { $key } est donné en { $found }, et les voltampères ne sont pas des watts
    .help = Cherchez les watts sur l’étiquette de l’appareil. Pour un appareil, vous pouvez donner les ampères à la place, par current = "12.5 A".
plan-no-number = { $key } n’a pas de nombre : { $found }
    .help = Écrivez un nombre et une unité, comme "{ $example }".
plan-no-plain-number = { $key } n’a pas de nombre lisible : { $found }
    .help = Écrivez un nombre simple, comme "{ $example }".
plan-two-readings = { $key } peut vouloir dire deux choses : { $found }
    .help = Les uns lisent { $decimals } et les autres { $thousands }. Écrivez "{ $decimals }" ou "{ $thousands }", selon ce qui est juste.
plan-out-of-range = { $key } ne peut pas être { $found }
    .help = Prenez une valeur de { $least } à { $most }. Cherchez une faute de frappe ou une mauvaise unité.
plan-wire-size = Aucun fil n’a le calibre { $found }
    .help = Les calibres vont de 0 à 30 AWG, en nombres entiers. Les tailles en mm² vont de 0,1 à 400. La taille est imprimée sur la rallonge.
plan-not-a-choice = { $key } ne peut pas être { $found }
    .help = Écrivez l’une de ces valeurs : { $allowed }.
    .help-near = Vouliez-vous dire { $nearest } ? Écrivez l’une de ces valeurs : { $allowed }.
plan-not-a-language = { $found } n’est pas le code d’une langue
    .help = Écrivez un code comme "en", "es", "fr-CA" ou "de", ou retirez la ligne.
plan-unknown-shape = Nous ne connaissons pas la forme { $found }
    .help = Formes pour { $key } : { $allowed }.
    .help-near = Vouliez-vous dire { $nearest } ? Formes pour { $key } : { $allowed }.
plan-wrong-half = { $found } est une prise, mais il faut une fiche ici
    .help = Un nom qui finit par P est une fiche, avec des lames ; un nom qui finit par R est une prise, avec des fentes. Ici, ce serait { $meant }.
plan-wrong-half-receptacle = { $found } est une fiche, mais il faut une prise ici
    .help = Un nom qui finit par P est une fiche, avec des lames ; un nom qui finit par R est une prise, avec des fentes. Ici, ce serait { $meant }.
plan-two-plugs = { $found } est une fiche, et le bout d’une rallonge est une prise
    .help = Si vous vouliez dire la prise, écrivez { $meant }. Un cordon avec une fiche à chaque bout a des lames nues sous tension et peut tuer. Ne l’utilisez pas. N’en faites pas.
plan-bad-hours = { $key } ne peut pas être { $found }
    .help = Écrivez deux heures de la journée sur 24 heures avec un trait d’union, comme "18:00-22:00". Elles peuvent passer minuit, comme "22:00-06:00".
plan-motor-code = Aucun moteur n’a la lettre de code { $found }
    .help = C’est une lettre de A à V, sans I, O ni Q, après le mot « code » sur l’étiquette du moteur. Retirez la ligne s’il n’y en a pas.
plan-two-draws = { $second } redit ce que dit { $first }
    .help = Gardez celui qui est sur l’étiquette, et retirez l’autre.
plan-place-for-no-plug = { $place } nomme une prise, mais { $plug } dit qu’il n’y a pas de fiche
    .help = Regardez { -generator(form: "the") }. Si une fiche de liaison y est branchée, écrivez { $plug } = true. S’il n’y en a pas, retirez la ligne { $place }.
plan-bonding-plug-elsewhere = « { $key } » nomme « { $found } », mais une fiche de liaison ne va que dans une prise ordinaire { -generator(form: "of") }
    .help = Dans ce plan, { -generator(form: "the") } n’a pas de prise ordinaire : retirez cette ligne. Si la fiche est dans une rallonge, un boîtier ou un adaptateur, arrêtez le moteur, puis débranchez-la. Demandez à un électricien qualifié avant de vous en servir.
    .help-near = Écrivez une de ces prises si la fiche y est : { $allowed }. Si elle est dans une rallonge, un boîtier ou un adaptateur, arrêtez le moteur, puis débranchez-la, et écrivez bonding_plug = false. Demandez à un électricien qualifié avant de vous en servir.
plan-less-than = { $key } est plus petit que { $other } : { $found } est sous { $least }
    .help = { $key } ne peut pas être le plus petit des deux. Cherchez une faute de frappe, ou deux valeurs qui ont échangé leurs places.

# Names.
plan-bad-id = { $found } ne peut pas être un id
    .help = Un id a jusqu’à 40 lettres, chiffres, traits d’union et traits de soulignement, et commence par une lettre ou un chiffre.
    .help-near = Un id a jusqu’à 40 lettres, chiffres, traits d’union et traits de soulignement, et commence par une lettre ou un chiffre. Vous pourriez prendre "{ $nearest }".
plan-duplicate-id = L’id { $id } est pris : la ligne { $line } l’a déjà
    .help = Chaque prise, rallonge, coffret et appareil a besoin de son propre id, parce qu’il est imprimé sur son étiquette.
plan-sets-id = L’id { $id } est pris : les rapports désignent ainsi { -generator(form: "the") }
    .help = Chaque prise, rallonge, coffret et appareil a besoin d’un id à lui. Donnez-en un autre à celui-ci.
plan-unknown-reference = « { $key } » nomme « { $found } », mais il n’y a pas de telle prise dans le plan
    .help = Écrivez l’id d’une prise ou d’une rallonge qui est dans le plan, ou retirez la ligne si ce n’est pas encore branché.
    .help-near = Vouliez-vous dire { $nearest } ? Si ce n’est pas encore branché, retirez la ligne.
plan-unknown-share = « { $key } » nomme « { $found } », mais il n’y a pas de telle prise ici
    .help = Écrivez l’id de la prise dont elle partage le disjoncteur, ou retirez la ligne si elle a le sien.
    .help-near = Vouliez-vous dire { $nearest } ? Si elle a son propre disjoncteur, retirez la ligne.
plan-not-a-receptacle = « { $key } » nomme « { $found } », mais rien ne peut s’y brancher
    .help = Écrivez l’id d’une prise ou d’une rallonge.
    .help-near = Ses prises sont { $allowed }.
plan-plug-inside = « { $camper } » est une { -camper }, et ce qui marche dedans n’a pas besoin de fiche ici
    .help = Retirez la ligne de la fiche.
plan-loop = { $through } sont branchés l’un sur l’autre en boucle
    .help = L’un d’eux doit être branché à une prise { -generator(form: "of") }, directement ou par d’autres.
plan-loop-self = { $through } est branché à lui-même
    .help = Il doit être branché à une prise { -generator(form: "of") }, directement ou par d’autres.
plan-bad-share = Elle ne peut pas partager le disjoncteur de { $found }
    .help = Une prise partage avec une autre { -generator(form: "of") } ou du même coffret, qui elle-même ne partage pas. Il n’y en a pas ici, donc retirez la ligne.
    .help-near = Une prise partage avec une autre { -generator(form: "of") } ou du même coffret, qui elle-même ne partage pas : { $allowed }.
plan-share-differs = Elle partage le disjoncteur de { $with }, mais dit autre chose de ce disjoncteur
    .help = Donnez la taille du disjoncteur à { $with }, et retirez-la ici.
plan-no-outlets-generator = { -generator(form: "The") } n’a pas de prise
    .help = Ajoutez chacune de ses prises par une partie qui commence par [[generator.outlet]].
plan-no-outlets-box = Ce coffret n’a pas de prise
    .help = Ajoutez chacune de ses prises au-dessous, par une partie qui commence par [[box.outlet]].
plan-no-outlets-cord = Cette rallonge n’a pas de prise au bout
    .help = Nommez la forme de chacune, comme : ends = ["5-15R"]

# Files.
store-not-found = Il n’y a pas de fichier { $path }
    .help = Voyez comment le nom s’écrit, et dans quel dossier vous êtes.
store-no-folder = Il n’y a pas de dossier où mettre { $path }
    .help = Créez d’abord le dossier, ou donnez-en un autre.
store-not-allowed = Vous n’avez pas le droit de changer ou de lire { $path }
    .help = Voyez ses permissions, ou donnez un autre fichier.
store-exists = Il y a déjà quelque chose à { $path }
    .help = Nommez un autre endroit. Ce qui s’y trouve est intact.
store-not-ours = { $path } n’est pas tel que nous l’avons écrit, ou n’est pas de nous
    .help = Nous n’avons rien écrit, pour que rien de vous ne se perde. Indiquez un autre dossier, ou déplacez ce fichier.
store-changed = { $path } a changé depuis que nous l’avons lu
    .help = Nous n’avons rien écrit. Lancez encore la même commande.
store-silent = { $path } est un tube, et rien n’y écrit
    .help = Lancez d’abord ce qui y écrit, ou indiquez un fichier.
store-full = Il n’y a plus de place sur le disque pour { $path }
    .help = Faites de la place et réessayez. Ce qui était là avant est intact.
store-is-a-folder = { $path } est un dossier, pas un fichier
    .help = Donnez un fichier.
store-not-a-folder = Une partie de { $path } est un fichier, pas un dossier
    .help = Donnez un autre dossier.
store-bad-name = { $path } ne peut pas être le nom d’un fichier
    .help = Donnez un fichier dans un dossier.
store-too-large = { $path } est beaucoup trop gros pour un plan
    .help = Un plan est un texte court. Est-ce le bon fichier ?
store-not-text = { $path } n’est pas du texte simple : la ligne { $line } a des octets qui ne sont pas de l’UTF-8
    .help = Enregistrez-le depuis votre éditeur en texte simple, en UTF-8. Est-ce le bon fichier ?
store-in-use = Un autre tallywatt a ouvert { $path }
    .help = Terminez ou fermez d’abord l’autre.
store-cannot-read = Impossible de lire { $path } : { $reason }
    .help = Réessayez, ou donnez un autre fichier.
store-cannot-write = Impossible d’écrire { $path } : { $reason }
    .help = Réessayez, ou donnez un autre endroit. Ce qui était là avant est intact.
