# Was an einer Plandatei nicht stimmen kann, und an Dateien überhaupt. Jede Nachricht ist ein Titel; `help`
# sagt, was zu tun ist, und `help-near` sagt es, wenn gut zu raten ist, was gemeint war.

plan-problem = Problem
plan-help = Abhilfe
plan-first-here = zuerst hier angegeben
plan-nothing-done = { $count ->
    [one] Ein Problem in { $path }. Nichts wurde geprüft oder gedruckt.
   *[other] { $count } Probleme in { $path }. Nichts wurde geprüft oder gedruckt.
}
plan-more = { $count ->
    [one] Und noch eines, nicht gezeigt.
   *[other] Und noch { $count }, nicht gezeigt.
}
list-or = { $first } oder { $last }

# Arten von Werten, wie in „Es sollte ... sein“.
plan-type-text = Text in Anführungszeichen
plan-type-quantity = eine Zahl mit Einheit, in Anführungszeichen
plan-type-whole = eine ganze Zahl
plan-type-number = eine Zahl
plan-type-yes-no = true oder false
plan-type-yes-no-unknown = true, false oder "unknown"
plan-type-date = ein Datum oder eine Zeit ohne Anführungszeichen
plan-type-list = eine Liste in eckigen Klammern
plan-type-table = eine Tabelle
plan-type-tables = eine Liste von Tabellen, jede unter ihrer eigenen Überschrift

# Das TOML selbst.
plan-duplicate-key = Das steht zweimal da
    .help = Jeder Schlüssel darf unter einer Überschrift nur einmal stehen. Behalten Sie einen von beiden. Ein zweites Kabel, ein zweiter Kasten, eine zweite Steckdose oder ein zweites Gerät beginnt mit einer eigenen Überschrift, etwa [[cord]].
plan-unquoted = Dieser Text hat keine Anführungszeichen
    .help = Setzen Sie ihn in gerade doppelte Anführungszeichen. Nur ganze Zahlen, true und false stehen ohne.
plan-bad-string = Die Anführungszeichen oder der Text darin sind nicht lesbar
    .help = Beginnen und enden Sie in derselben Zeile mit einem geraden doppelten Anführungszeichen. Darin schreiben Sie ein Anführungszeichen als \" und einen umgekehrten Schrägstrich als \\.
plan-bad-number = Diese Zahl ist nicht lesbar
    .help = Eine Zahl mit Einheit, eine Form oder eine Zeit steht in Anführungszeichen, etwa "2800 W", "5-20R" oder "07:00-07:20". Eine Zahl ohne Anführungszeichen ist etwa 2 oder 0.8.
plan-no-equals = Hier fehlt ein Gleichheitszeichen
    .help = Schreiben Sie einen Schlüssel, ein Gleichheitszeichen und einen Wert, etwa: coiled = false
plan-no-value = Hinter dem Gleichheitszeichen steht nichts
    .help = Schreiben Sie den Wert dahinter, "unknown", wenn Sie ihn nicht wissen, oder löschen Sie die Zeile.
plan-bad-list = Diese Liste ist nicht lesbar
    .help = Schreiben Sie sie in eckige Klammern, mit Kommas dazwischen, etwa: ends = ["5-15R", "5-15R"]
plan-bad-inline = Der Teil in geschweiften Klammern ist nicht lesbar
    .help = Schreiben Sie ihn in geschweifte Klammern, mit Kommas dazwischen, etwa: motor = {"{"} hp = "1/2", code = "G" {"}"}
plan-bad-heading = Diese Überschrift ist nicht lesbar
    .help = Eine Klammer auf jeder Seite für [site] und [generator], zwei für alles, was es mehrfach geben kann, etwa [[cord]].
plan-bad-key = Dieser Schlüssel ist nicht lesbar
    .help = Ein Schlüssel hat nur Buchstaben, Ziffern und Unterstriche und steht vor einem Gleichheitszeichen.
