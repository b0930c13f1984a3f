### Regeln zum Kraftstoff.

# $amount ist $count, wie man hier schreibt.
tanks = { $count ->
    [one] { $amount } Tankfüllung
   *[other] { $amount } Tankfüllungen
  }

FUEL001 = { $fix ->
    [find-out] Wir wissen nicht, ob eine Tankfüllung reicht
    [life-find-out] Wir wissen nicht, ob eine Tankfüllung reicht
   *[other] Eine Tankfüllung reicht nicht bis zur nächsten Pause
  }
    .why = { $fix ->
        [find-out] Von { $from } bis { $to } gibt es keine Pause zum Tanken. { $timed ->
            [yes] Wir kennen die Dauerleistung des Generators nicht, also haben wir für eine Tankfüllung { $tank } angenommen.
           *[no] Wir wissen nicht, wie lange eine Tankfüllung reicht, also haben wir { $tank } angenommen, wie bei einem kleinen Generator mit voller Last.
          }
        [life-find-out] Von { $from } bis { $to } gibt es keine Pause zum Tanken. { $timed ->
            [yes] Wir kennen die Dauerleistung des Generators nicht, also haben wir für eine Tankfüllung { $tank } angenommen.
           *[no] Wir wissen nicht, wie lange eine Tankfüllung reicht, also haben wir { $tank } angenommen, wie bei einem kleinen Generator mit voller Last.
          }
        [life-pause] Von { $from } bis { $to } gibt es keine Pause zum Tanken, und das verbrennt { $burns }. Wo ein Leben davon abhängt, rechnen Sie mit höchstens { $usable } einer Tankfüllung.
       *[other] Von { $from } bis { $to } gibt es keine Pause zum Tanken, und das verbrennt { $burns }. Tanken am heißen Motor kann einen Brand auslösen.
      }
    .fix-pause = Planen Sie in dieser Zeit eine Pause von einer halben Stunde, aber nicht in der Nacht, oder lassen Sie dann weniger laufen. Lassen Sie vor dem Tanken den abgestellten Motor { $cooling } Minuten abkühlen. Nicht im Regen, kein offenes Feuer.
    .fix-find-out = { $timed ->
        [yes] Suchen Sie auf dem Typenschild „running“ oder „rated“ (Dauerleistung) in Watt, und schreiben Sie die Zahl in den Plan.
       *[no] Schreiben Sie in den Plan, wie viele Stunden eine Tankfüllung laut Anleitung reicht.
      } Planen Sie bis dahin in dieser Zeit eine Pause, aber nicht in der Nacht. Lassen Sie vor dem Tanken den abgestellten Motor { $cooling } Minuten abkühlen, nicht im Regen, kein offenes Feuer.
    .fix-life-pause = Betreiben Sie { $life } zuerst mit einer dafür gemachten Batterie oder der Ersatzversorgung Ihres Lieferanten. Haben Sie keines von beiden, verlassen Sie sich dafür nicht auf diesen Generator. Dann: { FUEL001.fix-pause }
    .fix-life-find-out = Betreiben Sie { $life } zuerst mit einer dafür gemachten Batterie oder der Ersatzversorgung Ihres Lieferanten. Haben Sie keines von beiden, verlassen Sie sich dafür nicht auf diesen Generator. Dann: { FUEL001.fix-find-out }

FUEL002 = Funken können den trockenen Boden in Brand setzen
    .why = Aus dem Auspuff fliegen Funken, und der heiße Schalldämpfer entzündet Gras, das ihn berührt. Bei einem Feuerverbot können Motoren verboten sein.
    .fix-arrester = Fragen Sie den Platzwart, ob Feuerverbot herrscht und ob Generatoren laufen dürfen. Stellen Sie den Generator auf nackten Boden oder Fels, ringsum { $clear } frei, mit Wasser oder Feuerlöscher daneben. Sehen Sie in der Anleitung nach, ob der Auspuff einen zugelassenen Funkenfänger hat.

FUEL003 = Ein Tag braucht mehr als eine Tankfüllung
    .why = { $fix ->
        [store-propane] Ein Tag dieses Plans verbrennt { $burns }, also steht eine Ersatzflasche auf dem Platz. Gas, das ausströmt, sinkt und kriecht am Boden entlang zu allem, was heiß ist.
       *[other] Ein Tag dieses Plans verbrennt { $burns }, also steht Ersatzkraftstoff auf dem Platz. Sein Dampf kriecht am Boden entlang zu allem, was heiß ist.
      }
    .fix-store = Lagern Sie den Ersatzkraftstoff in einem zugelassenen, geschlossenen Kanister im Schatten, weit weg von Generator, Flammen und Zelten. Tanken Sie bei kaltem, abgestelltem Motor. Ist etwas verschüttet, gehen Sie weg, bis der Dampf abgezogen ist: Erst dann darf der Motor an.
    .fix-store-propane = Stellen Sie die Ersatzflasche aufrecht ins Freie, in den Schatten, weit weg von Generator, Flammen und Zelten. Wechseln Sie sie bei kaltem, abgestelltem Motor. Riecht es nach Gas, schließen Sie das Ventil, und gehen Sie weg, bis der Geruch weg ist: Erst dann darf der Motor an.
