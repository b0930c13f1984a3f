# The interview. `ask-ID` is a question, under 60 columns; `.why` one line on why, or where to
# read the answer; `.help` is what `?` tells; `.row` the question's name on the review page.

progress = Parte { $number } de { $total }: { $part }
# The same for the things to look at. “More”: what earlier answers led to.
progress-look = Mirar: { $number } de { $total }
progress-look-more = Algo más que mirar: { $number } de { $total }
part-asked-generator = el generador
part-asked-outlets = sus { -receptacle(form: "many") }
part-asked-loads = lo que enchufa
part-asked-site = el lugar
part-asked-gear = cables y cajas

# Said before the first question.
interview-welcome =
    Preguntas cortas, en cinco partes: su generador, sus { -receptacle(form: "many") }, lo que enchufa, el lugar, sus cables y cajas.
    Para elegir la respuesta entre paréntesis o marcada con *, presione Enter. Si tiene dudas, elija “No lo sé”. Entonces suponemos la respuesta más peligrosa, y lo decimos. Ctrl-C termina y guarda sus respuestas.

hint-list = Flechas o texto, Enter. Esc: volver
hint-many = Enter marca/quita. ← →: cuántos. Tab: arriba. Esc: volver
list-nothing = Nada así. Esc: verlo todo
# Together under 38 columns: a hint that wraps is drawn badly by a narrow terminal.
hint-keys = ?: ayuda, Esc: volver
hint-go-on = Enter: seguir
hint-unknown = o no sé
hint-none = ninguno
hint-enter-unknown = Enter: no sé
hint-between = ,{" "}

# "desconocido" is too long for the hints.
typed-unknown = no sé
    .also = no se, no lo sé, no lo se, nose, desconocido, desconocida, ni idea, no estoy seguro, no estoy segura
# "nada" would be read as "type nothing".
typed-not-bought = no comprado
    .also = por comprar, aún no comprado
typed-none = ninguno
    .also = ninguna, no, nada
# Without an accent.
typed-picture = esquema
    .also = árbol, arbol, dibujo
# The word between a level and its distance, as in "58 dBA at 23 ft".
typed-at = a
# Words ahead of a figure that is judged by eye, and past it, small letters, set apart by commas. The figure
# counts as typed. What makes it larger, smaller or doubtful, such as "al menos", has no place here.
typed-about = unos, unas, como, aproximadamente, aprox., aprox, más o menos, mas o menos, alrededor de, ~, ≈
    .after = más o menos, mas o menos, aproximadamente, aprox., aprox, o así, o asi
# Words for units that somebody may type, small letters, set apart by spaces. Each attribute is
# named by the unit that is meant: feet, metres, inches, amperes, volts, watts, hours, minutes,
# US gallons, litres. A word that means anything else to anybody has no place here.
typed-unit = -
    .ft = pies pie
    .m = metros metro
    .in = pulgadas pulgada
    .A = amperios amperio amperes ampere amps amp
    .V = voltios voltio volts volt
    .W = vatios vatio watts watt
    .h = horas hora
    .min = minutos minuto
    .gal = galones galón galon
    .L = litros litro
    .step = pasos paso

# `.also`: other ways to type it.
pick-yes = Sí
    .also = s, si
pick-no = No
    .also = n
pick-unknown = No lo sé
    .also = no se no lo se ns
pick-look-first = No lo sé: parar aquí e ir a mirar
pick-explain = ? Más información
pick-picture = Mostrar el esquema hasta ahora
pick-removed = Quitar esto

label-place = { $id } ({ $shape })
about-gear = { $id }, { $what }
# Something in this part is not known, and taken for the unsafe case.
label-marked = ! { $row }
label-row = { $title }: { $shown }

shown-unknown = no se sabe
shown-open-one = sin preguntar
shown-unused = no usar aún
shown-in = en { $place }
shown-times = { $count } unidades

suggest-generator-name = generador
suggest-load-name = Algo
suggest-site-name = Fin de semana

# What somebody may answer, in the reader's units.
example-tank = { $measure ->
    [metric] 4.5 L
   *[customary] 1.2 gal
}
example-noise-far = { $measure ->
    [metric] 7 m
   *[customary] 23 ft
}
example-noise-near = { $measure ->
    [metric] 3 m
   *[customary] 10 ft
}
example-near = { $measure ->
    [metric] 12 m
   *[customary] 40 ft
}
example-altitude = { $measure ->
    [metric] 900 m
   *[customary] 4200 ft
}
example-sea = { $measure ->
    [metric] 0 m
   *[customary] 0 ft
}
example-air = { $measure ->
    [metric] 31 C
   *[customary] 88 F
}
example-length = { $measure ->
    [metric] 15 m
   *[customary] 50 ft
}

# ---- The generator

ask-generator-name = ¿Cómo llama usted a su generador?
    .why = El nombre va en su etiqueta.
    .help = Cualquier nombre corto: su color, su dueño. Puede cambiarlo después.
    .row = Nombre

ask-generator-rated = ¿Cuánta potencia da el generador?
    .why = Vea su placa (etiqueta). Si hay dos números, escriba ambos: 2800 W, 3300 W.
    .help =
        Busque dos números en su placa o en su manual. El menor es la potencia nominal (“running” o “rated”): la que da durante horas. El mayor es la potencia máxima: la que da unos segundos, para que arranque un motor. Escriba ambos, separados con una coma.
        Si solo hay uno, escriba ese. Después preguntamos cuál de los dos es. El número grande de su nombre es a menudo la potencia máxima.
        Si la placa solo da amperios y voltios, multiplíquelos: 20 A a 120 V son 2400 W.
    .row = Potencia nominal

ask-generator-peak = ¿Cuántos vatios da como máximo, por unos segundos?
    .why = En su placa: vatios “starting”, “surge” o “peak”.
    .help =
        Un motor, como el de un { -fridge }, toma al arrancar de dos a seis veces su potencia habitual, por un momento. La potencia máxima nos dice si el generador puede arrancarlo.
    .row = Potencia máxima

ask-generator-figure = ¿Es esa su potencia nominal o la máxima?
    .why = El número de su nombre suele ser la máxima.
    .help =
        Usted dio un solo número. Si es parte del nombre, o el único de la caja, suele ser la potencia máxima: la que da unos segundos. Si al lado dice “running”, “rated” o “continuous”, es la nominal.
        Si no lo sabe, suponemos que es la máxima, y que la nominal es tres cuartos de ella.
    .row = Ese número es
pick-generator-figure-running = La potencia nominal
pick-generator-figure-peak = La potencia máxima

ask-generator-voltage = ¿Qué tensión da?
    .why = Casi todos los pequeños dan solo 120 V. Vea su placa.
    .help =
        Un { -receptacle } doméstico normal es de 120 V. Un generador de 120/240 V tiene también un { -receptacle } con cuatro ranuras para clavijas grandes, o dice 120/240 V en su placa.
        Un generador así tiene dos mitades. Cada { -receptacle } de 120 V puede usar solo una mitad de la potencia.
    .row = Tensión
pick-generator-voltage-120 = Solo 120 V
pick-generator-voltage-120-240 = 120 V y 240 V

ask-generator-neutral = ¿Dice su manual “floating” o “bonded neutral”?
    .why = Neutro: el hilo por el que vuelve la corriente. ¿Dudas? “No lo sé”.
    .help =
        De eso depende cómo se prueban las tomas. Busque en el manual o cerca de los { -receptacle(form: "many") } “floating neutral” (neutro flotante: no está unido a nada) o “neutral bonded to frame” (neutro unido al chasis).
        ¿Hay en algún { -receptacle } una clavija sin cable (una clavija de unión neutro-tierra)? Déjela puesta y pregunte al dueño. Nunca ponga una usted mismo, salvo que un { -electrician } se lo diga.
        No abra el generador ni conecte nada por su cuenta. Si no lo sabe, para las pruebas suponemos que es flotante, y para las descargas, lo peor de los dos.
    .row = Neutro
