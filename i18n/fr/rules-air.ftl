# Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] Nous ignorons à quelle distance sont les gens
   *[other] Des gens sont à { $distance } seulement de l’échappement
  }
    .why = Le monoxyde de carbone n’a pas d’odeur et tue pendant le sommeil. Gardez { $ample } ou plus entre l’échappement et les gens, les voisins aussi : plus près, il peut tuer, et sous { $least }, c’est le pire.
    .fix-move = Arrêtez le moteur. Une fois froid, éloignez { -generator(form: "the") } d’au moins { $ample } de toute tente, tout véhicule, toute porte et fenêtre. Dirigez l’échappement à l’opposé des gens.
    .fix-closed = Si le moteur tourne dans un endroit fermé : faites sortir tout le monde, appelez le { $call }, et que seuls les pompiers entrent pour l’arrêter. Arrêtez-le vous-même seulement à l’air libre. Une fois froid, éloignez { -generator(form: "the") } d’au moins { $ample } de toute tente, tout véhicule, toute porte et fenêtre, échappement à l’opposé des gens.
    .fix-farther = Arrêtez le moteur. Une fois froid, éloignez { -generator(form: "the") } jusqu’à { $ample } ou plus, et dirigez l’échappement à l’opposé des gens. Le vent peut porter les gaz plus loin que { $least }.
    .fix-measure = Mesurez de l’échappement jusqu’à la tente, au véhicule, à la porte ou à la fenêtre les plus proches, ceux des voisins aussi. S’il y a moins de { $ample }, éloignez { -generator(form: "the") } avant de démarrer.

AIR002 = { $fix ->
    [look] Quelqu’un dort peut-être sans { -alarm } de monoxyde de carbone
   *[other] Quelqu’un dort sans { -alarm } de monoxyde de carbone
  }
    .why = Le vent peut tourner et pousser les gaz vers vous. Seul un { -alarm } de monoxyde de carbone vous réveille : un { -alarm } de fumée, non.
    .fix-alarm = Mettez un { -alarm } de monoxyde de carbone à piles dans chaque tente et chaque { -camper } où l’on dort. Appuyez sur son bouton d’essai chaque soir : il doit sonner. S’il sonne plus tard, ou si quelqu’un a le vertige, la nausée, mal à la tête ou se sent faible, faites sortir tout le monde et appelez le { $call }.
    .fix-look = Cherchez dans chaque tente et chaque { -camper } un { -alarm } de monoxyde de carbone à piles. Appuyez sur son bouton d’essai : il doit sonner. S’il sonne plus tard, ou si quelqu’un a le vertige, la nausée, mal à la tête ou se sent faible, faites sortir tout le monde et appelez le { $call }.

AIR003 = { $fix ->
    [out] { -generator(form: "The") } tourne dans un endroit fermé
    [uncover] { -generator(form: "The") } est sous ou contre quelque chose
    [look] Il y a peut-être quelque chose au-dessus ou autour { -generator(form: "of") }
   *[other] Vous n’avez pas dit où se trouve { -generator(form: "the") }
  }
    .why = { $fix ->
        [out] Les gaz s’accumulent dans une tente, un porche, un véhicule ou une remise, même porte ouverte. Ils contiennent du monoxyde de carbone : on ne le sent pas, et il tue.
        [uncover] Bâches, auvents et murs retiennent les gaz, et le monoxyde de carbone qu’ils contiennent tue. Une bâche sur { -generator(form: "the") } peut fondre et prendre feu.
       *[other] Nous ne le savons pas et avons donc supposé le pire. Les gaz s’accumulent dans une tente, un porche, un véhicule ou une remise, même porte ouverte, et ils tuent.
      }
    .fix-out = Si le moteur tourne en ce moment dans un endroit fermé, faites sortir tout le monde, appelez le { $call }, et que seuls les pompiers entrent pour l’arrêter. Ne le faites jamais tourner dans une tente, un porche ou un véhicule : seulement à l’air libre, avec { $clear } libres de tous côtés.
    .fix-uncover = Arrêtez le moteur, et enlevez toute bâche ou housse. Éloignez { -generator(form: "the") } des auvents, des tonnelles et des murs : { $clear } libres de tous côtés. Un toit au-dessus doit être haut, et ouvert de tous côtés.
    .fix-look = Allez voir avant de démarrer. Placez { -generator(form: "the") } à l’air libre, ou sous un toit haut et ouvert de tous côtés, avec { $clear } libres tout autour. Une tonnelle ou un auvent n’est pas un toit haut.
    .fix-choose = Placez { -generator(form: "the") } à l’air libre, ou sous un toit haut et ouvert de tous côtés, avec { $clear } libres tout autour. Une tonnelle ou un auvent n’est pas un toit haut. Puis mettez-le dans le plan.

