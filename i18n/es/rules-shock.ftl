### Rules on electric shock.

ground-wet = mojado
ground-damp = húmedo
ground-dry = seco
ground-unknown = no lo sabemos, así que supusimos mojado

SHOCK001 = { $fix ->
    [free] Ningún { -gfci } protege { $any }
    [first] Ningún { -gfci } protege { $any }
    [named] No enchufe ningún aparato en { $any }
   *[other] Ningún { -gfci } protege { $any }
  }
    .why = Con este suelo ({ $ground }), un cable o un aparato en mal estado puede hacer pasar la corriente por su cuerpo, y ningún { -breaker } la corta. Un { -gfci(form: "full") } está hecho para cortarla con una fuga de 6 milésimas de amperio.
    .fix-protect = Use solo { -receptacle(form: "many") }, cables o cajas con botones TEST y RESET (GFCI). Antes de cada uso, presione TEST con una lámpara enchufada. Si no se apaga, no use ese { -receptacle }.
    .fix-better = Mejor: enchufe primero un cable con GFCI (botones TEST y RESET), y sus aparatos en él. O use un { -receptacle } que tenga esos botones. Antes de cada uso, presione TEST con una lámpara enchufada: debe apagarse.
    .fix-camper = Si puede, use un { -receptacle } o un cable con { -gfci }. Las normas no lo piden en un { -receptacle } para { -camper }, porque una { -camper } puede dispararlo sin avería. Si se sigue disparando, llame a un { -electrician }.
    .fix-free = No enchufe ahí ningún aparato. Enchufe ahí solo un cable con GFCI (botones TEST y RESET), y sus aparatos en ese cable.
    .fix-named = No enchufe ahí nada más que { shock-named }. Para un aparato, use un { -receptacle } o un cable con botones TEST y RESET ({ -gfci }).
    .fix-first = Desenchufe { $parts } de { $place }. Enchufe en { $place } un cable con GFCI (botones TEST y RESET), y { $parts } en él.

# What alone may be plugged in. $plug: whether the bonding plug is with it, or alone.
shock-named = { $plug ->
    [alone] la clavija de unión
    [yes] { $parts } y la clavija de unión
   *[no] { $parts }
  }

SHOCK002 = Un probador enchufable puede engañar aquí
    .why = No sabemos si el neutro es flotante (no está unido a tierra). Si lo es, el probador muestra “open ground” (tierra abierta) y su botón no dispara nada, aunque el { -gfci } funcione.
    .fix-find-out = Si tiene un { -gfci }, presione su propio botón TEST. Busque en el manual “floating” (flotante) o “bonded neutral” (neutro unido a tierra). No conecte por su cuenta el neutro con la tierra.

SHOCK003 = { $fix ->
    [ask] Esto quizá alimente la instalación de un edificio
   *[other] Esto alimentaría la instalación de un edificio
  }
    .why = La corriente sale a la calle, a miles de voltios, y mata a quienes reparan las líneas. Un cable con una clavija en cada extremo tiene patas al descubierto y con tensión.
    .fix-stop = No conecte el generador al edificio. Enchufe las cosas al generador solo con cables. Primero, un { -electrician } debe instalar un conmutador de transferencia, que separa el edificio de la calle.
    .fix-ask = Averígüelo antes de arrancarlo. Si va a alimentar un edificio, no lo conecte: primero, un { -electrician } debe instalar un conmutador de transferencia, que separa el edificio de la calle.

