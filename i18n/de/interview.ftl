# Die Fragen. `ask-ID` ist eine Frage, unter 60 Spalten; `.why` eine Zeile, warum oder wo man die
# Antwort liest; `.help` ist, was `?` sagt; `.row` der Name der Frage auf der Übersicht.

progress = Teil { $number } von { $total }: { $part }
# The same for the things to look at. “More”: what earlier answers led to.
progress-look = Nachsehen: { $number } von { $total }
progress-look-more = Noch nachsehen: { $number } von { $total }
part-asked-generator = der Generator
part-asked-outlets = seine Steckdosen
part-asked-loads = was Sie anschließen
part-asked-site = der Platz
part-asked-gear = Kabel und Kästen

interview-welcome =
    Kurze Fragen, in fünf Teilen: Ihr Generator, seine Steckdosen, was Sie anschließen, der Platz, Ihre Kabel und Kästen.
    Enter nimmt die Antwort in Klammern oder mit *. Wenn Sie es nicht wissen, wählen Sie „Weiß ich nicht“: Dann nehmen wir die gefährlichere Antwort an und sagen es. Strg-C hört auf und behält Ihre Antworten.

hint-list = Pfeile oder Text, Enter. Esc: zurück
hint-many = Enter: an/ab. ← →: Zahl. Tab: zum Anfang. Esc: zurück
list-nothing = Nichts davon passt. Esc: alle
hint-keys = ?: Hilfe, Esc: zurück
hint-go-on = Enter: weiter
hint-unknown = oder unbekannt
hint-none = keine
hint-enter-unknown = Enter: unbekannt
hint-between = ,{" "}

typed-unknown = unbekannt
    .also = weiß nicht, weiss nicht, weiß ich nicht, weiss ich nicht, keine ahnung, nicht sicher
typed-at = in
# Words ahead of a figure that is judged by eye, and past it, small letters, set apart by commas. The figure
# counts as typed. What makes it larger, smaller or doubtful, such as "mindestens", has no place here.
typed-about = ungefähr, ungefaehr, etwa, in etwa, circa, zirka, ca., ca, rund, um die, so um die, ~, ≈
    .after = oder so, ungefähr, ungefaehr, etwa, circa, zirka, ca., ca, mehr oder weniger

typed-unit = -
    .ft = fuß fuss
    .m = meter metern
    .in = zoll
    .A = ampere
    .V = volt
    .W = watt
    .h = stunden stunde std
    .min = minuten minute
    .gal = gallonen gallone
    .L = liter litern
    .step = schritte schritt schritten
typed-not-bought = nicht gekauft
    .also = zu kaufen, noch nicht gekauft
typed-none = keine
    .also = nein, nichts, kein, keiner, keines
typed-picture = baum
    .also = bild

pick-yes = Ja
    .also = j
pick-no = Nein
    .also = n
pick-unknown = Weiß ich nicht
    .also = weiss nicht unbekannt keine ahnung
pick-look-first = Weiß ich nicht: erst nachsehen gehen
pick-explain = ? Mehr dazu
pick-picture = Zeigen, was bisher wo steckt
pick-removed = Das wieder herausnehmen

label-place = { $id } ({ $shape })
about-gear = { $id }, { $what }
label-marked = ! { $row }
label-row = { $title }: { $shown }

shown-unknown = nicht bekannt
shown-open-one = nicht gefragt
shown-unused = noch nicht benutzen
shown-in = in { $place }
shown-times = { $count } davon

suggest-generator-name = Generator
suggest-load-name = Ein Gerät
suggest-site-name = Campingwochenende

# What somebody may answer, in the reader's units.
example-tank = { $measure ->
    [metric] 4,5 L
   *[customary] 1,2 gal
}
example-noise-far = { $measure ->
    [metric] 7 m
   *[customary] 23 ft
}
example-noise-near = { $measure ->
    [metric] 3 m
   *[customary] 10 ft
}
example-near = { $measure ->
    [metric] 12 m
   *[customary] 40 ft
}
example-altitude = { $measure ->
    [metric] 900 m
   *[customary] 4200 ft
}
example-sea = { $measure ->
    [metric] 0 m
   *[customary] 0 ft
}
example-air = { $measure ->
    [metric] 31 C
   *[customary] 88 F
}
example-length = { $measure ->
    [metric] 15 m
   *[customary] 50 ft
}

# ---- Der Generator

ask-generator-name = Wie nennen Sie Ihren Generator?
    .why = Der Name kommt auf sein Etikett.
    .help = Ein beliebiger kurzer Name: die Farbe, wem er gehört. Sie können ihn später ändern.
    .row = Name

ask-generator-rated = Wie viel Watt gibt der Generator?
    .why = Siehe Typenschild. Stehen dort zwei Zahlen, dann beide: 2800 W, 3300 W.
    .help =
        Suchen Sie zwei Zahlen auf dem Typenschild oder in der Anleitung. Die kleinere ist die Dauerleistung (running, rated): was er stundenlang gibt. Die größere ist die Spitze: was er ein paar Sekunden lang gibt, damit ein Motor startet. Tippen Sie beide, mit einem Komma dazwischen.
        Steht dort nur eine, tippen Sie diese. Wir fragen dann, welche der beiden es ist. Die große Zahl in seinem Namen ist oft die Spitze.
        Stehen auf dem Schild nur Ampere und Volt, multiplizieren Sie: 20 A bei 120 V sind 2400 W.
    .row = Dauerleistung

ask-generator-peak = Wie viel Watt gibt er höchstens für ein paar Sekunden?
    .why = Typenschild: starting, surge oder peak watts.
    .help =
        Motoren, etwa im Kühlschrank, ziehen beim Starten einen Augenblick lang das Zwei- bis Sechsfache. Die Spitze sagt uns, ob der Generator sie starten kann.
    .row = Spitzenleistung

ask-generator-figure = Ist das seine Dauer- oder seine Spitzenleistung?
    .why = Die Zahl in seinem Namen ist meist die Spitze.
    .help =
        Sie haben eine einzige Zahl angegeben. Gehört sie zum Namen oder steht sie allein auf dem Karton, ist sie meist die Spitze: was er ein paar Sekunden lang gibt. Steht „running“, „rated“ oder „continuous“ dabei, ist sie die Dauerleistung.
        Wenn Sie es nicht wissen, nehmen wir an, dass sie die Spitze ist und die Dauerleistung drei Viertel davon.
    .row = Diese Zahl ist
pick-generator-figure-running = Die Dauerleistung
pick-generator-figure-peak = Die Spitzenleistung

ask-generator-voltage = Welche Spannung gibt er?
    .why = Die meisten kleinen geben nur 120 V. Siehe Schild.
    .help =
        120 V ist die Haushaltssteckdose. Ein Generator für 120/240 V hat auch eine Steckdose mit vier Schlitzen für große Stecker, oder 120/240 V steht auf dem Schild.
        So ein Generator hat zwei Hälften. Jede 120-V-Steckdose kann nur eine Hälfte der Leistung nutzen.
    .row = Spannung
pick-generator-voltage-120 = Nur 120 V
pick-generator-voltage-120-240 = 120 V und 240 V

ask-generator-neutral = Neutralleiter: erdfrei oder verbunden?
    .why = Neutralleiter: führt den Strom zurück. Unklar? „Weiß ich nicht“ wählen.
    .help =
        Danach richten sich die Prüfungen. Suchen Sie in der Anleitung oder bei den Steckdosen nach „floating neutral“ (erdfrei) oder „neutral bonded to frame“ (verbunden).
        Erdfrei: Innen verbindet nichts den Neutralleiter mit dem Gehäuse. Verbunden: Der Hersteller hat sie verbunden.
        Ein Brückenstecker sieht aus wie ein Stecker ohne Kabel, und jemand hat ihn mit Absicht eingesteckt. Sehen Sie nach: Steckt ein Stecker ohne Kabel in einer Steckdose? Dann lassen Sie ihn stecken und fragen Sie den Besitzer. Stecken Sie nie selbst einen ein, außer eine Elektrofachkraft sagt es.
        Öffnen Sie den Generator nicht, um es herauszufinden, und verbinden Sie nichts selbst. Wenn Sie es nicht wissen, nehmen wir für die Prüfungen „erdfrei“ an und für Stromschläge das Schlimmere.
    .row = Neutralleiter