plan-extra = In dieser Zeile ist etwas übrig
    .help = Ein Schlüssel und ein Wert je Zeile. Eine Zahl mit Einheit steht in Anführungszeichen, etwa "2800 W". Eine Bemerkung beginnt mit #.
plan-too-deep = Zu viele Klammern in Klammern
    .help = Kein Plan braucht mehr als zwei. Suchen Sie eine, die nicht geschlossen ist.
plan-bad-character = Hier steht ein Zeichen, das kein Plan haben kann
    .help = Löschen Sie es, und tippen Sie die Zeile noch einmal.
plan-syntax = Diese Zeile ist nicht lesbar
    .help = Schreiben Sie einen Schlüssel, ein Gleichheitszeichen und einen Wert, etwa: rated = "2800 W"

# Die Datei als Ganzes.
plan-empty = In dieser Datei steht nichts
    .help = Starten Sie tallywatt ohne weitere Angaben: Es fragt, was es wissen muss, und schreibt den Plan.
plan-no-format = Die Datei sagt nicht, welches Format sie hat
    .help = Schreiben Sie oben in die Datei: format = 1
plan-newer-format = Diesen Plan hat ein neueres tallywatt geschrieben: Format { $found }, und dieses liest Format { $ours }
    .help = Nehmen Sie das neuere tallywatt. Ändern Sie nicht einfach die Zahl: Der Rest könnte falsch gelesen werden, und eine falsche Zahl kann hier jemanden verletzen.
plan-no-such-format = Es gibt kein Format { $found }
    .help = Schreiben Sie: format = { $ours }
plan-too-many = Es sind { $found } { $what }, aber ein Plan darf nur { $most } haben
    .help = Machen Sie für jeden Generator einen Plan, oder lassen Sie weg, was nie benutzt wird.
    .parts = Teile
    .loads = Geräte
plan-missing-table = Der Plan sagt nichts über { $table }
    .help = Fügen Sie einen Teil hinzu, der mit [{ $table }] beginnt.

# Schlüssel und Werte.
plan-missing-key = { $key } fehlt hier
    .help = Fügen Sie eine Zeile hinzu, etwa: { $example }
plan-unknown-key = "{ $found } = " bedeutet hier nichts
    .help = Hier darf stehen: { $allowed }.
    .help-near = Meinten Sie { $nearest }? Hier darf stehen: { $allowed }.
plan-unknown-heading = [{ $found }] bedeutet hier nichts
    .help = Hier darf stehen: { $allowed }.
    .help-near = Meinten Sie { $nearest }? Hier darf stehen: { $allowed }.
plan-wrong-type = { $key } ist hier { $found }
    .help = Es sollte { $wanted } sein.
    .help-near = Es sollte { $wanted } sein, etwa: { $example }
plan-unknown-not-allowed = { $key } darf nicht unbekannt sein
    .help = Ohne das lässt sich nichts ausrechnen. Sehen Sie auf dem Schild des Geräts nach, oder fragen Sie, wem es gehört.
    .help-near = Löschen Sie stattdessen die Zeile.
plan-empty-text = { $key } ist leer
    .help = Schreiben Sie etwas zwischen die Anführungszeichen, oder löschen Sie die Zeile.
plan-bad-text = { $key } ist zu lang zum Drucken oder hat Zeichen, die nicht gedruckt werden können
    .help = Nehmen Sie eine Zeile mit höchstens { $most } Zeichen.
plan-no-unit = { $key } hat keine Einheit: { $found } was?
    .help = Schreiben Sie es in Anführungszeichen mit Einheit, etwa "{ $example }". Einheiten: { $allowed }.
plan-unknown-unit = { $key } wird nicht in { $found } gemessen
    .help = Schreiben Sie eine Zahl, dann ihre Einheit. Einheiten: { $allowed }. Sehen Sie nach, ob ein Buchstabe in der Zahl steht.
