# Everything on paper: labels, card, cautions and worksheet.

## Errors of printing

print-error-words-incomplete = Faltan palabras, así que no se imprimió nada: { $faults }
print-error-no-glyph = “{ $text }” no se puede imprimir: no hay letra para { $characters }. Escríbalo con otras letras.
print-error-too-long = { $percent ->
    [0] { $document }: no hay sitio para “{ $text }”. Hay demasiadas partes enchufadas una en otra.
   *[other] { $document }: “{ $text }” es demasiado largo para imprimirlo con letra legible. Acórtelo a cerca del { $percent } % de su longitud.
  }
print-error-off-page = { $document }, página { $page }: “{ $text }” se saldría del papel. No se imprimió nada.
print-error-too-small = { $document }, página { $page }: “{ $text }” sería demasiado pequeño para leerlo, con el { $percent } % de la altura que necesita. No se imprimió nada. Agrándelo en su plantilla, o quítelo.
print-error-unknown-stock = No hay ninguna hoja de etiquetas llamada “{ $name }”. Elija una de estas: { $known }.
print-error-bad-stock = La hoja de etiquetas “{ $name }” no se puede usar: { $message }
print-error-bad-start = La hoja tiene { $count } etiquetas, así que no se puede empezar a imprimir en la { $start }.
print-error-template = La plantilla { $file } falló en la línea { $line }, columna { $column }: { $message }

## Shared

print-several = { $name } × { $count }
print-generator = Generador
print-cord = Cable
print-adapter = Adaptador
print-box = Caja
print-camper = { -camper(form: "One") }
print-for-hours = 3 horas o más
print-for-short = menos de 3 horas
print-for-any = sin límite de tiempo
print-brief-hours = 3 h o más
print-brief-short = menos de 3 h
# An old print is told from a new one by it: $code is five digits.
print-code = código { $code }
print-for-seconds = unos segundos
print-all-for-hours = total, 3 horas o más
print-all-for-any = total, sin límite de tiempo
print-all-running = total, en marcha

## What sets a limit. $id is the part.

print-set-by-rated-power = Límite del generador. Si se supera, corta o se para.
print-set-by-rated-power-unguarded = Límite del generador. Si se supera, quizá no se corte: puede recalentarse.
print-set-by-one-leg = Límite de una mitad del generador. Si se supera, quizá no se corte: puede recalentarse.
print-set-by-parallel-kit = Límite del kit entre los generadores. Si se supera, puede no dispararse.
print-set-by-breaker = Límite del { -breaker } de “{ $id }”. Si se supera, se dispara.
print-set-by-trips-early = El { -breaker } de “{ $id }” se disparó justo por encima. No lo pase.
print-set-by-receptacle = Límite del { -receptacle } “{ $id }”.
print-set-by-plug = Límite de la clavija de “{ $id }”.
print-set-by-cord-ampacity = Límite del conductor del cable “{ $id }”.
print-set-by-cord-mark = Un cable como “{ $id }” suele indicar esto. Lea el suyo; vale la cifra menor.
print-set-by-coiled-cord = El cable “{ $id }”, enrollado, soporta menos. Desenróllelo todo.
print-set-by-coiled-cord-guessed = No sabemos si “{ $id }” está enrollado: supusimos que sí. Desenróllelo todo.
print-set-by-hot-cord = Con calor, el cable “{ $id }” soporta menos. Póngalo a la sombra.
print-set-by-hot-cord-guessed = No sabemos cuánto calor hará: supusimos { $air } en “{ $id }”. Póngalo a la sombra.
print-set-by-wiring = Límite del cableado de “{ $id }”.
print-set-by-not-fed = Tensión equivocada. Trátelo como si tuviera tensión.
print-set-by-share-breaker = 80 % del { -breaker } de “{ $id }”; más puede dispararlo.
print-set-by-share-trips-early = 80 % de algo menos de lo que disparó el { -breaker } de “{ $id }”.
print-set-by-share-receptacle = 80 % de lo que admite “{ $id }”.
print-set-by-share-wiring = 80 % de lo que soporta el cableado de “{ $id }”.
print-set-by-two = 3 horas o más: { $hours } Menos: { $past }

## Labels

