# Rules on noise.

NOISE001 = { $fix ->
    [look] { -generator(form: "The") } fait peut-être trop de bruit
    [quieter] Plus de bruit que bien des campings ne le permettent
   *[other] Au plus fort, peut-être trop de bruit
  }
    .why = { $fix ->
        [look] Nous ignorons quel bruit cela fait, et les modèles à cadre ouvert dépassent presque toujours { $limit } à { $distance }. Les parcs nationaux et bien des campings ne permettent pas plus.
        [quieter] Le bruit est d’environ { $level } à { $distance } en terrain découvert, à la charge de la mesure. Les parcs nationaux et bien des campings permettent { $limit } à cette distance.
       *[other] Au plus fort, nous avons supposé { $more } de plus que la mesure : environ { $busiest } à { $distance } en terrain découvert. Les parcs nationaux et bien des campings permettent { $limit } à cette distance.
      }
    .fix-quieter = { $idle ->
        [no] Posez
       *[yes] Utilisez au ralenti économique
      } { -generator(form: "the") } sur la terre nue, loin des murs. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-busiest = Faites marcher moins d’appareils à la fois. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-alone = Posez { -generator(form: "the") } sur la terre nue, loin des murs. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-look = Cherchez « dB » dans le manuel, avec la distance de mesure. Demandez au responsable du camping avant de démarrer. N’enfermez et ne couvrez jamais le moteur.

NOISE002 = { $fix ->
    [move-assumed] En marche la nuit : { $about }
    [life-assumed] En marche la nuit : { $about }
   *[other] En marche aux heures de silence : { $about }
  }
    .why = { $fix ->
        [move-assumed] Nous ignorons quand le camping doit être silencieux et avons donc supposé : { $quiet }.
        [life-assumed] Nous ignorons quand le camping doit être silencieux et avons donc supposé : { $quiet }.
       *[other] Le camping doit être silencieux : { $quiet }.
      }
    .fix-move = { night-instead }
    .fix-life = Avant de venir, demandez au responsable du camping si le moteur peut tourner alors, et ne raccourcissez jamais les heures de { $life }. { night-life }
    .fix-move-assumed = Demandez au responsable du camping quand il faut le silence. { NOISE002.fix-move }
    .fix-life-assumed = Demandez au responsable du camping quand il faut le silence et si un moteur peut alors tourner, et ne raccourcissez jamais les heures de { $life }. { night-life }