pick-generator-neutral-floating = Flotante: sin unir a nada
pick-generator-neutral-plug = Clavija de unión (sin cable) puesta
pick-generator-neutral-bonded = Unido al chasis

ask-generator-inverter = ¿Es un generador inversor?
    .why = En la carcasa dice “inverter”. Suele ser silencioso y cerrado.
    .help =
        Un generador inversor suele ser silencioso, con carcasa por todos lados, y tiene un interruptor que deja al motor ir más despacio. Su placa o su manual dice “inverter”.
        Uno de bastidor abierto con un { -tank } redondo encima por lo general no lo es.
    .row = Inversor

ask-generator-sets = ¿Un generador, o dos unidos por un kit?
    .why = Unidos (en paralelo) funcionan como uno. Si no: un plan para cada uno.
    .help =
        Solo algunos generadores inversores pueden unirse, y solo con el kit que su fabricante vende para ellos.
        Dos generadores que van separados, cada uno con sus cables, no están unidos: haga un plan para cada uno.
    .row = Generadores unidos
pick-generator-sets-1 = Uno solo
pick-generator-sets-2 = Dos, unidos por un kit
pick-generator-sets-3 = Tres, unidos por un kit
pick-generator-sets-4 = Cuatro, unidos por un kit

# Safety.
ask-generator-kit = ¿Es el kit del fabricante para justo estos modelos?
    .why = Unidos de otro modo pueden quemarse y dejar patas con tensión al aire.
    .help = El manual del kit nombra los generadores para los que sirve. Si los suyos no están, o el cable entre ellos es casero, la respuesta es no. Si no lo sabe, suponemos que no.
    .row = Kit del fabricante

ask-generator-limit = ¿Para cuántos amperios está hecho el kit?
    .why = Está en el kit, junto a su { -receptacle } o { -breaker }. Por ejemplo: 30 A.
    .help = Si no lo sabe, suponemos que no está hecho para más de lo que da un solo generador.
    .row = Kit hecho para

ask-generator-fuel = ¿Qué combustible quema?
    .why = El combustible cambia la potencia y lo que dura un { -tank }.
    .help = Si quema más de uno, elija el que va a llevar. Si no lo sabe, suponemos propano. Con propano, un generador da un poco menos de potencia.
    .row = Combustible
pick-generator-fuel-gasoline = Gasolina
pick-generator-fuel-propane = Propano
pick-generator-fuel-diesel = Diésel

ask-generator-rated-on = ¿Para qué combustible son sus vatios?
    .why = Con propano da cerca de un décimo menos. Vea la placa.
    .help = El manual de un generador para dos combustibles trae dos líneas de vatios. ¿Cuál escribió como su potencia? Si no lo sabe, suponemos que era la de gasolina, y contamos un décimo menos para propano.
    .row = Vatios dados para
pick-generator-rated-on-gasoline = Gasolina
pick-generator-rated-on-propane = Propano

ask-generator-tank = ¿Cuánto combustible cabe en su { -tank }?
    .why = Como { example-tank }. Vea el manual.
    .help = Para propano, escriba lo que contiene su cilindro como líquido, o “no sé”.
    .row = Capacidad

ask-generator-runtime = ¿Cuánto tiempo funciona con un { -tank }?
    .why = Como: 25 % 8.5 h, 100 % 3.1 h. Vea el manual.
    .help =
        Los fabricantes publican las horas a un porcentaje de la carga nominal. Escriba el porcentaje y después las horas. Si son varios pares, sepárelos con comas.
        Un par basta. Dos son mejor.
    .row = Tiempo de marcha

ask-generator-noise = ¿Cuánto ruido hace, y a qué distancia se midió?
    .why = Como: 58 dBA a { example-noise-far }, 25 %. Vea el manual.
    .help =
        El número por sí solo dice poco: 58 dBA a { example-noise-far } es más ruido que 58 dBA a { example-noise-near }. La mayoría de los fabricantes mide a { example-noise-far } y con un cuarto de la carga.
        El porcentaje de carga, al final, puede faltar.
    .row = Ruido

# ---- Its outlets

ask-outlet-list = Sus { -receptacle(form: "many") }: ¿cómo son los orificios?
    .why = Compare orificios y nombre (5-20R). Buscar: gordo, 4 ranuras. ?: dibujos.
    .help =
        Un { -breaker } es el botón o interruptor pequeño cerca del { -receptacle } que lo corta cuando hay demasiado encendido. Tiene un número: 15, 20, 30. Mírelo: no siempre es el número que corresponde a la forma del { -receptacle }. Si es otro, o no lo puede leer, elija “otro número”.
        Mire los orificios y el nombre moldeado al lado. Un par, uno junto al otro, con un solo { -breaker } cuenta como uno. Si hay dos iguales con dos { -breaker(form: "many") }, marque 2.
    .row = { -receptacle(form: "Many") }
pick-outlet-list-done = No tiene más

ask-outlets-places = ¿Cómo están dispuestos los que se parecen?
    .why = Así aparecen en las etiquetas y en la tarjeta.
    .help = Si están uno junto al otro, se llaman izquierda y derecha. Si uno está encima del otro, arriba y abajo. Con números, usted elige cuál es el 1 al pegar las etiquetas.
    .row = Los que se parecen
pick-outlets-places-across = { pick-out-places-across }
pick-outlets-places-down = { pick-out-places-down }
pick-outlets-places-number = { pick-out-places-number }

ask-outlet-face = ¿Qué { -receptacle }, y qué número en su { -breaker }?
    .why = Para buscar, escriba 30, giro o doméstico.
    .help =
        Un { -breaker } es el botón o interruptor pequeño cerca del { -receptacle } que lo corta cuando hay demasiado encendido. Tiene un número: 15, 20, 30. Mírelo: no siempre es el número que corresponde a la forma del { -receptacle }. Si es otro, o no lo puede leer, elija “otro número”.
        Mire los orificios y el nombre moldeado al lado. Un par de { -receptacle(form: "many") } iguales, uno junto al otro, es un tipo. Los que tienen { -breaker(form: "many") } distintos se nombran uno por uno.
    .row = Forma
# Under 37 columns: a longer row is cut on a narrow terminal.
pick-face-usual = { $shape } ({ $code }), con { $amps } A
pick-face-other = { $shape } ({ $code }), otro número
pick-face-end = { $shape } ({ $code })

ask-outlet-breaker = ¿Qué número hay en su { -breaker }?
    .why = { $about }. Un botón o interruptor, como 20 A.
    .help =
        Un { -breaker } es el botón o interruptor pequeño cerca del { -receptacle } que lo corta cuando hay demasiado encendido. Tiene un número: 15, 20, 30. Escríbalo con su unidad: 20 A.
        Mírelo: no siempre es el número que corresponde a la forma del { -receptacle }. Si no hay número, escriba “no sé”. Entonces suponemos que nada protege los cables, y lo decimos.
    .row = { -breaker(form: "One") }

ask-outlet-name = ¿Cómo quiere llamar a este { -receptacle }?
    .why = { $about }. Corto, sin espacios: frente, giro.
    .help = Letras y cifras, - y _, sin espacios. Va en la etiqueta junto al { -receptacle }.
    .row = Nombre

