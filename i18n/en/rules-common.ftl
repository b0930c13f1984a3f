### Safety. Words that several rules share.

not-known = not known
