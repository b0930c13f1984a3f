# Alles auf Papier: Etiketten, Karte, Vorsichtsliste und Berechnung.

## Fehler beim Drucken

print-error-words-incomplete = Einige Wörter fehlen, also wurde nichts gedruckt: { $faults }
print-error-no-glyph = „{ $text }“ kann nicht gedruckt werden: Für { $characters } gibt es keinen Buchstaben. Schreiben Sie es mit anderen Buchstaben.
print-error-too-long = { $percent ->
    [0] { $document }: Für „{ $text }“ ist kein Platz. Zu viele Teile stecken ineinander.
   *[other] { $document }: „{ $text }“ ist zu lang, um lesbar groß gedruckt zu werden. Kürzen Sie es auf etwa { $percent } % seiner Länge.
  }
print-error-off-page = { $document }, Seite { $page }: „{ $text }“ liefe über das Papier hinaus. Es wurde nichts gedruckt.
print-error-too-small = { $document }, Seite { $page }: „{ $text }“ wäre zu klein zum Lesen, mit { $percent } % der nötigen Höhe. Es wurde nichts gedruckt. Machen Sie es in Ihrer Vorlage größer, oder lassen Sie es weg.
print-error-unknown-stock = Es gibt keinen Etikettenbogen „{ $name }“. Es gibt { $known }.
print-error-bad-stock = Der Etikettenbogen „{ $name }“ kann nicht benutzt werden: { $message }
print-error-bad-start = Der Bogen hat { $count } Etiketten, also kann der Druck nicht bei { $start } beginnen.
print-error-template = Die Vorlage { $file } scheiterte in Zeile { $line }, Spalte { $column }: { $message }

## Gemeinsames

print-several = { $name } × { $count }
print-generator = Generator
print-cord = Kabel
print-adapter = Adapter
print-box = Kasten
print-camper = Wohnwagen
print-for-hours = ab 3 Stunden
print-for-short = unter 3 Stunden
print-for-any = beliebig lange
print-brief-hours = ab 3 h
print-brief-short = unter 3 h
# An old print is told from a new one by it: $code is five digits.
print-code = Code { $code }
print-for-seconds = für wenige Sekunden
print-all-for-hours = gesamt, ab 3 Stunden
print-all-for-any = gesamt, beliebig lange
print-all-running = gesamt, dauernd

## Was eine Grenze setzt. $id ist der Teil.

print-set-by-rated-power = Der Generator setzt diese Grenze. Darüber schaltet er ab oder bleibt stehen.
print-set-by-rated-power-unguarded = Grenze des Generators. Darüber schaltet er vielleicht nicht ab: Er kann überhitzen.
print-set-by-one-leg = Grenze einer Generatorhälfte. Darüber schaltet er vielleicht nicht ab: Er kann überhitzen.
print-set-by-parallel-kit = Der Verbindungssatz setzt diese Grenze. Er löst darüber vielleicht nicht aus.
print-set-by-breaker = Grenze des Schutzschalters an „{ $id }“. Darüber löst er aus.
print-set-by-trips-early = Der Schutzschalter an „{ $id }“ hat knapp darüber ausgelöst. Nicht höher gehen.
print-set-by-receptacle = Die Steckdose „{ $id }“ setzt diese Grenze.
print-set-by-plug = Der Stecker von „{ $id }“ setzt diese Grenze.
print-set-by-cord-ampacity = Die Leiter von Kabel „{ $id }“ setzen diese Grenze.
print-set-by-cord-mark = Übliche Angabe auf Kabeln wie „{ $id }“. Schild lesen; das Kleinere gilt.
print-set-by-hot-cord = Kabel „{ $id }“ verträgt in so heißer Luft weniger. In den Schatten legen.
print-set-by-hot-cord-guessed = Wir wissen nicht, wie heiß es wird: { $air } bei „{ $id }“ angenommen. In den Schatten legen.
print-set-by-coiled-cord = Kabel „{ $id }“ ist aufgerollt und verträgt deshalb weniger. Ganz abrollen.
print-set-by-coiled-cord-guessed = Wir wissen nicht, ob „{ $id }“ abgerollt ist: aufgerollt angenommen. Ganz abrollen.
print-set-by-wiring = Die Leitung in „{ $id }“ setzt diese Grenze.
print-set-by-not-fed = Falsche Spannung für diese Form. Wie unter Spannung behandeln.
print-set-by-share-breaker = Über 80 % kann Schutzschalter „{ $id }“ auslösen.
print-set-by-share-trips-early = 80 % von knapp unter dem Wert, bei dem der Schutzschalter an „{ $id }“ auslöste.
print-set-by-share-receptacle = 80 % dessen, was „{ $id }“ verträgt.
print-set-by-share-wiring = 80 % dessen, was die Leitung in „{ $id }“ verträgt.
print-set-by-two = Ab 3 Stunden: { $hours } Kürzer: { $past }

## Etiketten