plan-volt-amperes = { $key } ist in { $found } angegeben, und Voltampere sind keine Watt
    .help = Suchen Sie die Watt auf dem Schild des Geräts. Bei einem Gerät dürfen Sie stattdessen die Ampere angeben, als current = "12.5 A".
plan-no-number = { $key } hat keine Zahl: { $found }
    .help = Schreiben Sie eine Zahl und eine Einheit, etwa "{ $example }".
plan-no-plain-number = { $key } hat keine lesbare Zahl: { $found }
    .help = Schreiben Sie eine einfache Zahl, etwa "{ $example }".
plan-two-readings = { $key } kann zweierlei heißen: { $found }
    .help = Manche lesen { $decimals }, andere { $thousands }. Schreiben Sie "{ $decimals }" oder "{ $thousands }", je nachdem, was gemeint ist.
plan-out-of-range = { $key } kann nicht { $found } sein
    .help = Möglich ist { $least } bis { $most }. Sehen Sie nach, ob eine Ziffer verrutscht oder die Einheit falsch ist.
plan-wire-size = Keine Ader hat die Größe { $found }
    .help = Größen gehen von 0 bis 30 AWG, in ganzen Zahlen. Querschnitte in mm² gehen von 0.1 bis 400. Die Größe steht auf dem Mantel des Kabels.
plan-not-a-choice = { $key } kann nicht { $found } sein
    .help = Schreiben Sie eines davon: { $allowed }.
    .help-near = Meinten Sie { $nearest }? Schreiben Sie eines davon: { $allowed }.

plan-not-a-language = { $found } ist kein Kürzel einer Sprache
    .help = Schreiben Sie eines wie "en", "es", "fr-CA" oder "de", oder löschen Sie die Zeile.
plan-unknown-shape = Die Form { $found } kennen wir nicht
    .help = Formen für { $key }: { $allowed }.
    .help-near = Meinten Sie { $nearest }? Formen für { $key }: { $allowed }.
plan-wrong-half = { $found } ist eine Steckdose, und hier gehört ein Stecker hin
    .help = Ein Name mit P am Ende ist ein Stecker, mit Stiften; einer mit R am Ende ist eine Steckdose, mit Schlitzen. Hier wäre es { $meant }.
plan-wrong-half-receptacle = { $found } ist ein Stecker, und hier gehört eine Steckdose hin
    .help = Ein Name mit P am Ende ist ein Stecker, mit Stiften; einer mit R am Ende ist eine Steckdose, mit Schlitzen. Hier wäre es { $meant }.

plan-two-plugs = { $found } ist ein Stecker, und das Ende eines Kabels ist eine Steckdose
    .help = Wenn Sie die Steckdose meinten, schreiben Sie { $meant }. Ein Kabel mit einem Stecker an jedem Ende hat blanke Stifte unter Spannung und kann töten: Benutzen Sie es nicht, und bauen Sie keines.
plan-bad-hours = { $key } kann nicht { $found } sein
    .help = Schreiben Sie zwei Uhrzeiten mit 24 Stunden und einem Bindestrich dazwischen, etwa "18:00-22:00". Sie dürfen über Mitternacht gehen, etwa "22:00-06:00".
plan-motor-code = Kein Motor hat den Kennbuchstaben { $found }
    .help = Es ist ein Buchstabe von A bis V, ohne I, O und Q, hinter dem Wort „code“ auf dem Schild des Motors. Lassen Sie ihn weg, wenn keiner da ist.
plan-two-draws = { $second } sagt noch einmal, was { $first } sagt
    .help = Behalten Sie das, was auf dem Schild steht, und löschen Sie das andere.
plan-place-for-no-plug = { $place } nennt eine Steckdose, aber { $plug } sagt, dass kein Stecker darin ist
    .help = Sehen Sie am Generator nach. Steckt ein Brückenstecker N-PE darin, schreiben Sie { $plug } = true. Steckt keiner darin, entfernen Sie die Zeile { $place }.
