# The command line: help, results and failures.

cli-about = Planifica un generador portátil para un campamento: qué soporta cada { -receptacle }, qué puede funcionar a la vez, qué es peligroso, y las etiquetas y la tarjeta que lo dicen.
cli-after =
    Sin ningún comando, tallywatt le hace una pregunta cada vez e imprime al final.

    Lo que dice no reemplaza a { -local-codes } ni a un { -electrician }.
cli-heading-usage = Uso:
cli-heading-commands = Comandos
cli-heading-options = Opciones
cli-heading-arguments = Argumentos
cli-more = Para ver ejemplos y estados de salida, ejecute “{ $help }”.
cli-heading-examples = Ejemplos:
cli-heading-status = Estado de salida:
# Behind its number in a list.
cli-status-done = hecho
cli-status-clear = nada es peor que una precaución
cli-status-warning = una advertencia, y ningún peligro
cli-status-danger = un peligro
cli-status-danger-or-lost = un peligro, o algo necesario no tiene { -receptacle }
cli-status-yes = sí
cli-status-no = no
cli-status-right = nada está mal
cli-status-wrong = algo está mal
cli-status-usage = no entendemos el comando
cli-status-plan = el plan tiene un error
cli-status-write = no podemos escribirlo ni imprimirlo
cli-status-stopped = usted lo detuvo
cli-help = Mostrar la ayuda de un comando
cli-help-command = El comando; sin él, la ayuda de todo el programa
cli-arg-answers = Leer las respuestas de este archivo, una por línea, en vez de preguntar; "-" lee la entrada estándar
cli-arg-plain = Preguntar línea por línea sin redibujar nada, como conviene a los lectores de pantalla
cli-arg-help = Mostrar la ayuda; --help muestra también ejemplos
cli-arg-version = Mostrar la versión
cli-arg-language = El idioma de la pantalla y de los impresos, como es o fr-CA; si falta, el del plan o el del sistema
cli-arg-units = Pies, galones y °F, o metros, litros y °C; si falta, como es usual en la región del idioma
cli-arg-color = Colores en la pantalla; "auto" los usa en una terminal, salvo que exista NO_COLOR
cli-arg-print-language = El idioma de los impresos, si no es el de la pantalla; con varios se hace un juego de cada uno: es,fr

# What stands for a value. Capitals.
cli-value-options = [OPCIONES]
cli-value-command = [COMANDO]
cli-value-card = TAMAÑO
cli-value-code = CÓDIGO
cli-value-dir = CARPETA
cli-value-file = ARCHIVO
cli-value-format = FORMATO
cli-value-ink = TINTA
cli-value-language = IDIOMA
cli-value-load = APARATO
cli-value-n = NÚMERO
cli-value-new = NUEVO
cli-value-name = NOMBRE
cli-value-new-toml = NUEVO.toml
cli-value-old = VIEJO
cli-value-paper = PAPEL
cli-value-plan = PLAN
cli-value-print = IMPRESO
cli-value-right-down = DERECHA, ABAJO
cli-value-signal = SEÑAL
cli-value-units = UNIDADES
cli-value-when = CUÁNDO
cli-value-words = PALABRAS
cli-value-yyyy-mm-dd = AAAA-MM-DD
cli-values = [{ $values }]
cli-default = [por omisión: { $value }]

# A call that is wrong.
usage-unknown-argument = aquí no hay ninguna opción ni argumento { $argument }
usage-unknown-command = no hay ningún comando { $argument }
usage-wrong-value = { $argument } no puede ser “{ $value }”
usage-no-value = { $argument } necesita un valor
usage-missing = falta { $argument }
usage-conflict = { $argument } y { $other } no pueden ir juntos
usage-twice = { $argument } está dos veces
usage-answers = --answers solo va con las preguntas: sin comando, o con ask
usage-other = no se entiende esta llamada: { $argument }
usage-allowed = Elija uno de estos: { $allowed }.
usage-nearest = ¿Quiso decir { $nearest }?
usage-help = Ejecute “{ $help }” para ver las opciones.
usage-plan = Eso es un plan. Para revisarlo, ejecute: { $command }
usage-plan-first = Indique primero el plan: { $command }
usage-date = Escriba un día del calendario como AAAA-MM-DD, por ejemplo 2026-07-04, o "today".
usage-no-language = aquí no hay ningún idioma “{ $tag }”

cli-ask = Cambiar un archivo de plan respondiendo preguntas; sus comentarios y su orden se conservan
cli-ask-plan = El archivo del plan
cli-ask-answers = { cli-arg-answers }
cli-ask-plain = { cli-arg-plain }
cli-demo = Hacer todos los impresos de un fin de semana de ejemplo, sin preguntar nada
cli-demo-fixed = El mismo fin de semana sin sus peligros
cli-demo-into = La carpeta en la que escribir, si no es tallywatt-demo