pick-generator-neutral-floating = Erdfrei: mit nichts verbunden
pick-generator-neutral-plug = Brückenstecker (ohne Kabel) steckt
pick-generator-neutral-bonded = Mit dem Gehäuse verbunden

ask-generator-inverter = Ist es ein Inverter-Generator?
    .why = „inverter“ steht auf dem Gehäuse. Meist leise und ringsum geschlossen.
    .help =
        Ein Inverter-Generator ist meist leise, hat ein geschlossenes Gehäuse und einen Schalter, der den Motor langsamer laufen lässt. Auf dem Schild oder in der Anleitung steht „inverter“.
        Ein offener Rahmen mit rundem Tank obenauf ist meist keiner.
    .row = Inverter

ask-generator-sets = Ein Generator, oder zwei mit Verbindungssatz?
    .why = Verbunden (parallel) laufen sie wie einer. Getrennt: je ein Plan.
    .help =
        Nur manche Inverter-Generatoren lassen sich verbinden, und nur mit dem Verbindungssatz, den ihr Hersteller dafür verkauft.
        Zwei Generatoren, die getrennt laufen, jeder mit eigenen Kabeln, sind nicht verbunden: Machen Sie für jeden einen Plan.
    .row = Verbundene Generatoren
pick-generator-sets-1 = Einer allein
pick-generator-sets-2 = Zwei, mit Verbindungssatz
pick-generator-sets-3 = Drei, mit Verbindungssatz
pick-generator-sets-4 = Vier, mit Verbindungssatz

# Safety.
ask-generator-kit = Ist es der Verbindungssatz des Herstellers für genau diese?
    .why = Anders verbunden brennen sie, und blanke Stifte stehen unter Spannung.
    .help = Die Anleitung des Verbindungssatzes nennt die Generatoren, für die er ist. Stehen Ihre nicht darin, oder ist das Kabel dazwischen selbst gemacht, ist die Antwort nein. Wenn Sie es nicht wissen, nehmen wir nein an.
    .row = Satz vom Hersteller

ask-generator-limit = Wie viel Ampere lässt der Verbindungssatz durch?
    .why = Etwa 30 A. Steht auf ihm, an Steckdose oder Schutzschalter.
    .help = Wenn Sie es nicht wissen, nehmen wir an, dass er nicht mehr durchlässt, als einer allein gibt.
    .row = Satz lässt durch

ask-generator-fuel = Womit läuft er?
    .why = Für seine Leistung und wie lange eine Tankfüllung reicht.
    .help = Läuft er mit mehreren, nennen Sie den Kraftstoff, den Sie mitnehmen. Wenn Sie es nicht wissen, nehmen wir Propan an, womit er etwas weniger gibt.
    .row = Kraftstoff
pick-generator-fuel-gasoline = Benzin
pick-generator-fuel-propane = Propan
pick-generator-fuel-diesel = Diesel

ask-generator-rated-on = Für welchen Kraftstoff gelten die Watt?
    .why = Mit Propan gibt er etwa ein Zehntel weniger. Siehe Schild.
    .help = Ein Generator für zwei Kraftstoffe hat in der Anleitung zwei Zeilen mit Watt. Welche haben Sie als seine Leistung angegeben? Wenn Sie es nicht wissen, nehmen wir an, dass sie für Benzin war, und ein Zehntel weniger für Propan.
    .row = Watt gelten für
pick-generator-rated-on-gasoline = Benzin
pick-generator-rated-on-propane = Propan

ask-generator-tank = Wie viel Kraftstoff fasst sein Tank?
    .why = Etwa { example-tank }. Siehe Anleitung.
    .help = Bei Propan geben Sie an, was Ihre Flasche flüssig fasst, oder unbekannt.
    .row = Tank

ask-generator-runtime = Wie lange läuft er mit einer Tankfüllung?
    .why = Etwa: 25 % 8,5 h, 100 % 3,1 h. Siehe Anleitung.
    .help =
        Hersteller geben Stunden bei einem Anteil der Dauerleistung an. Tippen Sie den Anteil, dann die Stunden; mehrere durch Komma getrennt.
        Ein Paar genügt. Zwei sind besser.
    .row = Laufzeit

ask-generator-noise = Wie laut ist er, und wie weit weg gemessen?
    .why = Etwa: 58 dBA in { example-noise-far }, 25 %. Siehe Anleitung.
    .help =
        Die Zahl allein sagt wenig: 58 dBA in { example-noise-far } sind lauter als 58 dBA in { example-noise-near }. Die meisten Hersteller messen in { example-noise-far } bei Viertellast.
        Der Lastanteil am Ende darf fehlen.
    .row = Lärm

# ---- Seine Steckdosen

ask-outlet-list = Seine Steckdosen: Wie sehen die Löcher aus?
    .why = Löcher und Name (5-20R) vergleichen. Suchen: dick, 4 Schlitze. ?: Bilder.
    .help =
        Ein Schutzschalter ist der kleine Knopf oder Schalter nahe der Steckdose, der abschaltet, wenn zu viel an ist. Er hat eine Zahl: 15, 20, 30. Sehen Sie nach: Es ist nicht immer die Zahl, die zur Form der Steckdose gehört. Ist es eine andere oder nicht lesbar, wählen Sie „andere Zahl“.
        Sehen Sie sich die Löcher an und den Namen, der daneben eingeprägt ist. Zwei nebeneinander hinter einem Schutzschalter zählen als eine. Gibt es zwei gleiche hinter zwei Schutzschaltern, kreuzen Sie 2 an.
    .row = Steckdosen
pick-outlet-list-done = Das sind alle seine Steckdosen

ask-outlets-places = Wie sind die ähnlichen Steckdosen angeordnet?
    .why = So steht es dann auf Etiketten und Karte.
    .help = Nebeneinander heißen sie links und rechts, übereinander oben und unten. Bei Nummern wählen Sie beim Aufkleben der Etiketten, welche die 1 ist.
    .row = Ähnliche Steckdosen
pick-outlets-places-across = { pick-out-places-across }
pick-outlets-places-down = { pick-out-places-down }
pick-outlets-places-number = { pick-out-places-number }

ask-outlet-face = Welche Steckdose, welche Zahl am Schutzschalter?
    .why = Suchen: 30, Dreh, Haushalt.
    .help =
        Ein Schutzschalter ist der kleine Knopf oder Schalter nahe der Steckdose, der abschaltet, wenn zu viel an ist. Er hat eine Zahl: 15, 20, 30. Sehen Sie nach: Es ist nicht immer die Zahl, die zur Form der Steckdose gehört. Ist es eine andere oder nicht lesbar, wählen Sie „andere Zahl“.
        Sehen Sie sich die Löcher an und den Namen, der daneben eingeprägt ist. Zwei gleiche Steckdosen nebeneinander sind eine Art. Steckdosen hinter verschiedenen Schutzschaltern nennen Sie einzeln.
    .row = Form
pick-face-usual = { $shape } ({ $code }), Schutz { $amps } A
pick-face-other = { $shape } ({ $code }), andere Zahl
pick-face-end = { $shape } ({ $code })

ask-outlet-breaker = Welche Zahl steht auf dem Schutzschalter?
    .why = { $about }. Ein Knopf oder Schalter, etwa 20 A.
    .help =
        Ein Schutzschalter ist der kleine Knopf oder Schalter nahe der Steckdose, der abschaltet, wenn zu viel an ist. Er hat eine Zahl: 15, 20, 30. Tippen Sie sie mit Einheit: 20 A.
        Sehen Sie nach: Es ist nicht immer die Zahl, die zur Form der Steckdose gehört. Steht keine Zahl da, tippen Sie unbekannt. Wir nehmen dann an, dass nichts die Kabel schützt, und sagen es.
    .row = Schutzschalter

ask-outlet-name = Wie soll diese Steckdose heißen?
    .why = { $about }. Kurz, ohne Leerzeichen: vorn, dreh.
    .help = Buchstaben und Ziffern, - und _, keine Leerzeichen. Der Name kommt auf das Etikett neben der Steckdose.
    .row = Name

ask-outlet-sockets = Wie viele Stecker passen hinein?
    .why = { $about }. Eine Doppelsteckdose: 2.
    .help = Zählen Sie die Dosen hinter diesem einen Schutzschalter.
    .row = Stecker

