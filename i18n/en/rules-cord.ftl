# Rules on cords.

CORD001 = { $first } is asked for more than it carries
    .why = { $first } (wire: { $wire }) carries { $limit } at most. It is asked for { $demand }. No breaker stops that: the cord just gets hot and can burn. Involved: { $about }.
    .fix-thicker = Use a thicker cord made for { $demand } or more (a smaller AWG number is thicker), or plug some of it in elsewhere.
    .fix-unwind = Unwind the whole cord before you use it. A coil cannot get rid of its heat.
