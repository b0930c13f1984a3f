### Rules on health.

HEALTH001 = { $fix ->
    [charged] La salud de alguien depende de una batería y de este generador: { $about }
    [find-out] No se sabe si la salud de alguien depende de ello: { $about }
   *[other] La salud de alguien depende de este único generador: { $about }
  }
    .why = Un generador puede pararse en cualquier momento: se queda sin combustible, salta una protección o alguien lo apaga. Una persona dormida puede no notarlo a tiempo.
    .fix-battery = Lleve una batería hecha para el aparato que dure toda la noche. Pregunte al médico o al proveedor cuánto tiempo puede estar apagado, y si acaso puede funcionar con un generador y un cable de extensión. Oxígeno: no fumar, y ninguna llama ni calefactor a menos de { $flames }.
    .fix-charged = Cargue su batería antes de la noche. Compruebe una vez, de día, que toma el relevo cuando se saca la clavija. Oxígeno: no fumar, y ninguna llama ni calefactor a menos de { $flames }.
    .fix-find-out = Pregunte a su dueño qué hace, y ponga su tipo en el plan. Si la salud de alguien depende de ello, lleve una batería hecha para el aparato que dure toda la noche. Oxígeno: no fumar, y ninguna llama ni calefactor a menos de { $flames }.

HEALTH002 = { $fix ->
    [when] Esto da calor y quizá funcione mientras la gente duerme: { $about }
   *[other] Esto da calor y funciona mientras la gente duerme: { $about }
  }
    .why = De { $from } a { $to } ({ $night }) nadie lo vigila. La ropa de cama le cae encima, o una olla se queda sin agua, y la tela arde rápido. Los bomberos dicen: calefactores apagados antes de dormir.
    .fix-off = Caliente primero la { -tent } o la cama; luego apague y desenchufe. Solo puede seguir encendida una manta cuyo fabricante lo permita toda la noche, como digan sus instrucciones.
    .fix-cook = Cocine antes de que alguien se duerma. Luego apáguelo y desenchúfelo.
    .fix-when = { night-decide } Apáguelo y desenchúfelo antes de que alguien se duerma.
