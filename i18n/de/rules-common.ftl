### Wörter, die mehrere Regeln teilen.

not-known = nicht bekannt
