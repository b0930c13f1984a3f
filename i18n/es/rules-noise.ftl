### Rules on noise.

NOISE001 = Más ruido del que permiten muchos campamentos
    .why = Hace unos { $level } a { $distance } al aire libre. Los parques nacionales permiten { $limit } a esa distancia, y muchos campamentos hacen lo mismo.
    .fix-quieter = Haga funcionar menos cosas a la vez, use el ralentí económico y ponga el generador sobre suelo blando. Pregunte al encargado del lugar. Nunca lo encierre ni lo cubra.

NOISE002 = Algunas cosas funcionarían en horas de silencio
    .why = El campamento debe estar en silencio de { $from } a { $to }. Estas funcionan entonces: { $about }.
    .fix-move = Páselas a otras horas, o aliméntelas con una batería cargada de día. Si la salud de alguien depende de ello, pregunte primero al encargado del lugar.
