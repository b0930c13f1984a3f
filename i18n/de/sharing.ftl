# Wer was teilt: Änderungen, die einen Plan in Ordnung bringen, und fragen vor dem Anschließen.

## Eine Änderung. $first ist das Teil oder Gerät.

change-more-distance = Stellen Sie den Motor ab und lassen Sie ihn abkühlen. Stellen Sie den Generator dann mindestens { $distance } von jedem Zelt, Fahrzeug, Fenster und jeder Tür entfernt auf. Richten Sie den Auspuff von Menschen weg. Sehen Sie nach, ob die Kabel noch reichen. Brauchen Sie ein längeres, schreiben Sie es in den Plan und prüfen Sie noch einmal.
change-no-building = Schließen Sie den Generator nicht an die Leitungen eines Gebäudes an. Schließen Sie Geräte direkt an ihn oder seinen Kasten an.
change-open-air = { $stands ->
        [enclosed] Läuft der Generator jetzt in etwas Geschlossenem: alle hinaus, rufen Sie von draußen { $call } an, und nur die Feuerwehr geht hinein und stellt ihn ab. Ist er aus und kalt, tragen Sie ihn ins Freie.
        [covered] Stellen Sie den Motor ab. Ist er abgekühlt, tragen Sie ihn ins Freie.
       *[other] Läuft der Generator jetzt in Zelt, Vorzelt, Fahrzeug oder Schuppen: alle hinaus, rufen Sie von draußen { $call } an, und nur die Feuerwehr geht hinein. Ist er aus und kalt, tragen Sie ihn ins Freie.
    } Stellen Sie ihn mindestens { $distance } von jedem Zelt, Fahrzeug, Fenster und jeder Tür entfernt auf, ringsum { $clear } frei, nichts darüber außer einem Dach weit oben, an allen Seiten offen. Richten Sie den Auspuff von Menschen weg. Sehen Sie nach, ob die Kabel noch reichen. Brauchen Sie ein längeres, schreiben Sie es in den Plan und prüfen Sie noch einmal.
change-alarm = Legen Sie in jedes Zelt und jeden Wohnwagen, in dem jemand schläft, einen Kohlenmonoxid-Melder mit Batterie.
change-uncoil = Rollen Sie das Kabel { $first } ab, und legen Sie es locker aus.
change-run-alone = Stellen Sie alle Motoren ab. Nehmen Sie ab, was die Generatoren verbindet, und lassen Sie einen allein laufen.
change-leave-home = Benutzen Sie { $first } hier nicht. Lassen Sie es zu Hause, oder stecken Sie es aus und räumen Sie es weg.
change-set-aside = Stecken Sie { $first } aus, mit allem, was daran hängt, und { $wrong ->
        [yes] benutzen Sie es nicht
       *[other] lassen Sie es ausgesteckt
    }.
change-unplug = Stecken Sie { $first } aus.
change-bonding-plug-out = Stellen Sie den Motor ab. Ziehen Sie den Brückenstecker N-PE heraus: Dieser Generator ist schon verbunden.
change-bonding-plug = Stellen Sie den Motor ab. Stecken Sie den Brückenstecker N-PE in „{ $to }“: Dort ist kein GFCI.
change-replug = Stecken Sie { $first } in „{ $to }“.
change-move = { $some ->
    [yes] Schließen Sie beliebige { $count } von { $total } { $first } an { $to } an, und lassen Sie den Rest ausgesteckt.
   *[no] Schließen Sie { $first } an { $to } an.
  }
change-by-the-card = der Stelle, die die Karte zeigt,
change-take-turns = Lassen Sie an { $to } { $first } und { $with } abwechselnd laufen: Stecken Sie das eine aus, bevor Sie das andere einstecken.
change-another-hour = Lassen Sie { $first } um { $to } laufen und nicht mehr um { $from }.
change-off-at-night = Lassen Sie { $first } nur um { $to } laufen, und schalten Sie es aus, bevor Menschen schlafen.
change-other-cord = Nehmen Sie statt des Kabels { $first } eines, das für draußen gekennzeichnet ist.{ $wires ->
        [none] {""}
        [4] {" "}Es braucht vier Adern, mit Neutralleiter und Schutzleiter.
       *[other] {" "}Es braucht Schutzkontakt und Schutzleiter.
    }{ $wire ->
        [none] {""}
       *[other] {" "}Es braucht { $wire } oder dicker.
    }{" "}{ cord-shapes }{ $length ->
        [none] {""}
       *[other] {" "}Es ist { $length } lang.
    }{ $gfci ->
        [yes] {" "}Es braucht einen GFCI (Tasten TEST und RESET).
       *[no] {""}
    }{" "}Wir nennen es auch { $first }.
