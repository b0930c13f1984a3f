# Who shares what: changes that mend a plan, and asking before plugging in.

## One change. $first is the part or load.

change-more-distance = Pare el motor y deje que se enfríe. Lleve el generador a un lugar a { $distance } o más de cualquier { -tent }, vehículo, puerta o ventana. Dirija el escape lejos de la gente. Vea si los cables aún alcanzan. Si necesita un cable más largo, póngalo en el plan y compruebe otra vez.
change-open-air = { $stands ->
    [enclosed] Si el generador funciona ahora en un lugar cerrado: todos fuera, y llame al { $call }. Que solo los bomberos entren a pararlo. Muévalo solo cuando esté apagado y frío.
    [covered] Pare el motor. Muévalo solo cuando esté frío.
   *[other] Si el generador funciona ahora en una { -tent }, porche, vehículo o cobertizo: todos fuera, y llame al { $call }. Que solo entren los bomberos. Muévalo solo cuando esté apagado y frío.
} Póngalo al aire libre, al menos a { $distance } de cualquier { -tent }, vehículo, puerta o ventana, con { $clear } libres por todos lados. Nada encima salvo un techo alto, abierto por todos lados. Dirija el escape lejos de la gente. Vea si los cables aún alcanzan. Si necesita un cable más largo, póngalo en el plan y compruebe otra vez.
change-no-building = No conecte el generador a la instalación de ningún edificio. Enchufe las cosas directamente en él o en su caja.
change-alarm = Ponga una alarma de monóxido de carbono de pilas en cada { -tent } y { -camper } donde duerma gente.
change-uncoil = Desenrolle el cable { $first } y extiéndalo suelto.
change-run-alone = Pare todos los motores. Quite lo que une los generadores y haga funcionar uno solo.
change-leave-home = No use { $first } aquí. Déjelo en casa, o desenchúfelo y guárdelo.
change-set-aside = Desenchufe { $first } y todo lo conectado a él, y { $wrong ->
        [yes] no lo use
       *[other] déjelo desenchufado
    }.
change-unplug = Desenchufe { $first }.
change-bonding-plug-out = Pare el motor. Saque la clavija de unión: el neutro del generador ya está unido a tierra.
change-bonding-plug = Pare el motor. Enchufe la clavija de unión en “{ $to }”, que no tiene { -gfci }.
change-replug = Enchufe { $first } en el { -receptacle } “{ $to }”.
change-move = { $some ->
    [yes] Enchufe en { $to } { $count } de los { $total } { $first }, da igual cuáles, y deje el resto desenchufado.
   *[no] Enchufe { $first } en { $to }.
  }
change-by-the-card = el { -receptacle } que muestra la tarjeta nueva
change-take-turns = En { $to }, use { $first } por turnos con { $with }: desenchufe uno antes de enchufar el otro.
change-another-hour = Haga funcionar { $first } en el horario { $to }, y ya no en { $from }.
change-off-at-night = Haga funcionar { $first } solo en el horario { $to }, y apáguelo antes de que la gente se duerma.
change-other-cord = En lugar del cable { $first }, use uno marcado para exteriores.{ $wires ->
        [none] {""}
        [4] {" "}Necesita cuatro conductores, con neutro y { -ground-wire }.
       *[other] {" "}Necesita contacto de tierra y { -ground-wire }.
    }{ $wire ->
        [none] {""}
       *[other] {" "}Necesita conductores de { $wire } o más gruesos.
    }{" "}{ cord-shapes }{ $length ->
        [none] {""}
       *[other] {" "}Mide { $length }.
    }{ $gfci ->
        [yes] {" "}Necesita un { -gfci } (botones TEST y RESET).
       *[no] {""}
    }{" "}También lo llamamos { $first }.
change-as-the-card = Luego imprima la tarjeta del plan cambiado y enchufe todo donde ella lo muestra.
change-protected-cord = Ponga un cable o un adaptador certificado con { -gfci } donde se enchufa { $first }. O use en su lugar un cable certificado con { -gfci }, ni más delgado ni más largo. { cord-shapes }
change-protected-outlet = Ponga un cable o un adaptador certificado con { -gfci } en { $sockets ->
        [one] una toma
       *[other] cada una de { $sockets } tomas
    } de { $first }. { cord-shapes }{ $named ->
        [yes] {" "}{ $sockets ->
            [one] Lo
           *[other] Los
        } llamamos { $names }.
       *[no] {""}
    }
change-three-way-cord = Enchufe en { $first } un cable certificado (con la marca de un laboratorio) de { $length }. Debe tener un { -gfci } (botones TEST y RESET) y conductores de 12 AWG, y estar marcado para exteriores. { cord-shapes }{ $named ->
        [yes] {" "}Lo llamamos { $names }.
       *[no] {""}
    } Un número AWG menor es un conductor más grueso.
