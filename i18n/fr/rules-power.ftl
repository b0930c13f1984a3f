# Rules on power.

# When things are on together: at the head of a sentence, and in one, with the space ahead of it.
when-first = { $timed ->
    [yes] À { $time }
   *[no] À toute heure
  }
when = { $timed ->
    [yes] {" "}à { $time }
   *[no] {""}
  }

POWER001 = { $fix ->
    [hours] { -generator(form: "The") } ne peut pas alimenter tout cela à la fois
    [leg-alone] Une moitié { -generator(form: "of") } ne peut pas alimenter { $about }
    [alone] { -generator(form: "The") } ne peut pas alimenter { $about }
    [amps-alone] { -generator(form: "The") } ne peut pas alimenter { $about }
    [life-alone] { -generator(form: "This") } ne peut pas alimenter { $about }
    [life-off] Trop d’appareils en marche avec { $life }{ when }
    [life-turns] Trop d’appareils en marche avec { $life }{ when }
    [leg] Une moitié { -generator(form: "of") } est surchargée{ when }
    [leg-turns] Une moitié { -generator(form: "of") } est surchargée{ when }
    [leg-look] Une moitié { -generator(form: "of") } est peut-être surchargée{ when }
    [leg-cord] Une moitié { -generator(form: "of") } est peut-être surchargée{ when }
   *[other] Trop d’appareils en marche à la fois{ when }
  }
    .why = { $fix ->
        [hours] Faute de savoir quand ceux-ci marchent, nous les avons tous comptés à la fois : { $about }. Ensemble, ils demandent { $demand }, mais { -generator(form: "the") } peut fournir { $limit }.
        [turns] Ceux-ci demandent { $demand } ensemble : { $about }. { -generator(form: "The") } peut fournir { $limit } : c’est { $over } de trop.
        [leg-alone] L’appareil prend { $demand } sur une moitié. Chaque moitié peut fournir { $limit } : c’est { $over } de trop, sur l’une comme sur l’autre.
        [alone] L’appareil demande { $demand }. { -generator(form: "The") } peut fournir { $limit } : c’est { $over } de trop.
        [amps-alone] L’appareil prend { $demand }. { -generator(form: "The") } peut fournir { $limit } : c’est { $over } de trop.
        [life-alone] { life-it } Il faut { $demand }, mais { -generator(form: "the") } peut fournir au plus { $limit } pour cela : il manque { $over }.
        [life-off] { life-on } { -generator(form: "The") } peut fournir { $limit }, mais ceux-ci demandent { $demand }, soit { $over } de trop : { $about }.
        [life-turns] { life-on } { -generator(form: "The") } peut fournir { $limit }, mais ceux-ci demandent { $demand }, soit { $over } de trop : { $about }.
        [leg] Ceux-ci prennent { $demand } sur une moitié : { $about }. Chaque moitié peut fournir { $limit } : c’est { $over } de trop.
        [leg-turns] Ceux-ci prennent { $demand } sur une moitié : { $about }. Chaque moitié peut fournir { $limit } : c’est { $over } de trop.
        [leg-look] Si tous ceux-ci sont sur une même moitié, ils y prennent { $demand } : { $about }. Chaque moitié peut fournir { $limit } : c’est { $over } de trop.
        [leg-cord] Si tous ceux-ci sont sur une même moitié, ils y prennent { $demand } : { $about }. Chaque moitié peut fournir { $limit } : c’est { $over } de trop.
       *[other] Ceux-ci prennent { $demand } ensemble : { $about }. { -generator(form: "The") } peut fournir { $limit } : c’est { $over } de trop.
      }
    .fix-turns = Utilisez-les à tour de rôle, ou laissez-en un à la maison. Dans le plan, donnez à chacun ses heures. Commencez par { $first } : rien ici ne demande plus.
    .fix-hours = Utilisez-les à tour de rôle : la carte montre ce qui va ensemble. Ou mettez dans le plan quand chacun marche.
    .fix-leg = Branchez { $move } à une prise de l’autre moitié, ou utilisez ces appareils à tour de rôle.
    .fix-leg-turns = Utilisez ces appareils à tour de rôle, ou laissez-en un à la maison.
    .fix-leg-look = Cherchez sur quelle moitié est chaque prise, et notez-le dans le plan. D’ici là, utilisez ces appareils à tour de rôle.
    .fix-leg-cord = Utilisez ces appareils à tour de rôle. Aucun plan ne sait sur quelle moitié est chaque bout d’une rallonge. Demandez à un { -electrician } avant de les utiliser ensemble.
    .fix-leg-alone = Laissez { $about } à la maison, prenez un réglage plus bas, ou apportez { -generator(form: "a") } de plus de puissance.
    .fix-amps = Utilisez-les l’un après l’autre. Dans le plan, donnez à chacun ses heures. Commencez par { $first } : rien ici ne prend plus.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] { -generator(form: "The") } ne peut pas démarrer { $about }
    [amps-alone] { -generator(form: "The") } ne peut pas démarrer { $about }
    [leg-alone] Une moitié { -generator(form: "of") } ne peut pas démarrer { $about }
    [again] Ceux-ci ne peuvent pas tous rester en marche ensemble
    [amps-again] Ceux-ci ne peuvent pas tous rester en marche ensemble
    [life-alone] { -generator(form: "This") } ne peut pas démarrer { $about }
    [life-together] { -generator(form: "This") } ne peut pas démarrer tous ceux-ci : { $life }
    [life-off] Démarrer autre chose peut couper { $life }
    [life-turns] Démarrer autre chose peut couper { $life }
   *[other] Ces appareils ne peuvent pas tous démarrer
  }
    .why = { $fix ->
        [alone] Démarrer { $first } sans rien d’autre demande { $demand } un instant. La pointe { -generator(form: "of") } est ici de { $limit } : il manque { $over }.
        [amps-alone] Démarrer { $first } sans rien d’autre demande { $demand } un instant. La pointe { -generator(form: "of") } est ici de { $limit } : il manque { $over }.
        [leg-alone] Démarrer { $first } sans rien d’autre demande { $demand } un instant. Une moitié { -generator(form: "of") } donne { $limit } au plus : il manque { $over }.
        [again] { when-first }, la puissance suffit si { $first } démarre en premier, mais un thermostat ou un moteur redémarre tout seul. Si cela démarre en dernier, il faut { $demand }, et { -generator(form: "the") } donne { $limit } au plus : il manque { $over }. Ensemble : { $about }.
        [amps-again] { when-first }, la puissance suffit si { $first } démarre en premier, mais un thermostat ou un moteur redémarre tout seul. Si cela démarre en dernier, il faut { $demand }, et { -generator(form: "the") } donne { $limit } au plus : il manque { $over }. Ensemble : { $about }.
        [life-alone] { life-it } Le démarrage demande { $demand } un instant, mais { -generator(form: "the") } donne { $limit } au plus : il manque { $over }.
        [life-together] { life-on } { when-first }, ceux-ci demandent jusqu’à { $demand } quand l’un démarre, mais { -generator(form: "the") } donne { $limit } au plus : il manque { $over }. Ensemble : { $about }.
        [life-off] { life-on } { when-first }, ceux-ci demandent jusqu’à { $demand } quand l’un démarre, mais { -generator(form: "the") } donne { $limit } au plus : il manque { $over }. Ensemble : { $about }.
        [life-turns] { life-on } { when-first }, ceux-ci demandent jusqu’à { $demand } quand l’un démarre, mais { -generator(form: "the") } donne { $limit } au plus : il manque { $over }. Ensemble : { $about }.
        [amps-fewer] { when-first }, ceux-ci demandent jusqu’à { $demand } quand l’un démarre. { -generator(form: "The") } donne { $limit } au plus : il manque { $over }, dans n’importe quel ordre. Ensemble : { $about }.
       *[other] { when-first }, ceux-ci demandent jusqu’à { $demand } quand l’un démarre. La pointe est ici de { $limit } : il manque { $over }, dans n’importe quel ordre. Ensemble : { $about }.
      }
    .fix-alone = Laissez { $about } à la maison, ou apportez { -generator(form: "a") } de plus de puissance.
    .fix-again = Utilisez-les à tour de rôle, comme le montre la carte. Démarrez { $first } pendant qu’un autre est arrêté.
    .fix-fewer = Démarrez { $first } pendant qu’un autre est arrêté, et utilisez ces appareils à tour de rôle.
    .fix-leg-alone = { POWER002.fix-alone }
    .fix-amps-alone = { POWER002.fix-alone }
    .fix-amps-again = { POWER002.fix-again }
    .fix-amps-fewer = { POWER002.fix-fewer }
    .fix-life-alone = { life-cannot }
    .fix-life-together = Ne comptez pas sur { -generator(form: "this") } pour { $life }. Restez là où il y a le courant du réseau, ou utilisez l’appareil de secours de votre fournisseur. Ne changez jamais le réglage d’un appareil.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER003 = Vous ne pouvez pas utiliser { $stranded } sur les { $rated } { -generator(form: "of") }
    .why = { -generator(form: "The") } peut fournir { $rated }. Les prises que vous utilisez ne peuvent donner que { $reachable } ({ $about }).
    .fix-outlet = Pour atteindre { $reach }, mettez dans le plan une rallonge à part depuis la prise « { $outlet } », et vérifiez de nouveau. Ne joignez jamais deux prises.
    .fix-socket = Pour atteindre { $reach }, mettez dans le plan une seconde rallonge depuis une autre place de « { $outlet } », et vérifiez de nouveau. Ne joignez jamais deux prises, ni les bouts de deux rallonges.
    .fix-accept = Comptez sur { $reachable }. Avec les prises et le matériel que vous pouvez utiliser, rien ne vous donne plus.

