### Rules on air. Each message is a finding's title; .why gives the numbers, .fix-* what to do.

AIR001 = { $fix ->
    [measure] Nadie ha medido a qué distancia del escape está la gente
   *[other] Hay personas a { $distance } del escape del generador
  }
    .why = Deje { $ample } o más: de { $least } a { $ample } sigue siendo demasiado cerca, y menos de { $least } es un peligro. Los gases de escape llevan monóxido de carbono. No se ve ni se huele, y quien duerme no despierta. También cuentan las { -tent(form: "many") }, { -camper(form: "many") } y vehículos de los vecinos.
    .fix-move = Apague el motor y deje que se enfríe. Después lleve el generador al menos a { $ample } de cualquier { -tent }, vehículo, puerta o ventana. Dirija el escape lejos de la gente. Nunca lo haga funcionar en una { -tent }, porche, garaje o vehículo, ni bajo un toldo.
    .fix-closed = Si funciona en algo cerrado: todos fuera, llame al { $call }, y que solo los bomberos entren a pararlo. Solo si funciona al aire libre, párelo usted. Ya apagado y frío, póngalo al aire libre, al menos a { $ample } de cualquier { -tent }, vehículo, puerta o ventana. Dirija el escape lejos de la gente.
    .fix-farther = Pare el motor y deje que se enfríe. Después lleve el generador a { $ample } o más, y dirija el escape lejos de la gente. A solo { $least }, el viento todavía puede traer los gases.
    .fix-measure = Mida desde el escape hasta la { -tent }, el vehículo, la puerta o la ventana más cercana, también de los vecinos. Si hay menos de { $ample }, mueva el generador antes de arrancarlo.

AIR002 = { $fix ->
    [look] No se sabe si todos duermen con una alarma de monóxido de carbono
   *[other] No todos duermen con una alarma de monóxido de carbono
  }
    .why = Los gases de escape pueden desviarse cuando cambia el viento. No se huelen, y quien duerme no despierta. Solo una alarma lo despierta. Una alarma de humo no sirve para esto.
    .fix-alarm = Ponga una alarma de monóxido de carbono de pilas en cada { -tent } y { -camper } donde duerma gente. Presione su botón de prueba cada noche: debe sonar. Si suena en otro momento, o alguien está mareado, débil, con náuseas o con dolor de cabeza: todos al aire libre, y llame al { $call }. Pare el motor solo si puede hacerlo sin respirar sus gases.
    .fix-look = Mire en cada { -tent } y { -camper } antes de arrancar. Cada una necesita una alarma de monóxido de carbono de pilas que suene al presionar su botón de prueba. Si suena en otro momento, o alguien está mareado, débil, con náuseas o con dolor de cabeza: todos al aire libre, y llame al { $call }. Pare el motor solo si puede hacerlo sin respirar sus gases.

AIR003 = { $fix ->
    [out] El generador funciona en un lugar cerrado
    [uncover] El generador está cubierto, o muy cerca de algo
    [look] No se sabe qué hay encima y alrededor del generador
   *[other] Nadie dijo qué hay encima y alrededor del generador
  }
    .why = { $fix ->
        [out] Los gases de escape se acumulan en una { -tent }, porche, vehículo o cobertizo, incluso con la puerta abierta. Llevan monóxido de carbono: no se huele, y mata. Una lona sobre el generador se funde y arde.
        [uncover] Los gases de escape se acumulan en una { -tent }, porche, vehículo o cobertizo, incluso con la puerta abierta. Llevan monóxido de carbono: no se huele, y mata. Una lona sobre el generador se funde y arde.
       *[other] Por eso se supuso lo peor. Si está en una { -tent }, porche, vehículo o cobertizo, los gases de escape se acumulan allí, incluso con la puerta abierta. Llevan monóxido de carbono: no se huele, y mata. Una lona encima se funde y arde.
      }
    .fix-out = Si funciona ahora ahí dentro: todos fuera, llame al { $call } desde fuera, y que solo los bomberos entren a pararlo. Úselo solo al aire libre, con { $clear } libres a su alrededor.
    .fix-uncover = Apague el motor. Quite la lona o la funda. Aléjelo de toldos y paredes: { $clear } libres a su alrededor. Un techo debe estar bien por encima de él y abierto por todos lados.
    .fix-look = Vaya y mire antes de arrancarlo. Debe estar al aire libre, o bajo un techo alto y abierto por todos lados, no un toldo, con { $clear } libres a su alrededor.
    .fix-choose = Póngalo al aire libre, o bajo un techo alto y abierto por todos lados, no un toldo, con { $clear } libres a su alrededor. Después, dígalo en el plan.

