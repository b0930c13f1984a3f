### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-alarm = alarme l’alarme l'alarme d’alarme d'alarme alarmes avertisseur l’avertisseur l'avertisseur d’avertisseur d'avertisseur monoxyde co tête migraine vertige vertiges étourdi étourdie étourdissement étourdissements nausée nausées malade malades vomi vomit vomissements évanoui évanouie évanouis inconscient inconsciente tete etourdi etourdie nausee evanoui evanouie
learned-word-fire = feu feux incendie l’incendie l'incendie d’incendie d'incendie incendies flamme flammes flambe
learned-word-shock = choc chocs décharge décharges picote picotement picotements jus électrocuté électrocutée decharge electrocute
learned-word-hot = chaud chaude chauds chaudes brûlant brûlante mou molle mous molles ramolli ramollie fond fondu fondue brûle brûlé brûlée roussi roussie bruni brunie fume fumée odeur l’odeur l'odeur d’odeur d'odeur sent étincelle étincelles grésille bourdonne brule fumee etincelle
learned-word-warm = tiède tièdes tiede
learned-word-very = très trop
learned-word-not = pas jamais rien sans ni aucun aucune
learned-word-trip = déclenché déclenchée déclenche disjoncté disjoncte sauté saute declenche
# The numbers from one to twenty, then thirty and forty, each with its other forms after a slash. A half makes another
# number of what comes with it.
learned-word-number = un/une deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf vingt trente quarante
learned-word-half = demi demie demi-heure demi-heures
learned-tripped = Il s’est déclenché à { $amps } : désormais, le plan ne laisse passer que { $counted } par { $part }. Arrêtez le moteur, puis tâtez le disjoncteur et les fiches. Si quelque chose est chaud, bruni ou sent, ne vous en servez pas.
# $demand: what the plan runs there at once.
learned-tripped-planned = Le plan y a { $demand }, et le disjoncteur s’est déclenché. Désormais, le plan ne laisse passer que { $counted } par { $part }. Arrêtez le moteur, puis tâtez le disjoncteur et les fiches. Si quelque chose est chaud, bruni ou sent, ne vous en servez pas.
learned-tripped-known = Le plan ne laisse déjà passer que { $marked } par { $part }. Rien ne change.
learned-tripped-made = Le disjoncteur de { $part } est marqué { $marked }. À { $amps }, il a fait son travail : trop d’appareils marchaient. Mettez-en moins en marche à la fois.
learned-hot = Arrêtez le moteur et débranchez ce qui est chaud. Le plan dit maintenant de ne plus se servir de { $part }.
learned-warm = Une pièce à sa limite devient un peu tiède. Étendez bien les rallonges. Arrêtez bientôt le moteur et tâtez { $part } de nouveau. Si c’est chaud ou mou, ne vous en servez pas, et écrivez « chaud » ici.
learned-meter-low = Vous avez lu { $volts } à { $part }. Nous attendions { $least } ou plus, tout étant en marche. Si quelque chose sent ou fume, arrêtez tout de suite le moteur. Sinon, mesurez d’abord à une prise { -generator(form: "of") }, avec les mêmes choses en marche. Si l’appareil y montre aussi moins de { $source }, il y a surcharge ou un défaut { -generator(form: "of") }. Arrêtez des appareils et mesurez de nouveau aux deux endroits. S’il montre plus de { $more }, une fiche, une rallonge ou un coffret du chemin vers { $part } est mauvais. Arrêtez alors le moteur et tâtez-les un à un. N’utilisez pas ce qui est chaud, mou, bruni ou lâche.
learned-meter-high = Vous avez lu { $volts } à { $part }. Plus de { $least } peut griller ce qui est branché, et le neutre est peut-être coupé. Arrêtez le moteur et débranchez tout. Faites vérifier { -generator(form: "the") }, et chaque rallonge et coffret jusqu’à { $part }, avant de vous en resservir.
learned-meter-raised = Vous avez lu { $volts } à { $part }. Plus de { $least } peut abîmer l’électronique. Débranchez les appareils électroniques et mesurez de nouveau avec le reste en marche. Si la valeur reste plus haute, faites vérifier { -generator(form: "the") }.
learned-meter-fine = Nous attendions { $least } ou plus à { $part }, tout étant en marche. Vous avez lu { $volts }. Si moins de choses marchaient, mesurez de nouveau avec tout en marche.
learned-meter-unknown = Le plan ne fait rien marcher à { $part }, donc nous ne pouvons pas dire ce qu’un voltmètre doit y montrer. Au-dessous de { $least }, arrêtez des appareils : les moteurs peuvent surchauffer.
learned-ran-less = Désormais, le plan compte sur { $hours } par réservoir au plus.
learned-ran-more = À un moment du jour, le plan compte déjà sur { $hours } par réservoir ou moins. Il garde ce nombre plus bas.
learned-ran-unknown = Le plan ne dit pas combien de temps dure un réservoir à quelle charge, donc cela ne change rien encore. Cherchez dans le manuel, et mettez ces heures dans le plan.
learned-print = À réimprimer, et à poser avant de brancher : { $what }.
learned-no-print = Il n’y a rien à réimprimer.
learned-same = Faites d’abord ce qui est dit plus haut. Pour le plan, ce n’est qu’une note : la carte, « tallywatt check » et « tallywatt may » n’en tiennent pas compte.
learned-labels = { $count ->
    [one] l’étiquette { $names }
   *[other] les étiquettes { $names }
  }
