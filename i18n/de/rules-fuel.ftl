### Regeln zum Kraftstoff.

FUEL001 = { $fix ->
    [find-out] Niemand weiß, ob eine Tankfüllung reicht
    [life-find-out] Niemand weiß, ob eine Tankfüllung reicht
   *[other] Eine Tankfüllung reicht nicht
  }
    .why = { $fix ->
        [find-out] Etwas soll { $stretch } ohne Pause laufen. Bei voller Last laufen kleine Generatoren mit einer Tankfüllung etwa { $tank }. Kraftstoff auf einem heißen Motor fängt Feuer.
        [life-find-out] Etwas soll { $stretch } ohne Pause laufen. Bei voller Last laufen kleine Generatoren mit einer Tankfüllung etwa { $tank }. Kraftstoff auf einem heißen Motor fängt Feuer.
       *[other] Etwas soll { $stretch } ohne Pause laufen. Eine Tankfüllung reicht für etwa { $tank }. Kraftstoff auf einem heißen Motor fängt Feuer.
      }
    .fix-pause = Planen Sie eine Pause bei Tageslicht. Stellen Sie den Motor ab, und lassen Sie ihn { $cooling } Minuten abkühlen, bevor Sie den Tank öffnen. Nicht im Regen, kein offenes Feuer.
    .fix-find-out = Suchen Sie die Stunden je Tankfüllung in der Anleitung, und schreiben Sie sie in den Plan. Bis dahin eine Pause bei Tageslicht planen: Motor aus, { $cooling } Minuten abkühlen, nicht im Regen, kein offenes Feuer.
    .fix-life-pause = Hängen Sie zuerst { $life } an eine dafür gemachte Batterie oder an die Reserve des Lieferanten. Ohne beides verlassen Sie sich dafür nicht auf diesen Generator. Dann: { FUEL001.fix-pause }
    .fix-life-find-out = Hängen Sie zuerst { $life } an eine dafür gemachte Batterie oder an die Reserve des Lieferanten. Ohne beides verlassen Sie sich dafür nicht auf diesen Generator. Dann: { FUEL001.fix-find-out }

FUEL002 = Trockener Boden: Funken und ein heißer Auspuff können ihn entzünden
    .why = Glühende Teilchen verlassen den Auspuff, und der Schalldämpfer entzündet Gras, das ihn berührt. Halten Sie ringsum { $clear } frei.
    .fix-arrester = Stellen Sie ihn auf nackten Boden oder Fels. Suchen Sie im Auspuff einen Funkenfänger. Halten Sie Wasser oder einen Feuerlöscher bereit. Fragen Sie den Platzwart, ob heute Motoren laufen dürfen.

FUEL003 = Ein Tag braucht mehr als eine Tankfüllung
    .why = Der Plan verbrennt etwa { $day } am Tag, und der Tank fasst { $tank }. Also steht Ersatzkraftstoff im Lager. Sein Dampf kriecht am Boden entlang zu allem, was heiß ist.
    .fix-store = Lagern Sie ihn in einem zugelassenen, geschlossenen Kanister im Schatten, weit weg von Generator, Flammen und Zelten. Tanken Sie bei kaltem, abgestelltem Motor.