change-as-the-card = Drucken Sie dann die Karte des geänderten Plans, und stecken Sie alles dort ein, wo sie es zeigt.
change-protected-cord = Stecken Sie ein zugelassenes GFCI-Kabel oder einen GFCI-Adapter dort ein, wo { $first } eingesteckt wird. Oder nehmen Sie ein zugelassenes Kabel mit GFCI, nicht dünner und nicht länger. { cord-shapes }
change-protected-outlet = Stecken Sie ein zugelassenes GFCI-Kabel oder einen GFCI-Adapter in { $sockets ->
        [one] eine Dose
       *[other] jede von { $sockets } Dosen
    } von { $first }. { cord-shapes }{ $named ->
        [yes] {" "}Wir nennen { $sockets ->
            [one] es
           *[other] sie
        } { $names }.
       *[no] {""}
    }
change-three-way-cord = Stecken Sie ein zugelassenes Kabel (mit Prüfzeichen) von { $length } in { $first }. Es braucht einen GFCI (Tasten TEST und RESET) und Leiter von 12 AWG und muss für draußen gekennzeichnet sein. { cord-shapes }{ $named ->
        [yes] {" "}Wir nennen es { $names }.
       *[no] {""}
    } Eine kleinere AWG-Zahl ist ein dickerer Leiter.
change-smaller-appliance = { $starts ->
    [yes] Nehmen Sie statt { $first } ein Gerät mit { $power } oder weniger im Betrieb und { $starting } oder weniger beim Starten. Stecken Sie das mit { $old } nicht ein.
   *[no] Nehmen Sie ein Gerät mit { $power } oder weniger statt { $first }, nicht das mit { $old }.
  }{ $apart ->
    [yes] {" "}Es wird fern vom Generator gebraucht: Bringen Sie es nicht dorthin.
   *[no] {""}
  }
change-box-for-splitter = { $length ->
        [none] Nehmen Sie statt { $first } einen fabrikgebauten, zugelassenen Kasten (mit Prüfzeichen).
       *[other] Nehmen Sie statt { $first } ein zugelassenes Kabel von { $length } mit { $wire }, für draußen gekennzeichnet. Sein Stecker und seine Dose haben die Form des Einspeisesteckers am Kasten. Wir nennen es { $names }. Stecken Sie an sein Ende einen fabrikgebauten, zugelassenen Kasten (mit Prüfzeichen).
    } { box-shapes }
change-listed-box = Nehmen Sie statt { $first } einen fabrikgebauten, zugelassenen Kasten (mit Prüfzeichen). { box-shapes }
change-new-box = Schließen Sie an { $first } einen fabrikgebauten, zugelassenen Kasten (mit Prüfzeichen) an. { box-shapes }
# What to look for on a cord or box to buy. $ends are its sockets.
cord-shapes = Sein Stecker: { $plug }. Seine Dosen: { $ends }.
box-shapes = Sein Einspeisestecker: { $plug }. Seine Dosen: { $ends }. Jede Steckdose braucht einen GFCI und einen Schutzschalter mit nicht mehr Ampere als sie. Wir nennen ihn { $box } und seine Steckdosen { $outlets }.

## tallywatt mend

mend-look = Zuerst nachsehen, bei ausgeschaltetem Motor, bevor Sie etwas kaufen oder ändern. Ändern Sie dann Ihre Antworten, und prüfen Sie neu.
mend-title = { $how ->
        [plan] Ändern Sie Ihren Plan.
        [closed] Gehen Sie in dieser Reihenfolge vor, bei stehendem Motor. Gehen Sie nie in einen geschlossenen Raum, um ihn abzustellen.
       *[gear] Stellen Sie den Motor ab. Gehen Sie dann in dieser Reihenfolge vor.
    }{ $all ->
        [0] {""}
        [one] {" "}Das behebt { $cleared } von 1 Gefahr.
       *[other] {" "}Das behebt { $cleared } von { $all } Gefahren.
    }
