# Rules on voltage.

VOLT001 = { $fix ->
    [start] La tension baisse trop quand { $first } démarre
    [start-alone] La tension baisse trop quand { $first } démarre
   *[other] La tension est basse à { $first }
  }
    .why = { $fix ->
        [start] Elle chute de { $drop } ({ $percent }) un instant. Bien des moteurs ne démarrent pas si elle chute de plus de { $much }, et les lampes baissent. Endroits : { $about }.
        [start-alone] Elle chute de { $drop } ({ $percent }) un instant. Bien des moteurs ne démarrent pas si elle chute de plus de { $much }, et les lampes baissent. Endroits : { $about }.
        [range-b] Les rallonges perdent { $drop } ({ $percent }) : il reste { $left }. Les appareils ici sont faits pour { $least } ou plus ; jusqu’à { $least-b }, ils marchent un temps, mais les moteurs surchauffent. Endroits : { $about }.
        [below-b] Les rallonges perdent { $drop } ({ $percent }) : il reste { $left }. Au-dessous de { $least-b }, les moteurs peuvent caler et griller, et l’électronique s’arrêter. Endroits : { $about }.
       *[other] Les rallonges perdent { $drop } ({ $percent }) : il reste { $left }. Visez { $noted } ou moins : plus de { $much } fait chauffer les moteurs (un conseil, pas la loi). Endroits : { $about }.
      }
    .fix-thicker = Prenez une rallonge plus courte ou plus grosse (un numéro AWG plus petit est un fil plus gros).
    .fix-range-b = Prenez bientôt une rallonge plus courte ou plus grosse (un numéro AWG plus petit est un fil plus gros). D’ici là, faites-y marcher moins à la fois.
    .fix-below-b = N’y faites marcher ni réfrigérateur, ni pompe, ni autre moteur. Prenez une rallonge plus courte ou plus grosse (un numéro AWG plus petit est un fil plus gros), ou faites-y marcher moins à la fois.
    .fix-start = Prenez une rallonge plus courte ou plus grosse, et démarrez { $first } pendant que tout le reste est arrêté.
    .fix-start-alone = Prenez pour { $first } une rallonge plus courte ou plus grosse (un numéro AWG plus petit est un fil plus gros). Arrêter le reste ne suffit pas.
