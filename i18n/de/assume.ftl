### Was für eine fehlende Antwort angenommen wurde. { $part } ist das Teil oder Gerät; { $field } ist die
### Zeile der Plandatei.

assumed-yes = ja
assumed-no = nein
assumed-none = keiner
assumed-leg-both = beide Hälften
assumed-worst-kind = das Schlimmste jeder Art
assumed-one-leg = eine Hälfte

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } Ebenso für { $parts }.

assume-altitude = Wir wissen nicht, wie hoch der Platz liegt, also haben wir { $value } angenommen. In dünner Luft verliert ein Generator Leistung.
    .look = Sehen Sie auf einer Karte oder dem Handy nach.
assume-air = Wir wissen nicht, wie heiß es wird, also haben wir { $value } angenommen. In heißer Luft verliert ein Generator Leistung.
    .look = Sehen Sie in der Vorhersage nach, wie heiß es höchstens wird.
assume-rated = Wir wissen nicht, was der Generator auf Dauer geben kann, also haben wir { $value } angenommen, wie bei den kleinsten.
    .look = Suchen Sie auf dem Typenschild „running“ oder „rated“ (Dauerleistung) in Watt: Davon hängt hier fast alles ab.
assume-rated-of-peak = Wir wissen nicht, was der Generator auf Dauer geben kann, also haben wir { $value } angenommen, drei Viertel seiner Spitze.
    .look = Suchen Sie auf dem Typenschild „running“ oder „rated“ (Dauerleistung) in Watt: Davon hängt hier fast alles ab.
assume-voltage = Wir wissen nicht, welche Spannung der Generator gibt, also haben wir { $value } angenommen: Dann erreicht jede 120-V-Steckdose nur die halbe Leistung.
    .look = Suchen Sie auf dem Typenschild „120 V“ oder „120/240 V“.
assume-inverter = Wir wissen nicht, ob es ein Inverter-Generator ist, also haben wir jedes Mal das Schlimmere angenommen: Er schaltet vielleicht nicht von selbst ab, wenn zu viel an ist, und ein Kurzschluss löst vielleicht keinen Schutzschalter aus.
    .look = Suchen Sie das Wort „inverter“ darauf.
assume-peak = Wir kennen die Spitzenleistung des Generators nicht. Für das Starten haben wir nur seine Dauerleistung angenommen, { $value }; für das, was überhitzen kann, mehr.
    .look = Suchen Sie „peak“, „starting“ oder „max“ (Spitze) auf dem Generator.
assume-no-gfci = Wir wissen nicht, ob „{ $part }“ einen GFCI hat, also haben wir keinen angenommen.
    .look = Suchen Sie Tasten mit TEST und RESET.
assume-no-breaker = Wir wissen nicht, ob „{ $part }“ einen eigenen Schutzschalter hat, also haben wir keinen angenommen.
    .look = Suchen Sie daneben einen Knopf oder Schalter, auf dem Ampere stehen.
assume-breaker-unknown = Wir kennen den Schutzschalter von „{ $part }“ nicht, also haben wir angenommen, dass er nicht rechtzeitig auslöst und die Steckdose nur die Ampere ihrer Form gibt.
    .look = Suchen Sie einen Knopf oder Schalter, auf dem Ampere stehen.
assume-camper-main = Wir kennen den Hauptschutzschalter von „{ $part }“ nicht, also haben wir { $value } angenommen, wofür sein Stecker gemacht ist.
    .look = Sehen Sie innen nach, wo man seine Schutzschalter schaltet: Auf einem steht „Main“. Lesen Sie seine Ampere ab. Schrauben Sie nichts auf.
assume-leg = Wir wissen nicht, welche Hälfte „{ $part }“ speist, also haben wir, was dort eingesteckt ist, für { $value } gezählt. Weniger Leistung kann es dort nicht geben.
    .look = Suchen Sie in der Anleitung, welche Steckdosen sich eine Hälfte teilen.
