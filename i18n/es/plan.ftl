# What can be wrong with a plan file, and with files as such. Each message is a title; `help`
# says what to do about it, and `help-near` does when there is a good guess at what was meant.

plan-problem = problema
plan-help = arreglo
plan-first-here = dado aquí por primera vez
plan-nothing-done = { $count ->
    [one] Un problema en { $path }. No se comprobó ni se imprimió nada.
   *[other] { $count } problemas en { $path }. No se comprobó ni se imprimió nada.
}
plan-more = { $count ->
    [one] Y uno más, que no se muestra.
   *[other] Y { $count } más, que no se muestran.
}
list-or = { $first } o { $last }

# Kinds of value, as in "it should be ...".
plan-type-text = un texto entre comillas
plan-type-quantity = un número con su unidad, entre comillas
plan-type-whole = un número entero
plan-type-number = un número
plan-type-yes-no = true o false
plan-type-yes-no-unknown = true, false o "unknown"
plan-type-date = una fecha u hora sin comillas
plan-type-list = una lista entre corchetes
plan-type-table = una tabla
plan-type-tables = una lista de tablas, cada una con su propio encabezado

# The TOML itself.
plan-duplicate-key = Esto está dos veces
    .help = Cada clave puede estar solo una vez bajo un encabezado. Quédese con una de las dos. Un segundo cable, caja, { -receptacle } o aparato empieza con un encabezado propio, como [[cord]].
plan-unquoted = Este texto no tiene comillas
    .help = Póngalo entre comillas dobles. Solo los números enteros, true y false van sin ellas.
plan-bad-string = No se pueden leer las comillas o el texto entre ellas
    .help = Empiécelo y termínelo en la misma línea con comillas dobles. Dentro, escriba las comillas dobles como \" y la barra invertida como \\.
plan-bad-number = Este número no se puede leer
    .help = Un número con unidad, una forma o una hora va entre comillas dobles, como "2800 W", "5-20R" o "07:00-07:20". Un número sin comillas es uno como 2 o 0.8.
plan-no-equals = Aquí falta el signo igual
    .help = Escriba una clave, un signo igual y un valor, como: coiled = false
plan-no-value = No hay nada después del signo igual
    .help = Escriba el valor después de él, "unknown" si no lo sabe, o quite la línea.
plan-bad-list = Esta lista no se puede leer
    .help = Escríbala entre corchetes, separada con comas, como: ends = ["5-15R", "5-15R"]
plan-bad-inline = La parte entre llaves no se puede leer
    .help = Escríbala entre llaves, separada con comas, como: motor = {"{"} hp = "1/2", code = "G" {"}"}
plan-bad-heading = Este encabezado no se puede leer
    .help = Un corchete a cada lado para [site] y [generator], dos para todo lo que puede haber varias veces, como [[cord]].
plan-bad-key = Esta clave no se puede leer
    .help = Una clave tiene solo letras, cifras y guiones bajos, y va delante de un signo igual.
plan-extra = Sobra algo en esta línea
    .help = Una clave y un valor en cada línea. Un número con su unidad va entre comillas dobles, como "2800 W". Un comentario empieza con #.
plan-too-deep = Hay demasiados corchetes dentro de corchetes
    .help = Ningún plan necesita más de dos. Busque uno que no se cerró.
plan-bad-character = Aquí hay un carácter que ningún plan puede tener
    .help = Bórrelo y escriba la línea de nuevo.
plan-syntax = Esta línea no se puede leer
    .help = Escriba una clave, un signo igual y un valor, como: rated = "2800 W"

# The file as a whole.
plan-empty = No hay nada en este archivo
    .help = Ejecute tallywatt sin nada después: le pregunta lo que necesita saber y escribe el plan.
plan-no-format = El archivo no dice qué formato tiene
    .help = Ponga esto al principio del archivo: format = 1
