### Regeln zu Kabeln.

CORD001 = Das Kabel { $first } ist überlastet
    .why = { $fix ->
        [plug] Der Stecker von { $first } ist für { $limit } gemacht. { cord-through }. Bei { $limit } löst kein Schutzschalter aus: Der Stecker überhitzt und kann in Brand geraten. Betroffen: { $about }.
        [tag] Auf Kabeln wie { $first } (Leiter: { $wire }) steht bei dieser Länge meist { $limit }. { cord-through }. Bei { $limit } löst kein Schutzschalter aus: Das Kabel überhitzt und kann in Brand geraten. Betroffen: { $about }.
        [unwind-less] Aufgerollt verträgt { $first } (Leiter: { $wire }) höchstens { $limit }. { cord-through }. Bei { $limit } löst kein Schutzschalter aus: Das Kabel überhitzt und kann in Brand geraten. Betroffen: { $about }.
       *[other] { $first } (Leiter: { $wire }) verträgt höchstens { $limit }. { cord-through }. Bei { $limit } löst kein Schutzschalter aus: Das Kabel überhitzt und kann in Brand geraten. Betroffen: { $about }.
      }
    .fix-thicker = Schließen Sie einen Teil davon woanders an, lassen Sie weniger Geräte zugleich daran laufen, oder nehmen Sie ein dickeres Kabel (eine kleinere AWG-Zahl ist dicker).
    .fix-unwind = Rollen Sie das ganze Kabel ab, bevor Sie es benutzen. Aufgerollt wird es seine Wärme nicht los.
    .fix-unwind-less = Rollen Sie das Kabel jedes Mal ganz ab. Das genügt nicht: Schließen Sie einen Teil woanders an, oder lassen Sie weniger Geräte zugleich daran laufen.
    .fix-plug = { $inside ->
        [yes] Lassen Sie innen weniger Geräte zugleich laufen. Der Stecker setzt die Grenze; ein dickeres Kabel mit demselben Stecker hilft nicht.
       *[no] Schließen Sie einen Teil davon woanders an, oder lassen Sie weniger Geräte zugleich daran laufen. Der Stecker setzt die Grenze; ein dickeres Kabel mit demselben Stecker hilft nicht.
      }
    .fix-tag = Lesen Sie die Ampere auf dem Schild des Kabels; das Kleinere gilt. Schließen Sie einen Teil woanders an, lassen Sie weniger Geräte zugleich daran laufen, oder nehmen Sie ein kürzeres oder dickeres Kabel (eine kleinere AWG-Zahl ist dicker).

cord-through = { $planned ->
    [yes] Es fließen { $demand }
   *[no] Steckt alles dort, fließen { $demand }
  }

CORD002 = { $fix ->
    [replace] Kabel für drinnen wird draußen benutzt: { $about }
   *[other] Das ist vielleicht ein Kabel für drinnen: { $about }
  }
    .why = Sonne, Kälte, Füße und Heringe machen den Mantel eines Kabels für drinnen rissig. Ein blanker Draht in nassem Gras kann töten.
    .fix-replace = Nehmen Sie ein Kabel, das für draußen gekennzeichnet ist: ein „W“ in der Typenbezeichnung oder die Worte „for outdoor use“ (für draußen).
    .fix-look = Lesen Sie den Aufdruck auf dem Mantel. Steht kein „W“ in der Typenbezeichnung und auch nicht „for outdoor use“ (für draußen), nehmen Sie ein anderes Kabel.

CORD003 = { $fix ->
    [unwind] { $first } bleibt im Betrieb aufgerollt
   *[other] Wir wissen nicht, ob { $first } aufgerollt bleibt
  }
    .why = Aufgerollt wird ein Kabel seine Wärme nicht los und kann von innen schmelzen, und kein Schutzschalter merkt es. Benutzen Sie es nie aufgerollt: Es verträgt dann nur { $limit }.
    .fix-unwind = Rollen Sie das ganze Kabel ab, und legen Sie es locker aus. Ist es viel zu lang, nehmen Sie ein kürzeres.
    .fix-look = Rollen Sie jedes Mal das ganze Kabel ab. Wenn Sie das tun werden, ändern Sie Ihre Antwort.

CORD004 = { $fix ->
    [replace] Kein Schutzleiter hinter { $first }
   *[other] { $first } hat vielleicht keinen Schutzleiter
  }
    .why = { $fix ->
        [replace] Dahinter kann ein gebrochener Draht innen die volle Spannung auf ein Metallgehäuse bringen, und nichts löst aus, bis jemand es berührt.{ $alone ->
            [yes] {""}
           *[no] {" "}Betroffen: { $about }.
          }
       *[other] Ohne Schutzleiter kann ein gebrochener Draht innen die volle Spannung auf ein Metallgehäuse bringen, und nichts löst aus, bis jemand es berührt.{ $alone ->
            [yes] {""}
           *[no] {" "}Betroffen: { $about }.
          }
      }
    .fix-replace = Benutzen Sie { $first } nicht. Nehmen Sie eines mit Schutzleiter und heilem Schutzkontakt (runder Stift).
    .fix-count = Lesen Sie den Aufdruck auf dem Mantel: „/3“ hinter der Größe heißt drei Adern, mit Schutzleiter. „/2“ hat keinen Schutzleiter: Benutzen Sie es nicht.

