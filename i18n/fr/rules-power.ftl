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
    [leg-alone] Un côté ne suffit pas à { $about }
    [alone] { -generator(form: "The") } ne suffit pas à { $about }
    [amps-alone] { -generator(form: "The") } ne suffit pas à { $about }
    [life-alone] { -generator(form: "This") } ne peut pas alimenter { $about }
    [life-off] Trop d’appareils en marche avec { $life }{ when }
    [life-turns] Trop d’appareils en marche avec { $life }{ when }
    [leg] On demande trop à un côté { -generator(form: "of") }{ when }
    [leg-turns] On demande trop à un côté { -generator(form: "of") }{ when }
    [leg-look] On demande peut-être trop à un côté { -generator(form: "of") }{ when }
    [leg-cord] On demande peut-être trop à un côté { -generator(form: "of") }{ when }
   *[other] Trop d’appareils en marche à la fois{ when }
  }
    .why = { $fix ->
        [hours] Personne n’a dit quand ceux-ci fonctionnent, alors tous comptent à la fois : { $about }. Ensemble, ils demandent { $demand }. { -generator(form: "The") } peut fournir { $limit } en continu.
        [turns] Ceux-ci demandent { $demand } ensemble : { $about }. { -generator(form: "The") } peut fournir { $limit } en continu : c’est { $over } de trop.
        [leg-alone] L’appareil tire { $demand } d’un côté. Chaque côté donne { $limit } et pas plus : c’est { $over } de trop, d’un côté comme de l’autre.
        [alone] À lui seul, l’appareil demande { $demand }. { -generator(form: "The") } peut fournir { $limit } en continu : c’est { $over } de trop.
        [amps-alone] À lui seul, l’appareil consomme { $demand }, plus que ses watts ne le disent. { -generator(form: "The") } donne { $limit } : c’est { $over } de trop.
        [life-alone] { life-it } Il y faut { $demand }, et { -generator(form: "the") } peut y fournir { $limit } en continu au plus : il manque { $over }.
        [life-off] { life-on } Ceux-ci demandent { $demand } ensemble : { $about }. { -generator(form: "The") } peut fournir { $limit } en continu : c’est { $over } de trop.
        [life-turns] { life-on } Ceux-ci demandent { $demand } ensemble : { $about }. { -generator(form: "The") } peut fournir { $limit } en continu : c’est { $over } de trop.
        [leg] Ceux-ci chargent un seul côté : { $about }. Ils consomment { $demand } sur un côté, et chaque côté donne { $limit } : c’est { $over } de trop.
        [leg-turns] Ceux-ci chargent un seul côté : { $about }. Ils consomment { $demand } sur un côté, et chaque côté donne { $limit } : c’est { $over } de trop.
        [leg-look] Si tous ceux-ci sont du même côté, ils y consomment { $demand } : { $about }. Chaque côté donne { $limit } : c’est { $over } de trop.
        [leg-cord] Si tous ceux-ci sont du même côté, ils y consomment { $demand } : { $about }. Chaque côté donne { $limit } : c’est { $over } de trop.
       *[other] Ceux-ci consomment { $demand } ensemble : { $about }. { -generator(form: "The") } donne { $limit } : c’est { $over } de trop. Certains consomment plus que leurs watts ne le disent.
      }
    .fix-turns = Utilisez-les à tour de rôle. Donnez à chacun ses heures, ou laissez-en un à la maison. Voyez { $first } d’abord : c’est ce qui demande le plus.
    .fix-hours = Utilisez-les à tour de rôle : la carte montre ce qui va ensemble. Ou dites dans le plan quand chacun fonctionne.
    .fix-leg = Déplacez { $move } vers une prise de l’autre côté, ou utilisez ces appareils à tour de rôle.
    .fix-leg-turns = Utilisez ces appareils à tour de rôle, ou laissez-en un à la maison.
    .fix-leg-look = Cherchez de quel côté est chaque prise, et notez-le dans le plan. D’ici là, utilisez ces appareils à tour de rôle.
    .fix-leg-cord = Utilisez ces appareils à tour de rôle. Aucun plan ne sait de quel côté est chaque bout d’une rallonge. Demandez à un { -electrician } avant de les utiliser ensemble.
    .fix-leg-alone = Laissez { $about } à la maison, prenez son réglage le plus bas, ou apportez plus puissant.
    .fix-amps = Utilisez-les à tour de rôle. Voyez { $first } d’abord : c’est ce qui consomme le plus.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] { -generator(form: "The") } ne peut pas démarrer { $about }
    [amps-alone] { -generator(form: "The") } ne peut pas démarrer { $about }
    [leg-alone] Une phase { -generator(form: "of") } ne peut pas démarrer { $about }
    [again] Ceux-ci ne peuvent pas tous rester en marche ensemble
    [amps-again] Ceux-ci ne peuvent pas tous rester en marche ensemble
    [life-alone] { -generator(form: "This") } ne peut pas démarrer { $about }
    [life-together] { -generator(form: "This") } ne peut pas démarrer tous ceux-ci : { $life }
    [life-off] Ce qui démarre à côté de { $life } peut l’arrêter
    [life-turns] Ce qui démarre à côté de { $life } peut l’arrêter
   *[other] Ces appareils ne peuvent pas tous démarrer
  }
    .why = { $fix ->
        [alone] Démarrer { $first } sans rien d’autre demande { $demand } un instant. La puissance de pointe { -generator(form: "of") } est de { $limit } : il manque { $over }.
        [amps-alone] Démarrer { $first } sans rien d’autre demande { $demand } un instant. La puissance de pointe { -generator(form: "of") } est de { $limit } : il manque { $over }.
        [leg-alone] Démarrer { $first } sans rien d’autre demande { $demand } un instant. { -generator(form: "The") } a deux phases, chacune avec la moitié de la puissance. Une phase donne { $limit } au plus : il manque { $over }.
        [again] { when-first }, ceux-ci fonctionnent ensemble : { $about }. Si { $first } démarre en dernier, il faut { $demand }. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }. En premier, cela passe. Mais ce qui a un thermostat ou un moteur redémarre tout seul.
        [amps-again] { when-first }, ceux-ci fonctionnent ensemble : { $about }. Si { $first } démarre en dernier, il faut { $demand }. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }. En premier, cela passe. Mais ce qui a un thermostat ou un moteur redémarre tout seul.
        [life-alone] { life-it } Le démarrage demande { $demand } un instant. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }.
        [life-together] { life-on } { when-first }, ceux-ci fonctionnent ensemble : { $about }. Le pire moment demande { $demand }. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }.
        [life-off] { life-on } { when-first }, ceux-ci fonctionnent ensemble : { $about }. Le pire moment demande { $demand }. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }.
        [life-turns] { life-on } { when-first }, ceux-ci fonctionnent ensemble : { $about }. Le pire moment demande { $demand }. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }.
        [amps-fewer] { when-first }, ceux-ci fonctionnent ensemble : { $about }. Le pire moment demande { $demand }. { -generator(form: "The") } donne là { $limit } au plus : il manque { $over }, dans n’importe quel ordre.
       *[other] { when-first }, ceux-ci fonctionnent ensemble : { $about }. Le pire moment demande { $demand }. La pointe est de { $limit } : il manque { $over }, dans n’importe quel ordre.
      }
    .fix-alone = Laissez { $about } à la maison, ou apportez { -generator(form: "a") } de plus de puissance.
    .fix-again = Utilisez-les à tour de rôle, comme le montre la carte. Démarrez { $first } pendant qu’un autre est arrêté.
    .fix-fewer = Démarrez { $first } pendant qu’un autre est arrêté, et utilisez ces appareils à tour de rôle.
    .fix-leg-alone = { POWER002.fix-alone }
    .fix-amps-alone = { POWER002.fix-alone }
    .fix-amps-again = { POWER002.fix-again }
    .fix-amps-fewer = { POWER002.fix-fewer }
    .fix-life-alone = { life-cannot }
    .fix-life-together = Ne comptez pas sur { -generator(form: "this") } pour { $life }. Restez où il y a le courant du réseau, ou utilisez l’appareil de secours de votre fournisseur. Ne changez jamais le réglage d’un appareil.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER003 = { $stranded } { -generator(form: "of") } n’arrivent pas jusqu’à vous
    .why = { -generator(form: "The") } peut fournir { $rated } en continu. Les prises utilisées laissent passer { $reachable } ({ $about }). Le reste n’arrive pas.
    .fix-outlet = Pour atteindre { $reach }, notez dans le plan une rallonge à part sur la prise « { $outlet } », et vérifiez de nouveau. Ne reliez jamais deux prises ensemble.
    .fix-socket = Pour atteindre { $reach }, notez dans le plan une seconde rallonge à part sur une autre prise de « { $outlet } », et vérifiez de nouveau. Ne reliez jamais deux prises ensemble, ni les bouts de deux rallonges.
    .fix-accept = Comptez sur { $reachable }. Avec les prises et le matériel que vous pouvez utiliser, rien ne vous donne plus.

