# Words that several rules share.

not-known = inconnu

night-decide = Décidez quand il marche, pas la nuit, et notez-le dans le plan.
night-instead = Utilisez { $about } à d’autres heures, ou sur une batterie chargée le jour.
night-life = Demandez au médecin ou au fournisseur une batterie qui fait marcher { $life } toute la nuit. Chargez-la le jour.
night-sleep = Arrêtez le moteur avant que quelqu’un s’endorme.

life-cannot = Ne comptez pas sur { -generator(form: "this") } pour { $about }. Restez où il y a le courant du réseau, ou utilisez l’appareil de secours de votre fournisseur. Ne changez jamais le réglage de l’appareil.
life-off = Laissez { $off } à l’arrêt pendant que { $life } fonctionne. Ce dont une vie dépend n’attend pas son tour et ne se règle jamais plus bas.
life-turns = Laissez { $life } en marche, sans jamais baisser le réglage. Utilisez le reste à tour de rôle.
life-it = { $sure ->
    [yes] La santé de quelqu’un en dépend.
   *[no] On ignore si la santé de quelqu’un en dépend.
  }
life-on = { $sure ->
    [yes] La santé de quelqu’un dépend de { $life }.
   *[no] On ignore si la santé de quelqu’un dépend de { $life }.
  }
