### Rules on what plugs in where.

FIT001 = { $fix ->
    [load] Ningún { -receptacle } admite la clavija de { $any }
    [bonding-plug] No queda ninguna toma para la clavija de unión
    [dead] Ningún { -receptacle } donde entra { $any } puede con ello
    [part] { $about } no entra donde debería enchufarse
    [loose] Sin enchufar: { $place }. No hay corriente para { $about }
    [unusable] No use { $place }, se enchufe donde se enchufe
    [misplaced] { $place } no admite la clavija de { $any }
    [unknown] No use { $first } hasta saber { $of ->
        [plug] su clavija
        [outlets] sus { -receptacle(form: "many") }
       *[both] sus formas
    }
   *[other] No hay toma libre para { $any }
  }
    .why = { $fix ->
        [unusable] { $rule ->
            [OVER001] Puede sobrecalentarse y arder antes de que se dispare un { -breaker }.
            [CORD004] Quizá no tenga { -ground-wire }. Entonces un hilo roto por dentro puede poner toda la tensión en una carcasa de metal.
            [SHOCK005] Une el neutro a tierra por dentro, o quizá lo haga. Entonces el metal que usted toca puede llevar corriente.
           *[other] Lo que tiene mal sigue mal en cualquier { -receptacle }.
          }
        [unknown] No sabemos { $of ->
            [plug] qué clavija tiene
            [outlets] qué { -receptacle(form: "many") } tiene
           *[both] qué clavija ni qué { -receptacle(form: "many") } tiene
        }, así que no lo hemos revisado, ni nada de lo que hay más allá.
        [loose] Lo que se enchufa ahí no recibe corriente, y no lo hemos revisado.
        [lost] El plan pone en { $place } más de lo que cabe. No hemos revisado nada de lo que hay más allá de { $about }.
        [bonding-plug] El plan dice que hay puesta una clavija de unión neutro-tierra, y ella ocupa una toma. Todas las tomas domésticas del generador están ocupadas.
        [dead] Hay donde entra su clavija. Pero ahí no llega corriente, o llega otra tensión que la que dice su forma.
       *[other] Una clavija que no encaja no debe ir ahí: la forma evita los voltios o amperios equivocados.
      }
    .fix-load = Use un cable o una caja certificados que tengan el { -receptacle } y el { -breaker } correctos. Nunca lime, doble ni corte una clavija.
    .fix-dead = Déjelo desenchufado. Use un cable o una caja certificados con el { -receptacle } y el { -breaker } correctos. Nunca cambie una clavija.
    .fix-part = { $adapted ->
        [yes] Enchúfelo en { $outlet } con un adaptador certificado por un laboratorio ({ $plug } a { $end }), y póngalo en el plan.
       *[no] Mire las dos formas y corrija el plan, o use un cable, certificado por un laboratorio, que encaje en ambas.
      } Nunca lime, doble ni corte una clavija.
    .fix-lost = Mire dónde se enchufa de verdad { $about } y corrija el plan. { $fits ->
        [yes] Si allí no cabe, use { $sockets }, y nunca un derivador ni un adaptador.
       *[no] { $free ->
            [yes] Si allí no cabe, enchufe { $past } en { $others }, nunca en un derivador ni en un adaptador.
           *[no] { $household ->
                [yes] Para hacer sitio, use solo un cable certificado de tres salidas con { -gfci }, nunca un derivador o un adaptador.
               *[no] Si allí no cabe, use otro { -receptacle } o déjelo desenchufado, y nunca un derivador ni un adaptador.
              }
          }
      }
    .fix-loose = Enchufe { $place } { $fits ->
        [no] { $adapted ->
            [yes] en { $outlet } con un adaptador certificado por un laboratorio ({ $plug } a { $end })
           *[no] donde encaje
          }
       *[yes] en { $sockets }
      }{ $inside ->
        [yes] {""}
       *[no] , o enchufe { $about } { $free ->
            [no] en otro { -receptacle }
           *[yes] en { $others }
          }
      }. Escríbalo en el plan y compruebe otra vez.
    .fix-misplaced = { $free ->
        [no] Los otros donde entra están ocupados o no pueden con él: déjelo desenchufado.
       *[yes] Use en su lugar { $others }: allí entra la clavija.
      } Corrija el plan. Nunca lime, doble ni corte una clavija.
    .fix-unusable = No use { $place }. Quítelo del plan, y enchufe en otro sitio lo que necesita corriente.
    .fix-unknown = Tape su clavija con cinta: NO USAR. Mírelo por fuera, y ponga en el plan lo que vea.
    .fix-bonding-plug = Deje una toma para ella, o diga en el plan que no se pone. Nunca la ponga en un derivador, un adaptador o un cable.

