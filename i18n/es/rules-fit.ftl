### Rules on what plugs in where.

FIT001 = { $fix ->
    [load] Ningún { -receptacle } admite la clavija de { $any }
    [bonding-plug] No queda ninguna toma del generador para su clavija de unión
    [bonding-socket] No queda ninguna toma en { $place } para la clavija de unión
    [dead] La toma donde entraría { $any } no le da la corriente que necesita
    [part] { $about } no entra donde debería enchufarse
    [loose] { $place } no está enchufado en nada: no hay corriente para { $about }
    [unusable] No use { $place }, lo enchufe donde lo enchufe
    [misplaced] { $place } no admite la clavija de { $any }
   *[other] No hay toma libre para { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] Puede recalentarse e incendiarse antes de que se dispare un { -breaker }.
            [CORD004] Quizá no tenga { -ground-wire }. Entonces una falla puede poner toda la tensión en una caja de metal.
            [SHOCK005] Une el neutro a tierra por dentro, o quizá. Entonces el metal que usted toca puede llevar corriente.
           *[other] Lo que tiene mal sigue mal en cualquier { -receptacle }.
          }
        [loose] Lo que cuelga de ahí no recibe corriente, y nada de ello se ha revisado.
        [lost] El plan pone en { $place } más de lo que cabe. Nada de lo que hay más allá de { $about } se ha revisado.
        [bonding-plug] El plan dice que hay puesta una clavija de unión neutro-tierra, y ella ocupa una toma. Todas las tomas domésticas del generador están ocupadas.
        [bonding-socket] El plan dice que hay una clavija de unión neutro-tierra en { $place }, y ella ocupa una toma. Otras cosas ocupan todas las de ahí.
        [dead] Algo admite su clavija. Pero no recibe corriente, o da otra tensión que la que dice su forma.
       *[other] Las formas son distintas para que una clavija no dé con voltios o amperios equivocados. Una clavija que no encaja no debe ir ahí.
      }
    .fix-load = Mire la forma de la clavija. Use un cable o una caja, certificados por un laboratorio, que tengan el { -receptacle } y el { -breaker } correctos. Nunca lime, doble ni corte una clavija.
    .fix-dead = Déjelo desenchufado. Use un cable o caja certificado por un laboratorio que tenga el { -receptacle } y el { -breaker } correctos. Nunca cambie una clavija.
    .fix-part = Mire las dos formas y corrija el plan, o use un cable, certificado por un laboratorio, que encaje en ambas. Nunca lime, doble ni corte una clavija.
    .fix-lost = Mire dónde se enchufa de verdad { $about } y corrija el plan. { $fits ->
        [yes] Si allí no cabe, use { $sockets }, y nunca un derivador ni un adaptador.
       *[no] { $free ->
            [yes] Si allí no cabe, déjelo desenchufado y enchufe { $past } en { $others }. Nunca use un derivador ni un adaptador.
           *[no] { $household ->
                [yes] Para hacer sitio, use solo un cable certificado de tres salidas con { -gfci }, nunca un derivador o un adaptador.
               *[no] Si allí no cabe, use otro { -receptacle } o déjelo desenchufado, y nunca un derivador ni un adaptador.
              }
          }
      }
    .fix-loose = Enchufe { $place } { $fits ->
        [no] donde encaje
       *[yes] en { $sockets }
      }{ $inside ->
        [yes] {""}
       *[no] , o enchufe { $about } { $free ->
            [no] en otro sitio
           *[yes] en { $others }
          }
      }. Escríbalo en el plan y revise otra vez.
    .fix-misplaced = { $free ->
        [no] Los otros donde entra están ocupados o no pueden con él: déjelo desenchufado.
       *[yes] Use en su lugar { $others }: allí entra la clavija.
      } Corrija el plan. Nunca lime, doble ni corte una clavija.
    .fix-unusable = No use { $place }. Quítelo del plan, y enchufe en otro sitio lo que necesita corriente.
    .fix-bonding-plug = Deje una toma para ella, o diga en el plan que no se pone. Nunca la ponga en un derivador, un adaptador o un cable.
    .fix-bonding-socket = { FIT001.fix-bonding-plug }

FIT002 = { $first } parece más grande de lo que es
    .why = Termina en una forma { $shape }, pero su clavija está hecha para { $plug }.
    .fix-plan = Más allá de { $first }, cuente con { $limit }{ $hours ->
        [yes] {" "}durante tres horas o más, y con { $short } durante menos
       *[no] {""}
      }. Márquelo así.

FIT003 = { $fix ->
    [look] Quizá no haya { $twice } en { $about }
   *[other] { $about }: no da los voltios que su forma promete
  }
    .why = { $fix ->
        [look] Es solo para { $twice }. Muchos generadores pequeños no los dan: entonces tiene tensión, pero no la correcta.
       *[other] Un { -receptacle } de 240 V necesita ambos lados de un generador de 120/240 V: con uno solo tiene 120 V. Uno de 120 V necesita un neutro. Lo que alimenta a este no lo tiene, y ningún adaptador puede crearlo. No está sin tensión.
      }
    .fix-leave = No enchufe nada en él y trátelo como si tuviera tensión. Use un { -receptacle } que tenga lo que necesita. Nunca cambie una clavija para que encaje.
    .fix-look = Busque “{ $twice }” en la placa del generador. Hasta entonces, no enchufe nada en él y trátelo como si tuviera tensión.