ask-outlet-sockets = ¿Cuántas clavijas admite?
    .why = { $about }. Uno doble admite 2.
    .help = Cuente los lugares para una clavija que dependen de este único { -breaker }.
    .row = Clavijas

ask-outlet-leg = ¿Qué mitad del generador lo alimenta?
    .why = { $about }. Vea el esquema en el manual.
    .help = Un generador de 120/240 V tiene dos mitades, A y B. Si no lo sabe, suponemos la peor.
    .row = Mitad
pick-outlet-leg-a = Mitad A
pick-outlet-leg-b = Mitad B

ask-outlets-gfci = ¿Qué { -receptacle(form: "many") } tienen botones TEST y RESET?
    .why = Son GFCI, hechos para cortar la corriente si alguien recibe una descarga.
    .help =
        Los dos botones están en el { -receptacle } mismo, o en el panel con las letras GFCI o “ground fault” (falla a tierra). Un { -breaker } con un solo botón no es un GFCI.
        Un GFCI está hecho para cortar rápido si la corriente pasa por una persona. Puede fallar: presione TEST antes de cada uso.
        Si no lo sabe, suponemos que no lo hay, y lo decimos.
    .row = { -gfci(form: "One") }
pick-outlets-gfci-all = Todos
pick-outlets-gfci-none = Ninguno
pick-outlets-gfci-some = Algunos: diré cuáles

ask-outlets-odd = ¿Hay algo raro en sus { -breaker(form: "many") }?
    .why = Uno compartido, o que se dispara antes de tiempo, da menos potencia.
    .help =
        Dos { -receptacle(form: "many") } pueden compartir un { -breaker }: entonces lo que se toma de uno le falta al otro. Lo muestra el esquema del manual; también un panel con menos { -breaker(form: "many") } que { -receptacle(form: "many") }.
        Si un { -breaker } se ha disparado por debajo de su número, desde entonces nos quedamos por debajo de ese número menor.
    .row = { -breaker(form: "Many") }
pick-outlets-odd-no = Nada que yo sepa
pick-outlets-odd-share = Dos o más comparten uno
pick-outlets-odd-early = Uno se dispara demasiado pronto
pick-outlets-odd-both = Ambas cosas: compartido y pronto

ask-outlet-gfci = ¿Tiene este botones TEST y RESET?
    .why = { $about }.
    .help = Los dos botones están en el { -receptacle }, o al lado en el panel.
    .row = { -gfci(form: "One") }

ask-outlets-bonding = ¿En qué { -receptacle } está la clavija de unión?
    .why = Puesta en un GFCI (TEST y RESET), impide que se dispare.
    .help =
        La clavija de unión es una clavija sin cable. Mire los { -receptacle(form: "many") } domésticos del generador.
        Debe ir en uno sin botones TEST y RESET. No abra nada ni toque el cableado.
    .row = Clavija de unión en

ask-outlet-shares = ¿Con qué { -receptacle } comparte el { -breaker }?
    .why = { $about }. Apague un { -breaker } y vea qué se apaga.
    .help = Con una lámpara en cada { -receptacle }, apague un { -breaker }. Los que quedan a oscuras dependen de él.
    .row = Comparte { -breaker } con
pick-outlet-shares-own = Con ninguno: tiene el suyo

ask-outlet-trips = ¿Con cuántos amperios se ha disparado?
    .why = { $about }. Ejemplo: 17 A. Si no se ha disparado, “ninguno”.
    .help = Sume lo que funcionaba cuando se disparó: vatios divididos entre 120 son amperios. Si nunca se ha disparado por debajo de su número, escriba “ninguno”.
    .row = Se disparó con
pick-outlet-trips-none = nunca antes de tiempo

# ---- What is to run

ask-load-list = ¿Qué va a enchufar?
    .why = Para buscar, escriba: hervidor. Marque todo, o elija una lista.
    .help =
        Los vatios son típicos, del lado alto. La placa del aparato mismo es mejor: elija aquí el aparato, y cambie sus vatios en la última página.
        Las listas ya hechas nombran varias cosas a la vez. Después, quite lo que no tiene. Si hay dos iguales, marque 2.
        Si no está en la lista, elija “Otra cosa”.
    .row = Qué
pick-load-list-done = Eso es todo

ask-load-what = ¿Qué va a enchufar?
    .why = Para buscar, escriba: hervidor, { -phone }.
    .help = Si no está en la lista, elija “Otra cosa”.
    .row = Qué
pick-load-what-own = Otra cosa: la escribo yo
pick-load-what-appliance = { $name }, { $watts } W
pick-load-what-occasion = { $name }: { $count } cosas
    .also = habitual lista ocasión ocasion

ask-load-name = ¿Cómo se llama?
    .why = El nombre va en la tarjeta.
    .help = Cualquier nombre corto: inflador, amplificador de Sam.
    .row = Nombre

ask-load-kind = ¿Qué hace sobre todo?
    .why = { $about }. Los motores necesitan más para arrancar.
    .help = Si tiene motor y también da calor, como un secador de pelo, elija lo que más potencia toma. Suponemos que lo que cocina no funciona de noche. Otro calor, quizá sí. Si la salud de alguien depende de ello, también una silla de ruedas, elija siempre eso. Si no lo sabe, suponemos lo peor de cada tipo, y que la salud de alguien puede depender de ello.
    .row = Tipo
pick-load-kind-heater = Da calor: cuarto, cama, pelo, taller
pick-load-kind-cooker = Cocina o calienta agua
pick-load-kind-motor = Mueve un motor, bombea o enfría
pick-load-kind-electronic = Electrónica: { -phone }, TV, sonido
pick-load-kind-lamp = Da luz
pick-load-kind-medical = La salud de alguien depende de ello

ask-load-draw = ¿Cuánto consume? Vea su placa.
    .why = { $about }. Como 1500 W, 12.5 A o 1/2 hp.
    .help =
        La placa está detrás o debajo. W son vatios, A son amperios a 120 V, o a 240 V si el aparato usa 240 V. Para un motor puede escribir los caballos (hp), y su letra de código si la placa la tiene: 1/2 hp code G.
        La placa de un cargador da dos líneas: use INPUT (entrada), no la salida. Puede escribirla tal como está: 100-240V 50/60Hz 1.5A.
    .row = Consume

ask-load-count = ¿Cuántos son?
    .why = { $about }. Cada uno con su propia clavija.
    .help = Diez tiras de luces enchufadas una en otra son una clavija; diez cargadores son diez.
    .row = Cuántos

ask-load-starting = ¿Cuánto toma en el momento en que arranca?
    .why = { $about }. Como 2400 W o LRA 39; o “no sé”.
    .help = La placa puede decir “starting”, “surge” o LRA (amperios con el rotor bloqueado). Escriba los vatios como 2400 W y los amperios como 39 A o LRA 39, tal como están en la placa. Si no lo sabe, suponemos un valor prudente según su tipo, y lo decimos.
    .row = Arranque

ask-load-factor = ¿Qué número sigue a PF en su placa?
    .why = { $about }. Entre 0.1 y 1. Uno bajo significa más amperios.
    .help = PF es el factor de potencia. La placa puede decir también cos φ. Lo que solo da calor tiene 1. Si no lo sabe, suponemos un valor prudente.
    .row = Factor de potencia

ask-load-continuous = ¿Funciona tres horas o más seguidas?
    .why = { $about }. El uso largo calienta cables y { -breaker(form: "many") }.
    .help = Un { -fridge }, un calefactor de noche, las luces de la velada: sí. Un hervidor: no.
    .row = Tres horas o más