AIR004 = Nada protege al generador de la lluvia
    .why = El agua en sus { -receptacle(form: "many") } puede dar una descarga a quien los toque. Entonces la gente lo mete en una { -tent } o un porche, y los gases de escape la matan.
    .fix-roof = Si llueve, pare el motor. Vuelva a usarlo solo en un lugar seco y plano bajo un techo alto, abierto por todos lados. Nunca una lona sobre el generador ni justo encima. También las cajas, las puntas de los cables y las clavijas van a cubierto y sin tocar el suelo mojado. Séquese las manos antes de tocar nada de eso.

AIR005 = { $fix ->
    [bedside] El cable hasta { $about } es demasiado corto
    [at-set] { $about } está enchufado en el propio generador
    [stated] El cable hasta { $about } no llega adonde está la gente
    [measure] No se sabe si los cables llegan bastante lejos
    [no-cord] Enchufado en el propio generador: { $about }
   *[longer] Los cables son demasiado cortos para alejar el generador
  }
    .why = { $fix ->
        [bedside] Se sabe que llega a { $reach }. El generador debe estar a { $needed } de quien lo necesita. Por eso alguien lo acercará, y los gases de escape matan.
        [at-set] El generador debe estar a { $needed } de quien lo necesita. Sin cable, alguien lo acercará, y los gases de escape matan.
        [stated] Llega a { $reach }. El plan dice que la gente está a { $needed } del generador. Por eso alguien lo acercará más que eso.
        [measure] Se sabe que llegan a { $reach }. El generador debe estar a { $needed } de cada { -tent }, vehículo, puerta y ventana. Si son más cortos, alguien lo acercará.
        [no-cord] El generador debe estar a { $needed } de cada { -tent }, vehículo, puerta y ventana. Sin cable, quien necesite corriente allí lo acercará.
       *[longer] Llegan a { $reach }. El generador debe estar a { $needed } de cada { -tent }, vehículo, puerta y ventana. Por eso alguien lo acercará.
      }
    .fix-longer = Lleve un solo cable bastante largo, y bastante grueso para lo que se conecta a él. Nunca acerque el generador para compensar.
    .fix-no-cord = { $open ->
        [no] Lleve un cable con GFCI (botones TEST y RESET), bastante largo y bastante grueso.
       *[other] Enchufe estas cosas en el generador y luego aléjese de sus gases, hacia el lado de donde viene el viento. O lleve un cable bastante largo y bastante grueso.
      } Nunca acerque el generador para compensar.
    .fix-measure = Mida los cables a pasos y ponga su largo en el plan. Nunca acerque el generador para compensar.
    .fix-bedside = Lleve un cable bastante largo y bastante grueso, o una batería hecha para el aparato. Nunca acerque el generador para compensar.
    .fix-at-set = Póngalo al final de un cable bastante largo y bastante grueso. Si todos los extremos están ocupados, lleve otro cable, o una batería hecha para el aparato. Nunca acerque el generador para compensar.
    .fix-stated = Mida otra vez desde el escape hasta donde está la gente y póngalo en el plan. O lleve un cable más largo que sea bastante grueso.

AIR006 = { $fix ->
    [when] El generador quizá funcione mientras la gente duerme: { $about }
   *[other] El generador funciona mientras la gente duerme: { $about }
  }
    .why = La gente duerme de { $from } a { $to } ({ $night }), y los gases de escape no la despiertan. Entonces hacen falta aire libre, { $ample } o más hasta la gente y una alarma que funcione donde se duerme.
    .fix-by-day = { night-instead } { night-sleep }
    .fix-life-by-day = { night-life } { night-sleep }
    .fix-life-charged = Cargue de día la batería de { $life }. Páselo a ella, y pare el motor antes de que alguien se duerma.
    .fix-when = { night-decide } { night-instead }

night-told = según las horas de silencio
night-assumed = no sabemos cuándo, así que supusimos esto
