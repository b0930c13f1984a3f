### Rules on cords.

CORD001 = El cable { $first } está sobrecargado
    .why = { $fix ->
        [plug] La clavija de { $first } está hecha para { $limit }, pero { cord-through }. Ningún { -breaker } se dispara a { $limit }: la clavija se sobrecalienta y puede arder. Mire: { $about }.
        [tag] Los cables como { $first } (conductor: { $wire }) suelen llevar la marca { $limit } con ese largo, pero { cord-through }. Ningún { -breaker } se dispara a { $limit }: el cable se sobrecalienta y puede arder. Mire: { $about }.
        [unwind-less] Enrollado, { $first } (conductor: { $wire }) soporta { $limit } como máximo, pero { cord-through }. Ningún { -breaker } se dispara a { $limit }: el cable se sobrecalienta y puede arder. Mire: { $about }.
       *[other] { $first } (conductor: { $wire }) soporta { $limit } como máximo, pero { cord-through }. Ningún { -breaker } se dispara a { $limit }: el cable se sobrecalienta y puede arder. Mire: { $about }.
      }
    .fix-thicker = Enchufe una parte en otro lugar, o use menos cosas a la vez. O use un cable más grueso: un número AWG menor es un conductor más grueso.
    .fix-unwind = Desenrolle todo el cable antes de usarlo. Enrollado no puede soltar su calor.
    .fix-unwind-less = Desenrolle todo el cable cada vez. Eso no basta: enchufe una parte en otro lugar, o use menos cosas a la vez.
    .fix-plug = { $inside ->
        [yes] Use dentro menos cosas a la vez. Un cable más grueso con la misma clavija no ayuda.
       *[no] Enchufe una parte en otro lugar, o use en él menos cosas a la vez. Un cable más grueso con la misma clavija no ayuda.
      }
    .fix-tag = Lea los amperios en la etiqueta del cable: vale la cifra menor. Enchufe una parte en otro lugar, o use en él menos cosas a la vez. O use un cable más corto o más grueso: un número AWG menor es un conductor más grueso.

cord-through = { $planned ->
    [yes] pasan { $demand } por él
   *[no] si se enchufa todo, pasan { $demand } por él
  }

CORD002 = { $fix ->
    [replace] Cable de interior usado a la intemperie: { $about }
   *[other] Quizá sea un cable de interior: { $about }
  }
    .why = El sol, el frío, los pies y las estacas de las { -tent(form: "many") } rompen la cubierta de un cable de interior. Un conductor pelado en la hierba mojada puede matar.
    .fix-replace = Use un cable marcado para exteriores: “W” en las letras de su tipo, o las palabras “for outdoor use” (para uso exterior).
    .fix-look = Lea lo impreso en la cubierta. Si no lleva una “W” en las letras de su tipo ni dice “for outdoor use” (para uso exterior), use otro cable.

CORD003 = { $fix ->
    [unwind] El cable { $first } queda enrollado mientras se usa
   *[other] No sabemos si el cable { $first } queda enrollado
  }
    .why = Un cable enrollado no suelta su calor y puede fundirse por dentro, y ningún { -breaker } lo nota. Nunca lo use enrollado: así soporta solo { $limit }.
    .fix-unwind = Desenrolle todo el cable y extiéndalo suelto. Si sobra mucho cable, use uno más corto.
    .fix-look = Desenrolle todo el cable cada vez que lo use. Si lo va a hacer, cambie su respuesta.

CORD004 = { $fix ->
    [replace] Sin tierra más allá de { $first }
   *[other] Quizá { $first } no tenga { -ground-wire }
  }
    .why = { $fix ->
        [replace] Más allá, un hilo roto por dentro puede poner toda la tensión en una carcasa de metal. Nada se dispara hasta que alguien la toca.{ $alone ->
            [yes] {""}
           *[no] {" "}Mire: { $about }.
          }
       *[other] Sin { -ground-wire }, un hilo roto por dentro puede poner toda la tensión en una carcasa de metal. Nada se dispara hasta que alguien la toca.{ $alone ->
            [yes] {""}
           *[no] {" "}Mire: { $about }.
          }
      }
    .fix-replace = No use { $first }. Use otro con { -ground-wire } y con el contacto de tierra entero.
    .fix-count = Lea lo impreso en la cubierta: “/3” después del calibre significa tres conductores, incluida la tierra. “/2” no tiene tierra: no lo use.

