# Die Befehlszeile: Hilfe, Ergebnisse und Fehler.

cli-about = Plant den Strom aus einem tragbaren Generator fürs Camping: was jede Steckdose verträgt, was zusammen laufen darf, was gefährlich ist, und die Etiketten und die Karte, die es sagen.
cli-after =
    Ohne Befehl fragt tallywatt eine Frage nach der anderen und druckt am Ende.

    Was es Ihnen sagt, ersetzt weder die örtlichen Vorschriften noch eine Elektrofachkraft.
cli-heading-commands = Befehle
cli-heading-usage = Aufruf:
cli-heading-options = Optionen
cli-heading-arguments = Argumente
cli-more = Beispiele und Exit-Status zeigt „{ $help }“.
cli-heading-examples = Beispiele:
cli-heading-status = Exit-Status:
# Behind its number in a list.
cli-status-done = fertig
cli-status-clear = nichts Schlimmeres als „Vorsicht“
cli-status-warning = eine Warnung, und keine Gefahr
cli-status-danger = eine Gefahr
cli-status-danger-or-lost = eine Gefahr, oder etwas Nötiges hat keine Steckdose
cli-status-yes = ja
cli-status-no = nein
cli-status-right = nichts ist falsch
cli-status-wrong = etwas ist falsch
cli-status-usage = wir verstehen den Befehl nicht
cli-status-plan = der Plan hat einen Fehler
cli-status-write = wir können es nicht schreiben oder drucken
cli-status-stopped = Sie haben abgebrochen
cli-help = Die Hilfe zu einem Befehl zeigen
cli-help-command = Der Befehl; ohne ihn die Hilfe zum ganzen Programm
cli-arg-answers = Antworten auf die Fragen, eine je Zeile, statt zu fragen; "-" liest die Standardeingabe
cli-arg-plain = Zeile für Zeile fragen, ohne etwas neu zu zeichnen, wie es Bildschirmleser mögen
cli-arg-language = Die Sprache für Bildschirm und Drucke, etwa es oder fr-CA; fehlt sie, die des Plans oder des Systems
cli-arg-units = Fuß, Gallonen und °F, oder Meter, Liter und °C; fehlt es, wie es in der Region der Sprache üblich ist
cli-arg-color = Farben auf dem Bildschirm; "auto" nimmt sie im Terminal, wenn NO_COLOR nicht gesetzt ist
cli-arg-print-language = Die Sprache der Drucke, wenn es nicht die des Bildschirms ist; mehrere machen je einen Satz: es,fr
cli-arg-help = Hilfe zeigen; --help zeigt auch Beispiele
cli-arg-version = Die Version zeigen

cli-ask = Eine Plandatei durch Fragen ändern; ihre Kommentare und ihre Reihenfolge bleiben
cli-ask-plan = Die Plandatei
cli-ask-answers = { cli-arg-answers }
cli-ask-plain = { cli-arg-plain }
cli-value-options = [OPTIONEN]
cli-value-command = [BEFEHL]
cli-value-card = GRÖSSE
cli-value-code = KÜRZEL
cli-value-dir = ORDNER
cli-value-file = DATEI
cli-value-format = FORMAT
cli-value-ink = FARBE
cli-value-language = SPRACHE
cli-value-load = GERÄT
cli-value-n = ZAHL
cli-value-new = NEU
cli-value-name = NAME
cli-value-new-toml = NEU.toml
cli-value-old = ALT
cli-value-paper = PAPIER
cli-value-plan = PLAN
cli-value-print = DRUCK
cli-value-right-down = RECHTS, UNTEN
cli-value-signal = SIGNAL
cli-value-units = EINHEITEN
cli-value-when = WANN
cli-value-words = WORTE
cli-value-yyyy-mm-dd = JJJJ-MM-TT
cli-values = [{ $values }]
cli-default = [Vorgabe: { $value }]
usage-unknown-argument = { $argument } gibt es hier nicht
usage-unknown-command = es gibt keinen Befehl { $argument }
usage-wrong-value = { $argument } kann nicht „{ $value }“ sein
usage-no-value = { $argument } braucht einen Wert
usage-missing = das fehlt: { $argument }
usage-conflict = { $argument } und { $other } gehen nicht zusammen
usage-twice = { $argument } steht zweimal da
usage-answers = --answers gehört nur zu den Fragen: allein, oder mit ask
usage-other = dieser Aufruf ist nicht zu verstehen: { $argument }
usage-allowed = Möglich ist { $allowed }.
usage-nearest = Meinten Sie { $nearest }?
usage-help = „{ $help }“ sagt, was es gibt.
usage-plan = Das ist ein Plan. Zum Prüfen: { $command }
usage-plan-first = Nennen Sie zuerst den Plan: { $command }
usage-date = Schreiben Sie einen Tag des Kalenders als JJJJ-MM-TT, etwa 2026-07-04, oder "today".
usage-no-language = die Sprache „{ $tag }“ gibt es hier nicht
cli-demo = Alle Drucke für ein erfundenes Wochenende machen, ohne eine Frage
cli-demo-fixed = Dasselbe Wochenende, die Gefahren behoben
cli-demo-into = Der Ordner, in den geschrieben wird, wenn nicht tallywatt-demo