CORD005 = { $count } lange Kabel hintereinander
    .why = Die Verbindung liegt am Boden und kann auseinandergehen. Halb herausgezogen liegen ihre Stifte blank und stehen unter Spannung. Hintereinander: { $about }.
    .fix-one-cord = Nehmen Sie ein Kabel, das lang genug ist. Bis dahin halten Sie die Verbindung vom Boden und von Nässe fern, und binden Sie sie so fest, dass sie nicht auseinandergehen kann.

CORD006 = { $fix ->
    [cooler] In Luft von { $air } verträgt das Kabel { $first } nichts
   *[other] Das Kabel { $first } ist bei dieser Hitze überlastet
  }
    .why = { $fix ->
        [cooler] Eine Leitung muss ihre eigene Wärme loswerden. In so heißer Luft kann sie es nicht: Was immer an diesem Kabel hängt, ist zu viel.
       *[other] Kabel sind für Luft von { $measure ->
              [metric] 30 °C
             *[customary] 86 °F
          } gemacht. In Luft von { $air } verträgt dieses { $limit }, nicht { $cool }. Es fließen { $demand }, und bei { $limit } löst kein Schutzschalter aus. Betroffen: { $about }.
      }
    .fix-less = Lassen Sie bei Hitze weniger daran laufen, oder nehmen Sie ein dickeres Kabel. Legen Sie es in den Schatten.
    .fix-unwind = { CORD003.fix-unwind }
    .fix-cooler = Stecken Sie nichts in dieses Kabel, bis es kühler ist.

CORD007 = Die Steckdosenleiste { $first } steckt in einem anderen Kabel
    .why = Leisten sind für drinnen und für eine Steckdose gemacht, nicht für das Ende eines Kabels. Alle { $places } Dosen hängen an einem dünnen Kabel. Betroffen: { $about }.
    .fix-straight = Nehmen Sie ein Kabel für draußen mit mehreren Enden, oder einen zugelassenen Kasten (Zeichen eines Prüflabors) mit Schutzschaltern. Stecken Sie eine Leiste direkt in eine Steckdose, und halten Sie sie trocken.

CORD008 = { $first } heizt stundenlang am Ende eines Kabels
    .why = Es braucht { $amps } ({ $watts }) über Stunden. Das erwärmt jeden abgenutzten Kontakt auf dem Weg, und kein Schutzschalter merkt es. { $fix ->
        [warm] Die Feuerwehr sagt: Ein Heizgerät gehört direkt in eine Steckdose, nie an ein Kabel oder eine Leiste.
       *[other] Von Heizgeräten sagt die Feuerwehr: nie an ein Kabel oder eine Leiste.
      } Betroffen: { $about }.
    .fix-warm = Halten Sie sich mit Bettzeug und Kleidung warm, oder lassen Sie es weniger als drei Stunden laufen. Wenn Sie doch ein Kabel nehmen: ein dickes, ganz abgerollt, nicht mehr daran, als der Plan erlaubt. Halten Sie nach einer Viertelstunde eine Hand nahe an jeden Stecker: Ist einer heiß, hören Sie auf.
    .fix-less = Lassen Sie es weniger als drei Stunden am Stück laufen. Wenn doch länger: ein dickes Kabel, ganz abgerollt, nicht mehr daran, als der Plan erlaubt. Halten Sie nach einer Viertelstunde eine Hand nahe an jeden Stecker: Ist einer heiß, hören Sie auf.

CORD009 = { $fix ->
    [load] Hitze oder Schlag, wo { $first } steckte
   *[other] { $first } wurde heiß oder gab einen Schlag
  }
    .why = Ein heißer oder weicher Stecker heißt: Sein Metall sitzt nicht mehr fest. Er kann schmelzen und ein Feuer auslösen, und kein Schutzschalter merkt es.
    .fix-cord = Stecken Sie { $first } aus, und benutzen Sie es nicht mehr. Ist ein Stecker oder eine Steckdose daran braun, weich oder locker, benutzen Sie auch diese nicht.
    .fix-box = Stecken Sie { $first } aus, und benutzen Sie den Kasten nicht. Lassen Sie ihn von einer Elektrofachkraft ansehen.
    .fix-outlet = Benutzen Sie { $first } nicht, und auch keinen Stecker, der darin heiß wurde. Lassen Sie beides von einer Elektrofachkraft ansehen.
    .fix-outlet-in-use = Stecken Sie aus: { $plugged }. Benutzen Sie { $first } nicht, und auch keinen Stecker, der darin heiß wurde. Lassen Sie beides von einer Elektrofachkraft ansehen.
    .fix-load = Stecken Sie { $first } aus, und benutzen Sie es erst wieder, wenn eine Werkstatt es angesehen hat. Ist die Steckdose dazu braun, weich oder locker, benutzen Sie auch diese nicht.
