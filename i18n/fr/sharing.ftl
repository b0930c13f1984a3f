# Who shares what: changes that mend a plan, and asking before plugging in.

## One change. $first is the part or load.

change-more-distance = Arrêtez le moteur et laissez-le refroidir. Éloignez { -generator(form: "the") } d’au moins { $distance } de toute tente, tout véhicule, toute porte et fenêtre. Dirigez l’échappement à l’opposé des gens. Voyez si les rallonges vont encore assez loin. S’il en faut une plus longue, mettez-la dans le plan et vérifiez de nouveau.
change-open-air = { $stands ->
        [enclosed] Si le moteur tourne en ce moment dans un endroit fermé, faites sortir tout le monde et appelez le { $call }. Que seuls les pompiers entrent pour l’arrêter. Une fois arrêté et froid, portez { -generator(form: "the") } à l’air libre.
        [covered] Arrêtez le moteur. Quand il est froid, portez { -generator(form: "the") } à l’air libre.
       *[other] Si le moteur tourne dans une tente, un porche, un véhicule ou une remise, faites sortir tout le monde et appelez le { $call }. Que seuls les pompiers entrent. Une fois arrêté et froid, portez { -generator(form: "the") } à l’air libre.
    } Il faut au moins { $distance } jusqu’à toute tente, tout véhicule, toute porte et fenêtre, { $clear } libres tout autour, et rien au-dessus sauf un toit bien plus haut, ouvert de tous côtés. Dirigez l’échappement à l’opposé des gens. Voyez si les rallonges vont encore assez loin. S’il en faut une plus longue, mettez-la dans le plan et vérifiez de nouveau.
change-no-building = Ne reliez { -generator(form: "the") } au câblage d’aucun bâtiment. Branchez les appareils directement { -generator(form: "to") } ou à son coffret.
change-alarm = Mettez un { -alarm } de monoxyde de carbone à piles dans chaque tente et chaque { -camper } où l’on dort.
change-uncoil = Déroulez la rallonge { $first } et étendez-la sans la serrer.
change-run-alone = Arrêtez tous les moteurs. Retirez ce qui relie les { -generator(form: "many") }, et n’en faites tourner { -generator.gender ->
        [feminine] qu’une seule
       *[masculine] qu’un seul
    }.
change-leave-home = N’utilisez pas { $first } ici. Laissez cet appareil à la maison, ou débranché et rangé.
change-set-aside = Débranchez { $first } et tout ce qui y est branché, et { $wrong ->
        [yes] ne vous en servez pas
       *[other] laissez le tout débranché
    }.
change-unplug = Débranchez { $first }.
change-bonding-plug-out = Arrêtez le moteur. Retirez la fiche de liaison : le neutre { -generator(form: "of") } est déjà relié à la terre.
change-bonding-plug = Arrêtez le moteur. Branchez la fiche de liaison à « { $to } », qui n’a pas de { -gfci }.
change-replug = Branchez { $first } à « { $to } ».
change-move = { $some ->
    [yes] Branchez à { $to } { $count } des { $total } { $first }, n’importe lesquels, et laissez le reste débranché.
   *[no] Branchez { $first } à { $to }.
  }
change-by-the-card = l’endroit indiqué sur la carte
change-take-turns = À { $to }, utilisez { $first } tour à tour avec { $with } : débranchez l’un avant de brancher l’autre.
change-another-hour = Faites fonctionner { $first } de { $to }, et non de { $from }.
change-off-at-night = Faites fonctionner { $first } seulement de { $to }, et éteignez avant que les gens dorment.
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
change-protected-cord = Mettez une rallonge GFCI ou un adaptateur GFCI certifié par un laboratoire là où { $first } se branche. Ou prenez à la place une rallonge GFCI certifiée, ni plus fine ni plus longue. { cord-shapes }
change-protected-outlet = Mettez une rallonge ou un adaptateur GFCI certifié par un laboratoire dans { $sockets ->
        [one] une place
       *[other] chacune de { $sockets } places
    } de { $first }. { cord-shapes }{ $named ->
        [yes] {" "}Nous { $sockets ->
            [one] l’appelons
           *[other] les appelons
        } { $names }.
       *[no] {""}
    }
change-three-way-cord = Branchez à { $first } une rallonge GFCI (boutons TEST et RESET) de { $length }, certifiée par un laboratoire : 12 AWG (un numéro plus petit est un fil plus gros), marquée pour l’extérieur. { cord-shapes }{ $named ->
        [yes] {" "}Nous l’appelons { $names }.
       *[no] {""}
    }