FIT004 = { $fix ->
    [too-large] { $first } pide más de lo que soporta su { -receptacle }
    [life-large] Ningún { -receptacle } de aquí soporta { $any }
    [refused] Ningún { -receptacle } que se pueda usar para { $any }
    [refused-here] El plan tiene una toma equivocada para { $about }
   *[other] No hay { -receptacle } libre que se pueda usar para { $any }
  }
    .why = { $fix ->
        [too-large] Pide { $demand }. { $planned ->
            [yes] Su { -receptacle } del plan soporta { $limit }.
           *[other] El mejor { -receptacle } que puede usar soporta { $limit }.
        }
        [life-large] { life-it } Pide { $demand }. El mejor { -receptacle } que puede usar soporta { $limit }.
        [life-room] { life-it } Todos los { -receptacle(form: "many") } que se le permiten están ocupados, o con lo demás ya no soportan bastante.
        [refused] { $planned ->
            [yes] No se debe enchufar donde lo pone el plan, y ninguna toma libre que se pueda usar puede con ello.
           *[other] Algo falla en cada { -receptacle } que podría con ello.
        }
        [refused-here] Donde lo pone el plan no se debe enchufar. Libre, y puede con ello: { $free }.
       *[other] Todos los { -receptacle(form: "many") } que se le permiten están ocupados, o con lo demás ya no soportan bastante.
      }
    .fix-too-large = Déjelo en casa, use su nivel más bajo, o use un { -receptacle } que soporte { $demand }.
    .fix-no-room = Deje en casa { $about }, o algo de lo que está enchufado donde iría. Después compruebe otra vez.
    .fix-life-large = Use un { -receptacle } que soporte { $demand }. Si no lo hay: { life-cannot }
    .fix-life-room = Deje otra cosa en casa por él, y compruebe otra vez.
    .fix-refused = Resuelva antes lo que falla ahí, o déjelo en casa.
    .fix-refused-here = Enchúfelo en { $free }, anótelo en el plan y compruebe otra vez. O resuelva antes lo que falla en su toma.

FIT005 = Aquí hay dos formas fáciles de confundir: { $one } y { $other }
    .why = A oscuras, la mano toma una por la otra. { $one } da { $volts }, { $other } da { $volts-other }. { -receptacle(form: "Many") }: { $about }.
    .fix-look = Pegue las etiquetas impresas. Mire la cara dibujada antes de empujar. Una clavija que pide fuerza está en el lugar equivocado.

FIT006 = { $fix ->
    [adapter] { $about } da { $twice } donde se esperan { $volts }
    [leave] { $about } necesita { $twice } y no los recibe
    [look] No se sabe si el generador da { $twice }, que { $about } necesita
   *[other] { $about } quizá reciba solo { $volts }
  }
    .why = { $fix ->
        [adapter] Recibe { $twice } y ningún neutro. Un aparato para { $volts } toma ahí cuatro veces su potencia: revienta o arde antes de que se dispare un { -breaker }.
        [leave] Su clavija dice { $twice }. Le llegan { $volts } como máximo. Un motor zumba, no arranca y se calienta. Ningún adaptador hace { $twice } de { $volts }.
        [look] Su clavija dice { $twice }. Muchos generadores pequeños dan solo { $volts }. Ningún adaptador hace { $twice } de eso.
       *[other] Su clavija toma { $volts } y { $twice }. Aquí llegan solo { $volts }; sus partes de { $twice } no funcionan.
      }
    .fix-adapter = No enchufe nada ahí. Deje en casa el adaptador o cable que termina así.
    .fix-leave = Déjelo en casa, o lleve un generador que dé { $twice }. Nunca cambie una clavija, y nunca una dos { -receptacle(form: "many") }.
    .fix-look = Busque “240 V” en la placa del generador. Hasta entonces, no lo enchufe. Nunca cambie una clavija, y nunca una dos { -receptacle(form: "many") }.
    .fix-part = Vea en su manual si puede funcionar solo con { $volts }. Si el manual no lo dice, no lo enchufe.

FIT007 = { $fix ->
    [plate] { $about } tiene ranuras para { $twice }, y el plan dice solo { $volts }
    [maybe] Aquí quizá haya { $twice }: { $about }
   *[other] Aquí hay { $twice }: { $about }
  }
    .why = { $fix ->
        [plate] Una de las dos cosas no es así. Si el generador da { $twice }, cada { -receptacle } de { $volts } tiene la mitad de su potencia, y las cifras de este plan la cuentan toda.
        [maybe] No se sabe si el generador da { $volts } o { $twice }. Lo que es para { $volts } se quema con { $twice }.
        [these] Los necesitan: { $needs }. Todo lo demás da { $volts }.
       *[other] Nada en el plan los necesita. Todo lo demás da { $volts }.
      }
    .fix-nothing = Enchufe ahí solo cables, cajas y adaptadores certificados para 120/240 V. Ponga la etiqueta impresa.
    .fix-these = Enchufe ahí solo lo que según su placa es para { $twice }, y cables, cajas y adaptadores certificados para 120/240 V.
    .fix-maybe = Busque “120/240 V” en la placa del generador. Hasta entonces, enchufe ahí solo cables, cajas y adaptadores certificados para 120/240 V.
    .fix-plate = Antes de arrancar el motor, busque “120 V” o “120/240 V” en la placa del generador. Si dice “120/240 V”, póngalo en el plan e imprima etiquetas y tarjeta nuevas.