CORD005 = { $count } cables largos, uno tras otro
    .why = La unión puede soltarse. A medio salir, sus patas quedan al descubierto y con tensión. Los cables: { $about }.
    .fix-one-cord = Use un solo cable que alcance. Hasta entonces, mantenga la unión seca, separada del suelo y atada de modo que no pueda soltarse.

CORD006 = { $fix ->
    [cooler] Con aire a { $air } el cable { $first } no soporta nada
   *[other] El cable { $first } está sobrecargado con este calor
  }
    .why = { $fix ->
        [cooler] Un conductor debe soltar su propio calor, y con aire tan caliente no puede. Cualquier cosa que se enchufe en ese cable es demasiado.
       *[other] Los cables se calculan para aire a { $measure ->
              [metric] 30 °C
             *[customary] 86 °F
          }: con aire a { $air }, este soporta { $limit }, no { $cool }. Pero pasan { $demand } por él, y ningún { -breaker } se dispara a { $limit }. Mire: { $about }.
      }
    .fix-less = Use en él menos cosas mientras haga calor, o use un cable más grueso. Póngalo a la sombra.
    .fix-unwind = { CORD003.fix-unwind }
    .fix-cooler = No enchufe nada en ese cable hasta que refresque.

CORD007 = La regleta { $first } está enchufada en otro cable
    .why = Las regletas son para interiores, no para el extremo de un cable. Sus { $places } tomas dependen de un solo cable delgado. Mire: { $about }.
    .fix-straight = Use un cable para exteriores con varios extremos, o una caja certificada (con la marca de un laboratorio) con { -breaker(form: "many") }. Enchufe una regleta directamente en un { -receptacle }, y manténgala seca.

CORD008 = { $first } calienta durante horas al final de un cable
    .why = Consume { $amps } ({ $watts }) durante horas. Eso calienta cada contacto gastado, y ningún { -breaker } lo nota. { $fix ->
        [warm] Los bomberos dicen: un calefactor se enchufa directamente en un { -receptacle }, nunca en un cable ni en una regleta.
       *[other] Los bomberos lo dicen de los calefactores: nunca en un cable ni en una regleta.
      } Mire: { $about }.
    .fix-warm = Abríguese con ropa y mantas, o use el calefactor menos de tres horas. Si aun así usa un cable: uno solo y grueso, desenrollado, sin más en él que lo que permite el plan. Al cuarto de hora, acerque la mano a cada clavija, y pare si una está caliente.
    .fix-less = Úselo menos de tres horas seguidas. Si lo usa más: un solo cable grueso, desenrollado, sin más en él que lo que permite el plan. Al cuarto de hora, acerque la mano a cada clavija, y pare si una está caliente.

CORD009 = { $fix ->
    [load] Calor o una descarga donde se enchufaba { $first }
   *[other] { $first } se calentó o dio una descarga
  }
    .why = Una clavija caliente o blanda quiere decir que su metal ya no aprieta. Puede fundirse y causar un incendio, y ningún { -breaker } lo nota.
    .fix-cord = Desenchufe { $first } y no lo use más. Si una clavija o un { -receptacle } que tocó está marrón, blando o flojo, tampoco lo use.
    .fix-box = Desenchufe { $first } y no lo use. Haga que lo revise un { -electrician }.
    .fix-outlet = No use { $first } ni ninguna clavija que se calentó en él. Haga que lo revise un { -electrician }.
    .fix-outlet-in-use = Desenchufe { $plugged }. No use { $first } ni ninguna clavija que se calentó en él. Haga que lo revise un { -electrician }.
    .fix-load = Desenchufe { $first } y no lo use hasta que lo revise un taller. Si el { -receptacle } donde estaba está marrón, blando o flojo, tampoco lo use.
