# Rules on what plugs in where.

FIT001 = { $fix ->
    [load] Aucune prise n’accepte la fiche de { $any }
    [bonding-plug] Il ne reste pas de prise pour la fiche de liaison
    [bonding-socket] Il ne reste pas de prise dans { $place } pour la fiche de liaison
    [dead] La prise où { $any } pourrait se brancher ne lui donne pas le courant qu’il faut
    [part] { $about } n’entre pas là où il faudrait le brancher
    [loose] { $place } n’est branché sur rien : pas de courant pour { $about }
    [unusable] N’utilisez pas { $place }, où que vous le branchiez
    [misplaced] { $place } n’accepte pas la fiche de { $any }
   *[other] Aucune place libre pour { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] Il peut surchauffer et prendre feu avant qu’un disjoncteur se déclenche.
            [CORD004] Il n’a peut-être pas de { -ground-wire }. Un défaut peut alors mettre toute la tension sur un boîtier de métal.
            [SHOCK005] Il relie le neutre à la terre à l’intérieur, ou peut-être. Le métal que vous touchez peut alors conduire du courant.
           *[other] Ce qui ne va pas n’ira pas mieux dans une autre prise.
          }
        [loose] Ce qui en dépend ne reçoit pas de courant, et rien n’y a été vérifié.
        [lost] Le plan met plus de fiches dans { $place } qu’il n’y a de places. Rien de ce qui suit { $about } n’a été vérifié.
        [bonding-plug] Le plan dit qu’une fiche de liaison neutre-terre est en place, et elle occupe une prise. Toutes les prises domestiques { -generator(form: "of") } sont prises.
        [bonding-socket] Le plan dit qu’une fiche de liaison neutre-terre est dans { $place }, et elle occupe une prise. D’autres choses y occupent toutes les prises.
        [dead] Quelque chose accepte sa fiche, mais ne reçoit pas de courant, ou donne une autre tension que celle de sa forme.
       *[other] Les formes diffèrent pour qu’une fiche ne rencontre jamais les mauvais volts ou ampères. Une fiche qui n’entre pas n’est pas faite pour aller là.
      }
    .fix-load = Vérifiez la forme de la fiche. Prenez une rallonge ou un coffret certifié par un laboratoire, avec la bonne prise et le bon disjoncteur. Ne limez, pliez ou coupez jamais une fiche.
    .fix-dead = Laissez-le débranché. Prenez une rallonge ou un coffret certifié par un laboratoire, avec la bonne prise et le bon disjoncteur. Ne changez jamais une fiche.
    .fix-part = Vérifiez les deux formes et corrigez le plan, ou prenez une rallonge certifiée par un laboratoire qui va aux deux. Ne limez, pliez ou coupez jamais une fiche.
    .fix-lost = Regardez où se branche vraiment { $about } et corrigez le plan. { $fits ->
        [yes] S’il n’y a pas de place, prenez { $sockets }, et jamais un répartiteur ni un adaptateur.
       *[no] { $free ->
            [yes] S’il n’y a pas de place, laissez-le débranché, et branchez { $past } à { $others }. Ne prenez jamais de répartiteur ni d’adaptateur.
           *[no] { $household ->
                [yes] Pour faire de la place, prenez seulement une rallonge certifiée à trois prises avec { -gfci }, jamais un répartiteur ou un adaptateur.
               *[no] S’il n’y a pas de place, prenez une autre prise ou laissez-le débranché, et jamais un répartiteur ni un adaptateur.
              }
          }
      }
    .fix-loose = Branchez { $place } { $fits ->
        [no] là où sa fiche entre
       *[yes] à { $sockets }
      }{ $inside ->
        [yes] {""}
       *[no] , ou branchez { $about } { $free ->
            [no] ailleurs
           *[yes] à { $others }
          }
      }. Dites-le dans le plan, et vérifiez de nouveau.
    .fix-misplaced = { $free ->
        [no] Ailleurs, tout est pris ou trop faible : laissez-le débranché.
       *[yes] Prenez plutôt { $others } : la fiche y entre.
      } Corrigez le plan. Ne limez, pliez ou coupez jamais une fiche.
    .fix-unusable = N’utilisez pas { $place }. Retirez-le du plan, et branchez ailleurs ce qui a besoin de courant.
    .fix-bonding-plug = Laissez une prise pour elle, ou dites dans le plan qu’elle reste dehors. Ne la mettez jamais dans un répartiteur, un adaptateur ou une rallonge.
    .fix-bonding-socket = { FIT001.fix-bonding-plug }

