### Safety. What was learned at camp.

# What people type for it, with spaces between.
learned-word-alarm = alarma alarmas monóxido monoxido co mareo mareos mareado mareada mareados náusea náuseas nausea nauseas desmayo desmayado desmayada inconsciente vómito vómitos vomitó vomitar cabeza
learned-word-fire = fuego incendio incendios llama llamas
learned-word-shock = descarga descargas calambre calambres cosquilleo hormigueo electrocutado electrocutada
learned-word-hot = caliente calientes blando blanda derretido derretida fundido fundida quemado quemada quemó humo humea huele olor marrón pardo parda chispa chispas zumba zumbido
learned-word-warm = tibio tibia
learned-word-very = muy demasiado
learned-word-not = no nunca nada sin
learned-word-trip = disparó dispara disparado saltó salta
# The numbers from one to twenty, then thirty and forty, each with its other forms after a slash. A half makes another
# number of what comes with it.
learned-word-number = un/una/uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis/dieciseis diecisiete dieciocho diecinueve veinte treinta cuarenta
learned-word-half = media medio
learned-tripped = Se disparó con { $amps }, así que desde ahora el plan deja pasar por { $part } { $counted } como máximo. Pare el motor y luego toque el { -breaker } y las clavijas. Si algo está caliente, marrón o huele, no lo use.
# $demand: what the plan runs there at once.
learned-tripped-planned = El plan tiene ahí { $demand }, y el { -breaker } se disparó. Desde ahora el plan deja pasar por { $part } { $counted } como máximo. Pare el motor y luego toque el { -breaker } y las clavijas. Si algo está caliente, marrón o huele, no lo use.
learned-tripped-known = El plan ya deja pasar solo { $marked } por { $part }. Nada cambia.
learned-tripped-made = El { -breaker } de { $part } está marcado { $marked }. A { $amps } hizo su trabajo: había demasiado encendido. Encienda menos a la vez.
learned-hot = Pare el motor y desenchufe lo que está caliente. El plan dice ahora: no use { $part }.
learned-warm = Una parte en su límite se pone algo tibia. Extienda los cables. Pare pronto el motor y toque { $part } otra vez. Si está caliente o blando, no lo use y escriba “caliente” aquí.
learned-meter-low = Usted leyó { $volts } en { $part }. Esperábamos { $least } o más con todo encendido. Si algo huele o echa humo, pare el motor ya. Si no, mida primero en un { -receptacle } del generador, con lo mismo encendido. Si también ahí marca menos de { $source }, el generador está sobrecargado o tiene algún defecto. Apague cosas y mida otra vez en los dos sitios. Si marca más de { $more }, una clavija, un cable o una caja en el camino a { $part } está mal. Entonces pare el motor y toque cada una. No use lo que esté caliente, blando, marrón o flojo.
learned-meter-high = Usted leyó { $volts } en { $part }. Más de { $least } puede quemar lo que está enchufado, y quizá haya un neutro roto. Pare el motor y desenchufe todo. Haga revisar el generador, y cada cable y caja hasta { $part }, antes de volver a usarlos.
learned-meter-raised = Usted leyó { $volts } en { $part }. Más de { $least } puede dañar la electrónica. Desenchufe los aparatos electrónicos y mida otra vez con lo demás encendido. Si sigue marcando más, haga revisar el generador.
learned-meter-fine = Esperábamos { $least } o más en { $part } con todo encendido. Usted leyó { $volts }. Si había menos encendido, mida otra vez con todo.
learned-meter-unknown = El plan no usa nada en { $part }, así que no podemos decir qué debe marcar allí un medidor. Por debajo de { $least }, apague cosas: los motores pueden sobrecalentarse.
learned-ran-less = Desde ahora el plan cuenta con { $hours } por { -tank } como máximo.
learned-ran-more = El plan ya cuenta, en algún momento del día, con { $hours } por { -tank } o menos. Se queda con esa cifra menor.
learned-ran-unknown = El plan no dice cuánto dura un { -tank } con qué carga, así que esto aún no cambia nada. Búsquelo en el manual y anote esas horas en el plan.
learned-print = Imprima de nuevo y ponga antes de enchufar: { $what }.
learned-no-print = No hace falta imprimir nada de nuevo.
learned-same = Primero haga lo que dice arriba. Para el plan es solo una nota: la tarjeta, “tallywatt check” y “tallywatt may” no la tienen en cuenta.
learned-labels = { $count ->
    [one] la etiqueta { $names }
   *[other] las etiquetas { $names }
  }
