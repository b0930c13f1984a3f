# Rules on cords.

CORD001 = On demande à { $first } plus que sa limite
    .why = { $fix ->
        [plug] La fiche de { $first } est faite pour { $limit }. { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la fiche surchauffe et peut prendre feu. En cause : { $about }.
        [tag] Les rallonges comme { $first } (fil : { $wire }) portent d’ordinaire la marque { $limit } à cette longueur. { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la rallonge surchauffe et peut prendre feu. En cause : { $about }.
        [unwind-less] Enroulée, { $first } (fil : { $wire }) supporte { $limit } au plus. { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la rallonge surchauffe et peut prendre feu. En cause : { $about }.
       *[other] { $first } (fil : { $wire }) supporte { $limit } au plus. { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la rallonge surchauffe et peut prendre feu. En cause : { $about }.
      }
    .fix-thicker = Branchez une partie ailleurs, utilisez moins d’appareils à la fois, ou prenez une rallonge plus grosse (numéro AWG plus petit = fil plus gros).
    .fix-unwind = Déroulez toute la rallonge avant de vous en servir. Enroulée, elle ne peut pas évacuer sa chaleur.
    .fix-unwind-less = Déroulez toute la rallonge chaque fois. Cela ne suffit pas : branchez une partie ailleurs, ou utilisez moins d’appareils à la fois.
    .fix-plug = { $inside ->
        [yes] Utilisez moins d’appareils à la fois à l’intérieur. C’est la fiche qui fixe cette limite ; une rallonge plus grosse avec la même fiche n’y change rien.
       *[no] Branchez une partie ailleurs, ou utilisez moins d’appareils à la fois. C’est la fiche qui fixe cette limite ; une rallonge plus grosse avec la même fiche n’y change rien.
      }
    .fix-tag = Lisez les ampères sur l’étiquette de la rallonge ; le plus petit compte. Branchez une partie ailleurs, utilisez moins d’appareils à la fois, ou prenez une rallonge plus courte ou plus grosse (numéro AWG plus petit = fil plus gros).

cord-through = { $planned ->
    [yes] On lui demande { $demand }
   *[no] Si tout y est branché, on lui demande { $demand }
  }

CORD002 = { $fix ->
    [replace] Rallonge d’intérieur utilisée dehors : { $about }
   *[other] On ignore si cette rallonge est pour l’extérieur : { $about }
  }
    .why = Une gaine d’intérieur se fend au soleil et au froid et laisse entrer l’eau. Les pieds et les piquets de tente la coupent. Un fil nu dans l’herbe mouillée peut tuer.
    .fix-replace = Prenez une rallonge marquée pour l’extérieur : « W » dans ses lettres de type, ou « for outdoor use » (usage extérieur).
    .fix-look = Lisez ce qui est imprimé sur la gaine. S’il n’y a ni « W » dans les lettres de type, ni « for outdoor use » (usage extérieur), prenez une autre rallonge.

CORD003 = { $fix ->
    [unwind] { $first } reste en rouleau pendant l’usage
   *[other] On ignore si { $first } reste en rouleau
  }
    .why = Enroulée, une rallonge ne peut pas évacuer sa chaleur et fond de l’intérieur. Ne l’utilisez pas enroulée : sa limite n’est alors que de { $limit }. Aucun disjoncteur ne sait qu’elle est enroulée.
    .fix-unwind = Déroulez toute la rallonge et étendez-la sans la serrer. Si elle est bien trop longue, prenez-en une plus courte.
    .fix-look = Déroulez toute la rallonge chaque fois, et indiquez-le dans le plan.

CORD004 = { $fix ->
    [replace] La terre s’arrête à { $first }
   *[other] On ignore si { $first } a un { -ground-wire }
  }
    .why = { $fix ->
        [replace] Au-delà, un défaut peut mettre un boîtier métallique sous pleine tension, et rien ne se déclenche avant que quelqu’un le touche. En cause : { $about }.
       *[other] Sans { -ground-wire }, un défaut peut mettre un boîtier métallique sous pleine tension, et rien ne se déclenche avant que quelqu’un le touche. En cause : { $about }.
      }
    .fix-replace = N’utilisez pas { $first }. Prenez une rallonge avec { -ground-wire } et broche de terre intacte.
    .fix-count = Lisez ce qui est imprimé sur la gaine : « /3 » après le calibre veut dire trois fils, terre comprise. « /2 » n’a pas de terre : ne vous en servez pas.

CORD005 = { $count } longues rallonges à la suite
    .why = Le raccord traîne par terre et peut se défaire. À moitié défait, il a des lames nues et sous tension. À la suite : { $about }.
    .fix-one-cord = Prenez une seule rallonge assez longue. D’ici là, gardez le raccord au-dessus du sol, à l’abri de l’eau, et attaché de façon qu’il ne puisse pas se défaire.

CORD006 = { $fix ->
    [cooler] Dans un air à { $air }, la rallonge { $first } ne supporte rien
   *[other] On demande trop à { $first } par un air si chaud
  }
    .why = { $fix ->
        [cooler] Un fil doit évacuer sa propre chaleur. Dans un air aussi chaud, il ne le peut pas : tout ce qui dépend de cette rallonge est de trop.
       *[other] Les rallonges sont prévues pour un air de 86 °F (30 °C). Dans un air de { $air }, celle-ci supporte { $limit }, et non { $cool }. On lui demande { $demand }. Aucun disjoncteur ne se déclenche à { $limit }. En cause : { $about }.
      }
    .fix-less = Faites-y marcher moins d’appareils tant qu’il fait chaud, ou prenez une rallonge plus grosse. Posez-la à l’ombre.
    .fix-unwind = { CORD003.fix-unwind }
    .fix-cooler = Ne branchez rien sur cette rallonge avant qu’il fasse moins chaud.

CORD007 = La multiprise { $first } est branchée sur une autre rallonge
    .why = Les multiprises sont faites pour l’intérieur et pour une prise, pas pour le bout d’une rallonge. Ses { $places } places tiennent à un seul cordon mince. En cause : { $about }.
    .fix-straight = Prenez une rallonge d’extérieur à plusieurs bouts, ou un coffret homologué à disjoncteurs. Branchez une multiprise directement sur une prise { -generator(form: "of") } ou d’un coffret, et gardez-la au sec.

CORD008 = { $first } chauffe pendant des heures au bout d’une rallonge
    .why = Il consomme { $amps } ({ $watts }) pendant des heures. Cela chauffe chaque contact usé du trajet, et aucun disjoncteur ne le remarque. { $fix ->
        [warm] Les pompiers le disent : un chauffage se branche directement sur une prise, jamais sur une rallonge ni une multiprise.
       *[other] Les pompiers le disent des chauffages : jamais sur une rallonge ni une multiprise.
      } En cause : { $about }.
    .fix-warm = Réchauffez-vous avec de la literie et des habits, ou faites marcher l’appareil moins de trois heures. Si vous vous en servez : une seule rallonge de forte section, déroulée, sans rien de plus que ce que le plan permet. Regardez chaque fiche après un quart d’heure : si l’une est chaude, arrêtez.
    .fix-less = Servez-vous-en moins de trois heures de suite. Si c’est plus long : une seule rallonge de forte section, déroulée, sans rien de plus que ce que le plan permet. Regardez chaque fiche après un quart d’heure : si l’une est chaude, arrêtez.

CORD009 = { $fix ->
    [load] Chaleur ou choc là où { $first } était branché
   *[other] { $first } a chauffé ou donné un choc
  }
    .why = Une fiche chaude ou molle, c’est un métal qui ne serre plus. Elle peut fondre et mettre le feu, et aucun disjoncteur ne le remarque.
    .fix-cord = Débranchez { $first } et ne vous en servez plus : prenez une autre rallonge. Si une fiche ou une prise qui la touchait est brunie, molle ou lâche, ne vous en servez pas non plus.
    .fix-box = Débranchez { $first } et ne vous en servez pas. Faites-le vérifier par un { -electrician }.
    .fix-outlet = Ne vous servez pas de { $first }, ni de la fiche qui y était. Faites vérifier le tout par un { -electrician }.
    .fix-load = Débranchez { $first } et ne l’utilisez pas. Faites-le examiner, ou prenez-en un autre. Si la prise où il était est brunie, molle ou lâche, ne vous en servez pas non plus.
