# Rules on what plugs in where.

FIT001 = { $fix ->
    [load] Aucune prise n’accepte la fiche de { $any }
    [bonding-plug] Il ne reste pas de place pour la fiche de liaison
    [dead] Aucune prise où entre la fiche de { $any } ne peut l’alimenter
    [part] La fiche de { $about } n’entre pas là où le plan la met
    [loose] Le plan ne branche { $place } nulle part : pas de courant pour { $about }
    [unusable] N’utilisez pas { $place }, quelle que soit la prise
    [misplaced] { $place } n’accepte pas la fiche de { $any }
    [unknown] N’utilisez pas { $first } sans connaître { $of ->
        [plug] sa fiche
        [outlets] ses prises
       *[both] ses formes
    }
   *[other] Aucune place libre pour { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] Cela peut surchauffer et prendre feu avant qu’un disjoncteur se déclenche.
            [CORD004] Le { -ground-wire } manque peut-être. Un fil rompu à l’intérieur peut alors mettre un boîtier métallique sous pleine tension.
            [SHOCK005] Le neutre y est relié à la terre à l’intérieur, ou peut-être. Du métal que vous touchez peut alors porter du courant.
           *[other] Ce qui ne va pas n’ira pas mieux dans une autre prise.
          }
        [unknown] Nous ignorons { $of ->
            [plug] sa fiche
            [outlets] ses prises
           *[both] sa fiche et ses prises
        }, et ne l’avons donc pas vérifié, ni rien en aval.
        [loose] Ce qui y est branché ne reçoit pas de courant, et nous ne l’avons pas vérifié.
        [lost] Le plan met plus de fiches dans { $place } qu’il n’y a de places. Nous n’avons rien vérifié en aval de { $about }.
        [bonding-plug] Le plan dit qu’une fiche de liaison est en place, et elle occupe une place à elle seule. Toutes les places ordinaires { -generator(form: "of") } sont prises.
        [dead] Sa fiche entre quelque part, mais il n’y a là pas de courant, ou d’autres volts que sa forme ne promet.
       *[other] Une fiche qui n’entre pas n’a rien à faire là : la forme écarte les mauvais volts ou ampères.
      }
    .fix-load = Prenez une rallonge ou un coffret certifié par un laboratoire, avec la bonne prise et le bon disjoncteur. Ne limez, ne pliez et ne coupez jamais une fiche.
    .fix-dead = Ne branchez pas cet appareil. Prenez une rallonge ou un coffret certifié par un laboratoire, avec la bonne prise et le bon disjoncteur. Ne changez jamais une fiche.
    .fix-part = { $adapted ->
        [yes] Branchez-le à { $outlet } avec un adaptateur certifié par un laboratoire ({ $plug } vers { $end }), et mettez cela dans le plan.
       *[no] Vérifiez les deux formes et corrigez le plan, ou prenez une rallonge certifiée par un laboratoire qui va aux deux.
      } Ne limez, ne pliez et ne coupez jamais une fiche.
    .fix-lost = Regardez où se branche vraiment { $about } et corrigez le plan. { $fits ->
        [yes] S’il n’y a pas de place, prenez { $sockets }, jamais un répartiteur ni un adaptateur.
       *[no] { $free ->
            [yes] S’il n’y a pas de place, branchez { $past } à { $others } à la place, jamais à un répartiteur ni à un adaptateur.
           *[no] { $household ->
                [yes] Pour faire de la place, prenez seulement une rallonge certifiée à trois prises avec { -gfci }, jamais un répartiteur ni un adaptateur.
               *[no] S’il n’y a pas de place, prenez une autre prise ou ne branchez pas { $about }, jamais un répartiteur ni un adaptateur.
              }
          }
      }
    .fix-loose = Branchez { $place } { $fits ->
        [no] { $adapted ->
            [yes] à { $outlet } avec un adaptateur certifié par un laboratoire ({ $plug } vers { $end })
           *[no] là où sa fiche entre
          }
       *[yes] à { $sockets }
      }{ $inside ->
        [yes] {""}
       *[no] , ou branchez { $about } { $free ->
            [no] ailleurs
           *[yes] à { $others }
          }
      }. Mettez cela dans le plan, et vérifiez de nouveau.
    .fix-misplaced = { $free ->
        [no] Toute autre prise où la fiche entre est occupée, ou ne peut pas l’alimenter : laissez l’appareil débranché.
       *[yes] Prenez plutôt { $others } : la fiche y entre.
      } Corrigez le plan. Ne limez, ne pliez et ne coupez jamais une fiche.
    .fix-unusable = N’utilisez pas { $place }. Retirez cette pièce du plan, et branchez ailleurs ce qui a besoin de courant.
    .fix-unknown = Collez du ruban adhésif sur sa fiche : NE PAS UTILISER. Regardez-le de l’extérieur, et notez dans le plan ce que vous voyez.
    .fix-bonding-plug = Laissez-lui une place, ou notez dans le plan qu’elle n’est pas branchée. Ne la mettez jamais dans un répartiteur, un adaptateur ou une rallonge.

