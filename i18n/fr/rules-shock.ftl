# Rules on electric shock.

ground-wet = mouillé
ground-damp = humide
ground-dry = sec
ground-unknown = d’un état inconnu, donc supposé mouillé

SHOCK001 = { $fix ->
    [free] Aucun { -gfci } ne protège { $any }
    [first] Aucun { -gfci } ne protège { $any }
    [named] Ne branchez aucun appareil à { $any }
   *[other] Aucun { -gfci } ne protège { $any }
  }
    .why = Le sol ici est { $ground }. Une rallonge ou un appareil défectueux peut y faire passer le courant par votre corps, et aucun disjoncteur ne le coupe. Un { -gfci(form: "full") }, avec boutons TEST et RESET, est fait pour couper le courant dès 6 millièmes d’ampère de fuite.
    .fix-protect = N’utilisez que des prises, rallonges ou coffrets avec boutons TEST et RESET ({ -gfci }). Avant chaque usage, appuyez sur TEST avec une lampe branchée. Si elle reste allumée, n’utilisez pas cette prise.
    .fix-better = Mieux : branchez d’abord une rallonge GFCI (boutons TEST et RESET), et vos appareils sur cette rallonge. Ou prenez une prise qui a ces boutons. Avant chaque usage, appuyez sur TEST avec une lampe branchée : elle doit s’éteindre.
    .fix-camper = Si vous le pouvez, prenez une prise ou une rallonge avec un { -gfci }. Les codes n’en demandent pas à une prise de { -camper }, car une { -camper } peut le déclencher sans défaut. S’il se déclenche sans cesse, appelez un { -electrician }.
    .fix-free = N’y branchez aucun appareil. Branchez-y seulement une rallonge GFCI (boutons TEST et RESET), et les appareils sur cette rallonge.
    .fix-named = N’y branchez rien d’autre que { shock-named }. Pour un appareil, prenez une prise ou une rallonge avec boutons TEST et RESET ({ -gfci }).
    .fix-first = Débranchez { $parts } de { $place }. Branchez à { $place } une rallonge GFCI (boutons TEST et RESET), et { $parts } sur cette rallonge.

# What alone may be plugged in. $plug: whether the bonding plug is with it, or alone.
shock-named = { $plug ->
    [alone] la fiche de liaison
    [yes] { $parts } et la fiche de liaison
   *[no] { $parts }
  }

SHOCK002 = Un testeur de prise peut vous tromper ici
    .why = Nous ignorons si le neutre est flottant (non relié à la terre). S’il l’est, le testeur montre « open ground » (terre coupée) et son bouton ne déclenche rien, même si le { -gfci } fonctionne.
    .fix-find-out = Si vous avez un { -gfci }, appuyez sur son propre bouton TEST. Cherchez dans le manuel « neutre flottant » (floating) ou « neutre relié » (bonded neutral). Ne reliez pas vous-même le neutre et la terre.

SHOCK003 = { $fix ->
    [ask] Ceci alimente peut-être le câblage d’un bâtiment
   *[other] Ceci alimenterait le câblage d’un bâtiment
  }
    .why = Le courant sort jusque dans la rue, sous des milliers de volts, et tue les gens qui réparent les lignes. Un cordon avec une fiche à chaque bout a des lames nues sous tension.
    .fix-stop = Ne reliez pas { -generator(form: "the") } au bâtiment. Branchez les appareils { -generator(form: "to") } par des rallonges seulement. Un { -electrician } doit d’abord poser un inverseur de source, qui sépare le bâtiment de la rue.
    .fix-ask = Renseignez-vous avant de démarrer. Si cela doit alimenter un bâtiment, ne faites pas ce branchement : un { -electrician } doit d’abord poser un inverseur de source, qui sépare le bâtiment de la rue.

