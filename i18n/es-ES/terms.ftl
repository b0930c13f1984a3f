# What ../es/terms.ftl has for North America.

# m. The everyday word; the trade's is "base de toma de corriente". From memory, not verified.
-receptacle = { $form ->
   *[one] enchufe
    [many] enchufes
    [One] Enchufe
    [Many] Enchufes
}

# m. Short for "interruptor magnetotérmico". From memory, not verified.
-breaker = { $form ->
   *[one] magnetotérmico
    [many] magnetotérmicos
    [One] Magnetotérmico
    [Many] Magnetotérmicos
}

# m. From memory, not verified.
-gfci = { $form ->
   *[one] diferencial
    [many] diferenciales
    [One] Diferencial
    [Many] Diferenciales
    [full] interruptor diferencial (GFCI)
}

# m. IEC 60050, 195-02-09 has "conductor de protección". From memory, not verified.
-ground-wire = { $form ->
   *[one] conductor de protección
    [many] conductores de protección
}

# f. From memory, not verified.
-camper = { $form ->
   *[one] caravana
    [many] caravanas
    [One] Caravana
}

# m. From memory, not verified.
-electrician = electricista autorizado

# With its article, plural. From memory, not verified.
-local-codes = { $form ->
   *[one] las normas locales
    [One] Las normas locales
}

# f. Short for "tienda de campaña". From memory, not verified.
-tent = { $form ->
   *[one] tienda
    [many] tiendas
}

# m. Of fuel. From memory, not verified.
-tank = depósito

# m. From memory, not verified.
-fridge = { $form ->
   *[one] frigorífico
    [One] Frigorífico
}

# m. A phone, as what people carry. From memory, not verified.
-phone = móvil
