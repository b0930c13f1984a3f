# Rules on noise.

NOISE001 = { $fix ->
    [look] On ignore quel bruit fait { -generator(form: "the") }
    [full-load] À pleine charge, peut-être trop bruyant pour bien des campings
   *[other] Trop bruyant pour bien des campings
  }
    .why = { $fix ->
        [look] Les parcs nationaux permettent { $limit } à { $distance }, et bien des campings aussi. Les modèles à cadre ouvert font d’habitude plus de bruit.
        [full-load] Le bruit est d’environ { $level } à { $distance } en terrain découvert, à la charge où il a été mesuré. Pour la pleine charge, on a retenu { $more } de plus : { $full }. Les parcs nationaux permettent { $limit } à cette distance, et bien des campings aussi. À pleine charge, c’est le cas à partir de { $from }.
       *[other] Le bruit est d’environ { $level } à { $distance } en terrain découvert, à la charge où il a été mesuré. Les parcs nationaux permettent { $limit } à cette distance, et bien des campings aussi. C’est le cas à partir de { $from }, et de plus loin à pleine charge.
      }
    .fix-quieter = Faites marcher moins d’appareils à la fois, en ralenti économique, et posez { -generator(form: "the") } sur un sol mou. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-full-load = Faites marcher moins d’appareils à la fois, et posez { -generator(form: "the") } sur un sol mou, loin des murs. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.
    .fix-look = Cherchez « dB » dans le manuel, avec la distance de mesure. Demandez au responsable du camping avant de démarrer. N’enfermez et ne couvrez jamais le moteur.

NOISE002 = Des appareils marcheraient aux heures de silence
    .why = Le camping doit être silencieux de { $from } à { $to }. Ceux-ci fonctionnent alors : { $about }.
    .fix-move = Changez leurs heures, ou alimentez-les d’une batterie chargée le jour.
    .fix-life = Ses heures ne changent pas. Demandez au responsable du camping avant de venir, ou alimentez-le alors d’une batterie faite pour lui et chargée le jour.
