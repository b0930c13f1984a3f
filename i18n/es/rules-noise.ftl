### Rules on noise.

NOISE001 = { $fix ->
    [look] No sabemos cuánto ruido hace el generador
    [quieter] Más ruido del que permiten muchos campamentos
   *[other] Con su mayor carga quizá haga demasiado ruido
  }
    .why = { $fix ->
        [look] Los parques nacionales permiten { $limit } a { $distance }, y muchos campamentos hacen lo mismo. Los generadores de bastidor abierto suelen hacer más ruido.
        [quieter] Hace unos { $level } a { $distance } al aire libre, con la carga a la que se midió. Los parques nacionales permiten { $limit } a esa distancia, y muchos campamentos hacen lo mismo.
       *[other] En el minuto de mayor carga de este plan supusimos { $more } más que lo medido: unos { $busiest } a { $distance } al aire libre. Los parques nacionales permiten { $limit } a esa distancia, y muchos campamentos hacen lo mismo.
      }
    .fix-quieter = { $idle ->
        [no] Ponga el generador
       *[yes] Use el ralentí económico y ponga el generador
      } sobre tierra sin hierba, lejos de paredes. Pregunte al encargado del lugar. Nunca lo encierre ni lo cubra.
    .fix-busiest = Haga funcionar menos cosas a la vez y ponga el generador sobre tierra sin hierba, lejos de paredes. Pregunte al encargado del lugar. Nunca lo encierre ni lo cubra.
    .fix-alone = Ponga el generador sobre tierra sin hierba, lejos de paredes. Pregunte al encargado del lugar. Nunca lo encierre ni lo cubra.
    .fix-look = Busque “dB” en el manual, con la distancia a la que se midió. Pregunte al encargado del lugar antes de usarlo. Nunca lo encierre ni lo cubra.

NOISE002 = { $fix ->
    [move-assumed] Funcionarían de noche: { $about }
    [life-assumed] Funcionarían de noche: { $about }
   *[other] Funcionarían en horas de silencio: { $about }
  }
    .why = { $fix ->
        [move-assumed] No sabemos cuándo debe haber silencio en el campamento; supusimos { $quiet }.
        [life-assumed] No sabemos cuándo debe haber silencio en el campamento; supusimos { $quiet }.
       *[other] El campamento debe estar en silencio: { $quiet }.
      }
    .fix-move = { night-instead }
    .fix-life = Antes de venir, pregunte al encargado del lugar si puede funcionar a esas horas. Si no, sus horas no cambian. { night-life }
    .fix-move-assumed = Pregunte al encargado del lugar cuándo debe haber silencio. { NOISE002.fix-move }
    .fix-life-assumed = Pregunte al encargado del lugar cuándo debe haber silencio. { NOISE002.fix-life }
