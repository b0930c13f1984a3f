### Regeln dazu, was wo hineinpasst.

FIT001 = { $fix ->
    [load] Keine Steckdose nimmt den Stecker von { $any }
    [bonding-plug] Für den Brückenstecker ist am Generator keine Dose frei
    [bonding-socket] In { $place } ist für den Brückenstecker nichts frei
    [dead] Wo { $any } hineinpasst, kommt nicht der nötige Strom
    [part] { $about } passt nicht dort hinein, wo es angeschlossen sein soll
    [loose] { $place } ist nirgends eingesteckt: kein Strom für { $about }
    [unusable] { $place } nirgends benutzen
    [misplaced] { $place } nimmt den Stecker von { $any } nicht auf
   *[other] Kein freier Platz für { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] Das Teil kann überhitzen und brennen, bevor ein Schutzschalter auslöst.
            [CORD004] Vielleicht fehlt der Schutzleiter. Dann kann ein Fehler die volle Spannung auf ein Metallgehäuse bringen.
            [SHOCK005] Es verbindet innen Neutralleiter und Schutzleiter, oder vielleicht. Dann kann Metall, das Sie berühren, Strom führen.
           *[other] Was daran falsch ist, bleibt in jeder Steckdose falsch.
          }
        [loose] Was daran hängt, bekommt keinen Strom, und nichts daran ist geprüft.
        [lost] Der Plan steckt mehr in { $place }, als dort hineinpasst. Nichts hinter { $about } ist geprüft.
        [bonding-plug] Laut Plan steckt ein Brückenstecker N-PE, und er braucht eine Dose für sich. Alle Haushaltsdosen des Generators sind besetzt.
        [bonding-socket] Laut Plan steckt ein Brückenstecker N-PE in { $place }, und er braucht eine Dose für sich. Dort ist alles von anderem besetzt.
        [dead] Etwas nimmt seinen Stecker. Aber das bekommt keinen Strom oder gibt andere Spannung, als seine Form sagt.
       *[other] Die Formen sind verschieden, damit ein Stecker nicht an die falsche Spannung oder Stromstärke gerät. Ein Stecker, der nicht passt, gehört dort nicht hin.
      }
    .fix-load = Sehen Sie nach, welche Form der Stecker hat. Nehmen Sie ein von einem Prüflabor zugelassenes Kabel oder einen solchen Kasten mit der richtigen Steckdose und dem richtigen Schutzschalter. Feilen, biegen oder kürzen Sie nie einen Stecker.
    .fix-dead = Lassen Sie es ausgesteckt. Nehmen Sie ein von einem Prüflabor zugelassenes Kabel oder einen Kasten mit der richtigen Steckdose und dem richtigen Schutzschalter. Nie einen Stecker ändern.
    .fix-part = Prüfen Sie beide Formen und berichtigen Sie den Plan, oder nehmen Sie ein zugelassenes Kabel, das zu beiden passt. Feilen, biegen oder kürzen Sie nie einen Stecker.
    .fix-lost = Sehen Sie nach, wo { $about } wirklich eingesteckt ist, und berichtigen Sie den Plan. { $fits ->
        [yes] Ist dort kein Platz, nehmen Sie { $sockets }, und nie ein Verteilerkabel oder einen Adapter.
       *[no] { $free ->
            [yes] Ist dort kein Platz, lassen Sie es ausgesteckt, und stecken Sie { $past } in { $others }. Nehmen Sie nie ein Verteilerkabel oder einen Adapter.
           *[no] { $household ->
                [yes] Schaffen Sie nur mit einem zugelassenen Dreifachkabel mit GFCI Platz, nie mit Verteiler oder Adapter.
               *[no] Ist dort kein Platz, nehmen Sie eine andere Steckdose oder lassen Sie es ausgesteckt, und nehmen Sie nie ein Verteilerkabel oder einen Adapter.
              }
          }
      }
    .fix-loose = Stecken Sie { $place } { $fits ->
        [no] dort ein, wo der Stecker passt
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
      } Berichtigen Sie den Plan. Feilen, biegen oder kürzen Sie nie einen Stecker.
    .fix-unusable = Benutzen Sie { $place } nicht. Streichen Sie es aus dem Plan, und stecken Sie woanders ein, was Strom braucht.
    .fix-bonding-plug = Lassen Sie eine Dose für ihn frei, oder schreiben Sie in den Plan, dass er draußen bleibt. Stecken Sie ihn nie in einen Verteiler, einen Adapter oder ein Kabel.
    .fix-bonding-socket = { FIT001.fix-bonding-plug }