learned-card = { $side ->
    [0] la carte
   *[other] la carte (la face { $side } change)
  }
learned-cautions = les précautions
learned-look = la feuille de vérification
learned-worksheet = la note de calcul
learned-wrote = Nous l’avons noté dans { $path }.
learned-no-part = Nous ne savons pas de quelle pièce vous parlez. Nommez une prise, une rallonge ou un coffret comme son étiquette. Si quelque chose est chaud ou sent, arrêtez d’abord le moteur, puis débranchez cela.
learned-parts = Vous avez nommé plusieurs pièces : { $parts }. Nommez-en une.
learned-no-figure = Nous ne trouvons ni ampères, ni volts, ni heures que nous comprenions, ou il y en a deux.
learned-no-amps = Le plan ne fait rien marcher sur { $parts } : nous devons savoir à combien d’ampères le disjoncteur s’est déclenché. Additionnez les ampères de tout ce qui y marchait.
learned-say-amps = Tapez-le ensuite ainsi : tallywatt learned { $plan } { $id } déclenché à 13 A
learned-no-breaker = Le plan n’a pas de disjoncteur pour { $parts }. Nommez la prise à laquelle il sert.
learned-say = Dites-le comme ceci. Un disjoncteur : « front déclenché », ou « front déclenché à 13 A » si vous savez les ampères de tout ce qui marchait. Un voltmètre : « box-left 109 V ». Un réservoir plein : « 7 h ». Chaleur ou odeur : « tents chaud ». Et aussi : « GFCI front », « alarme CO », « choc à front ».
learned-tripped-unknown = Nous ne savons pas ce qui est marqué sur le disjoncteur de { $part }, donc { $amps } ne change rien. Regardez, et mettez ce nombre dans le plan.
learned-meter-compare = Vous avez lu { $volts } à { $part }. Nous attendions { $least } ou plus, tout étant en marche. Mesurez maintenant à une prise { -generator(form: "of") }, avec les mêmes choses en marche. Si elle montre plus de { $more }, une fiche, une rallonge ou un coffret du chemin est mauvais. Arrêtez alors le moteur et tâtez-les un à un.
learned-meter-source = Vous avez lu { $volts } à { $part }. Au-dessous de { $least }, il y a surcharge, ou { -generator(form: "the") } a un défaut. Arrêtez des appareils. Si cela reste bas, faites vérifier { -generator(form: "the") }.
learned-meter-none = Un voltmètre qui ne montre rien ne prouve pas que le courant est coupé à { $part }. Un disjoncteur ou un { -gfci } est peut-être déclenché, ou un fil coupé. Arrêtez le moteur avant d’y toucher une fiche.
learned-gfci = Un { -gfci } a coupé le courant à { $part } : quelque chose branché en aval fuit peut-être. Débranchez tout cela. Appuyez une fois sur RESET. Branchez les choses une à une, et ne vous servez pas de ce qui le fait sauter encore.
learned-shock = Arrêtez le moteur, puis débranchez la rallonge { -generator(form: "to") }. Appelez le { $call } si cela vient d’arriver. Voyez un médecin après tout choc, même petit. Faites vérifier { -generator(form: "the") }, la rallonge et l’appareil par un { -electrician } avant que quelqu’un s’en serve. Dites ensuite où, pour que le plan le sache : « choc à kettle ».
learned-shock-at = Arrêtez le moteur, puis débranchez la rallonge { -generator(form: "to") }. Appelez le { $call } si cela vient d’arriver. Voyez un médecin après tout choc, même petit. Le plan dit maintenant de ne pas utiliser { $part }. Ne vous servez de rien d’autre qui y était branché. Faites tout vérifier par un { -electrician }.
learned-alarm = Faites sortir tout le monde à l’air libre, tout de suite. Appelez le { $call } et dites : monoxyde de carbone. Personne ne rentre avant que les pompiers le disent.
learned-fire = Éloignez tout le monde, tout de suite. Appelez le { $call }. N’arrêtez le moteur que si le chemin est libre. Pas d’eau sur du carburant qui brûle, ni sur ce qui peut être sous tension.
learned-not = Dites ce qui s’est passé, et non ce qui ne s’est pas passé. Pour une mesure, tout doit être en marche.
learned-no-trip = Si un disjoncteur s’est déclenché, dites-le : « front déclenché à 13 A ». Les ampères seuls ne changent rien.
learned-take-off = { $count ->
    [one] Ôtez l’étiquette { $names } : il n’y en a plus.
   *[other] Ôtez les étiquettes { $names } : il n’y en a plus.
  }
