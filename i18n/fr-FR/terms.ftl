# What ../fr/terms.ftl has for Canada.

# m. IEC 60050, 602-02-01. From memory, not verified.
-generator = { $form ->
   *[one] groupe électrogène
    [One] Groupe électrogène
    [the] le groupe électrogène
    [The] Le groupe électrogène
    [of] du groupe électrogène
    [Of] Du groupe électrogène
    [to] au groupe électrogène
    [many] groupes électrogènes
    [a] un groupe électrogène
    [A] Un groupe électrogène
    [this] ce groupe électrogène
    [This] Ce groupe électrogène
}
    .gender = masculine

# m. Short for "dispositif différentiel", with what stands on the device and on the labels. From memory, not
# verified.
-gfci = { $form ->
   *[one] différentiel GFCI
    [One] Différentiel GFCI
    [many] différentiels GFCI
    [full] dispositif différentiel (GFCI)
}

# m. From memory, not verified.
-ground-wire = { $form ->
   *[one] fil de terre
    [many] fils de terre
}

# f. From memory, not verified.
-camper = { $form ->
   *[one] caravane
    [many] caravanes
    [One] Caravane
}

# m, begins with a vowel. From memory, not verified.
-electrician = électricien qualifié

# With its article, plural. From memory, not verified.
-local-codes = { $form ->
   *[one] les règles locales
    [One] Les règles locales
}

# m. EN 50291 has "appareil de détection"; "détecteur" is the everyday word. From memory, not verified.
-alarm = { $form ->
   *[one] détecteur
    [One] Détecteur
}
