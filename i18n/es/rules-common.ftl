### Words that several rules share.

not-known = no se sabe

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
