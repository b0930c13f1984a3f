### Regeln zum Stromschlag.

ground-wet = nass
ground-damp = feucht
ground-dry = trocken
ground-unknown = nicht bekannt, also als nass angenommen

SHOCK001 = { $fix ->
    [free] Kein GFCI schützt { $any }
    [first] Kein GFCI schützt { $any }
    [named] In { $any } kein Gerät einstecken
   *[other] Kein GFCI schützt { $any }
  }
    .why = Auf diesem Boden ({ $ground }) kann ein schadhaftes Kabel oder Gerät Strom durch Ihren Körper schicken, und kein Leitungsschutzschalter schaltet ihn ab. Ein FI-Schutzschalter (GFCI, Tasten TEST und RESET) ist gemacht, um bei 6 Tausendstel Ampere Fehlerstrom abzuschalten.
    .fix-protect = Benutzen Sie nur Steckdosen, Kabel oder Kästen mit den Tasten TEST und RESET (GFCI). Drücken Sie vor jeder Benutzung TEST, mit einer Lampe daran. Bleibt sie an, benutzen Sie diese Steckdose nicht.
    .fix-better = Besser: Stecken Sie zuerst ein GFCI-Kabel (Tasten TEST und RESET) ein, und Ihre Geräte in dieses. Oder nehmen Sie eine Steckdose mit diesen Tasten. Drücken Sie vor jeder Benutzung TEST, mit einer Lampe daran: Sie muss ausgehen.
    .fix-camper = Nehmen Sie wenn möglich eine Steckdose oder ein Kabel mit GFCI. Vorschriften verlangen an Wohnwagen-Steckdosen keinen, denn ein Wohnwagen kann ihn ohne Fehler auslösen. Löst er immer wieder aus, rufen Sie eine Elektrofachkraft.
    .fix-free = Stecken Sie hier kein Gerät ein. Stecken Sie nur ein GFCI-Kabel (Tasten TEST und RESET) ein, und Geräte in dieses Kabel.
    .fix-named = Stecken Sie dort nichts ein als { shock-named }. Für ein Gerät nehmen Sie eine Steckdose oder ein Kabel mit Tasten TEST und RESET (GFCI).
    .fix-first = Ziehen Sie { $parts } aus { $place }. Stecken Sie in { $place } ein GFCI-Kabel (Tasten TEST und RESET), und { $parts } in dieses.

# What alone may be plugged in. $plug: whether the bonding plug is with it, or alone.
shock-named = { $plug ->
    [alone] den Brückenstecker
    [yes] { $parts } und den Brückenstecker
   *[no] { $parts }
  }

SHOCK002 = Ein Steckdosenprüfer kann hier täuschen
    .why = Wir wissen nicht, ob der Neutralleiter erdfrei ist (nicht mit dem Schutzleiter verbunden). Wenn ja, zeigt der Prüfer „open ground“ (Schutzleiter offen), und seine Taste löst nichts aus, obwohl der GFCI funktioniert.
    .fix-find-out = Haben Sie einen GFCI, prüfen Sie mit seiner eigenen TEST-Taste. Suchen Sie in der Anleitung nach „floating“ (erdfrei) oder „bonded neutral“ (verbunden). Verbinden Sie Neutralleiter und Schutzleiter nicht selbst.

SHOCK003 = { $fix ->
    [ask] Damit werden vielleicht die Leitungen eines Gebäudes gespeist
   *[other] Damit würden die Leitungen eines Gebäudes gespeist
  }
    .why = Der Strom geht mit Tausenden Volt hinaus auf die Straße und tötet Menschen, die dort die Leitungen reparieren. Ein Kabel mit zwei Steckern hat blanke Stifte unter Spannung.
    .fix-stop = Schließen Sie den Generator nicht an das Gebäude an. Schließen Sie Geräte nur mit Kabeln an den Generator an. Erst muss eine Elektrofachkraft einen Umschalter einbauen, der das Gebäude von der Straße trennt.
    .fix-ask = Finden Sie es heraus, bevor Sie starten. Ist die Antwort ja, schließen Sie den Generator nicht an das Gebäude an: Erst muss eine Elektrofachkraft einen Umschalter einbauen, der das Gebäude von der Straße trennt.