POWER004 = { $fix ->
    [late] Le disjoncteur { $first } s’est déclenché au-dessus de son nombre
   *[other] Le disjoncteur { $first } se déclenche trop tôt
  }
    .why = { $fix ->
        [late] Il porte le nombre { $marked }, et vous l’avez vu se déclencher à { $trips }. Tout disjoncteur laisse passer plus pendant peu de temps : ici, c’est { $marked } qui compte.
       *[other] Il porte le nombre { $marked }, mais il s’est déclenché à { $trips }. Comptez { $trips }, mais ne vous fiez pas à ce qu’il se déclenche là.
      }
    .fix-service = Faites-le examiner par un atelier d’entretien ou un { -electrician }. Ne vous en servez plus s’il sent, brunit ou chauffe.
    .fix-late = Comptez { $marked }, le nombre inscrit. S’il laisse passer plus pendant une heure, ne vous en servez plus avant qu’un { -electrician } l’ait examiné.

POWER005 = Puissance nominale et puissance de pointe sont presque égales
    .why = Le plan dit { $rated } en continu et { $peak } en pointe. Sur la plupart des modèles, la puissance nominale est nettement plus basse. Le grand nombre sur la boîte est la pointe.
    .fix-plate = Lisez la plaque : cherchez les watts « nominaux », « running », « rated » ou « continuous ». Mettez ce nombre dans le plan.

