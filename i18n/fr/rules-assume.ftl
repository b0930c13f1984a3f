# What the rules take for an answer nobody gave.

assumed-too-near = trop près
assumed-floating = flottant
assumed-covered = dans ou sous quelque chose
assumed-loud = plus que ce que permettent bien des campings
assumed-quarter = un quart de la pleine charge

assume-ground = On ignore si le sol est mouillé ; on a donc retenu : { $value }. Touchez le sol là où les gens se tiennent, le soir aussi.
assume-sleepers = Nous ne savons pas à quelle distance sont les gens ; nous avons donc supposé qu’ils sont { $value }. Mesurez de l’échappement jusqu’à la tente, au véhicule, à la porte ou à la fenêtre les plus proches.
assume-people-sleep = Nous ne savons pas si quelqu’un dort ici ; nous avons donc supposé : { $value }. Demandez à tous, aux voisins aussi.
assume-co-alarm = On ignore si tous dorment avec un { -alarm } de monoxyde de carbone ; on a donc retenu : { $value }. Regardez dans chaque tente et chaque { -camper }, et appuyez sur le bouton d’essai.
assume-stands = On ignore ce qu’il y a au-dessus et autour { -generator(form: "of") } ; on a donc retenu : { $value }. Placez { -generator(form: "the") } à l’air libre, ou sous un toit haut et ouvert de tous côtés, pas un auvent.
assume-building = On ignore si { -generator(form: "the") } doit alimenter un bâtiment ; on a donc retenu : { $value }. Avant de démarrer, demandez à tous au campement s’il est branché à un bâtiment.
assume-neutral = On ignore si le neutre { -generator(form: "of") } est relié au châssis ; pour les essais, on a donc retenu : { $value } ; pour les chocs, le pire chaque fois. Cherchez dans le manuel « neutre flottant » (floating) ou « neutre relié » (bonded neutral).
assume-cord-outdoor = On ignore si « { $part } » est pour l’extérieur ; on a donc retenu : { $value }. Une gaine pour l’extérieur a un « W » dans ses lettres de type, ou elle le dit.
assume-box-bond = On ignore comment « { $part } » est câblé à l’intérieur ; on a donc supposé que le neutre et la terre y sont reliés. N’ouvrez pas ce coffret. Demandez à un { -electrician }.
assume-box-listed = On ignore si « { $part } » est fabriqué en usine et certifié par un laboratoire ; on a donc retenu : { $value }. Cherchez-y la marque d’un laboratoire d’essai.
assume-bonding-plug = On ignore si une fiche de liaison est dans { -generator(form: "the") } ; on a donc retenu : { $value }, là où c’est pire. C’est une fiche sans cordon, dans une de ses prises.
assume-noise-load = Nous ignorons à quelle charge le bruit a été mesuré ; nous avons donc retenu : { $value }.
assume-backup = Personne n’a dit si « { $part } » a une batterie pour toute la nuit ; on a donc retenu : { $value }.
assume-parallel-kit = On ignore si le kit entre les deux est celui du fabricant, prévu exactement pour eux ; on a donc retenu : { $value }. Son manuel nomme les modèles auxquels il convient.
assume-noise-full-load = Nous ignorons combien le bruit augmente avec la charge ; nous avons ajouté { $value } pour la minute la plus chargée. Les fabricants mesurent à charge partielle, où il est plus faible.
assume-noise = On ignore quel bruit fait { -generator(form: "the") } ; on a donc retenu : { $value }. Cherchez « dB » dans le manuel, avec une distance.
assume-noise-not-told = Personne n’a dit quel bruit il fait ; on a donc retenu : { $value }. Demandez au responsable du camping avant de démarrer. Le manuel le donne en « dB », avec une distance.
assume-runtime = Nous ignorons combien dure un réservoir ; nous avons donc retenu { $value }, comme pour un petit modèle à pleine charge. Cherchez la durée dans le manuel.
assume-quiet-hours = Nous ignorons quand le camping doit être silencieux ; nous avons donc retenu { $value }, et que l’on dort alors. Demandez au responsable du camping.
assume-night = Nous ignorons quand on dort ; nous avons donc retenu { $value }.
assume-bonding-plug-in = On ignore dans quelle prise est la fiche de liaison ; on a donc retenu le pire : { $value }. Cherchez une fiche sans fil sur les prises.
assume-single-socket = On ignore combien de fiches « { $part } » accepte ; on a donc retenu { $value }. Son disjoncteur est alors trop gros. Si elle en accepte deux, écrivez sockets = 2 dans le plan.
