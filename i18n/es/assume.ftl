### What was taken for an answer nobody gave. Each message says what is not known, what was taken,
### and how to find the real answer. { $part } is the part or load it is about; { $field } is the
### line of the plan file, for those who edit it by hand.

assumed-yes = sí
assumed-no = no
assumed-none = ninguno
assumed-leg-both = ambas mitades
assumed-worst-kind = lo peor de cada tipo
assumed-one-leg = una sola mitad

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } Lo mismo para { $parts }.

assume-altitude = No sabemos a qué altura está el lugar, así que supusimos { $value }. A más altura, un generador pierde potencia.
    .look = Busque la altura en un mapa o un teléfono.
assume-air = No sabemos cuánto calor hará, así que supusimos { $value }. Con aire caliente, un generador pierde potencia.
    .look = Busque en el pronóstico la temperatura más alta de esos días.
assume-rated = No sabemos cuánta potencia puede dar el generador, así que supusimos { $value }, como de uno muy pequeño. De ese número depende casi todo aquí.
    .look = Busque en su placa los vatios “running” o “rated” (nominales).
assume-rated-of-peak = No sabemos cuánta potencia puede dar el generador, así que supusimos { $value }, tres cuartos de su máxima. De ese número depende casi todo aquí.
    .look = Busque en su placa los vatios “running” o “rated” (nominales).
assume-voltage = No sabemos qué tensión da el generador, así que supusimos { $value }. Entonces cada { -receptacle } de 120 V puede usar solo la mitad de la potencia.
    .look = Busque “120 V” o “120/240 V” en su placa.
assume-inverter = No sabemos si el generador es inversor, así que supusimos cada vez lo peor. Quizá no se pare por sí solo cuando hay demasiado encendido, y un cortocircuito quizá no dispare ningún { -breaker }.
    .look = Busque “inverter” en él.
assume-peak = No sabemos la potencia máxima del generador, así que para arrancar cosas supusimos solo su potencia nominal, { $value }. Para juzgar si algo se sobrecalienta, supusimos más.
    .look = Busque “peak”, “starting” o “max” en el generador.
assume-no-gfci = No sabemos si “{ $part }” tiene { -gfci }, así que supusimos que no.
    .look = Busque botones marcados TEST y RESET.
assume-no-breaker = No sabemos si “{ $part }” tiene su propio { -breaker }, así que supusimos que no.
    .look = Busque al lado un botón o interruptor marcado con amperios.
assume-breaker-unknown = No sabemos de cuántos amperios es el { -breaker } de “{ $part }”. Así que supusimos que no se dispara a tiempo, y que el { -receptacle } da solo los amperios de su forma.
    .look = Busque un botón o interruptor marcado con amperios.
assume-camper-main = No conocemos el { -breaker } principal de “{ $part }”, así que supusimos { $value }, para lo que está hecha su clavija.
    .look = Mire dentro, donde se conectan y desconectan sus { -breaker(form: "many") }: uno dice “Main”. Lea sus amperios. No desatornille nada.
assume-leg = No sabemos qué mitad alimenta “{ $part }”, así que contamos en { $value } lo enchufado ahí. Es la menor potencia que puede tener.
    .look = Busque en el manual qué { -receptacle(form: "many") } comparten una mitad (fase).
assume-box-wire = No sabemos qué grosor tiene dentro de la caja el conductor de “{ $part }”, así que supusimos { $value }, el más delgado.
    .look = Lea sus papeles, o pregunte a quien la hizo o a un { -electrician }. No la abra.
assume-cord-wire = No sabemos el calibre de “{ $part }”, así que supusimos { $value }, el más delgado.
    .look = Lea lo impreso a lo largo del cable: “12/3” es calibre 12 AWG, y tres conductores.
assume-cord-conductors = No sabemos cuántos conductores tiene “{ $part }”, así que supusimos { $value }: sin { -ground-wire }.
    .look = Lea lo impreso a lo largo del cable: “12/3” es calibre 12 AWG, y tres conductores.
assume-cord-length = No sabemos cuánto mide “{ $part }”. Para la caída de tensión supusimos { $value }. Para el alcance supusimos que es demasiado corto.
    .look = Mídalo a pasos: cuente cada paso como { $step }.
assume-cord-coiled = No sabemos si “{ $part }” está extendido del todo cuando se usa, así que supusimos que está enrollado. Enrollado soporta solo un tercio.
    .look = Desenróllelo por completo, y después cambie su respuesta.
assume-load-kind = No sabemos qué hace sobre todo “{ $part }”, así que supusimos { $value }. Quizá consuma tanto como un calefactor y arranque como un motor, y la salud de alguien quizá dependa de ello.
    .look = Pregunte a su dueño.
assume-load-plug = No sabemos qué clavija tiene “{ $part }”, así que supusimos { $value }, la más común.
    .look = Mire su clavija.
assume-load-one-leg = No sabemos cuánto toma “{ $part }” de cada mitad (fase), así que lo pusimos todo en { $value }.
    .look = Si su placa da los amperios de cada mitad, escríbalos en el plan como current. Hasta entonces, use en él menos cosas a la vez.