plan-bonding-plug-elsewhere = „{ $key }“ nennt „{ $found }“, aber ein Brückenstecker N-PE gehört nur in eine Haushaltssteckdose am Generator
    .help = Der Generator in diesem Plan hat keine Haushaltssteckdose: Entfernen Sie die Zeile. Steckt der Stecker in einem Kabel, Kasten oder Adapter, stellen Sie den Motor ab und ziehen ihn dann heraus. Fragen Sie eine Elektrofachkraft, bevor Sie ihn benutzen.
    .help-near = Schreiben Sie eine dieser Steckdosen, wenn er darin steckt: { $allowed }. Steckt er in einem Kabel, Kasten oder Adapter, stellen Sie den Motor ab, ziehen ihn dann heraus und schreiben bonding_plug = false. Fragen Sie eine Elektrofachkraft, bevor Sie ihn benutzen.
plan-less-than = { $key } ist kleiner als { $other }: { $found } und { $least }
    .help = { $key } kann nicht das Kleinere von beiden sein. Sehen Sie nach, ob eine Ziffer verrutscht ist oder zwei Werte vertauscht sind.

# Namen.
plan-bad-id = { $found } kann kein Kürzel sein
    .help = Ein Kürzel hat bis zu 40 Buchstaben, Ziffern, Bindestriche und Unterstriche und beginnt mit einem Buchstaben oder einer Ziffer.
    .help-near = Ein Kürzel hat bis zu 40 Buchstaben, Ziffern, Bindestriche und Unterstriche und beginnt mit einem Buchstaben oder einer Ziffer. "{ $nearest }" ginge.
plan-duplicate-id = Das Kürzel { $id } ist vergeben: Zeile { $line } hat es schon
    .help = Jede Steckdose, jedes Kabel, jeder Kasten und jedes Gerät braucht ein eigenes Kürzel, denn es wird auf das Etikett gedruckt.
plan-sets-id = Das Kürzel { $id } ist vergeben: Berichte nennen so den Generator selbst
    .help = Jede Steckdose, jedes Kabel, jeder Kasten und jedes Gerät braucht ein eigenes Kürzel. Geben Sie diesem ein anderes.
plan-unknown-reference = „{ $key }“ nennt „{ $found }“, und im Plan gibt es keine solche Steckdose
    .help = Schreiben Sie das Kürzel einer Steckdose oder eines Kabels aus dem Plan, oder löschen Sie die Zeile, wenn es noch nicht angeschlossen ist.
    .help-near = Meinten Sie { $nearest }? Wenn es noch nicht angeschlossen ist, löschen Sie die Zeile.
plan-unknown-share = „{ $key }“ nennt „{ $found }“, und hier gibt es keine solche Steckdose
    .help = Schreiben Sie das Kürzel der Steckdose, deren Schutzschalter sie teilt, oder löschen Sie die Zeile, wenn sie einen eigenen hat.
    .help-near = Meinten Sie { $nearest }? Wenn sie einen eigenen Schutzschalter hat, löschen Sie die Zeile.
plan-not-a-receptacle = „{ $key }“ nennt „{ $found }“, und dort kann nichts angeschlossen werden
    .help = Schreiben Sie das Kürzel einer Steckdose oder eines Kabels.
    .help-near = Seine Steckdosen sind { $allowed }.
plan-plug-inside = „{ $camper }“ ist ein Wohnwagen, und was darin läuft, braucht hier keinen Stecker
    .help = Löschen Sie die Zeile mit dem Stecker.
plan-loop = { $through } sind im Ring ineinander gesteckt
    .help = Eines davon muss an einer Steckdose des Generators hängen, direkt oder über andere.
plan-loop-self = { $through } ist in sich selbst gesteckt
    .help = Es muss an einer Steckdose des Generators hängen, direkt oder über andere.
