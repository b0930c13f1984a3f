# Rules on cords.

CORD001 = La rallonge { $first } est surchargée
    .why = { $fix ->
        [plug] La fiche de { $first } est faite pour { $limit }, mais { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la fiche surchauffe et peut prendre feu. En cause : { $about }.
        [tag] Les rallonges comme { $first } (fil : { $wire }) portent d’ordinaire la marque { $limit } à cette longueur, mais { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la rallonge surchauffe et peut prendre feu. En cause : { $about }.
        [unwind-less] Enroulée, { $first } (fil : { $wire }) supporte { $limit } au plus, mais { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la rallonge surchauffe et peut prendre feu. En cause : { $about }.
       *[other] { $first } (fil : { $wire }) supporte { $limit } au plus, mais { cord-through }. Aucun disjoncteur ne se déclenche à { $limit } : la rallonge surchauffe et peut prendre feu. En cause : { $about }.
      }
    .fix-thicker = Branchez une partie ailleurs, ou utilisez moins d’appareils à la fois. Ou prenez une rallonge plus grosse : un numéro AWG plus petit est un fil plus gros.
    .fix-unwind = Déroulez toute la rallonge avant de vous en servir. Enroulée, elle ne peut pas évacuer sa chaleur.
    .fix-unwind-less = Déroulez toute la rallonge chaque fois. Cela ne suffit pas : branchez une partie ailleurs, ou utilisez moins d’appareils à la fois.
    .fix-plug = { $inside ->
        [yes] Utilisez moins d’appareils à la fois à l’intérieur. Une rallonge plus grosse avec la même fiche n’y change rien.
       *[no] Branchez une partie ailleurs, ou utilisez moins d’appareils à la fois. Une rallonge plus grosse avec la même fiche n’y change rien.
      }
    .fix-tag = Lisez les ampères sur l’étiquette de la rallonge : le plus petit nombre compte. Branchez une partie ailleurs, ou utilisez-y moins d’appareils à la fois. Ou prenez une rallonge plus courte ou plus grosse : un numéro AWG plus petit est un fil plus gros.

cord-through = { $planned ->
    [yes] { $demand } y passent
   *[no] { $demand } y passent si tout est branché
  }

CORD002 = { $fix ->
    [replace] Rallonge d’intérieur utilisée dehors : { $about }
   *[other] C’est peut-être une rallonge d’intérieur : { $about }
  }
    .why = Le soleil, le froid, les pieds et les piquets de tente fendent la gaine d’une rallonge d’intérieur. Un fil nu dans l’herbe mouillée peut tuer.
    .fix-replace = Prenez une rallonge marquée pour l’extérieur. Cherchez un « W » dans les lettres imprimées dessus, ou « for outdoor use » (usage extérieur).
    .fix-look = Lisez ce qui est imprimé sur la rallonge. S’il n’y a ni « W » dans les lettres, ni « for outdoor use » (usage extérieur), prenez une autre rallonge.

CORD003 = { $fix ->
    [unwind] La rallonge { $first } reste enroulée pendant l’usage
   *[other] Nous ignorons si la rallonge { $first } reste enroulée
  }
    .why = Une rallonge enroulée garde sa chaleur et peut fondre de l’intérieur, et aucun disjoncteur ne s’en aperçoit. Ne l’utilisez jamais enroulée : elle ne supporte alors que { $limit }.
    .fix-unwind = Déroulez toute la rallonge et étendez-la sans la serrer. Si elle est bien trop longue, prenez-en une plus courte.
    .fix-look = Déroulez toute la rallonge à chaque usage. Si c’est ce que vous ferez, changez votre réponse.

CORD004 = { $fix ->
    [replace] Pas de terre en aval de { $first }
   *[other] { $first } n’a peut-être pas de { -ground-wire }
  }
    .why = { $fix ->
        [replace] En aval, un fil rompu à l’intérieur peut mettre un boîtier métallique sous pleine tension. Rien ne se déclenche avant que quelqu’un le touche.{ $alone ->
            [yes] {""}
           *[no] {" "}En cause : { $about }.
          }
       *[other] Sans { -ground-wire }, un fil rompu à l’intérieur peut mettre un boîtier métallique sous pleine tension. Rien ne se déclenche avant que quelqu’un le touche.{ $alone ->
            [yes] {""}
           *[no] {" "}En cause : { $about }.
          }
      }
    .fix-replace = N’utilisez pas { $first }. Prenez une rallonge avec { -ground-wire } et broche de terre intacte.
    .fix-count = Lisez ce qui est imprimé sur la rallonge. « /3 » après le calibre veut dire trois fils, terre comprise. « /2 » n’a pas de terre : ne vous en servez pas.

CORD005 = { $count } longues rallonges bout à bout
    .why = Le raccord peut se défaire. À moitié défait, il a des lames nues et sous tension. Les rallonges : { $about }.
    .fix-one-cord = Prenez une seule rallonge assez longue. D’ici là, gardez le raccord au sec, hors du sol, et attaché de façon qu’il ne puisse pas se défaire.

CORD006 = { $fix ->
    [cooler] Dans un air à { $air }, la rallonge { $first } ne supporte rien
   *[other] La rallonge { $first } est surchargée par cette chaleur
  }
    .why = { $fix ->
        [cooler] Un fil doit évacuer sa propre chaleur, et dans un air aussi chaud il ne le peut pas. Tout ce qui est branché sur cette rallonge est de trop.
       *[other] Les rallonges sont prévues pour un air de { $measure ->
              [metric] 30 °C
             *[customary] 86 °F
          } : dans un air de { $air }, celle-ci supporte { $limit }, et non { $cool }. Mais { $demand } y passent, et aucun disjoncteur ne se déclenche à { $limit }. En cause : { $about }.
      }
    .fix-less = Faites-y marcher moins d’appareils tant qu’il fait chaud, ou prenez une rallonge plus grosse. Posez-la à l’ombre.
    .fix-unwind = { CORD003.fix-unwind }
    .fix-cooler = Ne branchez rien sur cette rallonge avant qu’il fasse moins chaud.

CORD007 = La multiprise { $first } est branchée sur une autre rallonge
    .why = Les multiprises sont faites pour l’intérieur, pas pour le bout d’une rallonge. Les { $places } prises de celle-ci se partagent un seul cordon mince. En cause : { $about }.
    .fix-straight = Prenez une rallonge d’extérieur à plusieurs bouts, ou un coffret à disjoncteurs certifié par un laboratoire. Branchez une multiprise directement sur une prise, et gardez-la au sec.

CORD008 = { $first } chauffe pendant des heures au bout d’une rallonge
    .why = Il y passe { $amps } ({ $watts }) pendant des heures, ce qui chauffe chaque contact usé, et aucun disjoncteur ne le remarque. { $fix ->
        [warm] Les pompiers le disent : un chauffage se branche directement sur une prise, jamais sur une rallonge ni une multiprise.
       *[other] Les pompiers le disent des chauffages : jamais sur une rallonge ni une multiprise.
      } En cause : { $about }.
    .fix-warm = Réchauffez-vous avec de la literie et des vêtements, ou faites marcher l’appareil moins de trois heures. Si vous prenez quand même une rallonge : une seule, grosse, déroulée, sans rien de plus dessus que ce que le plan permet. Après un quart d’heure, approchez la main de chaque fiche : si l’une est chaude, arrêtez.
    .fix-less = Faites-le marcher moins de trois heures d’affilée. Si c’est plus long : une seule rallonge, grosse, déroulée, sans rien de plus dessus que ce que le plan permet. Après un quart d’heure, approchez la main de chaque fiche : si l’une est chaude, arrêtez.

CORD009 = { $fix ->
    [load] Chaleur ou choc à la prise de { $first }
   *[other] Chaleur ou choc : { $first }
  }
    .why = Une fiche chaude ou molle, c’est un métal qui ne serre plus. Elle peut fondre et mettre le feu, et aucun disjoncteur ne le remarque.
    .fix-cord = Débranchez { $first } et ne vous en servez plus. Si une fiche ou une prise qui y touchait est brunie, molle ou lâche, ne vous en servez pas non plus.
    .fix-box = Débranchez { $first } et ne vous en servez pas. Faites-le vérifier par un { -electrician }.
    .fix-outlet = Ne vous servez pas de { $first }, ni d’aucune fiche qui y a chauffé. Faites vérifier le tout par un { -electrician }.
    .fix-outlet-in-use = Débranchez { $plugged }. Ne vous servez pas de { $first }, ni d’aucune fiche qui y a chauffé. Faites vérifier le tout par un { -electrician }.
    .fix-load = Débranchez { $first } et ne vous en servez pas avant qu’un réparateur l’ait vérifié. Si sa prise est brunie, molle ou lâche, ne vous en servez pas non plus.
