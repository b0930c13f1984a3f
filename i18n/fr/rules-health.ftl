# Rules on health.

HEALTH001 = { $fix ->
    [charged] La santé de quelqu’un dépend d’une batterie et { -generator(form: "of") } : { $about }
    [find-out] On ignore si la santé de quelqu’un en dépend : { $about }
   *[other] La santé de quelqu’un dépend du seul courant { -generator(form: "of") } : { $about }
  }
    .why = Le courant peut manquer à tout moment : panne sèche, disjoncteur qui se déclenche, ou quelqu’un qui arrête le moteur. Une personne endormie peut le remarquer trop tard.
    .fix-battery = Apportez une batterie faite pour l’appareil, qui dure toute la nuit. Demandez au médecin ou au fournisseur combien de temps il peut rester arrêté, et s’il est permis de le faire fonctionner sur { -generator(form: "a") } et une rallonge. Oxygène : ni tabac, ni flamme, ni chauffage à moins de { $flames }.
    .fix-charged = Chargez sa batterie avant la nuit. Vérifiez une fois, de jour, qu’elle prend le relais quand vous débranchez. Oxygène : ni tabac, ni flamme, ni chauffage à moins de { $flames }.
    .fix-find-out = Demandez à son propriétaire ce que fait l’appareil, et mettez son genre dans le plan. Si la santé de quelqu’un en dépend, apportez une batterie faite pour lui, qui dure toute la nuit. Oxygène : ni tabac, ni flamme, ni chauffage à moins de { $flames }.

HEALTH002 = { $fix ->
    [when] Ceci chauffe, et marche peut-être pendant que les gens dorment : { $about }
   *[other] Ceci chauffe, et marche pendant que les gens dorment : { $about }
  }
    .why = De { $from } à { $to } ({ $night }), personne ne le surveille. La literie glisse dessus, ou une casserole s’assèche, et la toile brûle vite. Les pompiers le disent : chauffages éteints avant de dormir.
    .fix-off = Chauffez d’abord la tente ou le lit, puis éteignez et débranchez. Seule une couverture dont le fabricant le permet toute la nuit peut rester allumée, selon sa notice.
    .fix-cook = Cuisinez avant que quelqu’un s’endorme. Puis éteignez et débranchez.
    .fix-when = { night-decide } Éteignez et débranchez avant que quelqu’un s’endorme.