SHOCK004 = { $fix ->
    [plug] La clavija de unión une el neutro a tierra otra vez
    [sets] Cada generador une el neutro a tierra
    [find-out] El neutro quizá esté unido a tierra en { $bonds } lugares
    [find-out-box] El neutro quizá esté unido a tierra en { $bonds } lugares
   *[other] El neutro está unido a tierra otra vez: { $about }
  }
    .why = { $fix ->
        [find-out] El neutro, el conductor por el que vuelve la corriente, quizá esté unido a tierra en { $bonds } lugares: son demasiados. Entonces el metal que usted toca lleva corriente, y un { -gfci } puede no dispararse.
        [find-out-box] El neutro, el conductor por el que vuelve la corriente, quizá esté unido a tierra en { $bonds } lugares: son demasiados. Entonces el metal que usted toca lleva corriente, y un { -gfci } puede no dispararse.
       *[other] El neutro, el conductor por el que vuelve la corriente, está unido a tierra en { $bonds } lugares: son demasiados. El metal que usted toca lleva corriente, y un { -gfci } puede no dispararse.
      }
    .fix-plug = Con el motor parado, saque la clavija de unión: el neutro de este generador ya está unido a tierra. No conecte ni cambie nada más.
    .fix-sets = Use los generadores por separado hasta que su fabricante diga que se pueden unir los que tienen el neutro unido a tierra. No los abra ni los cambie.
    .fix-box = No use { $any } hasta que un { -electrician } haya mirado dentro. No abra nada usted mismo.
    .fix-find-out = { $used ->
        [no] No use { $any } hasta saberlo.{" "}
        [yes] Hasta saberlo, no cuente con ningún { -gfci } después de { $any }.{" "}
       *[none] {""}
      }Busque en el manual del generador “bonded neutral” (neutro unido a tierra) o “floating neutral” (neutro flotante), y una clavija de unión en sus { -receptacle(form: "many") }. No abra nada, no una nada y no cambie el cableado usted mismo.
    .fix-find-out-box = { SHOCK005.fix-unknown }

SHOCK005 = { $fix ->
    [known] El neutro está unido a tierra dentro de { $about }
   *[other] El neutro quizá esté unido a tierra dentro de { $about }
  }
    .why = Por el neutro vuelve la corriente; por el { -ground-wire } no debe pasar ninguna. Si una caja los une por dentro, el metal que usted toca puede llevar corriente, y un { -gfci } puede fallar.
    .fix-known = No use { $any } hasta que un { -electrician } haya mirado dentro. No abra nada usted mismo. Nunca conecte el neutro con la tierra.
    .fix-unknown = { $used ->
        [no] No use { $any } hasta saberlo.
       *[yes] Hasta saberlo, no cuente con ningún { -gfci } después de { $any }.
      } Busque “neutral bonded” (neutro unido a tierra) o “isolated neutral” (neutro aislado) en los papeles de { $about }, o pregunte al fabricante o a un { -electrician }. No abra nada usted mismo.

SHOCK006 = { $fix ->
    [home-made] Caja casera: { $about }
   *[other] No sabemos quién hizo esta caja: { $about }
  }
    .why = Una caja casera no se ha probado contra lluvia, uniones flojas, conductores delgados o falta de tierra. Nada de eso se ve desde fuera.
    .fix-home-made = Use una caja hecha en fábrica con la marca de un laboratorio de pruebas, o haga que un { -electrician } revise esta. No la abra.
    .fix-look = Busque en la caja la marca de un laboratorio de pruebas. Si no la tiene, haga que un { -electrician } la revise. No la abra.

SHOCK007 = { $first } puede dispararse sin que nada esté mal
    .why = Todo cable y todo aparato deja escapar un poco de corriente: aquí suma cerca de { $leak }, y bastan { $least } para dispararlo (mA: milésimas de amperio). Las uniones mojadas dejan escapar más. Mire: { $about }.
    .fix-nearer = Use un { -gfci } más cerca de los aparatos, con un cable más corto, uniones secas y menos cosas en él. Si se dispara, averigüe por qué, y nunca lo puentee.

SHOCK008 = { $count } { -gfci(form: "many") }, uno tras otro
    .why = No protegen mejor que uno solo. Cualquiera de ellos puede dispararse, así que la corriente puede seguir cortada después de un RESET. Desde el generador: { $about }.
    .fix-reset = Si la corriente se corta, primero desenchufe el aparato. Después presione RESET en cada uno, empezando por el más cercano al generador. Presione TEST en cada uno para probarlo.