ask-outlet-leg = Welche Hälfte des Generators speist sie?
    .why = { $about }. Siehe Schaltplan in der Anleitung.
    .help = Ein Generator für 120/240 V hat zwei Hälften, A und B. Wenn Sie es nicht wissen, nehmen wir die schlechtere an.
    .row = Hälfte
pick-outlet-leg-a = Hälfte A
pick-outlet-leg-b = Hälfte B

ask-outlets-gfci = Welche haben die Tasten TEST und RESET?
    .why = Das sind FI-Schutzschalter (GFCI), gemacht, um bei Schlag abzuschalten.
    .help =
        Die zwei Tasten sind an der Steckdose selbst oder auf dem Bedienfeld bei den Buchstaben GFCI oder „ground fault“. Ein Schutzschalter mit nur einem Knopf ist keiner.
        Ein GFCI ist gemacht, um schnell abzuschalten, wenn Strom durch einen Menschen fließt. Er kann versagen: Drücken Sie vor jeder Benutzung TEST.
        Wenn Sie es nicht wissen, nehmen wir an, dass es keinen solchen Schutz gibt, und sagen es.
    .row = Stromschlag-Schutz
pick-outlets-gfci-all = Alle
pick-outlets-gfci-none = Keine
pick-outlets-gfci-some = Manche: ich sage, welche

ask-outlets-odd = Ist an den Schutzschaltern etwas Besonderes?
    .why = Geteilt oder zu früh ausgelöst: Dann haben Sie weniger Leistung.
    .help =
        Zwei Steckdosen können sich einen Schutzschalter teilen: Was Sie der einen entnehmen, fehlt der anderen. Der Schaltplan in der Anleitung zeigt es; ebenso ein Bedienfeld mit weniger Schutzschaltern als Steckdosen.
        Ein Schutzschalter, der unter seiner Zahl ausgelöst hat, gibt von da an weniger als diese kleinere Zahl.
    .row = Schutzschalter
pick-outlets-odd-no = Nichts, von dem ich weiß
pick-outlets-odd-share = Mehrere Steckdosen teilen sich einen
pick-outlets-odd-early = Einer löst zu früh aus
pick-outlets-odd-both = Beides: geteilt und zu früh

ask-outlet-gfci = Hat diese die Tasten TEST und RESET?
    .why = { $about }.
    .help = Die zwei Tasten sind an der Steckdose oder daneben auf der Tafel.
    .row = Stromschlag-Schutz

ask-outlets-bonding = In welcher Dose sitzt der Brückenstecker?
    .why = Hinter einem GFCI (TEST und RESET) hält er ihn vom Auslösen ab.
    .help =
        Ein Brückenstecker ist ein Stecker ohne Kabel. Sehen Sie die Haushaltssteckdosen des Generators an.
        Er gehört in eine ohne Tasten TEST und RESET. Öffnen und verdrahten Sie nichts.
    .row = Brückenstecker in

ask-outlet-shares = Hinter wessen Schutzschalter liegt sie?
    .why = { $about }. Schutzschalter aus: Was geht aus?
    .help = Mit einer Lampe in jeder Steckdose: Schalten Sie einen Schutzschalter aus. Die Steckdosen, die dunkel werden, liegen dahinter.
    .row = Teilt den Schutzschalter von
pick-outlet-shares-own = Ihr eigener

ask-outlet-trips = Bei wie viel Ampere hat er ausgelöst?
    .why = { $about }. Etwa 17 A. Hat er nie ausgelöst, tippen Sie keine.
    .help = Zählen Sie zusammen, was lief, als er auslöste: Watt geteilt durch 120 sind Ampere. Hat er nie unter seiner Zahl ausgelöst, tippen Sie keine.
    .row = Hat ausgelöst bei
pick-outlet-trips-none = nie zu früh

# ---- Was laufen soll

ask-load-list = Was schließen Sie an?
    .why = Suchen: Wasserkocher, Handy. Alles ankreuzen, oder eine fertige Liste.
    .help =
        Die Watt sind typisch, eher hoch. Besser ist das Schild am Gerät selbst: Wählen Sie das Gerät hier, und ändern Sie seine Watt auf der letzten Seite.
        Die fertigen Listen nennen mehrere Geräte auf einmal. Nehmen Sie später heraus, was Sie nicht haben. Haben Sie zwei gleiche, kreuzen Sie 2 an.
        Steht es nicht in der Liste, wählen Sie „Etwas anderes“.
    .row = Was
pick-load-list-done = Das ist alles

ask-load-what = Was schließen Sie an?
    .why = Suchen: Wasserkocher, Handy.
    .help = Steht es nicht in der Liste, wählen Sie „Etwas anderes“.
    .row = Was
pick-load-what-own = Etwas anderes: Ich tippe es ein
pick-load-what-appliance = { $name }, { $watts } W
pick-load-what-occasion = { $name }: { $count } Geräte
    .also = fertig üblich liste vorlage anlass

ask-load-name = Wie heißt es?
    .why = Der Name kommt auf die Karte.
    .help = Ein beliebiger kurzer Name: Luftpumpe, Verstärker.
    .row = Name

ask-load-kind = Was tut es vor allem?
    .why = { $about }. Motoren brauchen zum Starten mehr.
    .help = Ein Gerät mit Motor und Heizung, etwa ein Haartrockner, zählt als das, was mehr Leistung nimmt. Dass nachts gekocht wird, nehmen wir nicht an; andere Wärme schon. Hängt die Gesundheit eines Menschen davon ab, auch ein Rollstuhl, wählen Sie immer das. Wenn Sie es nicht wissen, nehmen wir das Schlimmste jeder Art an, und dass die Gesundheit eines Menschen davon abhängen kann.
    .row = Art
pick-load-kind-heater = Wärme: Raum, Bett, Haar, Werkzeug
pick-load-kind-cooker = Kocht oder erhitzt Wasser
pick-load-kind-motor = Dreht einen Motor, pumpt oder kühlt
pick-load-kind-electronic = Elektronik: Lader, PC, TV, Ton
pick-load-kind-lamp = Gibt Licht
pick-load-kind-medical = Die Gesundheit hängt davon ab

ask-load-draw = Wie viel verbraucht es? Siehe sein Schild.
    .why = { $about }. Etwa 1500 W, 12,5 A oder 1/2 hp.
    .help =
        Das Schild ist hinten oder unten. W sind Watt, A sind Ampere bei 120 V, oder bei 240 V, wenn es 240 V nutzt. Bei einem Motor dürfen Sie PS (hp) angeben, und den Kennbuchstaben, wenn einer darauf steht: 1/2 hp code G.
        Auf dem Schild eines Ladegeräts stehen zwei Zeilen: Nehmen Sie INPUT (Eingang), nicht den Ausgang. Sie dürfen sie tippen, wie sie dasteht: 100-240V 50/60Hz 1.5A.
    .row = Verbraucht

ask-load-count = Wie viele davon?
    .why = { $about }. Jedes mit eigenem Stecker.
    .help = Zehn ineinander gesteckte Lichterketten sind ein Stecker; zehn Ladegeräte sind zehn.
    .row = Wie viele

ask-load-starting = Wie viel in dem Augenblick, in dem es startet?
    .why = { $about }. Etwa 2400 W oder LRA 39; oder unbekannt.
    .help = Auf dem Schild kann starting, surge oder LRA stehen (Ampere bei blockiertem Läufer). Tippen Sie Watt als 2400 W, Ampere als 39 A oder LRA 39, so wie sie dastehen. Wenn Sie es nicht wissen, nehmen wir eine vorsichtige Zahl für diese Art und sagen es.
    .row = Start

ask-load-factor = Welche Zahl steht hinter PF auf seinem Schild?
    .why = { $about }. Zwischen 0,1 und 1. Kleiner heißt mehr Ampere.
    .help = PF ist der Leistungsfaktor. Auf dem Schild kann auch cos φ stehen. Was nur heizt, hat 1. Wenn Sie es nicht wissen, nehmen wir eine vorsichtige Zahl.
    .row = Leistungsfaktor

ask-load-continuous = Läuft es drei Stunden oder länger am Stück?
    .why = { $about }. Das erhitzt Kabel und Schutzschalter.
    .help = Ein Kühlschrank, eine Heizung in der Nacht, Licht am Abend: ja. Ein Wasserkocher: nein.
    .row = Drei Stunden oder mehr

