# Who shares what: changes that mend a plan, and asking before plugging in.

## One change. $first is the part or load.

change-more-distance = Apague el motor y deje que se enfríe. Lleve el generador al menos a { $distance } de cualquier { -tent }, vehículo, puerta o ventana. El escape apunta lejos de la gente. Vea si los cables aún alcanzan. Si necesita un cable más largo, póngalo en el plan y compruebe otra vez.
change-open-air = { $stands ->
        [enclosed] Si el generador funciona ahora ahí dentro: todos fuera, llame al { $call } desde fuera, y que solo los bomberos entren a pararlo. Cuando esté apagado y frío, sáquelo al aire libre.
        [covered] Apague el motor. Cuando esté frío, sáquelo al aire libre.
       *[other] Si el generador funciona ahora en una { -tent }, porche, vehículo o cobertizo: todos fuera, llame al { $call } desde fuera, y que solo entren los bomberos. Cuando esté apagado y frío, sáquelo al aire libre.
    } Póngalo al menos a { $distance } de cualquier { -tent }, vehículo, puerta o ventana, con { $clear } libres alrededor y sin nada encima salvo un techo bien alto, abierto por todos los lados. El escape apunta lejos de la gente. Vea si los cables aún alcanzan. Si necesita un cable más largo, póngalo en el plan y compruebe otra vez.
change-no-building = No conecte el generador a la instalación de ningún edificio. Enchufe las cosas directamente en él o en su caja.
change-alarm = Ponga una alarma de monóxido de carbono de pilas en cada { -tent } y { -camper } donde duerma gente.
change-uncoil = Desenrolle el cable { $first } y extiéndalo suelto.
change-run-alone = Pare todos los motores. Quite lo que une los generadores y haga funcionar uno solo.
change-leave-home = No use { $first } aquí. Déjelo en casa, o desenchufado y guardado.
change-set-aside = Desenchufe { $first } y todo lo conectado a él, y { $wrong ->
        [yes] no lo use
       *[other] déjelo desenchufado
    }.
change-unplug = Desenchufe { $first }.
change-bonding-plug-out = Pare el motor. Saque la clavija de unión neutro-tierra: el neutro de este generador ya está unido a tierra.
change-bonding-plug = Pare el motor. Enchufe la clavija de unión neutro-tierra en “{ $to }”, que no tiene { -gfci }.
change-replug = Enchufe { $first } en “{ $to }”.
change-move = { $some ->
    [yes] Enchufe en { $to } { $count } de los { $total } { $first }, da igual cuáles, y deje el resto desenchufado.
   *[no] Enchufe { $first } en { $to }.
  }
change-by-the-card = el lugar que muestra la tarjeta
change-take-turns = En { $to }, use { $first } por turnos con { $with }: desenchufe uno antes de enchufar el otro.
change-another-hour = Haga funcionar { $first } en el horario { $to }, y ya no en { $from }.
change-off-at-night = Haga funcionar { $first } solo en el horario { $to }, y apáguelo antes de que la gente duerma.
change-other-cord = En lugar del cable { $first }, use uno marcado para exteriores.{ $wires ->
        [none] {""}
        [4] {" "}Necesita cuatro conductores, con neutro y { -ground-wire }.
       *[other] {" "}Necesita contacto de tierra y { -ground-wire }.
    }{ $wire ->
        [none] {""}
       *[other] {" "}Necesita { $wire } o más grueso.
    }{" "}{ cord-shapes }{ $length ->
        [none] {""}
       *[other] {" "}Mide { $length }.
    }{ $gfci ->
        [yes] {" "}Necesita un { -gfci } (botones TEST y RESET).
       *[no] {""}
    }{" "}También se llama { $first }.
change-as-the-card = Luego imprima la tarjeta del plan cambiado y enchufe todo donde ella lo muestra.
change-protected-cord = Ponga un cable o un adaptador con { -gfci }, certificado por un laboratorio, donde se enchufa { $first }, o use en su lugar un cable con { -gfci } certificado, ni más delgado ni más largo. { cord-shapes }
change-protected-outlet = Ponga un cable o un adaptador con { -gfci }, certificado por un laboratorio, en { $sockets ->
        [one] una toma
       *[other] { $sockets } tomas
    } de { $first }. { cord-shapes }{ $named ->
        [yes] {" "}Lo llamamos { $names }.
       *[no] {""}
    }
change-three-way-cord = Enchufe en { $first } un cable de { $length } con { -gfci }, certificado por un laboratorio: 12 AWG (un número menor es más grueso), marcado para exteriores. { cord-shapes }{ $named ->
        [yes] {" "}Lo llamamos { $names }.
       *[no] {""}
    }
