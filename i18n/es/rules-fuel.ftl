### Rules on fuel.

# $amount es $count, como lo escribe el lector.
tanks = { $count ->
    [one] { $amount } tanque
   *[other] { $amount } tanques
  }

FUEL001 = { $fix ->
    [find-out] No sabemos si un { -tank } alcanza
    [life-find-out] No sabemos si un { -tank } alcanza
   *[other] Un { -tank } no alcanza hasta la próxima pausa
  }
    .why = { $fix ->
        [find-out] De { $from } a { $to } no hay pausa para cargar combustible. { $timed ->
            [yes] No sabemos la potencia nominal del generador, así que para un { -tank } supusimos { $tank }.
           *[no] Para un { -tank } supusimos { $tank }, como en un generador pequeño a plena carga.
          }
        [life-find-out] De { $from } a { $to } no hay pausa para cargar combustible. { $timed ->
            [yes] No sabemos la potencia nominal del generador, así que para un { -tank } supusimos { $tank }.
           *[no] Para un { -tank } supusimos { $tank }, como en un generador pequeño a plena carga.
          }
        [life-pause] El generador funciona de { $from } a { $to } sin pausa. Eso quema { $burns }. Si de ello depende una vida, cuente con el { $usable } de un { -tank } como máximo.
       *[other] El generador funciona de { $from } a { $to } sin pausa. Eso quema { $burns }, y cargar combustible con el motor caliente puede provocar un incendio.
      }
    .fix-pause = Prevea una pausa de media hora dentro de ese tiempo, pero no de noche, o use menos cosas. Antes de cargar combustible, deje enfriar { $cooling } minutos el motor parado. Nunca cargue con lluvia ni cerca de llamas.
    .fix-find-out = { $timed ->
        [yes] Busque en la placa del generador los vatios “running” o “rated” (nominales) y póngalos en el plan.
       *[no] Ponga en el plan cuántas horas dura un { -tank }, según el manual.
      } Hasta entonces, prevea una pausa dentro de ese tiempo, pero no de noche. Antes de cargar combustible, deje enfriar { $cooling } minutos el motor parado, lejos de la lluvia y de las llamas.
    .fix-life-pause = Pase { $life } a una batería hecha para ello o a la reserva del proveedor, o no confíe en este generador. Después prevea una pausa de media hora dentro de ese tiempo, no de noche: motor parado, { $cooling } minutos de enfriamiento, sin lluvia y sin llamas.
    .fix-life-find-out = Pase { $life } a una batería hecha para ello o a la reserva del proveedor, o no confíe en este generador. { $timed ->
        [yes] Busque en la placa del generador los vatios “running” o “rated” (nominales) y póngalos en el plan.
       *[no] Ponga en el plan cuántas horas dura un { -tank }.
      } Hasta entonces, prevea una pausa dentro de ese tiempo, no de noche: motor parado, { $cooling } minutos de enfriamiento, sin lluvia y sin llamas.

FUEL002 = Las chispas pueden incendiar el suelo seco
    .why = Del escape salen chispas, y el silenciador caliente prende la hierba que lo toca. Con restricciones de fuego, los motores pueden estar prohibidos.
    .fix-arrester = Pregunte al encargado del lugar si hay restricciones de fuego y si se permiten generadores. Ponga el generador sobre tierra sin hierba o roca, con { $clear } libres por todos lados y agua o un extintor al lado. Vea en su manual si el escape tiene un parachispas aprobado.

FUEL003 = Un día necesita más de un { -tank }
    .why = { $fix ->
        [store-propane] Este plan quema { $burns } al día: tendrá un cilindro de reserva en el campamento. El gas que escapa se arrastra por el suelo hasta cualquier cosa caliente.
       *[other] Este plan quema { $burns } al día: tendrá combustible de reserva en el campamento. Su vapor se arrastra por el suelo hasta cualquier cosa caliente.
      }
    .fix-store = Guarde el combustible de reserva en un bidón aprobado y cerrado, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cargue combustible con el motor parado y frío. Si se derrama, aléjese hasta que no quede vapor: solo entonces se arranca el motor.
    .fix-store-propane = Deje el cilindro de reserva de pie y al aire libre, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cámbielo con el motor parado y frío. Si huele a gas, cierre la válvula, y aléjese hasta que ya no huela: solo entonces se arranca el motor.
