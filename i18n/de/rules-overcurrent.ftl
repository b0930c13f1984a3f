### Regeln zum Überstrom: was auslöst, und was nur heiß wird.

OVER001 = { $fix ->
    [unknown] Kein bekannter Schutzschalter schützt { $first }
    [splitter] { $first } hängt kleine Steckdosen hinter einen großen Schutzschalter
    [single] { $first } ist eine einzelne 15-A-Steckdose an einem größeren Schutzschalter
   *[other] Der Schutzschalter ist zu groß für { $first }
  }
    .why = { $fix ->
        [unknown] Niemand weiß, bei wie viel Ampere dieser Weg auslöst. Der schwächste Teil ist für { $rating } gemacht. Wenn dort nichts auslöst, kann er brennen. Teile: { $about }.
       *[other] Der schwächste Teil ist hier für { $rating } gemacht. Der Schutzschalter davor löst erst über { $breaker } aus. Dazwischen löst nichts aus: Der Teil wird heiß und kann brennen. Teile: { $about }.
      }
    .fix-splitter = Benutzen Sie { $first } nicht, gleich, was angeschlossen ist. Nehmen Sie einen von einem Prüflabor zugelassenen Verteilerkasten mit einem Schutzschalter für jede Steckdose.
    .fix-receptacle = Benutzen Sie { $first } nicht. Lassen Sie den Schutzschalter von einer Elektrofachkraft ansehen.
    .fix-single = Schließen Sie hier nicht mehr als { $rating } an. Lassen Sie es von einer Elektrofachkraft ansehen.
    .fix-cord = Benutzen Sie { $first } hier nicht. Nehmen Sie ein Kabel, das für { $breaker } gemacht ist, oder schließen Sie es dort an, wo der Schutzschalter höchstens { $rating } hat.
    .fix-inlet = Benutzen Sie { $first } hier nicht. Speisen Sie es aus einer Steckdose, deren Schutzschalter höchstens { $rating } hat.
    .fix-wiring = Benutzen Sie { $first } nicht. Die Leitung ist zu dünn für den Schutzschalter. Lassen Sie es von einer Elektrofachkraft ansehen.
    .fix-unknown = Lesen Sie die Zahl auf dem Schutzschalter oder in der Anleitung, und schreiben Sie sie in den Plan. Bis dahin lassen Sie { $first } unbenutzt.

OVER002 = Auf Dauer zu viel an { $first }
    .why = { $first } ist für { $rating } gemacht, und für { $limit }, wenn es drei Stunden oder länger läuft. Um { $time } trägt es { $demand }, und { $long } davon laufen stundenlang. Betroffen: { $about }.
    .fix-move = Schließen Sie eines davon an einen anderen Schutzschalter an, stellen Sie es kleiner, oder machen Sie eine Pause, bevor drei Stunden um sind.

OVER003 = { $first } verträgt weniger, als sein Schutzschalter durchlässt
    .why = { $first } verträgt { $limit }, aber der Schutzschalter davor löst erst über { $breaker } aus. Bei diesem Kabel ist das erlaubt. Doch nichts hindert Sie daran, es zu überlasten.
    .fix-add-up = Zählen Sie zusammen, was hinter { $first } angeschlossen ist. Bleiben Sie bei { $limit } oder weniger. Lesen Sie die Ampere auf dem Schild des Kabels; das Kleinere gilt.

OVER004 = { $first } kann nicht allen seinen Steckdosen zugleich die volle Leistung geben
    .why = Seine Schutzschalter ergeben zusammen { $sum }, und was ihn speist, gibt { $feed }. Das ist üblich. Es heißt, dass man sich teilt.
    .fix-sum = Bleiben Sie mit allem an { $first } zusammen bei { $feed } oder weniger. Die Karte zeigt, was zugleich laufen darf.

OVER005 = { $fix ->
    [set] Ein Kurzschluss löst den Schutzschalter vielleicht nicht aus
   *[other] Das Kabel ist so lang und dünn, dass ein Kurzschluss den Schutzschalter vielleicht nicht auslöst
  }
    .why = { $fix ->
        [set] Dieser Generator kann etwa { $fault } in einen Kurzschluss treiben. Ein Schutzschalter nach UL 489 mit { $breaker } löst erst über { $soon } rasch aus. Bis dahin glüht die schlechte Stelle. Stellen: { $about }.
       *[other] An seinem Ende zieht ein Kurzschluss nur etwa { $fault }. Ein Schutzschalter nach UL 489 mit { $breaker } löst erst über { $soon } rasch aus. Bis dahin werden Kabel und schlechte Stelle heiß. Stellen: { $about }.
      }
    .fix-set = Stattdessen wirken die Überlastlampe des Generators und seine eigene Abschaltung, und bei Fehlern zum Schutzleiter ein GFCI. Werden Lampen plötzlich dunkel oder riecht etwas heiß: Motor abstellen, ausstecken, dann nachsehen.
    .fix-wire = Nehmen Sie ein kürzeres oder dickeres Kabel. Riecht etwas heiß: Motor abstellen, ausstecken, dann nachsehen.
