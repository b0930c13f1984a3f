# Rules on fuel.

FUEL001 = { $fix ->
    [find-out] On ignore si un réservoir suffit
    [life-find-out] On ignore si un réservoir suffit
   *[other] Un réservoir ne suffit pas
  }
    .why = { $fix ->
        [find-out] Un appareil doit fonctionner { $stretch } sans arrêt. À pleine charge, un petit modèle dure environ { $tank } par réservoir. Du carburant renversé sur un moteur chaud prend feu.
        [life-find-out] Un appareil doit fonctionner { $stretch } sans arrêt. À pleine charge, un petit modèle dure environ { $tank } par réservoir. Du carburant renversé sur un moteur chaud prend feu.
       *[other] Un appareil doit fonctionner { $stretch } sans arrêt. Un réservoir dure environ { $tank }. Du carburant renversé sur un moteur chaud prend feu.
      }
    .fix-pause = Prévoyez une pause en plein jour. Arrêtez le moteur et laissez-le refroidir { $cooling } minutes avant d’ouvrir le réservoir. Pas sous la pluie, pas de flammes.
    .fix-find-out = Cherchez dans le manuel les heures par réservoir, et mettez-les dans le plan. D’ici là, prévoyez une pause en plein jour : moteur arrêté, { $cooling } minutes pour refroidir, pas sous la pluie, pas de flammes.
    .fix-life-pause = Mettez d’abord { $life } sur une batterie faite pour cela, ou sur la réserve du fournisseur. Sans l’une ni l’autre, ne comptez pas sur { -generator(form: "this") } pour cela. Ensuite : { FUEL001.fix-pause }
    .fix-life-find-out = Mettez d’abord { $life } sur une batterie faite pour cela, ou sur la réserve du fournisseur. Sans l’une ni l’autre, ne comptez pas sur { -generator(form: "this") } pour cela. Ensuite : { FUEL001.fix-find-out }

FUEL002 = Sol sec : des étincelles et un silencieux brûlant peuvent l’enflammer
    .why = Des particules rougies sortent de l’échappement, et le silencieux enflamme l’herbe qui le touche. Gardez { $clear } libres tout autour.
    .fix-arrester = Placez { -generator(form: "the") } sur la terre nue ou la roche. Cherchez un pare-étincelles dans l’échappement. Gardez là de l’eau ou un extincteur. Demandez au responsable du camping si les moteurs sont permis aujourd’hui.

FUEL003 = Il faut plus d’un réservoir par jour
    .why = Le plan brûle environ { $day } par jour, et le réservoir contient { $tank }. Il y aura donc du carburant de réserve au campement. Ses vapeurs rampent au sol jusqu’à tout ce qui est chaud.
    .fix-store = Gardez-le dans un bidon homologué, fermé, à l’ombre, loin { -generator(form: "of") }, des flammes et des tentes. Faites le plein moteur arrêté et refroidi.
