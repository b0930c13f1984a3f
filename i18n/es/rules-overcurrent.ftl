### Rules on overcurrent: what trips, and what only gets hot.

OVER001 = { $fix ->
    [unknown] Ningún { -breaker } conocido protege { $first }
    [splitter] { $first } pone { -receptacle(form: "many") } pequeños detrás de un { -breaker } grande
    [single] { $first } es un solo { -receptacle } de 15 A con un { -breaker } más grande
    [single-look] { $first } puede ser un solo { -receptacle } de 15 A con un { -breaker } más grande
    [own] No se conoce el { -breaker } de { $about }
    [camper] El { -breaker } es demasiado grande para el adaptador { $first }
   *[other] El { -breaker } es demasiado grande para { $first }
  }
    .why = { $fix ->
        [unknown] No se sabe con cuántos amperios se dispara este tramo. { $known ->
            [no] Se supone que la parte más débil está hecha
           *[yes] La parte más débil está hecha
          } para { $rating }. Si ahí nada se dispara, puede arder. Partes: { $about }.
        [own] El propio generador mantiene { $demand } y se para por encima de eso. Lo que alimenta aquí está hecho para { $rating } o más.
        [single-look] Un solo { -receptacle } de { $rating } no debe estar único en un { -breaker } de { $breaker }: nada se dispara antes de que se sobrecargue. Dos o más sí.
        [camper] El adaptador está hecho para { $rating }. El { -breaker } que lo precede solo se dispara por encima de { $breaker }.
       *[other] { $known ->
            [no] Suponemos que el límite de
           *[yes] El límite de
          } { $alone ->
            [yes] { $first }
           *[no] la parte más débil
          } es de { $rating }. { $stops ->
            [set] El generador da hasta { $peak } antes de pararse solo, y el { -breaker } se dispara aún más tarde: la parte se calienta y puede arder.
           *[breaker] El { -breaker } que la precede solo se dispara por encima de { $breaker }. Entre ambos valores nada se dispara: la parte se calienta y puede arder.
          }{ $alone ->
            [yes] {""}
           *[no] {" "}Partes: { $about }.
          }
      }
    .fix-splitter = No use { $any-first }, se enchufe lo que se enchufe. Use una caja de distribución certificada por un laboratorio, con un { -breaker } por { -receptacle }.
    .fix-receptacle = No use { $any-first }. Haga que un { -electrician } revise su { -breaker }.
    .fix-no-breaker = No use { $any-first }. Use una caja de distribución certificada por un laboratorio, con un { -breaker } por { -receptacle }.
    .fix-single = Lo que se enchufe aquí no debe pasar de { $rating }. Haga que un { -electrician } lo revise.
    .fix-single-look = Mire cuántas clavijas admite { $first } y escriba sockets en el plan. Si es una: no pase de { $rating }, y haga que un { -electrician } lo revise.
    .fix-cord = No use { $any-first } aquí. { over-cord } { $first } puede ir donde el { -breaker } sea de { $fits } o menos.
    .fix-thicker = No use { $any-first } aquí. { over-cord }
    .fix-inlet = No use { $any-first } aquí. Debe alimentarse desde un { -receptacle } cuyo { -breaker } sea de { $fits } o menos.
    .fix-wiring = No use { $any-first }: el { -breaker } es demasiado grande para los conductores. No cambie el { -breaker }. Haga que un { -electrician } revise la caja.
    .fix-unknown = Lea el número en el { -breaker } o en el manual y póngalo en el plan. Hasta entonces, no use { $any-first }.
    .fix-free = No enchufe nada en { $any-first }; déjelo vacío.
    .fix-own = Lea el número en el { -breaker } o en el manual y póngalo en el plan.
    .fix-camper = { $main ->
        [yes] No enchufe ahí nada más que la { -camper }.
       *[no] Busque el { -breaker } principal de su { -camper }: debe decir { $rating } o menos. Si no lo encuentra, no use { $any-first }. No enchufe ahí nada más que la { -camper }.
      }

over-cord = { $cord ->
    [gauge] Use un cable marcado 16, 14 o 12 AWG (1,5 mm² o más): un número AWG menor es un conductor más grueso.
    [none] Ningún cable con su clavija está hecho para { $made }: ponga delante una caja, certificada por un laboratorio, con { -breaker(form: "many") } más pequeños.
   *[amps] Use un cable hecho para { $made }.
  }

