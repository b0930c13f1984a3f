### Was die Regeln annehmen, wenn eine Antwort fehlt.

assumed-too-near = zu nah
assumed-covered = in oder unter etwas
assumed-floating = erdfrei
assumed-loud = lauter, als viele Plätze erlauben
assumed-quarter = ein Viertel der vollen Last

assume-ground = Niemand weiß, wie nass der Boden ist, also wurde „{ $value }“ angenommen. Fühlen Sie den Boden dort, wo man steht, auch am Abend.
assume-sleepers = Wir wissen nicht, wie weit die Menschen entfernt sind, also haben wir „{ $value }“ angenommen. Messen Sie vom Auspuff bis zum nächsten Zelt, Fahrzeug, Fenster oder zur nächsten Tür.
assume-people-sleep = Wir wissen nicht, ob hier jemand schläft, also haben wir „{ $value }“ angenommen. Fragen Sie alle, auch die Nachbarn.
assume-stands = Niemand hat gesagt, was über dem Generator und um ihn herum ist, also wurde „{ $value }“ angenommen. Stellen Sie ihn ins Freie oder unter ein hohes, an allen Seiten offenes Dach, keine Markise.
assume-co-alarm = Niemand weiß, ob alle mit einem Kohlenmonoxid-Melder schlafen, also wurde „{ $value }“ angenommen. Sehen Sie in jedem Zelt und Wohnwagen nach, und drücken Sie die Prüftaste.
assume-building = Niemand weiß, ob der Generator ein Gebäude speisen soll, also wurde „{ $value }“ angenommen. Bevor Sie ihn starten, fragen Sie alle auf dem Platz, ob er an ein Gebäude angeschlossen ist.
assume-neutral = Niemand weiß, ob der Neutralleiter des Generators mit seinem Gehäuse verbunden ist, also wurde für die Prüfungen „{ $value }“ angenommen, für Stromschläge jedes Mal das Schlimmere. Suchen Sie in der Anleitung nach „floating“ (erdfrei) oder „bonded neutral“ (verbunden).
assume-cord-outdoor = Niemand weiß, ob „{ $part }“ für draußen ist, also wurde „{ $value }“ angenommen. Auf einem Mantel für draußen steht ein „W“ in der Typenbezeichnung, oder es steht ausdrücklich darauf.
assume-box-bond = Niemand weiß, wie „{ $part }“ innen aussieht, also wurde angenommen, dass Neutralleiter und Schutzleiter dort verbunden sind. Öffnen Sie den Kasten nicht. Fragen Sie eine Elektrofachkraft.
assume-box-listed = Niemand weiß, ob „{ $part }“ aus der Fabrik und zugelassen ist, also wurde das Schlimmste angenommen: { $value }. Suchen Sie das Zeichen eines Prüflabors darauf.
assume-bonding-plug = Niemand weiß, ob ein Brückenstecker im Generator steckt, also wurde „{ $value }“ angenommen, wo das schlechter ist. Es ist ein Stecker ohne Kabel, in einer Steckdose des Generators.
assume-noise-load = Wir wissen nicht, bei welcher Last der Lärm gemessen wurde, also haben wir angenommen: { $value }.
assume-backup = Niemand hat gesagt, ob „{ $part }“ eine Batterie für die ganze Nacht hat, also wurde „{ $value }“ angenommen.
assume-parallel-kit = Niemand weiß, ob der Verbindungssatz zwischen den Generatoren vom Hersteller und für genau diese ist, also wurde „{ $value }“ angenommen. Seine Anleitung nennt die Generatoren, für die er ist.
assume-noise-full-load = Wir wissen nicht, wie viel lauter der Generator mit mehr Last wird, also haben wir { $value } für die Minute mit der größten Last dazugezählt. Hersteller messen bei Teillast, da ist er leiser.
assume-noise = Niemand weiß, wie laut der Generator ist, also wurde angenommen: { $value }. Suchen Sie „dB“ in der Anleitung, mit einer Entfernung.
assume-noise-not-told = Niemand hat gesagt, wie laut der Generator ist, also wurde angenommen: { $value }. Fragen Sie den Platzwart, bevor Sie ihn starten. In der Anleitung steht „dB“ mit einer Entfernung.
assume-runtime = Wir wissen nicht, wie lange eine Tankfüllung reicht, also haben wir { $value } angenommen, wie bei einem kleinen Generator mit voller Last. Suchen Sie die Laufzeit in der Anleitung.
assume-quiet-hours = Wir wissen nicht, wann es auf dem Platz ruhig sein muss, also haben wir { $value } angenommen, und dass dann geschlafen wird. Fragen Sie den Platzwart.
assume-night = Wir wissen nicht, wann geschlafen wird, also haben wir { $value } angenommen.
assume-bonding-plug-in = Niemand weiß, in welcher Steckdose der Brückenstecker sitzt, also wurde das Schlimmste angenommen: { $value }. Suchen Sie am Generator einen Stecker ohne Kabel.
assume-single-socket = Niemand weiß, wie viele Stecker „{ $part }“ aufnimmt, also wurde { $value } angenommen. Dann ist ihr Schutzschalter zu groß. Nimmt sie zwei auf, schreiben Sie sockets = 2 in den Plan.
