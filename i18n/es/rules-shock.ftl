### Rules on electric shock.

ground-wet = mojado
ground-damp = húmedo
ground-dry = seco
ground-unknown = no se sabe; se da por mojado

SHOCK001 = { $fix ->
    [free] Ningún { -gfci } en el camino hasta { $any }
    [first] Ningún { -gfci } en el camino hasta { $any }
    [named] No enchufe ningún aparato en { $any }
   *[other] Sin protección contra descargas en { $any }
  }
    .why = Suelo aquí: { $ground }. Si un cable o un aparato se daña, la corriente puede pasar por quien lo toque. Un { -breaker } no lo nota. Un { -gfci(form: "full") } está hecho para dispararse con 6 milésimas de amperio.
    .fix-protect = Use solo { -receptacle(form: "many") } con un botón TEST y un botón RESET, o un cable o una caja que los tenga. Antes de cada uso, enchufe una lámpara y presione TEST: debe apagarse. Si no se apaga, no lo use.
    .fix-better = Mejor: enchufe primero un cable con GFCI (botones TEST y RESET), y sus aparatos en él. O use un { -receptacle } que tenga esos botones. Antes de cada uso, enchufe una lámpara y presione TEST: debe apagarse.
    .fix-camper = Si puede, use un { -receptacle } o un cable con { -gfci }. Las normas no lo piden para una { -camper }, que puede dispararlo sin avería. Si se dispara cada vez, llame a un { -electrician }.
    .fix-free = No enchufe ahí ningún aparato. Puede enchufar un cable con GFCI (botones TEST y RESET): use solo su extremo.
    .fix-named = No enchufe ahí nada más que { shock-named }. Para un aparato, use un { -receptacle } o un cable con botones TEST y RESET ({ -gfci }).
    .fix-first = Desenchufe { $parts } de { $place }. Enchufe en { $place } un cable con GFCI (botones TEST y RESET), y { $parts } en él.

# What alone may be plugged in. $plug: whether the bonding plug is with it, or alone.
shock-named = { $plug ->
    [alone] la clavija de unión
    [yes] { $parts } y la clavija de unión
   *[no] { $parts }
  }

SHOCK002 = Un probador enchufable puede engañar: no se sabe si el neutro es flotante
    .why = Si el neutro es flotante, el probador muestra “open ground” (tierra abierta) y su botón no dispara nada, aunque la protección funcione.
    .fix-find-out = Si tiene un { -gfci }, pruebe con su propio botón TEST. Busque en el manual “floating” (flotante) o “bonded neutral” (neutro unido a tierra), y póngalo en el plan. No una por su cuenta el neutro y la tierra.

SHOCK003 = { $fix ->
    [ask] No se sabe si esto va a alimentar la instalación eléctrica de un edificio
   *[other] Esto alimentaría la instalación eléctrica de un edificio
  }
    .why = La corriente sale por el edificio a la calle, a miles de voltios. Mata a quienes reparan las líneas. Un cable con dos clavijas tiene patas al descubierto y con tensión.
    .fix-stop = No lo conecte. Enchufe las cosas al generador solo con cables. Primero, un { -electrician } debe instalar un equipo de transferencia.
    .fix-ask = Averígüelo antes de arrancarlo. Si la respuesta es sí, no lo conecte: primero, un { -electrician } debe instalar un equipo de transferencia.

