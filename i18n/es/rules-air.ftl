### Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] No sabemos a qué distancia está la gente
   *[other] El escape está a solo { $distance } de la gente
  }
    .why = El monóxido de carbono no huele, y mata a quien duerme. Mantenga el escape a { $ample } o más de la gente, también de los vecinos: más cerca puede matar, y a menos de { $least } es peor.
    .fix-move = Pare el motor. Ya frío, lleve el generador al menos a { $ample } de cualquier { -tent }, vehículo, puerta o ventana. Dirija el escape lejos de la gente.
    .fix-closed = Si funciona en un lugar cerrado: todos fuera, llame al { $call }, y que solo los bomberos entren a pararlo. Solo si funciona al aire libre, párelo usted. Ya frío, póngalo al menos a { $ample } de cualquier { -tent }, vehículo, puerta o ventana, con el escape lejos de la gente.
    .fix-farther = Pare el motor. Ya frío, lleve el generador a { $ample } o más, y dirija el escape lejos de la gente. El viento puede llevar los gases a más de { $least }.
    .fix-measure = Mida desde el escape hasta la { -tent }, el vehículo, la puerta o la ventana más cercana, también de los vecinos. Si hay menos de { $ample }, mueva el generador antes de arrancarlo.

AIR002 = { $fix ->
    [look] Quizá alguien duerma sin alarma de monóxido de carbono
   *[other] Alguien duerme sin alarma de monóxido de carbono
  }
    .why = El viento puede cambiar y traerle los gases de escape. Solo una alarma de monóxido de carbono lo despierta: una de humo, no.
    .fix-alarm = Ponga una alarma de monóxido de carbono de pilas en cada { -tent } y { -camper } donde duerma gente. Presione su botón de prueba cada noche: debe sonar. Si suena en otro momento, o alguien está mareado, débil, con náuseas o con dolor de cabeza: todos al aire libre, y llame al { $call }.
    .fix-look = Busque en cada { -tent } y { -camper } una alarma de monóxido de carbono de pilas. Presione su botón de prueba: debe sonar. Si suena en otro momento, o alguien está mareado, débil, con náuseas o con dolor de cabeza: todos al aire libre, y llame al { $call }.

AIR003 = { $fix ->
    [out] El generador funciona en un lugar cerrado
    [uncover] El generador está debajo de algo o contra algo
    [look] Quizá el generador esté encerrado o cubierto
   *[other] Usted no dijo dónde está el generador
  }
    .why = { $fix ->
        [out] Los gases de escape se acumulan en una { -tent }, porche, vehículo o cobertizo, incluso con la puerta abierta. Llevan monóxido de carbono: no se huele, y mata.
        [uncover] Las cubiertas y las paredes retienen los gases de escape, y el monóxido de carbono que llevan mata. Una lona sobre el generador puede fundirse y arder.
       *[other] No lo sabemos, así que supusimos lo peor. Los gases de escape se acumulan en una { -tent }, porche, vehículo o cobertizo, incluso con la puerta abierta, y matan.
      }
    .fix-out = Si funciona ahora en un lugar cerrado: todos fuera, llame al { $call }, y que solo los bomberos entren a pararlo. Nunca lo use en una { -tent }, un porche o un vehículo: solo al aire libre, con { $clear } libres por todos lados.
    .fix-uncover = Pare el motor y quite la lona o la funda. Aleje el generador de toldos y paredes: { $clear } libres por todos lados. Un techo debe estar bien por encima de él y abierto por todos lados.
    .fix-look = Vaya y mire antes de arrancarlo. Póngalo al aire libre, o bajo un techo alto y abierto por todos lados, con { $clear } libres alrededor. Un toldo o una carpa plegable no es un techo alto.
    .fix-choose = Póngalo al aire libre, o bajo un techo alto y abierto por todos lados, con { $clear } libres alrededor. Un toldo o una carpa plegable no es un techo alto. Después, dígalo en el plan.

AIR004 = Nada protege al generador de la lluvia
    .why = El agua en sus { -receptacle(form: "many") } puede darle una descarga. Si lo mete en una { -tent } o un porche, los gases de escape matan.
    .fix-roof = Si llueve, pare el motor, y vuelva a instalarlo solo bajo un techo alto, abierto por todos lados. Nunca ponga una lona sobre él ni justo encima.

AIR005 = { $fix ->
    [bedside] El cable hasta { $about } es demasiado corto
    [at-set] Sin cable, en el propio generador: { $about }
    [stated] El cable hasta { $about } no llega adonde está la gente
    [measure] No sabemos si los cables alcanzan
    [no-cord] Sin cable, en el propio generador: { $about }
   *[longer] Los cables son demasiado cortos
  }
    .why = { $fix ->
        [bedside] Por lo que sabemos llega a { $reach }, pero el generador debe estar a { $needed } de la persona. Alguien acercará el generador, y los gases de escape matan.
        [at-set] Mantenga el generador a { $needed } de la persona que necesita el aparato. Sin un cable, alguien acercará el generador.
        [stated] Llega a { $reach }, pero el plan dice que la gente está a { $needed }. Alguien acercará el generador.
        [measure] Por lo que sabemos llegan a { $reach }, pero el generador debe estar a { $needed } de la gente. Si son más cortos, alguien acercará el generador.
        [no-cord] Mantenga el generador al menos a { $needed } de la gente. Sin un cable, alguien acercará el generador.
       *[longer] Llegan a { $reach }, pero el generador debe estar a { $needed } de la gente. Alguien acercará el generador, y los gases de escape matan.
      }
    .fix-longer = Lleve un solo cable bastante largo, y bastante grueso para lo que se enchufa en él. Nunca acerque el generador en lugar de eso.
    .fix-no-cord = { $open ->
        [no] Lleve un cable con GFCI (botones TEST y RESET), bastante largo y bastante grueso.
       *[other] Enchufe estas cosas en el generador y luego aléjese, hacia el lado de donde viene el viento. O lleve un solo cable bastante largo y bastante grueso.
      } Nunca acerque el generador en lugar de eso.
    .fix-measure = Mida los cables a pasos y ponga su largo en el plan. Nunca acerque el generador en lugar de eso.
    .fix-bedside = Lleve un solo cable bastante largo y bastante grueso, o una batería hecha para el aparato. Nunca acerque el generador en lugar de eso.
    .fix-at-set = Enchufe el aparato en un cable bastante largo y bastante grueso, o lleve una batería hecha para él. Nunca acerque el generador en lugar de eso.
    .fix-stated = Mida otra vez desde el escape hasta donde está la gente y póngalo en el plan. O lleve un cable más largo que sea bastante grueso.

AIR006 = { $fix ->
    [when] El generador quizá funcione mientras la gente duerme: { $about }
   *[other] El generador funciona mientras la gente duerme: { $about }
  }
    .why = La gente duerme de { $from } a { $to } ({ $night }), y los gases de escape no la despiertan. Si el generador debe funcionar entonces: al aire libre, a { $ample } o más de la gente, y con una alarma de monóxido de carbono que funcione donde se duerme.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Cargue la batería de { $life } durante el día. Páselo a la batería, y pare el motor antes de que alguien se duerma.
    .fix-when = { night-decide } { night-instead }

night-told = según las horas de silencio
night-assumed = no sabemos las horas, así que supusimos estas
