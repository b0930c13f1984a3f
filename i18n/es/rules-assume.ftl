### What the rules take for an answer nobody gave.

assumed-too-near = demasiado cerca
assumed-floating = flotante
assumed-loud = más de lo que permiten muchos campamentos
assumed-quarter = un cuarto de la carga plena
assumed-covered = dentro o debajo de algo

assume-ground = No se sabe si el suelo está mojado; se dio por { $value }. Toque el suelo donde pisa la gente, también al anochecer.
assume-sleepers = No sabemos a qué distancia está la gente, así que supusimos que está { $value }. Mida desde el escape hasta la { -tent }, el vehículo, la puerta o la ventana más cercana.
assume-people-sleep = No sabemos si alguien duerme aquí, así que supusimos que { $value }. Pregunte a todos, también a los vecinos.
assume-stands = Nadie dijo qué hay encima y alrededor del generador; se supuso que está { $value }. Póngalo al aire libre, o bajo un techo alto y abierto por todos lados, no un toldo.
assume-co-alarm = No se sabe si todos duermen con una alarma de monóxido de carbono; se supuso que { $value }. Mire en cada { -tent } y { -camper }, y presione el botón de prueba.
assume-building = No se sabe si el generador va a alimentar un edificio; se supuso que { $value }. Antes de arrancarlo, pregunte a todos en el campamento si está conectado a un edificio.
assume-neutral = No se sabe si el neutro del generador está unido a su chasis; para las pruebas se dio por { $value }; para las descargas, lo que es peor cada vez. Busque en el manual “floating” (flotante) o “bonded neutral” (neutro unido a tierra).
assume-cord-outdoor = No se sabe si “{ $part }” es para exteriores; se supuso que { $value }. Una cubierta para exteriores lleva una “W” en las letras de su tipo, o lo dice.
assume-box-bond = No se sabe cómo es “{ $part }” por dentro; se supuso que allí el neutro y la tierra están unidos. No la abra. Consulte a un { -electrician }.
assume-box-listed = No se sabe si “{ $part }” es de fábrica y está certificada; se supuso que { $value }. Busque en ella la marca de un laboratorio de pruebas.
assume-bonding-plug = No se sabe si hay una clavija de unión neutro-tierra en el generador; se supuso que { $value } donde eso es peor. Es una clavija sin cable, en un { -receptacle } del generador.
assume-noise-load = No sabemos con qué carga se midió el ruido; supusimos { $value }.
assume-backup = Nadie dijo si “{ $part }” tiene una batería para toda la noche; se supuso que { $value }.
assume-parallel-kit = No se sabe si el kit entre los generadores es del fabricante y para justo estos; se supuso que { $value }. Su manual nombra los generadores para los que sirve.
assume-noise-full-load = No sabemos cuánto más ruido hace el generador con más carga; sumamos { $value } para el minuto de mayor carga. Los fabricantes miden a carga parcial, donde hace menos.
assume-noise = No se sabe cuánto ruido hace el generador; se supuso { $value }. Busque “dB” en el manual, con una distancia.
assume-noise-not-told = Nadie dijo cuánto ruido hace el generador; se tomó: { $value }. Pregunte al encargado del lugar antes de usarlo. El manual lo dice en “dB”, con una distancia.
assume-runtime = No sabemos cuánto dura un { -tank }; supusimos { $value }, como en un generador pequeño a plena carga. Busque la duración en el manual.
assume-quiet-hours = No sabemos cuándo debe haber silencio en el campamento; supusimos { $value }, y que entonces se duerme. Pregunte al encargado del lugar.
assume-night = No sabemos cuándo se duerme; supusimos { $value }.
assume-bonding-plug-in = No se sabe en qué { -receptacle } está la clavija de unión; se supuso lo peor: { $value }. Busque en el generador una clavija sin cable.
assume-single-socket = No se sabe cuántas clavijas admite “{ $part }”; se supuso { $value }. Entonces su { -breaker } es demasiado grande. Si admite dos, escriba sockets = 2 en el plan.
