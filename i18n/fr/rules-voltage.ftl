# Rules on voltage.

VOLT001 = { $fix ->
    [start] La tension baisse trop quand { $first } démarre
   *[other] La tension est basse à { $first }
  }
    .why = { $fix ->
        [start] Elle chute de { $drop } ({ $percent }) un instant. Bien des moteurs ne démarrent pas si elle chute de plus de { $much }, et les lampes baissent. Endroits : { $about }.
       *[other] Les rallonges perdent { $drop } ({ $percent }) : il reste { $left }. Visez { $noted } ou moins ; plus de { $much } fait chauffer les moteurs. Ce sont des conseils, pas la loi. Endroits : { $about }.
      }
    .fix-thicker = Prenez une rallonge plus courte ou plus grosse (numéro AWG plus petit = fil plus gros).
    .fix-start = Prenez une rallonge plus courte ou plus grosse, et démarrez { $first } quand tout le reste est arrêté.
