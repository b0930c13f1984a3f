### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-alarm = alarm co-alarm warner co-warner melder co-melder kohlenmonoxid-melder kohlenmonoxid monoxid co kopfschmerzen kopfweh schwindlig schwindel übel übelkeit erbrochen ohnmächtig bewusstlos
learned-word-fire = feuer brand flamme flammen brennt
learned-word-shock = schlag stromschlag kribbelt gekribbelt elektrisiert
learned-word-hot = heiß weich geschmolzen schmilzt verbrannt verschmort schmort rauch raucht qualm qualmt riecht stinkt geruch braun funken funkt
learned-word-warm = warm
learned-word-very = sehr zu
learned-word-not = nicht nie nichts kein keine ohne
learned-word-trip = ausgelöst löst löste flog
# The numbers from one to twenty, then thirty and forty, each with its other forms after a slash. A half makes another
# number of what comes with it.
learned-word-number = ein/eine/einer/eins zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn zwanzig dreißig/dreissig vierzig
learned-word-half = halb halbe halben halber anderthalb
learned-tripped = Bei { $amps } hat er ausgelöst, darum lässt der Plan ab jetzt höchstens { $counted } durch { $part }. Stellen Sie den Motor ab, dann tasten Sie Schutzschalter und Stecker ab. Ist etwas heiß, braun oder riecht es, benutzen Sie es nicht.
# $demand: what the plan runs there at once.
learned-tripped-planned = Der Plan hat dort { $demand }, und der Schutzschalter hat ausgelöst. Der Plan lässt ab jetzt höchstens { $counted } durch { $part }. Stellen Sie den Motor ab, dann tasten Sie Schutzschalter und Stecker ab. Ist etwas heiß, braun oder riecht es, benutzen Sie es nicht.
learned-tripped-known = Der Plan lässt schon nur { $marked } durch { $part }. Nichts ändert sich.
learned-tripped-made = Auf dem Schutzschalter von { $part } steht { $marked }. Bei { $amps } tat er, wozu er da ist: Es war zu viel an. Schalten Sie weniger zugleich ein.
learned-hot = Stellen Sie den Motor ab, und ziehen Sie den Stecker von dem, was heiß ist. Im Plan steht jetzt: { $part } nicht benutzen.
learned-warm = Ein Teil an seiner Grenze wird ein wenig warm. Legen Sie Kabel ganz aus. Stellen Sie den Motor bald ab, und tasten Sie { $part } noch einmal ab. Ist es heiß oder weich, benutzen Sie es nicht, und geben Sie hier „heiß“ ein.
learned-meter-low = Sie haben an { $part } { $volts } abgelesen. Wir hatten { $least } oder mehr erwartet, wenn alles an ist. Riecht oder raucht etwas, stellen Sie sofort den Motor ab. Sonst messen Sie zuerst an einer Steckdose des Generators, mit denselben Dingen an. Zeigt sich auch dort weniger als { $source }, ist der Generator überlastet, oder mit ihm stimmt etwas nicht. Schalten Sie Geräte aus, und messen Sie an beiden Stellen noch einmal. Zeigt sich mehr als { $more }, ist ein Stecker, Kabel oder Kasten auf dem Weg zu { $part } schadhaft. Stellen Sie dann den Motor ab, und tasten Sie alles ab. Benutzen Sie nichts, was heiß, weich, braun oder locker ist.
learned-meter-high = Sie haben an { $part } { $volts } abgelesen. Mehr als { $least } kann zerstören, was eingesteckt ist, und vielleicht ist der Neutralleiter unterbrochen. Stellen Sie den Motor ab, und ziehen Sie alle Stecker. Lassen Sie den Generator und jedes Kabel und jeden Kasten bis { $part } prüfen, bevor Sie sie wieder benutzen.
learned-meter-raised = Sie haben an { $part } { $volts } abgelesen. Mehr als { $least } kann Elektronik schaden. Stecken Sie alles mit Elektronik aus, und messen Sie noch einmal, während der Rest läuft. Zeigt es noch immer mehr, lassen Sie den Generator prüfen.
learned-meter-fine = Wir hatten { $least } oder mehr an { $part } erwartet, wenn alles an ist. Sie haben { $volts } abgelesen. War weniger an, messen Sie noch einmal mit allem.
learned-meter-unknown = Im Plan läuft an { $part } nichts, darum können wir nicht sagen, was ein Messgerät dort zeigen soll. Unter { $least } schalten Sie etwas aus: Motoren können überhitzen.
learned-ran-less = Der Plan rechnet ab jetzt mit höchstens { $hours } je Tankfüllung.
learned-ran-more = Zu einer Zeit des Tages rechnet der Plan schon mit { $hours } oder weniger je Tankfüllung. Er behält den kleineren Wert.
learned-ran-unknown = Im Plan steht nicht, wie lange eine Tankfüllung bei welcher Last reicht, darum ändert das noch nichts. Sehen Sie in der Anleitung nach, und schreiben Sie diese Stunden in den Plan.
learned-print = Drucken Sie neu, und bringen Sie an, bevor Sie etwas einstecken: { $what }.
learned-no-print = Sie müssen nichts neu drucken.
learned-same = Tun Sie zuerst, was oben steht. Für den Plan ist das nur eine Notiz: Karte, „tallywatt check“ und „tallywatt may“ rechnen nicht damit.
learned-labels = { $count ->
    [one] das Etikett { $names }
   *[other] die Etiketten { $names }
  }