SHOCK004 = { $fix ->
    [find-out] Le neutre est peut-être relié à la terre à { $bonds } endroits
    [find-out-box] Le neutre est peut-être relié à la terre à { $bonds } endroits
    [plug] La fiche de liaison relie une seconde fois le neutre à la terre
    [sets] Chaque { -generator } relie le neutre à la terre
   *[other] Le neutre est relié à la terre à un second endroit : { $about }
  }
    .why = { $fix ->
        [find-out] Le neutre, le fil où le courant revient, est peut-être relié à la terre à { $bonds } endroits : c’est trop. Du métal que vous touchez porte alors du courant, et un { -gfci } peut ne pas se déclencher.
        [find-out-box] Le neutre, le fil où le courant revient, est peut-être relié à la terre à { $bonds } endroits : c’est trop. Du métal que vous touchez porte alors du courant, et un { -gfci } peut ne pas se déclencher.
       *[other] Le neutre, le fil où le courant revient, est relié à la terre à { $bonds } endroits : c’est trop. Du métal que vous touchez porte du courant, et un { -gfci } peut ne pas se déclencher.
      }
    .fix-plug = Moteur arrêté, retirez la fiche de liaison : le neutre { -generator(form: "of") } est déjà relié à la terre. Ne reliez et ne changez rien d’autre.
    .fix-sets = Faites-les fonctionner séparément tant que leur fabricant ne dit pas que vous pouvez joindre des modèles à neutre relié. Ne les ouvrez pas, et n’y changez rien.
    .fix-box = N’utilisez pas { $any } avant qu’un { -electrician } ait regardé à l’intérieur. N’ouvrez rien vous-même.
    .fix-find-out = { $used ->
        [no] N’utilisez pas { $any } avant de le savoir.{" "}
        [yes] Avant de le savoir, ne comptez sur aucun { -gfci } en aval de { $any }.{" "}
       *[none] {""}
      }Cherchez dans le manuel { -generator(form: "of") } « neutre relié » (bonded) ou « neutre flottant » (floating neutral), et une fiche de liaison dans les prises. N’ouvrez rien, ne reliez rien et ne touchez pas au câblage vous-même.
    .fix-find-out-box = { SHOCK005.fix-unknown }

SHOCK005 = { $fix ->
    [known] Le neutre est relié à la terre dans { $about }
   *[other] Le neutre est peut-être relié à la terre dans { $about }
  }
    .why = Le fil neutre ramène le courant ; le { -ground-wire } ne devrait pas en porter. Si un coffret les relie à l’intérieur, du métal que vous touchez peut porter du courant, et un { -gfci } peut ne pas fonctionner.
    .fix-known = N’utilisez pas { $any } avant qu’un { -electrician } ait regardé à l’intérieur. N’ouvrez rien vous-même. Ne reliez jamais le neutre et la terre.
    .fix-unknown = { $used ->
        [no] N’utilisez pas { $any } avant de le savoir.
       *[yes] Avant de le savoir, ne comptez sur aucun { -gfci } en aval de { $any }.
      } Cherchez « neutral bonded » (neutre relié) ou « isolated neutral » (neutre isolé) dans les papiers de { $about }, ou demandez au fabricant ou à un { -electrician }. N’ouvrez rien vous-même.

SHOCK006 = { $fix ->
    [home-made] Coffret fait maison : { $about }
   *[other] Nous ignorons qui a fabriqué ceci : { $about }
  }
    .why = Un coffret fait maison n’a été essayé ni pour la pluie, ni pour les connexions lâches, un fil trop mince ou l’absence de terre. Rien de cela ne se voit de l’extérieur.
    .fix-home-made = Prenez un coffret fabriqué en usine avec la marque d’un laboratoire d’essai, ou faites examiner celui-ci par un { -electrician }. Ne l’ouvrez pas.
    .fix-look = Cherchez la marque d’un laboratoire d’essai sur le coffret. S’il n’y en a pas, faites-le examiner par un { -electrician }. Ne l’ouvrez pas.

SHOCK007 = { $first } peut se déclencher sans défaut
    .why = Rallonges et appareils fuient un peu : ici environ { $leak }, et { $least } peuvent le déclencher (mA : millièmes d’ampère). Des raccords mouillés fuient davantage. En cause : { $about }.
    .fix-nearer = Prenez un { -gfci } plus près des appareils, avec une rallonge plus courte, des raccords secs et moins d’appareils dessus. S’il se déclenche, cherchez pourquoi, et ne le contournez jamais.

SHOCK008 = { $count } { -gfci(form: "many") } l’un après l’autre
    .why = Ils ne protègent pas mieux qu’un seul. N’importe lequel peut se déclencher, et le courant peut rester coupé après un seul RESET. En partant { -generator(form: "of") } : { $about }.
    .fix-reset = Si le courant se coupe, débranchez d’abord l’appareil. Puis appuyez sur RESET de chacun, le plus près { -generator(form: "of") } d’abord. Appuyez sur TEST de chacun pour l’essayer.

