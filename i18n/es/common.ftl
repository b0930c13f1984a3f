# Words shared by screen and paper.

signal-danger = PELIGRO
signal-warning = ADVERTENCIA
signal-caution = PRECAUCIÓN
signal-notice = AVISO

# The name that the user gave a part or a load, inside a sentence.
id-quoted = “{ $id }”

clock-am = { $time }
clock-pm = { $time }
clock-midnight = { $time }
clock-noon = { $time }
clock-span = { $from } a { $to }

list-comma = ,{" "}
list-semicolon = ;{" "}
list-and = { $first } y { $last }

# How a figure was checked.
mark-confirmed = confirmado
mark-secondary = de una copia secundaria
mark-memory = de memoria, sin verificar
mark-common-practice = práctica común, sin fuente

page-checks = Qué comprueba
page-hurts = Por qué es peligroso
page-arithmetic = El cálculo
page-do = Qué hacer
page-sources = Fuentes

source-table = tabla { $clause }
source-tables = tablas { $clause }
source-tables-metric = tablas { $clause }, para cables marcados en mm²
source-table-note-9 = tabla { $clause }, nota 9
source-chapter-9-table-8 = capítulo 9, tabla 8
source-class = clase { $clause }
source-informational = { $clause }, nota informativa
source-exception = { $clause }, excepción
source-class-a = artículo { $clause }, nota sobre la clase A
source-building-sites = { $clause }, tomada de las obras de construcción
source-camper-outlets = { $clause }, no lo exige en { -receptacle(form: "many") } de { -camper } de 30 A y 50 A
source-floating-outlets = { $clause }, generadores con neutro flotante y { -receptacle(form: "many") } de 125 V y de 125/250 V
source-small-two-wire = { $clause }, obras de construcción; exceptúa los generadores pequeños de dos hilos
source-cord-sets = cables de extensión según su largo, tablas { $clause }
source-letter = carta de interpretación
source-extension-cords = consejos sobre cables de extensión
source-generators = consejos sobre generadores
source-portable-generators = consejos sobre generadores portátiles
source-monoxide = consejos sobre el monóxido de carbono
source-monoxide-levels = niveles de monóxido de carbono
source-generators-monoxide = generadores portátiles y monóxido de carbono
source-alarm-times = tiempos de alarma
source-deaths = muertes por generadores portátiles, comunicado
source-clear-space = espacio libre por todos los lados
source-power-taps = guía, categoría { $clause }, regletas
source-heaters = consejos sobre calefactores eléctricos
source-heating = consejos de prevención sobre calefacción
source-fire-hazards = peligros de incendio de los generadores
source-fire-order = orden { $clause }, restricciones de fuego
source-spark-arresters = homologación de parachispas, como la cita US Army TM 9-6115-673-13&P
source-propane = proveedores de propano, consejos a los clientes
source-oxygen = proveedores de oxígeno a domicilio, consejos a los pacientes
source-oxygen-pages = páginas web sobre energía de reserva para el oxígeno a domicilio, de 300 a 600 W
source-leakage = corriente de fuga
source-calibration = calibración
source-trip-time = tiempo de disparo
source-range-a = { $clause }, como rango A de ANSI C84.1
source-volts-in-use = según Pacific Gas and Electric y un borrador de revisión, tensión de uso de 120 V
source-colors-and-positions = colores y posiciones del contacto de tierra
