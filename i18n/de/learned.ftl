### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-hot = heiß weich geschmolzen verbrannt
learned-word-warm = warm
learned-tripped = Der Plan rechnet ab jetzt damit, dass { $part } bei { $amps } auslöst und nicht bei { $marked }. Kleben Sie die neuen Etiketten auf, bevor Sie wieder etwas einstecken.
learned-tripped-known = Der Plan rechnet schon damit, dass { $part } bei { $marked } auslöst. Nichts ändert sich.
learned-tripped-made = Auf dem Sicherungsautomaten von { $part } steht { $marked }. Bei { $amps } tat er, wozu er da ist: es war zu viel an. Schalten Sie weniger zugleich ein.
learned-hot = Stellen Sie den Motor ab, und ziehen Sie { $part } heraus. Im Plan steht jetzt: nicht benutzen.
learned-warm = Ein wenig Wärme ist normal in einem Kabel, das alles trägt, wofür es bemessen ist. Legen Sie es ganz aus. Prüfen Sie { $part } bald wieder. Ist es heiß oder weich, stellen Sie den Motor ab, und geben Sie hier „heiß“ ein.
learned-meter-low = Sie haben { $volts } an { $part } gelesen. Wir erwarteten { $least } oder mehr, wenn alles an ist. Etwas auf dem Weg ist schlecht. Stellen Sie den Motor ab, und fühlen Sie jeden Stecker und jedes Kabel bis zum Generator. Benutzen Sie nichts, was heiß, weich, braun oder locker ist. Ist alles kühl, lassen Sie den Generator prüfen.
learned-meter-high = Sie haben { $volts } an { $part } gelesen. Mehr als { $least } kann zerstören, was eingesteckt ist, und vielleicht ist der Neutralleiter unterbrochen. Stellen Sie den Motor ab, und lassen Sie den Generator prüfen.
learned-meter-fine = Wir erwarteten { $least } oder mehr an { $part }, wenn alles an ist. Sie haben { $volts } gelesen: kein Zeichen einer schlechten Verbindung.
learned-meter-unknown = Der Plan hat an { $part } nichts in Betrieb, darum können wir nicht sagen, was dort ein Messgerät zeigen soll. Unter { $least } schalten Sie etwas aus: Motoren können zu heiß werden.
learned-ran-less = Der Plan rechnet ab jetzt mit höchstens { $hours } je Tank.
learned-ran-more = Der Plan rechnet zu einer Zeit des Tages schon mit weniger als { $hours }, oder mit ebenso viel. Er bleibt auf der vorsichtigen Seite.
learned-ran-unknown = Im Plan steht nicht, wie lange ein Tank bei welcher Last reicht, darum ändert das noch nichts. Sehen Sie in der Anleitung nach, und schreiben Sie diese Stunden in den Plan.
learned-print = Neu zu drucken: { $what }.
learned-no-print = Sie müssen nichts neu drucken.
learned-labels = { $count ->
    [one] das Etikett { $names }
   *[other] die Etiketten { $names }
  }
learned-card = die Karte
learned-cautions = die Hinweise
learned-look = das Blatt zum Nachsehen
learned-worksheet = das Rechenblatt
learned-wrote = Es steht jetzt in { $path }.
learned-no-part = Wir wissen nicht, welches Teil Sie meinen.
learned-parts = Sie haben mehrere Teile genannt: { $parts }. Nennen Sie eines.
learned-no-figure = Wir fanden keine Ampere, Volt oder Stunden, die wir verstehen.
learned-no-breaker = Der Plan hat für { $parts } keinen Sicherungsautomaten. Nennen Sie die Steckdose, zu der er gehört.
learned-say = Sagen Sie es auf eine dieser Weisen. Zählen Sie zusammen, was an war: „front 13 A“. Mit einem Messgerät: „box-left 109 V“. Mit vollem Tank: „7 h“. Nach dem Anfassen: „tents heiß“.