SHOCK004 = { $fix ->
    [find-out] El neutro puede estar unido a tierra en { $bonds } lugares: no se sabe
    [find-out-box] El neutro puede estar unido a tierra en { $bonds } lugares: no se sabe
    [plug] La clavija de unión une el neutro a tierra otra vez
    [sets] Cada generador une el neutro a tierra
   *[other] El neutro está unido a tierra otra vez: { $about }
  }
    .why = { $fix ->
        [find-out] El neutro, el conductor de retorno, puede estar unido a tierra en { $bonds } lugares: son demasiados. Entonces el metal que usted toca lleva corriente, y la protección contra descargas eléctricas puede dispararse sin motivo o no dispararse en absoluto.
        [find-out-box] El neutro, el conductor de retorno, puede estar unido a tierra en { $bonds } lugares: son demasiados. Entonces el metal que usted toca lleva corriente, y la protección contra descargas eléctricas puede dispararse sin motivo o no dispararse en absoluto.
       *[other] El neutro, el conductor de retorno, está unido a tierra en { $bonds } lugares: son demasiados. El metal que usted toca lleva corriente, y la protección contra descargas eléctricas puede dispararse sin motivo o no dispararse en absoluto.
      }
    .fix-plug = Con el motor parado, saque la clavija de unión: el neutro de este generador ya está unido a tierra. No una ni cambie nada más.
    .fix-sets = Use los generadores por separado hasta que su fabricante diga que se pueden unir los que tienen el neutro unido a tierra. No los abra ni los cambie.
    .fix-box = No use { $any } hasta que un { -electrician } haya mirado dentro. No abra nada usted mismo.
    .fix-find-out = Busque en el manual del generador “bonded neutral” (neutro unido a tierra) o “floating neutral” (neutro flotante), y una clavija de unión en sus { -receptacle(form: "many") }. Si usa una caja, haga que un { -electrician } la revise. No abra, una ni cambie nada usted mismo.
    .fix-find-out-box = { SHOCK005.fix-unknown }

SHOCK005 = { $fix ->
    [known] El neutro está unido a tierra dentro de { $about }
   *[other] El neutro quizá esté unido a tierra dentro de { $about }
  }
    .why = Nunca una usted el neutro y la tierra. Si una caja los une por dentro, el metal que usted toca puede llevar corriente, y la protección contra descargas eléctricas puede no funcionar.
    .fix-known = No use { $any } hasta que un { -electrician } haya mirado dentro. No abra nada usted mismo.
    .fix-unknown = Busque “neutral bonded” (neutro unido a tierra) o “isolated neutral” (neutro aislado) en los papeles de { $about }, o pregunte al fabricante. Si no lo averigua, haga que un { -electrician } mire dentro. No abra nada usted mismo.

SHOCK006 = { $fix ->
    [home-made] Caja casera: { $about }
   *[other] No se sabe quién hizo esta caja: { $about }
  }
    .why = Una caja casera no se ha probado contra lluvia, uniones flojas, conductores delgados o falta de tierra. Nada de eso se ve desde fuera.
    .fix-home-made = Use una caja hecha en fábrica con la marca de un laboratorio de pruebas, o haga que un { -electrician } revise esta. No la abra.
    .fix-look = Busque en la caja la marca de un laboratorio de pruebas. Si no la tiene, haga que un { -electrician } la revise. No la abra.

SHOCK007 = { $first } puede dispararse sin que nada esté mal
    .why = Todo cable y todo aparato deja escapar un poco de corriente. Aquí suma cerca de { $leak } (bastan { $least } para dispararlo; mA: milésimas de amperio). Las uniones mojadas dejan escapar más. Intervienen: { $about }.
    .fix-nearer = Use la protección más cerca de los aparatos, con un cable más corto detrás y menos cosas en ella. Mantenga secas las uniones. Si se dispara, averigüe por qué. Nunca la puentee.

SHOCK008 = { $count } protecciones contra descargas, una tras otra
    .why = No protegen mejor que una sola. Una avería puede disparar cualquiera de ellas, así que la corriente puede seguir cortada después de un RESET. Desde el generador: { $about }.
    .fix-reset = Si la corriente se corta, primero desenchufe el aparato. Después presione RESET en cada una, empezando por el generador. Pruebe cada una con su propio botón TEST.

SHOCK009 = Aquí, dos averías podrían dar una descarga sin que nada se dispare
    .why = El neutro es flotante, o no se sabe. Entonces una primera avería no se nota en nada. Una segunda, en otro aparato, puede poner toda la tensión entre dos carcasas de metal. Sin protección aquí: { $about }.
    .fix-protect = Enchúfelos todos en { -receptacle(form: "many") } con un botón TEST y un botón RESET. Deje de usar lo que dé cosquilleo, esté cortado o quemado. No una por su cuenta el neutro y la tierra.