OVER002 = Demasiado durante horas en { $first }
    .why = { $fix ->
        [rest] Límite de { $first } durante tres horas o más: { $limit }. { when-first } lleva { $demand }: de eso { $long } durante tres horas o más. Intervienen: { $about }.
       *[other] Límite de { $first } durante tres horas o más: { $limit }. { when-first } lleva { $demand }, y de eso { $long } funcionan durante horas. Intervienen: { $about }.
      }
    .fix-move = Pase uno de estos a otro { -breaker }, póngalo más bajo o dele un descanso antes de que pasen tres horas.
    .fix-rest = Dele un descanso a { $first } antes de que pasen tres horas: apague lo que funciona ahí. O póngalo más bajo.
    .fix-life = Nunca ponga más bajo { $life } ni lo pare. Pase todo lo demás a otro { -breaker }, o busque un { -receptacle } que lo soporte durante horas.

OVER003 = { $first } soporta menos de lo que permite su { -breaker }
    .why = { $first } soporta { $limit }, y el { -breaker } que lo precede solo se dispara por encima de { $breaker }. Eso está permitido para este cable, pero ningún { -breaker } le impide sobrecargarlo.
    .fix-add-up = Sume lo que esté enchufado más allá de { $first }. Manténgalo en { $limit } o menos. Lea los amperios en la etiqueta del cable; vale la cifra menor.

OVER005 = { $fix ->
    [set] En un cortocircuito se para el generador, no salta el { -breaker }
    [look] No se sabe si un cortocircuito dispara el { -breaker }
   *[other] El cable es tan largo y delgado que un cortocircuito puede no disparar el { -breaker }
  }
    .why = { $fix ->
        [set] Primero actúa el apagado propio del generador: a un cortocircuito da unos { $fault } como máximo. Un { -breaker } UL 489 de { $breaker } solo se dispara rápido por encima de { $soon }. Lugares: { $about }.
        [look] No se sabe si es un generador inverter; por eso se ha supuesto que no da más de unos { $fault } a un cortocircuito. Un { -breaker } UL 489 de { $breaker } solo se dispara rápido por encima de { $soon }. Lugares: { $about }.
       *[other] En su extremo, un cortocircuito toma solo unos { $fault }. Un { -breaker } UL 489 de { $breaker } solo se dispara rápido por encima de { $soon }. Hasta entonces, el cable y el punto dañado se calientan. Lugares: { $about }.
      }
    .fix-set = Sepa cómo parar el motor. Si de pronto las lámparas se atenúan o algo huele a quemado: pare el motor, desenchufe, después mire.
    .fix-look = Busque la palabra “inverter” en el generador. Si de pronto las lámparas se atenúan o algo huele a quemado: pare el motor, desenchufe, después mire.
    .fix-wire = Use un cable más corto o más grueso. Si algo huele a quemado: pare el motor, desenchufe, después mire.

OVER006 = { $half ->
    [assumed] Quizá demasiado a la vez para { $first }
   *[known] Demasiado a la vez para { $first }
  }
    .why = { $half ->
        [assumed] Si todos estos están del mismo lado del generador, como suponemos, toman { $demand }{ when }, y aguanta { $limit }: { $loads }. { $what }
       *[known] { $planned ->
            [yes] { when-first } estos toman por { $first } { $demand }, y aguanta { $limit }: { $loads }. { $what }
           *[no] Si todos estos se enchufan ahí, toman { $demand }{ when }, y aguanta { $limit }: { $loads }. { $what }
        }
      }
    .fix-turns = Haga funcionar estos por turnos. O pase { $largest } a un { -receptacle } con otro { -breaker }.
    .fix-turns-only = Haga funcionar estos por turnos.
    .fix-hours = Diga en el plan cuándo funciona cada uno. O hágalos funcionar por turnos.
    .fix-leg-look = { POWER001.fix-leg-look }
    .fix-leg-cord = { POWER001.fix-leg-cord }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Enchufe { $life } en { -receptacle(form: "many") } con distintos { -breaker(form: "many") }. Nunca baje ninguno.

# What stops it, at the end of the sentence above.
overload-trips = Su { -breaker } se dispara, y todo lo que hay detrás se queda sin corriente.
overload-early = Su { -breaker } ya se ha disparado por debajo de lo marcado.
overload-late = Su { -breaker } es mayor y se dispara tarde: puede sobrecalentarse e incendiarse.
overload-hot = Ningún { -breaker } conocido lo impide: se calienta.
