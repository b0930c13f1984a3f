# Tests of a receptacle, and volts: what they show, and what that proves.

## The card's test steps. $at lists receptacles, or says that it holds for all.

print-test-everywhere = Donde quepa un probador
print-test-protected = Donde la etiqueta dice “GFCI: SÍ”
# $joint is a box that must not be used, $at the outlets or boxes with the TEST button.
print-test-without = Deje “{ $joint }” desenchufado. Mientras esté enchufado, no confíe en el { -gfci } de { $at }.
print-test-find-out = No sabemos si el neutro de este generador es flotante o está unido a tierra. Mire en su manual, o consulte a un { -electrician }.
print-test-reads-correct = { $at }: un probador enchufable debe mostrar CORRECT.
print-test-reads-floating = { $at }: un probador enchufable debería mostrar OPEN GROUND. Es normal con un neutro flotante: no intente cambiarlo. Un { -ground-wire } roto marca lo mismo.
print-test-reads-either = { $at }: un probador enchufable muestra CORRECT si el neutro está unido a tierra y el { -ground-wire } está entero. OPEN GROUND: el neutro es flotante, o el { -ground-wire } está roto. Entonces no use esa toma hasta saber cuál.
print-test-other = Cualquier otra lectura: pare el motor. Desenchufe ese cable o esa caja, arranque el motor y pruebe la toma donde estaba. Siga hacia el generador hasta que una marque bien. No use lo último que desenchufó, ni nada enchufado en ello. Si marca mal una toma del propio generador, no la use.
print-test-tester-trips = { $at }: el botón del propio probador también debe cortar la corriente. Si no, no use esa toma.
print-test-tester-no-way-back = { $at }: el botón del propio probador no hace nada aquí. Presione en su lugar TEST en el { -gfci }.
print-test-tester-blind = { $at }: el botón del propio probador no hace nada. El { -gfci } no corta descargas ahí. Enchufe solo lo que permite la etiqueta.
print-test-tester-doubtful = { $at }: el botón TEST del { -gfci } corta la corriente, pero una descarga quizá no. Enchufe solo lo que permite la etiqueta.
print-test-tester-either = { $at }: no sabemos qué hace el botón del propio probador. Solo cuenta el botón TEST del { -gfci } mismo.

## The worksheet: tests

print-ws-tests = Qué muestra aquí cada prueba, y qué demuestra
print-ws-tests-lamps = Luces de un probador: fase a neutro, fase a tierra, neutro a tierra. Una luz apagada puede brillar débilmente.
print-ws-tests-own = El botón TEST del propio { -gfci } demuestra que el { -gfci } corta la corriente. No necesita tierra, y no dice nada de ella.
print-ws-tests-meter = Medidor: motor parado, todo desenchufado. Del orificio de tierra al chasis desnudo, y al orificio de neutro. Primero junte las puntas, y reste esa lectura. Esto es para un { -electrician }. Nunca abra nada.
print-ws-tests-time = Tiempo máximo que puede tardar un { -gfci }: (20 ÷ mA) elevado a 1.43, en segundos: { $times }.
# $leak in thousandths of an ampere.
print-trip-time = { $leak } mA en { $seconds } s
print-ws-column-lamps = Luces
print-ws-column-reads = El probador muestra
print-ws-column-own-button = TEST está en
print-ws-column-tester-button = Botón del probador
print-ws-column-ground = Tierra a chasis
print-ws-column-joined = Neutro a tierra
print-lamp-lit = sí
print-lamp-dark = no
print-lamp-either = ?
print-reads-correct = correcto
print-reads-floating = tierra abierta, porque el neutro es flotante
print-reads-either = correcto o tierra abierta, no se sabe
print-button-trips = corta la corriente
print-button-no-way-back = no hace nada
print-button-blind = no hace nada: el { -gfci } no lo detecta
print-button-either = no se puede saber
print-button-no-protection = ningún { -gfci } conocido
# $ohms is the most a meter shows there.
print-meter-ground-here = cerca de 0 Ω
print-meter-ground-yes = { $ohms } o menos
print-meter-neutral-yes = unido
print-meter-neutral-no = sin unión
print-meter-neutral-unknown = dice qué neutro es
print-proves-reads-correct = CORRECT demuestra que el { -ground-wire } está entero hasta la unión con el neutro. No muestra si neutro y tierra están cambiados, ni una segunda unión.
print-proves-reads-floating = OPEN GROUND con un neutro flotante no demuestra nada: se ve igual si el { -ground-wire } está roto.
print-proves-reads-either = Mientras no sabemos cómo es el neutro: CORRECT demuestra que está unido a tierra y que el { -ground-wire } está entero. OPEN GROUND deja las dos cosas sin saber.
print-proves-button-trips = El botón del probador corta la corriente: eso demuestra a la vez que funcionan el { -gfci }, el { -ground-wire } y la unión.
print-proves-button-no-way-back = El botón del probador no hace nada donde su corriente no encuentra camino de vuelta: eso no demuestra nada del { -gfci }.
print-proves-button-blind = El botón del probador no hace nada donde la unión está después del { -gfci }: su corriente vuelve por el { -gfci }. La de una persona también volvería.
print-proves-button-either = Donde no conocemos las uniones, un botón del probador que no hace nada no demuestra nada. Uno que corta la corriente demuestra que el { -gfci } funciona.

## The worksheet: volts

print-ws-volts-how = Voltios = nominales − voltios perdidos con todo lo encendido hasta ese paso. En el momento de arrancar cuentan los amperios de arranque.
print-ws-volts-low = El propio generador puede dar unos voltios más o menos: mídalo allí primero. Si un paso marca aún menos, pare, y busque una clavija mala, un cable delgado o demasiado encendido. Si una mitad de un generador de 120/240 V marca más que el generador, pare también: quizá se perdió el neutro.
print-ws-column-dips = Baja a
print-ws-column-reads-volts = Marca
print-ws-column-boxes = Cajas después
print-ws-worst-range = Un suministro de 120 V se mantiene entre { $least } y { $most } (rango A). Eso es para las compañías eléctricas. Aquí es un consejo.
print-ws-worst-running = En marcha
print-ws-worst-start = Mientras arranca { $starts }
print-ws-column-beside = Con esto encendido
print-ws-longest = Qué largo podría tener cada cable
print-ws-longest-how = Mayor largo = voltios perdidos ÷ (amperios × ohmios por unidad de largo × 2), este cable solo, con lo máximo que puede funcionar a la vez en él. No figuran los calibres que no soportan esos amperios o que el { -breaker } anterior no protege. Un cable con clavija doméstica no es más largo que la marca usual de su calibre para esos amperios.
print-ws-longest-ohms = { $per }: { $ohms }.
print-ws-longest-advice = 3 % y 5 % son consejos para todo el camino. No son ley.
print-ws-column-at-3 = Para 3 %
print-ws-column-at-5 = Para 5 %