print-labels-title = Etiquetas: { $site }
print-face-alt = Frente de un { -receptacle } { $shape }
print-nothing-trips = Sume todos los amperios de aquí. Con más de { $limit } puede recalentarse: ningún { -breaker } se dispara.
print-nothing-below = Sume todos los amperios de aquí. Con más de { $limit } puede recalentarse: el { -breaker } solo se dispara a { $amps }.
print-nothing-below-set = Sume todos los amperios de aquí. Con más de { $limit } puede recalentarse: el generador solo se apaga por encima de { $amps }.
print-shock-yes = GFCI: SÍ. Presione TEST antes de usar.
print-shock-yes-at = GFCI: SÍ. Presione TEST en “{ $at }” antes de usar.
print-shock-no = GFCI: NO. Nada aquí corta una descarga.
print-shock-unknown = GFCI: NO SE SABE. Supusimos que no. Busque TEST y RESET.
# Inside a camper, which has its own.
print-shock-camper = GFCI: ninguno hasta aquí. Presione TEST en el de la { -camper } antes de usar.
print-short-add-up = Sume los amperios
print-short-gfci = GFCI: SÍ. Pruébelo antes.
# Where there is least room.
print-tiny-gfci = GFCI: SÍ
print-tiny-no-gfci = GFCI: NO
print-tiny-gfci-unknown = GFCI: NO SE SABE
print-plug-in = Conecte aquí
print-plugs-more = { $loads } + { $count } más
# Nothing forbids to use it, but no GFCI works there: nobody is invited to.
print-idle = NADA PREVISTO AQUÍ
print-idle-how = Antes de enchufar algo aquí, póngalo en el plan y compruebe de nuevo.
# The plan has something here that is too much, or must not be used.
print-leave-empty = DEJAR VACÍO
print-leave-empty-how = No enchufe nada aquí. Lo que el plan tiene aquí es demasiado o no debe usarse.
print-comes-from = Recibe de
print-leg = fase { $leg }
print-leg-unknown = fase desconocida
print-leg-unknown-brief = fase ?
# Where both feed it; and the same on a label with little room.
print-leg-both = fases A y B
print-leg-both-brief = A y B
# After the amps of a leg, in front of how long they hold.
print-on-both = en A y { $amps } en B, { $how_long }
# In a table of outlets.
print-amps-both-brief = A: { $amps }, B: { $amps }
print-legs = Fases
print-legs-value = A y B: las dos mitades de su potencia.
print-not-all-at-once = no todo a la vez: { $loads }
print-not-together = { $loads }; no a la vez: { $sets }
print-one-at-a-time = de uno en uno: { $loads }
print-only-these = AQUÍ SOLO { $parts }. Ningún aparato.
print-short-only = AQUÍ NINGÚN APARATO
print-short-only-camper = { -breaker } PRINCIPAL: { $amps }
print-short-only-generator = SOLO ESTE GENERADOR
only-if-camper = SOLO para una { -camper } cuyo { -breaker } principal diga { $amps } o menos.
only-if-generator = SOLO con este generador: con otro puede sobrecargarse.
print-bonding-plug = clavija de unión
print-bonding-plug-stays = La clavija de unión se queda. { $title }
# With what plugged in: a box, or a bonding plug in an outlet.
print-shock-blind = GFCI: NO. Con “{ $joint }” enchufado, no corta descargas.
print-shock-blind-plug = GFCI: NO. Con la clavija de unión en “{ $joint }”, no corta descargas.
print-shock-doubtful = GFCI: NO. Con “{ $joint }” enchufado, quizá no corte una descarga.
print-shock-doubtful-plug = GFCI: NO. Con una clavija de unión en “{ $joint }”, quizá no corte una descarga.
print-do-not-use = NO USAR
print-apart = NO USAR EN PARALELO
print-apart-brief = NO UNIR
print-guarded = AQUÍ SOLO CABLE CON GFCI
print-guarded-brief = SOLO CON GFCI
# The GFCI cord goes in nearer the generator, ahead of this.
print-guarded-ahead = ANTES, CABLE CON GFCI
print-guarded-ahead-brief = ANTES, GFCI
# On a cord, of whatever is plugged in at its far end: one outlet or several.
print-guarded-cord = AL FINAL SOLO CABLE CON GFCI
print-guarded-cord-do = Enchufe en cada toma de este cable solo un cable con GFCI (botones TEST y RESET). Ningún aparato. Enchufe las cosas en ese cable con GFCI.
# With that cord plugged in.
print-guarded-most = luego, { $amps } como máximo
print-guarded-do = { $fix } Luego, { $amps } como máximo.
print-behind = Recibe la corriente de “{ $id }”, que no debe usarse.
print-dead-end = No use nada de lo que alimenta.
print-refused-alt = Señal de prohibición: no use { $id }
# Of a cord or box that must not be used: its outlets.
print-refused-ends = Con { $ends }
print-do = Haga esto
print-fold = Doble aquí sobre el cable
print-flag-alt = Lo mismo otra vez, para el otro lado del cable
print-scale-bar = Esta barra debe medir { $measure ->
        [metric] 50 mm
       *[customary] 1.97 in
    }. Si no, imprima otra vez al 100 %.
print-shared-sockets = { $count ->
    [2] Las dos tomas comparten este límite.
   *[other] Las { $count } tomas comparten este límite.
  }
# Where nobody said how many plugs the outlet takes.
print-shared-plugs = Todo lo enchufado aquí comparte este límite.
print-shared-outlets = Se comparte con { $others }.
print-shared-ends = Los { $count } extremos de “{ $owner }” juntos: { $amps }. No cada uno.
print-shared-box = Todo lo de “{ $owner }” junto: { $amps }.
print-short-shared = { $at }: total { $amps }
print-short-shared-here = Para todas las clavijas, sumadas
print-plug-into = Conecte en
print-plug-into-shared = “{ $at }”, { $amps } en total con { $others }
print-plug-into-nothing = nada en este plan
print-feeds = Alimenta
# What runs in a camper.
print-inside = Dentro
print-cord-facts = { $wire } · { $length }
print-wire-unknown = calibre desconocido
print-length-unknown = largo desconocido
print-cord-unknown = calibre y largo desconocidos
print-box-headline = Entrada { $inlet }
print-camper-headline = Clavija { $inlet }
print-generator-headline = { $rated } continuos · { $peak } unos segundos
print-generator-headline-one = { $rated } continuos
print-neutral = Neutro
print-neutral-bonded = Unido al chasis (bonded).
print-neutral-floating = Flotante (sin unir a nada). Un probador puede mostrar OPEN GROUND aquí.
print-neutral-plug = Flotante, unido a tierra por una clavija de unión.
print-neutral-plug-unknown = Flotante, salvo que haya una clavija de unión en una toma. Búsquela.
print-neutral-unknown = Desconocido. Busque en el manual “floating” o “bonded neutral”.
print-reachable = Por los { -receptacle(form: "many") } en uso
print-reachable-value = { $reachable } de { $rated } disponibles
print-rated-guessed = Su potencia
print-rated-guessed-value = No se sabe: supusimos { $taken }. Lea su placa.
print-rated-guessed-less = No se sabe: supusimos { $taken }; quedan { $left } a esta altura y con este calor. Lea su placa.
print-tank = Un { -tank }
print-tank-value = cerca de { $hours }
print-tank-value-with = cerca de { $hours } con { $with } en marcha
print-refuel = Combustible
print-refuel-value = Pare el motor y déjelo enfriar { $cooling } minutos. Nunca cargue en marcha.
print-air = Escape
print-air-value = Mata, y no se huele. Solo al aire libre, apuntando lejos, al menos a { $ample } de { -tent(form: "many") }, vehículos, puertas, ventanas y personas.