assume-box-wire = Wir wissen nicht, wie dick die Leitung zu „{ $part }“ im Kasten ist, also haben wir { $value } angenommen, die dünnste.
    .look = Lesen Sie seine Papiere, oder fragen Sie, wer ihn gebaut hat, oder eine Elektrofachkraft. Öffnen Sie ihn nicht.
assume-cord-wire = Wir kennen den Leiterquerschnitt von „{ $part }“ nicht, also haben wir { $value } angenommen, der dünnste.
    .look = Lesen Sie den Aufdruck auf dem Kabel: „12/3“ heißt Größe 12 AWG und drei Adern.
assume-cord-conductors = Wir wissen nicht, wie viele Adern „{ $part }“ hat, also haben wir { $value } angenommen: kein Schutzleiter.
    .look = Lesen Sie den Aufdruck auf dem Kabel: „12/3“ heißt Größe 12 AWG und drei Adern.
assume-cord-length = Wir wissen nicht, wie lang „{ $part }“ ist. Für die Spannung haben wir { $value } angenommen, für die Reichweite, dass es zu kurz ist.
    .look = Schreiten Sie es ab: Zählen Sie jeden Schritt als { $step }.
assume-cord-coiled = Wir wissen nicht, ob „{ $part }“ im Betrieb ganz abgerollt ist, also haben wir angenommen, dass es aufgerollt ist. Aufgerollt verträgt es nur ein Drittel.
    .look = Rollen Sie es ganz ab, und ändern Sie dann Ihre Antwort.
assume-load-kind = Wir wissen nicht, was „{ $part }“ vor allem tut, also haben wir { $value } angenommen: Es kann so viel verbrauchen wie ein Heizgerät und so schwer starten wie ein Motor, und die Gesundheit eines Menschen kann davon abhängen.
    .look = Fragen Sie, wem es gehört.
assume-load-plug = Wir kennen den Stecker von „{ $part }“ nicht, also haben wir { $value } angenommen, der übliche.
    .look = Sehen Sie sich den Stecker an.
assume-load-one-leg = Wir wissen nicht, wie sich „{ $part }“ auf die beiden Hälften verteilt, also haben wir alles auf { $value } gelegt.
    .look = Nennt sein Schild Ampere für jede Hälfte, schreiben Sie sie als current in den Plan. Bis dahin lassen Sie darin weniger zugleich laufen.
assume-load-voltage = Wir wissen nicht, ob „{ $part }“ nur 240 V nutzt oder auch 120 V, also haben wir alles auf { $value } gelegt.
    .look = Suchen Sie auf seinem Schild „120 V“, „240 V“ oder „120/240 V“. Bis dahin lassen Sie darin weniger zugleich laufen.
assume-load-amps-voltage = Wir wissen nicht, ob „{ $part }“ 120 V oder 240 V nutzt, also haben wir seine Ampere auf { $value } gezählt.
    .look = Suchen Sie auf seinem Schild „120 V“, „240 V“ oder „120/240 V“.
assume-power-factor = Wir kennen den Leistungsfaktor von „{ $part }“ nicht, also haben wir { $value } für diese Art angenommen. Es zieht mehr Strom, als seine Watt zeigen.
    .look = Suchen Sie auf dem Schild die Ampere (A).
assume-running = Wir wissen nicht, was „{ $part }“ verbraucht, also haben wir { $value } angenommen, das Meiste für Art und Stecker.
    .look = Suchen Sie auf seinem Schild W oder A.
assume-starting = Wir wissen nicht, was „{ $part }“ zum Starten braucht, also haben wir { $value } für diese Art angenommen. Alles mit Motor braucht zum Starten viel mehr als im Betrieb.
    .look = Suchen Sie auf dem Schild oder in der Anleitung Watt oder Ampere beim Anlaufen.
assume-starting-code-v = Der Kennbuchstabe V von „{ $part }“ hat keine obere Grenze, also haben wir { $value } zum Starten angenommen, das Mindeste. Es kann mehr sein: Sehen und hören Sie beim Starten hin.
assume-continuous = Wir wissen nicht, wie lange „{ $part }“ läuft, also haben wir drei Stunden oder mehr am Stück angenommen. So lange kann seine Steckdose weniger geben.
    .look = Überlegen Sie, wie lange es ohne Pause läuft.
