# Rules on health.

HEALTH001 = { $fix ->
    [charged] La santé de quelqu’un dépend de cette batterie et { -generator(form: "of") } : { $about }
    [find-out] La santé de quelqu’un en dépend peut-être : { $about }
   *[other] La santé de quelqu’un dépend { -generator(form: "of") } seulement : { $about }
  }
    .why = Le courant peut manquer à tout moment : panne sèche, disjoncteur qui se déclenche, quelqu’un qui arrête le moteur. Une personne endormie peut s’en apercevoir trop tard.
    .fix-battery = Apportez une batterie faite pour l’appareil, qui dure toute la nuit. Demandez au médecin ou au fournisseur combien de temps il peut rester arrêté, et s’il peut fonctionner sur { -generator(form: "a") } et une rallonge. Oxygène : ni tabac, ni flamme, ni chauffage à moins de { $flames }.
    .fix-charged = Chargez la batterie de l’appareil avant la nuit. Débranchez l’appareil une fois, de jour : sa batterie doit le faire marcher. Oxygène : ni tabac, ni flamme, ni chauffage à moins de { $flames }.
    .fix-find-out = Demandez à son propriétaire ce que fait l’appareil. Si la santé de quelqu’un en dépend, apportez une batterie faite pour lui, qui dure toute la nuit. Oxygène : ni tabac, ni flamme, ni chauffage à moins de { $flames }.

HEALTH002 = { $fix ->
    [when] Chauffe peut-être pendant que des gens dorment : { $about }
   *[other] Chauffe pendant que des gens dorment : { $about }
  }
    .why = De { $from } à { $to } ({ $night }), personne ne surveille, et la toile brûle vite. Les pompiers le disent : éteignez les chauffages avant de dormir.
    .fix-off = Chauffez d’abord la tente ou le lit, puis éteignez et débranchez. Ne laissez une couverture chauffante allumée que si sa notice permet de dormir avec.
    .fix-cook = Cuisinez avant que quelqu’un s’endorme. Puis éteignez et débranchez.
    .fix-when = { night-decide } Éteignez et débranchez avant que quelqu’un s’endorme.
