hint-list = Flechas o texto, Intro. Esc: volver
hint-many = Intro marca/quita. ← →: cuántos. Esc
hint-enter-unknown = Intro: no sé
plain-default = Intro: { $text }
interview-welcome =
    Preguntas cortas, en cinco partes: su generador, sus { -receptacle(form: "many") }, lo que enchufa, el lugar, sus cables y cajas.
    Si solo pulsa Intro, vale lo que está entre paréntesis. Si no lo sabe, dígalo: suponemos lo peor. Ctrl-C termina, y sus respuestas se guardan.

ask-site-building = ¿Alimentará la instalación de una casa o cabaña?
    .why = Eso puede matar a quien trabaja en la línea, y a usted.
    .help = Responda No si solo enchufa cosas en el generador, sus cables y sus cajas. Responda Sí si algún cable va de él a un enchufe de pared, una entrada o un cuadro eléctrico de un edificio. Nunca tienda un cable así. Ese trabajo es solo para un { -electrician }. Si no lo sabe, suponemos que sí.
    .row = Alimenta un edificio

# A longer row is cut on a narrow terminal.
pick-site-stands-enclosed = En { -tent }, porche, coche, cobertizo

pick-gear-what-box-twist-30-four = Caja, magnetotérmicos, de L14-30
pick-gear-what-extension = Alargador doméstico (5-15)

reject-ratio = Un número de { $least } a { $most }, como 0,8.
reject-wire = Un calibre, como 12 AWG o 2,5 mm².
reject-draw = Vatios, amperios o caballos: 1500 W, 12,5 A, 1/2 hp.

example-tank = { $measure ->
    [metric] 4,5 L
   *[customary] 1,2 gal
}
reject-runtime = Una parte y después horas: 25 % 8,5 h, 100 % 3,1 h. O “no sé”.
