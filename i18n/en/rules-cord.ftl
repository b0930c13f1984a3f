### Safety. Rules on cords.

CORD001 = The cord { $first } is overloaded
    .why = { $fix ->
        [plug] The plug of { $first } is rated for { $limit }, but { cord-through }. No breaker trips at { $limit }: the plug overheats and can catch fire. Look at: { $about }.
        [tag] Cords like { $first } (wire: { $wire }) are mostly marked { $limit } at its length, but { cord-through }. No breaker trips at { $limit }: the cord overheats and can catch fire. Look at: { $about }.
        [unwind-less] Coiled up, { $first } (wire: { $wire }) carries { $limit } at most, but { cord-through }. No breaker trips at { $limit }: the cord overheats and can catch fire. Look at: { $about }.
       *[other] { $first } (wire: { $wire }) carries { $limit } at most, but { cord-through }. No breaker trips at { $limit }: the cord overheats and can catch fire. Look at: { $about }.
      }
    .fix-thicker = Plug some of it in elsewhere, or run fewer things at once. Or use a thicker cord: a smaller AWG number means a thicker wire.
    .fix-unwind = Unwind the whole cord before you use it. A coil traps its own heat.
    .fix-unwind-less = Unwind the whole cord each time. That is not enough: plug some of it in elsewhere, or run fewer things at once.
    .fix-plug = { $inside ->
        [yes] Run fewer things inside at once. A thicker cord with the same plug does not help.
       *[no] Plug some of it in elsewhere, or run fewer things on it at once. A thicker cord with the same plug does not help.
      }
    .fix-tag = Read the amps on the cord’s tag: the smaller number counts. Plug some of it in elsewhere, or run fewer things on it at once. Or use a shorter or thicker cord: a smaller AWG number means a thicker wire.

cord-through = { $planned ->
    [yes] { $demand } runs through it
   *[no] { $demand } runs through it if all is plugged in
  }

CORD002 = { $fix ->
    [replace] Indoor cord used outdoors: { $about }
   *[other] This might be an indoor cord: { $about }
  }
    .why = Sun, cold, feet and tent stakes crack the outside of an indoor cord. A bare wire in wet grass can kill.
    .fix-replace = Use a cord marked for outdoors. Look for a “W” in the letters printed on it, or the words “for outdoor use”.
    .fix-look = Read the print on the cord. If it has no “W” in its letters and does not say “for outdoor use”, use another cord.

CORD003 = { $fix ->
    [unwind] The cord { $first } stays coiled while in use
   *[other] We do not know if cord { $first } stays coiled
  }
    .why = A coiled cord traps its heat and can melt from the inside, and no breaker can tell. Never use it coiled: it then carries only { $limit }.
    .fix-unwind = Unwind the whole cord, and lay it out loosely. If it is far too long, use a shorter one.
    .fix-look = Unwind the whole cord each time you use it. If you will do that, change your answer.

CORD004 = { $fix ->
    [replace] No ground past { $first }
   *[other] { $first } might have no ground wire
  }
    .why = { $fix ->
        [replace] Past it, a broken wire inside can put full voltage on a metal case. Nothing trips until someone touches it.{ $alone ->
            [yes] {""}
           *[no] {" "}Look at: { $about }.
          }
       *[other] Without a ground wire, a broken wire inside can put full voltage on a metal case. Nothing trips until someone touches it.{ $alone ->
            [yes] {""}
           *[no] {" "}Look at: { $about }.
          }
      }
    .fix-replace = Do not use { $first }. Use one with a ground wire and an unbroken ground pin.
    .fix-count = Read the print on the cord. “/3” after the wire size means three wires, ground included. “/2” has no ground: do not use it.

CORD005 = { $count } long cords plugged end to end
    .why = The connection can pull apart. Half out, its blades are exposed and live. The cords: { $about }.
    .fix-one-cord = Use one cord that is long enough. Until then, keep the connection dry, off the ground, and tied so that it cannot pull apart.

CORD006 = { $fix ->
    [cooler] In air of { $air } the cord { $first } carries nothing
   *[other] The cord { $first } is overloaded in this heat
  }
    .why = { $fix ->
        [cooler] A wire must get rid of its own heat, and in air this hot it cannot. Anything plugged into that cord is too much.
       *[other] Cords are rated for air of { $measure ->
              [metric] 30 °C
             *[customary] 86 °F
          }: in air of { $air } this one carries { $limit }, not { $cool }. But { $demand } runs through it, and no breaker trips at { $limit }. Look at: { $about }.
      }
    .fix-less = Run fewer things on it while it is hot, or use a thicker cord. Lay it in the shade.
    .fix-unwind = { CORD003.fix-unwind }
    .fix-cooler = Plug nothing into that cord until it is cooler.

CORD007 = The power strip { $first } is plugged into another cord
    .why = Strips are made for indoors, not for the end of a cord. All { $places } of its outlets share one thin cord. Look at: { $about }.
    .fix-straight = Use an outdoor cord with several ends, or a listed box (with a testing lab’s mark) with breakers. Plug a strip straight into an outlet, and keep it dry.

CORD008 = { $first } makes heat for hours on a cord
    .why = It draws { $amps } ({ $watts }) for hours, which heats every worn contact, and no breaker notices. { $fix ->
        [warm] Fire departments say: plug a heater straight into an outlet, never into a cord or strip.
       *[other] Fire departments say of room heaters: never on a cord or strip.
      } Look at: { $about }.
    .fix-warm = Keep warm with bedding and clothes, or run the heater for less than three hours. If you use a cord all the same: one heavy cord, unwound, with no more on it than the plan allows. After a quarter of an hour, hold a hand near each plug, and stop if one is hot.
    .fix-less = Run it for less than three hours at a stretch. If longer: one heavy cord, unwound, with no more on it than the plan allows. After a quarter of an hour, hold a hand near each plug, and stop if one is hot.

CORD009 = { $fix ->
    [load] Heat or a shock where { $first } was plugged in
   *[other] { $first } got hot, or gave a shock
  }
    .why = A hot or soft plug means that its metal no longer holds tight. It can melt and start a fire, and no breaker notices.
    .fix-cord = Unplug { $first }, and do not use it again. If a plug or outlet it touched is brown, soft or loose, do not use that either.
    .fix-box = Unplug { $first }, and do not use it. Have a licensed electrician look at it.
    .fix-outlet = Do not use { $first }, or any plug that got hot in it. Have a licensed electrician look at it.
    .fix-outlet-in-use = Unplug { $plugged }. Do not use { $first }, or any plug that got hot in it. Have a licensed electrician look at it.
    .fix-load = Unplug { $first }, and do not use it until a repair shop has looked at it. If the outlet it was in is brown, soft or loose, do not use that either.
