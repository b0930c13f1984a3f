### Rules on overcurrent: what trips, and what only gets hot.

OVER001 = { $fix ->
    [unknown] No sabemos qué { -breaker } protege { $first }
    [splitter] { $first } pone { -receptacle(form: "many") } pequeños en un { -breaker } grande
    [single] Un { -receptacle } de 15 A con un { -breaker } más grande: { $first }
    [single-look] El { -breaker } quizá sea demasiado grande para { $first }
    [own] No conocemos el { -breaker } de { $about }
    [camper] El { -breaker } es demasiado grande para el adaptador { $first }
   *[other] El { -breaker } es demasiado grande para { $first }
  }
    .why = { $fix ->
        [unknown] No sabemos con cuántos amperios se dispara este tramo. Si nada se dispara, su parte más débil ({ $known ->
            [no] supusimos
           *[yes] hecha para
          } { $rating }) se sobrecalienta y puede arder.{ $alone ->
            [yes] {""}
           *[no] {" "}Partes: { $about }.
          }
        [own] El generador se para solo por encima de { $demand }, o antes con calor o en altura. Lo que alimenta aquí está hecho para { $rating } o más.
        [single-look] Un { -receptacle } para una sola clavija ({ $rating }) no debe estar solo en un { -breaker } de { $breaker }: se calienta demasiado antes de que algo se dispare. Uno para dos clavijas sí puede.
        [camper] El adaptador está hecho para { $rating }. El { -breaker } que hay antes solo se dispara por encima de { $breaker }: hasta entonces { $main ->
            [yes] cualquier cosa que no sea la { -camper } puede sobrecalentarlo y causar un incendio.
           *[no] el adaptador puede sobrecalentarse y arder.
          }
       *[other] { $known ->
            [no] Supusimos que{" "}
           *[yes] {""}
          }{ $alone ->
            [yes] { $first }
           *[no] { $known ->
                [no] la parte más débil aquí
               *[yes] La parte más débil aquí
              }
          } soporta { $rating }. { $stops ->
            [set] El generador puede hacer pasar hasta { $peak } por ahí antes de que algo se dispare: { $alone ->
                [yes] { $first } puede sobrecalentarse y arder.
               *[no] esa parte puede sobrecalentarse y arder.
              }
           *[breaker] El { -breaker } que hay antes solo se dispara por encima de { $breaker }: hasta entonces { $alone ->
                [yes] { $first } puede sobrecalentarse y arder.
               *[no] esa parte puede sobrecalentarse y arder.
              }
          }{ $alone ->
            [yes] {""}
           *[no] {" "}Partes: { $about }.
          }
      }
    .fix-splitter = No use { $any-first } para nada. Use una caja hecha en fábrica con la marca de un laboratorio de pruebas (certificada), con un { -breaker } por { -receptacle }.
    .fix-receptacle = No use { $any-first }. Haga que un { -electrician } revise su { -breaker }.
    .fix-no-breaker = No use { $any-first }. Use una caja hecha en fábrica con la marca de un laboratorio de pruebas (certificada), con un { -breaker } por { -receptacle }.
    .fix-single = Lo que se enchufe aquí no debe pasar de { $rating }. Haga que un { -electrician } lo revise.
    .fix-single-look = Mire cuántas clavijas admite { $first }. Si admite una, no pase de { $rating }, y haga que un { -electrician } lo revise.
    .fix-cord = No use { $any-first } aquí. { over-cord } Use { $first } solo donde el { -breaker } sea de { $fits } o menos.
    .fix-thicker = No use { $any-first } aquí. { over-cord }
    .fix-inlet = No use { $any-first } aquí. Debe alimentarse solo desde un { -receptacle } cuyo { -breaker } sea de { $fits } o menos.
    .fix-wiring = No use { $any-first }. No cambie el { -breaker }. Haga que un { -electrician } revise la caja.
    .fix-unknown = Lea el número en el { -breaker } o en el manual y póngalo en el plan. Hasta entonces, no use { $any-first }.
    .fix-free = No enchufe nada en { $any-first }: que quede vacío.
    .fix-own = Lea el número en el { -breaker } o en el manual y póngalo en el plan.
    .fix-camper = { $main ->
        [yes] No enchufe ahí nada más que la { -camper }.
       *[no] Busque el { -breaker } principal de su { -camper }: debe decir { $rating } o menos. Si no lo encuentra, no use { $any-first }. No enchufe ahí nada más que la { -camper }.
      }

over-cord = { $cord ->
    [gauge] Use un cable marcado 16, 14 o 12 AWG ({ $measure ->
          [metric] 1.5 mm² o más
         *[customary] calibre
        }): un número AWG menor es un conductor más grueso.
    [none] Ningún cable con su clavija está hecho para { $made }: ponga antes una caja certificada por un laboratorio, con { -breaker(form: "many") } más pequeños.
   *[amps] Use un cable hecho para { $made }.
  }