assume-all-day = Wir wissen nicht, wann „{ $part }“ läuft, also haben wir { $value } am Tag angenommen.
    .look = Legen Sie fest, wann es läuft.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what }: { $ask }
look-generator = Generator
# Was nach dem Nachsehen wegfällt: $found besteht aus den Nebensätzen look-if-…, $gone ist eines von look-gone-….
look-then = Wenn { $found }, { $gone }.
look-then-cord = Wenn { $found }, verträgt „{ $part }“ { $amps } und { $gone }.
look-then-cord-only = Wenn { $found }, verträgt „{ $part }“ { $amps }.
look-gone-dangers = { $count ->
        [one] fällt diese Gefahr weg: { $titles }
       *[other] fallen diese Gefahren weg: { $titles }
    }
look-gone-warnings = { $count ->
        [one] fällt diese Warnung weg: { $titles }
       *[other] fallen diese Warnungen weg: { $titles }
    }
look-gone-cautions = fällt das weg: { $titles }
look-only = { $count ->
        [one] gilt nur noch { $signal }: { $titles }
       *[other] gelten nur noch { $signal }: { $titles }
    }
look-if-gfci = TEST und RESET da sind
look-if-listed = das Zeichen eines Prüflabors darauf ist
look-if-print = { $prints } darauf steht
look-if-conductors = es { $value } Adern hat
look-if-outdoor = „W“ oder „outdoor“ darauf steht
look-if-breaker = { $value } oder weniger darauf steht
look-if-altitude = der Ort { $value } hoch oder tiefer liegt
look-if-sleepers_at = es { $value } oder mehr sind
look-if-length = es { $value } oder weniger lang ist
look-if-coiled = es ganz abgerollt ist
look-if-stands = der Generator im Freien oder unter einem hohen Dach steht
look-if-co_alarm = überall einer ist, der piept
look-if-well = alles in Ordnung ist
look-clears-dangers = { $dangers ->
        [one] Ist es in Ordnung, fällt eine Gefahr weg.
       *[other] Ist es in Ordnung, fallen { $dangers } Gefahren weg.
    }
look-clears-warnings = { $warnings ->
        [one] Ist es in Ordnung, fällt eine Warnung weg.
       *[other] Ist es in Ordnung, fallen { $warnings } Warnungen weg.
    }
assume-parallel-limit = Wir wissen nicht, was der Verbindungssatz zwischen den Generatoren durchlässt, also haben wir { $value } angenommen, wie von einem allein.
    .look = Lesen Sie die Ampere auf dem Verbindungssatz.
assume-rated-on = Mit Propan gibt ein Generator etwa ein Zehntel weniger als mit Benzin. Also haben wir { $value } angenommen.
    .look = Nennt das Typenschild Watt für Propan, schreiben Sie rated_on = "propane" in den Plan.

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Kaufen Sie eines, auf dessen Packung all das steht: { $list }.
buy-another = Nicht so kaufen, wie es im Plan steht: So ist es hier eine Gefahr.
buy-plug = Stecker { $value }
buy-inlet = Einspeisung { $value } (wo der Strom hineingeht)
buy-ends = Ende { $value }
buy-outlet = Steckdosen { $value }
buy-outdoor = „outdoor“ (im Freien) oder ein W in seinen Buchstaben
buy-wire = Leiter { $value }, oder eine kleinere AWG-Zahl (dickerer Leiter)
buy-conductors = { $value } Adern
buy-length = { $value } oder weniger
buy-reach = { $value } oder mehr, damit es reicht
buy-long = { $value } lang
buy-listed = das Zeichen eines Prüflabors
buy-gfci = Tasten TEST und RESET (GFCI)
buy-rated = { $value } oder mehr Dauerleistung
buy-peak = { $value } oder mehr Spitzenleistung
buy-voltage = { $value }
buy-inverter = „inverter“
buy-co_alarm = Kohlenmonoxid-Melder mit Batterie und dem Zeichen eines Prüflabors, einer je Zelt oder Wohnwagen
