### Was für eine fehlende Antwort angenommen wurde. { $part } ist das Teil oder Gerät; { $field } ist die
### Zeile der Plandatei.

assumed-yes = ja
assumed-no = nein
assumed-none = keiner
assumed-leg-a = Seite A
assumed-leg-b = Seite B
assumed-worst-kind = das Schlimmste jeder Art
assumed-one-leg = eine Seite

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } Ebenso für { $parts }.

assume-altitude = Niemand weiß, wie hoch der Platz liegt, also wurden { $value } angenommen. In dünner Luft verliert ein Generator Leistung.
    .look = Sehen Sie die Höhe auf einer Karte oder einem Telefon nach.
assume-air = Niemand weiß, wie heiß es wird, also wurden { $value } angenommen. In heißer Luft verliert ein Generator Leistung.
    .look = Sehen Sie nach, wie heiß es höchstens wird.
assume-rated = Niemand weiß, was der Generator auf Dauer geben kann, also wurden { $value } angenommen, wie bei den kleinsten.
    .look = Suchen Sie auf dem Typenschild „running“ oder „rated“ (Dauerleistung) in Watt: Davon hängt hier fast alles ab.
assume-rated-of-peak = Wir wissen nicht, was der Generator auf Dauer geben kann, also haben wir { $value } angenommen, drei Viertel seiner Spitze.
    .look = Suchen Sie auf dem Typenschild „running“ oder „rated“ (Dauerleistung) in Watt: Davon hängt hier fast alles ab.
assume-voltage = Niemand weiß, welche Spannung der Generator gibt, also wurde { $value } angenommen: Dann erreicht jede 120-V-Steckdose nur die halbe Leistung.
    .look = Suchen Sie auf dem Typenschild „120 V“ oder „120/240 V“.
assume-inverter = Niemand weiß, ob es ein Inverter-Generator ist, also wurde jedes Mal das Schlimmere angenommen: Er schaltet vielleicht nicht von selbst ab, wenn zu viel an ist, und ein Kurzschluss löst vielleicht keinen Schutzschalter aus.
    .look = Suchen Sie das Wort „inverter“ darauf.
assume-peak = Niemand kennt die Spitzenleistung des Generators. Für das Anlaufen wurde nicht mehr als seine Dauerleistung von { $value } angenommen; für das, was brennen kann, mehr.
    .look = Suchen Sie „peak“, „starting“ oder „max“ (Spitze) auf dem Generator.
assume-no-gfci = Niemand weiß, ob „{ $part }“ Schutz gegen Stromschlag hat, also wurde keiner gerechnet.
    .look = Suchen Sie Tasten mit TEST und RESET.
assume-no-breaker = Niemand weiß, ob „{ $part }“ einen eigenen Schutzschalter hat, also wurde keiner gerechnet.
    .look = Suchen Sie daneben einen Knopf oder Schalter, auf dem Ampere stehen.
assume-breaker-unknown = Niemand kennt den Schutzschalter von „{ $part }“. Es wurde angenommen, dass er nicht rechtzeitig auslöst, und mit nicht mehr Ampere gerechnet, als die Form der Steckdose erlaubt.
    .look = Suchen Sie einen Knopf oder Schalter, auf dem Ampere stehen.
assume-camper-main = Niemand kennt den Hauptschutzschalter von „{ $part }“, also wurden { $value } angenommen, wofür sein Stecker gemacht ist.
    .look = Sehen Sie innen nach, wo man seine Schutzschalter schaltet: Auf einem steht „Main“. Lesen Sie seine Ampere ab. Schrauben Sie nichts auf.
assume-leg = Niemand weiß, auf welcher Seite „{ $part }“ liegt, also wurde { $value } angenommen, zusammen mit allen anderen dieser Art. Das ist die kleinste Leistung, die sie zusammen haben können.
    .look = Suchen Sie in der Anleitung, welche Steckdosen sich eine Seite teilen.
assume-box-wire = Niemand kennt die Leitung im Kasten hinter „{ $part }“, also wurde { $value } angenommen, die dünnste.
    .look = Lesen Sie seine Papiere, oder fragen Sie, wer ihn gebaut hat, oder eine Elektrofachkraft. Öffnen Sie ihn nicht.
assume-cord-wire = Niemand kennt den Leiterquerschnitt von „{ $part }“, also wurde { $value } angenommen, der dünnste.
    .look = Lesen Sie den Aufdruck auf dem Kabel: „12/3“ ist 12 AWG mit drei Leitern.
assume-cord-conductors = Niemand weiß, wie viele Leiter „{ $part }“ hat, also wurden { $value } gerechnet: kein Schutzleiter.
    .look = Lesen Sie den Aufdruck auf dem Kabel: „12/3“ ist 12 AWG mit drei Leitern.
