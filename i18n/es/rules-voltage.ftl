### Rules on voltage.

VOLT001 = { $fix ->
    [start] La tensión baja demasiado cuando arranca { $first }
    [start-alone] La tensión baja demasiado cuando arranca { $first }
   *[other] La tensión es baja en { $first }
  }
    .why = { $fix ->
        [start] Baja { $drop } ({ $percent }) por un momento. Muchos motores no arrancan si baja más de { $much }, y las lámparas se atenúan. Lugares: { $about }.
        [start-alone] Baja { $drop } ({ $percent }) por un momento. Muchos motores no arrancan si baja más de { $much }, y las lámparas se atenúan. Lugares: { $about }.
        [range-b] Los cables pierden { $drop } ({ $percent }), y quedan { $left }. Los aparatos de aquí están hechos para { $least } o más; hasta { $least-b } funcionan un tiempo, pero los motores se calientan. Lugares: { $about }.
        [below-b] Los cables pierden { $drop } ({ $percent }), y quedan { $left }. Por debajo de { $least-b } los motores pueden pararse y quemarse, y la electrónica apagarse. Lugares: { $about }.
       *[other] Los cables pierden { $drop } ({ $percent }), y quedan { $left }. Procure perder { $noted } o menos: con más de { $much } los motores se calientan (es un consejo, no ley). Lugares: { $about }.
      }
    .fix-thicker = Use un cable más corto o más grueso (un número AWG menor es más grueso).
    .fix-range-b = Cambie pronto a un cable más corto o más grueso (un número AWG menor es más grueso). Hasta entonces, use menos a la vez ahí.
    .fix-below-b = No use ahí un { -fridge }, una bomba ni otro motor. Use un cable más corto o más grueso (un número AWG menor es más grueso), o menos cosas a la vez.
    .fix-start = Use un cable más corto o más grueso, y arranque { $first } cuando todo lo demás esté apagado.
    .fix-start-alone = Use para { $first } un cable más corto o más grueso (un número AWG menor es más grueso). Apagar lo demás no basta.