cli-check = Comprobar planes y decir qué está mal, lo peor primero
cli-check-plans = Archivos de plan; "-" lee uno de la entrada estándar
cli-check-long = Dice también por qué, y qué soporta cada { -receptacle }
cli-check-format = "text" para personas; "json" para programas, un informe por plan
cli-check-fail-on = Terminar con estado 0 salvo que un hallazgo sea así de grave o peor

cli-print = Imprimir las etiquetas, la tarjeta, las precauciones y la memoria de cálculo de un plan
cli-print-plan = El archivo del plan; "-" lo lee de la entrada estándar
cli-print-into = La carpeta en la que escribir
cli-print-paper = El papel de la impresora
cli-print-stock = La hoja de etiquetas por su nombre, como letter-30 o roll-24 (un nombre equivocado los muestra todos), o un archivo propio que termine en .toml
cli-print-start-at = La primera posición de etiqueta que se usa en una hoja ya empezada
cli-print-copies = Cuántas de cada etiqueta
cli-print-offset = Mover las etiquetas hacia la derecha y hacia abajo, como máximo { $measure ->
        [metric] 10 mm
       *[customary] 0.39 in
    }, si la impresora toma el papel descentrado: { $measure ->
        [metric] "1 mm, -0.5 mm"
       *[customary] "0.04 in, -0.02 in"
    }
cli-print-alignment = Imprimir también una página con reglas que muestra dónde caen las etiquetas, para ponerla a contraluz con una hoja de etiquetas
cli-print-only = Solo este impreso; puede darse más de una vez
cli-print-card = El tamaño de la tarjeta: una hoja por cara; media hoja (A5, media carta) o tamaño de bolsillo, para doblar. Para el teléfono: una columna estrecha, con imágenes
cli-print-ink = "black" imprime en negro sobre blanco, sin colores ni grises
cli-print-date = La fecha que se imprime en cada hoja; así los archivos se hacen para guardarlos años (PDF/A-2a); si falta, no se imprime ninguna
cli-print-png = Escribir también una imagen de cada página, y contact.png con todas
cli-print-templates = Una carpeta con plantillas propias; "tallywatt templates" escribe las que sirven para empezar

cli-may = Preguntar antes de enchufar: si se puede encender esto, en qué orden, y qué muestra un medidor
cli-may-plan = El archivo del plan; "-" lo lee de la entrada estándar
cli-may-loads = Lo que quiere encender, por su nombre; un nombre con espacios va entre comillas
cli-may-while = Lo que ya funciona
cli-may-format = "text" para personas; "json" para programas

cli-learned = Anotar en el plan lo que vio en el campamento: qué se disparó, qué se calentó, una lectura de un medidor, las horas de un { -tank }
cli-learned-plan = El archivo del plan; se cambia, y sus comentarios quedan
cli-learned-words = Lo que usted vio, por ejemplo: front se disparó a 13 A
cli-learned-date = El día en que lo vio; si falta, hoy

cli-reprint = Decir qué etiquetas y hojas de un plan viejo hay que imprimir de nuevo para uno nuevo
cli-reprint-old = El plan que usted imprimió
cli-reprint-new = El plan como es ahora

cli-mend = Buscar los cambios más fáciles que eliminan peligros y dejan funcionar todo lo que debe funcionar, y decir lo que queda
cli-mend-plan = El archivo del plan; "-" lo lee de la entrada estándar
cli-mend-into = Escribir el plan cambiado en este archivo nuevo; un archivo que ya existe no se toca
cli-mend-warnings = Eliminar también las advertencias, hasta donde los cambios puedan
cli-mend-format = "text" para personas; "json" para programas: el informe, con los arreglos

cli-templates = Escribir las plantillas de los impresos en una carpeta, para cambiarlas e imprimir con las propias
cli-templates-into = La carpeta en la que escribir; un archivo que ya existe no se toca

cli-explain = Explicar una regla: qué comprueba, por qué es peligroso, el cálculo, qué hacer
cli-explain-code = El código de la regla, como AIR001; si falta, se listan todas las reglas

cli-words = Para traductores: imprimir cada mensaje junto a sus traducciones, como página para un navegador
cli-words-languages = Carpetas de idiomas; si faltan, todas
cli-words-check = Decir en cambio qué está mal en ellas
cli-words-from = Leer las carpetas de idiomas de esta carpeta en lugar de las del programa

failure-lead = tallywatt:
failure-hint = Consejo:
failure-output = no se puede escribir el resultado: { $reason }
failure-output-full = no queda espacio para escribir el resultado
failure-no-rule = no hay ninguna regla { $code }
failure-no-rule-hint = "tallywatt explain" las lista todas.
failure-json = no se puede escribir el informe como JSON

