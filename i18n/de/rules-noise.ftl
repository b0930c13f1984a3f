### Regeln zum Lärm.

NOISE001 = { $fix ->
    [look] Der Generator ist vielleicht zu laut
    [quieter] Lauter, als viele Plätze erlauben
   *[other] Bei seiner größten Last ist er vielleicht zu laut
  }
    .why = { $fix ->
        [look] Wir wissen nicht, wie laut er ist, und Generatoren im offenen Rahmen sind meist lauter als { $limit } in { $distance } Entfernung. Nationalparks der USA und viele Plätze erlauben nicht mehr.
        [quieter] Im Freien macht er etwa { $level } in { $distance } Entfernung, bei der Last, mit der gemessen wurde. Nationalparks der USA erlauben dort { $limit }, und viele Plätze halten es ebenso.
       *[other] In der Minute mit der größten Last haben wir { $more } mehr angenommen, als gemessen wurde: im Freien etwa { $busiest } in { $distance } Entfernung. Nationalparks der USA erlauben dort { $limit }, und viele Plätze halten es ebenso.
      }
    .fix-quieter = { $idle ->
        [no] Stellen Sie ihn
       *[yes] Stellen Sie ihn mit Sparstufe
      } auf nackten Erdboden, weg von Wänden. Fragen Sie den Platzwart. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.
    .fix-busiest = Lassen Sie weniger zugleich laufen. Fragen Sie den Platzwart. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.
    .fix-alone = Stellen Sie ihn auf nackten Erdboden, weg von Wänden. Fragen Sie den Platzwart. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.
    .fix-look = Suchen Sie „dB“ in der Anleitung, mit der Entfernung, in der gemessen wurde. Fragen Sie den Platzwart, bevor Sie ihn starten. Bauen Sie ihn nie ein, und decken Sie ihn nie ab.

NOISE002 = { $fix ->
    [move-assumed] Nachts in Betrieb: { $about }
    [life-assumed] Nachts in Betrieb: { $about }
   *[other] In der Ruhezeit in Betrieb: { $about }
  }
    .why = { $fix ->
        [move-assumed] Wir wissen nicht, wann es auf dem Platz ruhig sein muss, also haben wir { $quiet } angenommen.
        [life-assumed] Wir wissen nicht, wann es auf dem Platz ruhig sein muss, also haben wir { $quiet } angenommen.
       *[other] Auf dem Platz muss es ruhig sein: { $quiet }.
      }
    .fix-move = { night-instead }
    .fix-life = Fragen Sie den Platzwart vor der Anreise, ob der Generator dann laufen darf, und kürzen Sie nie die Stunden von { $life }. { night-life }
    .fix-move-assumed = Fragen Sie den Platzwart, wann es ruhig sein muss. { NOISE002.fix-move }
    .fix-life-assumed = Fragen Sie den Platzwart, wann es ruhig sein muss. { NOISE002.fix-life }