plan-bad-share = Sie kann sich den Schutzschalter von { $found } nicht teilen
    .help = Eine Steckdose teilt sich den Schutzschalter mit einer anderen desselben Generators oder Kastens, die selbst keinen teilt. Hier gibt es keine, also löschen Sie die Zeile.
    .help-near = Eine Steckdose teilt sich den Schutzschalter mit einer anderen desselben Generators oder Kastens, die selbst keinen teilt: { $allowed }.
plan-share-differs = Sie teilt sich den Schutzschalter von { $with } und sagt über diesen Schutzschalter etwas anderes
    .help = Geben Sie die Größe des Schutzschalters bei { $with } an, und löschen Sie sie hier.
plan-no-outlets-generator = Der Generator hat keine Steckdose
    .help = Fügen Sie jede seiner Steckdosen mit einem Teil hinzu, der mit [[generator.outlet]] beginnt.
plan-no-outlets-box = Dieser Kasten hat keine Steckdose
    .help = Fügen Sie darunter jede seiner Steckdosen mit einem Teil hinzu, der mit [[box.outlet]] beginnt.
plan-no-outlets-cord = Dieses Kabel hat keine Steckdose am Ende
    .help = Nennen Sie die Form jeder Dose, etwa: ends = ["5-15R"]

# Dateien.
store-not-found = Es gibt keine Datei { $path }
    .help = Sehen Sie nach, wie der Name geschrieben ist und in welchem Ordner Sie sind.
store-no-folder = Es gibt keinen Ordner für { $path }
    .help = Legen Sie zuerst den Ordner an, oder nennen Sie einen anderen.
store-not-allowed = { $path } dürfen Sie nicht ändern oder lesen
    .help = Sehen Sie die Zugriffsrechte an, oder nennen Sie eine andere Datei.
store-exists = Unter { $path } gibt es schon etwas
    .help = Nennen Sie einen anderen Ort. Was dort ist, ist unverändert.
store-not-ours = { $path } ist nicht so, wie wir es geschrieben haben, oder nicht von uns
    .help = Wir haben nichts geschrieben, damit nichts von Ihnen verloren geht. Nennen Sie einen anderen Ordner, oder verschieben Sie diese Datei.
store-changed = { $path } hat sich geändert, seit wir es gelesen haben
    .help = Wir haben nichts geschrieben. Geben Sie denselben Befehl noch einmal ein.
store-silent = { $path } ist eine Pipe, in die nichts schreibt
    .help = Starten Sie zuerst, was hineinschreibt, oder nennen Sie eine Datei.
store-full = Für { $path } ist kein Platz mehr auf dem Speicher
    .help = Machen Sie Platz, und versuchen Sie es noch einmal. Was vorher da war, ist unverändert.
store-is-a-folder = { $path } ist ein Ordner, keine Datei
    .help = Nennen Sie eine Datei.
store-not-a-folder = Ein Teil von { $path } ist eine Datei, kein Ordner
    .help = Nennen Sie einen anderen Ordner.
store-bad-name = { $path } kann kein Dateiname sein
    .help = Nennen Sie eine Datei in einem Ordner.
store-too-large = { $path } ist viel zu groß für einen Plan
    .help = Ein Plan ist ein kurzer Text. Ist das die richtige Datei?
store-not-text = { $path } ist kein reiner Text: Zeile { $line } hat Bytes, die kein UTF-8 sind
    .help = Speichern Sie ihn aus Ihrem Editor als reinen Text in UTF-8. Ist das die richtige Datei?
store-in-use = Ein anderes tallywatt hat { $path } offen
    .help = Beenden oder schließen Sie zuerst das andere.
store-cannot-read = { $path } kann nicht gelesen werden: { $reason }
    .help = Versuchen Sie es noch einmal, oder nennen Sie eine andere Datei.
store-cannot-write = { $path } kann nicht geschrieben werden: { $reason }
    .help = Versuchen Sie es noch einmal, oder nennen Sie einen anderen Ort. Was vorher da war, ist unverändert.