plan-newer-format = Este plan lo escribió un tallywatt más nuevo: formato { $found }, y este lee el formato { $ours }
    .help = Consiga el tallywatt más nuevo. No cambie sin más el número: el resto podría leerse mal, y aquí un número equivocado puede herir a alguien.
plan-no-such-format = No hay ningún formato { $found }
    .help = Escriba: format = { $ours }
plan-too-many = Hay { $found } { $what }, pero un plan solo puede tener { $most }
    .help = Haga un plan para cada generador, o quite lo que nunca se usa.
    .parts = partes
    .loads = aparatos
plan-missing-table = El plan no dice nada de { $table }
    .help = Añada una parte que empiece con [{ $table }].

# Keys and values.
plan-missing-key = Aquí falta { $key }
    .help = Añada una línea como: { $example }
plan-unknown-key = "{ $found } = " no significa nada aquí
    .help = Puede escribir: { $allowed }.
    .help-near = ¿Quiso decir { $nearest }? Puede escribir: { $allowed }.
plan-unknown-heading = [{ $found }] no significa nada aquí
    .help = Puede escribir: { $allowed }.
    .help-near = ¿Quiso decir { $nearest }? Puede escribir: { $allowed }.
plan-wrong-type = Aquí { $key } es { $found }
    .help = Debería ser { $wanted }.
    .help-near = Debería ser { $wanted }, como: { $example }
plan-unknown-not-allowed = { $key } no puede ser desconocido
    .help = Sin eso no se puede calcular nada. Mire la placa del aparato mismo, o pregunte a su dueño.
    .help-near = Quite la línea en su lugar.
plan-empty-text = { $key } está vacío
    .help = Escriba algo entre las comillas, o quite la línea.
plan-bad-text = { $key } es demasiado largo para imprimirlo, o tiene caracteres que no se pueden imprimir
    .help = Use una línea de hasta { $most } caracteres.
plan-no-unit = A { $key } le falta la unidad: ¿{ $found } qué?
    .help = Escríbalo entre comillas con su unidad, como "{ $example }". Unidades: { $allowed }.
plan-unknown-unit = { $key } no se mide en { $found }
    .help = Escriba solo un número y después su unidad. Unidades: { $allowed }. Mire si hay una letra en el número.
plan-volt-amperes = { $key } está dado en { $found }, y los voltamperios no son vatios
    .help = Busque los vatios en la placa del aparato. Para un aparato puede dar en su lugar los amperios, como current = "12.5 A".
plan-no-number = { $key } no tiene número: { $found }
    .help = Escriba un número y una unidad, como "{ $example }".
plan-no-plain-number = { $key } no tiene ningún número que se pueda leer: { $found }
    .help = Escriba un número sin más, como "{ $example }".
plan-two-readings = { $key } puede significar dos cosas: { $found }
    .help = Unos leen { $decimals } y otros { $thousands }. Escriba "{ $decimals }" o "{ $thousands }", según lo que sea.
plan-out-of-range = { $key } no puede ser { $found }
    .help = Use un valor de { $least } a { $most }. Busque una errata o una unidad equivocada.
plan-wire-size = Ningún conductor tiene el calibre { $found }
    .help = Los calibres van de 0 a 30 AWG, en números enteros. Los tamaños en mm² van de 0.1 a 400. El tamaño está impreso en la cubierta del cable.
plan-not-a-choice = { $key } no puede ser { $found }
    .help = Escriba uno de estos: { $allowed }.
    .help-near = ¿Quiso decir { $nearest }? Escriba uno de estos: { $allowed }.
plan-not-a-language = { $found } no es el código de un idioma
    .help = Escriba uno como "en", "es", "fr-CA" o "de", o quite la línea.
plan-unknown-shape = No conocemos la forma { $found }
    .help = Formas para { $key }: { $allowed }.
    .help-near = ¿Quiso decir { $nearest }? Formas para { $key }: { $allowed }.