SHOCK009 = Deux choses abîmées ensemble peuvent donner un choc
    .why = Le neutre est flottant, ou nous l’ignorons : la première chose abîmée ne se voit pas. Une seconde peut mettre la pleine tension entre deux boîtiers métalliques. Sans { -gfci } : { $about }.
    .fix-protect = Branchez-les tous à des prises avec boutons TEST et RESET ({ -gfci }). N’utilisez plus rien qui picote, est coupé ou roussi. Ne reliez pas vous-même le neutre et la terre.

SHOCK010 = { $fix ->
    [camper] Une fiche de liaison est peut-être de trop pour { $about }
   *[other] Fiche de liaison en place, et un bâtiment à alimenter
  }
    .why = La fiche relie le neutre à la terre { -generator(form: "to") }. { $fix ->
        [camper] Si la { -camper } fait de même à l’intérieur, le métal que vous touchez porte du courant.
       *[other] Le bâtiment fait de même, et le métal que vous touchez porte donc du courant.
      }
    .fix-building = Ne reliez pas { -generator(form: "the") } au bâtiment. Un { -electrician } doit d’abord poser un inverseur de source, qui sépare le bâtiment de la rue. Demandez-lui s’il faut retirer la fiche.
    .fix-camper = Demandez au fabricant de la { -camper } ou à un { -electrician } avant de la brancher avec la fiche de liaison en place. Ne reliez pas vous-même le neutre et la terre.

SHOCK011 = { $fix ->
    [count] Nous ignorons si { $about } a un neutre
   *[other] Le neutre manque peut-être dans { $about }
  }
    .why = Les deux moitiés de 120/240 V y passent. Sans son neutre, des appareils faits pour 120 V peuvent recevoir près de 240 V et brûler, et aucun disjoncteur ne se déclenche.
    .fix-leave = Ne l’utilisez pas. Prenez une rallonge à quatre fils, comme 10/4.
    .fix-count = Lisez ce qui est imprimé sur la rallonge : 10/4 a quatre fils, 10/3 en a trois. Ne l’utilisez pas tant que vous ne savez pas.

SHOCK012 = Le { -gfci } ne protège pas cette rallonge : { $about }
    .why = Un { -gfci } ne protège que ce qui est en aval : pas les { $length } de rallonge entre lui et { -generator(form: "the") }. Là où cette rallonge est coupée ou mouillée, le courant peut passer par votre corps, et rien ne se déclenche à temps.
    .fix-dry = Gardez ses raccords au sec et hors du sol. N’y touchez pas, ne la branchez pas et ne la déplacez pas tant que le moteur tourne. Ne vous en servez jamais coupée ou écrasée.
    .fix-first = Mieux : branchez d’abord une rallonge GFCI (boutons TEST et RESET) à { $place }, et { $about } sur cette rallonge. D’ici là, gardez les raccords au sec et hors du sol, et n’y touchez pas tant que le moteur tourne.

