# Rules on electric shock.

ground-wet = mouillé
ground-damp = humide
ground-dry = sec
ground-unknown = d’un état inconnu, donc compté comme mouillé

SHOCK001 = { $fix ->
    [free] Aucun { -gfci } sur le chemin de { $any }
    [first] Aucun { -gfci } sur le chemin de { $any }
    [named] Ne branchez aucun appareil à { $any }
   *[other] Aucune protection contre les chocs à { $any }
  }
    .why = Le sol ici est { $ground }. Si une rallonge ou un appareil devient défectueux, le courant peut traverser la personne qui y touche. Un disjoncteur ne s’en aperçoit pas. Un { -gfci(form: "full") } est fait pour se déclencher à 6 millièmes d’ampère.
    .fix-protect = N’utilisez que des prises avec un bouton TEST et un bouton RESET, ou une rallonge ou un coffret qui les ont. Avant chaque usage, branchez une lampe et appuyez sur TEST : elle doit s’éteindre. Sinon, n’utilisez pas cette prise.
    .fix-better = Mieux : branchez d’abord un cordon GFCI (boutons TEST et RESET), puis vos appareils dans celui-ci. Ou prenez une prise qui a ces boutons. Avant chaque usage, branchez une lampe et appuyez sur TEST : elle doit s’éteindre.
    .fix-camper = Si possible, prenez une prise ou une rallonge avec un { -gfci }. Les codes n’en demandent pas pour une { -camper }, qui peut le déclencher sans défaut. S’il se déclenche chaque fois, appelez un { -electrician }.
    .fix-free = N’y branchez aucun appareil. Un cordon GFCI (boutons TEST et RESET) peut y aller : n’utilisez que son bout.
    .fix-named = N’y branchez rien d’autre que { shock-named }. Pour un appareil, prenez une prise ou une rallonge avec boutons TEST et RESET ({ -gfci }).
    .fix-first = Débranchez { $parts } de { $place }. Branchez à { $place } un cordon GFCI (boutons TEST et RESET), puis { $parts } dans celui-ci.

# What alone may be plugged in. $plug: whether the bonding plug is with it, or alone.
shock-named = { $plug ->
    [alone] la fiche de liaison
    [yes] { $parts } et la fiche de liaison
   *[no] { $parts }
  }

SHOCK002 = Un testeur de prise peut vous tromper : on ignore si le neutre est flottant
    .why = Si le neutre est flottant, le testeur montre « OPEN GROUND » (terre coupée) et son bouton ne déclenche rien, même si la protection fonctionne.
    .fix-find-out = Si vous avez un { -gfci }, faites l’essai avec son propre bouton TEST. Cherchez dans le manuel « neutre flottant » (floating) ou « neutre relié » (bonded neutral), et mettez-le dans le plan. Ne reliez pas vous-même le neutre et la terre.

SHOCK003 = { $fix ->
    [ask] On ignore si ceci alimentera le câblage d’un bâtiment
   *[other] Ceci alimenterait le câblage d’un bâtiment
  }
    .why = Le courant sort par le bâtiment jusque dans la rue, sous des milliers de volts. Il tue les gens qui réparent les lignes. Un cordon à deux fiches a des lames nues sous tension.
    .fix-stop = Ne faites pas ce branchement. Branchez les appareils par des rallonges seulement. Un { -electrician } doit d’abord poser un équipement de transfert.
    .fix-ask = Renseignez-vous avant de démarrer. Si la réponse est oui, ne faites pas ce branchement : un { -electrician } doit d’abord poser un équipement de transfert.