SHOCK004 = { $fix ->
    [find-out] Der Neutralleiter ist vielleicht an { $bonds } Stellen mit dem Schutzleiter verbunden
    [find-out-box] Der Neutralleiter ist vielleicht an { $bonds } Stellen mit dem Schutzleiter verbunden
    [plug] Der Brückenstecker verbindet Neutralleiter und Schutzleiter noch einmal
    [sets] Jeder Generator verbindet Neutralleiter und Schutzleiter
   *[other] Neutralleiter und Schutzleiter sind noch einmal verbunden: { $about }
  }
    .why = { $fix ->
        [find-out] Der Neutralleiter führt den Strom zurück. Hier ist er vielleicht an { $bonds } Stellen mit dem Schutzleiter verbunden: Das sind zu viele. Dann fließt Strom über Metall, das Sie berühren, und ein GFCI löst vielleicht nicht aus.
        [find-out-box] Der Neutralleiter führt den Strom zurück. Hier ist er vielleicht an { $bonds } Stellen mit dem Schutzleiter verbunden: Das sind zu viele. Dann fließt Strom über Metall, das Sie berühren, und ein GFCI löst vielleicht nicht aus.
       *[other] Der Neutralleiter führt den Strom zurück. Hier ist er an { $bonds } Stellen mit dem Schutzleiter verbunden: Das sind zu viele. Es fließt Strom über Metall, das Sie berühren, und ein GFCI löst vielleicht nicht aus.
      }
    .fix-plug = Ziehen Sie bei abgestelltem Motor den Brückenstecker N-PE heraus: Dieser Generator ist schon verbunden. Verbinden und ändern Sie sonst nichts.
    .fix-sets = Lassen Sie die Generatoren getrennt laufen, bis ihr Hersteller sagt, dass Sie solche zusammenschließen dürfen. Öffnen und ändern Sie nichts daran.
    .fix-box = Benutzen Sie { $any } nicht, bis eine Elektrofachkraft hineingesehen hat. Öffnen Sie selbst nichts.
    .fix-find-out = { $used ->
        [no] Benutzen Sie { $any } nicht, bis Sie es wissen.{" "}
        [yes] Bis Sie es wissen, verlassen Sie sich hinter { $any } auf keinen GFCI.{" "}
       *[none] {""}
      }Suchen Sie in der Anleitung des Generators nach „bonded“ (verbunden) oder „floating neutral“ (erdfrei), und in seinen Steckdosen nach einem Brückenstecker. Öffnen Sie nichts, verbinden Sie nichts, und ändern Sie selbst keine Leitungen.
    .fix-find-out-box = { SHOCK005.fix-unknown }

SHOCK005 = { $fix ->
    [known] Neutralleiter und Schutzleiter sind in { $about } verbunden
   *[other] Neutralleiter und Schutzleiter sind vielleicht in { $about } verbunden
  }
    .why = Der Neutralleiter führt den Strom zurück, der Schutzleiter soll keinen führen. Sind sie in einem Kasten verbunden, kann Strom über Metall fließen, das Sie berühren, und ein GFCI kann versagen.
    .fix-known = Benutzen Sie { $any } nicht, bis eine Elektrofachkraft hineingesehen hat. Öffnen Sie selbst nichts. Verbinden Sie nie Neutralleiter und Schutzleiter.
    .fix-unknown = { $used ->
        [no] Benutzen Sie { $any } nicht, bis Sie es wissen.
       *[yes] Bis Sie es wissen, verlassen Sie sich hinter { $any } auf keinen GFCI.
      } Suchen Sie „neutral bonded“ (verbunden) oder „isolated neutral“ (getrennt) in den Papieren von { $about }, oder fragen Sie den Hersteller oder eine Elektrofachkraft. Öffnen Sie selbst nichts.

