### Safety. Rules on cords.

CORD001 = { $first } is asked for more than it carries
    .why = { $fix ->
        [plug] The plug of { $first } is made for { $limit }. It is asked for { $demand }. No breaker trips at { $limit }: the plug gets hot and can burn. Involved: { $about }.
        [tag] Cords like { $first } (wire: { $wire }) are usually marked { $limit } at its length. It is asked for { $demand }. No breaker trips at { $limit }: the cord gets hot and can burn. Involved: { $about }.
       *[other] { $first } (wire: { $wire }) carries { $limit } at most. It is asked for { $demand }. No breaker trips at { $limit }: the cord gets hot and can burn. Involved: { $about }.
      }
    .fix-thicker = Plug some of it in elsewhere, run fewer things on it at once, or use a thicker cord (a smaller AWG number is thicker).
    .fix-unwind = Unwind the whole cord before you use it. A coil cannot get rid of its heat.
    .fix-plug = Plug some of it in elsewhere, or run fewer things on it at once. The plug sets this limit, so a thicker cord with the same plug does not help.
    .fix-tag = Read the amps on the cord’s tag; the smaller counts. Plug some of it in elsewhere, run fewer things on it at once, or use a shorter or thicker cord (a smaller AWG number is thicker).

CORD002 = { $fix ->
    [replace] Indoor cord used outdoors: { $about }
   *[other] Nobody knows if this cord is for outdoors: { $about }
  }
    .why = An indoor jacket cracks in sun and cold and lets water in. Feet and tent pegs cut it. A bare wire in wet grass can kill.
    .fix-replace = Use a cord marked for outdoors: "W" in its type letters, or the words "for outdoor use".
    .fix-look = Read the print on the jacket. If it has no "W" in its type letters and does not say "for outdoor use", use another cord.

CORD003 = { $fix ->
    [unwind] { $first } stays coiled while in use
   *[other] Nobody knows if { $first } stays coiled
  }
    .why = A coil cannot get rid of its heat and melts from the inside. Coiled, count on { $limit } at most. No breaker knows that it is coiled.
    .fix-unwind = Unwind the whole cord and lay it out loosely. If it is far too long, use a shorter one.
    .fix-look = Unwind the whole cord each time, and say so in the plan.

CORD004 = { $fix ->
    [replace] The ground ends at { $first }
   *[other] Nobody knows if { $first } has a ground wire
  }
    .why = { $fix ->
        [replace] Beyond it, a fault can put full voltage on a metal case, and nothing trips until someone touches it. Involved: { $about }.
       *[other] Without a ground wire, a fault can put full voltage on a metal case, and nothing trips until someone touches it. Involved: { $about }.
      }
    .fix-replace = Leave { $first } out. Use a cord with a ground wire and a whole ground pin.
    .fix-count = Read the print on the jacket: "/3" after the gauge means three wires, ground included. "/2" has no ground: do not use it.

CORD005 = { $count } long cords in a row
    .why = The joint lies on the ground and can pull apart. Half out, its blades are bare and live. In a row: { $about }.
    .fix-one-cord = Use one cord that is long enough. Until then, keep the joint off the ground, out of the wet, and tied so that it cannot pull apart.

CORD006 = { $first } is asked for too much in air this hot
    .why = Cords are rated for air of 86 °F (30 °C). In air of { $air } this one carries { $limit }, not { $cool }. It is asked for { $demand }. No breaker trips at { $limit }. Involved: { $about }.
    .fix-less = Run fewer things on it while it is hot, or use a thicker cord. Lay it in the shade.
    .fix-unwind = { CORD003.fix-unwind }

CORD007 = The power strip { $first } is plugged into another cord
    .why = Strips are made for indoors and for an outlet, not for the end of a cord. Its { $places } places all hang on one thin cord. Involved: { $about }.
    .fix-straight = Use an outdoor cord with several ends, or a listed box with breakers. Plug a strip straight into an outlet of the generator or of a box, and keep it dry.

CORD008 = { $first } heats for hours at the end of a cord
    .why = It draws { $watts } for hours. That warms every worn contact on the way, and no breaker notices. { $fix ->
        [warm] Fire services say: plug a room heater straight into an outlet, never into a cord or strip.
       *[other] Fire services say it of room heaters: never on a cord or strip.
      } Involved: { $about }.
    .fix-warm = Keep warm with bedding and clothes, or run it for less than three hours. If you use it: one heavy cord, unwound, nothing else on it. Look at each plug after a quarter of an hour: if one is hot, stop.
    .fix-less = Run it for less than three hours at a stretch. If you use it longer: one heavy cord, unwound, nothing else on it. Look at each plug after a quarter of an hour: if one is hot, stop.
