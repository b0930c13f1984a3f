# Rules on noise.

NOISE001 = { $fix ->
    [look] Nous ignorons quel bruit fait { -generator(form: "the") }
    [quieter] Trop bruyant pour bien des campings
   *[other] Au plus fort, peut-être trop bruyant
  }
    .why = { $fix ->
        [look] Les parcs nationaux permettent { $limit } à { $distance }, et bien des campings aussi. Les modèles à cadre ouvert font d’habitude plus de bruit.
        [quieter] Le bruit est d’environ { $level } à { $distance } en terrain découvert, à la charge où il a été mesuré. Les parcs nationaux permettent { $limit } à cette distance, et bien des campings aussi.
       *[other] À la minute la plus chargée de ce plan, nous avons retenu { $more } de plus que la mesure : environ { $busiest } à { $distance } en terrain découvert. Les parcs nationaux permettent { $limit } à cette distance, et bien des campings aussi.
      }
    .fix-quieter = { $idle ->
        [no] Posez { -generator(form: "the") }
       *[yes] Utilisez le ralenti économique, et posez { -generator(form: "the") }
      } sur la terre nue, loin des murs. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-busiest = Faites marcher moins d’appareils à la fois, et posez { -generator(form: "the") } sur la terre nue, loin des murs. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-alone = Posez { -generator(form: "the") } sur la terre nue, loin des murs. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-look = Cherchez « dB » dans le manuel, avec la distance de mesure. Demandez au responsable du camping avant de démarrer. N’enfermez et ne couvrez jamais le moteur.

NOISE002 = { $fix ->
    [move-assumed] Marcheraient la nuit : { $about }
    [life-assumed] Marcheraient la nuit : { $about }
   *[other] Marcheraient aux heures de silence : { $about }
  }
    .why = { $fix ->
        [move-assumed] Nous ignorons quand le camping doit être silencieux ; nous avons donc retenu { $quiet }.
        [life-assumed] Nous ignorons quand le camping doit être silencieux ; nous avons donc retenu { $quiet }.
       *[other] Le camping doit être silencieux : { $quiet }.
      }
    .fix-move = { night-instead }
    .fix-life = Avant de venir, demandez au responsable du camping s’il peut marcher à ces heures. Sinon, ses heures ne changent pas. { night-life }
    .fix-move-assumed = Demandez au responsable du camping quand il faut le silence. { NOISE002.fix-move }
    .fix-life-assumed = Demandez au responsable du camping quand il faut le silence. { NOISE002.fix-life }