SHOCK009 = Dos cosas dañadas a la vez podrían dar una descarga
    .why = El neutro es flotante, o no lo sabemos: la primera cosa dañada no se nota. Una segunda puede poner toda la tensión entre dos carcasas de metal. Sin { -gfci }: { $about }.
    .fix-protect = Enchufe todo esto en { -receptacle(form: "many") } con botones TEST y RESET (GFCI). Deje de usar lo que dé cosquilleo, esté cortado o quemado. No conecte por su cuenta el neutro con la tierra.

SHOCK010 = { $fix ->
    [camper] Una clavija de unión puede estar de más para { $about }
   *[other] Clavija de unión en un generador que alimenta un edificio
  }
    .why = La clavija une el neutro a tierra en el generador. { $fix ->
        [camper] Si la { -camper } hace lo mismo por dentro, el metal que usted toca lleva corriente.
       *[other] El edificio hace lo mismo, así que el metal que usted toca lleva corriente.
      }
    .fix-building = No conecte el generador al edificio. Primero, un { -electrician } debe instalar un conmutador de transferencia, que separa el edificio de la calle. Pregúntele si hay que sacar la clavija.
    .fix-camper = Pregunte al fabricante de la { -camper } o a un { -electrician } antes de conectarla con la clavija puesta. No conecte por su cuenta el neutro con la tierra.

SHOCK011 = { $fix ->
    [count] No sabemos si { $about } tiene neutro
   *[other] Puede faltar el conductor neutro en { $about }
  }
    .why = Lleva las dos mitades de 120/240 V. Sin su neutro, lo que está hecho para 120 V puede recibir casi 240 V y quemarse, y ningún { -breaker } se dispara.
    .fix-leave = No lo use. Use un cable con cuatro conductores, como 10/4.
    .fix-count = Lea lo impreso en la cubierta: 10/4 tiene cuatro conductores, 10/3 tiene tres. No lo use hasta saberlo.

SHOCK012 = El { -gfci } no protege este cable: { $about }
    .why = Un { -gfci } protege solo lo que está después de él, no los { $length } de cable entre él y el generador. Donde ese cable está cortado o mojado, la corriente puede pasar por su cuerpo, y nada se dispara a tiempo.
    .fix-dry = Mantenga sus uniones secas y fuera del suelo. No lo toque, enchufe ni mueva con el motor en marcha. Nunca lo use cortado o aplastado.
    .fix-first = Mejor: va primero un cable con GFCI (botones TEST y RESET). Enchúfelo en { $place }, y { $about } en él. Hasta entonces, mantenga las uniones secas y fuera del suelo, y no lo toque con el motor en marcha.

