print-scale-bar = Esta barra debe medir { $measure ->
        [metric] 50 mm
       *[customary] 1,97 in
    }. Si no, imprima otra vez al 100 %.
print-stop-2-propane = Espere { $cooling } minutos a que se enfríe. Cierre la válvula. Solo entonces cambie la bombona, lejos de llamas y personas.
print-stop-3-propane = Si huele a gas: cierre la válvula, aléjese y deje que se disipe. Bombonas de pie al aire libre, lejos de las { -tent(form: "many") }.
