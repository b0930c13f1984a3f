plan-wire-size = Ningún conductor tiene el calibre { $found }
    .help = Los calibres van de 0 a 30 AWG, en números enteros. Los tamaños en mm² van de 0,1 a 400. El tamaño está impreso en la cubierta del cable.