change-smaller-appliance = { $starts ->
    [yes] À la place de { $first }, prenez un appareil de { $power } ou moins en marche et { $starting } ou moins au démarrage. Ne branchez pas celui de { $old }.
   *[no] Prenez un appareil de { $power } ou moins à la place de { $first }, pas celui de { $old }.
  }{ $apart ->
    [yes] {" "}Les gens s’en servent loin { -generator(form: "of") } : ne l’en rapprochez pas.
   *[no] {""}
  }
change-box-for-splitter = { $length ->
        [none] À la place de { $first }, prenez un coffret d’usine certifié par un laboratoire.
       *[other] À la place de { $first }, prenez une rallonge certifiée de { $length } en { $wire }, marquée pour l’extérieur. Sa fiche et sa prise ont la forme de l’entrée du coffret. Nous l’appelons { $names }. Branchez au bout un coffret d’usine certifié par un laboratoire.
    } { box-shapes }
change-listed-box = À la place de { $first }, prenez un coffret d’usine certifié par un laboratoire. { box-shapes }
change-new-box = Branchez à { $first } un coffret d’usine certifié par un laboratoire. { box-shapes }
# What to look for on a cord or box to buy. $ends are its sockets.
cord-shapes = Sa fiche : { $plug }. Ses prises : { $ends }.
box-shapes = Son entrée : { $plug }. Ses prises : { $ends }. Il faut à chaque prise un { -gfci } et un disjoncteur qui n’a pas plus d’ampères qu’elle. Nous l’appelons { $box }, et ses prises { $outlets }.

## tallywatt mend

mend-look = À vérifier d’abord, moteur arrêté, avant d’acheter ou de changer quoi que ce soit. Puis changez vos réponses et vérifiez de nouveau.
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
        [0] tout ce que vous emportez et qui doit fonctionner a une prise
        [one] 1 appareil qui doit fonctionner ne le peut pas aux heures voulues
       *[other] { $musts } appareils qui doivent fonctionner ne le peuvent pas aux heures voulues
    }{ $home ->
        [0] {""}
        [one] , 1 appareil reste à la maison
       *[other] , { $home } appareils restent à la maison
    }
mend-turns = Tout ne peut pas fonctionner quand vous le voulez. La nouvelle carte montre ce qui marche quand.
mend-proven = Nous ne connaissons rien de plus simple.
mend-unproven = Il y a peut-être plus simple : nous n’avons pas tout essayé.
mend-left = Nous ne connaissons aucun changement qui élimine le reste.
mend-stopped = Nous avons arrêté de chercher avant d’avoir tout essayé : il y a peut-être un moyen plus simple, ou un changement qui élimine le reste.{ $changed ->
        [no] {""}
       *[yes] {" "}Lancez « tallywatt mend » aussi sur le plan changé : il trouvera peut-être mieux.
    }
mend-stays = Pas éliminé
mend-wrote = Nous avons écrit le plan changé dans { $path }, sans les notes de l’ancien fichier. Imprimez maintenant la nouvelle carte : { $command }. Jetez l’ancienne carte.
mend-kept = Rien n’a changé dans le plan, donc nous n’avons pas écrit { $path }.
mend-people = Votre matériel n’est pas encore changé : faites vous-même chaque étape. Puis vérifiez de nouveau. Ne démarrez le moteur que s’il ne reste aucun danger.
mend-people-left = Votre matériel n’est pas encore changé : faites vous-même chaque étape. Ces étapes n’éliminent pas tous les dangers. Ne démarrez pas le moteur avant d’avoir réglé le reste et vérifié de nouveau.
mend-try = Pour enregistrer le plan changé dans un nouveau fichier : { $command }

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
    }, tout le reste éteint.
may-no = NON : ne mettez pas en marche { $wanted }.
may-no-together = NON : ne faites pas marcher { $wanted } en même temps.
may-no-while = NON : ne mettez pas en marche { $wanted } pendant que { $running } { $count ->
        [one] fonctionne
       *[other] fonctionnent
    }.
may-stays-on = La santé de quelqu’un dépend { $known ->
        [yes] de
       *[no] peut-être de
    } { $life } : nous le comptons donc en marche. Ne l’éteignez jamais pour faire de la place.
may-dangers = Ce plan a { $count ->
        [one] un danger
       *[other] { $count } dangers
    } (voyez { $codes }). Si le moteur tourne, arrêtez-le, mais n’entrez jamais dans un lieu fermé pour cela. Laissez-le arrêté tant qu’il reste un danger. « tallywatt check » dit comment.