# Safety.
ask-load-backup = Was versorgt es, wenn der Generator ausgeht?
    .why = { $about }. Generatoren gehen aus, auch nachts.
    .help =
        Ein Generator läuft leer, schaltet ab, oder jemand stellt ihn ab. Wer schläft, merkt es vielleicht nicht.
        Seine Batterie: eine, die für dieses Gerät gemacht ist und die ganze Nacht reicht. Eine Autobatterie mit einem Wandler oder eine, die niemand ausprobiert hat, ist das nicht.
        Wenn Sie es nicht wissen, nehmen wir an: nichts.
    .row = Wenn der Strom ausfällt
pick-load-backup-battery = Seine Batterie, die ganze Nacht
pick-load-backup-none = Keine Batterie, oder nicht so lange

ask-load-plug = Welchen Stecker hat es?
    .why = { $about }. Die meisten haben den Haushaltsstecker.
    .help = Zwei flache Stifte und ein runder: 5-15P. Nur zwei flache Stifte: 1-15P.
    .row = Stecker

ask-load-voltage = Welche Spannung nutzt es?
    .why = { $about }. Auf dem Schild: 120 V, 240 V oder 120/240 V.
    .help = Sein Stecker bringt 120 V und 240 V. Was 120 V nutzt, wie fast alles im Wohnwagen, liegt auf einer Hälfte des Generators. Ein Gerät nur für 240 V, etwa ein Warmwasserbereiter, belastet beide Hälften gleich. Eines für 120/240 V, etwa ein Wäschetrockner, kann alles auf eine Hälfte legen. Wenn Sie es nicht wissen, nehmen wir das Schlimmste an.
    .row = Nutzt an Volt
pick-load-voltage-120 = Nur 120 V
pick-load-voltage-240 = Nur 240 V
pick-load-voltage-120-240 = 120 V und 240 V

ask-load-wanted = Wie wichtig ist es?
    .why = { $about }. Ist Strom knapp, wartet das Verzichtbare.
    .help = Was laufen muss, bekommt immer zuerst Strom. Verzichtbares kommt an die Reihe, wenn etwas übrig ist.
    .row = Wichtig
pick-load-wanted-must = Es muss laufen
pick-load-wanted-wish = Verzichtbar

ask-load-hours = Wann läuft es?
    .why = { $about }. Etwa 07:00-07:20, 19-21. Zu jeder Zeit: keine.
    .help = Tippen Sie Uhrzeiten von und bis, durch Komma getrennt. Ohne Zeiten nehmen wir an, dass es jederzeit laufen kann.
    .row = Stunden
pick-load-hours-none = jederzeit

ask-load-on = Wo ist es angeschlossen?
    .why = { $about }. Überlassen Sie es uns, oder sagen Sie es.
    .help = Nur freie Steckdosen, in die der Stecker passt, werden gezeigt. Wenn Sie es uns überlassen, findet der Plan die Steckdosen, an denen am meisten zugleich laufen kann.
    .row = Angeschlossen an
pick-load-on-any = Die beste Steckdose dafür finden

# ---- Der Platz

ask-site-name = Wie heißt dieses Wochenende?
    .why = Der Name kommt auf jede gedruckte Seite.
    .help = Etwa: Wochenende in der Wacholderbucht.
    .row = Name

ask-site-ground = Wie nass ist der Boden, wo Sie die Sachen benutzen?
    .why = Nasser Boden macht einen Schlag viel gefährlicher.
    .help = Nass: Regen, nasses Gras, Pfützen, nasse nackte Füße. Feucht: Tau oder feuchte Erde. Trocken: ein trockener Boden unter einem Dach. Wenn es regnen kann, wählen Sie nass.
    .row = Boden
pick-site-ground-wet = Nass: Regen, nasses Gras, Pfützen
pick-site-ground-damp = Feucht: Tau, feuchte Erde
pick-site-ground-dry = Trocken: trockener Boden, unter Dach

ask-site-sleepers = Wie weit vom Generator sind die nächsten Menschen?
    .why = Abgase töten Schlafende. Etwa { example-near }.
    .help =
        Messen Sie vom Generator bis zum nächsten Zelt, Fahrzeug oder Gebäude mit Menschen, auch bei Ihren Nachbarn. Wo niemand schläft, etwa auf einem Markt: bis dorthin, wo Menschen stehen. Zählen Sie jeden Schritt als { $step }. Schätzen Sie den Abstand lieber zu kurz als zu lang.
        Abgase enthalten Kohlenmonoxid. Es hat keinen Geruch. Wenn Sie den Abstand nicht wissen, nehmen wir an, dass er zu klein ist, und sagen es.
    .row = Nächste Menschen

ask-site-stands = Was ist über dem Generator und um ihn herum?
    .why = Abgase müssen weg. Bei Regen: Motor abstellen.
    .help =
        Wenn Sie ihn bei Regen umstellen würden, antworten Sie für jenen Ort.
        Im Freien: nichts darüber, und ringsum { $clear } frei. Unter einem Dach: ein Dach weit darüber, nach allen Seiten offen.
        Ein Zelt mit offener Tür, ein Vorzelt, ein Anhänger, eine offene Garage oder eine Kiste zählen als drinnen: In allen sind schon Menschen gestorben. Eine Plane oder Hülle auf dem Generator, eine Markise oder ein Faltpavillon darüber oder eine Wand nahe bei ihm zählen als abgedeckt.
        Wenn Sie es nicht wissen, nehmen wir an, dass er in oder unter etwas steht, und sagen es.
    .row = Generator steht
pick-site-stands-open = Im Freien, ringsum { $clear } frei
pick-site-stands-roof = Hohes Dach, ringsum offen
pick-site-stands-covered = Plane, Pavillon, Markise oder Wand
pick-site-stands-enclosed = In Zelt, Vorzelt, Auto, Schuppen

ask-site-alarm = Kohlenmonoxid-Melder, wo geschlafen wird?
    .why = Einer in jedem Zelt oder Fahrzeug, geprüft, mit frischen Batterien.
    .help = Er ist nicht dasselbe wie ein Rauchmelder: CO oder Kohlenmonoxid steht darauf. Drücken Sie seine Prüftaste. Wenn ein Schlafplatz keinen hat, ist die Antwort nein. Wählen Sie „Niemand …“ nur, wenn hier niemand schläft, auch kein Nachbar: ein Markt oder ein Arbeitseinsatz am Tag.
    .row = Kohlenmonoxid-Melder
pick-site-alarm-yes = Ja, an jedem Schlafplatz
pick-site-alarm-no = Nein, oder nicht an jedem
pick-site-alarm-nobody = Niemand schläft hier oder nebenan

ask-site-building = Speist er die Leitungen von Haus oder Hütte?
    .why = Das kann Menschen an der Leitung töten, und Sie.
    .help = Antworten Sie Nein, wenn Sie nur in den Generator, seine Kabel und Kästen etwas einstecken. Antworten Sie Ja, wenn ein Kabel von ihm zu einer Wandsteckdose, einer Einspeisung oder einem Verteiler eines Gebäudes geht. Legen Sie nie ein solches Kabel. Nur eine Elektrofachkraft darf ihn an ein Gebäude anschließen, mit einem Umschalter, der das Gebäude von der Straße trennt. Wenn Sie es nicht wissen, nehmen wir an: ja.
    .row = Speist ein Gebäude

ask-site-altitude = Wie hoch über dem Meer ist es?
    .why = Dünne Luft kostet Leistung. Etwa { example-altitude }.
    .help = Eine Karte oder ein Telefon sagt es. Am Meer tippen Sie { example-sea }. Eine grobe Zahl genügt; runden Sie auf.
    .row = Höhe

ask-site-air = Wie heiß wird die Luft höchstens?
    .why = Hitze kostet Leistung. Etwa { example-air }.
    .help = Der höchste Wert der Vorhersage, und mehr, wenn der Generator in der Sonne steht.
    .row = Heißeste Luft

ask-site-quiet = Wann muss es auf dem Platz ruhig sein?
    .why = Etwa 22:00-06:00, oder 10pm-6am. Wenn nie, tippen Sie keine.
    .help = Viele Plätze verbieten Generatoren in der Nacht. Fragen Sie am Eingang. 10pm-6am geht auch. Nennt ein Schild erlaubte Stunden, etwa 8am-10am und 4pm-8pm, geben Sie den Rest des Tages ein: 10am-4pm, 8pm-8am.
    .row = Ruhezeit