learned-card = { $side ->
    [0] la tarjeta
   *[other] la tarjeta (cambia la cara { $side })
  }
learned-cautions = las precauciones
learned-look = la hoja de revisión
learned-worksheet = la memoria de cálculo
learned-wrote = Lo anotamos en { $path }.
learned-no-part = No sabemos a qué parte se refiere. Nombre un { -receptacle }, un cable o una caja como dice su etiqueta. Si algo está caliente o huele, primero pare el motor y desenchúfelo.
learned-parts = Nombró varias partes: { $parts }. Nombre una.
learned-no-figure = No encontramos amperios, voltios ni horas que entendamos, o hay dos iguales.
learned-no-amps = El plan no usa nada en { $parts }, así que necesitamos saber a cuántos amperios se disparó. Sume los amperios de todo lo que estaba encendido ahí.
learned-say-amps = Después escríbalo así: tallywatt learned { $plan } { $id } se disparó a 13 A
learned-no-breaker = El plan no tiene { -breaker } para { $parts }. Nombre el { -receptacle } al que sirve.
learned-say = Dígalo como uno de estos. Un { -breaker }: “front se disparó”, o “front se disparó a 13 A” si sabe los amperios de todo lo encendido. Un medidor: “box-left 109 V”. El { -tank } lleno: “7 h”. Calor u olor: “tents caliente”. También: “GFCI front”, “alarma de CO”, “descarga en front”.
learned-tripped-unknown = No sabemos qué número lleva el { -breaker } de { $part }, así que { $amps } no cambia nada. Mírelo y anote ese número en el plan.
learned-meter-compare = Usted leyó { $volts } en { $part }. Esperábamos { $least } o más con todo encendido. Mida ahora un { -receptacle } del generador, con lo mismo encendido. Si marca más de { $more }, una clavija, un cable o una caja en el camino está mal. Entonces pare el motor y toque cada una.
learned-meter-source = Usted leyó { $volts } en { $part }. Por debajo de { $least }, el generador está sobrecargado o tiene algo mal. Apague cosas. Si sigue bajo, haga revisar el generador.
learned-meter-none = Que un medidor no marque nada no quiere decir que { $part } esté sin tensión. Quizá un { -breaker } o un { -gfci } esté apagado, o un conductor roto. Pare el motor antes de tocar allí una clavija.
learned-gfci = Un { -gfci } cortó la corriente en { $part }: quizá algo enchufado en él tenga una fuga. Desenchufe todo eso. Presione RESET una vez. Enchufe las cosas una por una, y no use lo que lo dispare otra vez.
learned-shock = Pare el motor y luego desenchufe el cable en el generador. Llame al { $call } si acaba de pasar. Vaya al médico después de toda descarga, también de una pequeña. Que un { -electrician } revise el generador, el cable y el aparato antes de que alguien los use. Luego escriba dónde, para que el plan lo sepa: “descarga en kettle”.
learned-shock-at = Pare el motor y luego desenchufe el cable en el generador. Llame al { $call } si acaba de pasar. Vaya al médico después de toda descarga, también de una pequeña. El plan dice ahora: no use { $part }. Tampoco use nada más que estuviera enchufado allí. Que un { -electrician } lo revise todo.
learned-alarm = Todos al aire libre, ya. Llame al { $call } y diga: monóxido de carbono. Nadie vuelve a entrar hasta que los bomberos lo digan.
learned-fire = Aleje a todos, ya. Llame al { $call }. Pare el motor solo si el camino hasta él está libre. No eche agua sobre combustible ardiendo ni sobre nada que pueda tener corriente.
learned-not = Entendemos solo lo que pasó: no escriba lo que no pasó. La lectura de un medidor cuenta solo con todo encendido.
learned-no-trip = Si un { -breaker } se disparó, dígalo: “front se disparó a 13 A”. Los amperios solos no cambian nada.
learned-take-off = { $count ->
    [one] Quite la etiqueta { $names }: ya no la hay.
   *[other] Quite las etiquetas { $names }: ya no las hay.
  }