cli-check = Pläne prüfen und sagen, was nicht stimmt, das Schlimmste zuerst
cli-check-plans = Plandateien; "-" liest eine von der Standardeingabe
cli-check-long = Auch sagen, warum, und was jede Steckdose verträgt
cli-check-format = "text" für Menschen; "json" für Programme, ein Bericht je Plan
cli-check-fail-on = Mit Status 0 enden, wenn kein Befund so schlimm oder schlimmer ist

cli-print = Etiketten, Karte, Vorsichtsliste und Berechnung eines Plans drucken
cli-print-plan = Die Plandatei; "-" liest sie von der Standardeingabe
cli-print-into = Der Ordner, in den geschrieben wird
cli-print-paper = Das Papier im Drucker
cli-print-stock = Der Etikettenbogen mit seinem Namen, wie letter-30 oder roll-24 (ein falscher Name zeigt alle), oder eine eigene Datei, die auf .toml endet
cli-print-start-at = Das erste freie Etikett auf einem angebrochenen Bogen
cli-print-copies = Wie oft jedes Etikett
cli-print-offset = Die Etiketten auf dem Bogen nach rechts und unten rücken, höchstens { $measure ->
        [metric] 10 mm
       *[customary] 0,39 in
    }, für einen Drucker, der schief einzieht: { $measure ->
        [metric] "1 mm, -0.5 mm"
       *[customary] "0.04 in, -0.02 in"
    }
cli-print-alignment = Auch eine Seite mit Linealen drucken, die zeigt, wohin die Etiketten fallen, um sie an einen Etikettenbogen zu halten
cli-print-only = Nur diesen Druck; darf mehrmals stehen
cli-print-card = Die Größe der Karte: ein Blatt je Seite; ein halbes Blatt (A5, halber Letter) oder Taschengröße, zum Falten. Für das Telefon: eine schmale Spalte, mit Bildern
cli-print-ink = "black" druckt schwarz auf weiß, ohne Farben und Grau
cli-print-date = Das Datum auf jedem Blatt; die Dateien sind dann zum Aufheben über Jahre gemacht (PDF/A-2a); fehlt es, wird keines gedruckt
cli-print-png = Auch ein Bild jeder Seite schreiben, und contact.png mit allen
cli-print-templates = Ein Ordner mit eigenen Vorlagen; "tallywatt templates" schreibt welche, mit denen man anfangen kann

cli-may = Vor dem Anschließen fragen: Darf das eingeschaltet werden, in welcher Reihenfolge, und was zeigt ein Messgerät
cli-may-plan = Die Plandatei; "-" liest sie von der Standardeingabe
cli-may-loads = Was eingeschaltet werden soll: Kürzel oder Namen, in Anführungszeichen, wenn sie Leerzeichen haben
cli-may-while = Was schon läuft
cli-may-format = "text" für Menschen; "json" für Programme

cli-learned = In den Plan aufnehmen, was sich auf dem Platz gezeigt hat: was auslöste, was heiß wurde, eine Messung, die Stunden eines Tanks
cli-learned-plan = Die Plandatei; sie wird geändert, und ihre Kommentare bleiben
cli-learned-words = Was Sie gesehen haben, etwa: front ausgelöst bei 13 A
cli-learned-date = Der Tag, an dem Sie es gesehen haben; fehlt er, heute

