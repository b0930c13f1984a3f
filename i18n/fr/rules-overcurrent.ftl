# Rules on overcurrent: what trips, and what only gets hot.

OVER001 = { $fix ->
    [unknown] Aucun disjoncteur connu ne protège { $first }
    [splitter] { $first } met de petites prises derrière un gros disjoncteur
    [single] { $first } est une prise simple de 15 A derrière un plus gros disjoncteur
   *[other] Le disjoncteur est trop gros pour { $first }
  }
    .why = { $fix ->
        [unknown] On ignore à combien d’ampères le courant se coupe ici. La partie la plus faible est faite pour { $rating }. Si rien ne s’y déclenche, elle peut brûler. Parties : { $about }.
       *[other] La partie la plus faible ici est faite pour { $rating }. Le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker }. Entre les deux, rien ne se déclenche : la partie chauffe et peut brûler. Parties : { $about }.
      }
    .fix-splitter = N’utilisez pas { $first }, quoi que vous y branchiez. Prenez un coffret de distribution certifié par un laboratoire, avec un disjoncteur par prise.
    .fix-receptacle = N’utilisez pas { $first }. Faites examiner son disjoncteur par un { -electrician }.
    .fix-single = Ne dépassez pas { $rating } pour ce qui est branché ici. Faites examiner cette prise par un { -electrician }.
    .fix-cord = N’utilisez pas { $first } ici. Prenez une rallonge faite pour { $breaker }, ou branchez-la là où le disjoncteur est de { $rating } ou moins.
    .fix-inlet = N’utilisez pas { $first } ici. Alimentez ce coffret d’une prise dont le disjoncteur est de { $rating } ou moins.
    .fix-wiring = N’utilisez pas { $first }. Son fil est trop mince pour son disjoncteur. Faites-le examiner par un { -electrician }.
    .fix-unknown = Lisez le nombre sur le disjoncteur ou dans le manuel et mettez-le dans le plan. D’ici là, n’utilisez pas { $first }.

OVER002 = Trop pendant des heures sur { $first }
    .why = { $first } est fait pour { $rating }, et pour { $limit } si cela dure trois heures ou plus. À { $time }, il y passe { $demand }, dont { $long } pendant des heures. En cause : { $about }.
    .fix-move = Déplacez un de ces appareils sur un autre disjoncteur, baissez-le, ou faites-lui faire une pause avant trois heures.

OVER003 = { $first } supporte moins que son disjoncteur ne permet
    .why = { $first } supporte { $limit }, mais le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker }. C’est permis pour cette rallonge. Mais rien ne vous empêche de la surcharger.
    .fix-add-up = Additionnez ce qui est branché après { $first }. Ne dépassez pas { $limit }. Lisez les ampères sur l’étiquette de la rallonge ; le plus petit compte.

OVER004 = { $first } ne peut pas donner la pleine puissance à toutes ses prises à la fois
    .why = Ses disjoncteurs font { $sum } en tout, et ce qui l’alimente donne { $feed }. C’est ordinaire. Cela veut dire qu’on partage.
    .fix-sum = Ne dépassez pas { $feed } pour tout ce qui est sur { $first }. La carte montre ce qui peut fonctionner ensemble.

OVER005 = { $fix ->
    [set] Un court-circuit peut ne pas déclencher le disjoncteur
   *[other] Le fil est si long et mince qu’un court-circuit peut ne pas déclencher le disjoncteur
  }
    .why = { $fix ->
        [set] { -generator(form: "This") } peut fournir environ { $fault } à un court-circuit. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. D’ici là, le mauvais contact rougit. Endroits : { $about }.
       *[other] Au bout, un court-circuit ne prend qu’environ { $fault }. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. D’ici là, le fil et le mauvais contact chauffent. Endroits : { $about }.
      }
    .fix-set = À sa place agissent le voyant de surcharge et l’arrêt automatique { -generator(form: "of") }, et un GFCI pour les défauts à la terre. Si les lampes baissent soudain ou que quelque chose sent le brûlé : arrêtez le moteur, débranchez, puis regardez.
    .fix-wire = Prenez une rallonge plus courte ou plus grosse. Si quelque chose sent le brûlé : arrêtez le moteur, débranchez, puis regardez.
