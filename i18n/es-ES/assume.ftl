assume-cord-length = No se sabe cuánto mide “{ $part }”; se tomó { $value }. Mídalo a pasos: un paso son unos 2,5 ft.