AIR004 = Rien n’abrite { -generator(form: "the") } de la pluie
    .why = De l’eau dans ses prises peut vous donner un choc. Si vous l’abritez dans une tente ou sous un porche, les gaz d’échappement tuent.
    .fix-roof = S’il pleut, arrêtez le moteur, et ne redémarrez que sous un toit haut, ouvert de tous côtés. Jamais de bâche dessus ni juste au-dessus.

AIR005 = { $fix ->
    [bedside] La rallonge vers { $about } est trop courte
    [at-set] Sans rallonge, directement { -generator(form: "to") } : { $about }
    [stated] La rallonge vers { $about } ne va pas jusqu’aux gens
    [measure] Nous ignorons si les rallonges vont assez loin
    [no-cord] Sans rallonge, directement { -generator(form: "to") } : { $about }
   *[longer] Les rallonges sont trop courtes
  }
    .why = { $fix ->
        [bedside] Pour autant que nous sachions, elle va à { $reach }, mais { -generator(form: "the") } doit être à { $needed } de la personne. Quelqu’un rapprochera le moteur, et ses gaz tuent.
        [at-set] Gardez { -generator(form: "the") } à { $needed } de la personne qui en a besoin. Sans rallonge, quelqu’un rapprochera le moteur.
        [stated] Elle va à { $reach }, mais le plan dit que les gens sont à { $needed }. Quelqu’un rapprochera le moteur.
        [measure] Pour autant que nous sachions, elles vont à { $reach }, mais { -generator(form: "the") } doit être à { $needed } des gens. Si elles sont plus courtes, quelqu’un rapprochera le moteur.
        [no-cord] Gardez { -generator(form: "the") } à { $needed } des gens au moins. Sans rallonge, quelqu’un rapprochera le moteur.
       *[longer] Elles vont à { $reach }, mais { -generator(form: "the") } doit être à { $needed } des gens. Quelqu’un rapprochera le moteur, et ses gaz tuent.
      }
    .fix-longer = Apportez une seule rallonge assez longue, et assez grosse pour ce qui y est branché. Ne rapprochez jamais le moteur pour compenser.
    .fix-no-cord = { $open ->
        [no] Apportez une rallonge GFCI (boutons TEST et RESET), assez longue et assez grosse.
       *[other] Branchez ces appareils { -generator(form: "to") }, puis éloignez-vous, du côté d’où vient le vent. Ou apportez une rallonge assez longue et assez grosse.
      } Ne rapprochez jamais le moteur pour compenser.
    .fix-measure = Mesurez les rallonges au pas et mettez leur longueur dans le plan. Ne rapprochez jamais le moteur pour compenser.
    .fix-bedside = Apportez une rallonge assez longue et assez grosse, ou une batterie faite pour l’appareil. Ne rapprochez jamais le moteur pour compenser.
    .fix-at-set = Branchez l’appareil sur une rallonge assez longue et assez grosse, ou apportez une batterie faite pour lui. Ne rapprochez jamais le moteur pour compenser.
    .fix-stated = Mesurez de nouveau de l’échappement jusqu’aux gens, et mettez-le dans le plan. Ou apportez une rallonge plus longue et assez grosse.

AIR006 = { $fix ->
    [when] Le moteur tourne peut-être pendant que des gens dorment : { $about }
   *[other] Le moteur tourne pendant que des gens dorment : { $about }
  }
    .why = On dort de { $from } à { $to } ({ $night }), et les gaz ne réveillent personne. Si le moteur doit tourner alors : à l’air libre, à { $ample } ou plus des gens, avec un { -alarm } de monoxyde de carbone en état là où ils dorment.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Chargez la batterie de { $life } le jour. Passez sur elle, et arrêtez le moteur avant que quelqu’un s’endorme.
    .fix-when = { night-decide } { night-instead }

night-told = les heures de silence
night-assumed = nous ignorons les heures et avons supposé celles-ci
