### Rules on cords.

CORD001 = A { $first } se le pide más de lo que soporta
    .why = { $fix ->
        [plug] La clavija de { $first } está hecha para { $limit }. { cord-through }. Ningún { -breaker } se dispara a { $limit }: la clavija se sobrecalienta y puede arder. Intervienen: { $about }.
        [tag] Los cables como { $first } (conductor: { $wire }) suelen llevar la marca { $limit } con ese largo. { cord-through }. Ningún { -breaker } se dispara a { $limit }: el cable se sobrecalienta y puede arder. Intervienen: { $about }.
        [unwind-less] Enrollado, { $first } (conductor: { $wire }) soporta { $limit } como máximo. { cord-through }. Ningún { -breaker } se dispara a { $limit }: el cable se sobrecalienta y puede arder. Intervienen: { $about }.
       *[other] { $first } (conductor: { $wire }) soporta { $limit } como máximo. { cord-through }. Ningún { -breaker } se dispara a { $limit }: el cable se sobrecalienta y puede arder. Intervienen: { $about }.
      }
    .fix-thicker = Enchufe una parte en otro lugar, use menos cosas a la vez en él o use un cable más grueso (un número AWG menor es más grueso).
    .fix-unwind = Desenrolle todo el cable antes de usarlo. Enrollado no puede soltar su calor.
    .fix-unwind-less = Desenrolle todo el cable cada vez. No basta: enchufe una parte en otro lugar o use menos cosas a la vez en él.
    .fix-plug = { $inside ->
        [yes] Use dentro menos cosas a la vez. La clavija fija este límite; un cable más grueso con la misma clavija no ayuda.
       *[no] Enchufe una parte en otro lugar o use menos cosas a la vez en él. La clavija fija este límite; un cable más grueso con la misma clavija no ayuda.
      }
    .fix-tag = Lea los amperios en la etiqueta del cable; vale la cifra menor. Enchufe una parte en otro lugar, use menos cosas a la vez en él o use un cable más corto o más grueso (un número AWG menor es más grueso).

cord-through = { $planned ->
    [yes] Se le piden { $demand }
   *[no] Si todo se enchufa ahí, se le piden { $demand }
  }

CORD002 = { $fix ->
    [replace] Cable de interior usado a la intemperie: { $about }
   *[other] No se sabe si este cable es para exteriores: { $about }
  }
    .why = Una cubierta de interior se agrieta con el sol y el frío y deja entrar agua. Los pies y las estacas de las { -tent(form: "many") } la cortan. Un conductor pelado en la hierba mojada puede matar.
    .fix-replace = Use un cable marcado para exteriores: “W” en las letras de su tipo, o las palabras “for outdoor use” (para uso exterior).
    .fix-look = Lea lo impreso en la cubierta. Si no lleva una “W” en las letras de su tipo ni dice “for outdoor use” (para uso exterior), use otro cable.

CORD003 = { $fix ->
    [unwind] { $first } queda enrollado mientras se usa
   *[other] No se sabe si { $first } queda enrollado
  }
    .why = Un cable enrollado no puede soltar su calor y se funde por dentro. No lo use enrollado: su límite es entonces de solo { $limit }. Ningún { -breaker } sabe que está enrollado.
    .fix-unwind = Desenrolle todo el cable y extiéndalo suelto. Si sobra mucho cable, use uno más corto.
    .fix-look = Desenrolle todo el cable cada vez, e indíquelo en el plan.

CORD004 = { $fix ->
    [replace] La tierra termina en { $first }
   *[other] No se sabe si { $first } tiene { -ground-wire }
  }
    .why = { $fix ->
        [replace] Más allá de ese punto, una avería puede poner toda la tensión en una carcasa de metal, y nada se dispara hasta que alguien la toca. Intervienen: { $about }.
       *[other] Sin { -ground-wire }, una avería puede poner toda la tensión en una carcasa de metal, y nada se dispara hasta que alguien la toca. Intervienen: { $about }.
      }
    .fix-replace = No use { $first }. Use un cable con { -ground-wire } y con el contacto de tierra entero.
    .fix-count = Lea lo impreso en la cubierta: “/3” después del calibre significa tres conductores, incluida la tierra. “/2” no tiene tierra: no lo use.

