# Rules on overcurrent: what trips, and what only gets hot.

OVER001 = { $fix ->
    [unknown] Nous ignorons quel disjoncteur protège { $first }
    [splitter] { $first } met de petites prises sur un gros disjoncteur
    [single] Une prise de 15 A sur un plus gros disjoncteur : { $first }
    [single-look] Le disjoncteur est peut-être trop gros pour { $first }
    [own] Nous ignorons le disjoncteur de { $about }
    [camper] Le disjoncteur est trop gros pour l’adaptateur { $first }
   *[other] Le disjoncteur est trop gros pour { $first }
  }
    .why = { $fix ->
        [unknown] Nous ignorons à combien d’ampères le courant se coupe ici. Si rien ne se déclenche, la partie la plus faible ({ $known ->
            [no] supposée faite
           *[yes] faite
          } pour { $rating }) surchauffe et peut prendre feu.{ $alone ->
            [yes] {""}
           *[no] {" "}Parties : { $about }.
          }
        [own] { -generator(form: "The") } s’arrête au-delà de { $demand }, ou plus tôt par chaleur ou en altitude. Ce qui est alimenté ici est fait pour { $rating } ou plus.
        [single-look] Une prise pour une seule fiche ({ $rating }) ne doit pas être seule sur un disjoncteur de { $breaker } : elle surchauffe avant que rien se déclenche. Une prise pour deux fiches peut l’être.
        [camper] L’adaptateur est fait pour { $rating }. Le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker } : avant cela, { $main ->
            [yes] tout autre appareil que la { -camper } peut le faire surchauffer et mettre le feu.
           *[no] l’adaptateur peut surchauffer et prendre feu.
          }
       *[other] { $known ->
            [no] Nous avons supposé que la limite de
           *[yes] La limite de
          } { $alone ->
            [yes] { $first }
           *[no] la partie la plus faible ici
          } est { $rating }. { $stops ->
            [set] { -generator(form: "The") } peut y pousser jusqu’à { $peak } avant que rien se déclenche : { $alone ->
                [yes] { $first } peut surchauffer et prendre feu.
               *[no] cette partie peut surchauffer et prendre feu.
              }
           *[breaker] Le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker } : avant cela, { $alone ->
                [yes] { $first } peut surchauffer et prendre feu.
               *[no] cette partie peut surchauffer et prendre feu.
              }
          }{ $alone ->
            [yes] {""}
           *[no] {" "}Parties : { $about }.
          }
      }
    .fix-splitter = N’utilisez { $any-first } pour rien. Prenez un coffret d’usine certifié par un laboratoire (« listed »), avec un disjoncteur par prise.
    .fix-receptacle = N’utilisez pas { $any-first }. Faites examiner son disjoncteur par un { -electrician }.
    .fix-no-breaker = N’utilisez pas { $any-first }. Prenez un coffret d’usine certifié par un laboratoire (« listed »), avec un disjoncteur par prise.
    .fix-single = Ne dépassez pas { $rating } pour ce qui est branché ici. Faites examiner cette prise par un { -electrician }.
    .fix-single-look = Regardez combien de fiches { $first } accepte. Si c’est une seule : ne dépassez pas { $rating }, et faites-la examiner par un { -electrician }.
    .fix-cord = N’utilisez pas { $any-first } ici. { over-cord } N’utilisez { $first } que là où le disjoncteur est de { $fits } ou moins.
    .fix-thicker = N’utilisez pas { $any-first } ici. { over-cord }
    .fix-inlet = N’utilisez pas { $any-first } ici. Alimentez cette pièce d’une prise dont le disjoncteur est de { $fits } ou moins.
    .fix-wiring = N’utilisez pas { $any-first }. Ne changez pas le disjoncteur. Faites examiner le coffret par un { -electrician }.
    .fix-unknown = Lisez le nombre sur le disjoncteur ou dans le manuel et mettez-le dans le plan. D’ici là, n’utilisez pas { $any-first }.
    .fix-free = Ne branchez rien à { $any-first } : laissez la prise vide.
    .fix-own = Lisez le nombre sur le disjoncteur ou dans le manuel et mettez-le dans le plan.
    .fix-camper = { $main ->
        [yes] Ne branchez en aval que la { -camper }.
       *[no] Cherchez le disjoncteur principal de la { -camper } : il doit porter { $rating } ou moins. Si vous ne le trouvez pas, n’utilisez pas { $any-first }. Ne branchez en aval que la { -camper }.
      }

over-cord = { $cord ->
    [gauge] Prenez une rallonge marquée 16, 14 ou 12 AWG ({ $measure ->
        [metric] 1,5 mm² ou plus
       *[customary] calibre du fil
      }) : un numéro AWG plus petit est un fil plus gros.
    [none] Aucune rallonge avec sa fiche n’est faite pour { $made } : mettez en amont un coffret certifié par un laboratoire, avec de plus petits disjoncteurs.
   *[amps] Prenez une rallonge faite pour { $made }.
  }