# Safety.
ask-load-backup = ¿Qué lo mantiene en marcha si el generador se para?
    .why = { $about }. Un generador se para, también de noche.
    .help =
        Un generador se queda sin combustible, se dispara un { -breaker }, o alguien lo apaga. Quien duerme quizá no lo note.
        Su batería: una hecha para este aparato, que dura toda la noche. Una batería de vehículo con un inversor, o una que usted nunca ha probado, no cuenta.
        Si no lo sabe, suponemos que nada.
    .row = Si se corta la corriente
pick-load-backup-battery = Su batería, toda la noche
pick-load-backup-none = Sin batería, o no toda la noche

ask-load-plug = ¿Qué clavija tiene?
    .why = { $about }. La mayoría tiene la doméstica.
    .help = Dos patas planas y una redonda: 5-15P. Solo dos patas planas: 1-15P.
    .row = Clavija

ask-load-voltage = ¿Qué tensión usa?
    .why = { $about }. Su placa dice 120 V, 240 V o 120/240 V.
    .help = Su clavija trae 120 V y 240 V. Lo que usa 120 V, como casi todo en una { -camper }, está en una mitad del generador. Un aparato solo para 240 V, como un calentador de agua, carga por igual las dos mitades. Uno para 120/240 V, como una secadora de ropa, puede cargarlo todo en una mitad. Si no lo sabe, suponemos lo peor.
    .row = Tensión que usa
pick-load-voltage-120 = Solo 120 V
pick-load-voltage-240 = Solo 240 V
pick-load-voltage-120-240 = 120 V y 240 V

ask-load-wanted = ¿Cuánto importa?
    .why = { $about }. Si falta potencia, lo opcional espera.
    .help = Lo que debe funcionar siempre recibe primero su potencia. Lo opcional espera su turno hasta que sobre potencia.
    .row = Importa
pick-load-wanted-must = Debe funcionar
pick-load-wanted-wish = Opcional

ask-load-hours = ¿Cuándo funciona?
    .why = { $about }. Ejemplo: 07:00-07:20, 19-21. A cualquier hora: “ninguno”.
    .help = Horas del día, de cuándo a cuándo, separadas con comas. Sin ninguna, puede funcionar a cualquier hora.
    .row = Horas
pick-load-hours-none = a cualquier hora

ask-load-on = ¿Dónde se enchufa?
    .why = { $about }. Déjenos elegir, o diga dónde debe estar.
    .help = Solo se muestran los { -receptacle(form: "many") } libres donde entra su clavija. Si nos deja elegir, el plan busca aquellos con los que más cosas pueden funcionar a la vez.
    .row = Se enchufa en
pick-load-on-any = Buscar el mejor { -receptacle }

# ---- The site

ask-site-name = ¿Cómo se llama este fin de semana?
    .why = El nombre va en cada página que imprima.
    .help = Como: Fin de semana en Cala Enebro.
    .row = Nombre

ask-site-ground = ¿Está mojado el suelo donde se usa el equipo?
    .why = En suelo mojado, una descarga es mucho más peligrosa.
    .help = Mojado: lluvia, hierba mojada, charcos, pies descalzos mojados. Húmedo: rocío o tierra húmeda. Seco: un piso seco bajo techo. Si puede llover, elija mojado.
    .row = Suelo
pick-site-ground-wet = Mojado: lluvia, hierba, charcos
pick-site-ground-damp = Húmedo: rocío, tierra húmeda
pick-site-ground-dry = Seco: suelo seco, bajo techo

ask-site-sleepers = ¿A qué distancia del generador está la gente más cercana?
    .why = El escape mata a quien duerme. Escriba la distancia: { example-near }.
    .help =
        Mida desde el generador hasta la { -tent }, el vehículo o el edificio más cercano con gente dentro, también de los vecinos. Donde nadie duerme, como en un mercado, mida hasta donde está la gente. Cuente cada paso como { $step }. Es mejor calcular de menos que de más.
        Los gases de escape llevan monóxido de carbono. No huele. Si no sabe la distancia, suponemos que es demasiado cerca, y lo decimos.
    .row = Gente más cercana

ask-site-stands = ¿Qué hay encima y alrededor del generador?
    .why = Los gases deben poder irse. Si llueve, pare el motor.
    .help =
        Si lo cambia de sitio cuando llueve, responda por ese sitio.
        Al aire libre: nada encima, y { $clear } libres por todos lados. Bajo techo: un techo bien por encima, abierto por todos lados.
        Una { -tent } con la puerta abierta, un porche, un remolque, un garaje abierto o una caja cuentan como interior: en todos ellos ha muerto gente. Una lona o funda sobre el generador cuenta como cubierto. También un toldo o una carpa plegable encima, o una pared cerca.
        Si no lo sabe, suponemos que está dentro o debajo de algo, y lo decimos.
    .row = Sitio del generador
pick-site-stands-open = Aire libre, { $clear } libres alrededor
pick-site-stands-roof = Bajo techo alto, abierto alrededor
pick-site-stands-covered = Bajo lona o toldo, o junto a pared
pick-site-stands-enclosed = En { -tent }, porche, auto, cobertizo

ask-site-alarm = ¿Hay alarma de monóxido de carbono donde se duerme?
    .why = En cada { -tent } o vehículo, que funcione, con pilas nuevas.
    .help = No es lo mismo que una alarma de humo: dice CO o monóxido de carbono. Presione su botón de prueba. Si falta aunque sea en un solo lugar donde se duerme, la respuesta es no. Elija “Nadie …” solo si no duerme nadie, tampoco los vecinos: un mercado o una jornada de trabajo durante el día.
    .row = Alarma de monóxido
pick-site-alarm-yes = Sí, en cada lugar
pick-site-alarm-no = No, o no en todos
pick-site-alarm-nobody = Nadie dormirá aquí ni cerca

ask-site-building = ¿Alimentará la instalación de una casa o cabaña?
    .why = Eso puede matar a quien trabaja en la línea, y a usted.
    .help = Responda No si solo enchufa cosas en el generador, sus cables y sus cajas. Responda Sí si algún cable va de él a un { -receptacle } de pared, una entrada o un tablero de un edificio. Nunca tienda un cable así. Solo un { -electrician } puede conectarlo a un edificio, con un conmutador de transferencia, que separa el edificio de la calle. Si no lo sabe, suponemos que sí.
    .row = Alimenta un edificio

ask-site-altitude = ¿A qué altura sobre el mar está?
    .why = La altura resta potencia. Como { example-altitude }.
    .help = Lo dice un mapa o un teléfono. Cerca del mar, escriba { example-sea }. Si no está claro, calcule hacia arriba, no hacia abajo.
    .row = Altura

ask-site-air = ¿Cuánto calor hará, como máximo?
    .why = El calor resta potencia. Como { example-air }.
    .help = Escriba la máxima del pronóstico, o más si el generador está al sol.
    .row = Aire más caliente

ask-site-quiet = ¿Cuándo debe haber silencio en el campamento?
    .why = Ejemplo: 22:00-06:00, o 10pm-6am. Si nunca, escriba “ninguno”.
    .help = Muchos campamentos prohíben los generadores de noche. Pregunte en la entrada. También vale 10pm-6am. Si un cartel da horas de generador, como 8am-10am y 4pm-8pm, escriba el resto del día: 10am-4pm, 8pm-8am.
    .row = Horas de silencio
pick-site-quiet-none = ninguna

# ---- Cords, adapters and boxes