POWER006 = Presque tout dépend d’un seul côté { -generator(form: "of") }
    .why = { when-first }, un côté porte { $heavy } et l’autre { $light }. Chaque côté donne { $leg } et pas plus, et la moitié de la puissance dort. En cause : { $about }.
    .fix-move = Déplacez { $first } vers une prise de l’autre côté, si vous le pouvez.

POWER007 = Au ralenti économique, { $first } peut caler
    .why = Son démarrage prend { $starting } un instant, et { -generator(form: "the") } peut fournir { $rated } en continu. Au ralenti économique, le moteur tourne lentement et met une seconde ou deux à reprendre.
    .fix-off = Coupez le ralenti économique avant que { $first } démarre, et laissez-le coupé tant que cet appareil démarre et s’arrête de lui-même.

POWER008 = { $fix ->
    [sum] { $sets } { -generator(form: "many") } fonctionnent en parallèle
   *[other] Rien ne dit que ces { -generator(form: "many") } peuvent fonctionner en parallèle
  }
    .why = { $fix ->
        [sum] Ensemble, la puissance est de { $rated } en continu, soit { $leg }. Le kit qui les joint et les prises peuvent en laisser passer moins.
       *[other] Si les machines ne sont pas synchronisées, elles s’envoient du courant l’une à l’autre et grillent. Un cordon à deux fiches a des lames nues sous tension quand on tire un bout.
      }
    .fix-apart = Faites-les fonctionner séparément, avec des rallonges à part. Ne joignez que des modèles à onduleur de 120 V, avec le kit du fabricant prévu exactement pour eux.
    .fix-look = Faites-les fonctionner séparément tant que vous ne savez pas : tous doivent être des modèles à onduleur de 120 V, et le kit celui du fabricant, prévu exactement pour eux.
    .fix-sum = Arrêtez tous les moteurs avant de les joindre ou de les séparer. Demandez au fabricant ou à un { -electrician } si le neutre est relié à la terre sur plus d’une machine : c’est trop. Ne reliez pas vous-même le neutre et la terre.

POWER009 = { $fix ->
    [motor] { $about } consomme peut-être plus que ne supporte sa fiche
   *[other] { $about } consomme plus que ne supporte sa fiche
  }
    .why = { $fix ->
        [motor] D’après ses chevaux, nous comptons { $demand }. Sa fiche, { $plug }, est faite pour { $limit }.
       *[other] Il consomme { $demand }. Sa fiche, { $plug }, est faite pour { $limit }.
      }
    .fix-plate = Relisez sa plaque, et regardez sa fiche. Laissez-le débranché tant qu’elles ne s’accordent pas. N’utilisez pas une fiche posée par quelqu’un d’autre.
    .fix-motor = Lisez les ampères sur sa plaque, et mettez-les dans le plan. S’il y en a plus de { $limit }, ne l’utilisez pas avec cette fiche.
