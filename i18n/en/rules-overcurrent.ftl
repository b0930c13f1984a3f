### Safety. Rules on overcurrent: what trips, and what overheats while nothing trips.

OVER001 = { $fix ->
    [unknown] We do not know what breaker protects { $first }
    [splitter] { $first } puts small outlets on a big breaker
    [single] A 15 A outlet on a bigger breaker: { $first }
    [single-look] The breaker might be too big for { $first }
    [own] We do not know the breaker of { $about }
    [camper] The breaker is too big for the adapter { $first }
   *[other] The breaker is too big for { $first }
  }
    .why = { $fix ->
        [unknown] We do not know at how many amps this path trips. If nothing trips, its weakest part ({ $known ->
            [no] we assumed
           *[yes] rated for
          } { $rating }) overheats and can catch fire.{ $alone ->
            [yes] {""}
           *[no] {" "}Parts: { $about }.
          }
        [own] The generator stops itself past { $demand }, or sooner in hot or thin air. What it feeds here is rated for { $rating } or more.
        [single-look] An outlet for one plug ({ $rating }) must not be alone on a breaker of { $breaker }: it overheats before anything trips. One for two plugs is allowed.
        [camper] The adapter is rated for { $rating }. The breaker ahead of it trips only above { $breaker }: until then { $main ->
            [yes] anything but the camper can overheat it, and start a fire.
           *[no] the adapter can overheat and catch fire.
          }
       *[other] { $known ->
            [no] We assumed that{" "}
           *[yes] {""}
          }{ $alone ->
            [yes] { $first }
           *[no] { $known ->
                [no] the weakest part here
               *[yes] The weakest part here
              }
          } is rated for { $rating }. { $stops ->
            [set] The generator can push up to { $peak } through it before anything trips: { $alone ->
                [yes] { $first } can overheat and catch fire.
               *[no] that part can overheat and catch fire.
              }
           *[breaker] The breaker ahead of it trips only above { $breaker }: until then { $alone ->
                [yes] { $first } can overheat and catch fire.
               *[no] that part can overheat and catch fire.
              }
          }{ $alone ->
            [yes] {""}
           *[no] {" "}Parts: { $about }.
          }
      }
    .fix-splitter = Do not use { $any-first } for anything. Use a factory-made box with a testing lab’s mark (“listed”), and a breaker for each outlet.
    .fix-receptacle = Do not use { $any-first }. Have a licensed electrician look at its breaker.
    .fix-no-breaker = Do not use { $any-first }. Use a factory-made box with a testing lab’s mark (“listed”), and a breaker for each outlet.
    .fix-single = Keep what is plugged in here to { $rating }. Have a licensed electrician look at it.
    .fix-single-look = Look how many plugs { $first } takes. If it takes one, keep it to { $rating }, and have a licensed electrician look at it.
    .fix-cord = Do not use { $any-first } here. { over-cord } Use { $first } itself only where the breaker is { $fits } or less.
    .fix-thicker = Do not use { $any-first } here. { over-cord }
    .fix-inlet = Do not use { $any-first } here. Feed it from an outlet whose breaker is { $fits } or less.
    .fix-wiring = Do not use { $any-first }. Do not change the breaker. Have a licensed electrician look at the box.
    .fix-unknown = Read the number on the breaker or in the manual, and put it in the plan. Until then, do not use { $any-first }.
    .fix-free = Plug nothing into { $any-first }, and leave it empty.
    .fix-own = Read the number on the breaker or in the manual, and put it in the plan.
    .fix-camper = { $main ->
        [yes] Plug nothing but the camper in past it.
       *[no] Look for the camper’s own main breaker: it must say { $rating } or less. If you do not find it, do not use { $any-first }. Plug nothing but the camper in past it.
      }

over-cord = { $cord ->
    [gauge] Use a cord marked 16, 14 or 12 AWG ({ $measure ->
        [metric] 1.5 mm² or more
       *[customary] wire size
      }): a smaller AWG number means a thicker wire.
    [none] No cord with its plug is rated for { $made }: put a listed box with smaller breakers ahead of it.
   *[amps] Use a cord rated for { $made }.
  }