ask-gear-list = ¿Qué cables, adaptadores y cajas tiene?
    .why = Marque todo, también lo que no piensa usar.
    .help = Nombre también los adaptadores raros: a menudo son los peligrosos. El nombre entre paréntesis, como L5-30, está moldeado cerca de los orificios o de las patas. Si hay dos iguales, marque 2.
    .row = Qué
pick-gear-list-done = Eso es todo

ask-gear-what = ¿Qué cables, adaptadores y cajas tiene?
    .why = Elija lo que es.
    .help = Nombre también los adaptadores raros: a menudo son los peligrosos. El nombre entre paréntesis, como L5-30, está moldeado cerca de los orificios o de las patas.
    .row = Qué
pick-gear-what-extension = Extensión doméstica (5-15)
pick-gear-what-three-way = Cable de 3 salidas domésticas (5-15)
pick-gear-what-strip = Regleta de 6 tomas (5-15)
pick-gear-what-twist-30 = Cable de giro 30 A (L5-30)
pick-gear-what-camper-30 = Cable de { -camper } 30 A (TT-30)
pick-gear-what-twist-30-four = Cable de giro 30 A, 4 patas (L14-30)
pick-gear-what-split-30 = Derivador L5-30 a 3 domésticas
pick-gear-what-split-30-four = Derivador L14-30 a 4 domésticas
pick-gear-what-camper-to-twist = Adaptador clavija L5-30 a TT-30
pick-gear-what-camper-to-home = Adaptador clavija 5-15 a TT-30
pick-gear-what-home-to-camper = Adaptador clavija TT-30 a 5-15
pick-gear-what-four-to-twist = Adaptador clavija L14-30 a L5-30
pick-gear-what-cord = Otro cable o adaptador
    .also = extensión alargador
pick-gear-what-box-twist-30 = Caja, { -breaker(form: "many") }, entrada L5-30
pick-gear-what-box-camper-30 = Caja, { -breaker(form: "many") }, entrada TT-30
pick-gear-what-box-twist-30-four = Caja, { -breaker(form: "many") }, entrada L14-30
pick-gear-what-box-50 = Caja, { -breaker(form: "many") }, entrada 14-50
pick-gear-what-box = Otra caja con { -breaker(form: "many") }
    .also = gris tablero cuadro metal
pick-gear-what-camper = { -camper(form: "One") } o motorhome (RV)
    .also = remolque furgoneta

ask-gear-plug = ¿Qué clavija tiene?
    .why = { $about }: el extremo con patas.
    .help = Busque el nombre moldeado entre las patas.
    .row = Clavija

# Safety.
ask-gear-main = ¿Qué número hay en su { -breaker } principal?
    .why = { $about }: el interruptor que dice “Main”, con amperios.
    .help = Está dentro, junto a los demás { -breaker(form: "many") }. No desatornille nada. Si no lo sabe, suponemos aquello para lo que está hecha su clavija.
    .row = Principal

ask-gear-inside = ¿Cuáles de estos funcionan dentro?
    .why = { $about }. Marque lo que está conectado o se enchufa ahí.
    .help = Marque todo lo que funciona dentro, como su aire acondicionado, su calentador de agua o un televisor. Todo pasa por la clavija y el { -breaker } principal, y no necesita otro { -receptacle }.
    .row = Funciona dentro
pick-gear-inside-done = Eso es todo lo de dentro

ask-gear-ends = ¿Qué { -receptacle(form: "many") } hay en el otro extremo?
    .why = { $about }. Marque cada uno, y cuántos hay.
    .help = Mire los orificios y el nombre moldeado al lado. Marque cada forma. Si hay más iguales, marque cuántos.
    .row = Extremos
pick-gear-ends-done = No tiene más

ask-gear-jacket = ¿Qué hay impreso a lo largo del cable?
    .why = { $about }. Como SJTW 12/3; basta con 12/3.
    .help =
        Lo impreso se repite a lo largo de la cubierta. 12/3 significa tres conductores de calibre 12. Un número de calibre menor (AWG) es un conductor más grueso. Las letras dicen de qué es la cubierta: si hay una W entre ellas, puede usarlo al aire libre.
        Los cables métricos dicen 3G1.5 o 3x2.5 mm2.
        Si no lo puede leer, escriba “no sé”. Entonces suponemos que es un cable delgado de interior, y lo decimos.
    .row = Impreso en él

ask-gear-length = ¿Cuánto mide?
    .why = { $about }. Como { example-length }.
    .help = Una brazada, con los brazos abiertos, mide más o menos lo que usted: cuente brazadas a lo largo del cable. Si aún tiene que comprarlo, escriba hasta dónde debe llegar.
    .row = Largo

ask-gear-outdoor = ¿Está marcado para uso exterior?
    .why = { $about }. El sol y el agua agrietan una cubierta de interior.
    .help = Busque “outdoor” en su etiqueta, o una W entre las letras de la cubierta.
    .row = Exterior

ask-gear-coiled = ¿Quedará una parte enrollada o en un carrete?
    .why = { $about }. Enrollado no se enfría, y puede fundirse.
    .help = Extienda siempre todo el cable. Si queda en un carrete o amontonado, la respuesta es sí.
    .row = Enrollado

ask-hot = ¿Se puso caliente o blando, o alguna de sus clavijas?
    .why = { $about }. Una conexión floja se calienta y puede causar un incendio.
    .help = Tibio es normal con mucha carga. Si no pudo dejar la mano encima, o está marrón o blando, responda sí. Entonces decimos que no se use.
    .row = Se calentó

ask-bought = ¿Ya lo tiene?
    .why = Si aún debe comprarlo, decimos qué buscar.
    .help = Conteste No para lo que solo piensa comprar. Diga lo que sepa, y “No lo sé” para lo demás. Entonces decimos lo que debe estar en el paquete.
    .row = Ya lo tiene
pick-not-bought = Aún no comprado

ask-gear-gfci = ¿Tiene botones TEST y RESET?
    .why = { $about }. Si los tiene, lleva un GFCI incorporado.
    .help = Busque una caja pequeña en el cable con dos botones y las letras GFCI.
    .row = { -gfci(form: "One") }

ask-gear-listed = ¿Es la caja de fábrica, con marca de un laboratorio?
    .why = { $about }. A una casera puede faltarle lo que protege.
    .help = Busque en su etiqueta la marca de un laboratorio de pruebas: entonces está certificada (“listed”). Una caja que alguien construyó no está certificada, por bien hecha que esté.
    .row = De fábrica, certificada

ask-gear-bond = ¿Se unen neutro y tierra dentro de la caja?
    .why = { $about }. Lo dicen sus papeles. No la abra.
    .help = Por el neutro vuelve la corriente. El hilo de tierra está ahí por seguridad. Busque en sus papeles “neutral bonded” (neutro unido a tierra) o “isolated neutral” (neutro aislado). No la abra para averiguarlo. Si no lo sabe, le decimos qué significa eso.
    .row = Neutro unido dentro

ask-gear-from = ¿En qué se enchufa?
    .why = { $about }. Si puede elegir, mejor lo más cerca del generador.
    .help = Solo se muestran los { -receptacle(form: "many") } libres donde entra su clavija. Si no hay, o no se usa, elija “En nada”.
    .row = Se enchufa en
pick-gear-from-none = En nada: no lo usamos

ask-gear-color = ¿De qué color es?
    .why = { $about }. Va en su etiqueta.
    .help = En un campamento hay muchos cables. Por su color, todos encuentran el correcto. Si no tiene un color claro, ponga cinta de un solo color en los dos extremos y elija ese. O elija “Otra cosa” y escriba su propia palabra.
    .row = Color