print-labels-title = Etiketten: { $site }
print-face-alt = Vorderseite einer Steckdose { $shape }
print-nothing-trips = Alle Ampere hier zusammenzählen. Über { $limit } droht Überhitzung: Kein Schutzschalter löst aus.
print-nothing-below = Alle Ampere hier zusammenzählen. Über { $limit } droht Überhitzung: Der Schutzschalter löst erst bei { $amps } aus.
print-nothing-below-set = Alle Ampere hier zusammenzählen. Über { $limit } droht Überhitzung: Der Generator schaltet erst über { $amps } ab.
print-shock-yes = Schutz gegen Stromschlag (GFCI): JA. Vor Gebrauch TEST drücken.
print-shock-yes-at = Schutz gegen Stromschlag (GFCI): JA. Vor Gebrauch TEST an „{ $at }“ drücken.
print-shock-no = Schutz gegen Stromschlag (GFCI): NEIN.
print-shock-unknown = Schutz gegen Stromschlag (GFCI): UNBEKANNT, gilt als NEIN. Tasten TEST und RESET suchen.
# Inside a camper, which has its own.
print-shock-camper = Schutz gegen Stromschlag (GFCI): davor keiner. Vor Gebrauch TEST im Wohnwagen drücken.
print-short-add-up = Ampere zählen
print-short-gfci = GFCI: JA. Vorher prüfen.
# Where there is least room.
print-tiny-gfci = GFCI: JA
print-tiny-no-gfci = GFCI: NEIN
print-tiny-gfci-unknown = GFCI: UNBEKANNT
print-plug-in = Hier anschließen
print-plugs-more = { $loads } + { $count } mehr
# Nothing forbids to use it, but no GFCI works there: nobody is invited to.
print-idle = HIER NICHTS GEPLANT
print-idle-how = Bevor Sie hier etwas einstecken: in den Plan aufnehmen und neu prüfen.
# The plan has something here that is too much, or must not be used.
print-leave-empty = LEER LASSEN
print-leave-empty-how = Hier nichts einstecken. Was der Plan hier hat, ist zu viel oder darf nicht benutzt werden.
print-comes-from = Gespeist von
print-leg = Hälfte { $leg }
print-leg-unknown = Hälfte unbekannt
print-leg-unknown-brief = Hälfte ?
# Where both feed it; and the same on a label with little room.
print-leg-both = Hälften A und B
print-leg-both-brief = A und B
# After the amps of a leg, in front of how long they hold.
print-on-both = auf A und { $amps } auf B, { $how_long }
# In a table of outlets.
print-amps-both-brief = A: { $amps }, B: { $amps }
print-legs = Hälften
print-legs-value = A und B: die zwei Hälften seiner Leistung.
print-not-all-at-once = nicht alles zugleich: { $loads }
print-not-together = { $loads }; nicht zugleich: { $sets }
print-one-at-a-time = nur eins zugleich: { $loads }
print-only-these = HIER NUR { $parts }. Kein Gerät einstecken.
print-short-only = KEIN GERÄT HIER
print-short-only-camper = WOHNWAGEN-HAUPTSCHALTER: { $amps }
print-short-only-generator = NUR DIESER GENERATOR
only-if-camper = NUR für einen Wohnwagen, auf dessen Hauptschutzschalter { $amps } oder weniger steht.
only-if-generator = NUR mit diesem Generator: Ein anderer kann das Teil überlasten.
print-bonding-plug = Brückenstecker
print-bonding-plug-stays = Der Brückenstecker bleibt. { $title }
# With what plugged in: a box, or a bonding plug in an outlet.
print-shock-blind = Schutz gegen Stromschlag (GFCI): NEIN. Ist „{ $joint }“ daran, schaltet er nicht ab.
print-shock-blind-plug = Schutz gegen Stromschlag (GFCI): NEIN. Mit dem Brückenstecker in „{ $joint }“ schaltet er nicht ab.
print-shock-doubtful = Schutz gegen Stromschlag (GFCI): NEIN. Ist „{ $joint }“ daran, schaltet er vielleicht nicht ab.
print-shock-doubtful-plug = Schutz gegen Stromschlag (GFCI): NEIN. Mit einem Brückenstecker in „{ $joint }“ schaltet er vielleicht nicht ab.
print-do-not-use = GESPERRT
print-apart = NICHT PARALLEL BETREIBEN
print-apart-brief = NICHT PARALLEL
print-guarded = HIER NUR GFCI-KABEL
print-guarded-brief = NUR GFCI-KABEL
# The GFCI cord goes in nearer the generator, ahead of this.
print-guarded-ahead = ERST EIN GFCI-KABEL
print-guarded-ahead-brief = ERST GFCI
# On a cord, of whatever is plugged in at its far end: one outlet or several.
print-guarded-cord = AM ENDE NUR GFCI-KABEL
print-guarded-cord-do = In jede Dose dieses Kabels nur ein GFCI-Kabel stecken (Tasten TEST und RESET). Kein Gerät. Geräte kommen in dieses GFCI-Kabel.
# With that cord plugged in.
print-guarded-most = dann höchstens { $amps }
print-guarded-do = { $fix } Dann höchstens { $amps }.
print-behind = Der Strom kommt von „{ $id }“: nicht benutzen.
print-dead-end = Nichts dahinter benutzen.
print-refused-alt = Verbotszeichen: { $id } nicht benutzen
# Of a cord or box that must not be used: its outlets.
print-refused-ends = Mit { $ends }
print-do = Zu tun
print-fold = Hier um das Kabel falten
print-flag-alt = Dasselbe noch einmal, für die andere Seite des Kabels
print-scale-bar = Dieser Balken muss { $measure ->
        [metric] 50 mm
       *[customary] 1,97 in
    } messen. Wenn nicht, noch einmal mit 100 % drucken.
print-shared-sockets = { $count ->
    [one] Diese Dose hat die Grenze für sich.
    [2] Beide Dosen teilen sich diese Grenze.
   *[other] Alle { $count } Dosen teilen sich diese Grenze.
  }
# Where nobody said how many plugs the outlet takes.
print-shared-plugs = Alle Stecker hier teilen sich diese Grenze.
print-shared-outlets = Geteilt mit { $others }.
print-shared-ends = Alle { $count } Enden von „{ $owner }“ zusammen: { $amps }. Nicht jedes.
print-shared-box = Alles an „{ $owner }“ zusammen: { $amps }.
print-short-shared = { $at }: zus. { $amps }
print-short-shared-here = Für alle Stecker hier zusammen
print-plug-into = Stecken in
print-plug-into-shared = „{ $at }“, { $amps } insgesamt mit { $others }
print-plug-into-nothing = nichts in diesem Plan
print-feeds = Speist
# What runs in a camper.
print-inside = Innen
print-cord-facts = { $wire } · { $length }
print-wire-unknown = Querschnitt unbekannt
print-length-unknown = Länge unbekannt
print-cord-unknown = Querschnitt, Länge unbekannt
print-box-headline = Einspeisung { $inlet }
print-camper-headline = Stecker { $inlet }
print-generator-headline = { $rated } dauernd · { $peak } wenige Sekunden
print-generator-headline-one = { $rated } dauernd
print-neutral = Neutralleiter
print-neutral-bonded = Mit dem Gehäuse verbunden.
print-neutral-floating = Erdfrei (mit nichts verbunden). Ein Steckdosenprüfer kann hier OPEN GROUND zeigen.
print-neutral-plug = Erdfrei, durch einen Brückenstecker mit dem Schutzleiter verbunden.
print-neutral-plug-unknown = Erdfrei, wenn kein Brückenstecker steckt. Nachsehen.
print-neutral-unknown = Unbekannt. In der Anleitung nach „floating“ oder „bonded neutral“ suchen.
print-reachable = Durch benutzte Dosen
print-reachable-value = { $reachable } von { $rated } erreichbar
print-rated-guessed = Leistung
print-rated-guessed-value = Unbekannt: { $taken } angenommen. Schild lesen.
print-rated-guessed-less = Unbekannt: { $taken } angenommen, { $left } bleiben bei dieser Höhe und Hitze. Schild lesen.
print-tank = Eine Tankfüllung
print-tank-value = etwa { $hours }
print-tank-value-with = etwa { $hours }, wenn { $with } läuft
print-refuel = Tanken
print-refuel-value = Motor aus, { $cooling } Minuten abkühlen. Nie bei laufendem Motor.
print-air = Auspuff
print-air-value = Tötet, und man riecht es nicht. Nur im Freien, weggerichtet, mindestens { $ample } von Zelt, Fahrzeug, Tür, Fenster und Mensch.

