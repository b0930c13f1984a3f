### Regeln dazu, was wo hineinpasst.

FIT001 = { $fix ->
    [load] Keine Steckdose nimmt den Stecker von { $any }
    [bonding-plug] Für den Brückenstecker ist am Generator keine Dose frei
    [dead] Keine passende Steckdose kann { $any } betreiben
    [part] { $about } passt nicht dort hinein, wo es angeschlossen sein soll
    [loose] { $place } ist nirgends eingesteckt: kein Strom für { $about }
    [unusable] { $place } nirgends benutzen
    [misplaced] { $place } nimmt den Stecker von { $any } nicht auf
    [unknown] { $first } nicht benutzen, bis Sie { $of ->
        [plug] den Stecker
        [outlets] die Steckdosen
       *[both] die Formen
    } kennen
   *[other] Keine Dose frei für { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] Das Teil kann überhitzen und in Brand geraten, bevor ein Schutzschalter auslöst.
            [CORD004] Vielleicht fehlt der Schutzleiter. Dann kann ein gebrochener Draht innen die volle Spannung auf ein Metallgehäuse bringen.
            [SHOCK005] Innen sind Neutralleiter und Schutzleiter verbunden, oder sind es vielleicht. Dann kann Metall, das Sie berühren, Strom führen.
           *[other] Was daran falsch ist, bleibt in jeder Steckdose falsch.
          }
        [unknown] { $of ->
            [plug] Wir kennen den Stecker nicht, also ist es nicht geprüft, und nichts dahinter.
            [outlets] Wir kennen die Steckdosen nicht, also ist es nicht geprüft, und nichts dahinter.
           *[both] Wir kennen weder Stecker noch Steckdosen, also ist es nicht geprüft, und nichts dahinter.
        }
        [loose] Was daran hängt, bekommt keinen Strom, und nichts daran ist geprüft.
        [lost] Der Plan steckt mehr in { $place }, als dort hineinpasst. Nichts hinter { $about } ist geprüft.
        [bonding-plug] Laut Plan steckt ein Brückenstecker N-PE, und er braucht eine Dose für sich. Alle Haushaltsdosen des Generators sind besetzt.
        [dead] Der Stecker passt in etwas, das keinen Strom bekommt oder eine andere Spannung gibt, als seine Form verspricht.
       *[other] Die Formen sind verschieden, damit ein Stecker nicht an die falsche Spannung oder Stromstärke gerät. Ein Stecker, der nicht passt, gehört dort nicht hin.
      }
    .fix-load = Nehmen Sie ein zugelassenes Kabel oder einen zugelassenen Kasten mit der richtigen Steckdose und dem richtigen Schutzschalter. Feilen, biegen oder schneiden Sie nie an einem Stecker.
    .fix-dead = Lassen Sie es ausgesteckt. Nehmen Sie ein zugelassenes Kabel oder einen zugelassenen Kasten mit der richtigen Steckdose und dem richtigen Schutzschalter. Ändern Sie nie einen Stecker.
    .fix-part = { $adapted ->
        [yes] Stecken Sie es mit einem zugelassenen Adapter ({ $plug } auf { $end }) in { $outlet }, und schreiben Sie das in den Plan.
       *[no] Prüfen Sie beide Formen und berichtigen Sie den Plan, oder nehmen Sie ein zugelassenes Kabel, das zu beiden passt.
      } Feilen, biegen oder schneiden Sie nie an einem Stecker.
    .fix-lost = Sehen Sie nach, wo { $about } wirklich eingesteckt ist, und berichtigen Sie den Plan. { $fits ->
        [yes] Ist dort kein Platz, nehmen Sie { $sockets }, und nie ein Verteilerkabel oder einen Adapter.
       *[no] { $free ->
            [yes] Ist dort kein Platz, stecken Sie stattdessen { $past } in { $others }, nie in ein Verteilerkabel oder einen Adapter.
           *[no] { $household ->
                [yes] Schaffen Sie nur mit einem zugelassenen Dreifachkabel mit GFCI Platz, nie mit einem Verteilerkabel oder Adapter.
               *[no] Ist dort kein Platz, nehmen Sie eine andere Steckdose oder lassen Sie es ausgesteckt, nie ein Verteilerkabel oder ein Adapter.
              }
          }
      }
    .fix-loose = Stecken Sie { $place } { $fits ->
        [no] { $adapted ->
            [yes] mit einem zugelassenen Adapter ({ $plug } auf { $end }) in { $outlet }
           *[no] dort ein, wo der Stecker passt
          }
       *[yes] in { $sockets }
      }{ $inside ->
        [yes] {""}
       *[no] , oder stecken Sie { $about } { $free ->
            [no] woanders ein
           *[yes] in { $others }
          }
      }. Schreiben Sie das in den Plan, und prüfen Sie noch einmal.
    .fix-misplaced = { $free ->
        [no] Andere passende sind belegt oder reichen nicht: Lassen Sie es ausgesteckt.
       *[yes] Nehmen Sie stattdessen { $others }: Dort passt der Stecker.
      } Berichtigen Sie den Plan. Feilen, biegen oder schneiden Sie nie an einem Stecker.
    .fix-unusable = Benutzen Sie { $place } nicht. Streichen Sie es aus dem Plan, und stecken Sie woanders ein, was Strom braucht.
    .fix-unknown = Kleben Sie den Stecker zu, mit dem Wort GESPERRT. Sehen Sie es sich von außen an, und tragen Sie ein, was Sie sehen.
    .fix-bonding-plug = Lassen Sie eine Dose für ihn frei, oder schreiben Sie in den Plan, dass er draußen bleibt. Stecken Sie ihn nie in ein Verteilerkabel, einen Adapter oder ein Kabel.