pick-gear-color-orange = Naranja
pick-gear-color-yellow = Amarillo
pick-gear-color-green = Verde
pick-gear-color-black = Negro
pick-gear-color-blue = Azul
pick-gear-color-red = Rojo
pick-gear-color-gray = Gris
pick-gear-color-white = Blanco
pick-gear-color-brown = Marrón
pick-gear-color-own = Otra cosa: la escribiré
pick-gear-color-none = Ninguno de estos: sin nombre

ask-gear-name = ¿Cómo lo llama?
    .why = { $about }. Va en su etiqueta, para distinguirlo: rayado.
    .help = Letras y cifras, - y _. Va en su etiqueta, para que sepa cuál es cuál.
    .row = Nombre

ask-out-list = ¿Qué { -receptacle(form: "many") } tiene la caja?
    .why = { $about }. Marque cada uno, y cuántos. Un par con un { -breaker } es 1.
    .help = Marque cada forma con el número de su { -breaker }. Si hay más iguales, cada uno con su { -breaker }, marque cuántos. Cuente los { -breaker(form: "many") }, no los orificios.
    .row = { -receptacle(form: "Many") }
pick-out-list-done = No tiene más

ask-out-face = ¿Qué { -receptacle(form: "many") }, y qué { -breaker } tiene cada uno?
    .why = { $about }.
    .help = Los { -receptacle(form: "many") } de la misma forma con un { -breaker } igual son un tipo.
    .row = Forma

ask-out-count = ¿Cuántos así, cada uno con su { -breaker }?
    .why = { $about }. Un par con un solo { -breaker } cuenta como 1.
    .help = Cuente los { -breaker(form: "many") }, no los orificios.
    .row = Cuántos

ask-out-breaker = { $about }: ¿qué número hay en cada { -breaker }?
    .why = Ejemplo: 20 A. Si no lo hay, escriba “ninguno”.
    .help = Un derivador sin { -breaker(form: "many") } no protege nada: escriba “ninguno”. Si los hay sin un número que pueda leer, escriba “no sé”.
    .row = { -breaker(form: "One") }
pick-out-breaker-none = sin { -breaker }

ask-out-gfci = { $about }: ¿botones TEST y RESET?
    .why = Hechos para cortar la corriente si alguien recibe una descarga.
    .help = En el { -receptacle } mismo o en su { -breaker }, con las letras GFCI. Si solo algunos los tienen, responda no.
    .row = { -gfci(form: "One") }

ask-out-places = ¿Cómo están dispuestos?
    .why = { $about }. Así los nombran las etiquetas y la tarjeta.
    .help = Si están uno junto al otro, se llaman izquierda y derecha. Si uno está encima del otro, arriba y abajo. Con números, usted elige cuál es el 1 al pegar las etiquetas.
    .row = Disposición
pick-out-places-across = Uno junto al otro
pick-out-places-down = Uno encima del otro
pick-out-places-number = Por número: 1, 2

ask-out-leg = { $about }: ¿qué mitad del generador alimenta cada uno?
    .why = A o B; o una letra por cada uno, A A B B.
    .help = Un generador de 120/240 V tiene dos mitades, A y B. Una caja reparte entre ellas sus { -receptacle(form: "many") }. Sus papeles dicen cuál está en qué mitad; no abra la caja. Una sola letra vale para todos. O escriba una por cada uno, del primero al último: A A B B. Si no lo sabe, suponemos que todos están en A: así tienen juntos la menor potencia.
    .row = Mitad

ask-out-wire = { $about }: ¿qué calibre de cable dan sus papeles?
    .why = Como 12 AWG, en sus papeles. Nunca abra la caja.
    .help = Solo lo dicen sus papeles. AWG es el calibre: un número menor es un conductor más grueso. No abra la caja para averiguarlo.
    .row = Conductor

# ---- The shapes, in short

face-5-15R = Doméstico
    .also = normal casa pared plano
face-5-20R = Doméstico T
    .also = normal casa pared
face-TT-30R = { -camper(form: "One") }
    .also = autocaravana remolque gordo
face-L5-20R = Giro, 3
    .also = redondo gira bloqueo tres ranuras 3 ranuras
face-L5-30R = Giro, 3
    .also = redondo gira bloqueo tres ranuras 3 ranuras
face-L14-20R = Giro, 4
    .also = redondo gira bloqueo cuatro ranuras 4 ranuras
face-L14-30R = Giro, 4
    .also = redondo gira bloqueo cuatro ranuras 4 ranuras
face-14-30R = Grande, 4
    .also = cuadrado secadora gordo cuatro ranuras 4 ranuras
face-14-50R = Grande, 4
    .also = cuadrado motorhome gordo cuatro ranuras 4 ranuras
face-6-20R = Solo 240 V
    .also = ranura acostada
face-1-15R = Sin tierra
    .also = viejo dos ranuras plano

shape-5-15R = Doméstico, 15 A (5-15R)
shape-5-20R = Doméstico con ranura en T, 20 A (5-20R)
shape-TT-30R = { -camper(form: "One") }, 30 A (TT-30R)
shape-L5-20R = De giro, 3 ranuras, 20 A (L5-20R)
shape-L5-30R = De giro, 3 ranuras, 30 A (L5-30R)
shape-L14-20R = De giro, 4 ranuras, 20 A (L14-20R)
shape-L14-30R = De giro, 4 ranuras, 30 A (L14-30R)
shape-14-30R = Recto, 4 ranuras, 30 A (14-30R)
shape-14-50R = Recto, 4 ranuras, 50 A (14-50R)
shape-6-20R = Solo 240 V, 20 A (6-20R)
shape-1-15R = Doméstico, sin tierra, 15 A (1-15R)
shape-5-15P = Doméstica, 3 patas, 15 A (5-15P)
shape-5-20P = Una pata girada, 20 A (5-20P)
shape-TT-30P = { -camper(form: "One") }, 30 A (TT-30P)
shape-L5-20P = De giro, 3 patas, 20 A (L5-20P)
shape-L5-30P = De giro, 3 patas, 30 A (L5-30P)
shape-L14-20P = De giro, 4 patas, 20 A (L14-20P)
shape-L14-30P = De giro, 4 patas, 30 A (L14-30P)
shape-14-30P = Recta, 4 patas, 30 A (14-30P)
shape-14-50P = Recta, 4 patas, 50 A (14-50P)
shape-6-20P = Solo 240 V, 20 A (6-20P)
shape-1-15P = Doméstica, sin tierra, 15 A (1-15P)

# At most 38 columns and 13 lines, so that a question fits below it. Drawn as on the labels.
drawn-faces =
    Vale el nombre moldeado al lado de los
    orificios, no solo el dibujo. Es de
    memoria; el suyo puede estar al revés.
    {" "}
    {" "}5-15R   5-20R   TT-30R  6-20R
    {" "}|   |  -|   |   /   \   |   -
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30R  L14-30R 14-50R  1-15R
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20R, L14-20R: como 30, menores.
# The same for plugs, seen from their blades: left and right are changed.
drawn-plugs =
    Vale el nombre moldeado entre las
    patas, no solo el dibujo. Es de
    memoria; la suya puede estar al revés.
    {" "}
    {" "}5-15P   5-20P   TT-30P  6-20P
    {" "}|   |   |   -   /   \   -   |
    {" "}  o       o       o       o
    {" "}
    {" "}L5-30P  L14-30P 14-50P  1-15P
    {" "}(   )     --      |     |   |
    {" "}        (   )   |   |
    {" "}  --      --      o
    L5-20P, L14-20P: como 30, menores.