print-air-brief = El escape mata: aléjese { $ample }.

## Alignment page

print-alignment-title = Dónde caen las etiquetas
print-alignment-head = Dónde caen las etiquetas
print-alignment-1 = Imprima esto al 100 % en papel normal. Póngalo a contraluz con una hoja de etiquetas.
print-alignment-2 = Si los marcos quedan muy a la izquierda o muy arriba, lea en las reglas cuánto e imprima otra vez con --offset { $measure ->
        [metric] "1 mm, 0.5 mm"
       *[customary] "0.04 in, 0.02 in"
    }: primero hacia la derecha, luego hacia abajo.
print-alignment-3 = Si quedan muy a la derecha o muy abajo, ponga un signo menos delante de ese número.

## Card

print-card-title = Tarjeta: { $site }
print-card-one = Cara 1: enchufar
print-card-two = Cara 2: cuando algo sale mal
print-card-alarm = Alarma de CO donde duerme.
print-card-now = ¿Alarma de CO, mareo, dolor de cabeza? Todos fuera. Llame al { $call }.
print-card-turn = Dé la vuelta.
print-card-see = Vea la cara 2.
print-card-on = Sigue la cara 1
print-card-call = Llame al { $call }
# To be filled in by hand.
print-card-site = Número de sitio
print-card-ranger = Guarda
print-card-hospital = Hospital
print-card-flip = Imprima por las dos caras, con giro por el lado largo.
print-card-fold = Imprima por una cara. Doble por el medio, con lo impreso hacia fuera.
print-card-trim = Recorte por las esquinas. La funda sella { $measure ->
        [metric] 3 mm
       *[customary] 1/8 in
    } alrededor.
print-card-danger = { $count ->
    [one] 1 peligro en este plan. Elimínelo antes de arrancar el generador: vea la hoja de precauciones.
   *[other] { $count } peligros en este plan. Elimínelos antes de arrancar el generador: vea la hoja de precauciones.
  }
print-no-breaker = Sume amperios: con más de { $limit } nada se dispara a tiempo
# On a small card.
print-no-breaker-brief = Sume: nada se dispara
print-row-gfci = { -gfci }
print-loose = Sin enchufar:
print-unplaced = NO ENCHUFE: { $loads }. No sirve ningún { -receptacle } de este plan.
print-too-large = NO ENCHUFE: { $loads }. Es demasiado para su { -receptacle } o para el generador.
print-felt-hot = NO ENCHUFE: { $loads }. El aparato o su toma se calentó o dio una descarga.
print-none-free = NO ENCHUFE: { $loads }. No sirve ningún { -receptacle } libre que se pueda usar.
# Every outlet left is one that must not be used.
print-refused = NO ENCHUFE: { $loads }. Ningún { -receptacle } libre que se pueda usar sirve.
print-misplaced = NO ENCHUFE donde lo pone este plan: { $loads }. Otra toma puede con ello.
# Of what someone’s health depends on.
print-life-battery = { $life }: tenga lista una batería hecha para eso que dure toda la noche.
print-unplaced-life = Haga funcionar { $life } solo con una batería hecha para eso que dure toda la noche.
print-unplaced-life-maybe = Si la salud de alguien depende de { $life }, hágalo funcionar solo con una batería hecha para eso que dure toda la noche.
print-together-title = A la vez
print-together-title-danger = A la vez, cuando no quede ningún peligro
print-together-one = Puede usar todo esto a la vez, y nada más: { $loads }.
print-together-how = Puede usar a la vez todo lo que tiene un punto, y nada más.
print-together-pick = Elija una columna.
print-together-number = Un número: puede usar esa cantidad, da igual cuáles.
print-together-dot = puede usarse
print-more = U otro grupo: { $count } más en la memoria de cálculo.
print-more-left-out = Hay otros grupos posibles. Para preguntar por uno: tallywatt may.
print-together-elsewhere = Qué puede usar a la vez: vea la memoria de cálculo.
print-never-more = … y { $count } más que nunca van juntos, en la memoria de cálculo.
print-never-unlisted = No calculamos todas las mezclas. Para preguntar por una: tallywatt may.
# A group of the worksheet, and when the plan needs it.
print-choice = { $number } ({ $times })
print-when-breakfast = desayuno
print-when-midday = mediodía
print-when-afternoon = tarde
print-when-evening = noche
print-when-night = madrugada
print-never-title = Nunca a la vez
print-never-how = Cada ▸ empieza un grupo. Nunca tenga todo un grupo encendido a la vez.
# What a meter reads at a box or receptacle, at least.
print-start-meter = { $on ->
    [all] Con todo encendido
   *[column] Con toda la columna 1 encendida
  }, un medidor enchufado en cualquier { -receptacle } de “{ $at }” debe marcar { $volts } o más, si la toma del generador marca { $nominal }. Si es mucho menos, apague algo.
print-start-meter-outlet = { $on ->
    [all] Con todo encendido
   *[column] Con toda la columna 1 encendida
  }, un medidor enchufado en “{ $at }” debe marcar { $volts } o más, si la toma del generador marca { $nominal }. Si es mucho menos, apague algo.