FIT002 = { $first } sieht stärker aus, als es ist
    .why = Es endet in der Form { $shape }, aber sein Stecker ist für { $plug } gemacht.
    .fix-plan = Rechnen Sie hinter { $first } mit { $limit }{ $hours ->
        [yes] {" "}für drei Stunden oder länger, und mit { $short } für kürzer
       *[no] {""}
      }. Beschriften Sie es so.

FIT003 = { $fix ->
    [look] An { $about } liegen vielleicht keine { $twice } an
   *[other] { $about }: nicht die Volt, die die Form verspricht
  }
    .why = { $fix ->
        [look] Sie ist nur für { $twice }. Viele kleine Generatoren geben das nicht: Dann steht sie unter der falschen Spannung.
       *[other] Eine Steckdose für 240 V braucht beide Seiten eines 120/240-V-Generators: Von einer gespeist, liegen 120 V an. Eine für 120 V braucht einen Neutralleiter. Was diese speist, hat das nicht, und kein Adapter kann es herstellen. Spannungslos ist sie nicht.
      }
    .fix-leave = Nichts hineinstecken: Behandeln Sie sie, als stünde sie unter Spannung. Nehmen Sie eine Steckdose, die hat, was nötig ist. Verändern Sie nie einen Stecker, damit er passt.
    .fix-look = Suchen Sie „{ $twice }“ auf dem Schild des Generators. Bis dahin nichts hineinstecken: Behandeln Sie sie, als stünde sie unter Spannung.

FIT004 = { $fix ->
    [too-large] { $first } verlangt mehr, als seine Steckdose verträgt
    [life-large] Keine Steckdose hier verträgt { $any }
    [refused] Keine benutzbare Steckdose für { $any }
    [refused-here] Der Plan hat die falsche Steckdose für { $about }
   *[other] Keine benutzbare Steckdose frei für { $any }
  }
    .why = { $fix ->
        [too-large] Verlangt werden { $demand }. { $planned ->
            [yes] Seine Steckdose im Plan verträgt { $limit }.
           *[other] Die beste passende Steckdose verträgt { $limit }.
        }
        [life-large] { life-it } Verlangt werden { $demand }. Die beste passende Steckdose verträgt { $limit }.
        [life-room] { life-it } Jede Steckdose, die Sie dafür benutzen dürfen, ist besetzt oder verträgt neben dem Übrigen zu wenig.
        [refused] { $planned ->
            [yes] Wo der Plan es hat, darf es nicht eingesteckt werden, und keine freie Steckdose, die Sie benutzen dürfen, reicht dafür.
           *[other] An jeder Steckdose, die reicht, stimmt etwas nicht.
        }
        [refused-here] Wo der Plan es hat, darf es nicht eingesteckt werden. Frei, und stark genug: { $free }.
       *[other] Jede Steckdose, die Sie dafür benutzen dürfen, ist besetzt oder verträgt neben dem Übrigen zu wenig.
      }
    .fix-too-large = Lassen Sie es zu Hause, nehmen Sie eine kleinere Stufe, oder nehmen Sie eine Steckdose, die { $demand } verträgt.
    .fix-no-room = Lassen Sie { $about } zu Hause, oder etwas, das dort steckt, wo es hinkäme. Prüfen Sie dann noch einmal.
    .fix-life-large = Nehmen Sie eine Steckdose, die { $demand } verträgt. Gibt es keine: { life-cannot }
    .fix-life-room = Lassen Sie dafür etwas anderes zu Hause, und prüfen Sie noch einmal.
    .fix-refused = Beheben Sie zuerst, was dort nicht stimmt, oder lassen Sie es zu Hause.
    .fix-refused-here = Stecken Sie es stattdessen in { $free }, schreiben Sie es in den Plan, und prüfen Sie noch einmal. Oder beheben Sie zuerst, was an seiner Steckdose nicht stimmt.

