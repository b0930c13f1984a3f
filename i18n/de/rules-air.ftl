### Regeln zur Luft. Jede Nachricht ist der Titel eines Befunds; .why nennt die Zahlen, .fix-*, was zu tun ist.

AIR001 = { $fix ->
    [measure] Niemand hat gemessen, wie weit die Menschen vom Auspuff entfernt sind
   *[other] Nur { $distance } zwischen den Menschen und dem Auspuff
  }
    .why = Halten Sie { $ample } Abstand oder mehr: { $least } bis { $ample } ist noch zu nah, und weniger als { $least } ist eine Gefahr. Abgase enthalten Kohlenmonoxid. Man sieht und riecht es nicht, und wer schläft, wacht davon nicht auf. Auch Zelte, Wohnwagen und Autos von Nachbarn zählen.
    .fix-move = Stellen Sie den Motor ab, und lassen Sie ihn abkühlen. Stellen Sie den Generator dann mindestens { $ample } von jedem Zelt, Fahrzeug, Fenster und jeder Tür entfernt auf. Richten Sie den Auspuff von Menschen weg. Lassen Sie ihn nie in einem Zelt, Vorzelt, Fahrzeug, in einer Garage oder unter einer Markise laufen.
    .fix-closed = Läuft er in etwas Geschlossenem: alle hinaus, { $call } anrufen, nur die Feuerwehr geht hinein und stellt ihn ab. Nur wenn er im Freien läuft, stellen Sie ihn selbst ab. Ist er aus und kalt, stellen Sie ihn im Freien auf, mindestens { $ample } von jedem Zelt, Fahrzeug, Fenster und jeder Tür entfernt. Richten Sie den Auspuff von Menschen weg.
    .fix-farther = Stellen Sie den Motor ab, und lassen Sie ihn abkühlen. Stellen Sie den Generator dann { $ample } oder weiter weg, und richten Sie den Auspuff von Menschen weg. Über knappe { $least } kann der Wind Abgase tragen.
    .fix-measure = Messen Sie vom Auspuff bis zum nächsten Zelt, Fahrzeug, Fenster oder zur nächsten Tür, auch bei den Nachbarn. Sind es weniger als { $ample }, stellen Sie den Generator um, bevor Sie ihn starten.

AIR002 = { $fix ->
    [look] Niemand weiß, ob alle mit einem Kohlenmonoxid-Melder schlafen
   *[other] Nicht alle schlafen mit einem Kohlenmonoxid-Melder
  }
    .why = Abgase können herüberziehen, wenn der Wind dreht. Man riecht sie nicht, und wer schläft, wacht davon nicht auf. Nur ein Kohlenmonoxid-Melder weckt. Ein Rauchmelder tut es nicht.
    .fix-alarm = Legen Sie in jedes Zelt und jeden Wohnwagen, in dem jemand schläft, einen Kohlenmonoxid-Melder mit Batterie. Drücken Sie jeden Abend seine Prüftaste: Er muss anschlagen. Wenn er zu anderer Zeit anschlägt, oder jemandem schwindlig, übel oder schwach ist oder der Kopf schmerzt: alle ins Freie, { $call } anrufen. Motor nur abstellen, wenn es geht, ohne seine Abgase zu atmen.
    .fix-look = Sehen Sie in jedem Zelt und Wohnwagen nach, bevor Sie starten. Jedes braucht einen Kohlenmonoxid-Melder mit Batterie, der anschlägt, wenn Sie seine Prüftaste drücken. Wenn er zu anderer Zeit anschlägt, oder jemandem schwindlig, übel oder schwach ist oder der Kopf schmerzt: alle ins Freie, { $call } anrufen. Motor nur abstellen, wenn es geht, ohne seine Abgase zu atmen.

AIR003 = { $fix ->
    [out] Der Generator läuft in einem geschlossenen Raum
    [uncover] Der Generator ist abgedeckt oder steht zu nah an etwas
    [look] Niemand weiß, was über dem Generator und um ihn herum ist
   *[other] Niemand hat gesagt, was über dem Generator und um ihn herum ist
  }
    .why = { $fix ->
        [out] Abgase sammeln sich in einem Zelt, Vorzelt, Fahrzeug oder Schuppen, auch bei offener Tür. Darin ist Kohlenmonoxid: Man riecht es nicht, und es tötet. Eine Plane auf dem Generator schmilzt und brennt.
        [uncover] Abgase sammeln sich in einem Zelt, Vorzelt, Fahrzeug oder Schuppen, auch bei offener Tür. Darin ist Kohlenmonoxid: Man riecht es nicht, und es tötet. Eine Plane auf dem Generator schmilzt und brennt.
       *[other] Also wurde das Schlimmste angenommen. Steht er in Zelt, Vorzelt, Fahrzeug oder Schuppen, sammeln sich dort Abgase, auch bei offener Tür. Darin ist Kohlenmonoxid: Man riecht es nicht, und es tötet. Eine Plane darauf schmilzt und brennt.
      }
    .fix-out = Läuft er jetzt dort drin: alle hinaus, rufen Sie von draußen { $call } an, und nur die Feuerwehr geht hinein und stellt ihn ab. Lassen Sie ihn nur im Freien laufen, ringsum { $clear } frei.
    .fix-uncover = Stellen Sie den Motor ab. Nehmen Sie Plane oder Hülle ab. Stellen Sie ihn von Markisen und Wänden weg: ringsum { $clear } frei. Ein Dach muss weit darüber und nach allen Seiten offen sein.
    .fix-look = Sehen Sie nach, bevor Sie ihn starten. Er muss im Freien stehen oder unter einem hohen, an allen Seiten offenen Dach, keiner Markise, ringsum { $clear } frei.
    .fix-choose = Stellen Sie ihn ins Freie oder unter ein hohes, an allen Seiten offenes Dach, keine Markise, ringsum { $clear } frei. Dann schreiben Sie das in den Plan.

