# Rules on fuel.

FUEL001 = { $fix ->
    [find-out] Nous ignorons si un réservoir suffit
    [life-find-out] Nous ignorons si un réservoir suffit
   *[other] Un réservoir ne suffit pas
  }
    .why = { $fix ->
        [find-out] De { $from } à { $to }, aucune pause pour faire le plein. Nous ignorons combien dure un réservoir ; nous avons donc retenu { $tank }, comme pour un petit modèle à pleine charge.
        [life-find-out] De { $from } à { $to }, aucune pause pour faire le plein. Nous ignorons combien dure un réservoir ; nous avons donc retenu { $tank }, comme pour un petit modèle à pleine charge.
        [life-pause] De { $from } à { $to }, aucune pause pour faire le plein, et cela brûle { $burns } d’un réservoir (100 %, c’est un réservoir plein). Si une vie en dépend, comptez sur { $usable }.
       *[other] De { $from } à { $to }, aucune pause pour faire le plein, et cela brûle { $burns } d’un réservoir (100 %, c’est un réservoir plein). Du carburant sur un moteur chaud prend feu.
      }
    .fix-pause = Prévoyez une pause d’une demi-heure pendant ce temps, mais pas la nuit, ou utilisez alors moins d’appareils. Arrêtez le moteur et laissez-le refroidir { $cooling } minutes avant de faire le plein. Pas sous la pluie, pas de flammes.
    .fix-find-out = Cherchez dans le manuel les heures par réservoir, et mettez-les dans le plan. D’ici là, prévoyez une pause pendant ce temps, mais pas la nuit : moteur arrêté, { $cooling } minutes pour refroidir, pas sous la pluie, pas de flammes.
    .fix-life-pause = Mettez d’abord { $life } sur une batterie faite pour cela, ou sur la réserve du fournisseur. Sans l’une ni l’autre, ne comptez pas sur { -generator(form: "this") } pour cela. Ensuite : { FUEL001.fix-pause }
    .fix-life-find-out = Mettez d’abord { $life } sur une batterie faite pour cela, ou sur la réserve du fournisseur. Sans l’une ni l’autre, ne comptez pas sur { -generator(form: "this") } pour cela. Ensuite : { FUEL001.fix-find-out }

FUEL002 = Sol sec : des étincelles et un silencieux brûlant peuvent l’enflammer
    .why = Des particules rougies sortent de l’échappement, et le silencieux enflamme l’herbe qui le touche. Quand les feux sont restreints, les moteurs peuvent être interdits.
    .fix-arrester = Demandez au responsable du camping si les feux sont restreints et si les moteurs sont permis aujourd’hui. Cherchez un pare-étincelles homologué dans l’échappement. Placez { -generator(form: "the") } sur la terre nue ou la roche, { $clear } libres tout autour, avec de l’eau ou un extincteur.

FUEL003 = Il faut plus d’un réservoir par jour
    .why = { $fix ->
        [store-propane] Une journée de ce plan brûle { $burns } d’un réservoir (100 %, c’est un réservoir plein) ; il y aura donc une bouteille de réserve au campement. Le gaz qui fuit descend et rampe au sol jusqu’à tout ce qui est chaud.
       *[other] Une journée de ce plan brûle { $burns } d’un réservoir (100 %, c’est un réservoir plein) ; il y aura donc du carburant de réserve au campement. Ses vapeurs rampent au sol jusqu’à tout ce qui est chaud.
      }
    .fix-store = Gardez-le dans un bidon homologué, fermé, à l’ombre, loin { -generator(form: "of") }, des flammes et des tentes. Faites le plein moteur arrêté et refroidi. S’il en coule, éloignez-vous et laissez les vapeurs se dissiper avant de démarrer.
    .fix-store-propane = Laissez-la debout dehors, à l’ombre, loin { -generator(form: "of") }, des flammes et des tentes. Changez-la moteur arrêté et refroidi, robinet fermé. Si cela sent le gaz, fermez le robinet, éloignez-vous et laissez-le se dissiper.