SHOCK006 = { $fix ->
    [home-made] Selbst gebauter Kasten: { $about }
   *[other] Wir wissen nicht, wer diesen Kasten gebaut hat: { $about }
  }
    .why = Ein selbst gebauter Kasten ist nicht auf Regen, lose Verbindungen, dünne Leiter oder einen fehlenden Schutzleiter geprüft. Nichts davon sieht man von außen.
    .fix-home-made = Nehmen Sie einen in der Fabrik gebauten Kasten mit dem Zeichen eines Prüflabors, oder lassen Sie diesen von einer Elektrofachkraft ansehen. Öffnen Sie ihn nicht.
    .fix-look = Suchen Sie am Kasten das Zeichen eines Prüflabors. Ist keines da, lassen Sie ihn von einer Elektrofachkraft ansehen. Öffnen Sie ihn nicht.

SHOCK007 = { $first } löst vielleicht aus, obwohl nichts kaputt ist
    .why = Jedes Kabel und jedes Gerät lässt etwas Strom zur Erde ab. Hier ist es zusammen etwa { $leak } ({ $least } genügen zum Auslösen; mA: Tausendstel Ampere). Bei nassen Verbindungen ist es mehr. Betroffen: { $about }.
    .fix-nearer = Benutzen Sie einen GFCI näher an den Geräten, mit kürzerem Kabel, trockenen Verbindungen und weniger Geräten daran. Löst er aus, finden Sie heraus, warum, und umgehen Sie ihn nie.

SHOCK008 = { $count } GFCI hintereinander
    .why = Sie schützen nicht besser als einer. Jeder davon kann auslösen, also kann der Strom nach einem RESET noch ausbleiben. Vom Generator aus: { $about }.
    .fix-reset = Geht der Strom aus, stecken Sie zuerst das Gerät aus. Dann drücken Sie RESET an jedem, zuerst an dem, der dem Generator am nächsten ist. Prüfen Sie jeden mit seiner eigenen TEST-Taste.

SHOCK009 = Zwei kaputte Dinge zusammen könnten einen Stromschlag geben
    .why = Der Neutralleiter ist erdfrei, oder wir wissen es nicht: Das erste kaputte zeigt sich dann nicht. Ein zweites kann die volle Spannung zwischen zwei Metallgehäuse bringen. Ohne GFCI: { $about }.
    .fix-protect = Schließen Sie alle an Steckdosen mit den Tasten TEST und RESET (GFCI) an. Benutzen Sie nichts mehr, was kribbelt, angeschnitten oder verschmort ist. Verbinden Sie Neutralleiter und Schutzleiter nicht selbst.

SHOCK010 = { $fix ->
    [camper] Ein Brückenstecker ist für { $about } vielleicht eine Verbindung zu viel
   *[other] Brückenstecker in einem Generator, der ein Gebäude speist
  }
    .why = Der Brückenstecker verbindet Neutralleiter und Schutzleiter am Generator. { $fix ->
        [camper] Tut der Wohnwagen innen dasselbe, fließt Strom über Metall, das Sie berühren.
       *[other] Das Gebäude tut dasselbe, also fließt Strom über Metall, das Sie berühren.
      }
    .fix-building = Schließen Sie den Generator nicht an das Gebäude an. Erst muss eine Elektrofachkraft einen Umschalter einbauen, der das Gebäude von der Straße trennt; fragen Sie sie, ob der Brückenstecker heraus muss.
    .fix-camper = Fragen Sie den Hersteller des Wohnwagens oder eine Elektrofachkraft, bevor Sie ihn mit eingestecktem Brückenstecker anschließen. Verbinden Sie Neutralleiter und Schutzleiter nicht selbst.

SHOCK011 = { $fix ->
    [count] Wir wissen nicht, ob { $about } einen Neutralleiter hat
   *[other] Der Neutralleiter fehlt vielleicht in { $about }
  }
    .why = Das Kabel gibt beide Hälften von 120/240 V weiter. Ohne Neutralleiter können Geräte für 120 V fast 240 V bekommen. Sie brennen durch, und kein Schutzschalter löst aus.
    .fix-leave = Benutzen Sie es nicht. Nehmen Sie ein Kabel mit vier Adern, etwa 10/4.
    .fix-count = Lesen Sie den Aufdruck auf dem Mantel: 10/4 hat vier Adern, 10/3 hat drei. Benutzen Sie es nicht, bis Sie es wissen.