learned-card = { $side ->
    [0] die Karte
   *[other] die Karte (Seite { $side } ist neu)
  }
learned-cautions = die Vorsichtsliste
learned-look = das Blatt zum Nachsehen
learned-worksheet = die Berechnung
learned-wrote = Wir haben es in { $path } vermerkt.
learned-no-part = Wir wissen nicht, welches Teil Sie meinen. Nennen Sie Steckdose, Kabel oder Kasten wie auf dem Etikett. Ist etwas heiß oder riecht es, stellen Sie zuerst den Motor ab, und stecken Sie es aus.
learned-parts = Sie haben mehrere Teile genannt: { $parts }. Nennen Sie eines.
learned-no-figure = Wir haben keine Ampere, Volt oder Stunden gefunden, die wir verstehen, oder zwei von einer Sorte.
learned-no-amps = Der Plan hat an { $parts } nichts an. Deshalb müssen wir wissen, bei wie viel Ampere es ausgelöst hat. Zählen Sie die Ampere von allem zusammen, was dort an war.
learned-say-amps = Geben Sie es dann so ein: tallywatt learned { $plan } { $id } ausgelöst bei 13 A
learned-no-breaker = Der Plan hat für { $parts } keinen Schutzschalter. Nennen Sie die Steckdose, zu der er gehört.
learned-say = Sagen Sie es wie eines von diesen. Ein Schutzschalter: „front ausgelöst“, oder „front ausgelöst bei 13 A“, wenn Sie die Ampere von allem kennen, was an war. Ein Messgerät: „box-left 109 V“. Ein voller Tank: „7 h“. Hitze oder Geruch: „tents heiß“. Auch: „GFCI front ausgelöst“, „CO-Alarm“, „Schlag an front“.
learned-tripped-unknown = Wir wissen nicht, welche Zahl auf dem Schutzschalter von { $part } steht, darum ändern { $amps } nichts. Sehen Sie nach, und schreiben Sie die Zahl in den Plan.
learned-meter-compare = Sie haben an { $part } { $volts } abgelesen. Wir hatten { $least } oder mehr erwartet, wenn alles an ist. Messen Sie jetzt an einer Steckdose des Generators, mit denselben Dingen an. Zeigt sie mehr als { $more }, ist ein Stecker, Kabel oder Kasten auf dem Weg schadhaft: Stellen Sie den Motor ab, und tasten Sie alles ab.
learned-meter-source = Sie haben an { $part } { $volts } abgelesen. Unter { $least } ist der Generator überlastet oder nicht in Ordnung. Schalten Sie etwas aus. Bleibt es niedrig, lassen Sie den Generator prüfen.
learned-meter-none = Zeigt ein Messgerät nichts, heißt das nicht, dass { $part } ohne Spannung ist. Ein Schutzschalter oder ein GFCI könnte aus sein, oder ein Leiter gebrochen. Stellen Sie den Motor ab, bevor Sie dort einen Stecker anfassen.
learned-gfci = Ein GFCI hat an { $part } abgeschaltet: Etwas, das dahinter steckt, hat vielleicht einen Fehler. Stecken Sie all das aus. Drücken Sie einmal RESET. Stecken Sie eins nach dem anderen ein, und benutzen Sie nicht, was ihn wieder auslöst.
learned-shock = Stellen Sie den Motor ab, dann stecken Sie das Kabel am Generator aus. Rufen Sie { $call } an, wenn es gerade passiert ist. Gehen Sie nach jedem Schlag zum Arzt, auch nach einem kleinen. Lassen Sie Generator, Kabel und Gerät von einer Elektrofachkraft ansehen, bevor sie jemand benutzt. Schreiben Sie dann, wo es war, damit der Plan es weiß: „Schlag an kettle“.
learned-shock-at = Stellen Sie den Motor ab, dann stecken Sie das Kabel am Generator aus. Rufen Sie { $call } an, wenn es gerade passiert ist. Gehen Sie nach jedem Schlag zum Arzt, auch nach einem kleinen. Im Plan steht jetzt: { $part } nicht benutzen. Benutzen Sie auch sonst nichts, was dort steckte. Lassen Sie alles von einer Elektrofachkraft ansehen.
learned-alarm = Alle an die frische Luft, sofort. Rufen Sie { $call } an, und sagen Sie: Kohlenmonoxid. Niemand geht wieder hinein, bis die Feuerwehr es sagt.
learned-fire = Alle weg, sofort. Rufen Sie { $call } an. Den Motor nur abstellen, wenn der Weg dorthin frei ist. Kein Wasser auf brennenden Kraftstoff oder auf etwas, das unter Strom stehen kann.
learned-not = Wir verstehen nur, was geschehen ist: Schreiben Sie nicht, was nicht geschehen ist. Eine Messung zählt nur, wenn alles an ist.
learned-no-trip = Hat ein Schutzschalter ausgelöst, sagen Sie es: „front ausgelöst bei 13 A“. Ampere allein ändern nichts.
learned-take-off = { $count ->
    [one] Nehmen Sie das Etikett { $names } ab: Es gibt keines mehr.
   *[other] Nehmen Sie die Etiketten { $names } ab: Es gibt keine mehr.
  }