SHOCK010 = { $fix ->
    [camper] Una clavija de unión puede ser una unión de más para { $about }
   *[other] Una clavija de unión no debe quedar puesta cuando un generador alimenta un edificio
  }
    .why = La clavija une el neutro a tierra en el generador. { $fix ->
        [camper] Algunas { -camper(form: "many") } hacen lo mismo por dentro. Con dos uniones, el metal que usted toca lleva corriente.
       *[other] El edificio hace lo mismo. Con dos uniones, el metal que usted toca lleva corriente.
      }
    .fix-building = No lo conecte. Primero, un { -electrician } debe instalar un equipo de transferencia, y él dirá si la clavija se queda fuera.
    .fix-camper = Pregunte al fabricante de la { -camper } o a un { -electrician } antes de conectarla con la clavija puesta. No una por su cuenta el neutro y la tierra.

SHOCK011 = { $fix ->
    [count] No se sabe si { $about } tiene conductor neutro
   *[other] Puede faltar el conductor neutro en { $about }
  }
    .why = Lleva las dos mitades de 120/240 V. Sin su neutro, lo que está hecho para 120 V puede recibir casi 240 V. Se quema, y ningún { -breaker } se dispara.
    .fix-leave = No lo use. Use un cable con cuatro conductores, como 10/4.
    .fix-count = Lea lo impreso en la cubierta: 10/4 tiene cuatro conductores, 10/3 tiene tres. No lo use hasta saberlo.

SHOCK012 = Sin protección contra descargas a lo largo de { $about }
    .why = La protección ({ -gfci }) cubre lo que está detrás de ella. Antes de ella hay { $length } de cable. Donde el cable tiene un corte o una unión está mojada, la corriente puede pasar por quien lo toque, y nada se dispara a tiempo.
    .fix-dry = Mantenga cada unión fuera del suelo y seca. No lo toque, enchufe ni mueva con el motor en marcha. Revíselo todo antes de cada uso: cortado o aplastado, no lo use.
    .fix-first = Mejor: va antes un cable con GFCI (botones TEST y RESET). Enchúfelo en { $place }, y { $about } en él. Hasta entonces, mantenga secas y en alto las conexiones, y no lo toque con el motor en marcha.

