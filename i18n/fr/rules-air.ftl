# Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] Personne n’a mesuré à quelle distance de l’échappement sont les gens
   *[other] Des gens sont à { $distance } de l’échappement { -generator(form: "of") }
  }
    .why = Gardez { $ample } de distance ou plus : de { $least } à { $ample }, c’est encore trop près, et moins de { $least }, c’est un danger. Les gaz d’échappement contiennent du monoxyde de carbone. On ne le voit pas, on ne le sent pas, et qui dort ne se réveille pas. Les tentes, { -camper(form: "many") } et voitures des voisins comptent aussi.
    .fix-move = Arrêtez le moteur et laissez-le refroidir. Puis éloignez { -generator(form: "the") } d’au moins { $ample } de toute tente, tout véhicule, toute porte et fenêtre. Dirigez l’échappement à l’opposé des gens. Jamais en marche dans une tente, un garage ou un véhicule, ni sous un porche ou un auvent.
    .fix-closed = S’il tourne dans un endroit fermé : tout le monde dehors, appelez le { $call }, et que seuls les pompiers entrent pour l’arrêter. Seulement s’il tourne à l’air libre, arrêtez-le vous-même. Une fois arrêté et froid, placez { -generator(form: "the") } dehors, à { $ample } au moins de toute tente, tout véhicule, toute porte et fenêtre. Dirigez l’échappement à l’opposé des gens.
    .fix-farther = Arrêtez le moteur et laissez-le refroidir. Puis éloignez { -generator(form: "the") } jusqu’à { $ample } ou plus, et dirigez l’échappement à l’opposé des gens. Le vent peut porter les gaz au-delà de { $least }.
    .fix-measure = Mesurez de l’échappement jusqu’à la tente, au véhicule, à la porte ou à la fenêtre les plus proches, ceux des voisins aussi. S’il y a moins de { $ample }, éloignez { -generator(form: "the") } avant de démarrer.

AIR002 = { $fix ->
    [look] On ignore si tous dorment avec un { -alarm } de monoxyde de carbone
   *[other] Certains dorment sans { -alarm } de monoxyde de carbone
  }
    .why = Les gaz peuvent dériver quand le vent tourne. On ne les sent pas, et qui dort ne se réveille pas. Seul un { -alarm } de monoxyde de carbone réveille. Un { -alarm } de fumée ne le fait pas.
    .fix-alarm = Mettez un { -alarm } de monoxyde de carbone à piles dans chaque tente et chaque { -camper } où l’on dort. Appuyez sur son bouton d’essai chaque soir : il doit sonner. S’il sonne à un autre moment, ou si quelqu’un a le vertige, la nausée, mal à la tête ou se sent faible : tout le monde à l’air libre, et appelez le { $call }. Arrêtez le moteur seulement si vous le pouvez sans respirer ses gaz.
    .fix-look = Regardez dans chaque tente et chaque { -camper } avant de démarrer. Il y faut un { -alarm } de monoxyde de carbone à piles qui sonne quand vous appuyez sur son bouton d’essai. S’il sonne à un autre moment, ou si quelqu’un a le vertige, la nausée, mal à la tête ou se sent faible : tout le monde à l’air libre, et appelez le { $call }. Arrêtez le moteur seulement si vous le pouvez sans respirer ses gaz.

AIR003 = { $fix ->
    [out] { -generator(form: "The") } tourne dans un endroit fermé
    [uncover] { -generator(form: "The") } est sous une bâche ou trop près de quelque chose
    [look] On ignore ce qu’il y a au-dessus et autour { -generator(form: "of") }
   *[other] Personne n’a dit ce qu’il y a au-dessus et autour { -generator(form: "of") }
  }
    .why = { $fix ->
        [out] L’échappement s’accumule dans une tente, un porche, un véhicule ou une remise, même porte ouverte. Il contient du monoxyde de carbone : on ne le sent pas, et il tue. Une bâche posée sur le moteur fond et brûle.
        [uncover] L’échappement s’accumule dans une tente, un porche, un véhicule ou une remise, même porte ouverte. Il contient du monoxyde de carbone : on ne le sent pas, et il tue. Une bâche posée sur le moteur fond et brûle.
       *[other] On a donc retenu le pire. Dans une tente, un porche, un véhicule ou une remise, l’échappement s’accumule, même porte ouverte. Il contient du monoxyde de carbone : on ne le sent pas, et il tue. Une bâche posée sur le moteur fond et brûle.
      }
    .fix-out = S’il tourne là-dedans : tout le monde dehors, appelez le { $call } de dehors, et que seuls les pompiers entrent pour l’arrêter. En marche seulement à l’air libre, avec { $clear } libres tout autour.
    .fix-uncover = Arrêtez le moteur. Enlevez la bâche ou la housse. Éloignez { -generator(form: "the") } des auvents et des murs : { $clear } libres tout autour. Un toit doit être bien au-dessus et ouvert de tous côtés.
    .fix-look = Allez voir avant de démarrer. Le moteur doit être à l’air libre, ou sous un toit haut et ouvert de tous côtés, pas un auvent, avec { $clear } libres tout autour.
    .fix-choose = Placez { -generator(form: "the") } à l’air libre, ou sous un toit haut et ouvert de tous côtés, pas un auvent, avec { $clear } libres tout autour. Puis mettez-le dans le plan.

