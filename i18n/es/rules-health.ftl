### Rules on health.

HEALTH001 = { $fix ->
    [charged] La salud de alguien depende de esta batería y de este generador: { $about }
    [find-out] Quizá la salud de alguien dependa de esto: { $about }
   *[other] La salud de alguien depende de este único generador: { $about }
  }
    .why = Un generador puede pararse en cualquier momento: se queda sin combustible, se dispara un { -breaker } o alguien lo apaga. Una persona dormida puede no notarlo a tiempo.
    .fix-battery = Lleve una batería hecha para el aparato que dure toda la noche. Pregunte al médico o al proveedor cuánto tiempo puede estar apagado el aparato, y si puede funcionar con un generador y un cable de extensión. Si hay oxígeno: no se fuma, y las llamas y los calefactores quedan a { $flames } o más.
    .fix-charged = Cargue la batería del aparato antes de la noche. Desenchufe el aparato una vez de día: la batería debe mantenerlo en marcha. Si hay oxígeno: no se fuma, y las llamas y los calefactores quedan a { $flames } o más.
    .fix-find-out = Pregunte a su dueño qué hace. Si la salud de alguien depende de ello, lleve una batería hecha para el aparato que dure toda la noche. Si hay oxígeno: no se fuma, y las llamas y los calefactores quedan a { $flames } o más.

HEALTH002 = { $fix ->
    [when] Quizá haya calor encendido mientras la gente duerme: { $about }
   *[other] Hay calor encendido mientras la gente duerme: { $about }
  }
    .why = De { $from } a { $to } ({ $night }) nadie lo vigila, y la tela arde rápido. Los bomberos dicen: apague los calefactores antes de dormir.
    .fix-off = Caliente primero la { -tent } o la cama; luego apague y desenchufe. Deje encendida una manta eléctrica solo si sus instrucciones permiten dormir con ella encendida.
    .fix-cook = Cocine antes de que alguien se duerma. Luego apáguelo y desenchúfelo.
    .fix-when = { night-decide } Apáguelo y desenchúfelo antes de que alguien se duerma.