OVER002 = { $first } lleva demasiado por demasiado tiempo
    .why = { $lasts ->
        [all] Durante tres horas o más, el límite en { $first } es { $limit }. { when-first } lleva { $demand }, todo durante tres horas o más. Mire: { $about }.
        [in-a-row] Durante tres horas o más, el límite en { $first } es { $limit }. { when-first } lleva { $demand }, y con lo que funciona antes y después no baja de { $long } en todo ese tiempo. Mire: { $about }.
       *[part] Durante tres horas o más, el límite en { $first } es { $limit }. { when-first } lleva { $demand }, y de eso { $long } durante tres horas o más. Mire: { $about }.
      }
    .fix-move = Pase uno de estos a otro { -breaker }, póngalo más bajo o dele un descanso antes de que pasen tres horas.
    .fix-rest = Dele un descanso a { $first } antes de que pasen tres horas: apague lo que se alimenta de ahí. O póngalo más bajo.
    .fix-life = Nunca baje ni pare { $life }. Pase todo lo demás de aquí a otro { -breaker }, o busque un { -receptacle } que lo soporte durante horas.

OVER003 = El cable { $first } soporta menos de lo que permite su { -breaker }
    .why = { $first } soporta { $limit }, pero el { -breaker } que hay antes solo se dispara por encima de { $breaker }. Eso está permitido para este cable, pero ningún { -breaker } le impide sobrecargarlo.
    .fix-add-up = Sume lo que esté enchufado más allá de { $first }. Manténgalo en { $limit } o menos. Lea los amperios en la etiqueta del cable; vale la cifra menor.

OVER005 = { $fix ->
    [set] Solo el propio generador detiene un cortocircuito
    [look] Un cortocircuito quizá no dispare ningún { -breaker }
   *[other] El cable quizá impida que se dispare el { -breaker }
  }
    .why = { $fix ->
        [set] El generador se para antes: un cortocircuito toma unos { $fault } como máximo. Un { -breaker } UL 489 de { $breaker } solo se dispara rápido por encima de { $soon }. Lugares: { $about }.
        [look] No sabemos qué tipo de generador es, así que supusimos que un cortocircuito toma { $fault } como máximo. Un { -breaker } UL 489 de { $breaker } solo se dispara rápido por encima de { $soon }. Lugares: { $about }.
       *[other] En su extremo, un cortocircuito toma solo unos { $fault }. Un { -breaker } UL 489 de { $breaker } solo se dispara rápido por encima de { $soon }: hasta entonces el cable se sobrecalienta. Lugares: { $about }.
      }
    .fix-set = Sepa cómo parar el motor. Si de pronto las lámparas se atenúan o algo huele a quemado, pare el motor, y solo después busque la causa.
    .fix-look = Busque la palabra “inverter” en el generador. Si de pronto las lámparas se atenúan o algo huele a quemado, pare el motor, y solo después busque la causa.
    .fix-wire = Use un cable más corto o más grueso. Si algo huele a quemado, pare el motor, y solo después busque la causa.

OVER006 = { $half ->
    [assumed] Quizá haya demasiado encendido en { $first }
   *[known] Hay demasiado encendido en { $first }
  }
    .why = { $half ->
        [assumed] Si todos estos están en una misma mitad, como supusimos, toman { $demand }{ when }, pero su límite es { $limit }: { $loads }. { $what }
       *[known] { $planned ->
            [yes] { when-first } estos toman { $demand } por { $first }, pero su límite es { $limit }: { $loads }. { $what }
           *[no] Si todos estos se enchufan ahí, toman { $demand }{ when }, pero su límite es { $limit }: { $loads }. { $what }
        }
      }
    .fix-turns = Haga funcionar estos por turnos. O pase { $largest } a un { -receptacle } con otro { -breaker }.
    .fix-turns-only = Haga funcionar estos por turnos.
    .fix-hours = Ponga en el plan cuándo funciona cada uno. O hágalos funcionar por turnos.
    .fix-leg-look = { POWER001.fix-leg-look }
    .fix-leg-cord = { POWER001.fix-leg-cord }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Enchufe { $life } en { -receptacle(form: "many") } con distintos { -breaker(form: "many") }. Nunca baje ninguno.

# What stops it, at the end of the sentence above.
overload-trips = Su { -breaker } se dispara, y todo lo que está en él se queda sin corriente.
overload-early = Su { -breaker } ya se ha disparado por debajo de lo marcado.
overload-late = Su { -breaker } es mayor y se dispara tarde: puede sobrecalentarse y arder.
overload-hot = Ningún { -breaker } conocido lo impide: se sobrecalienta y puede arder.