plan-wrong-half = { $found } es un { -receptacle }, pero aquí va una clavija
    .help = Un nombre que termina en P es una clavija, con patas; uno que termina en R es un { -receptacle }, con ranuras. Aquí sería { $meant }.
plan-wrong-half-receptacle = { $found } es una clavija, pero aquí va un { -receptacle }
    .help = Un nombre que termina en P es una clavija, con patas; uno que termina en R es un { -receptacle }, con ranuras. Aquí sería { $meant }.
plan-two-plugs = { $found } es una clavija, y el extremo de un cable es un { -receptacle }
    .help = Si se refería al { -receptacle }, escriba { $meant }. Un cable con una clavija en cada extremo tiene patas al descubierto y con tensión, y puede matar. No lo use. No haga uno.
plan-bad-hours = { $key } no puede ser { $found }
    .help = Escriba dos horas del día en el reloj de 24 horas con un guion entre ellas, como "18:00-22:00". Pueden pasar de medianoche, como "22:00-06:00".
plan-motor-code = Ningún motor tiene la letra de código { $found }
    .help = Es una letra de la A a la V, sin I, O ni Q, después de la palabra "code" en la placa del motor. Si no hay ninguna, no la ponga.
plan-two-draws = { $second } dice otra vez lo que dice { $first }
    .help = Quédese con el que está en la placa, y quite el otro.
plan-place-for-no-plug = { $place } nombra un { -receptacle }, pero { $plug } dice que no hay clavija
    .help = Mire el generador. Si tiene una clavija de unión neutro-tierra, escriba { $plug } = true. Si no tiene ninguna, quite la línea { $place }.
plan-bonding-plug-elsewhere = “{ $key }” nombra “{ $found }”, pero una clavija de unión neutro-tierra solo va en un { -receptacle } doméstico del generador
    .help = El generador de este plan no tiene ningún { -receptacle } doméstico, así que quite la línea. Si la clavija está en un cable, una caja o un adaptador, pare el motor y luego sáquela. Pregunte a un electricista autorizado antes de usarla.
    .help-near = Escriba uno de estos si la clavija está ahí: { $allowed }. Si está en un cable, una caja o un adaptador, pare el motor, luego sáquela y escriba bonding_plug = false. Pregunte a un electricista autorizado antes de usarla.
plan-less-than = { $key } es menor que { $other }: { $found } está por debajo de { $least }
    .help = { $key } no puede ser el menor de los dos. Busque una errata, o dos valores que cambiaron de lugar.

# Names.
plan-bad-id = { $found } no puede ser un identificador
    .help = Un identificador tiene hasta 40 letras, cifras, guiones y guiones bajos, y empieza con una letra o una cifra.
    .help-near = Un identificador tiene hasta 40 letras, cifras, guiones y guiones bajos, y empieza con una letra o una cifra. "{ $nearest }" serviría.
plan-duplicate-id = El identificador { $id } está ocupado: la línea { $line } ya lo tiene
    .help = Cada { -receptacle }, cable, caja y aparato necesita un identificador propio, porque se imprime en su etiqueta.
plan-sets-id = El identificador { $id } está ocupado: los informes llaman así al generador
    .help = Cada { -receptacle }, cable, caja y aparato necesita un identificador propio. Dé otro a este.
plan-unknown-reference = “{ $key }” nombra “{ $found }”, y no hay ningún { -receptacle } así en el plan
    .help = Escriba el identificador de un { -receptacle } o cable que esté en el plan, o quite la línea si aún no está enchufado.
    .help-near = ¿Quiso decir { $nearest }? Si aún no está enchufado, quite la línea.
plan-unknown-share = “{ $key }” nombra “{ $found }”, y no hay ningún { -receptacle } así aquí
    .help = Escriba el identificador del { -receptacle } cuyo { -breaker } comparte, o quite la línea si tiene el suyo propio.
    .help-near = ¿Quiso decir { $nearest }? Si tiene su propio { -breaker }, quite la línea.