mend-nothing = Es gibt keine Gefahr zu beheben, und alles, was laufen muss, hat eine Steckdose. Es wird nichts geändert.
mend-before = So wie es ist
mend-after = Mit allen Änderungen
mend-tally = { $dangers ->
        [0] keine Gefahren
        [one] 1 Gefahr
       *[other] { $dangers } Gefahren
    }, { $warnings ->
        [0] keine Warnungen
        [one] 1 Warnung
       *[other] { $warnings } Warnungen
    }, { $musts ->
        [0] alles, was mitkommt und laufen muss, hat eine Steckdose
        [one] 1 Gerät, das laufen muss, kann nicht laufen, wann es soll
       *[other] { $musts } Geräte, die laufen müssen, können nicht laufen, wann sie sollen
    }{ $home ->
        [0] {""}
        [one] , 1 Gerät bleibt zu Hause
       *[other] , { $home } Geräte bleiben zu Hause
    }
mend-turns = Nicht alles kann laufen, wann man es will. Die neue Karte zeigt, was wann dran ist.
mend-proven = Einen einfacheren Weg kennen wir nicht.
mend-unproven = Vielleicht gibt es einen einfacheren Weg: Wir haben nicht alles versucht.
mend-left = Wir kennen keine Änderung, die den Rest behebt.
mend-stopped = Wir haben aufgehört zu suchen, bevor wir alles versucht hatten: Vielleicht geht es einfacher, oder eine Änderung behebt den Rest.{ $changed ->
        [no] {""}
       *[yes] {" "}Rufen Sie „tallywatt mend“ auch mit dem geänderten Plan auf: Vielleicht findet es mehr.
    }
mend-stays = Bleibt
mend-wrote = Der geänderte Plan steht in { $path }. Notizen, die Sie in die alte Datei geschrieben haben, stehen nicht darin. Drucken Sie jetzt die neue Karte: { $command }. Werfen Sie die alte weg.
mend-kept = Am Plan hat sich nichts geändert, also haben wir { $path } nicht geschrieben.
mend-people = An der Ausrüstung ist noch nichts geändert: Tun Sie jeden Schritt selbst. Prüfen Sie dann noch einmal. Starten Sie den Motor nur, wenn keine Gefahr mehr da ist.
mend-people-left = An der Ausrüstung ist noch nichts geändert: Tun Sie jeden Schritt selbst. Diese Schritte beheben nicht jede Gefahr. Starten Sie den Motor nicht, bevor auch der Rest behoben und noch einmal geprüft ist.
mend-try = Um den geänderten Plan als neue Datei zu speichern: { $command }

print-ws-mend = Änderungen, die die Gefahren beheben würden
print-ws-mend-before = So wie es ist: { $tally }.
print-ws-mend-after = Mit allen Änderungen: { $tally }.
print-ws-mend-all = Alles zusammen
print-ws-column-change = Änderung
print-ws-column-points = Punkte

## Geräte eines Eintrags, gezählt. $name ist, wie der Mensch sie nennt.

load-some = { $count } beliebige von { $total } { $name }
load-at = { $loads } an „{ $at }“

## tallywatt may

may-yes = JA: Sie dürfen { $wanted } einschalten, wenn alles andere aus ist.
may-yes-while = JA: Sie dürfen { $wanted } einschalten, während { $running } { $count ->
        [one] läuft
       *[other] laufen
    } und alles andere aus ist.
may-no = NEIN: { $wanted } nicht einschalten.
may-no-together = NEIN: { $wanted } nicht zugleich laufen lassen.
may-no-while = NEIN: { $wanted } nicht einschalten, während { $running } { $count ->
        [one] läuft
       *[other] laufen
    }.
may-stays-on = Von { $life } { $known ->
        [yes] hängt
       *[no] hängt vielleicht
    } die Gesundheit eines Menschen ab. Deshalb zählt es als eingeschaltet. Nie ausschalten, um Platz zu schaffen.
may-dangers = In diesem Plan { $count ->
        [one] ist eine Gefahr
       *[other] sind { $count } Gefahren
    } ({ $codes }). Läuft der Motor, stellen Sie ihn ab, aber gehen Sie dafür nie in etwas Geschlossenes. Lassen Sie ihn aus, bis keine Gefahr mehr da ist. „tallywatt check“ sagt, wie.
may-but = Der Plan hat außerdem { $signal ->
        [warning] eine Warnung
       *[other] einen Hinweis zur Vorsicht
    }: { $title } ({ $code }).