assume-cord-length = Niemand weiß, wie lang „{ $part }“ ist, also wurden für die Spannung { $value } angenommen, und nichts dafür, wie weit es reicht.
    .look = Schreiten Sie es ab: Zählen Sie jeden Schritt als { $step }.
assume-cord-coiled = Niemand weiß, ob „{ $part }“ im Betrieb ausgelegt ist, also wurde es als aufgerollt gerechnet. Aufgerollt verträgt es nur ein Drittel.
    .look = Rollen Sie es ganz ab, und schreiben Sie es in den Plan.
assume-load-kind = Niemand weiß, was „{ $part }“ vor allem tut, also wurde { $value } angenommen: Es kann so viel verbrauchen wie ein Heizgerät und so schwer starten wie ein Motor, und die Gesundheit eines Menschen kann davon abhängen.
    .look = Fragen Sie, wem es gehört.
assume-load-plug = Niemand kennt den Stecker von „{ $part }“, also wurde { $value } angenommen, der übliche.
    .look = Sehen Sie sich den Stecker an.
assume-load-one-leg = Niemand weiß, wie sich „{ $part }“ auf die beiden Seiten verteilt, also wurde alles auf { $value } gelegt, welche auch immer.
    .look = Ein Schild mit den Ampere jeder Seite wüsste es: als current eintragen. Lassen Sie darin weniger zugleich laufen.
assume-load-voltage = Wir wissen nicht, ob „{ $part }“ nur 240 V nutzt oder auch 120 V, also haben wir alles auf { $value } gelegt, welche auch immer.
    .look = Suchen Sie auf seinem Schild „240 V“ oder „120/240 V“. Lassen Sie darin weniger zugleich laufen.
assume-power-factor = Niemand kennt den Leistungsfaktor von „{ $part }“, also wurde { $value } für diese Art angenommen. Es zieht mehr Strom, als seine Watt zeigen.
    .look = Suchen Sie auf dem Schild die Ampere (A).
assume-running = Niemand weiß, was „{ $part }“ verbraucht, also wurden { $value } angenommen, das Meiste für Art und Stecker.
    .look = Suchen Sie auf seinem Schild W oder A.
assume-starting = Niemand weiß, was „{ $part }“ zum Starten braucht, also wurden { $value } für diese Art angenommen. Alles mit Motor braucht zum Starten viel mehr als im Betrieb.
    .look = Suchen Sie auf dem Schild oder in der Anleitung Watt oder Ampere beim Anlaufen.
assume-starting-code-v = Der Kennbuchstabe V von „{ $part }“ hat keine obere Grenze, also wurden { $value } zum Starten angenommen, das Mindeste. Es kann mehr sein: Beim Starten hinsehen und hinhören.
assume-continuous = Niemand weiß, wie lange „{ $part }“ läuft, also wurden drei Stunden oder mehr am Stück angenommen. Das senkt, was es verbrauchen darf.
    .look = Überlegen Sie, wie lange es ohne Pause läuft.
assume-all-day = Niemand weiß, wann „{ $part }“ läuft, also wurden { $value } am Tag gerechnet.
    .look = Legen Sie fest, wann es läuft.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what }: { $ask }
look-generator = Generator
look-clears-dangers = { $dangers ->
        [one] Das kann eine Gefahr ausräumen.
       *[other] Das kann { $dangers } Gefahren ausräumen.
    }
look-clears-warnings = { $warnings ->
        [one] Das kann eine Warnung ausräumen.
       *[other] Das kann { $warnings } Warnungen ausräumen.
    }
assume-parallel-limit = Niemand weiß, was der Verbindungssatz zwischen den Generatoren durchlässt, also wurden { $value } angenommen, wie von einem allein.
    .look = Lesen Sie die Ampere auf dem Verbindungssatz.
assume-rated-on = Mit Propan gibt ein Generator etwa ein Zehntel weniger als mit Benzin. Also wurden { $value } angenommen.
    .look = Nennt das Typenschild Watt für Propan, schreiben Sie rated_on = "propane" in den Plan.

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Kaufen Sie eines, auf dessen Packung all das steht: { $list }.
buy-plug = Stecker { $value }
buy-inlet = Eingang { $value }
buy-ends = Ende { $value }
buy-outlet = Steckdosen { $value }
buy-outdoor = „outdoor“ (im Freien) oder ein W in seinen Buchstaben
buy-wire = { $value }, oder eine kleinere AWG-Zahl
buy-conductors = { $value } Adern
buy-length = { $value } oder weniger
buy-listed = das Zeichen eines Prüflabors
buy-gfci = Tasten TEST und RESET (GFCI)
buy-rated = { $value } oder mehr Dauerleistung
buy-peak = { $value } oder mehr Spitzenleistung
buy-inverter = „inverter“
buy-co_alarm = Kohlenmonoxid-Melder mit Batterie und dem Zeichen eines Prüflabors, einer je Zelt oder Fahrzeug
