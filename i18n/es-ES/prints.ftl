print-scale-bar = Esta barra debe medir 50 mm (1,97 in). Si no, imprima otra vez al 100 %.