CORD005 = { $count } cables largos, uno tras otro
    .why = La unión queda en el suelo y puede soltarse. A medio salir, sus patas quedan al descubierto y con tensión. Uno tras otro: { $about }.
    .fix-one-cord = Use un solo cable que alcance. Hasta entonces, mantenga la unión separada del suelo, lejos de la humedad y atada de modo que no pueda soltarse.

CORD006 = { $fix ->
    [cooler] Con aire a { $air } el cable { $first } no soporta nada
   *[other] A { $first } se le pide demasiado con el aire tan caliente
  }
    .why = { $fix ->
        [cooler] Un conductor debe soltar su propio calor. Con aire tan caliente no puede: todo lo que cuelgue de ese cable es demasiado.
       *[other] Los cables se calculan para aire a 86 °F (30 °C). Con aire a { $air }, este soporta { $limit }, no { $cool }. Se le piden { $demand }. Ningún { -breaker } se dispara a { $limit }. Intervienen: { $about }.
      }
    .fix-less = Haga funcionar menos cosas en él mientras haga calor, o use un cable más grueso. Póngalo a la sombra.
    .fix-unwind = { CORD003.fix-unwind }
    .fix-cooler = No enchufe nada en ese cable hasta que refresque.

CORD007 = La regleta { $first } está enchufada en otro cable
    .why = Las regletas son para interiores y para un { -receptacle }, no para el extremo de un cable. Sus { $places } tomas dependen de un solo cable delgado. Intervienen: { $about }.
    .fix-straight = Use un cable para exteriores con varios extremos, o una caja certificada con { -breaker(form: "many") }. Enchufe una regleta directamente en un { -receptacle } del generador o de una caja, y manténgala seca.

CORD008 = { $first } calienta durante horas al final de un cable
    .why = Consume { $amps } ({ $watts }) durante horas. Eso calienta cada contacto gastado del camino, y ningún { -breaker } lo nota. { $fix ->
        [warm] Los bomberos dicen: un calefactor se enchufa directamente en un { -receptacle }, nunca en un cable ni en una regleta.
       *[other] Los bomberos lo dicen de los calefactores: nunca en un cable ni en una regleta.
      } Intervienen: { $about }.
    .fix-warm = Abríguese con ropa y ropa de cama, o úselo menos de tres horas. Si lo usa: un solo cable grueso, desenrollado, sin más en él que lo que permite el plan. Mire cada clavija al cuarto de hora: si una está caliente, pare.
    .fix-less = Úselo menos de tres horas seguidas. Si lo usa más: un solo cable grueso, desenrollado, sin más en él que lo que permite el plan. Mire cada clavija al cuarto de hora: si una está caliente, pare.

CORD009 = { $fix ->
    [load] Calor o descarga donde estaba enchufado { $first }
   *[other] { $first } se calentó o dio una descarga
  }
    .why = Una clavija caliente o blanda quiere decir que su metal ya no aprieta. Puede derretirse y causar un incendio, y ningún { -breaker } lo nota.
    .fix-cord = Desenchufe { $first } y no lo use más: use otro cable. Si una clavija o un { -receptacle } que tocó está pardo, blando o flojo, tampoco lo use.
    .fix-box = Desenchufe { $first } y no lo use. Haga que lo revise un { -electrician }.
    .fix-outlet = No use { $first } ni la clavija que estaba en él. Haga que lo revise un { -electrician }.
    .fix-load = Desenchufe { $first } y no lo use. Hágalo revisar o use otro. Si la toma donde estaba está parda, blanda o floja, tampoco la use.
