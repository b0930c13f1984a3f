### Rules on fuel.

FUEL001 = { $fix ->
    [find-out] No sabemos si un { -tank } alcanza
    [life-find-out] No sabemos si un { -tank } alcanza
   *[other] Un { -tank } no alcanza
  }
    .why = { $fix ->
        [find-out] De { $from } a { $to } no hay pausa para cargar combustible. No sabemos cuánto dura un { -tank }; supusimos { $tank }, como en un generador pequeño a plena carga.
        [life-find-out] De { $from } a { $to } no hay pausa para cargar combustible. No sabemos cuánto dura un { -tank }; supusimos { $tank }, como en un generador pequeño a plena carga.
        [life-pause] De { $from } a { $to } no hay pausa para cargar combustible, y eso quema el { $burns } de un { -tank } (100 % es un { -tank } lleno). Si de ello depende una vida, cuente con el { $usable }.
       *[other] De { $from } a { $to } no hay pausa para cargar combustible, y eso quema el { $burns } de un { -tank } (100 % es un { -tank } lleno). El combustible sobre un motor caliente se incendia.
      }
    .fix-pause = Prevea una pausa de media hora dentro de ese tiempo, pero no de noche, o use menos cosas entonces. Apague el motor y déjelo enfriar { $cooling } minutos antes de cargar combustible. Nunca con lluvia ni cerca de llamas.
    .fix-find-out = Busque en el manual las horas por { -tank } y póngalas en el plan. Hasta entonces, prevea una pausa dentro de ese tiempo, pero no de noche: motor apagado, { $cooling } minutos de enfriamiento, sin lluvia y sin llamas.
    .fix-life-pause = Primero pase { $life } a una batería hecha para ello, o a la reserva del proveedor. Sin ninguna de las dos, no confíe en este generador para ello. Después: { FUEL001.fix-pause }
    .fix-life-find-out = Primero pase { $life } a una batería hecha para ello, o a la reserva del proveedor. Sin ninguna de las dos, no confíe en este generador para ello. Después: { FUEL001.fix-find-out }

FUEL002 = Suelo reseco: las chispas y el silenciador caliente pueden prenderlo
    .why = Del escape salen partículas encendidas, y el silenciador prende la hierba que lo toca. Con restricciones de fuego, los motores pueden estar prohibidos.
    .fix-arrester = Pregunte al encargado del lugar si hay restricciones de fuego y si hoy se permiten motores. Busque un parachispas aprobado en el escape. Ponga el generador sobre tierra sin hierba o roca, con { $clear } libres alrededor y agua o un extintor al lado.

FUEL003 = Un día necesita más de un { -tank }
    .why = { $fix ->
        [store-propane] Un día de este plan quema el { $burns } de un { -tank } (100 % es un { -tank } lleno); por eso hay un cilindro de reserva en el campamento. El gas que escapa baja y se arrastra por el suelo hasta cualquier cosa caliente.
       *[other] Un día de este plan quema el { $burns } de un { -tank } (100 % es un { -tank } lleno); por eso hay combustible de reserva en el campamento. Su vapor se arrastra por el suelo hasta cualquier cosa caliente.
      }
    .fix-store = Guárdelo en un bidón aprobado y cerrado, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cargue combustible con el motor apagado y frío. Si derrama algo, aléjese y deje que el vapor se disipe antes de arrancar.
    .fix-store-propane = Déjelo de pie y al aire libre, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cámbielo con el motor apagado y frío y la válvula cerrada. Si huele a gas, cierre la válvula, aléjese y deje que se disipe.
