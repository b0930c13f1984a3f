# Words that several rules share.

not-known = inconnu

night-decide = Mettez dans le plan les heures où ceci marche, aucune la nuit.
night-instead = Utilisez { $about } à d’autres heures, ou sur une batterie chargée le jour.
night-life = Demandez au médecin ou au fournisseur une batterie qui fait marcher { $life } toute la nuit, chargée le jour.
night-sleep = Arrêtez le moteur avant que quelqu’un s’endorme.

life-cannot = Ne comptez pas sur { -generator(form: "this") } pour { $about }. Restez là où il y a le courant du réseau, ou utilisez l’appareil de secours de votre fournisseur. Ne changez jamais le réglage de l’appareil.
life-off = Laissez { $off } à l’arrêt pendant que { $life } fonctionne. Ne baissez et n’interrompez jamais ce dont une vie dépend.
life-turns = Ne baissez et ne débranchez jamais { $life } pour faire place aux autres. Utilisez les autres à tour de rôle.
life-it = { $sure ->
    [yes] La santé de quelqu’un en dépend.
   *[no] Nous ignorons si la santé de quelqu’un en dépend.
  }
life-on = { $sure ->
    [yes] La santé de quelqu’un dépend de { $life }.
   *[no] Nous ignorons si la santé de quelqu’un dépend de { $life }.
  }
