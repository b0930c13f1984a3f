### What was taken for an answer nobody gave. Each message says what is not known, what was taken,
### and how to find the real answer. { $part } is the part or load it is about; { $field } is the
### line of the plan file, for those who edit it by hand.

assumed-yes = sí
assumed-no = no
assumed-none = ninguno
assumed-leg-a = fase A
assumed-leg-b = fase B
assumed-worst-kind = lo peor de cada tipo
assumed-one-leg = una sola fase

# $text is one of the sentences below, $parts the others it holds for.
assume-also = { $text } Lo mismo para { $parts }.

assume-altitude = No se sabe a qué altitud está el lugar; se tomó { $value }. A más altura, un generador pierde potencia.
    .look = Busque la altitud en un mapa o un teléfono.
assume-air = No se sabe cuánto calor hará; se tomó { $value }. Con aire caliente, un generador pierde potencia.
    .look = Averigüe la temperatura más alta que espera.
assume-rated = No se sabe cuánta potencia da el generador de forma continua; se tomó { $value }, como de los más pequeños.
    .look = Busque en su placa los vatios “running” o “rated” (nominales): de ellos depende casi todo aquí.
assume-rated-of-peak = No sabemos cuánta potencia da el generador de forma continua; supusimos { $value }, tres cuartos de su máxima.
    .look = Busque en su placa los vatios “running” o “rated” (nominales): de ellos depende casi todo aquí.
assume-voltage = No se sabe qué tensión da el generador; se tomó { $value }: así, cada { -receptacle } de 120 V llega solo a la mitad de la potencia.
    .look = Busque “120 V” o “120/240 V” en su placa.
assume-inverter = No se sabe si el generador es inversor; se supuso cada vez lo peor: puede no pararse por sí solo cuando hay demasiado encendido, y un cortocircuito puede no disparar ningún { -breaker }.
    .look = Busque “inverter” en él.
assume-peak = No se sabe la potencia máxima del generador. Para lo que arranca no se tomó más que su potencia nominal de { $value }; para lo que puede arder, más.
    .look = Busque “peak”, “starting” o “max” en el generador.
assume-no-gfci = No se sabe si “{ $part }” tiene protección contra descargas eléctricas; no se contó ninguna.
    .look = Busque botones marcados TEST y RESET.
assume-no-breaker = No se sabe si “{ $part }” tiene su propio { -breaker }; no se contó ninguno.
    .look = Busque al lado un botón o interruptor marcado con amperios.
assume-breaker-unknown = No se conoce el { -breaker } de “{ $part }”. No se contó con que se dispare a tiempo, ni con más amperios de los que permite la forma del { -receptacle }.
    .look = Busque un botón o interruptor marcado con amperios.
assume-camper-main = No se conoce el { -breaker } principal de “{ $part }”; se supuso { $value }, para lo que está hecha su clavija.
    .look = Mire dentro, donde se conectan y desconectan sus { -breaker(form: "many") }: uno dice “Main”. Lea sus amperios. No desatornille nada.
assume-leg = No se sabe en qué fase está “{ $part }”; se tomó { $value }, con todos los otros en el mismo caso. Es la menor potencia que pueden tener juntos.
    .look = Busque en el manual qué { -receptacle(form: "many") } comparten fase.
assume-box-wire = No se sabe qué conductor hay dentro de la caja detrás de “{ $part }”; se tomó { $value }, el más delgado.
    .look = Lea sus papeles, o pregunte a quien la hizo o a un { -electrician }. No la abra.
assume-cord-wire = No se sabe el calibre de “{ $part }”; se tomó { $value }, el más delgado.
    .look = Lea lo impreso a lo largo del cable: “12/3” es 12 AWG con tres conductores.
assume-cord-conductors = No se sabe cuántos conductores tiene “{ $part }”; se contaron { $value }: sin { -ground-wire }.
    .look = Lea lo impreso a lo largo del cable: “12/3” es 12 AWG con tres conductores.
assume-cord-length = No se sabe cuánto mide “{ $part }”; se supuso { $value } para la caída de tensión y cero para el alcance.
    .look = Mídalo a pasos: cuente cada paso como { $step }.