SHOCK012 = Der GFCI schützt dieses Kabel nicht: { $about }
    .why = Ein GFCI schützt nur, was hinter ihm liegt, nicht die { $length } Kabel zwischen ihm und dem Generator. Ist dieses Kabel dort angeschnitten oder nass, kann Strom durch Ihren Körper fließen, und nichts löst rechtzeitig aus.
    .fix-dry = Halten Sie seine Verbindungen trocken und vom Boden weg. Solange der Motor läuft: nicht berühren, nicht einstecken, nicht bewegen. Benutzen Sie es nie angeschnitten oder gequetscht.
    .fix-first = Besser: Erst kommt ein GFCI-Kabel (Tasten TEST und RESET). Stecken Sie es in { $place }, und { $about } in dieses. Bis dahin halten Sie seine Verbindungen trocken und vom Boden weg, und fassen Sie es bei laufendem Motor nicht an.

SHOCK013 = { $fix ->
    [plug] Der GFCI an „{ $device }“ schaltet bei einem Stromschlag nicht ab
    [plug-alone] Ein GFCI kann den Brückenstecker abtrennen
    [plug-first] Ein GFCI kann den Brückenstecker abtrennen
    [plug-better] Ein GFCI kann den Brückenstecker abtrennen
    [if-any] Ein GFCI an „{ $device }“ schaltet bei einem Stromschlag vielleicht nicht ab
    [if-none] Ein GFCI an „{ $device }“ schaltet bei einem Stromschlag vielleicht nicht ab
    [box] Der GFCI an „{ $device }“ schaltet bei einem Stromschlag nicht ab
   *[other] Der GFCI an „{ $device }“ schaltet bei einem Stromschlag vielleicht nicht ab
  }
    .why = { $fix ->
        [plug] Der Brückenstecker in „{ $joint }“ sitzt hinter diesem GFCI: Seine Taste TEST geht, aber bei einem Stromschlag löst er nicht aus. Der Boden ist hier { $ground }.
        [plug-look] Wir wissen nicht, ob in „{ $joint }“ ein Brückenstecker sitzt, also haben wir das angenommen. Hinter diesem GFCI hält er ihn vom Auslösen ab. Der Boden ist hier { $ground }.
        [plug-where] Wir wissen nicht, in welcher Steckdose der Brückenstecker sitzt, also haben wir „{ $joint }“ angenommen. Hinter diesem GFCI hält er ihn vom Auslösen ab. Der Boden ist hier { $ground }.
        [plug-out] Ein Brückenstecker in „{ $joint }“ kann diesen GFCI davon abhalten, bei einem Stromschlag auszulösen. Der Boden ist hier { $ground }.
        [plug-alone] Der Brückenstecker in „{ $joint }“ sitzt hinter einem GFCI. Löst dieser aus, sind Neutralleiter und Schutzleiter wieder getrennt, und Sie sehen es nicht.
        [plug-first] Der Brückenstecker in „{ $joint }“ sitzt hinter einem GFCI. Löst dieser aus, sind Neutralleiter und Schutzleiter wieder getrennt, und Sie sehen es nicht.
        [plug-better] Der Brückenstecker in „{ $joint }“ sitzt hinter einem GFCI. Löst dieser aus, sind Neutralleiter und Schutzleiter wieder getrennt, und Sie sehen es nicht.
        [if-any] An „{ $joint }“ sind Neutralleiter und Schutzleiter vielleicht verbunden: Dann löst ein GFCI an „{ $device }“ nicht aus. Der Boden ist hier { $ground }.
        [if-none] An „{ $joint }“ sind Neutralleiter und Schutzleiter vielleicht verbunden: Dann löst ein GFCI an „{ $device }“ nicht aus. Der Boden ist hier { $ground }.
        [box] „{ $joint }“ verbindet Neutralleiter und Schutzleiter hinter diesem GFCI: Seine Taste TEST geht, aber bei einem Stromschlag löst er vielleicht nicht aus. Der Boden ist hier { $ground }.
        [shared] An „{ $joint }“ sind Neutralleiter und Schutzleiter verbunden. Wir wissen nicht, ob ein GFCI beide Steckdosen schützt, also haben wir angenommen, dass bei einem Stromschlag nichts auslöst. Der Boden ist hier { $ground }.
       *[other] Wir wissen nicht, ob „{ $joint }“ innen Neutralleiter und Schutzleiter verbindet, also haben wir das angenommen. Dann löst dieser GFCI nicht aus. Der Boden ist hier { $ground }.
      }
    .fix-plug = Stellen Sie den Motor ab. Stecken Sie den Brückenstecker in eine Steckdose des Generators ohne Tasten TEST und RESET und mit eigenem Schutzschalter. Gibt es keine, stecken Sie{ $wet ->
        [no] {" "}besser
       *[yes] {""}
      } an „{ $device }“ sonst nichts ein als ein GFCI-Kabel (Tasten TEST und RESET).
    .fix-plug-look = Suchen Sie an den Steckdosen des Generators einen Stecker ohne Kabel, und schreiben Sie in den Plan, was Sie finden. Fragen Sie eine Elektrofachkraft, bevor Sie einen einstecken oder herausziehen.
    .fix-plug-where = Stellen Sie den Motor ab. Sehen Sie nach, in welcher Steckdose der Brückenstecker ist. Stecken Sie ihn in eine Steckdose des Generators ohne Tasten TEST und RESET und mit eigenem Schutzschalter.
    .fix-plug-alone = Stecken Sie an „{ $joint }“ sonst nichts ein als ein GFCI-Kabel (Tasten TEST und RESET). Löst der GFCI der Steckdose aus, stellen Sie den Motor ab und suchen Sie die Ursache.
    .fix-plug-better = Besser: Stecken Sie an „{ $joint }“ sonst nichts ein als ein GFCI-Kabel (Tasten TEST und RESET). Löst der GFCI der Steckdose aus, stellen Sie den Motor ab und suchen Sie die Ursache.
    .fix-plug-first = Stecken Sie ein GFCI-Kabel (Tasten TEST und RESET) zwischen { $parts } und „{ $joint }“. Löst der GFCI der Steckdose aus, stellen Sie den Motor ab und suchen Sie die Ursache.
    .fix-plug-out = Stellen Sie den Motor ab. Ziehen Sie den Brückenstecker N-PE heraus: Dieser Generator ist schon verbunden. Es ist ein Stecker ohne Kabel in einer Steckdose des Generators.
    .fix-box = Benutzen Sie „{ $joint }“ nicht, bis eine Elektrofachkraft nachgesehen hat. Öffnen Sie den Kasten nicht.
    .fix-box-look = { $used ->
        [yes] Bis Sie es wissen, verlassen Sie sich an „{ $device }“ auf keinen GFCI.
       *[no] Benutzen Sie „{ $joint }“ nicht, bis Sie es wissen.
      } Suchen Sie in den Unterlagen „neutral bonded“ (N und PE verbunden) oder „isolated neutral“ (getrennt), oder fragen Sie den Hersteller. Öffnen Sie nichts selbst.
    .fix-shared = Schaltet TEST an „{ $device }“ auch „{ $joint }“ ab, schützt ein GFCI beide. Stellen Sie den Motor ab, und stecken Sie den Brückenstecker in eine Steckdose, deren Schutzschalter nichts speist, was benutzt wird. Gibt es keine, stecken Sie{ $wet ->
        [no] {" "}besser
       *[yes] {""}
      } an „{ $device }“ nur ein GFCI-Kabel (Tasten TEST und RESET) ein.
    .fix-if-any = Tasten TEST und RESET an „{ $device }“ selbst genügen nicht. Stecken Sie Geräte in ein GFCI-Kabel, und dieses Kabel in { $parts }. Sehen Sie nach, ob „{ $device }“ die Tasten hat, und schreiben Sie es in den Plan.
    .fix-if-none = Benutzen Sie { $any } nicht: Andere Punkte sagen, was dort noch falsch ist. Selbst mit Tasten TEST und RESET an „{ $device }“ schaltet bei einem Stromschlag vielleicht nichts ab.