AIR004 = Rien n’abrite { -generator(form: "the") } de la pluie
    .why = De l’eau dans les prises peut donner un choc à qui y touche. Les gens l’abritent alors dans une tente ou un porche, et l’échappement les tue.
    .fix-roof = S’il pleut, arrêtez le moteur. Ne le redémarrez que sur un sol sec et plat, sous un toit haut, ouvert de tous côtés. Jamais de bâche sur le moteur ni juste au-dessus. Gardez aussi les coffrets, les bouts de rallonge et les fiches à l’abri et loin du sol mouillé. Séchez vos mains avant d’y toucher.

AIR005 = { $fix ->
    [bedside] La rallonge vers { $about } est trop courte
    [at-set] { $about } est branché directement { -generator(form: "to") }
    [stated] La rallonge vers { $about } ne va pas jusqu’aux gens
    [measure] On ignore si les rallonges vont assez loin
    [no-cord] Branché directement { -generator(form: "to") } : { $about }
   *[longer] Les rallonges sont trop courtes pour éloigner le moteur
  }
    .why = { $fix ->
        [bedside] On sait qu’elle va à { $reach }. Le moteur doit être à { $needed } de qui en a besoin. Quelqu’un le rapprochera donc, et l’échappement tue.
        [at-set] Le moteur doit être à { $needed } de qui en a besoin. Sans rallonge, quelqu’un le rapprochera, et l’échappement tue.
        [stated] Elle va à { $reach }. Le plan dit que les gens sont à { $needed } du moteur. Quelqu’un le rapprochera donc davantage.
        [measure] On sait qu’elles vont à { $reach }. Le moteur doit être à { $needed } de toute tente, véhicule, porte ou fenêtre. Si elles sont plus courtes, quelqu’un le rapprochera.
        [no-cord] Le moteur doit être à { $needed } de toute tente, véhicule, porte ou fenêtre. Sans rallonge, qui a besoin de courant là-bas le rapprochera.
       *[longer] Elles vont à { $reach }. Le moteur doit être à { $needed } de toute tente, véhicule, porte ou fenêtre. Quelqu’un le rapprochera donc.
      }
    .fix-longer = Apportez une seule rallonge assez longue, et assez grosse pour ce qui y est branché. Ne rapprochez jamais le moteur pour compenser.
    .fix-no-cord = { $open ->
        [no] Apportez un cordon GFCI (boutons TEST et RESET), assez long et assez gros.
       *[other] Branchez ces appareils sur le moteur même, puis éloignez-vous de ses gaz, du côté d’où vient le vent. Ou apportez une rallonge assez longue et assez grosse.
      } Ne rapprochez jamais le moteur pour compenser.
    .fix-measure = Mesurez les rallonges au pas et mettez leur longueur dans le plan. Ne rapprochez jamais le moteur pour compenser.
    .fix-bedside = Apportez une rallonge assez longue et assez grosse, ou une batterie faite pour l’appareil. Ne rapprochez jamais le moteur pour compenser.
    .fix-at-set = Mettez-le au bout d’une rallonge assez longue et assez grosse. Si tous les bouts sont pris, apportez une autre rallonge, ou une batterie faite pour l’appareil. Ne rapprochez jamais le moteur pour compenser.
    .fix-stated = Mesurez encore de l’échappement jusqu’aux gens, et mettez-le dans le plan. Ou apportez une rallonge plus longue et assez grosse.

AIR006 = { $fix ->
    [when] Le moteur tourne peut-être pendant que les gens dorment : { $about }
   *[other] Le moteur tourne pendant que les gens dorment : { $about }
  }
    .why = On dort de { $from } à { $to } ({ $night }), et l’échappement ne réveille pas. Il faut alors l’air libre, { $ample } ou plus jusqu’aux gens, et un { -alarm } en état où l’on dort.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Chargez la batterie de { $life } le jour. Passez sur elle, et arrêtez le moteur avant que quelqu’un s’endorme.
    .fix-when = { night-decide } { night-instead }

night-told = selon les heures de silence
night-assumed = nous ne savons pas quand, nous l’avons donc supposé
