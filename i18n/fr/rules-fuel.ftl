# Rules on fuel.

# $amount est $count, comme l’écrit le lecteur.
tanks = { $count ->
    [one] { $amount } réservoir
   *[other] { $amount } réservoirs
  }

FUEL001 = { $fix ->
    [find-out] Nous ignorons si un réservoir suffit
    [life-find-out] Nous ignorons si un réservoir suffit
   *[other] Un réservoir se vide avant la prochaine pause
  }
    .why = { $fix ->
        [find-out] De { $from } à { $to }, il n’y a pas de pause pour faire le plein. { $timed ->
            [yes] Nous ignorons la puissance nominale { -generator(form: "of") } et avons donc supposé { $tank } pour un réservoir.
           *[no] Pour un réservoir, nous avons supposé { $tank }, comme pour un petit modèle à pleine charge.
          }
        [life-find-out] De { $from } à { $to }, il n’y a pas de pause pour faire le plein. { $timed ->
            [yes] Nous ignorons la puissance nominale { -generator(form: "of") } et avons donc supposé { $tank } pour un réservoir.
           *[no] Pour un réservoir, nous avons supposé { $tank }, comme pour un petit modèle à pleine charge.
          }
        [life-pause] Le moteur tourne de { $from } à { $to } sans pause. Cela prend { $burns } : quand une vie en dépend, comptez sur { $usable } d’un réservoir au plus.
       *[other] Le moteur tourne de { $from } à { $to } sans pause. Cela prend { $burns }, et faire le plein d’un moteur chaud peut mettre le feu.
      }
    .fix-pause = Prévoyez pendant ce temps une pause d’une demi-heure, mais pas la nuit, ou utilisez moins d’appareils. Avant de faire le plein, laissez refroidir { $cooling } minutes le moteur arrêté. Jamais de plein sous la pluie ni près d’une flamme.
    .fix-find-out = { $timed ->
        [yes] Cherchez sur la plaque { -generator(form: "of") } les watts « nominaux », « running » ou « rated », et mettez-les dans le plan.
       *[no] Mettez dans le plan combien d’heures dure un réservoir, selon le manuel.
      } D’ici là, prévoyez une pause entre ces heures, mais pas la nuit. Avant de faire le plein, laissez refroidir { $cooling } minutes le moteur arrêté, loin de la pluie et des flammes.
    .fix-life-pause = Mettez { $life } sur une batterie faite pour cela ou sur la réserve de votre fournisseur, ou ne comptez pas sur { -generator(form: "this") }. Puis prévoyez une pause d’une demi-heure entre ces heures, pas la nuit : moteur arrêté, refroidi { $cooling } minutes, ni pluie ni flammes.
    .fix-life-find-out = Mettez { $life } sur une batterie faite pour cela ou sur la réserve de votre fournisseur, ou ne comptez pas sur { -generator(form: "this") }. { $timed ->
        [yes] Cherchez sur la plaque { -generator(form: "of") } les watts « nominaux », « running » ou « rated », et mettez-les dans le plan.
       *[no] Mettez dans le plan les heures que dure un réservoir.
      } D’ici là, prévoyez une pause entre ces heures, pas la nuit : moteur arrêté, refroidi { $cooling } minutes, ni pluie ni flammes.

FUEL002 = Des étincelles peuvent mettre le feu au sol sec
    .why = Des étincelles sortent de l’échappement, et un silencieux chaud enflamme l’herbe qui le touche. Quand les feux sont interdits, les moteurs le sont peut-être aussi.
    .fix-arrester = Demandez au responsable du camping ou à un garde si les feux sont interdits et si les moteurs sont permis. Placez { -generator(form: "the") } sur la terre nue ou la roche, { $clear } libres de tous côtés, avec de l’eau ou un extincteur. Voyez dans son manuel si l’échappement a un pare-étincelles homologué.

FUEL003 = Une journée prend plus d’un réservoir
    .why = { $fix ->
        [store-propane] Ce plan brûle { $burns } par jour : vous aurez une bouteille de réserve au campement. Le gaz qui fuit rampe au sol jusqu’à tout ce qui est chaud.
       *[other] Ce plan brûle { $burns } par jour : vous aurez du carburant de réserve au campement. Ses vapeurs rampent au sol jusqu’à tout ce qui est chaud.
      }
    .fix-store = Gardez le carburant de réserve dans un bidon homologué, fermé, à l’ombre, loin { -generator(form: "of") }, des flammes et des tentes. Faites le plein moteur arrêté et refroidi. S’il en coule, éloignez-vous jusqu’à ce que les vapeurs soient dissipées : alors seulement, on démarre le moteur.
    .fix-store-propane = Gardez la bouteille de réserve debout, dehors, à l’ombre, loin { -generator(form: "of") }, des flammes et des tentes. Changez-la moteur arrêté et refroidi. Si cela sent le gaz, fermez le robinet, et éloignez-vous jusqu’à ce que l’odeur soit partie : alors seulement, on démarre le moteur.
