### Wörter, die mehrere Regeln teilen.

not-known = nicht bekannt

night-decide = Legen Sie dafür Stunden fest, keine davon nachts, und tragen Sie sie in den Plan ein.
night-instead = Lassen Sie { $about } zu anderen Zeiten laufen, oder mit einer Batterie, die Sie tagsüber laden.
night-life = Fragen Sie den Arzt, die Ärztin oder den Lieferanten nach einer Batterie für { $life }, die die ganze Nacht reicht und tagsüber geladen wird.
night-sleep = Stellen Sie den Motor ab, bevor jemand einschläft.

life-cannot = Verlassen Sie sich für { $about } nicht auf diesen Generator. Bleiben Sie, wo es Strom aus dem Netz gibt, oder nutzen Sie die Ersatzversorgung Ihres Lieferanten. Ändern Sie nie die Einstellung des Geräts.
life-off = Neben { $life } bleibt aus: { $off }. Stellen Sie nie herunter oder ab, wovon ein Leben abhängt.
life-turns = Stecken Sie { $life } nie für anderes aus, und stellen Sie daran nichts herunter. Lassen Sie das Übrige abwechselnd laufen.
life-it = { $sure ->
    [yes] Davon hängt die Gesundheit eines Menschen ab.
   *[no] Wir wissen nicht, ob davon die Gesundheit eines Menschen abhängt.
  }
life-on = { $sure ->
    [yes] Von { $life } hängt die Gesundheit eines Menschen ab.
   *[no] Wir wissen nicht, ob von { $life } die Gesundheit eines Menschen abhängt.
  }
