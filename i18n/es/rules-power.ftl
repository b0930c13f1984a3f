### Rules on power.

# When things are on together: at the head of a sentence, and in one, with the space ahead of it.
when-first = { $timed ->
    [yes] A las { $time }
   *[no] A cualquier hora
  }
when = { $timed ->
    [yes] {" "}a las { $time }
   *[no] {""}
  }

POWER001 = { $fix ->
    [hours] El generador no puede con todo esto a la vez
    [leg-alone] Un lado del generador no puede con { $about }
    [alone] El generador no puede con { $about }
    [amps-alone] El generador no puede con { $about }
    [life-alone] Este generador no puede alimentar { $about }
    [life-off] Hay demasiado encendido junto con { $life }{ when }
    [life-turns] Hay demasiado encendido junto con { $life }{ when }
    [leg] A un lado del generador se le pide demasiado{ when }
    [leg-turns] A un lado del generador se le pide demasiado{ when }
    [leg-look] Quizá se le pida demasiado a un lado del generador{ when }
    [leg-cord] Quizá se le pida demasiado a un lado del generador{ when }
   *[other] Hay demasiado encendido a la vez{ when }
  }
    .why = { $fix ->
        [hours] Nadie dijo cuándo funcionan, así que todos cuentan a la vez: { $about }. Juntos piden { $demand }. El generador puede dar de forma continua { $limit }.
        [turns] Estos piden juntos { $demand }: { $about }. El generador puede dar de forma continua { $limit }, así que son { $over } de más.
        [leg-alone] Toma { $demand } en un lado. Cada lado da { $limit } y no más; son { $over } de más, en cualquiera de los dos.
        [alone] Por sí solo pide { $demand }. El generador puede dar de forma continua { $limit }, así que son { $over } de más.
        [amps-alone] Por sí solo consume { $demand }, más de lo que dicen sus vatios. El generador da { $limit }, así que son { $over } de más.
        [life-alone] { life-it } Pide { $demand }, y el generador puede darle de forma continua { $limit } como máximo: faltan { $over }.
        [life-off] { life-on } Estos piden juntos { $demand }: { $about }. El generador puede dar de forma continua { $limit }, así que son { $over } de más.
        [life-turns] { life-on } Estos piden juntos { $demand }: { $about }. El generador puede dar de forma continua { $limit }, así que son { $over } de más.
        [leg] Estos cargan un solo lado: { $about }. Consumen { $demand } en un lado y cada lado da { $limit }, así que son { $over } de más.
        [leg-turns] Estos cargan un solo lado: { $about }. Consumen { $demand } en un lado y cada lado da { $limit }, así que son { $over } de más.
        [leg-look] Si todos estos están del mismo lado, consumen ahí { $demand }: { $about }. Cada lado da { $limit }, así que son { $over } de más.
        [leg-cord] Si todos estos están del mismo lado, consumen ahí { $demand }: { $about }. Cada lado da { $limit }, así que son { $over } de más.
       *[other] Estos consumen juntos { $demand }: { $about }. El generador da { $limit }, así que son { $over } de más. Algunos consumen más de lo que dicen sus vatios.
      }
    .fix-turns = Hágalos funcionar por turnos. Dé a cada uno sus horas, o deje uno en casa. Mire primero { $first }: es el que más pide.
    .fix-hours = Hágalos funcionar por turnos: la tarjeta muestra cuáles van juntos. O diga en el plan cuándo funciona cada uno.
    .fix-leg = Pase { $move } a un { -receptacle } del otro lado, o haga funcionar estos por turnos.
    .fix-leg-turns = Haga funcionar estos por turnos, o deje uno en casa.
    .fix-leg-look = Averigüe de qué lado es cada { -receptacle } y anótelo en el plan. Hasta entonces, haga funcionar estos por turnos.
    .fix-leg-cord = Haga funcionar estos por turnos. Ningún plan sabe de qué lado es cada extremo de un cable. Pregunte a un { -electrician } antes de usarlos juntos.
    .fix-leg-alone = Deje { $about } en casa, use su nivel más bajo o lleve un generador más grande.
    .fix-amps = Hágalos funcionar por turnos. Mire primero { $first }: es lo que más consume.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] El generador no puede arrancar { $about }
    [amps-alone] El generador no puede arrancar { $about }
    [leg-alone] Una fase del generador no puede arrancar { $about }
    [again] Estos no pueden quedar todos encendidos a la vez
    [amps-again] Estos no pueden quedar todos encendidos a la vez
    [life-alone] Este generador no puede arrancar { $about }
    [life-together] Este generador no puede arrancar todos estos: { $life }
    [life-off] Lo que arranque junto con { $life } puede pararlo
    [life-turns] Lo que arranque junto con { $life } puede pararlo
   *[other] No todos estos pueden arrancar
  }
    .why = { $fix ->
        [alone] Para arrancar, aun sin nada más encendido, { $first } pide { $demand } por un momento. La potencia máxima del generador es { $limit }, así que faltan { $over }.
        [again] { when-first } funcionan a la vez: { $about }. Si { $first } arranca al final, pide { $demand }. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over }. Si se arranca primero, alcanza. Pero lo que tiene termostato o motor vuelve a arrancar solo.
        [amps-alone] Para arrancar, aun sin nada más encendido, { $first } pide { $demand } por un momento. La potencia máxima del generador es { $limit }, así que faltan { $over }.
        [leg-alone] Para arrancar, aun sin nada más encendido, { $first } pide { $demand } por un momento. El generador tiene dos fases, cada una con la mitad de su potencia. Una fase da como máximo { $limit }, así que faltan { $over }.
        [amps-again] { when-first } funcionan a la vez: { $about }. Si { $first } arranca al final, pide { $demand }. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over }. Si se arranca primero, alcanza. Pero lo que tiene termostato o motor vuelve a arrancar solo.
        [life-alone] { life-it } Arrancarlo pide { $demand } por un momento. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over }.
        [life-together] { life-on } { when-first } funcionan a la vez: { $about }. El peor momento pide { $demand }. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over }.
        [life-off] { life-on } { when-first } funcionan a la vez: { $about }. El peor momento pide { $demand }. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over }.
        [life-turns] { life-on } { when-first } funcionan a la vez: { $about }. El peor momento pide { $demand }. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over }.
        [amps-fewer] { when-first } funcionan a la vez: { $about }. El peor momento pide { $demand }. Lo máximo que el generador da ahí son { $limit }, así que faltan { $over } en cualquier orden.
       *[other] { when-first } funcionan a la vez: { $about }. El peor momento pide { $demand }. La potencia máxima es { $limit }, así que faltan { $over } en cualquier orden.
      }
    .fix-alone = Deje { $about } en casa, o lleve un generador más grande.
    .fix-again = Haga funcionar estos por turnos, como muestra la tarjeta. Encienda { $first } mientras otra cosa esté apagada.
    .fix-fewer = Encienda { $first } mientras otra cosa esté apagada, y haga funcionar estos por turnos.
    .fix-leg-alone = { POWER002.fix-alone }
    .fix-amps-alone = { POWER002.fix-alone }
    .fix-amps-again = { POWER002.fix-again }
    .fix-amps-fewer = { POWER002.fix-fewer }
    .fix-life-alone = { life-cannot }
    .fix-life-together = No confíe en este generador para { $life }. Quédese donde haya corriente de la red, o use el equipo de reserva de su proveedor. Nunca cambie el ajuste de un aparato.
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER003 = { $stranded } de la potencia del generador no pueden llegarle
    .why = El generador puede dar de forma continua { $rated }. Los { -receptacle(form: "many") } en uso entregan { $reachable } ({ $about }). El resto se queda atrás.
    .fix-outlet = Para llegar a { $reach }, anote en el plan un cable propio desde el { -receptacle } “{ $outlet }”, y compruebe otra vez. Nunca una dos { -receptacle(form: "many") }.
    .fix-socket = Para llegar a { $reach }, anote en el plan un segundo cable propio desde otra toma de “{ $outlet }”, y compruebe otra vez. Nunca una dos { -receptacle(form: "many") }, ni los extremos de dos cables.
    .fix-accept = Cuente con { $reachable }. Con las tomas y el equipo que puede usar, nada le da más.

