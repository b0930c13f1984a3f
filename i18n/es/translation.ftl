# For those who translate: "tallywatt words".

words-no-folder = No hay ninguna carpeta de idioma “{ $tag }”.
words-missing = { $count ->
        [one] falta 1 mensaje
       *[other] faltan { $count } mensajes
    }
words-offered = { $tag }: en orden, y se ofrece a los lectores.
words-can-be-offered = { $tag }: en orden. Para ofrecerlo, ponga language-state en complete.
words-not-done = { $tag }: aún sin terminar.

# $what is the part of the message, $model what it is held against.
words-problem-no-folder = no hay tal carpeta
words-problem-junk = esto no se puede leer como mensaje: { $what }
words-problem-twice = está dos veces
words-problem-unused = nada lo usa aquí { $model }{ $what }
words-problem-missing = falta
words-problem-unknown-value = aquí no hay ningún valor ${ $what }
words-problem-lost-value = el valor ${ $what } no se muestra
words-problem-no-plural = no elige según el número ${ $what }
words-problem-no-case = a la elección según ${ $what } le falta el caso [{ $model }]
words-problem-unknown-case = la elección según ${ $what } tiene un caso [{ $model }] que nunca ocurre
words-problem-unknown-term = no hay ningún término -{ $what }
words-problem-fault = no se puede componer: { $what }
words-problem-numbers = sus números son ({ $what }) y deberían ser ({ $model })
words-problem-never-say = no puede decir “{ $what }”
words-problem-untranslated = sigue en inglés
words-problem-too-wide = ocupa { $what } columnas de { $model }
words-problem-bad-sign = tiene el signo { $what }, que no se puede imprimir
words-problem-plain-space = hay un espacio normal en “{ $what }”: ponga un espacio duro (U+00A0) entre número y unidad
words-problem-heading = el título es “{ $what }” y debería ser “{ $model }”
words-problem-codes = nombra ({ $what }) y debería nombrar ({ $model })

words-sheet-title = Mensajes lado a lado
words-sheet-how =
    Entre llaves están los valores que se rellenan: déjelos como están, y póngalos donde el idioma los quiera. Una elección tiene una línea para cada caso; la que lleva un asterisco vale para todos los demás casos.
    Un guion y un nombre entre llaves son un término del oficio, del archivo terms.ftl del idioma. Corríjalo allí, una sola vez.
    Una línea doble a la izquierda marca frases de las que depende la seguridad de alguien. Cuando haya leído una y la haya encontrado correcta, dígalo, con su nombre y el día.
words-sheet-state = { $tag } ({ $name }): { $reviewed } de { $safety } frases de seguridad revisadas por un hablante nativo del oficio.
words-sheet-about = Sobre
words-sheet-safety = Seguridad
words-sheet-missing = aún sin traducir
words-sheet-reviewed = revisado: { $who }
words-sheet-not-reviewed = revisado: por nadie aún