OVER002 = Trop de courant, trop longtemps, à { $first }
    .why = { $lasts ->
        [all] Pendant trois heures ou plus, la limite à { $first } est { $limit }. { when-first }, il y passe { $demand }, le tout pendant trois heures ou plus. En cause : { $about }.
        [in-a-row] Pendant trois heures ou plus, la limite à { $first } est { $limit }. { when-first }, il y passe { $demand }, et avec ce qui marche avant et après, jamais moins de { $long } pendant tout ce temps. En cause : { $about }.
       *[part] Pendant trois heures ou plus, la limite à { $first } est { $limit }. { when-first }, il y passe { $demand }, dont { $long } pendant trois heures ou plus. En cause : { $about }.
      }
    .fix-move = Déplacez un de ces appareils sur un autre disjoncteur, baissez son réglage, ou faites-lui faire une pause avant trois heures.
    .fix-rest = Faites faire une pause à { $first } avant que trois heures soient passées : arrêtez ce qui est branché en aval. Ou baissez-en le réglage.
    .fix-life = Ne baissez et n’interrompez jamais { $life }. Déplacez tout le reste sur un autre disjoncteur, ou trouvez une prise qui peut alimenter { $life } pendant des heures.

OVER003 = La rallonge { $first } supporte moins que son disjoncteur ne permet
    .why = { $first } supporte { $limit }, mais le disjoncteur en amont ne se déclenche qu’au-dessus de { $breaker }. C’est permis pour cette rallonge, mais aucun disjoncteur ne vous empêche de la surcharger.
    .fix-add-up = Additionnez ce qui est branché en aval de { $first }. Ne dépassez pas { $limit }. Lisez les ampères sur l’étiquette de la rallonge : le plus petit nombre compte.

OVER005 = { $fix ->
    [set] Seul l’arrêt { -generator(form: "of") } coupe un court-circuit
    [look] Un court-circuit ne déclenche peut-être aucun disjoncteur
   *[other] Le fil peut empêcher le disjoncteur de se déclencher
  }
    .why = { $fix ->
        [set] { -generator(form: "The") } s’arrête d’abord : un court-circuit prend au plus environ { $fault }. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. Endroits : { $about }.
        [look] Nous ignorons de quel genre est { -generator(form: "the") } et avons donc supposé qu’un court-circuit prend au plus { $fault }. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon }. Endroits : { $about }.
       *[other] Au bout, un court-circuit ne prend qu’environ { $fault }. Un disjoncteur UL 489 de { $breaker } ne se déclenche vite qu’au-dessus de { $soon } : d’ici là, le fil surchauffe. Endroits : { $about }.
      }
    .fix-set = Sachez comment arrêter le moteur. Si les lampes baissent soudain ou que quelque chose sent le brûlé, arrêtez-le, puis seulement cherchez la cause.
    .fix-look = Cherchez le mot « inverter » (onduleur) sur { -generator(form: "the") }. Si les lampes baissent soudain ou que quelque chose sent le brûlé, arrêtez le moteur, puis seulement cherchez la cause.
    .fix-wire = Prenez une rallonge plus courte ou plus grosse. Si quelque chose sent le brûlé, arrêtez le moteur, puis seulement cherchez la cause.

OVER006 = { $half ->
    [assumed] Trop de choses peut-être en marche à { $first }
   *[known] Trop de choses en marche à { $first }
  }
    .why = { $half ->
        [assumed] Si tous ces appareils sont sur une même moitié, comme nous l’avons supposé, ils prennent { $demand }{ when }, mais la limite est { $limit } : { $loads }. { $what }
       *[known] { $planned ->
            [yes] { when-first }, ces appareils prennent { $demand } par { $first }, mais la limite est { $limit } : { $loads }. { $what }
           *[no] Si tous ces appareils y sont branchés, ils prennent { $demand }{ when }, mais la limite est { $limit } : { $loads }. { $what }
        }
      }
    .fix-turns = Utilisez ces appareils à tour de rôle. Ou branchez { $largest } à une prise avec un autre disjoncteur.
    .fix-turns-only = Utilisez ces appareils à tour de rôle.
    .fix-hours = Mettez dans le plan quand chacun fonctionne. Ou utilisez-les à tour de rôle.
    .fix-leg-look = { POWER001.fix-leg-look }
    .fix-leg-cord = { POWER001.fix-leg-cord }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Branchez { $life } à des prises avec des disjoncteurs différents. Ne baissez jamais leur réglage.

# What stops it, at the end of the sentence above.
overload-trips = Son disjoncteur se déclenche, et tout ce qui y est branché s’éteint.
overload-early = Son disjoncteur s’est déjà déclenché en dessous de sa valeur marquée.
overload-late = Son disjoncteur est plus gros et se déclenche trop tard : cela peut surchauffer et prendre feu.
overload-hot = Aucun disjoncteur connu ne l’empêche : cela surchauffe et peut prendre feu.