SHOCK013 = { $fix ->
    [plug] El { -gfci } de “{ $device }” no ve una avería
    [plug-alone] Un { -gfci } puede desconectar la clavija de unión
    [plug-first] Un { -gfci } puede desconectar la clavija de unión
    [plug-better] Un { -gfci } puede desconectar la clavija de unión
    [if-any] Un { -gfci } en “{ $device }” quizá no vea una avería
    [if-none] Un { -gfci } en “{ $device }” quizá no vea una avería
    [box] El { -gfci } de “{ $device }” no ve una avería
   *[other] El { -gfci } de “{ $device }” quizá no vea una avería
  }
    .why = { $fix ->
        [plug] La clavija de unión en “{ $joint }” está detrás de ese { -gfci }, y la corriente de una avería vuelve por él. No se dispara, aunque su botón TEST funcione. Suelo aquí: { $ground }.
        [plug-look] No se sabe si hay una clavija de unión en “{ $joint }”; se supuso que sí. Detrás de ese { -gfci }, impide que se dispare. Suelo aquí: { $ground }.
        [plug-where] No se sabe en qué { -receptacle } está la clavija de unión: quizá en “{ $joint }”. Detrás de ese { -gfci }, impide que se dispare. Suelo aquí: { $ground }.
        [plug-out] Una clavija de unión en “{ $joint }” puede impedir que ese { -gfci } se dispare. Suelo aquí: { $ground }.
        [plug-alone] La clavija de unión en “{ $joint }” está detrás de un { -gfci }. Si este se dispara, neutro y tierra quedan separados y nadie lo ve.
        [plug-first] La clavija de unión en “{ $joint }” está detrás de un { -gfci }. Si este se dispara, neutro y tierra quedan separados y nadie lo ve.
        [plug-better] La clavija de unión en “{ $joint }” está detrás de un { -gfci }. Si este se dispara, neutro y tierra quedan separados y nadie lo ve.
        [if-any] No se sabe si “{ $device }” tiene un { -gfci }. En “{ $joint }” neutro y tierra pueden estar unidos: entonces ese { -gfci } no se dispara, aunque su botón TEST funcione. Suelo aquí: { $ground }.
        [if-none] No se sabe si “{ $device }” tiene un { -gfci }. En “{ $joint }” neutro y tierra pueden estar unidos: entonces ese { -gfci } no se dispara, aunque su botón TEST funcione. Suelo aquí: { $ground }.
        [box] “{ $joint }” une neutro y tierra detrás de ese { -gfci }, y la corriente de una avería vuelve por él. No se dispara, aunque su botón TEST funcione. Suelo aquí: { $ground }.
        [shared] Neutro y tierra están unidos en “{ $joint }”. No se sabe si un solo { -gfci } sirve a las dos tomas; se supuso que sí, y que no ve una avería. Suelo aquí: { $ground }.
       *[other] No se sabe si “{ $joint }” une neutro y tierra por dentro; se supuso que sí. Entonces ese { -gfci } no se dispara. Suelo aquí: { $ground }.
      }
    .fix-plug = Pare el motor. Pase la clavija de unión a un { -receptacle } del generador sin botones TEST y RESET y con { -breaker } propio. Si no hay ninguno, { $wet ->
        [no] mejor no enchufe
       *[yes] no enchufe
      } en “{ $device }” nada más que un cable con GFCI (botones TEST y RESET).
    .fix-plug-look = Busque en las tomas del generador una clavija sin cable. Si hay una, déjela, anote en el plan en cuál está y pregunte a un electricista autorizado dónde debe ir. Si no la hay, dígalo en el plan, y no ponga ninguna.
    .fix-plug-where = Pare el motor. Mire en qué toma está la clavija de unión. Póngala en un { -receptacle } del generador sin botones TEST y RESET y con { -breaker } propio.
    .fix-plug-alone = No enchufe en “{ $joint }” nada más que un cable con GFCI (botones TEST y RESET). Si se dispara el { -gfci } de “{ $joint }”, pare el motor y busque la causa.
    .fix-plug-better = Mejor: no enchufe en “{ $joint }” nada más que un cable con GFCI (botones TEST y RESET). Si se dispara el { -gfci } de “{ $joint }”, pare el motor y busque la causa.
    .fix-plug-first = Desenchufe { $parts } de “{ $joint }”. Enchufe ahí un cable con GFCI (botones TEST y RESET), y { $parts } en él. Si se dispara el { -gfci } de “{ $joint }”, pare el motor y busque la causa.
    .fix-plug-out = Pare el motor. Saque la clavija de unión: el neutro de este generador ya está unido a tierra. Es una clavija sin cable, en una de las tomas del generador.
    .fix-box = No use “{ $joint }” hasta que lo mire un { -electrician }. No lo abra.
    .fix-box-look = No use “{ $joint }” hasta saberlo. Busque en sus papeles “neutral bonded” (neutro unido) o “isolated neutral” (neutro aislado), o pregunte al fabricante. No abra nada usted.
    .fix-shared = Si TEST en “{ $device }” también corta “{ $joint }”, un solo { -gfci } sirve a las dos. Pare el motor y pase la clavija de unión a una toma que no comparta el { -breaker } con nada en uso. Si no la hay, { $wet ->
        [no] mejor enchufe
       *[yes] enchufe
      } en “{ $device }” solo un cable con GFCI (botones TEST y RESET).
    .fix-if-any = No bastan los botones TEST y RESET de “{ $device }” mismo. Enchufe los aparatos en un cable con GFCI, y ese cable en { $parts }. Mire si “{ $device }” tiene los botones, y anótelo en el plan.
    .fix-if-none = No use { $any }: ahí hay más cosas mal. Aunque “{ $device }” tenga botones TEST y RESET, una avería ahí quizá no dispare nada.
