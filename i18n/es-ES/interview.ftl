hint-list = Flechas o texto, Intro. Esc: volver
hint-many = Intro marca/quita. ← →: cuántos. Tab: arriba. Esc: volver
hint-enter-unknown = Intro: no sé
plain-default = Intro: { $text }
interview-welcome =
    Preguntas cortas, en cinco partes: su generador, sus { -receptacle(form: "many") }, lo que enchufa, el lugar, sus cables y cajas.
    Para elegir la respuesta entre paréntesis o marcada con *, pulse Intro. Si tiene dudas, elija “No lo sé”. Entonces suponemos la respuesta más peligrosa, y lo decimos. Ctrl-C termina y guarda sus respuestas.

ask-site-building = ¿Alimentará la instalación de una casa o cabaña?
    .why = Eso puede matar a quien trabaja en la línea, y a usted.
    .help = Responda No si solo enchufa cosas en el generador, sus cables y sus cajas. Responda Sí si algún cable va de él a un { -receptacle } de pared, una entrada o un cuadro eléctrico de un edificio. Nunca tienda un cable así. Solo un { -electrician } puede conectarlo a un edificio, con un conmutador de transferencia. Si no lo sabe, suponemos que sí.
    .row = Alimenta un edificio

# A longer row is cut on a narrow terminal.
pick-site-stands-enclosed = En { -tent }, porche, coche, cobertizo

pick-gear-what-box-twist-30-four = Caja, magnetotérmicos, de L14-30
pick-gear-what-extension = Alargador doméstico (5-15)

reject-ratio = Un número de { $least } a { $most }, como 0,8.
reject-wire = Un calibre, como 12 AWG o 2,5 mm².
reject-draw = Vatios, amperios o caballos: 1500 W, 12,5 A, 1/2 hp.

example-tank = { $measure ->
    [metric] 4,5 L
   *[customary] 1,2 gal
}
reject-runtime = Un porcentaje y después horas: 25 % 8,5 h, 100 % 3,1 h. O “no sé”.
interview-folder = ¿En qué carpeta van?
    .why = Se crea si no existe. El plan también va ahí.
    .help = Escriba un nombre, como: impresos. Pulse Intro para usar el nombre que se muestra. No sirve una carpeta que contiene otro plan.
ask-generator-tank = ¿Cuánto combustible cabe en su { -tank }?
    .why = Como { example-tank }. Vea el manual.
    .help = Para propano, escriba lo que contiene su bombona como líquido, o “no sé”.
    .row = Capacidad
ask-generator-runtime = ¿Cuánto tiempo funciona con un { -tank }?
    .why = Como: 25 % 8,5 h, 100 % 3,1 h. Vea el manual.
    .help =
        Los fabricantes publican las horas a un porcentaje de la carga nominal. Escriba el porcentaje y después las horas. Si son varios pares, sepárelos con comas.
        Un par basta. Dos son mejor.
    .row = Tiempo de marcha
ask-load-draw = ¿Cuánto consume? Vea su placa.
    .why = { $about }. Como 1500 W, 12,5 A o 1/2 hp.
    .help =
        La placa está detrás o debajo. W son vatios, A son amperios a 120 V, o a 240 V si el aparato usa 240 V. Para un motor puede escribir los caballos (hp), y su letra de código si la placa la tiene: 1/2 hp code G.
        La placa de un cargador da dos líneas: use INPUT (entrada), no la salida. Puede escribirla tal como está: 100-240V 50/60Hz 1.5A.
    .row = Consume
ask-load-factor = ¿Qué número sigue a PF en su placa?
    .why = { $about }. Entre 0,1 y 1. Uno bajo significa más amperios.
    .help = PF es el factor de potencia. La placa puede decir también cos φ. Lo que solo da calor tiene 1. Si no lo sabe, suponemos un valor prudente.
    .row = Factor de potencia
id-our-camper = nuestra-caravana
pick-gear-what-camper = { -camper(form: "One") } o autocaravana (RV)
    .also = remolque furgoneta