cli-reprint = Sagen, welche Etiketten und Blätter eines alten Plans für einen neuen neu zu drucken sind
cli-reprint-old = Der Plan, den Sie gedruckt haben
cli-reprint-new = Der Plan, wie er jetzt ist

cli-mend = Die einfachsten Änderungen finden, die Gefahren beheben und alles laufen lassen, was laufen muss, und sagen, was übrig ist
cli-mend-plan = Die Plandatei; "-" liest sie von der Standardeingabe
cli-mend-into = Den geänderten Plan in diese neue Datei schreiben; eine vorhandene bleibt, wie sie ist
cli-mend-warnings = Auch die Warnungen beheben, soweit Änderungen es können
cli-mend-format = "text" für Menschen; "json" für Programme: der Bericht, mit den Änderungen
cli-templates = Die Vorlagen der Drucke in einen Ordner schreiben, um sie zu ändern und mit den eigenen zu drucken
cli-templates-into = Der Ordner, in den geschrieben wird; eine vorhandene Datei bleibt, wie sie ist

cli-explain = Eine Regel erklären: was sie prüft, warum es schadet, die Rechnung, was zu tun ist
cli-explain-code = Das Kürzel der Regel, etwa AIR001; fehlt es, werden alle Regeln gezeigt

cli-words = Für Übersetzende: jede Nachricht neben ihren Übersetzungen, als Seite für einen Browser
cli-words-languages = Ordner von Sprachen; fehlen sie, alle
cli-words-check = Stattdessen sagen, was an ihnen nicht stimmt
cli-words-from = Die Ordner der Sprachen aus diesem Ordner lesen statt aus dem Programm

failure-lead = tallywatt:
failure-hint = Hinweis:
failure-output = das Ergebnis kann nicht geschrieben werden: { $reason }
failure-output-full = für das Ergebnis ist kein Platz mehr
failure-no-rule = es gibt keine Regel { $code }
failure-no-rule-hint = "tallywatt explain" zeigt sie alle.
failure-json = der Bericht kann nicht als JSON geschrieben werden

check-plan = { $name }
check-none = Wir haben in diesem Plan nichts gefunden. Wir können etwas übersehen.
check-dangers = Das beheben, bevor der Motor startet:
check-next = Was jetzt zu tun ist
next-none = Keine Regel fand eine Gefahr oder eine Warnung. Es entscheiden trotzdem die örtlichen Vorschriften.
next-trouble = { $title }.
check-looks = Sehen Sie auch hier nach, in dieser Reihenfolge. Raten Sie nicht.
check-buy = Noch nicht gekauft
check-guessed = Wo wir nicht genug wissen, haben wir das Schlimmste angenommen: Sehen Sie zuerst nach.
check-found = Alles, was wir gefunden haben, das Schlimmste zuerst
check-long = Warum, und was jede Steckdose verträgt: „tallywatt check --long“ mit diesem Plan.
check-count = { $dangers ->
        [one] 1 Gefahr
       *[other] { $dangers } Gefahren
    }, { $warnings ->
        [one] 1 Warnung
       *[other] { $warnings } Warnungen
    }, { $cautions ->
        [one] 1 Vorsichtshinweis
       *[other] { $cautions } Vorsichtshinweise
    }, { $notices ->
        [one] 1 Hinweis
       *[other] { $notices } Hinweise
    }.
check-label-why = Warum
check-label-look = Nachsehen
check-label-do = Tun
check-label-also = Auch
trouble-too = Damit verschwindet auch: { $troubles }
trouble-also = { $title } ({ $code })
trouble-assumed = Schlimmster Fall: { $title }
trouble-assumed-why = Wir wissen es nicht und haben das Schlimmste angenommen. { $why }
trouble-look = Wenn Sie es wissen, ändern Sie Ihre Antwort und prüfen Sie noch einmal.
check-more = "tallywatt explain KÜRZEL" sagt mehr zu jedem davon.
check-limits = Was jede Steckdose verträgt, wenn sonst nichts an ist
check-limit-amps = { $amps } (etwa { $watts })
check-limit-two = { $long } für 3 Stunden oder länger (Grenze: { $long_by }). { $short } für weniger als 3 Stunden (Grenze: { $short_by }).
check-limit-refused = GESPERRT. Siehe { $code }.
check-limit-guarded = Nur ein GFCI-Kabel (Tasten TEST und RESET). Siehe { $code }.
check-limit-guarded-ahead = Erst ein GFCI-Kabel (Tasten TEST und RESET) davor stecken. Siehe { $code }.
check-limit-behind = GESPERRT: { $count ->
        [one] bekommt
       *[other] bekommen
    } den Strom von „{ $id }“, das auch gesperrt ist. Siehe { $code }.
