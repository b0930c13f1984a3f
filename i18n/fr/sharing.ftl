# Who shares what: changes that mend a plan, and asking before plugging in.

## One change. $first is the part or load.

change-more-distance = Arrêtez le moteur et laissez-le refroidir. Éloignez { -generator(form: "the") } d’au moins { $distance } de toute tente, tout véhicule, toute porte et fenêtre. Échappement à l’opposé des gens. Voyez si les rallonges suffisent encore. S’il en faut une plus longue, mettez-la dans le plan et vérifiez de nouveau.
change-open-air = { $stands ->
        [enclosed] Si le moteur tourne là-dedans : tout le monde dehors, appelez le { $call } de dehors, et que seuls les pompiers entrent pour l’arrêter. Une fois arrêté et froid, portez { -generator(form: "the") } à l’air libre.
        [covered] Arrêtez le moteur. Quand il est froid, portez { -generator(form: "the") } à l’air libre.
       *[other] Si le moteur tourne dans une tente, un porche, un véhicule ou une remise : tout le monde dehors, appelez le { $call } de dehors, et que seuls les pompiers entrent. Une fois arrêté et froid, portez { -generator(form: "the") } à l’air libre.
    } Il faut au moins { $distance } jusqu’à toute tente, tout véhicule, toute porte et fenêtre, { $clear } libres tout autour, et rien au-dessus sauf un toit bien plus haut, ouvert de tous côtés. Échappement à l’opposé des gens. Voyez si les rallonges suffisent encore. S’il en faut une plus longue, mettez-la dans le plan et vérifiez de nouveau.
change-no-building = Ne reliez jamais { -generator(form: "the") } au câblage d’un bâtiment. Branchez les appareils directement { -generator(form: "to") } ou à son coffret.
change-alarm = Mettez un { -alarm } de monoxyde de carbone à piles dans chaque tente et chaque { -camper } où l’on dort.
change-uncoil = Déroulez la rallonge { $first } et étendez-la sans la serrer.
change-run-alone = Arrêtez tous les moteurs. Retirez ce qui relie les { -generator(form: "many") }, et n’en faites tourner { -generator.gender ->
        [feminine] qu’une seule
       *[masculine] qu’un seul
    }.
change-leave-home = N’utilisez pas { $first } ici. Laissez cet appareil à la maison, ou débranché et rangé.
change-set-aside = Débranchez { $first } et tout ce qui y est branché, et { $wrong ->
        [yes] ne vous en servez pas
       *[other] laissez-le débranché
    }.
change-unplug = Débranchez { $first }.
change-bonding-plug-out = Arrêtez le moteur. Retirez la fiche de liaison neutre-terre : le neutre { -generator(form: "of") } est déjà relié à la terre.
change-bonding-plug = Arrêtez le moteur. Branchez la fiche de liaison neutre-terre à « { $to } », sans GFCI.
change-replug = Branchez { $first } à « { $to } ».
change-move = { $some ->
    [yes] Branchez à { $to } { $count } des { $total } { $first }, n’importe lesquels, et laissez le reste débranché.
   *[no] Branchez { $first } à { $to }.
  }
change-by-the-card = l’endroit indiqué sur la carte
change-take-turns = À { $to }, utilisez { $first } tour à tour avec { $with } : débranchez l’un avant de brancher l’autre.
change-another-hour = Faites fonctionner { $first } à { $to } et non plus à { $from }.
change-off-at-night = Faites fonctionner { $first } seulement à { $to }, et éteignez-le avant que les gens dorment.
change-other-cord = À la place de la rallonge { $first }, prenez-en une marquée pour l’extérieur.{ $wires ->
        [none] {""}
        [4] {" "}Il lui faut quatre fils, avec neutre et { -ground-wire }.
       *[other] {" "}Il lui faut une broche de terre et un { -ground-wire }.
    }{ $wire ->
        [none] {""}
       *[other] {" "}Il lui faut { $wire } ou plus gros.
    }{" "}{ cord-shapes }{ $length ->
        [none] {""}
       *[other] {" "}Elle mesure { $length }.
    }{ $gfci ->
        [yes] {" "}Il lui faut un { -gfci } (boutons TEST et RESET).
       *[no] {""}
    }{" "}Nous l’appelons aussi { $first }.
change-as-the-card = Imprimez ensuite la carte du plan modifié, et branchez tout là où elle le montre.
change-protected-cord = Mettez une rallonge GFCI ou un adaptateur GFCI certifié par un laboratoire là où { $first } se branche, ou prenez à sa place une rallonge à GFCI certifiée par un laboratoire, ni plus fine ni plus longue. { cord-shapes }
change-protected-outlet = Mettez une rallonge ou un adaptateur GFCI certifié par un laboratoire dans { $sockets ->
        [one] une place
       *[other] { $sockets } places
    } de { $first }. { cord-shapes }{ $named ->
        [yes] {" "}Nous l’appelons { $names }.
       *[no] {""}
    }
