### Wörter, die mehrere Regeln teilen.

not-known = nicht bekannt

night-decide = Legen Sie fest, wann es läuft, nicht nachts, und tragen Sie es in den Plan ein.
night-instead = Lassen Sie { $about } zu anderen Zeiten laufen, oder mit einer am Tag geladenen Batterie.
night-life = Fragen Sie den Arzt, die Ärztin oder den Lieferanten nach einer Batterie, mit der { $life } die ganze Nacht läuft. Laden Sie sie am Tag.
night-sleep = Stellen Sie den Motor ab, bevor jemand einschläft.

life-cannot = Verlassen Sie sich für { $about } nicht auf diesen Generator. Bleiben Sie, wo es Strom aus dem Netz gibt, oder nehmen Sie das Ersatzgerät Ihres Lieferanten. Nie die Einstellung des Geräts ändern.
life-off = Lassen Sie { $off } aus, während { $life } läuft. Wovon ein Leben abhängt, macht nie Pause für andere und wird nie heruntergestellt.
life-turns = Lassen Sie { $life } an, und stellen Sie es nie kleiner. Lassen Sie das Übrige abwechselnd laufen.
life-it = { $sure ->
    [yes] Davon hängt die Gesundheit eines Menschen ab.
   *[no] Niemand weiß, ob davon die Gesundheit eines Menschen abhängt.
  }
life-on = { $sure ->
    [yes] Von { $life } hängt die Gesundheit eines Menschen ab.
   *[no] Niemand weiß, ob von { $life } die Gesundheit eines Menschen abhängt.
  }