check-limit-one = { $long }. Grenze: { $short_by }.
check-limit-same = { $long } für 3 Stunden oder länger, { $short } für weniger als 3 Stunden. Grenze: { $short_by }.
check-limit-share = 80 % von „{ $id }“ ({ $reason })
check-limit-share-own = 80 % von: { $reason }
check-limit-by = „{ $id }“ ({ $reason })
check-limit-only = Hier nur { $parts }. { $limit }
check-limit-bonding-plug = Hier nur der Brückenstecker.
check-assumed = Das wissen wir nicht, also haben wir den gefährlicheren Fall angenommen
check-defer = Die örtlichen Vorschriften und eine Elektrofachkraft entscheiden, nicht dieses Programm.

reason-rated-power = die Leistung des Generators
reason-rated-power-unguarded = die Leistung des Generators, der darüber vielleicht nicht abschaltet
reason-one-leg = eine Hälfte des Generators, der darüber vielleicht nicht abschaltet
reason-breaker = der Schutzschalter
reason-trips-early = ein Schutzschalter, der zu früh auslöst
reason-receptacle = was die Steckdose selbst verträgt
reason-plug = was der Stecker verträgt
reason-cord-ampacity = die Leiter des Kabels; kein Schutzschalter schützt sie
reason-cord-mark = die übliche Angabe auf so dünnen, langen Kabeln; Schild lesen, das Kleinere gilt
reason-coiled-cord = das aufgerollte Kabel; kein Schutzschalter schützt es
reason-parallel-kit = der Verbindungssatz zwischen den Generatoren
reason-hot-cord = das Kabel in so heißer Luft; kein Schutzschalter schützt es
reason-wiring = die Leitung des Kastens
reason-not-fed = falsche Spannung für ihre Form; wie unter Spannung behandeln

demo-purpose = Dieses Beispiel hat absichtlich Fehler. Wäre es Ihres, wäre das zu tun:
demo-wrote = Geschrieben nach { $dir }:
demo-file-labels = ein Etikett für jede Steckdose, jedes Kabel, jeden Kasten und den Generator
demo-file-card = die Karte zum Laminieren, zwei Seiten
demo-file-look = das Blatt zum Nachsehen: was zu prüfen ist, mit Platz zum Schreiben
demo-file-cautions = die Vorsichtsliste zum Abhaken, das Schlimmste zuerst
demo-file-worksheet = jede Zahl, für eine Elektrofachkraft
demo-file-report = der Bericht für andere Programme
demo-file-plan = der Plan selbst: ändern Sie ihn, dann "tallywatt print"
demo-other = "tallywatt demo --fixed" macht dasselbe Wochenende, die Gefahren behoben.


working = In Arbeit. Strg-C bricht ab, und nichts wird geschrieben.
print-wrote = Geschrieben nach { $dir }:
print-look-gone = Wir haben die alte { $file } aus dem Ordner genommen: Es gibt nichts mehr nachzusehen.
# Safety.
print-dangers-left = { $count ->
        [one] In diesem Plan ist noch 1 Gefahr
       *[other] In diesem Plan sind noch { $count } Gefahren
    }. Starten Sie den Generator erst, wenn { $count ->
    [one] sie behoben ist
   *[other] alle behoben sind
  }. Die Vorsichtsliste zeigt, wie.