check-plan = { $name }
check-none = No encontramos problemas en este plan. Algunos se nos pueden escapar.
check-dangers = Elimine esto antes de arrancar el motor:
check-next = Qué hacer ahora
next-none = Ninguna regla encontró un peligro o una advertencia. Aun así, deciden { -local-codes }.
next-trouble = { $title }.
check-looks = Mire también esto, en este orden. No adivine.
check-buy = Aún por comprar
check-guessed = Donde no sabemos lo suficiente, supusimos lo peor: mire primero.
check-found = Todo lo que encontramos, lo peor primero
check-long = Para saber por qué, y qué soporta cada { -receptacle }, ejecute "tallywatt check --long" con este plan.
check-count = { $dangers ->
        [one] 1 peligro
       *[other] { $dangers } peligros
    }, { $warnings ->
        [one] 1 advertencia
       *[other] { $warnings } advertencias
    }, { $cautions ->
        [one] 1 precaución
       *[other] { $cautions } precauciones
    }, { $notices ->
        [one] 1 aviso
       *[other] { $notices } avisos
    }.
check-label-why = Por qué
check-label-look = Mire
check-label-do = Haga
check-label-also = Arregla también
trouble-too = También desaparecen estos problemas: { $troubles }
trouble-also = { $title } ({ $code })
trouble-assumed = Peor caso: { $title }
trouble-assumed-why = No lo sabemos, así que supusimos lo peor. { $why }
trouble-look = Cuando lo sepa, cambie su respuesta y compruebe otra vez.
check-more = Para saber más sobre cualquiera de estos, ejecute "tallywatt explain CÓDIGO".
check-limits = Lo que soporta cada { -receptacle }, sin nada más encendido
check-limit-amps = { $amps } (unos { $watts })
check-limit-two = { $long } durante 3 horas o más; lo limita { $long_by }. { $short } por menos de 3 horas; lo limita { $short_by }.
check-limit-refused = NO USAR. Vea { $code }.
check-limit-guarded = Use solo un cable con GFCI (botones TEST y RESET). Vea { $code }.
check-limit-guarded-ahead = Úselo solo con un cable con GFCI (botones TEST y RESET) enchufado antes, más cerca del generador. Vea { $code }.
check-limit-behind = NO USAR: { $count ->
    [one] recibe
   *[other] reciben
} la corriente de “{ $id }”, que no se debe usar. Vea { $code }.
check-limit-one = { $long }. Lo limita { $short_by }.
check-limit-same = { $long } durante 3 horas o más, { $short } por menos de 3 horas. Lo limita { $short_by }.
check-limit-share = “{ $id }” ({ $reason }; por tanto tiempo, cuente solo con el 80 %)
check-limit-share-own = { $reason } (por tanto tiempo, cuente solo con el 80 %)
check-limit-by = “{ $id }” ({ $reason })
check-limit-only = No enchufe aquí nada más que { $parts }. { $limit }
check-limit-bonding-plug = No enchufe aquí nada más que la clavija de unión.
check-assumed = No sabemos esto, así que supusimos el peor caso
check-defer = Deciden { -local-codes } y un { -electrician }, no esta herramienta.

reason-rated-power = la potencia del generador
reason-rated-power-unguarded = la potencia del generador, que quizá no se corte si se supera
reason-one-leg = una mitad del generador, que quizá no se corte si se supera
reason-breaker = su { -breaker }
reason-trips-early = su { -breaker }, que se dispara antes de tiempo
reason-receptacle = lo que admite el propio { -receptacle }
reason-plug = lo que admite la clavija
reason-cord-ampacity = el conductor del cable; ningún { -breaker } lo protege
reason-cord-mark = lo que suele indicar un cable así de delgado y largo; lea el suyo, vale la cifra menor
reason-coiled-cord = el cable enrollado; ningún { -breaker } lo protege
reason-parallel-kit = el kit entre los generadores
reason-hot-cord = el cable con el aire tan caliente; ningún { -breaker } lo protege
reason-wiring = el cableado de la caja
reason-not-fed = tensión equivocada para su forma; trátelo como si tuviera tensión

demo-purpose = Este ejemplo tiene errores a propósito. Si fuera suyo, habría que hacer esto:
demo-wrote = Escrito en { $dir }:
demo-file-labels = una etiqueta para cada { -receptacle }, cable, caja y el generador
demo-file-card = la tarjeta para plastificar, dos caras
demo-file-look = la hoja de revisión: qué ir a mirar, con espacio para escribir
demo-file-cautions = la hoja de precauciones para marcar, lo peor primero
demo-file-worksheet = todos los números, para un electricista
demo-file-report = el informe para otros programas
demo-file-plan = el plan mismo: cámbielo y ejecute "tallywatt print"
demo-other = "tallywatt demo --fixed" hace el mismo fin de semana sin sus peligros.