print-setup-title = Montaje
print-setup-alarm = Ponga una alarma de monóxido de carbono, que funcione, donde se duerme.
print-setup-alarm-test = Presione el botón de prueba de cada alarma de monóxido de carbono donde se duerme: debe sonar.
print-setup-place = Ponga el generador al aire libre, al menos a { $ample } de cada { -tent }, vehículo, puerta, ventana y persona. Dirija el escape lejos de todos.
print-setup-clear = Suelo seco y plano, con { $clear } libres por todos lados. Nada encima del generador salvo un techo alto, abierto por todos lados.
print-setup-look = Mire cada cable y clavija. No use un cable cortado o quemado, ni una clavija floja o con el contacto redondo arrancado.
print-setup-uncoil = Desenrolle del todo cada cable. Ninguna clavija en la hierba mojada.
print-setup-plug = Deje los aparatos sin enchufar. Enchufe cables y cajas desde el generador hacia fuera, solo como muestra la cara 1.
print-setup-plug-skip = Deje sin enchufar lo que diga { print-do-not-use }.
print-setup-plug-guarded = Donde diga { print-guarded }, enchufe ahí primero un cable con GFCI.
print-setup-plug-ahead = Donde diga { print-guarded-ahead }, enchufe un cable con GFCI entre eso y el generador.
print-setup-start = Arranque el motor. Déjelo andar dos minutos.
print-setup-test = Haga siempre todo lo que dice “Prueba”.
print-setup-load = Ahora enchufe los aparatos, apagados, solo donde muestra la cara 1. Enciéndalos de uno en uno.
print-test-title = Prueba
print-test-button = En cada { -gfci } (botones TEST y RESET), enchufe una lámpara. Presione TEST: debe hacer clic y la lámpara apagarse. Si no, no use esa toma.
print-test-reset = Presione RESET. La lámpara debe encenderse otra vez.
print-test-none = No sabemos de ningún { -receptacle } suyo con un { -gfci } que funcione. En suelo mojado, use solo un cable con GFCI certificado (con la marca de un laboratorio).
print-stop-title = Apagar y cargar combustible
print-stop-life = Primero pase { $life } a batería. Si ninguna funciona, despierte a quien lo necesita.
print-stopped-life = Que alguien pase { $life } a batería.
print-stop-1 = Apague las cosas, la más grande primero. Después pare el motor.
print-stop-2 = Espere { $cooling } minutos a que se enfríe. Solo entonces cargue combustible, lejos de llamas y personas.
print-stop-3 = Si se derrama combustible, aléjese. Arranque el motor solo cuando no quede vapor. Guárdelo al aire libre, lejos de las { -tent(form: "many") }.
print-stop-2-propane = Espere { $cooling } minutos a que se enfríe. Cierre la válvula. Solo entonces cambie el cilindro, lejos de llamas y personas.
print-stop-3-propane = Si huele a gas: cierre la válvula, aléjese y deje que se disipe. Cilindros de pie al aire libre, lejos de las { -tent(form: "many") }.
print-plot-title = Más lejos
print-plot-how = Si el cable “{ $cord }” fuera más largo que { $length } y el generador estuviera más lejos en la misma medida. El punto es este plan.
print-plot-how-volts = Si el cable “{ $cord }” fuera más largo que { $length }. El punto es este plan.
print-plot-volts = Voltios que quedan para { $load }
print-plot-noise = Ruido donde se duerme, en el minuto de mayor carga
print-plot-lost = { $percent } perdidos
print-plot-along = Largo del cable “{ $cord }”
print-plot-alt = Curvas. El punto es este plan: con el cable “{ $cord }” de { $length }, a { $load } le quedan { $volts }.
print-plot-alt-noise = Donde se duerme hay un ruido de { $noise }.
print-defer = Deciden { -local-codes } y un { -electrician }. Nunca abra nada, cambie el cableado ni conecte el neutro con la tierra.

## Safety. What to do when something goes wrong: the same on the card and the cautions. $call is the emergency number.

print-emergency-title = Cuando algo sale mal
print-emergency-fire = Fuego
print-emergency-fire-away = Aleje a todos. Despierte a todos. Llame al { $call }.
print-emergency-fire-engine = Pare el motor solo si el camino hasta él está libre.
print-emergency-fire-water = No eche agua sobre combustible ardiendo ni sobre nada que pueda tener corriente.
print-emergency-fire-extinguisher = Use un extintor ABC solo con un fuego pequeño, y solo con la salida a su espalda. Si crece, váyase.
print-emergency-fire-clothes = Ropa en llamas: párese, tírese al suelo, ruede.
print-emergency-burns = Quemaduras: manténgalas bajo agua corriente fresca { $burn } minutos.
print-emergency-alarm = Alarma de CO, mareo, náuseas, debilidad, dolor de cabeza
print-emergency-alarm-out = Aunque solo una persona se sienta mal: todos al aire libre, ya. Despierte a todos. Cuente a las personas.
print-emergency-alarm-call = Llame al { $call }. Diga: monóxido de carbono.
print-emergency-alarm-sleeper = Si alguien no despierta: desde fuera, abra bien puertas, ventanas y { -tent(form: "many") }. No entre: usted también puede desmayarse. Espere a los bomberos.
print-emergency-alarm-cpr = Solo al aire libre: si alguien no respira, o solo boquea, empiece la RCP. Presione fuerte y rápido en el centro del pecho. Pida un desfibrilador.
print-emergency-cpr = Si no respira, o solo boquea, empiece la RCP. Presione fuerte y rápido en el centro del pecho. Pida un desfibrilador.
print-emergency-alarm-engine = Pare el motor solo si puede hacerlo sin respirar sus gases.
print-emergency-alarm-back = Nadie vuelve a entrar hasta que lo digan los bomberos, aunque se sienta mejor.
print-emergency-shock = Alguien recibe una descarga
print-emergency-shock-off = Todavía no toque a esa persona. Pare el motor. Después desenchufe el cable en el generador.
print-emergency-shock-touch = Llame al { $call }. Tóquela solo cuando el motor esté parado y el cable desenchufado.
print-emergency-shock-doctor = Después de toda descarga, aunque sea pequeña, vaya al médico.
print-emergency-breaker = Se dispara un { -breaker }
print-emergency-breaker-stop = Pare el motor. No toque ningún cable mientras funcione.
print-emergency-breaker-feel = Palpe el cable y las clavijas. Si algo está caliente, blando o huele a quemado, no lo use más.
print-emergency-breaker-once = Apague todo lo que alimenta ese { -breaker }. Arranque el motor. Restablezca el { -breaker } una sola vez. Luego use menos cosas.
print-emergency-breaker-off = Si se dispara otra vez, déjelo apagado y no use nada de lo que alimenta.