print-air-brief = Abgase töten: { $ample } Abstand.

## Ausrichtseite

print-alignment-title = Wo die Etiketten liegen
print-alignment-head = Wo die Etiketten liegen
print-alignment-1 = Diese Seite mit 100 % auf gewöhnliches Papier drucken. Mit einem Etikettenbogen gegen das Licht halten.
print-alignment-2 = Liegen die Rahmen zu weit links oder zu hoch, an den Linealen ablesen, um wie viel, und noch einmal mit --offset { $measure ->
        [metric] "1 mm, 0.5 mm"
       *[customary] "0.04 in, 0.02 in"
    } drucken: erst nach rechts, dann nach unten.
print-alignment-3 = Liegen sie zu weit rechts oder zu tief, ein Minus vor diese Zahl schreiben.

## Karte

print-card-title = Karte: { $site }
print-card-one = Seite 1: einstecken
print-card-two = Seite 2: wenn etwas schiefgeht
print-card-alarm = CO-Melder am Schlafplatz.
print-card-now = CO-Alarm, Schwindel oder Kopfweh? Alle ins Freie. { $call } anrufen.
print-card-turn = Umdrehen.
print-card-see = Siehe Seite 2.
print-card-on = Seite 1 geht weiter
print-card-call = { $call } anrufen
# To be filled in by hand.
print-card-site = Platznummer
print-card-ranger = Platzwart
print-card-hospital = Krankenhaus
print-card-flip = Beidseitig drucken, an der langen Kante wenden.
print-card-fold = Einseitig drucken. In der Mitte falten, Druck nach außen.
print-card-trim = An den Eckmarken zuschneiden. Die Folie siegelt ringsum { $measure ->
        [metric] 3 mm
       *[customary] 1/8 in
    }.
print-card-danger = { $count ->
    [one] 1 Gefahr in diesem Plan. Vor dem Starten beheben: siehe Vorsichtsliste.
   *[other] { $count } Gefahren in diesem Plan. Vor dem Starten beheben: siehe Vorsichtsliste.
  }
print-no-breaker = Ampere zählen: über { $limit } löst nichts rechtzeitig aus
# On a small card.
print-no-breaker-brief = Ampere zählen: Nichts löst aus
print-row-gfci = GFCI
print-loose = Nicht angeschlossen:
print-unplaced = NICHT EINSTECKEN: { $loads }. Keine Steckdose in diesem Plan reicht dafür.
print-too-large = NICHT EINSTECKEN: { $loads }. Das ist zu viel für die Steckdose oder den Generator.
print-felt-hot = NICHT EINSTECKEN: { $loads }. Gerät oder Steckdose wurde heiß oder gab einen Schlag.
print-none-free = NICHT EINSTECKEN: { $loads }. Keine freie Steckdose, die benutzt werden darf, reicht dafür.
# Every outlet left is one that must not be used.
print-refused = NICHT EINSTECKEN: { $loads }. Keine freie Steckdose, die Sie benutzen dürfen, passt.
print-misplaced = NICHT EINSTECKEN, wo dieser Plan es vorsieht: { $loads }. Für jedes reicht eine andere Steckdose.
# Of what someone’s health depends on.
print-life-battery = { $life }: Eine dafür gemachte Batterie bereithalten, die die ganze Nacht reicht.
print-unplaced-life = { $life } nur mit einer dafür gemachten Batterie betreiben, die die ganze Nacht reicht.
print-unplaced-life-maybe = Hängt jemandes Gesundheit von { $life } ab: nur mit einer dafür gemachten Batterie betreiben, die die ganze Nacht reicht.
print-together-title = Zusammen
print-together-title-danger = Zusammen, sobald keine Gefahr mehr besteht
print-together-one = Dies alles darf zugleich laufen, sonst nichts: { $loads }.
print-together-how = Alles mit einem Punkt darf zugleich laufen, sonst nichts.
print-together-pick = Eine Spalte wählen.
print-together-number = Eine Zahl: so viele davon, gleich welche.
print-together-dot = darf laufen
print-more = Oder eine andere Gruppe: { $count } mehr in der Berechnung.
print-more-left-out = Andere Gruppen sind möglich. Danach fragen: tallywatt may.
print-together-elsewhere = Was zusammen laufen darf: siehe Berechnung.
print-never-more = … und { $count } mehr, die nie zusammen laufen, in der Berechnung.
print-never-unlisted = Nicht jede Mischung ist berechnet. Nach einer fragen: tallywatt may.
# A group of the worksheet, and when the plan needs it.
print-choice = { $number } ({ $times })
print-when-breakfast = Frühstück
print-when-midday = Mittag
print-when-afternoon = Nachmittag
print-when-evening = Abend
print-when-night = Nacht
print-never-title = Nie zusammen
print-never-how = Jedes ▸ beginnt eine Gruppe. Nie alles aus einer Gruppe zugleich an.
print-start-meter = { $on ->
    [all] Ist alles an
   *[column] Ist die ganze Spalte 1 an
  }, muss ein Steckdosen-Messgerät in jeder Dose von „{ $at }“ mindestens { $volts } zeigen, wenn die Dose am Generator { $nominal } zeigt. Viel weniger: etwas ausschalten.
