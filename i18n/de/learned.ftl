### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-alarm = alarm warner kohlenmonoxid kopfschmerzen kopfweh schwindlig schwindel übel übelkeit ohnmächtig
learned-word-fire = feuer brand flamme flammen brennt
learned-word-shock = schlag stromschlag kribbelt
learned-word-hot = heiß weich geschmolzen verbrannt verschmort rauch raucht riecht geruch braun funken
learned-word-warm = warm
learned-word-very = sehr zu
learned-word-not = nicht nie nichts kein keine ohne
learned-word-trip = ausgelöst löst löste flog
learned-tripped = Der Plan lässt ab jetzt höchstens { $amps } durch { $part }. Stellen Sie den Motor ab, dann fühlen Sie Sicherungsautomat und Stecker. Ist etwas heiß, braun oder riecht es, benutzen Sie es nicht.
learned-tripped-known = Der Plan lässt schon nur { $marked } durch { $part }. Nichts ändert sich.
learned-tripped-made = Auf dem Sicherungsautomaten von { $part } steht { $marked }. Bei { $amps } tat er, wozu er da ist: es war zu viel an. Schalten Sie weniger zugleich ein.
learned-hot = Stellen Sie den Motor ab, und ziehen Sie den Stecker. Im Plan steht jetzt: { $part } nicht benutzen.
learned-warm = Ein Teil an seiner Grenze wird ein wenig warm. Legen Sie Kabel ganz aus. Stellen Sie den Motor bald ab, und fühlen Sie { $part } wieder. Ist es heiß oder weich, benutzen Sie es nicht, und geben Sie hier „heiß“ ein.
learned-meter-low = Sie haben { $volts } an { $part } gelesen. Wir erwarteten { $least } oder mehr, wenn alles an ist. Etwas auf dem Weg ist schlecht. Stellen Sie den Motor ab, und fühlen Sie jeden Stecker und jedes Kabel bis zum Generator. Benutzen Sie nichts, was heiß, weich, braun oder locker ist.
learned-meter-high = Sie haben { $volts } an { $part } gelesen. Mehr als { $least } kann zerstören, was eingesteckt ist, und vielleicht ist der Neutralleiter unterbrochen. Stellen Sie den Motor ab, und lassen Sie den Generator prüfen.
learned-meter-raised = Sie haben { $volts } an { $part } gelesen. Mehr als { $least } kann Elektronik schaden. Stecken Sie Elektronik aus, und messen Sie noch einmal, während der Rest läuft. Bleibt es so, lassen Sie den Generator prüfen.
learned-meter-fine = Wir erwarteten { $least } oder mehr an { $part }, wenn alles an ist. Sie haben { $volts } gelesen. War weniger an, messen Sie noch einmal mit allem.
learned-meter-unknown = Der Plan hat an { $part } nichts in Betrieb, darum können wir nicht sagen, was dort ein Messgerät zeigen soll. Unter { $least } schalten Sie etwas aus: Motoren können zu heiß werden.
learned-ran-less = Der Plan rechnet ab jetzt mit höchstens { $hours } je Tank.
learned-ran-more = Der Plan rechnet zu einer Zeit des Tages schon mit weniger als { $hours }, oder mit ebenso viel. Er bleibt auf der vorsichtigen Seite.
learned-ran-unknown = Im Plan steht nicht, wie lange ein Tank bei welcher Last reicht, darum ändert das noch nichts. Sehen Sie in der Anleitung nach, und schreiben Sie diese Stunden in den Plan.
learned-print = Neu zu drucken, und vor dem Einstecken anzubringen: { $what }.
learned-no-print = Sie müssen nichts neu drucken.
learned-same = Plan und Blätter ändern sich nicht. Tun Sie zuerst, was oben steht.
learned-labels = { $count ->
    [one] das Etikett { $names }
   *[other] die Etiketten { $names }
  }
learned-card = { $side ->
    [0] die Karte
   *[other] die Karte (Seite { $side } ist neu)
  }