# ---- The review page

ask-review = ¿Está bien así?
    .why = Elija una línea para cambiarla. Con ! suponemos lo peor.
    .help = Cada línea es una parte de su plan. Elija una para ver y cambiar sus respuestas. Donde hay un !, supusimos el caso más peligroso, y la comprobación lo dice. El número junto a “Mirar” cuenta las preguntas sobre eso.
pick-review-check = Comprobar este plan
# $count: how many questions that is.
pick-review-look = Mirar lo que no sabemos ({ $count })
pick-review-add = Añadir toma, aparato o cable
pick-review-add-outlet = Añadir un { -receptacle }
pick-review-add-load = Añadir algo que enchufar
pick-review-add-gear = Añadir un cable, adaptador o caja
pick-review-quit = Parar ahora y guardar mis respuestas
pick-review-stay = Seguir con el plan

ask-review-add = ¿Qué quiere añadir?
    .why = Después vienen sus preguntas.
    .help = Esc vuelve al plan entero.

ask-review-quit = ¿Parar ahora?
    .why = Guardamos sus respuestas.
    .help = Esc vuelve al plan entero.

ask-review-part = { $about }: ¿qué quiere cambiar?
    .why = Elija una línea para responderla otra vez.
    .help = Esc vuelve al plan entero.
pick-review-back = Nada más aquí: volver

part-generator = Generador
part-fuel = Combustible y ruido
part-outlets = { -gfci(form: "Many") }
part-site = Lugar
part-load = Otra cosa
part-out = { -receptacle(form: "Many") } de { $box }

# ---- Between questions

note-load-left = Su lista suma { $all } de { $rated } hasta ahora. Quedan { $left }, menos a gran altura o con calor.
note-load-named = Su lista suma { $all } hasta ahora. No sabemos cuánto da el generador.
note-load-turns = { $all } en total, pero el generador da { $rated }: no todo a la vez. Pueden turnarse.
note-load-cannot-start = { $load }: para arrancar toma { $starting } por un momento. El generador da { $peak } como máximo: no puede arrancarlo.
note-load-too-large = { $load }: consume por sí solo { $this }. El generador da { $rated }: no puede con tanto.

# The first line stands out.
note-danger =
    { $signal }: { $title }
    Por qué: { $why }
    Haga: { $fix }
# Safety. The same where the title says already what we do not know.
note-danger-unknown =
    { $signal }: { $title }
    Haga: { $fix }
# $more: the parts that it was not told of before; $named: whether the title names them.
note-danger-also = { $named ->
        [yes] { $signal }, también: { $title }
       *[no] { $signal }, también para { $more }: { $title }
    }
# It was a danger, and is not gone.
note-danger-milder =
    Ahora solo { $signal }: { $title }
    Haga: { $fix }
note-danger-gone = Ese peligro ya no está: { $title }
# Only because these parts are in no outlet now; $named: whether the title names them.
note-danger-unplugged = { $named ->
        [yes] No está enchufado, así que por ahora no hay peligro: { $title }
       *[no] Ahora sin enchufar: { $more }. Así que por ahora no es un peligro: { $title }
    }
# A bare number, with the unit it was taken in.
note-unit = Entendimos { $answer }.
note-added = Añadido ({ $count }): { $things }.
# Of generators that run as one.
note-joined = Contamos { $rated } para cada generador. Si eso es para todos juntos, vuelva atrás y escriba los vatios de uno.

picture-set = { $name }
picture-place = - { $id } ({ $shape }): { $amps }
picture-refused = - { $id } ({ $shape }): no usar
picture-guarded = - { $id } ({ $shape }): enchufe solo un cable con GFCI
picture-guarded-ahead = - { $id } ({ $shape }): enchufe antes un cable con GFCI
picture-load = * { $load }
picture-unplaced = Por ahora sin { -receptacle }: { $ids }
picture-loose = Sin enchufar: { $ids }

note-first-line = De eso tomamos solo la primera línea.
note-not-bought = Al final le decimos qué buscar cuando lo compre.
note-unknown = Anotado: “No lo sé”.
# Safety. $part: the id of a cord or box, and what it is; $rest: what is plugged in past it, and $count how many.
note-unplugged = { $part }: en el plan queda desenchufado{ $count ->
        [0] {""}
       *[other] , y nada de lo que va después tiene corriente: { $rest }
    }. Así que no lo hemos comprobado. No lo use hasta saberlo. Entonces elija su línea en la última página.
# It fits one place, and nobody is asked. $part, $place: ids.
note-plugged = “{ $part }” va enchufado en “{ $place }”: no hay otro libre donde entre.
# Safety.
note-fits-nowhere = La clavija de “{ $part }” no entra en ningún { -receptacle } hasta ahora. Si no aparece otro, déjela sin enchufar. Nunca lime, doble ni corte una clavija.
# Safety. $adapters: one or more of the list, each in quotation marks.
note-fits-by-adapter = La clavija de “{ $part }” no entra en ningún { -receptacle } hasta ahora. Con este adaptador sí: { $adapters }. Use solo uno certificado por un laboratorio y márquelo con sus cables. Nunca lime, doble ni corte una clavija.
# What was read on a cord. $wire: 12 AWG; $count: how many wires, or unknown.
note-jacket = Leímos: calibre { $wire }{ $count ->
        [unknown] {""}
       *[other] , { $count } hilos
    }{ $outdoor ->
        [yes] , para exterior
        [no] , para interior
       *[unknown] {""}
    }.
plain-list-long = Hay { $count } para elegir. Escriba parte de un nombre para ver los que coinciden.
plain-list-found = Estos coinciden. Escriba un número o más del nombre.
plain-not-text = No podemos leer una letra de esa línea. Escríbala otra vez.
plain-keys = Escriba un número o parte de un nombre. ?: ayuda, <: volver
plain-many-keys = Escriba números o nombres, con comas. 2 x 5 es dos veces el número 5. ?: ayuda, <: volver
plain-line-keys = ?: ayuda, <: volver
plain-row = { $number }. { $text }
plain-default = Enter: { $text }

