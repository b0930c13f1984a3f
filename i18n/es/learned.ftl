### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-hot = caliente blando blanda derretido derretida quemado quemada
learned-word-warm = tibio tibia
learned-tripped = Desde ahora el plan cuenta con que { $part } se dispara a { $amps }, no a { $marked }. Pegue las etiquetas nuevas antes de enchufar otra vez.
learned-tripped-known = El plan ya cuenta con que { $part } se dispara a { $marked }. Nada cambia.
learned-tripped-made = El { -breaker } de { $part } está marcado { $marked }. A { $amps } hizo su trabajo: había demasiado encendido. Encienda menos a la vez.
learned-hot = Pare el motor y desenchufe { $part }. El plan dice ahora: no se use.
learned-warm = Un poco de calor es normal en un cable que lleva todo lo que soporta. Extiéndalo. Revise pronto { $part } otra vez. Si está caliente o blando, pare el motor y escriba “caliente” aquí.
learned-meter-low = Usted leyó { $volts } en { $part }. Esperábamos { $least } o más con todo encendido. Algo en el camino está mal. Pare el motor y toque cada clavija y cada cable hasta el generador. No use lo que esté caliente, blando, pardo o flojo. Si todo está frío, haga revisar el generador.
learned-meter-high = Usted leyó { $volts } en { $part }. Más de { $least } puede quemar lo que está enchufado, y quizá el neutro esté roto. Pare el motor y haga revisar el generador.
learned-meter-fine = Esperábamos { $least } o más en { $part } con todo encendido. Usted leyó { $volts }: no hay señal de una mala conexión.
learned-meter-unknown = El plan no usa nada en { $part }, así que no podemos decir qué debe marcar allí un medidor. Por debajo de { $least }, apague cosas: los motores pueden calentarse demasiado.
learned-ran-less = Desde ahora el plan cuenta con { $hours } por { -tank } como máximo.
learned-ran-more = El plan ya cuenta con menos de { $hours } en algún momento del día, o con lo mismo. Se queda del lado prudente.
learned-ran-unknown = El plan no dice cuánto dura un { -tank } con qué carga, así que esto aún no cambia nada. Búsquelo en el manual y anote esas horas en el plan.
learned-print = Imprima de nuevo: { $what }.
learned-no-print = No hace falta imprimir nada de nuevo.
learned-labels = { $count ->
    [one] la etiqueta { $names }
   *[other] las etiquetas { $names }
  }
learned-card = la tarjeta
learned-cautions = las precauciones
learned-look = la hoja para mirar
learned-worksheet = la hoja de cálculo
learned-wrote = Lo anotamos en { $path }.
learned-no-part = No sabemos a qué parte se refiere.
learned-parts = Nombró varias partes: { $parts }. Nombre una.
learned-no-figure = No encontramos amperios, voltios ni horas que entendamos.
learned-no-breaker = El plan no tiene { -breaker } para { $parts }. Nombre la toma a la que sirve.
learned-say = Dígalo de uno de estos modos. Sume lo que estaba encendido: “front 13 A”. Con un medidor: “box-left 109 V”. Con el { -tank } lleno: “7 h”. Al tacto: “tents caliente”.
