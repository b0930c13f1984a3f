### Words that several rules share.

not-known = no se sabe