may-but = Le plan a aussi { $signal ->
        [warning] un avertissement
       *[other] un point d’attention
    } : { $title } ({ $code }).
may-but-amps = Il y a assez de puissance, mais le danger est toujours là. Laissez le moteur arrêté.
may-life = La santé de quelqu’un dépend de { $life }. Arrêtez d’abord { $others }, et demandez de nouveau.
may-no-place = Ce plan n’a pas de prise pour { $names } : { $reason }.
may-refused = Ne branchez pas { $names } : aucune prise libre et utilisable ne convient. « tallywatt check » dit pourquoi.
may-wrong-place = Ne branchez pas { $names } à la prise que donne le plan. Libre, et capable de l’alimenter : { $free }. Notez-le dans le plan et redemandez.
may-taken = { $names } { $count ->
        [one] partage sa place
       *[other] partagent leur place
    } avec un autre appareil que vous nommez. Débranchez d’abord celui-là, et n’en branchez qu’un à la fois.
may-nothing = Tout ce que vous nommez est déjà en marche.
may-over-short = { $of ->
    [set] { -generator(form: "The") } peut fournir { $limit }.
   *[part] La limite à { $at } est { $limit }.
  } Ceux-ci demandent { $asks } : { $over } de trop.
may-over-hours = { $of ->
    [set] { -generator(form: "The") } peut fournir { $limit } pendant trois heures ou plus.
   *[part] La limite à { $at } est { $limit } pendant trois heures ou plus.
  } Ceux-ci comptent pour { $asks } : { $over } de trop.
may-over-starting = Quand { $by } démarre en plus du reste, { -generator(form: "the") } doit fournir { $asks }. La pointe est de { $limit } : { $over } de trop.
may-over-starting-alone = Le démarrage de { $by } à lui seul demande { $asks }. La pointe { -generator(form: "of") } est de { $limit } : { $over } de trop.
may-order-only = Mis en marche dans le bon ordre, chacun démarre. Mais tout ce qui a un thermostat ou un moteur redémarre de lui-même plus tard, et ce serait trop.
may-the-set = { -generator(form: "The") }
may-part = « { $id } »
# Amps of a part that both legs of the generator feed: those that it carries, what is asked of one of them, and
# what passes each at most.
amps-both = { $amps } sur A et { $amps } sur B
amps-one-leg = { $amps } sur une phase
amps-both-at-most = { $amps } sur A et jusqu’à { $amps } sur B
amps-all = { $amps } en tout
may-order = Mettez en marche dans cet ordre
may-order-step = { $name } à « { $at } » : à ce moment, { -generator(form: "the") } fournit jusqu’à { $amps }
may-any-order = Tout autre ordre convient aussi. Celui-ci a la plus basse pointe.
may-meter = Quand tout tourne, comptez
may-meter-breaker = à travers le disjoncteur de « { $breaker } » : jusqu’à { $amps }
may-meter-receptacle = à un voltmètre de prise à « { $receptacle } » : { $volts } ou un peu plus, si { -generator(form: "the") } donne { $nominal }
may-meter-if = N’ouvrez rien pour mesurer. Si un appareil de mesure de prise montre plus d’ampères pendant plus de quelques secondes, ou bien moins de volts, arrêtez le moteur. Puis tâtez les rallonges et les fiches, et voyez si autre chose est branché.
may-as-placed = Ceci suppose que tout est branché comme le montre la carte.
may-no-load = Ce plan n’a pas de { $asked }.
may-no-load-nearest = Vouliez-vous dire « { $nearest } » ?
may-no-load-known = Il a : { $known }.

## Who may run together, in what order.

share-danger = La liste qui suit ne regarde que la puissance, pas le danger. Laissez le moteur arrêté tant que vous n’avez pas éliminé chaque danger.
share-all = Pour la puissance, tout peut fonctionner en même temps.
share-together = Vous pouvez faire marcher en même temps tout ce qui est sur une ligne, et rien d’autre.
share-never = Jamais ensemble
share-alone = { $name } : pas même sans rien d’autre, selon le plan actuel
share-more = et { $count } de plus, tous dans la note de calcul
share-incomplete = La liste n’est pas complète. Seul ce qui y figure peut fonctionner ensemble.
share-off = Pendant que { $life } fonctionne, laissez à l’arrêt : { $off }.
share-turns = Tout ne peut pas marcher quand vous le voulez. À tour de rôle
# Une ligne des tours.
share-turn-without = { $loads } (seulement quand personne n’a besoin de { $life })
share-no-turns = { $life } ne prend pas de tour : ne l’éteignez jamais pour faire de la place.

print-turns-title = À tour de rôle