learned-cautions = die Hinweise
learned-look = das Blatt zum Nachsehen
learned-worksheet = das Rechenblatt
learned-wrote = Es steht jetzt in { $path }.
learned-no-part = Wir wissen nicht, welches Teil Sie meinen. Nennen Sie Steckdose, Kabel oder Verteiler wie auf dem Etikett. Ist etwas heiß oder riecht es, stellen Sie zuerst den Motor ab, und ziehen Sie es heraus.
learned-parts = Sie haben mehrere Teile genannt: { $parts }. Nennen Sie eines.
learned-no-figure = Wir fanden keine Ampere, Volt oder Stunden, die wir verstehen, oder zwei davon.
learned-no-amps = Wir müssen wissen, bei wie viel Ampere { $parts } ausgelöst hat. Zählen Sie die Ampere von allem zusammen, was dort an war.
learned-say-amps = Tippen Sie es dann so: tallywatt learned { $plan } { $id } ausgelöst bei 13 A
learned-no-breaker = Der Plan hat für { $parts } keinen Sicherungsautomaten. Nennen Sie die Steckdose, zu der er gehört.
learned-say = Sagen Sie es wie eines von diesen. Ein Automat: „front ausgelöst bei 13 A“, mit den Ampere von allem, was an war. Ein Messgerät: „box-left 109 V“. Ein voller Tank: „7 h“. Hitze oder Geruch: „tents heiß“. Auch: „GFCI front“, „Alarm“, „Schlag an front“.
learned-tripped-unknown = Wir wissen nicht, welche Zahl auf dem Sicherungsautomaten von { $part } steht, darum ändern { $amps } nichts. Sehen Sie nach, und schreiben Sie die Zahl in den Plan.
learned-meter-compare = Sie haben { $volts } an { $part } gelesen. Wir erwarteten { $least } oder mehr, wenn alles an ist. Messen Sie jetzt an einer Steckdose des Generators, mit denselben Dingen an. Zeigt sie mehr als { $more }, ist etwas auf dem Weg schlecht: stellen Sie den Motor ab, und fühlen Sie jeden Stecker und jedes Kabel.
learned-meter-source = Sie haben { $volts } an { $part } gelesen. Unter { $least } trägt der Generator zu viel, oder er ist nicht in Ordnung. Schalten Sie etwas aus. Bleibt es niedrig, lassen Sie den Generator prüfen.
learned-meter-none = Zeigt ein Messgerät nichts, heißt das nicht, dass { $part } ohne Spannung ist. Ein Automat oder ein GFCI könnte aus sein, oder ein Leiter gebrochen. Stellen Sie den Motor ab, bevor Sie dort einen Stecker anfassen.
learned-gfci = Ein GFCI hat an { $part } abgeschaltet: etwas, das dahinter steckt, könnte einen Fehler haben. Ziehen Sie alles davon heraus. Drücken Sie einmal RESET. Stecken Sie eins nach dem anderen ein, und benutzen Sie nicht, was ihn wieder auslöst.
learned-shock = Stellen Sie den Motor ab, dann ziehen Sie das Kabel am Generator heraus. Rufen Sie { $call }, wenn es gerade geschah. Gehen Sie nach jedem Schlag zum Arzt, auch nach einem kleinen. Lassen Sie Generator, Kabel und Gerät von einer Elektrofachkraft ansehen, bevor sie jemand benutzt. Schreiben Sie dann, wo es war, damit der Plan es weiß: „Schlag an kettle“.
learned-shock-at = Stellen Sie den Motor ab, dann ziehen Sie das Kabel am Generator heraus. Rufen Sie { $call }, wenn es gerade geschah. Gehen Sie nach jedem Schlag zum Arzt, auch nach einem kleinen. Im Plan steht jetzt: { $part } nicht benutzen. Benutzen Sie auch sonst nichts, was dort steckte. Lassen Sie alles von einer Elektrofachkraft ansehen.
learned-alarm = Alle an die frische Luft, sofort. Rufen Sie { $call }, und sagen Sie: Kohlenmonoxid. Niemand geht hinein, bis die Feuerwehr es sagt.
learned-fire = Alle weg, sofort. Rufen Sie { $call }. Den Motor nur abstellen, wenn der Weg dorthin frei ist. Kein Wasser auf brennenden Kraftstoff oder auf etwas, das unter Spannung stehen kann.
learned-not = Sagen Sie, was geschah, und nicht, was nicht geschah. Bei einer Messung muss alles an sein.
learned-no-trip = Hat ein Automat ausgelöst, sagen Sie es: „front ausgelöst bei 13 A“. Ampere allein ändern nichts.
learned-take-off = { $count ->
    [one] Nehmen Sie das Etikett { $names } ab: es gibt keines mehr.
   *[other] Nehmen Sie die Etiketten { $names } ab: es gibt keine mehr.
  }