working = Trabajando. Ctrl-C lo detiene y no se escribe nada.
print-wrote = Escrito en { $dir }:
print-look-gone = Quitamos de la carpeta el { $file } anterior: ya no queda nada que mirar.
# Safety.
print-dangers-left = { $count ->
    [one] Queda 1 peligro
   *[other] Quedan { $count } peligros
} en este plan. No arranque el generador hasta { $count ->
    [one] haberlo eliminado
   *[other] haberlos eliminado todos
}. La hoja de precauciones dice cómo.
print-card-sheets = La tarjeta ocupa { $count } hojas: una es demasiado pequeña para este plan. Cada una dice cuál es. Manténgalas juntas.
print-card-sheets-half = { print-card-sheets } Una tarjeta mayor quizá ocupe menos: "--card sheet".
print-card-sheets-pocket = { print-card-sheets } Una tarjeta mayor quizá ocupe menos: "--card half" o "--card sheet".
print-labels-used = { $count ->
        [one] Hay 1 etiqueta.
       *[other] Hay { $count } etiquetas.
    } { $next ->
        [0] Con eso, la última hoja de etiquetas queda completa.
       *[other] Una vez impresas, la siguiente libre de la última hoja es la número { $next }: la próxima vez, empiece ahí con "--start-at { $next }".
    }

templates-how = Cambie lo que quiera. Después imprima con "tallywatt print PLAN --into CARPETA --templates { $dir }". Si a la carpeta le falta una plantilla, el programa usa la suya.
templates-none = no hay plantillas en { $path }
templates-none-hint = "tallywatt templates --into CARPETA" escribe las que sirven para empezar.
templates-failed-hint = Las plantillas de { $path } quizá sean de otra versión de tallywatt. Use "tallywatt templates --into CARPETA" con una carpeta nueva, repita ahí sus cambios e imprima con esa carpeta.


# The names in the example plan.
demo-name-site = Fin de semana en Cala Enebro
demo-name-generator = el azul
demo-name-kettle = Hervidor
demo-name-toaster = Tostadora
demo-name-griddle = Plancha
demo-name-coolbox = Nevera
demo-name-blanket = Manta eléctrica
demo-name-cpap = CPAP
demo-name-cpap-battery = Batería del CPAP
demo-name-lamps = Guirnalda de luces
demo-name-chargers = Cargadores de teléfono y cámara
demo-name-fan = Ventilador
demo-name-pump = Inflador de colchón
# Las observaciones de los planes de ejemplo.
demo-remark-packed =
    Un fin de semana de ejemplo: un generador pequeño, un baúl de cables, y más aparatos de los que puede alimentar.
    Aquí hay varias cosas mal a propósito. “tallywatt check” con este archivo dice cuáles.
demo-remark-ground = la hierba junto al lago no se seca hasta mediodía
demo-remark-sleepers = la { -tent } más cercana
demo-remark-tripped = el verano pasado, la tostadora y el hervidor a la vez
demo-remark-kitchen = El cable grueso a la cocina del campamento.
demo-remark-splitter = Un derivador de tres salidas, comprado de segunda mano. No tiene { -breaker(form: "many") } propios.
demo-remark-living-room = El cable de la sala, hasta las { -tent(form: "many") }.
demo-remark-through = Lleva los 30 A enteros a una segunda caja. No tiene { -breaker } propio.
demo-remark-put-right =
    El mismo fin de semana, arreglado con lo que la familia tiene o puede comprar barato.
    Cada cambio lleva la palabra “ahora”.
demo-remark-now-far = ahora bien lejos de las { -tent(form: "many") }, con el escape hacia el otro lado
demo-remark-now-alarms = ahora una en cada { -tent }
demo-remark-now-roof = ahora bajo un techo alto sobre postes, abierto por todos lados
demo-remark-now-home = El derivador de tres salidas ahora se queda en casa.
demo-remark-now-cord = Ahora un cable para exteriores hasta las { -tent(form: "many") }, con { -gfci } en su clavija.
demo-remark-now-socket = Ahora en la otra toma, de modo que ahí solo hay cables con { -gfci }.
demo-remark-now-empty = Lleva los 30 A enteros a una segunda caja. No tiene { -breaker } propio. Ahora queda vacía, con la tapa cerrada.
demo-remark-now-toaster = ahora después del hervidor
demo-remark-now-supper = ahora los panqueques son para la cena
demo-remark-now-shut = Ahora bien cerrada de noche, y mientras el motor se enfría para cargar combustible.
demo-remark-now-warm = ahora calienta la cama, y de noche está apagada
demo-remark-now-battery = El aparato para respirar ahora funciona de noche con su propia batería. Esto la carga de día.
