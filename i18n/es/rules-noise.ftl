### Rules on noise.

NOISE001 = { $fix ->
    [look] Quizá el generador haga demasiado ruido
    [quieter] Más ruido del que permiten muchos campamentos
   *[other] Con su mayor carga quizá haga demasiado ruido
  }
    .why = { $fix ->
        [look] No sabemos cuánto ruido hace, y los generadores de bastidor abierto suelen hacer más de { $limit } a { $distance }. Los parques nacionales y muchos campamentos no permiten más.
        [quieter] Hace unos { $level } a { $distance } al aire libre, con la carga a la que se midió. Los parques nacionales y muchos campamentos permiten { $limit } a esa distancia.
       *[other] Para el minuto de mayor carga supusimos { $more } más que lo medido: unos { $busiest } a { $distance } al aire libre. Los parques nacionales y muchos campamentos permiten { $limit } a esa distancia.
      }
    .fix-quieter = { $idle ->
        [no] Póngalo
       *[yes] Use el ralentí económico,
      } sobre tierra sin hierba, lejos de paredes. Pregunte al encargado. Nunca lo encierre ni lo cubra.
    .fix-busiest = Use menos cosas a la vez. Pregunte al encargado. Nunca lo encierre ni lo cubra.
    .fix-alone = Póngalo sobre tierra sin hierba, lejos de paredes. Pregunte al encargado. Nunca lo encierre ni lo cubra.
    .fix-look = Busque “dB” en el manual, con la distancia a la que se midió. Pregunte al encargado del lugar antes de usarlo. Nunca lo encierre ni lo cubra.

NOISE002 = { $fix ->
    [move-assumed] Funcionando de noche: { $about }
    [life-assumed] Funcionando de noche: { $about }
   *[other] Funcionando en horas de silencio: { $about }
  }
    .why = { $fix ->
        [move-assumed] No sabemos cuándo debe haber silencio en el campamento, así que supusimos { $quiet }.
        [life-assumed] No sabemos cuándo debe haber silencio en el campamento, así que supusimos { $quiet }.
       *[other] El campamento debe estar en silencio: { $quiet }.
      }
    .fix-move = { night-instead }
    .fix-life = Antes de venir, pregunte al encargado del lugar si el generador puede funcionar a esas horas, y nunca acorte las horas de { $life }. { night-life }
    .fix-move-assumed = Pregunte al encargado del lugar cuándo debe haber silencio. { NOISE002.fix-move }
    .fix-life-assumed = Pregunte al encargado del lugar cuándo debe haber silencio y si los generadores pueden funcionar entonces, y nunca acorte las horas de { $life }. { night-life }
