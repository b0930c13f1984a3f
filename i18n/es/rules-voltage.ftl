### Rules on voltage.

VOLT001 = { $fix ->
    [start] La tensión baja demasiado cuando arranca { $first }
   *[other] La tensión es baja en { $first }
  }
    .why = { $fix ->
        [start] Baja { $drop } ({ $percent }) por un momento. Muchos motores no arrancan si baja más de { $much }, y las lámparas se atenúan. Lugares: { $about }.
       *[other] Los cables pierden { $drop } ({ $percent }), y quedan { $left }. Procure perder { $noted } o menos; si se pierde más de { $much }, los motores se calientan. Son consejos, no ley. Lugares: { $about }.
      }
    .fix-thicker = Use un cable más corto o más grueso (un número AWG menor es más grueso).
    .fix-start = Use un cable más corto o más grueso, y arranque { $first } cuando todo lo demás esté apagado.