pick-site-quiet-none = keine

# ---- Kabel, Adapter und Kästen

ask-gear-list = Welche Kabel, Adapter und Kästen haben Sie?
    .why = Alles ankreuzen, auch was Sie nicht brauchen.
    .help = Nennen Sie auch die seltsamen Adapter: Sie sind oft die gefährlichen. Der Name in Klammern, etwa L5-30, ist bei den Löchern oder Stiften eingeprägt. Haben Sie zwei gleiche, kreuzen Sie 2 an.
    .row = Was
pick-gear-list-done = Das ist alles

ask-gear-what = Welche Kabel, Adapter und Kästen haben Sie?
    .why = Wählen Sie, was es ist.
    .help = Nennen Sie auch die seltsamen Adapter: Sie sind oft die gefährlichen. Der Name in Klammern, etwa L5-30, ist bei den Löchern oder Stiften eingeprägt.
    .row = Was
pick-gear-what-extension = Verlängerung, Haushalt (5-15)
pick-gear-what-three-way = Kabel mit 3 Haushaltsenden (5-15)
pick-gear-what-strip = Steckdosenleiste, 6 Dosen (5-15)
pick-gear-what-twist-30 = Kabel 30 A, Drehstecker (L5-30)
pick-gear-what-camper-30 = Wohnwagenkabel 30 A (TT-30)
pick-gear-what-twist-30-four = Kabel 30 A, Dreh, 4 Stifte (L14-30)
pick-gear-what-split-30 = Verteilerkabel L5-30 auf 3 Haushalt
pick-gear-what-split-30-four = Verteilerkabel L14-30 auf 4 Haushalt
pick-gear-what-camper-to-twist = Adapter Stecker L5-30 auf TT-30
pick-gear-what-camper-to-home = Adapter Stecker 5-15 auf TT-30
pick-gear-what-home-to-camper = Adapter Stecker TT-30 auf 5-15
pick-gear-what-four-to-twist = Adapter Stecker L14-30 auf L5-30
pick-gear-what-cord = Anderes Kabel, anderer Adapter
    .also = leitung verlängerung
pick-gear-what-box-twist-30 = Kasten mit Schutzschaltern, L5-30
pick-gear-what-box-camper-30 = Kasten mit Schutzschaltern, TT-30
pick-gear-what-box-twist-30-four = Kasten mit Schutzschaltern, L14-30
pick-gear-what-box-50 = Kasten mit Schutzschaltern, 14-50
pick-gear-what-box = Anderer Kasten mit Schutzschaltern
    .also = grau verteiler metall
pick-gear-what-camper = Wohnwagen oder Wohnmobil (RV)
    .also = anhänger camper

ask-gear-plug = Welcher Stecker ist daran?
    .why = { $about }: das Ende mit den Stiften.
    .help = Suchen Sie den Namen, der zwischen den Stiften eingeprägt ist.
    .row = Stecker

# Safety.
ask-gear-main = Welche Zahl steht auf dem Hauptschutzschalter?
    .why = { $about }: der Schalter „Main“, mit Ampere.
    .help = Er ist innen, bei den anderen Schutzschaltern. Schrauben Sie nichts auf. Wissen Sie es nicht, nehmen wir an, wofür der Stecker gemacht ist.
    .row = Hauptschutzschalter

ask-gear-inside = Welche davon laufen darin?
    .why = { $about }. Kreuzen Sie an, was dort angeschlossen ist.
    .help = Kreuzen Sie alles an, was darin läuft: die Klimaanlage, den Warmwasserbereiter, einen Laptop. All das geht durch den Stecker und den Hauptschutzschalter und braucht keine andere Steckdose.
    .row = Läuft darin
pick-gear-inside-done = Das ist alles darin

ask-gear-ends = Welche Steckdosen sind am anderen Ende?
    .why = { $about }. Jede ankreuzen, und wie viele.
    .help = Sehen Sie sich die Löcher an und den Namen, der daneben eingeprägt ist. Kreuzen Sie jede Form an. Sind es mehr gleiche, kreuzen Sie an, wie viele es sind.
    .row = Enden
pick-gear-ends-done = Das sind alle Enden

ask-gear-jacket = Was ist auf das Kabel gedruckt?
    .why = { $about }. Etwa SJTW 12/3; 12/3 allein genügt.
    .help =
        Der Aufdruck wiederholt sich in kurzen Abständen am Mantel. 12/3 heißt drei Adern der Größe 12. Eine kleinere Zahl (AWG) ist eine dickere Ader. Die Buchstaben nennen den Mantel: Mit einem W darin darf er draußen benutzt werden.
        Auf metrischen Kabeln steht 3G1.5 oder 3x2.5 mm2.
        Wenn Sie es nicht lesen können, tippen Sie unbekannt. Wir nehmen dann ein dünnes Kabel für drinnen an und sagen es.
    .row = Aufdruck

ask-gear-length = Wie lang ist es?
    .why = { $about }. Etwa { example-length }.
    .help = Ihre ausgestreckten Arme reichen etwa so weit, wie Sie groß sind: Zählen Sie, wie oft das in die Länge des Kabels geht. Müssen Sie es noch kaufen, geben Sie an, wie weit es reichen muss.
    .row = Länge

ask-gear-outdoor = Ist es für draußen gekennzeichnet?
    .why = { $about }. Sonne und Wasser schaden dem Mantel.
    .help = Suchen Sie „outdoor“ (für draußen) auf dem Anhänger oder ein W in den Buchstaben am Mantel.
    .row = Für draußen

ask-gear-coiled = Bleibt etwas davon aufgerollt?
    .why = { $about }. Aufgerollt kühlt es nicht und kann schmelzen.
    .help = Legen Sie immer das ganze Kabel aus. Bleibt es auf einer Trommel oder auf einem Haufen, ist die Antwort ja.
    .row = Aufgerollt

ask-hot = Wurde es oder ein Stecker daran je heiß oder weich?
    .why = { $about }. Eine lose Verbindung wird heiß und kann Feuer auslösen.
    .help = Lauwarm ist bei viel Last normal. Konnten Sie die Hand nicht darauf lassen, oder ist es braun oder weich, antworten Sie ja. Dann sagen wir, dass Sie es nicht benutzen sollen.
    .row = Wurde heiß

ask-bought = Haben Sie es schon?
    .why = Wenn nicht, sagen wir, worauf Sie beim Kauf achten.
    .help = Antworten Sie Nein für das, was Sie erst kaufen wollen. Sagen Sie, was Sie davon wissen, und „Weiß ich nicht“ für das Übrige. Wir sagen dann, was auf der Packung stehen muss.
    .row = Schon da
pick-not-bought = Noch nicht gekauft

ask-gear-gfci = Hat es die Tasten TEST und RESET?
    .why = { $about }. Dann ist ein GFCI eingebaut.
    .help = Ein kleiner Kasten am Kabel mit zwei Tasten und den Buchstaben GFCI.
    .row = Stromschlag-Schutz

ask-gear-listed = Ist der Kasten aus der Fabrik und zugelassen?
    .why = { $about }. Einem selbst gebauten fehlt vielleicht, was Sie schützt.
    .help = Suchen Sie auf seinem Etikett das Zeichen eines Prüflabors. Ein Kasten, den jemand selbst gebaut hat, ist nicht zugelassen, so gut er auch gebaut ist.
    .row = Fabrik, zugelassen

ask-gear-bond = Ist innen Neutralleiter mit Schutzleiter verbunden?
    .why = { $about }. Steht in den Papieren. Nicht öffnen.
    .help = Der Neutralleiter führt den Strom zurück. Der Schutzleiter ist zum Schutz da. Suchen Sie „neutral bonded“ (verbunden) oder „isolated neutral“ (getrennt) in seinen Papieren. Öffnen Sie ihn nicht, um es herauszufinden. Wenn Sie es nicht wissen, sagen wir, was daraus folgt.
    .row = Innen verbunden

ask-gear-from = Woran ist es angeschlossen?
    .why = { $about }. Wenn Sie wählen können: dem Generator am nächsten.
    .help = Nur freie Steckdosen, in die der Stecker passt, werden gezeigt. Gibt es keine oder wird es nicht benutzt, wählen Sie „Nichts“.
    .row = Angeschlossen an
