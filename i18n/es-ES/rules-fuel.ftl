FUEL003 = Un día necesita más de un { -tank }
    .why = { $fix ->
        [store-propane] Un { -tank } lleno es 100 %, y este plan quema el { $burns } cada día: tendrá una bombona de reserva en el campamento. El gas que escapa se arrastra por el suelo hasta cualquier cosa caliente.
       *[other] Un { -tank } lleno es 100 %, y este plan quema el { $burns } cada día: tendrá combustible de reserva en el campamento. Su vapor se arrastra por el suelo hasta cualquier cosa caliente.
      }
    .fix-store = Guarde el combustible de reserva en un bidón aprobado y cerrado, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cargue combustible con el motor parado y frío. Si se derrama, aléjese, y arranque el motor solo cuando no quede vapor.
    .fix-store-propane = Deje la bombona de reserva de pie y al aire libre, a la sombra, lejos del generador, de las llamas y de las { -tent(form: "many") }. Cámbiela con el motor parado y frío y la válvula cerrada. Si huele a gas, cierre la válvula, aléjese, y arranque el motor solo cuando ya no huela.