change-smaller-appliance = { $starts ->
    [yes] En lugar de { $first }, use un aparato de { $power } o menos en marcha y { $starting } o menos al arrancar. No enchufe el de { $old }.
   *[no] Use un aparato de { $power } o menos en lugar de { $first }, no el de { $old }.
  }{ $apart ->
    [yes] {" "}La gente lo usa lejos del generador: no lo lleve junto a él.
   *[no] {""}
  }
change-box-for-splitter = { $length ->
        [none] En lugar de { $first }, use una caja hecha en fábrica con la marca de un laboratorio (certificada).
       *[other] En lugar de { $first }, use un cable certificado de { $length } con conductores de { $wire }, marcado para exteriores. Su clavija y su toma tienen la forma de la entrada de la caja. Lo llamamos { $names }. Enchufe en su extremo una caja hecha en fábrica con la marca de un laboratorio (certificada).
    } { box-shapes }
change-listed-box = En lugar de { $first }, use una caja hecha en fábrica con la marca de un laboratorio (certificada). { box-shapes }
change-new-box = Enchufe en { $first } una caja hecha en fábrica con la marca de un laboratorio (certificada). { box-shapes }
# What to look for on a cord or box to buy. $ends are its sockets.
cord-shapes = Su clavija: { $plug }. Sus tomas: { $ends }.
box-shapes = Su entrada: { $plug }. Sus tomas: { $ends }. Cada { -receptacle } necesita un { -gfci } y un { -breaker } de no más amperios que él. La llamamos { $box }, y a sus tomas { $outlets }.

## tallywatt mend

mend-look = Mire primero, con el motor parado, antes de comprar o cambiar algo. Después cambie sus respuestas y revise otra vez.
mend-title = { $how ->
        [plan] Cambie su plan.
        [closed] Haga estos pasos en este orden, con el motor apagado. Nunca entre en un lugar cerrado a pararlo.
       *[gear] Pare el motor. Después haga estos pasos en este orden.
    }{ $all ->
        [0] {""}
        [one] {" "}Elimina { $cleared } de 1 peligro.
       *[other] {" "}Elimina { $cleared } de { $all } peligros.
    }
mend-nothing = No hay ningún peligro que eliminar, y todo lo que debe funcionar tiene { -receptacle }. No se cambia nada.
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
        [0] todo lo que usted lleva y debe funcionar tiene { -receptacle }
        [one] 1 cosa que debe funcionar no puede cuando se quiere
       *[other] { $musts } cosas que deben funcionar no pueden cuando se quiere
    }{ $home ->
        [0] {""}
        [one] , 1 cosa se queda en casa
       *[other] , { $home } cosas se quedan en casa
    }
mend-turns = No todo puede funcionar cuando se quiere. La tarjeta nueva muestra a quién le toca.
mend-proven = No conocemos un modo más fácil.
mend-unproven = Quizá haya un modo más fácil: no lo probamos todo.
mend-left = No conocemos ningún cambio que elimine el resto.
mend-stopped = Dejamos de buscar antes de probarlo todo: quizá haya una manera más fácil, o un cambio que elimine el resto.{ $changed ->
        [no] {""}
       *[yes] {" "}Ejecute “tallywatt mend” también con el plan cambiado: quizá encuentre más.
    }
mend-stays = Sin eliminar
mend-wrote = Escribimos el plan cambiado en { $path }, sin las notas del archivo anterior. Imprima ahora la tarjeta nueva: { $command }. Tire la vieja.
mend-kept = Nada cambió en el plan, así que no escribimos { $path }.
mend-people = Su equipo aún no ha cambiado: haga usted cada paso. Después compruebe otra vez. Arranque el motor solo si no queda ningún peligro.
mend-people-left = Su equipo aún no ha cambiado: haga usted cada paso. Estos pasos no eliminan todos los peligros. No arranque el motor hasta eliminar el resto y comprobar otra vez.
mend-try = Para guardar el plan cambiado en un archivo nuevo: { $command }

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