FIT002 = { $first } soporta menos de lo que dice su forma
    .why = Termina en una forma { $shape }, pero su clavija está hecha para { $plug }.
    .fix-plan = Más allá de { $first }, cuente con { $limit }{ $hours ->
        [yes] {" "}durante tres horas o más, y con { $short } durante menos tiempo
       *[no] {""}
      }. Márquelo así.

FIT003 = { $fix ->
    [look] Quizá no haya { $twice } en { $about }
   *[other] { $about }: tensión equivocada para su forma
  }
    .why = { $fix ->
        [look] Es solo para { $twice }. Muchos generadores pequeños no los dan: entonces tiene tensión, pero no la correcta.
       *[other] Necesita las dos mitades de un generador de 120/240 V, o un neutro, y le faltan: ningún adaptador puede añadirlos. Pero tiene tensión.
      }
    .fix-leave = No enchufe nada en él y trátelo como si tuviera tensión. Nunca cambie una clavija para que encaje.
    .fix-look = Busque “{ $twice }” en la placa del generador. Hasta entonces, no enchufe nada en él y trátelo como si tuviera tensión.

FIT004 = { $fix ->
    [too-large] { $first } necesita más de lo que puede dar su { -receptacle }
    [life-large] Ningún { -receptacle } de aquí puede con { $any }
    [refused] Ningún { -receptacle } que se pueda usar para { $any }
    [refused-here] El plan tiene un { -receptacle } equivocado para { $about }
   *[other] No hay { -receptacle } libre que se pueda usar para { $any }
  }
    .why = { $fix ->
        [too-large] Necesita { $demand }. { $planned ->
            [yes] Su { -receptacle } del plan da { $limit }.
           *[other] El mejor { -receptacle } que puede usar da { $limit }.
        }
        [life-large] { life-it } Necesita { $demand }, pero el mejor { -receptacle } que puede usar da { $limit }.
        [life-room] { life-it } Todos los { -receptacle(form: "many") } para ello están ocupados, les queda muy poco o no tienen { -gfci }.
        [refused] { $planned ->
            [yes] No debe enchufarse donde lo pone el plan. Ningún { -receptacle } libre que se pueda usar puede con ello.
           *[other] Algo está mal en cada { -receptacle } que podría con ello.
        }
        [refused-here] No debe enchufarse donde lo pone el plan. Libre, y puede con ello: { $free }.
       *[other] Todos los { -receptacle(form: "many") } para ello están ocupados, les queda muy poco o no tienen { -gfci }.
      }
    .fix-too-large = Déjelo en casa, use su nivel más bajo, o use un { -receptacle } que pueda dar { $demand }.
    .fix-no-room = Deje { $about } en casa, o deje otra cosa en casa para liberarle un { -receptacle }. Después compruebe otra vez.
    .fix-life-large = Use un { -receptacle } que pueda dar { $demand }. Si no lo hay: { life-cannot }
    .fix-life-room = Deje otra cosa en casa para hacerle sitio, y compruebe otra vez.
    .fix-refused = { $life ->
        [yes] Resuelva antes lo que está mal ahí. Hasta entonces, úselo con una batería hecha para ello, y no confíe en este generador.
       *[no] Resuelva antes lo que está mal ahí, o déjelo en casa.
      }
    .fix-refused-here = Enchúfelo en { $free }, anótelo en el plan y compruebe otra vez. O resuelva antes lo que está mal en su { -receptacle }.