SHOCK004 = { $fix ->
    [find-out] Le neutre est peut-être relié à la terre à { $bonds } endroits : on l’ignore
    [find-out-box] Le neutre est peut-être relié à la terre à { $bonds } endroits : on l’ignore
    [plug] La fiche de liaison relie encore le neutre à la terre
    [sets] Chaque { -generator } relie le neutre à la terre
   *[other] Le neutre est encore relié à la terre : { $about }
  }
    .why = { $fix ->
        [find-out] Le neutre, le fil de retour, est peut-être relié à la terre à { $bonds } endroits : c’est trop. Alors du métal que vous touchez est parcouru par du courant, et la protection contre les chocs peut se déclencher sans raison ou pas du tout.
        [find-out-box] Le neutre, le fil de retour, est peut-être relié à la terre à { $bonds } endroits : c’est trop. Alors du métal que vous touchez est parcouru par du courant, et la protection contre les chocs peut se déclencher sans raison ou pas du tout.
       *[other] Le neutre, le fil de retour, est relié à la terre à { $bonds } endroits : c’est trop. Du métal que vous touchez est parcouru par du courant, et la protection contre les chocs peut se déclencher sans raison ou pas du tout.
      }
    .fix-plug = Moteur arrêté, retirez la fiche de liaison : le neutre { -generator(form: "of") } est déjà relié à la terre. Ne reliez et ne changez rien d’autre.
    .fix-sets = Faites-les fonctionner séparément tant que leur fabricant ne dit pas qu’on peut joindre des modèles à neutre mis à la terre. Ne les ouvrez pas, n’y changez rien.
    .fix-box = N’utilisez pas { $any } avant qu’un { -electrician } ait regardé à l’intérieur. N’ouvrez rien vous-même.
    .fix-find-out = Cherchez dans le manuel « neutre relié » (bonded) ou « neutre flottant » (floating neutral), et une fiche de liaison dans les prises. S’il y a un coffret, faites-le examiner par un { -electrician }. N’ouvrez, ne reliez et ne changez rien vous-même.
    .fix-find-out-box = { SHOCK005.fix-unknown }

SHOCK005 = { $fix ->
    [known] Le neutre est relié à la terre dans { $about }
   *[other] Le neutre est peut-être relié à la terre dans { $about }
  }
    .why = Ne reliez jamais le neutre et la terre. Reliés dans un coffret, ils peuvent mettre du courant dans le métal que vous touchez, et la protection contre les chocs peut ne pas fonctionner.
    .fix-known = N’utilisez pas { $any } avant qu’un { -electrician } ait regardé à l’intérieur. N’ouvrez rien vous-même.
    .fix-unknown = Cherchez « neutral bonded » (neutre relié) ou « isolated neutral » (neutre isolé) dans les papiers de { $about }, ou demandez au fabricant. À défaut, faites regarder à l’intérieur par un { -electrician }. N’ouvrez rien vous-même.

SHOCK006 = { $fix ->
    [home-made] Coffret fait maison : { $about }
   *[other] On ignore qui a fabriqué ce coffret : { $about }
  }
    .why = Un coffret fait maison n’a pas été éprouvé contre la pluie, les connexions lâches, un fil trop mince ou l’absence de terre. Rien de cela ne se voit de l’extérieur.
    .fix-home-made = Prenez un coffret fabriqué en usine avec la marque d’un laboratoire d’essai, ou faites examiner celui-ci par un { -electrician }. Ne l’ouvrez pas.
    .fix-look = Cherchez la marque d’un laboratoire d’essai sur le coffret. S’il n’y en a pas, faites-le examiner par un { -electrician }. Ne l’ouvrez pas.

SHOCK007 = { $first } peut se déclencher sans que rien soit défectueux
    .why = Chaque rallonge et chaque appareil fuit un peu. Ici, cela fait environ { $leak } en tout ({ $least } suffisent pour déclencher ; mA : millièmes d’ampère). Des raccords mouillés fuient davantage. En cause : { $about }.
    .fix-nearer = Prenez une protection plus près des appareils, avec une rallonge plus courte à la suite et moins d’appareils dessus. Gardez les raccords au sec. Si elle se déclenche, trouvez pourquoi. Ne la contournez jamais.

SHOCK008 = { $count } protections contre les chocs à la suite
    .why = Elles ne protègent pas mieux qu’une seule. Un défaut peut déclencher n’importe laquelle, et le courant peut rester coupé après un seul RESET. { -generator(form: "Of") } vers les appareils : { $about }.
    .fix-reset = Si le courant se coupe, débranchez d’abord l’appareil. Puis appuyez sur RESET de chacune, à partir { -generator(form: "of") }. Essayez chacune avec son propre bouton TEST.

SHOCK009 = Deux défauts ici pourraient donner un choc sans que rien se déclenche
    .why = Le neutre est flottant, ou on l’ignore. Alors un premier défaut ne se voit pas du tout. Un second, dans un autre appareil, peut mettre la pleine tension entre deux boîtiers métalliques. Sans protection ici : { $about }.
    .fix-protect = Branchez-les tous à des prises avec un bouton TEST et un bouton RESET. N’utilisez plus rien qui picote, est coupé ou roussi. Ne reliez pas vous-même le neutre et la terre.

