### Regeln zur Spannung.

VOLT001 = { $fix ->
    [start] Die Spannung bricht zu weit ein, wenn { $first } startet
   *[other] Die Spannung an { $first } ist niedrig
  }
    .why = { $fix ->
        [start] Sie fällt einen Augenblick lang um { $drop } ({ $percent }). Viele Motoren starten nicht, wenn sie um mehr als { $much } einbricht, und Lampen werden dunkel. Stellen: { $about }.
       *[other] In den Kabeln gehen { $drop } ({ $percent }) verloren, es bleiben { $left }. Streben Sie { $noted } oder weniger an; bei mehr als { $much } werden Motoren heiß. Das ist ein Rat, kein Gesetz. Stellen: { $about }.
      }
    .fix-thicker = Nehmen Sie ein kürzeres oder dickeres Kabel (eine kleinere AWG-Zahl ist dicker).
    .fix-start = Nehmen Sie ein kürzeres oder dickeres Kabel, und starten Sie { $first }, während alles andere aus ist.
