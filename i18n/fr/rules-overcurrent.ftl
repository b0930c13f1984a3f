# Rules on overcurrent: what trips, and what only gets hot.

OVER001 = { $fix ->
    [unknown] Aucun disjoncteur connu ne protège { $first }
    [splitter] { $first } met de petites prises derrière un gros disjoncteur
    [single] { $first } est une prise simple de 15 A derrière un plus gros disjoncteur
    [single-look] { $first } est peut-être une prise simple de 15 A derrière un plus gros disjoncteur
    [own] On ignore le disjoncteur de { $about }
    [camper] Le disjoncteur est trop gros pour l’adaptateur { $first }
   *[other] Le disjoncteur est trop gros pour { $first }
  }
    .why = { $fix ->
        [unknown] On ignore à combien d’ampères le courant se coupe ici. La partie la plus faible est { $known ->
            [no] supposée faite
           *[yes] faite
          } pour { $rating }. Si rien ne s’y déclenche, elle peut brûler. Parties : { $about }.
        [own] { -generator(form: "The") } tient { $demand } et s’arrête au-delà. Ce qui est alimenté ici est fait pour { $rating } ou plus.
        [single-look] Une prise simple de { $rating } ne doit pas être seule derrière un disjoncteur de { $breaker } : rien ne se déclenche avant qu’elle soit surchargée. Deux ou plus, si.
        [camper] L’adaptateur est fait pour { $rating }. Le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker }.
       *[other] { $known ->
            [no] Nous supposons que la limite de
           *[yes] La limite de
          } { $alone ->
            [yes] { $first }
           *[no] la partie la plus faible
          } est { $rating }. { $stops ->
            [set] { -generator(form: "The") } donne jusqu’à { $peak } avant de s’arrêter, et le disjoncteur se déclenche plus tard encore : la partie chauffe et peut brûler.
           *[breaker] Le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker }. Entre les deux, rien ne se déclenche : la partie chauffe et peut brûler.
          }{ $alone ->
            [yes] {""}
           *[no] {" "}Parties : { $about }.
          }
      }
    .fix-splitter = N’utilisez pas { $any-first }, quoi que vous y branchiez. Prenez un coffret de distribution certifié par un laboratoire, avec un disjoncteur par prise.
    .fix-receptacle = N’utilisez pas { $any-first }. Faites examiner son disjoncteur par un { -electrician }.
    .fix-no-breaker = N’utilisez pas { $any-first }. Prenez un coffret de distribution certifié par un laboratoire, avec un disjoncteur par prise.
    .fix-single = Ne dépassez pas { $rating } pour ce qui est branché ici. Faites examiner cette prise par un { -electrician }.
    .fix-single-look = Regardez combien de fiches { $first } accepte, et écrivez sockets dans le plan. Si c’est une seule : ne dépassez pas { $rating }, et faites-la examiner par un { -electrician }.
    .fix-cord = N’utilisez pas { $any-first } ici. { over-cord } { $first } peut aller là où le disjoncteur est de { $fits } ou moins.
    .fix-thicker = N’utilisez pas { $any-first } ici. { over-cord }
    .fix-inlet = N’utilisez pas { $any-first } ici. Alimentez ce coffret d’une prise dont le disjoncteur est de { $fits } ou moins.
    .fix-wiring = N’utilisez pas { $any-first } : le disjoncteur est trop fort pour le fil. Ne changez pas le disjoncteur. Faites examiner le coffret par un { -electrician }.
    .fix-unknown = Lisez le nombre sur le disjoncteur ou dans le manuel et mettez-le dans le plan. D’ici là, n’utilisez pas { $any-first }.
    .fix-free = Ne branchez rien sur { $any-first } : laissez la prise vide.
    .fix-own = Lisez le nombre sur le disjoncteur ou dans le manuel et mettez-le dans le plan.
    .fix-camper = { $main ->
        [yes] N’y branchez que la { -camper }.
       *[no] Cherchez le disjoncteur principal de votre { -camper } : il doit porter { $rating } ou moins. Si vous ne le trouvez pas, n’utilisez pas { $any-first }. N’y branchez que la { -camper }.
      }

over-cord = { $cord ->
    [gauge] Prenez une rallonge marquée 16, 14 ou 12 AWG (1,5 mm² ou plus) : un numéro AWG plus petit est plus gros.
    [none] Aucune rallonge avec sa fiche n’est faite pour { $made } : mettez avant elle un coffret certifié par un laboratoire, avec de plus petits disjoncteurs.
   *[amps] Prenez une rallonge faite pour { $made }.
  }