change-three-way-cord = Branchez à { $first } une rallonge GFCI de { $length }, certifiée par un laboratoire : 12 AWG (un numéro plus petit est plus gros), marquée pour l’extérieur. { cord-shapes }{ $named ->
        [yes] {" "}Nous l’appelons { $names }.
       *[no] {""}
    }
change-smaller-appliance = { $starts ->
    [yes] À la place de { $first }, prenez un appareil de { $power } ou moins en marche et { $starting } ou moins au démarrage. Ne branchez pas celui de { $old }.
   *[no] Prenez un appareil de { $power } ou moins à la place de { $first }, pas celui de { $old }.
  }{ $apart ->
    [yes] {" "}On s’en sert loin { -generator(form: "of") } : ne l’y apportez pas.
   *[no] {""}
  }
change-box-for-splitter = { $length ->
        [none] À la place de { $first }, prenez un coffret de distribution certifié par un laboratoire.
       *[other] À la place de { $first }, prenez une rallonge certifiée de { $length } en { $wire }, marquée pour l’extérieur. Sa fiche et sa prise ont la forme de l’entrée du coffret. Nous l’appelons { $names }. Branchez au bout un coffret de distribution certifié par un laboratoire.
    } { box-shapes }
change-listed-box = À la place de { $first }, prenez un coffret d’usine certifié par un laboratoire. { box-shapes }
change-new-box = Branchez à { $first } un coffret de distribution certifié par un laboratoire. { box-shapes }

# What to look for on a cord or box to buy. $ends are its sockets.
cord-shapes = Sa fiche : { $plug }. Ses prises : { $ends }.
box-shapes = Son entrée : { $plug }. Ses prises : { $ends }. Il faut à chaque prise un GFCI, et un disjoncteur de pas plus d’ampères qu’elle.

## tallywatt mend

mend-title = { $how ->
        [plan] Changez votre plan.
        [closed] Suivez ces étapes dans cet ordre, moteur arrêté. N’entrez jamais dans un lieu fermé pour l’arrêter.
       *[gear] Arrêtez le moteur. Puis suivez ces étapes dans cet ordre.
    }{ $all ->
        [0] {""}
        [one] {" "}Cela élimine { $cleared } danger sur 1.
       *[other] {" "}Cela élimine { $cleared } des { $all } dangers.
    }
mend-nothing = Il n’y a aucun danger à éliminer, et tout ce qui doit fonctionner a une place. Rien n’est changé.
mend-before = Tel quel
mend-after = Tout cela fait
mend-tally = { $dangers ->
        [0] aucun danger
        [one] 1 danger
       *[other] { $dangers } dangers
    }, { $warnings ->
        [0] aucun avertissement
        [one] 1 avertissement
       *[other] { $warnings } avertissements
    }, { $musts ->
        [0] tout ce que l’on emporte et qui doit fonctionner a une place
        [one] 1 appareil qui doit fonctionner ne le peut pas, ou pas aux heures voulues
       *[other] { $musts } appareils qui doivent fonctionner ne le peuvent pas, ou pas aux heures voulues
    }{ $home ->
        [0] {""}
        [one] , 1 appareil reste à la maison
       *[other] , { $home } appareils restent à la maison
    }
mend-turns = Tout ne peut pas fonctionner quand on le voudrait. La nouvelle carte montre à qui le tour.
mend-proven = Rien de moins coûteux dans la liste des changements n’en élimine autant.
mend-unproven = Il existe peut-être quelque chose de moins coûteux qui en fait autant : tout n’a pas été essayé.
mend-left = Aucun changement de la liste n’élimine le reste. « tallywatt check » dit ce qui reste.
mend-stopped = Nous avons arrêté de chercher avant d’avoir tout essayé : un changement élimine peut-être le reste. « tallywatt check » dit ce qui reste.
mend-stays = Reste
mend-wrote = Le plan changé est écrit dans { $path }. Les notes que vous aviez écrites dans l’ancien fichier n’y sont pas. Imprimez maintenant la nouvelle carte : tallywatt print { $path } --into DOSSIER. Jetez l’ancienne.
mend-kept = { $path } n’a pas été écrit : le plan reste tel quel.
mend-people = Rien n’est encore changé au matériel : faites vous-même chaque étape. Puis vérifiez de nouveau. Ne démarrez le moteur que s’il ne reste aucun danger.
mend-people-left = Rien n’est encore changé au matériel : faites vous-même chaque étape. Ces étapes n’éliminent pas tous les dangers. Ne démarrez pas le moteur avant d’avoir réglé le reste et vérifié de nouveau.
mend-try = Pour enregistrer le plan changé dans un nouveau fichier : tallywatt mend PLAN --into NOUVEAU.toml
mend-exists = { $path } existe déjà, et rien n’a été écrit. Donnez le nom d’un nouveau fichier.

print-ws-mend = Changements qui élimineraient les dangers
print-ws-mend-before = Tel quel : { $tally }.
print-ws-mend-after = Tout cela fait : { $tally }.
print-ws-mend-all = Le tout
print-ws-column-change = Changement
print-ws-column-points = Points

## Loads of one entry, counted. $name is what the user calls them.

load-some = { $count ->
        [one] { $count } quelconque des { $total } { $name }
       *[other] { $count } quelconques des { $total } { $name }
    }