may-but-amps = Die Leistung reicht, aber die Gefahr bleibt. Lassen Sie den Motor aus.
may-life = Von { $life } hängt die Gesundheit eines Menschen ab. Schalten Sie zuerst { $others } aus, und fragen Sie noch einmal.
may-no-place = Dieser Plan hat keine Steckdose für { $names }: { $reason }.
may-refused = Stecken Sie { $names } nicht ein: Keine freie Steckdose, die Sie benutzen dürfen, passt. „tallywatt check“ sagt, warum.
may-wrong-place = Stecken Sie { $names } nicht ein, wo der Plan es hat. Frei, und stark genug: { $free }. Schreiben Sie es in den Plan, und fragen Sie noch einmal.
may-taken = { $names } { $count ->
        [one] teilt sich die Dose
       *[other] teilen sich die Dose
    } mit etwas anderem, das Sie genannt haben. Stecken Sie das zuerst aus, und immer nur eines ein.
may-nothing = Alles, was Sie genannt haben, läuft schon.
may-over-short = { $of ->
    [set] Der Generator kann { $limit } geben.
   *[part] Die Grenze an { $at } ist { $limit }.
  } Diese brauchen { $asks }: { $over } zu viel.
may-over-hours = { $of ->
    [set] Der Generator kann drei Stunden oder länger { $limit } geben.
   *[part] Die Grenze an { $at } ist für drei Stunden oder länger { $limit }.
  } Diese zählen als { $asks }: { $over } zu viel.
may-over-starting = Wenn { $by } startet und der Rest an ist, muss der Generator { $asks } geben. Seine Spitze ist { $limit }: { $over } zu viel.
may-over-starting-alone = { $by } allein zu starten braucht { $asks }. Die Spitze des Generators ist { $limit }: { $over } zu viel.
may-order-only = In einer bestimmten Reihenfolge würde jedes starten. Aber alles mit Thermostat oder Motor startet von selbst wieder, und das wäre zu viel.
may-the-set = Der Generator
may-part = „{ $id }“
# Amps of a part that both legs of the generator feed: those that it carries, what is asked of one of them, and
# what passes each at most.
amps-both = { $amps } auf A und { $amps } auf B
amps-one-leg = { $amps } auf einer Hälfte
amps-both-at-most = { $amps } auf A und bis zu { $amps } auf B
amps-all = { $amps }
may-order = In dieser Reihenfolge einschalten
may-order-step = { $name } an „{ $at }“: Mit dem Übrigen gibt der Generator dann einen Augenblick lang bis zu { $amps }
may-any-order = Jede andere Reihenfolge geht auch. Diese hat die niedrigste Spitze.
may-meter = Läuft alles, rechnen Sie mit
may-meter-breaker = durch den Schutzschalter von „{ $breaker }“: bis zu { $amps }
may-meter-receptacle = an einem Steckdosen-Messgerät an „{ $receptacle }“: { $volts } oder etwas mehr, wenn der Generator { $nominal } gibt
may-meter-if = Öffnen Sie nichts, um zu messen. Zeigt ein Steckdosen-Messgerät länger als ein paar Sekunden mehr Ampere, oder viel weniger Volt, stellen Sie den Motor ab. Tasten Sie dann Kabel und Stecker ab, und sehen Sie nach, ob sonst noch etwas eingesteckt ist.
may-as-placed = Das gilt, wenn alles so angeschlossen ist wie auf der Karte.
may-no-load = Kein Gerät heißt { $asked }.
may-no-load-nearest = Meinten Sie „{ $nearest }“?
may-no-load-known = Es gibt { $known }.
share-danger = Die nächste Liste sieht nur auf die Leistung, nicht auf Gefahren. Lassen Sie den Motor aus, bis jede Gefahr behoben ist.
share-all = Von der Leistung her kann alles gleichzeitig an sein.
share-together = Alles auf einer Zeile darf zugleich laufen, sonst nichts.
share-never = Nie zusammen
share-alone = { $name }, so wie geplant auch nicht allein
share-more = und { $count } mehr, alle in der Berechnung
share-incomplete = Die Liste ist nicht vollständig. Nur was darin steht, darf zusammen laufen.
share-off = Neben { $life } bleibt aus: { $off }.
share-turns = Nicht alles geht, wann man es will. Abwechselnd laufen lassen
# Eine Zeile des Abwechselns.
share-turn-without = { $loads } (nur solange niemand { $life } braucht)
share-no-turns = { $life } wechselt sich nicht ab: nie ausschalten, um Platz zu schaffen.

print-turns-title = Abwechselnd