AIR004 = Nichts hält den Regen vom Generator ab
    .why = Wasser in seinen Steckdosen kann jedem, der ihn anfasst, einen Stromschlag geben. Dann trägt man ihn in ein Zelt oder Vorzelt, und die Abgase töten.
    .fix-roof = Wenn es regnet: Motor abstellen. Erst unter einem hohen Dach, nach allen Seiten offen, trocken und eben, wieder starten. Nie eine Plane auf den Generator legen oder dicht darüber spannen. Auch Kästen, Kabelenden und Stecker nicht auf nassen Boden, und unter ein Dach. Hände trocknen, bevor Sie etwas davon anfassen.

AIR005 = { $fix ->
    [bedside] Das Kabel zu { $about } ist zu kurz
    [at-set] { $about } steckt am Generator selbst
    [stated] Das Kabel zu { $about } reicht nicht bis zu den Menschen
    [measure] Niemand weiß, ob die Kabel weit genug reichen
    [no-cord] Am Generator selbst eingesteckt: { $about }
   *[longer] Die Kabel sind zu kurz, um den Generator fernzuhalten
  }
    .why = { $fix ->
        [bedside] Soweit bekannt, reicht es { $reach } weit. Der Generator muss { $needed } von jedem entfernt sein, der es braucht. Also zieht ihn jemand näher heran, und Abgase töten.
        [at-set] Der Generator muss { $needed } von jedem entfernt sein, der es braucht. Ohne Kabel holt ihn jemand näher heran, und Abgase töten.
        [stated] Es reicht { $reach } weit. Laut Plan sind die Menschen { $needed } vom Generator entfernt. Also zieht ihn jemand näher heran als das.
        [measure] Soweit bekannt, reichen sie { $reach } weit. Der Generator muss { $needed } von jedem Zelt, Fahrzeug, Fenster und jeder Tür stehen. Sind sie kürzer, zieht ihn jemand näher heran.
        [no-cord] Der Generator muss { $needed } von jedem Zelt, Fahrzeug, Fenster und jeder Tür stehen. Wer dort Strom braucht und kein Kabel hat, holt ihn näher heran.
       *[longer] Sie reichen { $reach } weit. Der Generator muss { $needed } von jedem Zelt, Fahrzeug, Fenster und jeder Tür stehen. Also zieht ihn jemand näher heran.
      }
    .fix-longer = Nehmen Sie ein einziges Kabel mit, das lang genug ist und dick genug für das, was daran hängt. Nie stattdessen den Generator näher stellen.
    .fix-no-cord = { $open ->
        [no] Nehmen Sie ein GFCI-Kabel (Tasten TEST und RESET) mit, das lang und dick genug ist.
       *[other] Stecken Sie das am Generator ein, und gehen Sie dann von den Abgasen weg, dorthin, woher der Wind kommt. Oder nehmen Sie ein Kabel mit, das lang und dick genug ist.
      } Nie stattdessen den Generator näher stellen.
    .fix-measure = Schreiten Sie die Kabel ab, und schreiben Sie ihre Länge in den Plan. Nie stattdessen den Generator näher stellen.
    .fix-bedside = Nehmen Sie ein Kabel mit, das lang und dick genug ist, oder eine Batterie, die für das Gerät gemacht ist. Nie stattdessen den Generator näher stellen.
    .fix-at-set = Geben Sie ihm einen Platz am Ende eines Kabels, das lang und dick genug ist. Sind alle Enden belegt, nehmen Sie noch ein Kabel mit oder eine Batterie, die für das Gerät gemacht ist. Nie stattdessen den Generator näher stellen.
    .fix-stated = Messen Sie noch einmal vom Auspuff bis zu den Menschen, und schreiben Sie das in den Plan. Oder nehmen Sie ein längeres Kabel, das dick genug ist.

AIR006 = { $fix ->
    [when] Der Generator läuft vielleicht, während Menschen schlafen: { $about }
   *[other] Der Generator läuft, während Menschen schlafen: { $about }
  }
    .why = Man schläft von { $from } bis { $to } ({ $night }), und von Abgasen wacht niemand auf. Dann braucht es freie Luft, { $ample } oder mehr bis zu den Menschen und einen Melder, der geht, wo geschlafen wird.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Laden Sie die Batterie von { $life } am Tag. Stellen Sie darauf um, und stellen Sie den Motor ab, bevor jemand einschläft.
    .fix-when = { night-decide } { night-instead }

night-told = nach der Ruhezeit
night-assumed = wir wissen nicht, wann, also haben wir das angenommen