OVER002 = { $first } carries too much for too long
    .why = { $lasts ->
        [all] For three hours or more, the limit at { $first } is { $limit }. { when-first } it carries { $demand }, all of it for three hours or more. Look at: { $about }.
        [in-a-row] For three hours or more, the limit at { $first } is { $limit }. { when-first } it carries { $demand }, and what runs before and after keeps it at { $long } or more all that time. Look at: { $about }.
       *[part] For three hours or more, the limit at { $first } is { $limit }. { when-first } it carries { $demand }, of which { $long } is for three hours or more. Look at: { $about }.
      }
    .fix-move = Move one of these to another breaker, turn it down, or give it a rest before three hours are up.
    .fix-rest = Give { $first } a rest before three hours are up: switch off what runs through it. Or turn that down.
    .fix-life = Never turn { $life } down or pause it. Move everything else here to another breaker, or find an outlet that can run it for hours.

OVER003 = The cord { $first } carries less than its breaker allows
    .why = { $first } carries { $limit }, but the breaker ahead of it trips only above { $breaker }. That is allowed for this cord, but no breaker stops you from overloading it.
    .fix-add-up = Add up what is plugged in past { $first }. Keep it at { $limit } or less. Read the amps on the cord’s tag: the smaller number counts.

OVER005 = { $fix ->
    [set] Only the generator itself stops a short circuit
    [look] A short circuit might trip no breaker
   *[other] The wire might keep the breaker from tripping
  }
    .why = { $fix ->
        [set] The generator stops itself first: a short circuit draws at most about { $fault }. A UL 489 breaker of { $breaker } trips quickly only above { $soon }. Places: { $about }.
        [look] We do not know the kind of generator, so we assumed that a short circuit draws at most { $fault }. A UL 489 breaker of { $breaker } trips quickly only above { $soon }. Places: { $about }.
       *[other] A short circuit at its end draws only about { $fault }. A UL 489 breaker of { $breaker } trips quickly only above { $soon }: until then the wire overheats. Places: { $about }.
      }
    .fix-set = Know how to stop the engine. If lights suddenly dim or something smells hot, stop it, and only then look for the cause.
    .fix-look = Look for the word “inverter” on the generator. If lights suddenly dim or something smells hot, stop the engine, and only then look for the cause.
    .fix-wire = Use a shorter or thicker cord. If something smells hot, stop the engine, and only then look for the cause.

OVER006 = { $half ->
    [assumed] Too much might be on at { $first }
   *[known] Too much is on at { $first }
  }
    .why = { $half ->
        [assumed] If all of these are on one half, as we assumed, they draw { $demand }{ when }, but its limit is { $limit }: { $loads }. { $what }
       *[known] { $planned ->
            [yes] { when-first } these draw { $demand } through { $first }, but its limit is { $limit }: { $loads }. { $what }
           *[no] If all of these are plugged in there, they draw { $demand }{ when }, but its limit is { $limit }: { $loads }. { $what }
        }
      }
    .fix-turns = Run these in turns. Or move { $largest } to an outlet with another breaker.
    .fix-turns-only = Do not run these together: take turns.
    .fix-hours = Put in the plan when each of these runs. Or run them in turns.
    .fix-leg-look = { POWER001.fix-leg-look }
    .fix-leg-cord = { POWER001.fix-leg-cord }
    .fix-life-off = { life-off }
    .fix-life-turns = { life-turns }
    .fix-life-apart = Plug { $life } into outlets with different breakers. Never turn any of them down.

# What stops it, at the end of the sentence above.
overload-trips = Its breaker trips, and everything on it loses power.
overload-early = Its breaker has tripped below its marking.
overload-late = Its breaker is bigger and trips too late: it can overheat and catch fire.
overload-hot = No known breaker stops that: it overheats and can catch fire.
