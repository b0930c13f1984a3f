### Regeln zum Lärm.

NOISE001 = Lauter, als viele Plätze erlauben
    .why = Im Freien macht er etwa { $level } in { $distance } Entfernung. Nationalparks der USA erlauben dort { $limit }, und viele Plätze halten es ebenso.
    .fix-quieter = Lassen Sie weniger zugleich laufen, nutzen Sie die Sparstufe, und stellen Sie ihn auf weichen Boden. Fragen Sie den Platzwart. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.

NOISE002 = Manches würde in der Ruhezeit laufen
    .why = Von { $from } bis { $to } muss es auf dem Platz ruhig sein. Dann läuft noch: { $about }.
    .fix-move = Verlegen Sie es auf andere Stunden, oder betreiben Sie es mit einer am Tag geladenen Batterie. Fragen Sie zuerst den Platzwart, wenn die Gesundheit eines Menschen davon abhängt.