change-smaller-appliance = { $starts ->
    [yes] En lugar de { $first }, use un aparato de { $power } o menos en marcha y { $starting } o menos al arrancar. No enchufe el de { $old }.
   *[no] Use un aparato de { $power } o menos en lugar de { $first }, no el de { $old }.
  }{ $apart ->
    [yes] {" "}Se usa donde hay gente, lejos del generador: no lo lleve allí.
   *[no] {""}
  }
change-box-for-splitter = { $length ->
        [none] En lugar de { $first }, use una caja de distribución certificada por un laboratorio.
       *[other] En lugar de { $first }, use un cable certificado de { $length } y { $wire }, marcado para exteriores. Su clavija y su toma tienen la forma de la entrada de la caja. Lo llamamos { $names }. Enchufe en su extremo una caja de distribución certificada por un laboratorio.
    } { box-shapes }
change-listed-box = Use una caja hecha en fábrica y certificada por un laboratorio en lugar de { $first }. { box-shapes }
change-new-box = Enchufe en { $first } una caja de distribución certificada por un laboratorio. { box-shapes }

# What to look for on a cord or box to buy. $ends are its sockets.
cord-shapes = Su clavija: { $plug }. Sus tomas: { $ends }.
box-shapes = Su entrada: { $plug }. Sus tomas: { $ends }. Cada { -receptacle } necesita un { -gfci } y un { -breaker } de no más amperios que los suyos.

## tallywatt mend

mend-title = { $how ->
        [plan] Cambie su plan.
        [closed] Haga estos pasos en este orden, con el motor apagado. Nunca entre en un lugar cerrado a pararlo.
       *[gear] Pare el motor. Después haga estos pasos en este orden.
    }{ $all ->
        [0] {""}
        [one] {" "}Elimina { $cleared } de 1 peligro.
       *[other] {" "}Elimina { $cleared } de { $all } peligros.
    }
mend-nothing = No hay ningún peligro que eliminar, y todo lo que debe funcionar tiene sitio. No se cambia nada.
mend-before = Como está
mend-after = Con todo hecho
mend-tally = { $dangers ->
        [0] ningún peligro
        [one] 1 peligro
       *[other] { $dangers } peligros
    }, { $warnings ->
        [0] ninguna advertencia
        [one] 1 advertencia
       *[other] { $warnings } advertencias
    }, { $musts ->
        [0] todo lo que se lleva y debe funcionar tiene sitio
        [one] 1 cosa que debe funcionar no puede
       *[other] { $musts } cosas que deben funcionar no pueden, o no cuando se quiere
    }{ $home ->
        [0] {""}
        [one] , 1 aparato se queda en casa
       *[other] , { $home } aparatos se quedan en casa
    }
mend-turns = No todo puede funcionar cuando se quiere. La tarjeta nueva muestra a quién le toca.
mend-proven = Nada más barato de la lista de cambios elimina tanto.
mend-unproven = Puede haber algo más barato que logre lo mismo: no se probó todo.
mend-left = Ningún cambio de la lista elimina el resto. “tallywatt check” dice lo que queda.
mend-stopped = Dejamos de buscar antes de probarlo todo: puede haber un cambio que elimine el resto. “tallywatt check” dice lo que queda.
mend-stays = Queda
mend-wrote = El plan cambiado está escrito en { $path }. Las notas que usted escribió en el archivo anterior no están en él. Imprima ahora la tarjeta nueva: tallywatt print { $path } --into CARPETA. Tire la vieja.
mend-kept = { $path } no se escribió: el plan queda como estaba.
mend-people = El equipo no ha cambiado todavía: haga usted cada paso. Después compruebe otra vez. Arranque el motor solo si no queda ningún peligro.
mend-people-left = El equipo no ha cambiado todavía: haga usted cada paso. Estos pasos no eliminan todos los peligros. No arranque el motor hasta eliminar el resto y comprobar otra vez.
mend-try = Para guardar el plan cambiado en un archivo nuevo: tallywatt mend PLAN --into NUEVO.toml
mend-exists = { $path } ya existe, y no se escribió nada. Indique un archivo nuevo.

print-ws-mend = Cambios que eliminarían los peligros
print-ws-mend-before = Como está: { $tally }.
print-ws-mend-after = Con todo hecho: { $tally }.
print-ws-mend-all = Todo
print-ws-column-change = Cambio
print-ws-column-points = Puntos

## Loads of one entry, counted. $name is what the user calls them.

# The name's gender is not known.
load-some = { $count } de { $total } { $name } (da igual cuáles)
load-at = { $loads } en “{ $at }”