SHOCK010 = { $fix ->
    [camper] Une fiche de liaison peut faire une liaison de trop pour { $about }
   *[other] Une fiche de liaison ne doit pas rester en place quand on alimente un bâtiment
  }
    .why = La fiche relie le neutre à la terre { -generator(form: "to") }. { $fix ->
        [camper] Certains modèles de { -camper } font de même à l’intérieur. Avec deux liaisons, du métal que vous touchez est parcouru par du courant.
       *[other] Le bâtiment fait de même. Avec deux liaisons, du métal que vous touchez est parcouru par du courant.
      }
    .fix-building = Ne faites pas ce branchement. Un { -electrician } doit d’abord poser un équipement de transfert, et décider si la fiche doit être retirée.
    .fix-camper = Demandez au fabricant de la { -camper } ou à un { -electrician } avant de la brancher avec cette fiche en place. Ne reliez pas vous-même le neutre et la terre.

SHOCK011 = { $fix ->
    [count] On ignore si { $about } a un fil neutre
   *[other] Le fil neutre manque peut-être dans { $about }
  }
    .why = Le courant y passe des deux moitiés de 120/240 V. Sans neutre, des appareils faits pour 120 V peuvent recevoir près de 240 V. Ils brûlent, et aucun disjoncteur ne se déclenche.
    .fix-leave = Ne l’utilisez pas. Prenez une rallonge à quatre fils, comme 10/4.
    .fix-count = Lisez ce qui est imprimé sur la gaine : 10/4 a quatre fils, 10/3 en a trois. Ne l’utilisez pas tant que vous ne savez pas.

SHOCK012 = Aucune protection contre les chocs le long de { $about }
    .why = La protection ({ -gfci }) couvre ce qui vient après elle. { $length } de rallonge viennent avant elle. Là où la rallonge est coupée ou un raccord mouillé, le courant peut traverser la personne qui y touche, et rien ne se déclenche à temps.
    .fix-dry = Gardez chaque raccord hors du sol et au sec. N’y touchez pas, ne la branchez et ne la déplacez pas moteur en marche. Regardez-la sur toute sa longueur avant chaque usage : coupée ou écrasée, ne vous en servez pas.
    .fix-first = Mieux : un cordon GFCI (boutons TEST et RESET) va d’abord. Branchez-le à { $place }, puis { $about } dans celui-ci. D’ici là, gardez ses connexions au sec et hors du sol, et n’y touchez pas moteur en marche.