FIT002 = { $first } sieht stärker aus, als es ist
    .why = Es endet in der Form { $shape }, aber sein Stecker ist für { $plug } gemacht.
    .fix-plan = Rechnen Sie hinter { $first } mit { $limit }{ $hours ->
        [yes] {" "}für drei Stunden oder länger, und mit { $short } für kürzere Zeit
       *[no] {""}
      }. Beschriften Sie es so.

FIT003 = { $fix ->
    [look] An { $about } liegen vielleicht keine { $twice } an
   *[other] { $about }: falsche Spannung für die Form
  }
    .why = { $fix ->
        [look] Sie ist nur für { $twice }. Viele kleine Generatoren geben das nicht: Dann steht sie unter Spannung, aber der falschen.
       *[other] Sie braucht beide Hälften eines 120/240-V-Generators oder einen Neutralleiter und bekommt das nicht: Kein Adapter kann das ergänzen. Unter Spannung steht sie trotzdem.
      }
    .fix-leave = Stecken Sie nichts hinein, und behandeln Sie sie, als stünde sie unter Spannung. Verändern Sie nie einen Stecker, damit er passt.
    .fix-look = Suchen Sie „{ $twice }“ auf dem Schild des Generators. Bis dahin stecken Sie nichts hinein, und behandeln Sie sie, als stünde sie unter Spannung.

FIT004 = { $fix ->
    [too-large] { $first } braucht mehr, als die Steckdose geben kann
    [life-large] Keine Steckdose hier reicht für { $any }
    [refused] Keine benutzbare Steckdose für { $any }
    [refused-here] Der Plan hat die falsche Steckdose für { $about }
   *[other] Keine benutzbare Steckdose frei für { $any }
  }
    .why = { $fix ->
        [too-large] Nötig sind { $demand }. { $planned ->
            [yes] Seine Steckdose im Plan gibt { $limit }.
           *[other] Die beste Steckdose dafür gibt { $limit }.
        }
        [life-large] { life-it } Nötig sind { $demand }, aber die beste Steckdose dafür gibt { $limit }.
        [life-room] { life-it } Jede Steckdose dafür ist besetzt, hat zu wenig übrig oder hat keinen GFCI.
        [refused] { $planned ->
            [yes] Wo der Plan es hat, darf es nicht eingesteckt werden, und keine freie Steckdose, die Sie benutzen dürfen, reicht dafür.
           *[other] An jeder Steckdose, die reicht, stimmt etwas nicht.
        }
        [refused-here] Wo der Plan es hat, darf es nicht eingesteckt werden. Frei, und stark genug: { $free }.
       *[other] Jede Steckdose dafür ist besetzt, hat zu wenig übrig oder hat keinen GFCI.
      }
    .fix-too-large = Lassen Sie es zu Hause, nehmen Sie eine kleinere Stufe, oder nehmen Sie eine Steckdose, die { $demand } geben kann.
    .fix-no-room = Lassen Sie { $about } zu Hause, oder lassen Sie etwas anderes zu Hause, damit eine Steckdose frei wird. Prüfen Sie dann noch einmal.
    .fix-life-large = Nehmen Sie eine Steckdose, die { $demand } geben kann. Gibt es keine: { life-cannot }
    .fix-life-room = Lassen Sie dafür etwas anderes zu Hause, und prüfen Sie noch einmal.
    .fix-refused = { $life ->
        [yes] Beheben Sie zuerst, was dort nicht stimmt. Betreiben Sie es bis dahin mit einer dafür gemachten Batterie, und verlassen Sie sich nicht auf diesen Generator.
       *[no] Beheben Sie zuerst, was dort nicht stimmt, oder lassen Sie es zu Hause.
      }
    .fix-refused-here = Stecken Sie es stattdessen in { $free }, schreiben Sie es in den Plan, und prüfen Sie noch einmal. Oder beheben Sie zuerst, was an seiner Steckdose nicht stimmt.