pick-gear-from-none = Nichts: Wir benutzen es nicht

ask-gear-color = Welche Farbe hat es?
    .why = { $about }. Sie steht auf dem Etikett.
    .help = Auf einem Platz liegen viele Kabel. An der Farbe findet jeder das richtige. Hat es keine klare Farbe, kleben Sie Band in einer Farbe um beide Enden, und wählen Sie diese. Oder wählen Sie „Etwas anderes“, und tippen Sie ein eigenes Wort.
    .row = Farbe
pick-gear-color-orange = Orange
pick-gear-color-yellow = Gelb
pick-gear-color-green = Grün
pick-gear-color-black = Schwarz
pick-gear-color-blue = Blau
pick-gear-color-red = Rot
pick-gear-color-gray = Grau
pick-gear-color-white = Weiß
pick-gear-color-brown = Braun
pick-gear-color-own = Etwas anderes: Ich tippe es ein
pick-gear-color-none = Keine davon: kein Name

ask-gear-name = Wie nennen Sie es?
    .why = { $about }. Das steht auf dem Etikett, zum Unterscheiden: gestreift.
    .help = Buchstaben und Ziffern, - und _. Der Name steht auf dem Etikett, damit Sie wissen, welches welches ist.
    .row = Name

ask-out-list = Welche Steckdosen hat der Kasten?
    .why = { $about }. Ankreuzen, und wie viele. Zwei hinter einem Schutzschalter: 1.
    .help = Kreuzen Sie jede Form mit der Zahl ihres Schutzschalters an. Sind es mehr gleiche, jede mit eigenem Schutzschalter, kreuzen Sie an, wie viele es sind. Zählen Sie Schutzschalter, nicht Löcher.
    .row = Steckdosen
pick-out-list-done = Das sind alle seine Steckdosen

ask-out-face = Welche Steckdosen, welche Zahl je Schutzschalter?
    .why = { $about }.
    .help = Steckdosen derselben Form mit dem gleichen Schutzschalter sind eine Art.
    .row = Form

ask-out-count = Wie viele so, jede mit eigenem Schutzschalter?
    .why = { $about }. Zwei hinter einem Schutzschalter sind 1.
    .help = Zählen Sie Schutzschalter, nicht Löcher.
    .row = Wie viele

ask-out-breaker = { $about }: Zahl auf jedem Schutzschalter?
    .why = Etwa 20 A. Ist keiner da, tippen Sie keine.
    .help = Ein Verteilerkabel ohne Schutzschalter schützt nichts: Tippen Sie keine. Gibt es Schutzschalter ohne lesbare Zahl, tippen Sie unbekannt.
    .row = Schutzschalter
pick-out-breaker-none = kein Schutzschalter

ask-out-gfci = { $about }: Tasten TEST und RESET?
    .why = Gemacht, um bei einem Schlag abzuschalten.
    .help = An der Steckdose selbst oder an ihrem Schutzschalter, mit den Buchstaben GFCI. Haben nur manche sie, antworten Sie nein.
    .row = Stromschlag-Schutz

ask-out-places = Wie sind sie angeordnet?
    .why = { $about }. So heißen sie auf Etikett und Karte.
    .help = Nebeneinander heißen sie links und rechts, übereinander oben und unten. Bei Nummern wählen Sie beim Aufkleben der Etiketten, welche die 1 ist.
    .row = Anordnung
pick-out-places-across = Nebeneinander: links, rechts
pick-out-places-down = Übereinander: oben, unten
pick-out-places-number = Nach Nummer: 1, 2

ask-out-leg = { $about }: Welche Hälfte des Generators?
    .why = A oder B; oder je ein Buchstabe, A A B B.
    .help = Ein Generator für 120/240 V hat zwei Hälften, A und B. Ein Kasten verteilt seine Steckdosen auf beide. Seine Papiere sagen, welche auf welcher Hälfte ist; öffnen Sie den Kasten nicht. Ein Buchstabe gilt für alle. Oder tippen Sie für jede einen, von der ersten bis zur letzten: A A B B. Wenn Sie es nicht wissen, nehmen wir an, dass alle auf A sind: Dann haben sie zusammen die kleinste Leistung.
    .row = Hälfte

ask-out-wire = { $about }: Welchen Leiterquerschnitt nennen die Papiere?
    .why = Etwa 12 AWG. Den Kasten nicht öffnen.
    .help = Das sagen nur seine Papiere. AWG ist die Größe: Eine kleinere Zahl ist dicker. Öffnen Sie den Kasten nicht, um es herauszufinden.
    .row = Leitung

# ---- Die Formen, kurz

face-5-15R = Haushalt
    .also = normal wand flach
face-5-20R = Haushalt, T
    .also = normal wand quer
face-TT-30R = Wohnwagen
    .also = wohnmobil anhänger dick
face-L5-20R = Dreh, 3
    .also = rund verriegelt drei schlitze 3 schlitze
face-L5-30R = Dreh, 3
    .also = rund verriegelt drei schlitze 3 schlitze
face-L14-20R = Dreh, 4
    .also = rund verriegelt vier schlitze 4 schlitze
face-L14-30R = Dreh, 4
    .also = rund verriegelt vier schlitze 4 schlitze
face-14-30R = Gerade, 4
    .also = groß eckig trockner dick vier schlitze 4 schlitze
face-14-50R = Gerade, 4
    .also = groß eckig wohnmobil dick vier schlitze 4 schlitze
face-6-20R = Nur 240 V
    .also = quer
face-1-15R = Ohne Erde
    .also = alt zwei schlitze flach

shape-5-15R = Haushalt, 15 A (5-15R)
shape-5-20R = Haushalt mit T-Schlitz, 20 A (5-20R)
shape-TT-30R = Wohnwagen, 30 A (TT-30R)
shape-L5-20R = Dreh, 3 Schlitze, 20 A (L5-20R)
shape-L5-30R = Dreh, 3 Schlitze, 30 A (L5-30R)
shape-L14-20R = Dreh, 4 Schlitze, 20 A (L14-20R)
shape-L14-30R = Dreh, 4 Schlitze, 30 A (L14-30R)
shape-14-30R = Gerade, 4 Schlitze, 30 A (14-30R)
shape-14-50R = Gerade, 4 Schlitze, 50 A (14-50R)
shape-6-20R = Nur 240 V, 20 A (6-20R)
shape-1-15R = Haushalt, ohne Erde, 15 A (1-15R)
shape-5-15P = Haushalt, 3 Stifte, 15 A (5-15P)
shape-5-20P = Ein Stift quer, 20 A (5-20P)
shape-TT-30P = Wohnwagen, 30 A (TT-30P)
shape-L5-20P = Dreh, 3 Stifte, 20 A (L5-20P)
shape-L5-30P = Dreh, 3 Stifte, 30 A (L5-30P)
shape-L14-20P = Dreh, 4 Stifte, 20 A (L14-20P)
shape-L14-30P = Dreh, 4 Stifte, 30 A (L14-30P)
shape-14-30P = Gerade, 4 Stifte, 30 A (14-30P)
shape-14-50P = Gerade, 4 Stifte, 50 A (14-50P)
shape-6-20P = Nur 240 V, 20 A (6-20P)
shape-1-15P = Haushalt, ohne Erde, 15 A (1-15P)

drawn-faces =
    Der Name bei den Löchern entscheidet.
    Aus dem Gedächtnis gezeichnet; bei
    Ihnen stehen sie vielleicht kopf.
    {" "}
    {" "}5-15R   5-20R   TT-30R  6-20R
    {" "}|   |  -|   |   /   \   |   -
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30R  L14-30R 14-50R  1-15R
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20R, L14-20R: wie 30, nur kleiner.
# The same for plugs, seen from their blades: left and right are changed.
drawn-plugs =
    Der Name zwischen den Stiften gilt.
    Aus dem Gedächtnis gezeichnet; bei
    Ihnen stehen sie vielleicht kopf.
    {" "}
    {" "}5-15P   5-20P   TT-30P  6-20P
    {" "}|   |   |   -   /   \   -   |
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30P  L14-30P 14-50P  1-15P
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20P, L14-20P: wie 30, nur kleiner.

# ---- Die Übersicht