plan-not-a-receptacle = “{ $key }” nombra “{ $found }”, y ahí no se puede enchufar nada
    .help = Escriba el identificador de un { -receptacle } o cable.
    .help-near = Sus { -receptacle(form: "many") } son { $allowed }.
plan-plug-inside = “{ $camper }” es una { -camper }, y lo que funciona dentro no necesita clavija aquí
    .help = Quite la línea de la clavija.
plan-loop = { $through } están enchufados unos en otros en círculo
    .help = Uno de ellos debe enchufarse en un { -receptacle } del generador, directamente o a través de otros.
plan-loop-self = { $through } está enchufado en sí mismo
    .help = Debe enchufarse en un { -receptacle } del generador, directamente o a través de otros.
plan-bad-share = No puede compartir el { -breaker } de { $found }
    .help = Un { -receptacle } comparte con otro del mismo generador o caja que no comparta a su vez. Aquí no hay ninguno, así que quite la línea.
    .help-near = Un { -receptacle } comparte con otro del mismo generador o caja que no comparta a su vez: { $allowed }.
plan-share-differs = Comparte el { -breaker } de { $with }, y dice otra cosa de ese { -breaker }
    .help = Dé el valor del { -breaker } en { $with }, y quítelo aquí.
plan-no-outlets-generator = El generador no tiene ningún { -receptacle }
    .help = Añada cada uno con una parte que empiece con [[generator.outlet]].
plan-no-outlets-box = Esta caja no tiene ningún { -receptacle }
    .help = Añada cada uno debajo de ella, con una parte que empiece con [[box.outlet]].
plan-no-outlets-cord = Este cable no tiene ningún { -receptacle } en su extremo
    .help = Nombre la forma de cada uno, como: ends = ["5-15R"]

# Files.
store-not-found = No hay ningún archivo { $path }
    .help = Mire cómo está escrito el nombre, y en qué carpeta está usted.
store-no-folder = No hay carpeta en la que poner { $path }
    .help = Cree primero la carpeta, o indique otra.
store-not-allowed = Usted no tiene permiso para cambiar o leer { $path }
    .help = Mire sus permisos, o indique otro archivo.
store-exists = Ya hay algo en { $path }
    .help = Indique otro lugar. Lo que hay ahí sigue intacto.
store-not-ours = { $path } no está como lo escribimos, o no es nuestro
    .help = No escribimos nada, para que no se pierda nada suyo. Indique otra carpeta, o mueva ese archivo.
store-changed = { $path } cambió después de que lo leímos
    .help = No escribimos nada. Ejecute el mismo comando otra vez.
store-silent = { $path } es una tubería, y nada escribe en ella
    .help = Inicie primero lo que escribe en ella, o indique un archivo.
store-full = No queda espacio en el disco para { $path }
    .help = Haga espacio e inténtelo otra vez. Lo que había antes sigue intacto.
store-is-a-folder = { $path } es una carpeta, no un archivo
    .help = Indique un archivo.
store-not-a-folder = Una parte de { $path } es un archivo, no una carpeta
    .help = Indique otra carpeta.
store-bad-name = { $path } no puede ser el nombre de un archivo
    .help = Indique un archivo en una carpeta.
store-too-large = { $path } es demasiado grande para un plan
    .help = Un plan es un texto corto. ¿Es este el archivo correcto?
store-not-text = { $path } no es texto sin formato: la línea { $line } tiene bytes que no son UTF-8
    .help = Guárdelo desde su editor como texto sin formato en UTF-8. ¿Es este el archivo correcto?
store-in-use = Otro tallywatt tiene abierto { $path }
    .help = Termine o cierre primero el otro.
store-cannot-read = { $path } no se puede leer: { $reason }
    .help = Inténtelo otra vez, o indique otro archivo.
store-cannot-write = { $path } no se puede escribir: { $reason }
    .help = Inténtelo otra vez, o indique otro lugar. Lo que había antes sigue intacto.