FIT005 = Leicht zu verwechseln: { $one } und { $other }
    .why = Im Dunkeln hält man leicht die eine für die andere. { $one } gibt { $volts }, { $other } gibt { $volts-other }. Steckdosen: { $about }.
    .fix-look = Kleben Sie die gedruckten Etiketten auf. Sehen Sie die gezeichnete Form an, bevor Sie drücken. Ein Stecker, der Kraft braucht, ist an der falschen Stelle.

FIT006 = { $fix ->
    [adapter] { $about } gibt { $twice }, wo man { $volts } erwartet
    [leave] { $about } braucht { $twice } und bekommt sie nicht
    [look] { $about } braucht { $twice } und bekommt sie vielleicht nicht
   *[other] { $about } bekommt vielleicht nur { $volts }
  }
    .why = { $fix ->
        [adapter] Dort kommen { $twice } ohne Neutralleiter an. Ein Gerät für { $volts } nimmt dort die vierfache Leistung auf: Es verbrennt, bevor ein Schutzschalter auslöst.
        [leave] { $inside ->
            [yes] Es ist für { $twice } gemacht
           *[no] Sein Stecker sagt { $twice }
          }. Es kommen höchstens { $volts } an. Ein Motor brummt, läuft nicht an und überhitzt. Kein Adapter macht { $twice } aus { $volts }.
        [look] { $inside ->
            [yes] Es ist für { $twice } gemacht
           *[no] Sein Stecker sagt { $twice }
          }. Viele kleine Generatoren geben nur { $volts }. Kein Adapter macht { $twice } daraus.
       *[other] { $inside ->
            [yes] Es nimmt { $volts } und { $twice }
           *[no] Sein Stecker nimmt { $volts } und { $twice }
          }. Hier kommen nur { $volts } an, also arbeiten seine Teile für { $twice } nicht.
      }
    .fix-adapter = Stecken Sie nichts hinein. Lassen Sie den Adapter oder das Kabel, das so endet, zu Hause.
    .fix-leave = { $inside ->
        [yes] Lassen Sie es ausgeschaltet
       *[no] Lassen Sie es zu Hause
      }, oder nehmen Sie einen Generator, der { $twice } gibt. Ändern Sie nie einen Stecker, und verbinden Sie nie zwei Steckdosen.
    .fix-look = Suchen Sie „240 V“ auf dem Schild des Generators. { $inside ->
        [yes] Bis dahin lassen Sie es ausgeschaltet.
       *[no] Bis dahin stecken Sie es nicht ein.
      } Ändern Sie nie einen Stecker, und verbinden Sie nie zwei Steckdosen.
    .fix-part = Sehen Sie in der Anleitung nach, ob es mit { $volts } allein laufen darf. { $inside ->
        [yes] Steht es nicht darin, lassen Sie es ausgeschaltet.
       *[no] Steht es nicht darin, stecken Sie es nicht ein.
      }

FIT007 = { $fix ->
    [plate] { $about } hat Schlitze für { $twice }, und der Plan sagt nur { $volts }
    [maybe] Hier sind vielleicht { $twice }: { $about }
   *[other] Hier sind { $twice }: { $about }
  }
    .why = { $fix ->
        [plate] Eines von beiden stimmt nicht. Gibt der Generator { $twice }, hat jede Steckdose mit { $volts } nur die halbe Leistung, und alle Zahlen dieses Plans rechnen mit der ganzen.
        [maybe] Wir wissen nicht, ob der Generator { $volts } oder { $twice } gibt. Geräte für { $volts } brennen an { $twice } durch.
        [these] Die brauchen sie: { $needs }. Alle anderen Steckdosen geben { $volts }.
       *[other] Nichts im Plan braucht sie. Alle anderen Steckdosen geben { $volts }.
      }
    .fix-nothing = Stecken Sie dort nur Kabel, Kästen und Adapter ein, die für 120/240 V zugelassen sind. Kleben Sie das gedruckte Etikett an.
    .fix-these = Stecken Sie dort nur ein, was laut Schild für { $twice } ist, und Kabel, Kästen und Adapter, die für 120/240 V zugelassen sind.
    .fix-maybe = Suchen Sie „120/240 V“ auf dem Schild des Generators. Bis dahin dort nur Kabel, Kästen und Adapter einstecken, die für 120/240 V zugelassen sind.
    .fix-plate = Bevor Sie den Motor starten, suchen Sie „120 V“ oder „120/240 V“ auf dem Schild des Generators. Steht dort „120/240 V“, schreiben Sie es in den Plan, und drucken Sie neue Etiketten und eine neue Karte.
