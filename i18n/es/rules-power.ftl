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
    [leg-alone] Una mitad del generador no puede con { $about }
    [alone] El generador no puede con { $about }
    [amps-alone] El generador no puede con { $about }
    [life-alone] Este generador no puede con { $about }
    [life-off] Hay demasiado encendido junto con { $life }{ when }
    [life-turns] Hay demasiado encendido junto con { $life }{ when }
    [leg] Una mitad del generador está sobrecargada{ when }
    [leg-turns] Una mitad del generador está sobrecargada{ when }
    [leg-look] Quizá una mitad del generador esté sobrecargada{ when }
    [leg-cord] Quizá una mitad del generador esté sobrecargada{ when }
   *[other] Hay demasiado encendido a la vez{ when }
  }
    .why = { $fix ->
        [hours] Usted no dijo cuándo funcionan, así que los contamos todos a la vez: { $about }. Juntos necesitan { $demand }, pero el generador puede dar { $limit }.
        [turns] Estos necesitan juntos { $demand }: { $about }. El generador puede dar { $limit }, así que son { $over } de más.
        [leg-alone] Toma { $demand } en una mitad. Cada mitad puede dar { $limit }, así que son { $over } de más en cualquiera de las dos.
        [alone] Necesita { $demand }. El generador puede dar { $limit }, así que son { $over } de más.
        [amps-alone] Consume { $demand }. El generador puede dar { $limit }, así que son { $over } de más.
        [life-alone] { life-it } Necesita { $demand }, pero el generador puede darle { $limit } como máximo: faltan { $over }.
        [life-off] { life-on } El generador puede dar { $limit }, pero estos necesitan { $demand }, que son { $over } de más: { $about }.
        [life-turns] { life-on } El generador puede dar { $limit }, pero estos necesitan { $demand }, que son { $over } de más: { $about }.
        [leg] Estos consumen { $demand } en una sola mitad: { $about }. Cada mitad puede dar { $limit }, así que son { $over } de más.
        [leg-turns] Estos consumen { $demand } en una sola mitad: { $about }. Cada mitad puede dar { $limit }, así que son { $over } de más.
        [leg-look] Si todos estos están en una misma mitad, consumen ahí { $demand }: { $about }. Cada mitad puede dar { $limit }, así que son { $over } de más.
        [leg-cord] Si todos estos están en una misma mitad, consumen ahí { $demand }: { $about }. Cada mitad puede dar { $limit }, así que son { $over } de más.
       *[other] Estos consumen juntos { $demand }: { $about }. El generador puede dar { $limit }, así que son { $over } de más.
      }
    .fix-turns = Hágalos funcionar por turnos, o deje uno en casa. En el plan, dé a cada uno sus horas. Empiece por { $first }: nada aquí necesita más.
    .fix-hours = Hágalos funcionar por turnos: la tarjeta muestra cuáles van juntos. O ponga en el plan cuándo funciona cada uno.
    .fix-leg = Pase { $move } a un { -receptacle } de la otra mitad, o haga funcionar estos por turnos.
    .fix-leg-turns = Haga funcionar estos por turnos, o deje uno en casa.
    .fix-leg-look = Averigüe en qué mitad está cada { -receptacle } y anótelo en el plan. Hasta entonces, haga funcionar estos por turnos.
    .fix-leg-cord = Haga funcionar estos por turnos. Ningún plan sabe en qué mitad está cada extremo de un cable. Pregunte a un { -electrician } antes de usarlos juntos.
    .fix-leg-alone = Deje { $about } en casa, use su nivel más bajo o lleve un generador más grande.
    .fix-amps = Hágalos funcionar uno tras otro. En el plan, dé a cada uno sus horas. Empiece por { $first }: nada aquí consume más.
    .fix-alone = { POWER001.fix-leg-alone }
    .fix-amps-alone = { POWER001.fix-leg-alone }
    .fix-life-alone = { life-cannot }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }

POWER002 = { $fix ->
    [alone] El generador no puede arrancar { $about }
    [amps-alone] El generador no puede arrancar { $about }
    [leg-alone] Una mitad del generador no puede arrancar { $about }
    [again] Estos no pueden quedar todos encendidos a la vez
    [amps-again] Estos no pueden quedar todos encendidos a la vez
    [life-alone] Este generador no puede arrancar { $about }
    [life-together] Este generador no puede arrancar todos estos: { $life }
    [life-off] Arrancar cualquier otra cosa puede apagar { $life }
    [life-turns] Arrancar cualquier otra cosa puede apagar { $life }
   *[other] No todos estos pueden arrancar
  }
    .why = { $fix ->
        [alone] Para arrancar, sin nada más encendido, { $first } toma { $demand } por un momento. La potencia máxima del generador aquí es { $limit }, así que faltan { $over }.
        [amps-alone] Para arrancar, sin nada más encendido, { $first } toma { $demand } por un momento. La potencia máxima del generador aquí es { $limit }, así que faltan { $over }.
        [leg-alone] Para arrancar, sin nada más encendido, { $first } toma { $demand } por un momento. Una mitad del generador da { $limit } como máximo, así que faltan { $over }.
        [again] { when-first } la potencia alcanza si { $first } arranca primero, pero lo que tiene termostato o motor vuelve a arrancar solo. Si arranca al final, necesita { $demand }, y el generador da como máximo { $limit }: faltan { $over }. A la vez: { $about }.
        [amps-again] { when-first } la potencia alcanza si { $first } arranca primero, pero lo que tiene termostato o motor vuelve a arrancar solo. Si arranca al final, necesita { $demand }, y el generador da como máximo { $limit }: faltan { $over }. A la vez: { $about }.
        [life-alone] { life-it } Arrancar toma { $demand } por un momento, pero el generador da como máximo { $limit }: faltan { $over }.
        [life-together] { life-on } { when-first } estos necesitan hasta { $demand } cuando uno arranca, pero el generador da como máximo { $limit }: faltan { $over }. A la vez: { $about }.
        [life-off] { life-on } { when-first } estos necesitan hasta { $demand } cuando uno arranca, pero el generador da como máximo { $limit }: faltan { $over }. A la vez: { $about }.
        [life-turns] { life-on } { when-first } estos necesitan hasta { $demand } cuando uno arranca, pero el generador da como máximo { $limit }: faltan { $over }. A la vez: { $about }.
        [amps-fewer] { when-first } estos necesitan hasta { $demand } cuando uno arranca. El generador da como máximo { $limit }, así que faltan { $over } en cualquier orden. A la vez: { $about }.
       *[other] { when-first } estos necesitan hasta { $demand } cuando uno arranca. La potencia máxima aquí es { $limit }, así que faltan { $over } en cualquier orden. A la vez: { $about }.
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

POWER003 = Usted no puede usar { $stranded } de los { $rated } del generador
    .why = El generador puede dar { $rated }. Los { -receptacle(form: "many") } en uso solo pueden entregar { $reachable } ({ $about }).
    .fix-outlet = Para llegar a { $reach }, anote en el plan un cable aparte desde el { -receptacle } “{ $outlet }”, y compruebe otra vez. Nunca conecte entre sí dos { -receptacle(form: "many") }.
    .fix-socket = Para llegar a { $reach }, anote en el plan un segundo cable desde otra toma de “{ $outlet }”, y compruebe otra vez. Nunca conecte entre sí dos { -receptacle(form: "many") }, ni los extremos de dos cables.
    .fix-accept = Cuente con { $reachable }. Con los { -receptacle(form: "many") } y el equipo que puede usar, nada le da más.

POWER004 = { $fix ->
    [late] El { -breaker } de { $first } se disparó por encima de su número
   *[other] El { -breaker } de { $first } se dispara antes de tiempo
  }
    .why = { $fix ->
        [late] Está marcado con { $marked }, pero solo se disparó con { $trips }. Todo { -breaker } deja pasar más por poco tiempo, así que seguimos contando con { $marked }.
       *[other] Está marcado con { $marked }, pero se disparó con { $trips }. Cuente con { $counted } como máximo, pero no se fíe de que vuelva a dispararse ahí.
      }
    .fix-service = Haga que lo revise un taller de servicio o un { -electrician }. Deje de usarlo si huele, se pone marrón o se calienta.
    .fix-late = Cuente con { $marked }, el número que lleva. Si deja pasar más durante una hora, no lo use hasta que lo mire un { -electrician }.

POWER005 = La potencia nominal y la máxima son casi iguales
    .why = El plan dice que da { $rated } de forma continua y { $peak } como máximo. En la mayoría de los generadores la nominal es claramente menor: el número grande de la caja es la máxima.
    .fix-plate = Lea la placa: busque los vatios “running”, “rated” o “continuous” (nominales). Ponga ese número en el plan.

POWER006 = Una mitad del generador lleva casi todo
    .why = { when-first } una mitad lleva { $heavy } y la otra { $light }. Cada mitad da { $leg } y no más, así que la mitad de la potencia queda sin usar. Mire: { $about }.
    .fix-move = Pase { $first } a un { -receptacle } de la otra mitad, si puede.

POWER007 = { $first } puede parar el motor en ralentí económico
    .why = Toma { $starting } para arrancar, y el generador puede dar { $rated }. En ralentí económico el motor gira despacio y necesita uno o dos segundos para acelerar.
    .fix-off = Apague el ralentí económico antes de usar { $first }. Déjelo apagado.

POWER008 = { $fix ->
    [sum] { $sets } generadores funcionan en paralelo
   *[other] Estos generadores en paralelo podrían quemarse
  }
    .why = { $fix ->
        [sum] Juntos pueden dar { $rated }, es decir, { $leg }. El kit entre ellos y los { -receptacle(form: "many") } quizá den menos que eso.
       *[other] Los generadores que no están sincronizados se meten corriente uno al otro y se queman. Un cable con una clavija en cada extremo tiene patas al descubierto y con tensión.
      }
    .fix-apart = Úselos por separado, cada uno con sus propios cables. Conecte entre sí solo generadores inversores de 120 V, con el kit del fabricante para exactamente esos generadores.
    .fix-look = Úselos por separado hasta saberlo. Todos deben ser generadores inversores de 120 V, y el kit debe ser el del fabricante para exactamente esos generadores.
    .fix-sum = Pare todos los motores antes de conectarlos o separarlos. Pregunte al fabricante o a un { -electrician } si el neutro está unido a tierra en más de uno: son demasiados. No conecte usted el neutro con la tierra.

POWER009 = { $fix ->
    [motor] { $about } puede consumir más de lo que admite su clavija
   *[other] { $about } consume más de lo que admite su clavija
  }
    .why = { $fix ->
        [motor] Por sus caballos contamos { $demand }. Su clavija, { $plug }, está hecha para { $limit }.
       *[other] Consume { $demand }. Su clavija, { $plug }, está hecha para { $limit }.
      }
    .fix-plate = Lea otra vez su placa y mire su clavija. No lo use hasta que las dos concuerden, ni si alguien le cambió la clavija.
    .fix-motor = Lea los amperios en su placa y póngalos en el plan. Si son más de { $limit }, no lo use con esta clavija.