SHOCK013 = { $fix ->
    [plug] El { -gfci } de “{ $device }” no corta una descarga
    [plug-alone] Un { -gfci } puede desconectar la clavija de unión
    [plug-first] Un { -gfci } puede desconectar la clavija de unión
    [plug-better] Un { -gfci } puede desconectar la clavija de unión
    [if-any] Un { -gfci } en “{ $device }” quizá no corte una descarga
    [if-none] Un { -gfci } en “{ $device }” quizá no corte una descarga
    [box] El { -gfci } de “{ $device }” no corta una descarga
   *[other] El { -gfci } de “{ $device }” quizá no corte una descarga
  }
    .why = { $fix ->
        [plug] La clavija de unión en “{ $joint }” está después de ese { -gfci }: su botón TEST funciona, pero una descarga no lo dispara. Suelo aquí: { $ground }.
        [plug-look] No sabemos si hay una clavija de unión en “{ $joint }”, así que supusimos que sí. Después de ese { -gfci }, impide que se dispare. Suelo aquí: { $ground }.
        [plug-where] No sabemos en qué { -receptacle } está la clavija de unión, así que supusimos “{ $joint }”. Después de ese { -gfci }, impide que se dispare. Suelo aquí: { $ground }.
        [plug-out] Una clavija de unión en “{ $joint }” puede impedir que una descarga dispare ese { -gfci }. Suelo aquí: { $ground }.
        [plug-alone] La clavija de unión en “{ $joint }” está después de un { -gfci }. Si este se dispara, neutro y tierra quedan separados, y usted no lo ve.
        [plug-first] La clavija de unión en “{ $joint }” está después de un { -gfci }. Si este se dispara, neutro y tierra quedan separados, y usted no lo ve.
        [plug-better] La clavija de unión en “{ $joint }” está después de un { -gfci }. Si este se dispara, neutro y tierra quedan separados, y usted no lo ve.
        [box] “{ $joint }” une neutro y tierra después de ese { -gfci }: su botón TEST funciona, pero quizá una descarga no lo dispare. Suelo aquí: { $ground }.
        [if-any] En “{ $joint }” neutro y tierra quizá estén unidos: entonces un { -gfci } en “{ $device }” no se dispara. Suelo aquí: { $ground }.
        [if-none] En “{ $joint }” neutro y tierra quizá estén unidos: entonces un { -gfci } en “{ $device }” no se dispara. Suelo aquí: { $ground }.
        [shared] Neutro y tierra están unidos en “{ $joint }”. No sabemos si un solo { -gfci } sirve a los dos, así que supusimos que una descarga no dispara nada. Suelo aquí: { $ground }.
       *[other] No sabemos si “{ $joint }” une neutro y tierra por dentro, así que supusimos que sí. Entonces ese { -gfci } no se dispara. Suelo aquí: { $ground }.
      }
    .fix-plug = Pare el motor. Pase la clavija de unión a un { -receptacle } del generador sin botones TEST y RESET y con { -breaker } propio. Si no hay ninguno, { $wet ->
        [no] mejor no enchufe
       *[yes] no enchufe
      } en “{ $device }” nada más que un cable con GFCI (botones TEST y RESET).
    .fix-plug-look = Busque en los { -receptacle(form: "many") } del generador una clavija sin cable, y ponga en el plan lo que encuentre. Pregunte a un { -electrician } antes de poner una o de quitarla.
    .fix-plug-where = Pare el motor. Mire en qué { -receptacle } está la clavija de unión. Póngala en uno del generador sin botones TEST y RESET y con { -breaker } propio.
    .fix-plug-alone = No enchufe en “{ $joint }” nada más que un cable con GFCI (botones TEST y RESET). Si se dispara el { -gfci } propio del { -receptacle }, pare el motor y busque la causa.
    .fix-plug-better = Mejor: no enchufe en “{ $joint }” nada más que un cable con GFCI (botones TEST y RESET). Si se dispara el { -gfci } propio del { -receptacle }, pare el motor y busque la causa.
    .fix-plug-first = Ponga un cable con GFCI (botones TEST y RESET) entre { $parts } y “{ $joint }”. Si se dispara el { -gfci } propio del { -receptacle }, pare el motor y busque la causa.
    .fix-plug-out = Pare el motor. Saque la clavija de unión: el neutro de este generador ya está unido a tierra. Es una clavija sin cable, en uno de los { -receptacle(form: "many") } del generador.
    .fix-box = No use “{ $joint }” hasta que lo revise un { -electrician }. No abra nada usted mismo.
    .fix-box-look = { $used ->
        [yes] Hasta saberlo, no cuente con ningún { -gfci } en “{ $device }”.
       *[no] No use “{ $joint }” hasta saberlo.
      } Busque en sus papeles “neutral bonded” (neutro unido a tierra) o “isolated neutral” (neutro aislado), o pregunte al fabricante. No abra nada usted mismo.
    .fix-shared = Si TEST en “{ $device }” también corta “{ $joint }”, un solo { -gfci } sirve a los dos. Pare el motor y pase la clavija de unión a un { -receptacle } que no comparta { -breaker } con nada en uso. Si no lo hay, { $wet ->
        [no] mejor enchufe
       *[yes] enchufe
      } en “{ $device }” solo un cable con GFCI (botones TEST y RESET).
    .fix-if-any = No bastan los botones TEST y RESET de “{ $device }” mismo. Enchufe los aparatos en un cable con GFCI, y ese cable en { $parts }. Mire si “{ $device }” tiene los botones, y anótelo en el plan.
    .fix-if-none = No use { $any }: otros hallazgos dicen qué más está mal. Aunque “{ $device }” tenga botones TEST y RESET, quizá no corten la corriente si alguien recibe una descarga.