reject-choice = Elija uno de la lista.
reject-nothing-inside = ¿Nada de nada? Si no funciona nada dentro, presione Enter otra vez.
reject-mark-one = Marque al menos uno.
reject-ready-made = Una lista ya hecha cuenta una vez. Si hay dos iguales de algo, marque 2 de eso.
reject-yes-no = Responda sí o no.
reject-empty-text = Escriba un número con su unidad ({ $units }).
reject-no-number = Empiece con un número y después su unidad ({ $units }).
reject-no-unit = A “{ $found }” le falta la unidad. Añádala: { $units }.
# $decimals is the one reading, $thousands the other.
reject-two-readings = { $found } puede significar { $decimals } o { $thousands }. Escriba uno de los dos.
reject-unknown-unit = “{ $found }” no va aquí. Use una de estas: { $units }.
reject-out-of-range = { $field }: debe ser de { $least } a { $most }. Vea si sobra o falta una cifra, o si la unidad es otra.
reject-zero = Debe ser más que cero.
reject-ratio = Un número de { $least } a { $most }, como 0.8.
reject-count = Un número entero de { $least } a { $most }.
reject-ident = Letras y cifras, - y _, sin espacios, hasta 40.
reject-ident-taken = Otra parte tiene ese nombre. Elija uno distinto.
reject-name-empty = Escriba un nombre.
reject-name-long = Como máximo { $most } letras, para que quepa en una etiqueta.
reject-name-signs = Ese signo no puede estar en un nombre.
reject-name-letters = No tenemos letras para imprimir { $characters }. Use otras letras.
reject-wire = Un calibre, como 12 AWG o 2.5 mm².
reject-jacket = Como 12/3, SJTW 12/3, 14 AWG o 3G1.5; o “no sé”.
reject-unknown-shape = Compárelo con estos dibujos. Si ninguno se le parece, no enchufe nada en él y déjelo fuera del plan. Tápelo con cinta: NO USAR. Después elija uno que conozca, o siga adelante. Si no conoce ninguno, pregunte a alguien que los conozca: Ctrl-C termina y guarda sus respuestas.
reject-noise = Nivel y después distancia: 58 dBA a { example-noise-far }. O “no sé”.
reject-runtime = Un porcentaje y después horas: 25 % 8.5 h, 100 % 3.1 h. O “no sé”.
reject-span = De cuándo a cuándo: 22:00-06:00, o 10pm-6am.
reject-draw = Vatios, amperios o caballos: 1500 W, 12.5 A, 1/2 hp.
reject-draw-code = La letra de código es una letra de la A a la V: 1/2 hp code G.
reject-start = Vatios o amperios: 2400 W, 39 A o LRA 39. O “no sé”.
reject-plug-amps = Eso son { $amps }. Su clavija, { $plug }, está hecha para { $rating }. Ningún fabricante vende un aparato así: la clavija o el número no es correcto. Lea otra vez su placa y mire su clavija.
reject-legs = A o B para todos, o una letra por cada uno: A A B B. O “no sé”.
reject-legs-count = Una letra para todos, o { $count } letras, una por cada uno.
reject-peak = La potencia máxima nunca es menor que la nominal, { $rated }. O escriba “no sé”.
reject-starting = Nunca toma menos al arrancar que en marcha, { $running }. O escriba “no sé”.
reject-trips = Eso es más que su número, { $marked }. Demasiado pronto significa por debajo de él.
reject-shares = Un { -breaker } tiene un solo número. Aquí es { $own }, allí { $other }. Vuelva atrás y corríjalo, o elija otro.
reject-no-unknown = Sin esto no podemos seguir. Escriba ? para ver dónde encontrarlo.
reject-no-skip = Esta pregunta necesita una respuesta. Escriba ? para ver la ayuda.
reject-first = Esta es la primera pregunta. Ctrl-C termina y guarda sus respuestas.
reject-full = Un plan no admite más.

interview-no-terminal = las preguntas necesitan una terminal o respuestas, y aquí no hay ninguna de las dos
interview-no-terminal-help = Compruebe en su lugar un archivo de plan: tallywatt check PLAN. O dé las respuestas en un archivo, una por línea: tallywatt --answers ARCHIVO.
interview-too-large = { $path } tiene más partes de las que pueden recorrer las preguntas
interview-too-large-help = Cámbielo con un editor de texto, y después: { $command }.
interview-saved = Guardado { $path }. Para imprimir: { $command }
interview-goes-on = Seguimos con los cambios de este plan que aún no se habían guardado.
interview-no-home = no hay carpeta para ellas; indique una en TALLYWATT_DATA
interview-terminal = la terminal ha fallado: { $reason }
interview-not-kept = No podemos guardar sus respuestas sobre la marcha ({ $reason }). Si se detiene antes del final, se pierden. Al final aún puede guardar el plan.
interview-draft-lost = No podemos leer el borrador { $path }. Lo dejamos como está.
interview-stopped-lost = Detenido. Sus respuestas no se guardaron.
interview-kept = Sus respuestas están guardadas, en el borrador “{ $draft }”.
interview-stopped = detenido; no ha cambiado nada
interview-resume = Ejecute tallywatt otra vez para seguir desde ahí.
interview-resume-question = ¿Seguir con un plan sin terminar?
interview-resume-why = Guardamos cada uno hasta que usted lo imprima.
interview-resume-help = Elija uno por su número o por el principio de su línea. Sigue donde lo dejó. Los demás quedan guardados.
interview-resume-row = { $draft }, { $date }: { $name }, { $age }
interview-resume-row-bare = { $draft }, { $date }, { $age }
interview-age-minutes = { $count ->
        [0] ahora mismo
        [one] hace 1 minuto
       *[other] hace { $count } minutos
    }
interview-age-hours = { $count ->
        [one] hace 1 hora
       *[other] hace { $count } horas
    }
interview-age-days = { $count ->
        [one] ayer
       *[other] hace { $count } días
    }
interview-resume-new = Empezar un plan nuevo

interview-effect = Lo que hizo su cambio:
interview-effect-gone = - ya no está: { $signal }, { $title }
interview-effect-new = - nuevo: { $signal }, { $title }
interview-effect-none = - los hallazgos son los mismos que antes
interview-file-changed = Mientras tanto, otra persona cambió { $path }. Pusimos sus cambios en la versión nueva. Compruébelo otra vez.
interview-after = ¿Qué quiere hacer ahora?
    .why = Lo primero que hay que hacer está arriba.
    .none = Imprímalo, y ponga las etiquetas antes de enchufar.
interview-after-save = Guardar el archivo del plan
interview-after-print = Imprimir etiquetas, tarjeta y demás
interview-after-look = Mirar lo que no sabemos
interview-after-all = Mostrar todo lo que encontramos
interview-after-mend = Mostrar los cambios más fáciles
interview-after-take = Incluir cambios, uno por uno
interview-take = ¿Qué cambios incluye en el plan?
    .why = Todos están marcados. Desmarque los que no hará.
interview-take-done = Incluir lo marcado
interview-after-change = Cambiar algo
interview-after-leave = Parar ahora y guardar mis respuestas
interview-folder = ¿En qué carpeta van?
    .why = Se crea si no existe. El plan también va ahí.
    .help = Escriba un nombre, como: impresos. Presione Enter para usar el nombre que se muestra. No sirve una carpeta que contiene otro plan.
interview-folder-taken = Ya hay un plan en { $dir }. Indique otra carpeta.

id-regular = normal
id-camper = toma-camper
id-twist = giro
id-large = grande
id-outlet = toma
id-cord = cable
id-box = caja
id-left = izquierda
id-right = derecha
id-top = arriba
id-bottom = abajo
id-middle = centro
id-load = aparato
id-our-camper = nuestra-casa-rodante
id-regular-cord = cable-normal
id-twist-cord = cable-giro
id-four-wire-cord = cable-cuatro-hilos
id-camper-cord = cable-camper
id-three-way = cable-triple
id-strip = regleta
id-splitter = derivador
id-twist-splitter = derivador-giro
id-four-wire-splitter = derivador-cuatro-hilos
id-adapter = adaptador
id-camper-adapter = adaptador-camper
id-regular-adapter = adaptador-normal
id-twist-adapter = adaptador-giro
id-twist-box = caja-giro
id-four-wire-box = caja-cuatro-hilos
id-camper-box = caja-camper
id-large-box = caja-grande
# A cord or box named by its color. $color and $word are English words, such as red and box, for the ending of the
# color; $called: what it is called without one.
id-colored = { $called }-{ $color ->
    [orange] naranja
    [yellow] { $word ->
        [box] amarilla
        [strip] amarilla
       *[other] amarillo
    }
    [green] verde
    [black] { $word ->
        [box] negra
        [strip] negra
       *[other] negro
    }
    [blue] azul
    [red] { $word ->
        [box] roja
        [strip] roja
       *[other] rojo
    }
    [gray] gris
    [white] { $word ->
        [box] blanca
        [strip] blanca
       *[other] blanco
    }
   *[brown] marrón
}
