### Regeln zur Spannung.

VOLT001 = { $fix ->
    [start] Die Spannung bricht zu weit ein, wenn { $first } startet
    [start-alone] Die Spannung bricht zu weit ein, wenn { $first } startet
   *[other] Die Spannung an { $first } ist niedrig
  }
    .why = { $fix ->
        [start] Sie fällt einen Augenblick lang um { $drop } ({ $percent }). Viele Motoren starten nicht, wenn sie um mehr als { $much } einbricht, und Lampen werden dunkel. Stellen: { $about }.
        [start-alone] Sie fällt einen Augenblick lang um { $drop } ({ $percent }). Viele Motoren starten nicht, wenn sie um mehr als { $much } einbricht, und Lampen werden dunkel. Stellen: { $about }.
        [range-b] In den Kabeln gehen { $drop } ({ $percent }) verloren, es bleiben { $left }. Die Geräte hier sind für { $least } oder mehr gemacht. Bis { $least-b } halten sie es eine Weile aus; Motoren werden heiß. Stellen: { $about }.
        [below-b] In den Kabeln gehen { $drop } ({ $percent }) verloren, es bleiben { $left }. Unter { $least-b } können Motoren stehen bleiben und durchbrennen, und Elektronik kann ausfallen. Stellen: { $about }.
       *[other] In den Kabeln gehen { $drop } ({ $percent }) verloren, es bleiben { $left }. Streben Sie { $noted } oder weniger an; bei mehr als { $much } werden Motoren heiß. Das ist ein Rat, kein Gesetz. Stellen: { $about }.
      }
    .fix-thicker = Nehmen Sie ein kürzeres oder dickeres Kabel (eine kleinere AWG-Zahl ist dicker).
    .fix-range-b = Nehmen Sie bald ein kürzeres oder dickeres Kabel (kleinere AWG-Zahl heißt dicker). Bis dahin dort weniger auf einmal betreiben.
    .fix-below-b = Betreiben Sie dort keinen Kühlschrank, keine Pumpe und keinen anderen Motor. Nehmen Sie ein kürzeres oder dickeres Kabel (kleinere AWG-Zahl heißt dicker), oder betreiben Sie dort weniger auf einmal.
    .fix-start = Nehmen Sie ein kürzeres oder dickeres Kabel, und starten Sie { $first }, während alles andere aus ist.
    .fix-start-alone = Nehmen Sie für { $first } ein kürzeres oder dickeres Kabel (kleinere AWG-Zahl heißt dicker). Anderes auszuschalten reicht nicht.