OVER002 = Trop pendant des heures sur { $first }
    .why = { $fix ->
        [rest] Limite de { $first } pendant trois heures ou plus : { $limit }. { when-first }, il y passe { $demand }, dont { $long } pendant trois heures ou plus. En cause : { $about }.
       *[other] Limite de { $first } pendant trois heures ou plus : { $limit }. { when-first }, il y passe { $demand }, dont { $long } pendant des heures. En cause : { $about }.
      }
    .fix-move = Déplacez un de ces appareils sur un autre disjoncteur, baissez-le, ou faites-lui faire une pause avant trois heures.
    .fix-rest = Laissez reposer { $first } avant trois heures : arrêtez ce qui y passe. Ou baissez-le.
    .fix-life = Ne baissez jamais { $life } et ne l’arrêtez pas. Déplacez tout le reste sur un autre disjoncteur, ou trouvez une prise qui le supporte pendant des heures.

OVER003 = { $first } supporte moins que son disjoncteur ne permet
    .why = { $first } supporte { $limit }, et le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker }. C’est permis pour cette rallonge, mais aucun disjoncteur ne vous empêche de la surcharger.
    .fix-add-up = Additionnez ce qui est branché après { $first }. Ne dépassez pas { $limit }. Lisez les ampères sur l’étiquette de la rallonge ; le plus petit compte.

OVER005 = { $fix ->
    [set] En court-circuit, c’est { -generator(form: "the") } qui s’arrête, pas le disjoncteur
    [look] On ignore si un court-circuit déclenche le disjoncteur
   *[other] Le fil est si long et mince qu’un court-circuit peut ne pas déclencher le disjoncteur
  }
    .why = { $fix ->
        [set] L’arrêt automatique { -generator(form: "of") } agit d’abord : au plus environ { $fault } vont à un court-circuit. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. Endroits : { $about }.
        [look] On ignore si c’est { -generator(form: "a") } à onduleur ; on a donc retenu qu’un court-circuit n’en tire pas plus d’environ { $fault }. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. Endroits : { $about }.
       *[other] Au bout, un court-circuit ne prend qu’environ { $fault }. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. D’ici là, le fil et le mauvais contact chauffent. Endroits : { $about }.
      }
    .fix-set = Sachez comment arrêter le moteur. Si les lampes baissent soudain ou que quelque chose sent le brûlé : arrêtez le moteur, débranchez, puis regardez.
    .fix-look = Cherchez le mot « inverter » (onduleur) dessus. Si les lampes baissent soudain ou que quelque chose sent le brûlé : arrêtez le moteur, débranchez, puis regardez.
    .fix-wire = Prenez une rallonge plus courte ou plus grosse. Si quelque chose sent le brûlé : arrêtez le moteur, débranchez, puis regardez.

OVER006 = { $half ->
    [assumed] Peut-être trop à la fois pour { $first }
   *[known] Trop à la fois pour { $first }
  }
    .why = { $half ->
        [assumed] Si tous sont du même côté { -generator(form: "of") }, comme nous le supposons, ils prennent { $demand }{ when }, pour { $limit } au plus : { $loads }. { $what }
       *[known] { $planned ->
            [yes] { when-first }, ces appareils prennent { $demand } par { $first }, pour { $limit } au plus : { $loads }. { $what }
           *[no] Si tous ces appareils y sont branchés, ils prennent { $demand }{ when }, pour { $limit } au plus : { $loads }. { $what }
        }
      }
    .fix-turns = Utilisez ces appareils à tour de rôle. Ou déplacez { $largest } sur une prise avec un autre disjoncteur.
    .fix-turns-only = Utilisez ces appareils à tour de rôle.
    .fix-hours = Dites dans le plan quand chacun fonctionne. Ou utilisez-les à tour de rôle.
    .fix-leg-look = { POWER001.fix-leg-look }
    .fix-leg-cord = { POWER001.fix-leg-cord }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Branchez { $life } sur des prises avec des disjoncteurs différents. Ne baissez jamais leur réglage.

# What stops it, at the end of the sentence above.
overload-trips = Son disjoncteur se déclenche, et tout ce qui est derrière s’éteint.
overload-early = Son disjoncteur s’est déjà déclenché en dessous de sa valeur marquée.
overload-late = Son disjoncteur est plus gros et coupe trop tard : cela peut surchauffer et prendre feu.
overload-hot = Aucun disjoncteur connu ne l’empêche : cela chauffe.