POWER004 = { $fix ->
    [late] El { -breaker } de { $first } se disparó por encima de su número
   *[other] El { -breaker } de { $first } se dispara antes de tiempo
  }
    .why = { $fix ->
        [late] Está marcado con { $marked }, y usted lo vio dispararse con { $trips }. Todo { -breaker } deja pasar más por poco tiempo: aquí cuenta { $marked }.
       *[other] Está marcado con { $marked }, pero se ha disparado con { $trips }. Cuente con { $trips }, pero no se fíe de que se dispare ahí.
      }
    .fix-service = Haga que lo revise un taller de servicio o un { -electrician }. Deje de usarlo si huele, se pone marrón o se calienta.
    .fix-late = Cuente con { $marked }, el número que lleva. Si deja pasar más durante una hora, no lo use hasta que lo mire un { -electrician }.

POWER005 = La potencia nominal y la máxima son casi iguales
    .why = El plan dice que da { $rated } de forma continua y { $peak } como máximo. En la mayoría de los generadores la nominal es claramente menor. El número grande de la caja es la máxima.
    .fix-plate = Lea la placa: busque los vatios “running”, “rated” o “continuous” (nominales). Ponga ese número en el plan.

POWER006 = Casi todo está conectado a un lado del generador
    .why = { when-first } un lado lleva { $heavy } y el otro { $light }. Cada lado da { $leg } y no más, y la mitad del generador queda sin usar. Intervienen: { $about }.
    .fix-move = Pase { $first } a un { -receptacle } del otro lado, si puede.