print-start-meter-outlet = { $on ->
    [all] Ist alles an
   *[column] Ist die ganze Spalte 1 an
  }, muss ein Steckdosen-Messgerät an „{ $at }“ mindestens { $volts } zeigen, wenn die Dose am Generator { $nominal } zeigt. Viel weniger: etwas ausschalten.
print-setup-title = Aufbauen
print-setup-alarm = Einen funktionierenden Kohlenmonoxid-Melder dorthin legen, wo geschlafen wird.
print-setup-alarm-test = Prüftaste jedes Kohlenmonoxid-Melders drücken, wo geschlafen wird: Er muss piepen.
print-setup-place = Generator im Freien aufstellen, mindestens { $ample } von jedem Zelt, Fahrzeug, Menschen, jeder Tür und jedem Fenster. Auspuff von allem weg richten.
print-setup-clear = Ringsum { $clear } frei halten. Trockener, ebener Boden, nichts darüber außer einem Dach weit oben, an allen Seiten offen.
print-setup-look = Jedes Kabel und jeden Stecker ansehen. Nicht benutzen: Kabel mit Schnitt oder Brandspur, Stecker, die lose sind oder deren runder Stift fehlt.
print-setup-uncoil = Jedes Kabel ganz abrollen. Keinen Stecker in nasses Gras legen.
print-setup-plug = Noch kein Gerät einstecken. Kabel und Kästen vom Generator nach außen verbinden, nur wie Seite 1 zeigt.
print-setup-plug-skip = Nicht anschließen, was { print-do-not-use } ist.
print-setup-plug-guarded = Wo { print-guarded } steht, dort zuerst ein GFCI-Kabel einstecken.
print-setup-plug-ahead = { print-guarded-ahead }: ein GFCI-Kabel näher am Generator einstecken.
print-setup-start = Motor starten. Zwei Minuten laufen lassen.
print-setup-test = Jedes Mal alles tun, was unter „Prüfen“ steht.
print-setup-load = Jetzt Geräte einstecken, ausgeschaltet, nur wie auf Seite 1. Eines nach dem anderen einschalten.
print-test-title = Prüfen
print-test-button = An jedem GFCI eine Lampe einstecken. TEST drücken: Es muss klicken, und die Lampe muss ausgehen. Wenn nicht: nicht benutzen.
print-test-reset = RESET drücken. Die Lampe muss wieder leuchten.
print-test-none = Bei keiner Ihrer Steckdosen wissen wir von einem GFCI, der wirkt. Auf nassem Boden nur ein zugelassenes GFCI-Kabel benutzen (mit dem Zeichen eines Prüflabors).
print-stop-title = Abstellen und tanken
print-stop-life = Zuerst { $life } auf Batterie umstellen. Ohne funktionierende Batterie: die Person wecken.
print-stopped-life = Jemand soll { $life } auf Batterie umstellen.
print-stop-1 = Alles ausschalten, das Größte zuerst. Dann den Motor abstellen.
print-stop-2 = { $cooling } Minuten abkühlen lassen. Dann tanken, fern von Flammen und Menschen.
print-stop-3 = Verschüttet: weggehen, Dampf abziehen lassen, erst dann starten. Kraftstoff draußen lagern, fern von Zelten.
print-stop-2-propane = { $cooling } Minuten abkühlen lassen. Ventil schließen. Dann die Flasche wechseln, fern von Flammen und Menschen.
print-stop-3-propane = Gasgeruch: Ventil schließen, weggehen, abziehen lassen. Flaschen aufrecht draußen lagern, fern von Zelten.
print-plot-title = Weiter weg
print-plot-how = Wenn Kabel „{ $cord }“ länger als { $length } wäre und der Generator um ebenso viel weiter weg stünde. Der Punkt ist dieser Plan.
print-plot-how-volts = Wenn Kabel „{ $cord }“ länger als { $length } wäre. Der Punkt ist dieser Plan.
print-plot-volts = Volt, die für { $load } bleiben
print-plot-noise = Lärm, wo geschlafen wird, bei der größten Last
print-plot-lost = { $percent } verloren
print-plot-along = Länge von Kabel „{ $cord }“
print-plot-alt = Kurven. Der Punkt ist dieser Plan: Bei Kabel „{ $cord }“ mit { $length } bleiben für { $load } { $volts }.
print-plot-alt-noise = Wo geschlafen wird, ist es { $noise } laut.
print-defer = Örtliche Vorschriften und eine Elektrofachkraft entscheiden. Nie etwas öffnen, neu verdrahten oder Neutral- und Schutzleiter verbinden.

## Safety. What to do when something goes wrong: the same on the card and the cautions. $call is the emergency number.

print-emergency-title = Wenn etwas schiefgeht
print-emergency-fire = Feuer
print-emergency-fire-away = Alle weg. Schlafende wecken. { $call } anrufen.
print-emergency-fire-engine = Motor nur abstellen, wenn der Weg dorthin frei ist.
print-emergency-fire-water = Kein Wasser auf brennenden Kraftstoff oder auf etwas, das unter Strom stehen kann.
print-emergency-fire-extinguisher = ABC-Löscher nur bei kleinem Feuer, nur mit dem Fluchtweg im Rücken. Wird es größer: weg.
print-emergency-fire-clothes = Kleidung brennt: stehen bleiben, hinwerfen, wälzen.
print-emergency-burns = Verbrennungen: { $burn } Minuten unter kühles, fließendes Wasser halten.
print-emergency-alarm = CO-Alarm oder Schwindel, Übelkeit, Schwäche, Kopfweh
print-emergency-alarm-out = Auch wenn nur einem schlecht ist: alle sofort ins Freie. Alle wecken. Durchzählen.
print-emergency-alarm-call = { $call } anrufen. Sagen: Kohlenmonoxid.
print-emergency-alarm-sleeper = Wacht jemand nicht auf: von draußen Türen, Fenster und Zelte weit öffnen. Nicht hineingehen: Auch Sie können ohnmächtig werden. Auf die Feuerwehr warten.
print-emergency-alarm-cpr = Nur im Freien: Atmet jemand nicht oder schnappt nur nach Luft, wiederbeleben. Fest und schnell mitten auf die Brust drücken. Defibrillator (AED) holen lassen.
print-emergency-cpr = Keine Atmung oder nur Schnappen nach Luft: wiederbeleben. Fest und schnell mitten auf die Brust drücken. Defibrillator (AED) holen lassen.
print-emergency-alarm-engine = Motor nur abstellen, wenn es geht, ohne seine Abgase zu atmen.
print-emergency-alarm-back = Niemand geht wieder hinein, bevor die Feuerwehr es sagt, auch wer sich besser fühlt.
print-emergency-shock = Jemand bekommt einen Stromschlag
print-emergency-shock-off = Person noch nicht anfassen. Motor abstellen. Dann das Kabel am Generator ausstecken.
print-emergency-shock-touch = { $call } anrufen. Erst anfassen, wenn Motor aus und Kabel ausgesteckt.
print-emergency-shock-doctor = Nach jedem Stromschlag zum Arzt, auch nach einem kleinen.
print-emergency-breaker = Ein Schutzschalter löst aus
print-emergency-breaker-stop = Motor abstellen. Kein Kabel abtasten, solange er läuft.
print-emergency-breaker-feel = Kabel und Stecker abtasten. Heiß, weich oder Brandgeruch: nicht mehr benutzen.
print-emergency-breaker-once = Alles daran ausschalten. Motor wieder starten. Schutzschalter einschalten, nur ein Mal. Dann weniger anschalten.
print-emergency-breaker-off = Löst er wieder aus: ausgeschaltet lassen und nichts daran benutzen.

