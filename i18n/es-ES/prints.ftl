print-scale-bar = Esta barra debe medir 50 mm (1,97 in). Si no, imprima otra vez al 100 %.
print-alignment-bar = Esta barra debe medir 100 mm (3,94 in).