## tallywatt may

may-yes = SÍ: se puede encender { $wanted }, con todo lo demás apagado.
may-yes-while = SÍ: se puede encender { $wanted } mientras { $count ->
        [one] funciona
       *[other] funcionan
    } { $running }, con todo lo demás apagado.
may-no = NO: no encienda { $wanted }.
may-no-together = NO: no use { $wanted } a la vez.
may-no-while = NO: no encienda { $wanted } mientras { $count ->
        [one] funciona
       *[other] funcionan
    } { $running }, con todo lo demás apagado.
may-dangers = Este plan tiene { $count ->
        [one] un peligro
       *[other] { $count } peligros
    } ({ $codes }). Si el motor está en marcha, párelo, pero nunca entre en un lugar cerrado para eso. Déjelo apagado hasta que no quede ningún peligro. “tallywatt check” dice cómo.
may-but = El plan tiene además { $signal ->
        [warning] una advertencia
       *[other] una precaución
    }: { $title } ({ $code }).
may-but-amps = Solo por los amperios, cabrían. Eso no sirve de nada contra un peligro.
may-life = La salud de alguien depende de { $life }. Apague primero { $others }, y pregunte de nuevo.
may-no-place = En este plan no hay sitio para { $names }: { $reason }.
may-refused = No enchufe { $names }: no se debe usar ningún { -receptacle } que queda. “tallywatt check” dice por qué.
may-wrong-place = No enchufe { $names } donde lo pone el plan. Libre, y puede con ello: { $free }. Anótelo en el plan y pregunte otra vez.
may-taken = { $names } { $count ->
        [one] comparte su toma
       *[other] comparten su toma
    } con otra cosa que usted nombra. Desenchufe esa primero, y enchufe una cada vez.
may-nothing = Todo lo que nombra ya funciona.
may-over-short = { $at }: soporta { $limit }. Estos piden { $asks }: { $over } de más.
may-over-hours = { $at }: soporta { $limit } durante tres horas o más. Estos cuentan como { $asks }: { $over } de más.
may-over-starting = Cuando arranca { $by } además de lo demás, el generador tiene que dar { $asks }. Su máximo es { $limit }: { $over } de más.
may-over-starting-alone = El arranque de { $by } solo pide { $asks }. El máximo del generador es { $limit }: { $over } de más.
may-order-only = En un cierto orden, todos arrancarían. Pero lo que tiene termostato o motor vuelve a arrancar solo, y eso sería demasiado.
may-the-set = El generador
may-part = “{ $id }”
# Amps of a part that both legs of the generator feed: those that it carries, what is asked of one of them, and
# what passes each at most.
amps-both = { $amps } en A y { $amps } en B
amps-one-leg = { $amps } en una fase
amps-both-at-most = { $amps } en A y hasta { $amps } en B
amps-all = { $amps }
may-order = Encienda en este orden
may-order-step = { $name } en “{ $at }”: con lo demás, el generador da entonces hasta { $amps } por un instante
may-any-order = Cualquier otro orden también vale. Este tiene el pico más bajo.
may-meter = Cuando todo funciona, cuente con
may-meter-breaker = por el { -breaker } de “{ $breaker }”: hasta { $amps }
may-meter-receptacle = en un medidor enchufable en “{ $receptacle }”: { $volts } o un poco más, si el generador da { $nominal }
may-meter-if = No abra nada para medir. Más amperios durante más de unos segundos, o claramente menos voltios: pare el motor, palpe los cables y las clavijas, y busque qué es distinto.
may-as-placed = Esto vale con todo enchufado como en la tarjeta.
may-no-load = Ningún aparato se llama { $asked }.
may-no-load-nearest = ¿Quiso decir “{ $nearest }”?
may-no-load-known = Hay { $known }.

## What may run together, as check shows it. Names are joined by “+” or commas.

share-danger = Lo que sigue vale solo por los amperios. Elimine primero cada peligro: hasta entonces, el motor queda apagado.
share-all = En cuanto a potencia, todo puede estar encendido a la vez.
share-together = Qué puede funcionar a la vez: todo lo de una línea, y nada más con ello
share-never = Nunca a la vez
share-alone = { $name }, tal como está planeado ni siquiera sin lo demás
share-more = y { $count } más, todo en la hoja de cálculo
share-incomplete = La lista no está completa. Solo puede funcionar a la vez lo que está en ella.
share-off = Junto a { $life }, deje apagado: { $off }.
share-turns = No todo cabe cuando se quiere. Haga turnos

print-turns-title = Por turnos