POWER004 = { $fix ->
    [late] Le disjoncteur de { $first } s’est déclenché au-dessus de son nombre
   *[other] Le disjoncteur de { $first } se déclenche trop tôt
  }
    .why = { $fix ->
        [late] Il porte { $marked }, mais ne s’est déclenché qu’à { $trips }. Tout disjoncteur laisse passer plus pendant peu de temps : nous comptons donc toujours { $marked }.
       *[other] Il porte { $marked }, mais il s’est déclenché à { $trips }. Comptez { $counted } au plus, mais ne comptez pas qu’il se déclenche encore là.
      }
    .fix-service = Faites-le examiner par un atelier d’entretien ou un { -electrician }. Ne vous en servez plus s’il sent, brunit ou chauffe.
    .fix-late = Comptez { $marked }, le nombre inscrit. S’il y passe plus pendant une heure, ne vous en servez plus avant qu’un { -electrician } l’ait examiné.

POWER005 = Puissance nominale et puissance de pointe sont presque égales
    .why = Le plan dit { $rated } en continu et { $peak } en pointe. Sur la plupart des modèles, la puissance nominale est nettement plus basse : le grand nombre sur la boîte est la pointe.
    .fix-plate = Lisez la plaque : cherchez les watts « nominaux », « running », « rated » ou « continuous ». Mettez ce nombre dans le plan.

