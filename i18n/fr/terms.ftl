# Terms of the trade that differ between Canada and Europe; ../fr-FR/terms.ftl has the others.

# f here, m in Europe, so the article is part of it: { -generator } "génératrice", "the" "la
# génératrice", "of" "de la génératrice", "to" "à la génératrice", "a" "une génératrice"; with a
# capital ("One", "The", "Of", "A") it begins a sentence. An adjective or pronoun chooses by
# { -generator.gender -> [feminine] arrêtée *[masculine] arrêté }. IEC 60050, 602-02-01 has
# "groupe électrogène"; "génératrice" is the everyday word of Canada. From memory, not verified.
-generator = { $form ->
   *[one] génératrice
    [One] Génératrice
    [the] la génératrice
    [The] La génératrice
    [of] de la génératrice
    [Of] De la génératrice
    [to] à la génératrice
    [many] génératrices
    [a] une génératrice
    [A] Une génératrice
    [this] cette génératrice
    [This] Cette génératrice
}
    .gender = feminine

# m. "GFCI" is what stands on the device and what people call it. Code de construction du Québec, chapitre V,
# from a secondary copy: "disjoncteur différentiel", in short DDFT.
-gfci = { $form ->
   *[one] GFCI
    [One] GFCI
    [many] GFCI
    [full] disjoncteur différentiel (DDFT, GFCI)
}

# m. From memory, not verified.
-ground-wire = { $form ->
   *[one] fil de mise à la terre
    [many] fils de mise à la terre
}

# f. From memory, not verified.
-camper = { $form ->
   *[one] roulotte
    [many] roulottes
    [One] Roulotte
}

# m, begins with a vowel. One who is allowed to do the work by law. From memory, not verified.
-electrician = électricien agréé

# With its article, plural. From memory, not verified.
-local-codes = { $form ->
   *[one] les codes locaux
    [One] Les codes locaux
}

# m. What wakes people when there is carbon monoxide or smoke; "de monoxyde de carbone" follows.
# Government of Canada, from memory, not verified.
-alarm = { $form ->
   *[one] avertisseur
    [One] Avertisseur
}