print-card-sheets = Die Karte braucht { $count } Blätter: eines ist zu klein für diesen Plan. Auf jedem steht, welches es ist. Halten Sie sie zusammen.
print-card-sheets-half = { print-card-sheets } Eine größere Karte braucht vielleicht weniger: "--card sheet".
print-card-sheets-pocket = { print-card-sheets } Eine größere Karte braucht vielleicht weniger: "--card half" oder "--card sheet".
print-labels-used = { $count ->
        [one] Es gibt 1 Etikett.
       *[other] Es gibt { $count } Etiketten.
    } { $next ->
        [0] Damit ist der letzte Etikettenbogen voll.
       *[other] Nach dem Drucken ist das nächste freie auf dem letzten Bogen Nummer { $next }: Beginnen Sie beim nächsten Mal dort mit "--start-at { $next }".
    }
templates-how = Ändern Sie, was Sie wollen. Drucken Sie dann mit "tallywatt print PLAN --into ORDNER --templates { $dir }". Eine Vorlage, die nicht im Ordner ist, ist die des Programms.
templates-none = in { $path } gibt es keine Vorlagen
templates-none-hint = "tallywatt templates --into ORDNER" schreibt welche, mit denen man anfangen kann.
templates-failed-hint = Die Vorlagen in { $path } sind vielleicht aus einer anderen Version von tallywatt. Rufen Sie "tallywatt templates --into ORDNER" mit einem neuen Ordner auf, machen Sie Ihre Änderungen dort noch einmal und drucken Sie mit diesem Ordner.


# The names in the example plan.
demo-name-site = Wochenende an der Wacholderbucht
demo-name-generator = der Blaue
demo-name-kettle = Wasserkocher
demo-name-toaster = Toaster
demo-name-griddle = Grillplatte
demo-name-coolbox = Kühlbox
demo-name-blanket = Heizdecke
demo-name-cpap = CPAP-Gerät
demo-name-cpap-battery = CPAP-Akku
demo-name-lamps = Lichterkette
demo-name-chargers = Ladegeräte für Handy und Kamera
demo-name-fan = Ventilator
demo-name-pump = Luftmatratzenpumpe
# Die Bemerkungen in den Beispielplänen.
demo-remark-packed =
    Ein Wochenende als Beispiel: ein kleiner Generator, eine Kiste Kabel und mehr Geräte, als er versorgen kann.
    Einige Dinge sind hier mit Absicht falsch. „tallywatt check“ mit dieser Datei sagt, welche.
demo-remark-ground = das Gras am See trocknet nie vor Mittag
demo-remark-sleepers = das nächste Zelt
demo-remark-tripped = letzten Sommer, Toaster und Wasserkocher zusammen
demo-remark-kitchen = Das dicke Kabel zur Küche.
demo-remark-splitter = Ein Verteilerkabel mit drei Dosen, gebraucht gekauft. Es hat keine eigenen Schutzschalter.
demo-remark-living-room = Das Kabel aus dem Wohnzimmer, zu den Zelten.
demo-remark-through = Sie führt die vollen 30 A zu einem zweiten Kasten weiter. Kein eigener Schutzschalter.
demo-remark-put-right =
    Dasselbe Wochenende, in Ordnung gebracht mit dem, was die Familie hat oder billig bekommt.
    Jede Änderung trägt das Wort „jetzt“.
demo-remark-now-far = jetzt weit weg von den Zelten, Auspuff abgewandt
demo-remark-now-alarms = jetzt einer in jedem Zelt
demo-remark-now-roof = jetzt unter einem hohen Dach auf Pfosten, nach allen Seiten offen
demo-remark-now-home = Das Verteilerkabel mit drei Dosen bleibt jetzt zu Hause.
demo-remark-now-cord = Jetzt ein Kabel für draußen zu den Zelten, mit einem GFCI im Stecker.
demo-remark-now-socket = Jetzt in der anderen Dose, so dass dort nur GFCI-Kabel stecken.
demo-remark-now-empty = Sie führt die vollen 30 A zu einem zweiten Kasten weiter. Kein eigener Schutzschalter. Jetzt leer, Deckel zu.
demo-remark-now-toaster = jetzt nach dem Wasserkocher
demo-remark-now-supper = jetzt gibt es Pfannkuchen zum Abendessen
demo-remark-now-shut = Jetzt nachts fest zu, und auch, solange der Motor zum Tanken abkühlt.
demo-remark-now-warm = jetzt wärmt sie das Bett vor und ist nachts aus
demo-remark-now-battery = Das Atemgerät läuft jetzt nachts mit seinem eigenen Akku. Dies lädt ihn am Tag.
