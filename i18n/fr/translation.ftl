# For those who translate: "tallywatt words".

words-no-folder = Il n’y a pas de dossier de langue « { $tag } ».
words-missing = { $count ->
        [one] 1 message manque
       *[other] { $count } messages manquent
    }
words-offered = { $tag } : en ordre, et offert aux lecteurs.
words-can-be-offered = { $tag } : en ordre. Pour l’offrir, mettez language-state à complete.
words-not-done = { $tag } : pas encore terminé.

# $what is the part of the message, $model what it is held against.
words-problem-no-folder = il n’y a pas de tel dossier
words-problem-junk = ceci ne se lit pas comme un message : { $what }
words-problem-twice = il est là deux fois
words-problem-unused = rien ne s’en sert ici { $model }{ $what }
words-problem-missing = il manque
words-problem-unknown-value = il n’y a pas de valeur ${ $what } ici
words-problem-lost-value = la valeur ${ $what } n’est pas montrée
words-problem-no-plural = il ne choisit pas selon le nombre ${ $what }
words-problem-no-case = au choix selon ${ $what } manque le cas [{ $model }]
words-problem-unknown-case = le choix selon ${ $what } a un cas [{ $model }] qui n’arrive jamais
words-problem-unknown-term = il n’y a pas de terme -{ $what }
words-problem-fault = il ne peut pas être composé : { $what }
words-problem-numbers = ses nombres sont ({ $what }) et devraient être ({ $model })
words-problem-never-say = il ne doit pas dire « { $what } »
words-problem-untranslated = il est encore en anglais
words-problem-too-wide = il prend { $what } colonnes sur { $model }
words-problem-bad-sign = il a le signe { $what }, qui ne s’imprime pas
words-problem-plain-space = une espace ordinaire est dans « { $what } » : mettez une espace insécable (U+00A0) entre nombre et unité
words-problem-heading = le titre est « { $what } » et devrait être « { $model } »
words-problem-codes = il nomme ({ $what }) et devrait nommer ({ $model })

words-sheet-title = Les messages côte à côte
words-sheet-how =
    Entre accolades se trouvent des valeurs qui sont remplies : gardez-les telles quelles, et placez-les où la langue les veut. Un choix a une ligne pour chaque cas ; celle avec l’étoile vaut pour tous les autres cas.
    Un trait d’union et un nom entre accolades sont un terme du métier, du fichier terms.ftl de la langue. Corrigez-le là, une fois.
    Un double trait à gauche marque les phrases dont dépend la sécurité de quelqu’un. Quand vous en avez lu une et l’avez trouvée juste, dites-le, avec votre nom et la date.
words-sheet-state = { $tag } ({ $name }) : { $reviewed } phrases de sécurité sur { $safety } relues par une personne du métier dont c’est la langue.
words-sheet-about = À propos de
words-sheet-safety = Sécurité
words-sheet-missing = pas encore traduit
words-sheet-reviewed = relu : { $who }
words-sheet-not-reviewed = relu : par personne encore