FIT005 = Zwei Formen sind hier leicht zu verwechseln: { $one } und { $other }
    .why = Im Dunkeln nimmt eine Hand die eine für die andere. { $one } gibt { $volts }, { $other } gibt { $volts-other }. Steckdosen: { $about }.
    .fix-look = Kleben Sie die gedruckten Etiketten auf. Sehen Sie die gezeichnete Form an, bevor Sie drücken. Ein Stecker, der Kraft braucht, ist an der falschen Stelle.

FIT006 = { $fix ->
    [adapter] { $about } gibt { $twice }, wo man { $volts } erwartet
    [leave] { $about } braucht { $twice } und bekommt sie nicht
    [look] Niemand weiß, ob der Generator { $twice } gibt, die { $about } braucht
   *[other] { $about } bekommt vielleicht nur { $volts }
  }
    .why = { $fix ->
        [adapter] Dort kommen { $twice } ohne Neutralleiter an. Ein Gerät für { $volts } nimmt dort die vierfache Leistung auf: Es platzt oder brennt, bevor ein Schutzschalter auslöst.
        [leave] Sein Stecker sagt { $twice }. Es kommen höchstens { $volts } an. Ein Motor brummt, läuft nicht an und wird heiß. Kein Adapter macht { $twice } aus { $volts }.
        [look] Sein Stecker sagt { $twice }. Viele kleine Generatoren geben nur { $volts }. Kein Adapter macht { $twice } daraus.
       *[other] Sein Stecker nimmt { $volts } und { $twice }. Hier kommen nur { $volts } an, also bleiben seine Teile für { $twice } tot.
      }
    .fix-adapter = Stecken Sie nichts hinein. Lassen Sie den Adapter oder das Kabel, das so endet, zu Hause.
    .fix-leave = Lassen Sie es zu Hause, oder nehmen Sie einen Generator, der { $twice } gibt. Nie einen Stecker ändern, nie zwei Steckdosen verbinden.
    .fix-look = Suchen Sie „240 V“ auf dem Schild des Generators. Bis dahin nicht einstecken. Nie einen Stecker ändern, nie zwei Steckdosen verbinden.
    .fix-part = Sehen Sie in der Anleitung nach, ob es mit { $volts } allein laufen darf. Steht es nicht darin, nicht einstecken.

FIT007 = { $fix ->
    [plate] { $about } hat Schlitze für { $twice }, und der Plan sagt nur { $volts }
    [maybe] Hier sind vielleicht { $twice }: { $about }
   *[other] Hier sind { $twice }: { $about }
  }
    .why = { $fix ->
        [plate] Eines von beiden stimmt nicht. Gibt der Generator { $twice }, hat jede Steckdose mit { $volts } nur die halbe Leistung, und alle Zahlen dieses Plans rechnen mit der ganzen.
        [maybe] Niemand weiß, ob der Generator { $volts } oder { $twice } gibt. Geräte für { $volts } brennen an { $twice } durch.
        [these] Die brauchen sie: { $needs }. Alle anderen Steckdosen geben { $volts }.
       *[other] Nichts im Plan braucht sie. Alle anderen Steckdosen geben { $volts }.
      }
    .fix-nothing = Stecken Sie dort nur Kabel, Kästen und Adapter ein, die für 120/240 V geprüft sind. Kleben Sie das gedruckte Etikett an.
    .fix-these = Stecken Sie dort nur ein, was laut Schild für { $twice } ist, und Kabel, Kästen und Adapter, die für 120/240 V geprüft sind.
    .fix-maybe = Suchen Sie „120/240 V“ auf dem Schild des Generators. Bis dahin dort nur Kabel, Kästen und Adapter einstecken, die für 120/240 V geprüft sind.
    .fix-plate = Bevor Sie den Motor starten, suchen Sie „120 V“ oder „120/240 V“ auf dem Schild des Generators. Steht dort „120/240 V“, schreiben Sie es in den Plan, und drucken Sie neue Etiketten und eine neue Karte.