SHOCK013 = { $fix ->
    [plug] Le { -gfci } de « { $device } » ne coupe pas un choc
    [plug-alone] Un { -gfci } peut couper la fiche de liaison
    [plug-first] Un { -gfci } peut couper la fiche de liaison
    [plug-better] Un { -gfci } peut couper la fiche de liaison
    [if-any] Un { -gfci } à « { $device } » peut ne pas couper un choc
    [if-none] Un { -gfci } à « { $device } » peut ne pas couper un choc
    [box] Le { -gfci } de « { $device } » ne coupe pas un choc
   *[other] Le { -gfci } de « { $device } » peut ne pas couper un choc
  }
    .why = { $fix ->
        [plug] La fiche de liaison dans « { $joint } » est en aval de ce { -gfci } : son bouton TEST fonctionne, mais un choc ne le déclenche pas. Le sol ici est { $ground }.
        [plug-look] Nous ignorons s’il y a une fiche de liaison dans « { $joint } » et avons donc supposé que oui. En aval de ce { -gfci }, elle l’empêche de se déclencher. Le sol ici est { $ground }.
        [plug-where] Nous ignorons dans quelle prise est la fiche de liaison et avons donc supposé « { $joint } ». En aval de ce { -gfci }, elle l’empêche de se déclencher. Le sol ici est { $ground }.
        [plug-out] Une fiche de liaison dans « { $joint } » peut empêcher ce { -gfci } de se déclencher lors d’un choc. Le sol ici est { $ground }.
        [plug-alone] La fiche de liaison dans « { $joint } » est en aval d’un { -gfci }. S’il se déclenche, neutre et terre se séparent, et vous ne le voyez pas.
        [plug-first] La fiche de liaison dans « { $joint } » est en aval d’un { -gfci }. S’il se déclenche, neutre et terre se séparent, et vous ne le voyez pas.
        [plug-better] La fiche de liaison dans « { $joint } » est en aval d’un { -gfci }. S’il se déclenche, neutre et terre se séparent, et vous ne le voyez pas.
        [if-any] Neutre et terre sont peut-être reliés à « { $joint } » : un { -gfci } à « { $device } » ne se déclenche alors pas. Le sol ici est { $ground }.
        [if-none] Neutre et terre sont peut-être reliés à « { $joint } » : un { -gfci } à « { $device } » ne se déclenche alors pas. Le sol ici est { $ground }.
        [box] « { $joint } » relie neutre et terre en aval de ce { -gfci } : son bouton TEST fonctionne, mais un choc ne le déclenchera peut-être pas. Le sol ici est { $ground }.
        [shared] Neutre et terre sont reliés à « { $joint } ». Nous ignorons si un seul { -gfci } sert les deux et avons donc supposé qu’un choc ne déclenche rien. Le sol ici est { $ground }.
       *[other] Nous ignorons si « { $joint } » relie neutre et terre à l’intérieur et avons donc supposé que oui. Ce { -gfci } ne se déclenche alors pas. Le sol ici est { $ground }.
      }
    .fix-plug = Arrêtez le moteur. Mettez la fiche de liaison dans une prise { -generator(form: "of") } sans boutons TEST et RESET, avec son propre disjoncteur. S’il n’y en a pas, { $wet ->
        [no] mieux vaut ne rien brancher
       *[yes] ne branchez rien
      } d’autre à « { $device } » qu’une rallonge GFCI (boutons TEST et RESET).
    .fix-plug-look = Cherchez dans les prises { -generator(form: "of") } une fiche sans cordon, et notez dans le plan ce que vous trouvez. Demandez à un { -electrician } avant d’en ajouter une ou de l’enlever.
    .fix-plug-where = Arrêtez le moteur. Regardez dans quelle prise est la fiche de liaison. Mettez-la dans une prise { -generator(form: "of") } sans boutons TEST et RESET, avec son propre disjoncteur.
    .fix-plug-alone = Ne branchez rien d’autre à « { $joint } » qu’une rallonge GFCI (boutons TEST et RESET). Si le { -gfci } de la prise se déclenche, arrêtez le moteur et cherchez pourquoi.
    .fix-plug-better = Mieux : ne branchez rien d’autre à « { $joint } » qu’une rallonge GFCI (boutons TEST et RESET). Si le { -gfci } de la prise se déclenche, arrêtez le moteur et cherchez pourquoi.
    .fix-plug-first = Mettez une rallonge GFCI (boutons TEST et RESET) entre { $parts } et « { $joint } ». Si le { -gfci } de la prise se déclenche, arrêtez le moteur et cherchez pourquoi.
    .fix-plug-out = Arrêtez le moteur. Retirez la fiche de liaison : le neutre { -generator(form: "of") } est déjà relié à la terre. C’est une fiche sans cordon, dans une de ses prises.
    .fix-box = N’utilisez pas « { $joint } » avant qu’un { -electrician } l’ait examiné. Ne l’ouvrez pas.
    .fix-box-look = { $used ->
        [yes] Avant de le savoir, ne comptez sur aucun { -gfci } à « { $device } ».
       *[no] N’utilisez pas « { $joint } » avant de le savoir.
      } Cherchez « neutral bonded » (neutre relié) ou « isolated neutral » (neutre isolé) dans ses papiers, ou demandez au fabricant. N’ouvrez rien vous-même.
    .fix-shared = Si TEST à « { $device } » coupe aussi « { $joint } », un seul { -gfci } sert les deux. Arrêtez le moteur et mettez la fiche de liaison dans une prise qui ne partage son disjoncteur avec rien en service. S’il n’y en a pas, { $wet ->
        [no] mieux vaut ne brancher à
       *[yes] ne branchez à
      } « { $device } » qu’une rallonge GFCI (boutons TEST et RESET).
    .fix-if-any = Des boutons TEST et RESET sur « { $device } » même ne suffisent pas. Branchez les appareils sur une rallonge GFCI, et cette rallonge à { $parts }. Regardez si « { $device } » a ces boutons, et notez-le dans le plan.
    .fix-if-none = N’utilisez pas { $any } : d’autres constats disent ce qui ne va pas non plus. Même avec des boutons TEST et RESET, « { $device } » peut ne pas couper le courant si quelqu’un reçoit un choc.