may-yes = SÍ: puede encender { $wanted }, con todo lo demás apagado.
may-yes-while = SÍ: puede encender { $wanted } mientras { $count ->
    [one] funciona
   *[other] funcionan
} { $running }, con todo lo demás apagado.
may-no = NO: no encienda { $wanted }.
may-no-together = NO: no use { $wanted } a la vez.
may-no-while = NO: no encienda { $wanted } mientras { $count ->
    [one] funciona
   *[other] funcionan
} { $running }.
may-stays-on = La salud de alguien { $known ->
    [yes] depende
   *[no] podría depender
} de { $life }; por eso lo contamos como encendido. Nunca lo apague para hacer sitio.
may-dangers = Este plan tiene { $count ->
    [one] un peligro
   *[other] { $count } peligros
} (vea { $codes }). Si el motor está en marcha, párelo, pero nunca entre en un lugar cerrado para eso. Déjelo apagado hasta que no quede ningún peligro. Para ver cómo, ejecute “tallywatt check”.
may-but = El plan tiene además { $signal ->
        [warning] una advertencia
       *[other] una precaución
    }: { $title } ({ $code }).
may-but-amps = Hay bastante potencia, pero el peligro sigue ahí. Deje el motor apagado.
may-life = La salud de alguien depende de { $life }. Apague primero { $others }, y pregunte otra vez.
may-no-place = Este plan no tiene { -receptacle } para { $names }: { $reason }.
may-refused = No enchufe { $names }: ningún { -receptacle } libre que se pueda usar sirve. Ejecute “tallywatt check” para ver por qué.
may-wrong-place = No enchufe { $names } donde lo pone el plan. Libre, y puede con ello: { $free }. Anótelo en el plan y pregunte otra vez.
may-taken = { $names } { $count ->
    [one] comparte su toma
   *[other] comparten su toma
} con otra cosa que usted nombró. Desenchufe esa primero, y enchufe una cada vez.
may-nothing = Todo lo que nombró ya está encendido.
may-over-short = { $of ->
    [set] El generador puede dar { $limit }.
   *[part] El límite en { $at } es { $limit }.
  } Estos necesitan { $asks }: { $over } de más.
may-over-hours = { $of ->
    [set] El generador puede dar { $limit } durante tres horas o más.
   *[part] El límite en { $at } es { $limit } durante tres horas o más.
  } Estos cuentan como { $asks }: { $over } de más.
may-over-starting = Cuando arranca { $by } con lo demás encendido, el generador tiene que dar { $asks }. Su máximo es { $limit }: { $over } de más.
may-over-starting-alone = Arrancar { $by }, sin nada más, toma { $asks }. El máximo del generador es { $limit }: { $over } de más.
may-order-only = Si los enciende en el orden correcto, arrancan todos. Pero lo que tiene termostato o motor vuelve a arrancar solo más tarde, y eso sería demasiado.
may-the-set = El generador
may-part = “{ $id }”
# Amps of a part that both legs of the generator feed: those that it carries, what is asked of one of them, and
# what passes each at most.
amps-both = { $amps } en A y { $amps } en B
amps-one-leg = { $amps } en una fase
amps-both-at-most = { $amps } en A y hasta { $amps } en B
amps-all = { $amps } en total
may-order = Encienda en este orden
may-order-step = { $name } en “{ $at }”: con lo demás, el generador da entonces hasta { $amps } por un instante
may-any-order = Cualquier otro orden también vale. Este tiene el pico más bajo.
may-meter = Cuando todo esté encendido, espere
may-meter-breaker = por el { -breaker } de “{ $breaker }”: hasta { $amps }
may-meter-receptacle = en un medidor enchufable en “{ $receptacle }”: { $volts } o un poco más, si el generador da { $nominal }
may-meter-if = No abra nada para medir. Si un medidor enchufable muestra más amperios durante más de unos segundos, o mucho menos voltios, pare el motor. Después palpe los cables y las clavijas, y vea si hay algo más enchufado.
may-as-placed = Esto supone que todo está enchufado como muestra la tarjeta.
may-no-load = Este plan no tiene { $asked }.
may-no-load-nearest = ¿Quiso decir “{ $nearest }”?
may-no-load-known = Tiene: { $known }.

## What may run together, as check shows it. Names are joined by “+” or commas.

share-danger = La lista que sigue mira solo la potencia, no el peligro. Deje el motor apagado hasta haber eliminado cada peligro.
share-all = En cuanto a potencia, todo puede estar encendido a la vez.
share-together = Puede usar a la vez todo lo de una línea, y nada más.
share-never = Nunca a la vez
share-alone = { $name }: tal como está planeado, ni siquiera sin lo demás
share-more = y { $count } más, todo en la memoria de cálculo
share-incomplete = La lista no está completa. Use a la vez solo lo que está en ella.
share-off = Mientras funcione { $life }, deje apagado: { $off }.
share-turns = No todo puede funcionar cuando usted quiere. Haga turnos
# Una línea de los turnos.
share-turn-without = { $loads } (solo mientras nadie necesite { $life })
share-no-turns = { $life } no entra en los turnos: nunca lo apague para hacer sitio.

print-turns-title = Por turnos
