### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-hot = chaud chaude mou molle fondu fondue brûlé brûlée
learned-word-warm = tiède
learned-tripped = Désormais, le plan compte que { $part } se déclenche à { $amps }, et non à { $marked }. Collez les nouvelles étiquettes avant de rebrancher.
learned-tripped-known = Le plan compte déjà que { $part } se déclenche à { $marked }. Rien ne change.
learned-tripped-made = Le disjoncteur de { $part } est marqué { $marked }. À { $amps }, il a fait son travail : trop de choses marchaient. Mettez-en moins en marche à la fois.
learned-hot = Arrêtez le moteur et débranchez { $part }. Le plan dit maintenant de ne plus s’en servir.
learned-warm = Un peu de chaleur est normal dans une rallonge qui porte tout ce qu’elle supporte. Déroulez-la bien. Vérifiez bientôt { $part } à nouveau. Si c’est chaud ou mou, arrêtez le moteur et écrivez « chaud » ici.
learned-meter-low = Vous avez lu { $volts } à { $part }. Nous attendions { $least } ou plus, tout étant en marche. Quelque chose est mauvais sur le chemin. Arrêtez le moteur et touchez chaque fiche et chaque rallonge jusqu’à l’origine. Ne vous servez pas de ce qui est chaud, mou, bruni ou lâche. Si tout est froid, faites vérifier { -generator(form: "the") }.
learned-meter-high = Vous avez lu { $volts } à { $part }. Plus de { $least } peut griller ce qui est branché, et le neutre est peut-être coupé. Arrêtez le moteur et faites vérifier { -generator(form: "the") }.
learned-meter-fine = Nous attendions { $least } ou plus à { $part }, tout étant en marche. Vous avez lu { $volts } : aucun signe d’une mauvaise connexion.
learned-meter-unknown = Le plan ne fait rien marcher à { $part }, donc nous ne savons pas ce qu’on doit y lire. Au-dessous de { $least }, arrêtez des choses : les moteurs peuvent trop chauffer.
learned-ran-less = Désormais, le plan compte sur { $hours } par réservoir au plus.
learned-ran-more = Le plan compte déjà sur moins de { $hours } à un moment du jour, ou sur autant. Il reste du côté prudent.
learned-ran-unknown = Le plan ne dit pas combien de temps dure un réservoir à quelle charge, donc cela ne change rien encore. Cherchez dans la notice, et mettez ces heures dans le plan.
learned-print = À réimprimer : { $what }.
learned-no-print = Il n’y a rien à réimprimer.
learned-labels = { $count ->
    [one] l’étiquette { $names }
   *[other] les étiquettes { $names }
  }
learned-card = la carte
learned-cautions = les précautions
learned-look = la feuille à vérifier
learned-worksheet = la feuille de calcul
learned-wrote = C’est noté dans { $path }.
learned-no-part = Nous ne savons pas de quelle pièce vous parlez.
learned-parts = Vous avez nommé plusieurs pièces : { $parts }. Nommez-en une.
learned-no-figure = Nous ne trouvons ni ampères, ni volts, ni heures que nous comprenions.
learned-no-breaker = Le plan n’a pas de disjoncteur pour { $parts }. Nommez la prise à laquelle il sert.
learned-say = Dites-le d’une de ces façons. Additionnez ce qui marchait : « front 13 A ». Avec un instrument : « box-left 109 V ». Avec un réservoir plein : « 7 h ». Au toucher : « tents chaud ».
