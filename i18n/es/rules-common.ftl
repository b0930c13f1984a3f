### Words that several rules share.

not-known = no se sabe

night-decide = Ponga en el plan a qué horas funciona, ninguna de noche.
night-instead = Use { $about } a otras horas, o con una batería cargada durante el día.
night-life = Pregunte al médico o al proveedor por una batería que haga funcionar { $life } toda la noche, cargada durante el día.
night-sleep = Pare el motor antes de que alguien se duerma.

life-cannot = No confíe en este generador para { $about }. Quédese donde haya corriente de la red, o use el equipo de reserva de su proveedor. Nunca cambie el ajuste del aparato.
life-off = Apague { $off } mientras funcione { $life }. Nunca baje ni pare aquello de lo que depende una vida.
life-turns = Nunca baje ni desenchufe { $life } para hacer sitio a lo demás. Haga funcionar lo demás por turnos.
life-it = { $sure ->
    [yes] La salud de alguien depende de ello.
   *[no] No sabemos si la salud de alguien depende de ello.
  }
life-on = { $sure ->
    [yes] La salud de alguien depende de { $life }.
   *[no] No sabemos si la salud de alguien depende de { $life }.
  }
