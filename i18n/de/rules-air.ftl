### Regeln zur Luft. Jede Nachricht ist der Titel eines Befunds; .why nennt die Zahlen, .fix-*, was zu tun ist.

AIR001 = { $fix ->
    [measure] Wir wissen nicht, wie nah die Menschen sind
   *[other] Der Auspuff ist nur { $distance } von Menschen entfernt
  }
    .why = Kohlenmonoxid riecht man nicht, und es tötet Menschen im Schlaf. Halten Sie { $ample } oder mehr Abstand, auch zu Nachbarn: Näher kann töten, unter { $least } ist es am schlimmsten.
    .fix-move = Stellen Sie den Motor ab. Ist er kalt, stellen Sie den Generator mindestens { $ample } von jedem Zelt, Fahrzeug, Fenster und jeder Tür entfernt auf. Richten Sie den Auspuff von Menschen weg.
    .fix-closed = Läuft er in etwas Geschlossenem: alle hinaus, { $call } anrufen, nur die Feuerwehr geht hinein und stellt ihn ab. Nur wenn er im Freien läuft, stellen Sie ihn selbst ab. Ist er aus und kalt, stellen Sie ihn im Freien auf, mindestens { $ample } von jedem Zelt, Fahrzeug, Fenster und jeder Tür entfernt. Richten Sie den Auspuff von Menschen weg.
    .fix-farther = Stellen Sie den Motor ab. Ist er kalt, stellen Sie den Generator { $ample } oder weiter weg, und richten Sie den Auspuff von Menschen weg. Der Wind kann Abgase weiter als { $least } tragen.
    .fix-measure = Messen Sie vom Auspuff bis zum nächsten Zelt, Fahrzeug, Fenster oder zur nächsten Tür, auch bei den Nachbarn. Sind es weniger als { $ample }, stellen Sie den Generator um, bevor Sie ihn starten.

AIR002 = { $fix ->
    [look] Vielleicht schläft jemand ohne Kohlenmonoxid-Melder
   *[other] Jemand schläft ohne Kohlenmonoxid-Melder
  }
    .why = Der Wind kann drehen und Abgase zu Ihnen wehen. Nur ein Kohlenmonoxid-Melder weckt Sie, ein Rauchmelder nicht.
    .fix-alarm = Legen Sie in jedes Zelt und jeden Wohnwagen, in dem jemand schläft, einen Kohlenmonoxid-Melder mit Batterie. Drücken Sie jeden Abend seine Prüftaste: Er muss piepen. Schlägt er später an, oder hat jemand Schwindel, Übelkeit, Schwäche oder Kopfweh: alle ins Freie, { $call } anrufen.
    .fix-look = Suchen Sie in jedem Zelt und Wohnwagen einen Kohlenmonoxid-Melder mit Batterie. Drücken Sie seine Prüftaste: Er muss piepen. Schlägt er später an, oder hat jemand Schwindel, Übelkeit, Schwäche oder Kopfweh: alle ins Freie, { $call } anrufen.

AIR003 = { $fix ->
    [out] Der Generator läuft in einem geschlossenen Raum
    [uncover] Der Generator ist abgedeckt oder steht zu nah an etwas
    [look] Der Generator ist vielleicht eingeschlossen oder abgedeckt
   *[other] Sie haben nicht gesagt, wo der Generator steht
  }
    .why = { $fix ->
        [out] Abgase sammeln sich in einem Zelt, Vorzelt, Fahrzeug oder Schuppen, auch bei offener Tür. Darin ist Kohlenmonoxid: Man riecht es nicht, und es tötet.
        [uncover] Planen und Wände halten die Abgase fest, und das Kohlenmonoxid darin tötet. Eine Plane auf dem Generator kann schmelzen und Feuer fangen.
       *[other] Wir wissen es nicht und haben das Schlimmste angenommen. In Zelt, Vorzelt, Fahrzeug oder Schuppen sammeln sich Abgase, auch bei offener Tür, und töten.
      }
    .fix-out = Läuft er jetzt in etwas Geschlossenem: alle hinaus, rufen Sie von draußen { $call } an, und nur die Feuerwehr geht hinein und stellt ihn ab. Lassen Sie ihn nie in Zelt, Vorzelt oder Fahrzeug laufen: nur im Freien, ringsum { $clear } frei.
    .fix-uncover = Stellen Sie den Motor ab. Nehmen Sie Plane oder Hülle ab. Stellen Sie ihn von Markisen, Pavillons und Wänden weg, ringsum { $clear } frei. Ein Dach muss weit darüber und nach allen Seiten offen sein.
    .fix-look = Sehen Sie nach, bevor Sie ihn starten. Stellen Sie ihn ins Freie oder unter ein hohes, an allen Seiten offenes Dach, ringsum { $clear } frei. Pavillon und Markise sind kein hohes Dach.
    .fix-choose = Stellen Sie ihn ins Freie oder unter ein hohes, an allen Seiten offenes Dach, ringsum { $clear } frei. Pavillon und Markise sind kein hohes Dach. Dann schreiben Sie das in den Plan.