POWER006 = Une moitié { -generator(form: "of") } porte presque tout
    .why = { when-first }, une moitié porte { $heavy } et l’autre { $light }. Chaque moitié peut fournir { $leg } et pas plus : la moitié de la puissance ne sert pas. En cause : { $about }.
    .fix-move = Branchez { $first } à une prise de l’autre moitié, si vous le pouvez.

POWER007 = { $first } peut faire caler le moteur au ralenti économique
    .why = Le démarrage demande { $starting }, et { -generator(form: "the") } peut fournir { $rated }. Au ralenti économique, le moteur tourne lentement et met une seconde ou deux à reprendre.
    .fix-off = Coupez le ralenti économique avant de faire marcher { $first }. Laissez-le coupé.

POWER008 = { $fix ->
    [sum] { $sets } { -generator(form: "many") } fonctionnent en parallèle
   *[other] Ces { -generator(form: "many") } peuvent griller en parallèle
  }
    .why = { $fix ->
        [sum] Ensemble, la puissance est de { $rated }, soit { $leg }. Le kit qui les joint et les prises donnent peut-être moins.
       *[other] Sans synchronisation, les { -generator(form: "many") } s’envoient du courant et grillent. Un cordon avec une fiche à chaque bout a des lames nues sous tension.
      }
    .fix-apart = Faites-les fonctionner séparément, chaque modèle avec ses propres rallonges. Ne joignez que des modèles à onduleur de 120 V, avec le kit du fabricant prévu exactement pour eux.
    .fix-look = Faites-les fonctionner séparément tant que vous ne savez pas : tous doivent être des modèles à onduleur de 120 V, et le kit celui du fabricant, prévu exactement pour eux.
    .fix-sum = Arrêtez tous les moteurs avant de les joindre ou de les séparer. Demandez au fabricant ou à un { -electrician } si le neutre est relié à la terre dans plus d’un modèle : c’est trop. Ne reliez pas vous-même le neutre et la terre.

POWER009 = { $fix ->
    [motor] { $about } consomme peut-être plus que ne supporte sa fiche
   *[other] { $about } consomme plus que ne supporte sa fiche
  }
    .why = { $fix ->
        [motor] D’après ses chevaux-vapeur, nous comptons { $demand }. Sa fiche, { $plug }, est faite pour { $limit }.
       *[other] Il y passe { $demand }. Sa fiche, { $plug }, est faite pour { $limit }.
      }
    .fix-plate = Relisez sa plaque, et regardez sa fiche. Ne vous en servez pas tant que les deux ne s’accordent pas, ni si quelqu’un a changé sa fiche.
    .fix-motor = Lisez les ampères sur sa plaque, et mettez-les dans le plan. S’ils dépassent { $limit }, n’utilisez pas l’appareil avec cette fiche.
