### Rules on fuel.

FUEL001 = { $fix ->
    [find-out] No se sabe si un { -tank } alcanza
    [life-find-out] No se sabe si un { -tank } alcanza
   *[other] Un { -tank } no alcanza
  }
    .why = { $fix ->
        [find-out] Algo debe funcionar { $stretch } sin pausa. A plena carga, un { -tank } de un generador pequeño dura cerca de { $tank }. El combustible derramado sobre un motor caliente se incendia.
        [life-find-out] Algo debe funcionar { $stretch } sin pausa. A plena carga, un { -tank } de un generador pequeño dura cerca de { $tank }. El combustible derramado sobre un motor caliente se incendia.
       *[other] Algo debe funcionar { $stretch } sin pausa. Un { -tank } dura cerca de { $tank }. El combustible derramado sobre un motor caliente se incendia.
      }
    .fix-pause = Prevea una pausa con luz de día. Apague el motor y déjelo enfriar { $cooling } minutos antes de abrir el { -tank }. Nunca con lluvia ni cerca de llamas.
    .fix-find-out = Busque en el manual las horas por { -tank } y póngalas en el plan. Hasta entonces, prevea una pausa con luz de día: motor apagado, { $cooling } minutos de enfriamiento, sin lluvia y sin llamas.
    .fix-life-pause = Primero pase { $life } a una batería hecha para ello, o a la reserva del proveedor. Sin ninguna de las dos, no confíe en este generador para ello. Después: { FUEL001.fix-pause }
    .fix-life-find-out = Primero pase { $life } a una batería hecha para ello, o a la reserva del proveedor. Sin ninguna de las dos, no confíe en este generador para ello. Después: { FUEL001.fix-find-out }

FUEL002 = Suelo reseco: las chispas y el silenciador caliente pueden prenderlo
    .why = Del escape salen partículas encendidas, y el silenciador prende la hierba que lo toca. Deje { $clear } libres a su alrededor.
    .fix-arrester = Póngalo sobre tierra sin hierba o roca. Busque un parachispas en el escape. Tenga allí agua o un extintor. Pregunte al encargado del lugar si hoy se permiten motores.

FUEL003 = Un día necesita más de un { -tank }
    .why = El plan quema cerca de { $day } al día, y en el { -tank } caben { $tank }. Por eso hay combustible de reserva en el campamento. Su vapor se arrastra por el suelo hasta cualquier cosa caliente.
    .fix-store = Guárdelo en un bidón aprobado y cerrado, a la sombra, bien lejos del generador, de las llamas y de las { -tent(form: "many") }. Cargue combustible con el motor apagado y frío.