AIR004 = Nichts hält den Regen vom Generator ab
    .why = Wasser in seinen Steckdosen kann Ihnen einen Stromschlag geben. In einem Zelt oder Vorzelt töten die Abgase.
    .fix-roof = Wenn es regnet, stellen Sie den Motor ab, und stellen Sie den Generator nur unter einem hohen Dach wieder auf, an allen Seiten offen. Legen Sie nie eine Plane darauf oder dicht darüber.

AIR005 = { $fix ->
    [bedside] Das Kabel zu { $about } ist zu kurz
    [at-set] { $about } steckt am Generator selbst
    [stated] Das Kabel zu { $about } reicht nicht bis zu den Menschen
    [measure] Wir wissen nicht, ob die Kabel weit genug reichen
    [no-cord] Am Generator selbst eingesteckt: { $about }
   *[longer] Die Kabel sind zu kurz, um den Generator fernzuhalten
  }
    .why = { $fix ->
        [bedside] Soweit wir wissen, reicht es { $reach } weit, aber der Generator muss { $needed } von der Person entfernt stehen. Jemand wird ihn näher heranholen, und Abgase töten.
        [at-set] Der Generator muss { $needed } von der Person entfernt stehen, die es braucht. Ohne Kabel holt ihn jemand näher heran, und Abgase töten.
        [stated] Es reicht { $reach } weit, aber laut Plan sind die Menschen { $needed } entfernt. Jemand wird den Generator näher heranholen.
        [measure] Soweit wir wissen, reichen sie { $reach } weit, aber der Generator muss { $needed } von Menschen entfernt stehen. Sind sie kürzer, holt ihn jemand näher heran.
        [no-cord] Der Generator muss mindestens { $needed } von Menschen entfernt stehen. Ohne Kabel holt ihn jemand näher heran.
       *[longer] Sie reichen { $reach } weit, aber der Generator muss { $needed } von Menschen entfernt stehen. Jemand wird ihn näher heranholen, und Abgase töten.
      }
    .fix-longer = Nehmen Sie ein einziges Kabel mit, das lang genug ist und dick genug für das, was daran hängt. Stellen Sie nie stattdessen den Generator näher.
    .fix-no-cord = { $open ->
        [no] Nehmen Sie ein GFCI-Kabel (Tasten TEST und RESET) mit, das lang und dick genug ist.
       *[other] Stecken Sie das am Generator ein, und gehen Sie dann von den Abgasen weg, dorthin, woher der Wind kommt. Oder nehmen Sie ein Kabel mit, das lang und dick genug ist.
      } Stellen Sie nie stattdessen den Generator näher.
    .fix-measure = Schreiten Sie die Kabel ab, und schreiben Sie ihre Länge in den Plan. Stellen Sie nie stattdessen den Generator näher.
    .fix-bedside = Nehmen Sie ein Kabel mit, das lang und dick genug ist, oder eine Batterie, die für das Gerät gemacht ist. Stellen Sie nie stattdessen den Generator näher.
    .fix-at-set = Stecken Sie es in ein Kabel, das lang und dick genug ist, oder nehmen Sie eine Batterie mit, die für das Gerät gemacht ist. Stellen Sie nie stattdessen den Generator näher.
    .fix-stated = Messen Sie noch einmal vom Auspuff bis zu den Menschen, und schreiben Sie das in den Plan. Oder nehmen Sie ein längeres Kabel, das dick genug ist.

AIR006 = { $fix ->
    [when] Der Generator läuft vielleicht, während Menschen schlafen: { $about }
   *[other] Der Generator läuft, während Menschen schlafen: { $about }
  }
    .why = Geschlafen wird von { $from } bis { $to } ({ $night }), und von Abgasen wacht niemand auf. Muss der Generator dann laufen: im Freien, { $ample } oder mehr von Menschen entfernt, und wo sie schlafen, ein Kohlenmonoxid-Melder, der funktioniert.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Laden Sie die Batterie von { $life } tagsüber. Stellen Sie darauf um, und stellen Sie den Motor ab, bevor jemand einschläft.
    .fix-when = { night-decide } { night-instead }

night-told = laut Ruhezeit
night-assumed = wir wissen nicht, wann, also haben wir das angenommen
