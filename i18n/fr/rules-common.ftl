# Words that several rules share.

not-known = inconnu