## Vorsichtsliste

## Safety. The sheet of what to go and look at.

print-look-title = Hier nachsehen: { $site }
print-look-how = Gehen Sie mit diesem Blatt und einer Lampe zu den Sachen, der Motor ist aus. Sehen Sie nur von außen nach, öffnen Sie nichts. Haken Sie ab oder schreiben Sie auf, was Sie sehen. Was nicht zu sehen ist, bleibt leer. Raten Sie nicht. Was eine Zeile klärt, setzt die darüber voraus.
print-look-light = Ist die Schrift blass, leuchten Sie von der Seite, drehen Sie das Teil und vergrößern Sie ein Foto.
print-look-count = Wo mehrere Steckdosen gleich sind, zählen die Nummern in ihren Namen von links, Reihe für Reihe von oben.
# What is asked of one outlet: $about names it.
print-look-of = { $about }: { $question }
print-look-none = Es gibt nichts nachzusehen: Im Plan steht alles, worauf es ankommt.
print-look-buy = Noch zu kaufen: auf der Packung nachsehen
print-look-first = Sehen Sie zuerst hier nach. Raten Sie nicht.
print-look-after = Ändern Sie dann Ihre Antworten: „tallywatt ask“ mit diesem Plan, dort „Nachsehen, was wir nicht wissen“, und drucken Sie neu.
# $lines: the numbers of lines on that sheet.
print-look-see = Siehe das Blatt zum Nachsehen, { $count ->
        [one] Zeile { $lines }.
       *[other] Zeilen { $lines }.
    }
print-next-title = Was jetzt zu tun ist

print-cautions-title = Vorsichtsliste: { $site }
print-cautions-summary = { $danger ->
    [0] Keine Gefahren gefunden
    [one] 1 Gefahr
   *[other] { $danger } Gefahren
  }, { $warning ->
    [0] keine Warnungen
    [one] 1 Warnung
   *[other] { $warning } Warnungen
  }, { $rest ->
    [0] sonst nichts
    [one] { $rest } weiterer Punkt
   *[other] { $rest } weitere Punkte
  }.
print-cautions-rules = { $count ->
    [one] Regel: { $codes }
   *[other] Regeln: { $codes }
  }
print-cautions-stop = Starten Sie den Generator erst, wenn jeder Punkt behoben ist.
print-cautions-always = Haken Sie jeden Punkt bei jedem Aufbau ab.
print-cautions-generator = Am Generator
print-cautions-people = Wo geschlafen wird
print-cautions-gear = Kabel, Kästen und Steckdosen
print-cautions-fuel = Kraftstoff
print-cautions-leaving = Beim Weggehen
print-look = Zuerst nachsehen
print-look-then = In manchen Kästen steht „{ print-look }“. Wenn Sie es wissen, ändern Sie Ihre Antwort im Plan und prüfen Sie noch einmal.
print-symbol-general = Warnzeichen
print-symbol-electric = Warnzeichen: Elektrizität
print-symbol-hot = Warnzeichen: Hitze
print-symbol-toxic = Warnzeichen: Gift
print-symbol-fire = Warnzeichen: Feuer
print-ws-no-danger = Keine Regel hat eine Gefahr gefunden. Das ist kein Versprechen.
print-none-found = In diesem Plan wurde nichts gefunden. Das ist kein Versprechen: Die Punkte oben gelten trotzdem.
print-always-1 = Generator nur im Freien, Auspuff weggerichtet, mindestens { $ample } von Zelt, Fahrzeug, Tür, Fenster und Mensch. Abgase enthalten Kohlenmonoxid. Man riecht es nicht, und es tötet.
print-always-2 = Kohlenmonoxid-Melder, wo geschlafen wird. Prüftaste drücken: Er muss piepen.
print-always-3 = Jedes Kabel abgerollt und nicht auf nassem Boden. Keines mit Schnitt oder Brandspur, kein Stecker lose, kein runder Stift abgebrochen.
print-always-4 = Jeder GFCI geprüft (Tasten TEST und RESET) mit einer Lampe: Sie ging aus.
print-always-5 = Nie einen Generator an die Leitungen eines Gebäudes anschließen.
print-always-6 = Vor dem Tanken Motor aus und { $cooling } Minuten abkühlen. Keine Flammen.
print-always-7 = Vor dem Weggehen: Motor aus, { $cooling } Minuten abkühlen, alle Stecker ziehen. Nie weggehen, solange er läuft.

## Berechnung