## Cautions

## Safety. The sheet of what to go and look at.

print-look-title = Mire esto: { $site }
print-look-how = Lleve esta hoja y una luz hasta el equipo, con el motor parado. Mire solo por fuera y no abra nada. Marque o escriba lo que vea. Deje en blanco lo que no se vea. No adivine. Lo que despeja una línea cuenta con las de arriba.
print-look-light = Si la letra apenas se ve, ilumínela de lado, gire la pieza y amplíe una foto.
print-look-count = Donde hay varios { -receptacle(form: "many") } iguales, los números de sus nombres cuentan desde la izquierda, fila por fila desde arriba.
# What is asked of one outlet: $about names it.
print-look-of = { $about }: { $question }
print-look-none = No hay nada que mirar: el plan dice todo lo que importa.
print-look-buy = Por comprar: mire en el paquete
print-look-first = Mire esto primero. No adivine.
print-look-after = Después cambie sus respuestas: ejecute “tallywatt ask” con este plan, elija “Mirar lo que no sabemos” e imprima de nuevo.
# $lines: the numbers of lines on that sheet.
print-look-see = Vea la hoja de revisión, { $count ->
    [one] línea { $lines }.
   *[other] líneas { $lines }.
}
print-next-title = Qué hacer ahora

print-cautions-title = Precauciones: { $site }
print-cautions-summary = { $danger ->
    [0] Ningún peligro encontrado
    [one] 1 peligro
   *[other] { $danger } peligros
  }, { $warning ->
    [0] ninguna advertencia
    [one] 1 advertencia
   *[other] { $warning } advertencias
  }, { $rest ->
    [0] nada más
    [one] 1 punto más
   *[other] { $rest } puntos más
  }.
print-cautions-rules = { $count ->
    [one] Regla: { $codes }
   *[other] Reglas: { $codes }
  }
print-cautions-stop = No arranque el generador hasta que cada uno esté resuelto.
print-cautions-always = Marque cada punto en cada montaje.
print-cautions-generator = Junto al generador
print-cautions-people = Donde se duerme
print-cautions-gear = Cables, cajas y { -receptacle(form: "many") }
print-cautions-fuel = Combustible
print-cautions-leaving = Cuando se vaya
print-look = Mire primero
print-look-then = Algunos recuadros dicen “{ print-look }”. Cuando lo sepa, cambie su respuesta en el plan y compruebe otra vez.
print-symbol-general = Señal de advertencia
print-symbol-electric = Señal de advertencia: electricidad
print-symbol-hot = Señal de advertencia: calor
print-symbol-toxic = Señal de advertencia: veneno
print-symbol-fire = Señal de advertencia: fuego
print-ws-no-danger = Ninguna regla encontró un peligro. Eso no es una promesa.
print-none-found = No encontramos nada en este plan. Eso no promete nada: los puntos de arriba valen igual.
print-always-1 = Generador solo al aire libre, con el escape lejos de la gente, al menos a { $ample } de { -tent(form: "many") }, vehículos, puertas, ventanas y personas. El escape lleva monóxido de carbono. No se huele, y mata.
print-always-2 = Ponga una alarma de monóxido de carbono donde se duerme. Presione su botón de prueba: debe sonar.
print-always-3 = Desenrolle cada cable, fuera del suelo mojado. No use un cable cortado o quemado, ni una clavija floja o sin su contacto redondo.
print-always-4 = Pruebe cada { -gfci } (botones TEST y RESET) con una lámpara enchufada: debe apagarse.
print-always-5 = Nunca conecte un generador a la instalación de un edificio.
print-always-6 = Antes de cargar combustible: pare el motor y déjelo enfriar { $cooling } minutos. Sin llamas.
print-always-7 = Antes de irse: pare el motor, déjelo enfriar { $cooling } minutos y desenchufe todo. Nunca se vaya con el motor en marcha.

## Worksheet

