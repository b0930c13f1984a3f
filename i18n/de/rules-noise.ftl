### Regeln zum Lärm.

NOISE001 = { $fix ->
    [look] Niemand weiß, wie laut der Generator ist
    [full-load] Bei voller Last ist er vielleicht lauter, als viele Plätze erlauben
   *[other] Lauter, als viele Plätze erlauben
  }
    .why = { $fix ->
        [look] Nationalparks der USA erlauben { $limit } in { $distance } Entfernung, und viele Plätze halten es ebenso. Generatoren im offenen Rahmen sind meist lauter.
        [full-load] Im Freien macht er etwa { $level } in { $distance } Entfernung, bei der Last, mit der gemessen wurde. Für volle Last wurden { $more } mehr angenommen: { $full }. Nationalparks der USA erlauben dort { $limit }, und viele Plätze halten es ebenso. Bei voller Last ist das ab { $from } so.
       *[other] Im Freien macht er etwa { $level } in { $distance } Entfernung, bei der Last, mit der gemessen wurde. Nationalparks der USA erlauben dort { $limit }, und viele Plätze halten es ebenso. Das ist ab { $from } so, und bei voller Last erst weiter weg.
      }
    .fix-quieter = Lassen Sie weniger zugleich laufen, nutzen Sie die Sparstufe, und stellen Sie ihn auf weichen Boden. Fragen Sie den Platzwart. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.
    .fix-full-load = Lassen Sie weniger zugleich laufen, und stellen Sie ihn auf weichen Boden, weg von Wänden. Fragen Sie den Platzwart. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.
    .fix-look = Suchen Sie „dB“ in der Anleitung, mit der Entfernung, in der gemessen wurde. Fragen Sie den Platzwart, bevor Sie ihn starten. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.

NOISE002 = Manches würde in der Ruhezeit laufen
    .why = Von { $from } bis { $to } muss es auf dem Platz ruhig sein. Dann läuft noch: { $about }.
    .fix-move = Verlegen Sie es auf andere Stunden, oder betreiben Sie es mit einer am Tag geladenen Batterie.
    .fix-life = Seine Stunden bleiben. Fragen Sie den Platzwart, bevor Sie kommen, oder betreiben Sie es dann mit einer dafür gemachten, am Tag geladenen Batterie.