print-ws-title = Berechnung: { $site }
print-ws-intro = Jede Zahl auf den Etiketten und der Karte, und wie man sie von Hand nachrechnet. Grenzen sind abgerundet, Bedarf ist aufgerundet. Hier wurde nichts gemessen. Eine Nummer hinter einem Wert ist seine Quelle, am Ende genannt. Ein Wert ohne Zeichen ist aus den anderen berechnet.
print-ws-source = Aus
print-ws-not-known = nicht bekannt
print-ws-power = Leistung des Generators
print-ws-symbols-power = P₀ aufgedruckte Leistung, P₀′ Leistung hier; h Höhe, t Lufttemperatur; k Verlust je Schritt Δ über h₀ oder t₀
print-ws-symbols-limits = I Ampere: h für Stunden, s für kurze Zeit, c was das Teil verträgt; s Anteil für Stunden; ′ dessen, was es speist; P Watt, U Volt
print-ws-symbols-cords = R Ohm hin und zurück, r Ohm eines Leiters je Länge, l Länge; I Ampere: p der Stecker, w der Leiter, m die übliche Angabe; a Anteil in dieser Luft; das Drittel nur aufgerollt
print-ws-symbols-loads = I Ampere, P Watt, U Volt, λ Leistungsfaktor; st beim Start, k mal so viele Ampere
print-ws-symbols-longest = l Länge, d Anteil der verlorenen Volt, U Volt, I Ampere, r Ohm eines Leiters je Länge
print-ws-symbols-drops = ΔU verlorene Volt, d ihr Anteil, I Ampere, R Ohm, U Volt
print-ws-symbols-energy = E Wattstunden, P Watt, t Laufzeit; n Tankfüllungen, t₀ wie lange eine bei diesem Bedarf reicht; V Kraftstoff, V₀ was ein Tank fasst
print-ws-symbols-noise = L Pegel im Abstand d, L₀ der veröffentlichte Pegel im Abstand d₀; max in der Minute mit der größten Last; x die Last dann, b die Last, bei der gemessen wurde, beide in Prozent, mindestens 25
print-ws-power-formula = Übrige Leistung = Aufdruck × (1 − Verlust durch Höhe − Verlust durch Wärme). Höhe: { $altitude-percent } % für je { $altitude-per } über { $altitude-above }. Wärme: { $air-percent } % für je { $air-per } über { $air-above }.
print-ws-power-thumb = Nach der Faustregel: { $altitude-percent } % für je { $altitude-per } über { $altitude-above }, und { $air-percent } % für je { $air-per } über { $air-above }.
print-ws-power-less = Der kleinere der beiden Werte gilt. Mit Propan zuerst ein Zehntel weniger, außer das Schild gilt für Propan. Parallel geschaltete Geräte ergeben zusammen, was ihr Verbindungssatz durchlässt.
print-ws-power-loss-formula = Höhenverlust + Hitzeverlust, nach der Formel
print-ws-power-loss-thumb = Höhenverlust + Hitzeverlust, nach der Faustregel
print-ws-power-marked = Aufgedruckte Dauerleistung
print-ws-power-peak-marked = Aufgedruckte Spitzenleistung
print-ws-power-altitude = Höhe
print-ws-power-air = Luft
print-ws-power-rated = Dauerleistung hier
print-ws-power-peak = Spitzenleistung hier
print-ws-power-propane = Mit Propan: neun Zehntel der aufgedruckten Leistung
print-ws-power-reachable = Durch die benutzten Steckdosen erreichbar
print-ws-power-stranded = Nicht erreichbar
print-ws-limits = Grenze jeder Steckdose
print-ws-limits-long = Für Stunden = das Kleinste von jedem Wert der Zeile × seinem Anteil und „für Stunden“ dessen, was sie speist. Ohne Anteil zählt er ganz.
print-ws-limits-short = Kurz = das Kleinste von jedem Wert der Zeile und „kurz“ dessen, was sie speist.
print-ws-limits-watts = Watt (auf Seite 1) = Ampere × Volt.
print-ws-limits-80 = Die Vorschrift begrenzt alles, was eine Steckdose speist (210.21(B)(2)), und jedes angesteckte Gerät (210.23(B)(1) und (C)), auf 12, 16 oder 24 A an Stromkreisen von 15, 20 oder 30 A mit mehreren Steckdosen. Hier ist das die Grenze für Stunden. Für kurze Zeit zählt die ganze Angabe.
print-ws-limits-first = Die erste Zeile ist der Generator: seine Dauerleistung hier ÷ Volt, bei zwei Außenleitern je die Hälfte. Was ein Kabel verträgt, ist im nächsten Abschnitt gerechnet.
print-ws-reason-rated-power = Dauerleistung
print-ws-reason-rated-power-unguarded = Dauerleistung
print-ws-reason-one-leg = eine Hälfte
print-ws-reason-parallel-kit = Verbindungssatz
print-ws-reason-breaker = Schutzschalter
print-ws-reason-trips-early = Schutzschalter, wie er auslöste
print-ws-reason-receptacle = Steckdose
print-ws-reason-plug = Stecker
print-ws-reason-cord-ampacity = Leiter
print-ws-reason-cord-mark = übliche Angabe
print-ws-reason-coiled-cord = Leiter, aufgerollt
print-ws-reason-hot-cord = Leiter, in heißer Luft
print-ws-reason-wiring = Leitung
print-ws-reason-not-fed = falsche Spannung
print-ws-cords = Kabel
print-ws-cords-ohms = Ohm = Ohm je Länge × Länge × 2, hin und zurück, bei { $hot }.
print-ws-cords-amps = Ampere: das Kleinste aus dem, wofür der Stecker gemacht ist, der Strombelastbarkeit der Leiter (in Luft über { $air } ihr Anteil, aufgerollt ein Drittel davon) und der üblichen Angabe auf Kabeln mit Haushaltsstecker von dieser Dicke und Länge. Die Ampere auf dem Schild des Kabels lesen; das Kleinere gilt.
print-ws-cords-two = Zwei Leiter führen Strom. Der Schutzleiter zählt nicht, und auch nicht ein Neutralleiter zwischen zwei Außenleitern, der nur deren Differenz führt (NEC 400.5(A), 2023).
print-ws-protection = Teile, die kleiner sind als ihr Schutzschalter
print-ws-protection-how = Seite 1 nennt den Schutzschalter jedes Teils. Er darf nicht größer sein als das, wofür das Teil gemacht ist. Bei diesen ist er größer, oder es gibt keinen: genannt ist die Regel, die es erlaubt.
print-ws-part-receptacle = Steckdose
print-ws-part-cord = Kabel
print-ws-by-generator = der Generator selbst: Mehr kann er nicht geben
print-ws-by-cord-set = NEC 240.5(B)(3): zugelassene Verlängerung, so weit die Zulassung reicht; sonst (B)(4): 16 AWG oder dicker, bis 20 A
print-ws-by-receptacles = NEC 210.21(B)(3): zwei oder mehr 15-A-Steckdosen an 20 A
print-ws-by-appliance-cord = NEC 240.5(B)(1): eigenes Kabel eines zugelassenen Geräts
print-ws-by-listing = die Zulassung des Kastens
print-ws-by-camper-main = nur der Hauptschutzschalter im Wohnwagen
print-ws-by-single = NEC 210.21(B)(1) verlangt einen kleineren Schutzschalter: nicht mehr, als für die Steckdose zulässig ist
print-ws-by-nothing = NICHTS: nicht benutzen
print-ws-loads = Geräte
print-ws-loads-amps = Ampere = Watt ÷ (Volt × Leistungsfaktor), aufgerundet. Die Watt eines Geräts, das heizt, gelten bei 125 V: Trägt sein Haushaltsstecker sie dort, zählen nicht mehr als Ampere × Volt des Steckers. Ein angenommener Leistungsfaktor lässt nicht mehr Ampere zählen, als der Stecker verträgt.
print-ws-loads-start = Start: Watt wie angegeben, oder Startampere vom Schild × Volt, oder Ampere × Zahl für seine Art, oder die kVA des Kennbuchstabens eines Motors ÷ 115 V oder 230 V; dann zählen seine Voltampere als Watt.
print-ws-loads-leg = Ein Gerät mit zwei Außenleitern und Neutralleiter zählt ganz auf einer Hälfte, bei 120 V, gleich welcher. Trägt sein Stecker das nicht: auf jeder Hälfte, was der Stecker trägt, oder die halbe Last, wenn sie mehr ist.
print-ws-drops = Spannungsfall
print-ws-drops-formula = Verlorene Volt = Ampere × Ohm, zusammengezählt über jedes Kabel auf dem Weg. Sinkt die Spannung, ziehen Heizgeräte weniger Ampere und alles andere mehr: Diese stehen hier.
print-ws-drops-start = Während etwas startet: die Ampere der Geräte bei voller Spannung, und von dem, das startet, seine Startampere.
print-ws-drops-legs = Bei zwei Außenleitern zählen die Ampere des einen hin und zurück, als wäre der andere unbelastet. Sind beide belastet, geht weniger verloren.
print-ws-sharing = Was zusammen laufen darf
print-ws-sharing-formula = Eine Gruppe darf zusammen laufen, wenn an jedem Teil auf jedem Weg die Summe ihrer Ampere nicht über der Grenze des Teils liegt und die Summe ihrer Watt nicht über der des Generators.
print-ws-sharing-times = Nach Tageszeit sind die Gruppen { $groups }.
print-ws-sharing-more = { $count } weitere Gruppen, die zusammen laufen können, sind weggelassen. An keiner Stelle braucht eine davon mehr als die in der Liste.
print-ws-sharing-incomplete = Die Liste ist nicht vollständig. Nur was darin steht, darf zusammen laufen.
print-ws-sums = Die Summen, die entscheiden
print-ws-symbols-sums = S Voltampere: k von dem, was weniger als drei Stunden läuft, h von dem, was länger läuft, st von dem, das startet; s Anteil des Teils für Stunden; c was das Teil trägt, pk die Spitze des Generators
print-ws-sums-how = An jedem Teil: die Voltampere (Ampere × Volt) von allem, was durch das Teil geht, zusammengezählt; die von dem, was drei Stunden oder länger läuft, ÷ den Anteil des Teils für Stunden. Die Grenze ist, was das Teil trägt, × Volt.
print-ws-sums-start = Beim Einschalten: die Voltampere von allem, was läuft, und von dem Gerät, das am meisten dazugibt, die beim Start weniger die im Betrieb. Voltampere zählen darin als Watt.
print-ws-sums-which = Von einer Gruppe, die zusammen laufen darf: der Generator und das vollste Teil dahinter. Von einer, die es nicht darf: das Teil, das am weitesten über seiner Grenze liegt. Für jedes solche Teil stehen hier zwei Gruppen: die vollste, die laufen darf, und die, die am wenigsten zu viel ist.
print-ws-sum-peak = beim Start
print-ws-sum-leg = { $part }, Hälfte { $leg }
print-ws-starts = Einschalten: Spitzen, und was ein Messgerät zeigt
print-ws-symbols-starts = S Voltampere: on was schon läuft, st von dem, das startet, pk die Spitze
print-ws-starts-how = Spitze = Voltampere von allem, was schon läuft + Voltampere beim Start von dem, das startet. Voltampere zählen darin als Watt, die wirklichen Watt sind also nicht mehr.
print-ws-starts-then = „Dann“ ist, was läuft, sobald es gestartet ist: schon an + seine laufenden Voltampere. Damit beginnt die nächste Zeile. Geräte einer Art sind eine Zeile, für das letzte von ihnen.
print-ws-starts-more = Hier stehen nur die ersten { $count } Schritte.
print-ws-column-set = Gruppe
print-ws-column-adds-up = S, Gerät für Gerät
print-ws-column-on-and-starts = Schon an + Start
print-ws-column-sum = Summe
print-ws-column-limit = Grenze
print-ws-column-then = Dann
print-ws-together-row = Zusammen, Gruppe { $number }
print-ws-never-row = Nie zusammen { $number }
print-ws-set = Gruppe { $number }
print-ws-unplaced-row = Keine Dose für { $load }
print-ws-no-receptacle-fits = keine freie Steckdose nimmt seinen Stecker
print-ws-no-room = jede Steckdose, die seinen Stecker nimmt, ist voll, hat keinen GFCI oder darf nicht benutzt werden
print-ws-too-large = keine Steckdose, die es benutzen darf, gibt genug
print-ws-impossible = soll mehr ziehen, als der eigene Stecker verträgt
print-ws-hot = Gerät oder Steckdose wurde heiß oder gab einen Schlag
print-ws-no-power = woran es hängt, ist nirgends eingesteckt
print-ws-refused = keine freie Steckdose, die Sie benutzen dürfen, passt
print-ws-energy = Energie und Kraftstoff
print-ws-energy-formula = Wattstunden = Watt × Stunden, über den Tag zusammengezählt. Tankfüllungen = Stunden ÷ Stunden je Füllung bei diesem Bedarf, zusammengezählt. Kraftstoff = Füllungen × was ein Tank fasst, für jeden Generator.
print-ws-energy-between = Eine Tankfüllung: zwischen zwei veröffentlichten Laufzeiten liegen die Füllungen je Stunde (1 ÷ Laufzeit) über der Last auf einer Geraden, und ein Zehntel kommt dazu, höchstens bis zu denen der nächsten veröffentlichten Last. Über der größten Last fällt die Laufzeit im Verhältnis; unter der kleinsten wächst sie nicht mehr.
print-ws-energy-published = Veröffentlichte Laufzeit einer Tankfüllung bei { $load } Last
print-ws-energy-day = Energie an einem Tag
print-ws-energy-tank = Eine Tankfüllung reicht, beim größten Bedarf
print-ws-energy-fuel = Kraftstoff an einem Tag
print-ws-energy-peak = Größter Bedarf, ab { $hour }
print-ws-energy-burns = Bei { $watts }: Teil einer Tankfüllung
print-ws-energy-tanks = Teil einer Tankfüllung am Tag
print-ws-energy-stretch = Am meisten ohne Pause zum Tanken, { $span }
print-ws-energy-size = Eine Tankfüllung fasst
print-ws-noise = Lärm
print-ws-noise-formula = Pegel = veröffentlichter Pegel − 20 × log₁₀(Abstand ÷ veröffentlichter Abstand). Bäume, Hänge und Wände ändern ihn.
print-ws-noise-published = Veröffentlichter Pegel
print-ws-noise-load = Last, bei der gemessen wurde
print-ws-noise-sets = Zuschlag für { $sets } solche Generatoren nebeneinander
print-ws-noise-busiest-load = Last in der Minute mit der größten Last
print-ws-noise-busiest = Zuschlag für diese Last
print-ws-noise-sleepers = Wo geschlafen wird
print-ws-noise-50ft = Wo Nationalparks messen
print-ws-noise-sleepers-busiest = Wo geschlafen wird, bei der größten Last
print-ws-noise-50ft-busiest = Wo Nationalparks messen, bei der größten Last
print-ws-noise-sets-formula = Generatoren nebeneinander: 10 × log₁₀(ihre Zahl) mehr.
print-ws-noise-busiest-formula = In der Minute mit der größten Last: Pegel + Zuschlag für mehr Last. Kein Typenschild sagt, wie viel: Wir haben 10 dB(A) von einem Viertel der vollen Last, oder weniger, bis zur vollen Last angenommen. Dazwischen: 10 dB(A) × (Last dann − Last bei der Messung) ÷ 75 %.
print-ws-assumed = Was wir angenommen haben
print-ws-assumed-how = Wo wir etwas nicht wussten, haben wir den gefährlicheren Fall angenommen.
print-ws-column-what = Was
print-ws-column-figure = Wert
print-ws-column-part = Teil
print-ws-column-fed-by = Von
print-ws-column-factor = λ
print-ws-column-breaker = Schutz
print-ws-column-breaker-at = Schutz von
print-ws-column-protected-by = Schutz durch
print-ws-column-plug-amps = Stecker
print-ws-column-hours = Std., A
print-ws-column-short = Kurz, A
print-ws-column-hours-watts = Std., W
print-ws-column-short-watts = Kurz, W
print-ws-column-cord = Kabel
print-ws-column-wire = Leiter
print-ws-column-wire-amps = Leiter
print-ws-column-length = Länge
print-ws-column-ohms = R
print-ws-column-ohms-kilofoot = r, 1000 ft
print-ws-column-ohms-kilometre = r, 1 km
print-ws-column-rating = Verträgt
print-ws-column-load = Gerät
print-ws-column-at = An
print-ws-column-watts = Watt
print-ws-column-watts-hours = Watt × Stunden
print-ws-column-volts = Volt
print-ws-column-amps = Ampere
print-ws-column-amps-ohms = I × R, Kabel für Kabel
print-ws-column-start-watts = Start, W
print-ws-column-start-amps = Start, A
print-ws-column-start-times = k
print-ws-column-lost = Verlust
print-ws-column-lost-percent = Anteil
print-ws-column-left = Rest
print-ws-column-level = Pegel
print-ws-column-which = Was
print-ws-column-coiled = Aufgerollt
print-ws-column-mark = Schild
print-ws-column-value = Wert
print-ws-column-assumption = Annahme
print-ws-column-air-share = Luft
print-ws-column-distance = Abstand

