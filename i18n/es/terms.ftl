# Terms of the trade that differ between North America and Spain; ../es-ES/terms.ftl has the
# others. { -receptacle } is the singular, { -receptacle(form: "many") } the plural, and with a
# capital ("One", "Many") it begins a sentence. Both variants of a term have the same gender.

# m. In use from the United States to Colombia; "contacto" in Mexico. From memory, not verified.
-receptacle = { $form ->
   *[one] tomacorriente
    [many] tomacorrientes
    [One] Tomacorriente
    [Many] Tomacorrientes
}

# m. "Interruptor automático" and "disyuntor" are both in the IEC's vocabulary (60050, 441-14-20);
# the second is the usual one in the Spanish of the United States. From memory, not verified.
-breaker = { $form ->
   *[one] disyuntor
    [many] disyuntores
    [One] Disyuntor
    [Many] Disyuntores
}

# m. "GFCI" is what stands on the device. [full]: "interruptor de circuito por falla a tierra",
# NOM-001-SEDE, from a secondary copy.
-gfci = { $form ->
   *[one] GFCI
    [many] GFCI
    [One] GFCI
    [Many] GFCI
    [full] interruptor de circuito por falla a tierra (GFCI)
}

# m. From memory, not verified.
-ground-wire = { $form ->
   *[one] conductor de tierra
    [many] conductores de tierra
}

# f. From memory, not verified.
-camper = { $form ->
   *[one] casa rodante
    [many] casas rodantes
    [One] Casa rodante
}

# m. One who is allowed to do the work by law. From memory, not verified.
-electrician = electricista con licencia

# With its article, plural. From memory, not verified.
-local-codes = { $form ->
   *[one] los códigos locales
    [One] Los códigos locales
}

# f. "Tienda" alone is a shop in America. From memory, not verified.
-tent = { $form ->
   *[one] carpa
    [many] carpas
}

# m. Of fuel. From memory, not verified.
-tank = tanque

# m. From memory, not verified.
-fridge = { $form ->
   *[one] refrigerador
    [One] Refrigerador
}

# m. A phone, as what people carry. From memory, not verified.
-phone = celular