load-at = { $loads } à « { $at } »

## tallywatt may

may-yes = OUI : vous pouvez mettre en marche { $wanted }, tout le reste éteint.
may-yes-while = OUI : vous pouvez mettre en marche { $wanted } pendant que { $running } { $count ->
        [one] fonctionne
       *[other] fonctionnent
    }.
may-no = NON : ne mettez pas en marche { $wanted }.
may-no-together = NON : ne faites pas marcher { $wanted } en même temps.
may-no-while = NON : ne mettez pas en marche { $wanted } pendant que { $running } { $count ->
        [one] fonctionne
       *[other] fonctionnent
    }.
may-dangers = Ce plan a { $count ->
        [one] un danger
       *[other] { $count } dangers
    } ({ $codes }). Si le moteur tourne, arrêtez-le, mais n’entrez jamais dans un lieu fermé pour cela. Laissez-le arrêté tant qu’il reste un danger. « tallywatt check » dit comment.
may-but = Le plan a aussi { $signal ->
        [warning] un avertissement
       *[other] une mise en garde
    } : { $title } ({ $code }).
may-but-amps = Pour les ampères seuls, cela irait. Cela ne protège pas d’un danger.
may-life = La santé de quelqu’un dépend de { $life }. Arrêtez d’abord { $others }, et demandez de nouveau.
may-no-place = Pas de place dans ce plan pour { $names } : { $reason }.
may-refused = Ne branchez pas { $names } : il ne faut utiliser aucune prise qui reste. « tallywatt check » dit pourquoi.
may-wrong-place = Ne branchez pas { $names } là où le plan le met. Libre, et capable de l’alimenter : { $free }. Notez-le dans le plan et redemandez.
may-taken = { $names } { $count ->
        [one] partage sa place
       *[other] partagent leur place
    } avec un autre appareil que vous nommez. Débranchez d’abord celui-là, et n’en branchez qu’un à la fois.
may-nothing = Tout ce que vous nommez fonctionne déjà.
may-over-short = { $at } : limite de { $limit }. Ceux-ci demandent { $asks } : { $over } de trop.
may-over-hours = { $at } : limite de { $limit } pour trois heures ou plus. Ceux-ci comptent pour { $asks } : { $over } de trop.
may-over-starting = Quand { $by } démarre en plus du reste, { -generator(form: "the") } doit donner { $asks }. La pointe est de { $limit } : { $over } de trop.
may-over-starting-alone = Le démarrage de { $by } à lui seul demande { $asks }. La pointe { -generator(form: "of") } est de { $limit } : { $over } de trop.
may-order-only = Dans un certain ordre, chacun démarrerait. Mais tout ce qui a un thermostat ou un moteur redémarre de lui-même, et ce serait trop.
may-the-set = { -generator(form: "The") }
may-part = « { $id } »
# Amps of a part that both legs of the generator feed: those that it carries, what is asked of one of them, and
# what passes each at most.
amps-both = { $amps } sur A et { $amps } sur B
amps-one-leg = { $amps } sur une phase
amps-both-at-most = { $amps } sur A et jusqu’à { $amps } sur B
amps-all = { $amps }
may-order = Mettez en marche dans cet ordre
may-order-step = { $name } à « { $at } » : avec le reste, { -generator(form: "the") } donne alors jusqu’à { $amps } un instant
may-any-order = Tout autre ordre convient aussi. Celui-ci a la plus basse pointe.
may-meter = Quand tout tourne, comptez
may-meter-breaker = à travers le disjoncteur de « { $breaker } » : jusqu’à { $amps }
may-meter-receptacle = à un instrument enfichable à « { $receptacle } » : { $volts } ou un peu plus, si { -generator(form: "the") } donne { $nominal }
may-meter-if = N’ouvrez rien pour mesurer. S’il y a plus d’ampères pendant plus de quelques secondes, ou nettement moins de volts : arrêtez le moteur, tâtez rallonges et fiches, et cherchez ce qui est différent.
may-as-placed = Ceci vaut pour les branchements que montre la carte.
may-no-load = Aucun appareil n’a le nom { $asked }.
may-no-load-nearest = Vouliez-vous dire « { $nearest } » ?
may-no-load-known = Il y a { $known }.

## Who may run together, in what order.

share-danger = Ce qui suit ne compte que les ampères. Éliminez d’abord chaque danger : d’ici là, le moteur reste arrêté.
share-all = Pour la puissance, tout peut fonctionner en même temps.
share-together = Ce qui peut fonctionner à la fois : tout ce qui est sur une ligne, et rien d’autre avec
share-never = Jamais ensemble
share-alone = { $name }, tel que prévu, même sans rien d’autre
share-more = et { $count } de plus, tous sur la feuille de calcul
share-incomplete = La liste n’est pas complète. Seul ce qui y figure peut fonctionner ensemble.
share-off = À côté de { $life }, laissez à l’arrêt : { $off }.
share-turns = Tout ne va pas toujours quand on le voudrait. À tour de rôle
print-turns-title = À tour de rôle
