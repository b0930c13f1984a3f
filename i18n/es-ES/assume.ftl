assume-cord-length = No se sabe cuánto mide “{ $part }”; se tomó { $value } para la tensión, y nada para hasta dónde llega. Mídalo a pasos: un paso son unos 2,5 ft.