FIT002 = { $first } supporte moins que sa forme ne le dit
    .why = Cela finit par la forme { $shape }, mais sa fiche est faite pour { $plug }.
    .fix-plan = En aval de { $first }, comptez { $limit }{ $hours ->
        [yes] {" "}pendant trois heures ou plus, et { $short } pendant moins longtemps
       *[no] {""}
      }. Inscrivez-le dessus.

FIT003 = { $fix ->
    [look] Il n’y a peut-être pas { $twice } à { $about }
   *[other] { $about } : mauvaise tension pour sa forme
  }
    .why = { $fix ->
        [look] Cette forme est pour { $twice } seulement. Beaucoup de petits modèles de { -generator } ne les donnent pas : elle est alors sous tension, mais à la mauvaise tension.
       *[other] Il lui faut les deux moitiés d’{ -generator(form: "a") } de 120/240 V, ou un neutre, et elle ne les a pas : aucun adaptateur ne peut ajouter cela. Mais elle est sous tension.
      }
    .fix-leave = N’y branchez rien, et traitez-la comme sous tension. Ne changez jamais une fiche pour qu’elle entre.
    .fix-look = Cherchez « { $twice } » sur la plaque { -generator(form: "of") }. D’ici là, n’y branchez rien, et traitez-la comme sous tension.

FIT004 = { $fix ->
    [too-large] { $first } demande plus que ne peut donner sa prise
    [life-large] Aucune prise ici ne peut alimenter { $any }
    [refused] Aucune prise utilisable pour { $any }
    [refused-here] Le plan a la mauvaise prise pour { $about }
   *[other] Aucune prise utilisable n’est libre pour { $any }
  }
    .why = { $fix ->
        [too-large] Cet appareil demande { $demand }. { $planned ->
            [yes] Sa prise dans le plan donne { $limit }.
           *[other] La meilleure prise possible donne { $limit }.
        }
        [life-large] { life-it } Cet appareil demande { $demand }. La meilleure prise possible donne { $limit }.
        [life-room] { life-it } Toutes les prises pour lui sont occupées, n’ont plus assez, ou n’ont pas de GFCI.
        [refused] { $planned ->
            [yes] Il ne faut pas brancher cet appareil là où le plan le met. Aucune prise libre et permise ne peut l’alimenter.
           *[other] Quelque chose ne va pas à chaque prise qui pourrait l’alimenter.
        }
        [refused-here] Il ne faut pas brancher cet appareil là où le plan le met. Libre, et capable de l’alimenter : { $free }.
       *[other] Toutes les prises pour lui sont occupées, n’ont plus assez, ou n’ont pas de GFCI.
      }
    .fix-too-large = Laissez cet appareil à la maison, mettez-le à un réglage plus bas, ou prenez une prise qui peut donner { $demand }.
    .fix-no-room = Laissez { $about } à la maison, ou laissez-y autre chose pour libérer une prise. Puis vérifiez de nouveau.
    .fix-life-large = Prenez une prise qui peut donner { $demand }, ou ne comptez pas sur { -generator(form: "this") } pour { $about }. Restez là où il y a le courant du réseau, ou utilisez l’appareil de secours de votre fournisseur. Ne changez jamais le réglage de l’appareil.
    .fix-life-room = Laissez autre chose à la maison pour faire de la place, et vérifiez de nouveau.
    .fix-refused = { $life ->
        [yes] Réglez d’abord ce qui ne va pas là. D’ici là, faites-le marcher sur une batterie faite pour lui, et ne comptez pas sur { -generator(form: "this") }.
       *[no] Réglez d’abord ce qui ne va pas là, ou laissez cet appareil à la maison.
      }
    .fix-refused-here = Branchez-le plutôt à { $free }, notez-le dans le plan et vérifiez de nouveau. Ou réglez d’abord ce qui ne va pas à sa prise.