assume-load-voltage = No sabemos si “{ $part }” usa solo 240 V o también 120 V, así que lo pusimos todo en { $value }.
    .look = Busque en su placa “120 V”, “240 V” o “120/240 V”. Hasta entonces, use en él menos cosas a la vez.
assume-load-amps-voltage = No sabemos si “{ $part }” usa 120 V o 240 V, así que contamos sus amperios en { $value }.
    .look = Busque en su placa “120 V”, “240 V” o “120/240 V”.
assume-power-factor = No sabemos el factor de potencia de “{ $part }”, así que supusimos { $value } según su tipo. Consume más corriente de lo que muestran sus vatios.
    .look = Busque en su placa los amperios (A).
assume-running = No sabemos cuánto consume “{ $part }”, así que supusimos { $value }, lo máximo para su tipo y clavija.
    .look = Busque W o A en su placa.
assume-starting = No sabemos cuánto necesita “{ $part }” para arrancar, así que supusimos { $value } según su tipo. Todo lo que tiene motor necesita mucho más para arrancar que para funcionar.
    .look = Busque en su placa o en su manual los vatios o amperios de arranque.
assume-starting-code-v = La letra de código V de “{ $part }” no tiene límite superior, así que supusimos { $value } para arrancar, lo mínimo. Quizá necesite más: mire y escuche cuando arranque.
assume-continuous = No sabemos cuánto tiempo funciona “{ $part }”, así que supusimos tres horas o más seguidas. Por tanto tiempo, su { -receptacle } puede dar menos.
    .look = Piense cuánto funciona sin parar.
assume-all-day = No sabemos cuándo funciona “{ $part }”, así que supusimos { $value } al día.
    .look = Decida cuándo funciona.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what }: { $ask }
look-generator = El generador
# Lo que desaparece después de mirar: $found son las frases look-if-…, $gone es una de look-gone-….
look-then = Si { $found }, { $gone }.
look-then-cord = Si { $found }, “{ $part }” soporta { $amps } y { $gone }.
look-then-cord-only = Si { $found }, “{ $part }” soporta { $amps }.
look-gone-dangers = { $count ->
        [one] desaparece este peligro: { $titles }
       *[other] desaparecen estos peligros: { $titles }
    }
look-gone-warnings = { $count ->
        [one] desaparece esta advertencia: { $titles }
       *[other] desaparecen estas advertencias: { $titles }
    }
look-gone-cautions = desaparece esto: { $titles }
look-only = { $count ->
        [one] esto pasa a { $signal }: { $titles }
       *[other] estos pasan a { $signal }: { $titles }
    }
look-if-gfci = tiene TEST y RESET
look-if-listed = lleva la marca de un laboratorio de pruebas
look-if-print = dice { $prints }
look-if-conductors = tiene { $value } hilos
look-if-outdoor = lleva una “W” o “outdoor”
look-if-breaker = dice { $value } o menos
look-if-altitude = la altitud es de { $value } o menos
look-if-sleepers_at = la distancia es de { $value } o más
look-if-length = mide { $value } o menos
look-if-coiled = está del todo desenrollado
look-if-stands = está al aire libre o bajo un techo alto
look-if-co_alarm = hay uno en cada una y suena
look-if-well = todo está bien
look-clears-dangers = { $dangers ->
        [one] Si todo está bien, desaparece un peligro.
       *[other] Si todo está bien, desaparecen { $dangers } peligros.
    }
look-clears-warnings = { $warnings ->
        [one] Si todo está bien, desaparece una advertencia.
       *[other] Si todo está bien, desaparecen { $warnings } advertencias.
    }
assume-parallel-limit = No sabemos cuánto soporta el kit entre los generadores, así que supusimos { $value }, como de uno solo.
    .look = Lea los amperios en el kit.
assume-rated-on = Con propano, un generador da cerca de una décima parte menos que con gasolina, así que supusimos { $value }.
    .look = Si su placa da vatios para propano, ponga rated_on = "propane" en el plan.

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Compre uno con todo esto en el paquete: { $list }.
buy-another = No lo compre tal como está en el plan: así es un peligro aquí.
buy-plug = clavija { $value }
buy-inlet = entrada { $value } (por donde llega la corriente)
buy-ends = extremo { $value }
buy-outlet = { -receptacle(form: "many") } { $value }
buy-outdoor = “outdoor” (exteriores) o una W en sus letras
buy-wire = calibre { $value }, o un número AWG menor (hilo más grueso)
buy-conductors = { $value } conductores
buy-length = { $value } o menos
buy-reach = { $value } o más, para que alcance
buy-long = { $value } de largo
buy-listed = la marca de un laboratorio de pruebas
buy-gfci = botones TEST y RESET (GFCI)
buy-rated = { $value } o más de potencia nominal
buy-peak = { $value } o más de potencia máxima
buy-voltage = { $value }
buy-inverter = “inverter” (inversor)
buy-co_alarm = alarma de monóxido de carbono de pilas con la marca de un laboratorio, una para cada { -tent } o { -camper }
