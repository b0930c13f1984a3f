### Words that several rules share.

not-known = no se sabe

night-decide = Decida cuándo funciona, no de noche, y anótelo en el plan.
night-instead = Use { $about } a otras horas, o con una batería cargada de día.
night-life = Pregunte al médico o al proveedor por una batería que haga funcionar { $life } toda la noche. Cárguela de día.
night-sleep = Pare el motor antes de que alguien se duerma.

life-cannot = No confíe en este generador para { $about }. Quédese donde haya corriente de la red, o use el equipo de reserva de su proveedor. Nunca cambie el ajuste del aparato.
life-off = Deje apagado { $off } mientras funcione { $life }. Un aparato del que depende una vida no se turna con otros y nunca se pone más bajo.
life-turns = Deje encendido { $life }, y nunca lo baje. Haga funcionar lo demás por turnos.
life-it = { $sure ->
    [yes] La salud de alguien depende de ello.
   *[no] No se sabe si la salud de alguien depende de ello.
  }
life-on = { $sure ->
    [yes] La salud de alguien depende de { $life }.
   *[no] No se sabe si la salud de alguien depende de { $life }.
  }
