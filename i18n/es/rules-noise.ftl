### Rules on noise.

NOISE001 = { $fix ->
    [look] No se sabe cuánto ruido hace el generador
    [full-load] A plena carga quizá haga más ruido del que permiten muchos campamentos
   *[other] Más ruido del que permiten muchos campamentos
  }
    .why = { $fix ->
        [look] Los parques nacionales permiten { $limit } a { $distance }, y muchos campamentos hacen lo mismo. Los generadores de bastidor abierto suelen hacer más ruido.
        [full-load] Hace unos { $level } a { $distance } al aire libre, con la carga a la que se midió. Para plena carga se tomaron { $more } más: { $full }. Los parques nacionales permiten { $limit } a esa distancia, y muchos campamentos hacen lo mismo. A plena carga, eso es así a partir de { $from }.
       *[other] Hace unos { $level } a { $distance } al aire libre, con la carga a la que se midió. Los parques nacionales permiten { $limit } a esa distancia, y muchos campamentos hacen lo mismo. Eso es así a partir de { $from }, y desde más lejos a plena carga.
      }
    .fix-quieter = Haga funcionar menos cosas a la vez, use el ralentí económico y ponga el generador sobre suelo blando. Pregunte al encargado del lugar. Nunca lo encierre ni lo cubra.
    .fix-full-load = Haga funcionar menos cosas a la vez y ponga el generador sobre suelo blando, lejos de paredes. Pregunte al encargado del lugar. Nunca lo encierre ni lo cubra.
    .fix-look = Busque “dB” en el manual, con la distancia a la que se midió. Pregunte al encargado del lugar antes de usarlo. Nunca lo encierre ni lo cubra.

NOISE002 = Algunas cosas funcionarían en horas de silencio
    .why = El campamento debe estar en silencio de { $from } a { $to }. Estas funcionan entonces: { $about }.
    .fix-move = Páselas a otras horas, o aliméntelas con una batería cargada de día.
    .fix-life = Sus horas no cambian. Pregunte al encargado del lugar antes de venir, o aliméntelo entonces con una batería hecha para ello y cargada de día.