FIT002 = { $first } porte moins qu’il n’y paraît
    .why = Le bout a la forme { $shape }, mais la fiche est faite pour { $plug }.
    .fix-plan = Après { $first }, comptez { $limit }{ $hours ->
        [yes] {" "}pendant trois heures ou plus, et { $short } pour moins longtemps
       *[no] {""}
      }. Marquez-le ainsi.

FIT003 = { $fix ->
    [look] Il n’y a peut-être pas { $twice } à { $about }
   *[other] { $about } : pas les volts que sa forme promet
  }
    .why = { $fix ->
        [look] Elle est pour { $twice } seulement. Beaucoup de petits appareils n’en donnent pas : alors elle est sous tension, mais pas la bonne.
       *[other] Une prise de 240 V demande les deux côtés { -generator(form: "of") } de 120/240 V : avec un seul, elle a 120 V. Une prise de 120 V demande un neutre. Ce qui alimente celle-ci ne l’a pas, et aucun adaptateur ne peut le créer. Elle n’est pas hors tension.
      }
    .fix-leave = N’y branchez rien, et traitez-la comme sous tension. Prenez une prise qui a ce qu’il faut. Ne changez jamais une fiche pour qu’elle entre.
    .fix-look = Cherchez « { $twice } » sur la plaque { -generator(form: "of") }. D’ici là, n’y branchez rien, et traitez-la comme sous tension.

FIT004 = { $fix ->
    [too-large] { $first } demande plus que sa prise ne supporte
    [life-large] Aucune prise ici ne supporte { $any }
    [refused] Aucune prise utilisable pour { $any }
    [refused-here] Le plan a une mauvaise prise pour { $about }
   *[other] Pas de prise utilisable libre pour { $any }
  }
    .why = { $fix ->
        [too-large] Cet appareil demande { $demand }. { $planned ->
            [yes] Sa prise du plan supporte { $limit }.
           *[other] La meilleure prise possible supporte { $limit }.
        }
        [life-large] { life-it } Cet appareil demande { $demand }. La meilleure prise possible supporte { $limit }.
        [life-room] { life-it } Toutes les prises permises pour lui sont occupées, ou supportent trop peu avec le reste.
        [refused] { $planned ->
            [yes] Il ne faut pas le brancher là où le plan le met, et aucune prise libre et permise ne convient.
           *[other] Quelque chose ne va pas à chaque prise qui conviendrait.
        }
        [refused-here] Là où le plan le met, il ne faut pas le brancher. Libre, et capable de l’alimenter : { $free }.
       *[other] Toutes les prises permises pour lui sont occupées, ou supportent trop peu avec le reste.
      }
    .fix-too-large = Laissez-le à la maison, mettez-le à un réglage plus bas, ou prenez une prise qui supporte { $demand }.
    .fix-no-room = Laissez à la maison { $about }, ou quelque chose qui est branché là où il irait. Puis vérifiez de nouveau.
    .fix-life-large = Prenez une prise qui supporte { $demand }. S’il n’y en a pas : { life-cannot }
    .fix-life-room = Laissez autre chose à la maison pour lui, et vérifiez de nouveau.
    .fix-refused = Réglez d’abord ce qui ne va pas là, ou laissez-le à la maison.
    .fix-refused-here = Branchez-le plutôt à { $free }, notez-le dans le plan et vérifiez de nouveau. Ou réglez d’abord ce qui ne va pas à sa prise.