print-ws-noise-free-field = Im Freien, von einer kleinen Quelle: 6 dB weniger bei jeder Verdopplung des Abstands.
print-ws-marks = Hinter einem Wert:
print-ws-mark-plan = P
print-ws-mark-plan-is = aus Ihrem Plan
print-ws-mark-assumed = N
print-ws-mark-assumed-is = nicht bekannt, von uns angenommen

## Berechnung, Seite 1

print-ws-diagram = Übersichtsplan, einpolig
print-ws-diagram-fed = { $part }, gespeist von { $from }
print-ws-case-marked = { $name }, laut Schild
print-ws-case-here = Hier
print-ws-case-powers = dauernd { $running }, Spitze { $peak }
print-ws-case-powers-here = { $running } ({ $kilowatts } kW) dauernd, Spitze { $peak }, bei { $elevation } und { $air }
print-ws-case-system = Spannung
print-ws-case-legs = { $volts } auf jedem von zwei Außenleitern
print-ws-case-joined = Mit Schutzleiter verbunden in
print-ws-breaker-at = { $amps } ({ $at })
print-ws-gfci-works = an { $by }
print-ws-gfci-no = NEIN
print-ws-gfci-unknown = UNBEKANNT
print-ws-symbol-generator = Generator
print-ws-symbol-box = Kasten
print-ws-column-type = Bauform
print-ws-column-gfci = GFCI
print-ws-column-parts = Teile
print-ws-dangers = Gefahren
print-ws-assumed-more = { $count } weitere gegen Ende.
print-ws-rules = Regeln, die etwas gefunden haben, mit ihren Quellen
print-ws-sources = Quellen
print-ws-sign-name = Geprüft von
print-ws-sign-license = Zulassung
print-ws-sign-date = Datum
print-ws-sign-signature = Unterschrift