FIT005 = Fáciles de confundir: { $one } y { $other }
    .why = A oscuras puede tomar una forma por la otra. { $one } da { $volts }, y { $other } da { $volts-other }. { -receptacle(form: "Many") }: { $about }.
    .fix-look = Pegue las etiquetas impresas. Mire la cara dibujada antes de empujar. Si una clavija pide fuerza, está en el lugar equivocado.

FIT006 = { $fix ->
    [adapter] { $about } da { $twice } donde se esperan { $volts }
    [leave] { $about } necesita { $twice } y no los recibe
    [look] { $about } necesita { $twice } y quizá no los reciba
   *[other] { $about } quizá reciba solo { $volts }
  }
    .why = { $fix ->
        [adapter] Recibe { $twice } y ningún neutro. Un aparato para { $volts } toma ahí cuatro veces su potencia, y arde antes de que se dispare un { -breaker }.
        [leave] { $inside ->
            [yes] Está hecho para { $twice }
           *[no] Su clavija dice { $twice }
          }, pero le llegan { $volts } como máximo, y ningún adaptador puede cambiar eso. Un motor zumba, no arranca y se sobrecalienta.
        [look] { $inside ->
            [yes] Está hecho para { $twice }
           *[no] Su clavija dice { $twice }
          }. Muchos generadores pequeños dan solo { $volts }, y ningún adaptador puede cambiar eso.
       *[other] { $inside ->
            [yes] Toma { $volts } y { $twice }
           *[no] Su clavija toma { $volts } y { $twice }
          }. Aquí llegan solo { $volts }, así que sus partes de { $twice } no funcionan.
      }
    .fix-adapter = No enchufe nada ahí. Deje en casa el adaptador o cable que termina así.
    .fix-leave = { $inside ->
        [yes] Déjelo apagado
       *[no] Déjelo en casa
      }, o lleve un generador que dé { $twice }. Nunca cambie una clavija, y nunca conecte entre sí dos { -receptacle(form: "many") }.
    .fix-look = Busque “240 V” en la placa del generador. Hasta entonces, déjelo { $inside ->
        [yes] apagado
       *[no] desenchufado
      }. Nunca cambie una clavija ni conecte entre sí dos { -receptacle(form: "many") }.
    .fix-part = Vea en su manual si puede funcionar solo con { $volts }. Si el manual no lo dice, déjelo { $inside ->
        [yes] apagado
       *[no] desenchufado
      }.

FIT007 = { $fix ->
    [plate] { $about } tiene ranuras para { $twice }, y el plan dice solo { $volts }
    [maybe] Aquí quizá haya { $twice }: { $about }
   *[other] Aquí hay { $twice }: { $about }
  }
    .why = { $fix ->
        [plate] Una de las dos cosas no es así. Todas las cifras aquí son para { $volts }: si da { $twice }, cada { -receptacle } de { $volts } tiene solo la mitad de su potencia.
        [maybe] No sabemos si el generador da { $volts } o { $twice }. Lo que es para { $volts } se quema con { $twice }.
        [these] Los necesitan: { $needs }. Los demás { -receptacle(form: "many") } dan { $volts }.
       *[other] Nada en el plan los necesita. Los demás { -receptacle(form: "many") } dan { $volts }.
      }
    .fix-nothing = Enchufe ahí solo cables, cajas y adaptadores certificados para 120/240 V. Ponga la etiqueta impresa.
    .fix-these = Enchufe ahí solo lo que según su placa es para { $twice }, y cables, cajas y adaptadores certificados para 120/240 V.
    .fix-maybe = Busque “120/240 V” en la placa del generador. Hasta entonces, enchufe ahí solo cables, cajas y adaptadores certificados para 120/240 V.
    .fix-plate = Antes de arrancar el motor, busque “120 V” o “120/240 V” en la placa del generador. Si dice “120/240 V”, póngalo en el plan e imprima etiquetas y tarjeta nuevas.