ask-review = Stimmt das?
    .why = Zeile wählen und ändern. Bei ! haben wir das Schlimmste angenommen.
    .help = Jede Zeile ist ein Teil Ihres Plans. Wählen Sie eine, um ihre Antworten zu sehen und zu ändern. Wo ein ! steht, haben wir den gefährlicheren Fall angenommen, und die Prüfung sagt es. Die Zahl bei „Nachsehen“ zählt die Fragen dazu.
pick-review-check = Diesen Plan prüfen
# $count: how many questions that is.
pick-review-look = Nachsehen, was wir nicht wissen ({ $count })
pick-review-add = Steckdose, Gerät oder Kabel dazu
pick-review-add-outlet = Eine Steckdose dazu
pick-review-add-load = Ein Gerät dazu
pick-review-add-gear = Kabel, Adapter oder Kasten dazu
pick-review-quit = Vorerst aufhören, Antworten behalten
pick-review-stay = Mit dem Plan weitermachen

ask-review-add = Was soll dazu?
    .why = Die Fragen dazu kommen gleich.
    .help = Esc geht zum ganzen Plan zurück.

ask-review-quit = Vorerst aufhören?
    .why = Wir behalten Ihre Antworten.
    .help = Esc führt zum ganzen Plan zurück.

ask-review-part = { $about }: Was soll sich ändern?
    .why = Eine Zeile wählen, um neu zu antworten.
    .help = Esc geht zum ganzen Plan zurück.
pick-review-back = Hier nichts mehr: zurück

part-generator = Generator
part-fuel = Kraftstoff und Lärm
part-outlets = Stromschlag-Schutz
part-site = Platz
part-load = Etwas anderes
part-out = Steckdosen von { $box }

# ---- Zwischen den Fragen

# A bare number, with the unit it was taken in.
note-unit = Verstanden als { $answer }.
note-added = Dazugekommen ({ $count }): { $things }.
# Of generators that run as one.
note-joined = Wir rechnen { $rated } für jeden Generator. Gilt das für alle zusammen, gehen Sie zurück und geben Sie die Watt von einem ein.
note-load-left = Bisher { $all } von { $rated } genannt. { $left } übrig, weniger in großer Höhe und bei Hitze.
note-load-named = Bisher { $all } genannt. Was der Generator gibt, ist nicht bekannt.
note-load-turns = { $all } genannt, der Generator gibt { $rated }: nicht alles zugleich. Es geht abwechselnd.
note-load-cannot-start = { $load }: Zum Starten braucht es einen Augenblick lang { $starting }. Der Generator gibt höchstens { $peak }: Er kann es nicht starten.
note-load-too-large = { $load }: Das allein braucht { $this }. Der Generator gibt { $rated }: Er kann es nicht betreiben.

note-danger =
    { $signal }: { $title }
    Warum: { $why }
    Tun: { $fix }
# Safety. The same where the title says already what we do not know.
note-danger-unknown =
    { $signal }: { $title }
    Tun: { $fix }
# $more: the parts that it was not told of before; $named: whether the title names them.
note-danger-also = { $named ->
        [yes] { $signal }, auch: { $title }
       *[no] { $signal }, auch für { $more }: { $title }
    }
# It was a danger, and is not gone.
note-danger-milder =
    Jetzt nur noch { $signal }: { $title }
    Tun: { $fix }
note-danger-gone = Diese Gefahr ist weg: { $title }
# Only because these parts are in no outlet now; $named: whether the title names them.
note-danger-unplugged = { $named ->
        [yes] Nicht eingesteckt, also vorerst keine Gefahr: { $title }
       *[no] Jetzt nicht eingesteckt: { $more }. Also vorerst keine Gefahr: { $title }
    }

picture-set = { $name }
picture-place = - { $id } ({ $shape }): { $amps }
picture-refused = - { $id } ({ $shape }): nicht benutzen
picture-guarded = - { $id } ({ $shape }): nur ein GFCI-Kabel
picture-guarded-ahead = - { $id } ({ $shape }): erst ein GFCI-Kabel davor stecken
picture-load = * { $load }
picture-unplaced = Bis jetzt keine Steckdose für: { $ids }
picture-loose = Nicht angeschlossen: { $ids }

note-unknown = Als nicht bekannt notiert.
# Safety. $part: the id of a cord or box, and what it is; $rest: what is plugged in past it, and $count how many.
note-unplugged = { $part }: Im Plan bleibt es ausgesteckt{ $count ->
        [0] {""}
       *[other] , und nichts danach hat Strom: { $rest }
    }. Deshalb haben wir es nicht geprüft. Benutzen Sie es nicht, bis Sie es wissen. Dann wählen Sie seine Zeile auf der letzten Seite.
# It fits one place, and nobody is asked. $part, $place: ids.
note-plugged = „{ $part }“ steckt in „{ $place }“: Keine andere freie Steckdose passt.
# Safety.
note-fits-nowhere = In keine Steckdose bisher passt der Stecker von „{ $part }“. Kommt keine dazu, lassen Sie ihn ausgesteckt. Feilen, biegen oder schneiden Sie nie an einem Stecker.
# Safety. $adapters: one or more of the list, each in quotation marks.
note-fits-by-adapter = In keine Steckdose bisher passt der Stecker von „{ $part }“. Mit diesem Adapter geht es: { $adapters }. Nehmen Sie nur einen, den ein Prüflabor zugelassen hat, und kreuzen Sie ihn bei Ihren Kabeln an. Feilen, biegen oder schneiden Sie nie an einem Stecker.
# What was read on a cord. $wire: 12 AWG; $count: how many wires, or unknown.
note-jacket = Gelesen: Leiter { $wire }{ $count ->
        [unknown] {""}
       *[other] , { $count } Adern
    }{ $outdoor ->
        [yes] , für draußen
        [no] , für drinnen
       *[unknown] {""}
    }.

note-first-line = Wir haben nur die erste Zeile davon genommen.
note-not-bought = Am Ende sagen wir, worauf Sie beim Kauf achten.
plain-list-long = { $count } zur Auswahl. Tippen Sie einen Teil eines Namens, um die passenden zu sehen.
plain-list-found = Diese passen. Tippen Sie eine Nummer oder mehr vom Namen.
plain-not-text = Einen Buchstaben dieser Zeile können wir nicht lesen. Tippen Sie sie noch einmal.
plain-keys = Nummer oder Teil eines Namens tippen. ?: Hilfe, <: zurück
plain-many-keys = Nummern oder Namen tippen, durch Komma getrennt. 2 x 5 ist zweimal Nummer 5. ?: Hilfe, <: zurück
plain-line-keys = ?: Hilfe, <: zurück
plain-row = { $number }. { $text }
plain-default = Enter: { $text }

