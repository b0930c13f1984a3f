### Regeln zur Leistung.

# When things are on together: at the head of a sentence, and in one, with the space ahead of it.
when-first = { $timed ->
    [yes] Um { $time }
   *[no] Zu jeder Uhrzeit
  }
when = { $timed ->
    [yes] {" "}um { $time }
   *[no] {""}
  }

POWER001 = { $fix ->
    [hours] Der Generator kann das nicht alles zugleich betreiben
    [leg-alone] Eine Hälfte des Generators schafft { $about } nicht
    [alone] Der Generator schafft { $about } nicht
    [amps-alone] Der Generator schafft { $about } nicht
    [life-alone] Dieser Generator kann { $about } nicht betreiben
    [life-off] { when-first } ist neben { $life } zu viel an
    [life-turns] { when-first } ist neben { $life } zu viel an
    [leg] Eine Hälfte des Generators ist{ when } überlastet
    [leg-turns] Eine Hälfte des Generators ist{ when } überlastet
    [leg-look] Eine Hälfte des Generators ist{ when } vielleicht überlastet
    [leg-cord] Eine Hälfte des Generators ist{ when } vielleicht überlastet
   *[other] { when-first } ist zu viel auf einmal an
  }
    .why = { $fix ->
        [hours] Sie haben nicht gesagt, wann diese laufen, also haben wir alle zugleich gezählt: { $about }. Zusammen brauchen sie { $demand }, aber der Generator kann auf Dauer { $limit } geben.
        [turns] Diese brauchen zusammen { $demand }: { $about }. Der Generator kann auf Dauer { $limit } geben, also sind es { $over } zu viel.
        [leg-alone] Es zieht { $demand } auf einer Hälfte. Jede Hälfte gibt { $limit } und nicht mehr, also sind es { $over } zu viel, gleich auf welcher.
        [alone] Es braucht { $demand }. Der Generator kann auf Dauer { $limit } geben, also sind es { $over } zu viel.
        [amps-alone] Es zieht { $demand }. Der Generator gibt { $limit }, also sind es { $over } zu viel.
        [life-alone] { life-it } Nötig sind { $demand }, aber der Generator kann dafür auf Dauer höchstens { $limit } geben: Es fehlen { $over }.
        [life-off] { life-on } Diese brauchen zusammen { $demand }: { $about }. Der Generator kann auf Dauer { $limit } geben, also sind es { $over } zu viel.
        [life-turns] { life-on } Diese brauchen zusammen { $demand }: { $about }. Der Generator kann auf Dauer { $limit } geben, also sind es { $over } zu viel.
        [leg] Diese ziehen auf einer Hälfte { $demand }: { $about }. Jede Hälfte gibt { $limit }, also sind es { $over } zu viel.
        [leg-turns] Diese ziehen auf einer Hälfte { $demand }: { $about }. Jede Hälfte gibt { $limit }, also sind es { $over } zu viel.
        [leg-look] Liegen diese alle auf einer Hälfte, ziehen sie dort { $demand }: { $about }. Jede Hälfte gibt { $limit }, also sind es { $over } zu viel.
        [leg-cord] Liegen diese alle auf einer Hälfte, ziehen sie dort { $demand }: { $about }. Jede Hälfte gibt { $limit }, also sind es { $over } zu viel.
       *[other] Diese ziehen zusammen { $demand }: { $about }. Der Generator gibt { $limit }, also sind es { $over } zu viel.
      }
    .fix-turns = Lassen Sie sie abwechselnd laufen, oder lassen Sie eines zu Hause. Geben Sie im Plan jedem eigene Stunden. Beginnen Sie mit { $first }: Nichts hier braucht mehr.
    .fix-hours = Lassen Sie sie abwechselnd laufen: Die Karte zeigt, was zusammen geht. Oder schreiben Sie in den Plan, wann jedes läuft.
    .fix-leg = Schließen Sie { $move } an eine Steckdose der anderen Hälfte an, oder lassen Sie diese abwechselnd laufen.
    .fix-leg-turns = Lassen Sie diese abwechselnd laufen, oder lassen Sie eines zu Hause.
    .fix-leg-look = Finden Sie heraus, welche Hälfte jede Steckdose speist, und schreiben Sie es in den Plan. Bis dahin lassen Sie diese abwechselnd laufen.
    .fix-leg-cord = Lassen Sie diese abwechselnd laufen. Kein Plan weiß, welche Hälfte welches Ende eines Kabels speist. Fragen Sie eine Elektrofachkraft, bevor sie zusammen laufen.
    .fix-leg-alone = Lassen Sie { $about } zu Hause, nutzen Sie die kleinere Stufe, oder nehmen Sie einen größeren Generator mit.
    .fix-amps = Lassen Sie sie nacheinander laufen. Geben Sie im Plan jedem eigene Stunden. Beginnen Sie mit { $first }: Nichts hier zieht mehr.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] Der Generator kann { $about } nicht starten
    [amps-alone] Der Generator kann { $about } nicht starten
    [leg-alone] Eine Hälfte des Generators kann { $about } nicht starten
    [again] Diese dürfen nicht alle zusammen an bleiben
    [amps-again] Diese dürfen nicht alle zusammen an bleiben
    [life-alone] Dieser Generator kann { $about } nicht starten
    [life-together] Dieser Generator kann nicht alle diese starten: { $life }
    [life-off] Startet noch etwas anderes, kann der Strom für { $life } ausgehen
    [life-turns] Startet noch etwas anderes, kann der Strom für { $life } ausgehen
   *[other] Nicht alle davon können starten
  }
    .why = { $fix ->
        [alone] Allein der Start von { $first } braucht einen Augenblick lang { $demand }. Die Spitzenleistung des Generators ist { $limit }, also fehlen { $over }.
        [amps-alone] Allein der Start von { $first } braucht einen Augenblick lang { $demand }. Die Spitzenleistung des Generators ist { $limit }, also fehlen { $over }.
        [leg-alone] Allein der Start von { $first } braucht einen Augenblick lang { $demand }. Eine Hälfte des Generators gibt höchstens { $limit }, also fehlen { $over }.
        [again] { when-first } laufen diese zusammen: { $about }. Startet { $first } zuletzt, braucht es { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen { $over }. Startet es zuerst, reicht die Leistung. Aber was einen Thermostat oder Motor hat, startet von selbst wieder.
        [amps-again] { when-first } laufen diese zusammen: { $about }. Startet { $first } zuletzt, braucht es { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen { $over }. Startet es zuerst, reicht die Leistung. Aber was einen Thermostat oder Motor hat, startet von selbst wieder.
        [life-alone] { life-it } Der Start braucht für einen Augenblick { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen { $over }.
        [life-together] { life-on } { when-first } laufen diese zusammen: { $about }. Startet eines davon, brauchen sie zusammen bis zu { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen { $over }.
        [life-off] { life-on } { when-first } laufen diese zusammen: { $about }. Startet eines davon, brauchen sie zusammen bis zu { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen { $over }.
        [life-turns] { life-on } { when-first } laufen diese zusammen: { $about }. Startet eines davon, brauchen sie zusammen bis zu { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen { $over }.
        [amps-fewer] { when-first } laufen diese zusammen: { $about }. Startet eines davon, brauchen sie zusammen bis zu { $demand }. Der Generator gibt dann höchstens { $limit }, also fehlen in jeder Reihenfolge { $over }.
       *[other] { when-first } laufen diese zusammen: { $about }. Startet eines davon, brauchen sie zusammen bis zu { $demand }. Die Spitze ist { $limit }, also fehlen in jeder Reihenfolge { $over }.
      }
    .fix-alone = Lassen Sie { $about } zu Hause, oder nehmen Sie einen größeren Generator mit.
    .fix-again = Lassen Sie diese abwechselnd laufen, wie die Karte zeigt. Schalten Sie { $first } ein, während etwas anderes aus ist.
    .fix-fewer = Schalten Sie { $first } ein, während etwas anderes aus ist, und lassen Sie diese abwechselnd laufen.
    .fix-leg-alone = { POWER002.fix-alone }
    .fix-amps-alone = { POWER002.fix-alone }
    .fix-amps-again = { POWER002.fix-again }
    .fix-amps-fewer = { POWER002.fix-fewer }
    .fix-life-alone = { life-cannot }
    .fix-life-together = Verlassen Sie sich für { $life } nicht auf diesen Generator. Bleiben Sie, wo es Strom aus dem Netz gibt, oder nutzen Sie die Ersatzversorgung Ihres Lieferanten. Ändern Sie nie die Einstellung eines Geräts.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER003 = Von den { $rated } des Generators können Sie { $stranded } nicht nutzen
    .why = Der Generator kann auf Dauer { $rated } geben. Die Steckdosen, die Sie benutzen, lassen nur { $reachable } durch ({ $about }).
    .fix-outlet = Um { $reach } zu erreichen, schreiben Sie ein eigenes Kabel von der Steckdose „{ $outlet }“ in den Plan, und prüfen Sie noch einmal. Verbinden Sie nie zwei Steckdosen miteinander.
    .fix-socket = Um { $reach } zu erreichen, schreiben Sie ein zweites Kabel von einer anderen Dose von „{ $outlet }“ in den Plan, und prüfen Sie noch einmal. Verbinden Sie nie zwei Steckdosen oder die Enden zweier Kabel miteinander.
    .fix-accept = Rechnen Sie mit { $reachable }. Mehr ist mit den Steckdosen und Teilen, die Sie benutzen dürfen, nicht zu haben.

POWER004 = { $fix ->
    [late] Der Schutzschalter von { $first } hat erst über seiner Zahl ausgelöst
   *[other] Der Schutzschalter von { $first } löst zu früh aus
  }
    .why = { $fix ->
        [late] Darauf steht { $marked }, aber er hat erst bei { $trips } ausgelöst. Jeder Schutzschalter lässt kurze Zeit mehr durch, also zählen wir weiter { $marked }.
       *[other] Darauf steht { $marked }, aber er hat bei { $trips } ausgelöst. Rechnen Sie höchstens mit { $counted }, aber verlassen Sie sich nicht darauf, dass er dort auslöst.
      }
    .fix-service = Lassen Sie ihn von einer Werkstatt oder einer Elektrofachkraft ansehen. Benutzen Sie ihn nicht mehr, wenn er riecht, braun oder heiß wird.
    .fix-late = Rechnen Sie mit { $marked }, der Zahl darauf. Lässt er eine Stunde lang mehr durch, benutzen Sie ihn nicht mehr, bis eine Elektrofachkraft nachgesehen hat.

POWER005 = Dauerleistung und Spitzenleistung sind fast gleich
    .why = Der Plan sagt { $rated } auf Dauer und { $peak } als Spitze. Bei den meisten Generatoren ist die Dauerleistung deutlich kleiner. Die große Zahl auf dem Karton ist die Spitze.
    .fix-plate = Lesen Sie das Typenschild: Suchen Sie Watt bei „running“, „rated“ oder „continuous“ (Dauer). Schreiben Sie diese Zahl in den Plan.

POWER006 = Fast alles hängt an einer Hälfte des Generators
    .why = { when-first } trägt eine Hälfte { $heavy } und die andere { $light }. Jede Hälfte gibt { $leg } und nicht mehr, also bleibt die halbe Leistung ungenutzt. Betroffen: { $about }.
    .fix-move = Schließen Sie { $first } an eine Steckdose der anderen Hälfte an, wenn es geht.

POWER007 = In der Sparstufe kann { $first } den Motor abwürgen
    .why = Zum Starten braucht es einen Augenblick lang { $starting }, und der Generator gibt auf Dauer { $rated }. In der Sparstufe dreht der Motor langsam und braucht eine oder zwei Sekunden, um nachzukommen.
    .fix-off = Schalten Sie die Sparstufe aus, bevor { $first } startet, und lassen Sie sie aus.

POWER008 = { $fix ->
    [sum] { $sets } Generatoren laufen parallel
   *[other] Diese Generatoren können im Parallelbetrieb durchbrennen
  }
    .why = { $fix ->
        [sum] Zusammen geben sie auf Dauer { $rated }, das sind { $leg }. Der Verbindungssatz zwischen ihnen und die Steckdosen lassen vielleicht weniger durch, als die Generatoren geben könnten.
       *[other] Generatoren, die nicht im Gleichtakt laufen, treiben Strom ineinander und brennen durch. Ein Kabel mit zwei Steckern hat blanke Stifte unter Spannung.
      }
    .fix-apart = Lassen Sie sie getrennt laufen, jeden mit eigenen Kabeln. Verbinden Sie nur Inverter-Generatoren mit 120 V, mit dem Verbindungssatz des Herstellers für genau diese Generatoren.
    .fix-look = Lassen Sie sie getrennt laufen, bis Sie es wissen: Alle müssen Inverter-Generatoren mit 120 V sein, und der Verbindungssatz muss vom Hersteller für genau diese Generatoren sein.
    .fix-sum = Stellen Sie alle Motoren ab, bevor Sie sie verbinden oder trennen. Fragen Sie den Hersteller oder eine Elektrofachkraft, ob der Neutralleiter bei mehr als einem mit dem Schutzleiter verbunden ist: Das sind zu viele. Verbinden Sie Neutralleiter und Schutzleiter nicht selbst.

POWER009 = { $fix ->
    [motor] { $about } zieht vielleicht mehr, als sein Stecker verträgt
   *[other] { $about } zieht mehr, als sein Stecker verträgt
  }
    .why = { $fix ->
        [motor] Nach seinen PS rechnen wir mit { $demand }. Sein Stecker, { $plug }, ist für { $limit } gemacht.
       *[other] Es zieht { $demand }. Sein Stecker, { $plug }, ist für { $limit } gemacht.
      }
    .fix-plate = Lesen Sie sein Schild noch einmal, und sehen Sie sich den Stecker an. Benutzen Sie es nicht, bis beide zusammenpassen, und nie mit einem Stecker, den jemand anders angebracht hat.
    .fix-motor = Lesen Sie die Ampere auf dem Schild, und schreiben Sie sie in den Plan. Sind es mehr als { $limit }, benutzen Sie es mit diesem Stecker nicht.