FIT005 = Faciles à confondre : { $one } et { $other }
    .why = Dans le noir, vous pouvez prendre l’une pour l’autre. { $one } donne { $volts }, et { $other } donne { $volts-other }. Prises : { $about }.
    .fix-look = Collez les étiquettes imprimées. Regardez la face dessinée avant de pousser. Si une fiche doit être forcée, elle est au mauvais endroit.

FIT006 = { $fix ->
    [adapter] { $about } donne { $twice } là où il faut { $volts }
    [leave] { $about } demande { $twice } et ne les reçoit pas
    [look] { $about } demande { $twice } et ne les reçoit peut-être pas
   *[other] { $about } ne reçoit peut-être que { $volts }
  }
    .why = { $fix ->
        [adapter] Il y arrive { $twice } et aucun neutre. Un appareil fait pour { $volts } y prend quatre fois sa puissance, et brûle avant qu’un disjoncteur se déclenche.
        [leave] { $inside ->
            [yes] L’appareil est fait pour { $twice }
           *[no] Sa fiche dit { $twice }
          }, mais il y arrive { $volts } au plus, et aucun adaptateur n’y change rien. Un moteur bourdonne, ne démarre pas et surchauffe.
        [look] { $inside ->
            [yes] L’appareil est fait pour { $twice }
           *[no] Sa fiche dit { $twice }
          }. Beaucoup de petits modèles de { -generator } ne donnent que { $volts }, et aucun adaptateur n’y change rien.
       *[other] { $inside ->
            [yes] L’appareil prend { $volts } et { $twice }
           *[no] Sa fiche prend { $volts } et { $twice }
          }. Ici il n’arrive que { $volts } : ses parties à { $twice } ne marchent pas.
      }
    .fix-adapter = N’y branchez rien. Laissez à la maison l’adaptateur ou la rallonge qui finit ainsi.
    .fix-leave = { $inside ->
        [yes] Laissez l’appareil éteint
       *[no] Laissez l’appareil à la maison
      }, ou apportez { -generator(form: "a") } qui donne { $twice }. Ne changez jamais une fiche, et ne joignez jamais deux prises.
    .fix-look = Cherchez « 240 V » sur la plaque { -generator(form: "of") }. D’ici là, { $inside ->
        [yes] laissez l’appareil éteint
       *[no] ne branchez pas l’appareil
      }. Ne changez jamais une fiche et ne joignez jamais deux prises.
    .fix-part = Voyez dans son manuel s’il peut marcher à { $volts } seulement. Si le manuel ne le dit pas, { $inside ->
        [yes] laissez-le éteint
       *[no] ne le branchez pas
      }.

FIT007 = { $fix ->
    [plate] Des fentes pour { $twice }, mais le plan dit { $volts } : { $about }
    [maybe] Il y a peut-être { $twice } ici : { $about }
   *[other] Il y a { $twice } ici : { $about }
  }
    .why = { $fix ->
        [plate] L’un des deux est faux. Tous les chiffres ici sont pour { $volts } : si { -generator(form: "the") } donne { $twice }, chaque prise de { $volts } n’a que la moitié de sa puissance.
        [maybe] Nous ignorons si { -generator(form: "the") } donne { $volts } ou { $twice }. Ce qui est fait pour { $volts } brûle à { $twice }.
        [these] En ont besoin : { $needs }. Toutes les autres prises donnent { $volts }.
       *[other] Rien dans le plan n’en a besoin. Toutes les autres prises donnent { $volts }.
      }
    .fix-nothing = N’y branchez que des rallonges, coffrets et adaptateurs certifiés pour 120/240 V. Collez l’étiquette imprimée.
    .fix-these = N’y branchez que ce dont la plaque dit { $twice }, ou des rallonges, coffrets et adaptateurs certifiés pour 120/240 V.
    .fix-maybe = Cherchez « 120/240 V » sur la plaque { -generator(form: "of") }. D’ici là, n’y branchez que des rallonges, coffrets et adaptateurs certifiés pour 120/240 V.
    .fix-plate = Avant de démarrer le moteur, cherchez « 120 V » ou « 120/240 V » sur sa plaque. Si elle dit « 120/240 V », mettez-le dans le plan et imprimez de nouvelles étiquettes et une nouvelle carte.