reject-choice = Bitte wählen Sie eines aus der Liste.
reject-nothing-inside = Gar nichts? Läuft drinnen nichts, drücken Sie noch einmal Enter.
reject-mark-one = Kreuzen Sie mindestens eines an.
reject-ready-made = Eine fertige Liste zählt einmal. Haben Sie etwas zweimal, kreuzen Sie dieses Gerät mit 2 an.
reject-yes-no = Bitte antworten Sie ja oder nein.
reject-empty-text = Bitte tippen Sie eine Zahl mit Einheit ({ $units }).
reject-no-number = Erst eine Zahl, dann ihre Einheit ({ $units }).
reject-no-unit = { $found } was? Ergänzen Sie die Einheit: { $units }.
reject-unknown-unit = „{ $found }“ passt hier nicht. Nehmen Sie: { $units }.
reject-two-readings = { $found } kann { $decimals } oder { $thousands } heißen. Bitte tippen Sie eines davon.
reject-out-of-range = { $field }: Möglich ist { $least } bis { $most }. Sehen Sie nach, ob eine Ziffer verrutscht oder die Einheit falsch ist.
reject-zero = Es muss mehr als null sein.
reject-ratio = Eine Zahl von { $least } bis { $most }, etwa 0,8.
reject-count = Eine ganze Zahl von { $least } bis { $most }.
reject-ident = Buchstaben und Ziffern, - und _, keine Leerzeichen, höchstens 40.
reject-ident-taken = Ein anderes Teil heißt schon so. Bitte einen anderen Namen.
reject-name-empty = Bitte tippen Sie einen Namen.
reject-name-long = Höchstens { $most } Buchstaben, damit es auf ein Etikett passt.
reject-name-signs = Dieses Zeichen darf nicht in einem Namen stehen.
reject-name-letters = Wir haben keine Buchstaben, um { $characters } zu drucken. Nehmen Sie andere Buchstaben.
reject-wire = Eine Leitergröße, etwa 12 AWG oder 2,5 mm².
reject-jacket = Etwa 12/3, SJTW 12/3, 14 AWG oder 3G1.5; oder unbekannt.
reject-noise = Pegel, dann Abstand: 58 dBA in { example-noise-far }. Oder unbekannt.
reject-runtime = Ein Anteil, dann Stunden: 25 % 8,5 h, 100 % 3,1 h. Oder unbekannt.
reject-span = Von und bis: 22:00-06:00, oder 10pm-6am.
reject-draw = Watt, Ampere oder PS: 1500 W, 12,5 A, 1/2 hp.
reject-draw-code = Der Kennbuchstabe ist ein Buchstabe von A bis V: 1/2 hp code G.
reject-start = Watt oder Ampere: 2400 W, 39 A oder LRA 39. Oder unbekannt.
reject-plug-amps = Das sind { $amps }. Sein Stecker, { $plug }, ist für { $rating } gemacht. Kein Hersteller verkauft so ein Gerät: Der Stecker oder die Zahl stimmt nicht. Lesen Sie sein Schild noch einmal, und sehen Sie sich den Stecker an.
reject-legs = A oder B für alle, oder je ein Buchstabe: A A B B. Oder unbekannt.
reject-legs-count = Ein Buchstabe für alle, oder { $count } Buchstaben, für jede einer.
reject-peak = Die Spitze liegt nie unter der Dauerleistung, { $rated }. Oder tippen Sie unbekannt.
reject-starting = Zum Starten braucht es nie weniger als im Betrieb, { $running }. Oder tippen Sie unbekannt.
reject-trips = Das liegt über seiner Zahl, { $marked }. Zu früh heißt darunter.
reject-shares = Ein Schutzschalter hat eine einzige Zahl. Hier ist sie { $own }, dort { $other }. Gehen Sie zurück und berichtigen Sie sie, oder wählen Sie einen anderen.
reject-unknown-shape = Vergleichen Sie es mit diesen Zeichnungen. Ist keine davon so, schließen Sie nichts daran an, und nehmen Sie es nicht in den Plan auf. Kleben Sie es zu, und schreiben Sie darauf: GESPERRT. Dann wählen Sie eines, das Sie kennen, oder gehen Sie weiter. Kennen Sie keines, fragen Sie jemanden, der sie kennt: Strg-C hört auf und behält Ihre Antworten.
reject-no-unknown = Ohne diese Antwort geht es nicht weiter. ? sagt, wo Sie sie finden.
reject-no-skip = Hier ist eine Antwort nötig. ? hilft.
reject-first = Das ist die erste Frage. Strg-C hört auf und behält Ihre Antworten.
reject-full = Mehr fasst ein Plan nicht.

interview-no-terminal = die Fragen brauchen ein Terminal oder Antworten, und hier gibt es beides nicht
interview-no-terminal-help = Prüfen Sie stattdessen eine Plandatei: tallywatt check PLAN. Oder geben Sie die Antworten, eine je Zeile: tallywatt --answers DATEI.
interview-too-large = { $path } hat mehr Teile, als die Fragen durchgehen können
interview-too-large-help = Ändern Sie es mit einem Texteditor, dann: { $command }.
interview-saved = { $path } gespeichert. Zum Drucken: { $command }
interview-goes-on = Weiter mit den Änderungen an diesem Plan, die noch nicht gespeichert waren.
interview-no-home = es gibt keinen Ordner dafür; nennen Sie einen in TALLYWATT_DATA
interview-terminal = das Terminal antwortet nicht mehr: { $reason }
interview-not-kept = Wir können Ihre Antworten unterwegs nicht aufheben ({ $reason }). Hören Sie vor dem Ende auf, sind sie weg. Am Ende können Sie den Plan noch speichern.
interview-draft-lost = Wir können den Entwurf { $path } nicht lesen. Er bleibt, wie er ist.
interview-stopped-lost = Abgebrochen. Ihre Antworten wurden nicht aufgehoben.
interview-kept = Ihre Antworten bleiben erhalten, im Entwurf „{ $draft }“.
interview-stopped = aufgehört; nichts hat sich geändert
interview-resume = Starten Sie tallywatt wieder, um dort weiterzumachen.
interview-resume-question = Mit einem unfertigen Plan weitermachen?
interview-resume-why = Jeder bleibt erhalten, bis er gedruckt ist.
interview-resume-help = Wählen Sie einen mit seiner Nummer oder dem Anfang seiner Zeile, und machen Sie dort weiter, wo Sie aufgehört haben. Was Sie liegen lassen, bleibt erhalten.
interview-resume-row = { $draft }, { $date }: { $name }, { $age }
interview-resume-row-bare = { $draft }, { $date }, { $age }
interview-age-minutes = { $count ->
        [0] gerade eben
        [one] vor 1 Minute
       *[other] vor { $count } Minuten
    }
interview-age-hours = { $count ->
        [one] vor 1 Stunde
       *[other] vor { $count } Stunden
    }
interview-age-days = { $count ->
        [one] gestern
       *[other] vor { $count } Tagen
    }
interview-resume-new = Einen neuen Plan anfangen

interview-effect = Was Ihre Änderung bewirkt hat:
interview-effect-gone = - weg: { $signal }, { $title }
interview-effect-new = - neu: { $signal }, { $title }
interview-effect-none = - die Befunde sind dieselben wie vorher
interview-file-changed = { $path } wurde inzwischen von jemand anderem geändert. Ihre Änderungen kommen in die Datei, wie sie jetzt ist. Bitte prüfen Sie sie noch einmal.
interview-after = Was nun?
    .why = Was zuerst zu tun ist, steht oben.
    .none = Drucken Sie ihn, und kleben Sie die Etiketten auf, bevor Sie etwas einstecken.
interview-after-save = Die Plandatei speichern
interview-after-print = Etiketten, Karte und Listen drucken
interview-after-look = Nachsehen, was wir nicht wissen
interview-after-all = Alles zeigen, was wir gefunden haben
interview-after-mend = Die einfachsten Änderungen zeigen
interview-after-take = Änderungen einzeln übernehmen
interview-take = Welche Änderungen übernehmen Sie in den Plan?
    .why = Alle sind angekreuzt. Kreuz weg bei denen, die Sie nicht machen.
interview-take-done = Das Angekreuzte übernehmen
interview-after-change = Etwas ändern
interview-after-leave = Vorerst aufhören, Antworten behalten
interview-folder = In welchen Ordner sollen sie?
    .why = Fehlt er, wird er angelegt. Auch der Plan kommt dorthin.
    .help = Tippen Sie einen Namen, etwa: drucke. Enter nimmt den gezeigten Namen. Ein Ordner mit einem anderen Plan wird nicht genommen.
interview-folder-taken = In { $dir } ist schon ein Plan. Bitte nennen Sie einen anderen Ordner.

id-regular = normal
id-camper = camper-dose
id-twist = dreh
id-large = gross
id-outlet = dose
id-cord = kabel
id-box = kasten
id-left = links
id-right = rechts
id-top = oben
id-bottom = unten
id-middle = mitte
id-load = gerät
id-our-camper = unser-wohnwagen
id-regular-cord = normal-kabel
id-twist-cord = dreh-kabel
id-four-wire-cord = vierader-kabel
id-camper-cord = camper-kabel
id-three-way = dreifach-kabel
id-strip = leiste
id-splitter = verteilerkabel
id-twist-splitter = dreh-verteilerkabel
id-four-wire-splitter = vierader-verteilerkabel
id-adapter = adapter
id-camper-adapter = camper-adapter
id-regular-adapter = normal-adapter
id-twist-adapter = dreh-adapter
id-twist-box = dreh-kasten
id-four-wire-box = vierader-kasten
id-camper-box = camper-kasten
id-large-box = gross-kasten
# A cord or box named by its color. $color and $word are English words, such as red and box, for the ending of the
# color; $called: what it is called without one.
id-colored = { $called }-{ $color ->
    [orange] orange
    [yellow] gelb
    [green] grün
    [black] schwarz
    [blue] blau
    [red] rot
    [gray] grau
    [white] weiß
   *[brown] braun
}