print-ws-title = Memoria de cálculo: { $site }
print-ws-intro = Todos los números de las etiquetas y de la tarjeta, y cómo calcularlos otra vez a mano. Los límites se redondean hacia abajo, los consumos hacia arriba. Aquí no se midió nada. Un número detrás de un valor es su fuente, nombrada al final. Un valor sin marca se calcula con los demás.
print-ws-source = Fuente
print-ws-not-known = no se sabe
print-ws-power = Potencia del generador
print-ws-symbols-power = P₀ potencia marcada, P₀′ potencia aquí; h altura, t temperatura del aire; k pérdida por cada paso Δ por encima de h₀ o t₀
print-ws-symbols-limits = I amperios: h durante horas, s por poco tiempo, c lo que soporta la parte; s cuota durante horas; ′ de lo que la alimenta; P vatios, U voltios
print-ws-symbols-cords = R ohmios de ida y vuelta, r ohmios de un conductor por cada { $measure ->
    [metric] metro
   *[customary] pie
}, l largo; I amperios: p la clavija, w el conductor, m la marca usual; a parte con este aire; el tercio solo si está enrollado
print-ws-symbols-loads = I amperios, P vatios, U voltios, λ factor de potencia; st al arrancar, con k veces los amperios
print-ws-symbols-longest = l largo, d parte de los voltios perdida, U voltios, I amperios, r ohmios de un conductor por cada { $measure ->
    [metric] metro
   *[customary] pie
}
print-ws-symbols-drops = ΔU voltios perdidos, d su parte, I amperios, R ohmios, U voltios
print-ws-symbols-energy = E vatios-hora, P vatios, t horas de marcha; n qué parte de un { -tank }, t₀ cuánto dura uno con ese consumo; V combustible, V₀ lo que cabe en uno
print-ws-symbols-noise = L nivel a la distancia d, L₀ el nivel publicado a la distancia d₀; max en el minuto de mayor carga; x la carga entonces, b la carga a la que se midió, ambas en por ciento y no menos de 25
print-ws-power-formula = Potencia restante = marcada × (1 − pérdida por altura − pérdida por calor). Altura: { $altitude-percent } % por cada { $altitude-per } por encima de { $altitude-above }. Calor: { $air-percent } % por cada { $air-per } por encima de { $air-above }.
print-ws-power-thumb = Por regla práctica: { $altitude-percent } % por cada { $altitude-per } por encima de { $altitude-above }, y { $air-percent } % por cada { $air-per } por encima de { $air-above }.
print-ws-power-less = Se usa la menor de las dos. Con propano, antes, una décima parte menos, salvo que la placa sea para propano. Los generadores en paralelo suman hasta lo que deja pasar su kit.
print-ws-power-loss-formula = Pérdida por altura + por calor, por la fórmula
print-ws-power-loss-thumb = Pérdida por altura + por calor, por la regla práctica
print-ws-power-marked = Potencia nominal marcada
print-ws-power-peak-marked = Potencia máxima marcada
print-ws-power-altitude = Altitud
print-ws-power-air = Aire
print-ws-power-rated = Potencia nominal aquí
print-ws-power-peak = Potencia máxima aquí
print-ws-power-propane = Con propano: nueve décimos de la potencia marcada
print-ws-power-reachable = Disponible por los { -receptacle(form: "many") } en uso
print-ws-power-stranded = Fuera de alcance
print-ws-limits = Límite de cada { -receptacle }
print-ws-limits-long = Horas = lo menor entre cada amperaje de la fila × su cuota y las horas de lo que la alimenta. Sin cuota cuenta entero.
print-ws-limits-short = Corto = lo menor entre cada amperaje de la fila y el corto de lo que la alimenta.
print-ws-limits-watts = Vatios (en la página 1) = amperios × voltios.
print-ws-limits-80 = El código limita a 12, 16 o 24 A cada { -receptacle } en circuitos de 15, 20 o 30 A con varias salidas. Eso vale para todo lo que alimenta un { -receptacle } (210.21(B)(2)), y para cada cosa enchufada (210.23(B)(1) y (C)). Aquí ese es el límite para horas. Por poco tiempo cuenta toda la marca.
print-ws-limits-first = La primera línea es el generador: su potencia nominal aquí ÷ voltios; con dos fases, la mitad en cada una. Lo que soporta un cable se calcula en la sección siguiente.
print-ws-reason-rated-power = potencia nominal
print-ws-reason-rated-power-unguarded = potencia nominal
print-ws-reason-one-leg = una mitad
print-ws-reason-parallel-kit = kit entre generadores
print-ws-reason-breaker = { -breaker }
print-ws-reason-trips-early = { -breaker }, donde se disparó
print-ws-reason-receptacle = { -receptacle }
print-ws-reason-plug = clavija
print-ws-reason-cord-ampacity = conductor
print-ws-reason-cord-mark = valor usual
print-ws-reason-coiled-cord = conductor, enrollado
print-ws-reason-hot-cord = conductor, con aire caliente
print-ws-reason-wiring = cableado
print-ws-reason-not-fed = otros voltios
print-ws-cords = Cables
print-ws-cords-ohms = Ohmios = ohmios por cada { $measure ->
    [metric] metro
   *[customary] pie
} × largo × 2, ida y vuelta, a { $hot }.
print-ws-cords-amps = Amperios: lo menor entre lo que admite la clavija, la corriente admisible del conductor (con aire por encima de { $air } su parte, y un tercio de eso si está enrollado) y la marca usual de los cables con clavija doméstica de ese calibre y largo. Lea los amperios en la etiqueta del cable; vale la cifra menor.
print-ws-cords-two = Dos conductores llevan corriente. La tierra no cuenta, ni el neutro entre dos fases, que lleva solo su diferencia (NEC 400.5(A), 2023).
print-ws-protection = Partes menores que su { -breaker }
print-ws-protection-how = La página 1 tiene el { -breaker } de cada parte. No debe ser mayor que el valor de la parte. En estas es mayor, o no hay: se nombra la regla que lo permite.
print-ws-part-receptacle = { -receptacle }
print-ws-part-cord = cable
print-ws-by-generator = el propio generador: no puede dar más
print-ws-by-cord-set = NEC 240.5(B)(3): cable de extensión certificado, dentro de su certificación; si no, (B)(4): 16 AWG o más grueso, hasta 20 A
print-ws-by-receptacles = NEC 210.21(B)(3): dos o más { -receptacle(form: "many") } de 15 A con 20 A
print-ws-by-appliance-cord = NEC 240.5(B)(1): cable propio de un aparato certificado
print-ws-by-listing = la certificación de la caja
print-ws-by-camper-main = solo el { -breaker } principal de la { -camper }
print-ws-by-single = NEC 210.21(B)(1) pide un { -breaker } menor: no pase de lo que admite el { -receptacle }
print-ws-by-nothing = NADA: no usar
print-ws-loads = Aparatos
print-ws-loads-amps = Amperios = vatios ÷ (voltios × factor de potencia), redondeado hacia arriba. Los vatios de un aparato que da calor valen a 125 V: si su clavija doméstica los admite ahí, no cuentan más que los amperios × voltios de la clavija. Con un factor de potencia supuesto no cuentan más amperios que los que admite la clavija.
print-ws-loads-start = Arranque: los vatios dados, o los amperios de arranque de la placa × voltios, o los amperios × el factor de su tipo, o los kVA de la letra de código de un motor ÷ 115 V o 230 V; entonces sus voltamperios se cuentan como vatios.
print-ws-loads-leg = Un aparato con dos fases y neutro cuenta entero en una sola fase, a 120 V, sea cual sea. Si su clavija no lo admite: lo que admite la clavija en cada fase, o la mitad si es más.
print-ws-drops = Caída de tensión
print-ws-drops-formula = Voltios perdidos = amperios × ohmios, sumados por todos los cables del camino. Cuando baja la tensión, lo que calienta toma menos amperios y todo lo demás más: son los que figuran aquí.
print-ws-drops-start = Mientras algo arranca: los amperios de los aparatos a plena tensión, y del que arranca, los de arranque.
print-ws-drops-legs = Con dos fases, los amperios de una cuentan ida y vuelta, como si la otra estuviera sin carga. Con las dos cargadas se pierde menos.
print-ws-sharing = Qué funciona a la vez
print-ws-sharing-formula = Un grupo puede funcionar a la vez cuando, en cada parte de cada camino, la suma de sus amperios no pasa del límite de esa parte, ni sus vatios del límite del generador.
print-ws-sharing-times = Por hora del día, los grupos son { $groups }.
print-ws-sharing-more = Omitimos otros { $count } grupos que pueden funcionar juntos. En ninguna parte suma alguno más que los de la lista.
print-ws-sharing-incomplete = La lista no está completa. Solo puede funcionar a la vez lo que está en ella.
print-ws-sums = Las sumas que deciden
print-ws-symbols-sums = S voltamperios: k de lo que funciona menos de tres horas, h de lo que funciona más, st del que arranca; s parte del límite para horas; c lo que soporta la parte, pk el pico del generador
print-ws-sums-how = En cada parte: sume los voltamperios (amperios × voltios) de lo que pasa por ella. Antes, divida los de lo que funciona tres horas o más entre la parte del límite para horas. El límite es lo que la parte soporta × voltios.
print-ws-sums-start = Al encender: los voltamperios de todo lo que funciona y, del aparato que más añade, los de arranque menos los de marcha. Los voltamperios cuentan como vatios.
print-ws-sums-which = De un grupo que puede funcionar a la vez: el generador y la parte más llena después de él. De uno que no puede: la parte que más pasa de su límite. De cada una de esas partes figuran dos grupos: el que más la llena y puede, y el que menos se pasa.
print-ws-sum-peak = al arrancar
print-ws-sum-leg = { $part }, fase { $leg }
print-ws-starts = Al encender: los picos, y lo que marca un medidor
print-ws-symbols-starts = S voltamperios: on lo que ya funciona, st del que arranca, pk el pico
print-ws-starts-how = Pico = voltamperios de lo que ya funciona + voltamperios de arranque del que arranca. Los voltamperios cuentan como vatios, así que los vatios reales no son más.
print-ws-starts-then = “Luego” es lo que funciona cuando ya ha arrancado: ya encendido + sus voltamperios de marcha. Con eso empieza la fila siguiente. Los aparatos de una misma clase son una fila, contada para el último.
print-ws-starts-more = Aquí solo están los primeros { $count } pasos.
print-ws-column-set = Grupo
print-ws-column-adds-up = S, aparato por aparato
print-ws-column-on-and-starts = Ya encendido + arranque
print-ws-column-sum = Suma
print-ws-column-limit = Límite
print-ws-column-then = Luego
print-ws-together-row = A la vez, grupo { $number }
print-ws-never-row = Nunca a la vez { $number }
print-ws-set = grupo { $number }
print-ws-unplaced-row = Sin lugar para { $load }
print-ws-no-receptacle-fits = ningún { -receptacle } libre admite su clavija
print-ws-no-room = todo { -receptacle } que admite su clavija está lleno, no tiene { -gfci }, o no se debe usar
print-ws-too-large = ningún { -receptacle } que puede usar le da bastante
print-ws-impossible = según el plan, consume más de lo que admite su propia clavija
print-ws-hot = el aparato o su toma se calentó o dio una descarga
print-ws-no-power = aquello en lo que se enchufa no está enchufado en nada
print-ws-refused = ningún { -receptacle } libre que se pueda usar sirve
print-ws-energy = Energía y combustible
print-ws-energy-formula = Vatios-hora = vatios × horas, sumados en el día. Parte del { -tank } = horas ÷ horas de un { -tank } con ese consumo, sumada. Combustible = esa parte × lo que cabe en un { -tank }, por cada generador.
print-ws-energy-between = Un { -tank }: entre dos tiempos publicados, lo quemado en una hora (1 ÷ tiempo) está en línea recta según la carga, más una décima parte, hasta lo de la siguiente carga publicada. Por encima de la carga mayor el tiempo baja en proporción; por debajo de la menor ya no crece.
print-ws-energy-published = Tiempo publicado con un { -tank } a { $load } de carga
print-ws-energy-day = Energía en un día
print-ws-energy-tank = Un { -tank } dura, con el mayor consumo
print-ws-energy-fuel = Combustible en un día
print-ws-energy-peak = Mayor consumo, desde las { $hour }
print-ws-energy-burns = A { $watts }: parte de un { -tank }
print-ws-energy-tanks = Parte de un { -tank } en un día
print-ws-energy-stretch = Lo más sin pausa para cargar, { $span }
print-ws-energy-size = Un { -tank } contiene
print-ws-noise = Ruido
print-ws-noise-formula = Nivel = nivel publicado − 20 × log₁₀(distancia ÷ distancia publicada). Árboles, pendientes y paredes lo cambian.
print-ws-noise-published = Nivel publicado
print-ws-noise-load = Carga a la que se midió
print-ws-noise-sets = Lo que añaden { $sets } generadores iguales, uno junto a otro
print-ws-noise-busiest-load = Carga en el minuto de mayor carga
print-ws-noise-busiest = Lo que añade esa carga
print-ws-noise-sleepers = Donde se duerme
print-ws-noise-50ft = Donde miden los parques nacionales
print-ws-noise-sleepers-busiest = Donde se duerme, en el minuto de mayor carga
print-ws-noise-50ft-busiest = Donde miden los parques nacionales, en el minuto de mayor carga
print-ws-noise-sets-formula = Generadores uno junto a otro: 10 × log₁₀(cuántos son) más.
print-ws-noise-busiest-formula = En el minuto de mayor carga: nivel + lo que añade más carga. Ninguna placa dice cuánto: supusimos 10 dB(A) de un cuarto de la plena carga, o menos, a la plena carga. Entre ambos: 10 dB(A) × (carga entonces − carga a la que se midió) ÷ 75 %.
print-ws-assumed = Lo que supusimos
print-ws-assumed-how = De lo que no sabíamos, supusimos el peor caso.
print-ws-column-what = Qué
print-ws-column-figure = Valor
print-ws-column-part = Parte
print-ws-column-fed-by = Recibe de
print-ws-column-factor = λ
print-ws-column-breaker = { -breaker(form: "One") }
print-ws-column-breaker-at = { -breaker(form: "One") } de
print-ws-column-protected-by = Lo protege
print-ws-column-plug-amps = Clavija
print-ws-column-hours = Horas, A
print-ws-column-short = Corto, A
print-ws-column-hours-watts = Horas, W
print-ws-column-short-watts = Corto, W
print-ws-column-cord = Cable
print-ws-column-wire = Calibre
print-ws-column-wire-amps = Conductor
print-ws-column-length = Largo
print-ws-column-ohms = R
print-ws-column-ohms-kilofoot = r, 1000 ft
print-ws-column-ohms-kilometre = r, 1 km
print-ws-column-rating = Soporta
print-ws-column-load = Aparato
print-ws-column-at = En
print-ws-column-watts = Vatios
print-ws-column-watts-hours = Vatios × horas
print-ws-column-volts = Voltios
print-ws-column-amps = Amp.
print-ws-column-amps-ohms = I × R, cable por cable
print-ws-column-start-watts = Inicio, W
print-ws-column-start-amps = Inicio, A
print-ws-column-start-times = k
print-ws-column-lost = Pierde
print-ws-column-lost-percent = Cuota
print-ws-column-left = Queda
print-ws-column-level = Nivel
print-ws-column-which = Cuáles
print-ws-column-coiled = Enrollado
print-ws-column-mark = Indica
print-ws-column-value = Valor
print-ws-column-assumption = Suposición
print-ws-column-air-share = Aire
print-ws-column-distance = Distancia

