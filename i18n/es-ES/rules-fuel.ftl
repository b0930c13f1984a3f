tanks = { $count ->
    [one] { $amount } depósito
   *[other] { $amount } depósitos
  }

FUEL003 = Un día necesita más de un { -tank }
    .why = { $fix ->
        [store-propane] Este plan quema { $burns } al día: tendrá una bombona de reserva en el campamento. El gas que escapa se arrastra por el suelo hasta cualquier cosa caliente.
       *[other] Este plan quema { $burns } al día: tendrá combustible de reserva en el campamento. Su vapor se arrastra por el suelo hasta cualquier cosa caliente.
      }
    .fix-store = Guarde el combustible de reserva en un bidón aprobado y cerrado, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cargue combustible con el motor parado y frío. Si se derrama, aléjese hasta que no quede vapor.
    .fix-store-propane = Deje la bombona de reserva de pie y al aire libre, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Si huele a gas, cierre la válvula, y aléjese hasta que ya no huela.
