# Rules on noise.

NOISE001 = Trop bruyant pour bien des campings
    .why = Le bruit est d’environ { $level } à { $distance } en terrain découvert. Les parcs nationaux permettent { $limit } à cette distance, et bien des campings aussi.
    .fix-quieter = Faites marcher moins d’appareils à la fois, en ralenti économique, et posez { -generator(form: "the") } sur un sol mou. Demandez au responsable du camping. N’enfermez et ne couvrez jamais le moteur.

NOISE002 = Des appareils marcheraient aux heures de silence
    .why = Le camping doit être silencieux de { $from } à { $to }. Ceux-ci fonctionnent alors : { $about }.
    .fix-move = Changez leurs heures, ou alimentez-les d’une batterie chargée le jour. Demandez d’abord au responsable du camping si la santé de quelqu’un en dépend.