print-ws-noise-free-field = En campo abierto, con una fuente pequeña: 6 dB menos cada vez que se duplica la distancia.
print-ws-marks = Detrás de un valor:
print-ws-mark-plan = P
print-ws-mark-plan-is = de su plan
print-ws-mark-assumed = S
print-ws-mark-assumed-is = no se sabe, así que lo supusimos

## Hoja de cálculo, página 1

print-ws-diagram = Esquema unifilar
print-ws-diagram-fed = { $part }, alimentado por { $from }
print-ws-case-marked = { $name }, según la placa
print-ws-case-here = Aquí
print-ws-case-powers = en marcha { $running }, pico { $peak }
print-ws-case-powers-here = { $running } ({ $kilowatts } kW) en marcha, pico { $peak }, a { $elevation } y { $air }
print-ws-case-system = Tensión
print-ws-case-legs = { $volts } en cada una de dos fases
print-ws-case-joined = Unido a tierra en
print-ws-breaker-at = { $amps } ({ $at })
print-ws-gfci-works = en { $by }
print-ws-gfci-no = NO
print-ws-gfci-unknown = NO SE SABE
print-ws-symbol-generator = generador
print-ws-symbol-box = caja
print-ws-column-type = Tipo
print-ws-column-gfci = { -gfci }
print-ws-column-parts = Partes
print-ws-dangers = Peligros
print-ws-assumed-more = { $count } más cerca del final.
print-ws-rules = Reglas que encontraron algo, con sus fuentes
print-ws-sources = Fuentes
print-ws-sign-name = Comprobado por
print-ws-sign-license = Licencia
print-ws-sign-date = Fecha
print-ws-sign-signature = Firma