FIT005 = Deux formes ici se confondent facilement : { $one } et { $other }
    .why = Dans le noir, la main prend l’une pour l’autre. { $one } donne { $volts }, { $other } donne { $volts-other }. Prises : { $about }.
    .fix-look = Collez les étiquettes imprimées. Regardez la face dessinée avant de pousser. Une fiche qu’il faut forcer est au mauvais endroit.

FIT006 = { $fix ->
    [adapter] { $about } donne { $twice } là où l’on attend { $volts }
    [leave] { $about } demande { $twice } et ne les reçoit pas
    [look] On ignore si { -generator(form: "the") } donne { $twice }, que { $about } demande
   *[other] { $about } ne reçoit peut-être que { $volts }
  }
    .why = { $fix ->
        [adapter] Il y arrive { $twice } et aucun neutre. Un appareil fait pour { $volts } y prend quatre fois sa puissance : il éclate ou brûle avant qu’un disjoncteur se déclenche.
        [leave] Sa fiche dit { $twice }. Il y arrive { $volts } au plus. Un moteur bourdonne, ne démarre pas et chauffe. Aucun adaptateur ne fait { $twice } de { $volts }.
        [look] Sa fiche dit { $twice }. Beaucoup de petits modèles ne donnent que { $volts }. Aucun adaptateur n’en fait { $twice }.
       *[other] Sa fiche prend { $volts } et { $twice }. Ici il n’arrive que { $volts } : ses parties à { $twice } restent mortes.
      }
    .fix-adapter = N’y branchez rien. Laissez à la maison l’adaptateur ou le cordon qui finit ainsi.
    .fix-leave = Laissez-le à la maison, ou apportez { -generator(form: "a") } qui donne { $twice }. Ne changez jamais une fiche, ne joignez jamais deux prises.
    .fix-look = Cherchez « 240 V » sur la plaque. D’ici là, ne le branchez pas. Ne changez jamais une fiche, ne joignez jamais deux prises.
    .fix-part = Voyez dans son manuel s’il peut marcher à { $volts } seulement. Si le manuel ne le dit pas, ne le branchez pas.

FIT007 = { $fix ->
    [plate] { $about } a des fentes pour { $twice }, et le plan dit { $volts } seulement
    [maybe] Ici, il y a peut-être { $twice } : { $about }
   *[other] Ici, il y a { $twice } : { $about }
  }
    .why = { $fix ->
        [plate] L’un des deux est faux. Si { -generator(form: "the") } donne { $twice }, chaque prise de { $volts } n’a que la moitié de la puissance, et les chiffres de ce plan la comptent entière.
        [maybe] On ignore si { -generator(form: "the") } donne { $volts } ou { $twice }. Ce qui est fait pour { $volts } brûle à { $twice }.
        [these] En ont besoin : { $needs }. Toutes les autres prises donnent { $volts }.
       *[other] Rien dans le plan n’en a besoin. Toutes les autres prises donnent { $volts }.
      }
    .fix-nothing = N’y branchez que des cordons, coffrets et adaptateurs homologués pour 120/240 V. Collez l’étiquette imprimée.
    .fix-these = N’y branchez que ce dont la plaque dit { $twice }, et des cordons, coffrets et adaptateurs homologués pour 120/240 V.
    .fix-maybe = Cherchez « 120/240 V » sur la plaque. D’ici là, n’y branchez que des cordons, coffrets et adaptateurs homologués pour 120/240 V.
    .fix-plate = Avant de démarrer le moteur, cherchez « 120 V » ou « 120/240 V » sur la plaque. Si elle dit « 120/240 V », mettez-le dans le plan et imprimez de nouvelles étiquettes et une nouvelle carte.