SHOCK013 = { $fix ->
    [plug] Le { -gfci } de « { $device } » ne voit pas un défaut
    [plug-alone] Un { -gfci } peut couper la fiche de liaison
    [plug-first] Un { -gfci } peut couper la fiche de liaison
    [plug-better] Un { -gfci } peut couper la fiche de liaison
    [if-any] Un { -gfci } pourrait ne pas voir un défaut à « { $device } »
    [if-none] Un { -gfci } pourrait ne pas voir un défaut à « { $device } »
    [box] Le { -gfci } de « { $device } » ne voit pas un défaut
   *[other] Le { -gfci } de « { $device } » pourrait ne pas voir un défaut
  }
    .why = { $fix ->
        [plug] La fiche de liaison dans « { $joint } » est derrière ce { -gfci } : le courant d’un défaut y repasse. Il ne se déclenche pas, alors que son bouton TEST fonctionne. Le sol ici est { $ground }.
        [plug-look] On ignore s’il y a une fiche de liaison dans « { $joint } » ; on a donc retenu que oui. Derrière ce { -gfci }, elle l’empêche de se déclencher. Le sol ici est { $ground }.
        [plug-where] On ignore dans quelle prise est la fiche de liaison : peut-être dans « { $joint } ». Derrière ce { -gfci }, elle l’empêche de se déclencher. Le sol ici est { $ground }.
        [plug-out] Une fiche de liaison dans « { $joint } » peut empêcher ce { -gfci } de se déclencher. Le sol ici est { $ground }.
        [plug-alone] La fiche de liaison dans « { $joint } » est derrière un { -gfci }. S’il se déclenche, neutre et terre sont de nouveau séparés, et personne ne le voit.
        [plug-first] La fiche de liaison dans « { $joint } » est derrière un { -gfci }. S’il se déclenche, neutre et terre sont de nouveau séparés, et personne ne le voit.
        [plug-better] La fiche de liaison dans « { $joint } » est derrière un { -gfci }. S’il se déclenche, neutre et terre sont de nouveau séparés, et personne ne le voit.
        [if-any] On ignore si « { $device } » a un { -gfci }. À « { $joint } », neutre et terre peuvent être reliés : alors ce { -gfci } ne se déclenche pas, même si son bouton TEST fonctionne. Le sol ici est { $ground }.
        [if-none] On ignore si « { $device } » a un { -gfci }. À « { $joint } », neutre et terre peuvent être reliés : alors ce { -gfci } ne se déclenche pas, même si son bouton TEST fonctionne. Le sol ici est { $ground }.
        [box] « { $joint } » relie neutre et terre derrière ce { -gfci } : le courant d’un défaut y repasse. Il ne se déclenche pas, alors que son bouton TEST fonctionne. Le sol ici est { $ground }.
        [shared] Neutre et terre sont reliés à « { $joint } ». On ignore si un seul { -gfci } sert les deux prises ; on a donc retenu que oui, et qu’il ne voit pas un défaut. Le sol ici est { $ground }.
       *[other] On ignore si « { $joint } » relie neutre et terre à l’intérieur ; on a donc retenu que oui. Alors ce { -gfci } ne se déclenche pas. Le sol ici est { $ground }.
      }
    .fix-plug = Arrêtez le moteur. Mettez la fiche de liaison dans une prise sans boutons TEST et RESET, avec son propre disjoncteur. S’il n’y en a pas, { $wet ->
        [no] mieux vaut ne brancher rien
       *[yes] ne branchez rien
      } d’autre à « { $device } » qu’un cordon GFCI (boutons TEST et RESET).
    .fix-plug-look = Cherchez sur les prises { -generator(form: "of") } une fiche sans fil. S’il y en a une, laissez-la, notez dans le plan sur quelle prise elle est, et demandez à un électricien agréé où elle doit être. S’il n’y en a pas, dites-le dans le plan, et n’en ajoutez pas.
    .fix-plug-where = Arrêtez le moteur. Regardez dans quelle prise est la fiche de liaison. Mettez-la dans une prise sans boutons TEST et RESET, avec son propre disjoncteur.
    .fix-plug-alone = Ne branchez rien d’autre à « { $joint } » qu’un cordon GFCI (boutons TEST et RESET). Si le { -gfci } de la prise se déclenche, arrêtez le moteur et cherchez pourquoi.
    .fix-plug-better = Mieux : ne branchez rien d’autre à « { $joint } » qu’un cordon GFCI (boutons TEST et RESET). Si le { -gfci } de la prise se déclenche, arrêtez le moteur et cherchez pourquoi.
    .fix-plug-first = Débranchez { $parts } de « { $joint } ». Branchez-y un cordon GFCI (boutons TEST et RESET), puis { $parts } dans celui-ci. Si le { -gfci } de la prise se déclenche, arrêtez le moteur et cherchez pourquoi.
    .fix-plug-out = Arrêtez le moteur. Retirez la fiche de liaison : le neutre { -generator(form: "of") } est déjà relié à la terre. C’est une fiche sans fil, dans une de ses prises.
    .fix-box = N’utilisez pas « { $joint } » avant qu’un { -electrician } l’ait examiné. Ne l’ouvrez pas.
    .fix-box-look = N’utilisez pas « { $joint } » avant de le savoir. Cherchez « neutral bonded » (neutre relié) ou « isolated neutral » (neutre isolé) dans sa notice, ou demandez au fabricant. N’ouvrez rien vous-même.
    .fix-shared = Si TEST à « { $device } » coupe aussi « { $joint } », un seul { -gfci } sert les deux. Arrêtez le moteur et mettez la fiche de liaison dans une prise qui ne partage son disjoncteur avec rien en service. S’il n’y en a pas, { $wet ->
        [no] mieux vaut ne brancher à
       *[yes] ne branchez à
      } « { $device } » qu’un cordon GFCI (boutons TEST et RESET).
    .fix-if-any = Des boutons TEST et RESET sur « { $device } » ne suffisent pas. Branchez les appareils sur un cordon GFCI, et ce cordon à { $parts }. Regardez si « { $device } » a ces boutons, et notez-le dans le plan.
    .fix-if-none = N’utilisez pas { $any } : autre chose y est dangereux. Même avec des boutons TEST et RESET sur « { $device } », un défaut peut n’y rien déclencher.
