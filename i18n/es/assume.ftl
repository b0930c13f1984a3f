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

assume-altitude = No se sabe a qué altitud está el lugar; se tomó { $value }. A más altura, un generador pierde potencia. Un mapa o un teléfono dice su altitud.
assume-air = No se sabe cuánto calor hará; se tomó { $value }. Con aire caliente, un generador pierde potencia. Indique la temperatura más alta que espera.
assume-rated = No se sabe cuánta potencia da el generador de forma continua; se tomó { $value }, como de los más pequeños. Busque en su placa los vatios “running” o “rated” (nominales): de ellos depende casi todo aquí.
assume-rated-of-peak = No sabemos cuánta potencia da el generador de forma continua; supusimos { $value }, tres cuartos de su máxima. Busque en su placa los vatios “running” o “rated” (nominales): de ellos depende casi todo aquí.
assume-voltage = No se sabe qué tensión da el generador; se tomó { $value }: así, cada { -receptacle } de 120 V llega solo a la mitad de la potencia. Busque “120 V” o “120/240 V” en su placa.
assume-inverter = No se sabe si el generador es inversor; se supuso cada vez lo peor: puede no pararse por sí solo cuando hay demasiado encendido, y un cortocircuito puede no disparar ningún { -breaker }. Busque “inverter” en él.
assume-peak = No se sabe la potencia máxima del generador. Para lo que arranca no se tomó más que su potencia nominal de { $value }; para lo que puede arder, más. Busque “peak”, “starting” o “max” en el generador.
assume-no-gfci = No se sabe si “{ $part }” tiene protección contra descargas eléctricas; no se contó ninguna. Busque botones marcados TEST y RESET.
assume-no-breaker = No se sabe si “{ $part }” tiene su propio { -breaker }; no se contó ninguno. Busque al lado un botón o interruptor marcado con amperios.
assume-breaker-unknown = No se conoce el { -breaker } de “{ $part }”. No se contó con que se dispare a tiempo, ni con más amperios de los que permite la forma del { -receptacle }. Busque un botón o interruptor marcado con amperios.
assume-leg = No se sabe en qué fase está “{ $part }”; se tomó { $value }, con todos los otros en el mismo caso. Es la menor potencia que pueden tener juntos.
assume-box-wire = No se sabe qué conductor hay dentro de la caja detrás de “{ $part }”; se tomó { $value }, el más delgado. No abra la caja para mirar. Pregunte a quien la hizo o a un { -electrician }.
assume-cord-wire = No se sabe el calibre de “{ $part }”; se tomó { $value }, el más delgado. El calibre está impreso a lo largo del cable, como en “12/3” o “12 AWG”.
assume-cord-conductors = No se sabe cuántos conductores tiene “{ $part }”; se contaron { $value }: sin { -ground-wire }. Está impreso a lo largo del cable: “12/3” tiene tres.
assume-cord-length = No se sabe cuánto mide “{ $part }”; se supuso { $value } para la caída de tensión y cero para el alcance. Mídalo a pasos: cuente cada paso como { $step }.
assume-cord-coiled = No se sabe si “{ $part }” está extendido cuando se usa; se dio por enrollado. Enrollado soporta solo un tercio. Desenróllelo por completo, e indíquelo en el plan.
assume-load-kind = No se sabe qué hace sobre todo “{ $part }”; se tomó { $value }: puede consumir tanto como un calefactor y arrancar con tanta fuerza como un motor, y la salud de alguien puede depender de ello. Pregunte a su dueño.
assume-load-plug = No se sabe qué clavija tiene “{ $part }”; se tomó { $value }, la habitual.
assume-load-one-leg = No se sabe cómo se reparte “{ $part }” entre las dos fases; se puso todo en { $value }, sea cual sea. Una placa con los amperios de cada fase lo diría: escríbalos como current. Use menos cosas a la vez en él.
assume-load-voltage = No sabemos si “{ $part }” usa solo 240 V o también 120 V; lo pusimos todo en { $value }, sea cual sea. Busque en su placa “240 V” o “120/240 V”. Use menos cosas a la vez en él.
assume-power-factor = No se sabe el factor de potencia de “{ $part }”; se tomó { $value } según su tipo. Consume más corriente de lo que muestran sus vatios.
assume-running = No se sabe cuánto consume “{ $part }”; se tomó { $value }, lo máximo para su tipo y clavija. Busque W o A en su placa.
assume-starting = No se sabe cuánto necesita “{ $part }” para arrancar; se tomó { $value } según su tipo. Todo lo que tiene motor necesita mucho más para arrancar que para funcionar.
assume-starting-code-v = La letra de código V de “{ $part }” no tiene límite superior; se tomó { $value } para arrancar, lo mínimo. Puede ser más: mire y escuche al arrancar.
assume-continuous = No se sabe cuánto tiempo funciona “{ $part }”; se supuso que tres horas o más seguidas. Eso reduce lo que puede consumir.
assume-all-day = No se sabe cuándo funciona “{ $part }”; se contaron { $value } al día.

# Which of these to find out first. { $assumption } is one of the sentences above, whole.
decides-dangers = Averigüe esto primero: es lo que más decide. { $assumption } { $dangers ->
        [one] Si no es tan malo, puede desaparecer un peligro.
       *[other] Si no es tan malo, pueden desaparecer { $dangers } peligros.
    } No adivine.
decides-warnings = Averigüe esto primero: es lo que más decide. { $assumption } { $warnings ->
        [one] Si no es tan malo, puede desaparecer una advertencia.
       *[other] Si no es tan malo, pueden desaparecer { $warnings } advertencias.
    } No adivine.
decides-limits = Averigüe esto primero: es lo que más decide. { $assumption } Si no es tan malo, puede usar más. No adivine.
assume-parallel-limit = No se sabe cuánto deja pasar el kit entre los generadores; se tomó { $value }, como de uno solo. Lea los amperios en el kit.
assume-rated-on = Con propano, un generador da cerca de una décima parte menos que con gasolina. Por eso se tomó { $value }. Si su placa da vatios para propano, ponga rated_on = "propane" en el plan.