POWER007 = Con el ralentí económico puede que { $first } no arranque
    .why = Toma { $starting } por un momento para arrancar, y el generador da { $rated } de forma continua. En ralentí económico el motor gira despacio y necesita uno o dos segundos para reaccionar.
    .fix-off = Apague el ralentí económico antes de que arranque { $first }, y no lo encienda mientras siga arrancando y parando por sí solo.

POWER008 = { $fix ->
    [sum] { $sets } generadores funcionan como uno
   *[other] Generadores que no deben funcionar como uno
  }
    .why = { $fix ->
        [sum] Juntos dan de forma continua { $rated }, es decir, { $leg }. El kit entre ellos y los { -receptacle(form: "many") } pueden dejar pasar menos de lo que podrían dar los generadores.
       *[other] Los generadores que no van al mismo paso se meten corriente uno al otro y se queman. Un cable con dos clavijas tiene patas al descubierto y con tensión cuando se saca un extremo.
      }
    .fix-apart = Úselos por separado, cada uno con sus propios cables. Conecte entre sí solo generadores inversores de 120 V, y con el kit del fabricante para exactamente esos generadores.
    .fix-look = Úselos por separado hasta saberlo: todos deben ser generadores inversores de 120 V, y el kit debe ser el del fabricante para exactamente esos generadores.
    .fix-sum = Pare todos los motores antes de conectarlos o separarlos. Pregunte al fabricante o a un { -electrician } si el neutro está unido a tierra en más de uno: son demasiados. No una usted el neutro y la tierra.

POWER009 = { $fix ->
    [motor] { $about } puede consumir más de lo que admite su clavija
   *[other] { $about } consume más de lo que admite su clavija
  }
    .why = { $fix ->
        [motor] Por sus caballos contamos { $demand }. Su clavija, { $plug }, está hecha para { $limit }.
       *[other] Consume { $demand }. Su clavija, { $plug }, está hecha para { $limit }.
      }
    .fix-plate = Lea otra vez su placa y mire su clavija. Déjelo desenchufado hasta que las dos concuerden. No use una clavija que puso otra persona.
    .fix-motor = Lea los amperios en su placa y póngalos en el plan. Si son más de { $limit }, no lo use con esta clavija.