assume-cord-coiled = No se sabe si “{ $part }” está extendido cuando se usa; se dio por enrollado. Enrollado soporta solo un tercio.
    .look = Desenróllelo por completo, e indíquelo en el plan.
assume-load-kind = No se sabe qué hace sobre todo “{ $part }”; se tomó { $value }: puede consumir tanto como un calefactor y arrancar con tanta fuerza como un motor, y la salud de alguien puede depender de ello.
    .look = Pregunte a su dueño.
assume-load-plug = No se sabe qué clavija tiene “{ $part }”; se tomó { $value }, la habitual.
    .look = Mire su clavija.
assume-load-one-leg = No se sabe cómo se reparte “{ $part }” entre las dos fases; se puso todo en { $value }, sea cual sea.
    .look = Una placa con los amperios de cada fase lo diría: escríbalos como current. Use menos cosas a la vez en él.
assume-load-voltage = No sabemos si “{ $part }” usa solo 240 V o también 120 V; lo pusimos todo en { $value }, sea cual sea.
    .look = Busque en su placa “240 V” o “120/240 V”. Use menos cosas a la vez en él.
assume-power-factor = No se sabe el factor de potencia de “{ $part }”; se tomó { $value } según su tipo. Consume más corriente de lo que muestran sus vatios.
    .look = Busque en su placa los amperios (A).
assume-running = No se sabe cuánto consume “{ $part }”; se tomó { $value }, lo máximo para su tipo y clavija.
    .look = Busque W o A en su placa.
assume-starting = No se sabe cuánto necesita “{ $part }” para arrancar; se tomó { $value } según su tipo. Todo lo que tiene motor necesita mucho más para arrancar que para funcionar.
    .look = Busque en su placa o en su manual los vatios o amperios de arranque.
assume-starting-code-v = La letra de código V de “{ $part }” no tiene límite superior; se tomó { $value } para arrancar, lo mínimo. Puede ser más: mire y escuche al arrancar.
assume-continuous = No se sabe cuánto tiempo funciona “{ $part }”; se supuso que tres horas o más seguidas. Eso reduce lo que puede consumir.
    .look = Piense cuánto funciona sin parar.
assume-all-day = No se sabe cuándo funciona “{ $part }”; se contaron { $value } al día.
    .look = Decida cuándo funciona.

# One thing to look at: $what is looked at, $ask says for what. The sentences after it say what that may clear.
look-at = { $what }: { $ask }
look-generator = El generador
look-clears-dangers = { $dangers ->
        [one] Esto puede eliminar un peligro.
       *[other] Esto puede eliminar { $dangers } peligros.
    }
look-clears-warnings = { $warnings ->
        [one] Esto puede eliminar una advertencia.
       *[other] Esto puede eliminar { $warnings } advertencias.
    }
assume-parallel-limit = No se sabe cuánto deja pasar el kit entre los generadores; se tomó { $value }, como de uno solo.
    .look = Lea los amperios en el kit.
assume-rated-on = Con propano, un generador da cerca de una décima parte menos que con gasolina. Por eso se tomó { $value }.
    .look = Si su placa da vatios para propano, ponga rated_on = "propane" en el plan.

# What is not bought yet: $list is what has to be on its package, from the messages below.
look-buy = Compre uno con todo esto en el paquete: { $list }.
buy-plug = clavija { $value }
buy-inlet = entrada { $value }
buy-ends = extremo { $value }
buy-outlet = { -receptacle(form: "many") } { $value }
buy-outdoor = “outdoor” (exteriores) o una W en sus letras
buy-wire = { $value }, o un número AWG menor
buy-conductors = { $value } hilos
buy-length = { $value } o menos
buy-listed = la marca de un laboratorio de pruebas
buy-gfci = botones TEST y RESET (GFCI)
buy-rated = { $value } o más de potencia nominal
buy-peak = { $value } o más de potencia máxima
buy-inverter = “inverter” (inversor)
buy-co_alarm = alarma de monóxido de carbono a pilas con la marca de un laboratorio, una para cada tienda o vehículo
