# Für alle, die übersetzen: „tallywatt words“.

words-no-folder = Es gibt keinen Sprachordner „{ $tag }“.
words-missing = { $count ->
        [one] 1 Nachricht fehlt
       *[other] { $count } Nachrichten fehlen
    }
words-offered = { $tag }: in Ordnung und wird angeboten.
words-can-be-offered = { $tag }: in Ordnung. Um es anzubieten, setzen Sie language-state auf complete.
words-not-done = { $tag }: noch nicht fertig.

# $what ist der Teil der Nachricht, $model das, womit er verglichen wird.
words-problem-no-folder = einen solchen Ordner gibt es nicht
words-problem-junk = das ist nicht als Nachricht lesbar: { $what }
words-problem-twice = es steht zweimal da
words-problem-unused = nichts benutzt es hier { $model }{ $what }
words-problem-missing = es fehlt
words-problem-unknown-value = den Wert ${ $what } gibt es hier nicht
words-problem-lost-value = der Wert ${ $what } wird nicht gezeigt
words-problem-no-plural = es wählt nicht nach der Zahl ${ $what }
words-problem-no-case = der Wahl nach ${ $what } fehlt der Fall [{ $model }]
words-problem-unknown-case = die Wahl nach ${ $what } hat einen Fall [{ $model }], der nie kommt
words-problem-unknown-term = den Begriff -{ $what } gibt es nicht
words-problem-fault = es lässt sich nicht zusammensetzen: { $what }
words-problem-numbers = seine Zahlen sind ({ $what }) und sollten ({ $model }) sein
words-problem-never-say = es darf nicht „{ $what }“ sagen
words-problem-untranslated = es ist noch englisch
words-problem-too-wide = es braucht { $what } Spalten von { $model }
words-problem-bad-sign = es hat das Zeichen { $what }, das nicht gedruckt werden kann
words-problem-plain-space = in „{ $what }“ ist ein gewöhnliches Leerzeichen: Zwischen Zahl und Einheit gehört ein geschütztes (U+00A0)
words-problem-heading = die Überschrift ist „{ $what }“ und sollte „{ $model }“ sein
words-problem-codes = es nennt ({ $what }) und sollte ({ $model }) nennen

words-sheet-title = Nachrichten nebeneinander
words-sheet-how =
    In geschweiften Klammern stehen Werte, die eingesetzt werden: Lassen Sie sie, wie sie sind, und stellen Sie sie dorthin, wo die Sprache sie will. Eine Wahl hat eine Zeile je Fall; die mit dem Stern gilt für alle übrigen Fälle.
    Ein Bindestrich und ein Name in geschweiften Klammern ist ein Fachbegriff aus der Datei terms.ftl der Sprache. Berichtigen Sie ihn dort, einmal.
    Ein doppelter Strich links zeigt Sätze an, an denen Leib und Leben hängen. Haben Sie einen gelesen und für richtig befunden, sagen Sie es, mit Name und Tag.
words-sheet-state = { $tag } ({ $name }): { $reviewed } von { $safety } solchen Sätzen hat eine Fachkraft geprüft, deren Muttersprache es ist.
words-sheet-about = Worum es geht
words-sheet-safety = Leib und Leben
words-sheet-missing = noch nicht übersetzt
words-sheet-reviewed = geprüft: { $who }
words-sheet-not-reviewed = geprüft: noch von niemandem
